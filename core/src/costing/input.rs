use serde::{Deserialize, Serialize};

use super::figures::{Figures, Terms};
use crate::quantity::bounds;
use crate::record::Id;

/// One figure on which the order of the quotes depends, in the unit in which it is answered and set.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum Input {
    /// The price, in minor units of the job's currency.
    Cash,
    /// Freight, in minor units.
    Freight,
    /// Tax, in minor units.
    Tax,
    /// Duty, in minor units.
    Duty,
    /// What the work uses up, in minor units.
    Consumables,
    /// The surcharge, in minor units.
    Surcharge,
    /// The chance that the surcharge is withheld, from 0 to 1.
    Withheld,
    /// Own hours, in minutes.
    OwnTime,
    /// Own hours to strip again, in minutes.
    StripAgain,
    /// The chance that it fails, from 0 to 1.
    Chance,
    /// Service life, in months.
    Life,
    /// What an own hour is worth, in minor units; of the job.
    HourValue,
    /// The yearly rate of interest, as a share; of the job.
    Interest,
    /// The years that the vehicle will be kept; of the job.
    Years,
}

/// A figure of one quote, or of the job.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Dial {
    /// Which figure.
    pub input: Input,
    /// Whose; nothing for those of the job.
    pub quote: Option<Id>,
}

/// The figures of a comparison: quotes and terms.
#[derive(Debug, Clone, PartialEq)]
pub struct Setting {
    /// The quotes.
    pub quotes: Vec<Figures>,
    /// What holds for all of them.
    pub terms: Terms,
}

impl Input {
    /// Those of a quote.
    pub(super) const OF_QUOTE: [Self; 11] = [
        Self::Cash,
        Self::Freight,
        Self::Tax,
        Self::Duty,
        Self::Consumables,
        Self::Surcharge,
        Self::Withheld,
        Self::OwnTime,
        Self::StripAgain,
        Self::Chance,
        Self::Life,
    ];

    /// Those of the job.
    pub(super) const OF_JOB: [Self; 3] = [Self::HourValue, Self::Interest, Self::Years];

    /// The least that is accepted: below a month a life would be none at all, and of no years there is no cost a year.
    pub(super) const fn least(self) -> f64 {
        match self {
            Self::Life => super::figures::whole(bounds::LIFE.least),
            Self::Years => super::figures::whole(bounds::YEARS.least),
            _ => 0.0,
        }
    }

    /// The most that it can be.
    pub(super) const fn most(self) -> f64 {
        match self {
            Self::Withheld | Self::Chance => 1.0,
            Self::OwnTime | Self::StripAgain => super::figures::whole(bounds::MINUTES.most),
            Self::Life => super::figures::whole(bounds::LIFE.most),
            Self::Interest => 0.5,
            Self::Years => super::figures::whole(bounds::YEARS.most),
            _ => super::figures::whole(bounds::MONEY.most),
        }
    }
}

impl Setting {
    /// What a figure is now; nothing when there is no such quote. A life that was not said is that of the keeping.
    #[must_use]
    pub fn read(&self, dial: Dial) -> Option<f64> {
        let quote = || self.quotes.iter().find(|quote| Some(quote.id) == dial.quote);
        Some(match dial.input {
            Input::HourValue => self.terms.hour_value,
            Input::Interest => self.terms.interest,
            Input::Years => self.terms.years,
            Input::Life => quote()?.life.unwrap_or(self.terms.years * 12.0),
            input => *of(&mut quote()?.clone(), input)?,
        })
    }

    /// The same with one figure turned to another value, kept within what it can be.
    #[must_use]
    pub fn turned(&self, dial: Dial, to: f64) -> Self {
        let mut turned = self.clone();
        let to = to.clamp(0.0, dial.input.most());
        match dial.input {
            Input::HourValue => turned.terms.hour_value = to,
            Input::Interest => turned.terms.interest = to,
            Input::Years => turned.terms.years = to,
            Input::Life => turned.each(dial, |quote| quote.life = Some(to)),
            input => turned.each(dial, |quote| {
                if let Some(figure) = of(quote, input) {
                    *figure = to;
                }
            }),
        }
        turned
    }

    fn each(&mut self, dial: Dial, turn: impl Fn(&mut Figures)) {
        self.quotes.iter_mut().filter(|quote| Some(quote.id) == dial.quote).for_each(turn);
    }
}

/// The figure of a quote in its place; nothing for a life, and for those of the job.
pub(super) fn of(quote: &mut Figures, input: Input) -> Option<&mut f64> {
    Some(match input {
        Input::Cash => &mut quote.cash,
        Input::Freight => &mut quote.freight,
        Input::Tax => &mut quote.tax,
        Input::Duty => &mut quote.duty,
        Input::Consumables => &mut quote.consumables,
        Input::Surcharge => &mut quote.surcharge,
        Input::Withheld => &mut quote.withheld,
        Input::OwnTime => &mut quote.own_time,
        Input::StripAgain => &mut quote.strip_again,
        Input::Chance => &mut quote.chance,
        Input::Life | Input::HourValue | Input::Interest | Input::Years => return None,
    })
}
