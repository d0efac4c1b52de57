//! Where a part may be laid next: heavy low, fragile high, sheet metal on edge, left and right apart, with what it belongs to
//! (common practice, no source). The weights only put these in order.

use std::collections::BTreeMap;

use super::view::{Advice, Suits};
use super::whereabouts::Whereabouts;
use crate::inspect::{Lift, build_of, counterpart, lift};
use crate::job::Job;
use crate::job::vocabulary::{Build, PlaceKind, Side};
use crate::record::{FieldName, Id, Item, Kind, in_order};

/// What an empty place is worth.
const ROOM: i64 = 5;
/// So many places are proposed.
const PROPOSED: usize = 3;

/// Whether something heavy lies in a place, looked up once.
pub(super) type Heavies = BTreeMap<Id, bool>;

/// How high something lies, where that matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Level {
    /// On the floor, or on the lowest of several shelves.
    Low,
    /// On the highest of several shelves.
    High,
    /// Anywhere else.
    Between,
}

/// What of a part says where it lies well.
struct Nature {
    heavy: bool,
    fragile: bool,
    sheet: bool,
    side: Option<Side>,
}

impl Nature {
    fn of(job: &Job, item: &Item) -> Self {
        Self {
            heavy: matches!(lift(item), Some(Lift::Two | Lift::TwoAtReach)),
            fragile: item.is(FieldName::Fragile),
            sheet: build_of(item) == Some(Build::Sheet),
            side: job.side_of_part(item),
        }
    }
}

impl Job {
    /// Where a part may be laid next, the best first; nothing while it is on the vehicle or out of the house.
    pub(super) fn advice(&self, part: Id) -> Vec<Advice> {
        let Some(item) = self.item_of(Kind::Part, part) else { return Vec::new() };
        let now = match self.whereabouts(part) {
            Whereabouts::In(place) => Some(place),
            Whereabouts::Nowhere => None,
            Whereabouts::Out(_) | Whereabouts::On | Whereabouts::Refitted => return Vec::new(),
        };
        let nature = Nature::of(self, item);
        let mates = self.mates(part, item, nature.side);
        let areas = self.areas_of(&mates);
        // What lies well enough is not sent elsewhere because that happens to be empty.
        let least = now.map_or(0, |now| self.rate(now, &nature, &mates, &areas).0.max(ROOM));
        let candidates = self.standing_ids(Kind::Place).filter(|place| Some(*place) != now && self.takes_parts(*place));
        let rated = candidates.filter_map(|place| {
            let (score, because) = self.rate(place, &nature, &mates, &areas);
            (score > least && !because.is_empty()).then(|| (score, self.place_path(place), place, because))
        });
        let rated = in_order(rated.collect(), |(score, path, place, _): &(i64, Vec<String>, Id, Vec<Suits>)| {
            (-score, path.clone(), *place)
        });
        let fitting = rated.into_iter().filter(|(_, _, place, _)| self.goes_with_what_is_in(part, &nature, *place));
        fitting.take(PROPOSED).map(|(_, path, place, because)| Advice { place, path, because }).collect()
    }

    /// Parts of the same assembly and side by the place that they lie in.
    fn mates(&self, part: Id, item: &Item, side: Option<Side>) -> BTreeMap<Id, usize> {
        let mut mates = BTreeMap::new();
        let assembly: Option<Id> = item.read(FieldName::Assembly);
        let others = assembly.into_iter().flat_map(|id| self.children(Kind::Part, FieldName::Assembly, id));
        for other in others.filter(|other| *other != part) {
            let same_side = self.item(other).is_some_and(|other| self.side_of_part(other) == side);
            if let (true, Whereabouts::In(place)) = (same_side, self.whereabouts(other)) {
                *mates.entry(place).or_default() += 1;
            }
        }
        mates
    }

    /// The outermost places that they are in.
    fn areas_of(&self, mates: &BTreeMap<Id, usize>) -> Vec<Id> {
        mates.keys().filter_map(|place| self.chain_at(*place, None).last().copied()).collect()
    }

    /// Whether parts are laid right into such a place: into anything but an area or a rack with places of its own.
    fn takes_parts(&self, place: Id) -> bool {
        let is_outer = matches!(self.place_kind(place), Some(PlaceKind::Area | PlaceKind::Rack));
        !is_outer || self.children(Kind::Place, FieldName::Within, place).next().is_none()
    }

