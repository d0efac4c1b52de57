use std::collections::{BTreeMap, BTreeSet};

use super::query::{Group, PartsQuery};
use super::view::{PartsGroup, PartsView, Sums};
use super::whole::Job;
use crate::quantity::{Currency, Minutes, Money};
use crate::record::{FieldName, Id, Item, Kind};

impl Job {
    /// A list of parts, sought, filtered and grouped.
    #[must_use]
    pub fn parts_view(&self, query: &PartsQuery) -> PartsView {
        let found = self.parts_found(query);
        let (groups, ordered) = self.grouped(query, found);
        let count = query.count.unwrap_or(usize::MAX);
        let rows = ordered.iter().skip(query.from).take(count).filter_map(|part| self.part_line(*part));
        let rows = rows.map(|mut line| {
            if !query.find.trim().is_empty() {
                line.found = self.found_in(line.id, &query.find);
            }
            line
        });
        PartsView {
            total: self.standing_ids(Kind::Part).count(),
            found: ordered.len(),
            groups,
            from: query.from,
            rows: rows.collect(),
            sums: self.sums(&ordered),
        }
    }

    /// The parts that match, by tag or, when words are sought, best first.
    #[must_use]
    pub fn parts_found(&self, query: &PartsQuery) -> Vec<Id> {
        let assemblies = query.assembly.map(|id| self.within(Kind::Assembly, FieldName::Inside, id));
        let places = query.place.map(|id| self.within(Kind::Place, FieldName::Within, id));
        let inside = |item: &Item, field, ids: &Option<BTreeSet<Id>>| {
            ids.as_ref().is_none_or(|ids| item.read::<Id>(field).is_some_and(|id| ids.contains(&id)))
        };
        let matches = |part: &Id| {
            let Some(item) = self.item(*part) else { return false };
            item.is_struck() == query.struck
                && inside(item, FieldName::Assembly, &assemblies)
                && inside(item, FieldName::Place, &places)
                && query.standing.is_none_or(|standing| self.standing(*part) == standing)
                && query.route.is_none_or(|route| self.route_of(*part) == Some(route))
        };
        if query.find.trim().is_empty() {
            let mut parts: Vec<Id> = self.ids(Kind::Part).filter(matches).collect();
            parts.sort_by_cached_key(|part| self.tag_key(*part));
            return parts;
        }
        self.find_parts(&query.find).into_iter().filter(matches).collect()
    }

    fn tag_key(&self, part: Id) -> (i64, Id) {
        let tag = self.item(part).and_then(|item| item.read(FieldName::Tag));
        (tag.unwrap_or(i64::MAX), part)
    }

    /// Parts in groups: the groups in their order, the parts of each as they came.
    fn grouped(&self, query: &PartsQuery, parts: Vec<Id>) -> (Vec<PartsGroup>, Vec<Id>) {
        if query.group == Group::None {
            return (Vec::new(), parts);
        }
        let ranks = self.ranks(query.group);
        let mut grouped: BTreeMap<(usize, Option<Id>), Vec<Id>> = BTreeMap::new();
        for part in parts {
            grouped.entry(self.group_key(query.group, part, &ranks)).or_default().push(part);
        }
        let mut ordered = Vec::new();
        let mut groups = Vec::new();
        for ((_, id), parts) in grouped {
            groups.push(self.group(query.group, id, parts[0], parts.len(), ordered.len()));
            ordered.extend(parts);
        }
        (groups, ordered)
    }

    /// In which order assemblies or places stand.
    fn ranks(&self, group: Group) -> BTreeMap<Id, usize> {
        let nested = match group {
            Group::Assembly => self.nested(Kind::Assembly, FieldName::Inside),
            Group::Place => self.nested(Kind::Place, FieldName::Within),
            _ => Vec::new(),
        };
        nested.into_iter().enumerate().map(|(rank, (id, _))| (id, rank)).collect()
    }

    fn group_key(&self, group: Group, part: Id, ranks: &BTreeMap<Id, usize>) -> (usize, Option<Id>) {
        let target = |field| self.item(part).and_then(|item| item.read::<Id>(field));
        let by = |id: Option<Id>| match id.and_then(|id| ranks.get(&id)) {
            Some(rank) => (*rank, id),
            None => (usize::MAX, None),
        };
        match group {
            Group::Assembly => by(target(FieldName::Assembly)),
            Group::Place => by(target(FieldName::Place)),
            Group::Route => (self.route_of(part).map_or(usize::MAX, |route| route as usize), None),
            Group::Standing => (self.standing(part) as usize, None),
            Group::None => (0, None),
        }
    }

    fn group(&self, group: Group, id: Option<Id>, first: Id, count: usize, from: usize) -> PartsGroup {
        PartsGroup {
            id,
            title: match (group, id) {
                (Group::Place, Some(place)) => self.place_path(place).join(" · "),
                (_, Some(id)) => self.name(id),
                _ => String::new(),
            },
            side: id.filter(|_| group == Group::Assembly).and_then(|id| self.side_of_assembly(id)),
            route: self.route_of(first).filter(|_| group == Group::Route),
            standing: (group == Group::Standing).then(|| self.standing(first)),
            count,
            from,
        }
    }

    /// Exact sums over the chosen quotes of parts.
    #[must_use]
    pub fn sums(&self, parts: &[Id]) -> Sums {
        let mut cash: BTreeMap<Currency, i64> = BTreeMap::new();
        let mut minutes = 0_i64;
        let mut decided = 0;
        for choice in parts.iter().filter_map(|part| self.item(self.choice_of(*part)?)) {
            decided += 1;
            minutes = minutes.saturating_add(choice.read::<Minutes>(FieldName::OwnTime).unwrap_or_default().0);
            if let Some(money) = choice.read::<Money>(FieldName::Cash) {
                let sum = cash.entry(money.currency).or_default();
                *sum = sum.saturating_add(money.minor);
            }
        }
        let cash = cash.into_iter().map(|(currency, minor)| Money::from_minor(minor, currency)).collect();
        Sums { cash, own_time: Minutes::new(minutes), decided }
    }
}
