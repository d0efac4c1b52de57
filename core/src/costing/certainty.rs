use super::certainty_view::{CertaintyView, KnowingView, QuoteCertainty, TestView, WaitView};
use super::closed_form::{exact_chances, exact_means};
use super::cost::unsure;
use super::expected::{cheapest, costs};
use super::figures::whole;
use super::guess::guesses;
use super::priced_test::{PricedTest, Tested, tested};
use super::simulation::{Simulation, simulate};
use super::spread::wait_of;
use super::three_point::ThreePoint;
use super::what_if::WhatIf;
use super::worth_of_knowing::{Known, worth_of_knowing};
use crate::job::Job;
use crate::quantity::{Day, Estimate, bounds};
use crate::record::Id;

/// How often figures are drawn for one part where nothing is said.
pub const DRAWS: u32 = 10_000;
/// The most often that figures are drawn.
pub const MOST_DRAWS: u32 = 100_000;
/// The seed where nothing is said.
const SEED: u32 = 1;

/// How figures are drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Drawing {
    /// How often, from 1 to [`MOST_DRAWS`]; what is beyond is kept within.
    pub draws: Option<u32>,
    /// From which seed.
    pub seed: Option<u32>,
}

impl Drawing {
    /// How often, where `usual` is what is meant when nothing is said.
    pub(super) fn draws_or(self, usual: u32) -> u32 {
        self.draws.unwrap_or(usual).clamp(1, MOST_DRAWS)
    }

    pub(super) fn seed(self) -> u32 {
        self.seed.unwrap_or(SEED)
    }
}

/// How sure one may be of the quotes of a part, and what finding out is worth. `today` and `set` are those of
/// [`cost`](super::cost); `test` is one that might be made before choosing.
#[must_use]
pub fn certainty(
    job: &Job,
    part: Id,
    today: Option<Day>,
    set: Option<&WhatIf>,
    test: Option<&PricedTest>,
    drawing: Drawing,
) -> CertaintyView {
    let (setting, spreads) = unsure(job, part, today, set);
    let guesses = guesses(&setting, &spreads);
    let (draws, seed) = (drawing.draws_or(DRAWS), drawing.seed());
    let currency = job.settings().currency;
    let money = |minor| Estimate::from_minor(minor, currency);
    let found = simulate(&setting, &guesses, draws, seed.into());
    let best = cheapest(&setting.quotes, &costs(&setting.quotes, &setting.terms)).map(|at| setting.quotes[at].id);
    let known = worth_of_knowing(&setting, &guesses, found.worth_of_all, draws, seed.into());
    let chances = exact_chances(&setting, &guesses).map(Vec::from).unwrap_or_default();
    let means = exact_means(&setting, &guesses);
    let quotes = found.quotes.iter().enumerate().filter_map(|(at, quote)| {
        Some(QuoteCertainty {
            id: quote.id,
            route: setting.quotes.iter().find(|figures| figures.id == quote.id)?.route,
            cheapest: quote.cheapest,
            exact_cheapest: chances.get(at).copied(),
            mean: money(quote.mean),
            exact_mean: means.get(at).copied().flatten().map(money),
            p10: money(quote.p10),
            p50: money(quote.p50),
            p90: money(quote.p90),
            regret: money(quote.regret),
            wait: waiting(job, quote.id),
        })
    });
    CertaintyView {
        part,
        currency,
        draws,
        seed,
        cheapest: best,
        regret: money(regret_of(&found, best)),
        worth_of_all: money(found.worth_of_all),
        quotes: quotes.collect(),
        knowing: known.iter().map(|known| knowing(known, money)).collect(),
        test: test.and_then(|test| {
            tested(&setting, &guesses, test, draws, seed.into()).map(|found| of_test(test.quote, &found, money))
        }),
    }
}

/// How long a quote takes to come in, from its three points.
fn waiting(job: &Job, quote: Id) -> Option<WaitView> {
    let (likely, least, most) = wait_of(job.item(quote)?)?;
    let range = ThreePoint::bracket(likely, least, most, 0.0, whole(bounds::DAYS.most));
    let [p10, p50, p90] = [0.1, 0.5, 0.9].map(|share| range.quantile(share));
    Some(WaitView { likely, mean: range.mean(), p10, p50, p90 })
}

/// What choosing a quote is expected to cost beyond what turns out the cheapest.
pub(super) fn regret_of(found: &Simulation, quote: Option<Id>) -> f64 {
    found.quotes.iter().find(|found| Some(found.id) == quote).map_or(0.0, |found| found.regret)
}

fn knowing(known: &Known, money: impl Fn(f64) -> Estimate) -> KnowingView {
    let range = known.guess.range;
    KnowingView {
        quote: known.guess.dial.quote,
        input: known.guess.dial.input,
        least: range.least(),
        likely: range.likely(),
        most: range.most(),
        worth: money(known.worth),
    }
}

fn of_test(quote: Id, found: &Tested, money: impl Fn(f64) -> Estimate) -> TestView {
    TestView {
        quote,
        chance: found.chance,
        says_fails: found.says_fails,
        chance_if_fails: found.chance_if_fails,
        chance_if_not: found.chance_if_not,
        best_if_fails: found.best_if_fails,
        best_if_not: found.best_if_not,
        worth: money(found.worth),
        costs: money(found.costs),
        gain: money(found.gain()),
    }
}
