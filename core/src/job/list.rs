use std::collections::{BTreeMap, BTreeSet};

use super::query::{Group, PartsQuery};
use super::view::{PartsGroup, PartsView, Sums};
use super::whole::{Job, PartKey};
use crate::quantity::{Currency, Minutes, Money};
use crate::record::{FieldName, Id, Kind, in_order};

/// A part with what lists look at in it.
type Keyed<'a> = (Id, &'a PartKey);

impl Job {
    /// A list of parts, sought, filtered and grouped.
    #[must_use]
    pub fn parts_view(&self, query: &PartsQuery) -> PartsView {
        let found = self.keys_found(query);
        let (groups, ordered) = self.grouped(query, found);
        let count = query.count.unwrap_or(usize::MAX);
        let rows = ordered.iter().skip(query.from).take(count).filter_map(|(part, _)| self.part_line(*part));
        let rows = rows.map(|mut line| {
            if !query.find.trim().is_empty() {
                line.found = self.found_in(line.id, &query.find);
            }
            line
        });
        PartsView {
            total: self.part_keys().values().filter(|key| !key.struck).count(),
            found: ordered.len(),
            groups,
            from: query.from,
            rows: rows.collect(),
            sums: self.sums_of(ordered.iter().filter_map(|(_, key)| key.chosen)),
        }
    }

    /// The parts that match, by tag or, when words are sought, best first.
    #[must_use]
    pub fn parts_found(&self, query: &PartsQuery) -> Vec<Id> {
        self.keys_found(query).into_iter().map(|(part, _)| part).collect()
    }

    fn keys_found(&self, query: &PartsQuery) -> Vec<Keyed<'_>> {
        let assemblies = query.assembly.map(|id| self.within(Kind::Assembly, FieldName::Inside, id));
        let places = query.place.map(|id| self.within(Kind::Place, FieldName::Within, id));
        let inside = |id: Option<Id>, ids: &Option<BTreeSet<Id>>| {
            ids.as_ref().is_none_or(|ids| id.is_some_and(|id| ids.contains(&id)))
        };
        let matches = |(part, key): &Keyed<'_>| {
            key.struck == query.struck
                && inside(key.assembly, &assemblies)
                && inside(key.place, &places)
                && query.standing.is_none_or(|standing| self.standing(*part) == standing)
                && query.route.is_none_or(|route| self.route_of(*part) == Some(route))
        };
        if query.find.trim().is_empty() {
            let parts = self.part_keys().iter().map(|(part, key)| (*part, key)).filter(matches).collect();
            return in_order(parts, |(part, key)| (key.tag.unwrap_or(i64::MAX), *part));
        }
        self.keys_of_found(&query.find).into_iter().filter(matches).collect()
    }

    /// Parts in groups: the groups in their order, the parts of each as they came.
    fn grouped<'a>(&self, query: &PartsQuery, parts: Vec<Keyed<'a>>) -> (Vec<PartsGroup>, Vec<Keyed<'a>>) {
        if query.group == Group::None {
            return (Vec::new(), parts);
        }
        let ranks = self.ranks(query.group);
        let mut grouped: BTreeMap<(usize, Option<Id>), Vec<Keyed<'_>>> = BTreeMap::new();
        for (part, key) in parts {
            grouped.entry(self.group_key(query.group, part, key, &ranks)).or_default().push((part, key));
        }
        let mut ordered = Vec::new();
        let mut groups = Vec::new();
        for ((_, id), parts) in grouped {
            groups.push(self.group(query.group, id, parts[0].0, parts.len(), ordered.len()));
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

    fn group_key(&self, group: Group, part: Id, key: &PartKey, ranks: &BTreeMap<Id, usize>) -> (usize, Option<Id>) {
        let by = |id: Option<Id>| match id.and_then(|id| ranks.get(&id)) {
            Some(rank) => (*rank, id),
            None => (usize::MAX, None),
        };
        match group {
            Group::Assembly => by(key.assembly),
            Group::Place => by(key.place),
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
        self.sums_of(parts.iter().filter_map(|part| self.item(*part)?.read(FieldName::Chosen)))
    }

    /// The same over what the parts say was chosen.
    fn sums_of(&self, chosen: impl Iterator<Item = Id>) -> Sums {
        let mut cash: BTreeMap<Currency, i64> = BTreeMap::new();
        let mut minutes = 0_i64;
        let mut decided = 0;
        let mut counted = BTreeSet::new();
        for choice in chosen.filter_map(|choice| self.item(self.holding_choice(choice)?)) {
            decided += 1;
            // A kit that was chosen for several parts is paid for, and worked on, once.
            if choice.read::<Id>(FieldName::Quote).is_some_and(|quote| !counted.insert(quote)) {
                continue;
            }
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
