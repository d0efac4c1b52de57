//! Problems: what is wrong with data or with what was asked, as data. Their sentences are written at the edge.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::record::{FieldName, Id};

/// One thing that is wrong: a stable code, how bad, where, with which values, and what would help.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Problem {
    /// Which kind of problem; stable over versions.
    pub code: Code,
    /// How bad it is.
    pub severity: Severity,
    /// Where it is.
    pub place: Site,
    /// The values that its sentence needs, by name.
    #[cfg_attr(feature = "ts", tsify(type = "Record<string, string>"))]
    pub values: BTreeMap<String, String>,
    /// What would help, most likely first.
    pub hints: Vec<Hint>,
}

/// How bad a problem is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum Severity {
    /// Nothing was done; nothing recorded is touched.
    Error,
    /// It was done or kept; someone should look.
    Warning,
}

/// Where a problem is: a record, a field of it, other records that share it.
#[derive(Debug, Clone, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Site {
    /// The record.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub id: Option<Id>,
    /// The field.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub field: Option<FieldName>,
    /// The others it shares the problem with, sorted.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub others: Vec<Id>,
}

macro_rules! codes {
    ($(#[$outer:meta])* pub enum $name:ident { $($(#[$meta:meta])* $variant:ident,)* }) => {
        $(#[$outer])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(rename_all = "kebab-case")]
        #[cfg_attr(feature = "ts", derive(tsify::Tsify))]
        pub enum $name { $($(#[$meta])* $variant,)* }

        impl $name {
            /// All of them, in order of declaration.
            pub const ALL: &'static [Self] = &[$(Self::$variant,)*];
        }
    };
}

codes! {
    /// Which kind of problem. A code is never reused for something else.
    pub enum Code {
        /// Two devices wrote the same field without having seen one another's value.
        Conflict,
        /// Two parts carry the same tag number.
        TagTwice,
        /// Two devices claimed the same block of tag numbers.
        BlockTwice,
        /// Places or assemblies contain one another in a circle.
        Loop,
        /// Something points at a record that is not here (yet).
        Dangling,
        /// Something lies in, or belongs to, what was struck out.
        InStruckOut,
        /// Fields are here, but not what they are fields of.
        KindMissing,
        /// A record was said to be two different things.
        KindTwice,
        /// A value cannot be read by this version; it is kept as it is.
        ValueUnreadable,
        /// A field stands on a kind of record that does not have it; it is kept.
        FieldOutOfPlace,
        /// Entries overwrite one another in a circle.
        OverwriteLoop,
        /// Two different entries carry the same identity.
        EntryTwice,
        /// Entries of a device are missing between others that are here.
        EntriesMissing,
        /// A chosen quote was struck out or is no longer allowed.
        ChoiceStale,
        /// A quote is in a currency other than the job's.
        OtherCurrency,
        /// The record named in a command is not in this job.
        UnknownRecord,
        /// The record is not of the kind that the command works on.
        WrongKind,
        /// A record of this id is there already.
        IdTaken,
        /// A value is outside what is accepted.
        OutOfBounds,
        /// A needed value is missing.
        Missing,
        /// Parts go on after one another in a circle.
        RefitCircle,
        /// Something is still loose that stands in the way.
        StillLoose,
        /// Nothing is left to undo there.
        NothingToUndo,
        /// A file or chunk is damaged: its name does not match its bytes.
        Damaged,
        /// A file or chunk was written by a newer version.
        NewerForm,
        /// A file is not of the kind that was expected.
        NotOurs,
        /// A photo or sound named in the record is not here.
        BlobMissing,
        /// A job file holds a different job than the one it was to be merged with.
        OtherJob,
        /// A question does not have this answer.
        NotAnAnswer,
        /// The least of a limit lies above its most.
        LimitCrossed,
        /// Two sides that belong together were decided for different routes.
        PairApart,
        /// A heavy question was asked where only quick ones are answered.
        HeavyQuestion,
        /// The marking of a tyre cannot be read; it is kept as it is.
        TyreUnreadable,
        /// A list of gear ratios cannot be read; it is kept as it is.
        RatiosUnreadable,
        /// Labels do not fit on their sheet, or what is printed does not fit on them.
        LabelsDoNotFit,
    }
}

codes! {
    /// What would help; each has its sentence at the edge.
    pub enum Hint {
        /// Look at both values and settle which one holds.
        SettleValues,
        /// Give one of the parts a new tag.
        RetagOne,
        /// Move one of them out of the circle.
        MoveOneOut,
        /// Bring in the job file of the other device.
        BringInOther,
        /// Open it with a newer version.
        UseNewer,
        /// Bring back what was struck out, or move what lies there.
        BringBackOrMove,
        /// Choose again.
        ChooseAgain,
        /// Enter the price in the job's currency.
        EnterInJobCurrency,
        /// Correct the value and send it again.
        CorrectValue,
        /// Bring in the file again from where it came.
        FetchAgain,
        /// Ask it where heavy questions are answered.
        AskReckoning,
        /// Measure how far the tyre rolls in one turn, or take its turns per mile from a data book.
        MeasureRolling,
        /// Strike out one of the rules that make the circle.
        DropRule,
        /// Tighten what is loose, and tick it.
        TightenFirst,
    }
}

impl Problem {
    /// An error at no particular place.
    #[must_use]
    pub fn error(code: Code) -> Self {
        Self::new(code, Severity::Error)
    }

    /// A warning at no particular place.
    #[must_use]
    pub fn warning(code: Code) -> Self {
        Self::new(code, Severity::Warning)
    }

    fn new(code: Code, severity: Severity) -> Self {
        Self { code, severity, place: Site::default(), values: BTreeMap::new(), hints: Vec::new() }
    }

    /// At this record.
    #[must_use]
    pub fn at(mut self, id: Id) -> Self {
        self.place.id = Some(id);
        self
    }

    /// At this field.
    #[must_use]
    pub fn field(mut self, field: FieldName) -> Self {
        self.place.field = Some(field);
        self
    }

    /// Shared with these others.
    #[must_use]
    pub fn with(mut self, mut others: Vec<Id>) -> Self {
        others.sort_unstable();
        self.place.others = others;
        self
    }

    /// With a value for its sentence.
    #[must_use]
    pub fn value(mut self, name: &str, value: impl ToString) -> Self {
        self.values.insert(name.to_owned(), value.to_string());
        self
    }

    /// With something that would help.
    #[must_use]
    pub fn hint(mut self, hint: Hint) -> Self {
        self.hints.push(hint);
        self
    }
}
