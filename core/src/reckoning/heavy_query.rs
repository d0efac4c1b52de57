use serde::{Deserialize, Serialize};

use crate::costing::{PricedTest, WhatIf};
use crate::job::ContentsLine;
use crate::plan::{FrontierQuery, PlanQuery, SwayQuery};
use crate::quantity::Day;
use crate::record::Id;

/// A question whose answer draws figures over and over, or looks through all parts for each line of a list; [`reckon`](super::reckon) answers it. It stands beside
/// [`Query`](crate::job::Query), so that whoever answers quick questions alone carries nothing of it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "ask", rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum HeavyQuery {
    /// How sure one may be of the quotes of a part, and what finding out is worth.
    Certainty {
        /// Which part.
        part: Id,
        /// Which day it is, as in `cost`.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        today: Option<Day>,
        /// Figures turned for this question alone, as in `cost`.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        set: Option<WhatIf>,
        /// A test that may be made before choosing.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        test: Option<PricedTest>,
        /// How often figures are drawn, from 1 to 100,000; left out, 10,000 times.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        draws: Option<u32>,
        /// The seed they are drawn from.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        seed: Option<u32>,
    },
    /// The parts that are not decided, those first where a wrong choice would cost most.
    Undecided {
        /// Which day it is, as in `cost`.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        today: Option<Day>,
        /// How often figures are drawn for each part, from 1 to 100,000; left out, 1,000 times.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        draws: Option<u32>,
        /// The seed they are drawn from.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        seed: Option<u32>,
    },
    /// What a list of what is in a kit is taken to mean.
    KitContents {
        /// The quote of the kit.
        quote: Id,
        /// The lines of the list.
        lines: Vec<ContentsLine>,
    },
    /// One quote for every part, so that all together cost least.
    Plan(Box<PlanQuery>),
    /// How what the whole job costs hangs on the budget, or on the own hours.
    Frontier(Box<FrontierQuery>),
    /// Which parts go another way when prices and hours move within their guesses.
    Sway(Box<SwayQuery>),
    /// Plans that were kept: what they came to, what they come to now, and what has changed since.
    KeptPlans {
        /// Which day it is, as in `cost`.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        today: Option<Day>,
    },
}
