use std::collections::{BTreeMap, BTreeSet};

use super::advice::Heavies;
use super::count::by_state;
use super::view::{Counted, LiesIn, PlaceView, StoredLine, WhereView};
use crate::inspect::heft;
use crate::job::Job;
use crate::record::{FieldName, Id, Kind};

impl Job {
    /// One place with what is in it.
    #[must_use]
    pub fn place_view(&self, place: Id) -> Option<PlaceView> {
        self.item_of(Kind::Place, place)?;
        let mut inside: Vec<Id> = self.children(Kind::Place, FieldName::Within, place).collect();
        self.sort_by_name(&mut inside);
        let (ended, running) = self.counts_of(place);
        let counted = ended.and_then(|count| self.tally(count));
        let amiss: BTreeMap<Id, Counted> = counted.iter().flat_map(super::count::Tally::amiss).collect();
        let mut parts: BTreeSet<Id> = self.lying_in(place).collect();
        parts.extend(amiss.keys());
        let mut heavies = Heavies::new();
        let lines = parts.into_iter().filter_map(|part| {
            let found = amiss.get(&part).copied();
            let line = match (counted.as_ref(), found) {
                (Some(tally), Some(found)) => self.counted_line(tally, part, found)?,
                _ => self.stored_line(part)?,
            };
            // What was amiss and is put right stands here only if it lies here.
            let lies_here = line.lies == LiesIn::Place && line.place == Some(place);
            let counted = line.counted.filter(|_| !line.settled);
            let awkward = line.place.map(|at| self.awkward(part, at, &mut heavies)).unwrap_or_default();
            (lies_here || counted.is_some()).then_some(StoredLine { counted, awkward, ..line })
        });
        Some(PlaceView {
            line: self.place_line(place)?,
            way: self.way_to(place),
            photos: self.photos_of(place),
            inside: inside.into_iter().filter_map(|id| self.place_line(id)).collect(),
            rack: self.rack_view(place),
            parts: by_state(lines.collect()),
            counted: counted.map(|tally| tally.sums()),
            running: running.and_then(|count| self.tally(count)).map(|tally| tally.sums()),
        })
    }

    /// Where a part is, and where it may be laid next.
    #[must_use]
    pub fn where_view(&self, part: Id) -> Option<WhereView> {
        let line = self.stored_line(part)?;
        let awkward = line.place.map(|at| self.awkward(part, at, &mut Heavies::new())).unwrap_or_default();
        Some(WhereView {
            way: line.place.map(|place| self.way_to(place)).unwrap_or_default(),
            heft: self.item(part).and_then(heft),
            next: self.advice(part),
            part: StoredLine { awkward, ..line },
        })
    }
}
