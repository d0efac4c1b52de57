use super::break_even::break_evens;
use super::expected::{Cost, cheapest, costs};
use super::figures::{Terms, figures, in_job_currency, whole};
use super::flips::flips;
use super::input::Setting;
use super::kit::{KitView, kit, kits_for, shared};
use super::limits::{Barred, PRICES, WhyNot};
use super::rated::{paid, rated, terms_rate};
use super::spread::{Spread, open_with, ranges, spreads};
use super::starting::starting_values;
use super::view::{CostLine, CostView, LineKind, Overtaken, QuoteCost};
use super::what_if::WhatIf;
use crate::job::vocabulary::{Certainty, Route};
use crate::job::{Job, RecordView};
use crate::quantity::{Day, Estimate, Minutes, Money};
use crate::record::{FieldName, Id, Item, Kind};

/// The quotes of a part as they stand in the record.
struct Quoted<'a> {
    items: Vec<(&'a Item, Option<WhyNot>)>,
    setting: Setting,
    kits: Vec<KitView>,
}

/// The quotes of a part with what they cost, without what would change it.
pub(super) struct Priced<'a> {
    items: Vec<(&'a Item, Option<WhyNot>)>,
    setting: Setting,
    spreads: Vec<Spread>,
    kits: Vec<KitView>,
    best: Option<usize>,
    pub(super) views: Vec<QuoteCost>,
    pub(super) chosen: Option<RecordView>,
    pub(super) overtaken: Option<Overtaken>,
    /// It is decided, although nobody chose.
    pub(super) unasked: bool,
}

impl Priced<'_> {
    /// The allowed quote of the least present value.
    pub(super) fn cheapest(&self) -> Option<Id> {
        self.best.map(|at| self.setting.quotes[at].id)
    }

    /// A quote with what it is worth when nothing of it is shared with other parts.
    pub(super) fn whole(&self, quote: Id) -> Option<QuoteCost> {
        let mut view = self.views.iter().find(|view| view.id == quote)?.clone();
        let mut quotes = self.setting.quotes.clone();
        let at = quotes.iter().position(|figures| figures.id == quote)?;
        quotes[at].shared = 0.0;
        let cost = costs(&quotes, &self.setting.terms)[at];
        view.present.minor = cost.present();
        view.yearly.minor = cost.yearly(&self.setting.terms);
        Some(view)
    }

    /// The quote that was chosen.
    pub(super) fn chosen_quote(&self) -> Option<Id> {
        self.chosen.as_ref().and_then(|choice| choice.values.quote)
    }

    /// The quote that counts for a decided part: the chosen one; the cheapest where it is decided unasked.
    pub(super) fn decided_quote(&self) -> Option<Id> {
        self.chosen_quote().or_else(|| self.cheapest().filter(|_| self.unasked))
    }
}

/// The quotes of a part, side by side. `today` says which have run out; `set` turns figures before anything is worked out.
#[must_use]
pub fn cost(job: &Job, part: Id, today: Option<Day>, set: Option<&WhatIf>) -> CostView {
    let currency = job.settings().currency;
    let priced = priced(job, part, today, set);
    let (best, terms) = (priced.best, priced.setting.terms);
    CostView {
        part,
        currency,
        hour_value: Estimate::from_minor(terms.hour_value, currency),
        interest: terms.interest,
        years_kept: terms.years,
        cheapest: priced.cheapest(),
        open_with: best.map(|best| open_with(&priced.setting, &priced.spreads, best)).unwrap_or_default(),
        flips: flips(&priced.setting),
        break_evens: break_evens(&priced.setting),
        kits: priced.kits,
        overtaken: priced.overtaken,
        chosen: priced.chosen,
        left: Barred::of(job, part).map(|barred| barred.left()).unwrap_or_default(),
        starting: starting_values().to_vec(),
        quotes: priced.views,
    }
}