    fn rate(&self, place: Id, nature: &Nature, mates: &BTreeMap<Id, usize>, areas: &[Id]) -> (i64, Vec<Suits>) {
        let (level, kind) = (self.level(place), self.place_kind(place));
        let is_closed = is_closed(kind);
        let mut score = 0;
        let mut because = Vec::new();
        let mut rate = |holds: bool, by: i64, suits: Option<Suits>| {
            if holds {
                score += by;
                because.extend(suits);
            }
        };
        rate(nature.heavy && level == Level::Low, 40, Some(Suits::HeavyLow));
        rate(
            nature.heavy && (level == Level::High || matches!(kind, Some(PlaceKind::Bag | PlaceKind::Hook))),
            -80,
            None,
        );
        rate(nature.fragile && level == Level::High, 40, Some(Suits::FragileHigh));
        rate(nature.fragile && level == Level::Low, -60, None);
        let hangs = matches!(kind, Some(PlaceKind::Hook | PlaceKind::Floor));
        rate(nature.sheet && hangs, 40, Some(Suits::SheetOnEdge));
        rate(nature.sheet && is_closed, -80, None);
        let here = mates.get(&place).copied().unwrap_or(0);
        rate(here > 0, 30 + i64::try_from(here.min(9)).unwrap_or(9), Some(Suits::SameAssembly));
        let area = self.chain_at(place, None).last().copied();
        rate(here == 0 && area.is_some_and(|area| areas.contains(&area)), 15, Some(Suits::SameArea));
        rate(kind == Some(PlaceKind::Hook) && !nature.sheet, -80, None);
        rate(self.is_empty(place), ROOM, Some(Suits::Empty));
        (score, because)
    }

    fn is_empty(&self, place: Id) -> bool {
        self.lying_in(place).next().is_none() && self.children(Kind::Place, FieldName::Within, place).next().is_none()
    }

    /// Whether a part may lie in a box with what is in it: not with parts of the other side, nothing fragile with anything
    /// heavy. On an open shelf they lie apart.
    fn goes_with_what_is_in(&self, part: Id, nature: &Nature, place: Id) -> bool {
        if !is_closed(self.place_kind(place)) {
            return true;
        }
        let others = self.lying_in(place).filter(|other| *other != part);
        others.filter_map(|other| self.item(other)).map(|item| Nature::of(self, item)).all(|other| {
            let apart = matches!((nature.side, other.side), (Some(one), Some(another)) if one != another);
            let crushed = (nature.heavy && other.fragile) || (nature.fragile && other.heavy);
            !apart && !crushed
        })
    }

    /// Why a part does not lie well where it lies.
    pub(super) fn awkward(&self, part: Id, place: Id, heavies: &mut Heavies) -> Vec<Suits> {
        let Some(item) = self.item(part) else { return Vec::new() };
        let (nature, level) = (Nature::of(self, item), self.level(place));
        let is_closed = is_closed(self.place_kind(place));
        let mut awkward = Vec::new();
        let mut tell = |holds: bool, suits: Suits| awkward.extend(holds.then_some(suits));
        tell(nature.heavy && level == Level::High, Suits::HeavyHigh);
        tell(nature.fragile && level == Level::Low, Suits::FragileLow);
        tell(nature.sheet && is_closed, Suits::SheetInBox);
        let other_side = || counterpart(self, part).map(|other| self.whereabouts(other));
        tell(is_closed && other_side() == Some(Whereabouts::In(place)), Suits::SidesMixed);
        let heavy_here = |heavies: &mut Heavies| {
            *heavies.entry(place).or_insert_with(|| {
                let items = self.lying_in(place).filter_map(|other| self.item(other));
                items.into_iter().any(|item| matches!(lift(item), Some(Lift::Two | Lift::TwoAtReach)))
            })
        };
        tell(nature.fragile && is_closed && heavy_here(heavies), Suits::UnderHeavy);
        awkward
    }

    /// How high a place is: by the floor, or by its shelf among those of the rack.
    fn level(&self, place: Id) -> Level {
        let chain = self.chain_at(place, None);
        if chain.iter().any(|at| self.place_kind(*at) == Some(PlaceKind::Floor)) {
            return Level::Low;
        }
        let shelf = chain.windows(2).find(|pair| {
            self.place_kind(pair[0]) == Some(PlaceKind::Shelf) && self.place_kind(pair[1]) == Some(PlaceKind::Rack)
        });
        let Some(&[shelf, rack]) = shelf else { return Level::Between };
        let inside = self.children(Kind::Place, FieldName::Within, rack);
        let mut shelves: Vec<Id> = inside.filter(|id| self.place_kind(*id) == Some(PlaceKind::Shelf)).collect();
        self.sort_by_name(&mut shelves);
        match shelves.iter().position(|id| *id == shelf) {
            _ if shelves.len() < 2 => Level::Between,
            Some(0) => Level::Low,
            Some(at) if at + 1 == shelves.len() => Level::High,
            _ => Level::Between,
        }
    }
}

/// Whether nobody sees what is in it.
pub(super) const fn is_closed(kind: Option<PlaceKind>) -> bool {
    matches!(kind, Some(PlaceKind::Box | PlaceKind::Bag))
}
