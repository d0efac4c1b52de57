use serde::{Deserialize, Serialize};

use super::decision_table::{DecisionTable, posterior};
use super::guess::{Guess, Model, least};
use super::input::{Dial, Input, Setting};
use super::worth_of_knowing::{means, stratified};
use crate::record::Id;

/// A test that may be made before choosing: whether a quote's route will fail.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PricedTest {
    /// The quote whose failing is asked about.
    pub quote: Id,
    /// Of those that will fail, which share the test says so of, from 0 to 1.
    pub sensitivity: f64,
    /// Of those that will not fail, which share the test says so of, from 0 to 1.
    pub specificity: f64,
    /// What it costs, in minor units of the job's currency.
    #[serde(default)]
    pub price: f64,
    /// Own time that it takes, in minutes.
    #[serde(default)]
    pub own_time: f64,
    /// How likely failing is before it, from 0 to 1; left out: the mean of what was said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub chance: Option<f64>,
}

/// What a test is worth; money in minor units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tested {
    /// How likely failing was taken to be before it.
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
    /// What it is worth at most: what choosing after it costs less, in the mean, than choosing without it.
    pub worth: f64,
    /// What it costs, with own time.
    pub costs: f64,
}

impl Tested {
    /// What is left when it is paid; it should be made when this is above nothing.
    #[must_use]
    pub fn gain(&self) -> f64 {
        self.worth - self.costs
    }
}

/// What a test of whether a quote's route will fail is worth. Nothing when there is no such quote that may be chosen.
///
/// The chance of failing after each outcome by Bayes' rule; at each the quotes are worth their mean over the other figures
/// (the same draws as in [`worth_of_knowing`](super::worth_of_knowing)), and the best of them is chosen. Without the
/// test one quote is chosen for both outcomes. Figures out of their range are kept within it.
///
/// ```
/// use asfound_core::costing::{tested, Figures, PricedTest, Setting, Terms};
/// use asfound_core::job::vocabulary::Route;
/// use asfound_core::record::Id;
/// // Repair for 50, failing 2 times in 10, then buy for 90.
/// let (one, other) = (Id::from_bytes([1; 16]), Id::from_bytes([2; 16]));
/// let repair = Figures { cash: 50.0, chance: 0.2, ..Figures::bare(one, Route::RepairHere) };
/// let buy = Figures { cash: 90.0, ..Figures::bare(other, Route::Buy) };
/// let setting = Setting { quotes: vec![repair, buy], terms: Terms { hour_value: 0.0, interest: 0.0, years: 10.0 } };
/// let test = PricedTest { quote: one, sensitivity: 1.0, specificity: 1.0, price: 7.0, own_time: 0.0, chance: None };
/// let found = tested(&setting, &[], &test, 512, 1).unwrap();
/// // The repair in vain is spared 2 times in 10.
/// assert!((found.worth - 10.0).abs() < 1e-9 && (found.gain() - 3.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn tested(setting: &Setting, guesses: &[Guess], test: &PricedTest, draws: u32, seed: u64) -> Option<Tested> {
    let mut model = Model::new(setting, guesses);
    let dial = Dial { input: Input::Chance, quote: Some(test.quote) };
    let said = model.setting.read(dial)?;
    let guess = model.guesses.iter().find(|guess| guess.dial == dial);
    let chance = share(test.chance.unwrap_or_else(|| guess.map_or(said, |guess| guess.range.mean())));
    let (sensitivity, specificity) = (share(test.sensitivity), share(test.specificity));
    let outcomes = [[sensitivity, 1.0 - specificity], [1.0 - sensitivity, specificity]];
    let [(says_fails, if_fails), (says_not, if_not)] = outcomes.map(|says| posterior(&[chance, 1.0 - chance], &says));
    let beside = stratified(&model, draws, seed);
    let after = [if_fails[0], if_not[0]].map(|chance| means(&mut model, &beside, dial, chance));
    let [best_if_fails, best_if_not] = [least(&after[0])?, least(&after[1])?].map(|at| model.setting.quotes[at].id);
    let costs = after[0].iter().zip(&after[1]).map(|(fails, not)| vec![*fails, *not]).collect();
    let table = DecisionTable { chances: vec![says_fails, says_not], costs };
    let hours = within(test.own_time, Input::OwnTime.most()) / 60.0;
    Some(Tested {
        chance,
        says_fails,
        chance_if_fails: if_fails[0],
        chance_if_not: if_not[0],
        best_if_fails,
        best_if_not,
        worth: table.worth_of_certainty(),
        costs: within(test.price, Input::Cash.most()) + hours * setting.terms.hour_value,
    })
}

fn share(value: f64) -> f64 {
    within(value, 1.0)
}

/// Within nothing and the most; what is no number is nothing.
fn within(value: f64, most: f64) -> f64 {
    value.max(0.0).min(most)
}
