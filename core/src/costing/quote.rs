use crate::job::Job;
use crate::job::vocabulary::Route;
use crate::quantity::{Chance, Currency, Minutes, Money};
use crate::record::{FieldName, Id, Item, Kind, stored_enum};

/// The figures of one quote, in one currency: what the formulas work on.
///
/// What was not said counts as nothing: no cash, no hours, no chance of failing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Figures {
    /// Which quote.
    pub id: Id,
    /// Cash in minor units of the job's currency.
    pub cash: i64,
    /// Own hours in minutes.
    pub own_time: Minutes,
    /// The chance that it fails.
    pub chance: Chance,
    /// Own hours to strip again when it has failed, in minutes.
    pub strip_again: Minutes,
    /// Whether it may be chosen at all.
    pub allowed: bool,
}

stored_enum! {
    /// Why a quote cannot be chosen.
    pub enum WhyNot {
        /// No replacement is to be had.
        CannotBeBought = "cannot-be-bought",
        /// Renewed whatever it looks like.
        SingleUse = "single-use",
        /// Its price is in a currency other than the job's.
        OtherCurrency = "other-currency",
        /// It was missing from the start: there is nothing to use again or to work on.
        NothingThere = "nothing-there",
    }
}

/// Why a route is not open for a part; nothing when it is.
pub(super) fn why_not(job: &Job, part: &Item, route: Route, cash: Option<Money>) -> Option<WhyNot> {
    let currency = job.settings().currency;
    let works_on_old = matches!(route, Route::UseAgain | Route::RepairHere | Route::SendOut | Route::Irreplaceable);
    if cash.is_some_and(|cash| cash.currency != currency) {
        Some(WhyNot::OtherCurrency)
    } else if part.is(FieldName::CannotBeBought) && matches!(route, Route::Buy | Route::Kit | Route::Exchange) {
        Some(WhyNot::CannotBeBought)
    } else if part.is(FieldName::SingleUse) && matches!(route, Route::UseAgain) {
        Some(WhyNot::SingleUse)
    } else if part.is(FieldName::MissingFromStart) && works_on_old {
        Some(WhyNot::NothingThere)
    } else {
        None
    }
}

/// Why a stored quote cannot be chosen; nothing when it can, or when it does not say its part and route.
#[must_use]
pub(crate) fn why_not_choose(job: &Job, quote: Id) -> Option<WhyNot> {
    let item = job.item_of(Kind::Quote, quote)?;
    let part = job.item_of(Kind::Part, item.read(FieldName::Of)?)?;
    why_not(job, part, item.read(FieldName::Route)?, item.read(FieldName::Cash))
}

/// The figures of a stored quote.
pub(super) fn figures(id: Id, quote: &Item, currency: Currency, allowed: bool) -> Figures {
    let cash: Option<Money> = quote.read(FieldName::Cash);
    Figures {
        id,
        cash: cash.filter(|cash| cash.currency == currency).map_or(0, |cash| cash.minor),
        own_time: quote.read(FieldName::OwnTime).unwrap_or_default(),
        chance: quote.read(FieldName::Chance).unwrap_or_default(),
        strip_again: quote.read(FieldName::StripAgain).unwrap_or_default(),
        allowed,
    }
}
