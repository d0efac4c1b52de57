use serde::{Deserialize, Serialize};

use super::expected::{cheapest, costs};
use super::input::{Dial, Input, Setting};
use super::line::Turning;
use crate::record::{Id, ordered_by};

/// A value of one figure at which another quote becomes the cheapest, all other figures as they are.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Flip {
    /// Which figure; its unit is told there.
    pub input: Input,
    /// Of which quote; left out for figures of the job.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub quote: Option<Id>,
    /// What it is now.
    pub now: f64,
    /// Up to where the cheapest stays the cheapest.
    pub at: f64,
    /// Which way the figure has to go.
    pub beyond: Beyond,
    /// What is cheapest beyond it.
    pub then: Id,
}

/// A direction.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum Beyond {
    /// Above the value.
    Above,
    /// Below the value.
    Below,
}

/// Every flip: of each figure the nearest one above and the nearest one below what it is now.
///
/// - Money, hours, the value of an hour and chances: exact, as the crossing of straight pieces.
/// - Interest: by scanning upwards and downwards to 50 % in steps of a quarter of a percent, the root between two steps to
///   the last bit by halving. Two flips within one step are not seen.
/// - Years and lives: exact, since costs only jump, or fall steadily, between the ends of lives.
///
/// Each is tried before it is told: just beyond it the cheapest is another one.
#[must_use]
pub fn flips(setting: &Setting) -> Vec<Flip> {
    let of_quotes = setting
        .quotes
        .iter()
        .filter(|quote| quote.allowed)
        .flat_map(|quote| Input::OF_QUOTE.into_iter().map(|input| Dial { input, quote: Some(quote.id) }));
    let dials = of_quotes.chain(Input::OF_JOB.into_iter().map(|input| Dial { input, quote: None }));
    let ways = dials.flat_map(|dial| [(dial, Beyond::Above), (dial, Beyond::Below)]);
    ways.filter_map(|(dial, beyond)| flip(setting, dial, beyond)).collect()
}

/// The nearest flip of one figure in one direction.
#[must_use]
pub fn flip(setting: &Setting, dial: Dial, beyond: Beyond) -> Option<Flip> {
    let now = setting.read(dial)?;
    let search = Search { setting, dial, now, up: beyond == Beyond::Above, best: best(setting)? };
    let (at, then) = match dial.input {
        Input::Interest => search.by_scan(),
        Input::Years => search.by_ends_of_lives(),
        Input::Life => search.by_halving(1.0, setting.terms.years * 12.0),
        _ => search.by_pieces(),
    }?;
    Some(Flip { input: dial.input, quote: dial.quote, now, at, beyond, then })
}

fn best(setting: &Setting) -> Option<Id> {
    let costs = costs(&setting.quotes, &setting.terms);
    cheapest(&setting.quotes, &costs).map(|at| setting.quotes[at].id)
}

/// Differences of present values that are no more than this share of them come from rounding.
const ROUNDING: f64 = 1e-13;

struct Search<'a> {
    setting: &'a Setting,
    dial: Dial,
    now: f64,
    up: bool,
    best: Id,
}

/// Steps in which the rate of interest is scanned.
const STEP: f64 = 0.0025;
/// How far beyond a flip it is tried, as a share of the value; the first at which something changes will do.
const NUDGES: [f64; 4] = [1e-12, 1e-10, 1e-8, 1e-6];

impl Search<'_> {
    /// Which quote is the cheapest at a value, if it is another one than now, and not by rounding alone.
    fn other_at(&self, at: f64) -> Option<Id> {
        let setting = self.setting.turned(self.dial, at);
        let costs = costs(&setting.quotes, &setting.terms);
        let at_best = setting.quotes.iter().position(|quote| quote.id == self.best)?;
        let at_other = cheapest(&setting.quotes, &costs).filter(|at| *at != at_best)?;
        let (best, other) = (costs[at_best].present(), costs[at_other].present());
        (best - other > best.abs() * ROUNDING).then_some(setting.quotes[at_other].id)
    }

    /// Which quote is the cheapest just beyond a value, if it is another one than now.
    fn other_beyond(&self, at: f64) -> Option<Id> {
        let size = at.abs().max(if self.dial.input.most() > 1.0 { 1.0 } else { 1e-3 });
        NUDGES.into_iter().find_map(|nudge| {
            let to = if self.up { at + size * nudge } else { at - size * nudge };
            if to < 0.0 || to > self.dial.input.most() { None } else { self.other_at(to) }
        })
    }

    fn by_pieces(&self) -> Option<(f64, Id)> {
        let turning = Turning::new(self.setting, self.dial);
        let at_best = self.setting.quotes.iter().position(|quote| quote.id == self.best)?;
        // Where a fallback that was named comes in or drops out, costs jump.
        let jumps = self.setting.quotes.iter().any(|quote| quote.fallback.is_some());
        for piece in turning.pieces(self.now, self.up) {
            if let Some(then) = jumps.then(|| self.other_beyond(piece.start)).flatten() {
                return Some((piece.start, then));
            }
            let rivals = (0..self.setting.quotes.len()).filter(|at| *at != at_best && self.setting.quotes[*at].allowed);
            let mut crossings: Vec<f64> = rivals.filter_map(|rival| turning.crossing(&piece, rival, at_best)).collect();
            crossings = ordered_by(crossings, f64::total_cmp);
            if !self.up {
                crossings.reverse();
            }
            let found = crossings.into_iter().find_map(|at| Some((at, self.other_beyond(at)?)));
            if found.is_some() {
                return found;
            }
        }
        None
    }

    fn by_scan(&self) -> Option<(f64, Id)> {
        let most = self.dial.input.most();
        let mut near = self.now;
        loop {
            let far = if self.up { (near + STEP).min(most) } else { (near - STEP).max(0.0) };
            if self.other_at(far).is_some() {
                return self.halved(near, far);
            }
            if far <= 0.0 || far >= most {
                return None;
            }
            near = far;
        }
    }

    /// Costs are told apart by the years only where a life ends, just beyond it upwards and at it downwards.
    fn by_ends_of_lives(&self) -> Option<(f64, Id)> {
        let lives = self.setting.quotes.iter().filter_map(|quote| quote.life.filter(|life| *life >= 1.0));
        let most = self.dial.input.most();
        let ends = lives.flat_map(|life| {
            (1_u32..).map(move |time| f64::from(time) * life / 12.0).take_while(move |years| *years < most)
        });
        let is_ahead = |years: &f64| if self.up { *years >= self.now } else { *years < self.now };
        let mut ends: Vec<f64> = ordered_by(ends.filter(is_ahead).collect(), f64::total_cmp);
        if !self.up {
            ends.reverse();
        }
        ends.dedup();
        ends.into_iter().find_map(|at| Some((at, self.other_beyond(at)?)))
    }

    /// A longer life never makes a quote dearer, so between two values it flips at most once.
    fn by_halving(&self, least: f64, most: f64) -> Option<(f64, Id)> {
        let far = if self.up { most } else { least };
        if far == self.now || (far > self.now) != self.up || self.other_at(far).is_none() {
            return None;
        }
        self.halved(self.now, far)
    }

    /// The last value on the near side, between one where nothing has changed and one where it has.
    fn halved(&self, mut near: f64, mut far: f64) -> Option<(f64, Id)> {
        loop {
            let middle = f64::midpoint(near, far);
            if middle <= near.min(far) || middle >= near.max(far) {
                return Some((near, self.other_at(far)?));
            }
            if self.other_at(middle).is_some() {
                far = middle;
            } else {
                near = middle;
            }
        }
    }
}