/// The quotes of a part with what they cost.
pub(super) fn priced<'a>(job: &'a Job, part: Id, today: Option<Day>, set: Option<&WhatIf>) -> Priced<'a> {
    let Quoted { items, mut setting, kits } = quoted(job, part, today);
    if let Some(set) = set {
        set.turn(&mut setting);
    }
    let costs = costs(&setting.quotes, &setting.terms);
    let best = cheapest(&setting.quotes, &costs);
    let spreads = spreads_of(job, &items, &setting);
    let ranges = ranges(&setting, &spreads);
    let chosen = job.choice_of(part).and_then(|choice| job.record_view(choice));
    let mut priced = Priced {
        items,
        setting,
        spreads,
        kits,
        best,
        views: Vec::new(),
        chosen,
        overtaken: None,
        unasked: job.is_decided_unasked(part),
    };
    let all = costs.iter().zip(ranges).enumerate();
    priced.views = all.filter_map(|(at, (cost, range))| view(job, &priced, at, cost, range)).collect();
    let quote = priced.chosen_quote();
    let threshold = job.settings().threshold;
    priced.overtaken = quote.and_then(|quote| overtaken(&priced.views, priced.cheapest()?, quote, threshold));
    priced
}

/// The quotes of a part that may be chosen, with how far their figures may be off.
pub(super) fn unsure(job: &Job, part: Id, today: Option<Day>, set: Option<&WhatIf>) -> (Setting, Vec<Spread>) {
    let Quoted { items, mut setting, .. } = quoted(job, part, today);
    if let Some(set) = set {
        set.turn(&mut setting);
    }
    let mut spreads = spreads_of(job, &items, &setting);
    setting.quotes.retain(|quote| quote.allowed);
    spreads.retain(|spread| setting.quotes.iter().any(|quote| Some(quote.id) == spread.dial.quote));
    (setting, spreads)
}

/// One quote of a part, or a kit that covers it, as it is now; nothing when it is none of them, or was struck out since.
#[must_use]
pub(crate) fn quote_now(job: &Job, part: Id, quote: Id) -> Option<QuoteCost> {
    priced(job, part, None, None).views.into_iter().find(|view| view.id == quote)
}

/// The quote that counts for a decided part as it is now, a kit without what others save by it: it is paid whole, however many
/// parts it was chosen for. Nothing when it is not decided, has no quote, or that was struck out since.
#[must_use]
pub(crate) fn decided_now(job: &Job, part: Id, today: Option<Day>) -> Option<QuoteCost> {
    if job.choice_of(part).is_none() && !job.is_decided_unasked(part) {
        return None;
    }
    let priced = priced(job, part, today, None);
    priced.whole(priced.decided_quote()?)
}

/// What may be chosen for a part, each as it costs when nothing of it is shared with other parts.
pub(crate) struct Offers {
    /// Quotes that may be chosen; of a decided part the one it was decided for, even where that may no longer be chosen.
    pub(crate) quotes: Vec<QuoteCost>,
    /// Kits that cover it.
    pub(crate) kits: Vec<KitView>,
    /// The quote of the least present value, by itself.
    pub(crate) cheapest: Option<Id>,
    /// Whether somebody chose, and that stays.
    pub(crate) decided: bool,
    /// What somebody chose.
    pub(crate) chosen: Option<Id>,
}

