use serde::{Deserialize, Serialize};

use crate::costing::WhatIf;
use crate::job::vocabulary::{Aim, Route};
use crate::quantity::Day;
use crate::record::Id;

/// What a plan is asked for. What is left out is as the job says.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlanQuery {
    /// Which day it is: quotes that have run out, and waits that would pass the latest day, are left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub today: Option<Day>,
    /// The most cash that is paid at first, in minor units; the budget of the job where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub budget: Option<i64>,
    /// The same for stages, each with its number.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub stages: Vec<StageBudget>,
    /// The most own time, in minutes; the own hours of the job where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub minutes: Option<i64>,
    /// The day by which everything must be in.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub latest: Option<Day>,
    /// Another aim.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub aim: Option<Aim>,
    /// Quotes, suppliers and donors that must be taken where they offer something, besides those the job pins.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub pin: Vec<Id>,
    /// Quotes, suppliers and donors that must not be taken, besides those the job forbids.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub forbid: Vec<Id>,
    /// What is decided may be decided otherwise, unless it is pinned.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub reopen: bool,
    /// Routes that must not be taken.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub forbid_routes: Vec<Route>,
    /// Budget, hours and latest day of the job do not count.
    pub without_limits: bool,
    /// Figures turned for this question alone, as in `cost`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub set: Option<WhatIf>,
    /// The seed from which plans are shaken.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub seed: Option<u32>,
    /// How many steps are made at most, from 1 to 100,000; left out, 300.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub nodes: Option<u32>,
}

/// The most cash that is paid in one stage.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct StageBudget {
    /// Which stage.
    pub stage: i64,
    /// How much, in minor units.
    pub budget: i64,
}
