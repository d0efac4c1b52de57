use super::missed::Seen;
use super::view::{Care, LiesIn, PlaceStep, SeenAt, StoredLine};
use super::whereabouts::Whereabouts;
use crate::costing::paid;
use crate::inspect::lift;
use crate::job::vocabulary::Route;
use crate::job::{Job, TagCode};
use crate::quantity::{Day, Millis, Money};
use crate::record::{FieldName, Id, Item, Kind};

impl Job {
    /// One part as stores show it; nothing where it is none.
    pub(super) fn stored_line(&self, part: Id) -> Option<StoredLine> {
        let line = self.part_line(part)?;
        let item = self.item(part)?;
        let whereabouts = self.whereabouts(part);
        let (lies, place, out) = match whereabouts {
            Whereabouts::In(place) => (LiesIn::Place, Some(place), None),
            Whereabouts::Nowhere => (LiesIn::Nowhere, None, None),
            Whereabouts::Out(outing) => (LiesIn::Out, None, self.record_view(outing)),
            Whereabouts::On => (LiesIn::Vehicle, None, None),
            Whereabouts::Refitted => (LiesIn::Refitted, None, None),
        };
        Some(StoredLine {
            worth: out.as_ref().and_then(|_| self.another_costs(part)),
            line,
            lies,
            place,
            out,
            late: None,
            care: care_of(item),
            counted: None,
            sighting: None,
            settled: false,
            seen: self.last_seen(part).map(|seen| self.seen_at(seen, place)),
            missed: self.missed_since(part),
            awkward: Vec::new(),
        })
    }

    fn seen_at(&self, seen: Seen, place: Option<Id>) -> SeenAt {
        SeenAt {
            at: seen.at,
            path: seen.place.map(|place| self.place_path(place)).unwrap_or_default(),
            elsewhere: seen.place.zip(place).is_some_and(|(at, place)| !self.chain_at(place, None).contains(&at)),
        }
    }

    /// What all pieces of it would cost anew: the least cash, in the currency of the job, of quotes that bring them. What a kit
    /// costs is the price of many things, and says nothing of one.
    pub(super) fn another_costs(&self, part: Id) -> Option<Money> {
        let currency = self.settings().currency;
        let quotes = self.children(Kind::Quote, FieldName::Of, part).filter_map(|quote| self.item(quote));
        let bringing = quotes.filter(|item| {
            item.read::<Route>(FieldName::Route).is_some_and(|route| Self::brings_new(route) && route != Route::Kit)
        });
        let cash = bringing.filter_map(|item| paid(self, item, FieldName::Cash));
        cash.filter(|money| money.currency == currency).min_by_key(|money| money.minor)
    }

    /// The way to a place, from the outermost; itself last.
    pub(super) fn way_to(&self, place: Id) -> Vec<PlaceStep> {
        let mut way: Vec<PlaceStep> =
            self.chain_at(place, None).into_iter().filter_map(|id| self.place_step(id)).collect();
        way.reverse();
        way
    }

    fn place_step(&self, place: Id) -> Option<PlaceStep> {
        let item = self.item(place)?;
        Some(PlaceStep {
            id: place,
            name: self.name(place),
            place_kind: item.read(FieldName::PlaceKind),
            code: code_of(item),
            photo: self.first_photo(place).0,
        })
    }
}

/// The code on the tag of a part or place.
pub(crate) fn code_of(item: &Item) -> Option<String> {
    item.read::<i64>(FieldName::Tag).and_then(TagCode::new).map(|code| code.to_string())
}

fn care_of(item: &Item) -> Care {
    Care {
        oiled: item.is(FieldName::Oiled),
        wrapped: item.is(FieldName::Wrapped),
        fragile: item.is(FieldName::Fragile),
        lift: lift(item),
    }
}

/// The day of a moment, by UTC.
pub(super) fn day_of(moment: Millis) -> Option<Day> {
    Day::from_count(moment.0.div_euclid(86_400_000))
}