/// With `reopen` a decided part may take any of its quotes, too.
pub(crate) fn offers(job: &Job, part: Id, today: Option<Day>, set: Option<&WhatIf>, reopen: bool) -> Offers {
    let priced = priced(job, part, today, set);
    let chosen = priced.chosen_quote().filter(|chosen| priced.views.iter().any(|view| view.id == *chosen));
    let is_open = |view: &&QuoteCost| match chosen {
        Some(chosen) => view.id == chosen || (reopen && view.allowed),
        None => view.allowed,
    };
    // A kit by itself: neither less what others save by it, nor with what it holds too few of.
    let mut alone = priced.setting.quotes.clone();
    for kit in &priced.kits {
        if let Some(figures) = alone.iter_mut().find(|figures| figures.id == kit.quote) {
            figures.cash -= whole(shared(kit, part).1);
            figures.shared = 0.0;
        }
    }
    let alone = alone.iter().zip(costs(&alone, &priced.setting.terms)).collect::<Vec<_>>();
    let quotes = priced.views.iter().filter(is_open).cloned().map(|mut view| {
        let own = alone.iter().find(|(figures, _)| figures.id == view.id && view.route == Route::Kit);
        if let Some((_, cost)) = own {
            view.present.minor = cost.present();
        }
        view
    });
    let quotes = quotes.collect();
    Offers { quotes, cheapest: priced.cheapest(), decided: chosen.is_some() && !reopen, chosen, kits: priced.kits }
}

/// Whether a chosen quote is dearer than the cheapest by more than a threshold.
fn overtaken(views: &[QuoteCost], best: Id, chosen: Id, threshold: Money) -> Option<Overtaken> {
    let of = |id: Id| views.iter().find(|view| view.id == id).map(|view| view.present);
    let saves = of(chosen)?.plus_minor(-of(best)?.minor);
    (saves.minor > whole(threshold.minor)).then_some(Overtaken { by: best, saves })
}

/// The quotes of a part, and the kits that cover it, in order of id, with their figures and the terms of the job.
fn quoted(job: &Job, part: Id, today: Option<Day>) -> Quoted<'_> {
    let settings = job.settings();
    let kits: Vec<KitView> = kits_for(job, part).into_iter().filter_map(|quote| kit(job, quote, today)).collect();
    let mut ids: Vec<Id> = job.children(Kind::Quote, FieldName::Of, part).collect();
    ids.extend(kits.iter().map(|kit| kit.quote));
    ids.sort_unstable();
    ids.dedup();
    let mut found = Quoted {
        items: Vec::new(),
        setting: Setting {
            quotes: Vec::new(),
            terms: Terms {
                hour_value: whole(settings.hour_value.minor),
                interest: whole(settings.interest) / 10_000.0,
                years: whole(settings.years_kept),
            },
        },
        kits: Vec::new(),
    };
    let Some(barred) = Barred::of(job, part) else { return found };
    for id in ids {
        let Some(item) = job.item(id) else { continue };
        let why = barred.why_not_quote(job, item, today);
        let Some(mut figures) = figures(job, id, item, why.is_none()) else { continue };
        if let Some(kit) = kits.iter().find(|kit| kit.quote == id) {
            let (saved, short) = shared(kit, part);
            figures.shared = whole(saved);
            figures.cash += whole(short);
        }
        found.items.push((item, why));
        found.setting.quotes.push(figures);
    }
    found.kits = kits;
    found
}

fn spreads_of(job: &Job, items: &[(&Item, Option<WhyNot>)], setting: &Setting) -> Vec<Spread> {
    let all = items.iter().zip(&setting.quotes);
    all.flat_map(|((item, _), figures)| spreads(figures.id, item, setting, |money| in_job_currency(job, item, money)))
        .collect()
}

