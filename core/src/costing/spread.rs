//! How far a figure may be off, and whether the order of the quotes is open because of it.

use super::expected::costs;
use super::figures::whole;
use super::input::{Dial, Input, Setting};
use crate::job::vocabulary::Certainty;
use crate::quantity::{Chance, Minutes, Money};
use crate::record::{FieldName, Id, Item};

/// One figure with the range in which it is found 8 times in 10.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// Which figure.
    pub dial: Dial,
    /// The least.
    pub least: f64,
    /// The most.
    pub most: f64,
}

/// Least and most as they were given, put in order where they were given the wrong way round.
fn in_order(least: Option<f64>, most: Option<f64>) -> (Option<f64>, Option<f64>) {
    match least.zip(most) {
        Some((least, most)) => (Some(least.min(most)), Some(least.max(most))),
        None => (least, most),
    }
}

/// What a word says of a figure, as shares of it (common practice, no source: guesses of hours run over more often than
/// under).
#[must_use]
pub const fn spread_of(certainty: Certainty) -> (f64, f64) {
    match certainty {
        Certainty::Sure => (1.0, 1.0),
        Certainty::About => (0.85, 1.25),
        Certainty::WildGuess | Certainty::Starting => (0.5, 2.0),
    }
}

/// Which field says how sure a figure is, and which give its least and its most.
const GIVEN: [(Input, FieldName, FieldName, FieldName); 4] = [
    (Input::Cash, FieldName::CashCertainty, FieldName::CashLeast, FieldName::CashMost),
    (Input::OwnTime, FieldName::OwnTimeCertainty, FieldName::OwnTimeLeast, FieldName::OwnTimeMost),
    (Input::Chance, FieldName::ChanceCertainty, FieldName::ChanceLeast, FieldName::ChanceMost),
    (Input::Life, FieldName::LifeCertainty, FieldName::LifeLeast, FieldName::LifeMost),
];

/// How long a stored quote takes to come in, in days: likeliest, least and most as given, else by the word. A wait costs
/// nothing by itself, so that it is no figure of a [`Setting`].
pub(crate) fn wait_of(quote: &Item) -> Option<(f64, f64, f64)> {
    let days = |field| quote.read::<i64>(field).map(whole);
    let likely = days(FieldName::Wait)?;
    let (under, over) = spread_of(quote.read(FieldName::WaitCertainty).unwrap_or(Certainty::Sure));
    let (least, most) = in_order(days(FieldName::WaitLeast), days(FieldName::WaitMost));
    Some((likely, least.unwrap_or(likely * under).min(likely), most.unwrap_or(likely * over).max(likely)))
}

/// The figures of a stored quote that are not sure, with their ranges: least and most as given, else by the word.
pub(super) fn spreads(
    id: Id,
    quote: &Item,
    setting: &Setting,
    in_job_currency: impl Fn(Money) -> Option<i64>,
) -> Vec<Spread> {
    let found = GIVEN.into_iter().filter_map(|(input, word, least, most)| {
        let dial = Dial { input, quote: Some(id) };
        let now = setting.read(dial)?;
        let (under, over) = spread_of(quote.read(word).unwrap_or(Certainty::Sure));
        let end = |field| match input {
            Input::Cash => quote.read::<Money>(field).and_then(&in_job_currency).map(whole),
            Input::OwnTime => quote.read::<Minutes>(field).map(|minutes| whole(minutes.0)),
            Input::Chance => quote.read::<Chance>(field).map(Chance::share),
            _ => quote.read::<i64>(field).map(whole),
        };
        let is_said = input != Input::Life || quote.read::<i64>(FieldName::Life).is_some();
        let (least, most) = in_order(end(least), end(most));
        let least = least.unwrap_or(now * under).min(now);
        let most = most.unwrap_or(now * over).clamp(now, input.most().max(now));
        (is_said && least < most).then_some(Spread { dial, least, most })
    });
    found.collect()
}

/// How low and how high each quote may be 8 times in 10: each uncertain figure is turned to its least and its most alone,
/// and what that moves is added up in quadrature, as for figures that are independent of one another (JCGM 100, 5.1.2).
#[must_use]
pub fn ranges(setting: &Setting, spreads: &[Spread]) -> Vec<(f64, f64)> {
    let now = presents(setting);
    let mut below = vec![0.0; now.len()];
    let mut above = vec![0.0; now.len()];
    for spread in spreads {
        for end in [spread.least, spread.most] {
            let turned = presents(&setting.turned(spread.dial, end));
            for (at, moved) in turned.iter().zip(&now).map(|(then, now)| then - now).enumerate() {
                let side = if moved < 0.0 { &mut below[at] } else { &mut above[at] };
                *side += moved * moved;
            }
        }
    }
    let ends = now.iter().zip(below.into_iter().zip(above));
    ends.map(|(now, (below, above))| (now - libm::sqrt(below), now + libm::sqrt(above))).collect()
}

/// Which allowed quotes may after all be cheaper than the one at `best`: what the uncertain figures move their difference
/// by, in quadrature, is more than the difference. A figure on which both depend moves both.
#[must_use]
pub fn open_with(setting: &Setting, spreads: &[Spread], best: usize) -> Vec<Id> {
    let now = presents(setting);
    let moved: Vec<Vec<f64>> = spreads
        .iter()
        .flat_map(|spread| [spread.least, spread.most].map(|end| presents(&setting.turned(spread.dial, end))))
        .collect();
    let rivals = (0..now.len()).filter(|at| *at != best && setting.quotes[*at].allowed);
    let open = rivals.filter(|at| {
        let lead = now[*at] - now[best];
        let against: f64 =
            moved.iter().map(|then| (then[*at] - then[best] - lead).min(0.0)).map(|lost| lost * lost).sum();
        against > 0.0 && libm::sqrt(against) > lead
    });
    open.map(|at| setting.quotes[at].id).collect()
}

fn presents(setting: &Setting) -> Vec<f64> {
    costs(&setting.quotes, &setting.terms).iter().map(super::expected::Cost::present).collect()
}
