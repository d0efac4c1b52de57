//! The protocol as TypeScript declarations, generated from the Rust types.

macro_rules! declarations {
    ($($type:ty),* $(,)?) => { [$(<$type as tsify::Tsify>::DECL),*] };
}

/// The declarations of every type that crosses between the page and the workers, as one TypeScript module.
#[must_use]
pub fn declarations() -> String {
    use crate::costing::*;
    use crate::job::vocabulary as words;
    use crate::job::*;
    use crate::papers::job_file::DryRun;
    use crate::papers::{Columns, MarkWords, PageWords, PaperWords, PriceWords, RouteWords, SideWords, StandingWords};
    use crate::problem::{Code, Hint, Problem, Severity, Site};
    use crate::quantity::{Chance, Currency, Day, Estimate, ExchangeRate, Mass, Millis, Minutes, Money};
    use crate::record::{EntryId, FieldName, Hash, Held, Id, Kind, Replica};
    let declarations = declarations![
        Id,
        Replica,
        Hash,
        EntryId,
        Held,
        Kind,
        FieldName,
        Money,
        Currency,
        Estimate,
        Minutes,
        Chance,
        Mass,
        Millis,
        Day,
        ExchangeRate,
        words::Side,
        words::Vocabulary,
        words::Units,
        words::Aim,
        words::Triage,
        words::Moment,
        words::Shot,
        words::Shape,
        words::PlaceKind,
        words::Check,
        words::Route,
        words::Certainty,
        words::Correctness,
        words::Standing,
        Change,
        Values,
        Command,
        SplitOff,
        Sent,
        Context,
        Query,
        PartsQuery,
        Group,
        View,
        RecordView,
        ConflictView,
        WrittenView,
        HeadView,
        Settings,
        TeardownView,
        AssembliesView,
        AssemblyLine,
        PartLine,
        Found,
        FoundIn,
        PartsView,
        PartsGroup,
        Sums,
        PartView,
        PhotoView,
        NoteView,
        JointView,
        PlacesView,
        PlaceLine,
        ProblemsView,
        HistoryView,
        HistoryLine,
        CostView,
        QuoteCost,
        CostLine,
        LineKind,
        BreakEven,
        Flip,
        Beyond,
        Input,
        WhatIf,
        KitView,
        CoverView,
        Overtaken,
        HeavyQuery,
        PricedTest,
        Reckoned,
        CertaintyView,
        QuoteCertainty,
        KnowingView,
        TestView,
        UndecidedView,
        UndecidedPart,
        Waits,
        StartingValues,
        TotalsView,
        PurchaseView,
        WhyNot,
        Problem,
        Severity,
        Site,
        Code,
        Hint,
        PaperWords,
        PriceWords,
        Columns,
        SideWords,
        StandingWords,
        RouteWords,
        MarkWords,
        PageWords,
        DryRun,
    ];
    let mut module = String::from("// Generated from the Rust types of the core; do not edit.\n\n");
    for declaration in declarations {
        module.push_str(declaration);
        module.push_str("\n\n");
    }
    module.push_str(
        "/** The entries seen on screen, by field. */\nexport type Seen = Partial<Record<FieldName, EntryId[]>>;\n",
    );
    module
}
