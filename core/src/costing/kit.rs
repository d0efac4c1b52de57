//! Kits: one price for several parts.

use serde::{Deserialize, Serialize};

use super::figures::figures;
use super::limits::Barred;
use crate::job::vocabulary::Route;
use crate::job::{Job, Seen};
use crate::quantity::{Day, Money};
use crate::record::{FieldName, Id, Item, Kind};

/// What a kit is worth beside its pieces bought singly.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct KitView {
    /// The quote.
    pub quote: Id,
    /// What it covers, by part.
    pub covers: Vec<CoverView>,
    /// Its price.
    pub price: Money,
    /// What the parts in it that are still to be bought cost singly, as far as prices are known.
    pub singly: Money,
    /// The kit, and singly what it holds too few of.
    pub with_kit: Money,
}

/// A part that a kit covers.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct CoverView {
    /// The record that says so.
    pub cover: Id,
    /// Which part.
    pub part: Id,
    /// How many pieces are in the kit.
    pub pieces: i64,
    /// How many are needed.
    pub needed: i64,
    /// It is decided otherwise, or struck out: the kit spares nothing there.
    pub spare: bool,
    /// The entries behind that record, for striking it out; none for the part that the kit is quoted on.
    pub seen: Seen,
    /// The least price for all that are needed, bought singly.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub singly: Option<Money>,
}

/// The kits that cover a part: those quoted on it, and those quoted on others.
pub(super) fn kits_for(job: &Job, part: Id) -> Vec<Id> {
    let own = job.children(Kind::Quote, FieldName::Of, part).filter(|quote| is_kit(job, *quote));
    let others = job.children(Kind::Cover, FieldName::Part, part);
    let others = others.filter_map(|cover| job.item(cover)?.read::<Id>(FieldName::Of));
    let mut kits: Vec<Id> = own.chain(others.filter(|quote| is_kit(job, *quote) && !job.is_struck(*quote))).collect();
    kits.sort_unstable();
    kits.dedup();
    kits
}

/// The parts that a quote is for: the one it is of, and those that a kit covers besides.
pub(super) fn covered_with(job: &Job, quote: Id) -> Vec<Id> {
    let own = job.item(quote).and_then(|item| item.read::<Id>(FieldName::Of));
    let covers = job.children(Kind::Cover, FieldName::Of, quote).filter(|_| is_kit(job, quote));
    let others = covers.filter_map(|cover| job.item(cover)?.read::<Id>(FieldName::Part));
    own.into_iter().chain(others).collect()
}

fn is_kit(job: &Job, quote: Id) -> bool {
    job.item_of(Kind::Quote, quote).is_some_and(|item| item.read(FieldName::Route) == Some(Route::Kit))
}

/// A kit with what it covers; the part it is quoted on is in it, one set of it where no cover says how many.
pub(super) fn kit(job: &Job, quote: Id, today: Option<Day>) -> Option<KitView> {
    let item = job.item_of(Kind::Quote, quote)?;
    let currency = job.settings().currency;
    let in_minor = |minor| Money::from_minor(minor, currency);
    let price = price(job, quote, item).unwrap_or(0);
    let covers: Vec<CoverView> = covers(job, quote, item, today);
    let wanted = covers.iter().filter(|cover| !cover.spare);
    let (mut singly, mut short) = (0_i64, 0_i64);
    for cover in wanted {
        let single = cover.singly.map_or(0, |money| money.minor);
        singly = singly.saturating_add(single);
        short = short.saturating_add(missing(single, cover));
    }
    Some(KitView {
        quote,
        price: in_minor(price),
        singly: in_minor(singly),
        with_kit: in_minor(price.saturating_add(short)),
        covers,
    })
}

/// What the pieces cost of which the kit holds too few, rounded up to the minor unit.
fn missing(single: i64, cover: &CoverView) -> i64 {
    let short = (cover.needed - cover.pieces).max(0);
    let exact = i128::from(single) * i128::from(short);
    i64::try_from((exact + i128::from(cover.needed) - 1) / i128::from(cover.needed.max(1))).unwrap_or(i64::MAX)
}

/// What a kit costs one of its parts: its price less what the others in it would cost singly (the share that they save),
/// and singly what it holds too few of. So a kit is cheaper on one of its parts exactly when it is cheaper for all of them
/// together.
pub(super) fn shared(kit: &KitView, part: Id) -> (i64, i64) {
    let others = kit.covers.iter().filter(|cover| cover.part != part && !cover.spare);
    let saved = others.map(|cover| {
        let single = cover.singly.map_or(0, |money| money.minor);
        single.saturating_sub(missing(single, cover))
    });
    let own = kit.covers.iter().find(|cover| cover.part == part);
    let short = own.map_or(0, |cover| missing(cover.singly.map_or(0, |money| money.minor), cover));
    (saved.fold(0, i64::saturating_add), short)
}

fn covers(job: &Job, quote: Id, item: &Item, today: Option<Day>) -> Vec<CoverView> {
    let said = job.children(Kind::Cover, FieldName::Of, quote).filter_map(|cover| {
        let item = job.item(cover)?;
        let part: Id = item.read(FieldName::Part).filter(|part| job.item_of(Kind::Part, *part).is_some())?;
        Some((cover, part, item.read::<i64>(FieldName::Quantity)))
    });
    let mut said: Vec<(Id, Id, Option<i64>)> = said.collect();
    let own: Option<Id> = item.read(FieldName::Of);
    if let Some(own) = own.filter(|own| said.iter().all(|(_, part, _)| part != own)) {
        said.push((quote, own, None));
    }
    said.sort_unstable();
    let view = |(cover, part, pieces): (Id, Id, Option<i64>)| {
        let needed = job.item(part).and_then(|item| item.read(FieldName::Quantity)).unwrap_or(1).max(1);
        let pieces = pieces.unwrap_or(needed).max(0);
        let singly = single(job, part, today).map(|minor| Money::from_minor(minor, job.settings().currency));
        let seen = if cover == quote { Seen::new() } else { job.seen_of(&[cover]) };
        CoverView { cover, part, pieces, needed, spare: is_spare(job, part, quote), seen, singly }
    };
    said.into_iter().map(view).collect()
}

/// Whether a part is decided for something other than this kit, or struck out.
fn is_spare(job: &Job, part: Id, kit: Id) -> bool {
    let chosen = job.choice_of(part).and_then(|choice| job.item(choice)?.read::<Id>(FieldName::Quote));
    job.is_struck(part) || chosen.is_some_and(|quote| quote != kit)
}

/// All that is paid for a quote, with freight, tax and duty.
fn price(job: &Job, quote: Id, item: &Item) -> Option<i64> {
    let figures = figures(job, quote, item, true)?;
    #[expect(clippy::cast_possible_truncation, reason = "prices are whole and within bounds")]
    let bill = figures.bill() as i64;
    Some(bill)
}

/// The least price at which a part is bought singly.
fn single(job: &Job, part: Id, today: Option<Day>) -> Option<i64> {
    let barred = Barred::of(job, part)?;
    let prices = job.children(Kind::Quote, FieldName::Of, part).filter_map(|quote| {
        let item = job.item(quote)?;
        let is_single =
            item.read(FieldName::Route) == Some(Route::Buy) && barred.why_not_quote(job, item, today).is_none();
        is_single.then(|| price(job, quote, item))?
    });
    prices.min()
}
