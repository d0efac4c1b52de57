use std::collections::{BTreeMap, BTreeSet};

use super::advice::is_closed;
use super::missed::taken;
use super::view::{CountSums, CountView, Counted, CountedPlace, LiesIn, StoredLine};
use super::whereabouts::{Whereabouts, value_at};
use crate::job::Job;
use crate::quantity::Millis;
use crate::record::{FieldName, Id, Kind, in_order};

/// A count, worked out: which things were expected, and which were seen.
pub(super) struct Tally {
    place: Id,
    sums: CountSums,
    /// Parts that should be here.
    expected: BTreeMap<Id, Counted>,
    /// Parts that were seen and should not.
    foreign: BTreeSet<Id>,
    /// Bags and boxes that should be here, and those seen that should not.
    places: BTreeMap<Id, Counted>,
    /// The sighting of each thing that was seen.
    sightings: BTreeMap<Id, Id>,
}

impl Job {
    /// A count with a line for everything.
    #[must_use]
    pub fn count_view(&self, count: Id) -> Option<CountView> {
        let tally = self.tally(count)?;
        let things = tally.expected.iter().map(|(part, counted)| (*part, *counted));
        let all = things.chain(tally.foreign.iter().map(|part| (*part, Counted::Foreign)));
        let lines = all.filter_map(|(part, counted)| self.counted_line(&tally, part, counted)).collect();
        let places = tally.places.iter().filter_map(|(place, counted)| {
            let sighting = tally.sightings.get(place).copied();
            Some(CountedPlace { line: self.place_line(*place)?, counted: *counted, sighting })
        });
        Some(CountView {
            record: self.record_view(count)?,
            place: self.place_line(tally.place)?,
            sums: tally.sums,
            lines: by_state(lines),
            places: places.collect(),
        })
    }

    /// A part as a count has it.
    pub(super) fn counted_line(&self, tally: &Tally, part: Id, counted: Counted) -> Option<StoredLine> {
        let line = self.stored_line(part)?;
        let is_here = line.place.is_some_and(|place| self.chain_at(place, None).contains(&tally.place));
        let sighted = tally.sightings.get(&part).copied();
        // Foreign things are put right by laying them here for good, or by taking them to where they belong.
        let went = || {
            let ended = tally.sums.ended.unwrap_or(Millis(i64::MAX));
            line.seen.as_ref().is_some_and(|seen| seen.at > ended)
        };
        let settled = match counted {
            Counted::Missing => line.missed.is_none() && tally.sums.ended.is_some(),
            Counted::Foreign => is_here || matches!(line.lies, LiesIn::Refitted | LiesIn::Out) || went(),
            Counted::Here | Counted::WithBag => false,
        };
        Some(StoredLine { counted: Some(counted), sighting: sighted, settled, ..line })
    }

    /// Works a count out. While it is under way things lie where they lie now; once ended, where they lay then.
    pub(super) fn tally(&self, count: Id) -> Option<Tally> {
        let item = self.item_of(Kind::Count, count)?;
        let place: Id = item.read(FieldName::Of)?;
        self.item_of(Kind::Place, place)?;
        let ended: Option<Millis> = item.read(FieldName::Ended);
        let sightings = self.sighted_in(count);
        let mut closed = Closed { job: self, place, moment: ended, known: BTreeMap::new() };
        let mut expected = BTreeMap::new();
        // Whoever sees what is in a bag sees the bag.
        let mut seen_by_content = BTreeSet::new();
        for part in self.standing_ids(Kind::Part) {
            let Some(item) = self.item(part) else { continue };
            let Some(at) = value_at::<Id>(item, FieldName::Place, ended) else { continue };
            let Some(bags) = closed.around(at) else { continue };
            if self.whereabouts_at(part, ended) != Whereabouts::In(at) {
                continue;
            }
            let counted = if sightings.contains_key(&part) {
                seen_by_content.extend(bags);
                Counted::Here
            } else {
                self.seen_with(bags, &sightings)
            };
            expected.insert(part, counted);
        }
        let sighted = |kind: Kind| {
            sightings.keys().copied().filter(move |id| self.kind(*id) == Some(kind) && !self.is_struck(*id))
        };
        for bags in sighted(Kind::Place).filter_map(|seen| closed.around(seen).cloned()) {
            seen_by_content.extend(bags);
        }
        let mut places = BTreeMap::new();
        for inner in self.standing_ids(Kind::Place).filter(|inner| *inner != place) {
            let Some(bags) = closed.around(inner) else { continue };
            let counted = match () {
                () if sightings.contains_key(&inner) => Counted::Here,
                () if seen_by_content.contains(&inner) => Counted::WithBag,
                () => self.seen_with(bags, &sightings),
            };
            places.insert(inner, counted);
        }
        let around = self.chain_at(place, ended);
        let strangers = sighted(Kind::Place).filter(|seen| !places.contains_key(seen) && !around.contains(seen));
        let strangers: Vec<Id> = strangers.collect();
        places.extend(strangers.into_iter().map(|seen| (seen, Counted::Foreign)));
        let foreign: BTreeSet<Id> = sighted(Kind::Part).filter(|part| !expected.contains_key(part)).collect();
        let missing = expected.values().filter(|counted| **counted == Counted::Missing).count();
        let elsewhere = |part: &&Id| matches!(self.whereabouts_at(**part, ended), Whereabouts::In(_));
        let sums = CountSums {
            count,
            began: taken(item),
            ended,
            expected: expected.len(),
            seen: expected.len() - missing,
            missing,
            foreign: foreign.len(),
            elsewhere: foreign.iter().filter(elsewhere).count(),
        };
        Some(Tally { place, sums, expected, foreign, places, sightings })
    }

