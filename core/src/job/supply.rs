//! What of a part is on its way, out of the house, or here: the facts behind its standing and behind refitting.

use super::vocabulary::{Compared, Fit, OutFor, Route, Standing};
use super::whole::Job;
use crate::quantity::Day;
use crate::record::{FieldName, Id, Kind, in_order};

/// What came of the new pieces of a part.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Delivered {
    /// Pieces that are wanted.
    pub wanted: i64,
    /// Pieces that are here and are the same as the old ones where it matters.
    pub right: i64,
    /// Pieces that are here and were not compared yet.
    pub to_compare: i64,
    /// The latest day on which one of those came in.
    pub arrived: Option<Day>,
    /// Pieces that are here and cannot go on.
    pub wrong: i64,
    /// Pieces that are on their way, lot by lot; those without a day last.
    pub coming: Vec<Coming>,
}

/// A lot of new pieces that is on its way.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Coming {
    /// The delivery.
    pub delivery: Id,
    /// When it is due.
    pub due: Option<Day>,
    /// How many pieces.
    pub pieces: i64,
}

impl Delivered {
    /// Whether enough pieces are here and were found right.
    #[must_use]
    pub const fn is_complete(&self) -> bool {
        self.right >= self.wanted
    }
}

/// A part that is out of the house.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Out {
    /// The record that says so.
    pub outing: Id,
    /// What for.
    pub out_for: OutFor,
    /// When it is to be in again.
    pub due: Option<Day>,
}

impl Job {
    /// Whether a route brings other pieces in place of the old ones.
    #[must_use]
    pub const fn brings_new(route: Route) -> bool {
        matches!(route, Route::Exchange | Route::Buy | Route::Kit | Route::Donor)
    }

    /// How many pieces of a part are wanted.
    pub(crate) fn pieces_wanted(&self, part: Id) -> i64 {
        self.item(part).and_then(|item| item.read(FieldName::Quantity)).unwrap_or(1).max(1)
    }

    /// The new pieces of a part. What was taken off a donor needs no delivery, but may have one that says how it compared.
    #[must_use]
    pub fn delivered(&self, part: Id) -> Delivered {
        let mut sum = Delivered { wanted: self.pieces_wanted(part), ..Delivered::default() };
        let mut deliveries = self.children(Kind::Delivery, FieldName::Of, part).peekable();
        if deliveries.peek().is_none() && self.is_fetched(part) {
            sum.right = sum.wanted;
            return sum;
        }
        for (delivery, item) in deliveries.filter_map(|id| Some((id, self.item(id)?))) {
            let pieces = item.read(FieldName::Quantity).unwrap_or(1_i64).max(0);
            match (item.read::<Day>(FieldName::Arrived), item.read::<Compared>(FieldName::Compared)) {
                (_, Some(Compared::Right)) => sum.right = sum.right.saturating_add(pieces),
                (_, Some(Compared::Wrong)) => sum.wrong = sum.wrong.saturating_add(pieces),
                (Some(day), None) => {
                    sum.to_compare = sum.to_compare.saturating_add(pieces);
                    sum.arrived = sum.arrived.max(Some(day));
                }
                (None, None) => sum.coming.push(Coming { delivery, due: item.read(FieldName::Due), pieces }),
            }
        }
        sum.coming = in_order(sum.coming, |lot| (lot.due.is_none(), lot.due, lot.delivery));
        sum
    }

    /// Whether the chosen quote is of a donor, and was taken off it.
    fn is_fetched(&self, part: Id) -> bool {
        let quote = self.choice_of(part).and_then(|choice| self.item(choice)?.read::<Id>(FieldName::Quote));
        quote
            .and_then(|quote| self.item(quote))
            .is_some_and(|quote| quote.is(FieldName::Fetched) && quote.read(FieldName::Route) == Some(Route::Donor))
    }

    /// The outing of a part that is not in again; of several the one that is due last, or has no day.
    #[must_use]
    pub fn out(&self, part: Id) -> Option<Out> {
        self.outs(part).max_by_key(|out| (out.due.is_none(), out.due, out.outing))
    }

    /// All outings of a part that are not in again.
    pub(crate) fn outs(&self, part: Id) -> impl Iterator<Item = Out> {
        let outings = self.children(Kind::Outing, FieldName::Of, part);
        outings.filter_map(|id| {
            let item = self.item(id)?;
            let is_back = item.read::<Day>(FieldName::Arrived).is_some();
            let out_for = item.read(FieldName::OutFor).unwrap_or(OutFor::Work);
            (!is_back).then_some(Out { outing: id, out_for, due: item.read(FieldName::Due) })
        })
    }

    /// What came of the last outing for work that ended: whether it was looked at, and what was found.
    pub(crate) fn back_from_work(&self, part: Id) -> Option<(Day, Option<Compared>)> {
        let outings = self.children(Kind::Outing, FieldName::Of, part).filter_map(|id| self.item(id));
        let work = outings.filter(|item| item.read(FieldName::OutFor).unwrap_or(OutFor::Work) == OutFor::Work);
        let back =
            work.filter_map(|item| Some((item.read::<Day>(FieldName::Arrived)?, item.read(FieldName::Compared))));
        back.max_by_key(|(day, _)| *day)
    }

    /// How far a part is on again.
    #[must_use]
    pub fn fit(&self, part: Id) -> Option<Fit> {
        self.item(part)?.read(FieldName::Fit)
    }

    /// Where a decided part stands by what is here of it; nothing more is known where neither is.
    pub(super) fn standing_by_supply(&self, part: Id, route: Option<Route>) -> Option<Standing> {
        match self.fit(part) {
            Some(Fit::Fitted) => return Some(Standing::Refitted),
            _ if self.out(part).is_some() => return Some(Standing::Out),
            Some(Fit::Tried) => return Some(Standing::Tried),
            Some(Fit::OffAgain) | None => {}
        }
        let route = route?;
        let is_finished = self.item(part).is_some_and(|item| item.is(FieldName::Finished));
        // Off again, it is for finish, whatever it is.
        if self.fit(part) == Some(Fit::OffAgain) && !is_finished {
            return None;
        }
        if Self::brings_new(route) {
            let delivered = self.delivered(part);
            return match delivered {
                _ if delivered.is_complete() => Some(Standing::Ready),
                _ if !delivered.coming.is_empty() => Some(Standing::OnOrder),
                _ => None,
            };
        }
        let came_back = self.back_from_work(part).is_some_and(|(_, found)| found == Some(Compared::Right));
        let is_ready = if route == Route::SendOut { came_back } else { is_finished };
        is_ready.then_some(Standing::Ready)
    }
}
