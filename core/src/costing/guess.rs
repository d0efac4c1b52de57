use super::cost::unsure;
use super::draws::{Drawn, Stream};
use super::input::{Dial, Input, Setting, of};
use super::spread::Spread;
use super::three_point::ThreePoint;
use super::valuer::Valuer;
use super::what_if::WhatIf;
use crate::job::Job;
use crate::quantity::Day;
use crate::record::Id;

/// One figure that is not sure, by its least, likeliest and most.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Guess {
    /// Which figure.
    pub dial: Dial,
    /// What it may be, in the unit of the figure.
    pub range: ThreePoint,
}

/// The unsure figures of a comparison as guesses of three points: likeliest is what was said; the spread, said by least and
/// most or by the word, is the bracket of 8 in 10 ([`ThreePoint::bracket`]), within what the figure can be.
#[must_use]
pub fn guesses(setting: &Setting, spreads: &[Spread]) -> Vec<Guess> {
    let guess = |spread: &Spread| {
        let likely = setting.read(spread.dial)?;
        let (floor, ceiling) = (spread.dial.input.least(), spread.dial.input.most());
        let range = ThreePoint::bracket(likely, spread.least, spread.most, floor, ceiling);
        Some(Guess { dial: spread.dial, range })
    };
    spreads.iter().filter_map(guess).collect()
}

/// A comparison whose unsure figures are turned over and over. Quotes stand in order of id.
#[derive(Debug, Clone)]
pub(super) struct Model {
    pub(super) setting: Setting,
    pub(super) guesses: Vec<Guess>,
    drawn: Vec<Drawn>,
    valuer: Valuer,
    presents: Vec<f64>,
}

impl Model {
    /// Of the quotes that may be chosen: the others are neither chosen nor fallen back on.
    pub(super) fn new(setting: &Setting, guesses: &[Guess]) -> Self {
        let mut setting = setting.clone();
        setting.quotes.retain(|quote| quote.allowed);
        setting.quotes.sort_by_key(|quote| quote.id);
        let is_here = |guess: &&Guess| {
            let of_quote = setting.quotes.iter().any(|quote| Some(quote.id) == guess.dial.quote);
            !guess.range.is_sure() && (of_quote || guess.dial.quote.is_none())
        };
        let mut guesses: Vec<Guess> = guesses.iter().filter(is_here).copied().collect();
        guesses.sort_by_key(|guess| (guess.dial.quote, guess.dial.input));
        Self {
            drawn: guesses.iter().map(|guess| Drawn::new(guess.range)).collect(),
            valuer: Valuer::new(&setting),
            presents: Vec::with_capacity(setting.quotes.len()),
            guesses,
            setting,
        }
    }

    /// The rows of chance of all guesses, for one purpose.
    pub(super) fn streams(&self, seed: u64, purpose: u64) -> Vec<Stream> {
        self.guesses.iter().map(|guess| Stream::of(seed, guess.dial, purpose)).collect()
    }

    /// The value of a guess at an even chance.
    pub(super) fn drawn(&self, guess: usize, even: f64) -> f64 {
        self.drawn[guess].at(even)
    }

    /// Turns a guess to a value.
    pub(super) fn set(&mut self, guess: usize, value: f64) {
        self.turn(self.guesses[guess].dial, value);
    }

    /// Turns any figure to a value.
    pub(super) fn turn(&mut self, dial: Dial, value: f64) {
        let terms = &mut self.setting.terms;
        match dial.input {
            Input::HourValue => terms.hour_value = value,
            Input::Interest => terms.interest = value,
            Input::Years => terms.years = value,
            input => {
                let at = self.setting.quotes.iter().position(|quote| Some(quote.id) == dial.quote);
                let Some(at) = at else { return };
                if let Some(figure) = of(&mut self.setting.quotes[at], input) {
                    *figure = value;
                } else {
                    self.setting.quotes[at].life = Some(value);
                    self.valuer.live(at, &self.setting);
                }
            }
        }
        if matches!(dial.input, Input::Interest | Input::Years) {
            (0..self.setting.quotes.len()).for_each(|at| self.valuer.live(at, &self.setting));
        }
    }

    /// What every quote is worth now, as the figures stand.
    pub(super) fn presents(&mut self) -> &[f64] {
        self.valuer.presents(&self.setting, &mut self.presents);
        &self.presents
    }
}

/// Draws the unsure figures of a part's quotes once, and sets them: of a seed, which draw.
pub(crate) fn drawn_figures(
    job: &Job,
    part: Id,
    today: Option<Day>,
    given: Option<&WhatIf>,
    (seed, draw): (u64, u64),
    set: &mut WhatIf,
) {
    let (setting, spreads) = unsure(job, part, today, given);
    let model = Model::new(&setting, &guesses(&setting, &spreads));
    for (guess, stream) in model.streams(seed, 0).iter().enumerate() {
        let Dial { input, quote: Some(quote) } = model.guesses[guess].dial else { continue };
        set.quotes.entry(quote).or_default().insert(input, model.drawn(guess, stream.even(draw)));
    }
}

/// Which of some costs is the least; of equal ones the first.
pub(super) fn least(costs: &[f64]) -> Option<usize> {
    (0..costs.len()).min_by(|a, b| costs[*a].total_cmp(&costs[*b]))
}
