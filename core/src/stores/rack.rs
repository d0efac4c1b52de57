use std::collections::BTreeMap;

use super::view::{BoxView, LooseView, RackView, ShelfView};
use crate::job::Job;
use crate::job::vocabulary::PlaceKind;
use crate::record::{FieldName, Id, Kind, in_order};

impl Job {
    /// The rack that a place is, or is in.
    pub(super) fn rack_view(&self, place: Id) -> Option<RackView> {
        let around = self.chain_at(place, None);
        let rack = *around.iter().find(|id| self.place_kind(**id) == Some(PlaceKind::Rack))?;
        let mut inside: Vec<Id> = self.children(Kind::Place, FieldName::Within, rack).collect();
        self.sort_by_name(&mut inside);
        let (shelves, others): (Vec<Id>, Vec<Id>) =
            inside.into_iter().partition(|id| self.place_kind(*id) == Some(PlaceKind::Shelf));
        let mut rows: Vec<ShelfView> = shelves.into_iter().map(|shelf| self.shelf_view(shelf, &around)).collect();
        let boxes: Vec<BoxView> = others.into_iter().map(|id| self.box_view(id, &around)).collect();
        let loose = self.loose(rack);
        if !boxes.is_empty() || !loose.is_empty() {
            rows.push(ShelfView { id: None, name: String::new(), boxes, loose });
        }
        Some(RackView { id: rack, name: self.name(rack), shelves: rows })
    }

    fn shelf_view(&self, shelf: Id, around: &[Id]) -> ShelfView {
        let mut inside: Vec<Id> = self.children(Kind::Place, FieldName::Within, shelf).collect();
        self.sort_by_name(&mut inside);
        let boxes = inside.into_iter().map(|id| self.box_view(id, around)).collect();
        ShelfView { id: Some(shelf), name: self.name(shelf), boxes, loose: self.loose(shelf) }
    }

    fn box_view(&self, id: Id, around: &[Id]) -> BoxView {
        let within = self.within(Kind::Place, FieldName::Within, id).into_iter();
        let parts: Vec<Id> = within.flat_map(|place| self.lying_in(place)).collect();
        let missing = parts.iter().filter(|part| self.is_missed(**part)).count();
        BoxView { id, name: self.name(id), parts: parts.len(), missing, here: around.contains(&id) }
    }

    /// Parts that lie openly right in a place, those of one name together, in order of the tag of the first.
    fn loose(&self, place: Id) -> Vec<LooseView> {
        let mut named: BTreeMap<String, (i64, Id, i64)> = BTreeMap::new();
        for part in self.lying_in(place) {
            let tag = self.item(part).and_then(|item| item.read(FieldName::Tag)).unwrap_or(i64::MAX);
            let pieces = self.pieces_wanted(part);
            let known = named.entry(self.name(part)).or_insert((tag, part, 0));
            *known = (tag.min(known.0), if tag < known.0 { part } else { known.1 }, known.2.saturating_add(pieces));
        }
        let named =
            in_order(named.into_iter().collect(), |(_, (tag, part, _)): &(String, (i64, Id, i64))| (*tag, *part));
        named.into_iter().map(|(name, (_, id, pieces))| LooseView { id, name, pieces }).collect()
    }

    pub(super) fn place_kind(&self, place: Id) -> Option<PlaceKind> {
        self.item(place)?.read(FieldName::PlaceKind)
    }
}