fn view(job: &Job, priced: &Priced<'_>, at: usize, cost: &Cost, (low, high): (f64, f64)) -> Option<QuoteCost> {
    let (item, why) = priced.items[at];
    let figures = &priced.setting.quotes[at];
    let route: Route = item.read(FieldName::Route)?;
    let currency = job.settings().currency;
    let in_currency = |minor| Estimate::from_minor(minor, currency);
    let fallback = cost.fallback.filter(|_| figures.chance > 0.0);
    let after = priced.setting.quotes.iter().position(|other| Some(other.id) == fallback);
    let after = after.map(|at| priced.items[at].0);
    let lines = lines(item, after, cost, in_currency);
    let (sum, guessed) = lines.iter().fold((0.0, 0.0), |(sum, guessed), line| {
        let size = line.amount.minor.abs();
        (sum + size, if line.guess { guessed + size } else { guessed })
    });
    let cash: Option<Money> = paid(job, item, FieldName::Cash);
    let own_time: Minutes = item.read(FieldName::OwnTime).unwrap_or_default();
    let certainty = |field, given: bool| item.read::<Certainty>(field).filter(|_| given);
    let guess = lines.iter().any(|line| line.guess);
    Some(QuoteCost {
        id: figures.id,
        route,
        from: item.read(FieldName::From),
        allowed: why.is_none(),
        why,
        expected: in_currency(cost.expected()),
        present: in_currency(cost.present()),
        yearly: in_currency(cost.yearly(&priced.setting.terms)),
        renewals: cost.times,
        low: in_currency(low),
        high: in_currency(high),
        guessed: if sum > 0.0 { guessed / sum } else { 0.0 },
        peak: peak(job, item),
        cash,
        rated: rated(job, item),
        duty_rate: terms_rate(job, item, FieldName::Duty).filter(|_| figures.duty > 0.0),
        tax_rate: terms_rate(job, item, FieldName::Tax).filter(|_| figures.tax > 0.0),
        own_time,
        chance: item.read(FieldName::Chance).unwrap_or_default(),
        strip_again: item.read(FieldName::StripAgain).unwrap_or_default(),
        guess,
        cash_certainty: certainty(FieldName::CashCertainty, cash.is_some()),
        own_time_certainty: certainty(FieldName::OwnTimeCertainty, own_time.0 > 0),
        chance_certainty: certainty(FieldName::ChanceCertainty, figures.chance > 0.0),
        fallback,
        fails_into_nothing: figures.chance > 0.0 && cost.fallback.is_none(),
        lines,
        record: job.record_view(figures.id)?,
    })
}

/// All that is paid at first, in the job's currency.
pub(super) fn peak(job: &Job, item: &Item) -> Money {
    let minor = PRICES.into_iter().filter_map(|field| in_job_currency(job, item, paid(job, item, field)?));
    Money::from_minor(minor.fold(0, i64::saturating_add), job.settings().currency)
}

/// The named lines; `after` is the quote that is turned to first.
fn lines(item: &Item, after: Option<&Item>, cost: &Cost, in_currency: impl Fn(f64) -> Estimate) -> Vec<CostLine> {
    let is_guess = |item: &Item, field| item.read::<Certainty>(field).is_some_and(|word| word != Certainty::Sure);
    let cash = is_guess(item, FieldName::CashCertainty);
    let own_time = is_guess(item, FieldName::OwnTimeCertainty);
    let then = after
        .is_some_and(|after| is_guess(after, FieldName::CashCertainty) || is_guess(after, FieldName::OwnTimeCertainty));
    let risk = is_guess(item, FieldName::ChanceCertainty) || then;
    let life = is_guess(item, FieldName::LifeCertainty);
    let all = [
        (LineKind::Cash, cost.cash, cash),
        (LineKind::Freight, cost.freight, false),
        (LineKind::Tax, cost.tax, cash),
        (LineKind::Duty, cost.duty, cash),
        (LineKind::Consumables, cost.consumables, false),
        (LineKind::Surcharge, cost.surcharge, false),
        (LineKind::Shared, cost.shared, false),
        (LineKind::OwnTime, cost.own_time, own_time),
        (LineKind::Risk, cost.risk, risk),
        (LineKind::Renewals, cost.renewals, life || cash || own_time || risk),
    ];
    let always = |kind| matches!(kind, LineKind::Cash | LineKind::OwnTime | LineKind::Risk);
    all.into_iter()
        .filter(|(kind, amount, _)| *amount != 0.0 || always(*kind))
        .map(|(kind, amount, guess)| CostLine { kind, amount: in_currency(amount), guess: guess && amount != 0.0 })
        .collect()
}
