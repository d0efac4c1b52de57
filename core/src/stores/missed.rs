use std::collections::BTreeSet;

use crate::job::Job;
use crate::quantity::Millis;
use crate::record::{FieldName, Id, Kind};

impl Job {
    /// Whether the last count of where a part should lie did not find it, and nobody has seen or moved it since.
    #[must_use]
    pub fn is_missed(&self, part: Id) -> bool {
        // Nothing was counted in most jobs for long.
        if self.ids(Kind::Count).next().is_none() {
            return false;
        }
        self.missed_since(part).is_some()
    }

    /// When a part was missed: the end of the latest count of where it should lie, if it was not found there nor seen later.
    #[must_use]
    pub fn missed_since(&self, part: Id) -> Option<Millis> {
        let item = self.item_of(Kind::Part, part)?;
        let place: Id = item.read(FieldName::Place)?;
        let put: Millis = item.written_at(FieldName::Place)?;
        let (count, ended) = self.last_count(place).filter(|(_, ended)| *ended >= put)?;
        let seen = self.children(Kind::Sighting, FieldName::Of, part).any(|sighting| {
            let Some(sighting) = self.item(sighting) else { return false };
            sighting.read::<Id>(FieldName::InCount) == Some(count)
                || sighting.read::<Millis>(FieldName::Taken).is_some_and(|taken| taken > ended)
        });
        (!seen && !self.was_seen_with_its_place(place, count)).then_some(ended)
    }

    /// The latest count, that was ended, of a place or of one that it is in.
    fn last_count(&self, place: Id) -> Option<(Id, Millis)> {
        let places = self.outwards(FieldName::Within, place);
        let counts = places.flat_map(|place| self.children(Kind::Count, FieldName::Of, place));
        let ended = counts.filter_map(|count| Some((count, self.item(count)?.read::<Millis>(FieldName::Ended)?)));
        ended.max_by_key(|(count, ended)| (*ended, *count))
    }

    /// Whether in a count the tag of the bag or box that something lies in was seen: it is counted with what is in it.
    fn was_seen_with_its_place(&self, place: Id, count: Id) -> bool {
        let counted: Option<Id> = self.item(count).and_then(|item| item.read(FieldName::Of));
        let closed: BTreeSet<Id> =
            self.outwards(FieldName::Within, place).take_while(|id| Some(*id) != counted).collect();
        let seen = self.pointing(FieldName::InCount, count).filter(|sighting| !self.is_struck(*sighting));
        seen.filter_map(|sighting| self.item(sighting)?.read::<Id>(FieldName::Of)).any(|seen| closed.contains(&seen))
    }
}
