use serde::{Deserialize, Serialize};

use super::vocabulary::{Route, Standing};
use crate::costing::WhatIf;
use crate::inspect::ProofQuery;
use crate::quantity::{Day, Minutes, Unit};
use crate::record::Id;
use crate::tables::hazards::Step;

/// A question. It never changes anything.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "ask", rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum Query {
    /// Name, settings and counts of the job.
    Head,
    /// What the strip needs: the assembly and the part in hand, chips, the next tag.
    Teardown {
        /// The assembly that is being taken apart.
        #[serde(default)]
        assembly: Option<Id>,
        /// The part in hand, once it is recorded.
        #[serde(default)]
        part: Option<Id>,
    },
    /// Vehicles and their assemblies, each after the one it is inside.
    Assemblies,
    /// A list of parts, sought, filtered and grouped.
    Parts(PartsQuery),
    /// All about one part.
    Part {
        /// Which one.
        part: Id,
    },
    /// One photo with its marks.
    Photo {
        /// Which one.
        photo: Id,
    },
    /// The quotes of a part, side by side.
    Cost {
        /// Which part.
        part: Id,
        /// Which day it is: quotes that were valid until an earlier one have run out. Left out, none has.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        today: Option<Day>,
        /// Figures turned for this question alone.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        set: Option<WhatIf>,
    },
    /// What the job comes to so far: decided, open, bought.
    Totals {
        /// Which day it is, as in `cost`.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        today: Option<Day>,
    },
    /// A part under judgement: check-list, measures, what they come to, what they leave to choose from.
    Inspect {
        /// Which part.
        part: Id,
    },
    /// What readings prove against limits, all as somebody types them, outside the record.
    Proof(ProofQuery),
    /// What a typed measure says.
    Typed {
        /// The text.
        text: String,
        /// The unit of figures that have none.
        unit: Unit,
    },
    /// What is stamped on a bearing, or the size of a shaft seal.
    Identify {
        /// The text: `6204-2RS`, `25x40x7`.
        text: String,
    },
    /// What can hurt whoever works on a part, on an assembly, or on the whole job.
    Cautions {
        /// Where in the work one stands.
        step: Step,
        /// One part.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        part: Option<Id>,
        /// Else one assembly, with its parts.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        assembly: Option<Id>,
    },
    /// A heavy question, refused here: [`HeavyQuery`](crate::reckoning::HeavyQuery) has its members.
    Certainty,
    /// A heavy question, refused here, as `certainty`.
    Undecided,
    /// A heavy question, refused here, as `certainty`.
    Plan,
    /// A heavy question, refused here, as `certainty`.
    Frontier,
    /// A heavy question, refused here, as `certainty`.
    Sway,
    /// A heavy question, refused here, as `certainty`.
    KeptPlans,
    /// All assemblies to be refitted: which can begin, what blocks the others and until when; what is still loose.
    Ready {
        /// Which day it is: what was due before it has no date any more. Left out, no day has passed.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        today: Option<Day>,
    },
    /// The steps of refitting an assembly, in order.
    RefitSteps {
        /// Which assembly.
        assembly: Id,
        /// Which day it is, as in `ready`.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        today: Option<Day>,
    },
    /// All that is wanted at the step of one part.
    RefitStep {
        /// Which part.
        part: Id,
        /// Which day it is, as in `ready`.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        today: Option<Day>,
    },
    /// What can be done with the hours at hand.
    ThisEvening {
        /// The time at hand.
        minutes: Minutes,
        /// Which day it is, as in `ready`.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        today: Option<Day>,
    },
    /// From the last assembly to the road, and what is left over.
    Commissioning,
    /// All places, each after the one it is within.
    Places,
    /// One place with what is in it: parts, places, the rack around it, its last count.
    Place {
        /// Which place.
        place: Id,
    },
    /// Where a part is, and where it may be laid next.
    Where {
        /// Which part.
        part: Id,
    },
    /// A count: what was expected, seen, missing, foreign.
    Count {
        /// Which count.
        count: Id,
    },
    /// What is missed, out of the house, in no place, or not seen for long.
    Missing {
        /// Which day it is. Left out, nothing is late and nothing not seen for long.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        today: Option<Day>,
        /// Days after which what is out with no day counts as late; a starting value if left out.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        out_days: Option<i64>,
        /// Days after which what lies in a place counts as not seen for long; a starting value if left out.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        unseen_days: Option<i64>,
    },
    /// What carries a code.
    Tag {
        /// The code, as it was read or typed.
        text: String,
        /// It was read by a machine: then it is exactly what is printed.
        #[serde(default)]
        scanned: bool,
    },
    /// Suppliers and specialists with their terms, and names that quotes carry without one.
    Suppliers,
    /// What goes, or does not go, with what; where the decisions break it, and what would mend that.
    Rules {
        /// Only rules about this part, one of its quotes, or a donor that it may come from.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        part: Option<Id>,
        /// Which day it is, as in `cost`.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        today: Option<Day>,
    },
    /// A heavy question, refused here, as `certainty`.
    KitContents,
    /// What a donor gave, what it still has, and what it came to.
    Donor {
        /// Which vehicle.
        vehicle: Id,
        /// Which day it is, as in `cost`.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        today: Option<Day>,
    },
    /// Gearings before and after a swap: road speed by engine speed in each gear, and what changes.
    Gearing {
        /// A road speed at which the engine speed is asked.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        speed: Option<f64>,
        /// What it is told in; miles an hour if left out.
        #[serde(default)]
        unit: SpeedUnit,
    },
    /// What the marking of a tyre and a list of gear ratios say, as somebody types them, outside the record.
    GearingTyped {
        /// The marking: `205/65 R 15`.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        tyre: Option<String>,
        /// The list: `3.33, 2.05, 1.37, 1.00`.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        gears: Option<String>,
    },
    /// Everything that needs a person: conflicts, tags used twice, circles, what is missing.
    Problems,
    /// What was ever written to one record, latest last.
    History {
        /// Which record.
        id: Id,
    },
    /// What a change of several records at once names as seen.
    Seen {
        /// Which records.
        ids: Vec<Id>,
    },
}

/// Which parts, and how they are listed.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PartsQuery {
    /// Words sought in tag, name, numbers, notes and place; empty for all.
    pub find: String,
    /// Only parts of this assembly, or of one inside it.
    pub assembly: Option<Id>,
    /// Only parts that lie in this place, or in one within it.
    pub place: Option<Id>,
    /// Only parts that stand so.
    pub standing: Option<Standing>,
    /// Only parts for which this route was chosen.
    pub route: Option<Route>,
    /// Struck-out ones instead of the others.
    pub struck: bool,
    /// How they are put together.
    pub group: Group,
    /// The first row wanted, counted from 0.
    pub from: usize,
    /// How many rows are wanted; left out: all.
    pub count: Option<usize>,
}

/// How a list of parts is put together.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum Group {
    /// By assembly.
    #[default]
    Assembly,
    /// By place.
    Place,
    /// By chosen route.
    Route,
    /// By standing.
    Standing,
    /// Not at all: by tag, or best match first.
    None,
}

/// What a road speed is told in.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum SpeedUnit {
    /// Miles an hour.
    #[default]
    Mph,
    /// Kilometres an hour.
    Kmh,
}
