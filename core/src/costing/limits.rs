use super::rated::{lacks, said};
use crate::inspect::{Nature, ReasonFrom, Verdict, nature_of, verdict_if_touched};
use crate::job::Job;
use crate::job::vocabulary::{Aim, Correctness, Route};
use crate::quantity::{Currency, Day, ExchangeRate};
use crate::record::{FieldName, Id, Item, Kind, stored_enum};

stored_enum! {
    /// Why a quote cannot be chosen.
    pub enum WhyNot {
        /// No replacement is to be had.
        CannotBeBought = "cannot-be-bought",
        /// Renewed whatever it looks like.
        SingleUse = "single-use",
        /// Its price is in a currency other than the job's, and no rate is given.
        OtherCurrency = "other-currency",
        /// It was missing from the start: there is nothing to use again or to work on.
        NothingThere = "nothing-there",
        /// It is less original than the aim of the job asks for.
        BelowAim = "below-aim",
        /// A safety-critical part is not repaired at home.
        Safety = "safety",
        /// It was valid until a day that is past.
        RunOut = "run-out",
        /// The trade does not take this route with such a part.
        NotInTrade = "not-in-trade",
        /// It was judged to be scrap.
        JudgedScrap = "judged-scrap",
        /// It was judged to need work before it is used again.
        NeedsRework = "needs-rework",
        /// It is safety-critical, and not judged fit yet: what is not proved counts as bad.
        WaitsForProof = "waits-for-proof",
        /// Its price is by area or mass, and nobody said how large or how heavy the part is.
        AmountMissing = "amount-missing",
    }
}

/// What rules routes out for a part, whatever its quotes say: by what it is, and by what it was judged to be. Worked out once
/// for all its quotes.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Barred<'a> {
    item: &'a Item,
    nature: Nature,
    /// What it was judged to be, and whether that is by more than being renewed whatever it looks like.
    judged: Option<(Verdict, bool)>,
}

impl<'a> Barred<'a> {
    pub(crate) fn of(job: &'a Job, part: Id) -> Option<Self> {
        let item = job.item(part)?;
        let judged = verdict_if_touched(job, part)
            .map(|(verdict, reasons)| (verdict, reasons.iter().any(|reason| reason.from != ReasonFrom::SingleUse)));
        Some(Self { item, nature: nature_of(job, item), judged })
    }

    /// Why no quote of a route can be chosen; nothing when one can.
    pub(crate) fn why_not(&self, route: Route) -> Option<WhyNot> {
        let works_on_old = matches!(route, Route::UseAgain | Route::RepairHere | Route::SendOut | Route::Irreplaceable);
        let bought = matches!(route, Route::Buy | Route::Kit | Route::Exchange);
        let reasons = [
            (self.item.is(FieldName::MissingFromStart) && works_on_old, WhyNot::NothingThere),
            (self.nature.single_use && route == Route::UseAgain, WhyNot::SingleUse),
            (self.item.is(FieldName::CannotBeBought) && bought, WhyNot::CannotBeBought),
            (self.nature.safety_critical && route == Route::RepairHere, WhyNot::Safety),
            (self.nature.refuses(route), WhyNot::NotInTrade),
        ];
        reasons.into_iter().find_map(|(holds, why)| holds.then_some(why)).or_else(|| self.judged_away(route))
    }

    /// The routes that are left, in the order in which one thinks of them: again where it is fit, then the usual ones of its
    /// family, then what is usual anywhere.
    pub(super) fn left(&self) -> Vec<Route> {
        let again: &[Route] = if matches!(self.judged, Some((Verdict::Fit, _))) { &[Route::UseAgain] } else { &[] };
        let usual = self.nature.family.map(|family| family.otherwise).unwrap_or_default();
        let anywhere = [Route::RepairHere, Route::Buy, Route::SendOut, Route::Donor];
        let mut left = Vec::new();
        for route in again.iter().chain(usual).chain(&anywhere).chain(Route::ALL) {
            if !left.contains(route) && self.why_not(*route).is_none() {
                left.push(*route);
            }
        }
        left
    }