    /// What a count says of a thing whose own tag was not seen, by what is around it: whoever sees a closed bag or box takes what
    /// is in it for seen; whoever sees the tag of a shelf has seen the shelf.
    fn seen_with(&self, around: &[Id], sightings: &BTreeMap<Id, Id>) -> Counted {
        let vouches = |place: &Id| is_closed(self.place_kind(*place)) && sightings.contains_key(place);
        if around.iter().any(vouches) { Counted::WithBag } else { Counted::Missing }
    }

    /// Which things were seen in a count, each with its first sighting.
    fn sighted_in(&self, count: Id) -> BTreeMap<Id, Id> {
        let mut first: BTreeMap<Id, (Millis, Id)> = BTreeMap::new();
        for sighting in self.children(Kind::Sighting, FieldName::InCount, count) {
            let Some(item) = self.item(sighting) else { continue };
            let Some(of) = item.read::<Id>(FieldName::Of) else { continue };
            let this = (taken(item), sighting);
            first.entry(of).and_modify(|known| *known = this.min(*known)).or_insert(this);
        }
        first.into_iter().map(|(of, (_, sighting))| (of, sighting)).collect()
    }

    /// The counts of a place: the last that was ended, and the last that was begun after it and is not.
    pub(super) fn counts_of(&self, place: Id) -> (Option<Id>, Option<Id>) {
        let all: Vec<(Id, Millis, Option<Millis>)> = self
            .children(Kind::Count, FieldName::Of, place)
            .filter_map(|count| {
                let item = self.item(count)?;
                Some((count, taken(item), item.read::<Millis>(FieldName::Ended)))
            })
            .collect();
        let ended = all.iter().filter_map(|(count, _, ended)| Some((*ended.as_ref()?, *count))).max();
        let running =
            all.iter().filter(|(_, _, ended)| ended.is_none()).map(|(count, began, _)| (*began, *count)).max();
        let running = running.filter(|(began, _)| ended.is_none_or(|(ended, _)| *began >= ended));
        (ended.map(|(_, count)| count), running.map(|(_, count)| count))
    }
}

impl Tally {
    pub(super) const fn sums(&self) -> CountSums {
        self.sums
    }

    /// Parts that were missing, and those that were foreign.
    pub(super) fn amiss(&self) -> impl Iterator<Item = (Id, Counted)> {
        let missing = self.expected.iter().filter(|(_, counted)| **counted == Counted::Missing);
        let missing = missing.map(|(part, counted)| (*part, *counted));
        missing.chain(self.foreign.iter().map(|part| (*part, Counted::Foreign)))
    }
}

/// Missing first, then foreign, then by tag.
pub(super) fn by_state(lines: Vec<StoredLine>) -> Vec<StoredLine> {
    in_order(lines, |line| {
        let state = match line.counted {
            Some(Counted::Missing) => 0,
            _ if line.missed.is_some() && line.lies == LiesIn::Place => 0,
            Some(Counted::Foreign) => 1,
            _ => 2,
        };
        (state, line.line.tag.unwrap_or(i64::MAX), line.line.id)
    })
}

/// Which places lie in one place at a moment, each with those around it, itself first; looked up once.
struct Closed<'a> {
    job: &'a Job,
    place: Id,
    moment: Option<Millis>,
    known: BTreeMap<Id, Option<Vec<Id>>>,
}

impl Closed<'_> {
    /// The places around something in a place, up to the one that is counted; nothing where that is not among them.
    fn around(&mut self, place: Id) -> Option<&Vec<Id>> {
        let (job, counted, moment) = (self.job, self.place, self.moment);
        let known = self.known.entry(place).or_insert_with(|| {
            let chain = job.chain_at(place, moment);
            let depth = chain.iter().position(|at| *at == counted)?;
            Some(chain[..depth].to_vec())
        });
        known.as_ref()
    }
}
