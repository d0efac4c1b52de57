use super::advice::is_closed;
use super::whereabouts::Whereabouts;
use crate::job::Job;
use crate::quantity::Millis;
use crate::record::{FieldName, Id, Item, Kind};

/// When a thing was seen, and where.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Seen {
    pub(super) at: Millis,
    /// The place, where it was said.
    pub(super) place: Option<Id>,
}

impl Job {
    /// Whether a count of where a part should lie did not find it, and nobody has seen or moved it since.
    #[must_use]
    pub fn is_missed(&self, part: Id) -> bool {
        // Nothing was counted in most jobs for long.
        self.ids(Kind::Count).next().is_some() && self.missed_since(part).is_some()
    }

    /// Since when a part is missed: the end of the first count of where it lies that did not find it, after it was put there
    /// and last seen. A count that saw only the closed bag it lies in says nothing against an earlier one that missed it.
    #[must_use]
    pub fn missed_since(&self, part: Id) -> Option<Millis> {
        let Whereabouts::In(place) = self.whereabouts(part) else { return None };
        let seen = self.sightings(part).map(|seen| seen.at).max();
        let came = self.item(part)?.written_at(FieldName::Place);
        let missed = self.standing_ids(Kind::Count).filter_map(|count| {
            let item = self.item(count)?;
            let (of, ended): (Id, Millis) = (item.read(FieldName::Of)?, item.read(FieldName::Ended)?);
            // What somebody laid there, or saw, while this count was under way was there.
            let began = taken(item);
            if Some(began) < came || Some(began) < seen || self.is_in_count(part, count) {
                return None;
            }
            // It was looked for only where it lay all the while; where the box has gone since says nothing of what is in it.
            let around = self.chain_at(place, Some(ended));
            let depth = around.iter().position(|at| *at == of)?;
            if !self.chain_at(place, Some(began)).contains(&of) {
                return None;
            }
            let vouches = |bag: &Id| is_closed(self.place_kind(*bag)) && self.is_in_count(*bag, count);
            (!around[..depth].iter().any(vouches)).then_some(ended)
        });
        missed.min()
    }

    /// Whether the tag of a part or place was seen in a count.
    fn is_in_count(&self, thing: Id, count: Id) -> bool {
        let sightings = self.children(Kind::Sighting, FieldName::Of, thing).filter_map(|id| self.item(id));
        let mut counts = sightings.filter_map(|item| item.read::<Id>(FieldName::InCount));
        counts.any(|its| its == count)
    }

    fn sightings(&self, of: Id) -> impl Iterator<Item = Seen> {
        let items = self.children(Kind::Sighting, FieldName::Of, of).filter_map(|id| self.item(id));
        items.map(|item| Seen { at: taken(item), place: item.read(FieldName::Place) })
    }

    /// When and where a part was last seen: by its tag, or when somebody put it where it lies.
    pub(super) fn last_seen(&self, part: Id) -> Option<Seen> {
        let item = self.item(part)?;
        let place: Option<Id> = item.read(FieldName::Place);
        let put = place.and_then(|_| item.written_at(FieldName::Place)).map(|at| Seen { at, place });
        let last = self.sightings(part).max_by_key(|seen| (seen.at, seen.place));
        match (put, last) {
            // Of the same moment what was put there holds.
            (Some(put), Some(last)) if last.at <= put.at => Some(put),
            (put, last) => last.or(put),
        }
    }
}

/// When something was seen: as it says, else when that was written.
pub(super) fn taken(item: &Item) -> Millis {
    item.read(FieldName::Taken).or_else(|| item.written_at(FieldName::Kind)).unwrap_or_default()
}
