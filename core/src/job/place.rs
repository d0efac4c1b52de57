use std::collections::BTreeSet;

use super::view::{PlaceLine, PlacesView};
use super::whole::Job;
use crate::record::{FieldName, Id, Kind};

impl Job {
    /// Names from the outermost place to this one.
    #[must_use]
    pub fn place_path(&self, place: Id) -> Vec<String> {
        self.chain(FieldName::Within, place).into_iter().rev().map(|id| self.name(id)).collect()
    }

    /// Records of a kind, each after the one that `field` says it is in; those in a circle stand at the end.
    pub(super) fn nested(&self, kind: Kind, field: FieldName) -> Vec<(Id, usize)> {
        let mut nested = Vec::new();
        let mut placed = BTreeSet::new();
        let outer = |id: Id| {
            let outer = self.item(id).and_then(|item| item.read::<Id>(field));
            outer.filter(|outer| self.kind(*outer) == Some(kind) && !self.is_struck(*outer))
        };
        let mut tops: Vec<Id> = self.standing_ids(kind).filter(|id| outer(*id).is_none()).collect();
        self.sort_by_name(&mut tops);
        for top in tops {
            self.nest(kind, field, top, 0, &mut placed, &mut nested);
        }
        let rest: Vec<Id> = self.standing_ids(kind).filter(|id| !placed.contains(id)).collect();
        for id in rest {
            self.nest(kind, field, id, 0, &mut placed, &mut nested);
        }
        nested
    }

    fn nest(
        &self,
        kind: Kind,
        field: FieldName,
        top: Id,
        depth: usize,
        placed: &mut BTreeSet<Id>,
        nested: &mut Vec<(Id, usize)>,
    ) {
        // An own stack: a chain as long as a hostile file makes it must not end the program.
        let mut waiting = vec![(top, depth)];
        while let Some((id, depth)) = waiting.pop() {
            if !placed.insert(id) {
                continue;
            }
            nested.push((id, depth));
            let mut inner: Vec<Id> = self.children(kind, field, id).collect();
            self.sort_by_name(&mut inner);
            waiting.extend(inner.into_iter().rev().map(|inner| (inner, depth + 1)));
        }
    }

    pub(super) fn sort_by_name(&self, ids: &mut [Id]) {
        ids.sort_by_cached_key(|id| (natural(&self.name(*id)), *id));
    }

    /// One place.
    pub(super) fn place_line(&self, place: Id, depth: usize) -> Option<PlaceLine> {
        let record = self.record_view(place)?;
        let parts = self.children(Kind::Part, FieldName::Place, place).count();
        let parts_within = self.within(Kind::Place, FieldName::Within, place).into_iter();
        let parts_within = parts_within.map(|id| self.children(Kind::Part, FieldName::Place, id).count()).sum();
        let place_kind = record.values.place_kind;
        Some(PlaceLine { record, place_kind, path: self.place_path(place), depth, parts, parts_within })
    }

    /// A record and all that are in it, by `field`.
    pub(super) fn within(&self, kind: Kind, field: FieldName, top: Id) -> BTreeSet<Id> {
        let mut within = BTreeSet::from([top]);
        let mut waiting = vec![top];
        while let Some(id) = waiting.pop() {
            waiting.extend(self.children(kind, field, id).filter(|inner| within.insert(*inner)));
        }
        within
    }

    /// All places, each after the one it is within.
    #[must_use]
    pub fn places_view(&self) -> PlacesView {
        let places = self.nested(Kind::Place, FieldName::Within).into_iter();
        let places = places.filter_map(|(id, depth)| self.place_line(id, depth)).collect();
        let lies = |part: &Id| self.item(*part).is_some_and(|item| item.read::<Id>(FieldName::Place).is_some());
        PlacesView { places, nowhere: self.standing_ids(Kind::Part).filter(|part| !lies(part)).count() }
    }
}

/// A key by which `Box 9` comes before `Box 10`: runs of figures count as numbers.
fn natural(name: &str) -> Vec<(u64, String)> {
    let mut key: Vec<(u64, String)> = Vec::new();
    let (mut figures, mut letters) = (String::new(), String::new());
    for character in name.to_lowercase().chars() {
        if character.is_ascii_digit() {
            if !letters.is_empty() {
                key.push((u64::MAX, std::mem::take(&mut letters)));
            }
            figures.push(character);
        } else {
            if !figures.is_empty() {
                key.push((std::mem::take(&mut figures).parse().unwrap_or(u64::MAX - 1), String::new()));
            }
            letters.push(character);
        }
    }
    if !letters.is_empty() {
        key.push((u64::MAX, letters));
    }
    if !figures.is_empty() {
        key.push((figures.parse().unwrap_or(u64::MAX - 1), String::new()));
    }
    key
}

#[cfg(test)]
mod tests {
    use super::natural;

    #[test]
    fn figures_count_as_numbers() {
        assert!(natural("Box 9") < natural("Box 10"));
        assert!(natural("Rack A") < natural("Rack B"));
    }
}
