use serde::{Deserialize, Serialize};

use super::input::Input;
use crate::job::vocabulary::Route;
use crate::quantity::{Currency, Estimate};
use crate::record::Id;

/// How sure one may be of what the quotes of a part come to, by drawing their unsure figures over and over.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct CertaintyView {
    /// Which part.
    pub part: Id,
    /// The currency of all estimates.
    pub currency: Currency,
    /// How often figures were drawn.
    pub draws: u32,
    /// The seed they were drawn from: the same gives the same answer.
    pub seed: u32,
    /// The quote of the least present value at the figures as they were said: what costing calls the cheapest.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cheapest: Option<Id>,
    /// What choosing that one is expected to cost beyond what turns out the cheapest.
    pub regret: Estimate,
    /// What it would be worth to know every figure before choosing: the least regret of any quote. It is below `regret` where
    /// another quote than `cheapest` costs less in the mean.
    pub worth_of_all: Estimate,
    /// The quotes that may be chosen, in order of id.
    pub quotes: Vec<QuoteCertainty>,
    /// What it would be worth to know one unsure figure before choosing, the most first.
    pub knowing: Vec<KnowingView>,
    /// What the test that was asked about is worth; left out when none was, or its quote may not be chosen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub test: Option<TestView>,
}

/// One quote, as it came out over all draws.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct QuoteCertainty {
    /// Its id.
    pub id: Id,
    /// Its route.
    pub route: Route,
    /// The chance that it is the cheapest, from 0 to 1.
    pub cheapest: f64,
    /// The same by a formula, where there is one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub exact_cheapest: Option<f64>,
    /// The mean of its present value.
    pub mean: Estimate,
    /// The same by a formula, where there is one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub exact_mean: Option<Estimate>,
    /// Its present value is below this 1 time in 10.
    pub p10: Estimate,
    /// And this 5 times in 10.
    pub p50: Estimate,
    /// And this 9 times in 10.
    pub p90: Estimate,
    /// What choosing it is expected to cost beyond what turns out the cheapest.
    pub regret: Estimate,
    /// How long it takes to come in, where that was said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wait: Option<WaitView>,
}

/// How long one waits for a quote, in days: exact, as nothing else moves it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct WaitView {
    /// What was said.
    pub likely: f64,
    /// The mean.
    pub mean: f64,
    /// It is shorter than this 1 time in 10.
    pub p10: f64,
    /// And this 5 times in 10.
    pub p50: f64,
    /// And this 9 times in 10.
    pub p90: f64,
}

/// An unsure figure, and what it would be worth to know it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct KnowingView {
    /// Whose figure it is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub quote: Option<Id>,
    /// Which figure.
    pub input: Input,
    /// The least that it may be, in the unit of the figure.
    pub least: f64,
    /// What was said.
    pub likely: f64,
    /// The most that it may be.
    pub most: f64,
    /// What it is worth to know it: nothing where it cannot change the choice.
    pub worth: Estimate,
}

/// What a test is worth that may be made before choosing.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct TestView {
    /// The quote whose failing it is about.
    pub quote: Id,
    /// How likely failing is before it.
    pub chance: f64,
    /// How likely the test is to say that it fails.
    pub says_fails: f64,
    /// How likely failing is once it said so.
    pub chance_if_fails: f64,
    /// How likely failing is once it said that it does not fail.
    pub chance_if_not: f64,
    /// The best quote once it said that it fails.
    pub best_if_fails: Id,
    /// The best quote once it said that it does not fail.
    pub best_if_not: Id,
    /// What it is worth at most.
    pub worth: Estimate,
    /// What it costs, own time counted.
    pub costs: Estimate,
    /// What is left of its worth when it is paid; below nothing it should not be made.
    pub gain: Estimate,
}
