use std::cmp::Reverse;
use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use super::cost::{peak, priced};
use crate::job::{Job, PhotoView, RecordView};
use crate::quantity::{Day, Estimate, Minutes, Money};
use crate::record::{FieldName, Id, Kind, in_order};

/// What the job comes to so far.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct TotalsView {
    /// Parts that are decided.
    pub decided: usize,
    /// Of those, parts without a price: renewed whatever they look like, and no quote says for how much.
    pub unpriced: usize,
    /// Parts that are open: with quotes or without.
    pub open: usize,
    /// Of those, parts that have a quote which may be chosen.
    pub quoted: usize,
    /// All prices of what is decided, without surcharges that come back. A kit counts once.
    pub cash: Money,
    /// All that is paid at first for what is decided, surcharges in full.
    pub peak: Money,
    /// Own hours of what is decided, in minutes.
    pub own_time: Minutes,
    /// What is decided, worth now over the years.
    pub present: Estimate,
    /// What is open, at the cheapest quote of each part that has one.
    pub open_present: Estimate,
    /// The share of both that rests on guesses, from 0 to 1.
    pub guessed: f64,
    /// What was bought.
    pub spent: Money,
    /// Purchases in another currency than the job's: not in the sum.
    pub spent_elsewhere: usize,
    /// Decisions that another quote has overtaken by more than the threshold, with their parts.
    pub overtaken: Vec<Id>,
    /// Purchases, latest first.
    pub purchases: Vec<PurchaseView>,
}

/// Something bought, with the photos of its receipt.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PurchaseView {
    /// Its record.
    pub record: RecordView,
    /// Photos of the receipt, in order.
    pub photos: Vec<PhotoView>,
    /// The name of the part that it was bought for; empty when none was said.
    pub part_name: String,
}

/// Running totals of the job.
#[must_use]
pub fn totals(job: &Job, today: Option<Day>) -> TotalsView {
    let currency = job.settings().currency;
    let nothing = Money::from_minor(0, currency);
    let mut totals = TotalsView {
        decided: 0,
        unpriced: 0,
        open: 0,
        quoted: 0,
        cash: nothing,
        peak: nothing,
        own_time: Minutes::default(),
        present: Estimate::of(nothing),
        open_present: Estimate::of(nothing),
        guessed: 0.0,
        spent: nothing,
        spent_elsewhere: 0,
        overtaken: Vec::new(),
        purchases: Vec::new(),
    };
    let mut paid: BTreeSet<Id> = BTreeSet::new();
    let (mut lines, mut guesses) = (0.0, 0.0);
    for part in job.standing_ids(Kind::Part) {
        let view = priced(job, part, today, None);
        let chosen = view.decided_quote();
        let counted = chosen.or(view.cheapest()).and_then(|id| view.views.iter().find(|quote| quote.id == id));
        if let Some(quote) = counted {
            let size: f64 = quote.lines.iter().map(|line| line.amount.minor.abs()).sum();
            lines += size;
            guesses += size * quote.guessed;
        }
        let Some(quote) = counted.filter(|_| chosen.is_some()) else {
            if chosen.is_some() || view.unasked {
                totals.decided += 1;
                totals.unpriced += usize::from(chosen.is_none());
            } else {
                totals.open += 1;
            }
            totals.quoted += usize::from(counted.is_some() && !view.unasked);
            totals.open_present = totals.open_present.plus_minor(counted.map_or(0.0, |quote| quote.present.minor));
            continue;
        };
        totals.decided += 1;
        totals.overtaken.extend(view.overtaken.as_ref().map(|_| part));
        // One kit, chosen for several parts, is paid for once, and worked on once.
        if paid.insert(quote.id) {
            let present = view.whole(quote.id).map_or(0.0, |whole| whole.present.minor);
            totals.present = totals.present.plus_minor(present);
            totals.count(job, quote.id, quote.own_time);
        }
    }
    totals.guessed = if lines > 0.0 { guesses / lines } else { 0.0 };
    totals.add_purchases(job);
    totals
}

impl TotalsView {
    fn count(&mut self, job: &Job, quote: Id, own_time: Minutes) {
        let Some(item) = job.item(quote) else { return };
        let all = peak(job, item);
        let surcharge = item.read::<Money>(FieldName::Surcharge);
        let returned = surcharge.and_then(|money| super::in_job_currency(job, item, money)).unwrap_or(0);
        self.peak.minor = self.peak.minor.saturating_add(all.minor);
        self.cash.minor = self.cash.minor.saturating_add(all.minor - returned);
        self.own_time.0 = self.own_time.0.saturating_add(own_time.0);
    }

    fn add_purchases(&mut self, job: &Job) {
        for id in job.standing_ids(Kind::Purchase) {
            let Some(record) = job.record_view(id) else { continue };
            match record.values.cash {
                Some(cash) if cash.currency == self.spent.currency => {
                    self.spent.minor = self.spent.minor.saturating_add(cash.minor);
                }
                Some(_) => self.spent_elsewhere += 1,
                None => {}
            }
            let part_name = record.values.part.map(|part| job.name(part)).unwrap_or_default();
            let photos = job.photos_of(id);
            self.purchases.push(PurchaseView { photos, part_name, record });
        }
        let purchases = std::mem::take(&mut self.purchases);
        self.purchases = in_order(purchases, |purchase| (Reverse(purchase.record.values.taken), purchase.record.id));
    }
}
