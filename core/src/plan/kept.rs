//! Plans that were kept under a name: what they came to then, what they come to now, and what has changed since.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use super::of_job::{Fixed, Planned, Settled, planned_with, rounded};
use super::query::PlanQuery;
use super::view::PlanSums;
use crate::job::vocabulary::Route;
use crate::job::{Job, RecordView};
use crate::quantity::{Currency, Day, Minutes, Money};
use crate::record::{FieldName, Id, Item, KeptQuote, KeptQuotes, Kind};

/// All plans that were kept, by name, each counted again as the job is today.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct KeptPlansView {
    /// The currency of all sums that are counted now.
    pub currency: Currency,
    /// What an hour is worth now.
    pub hour_value: Money,
    /// The plans.
    pub plans: Vec<KeptPlan>,
}

/// A plan that was kept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct KeptPlan {
    /// Its record, without its quotes.
    pub record: RecordView,
    /// What it came to when it was kept, as far as that was noted.
    pub kept: KeptSums,
    /// What it comes to now. A part that came later, or whose quote may not be taken any more, counts at its own cheapest.
    pub now: PlanSums,
    /// Its parts, and those that came later, by part.
    pub parts: Vec<KeptPart>,
    /// How much more is paid at first for those of its quotes that may still be taken, each in full and once.
    pub more: Money,
}

/// What a plan came to when it was kept.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct KeptSums {
    /// Present value, all in.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cost: Option<Money>,
    /// All that is paid at first.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cash: Option<Money>,
    /// Own time.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub own_time: Option<Minutes>,
    /// What an hour was worth in it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hour_value: Option<Money>,
}

/// A part of a plan that was kept, or one that came later.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct KeptPart {
    /// Which part.
    pub part: Id,
    /// Its tag.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tag: Option<i64>,
    /// Its name; empty when it has none.
    pub name: String,
    /// Its quote in the plan; nothing where it came later.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub quote: Option<Id>,
    /// The route of that, as far as it is known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub route: Option<Route>,
    /// From whom.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<String>,
    /// It may be taken.
    pub open: bool,
    /// It is what somebody chose.
    pub chosen: bool,
    /// What has changed since.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub since: Option<KeptSince>,
    /// How much more is paid for it at first. A kit stands with the first of its parts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub more: Option<Money>,
}

/// What has changed for a part since a plan was kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum KeptSince {
    /// The part is not here any more.
    PartGone,
    /// Its quote is not here any more, or was struck out.
    QuoteGone,
    /// Its quote is here, but may not be taken any more.
    Barred,
    /// It came later.
    Later,
    /// Its quote is paid with more, or with less.
    Price,
}

/// All plans that were kept. Each is counted in whole numbers with the figures, limits and carriage of today; decisions that
/// were made otherwise do not count.
#[must_use]
pub fn kept_plans(job: &Job, today: Option<Day>) -> KeptPlansView {
    let settings = job.settings();
    let mut ids: Vec<Id> = job.standing_ids(Kind::Plan).collect();
    job.sort_by_name(&mut ids);
    let query = PlanQuery { today, reopen: true, ..PlanQuery::default() };
    let plans =
        ids.into_iter().filter_map(|id| Kept { job, query: &query, currency: settings.currency }.told(id)).collect();
    KeptPlansView { currency: settings.currency, hour_value: settings.hour_value, plans }
}

struct Kept<'a> {
    job: &'a Job,
    query: &'a PlanQuery,
    currency: Currency,
}