    /// Why what was found rules a route out. What cannot be bought may still be worked on, whatever it looks like.
    fn judged_away(&self, route: Route) -> Option<WhyNot> {
        if !matches!(route, Route::UseAgain | Route::RepairHere | Route::SendOut) {
            return None;
        }
        let again = route == Route::UseAgain;
        let waits = again && self.nature.safety_critical && self.nature.family.is_some();
        let kept = self.item.is(FieldName::CannotBeBought) && !again;
        match self.judged {
            Some((Verdict::Scrap, true)) if !kept => Some(WhyNot::JudgedScrap),
            Some((Verdict::Rework, true)) if again => Some(WhyNot::NeedsRework),
            Some((Verdict::NotKnown, _)) | None if waits => Some(WhyNot::WaitsForProof),
            _ => None,
        }
    }

    /// Why a quote cannot be chosen; nothing when it can. Without a day nothing runs out.
    pub(super) fn why_not_quote(&self, job: &Job, quote: &Item, today: Option<Day>) -> Option<WhyNot> {
        let settings = job.settings();
        let route: Route = quote.read(FieldName::Route)?;
        if !is_in_one_currency(quote, settings.currency) {
            return Some(WhyNot::OtherCurrency);
        }
        if lacks(job, quote).is_some() {
            return Some(WhyNot::AmountMissing);
        }
        let reasons = [
            (quote.read(FieldName::Correctness).is_some_and(|offer| !reaches(offer, settings.aim)), WhyNot::BelowAim),
            (is_past(quote.read(FieldName::ValidUntil), today), WhyNot::RunOut),
        ];
        self.why_not(route).or_else(|| reasons.into_iter().find_map(|(holds, why)| holds.then_some(why)))
    }
}

/// Why a stored quote cannot be chosen; nothing when it can, or when it does not say its part and route.
#[must_use]
pub(crate) fn why_not_choose(job: &Job, quote: Id) -> Option<WhyNot> {
    let item = job.item_of(Kind::Quote, quote)?;
    let part: Id = item.read(FieldName::Of)?;
    job.item_of(Kind::Part, part)?;
    Barred::of(job, part)?.why_not_quote(job, item, None)
}

/// Whether an offer is as original as the aim asks for (common practice, no source): for show standard it is original or
/// cannot be told from it; where the original is conserved, nothing home made or of another design; else anything goes.
const fn reaches(offer: Correctness, aim: Aim) -> bool {
    match aim {
        Aim::HardUse | Aim::RegularRoadUse => true,
        Aim::Conserve => !matches!(offer, Correctness::Uprated | Correctness::HomeMade),
        Aim::ShowStandard => {
            matches!(offer, Correctness::Original | Correctness::NewOldStock | Correctness::FaithfulReproduction)
        }
    }
}

fn is_past(until: Option<Day>, today: Option<Day>) -> bool {
    until.zip(today).is_some_and(|(until, today)| until < today)
}

/// All that a quote may be paid in, the surcharge, which comes back, last.
pub(crate) const PRICES: [FieldName; 6] = [
    FieldName::Cash,
    FieldName::Freight,
    FieldName::Tax,
    FieldName::Duty,
    FieldName::Consumables,
    FieldName::Surcharge,
];

/// The currency other than the job's in which a quote is; nothing when there is none, or more than one.
pub(super) fn foreign(quote: &Item, currency: Currency) -> Option<Currency> {
    let mut others = PRICES.into_iter().filter_map(|field| said(quote, field)).map(|(_, money)| money.currency);
    let first = others.find(|other| *other != currency)?;
    others.all(|other| other == currency || other == first).then_some(first)
}

/// Which price of a quote cannot be added to the others: it is in another currency, and no rate is given for it.
#[must_use]
pub(crate) fn stray_price(quote: &Item, currency: Currency) -> Option<FieldName> {
    let mut said = PRICES.into_iter().filter_map(|field| said(quote, field));
    let foreign = said.find(|(_, money)| money.currency != currency);
    foreign.map(|(field, _)| field).filter(|_| !is_in_one_currency(quote, currency))
}

/// Whether all prices of a quote can be added: they are in the job's currency, or in one other with a rate for it.
fn is_in_one_currency(quote: &Item, currency: Currency) -> bool {
    let is_home = |field| said(quote, field).is_none_or(|(_, money)| money.currency == currency);
    PRICES.into_iter().all(is_home)
        || (foreign(quote, currency).is_some() && quote.read::<ExchangeRate>(FieldName::ExchangeRate).is_some())
}
