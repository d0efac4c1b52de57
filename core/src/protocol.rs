//! The protocol as TypeScript declarations, generated from the Rust types.

macro_rules! declarations {
    ($($type:ty),* $(,)?) => { [$(<$type as tsify::Tsify>::DECL),*] };
}

/// The declarations of every type that crosses between the page and the workers, as one TypeScript module.
#[must_use]
pub fn declarations() -> String {
    use crate::costing::*;
    use crate::gearing::{AspectFrom, RatiosUnread, RollingFrom, Tyre, TyreUnread};
    use crate::inspect::*;
    use crate::job::vocabulary as words;
    use crate::job::*;
    use crate::papers::job_file::DryRun;
    use crate::papers::{
        CautionWords, Columns, MarkWords, PageWords, PaperWords, PriceWords, RouteWords, SideWords, StandingWords,
        TagGrid, TagLabel, TagLabels, TagNudge, TagShape, TagSheet, TagSheetView, TagsPaper,
    };
    use crate::plan::{
        Because, Collides, Collision, FrontierPoint, FrontierQuery, FrontierView, KeptPart, KeptPlan, KeptPlansView,
        KeptSince, KeptSums, OneMore, PlanChoice, PlanDonor, PlanKit, PlanOrder, PlanProof, PlanQuery, PlanStep,
        PlanSums, PlanTaken, PlanView, PlanWhy, Scarce, Spare, StageBudget, StepWhy, SwayPart, SwayQuery, SwayQuote,
        SwayView,
    };
    use crate::problem::{Code, Hint, Problem, Severity, Site};
    use crate::quantity::{
        Area, Chance, Currency, Day, Estimate, ExchangeRate, Length, Mass, Millis, Minutes, Money, Unit, Unreadable,
    };
    use crate::reckoning::{HeavyQuery, Reckoned};
    use crate::record::{EntryId, FieldName, Hash, Held, Id, KeptQuote, KeptQuotes, Kind, Replica};
    use crate::tables::checks::Condition;
    use crate::tables::features::{Dimension, LimitKind, LimitSource};
    use crate::tables::hazards::{Hazard, Step};
    use crate::tables::{Bearing, BearingSource, BearingSuffix, Seal, UsualInstrument};
    let declarations = declarations![
        Id,
        Replica,
        Hash,
        EntryId,
        Held,
        KeptQuotes,
        KeptQuote,
        Kind,
        FieldName,
        Money,
        Currency,
        Estimate,
        Minutes,
        Chance,
        Mass,
        Area,
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
        words::Stance,
        words::RateBasis,
        words::Relation,
        words::Swap,
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
        SuppliersView,
        SupplierLine,
        UnnamedSupplier,
        RulesView,
        RuleLine,
        BreachView,
        BreachWhy,
        MendView,
        MendChoice,
        ContentsLine,
        ContentsView,
        ContentsRow,
        FoundBy,
        DonorView,
        DonorLine,
        Rated,
        GearingView,
        GearingLine,
        RollingView,
        GearRow,
        GearingChange,
        GearingTypedView,
        SpeedUnit,
        Tyre,
        AspectFrom,
        TyreUnread,
        RatiosUnread,
        RollingFrom,
        ProblemsView,
        HistoryView,
        SeenView,
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
        PlanQuery,
        StageBudget,
        PlanView,
        PlanSums,
        PlanChoice,
        PlanWhy,
        PlanStep,
        PlanTaken,
        StepWhy,
        Scarce,
        FrontierQuery,
        FrontierView,
        FrontierPoint,
        OneMore,
        SwayQuery,
        SwayView,
        SwayPart,
        SwayQuote,
        KeptPlansView,
        KeptPlan,
        KeptSums,
        KeptPart,
        KeptSince,
        Because,
        PlanOrder,
        PlanKit,
        Spare,
        PlanDonor,
        Collides,
        Collision,
        PlanProof,
        PricedTest,
        Reckoned,
        CertaintyView,
        QuoteCertainty,
        KnowingView,
        TestView,
        UndecidedView,
        UndecidedPart,
        WaitView,
        Waits,
        StartingValues,
        TotalsView,
        PurchaseView,
        WhyNot,
        InspectView,
        ProposedView,
        UsualInstrumentView,
        AskedView,
        OutcomeView,
        MeasureView,
        PlaceMeasured,
        Limits,
        Bounds,
        Against,
        Proof,
        Proved,
        Rule,
        Use,
        Wear,
        WearStands,
        Measured,
        UncertaintyPart,
        Source,
        Settling,
        UsualInstrument,
        ProofQuery,
        ProofView,
        UnreadView,
        TypedView,
        Unreadable,
        Unit,
        NextSize,
        Surface,
        SizeSteps,
        IdentifyView,
        Bearing,
        BearingSuffix,
        BearingSource,
        Seal,
        Length,
        Reason,
        ReasonFrom,
        Verdict,
        RouteLeft,
        Condition,
        Dimension,
        LimitKind,
        LimitSource,
        CautionsView,
        CautionView,
        Hazard,
        Step,
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
        CautionWords,
        DryRun,
        TagRead,
        TagsPaper,
        TagLabels,
        TagSheet,
        TagGrid,
        TagNudge,
        TagSheetView,
        TagLabel,
        TagShape,
    ];
    let mut module = String::from("// Generated from the Rust types of the core; do not edit.\n\n");
    for declaration in declarations {
        module.push_str(declaration);
        module.push_str("\n\n");
    }
    module.push_str(
        "/** The entries seen on screen, by field. */\nexport type Seen = Partial<Record<FieldName, EntryId[]>>;\n",
    );
    module.push_str(&codes());
    module
}

/// The codes of the tables: whoever words them is told by the compiler which one has no words.
fn codes() -> String {
    use crate::tables::checks::{LOOKS, OWN_OUTCOMES};
    use crate::tables::families::FAMILIES;
    use crate::tables::features::FEATURES;
    let looks = LOOKS.iter().map(|look| {
        let outcomes = union(look.outcomes.iter().map(|outcome| outcome.code));
        format!("    {:?}: {outcomes};\n", look.code)
    });
    let looks: String = looks.collect();
    format!(
        "\n/** Families of parts, by code. */\nexport type FamilyCode = {};\n\n\
         /** Questions of the check-lists by code, each with its answers, best first. */\nexport interface Looks {{\n{looks}}}\n\n\
         /** Answers to a question of the user's own, best first. */\nexport type OwnOutcome = {};\n\n\
         /** What is measured, by code. */\nexport type FeatureCode = {};\n",
        union(FAMILIES.iter().map(|family| family.code)),
        union(OWN_OUTCOMES.iter().map(|outcome| outcome.code)),
        union(FEATURES.iter().map(|feature| feature.code)),
    )
}

fn union<'a>(codes: impl Iterator<Item = &'a str>) -> String {
    codes.map(|code| format!("{code:?}")).collect::<Vec<_>>().join(" | ")
}