impl Kept<'_> {
    fn told(&self, id: Id) -> Option<KeptPlan> {
        let item = self.job.item(id)?;
        let mut record = self.job.record_view(id)?;
        // They are told part by part.
        record.values.quotes = None;
        let quotes = item.read::<KeptQuotes>(FieldName::Quotes).unwrap_or_default().0;
        let cash: Option<Money> = item.read(FieldName::Cash);
        let expected: Option<f64> = item.read(FieldName::ExpectedThen);
        // What was kept in another currency cannot be set against what is paid now.
        let then = cash.map_or(self.currency, |cash| cash.currency);
        let kept = KeptSums {
            cost: expected.map(|minor| Money::from_minor(rounded(minor), then)),
            cash,
            own_time: item.read(FieldName::OwnTime),
            hour_value: item.read(FieldName::HourValueThen),
        };
        let mut of_part: BTreeMap<Id, Vec<KeptQuote>> = BTreeMap::new();
        for quote in quotes {
            of_part.entry(quote.part).or_default().push(quote);
        }
        let fixed: Fixed = of_part
            .iter()
            .filter_map(|(part, quotes)| Some((*part, (quotes.first()?.quote, quotes.get(1).map(|rest| rest.quote)))))
            .collect();
        let planned = planned_with(self.job, self.query, &fixed);
        let taken = planned.of_fixed(&fixed);
        let now = planned.sums(&planned.model.worth(&taken), &taken, self.currency);
        let settled: BTreeMap<Id, Settled> = planned.settled(&taken).map(|settled| (settled.part, *settled)).collect();
        let mut priced = BTreeSet::new();
        let mut parts: Vec<KeptPart> = Vec::new();
        let mut all: i64 = 0;
        for (part, quotes) in &of_part {
            let mut told = self.part(&planned, *part, quotes, settled.get(part));
            let quotes = quotes.iter().take(2).filter(|quote| then == self.currency && priced.insert(quote.quote));
            let more = |kept: &KeptQuote| Some(planned.peaks.get(&(*part, kept.quote))?.saturating_sub(kept.cash));
            let more = quotes.filter_map(more).fold(0_i64, i64::saturating_add);
            if more != 0 {
                all = all.saturating_add(more);
                told.more = Some(Money::from_minor(more, self.currency));
                told.since = told.since.or(Some(KeptSince::Price));
            }
            parts.push(told);
        }
        let later = settled.keys().filter(|part| !of_part.contains_key(part));
        parts.extend(later.map(|part| KeptPart { since: Some(KeptSince::Later), ..self.bare(*part) }));
        parts.sort_unstable_by_key(|told| told.part);
        Some(KeptPlan { record, kept, now, parts, more: Money::from_minor(all, self.currency) })
    }

    fn bare(&self, part: Id) -> KeptPart {
        let tag = self.job.item(part).and_then(|item| item.read(FieldName::Tag));
        let name = self.job.name(part);
        KeptPart {
            part,
            tag,
            name,
            quote: None,
            route: None,
            from: None,
            open: false,
            chosen: false,
            since: None,
            more: None,
        }
    }

    /// What became of a part of the plan; of its quotes the second is for what a kit has too few of.
    fn part(&self, planned: &Planned, part: Id, quotes: &[KeptQuote], settled: Option<&Settled>) -> KeptPart {
        let bare = self.bare(part);
        let stands = |kind: Kind, id: Id| self.job.item_of(kind, id).filter(|item| !item.is_struck());
        let Some(KeptQuote { quote, .. }) = quotes.first().copied() else { return bare };
        let item: Option<&Item> = self.job.item_of(Kind::Quote, quote);
        let open = settled.is_some_and(|settled| settled.quote == quote);
        let is_gone = |kept: &KeptQuote| stands(Kind::Quote, kept.quote).is_none();
        let rest = quotes.get(1);
        let since = if stands(Kind::Part, part).is_none() {
            Some(KeptSince::PartGone)
        } else if quotes.iter().take(2).any(is_gone) {
            Some(KeptSince::QuoteGone)
        } else if !open || rest.is_some_and(|rest| !planned.peaks.contains_key(&(part, rest.quote))) {
            Some(KeptSince::Barred)
        } else {
            None
        };
        KeptPart {
            quote: Some(quote),
            route: item.and_then(|item| item.read(FieldName::Route)),
            from: item.and_then(|item| item.read(FieldName::From)),
            open,
            chosen: planned.chosen.get(&part) == Some(&quote),
            since,
            ..bare
        }
    }
}

impl Planned {
    /// The take of each cell that has what is fixed, else the part's own cheapest. Where a kit may be bought once or more often
    /// for the same quotes, what is best together with all others.
    fn of_fixed(&self, fixed: &Fixed) -> Vec<usize> {
        /// More often nothing is looked through again.
        const PASSES: usize = 8;
        let wanted = |part: Id| {
            fixed.get(&part).map(|(quote, _)| *quote).filter(|quote| self.peaks.contains_key(&(part, *quote)))
        };
        let mut taken =
            self.of_quotes(|part| wanted(part).or_else(|| self.cheapest.get(&part).copied())).unwrap_or_default();
        let merit = |taken: &[usize]| {
            let worth = self.model.worth(taken);
            (worth.breach.rules, worth.breach.orders, worth.breach.cash, worth.breach.minutes, worth.cost)
        };
        let is_same = |cell: usize| {
            let takes = &self.settles[cell];
            takes.len() > 1 && takes.iter().flatten().all(|one| wanted(one.part) == Some(one.quote))
        };
        let same: Vec<usize> = (0..taken.len()).filter(|cell| is_same(*cell)).collect();
        let mut best = merit(&taken);
        for _ in 0..PASSES {
            let before = best;
            for cell in &same {
                for take in 0..self.settles[*cell].len() {
                    let known = std::mem::replace(&mut taken[*cell], take);
                    let reached = merit(&taken);
                    if reached < best {
                        best = reached;
                    } else {
                        taken[*cell] = known;
                    }
                }
            }
            if best == before {
                break;
            }
        }
        taken
    }
}
