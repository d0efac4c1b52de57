use std::collections::BTreeSet;

use super::view::{PlaceLine, PlacesView};
use super::whole::Job;
use crate::record::{FieldName, Id, Kind, ordered_by};
use crate::stores::code_of;

impl Job {
    /// Names from the outermost place to this one; of a chain deeper than any garage only the innermost. What is struck out is
    /// no place on the way.
    #[must_use]
    pub fn place_path(&self, place: Id) -> Vec<String> {
        let mut names: Vec<String> = self.chain_at(place, None).into_iter().map(|id| self.name(id)).collect();
        names.reverse();
        names
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

    pub(crate) fn sort_by_name(&self, ids: &mut [Id]) {
        let named = ids.iter().map(|id| (natural(&self.name(*id)), *id)).collect();
        let named = ordered_by(named, Ord::cmp);
        ids.iter_mut().zip(named).for_each(|(slot, (_, id))| *slot = id);
    }

    /// Parts that lie right in a place.
    fn parts_in(&self, place: Id) -> usize {
        self.lying_in(place).count()
    }

    /// One place by itself.
    pub(crate) fn place_line(&self, place: Id) -> Option<PlaceLine> {
        self.item_of(Kind::Place, place)?;
        let within = self.within(Kind::Place, FieldName::Within, place).into_iter();
        self.place_line_with(place, 0, within.map(|id| self.parts_in(id)).sum())
    }

    fn place_line_with(&self, place: Id, depth: usize, parts_within: usize) -> Option<PlaceLine> {
        let record = self.record_view(place)?;
        let place_kind = record.values.place_kind;
        let parts = self.parts_in(place);
        let code = self.item(place).and_then(code_of);
        Some(PlaceLine { record, place_kind, code, path: self.place_path(place), depth, parts, parts_within })
    }

    /// Parts in each of the nested places and in all within it, in one pass from the innermost outwards.
    fn parts_within(&self, nested: &[(Id, usize)]) -> Vec<usize> {
        let deepest = nested.iter().map(|(_, depth)| *depth).max().unwrap_or(0);
        let mut below = vec![0; deepest + 2];
        let mut counts: Vec<usize> = Vec::with_capacity(nested.len());
        for (id, depth) in nested.iter().rev() {
            let count = self.parts_in(*id) + std::mem::take(&mut below[depth + 1]);
            below[*depth] += count;
            counts.push(count);
        }
        counts.reverse();
        counts
    }

    /// A record and all that are in it, by `field`.
    pub(crate) fn within(&self, kind: Kind, field: FieldName, top: Id) -> BTreeSet<Id> {
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
        let nested = self.nested(Kind::Place, FieldName::Within);
        let counted = nested.iter().zip(self.parts_within(&nested));
        let places = counted.filter_map(|((id, depth), count)| self.place_line_with(*id, *depth, count)).collect();
        let nowhere = self.standing_ids(Kind::Part).filter(|part| self.is_nowhere(*part));
        PlacesView { places, nowhere: nowhere.count() }
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
