use asfound_core::job::Change;
use asfound_core::job::vocabulary::{Certainty, Correctness, Route};
use asfound_core::quantity::{Chance, Currency, Day, ExchangeRate, Minutes, Money};

/// A quote while it is written: its figures in the order in which they were said.
pub(super) struct Quote {
    pub(super) changes: Vec<Change>,
    pub(super) is_taken: bool,
    /// Which of the quotes before it is turned to when it fails.
    pub(super) falls_back_on: Option<usize>,
}

pub(super) const fn pounds(minor: i64) -> Money {
    Money::from_minor(minor, Currency::GBP)
}

/// Nothing is said of it but its route.
pub(super) fn by(route: Route) -> Quote {
    Quote { changes: vec![Change::Route(route)], is_taken: false, falls_back_on: None }
}

/// Cleaned and used again: so many minutes, so many of 100 fail.
pub(super) fn again(minutes: i64, fails: i64) -> Quote {
    by(Route::UseAgain).own(minutes).fails(fails)
}

/// Bought from somebody: pence.
pub(super) fn buy(from: &str, pence: i64) -> Quote {
    by(Route::Buy).from(from).cash(pence).own(10)
}

impl Quote {
    fn with(mut self, change: Change) -> Self {
        self.changes.push(change);
        self
    }

    pub(super) fn from(self, who: &str) -> Self {
        self.with(Change::From(who.into()))
    }

    pub(super) fn cash(self, pence: i64) -> Self {
        self.with(Change::Cash(pounds(pence)))
    }

    /// In euros, at so many millionths of a pound.
    pub(super) fn euros(self, cents: i64, rate: i64) -> Self {
        self.with(Change::Cash(Money::from_minor(cents, Currency::EUR))).with(Change::ExchangeRate(ExchangeRate(rate)))
    }

    pub(super) fn cash_between(self, least: i64, most: i64) -> Self {
        self.with(Change::CashLeast(pounds(least))).with(Change::CashMost(pounds(most)))
    }

    pub(super) fn cash_is(self, sure: Certainty) -> Self {
        self.with(Change::CashCertainty(sure))
    }

    pub(super) fn own(self, minutes: i64) -> Self {
        self.with(Change::OwnTime(Minutes::new(minutes)))
    }

    pub(super) fn own_between(self, least: i64, most: i64) -> Self {
        self.with(Change::OwnTimeLeast(Minutes::new(least))).with(Change::OwnTimeMost(Minutes::new(most)))
    }

    pub(super) fn own_is(self, sure: Certainty) -> Self {
        self.with(Change::OwnTimeCertainty(sure))
    }

    pub(super) fn fails(self, of_100: i64) -> Self {
        self.with(Change::Chance(Chance::of_100(of_100)))
    }

    pub(super) fn fails_between(self, least: i64, most: i64) -> Self {
        self.with(Change::ChanceLeast(Chance::of_100(least))).with(Change::ChanceMost(Chance::of_100(most)))
    }

    pub(super) fn chance_is(self, sure: Certainty) -> Self {
        self.with(Change::ChanceCertainty(sure))
    }

    /// Minutes to strip again when it fails.
    pub(super) fn strip(self, minutes: i64) -> Self {
        self.with(Change::StripAgain(Minutes::new(minutes)))
    }

    pub(super) fn at_bench(self) -> Self {
        self.with(Change::FailsAtBench(true))
    }

    pub(super) fn freight(self, pence: i64) -> Self {
        self.with(Change::Freight(pounds(pence)))
    }

    pub(super) fn tax(self, pence: i64) -> Self {
        self.with(Change::Tax(pounds(pence)))
    }

    pub(super) fn duty(self, cents: i64) -> Self {
        self.with(Change::Duty(Money::from_minor(cents, Currency::EUR)))
    }

    /// Abrasive, paint, gas.
    pub(super) fn uses_up(self, pence: i64) -> Self {
        self.with(Change::Consumables(pounds(pence)))
    }

    pub(super) fn surcharge(self, pence: i64, withheld_of_100: i64) -> Self {
        self.with(Change::Surcharge(pounds(pence))).with(Change::Withheld(Chance::of_100(withheld_of_100)))
    }

    /// Months.
    pub(super) fn lasts(self, months: i64) -> Self {
        self.with(Change::Life(months))
    }

    pub(super) fn lasts_between(self, least: i64, most: i64) -> Self {
        self.with(Change::LifeLeast(least)).with(Change::LifeMost(most))
    }

    pub(super) fn life_is(self, sure: Certainty) -> Self {
        self.with(Change::LifeCertainty(sure))
    }

    /// Days.
    pub(super) fn waits(self, days: i64) -> Self {
        self.with(Change::Wait(days))
    }

    pub(super) fn waits_between(self, least: i64, most: i64) -> Self {
        self.with(Change::WaitLeast(least)).with(Change::WaitMost(most))
    }

    pub(super) fn wait_is(self, sure: Certainty) -> Self {
        self.with(Change::WaitCertainty(sure))
    }

    pub(super) fn until(self, day: &str) -> Self {
        match Day::parse(day) {
            Some(day) => self.with(Change::ValidUntil(day)),
            None => self,
        }
    }

    pub(super) fn is(self, correctness: Correctness) -> Self {
        self.with(Change::Correctness(correctness))
    }

    pub(super) fn remark(self, words: &str) -> Self {
        self.with(Change::Remark(words.into()))
    }

    pub(super) const fn else_as(mut self, quote: usize) -> Self {
        self.falls_back_on = Some(quote);
        self
    }

    /// This is the one that is chosen.
    pub(super) const fn taken(mut self) -> Self {
        self.is_taken = true;
        self
    }
}
