use std::collections::BTreeSet;

use asfound_core::inspect::heft;
use asfound_core::job::vocabulary::{Build, Fit, OutFor, PlaceKind};
use asfound_core::job::{Change, Command, Context, Job, Sent, TagCode, apply};
use asfound_core::quantity::{Day, Millis};
use asfound_core::record::{EntryId, Id, Kind, Replica};
use asfound_core::stores::{Counted, LiesIn, Whereabouts};
use proptest::prelude::*;

use crate::cases;

/// What somebody does in the stores; numbers pick among what is there.
#[derive(Debug, Clone)]
enum Deed {
    Place(PlaceKind),
    Part,
    /// A place into another.
    Move(usize, usize),
    Lay(usize, usize),
    /// Off the list of what lies anywhere.
    Lift(usize),
    Send(usize),
    Return(usize),
    Fit(usize, Fit),
    Count(usize),
    End(usize),
    /// A part or a place, in a running count or by itself.
    See(usize, bool),
    Strike(usize),
    Undo(usize),
}

fn any_deed() -> impl Strategy<Value = Deed> {
    let pick = || 0_usize..40;
    prop_oneof![
        4 => proptest::sample::select(PlaceKind::ALL).prop_map(Deed::Place),
        6 => Just(Deed::Part),
        5 => (pick(), pick()).prop_map(|(inner, outer)| Deed::Move(inner, outer)),
        8 => (pick(), pick()).prop_map(|(part, place)| Deed::Lay(part, place)),
        1 => pick().prop_map(Deed::Lift),
        2 => pick().prop_map(Deed::Send),
        1 => pick().prop_map(Deed::Return),
        2 => (pick(), proptest::sample::select(Fit::ALL)).prop_map(|(part, fit)| Deed::Fit(part, fit)),
        3 => pick().prop_map(Deed::Count),
        2 => pick().prop_map(Deed::End),
        8 => (pick(), any::<bool>()).prop_map(|(thing, counting)| Deed::See(thing, counting)),
        1 => pick().prop_map(Deed::Strike),
        1 => pick().prop_map(Deed::Undo),
    ]
}

fn any_deeds() -> impl Strategy<Value = Vec<Deed>> {
    prop::collection::vec(any_deed(), 0..40)
}

/// One device whose clock goes on with each command.
#[derive(Debug, Clone)]
struct Shed {
    job: Job,
    made: u64,
    at: i64,
}

fn derived(purpose: &str, number: u64) -> Id {
    Id::derived(Id::from_bytes([66; 16]), purpose, number)
}

impl Shed {
    fn after(deeds: &[Deed]) -> Self {
        let mut shed = Self { job: Job::new(), made: 0, at: 0 };
        let _ = shed.make(Kind::Job, vec![]);
        for place in [PlaceKind::Rack, PlaceKind::Shelf, PlaceKind::Box] {
            shed.deed(&Deed::Place(place));
        }
        for deed in deeds {
            shed.deed(deed);
        }
        shed
    }

    fn command(&mut self, command: Command) {
        self.at += 1;
        let context =
            Context { replica: Replica::from_bytes([1; 8]), device: Id::from_bytes([1; 16]), at: Millis(self.at) };
        let sent = Sent { id: derived("command", self.at.unsigned_abs()), command };
        let applied = apply(&self.job, &sent, &context);
        self.job.absorb(applied.entries);
    }

    fn make(&mut self, kind: Kind, changes: Vec<Change>) -> Id {
        self.made += 1;
        let id = derived("record", self.made);
        self.command(Command::Create { id, kind, changes });
        id
    }

    fn change(&mut self, id: Id, change: Change) {
        self.command(Command::Change { ids: vec![id], changes: vec![change], seen: None });
    }

    fn pick(&self, kinds: &[Kind], number: usize) -> Option<Id> {
        let ids: Vec<Id> = kinds.iter().flat_map(|kind| self.job.standing_ids(*kind)).collect();
        ids.get(number % ids.len().max(1)).copied()
    }

    fn now(&self) -> Millis {
        Millis(self.at + 1)
    }

    fn running(&self) -> Option<Id> {
        self.job
            .standing_ids(Kind::Count)
            .find(|count| self.job.count_view(*count).is_some_and(|view| view.sums.ended.is_none()))
    }

    fn see(&mut self, thing: Id, count: Option<Id>) {
        let place = count.and_then(|count| self.job.count_view(count)).map(|view| view.place.record.id);
        let changes = [Change::Of(thing), Change::Taken(self.now())];
        let more = place.map(Change::Place).into_iter().chain(count.map(Change::InCount));
        let _ = self.make(Kind::Sighting, changes.into_iter().chain(more).collect());
    }

    fn end(&mut self, count: Id) {
        self.change(count, Change::Ended(self.now()));
    }

    fn deed(&mut self, deed: &Deed) {
        let _ = self.try_deed(deed);
    }

    fn try_deed(&mut self, deed: &Deed) -> Option<()> {
        match deed {
            Deed::Place(kind) => {
                let _ = self.make(Kind::Place, vec![Change::PlaceKind(*kind)]);
            }
            Deed::Part => {
                let _ = self.make(Kind::Part, vec![]);
            }
            Deed::Move(inner, outer) => {
                let inner = self.pick(&[Kind::Place], *inner)?;
                self.change(inner, Change::Within(self.pick(&[Kind::Place], *outer)?));
            }
            Deed::Lay(part, place) => {
                let part = self.pick(&[Kind::Part], *part)?;
                self.change(part, Change::Place(self.pick(&[Kind::Place], *place)?));
            }
            Deed::Lift(part) => {
                let part = self.pick(&[Kind::Part], *part)?;
                self.change(part, Change::Clear(asfound_core::record::FieldName::Place));
            }
            Deed::Send(part) => {
                let part = self.pick(&[Kind::Part], *part)?;
                let taken = Change::Taken(self.now());
                let _ = self.make(Kind::Outing, vec![Change::Of(part), Change::OutFor(OutFor::Loan), taken]);
            }
            Deed::Return(outing) => {
                let outing = self.pick(&[Kind::Outing], *outing)?;
                self.change(outing, Change::Arrived(Day::from_count(1)?));
            }
            Deed::Fit(part, fit) => {
                let part = self.pick(&[Kind::Part], *part)?;
                self.change(part, Change::Fit(*fit));
            }
            Deed::Count(place) => {
                let place = self.pick(&[Kind::Place], *place)?;
                let taken = Change::Taken(self.now());
                let _ = self.make(Kind::Count, vec![Change::Of(place), taken]);
            }
            Deed::End(count) => {
                let count = self.pick(&[Kind::Count], *count)?;
                self.end(count);
            }
            Deed::See(thing, counting) => {
                let thing = self.pick(&[Kind::Part, Kind::Place], *thing)?;
                let count = self.running().filter(|_| *counting);
                self.see(thing, count);
            }
            Deed::Strike(thing) => {
                let thing = self.pick(&[Kind::Part, Kind::Place, Kind::Sighting, Kind::Count], *thing)?;
                self.change(thing, Change::Struck(true));
            }
            Deed::Undo(entry) => {
                let entries: Vec<EntryId> = self.job.record().entries().map(|entry| entry.id).collect();
                self.command(Command::Undo { entry: entries[entry % entries.len()] });
            }
        }
        Some(())
    }

    fn parts(&self) -> Vec<Id> {
        self.job.standing_ids(Kind::Part).collect()
    }

    fn way_to(&self, part: Id) -> Vec<Id> {
        self.job.where_view(part).map(|view| view.way.into_iter().map(|step| step.id).collect()).unwrap_or_default()
    }
}

proptest! {
    #![proptest_config(cases(400))]

    /// A moved box moves what is in it, however deep, and nothing else.
    /// Break: in `chain_at` stop at the second place.
    #[test]
    fn a_moved_box_moves_what_is_in_it(deeds in any_deeds(), inner in 0_usize..40, outer in 0_usize..40) {
        let mut shed = Shed::after(&deeds);
        let (Some(moved), Some(to)) = (shed.pick(&[Kind::Place], inner), shed.pick(&[Kind::Place], outer)) else { return Ok(()) };
        let way_to_place = |shed: &Shed, place: Id| -> Vec<Id> {
            shed.job.place_view(place).map(|view| view.way.into_iter().map(|step| step.id).collect()).unwrap_or_default()
        };
        // A place is never moved into itself by a person; a merge may do so, and is told.
        prop_assume!(!way_to_place(&shed, to).contains(&moved));
        let before: Vec<(Id, Vec<Id>)> = shed.parts().into_iter().map(|part| (part, shed.way_to(part))).collect();
        shed.change(moved, Change::Within(to));
        let target = way_to_place(&shed, to);
        for (part, way) in before {
            let expected = match way.iter().position(|id| *id == moved) {
                Some(at) => target.iter().chain(&way[at..]).copied().collect(),
                None => way,
            };
            prop_assert_eq!(shed.way_to(part), expected);
        }
    }

    /// Every part is in exactly one of: a place, nowhere, out, on the vehicle, refitted; and the lists say so, too.
    /// Break: in `whereabouts_at` take a struck-out place for one.
    #[test]
    fn every_part_is_in_exactly_one(deeds in any_deeds()) {
        let shed = Shed::after(&deeds);
        let missing = shed.job.missing_view(None, None, None);
        let views: Vec<_> = shed.job.standing_ids(Kind::Place).filter_map(|place| shed.job.place_view(place)).collect();
        let lines = |lines: &[asfound_core::stores::StoredLine]| lines.iter().map(|line| line.line.id).collect::<Vec<_>>();
        let (nowhere, out) = (lines(&missing.nowhere), lines(&missing.out));
        for part in shed.parts() {
            let lies = |place: &asfound_core::stores::PlaceView| {
                let here = place.parts.iter().filter(|line| line.line.id == part && line.place == Some(place.line.record.id));
                here.count()
            };
            let places: usize = views.iter().map(lies).sum();
            let is = shed.job.where_view(part).expect("a part").part.lies;
            let on = [LiesIn::Vehicle, LiesIn::Refitted].iter().filter(|one| **one == is).count();
            let times = |ids: &[Id]| ids.iter().filter(|id| **id == part).count();
            prop_assert_eq!(places + times(&nowhere) + times(&out) + on, 1);
            prop_assert_eq!(places == 1, is == LiesIn::Place);
        }
        let counted: usize = shed.job.places_view().places.iter().map(|line| line.parts).sum();
        prop_assert_eq!(counted, shed.parts().iter().filter(|part| matches!(shed.job.whereabouts(**part), Whereabouts::In(_))).count());
    }

    /// A count holds everything expected once; what was seen and what is missing are all that is expected, and nothing foreign
    /// is. While it is under way, expected is what lies there now.
    /// Break: in `tally` put a foreign part among the expected.
    #[test]
    fn a_count_adds_up(deeds in any_deeds()) {
        let shed = Shed::after(&deeds);
        for count in shed.job.standing_ids(Kind::Count) {
            let Some(view) = shed.job.count_view(count) else { continue };
            let of = |wanted: &[Counted]| {
                let lines = view.lines.iter().filter(|line| line.counted.is_some_and(|counted| wanted.contains(&counted)));
                lines.map(|line| line.line.id).collect::<Vec<Id>>()
            };
            let [expected, seen, missing, foreign] = [
                of(&[Counted::Here, Counted::WithBag, Counted::Missing]),
                of(&[Counted::Here, Counted::WithBag]),
                of(&[Counted::Missing]),
                of(&[Counted::Foreign]),
            ];
            let sums = view.sums;
            prop_assert_eq!([sums.expected, sums.seen, sums.missing, sums.foreign], [expected.len(), seen.len(), missing.len(), foreign.len()]);
            prop_assert_eq!(sums.seen + sums.missing, sums.expected);
            prop_assert!(sums.elsewhere <= sums.foreign);
            prop_assert_eq!(view.lines.len(), view.lines.iter().map(|line| line.line.id).collect::<BTreeSet<_>>().len());
            if sums.ended.is_none() {
                let mut lying: Vec<Id> = shed.parts();
                lying.retain(|part| shed.way_to(*part).contains(&view.place.record.id));
                let mut expected = expected;
                expected.sort_unstable();
                prop_assert_eq!(expected, lying);
            }
        }
    }

    /// What a count came to stands, whatever is moved, sent out, fitted or seen afterwards.
    /// Break: in `tally` leave the moment of its end out where places are read.
    #[test]
    fn an_ended_count_stands(deeds in any_deeds(), place in 0_usize..40, seen in prop::collection::vec(0_usize..40, 0..5), later in any_deeds()) {
        let mut shed = Shed::after(&deeds);
        let Some(place) = shed.pick(&[Kind::Place], place) else { return Ok(()) };
        let taken = Change::Taken(shed.now());
        let count = shed.make(Kind::Count, vec![Change::Of(place), taken]);
        for thing in seen {
            if let Some(thing) = shed.pick(&[Kind::Part, Kind::Place], thing) {
                shed.see(thing, Some(count));
            }
        }
        shed.end(count);
        let before = shed.job.count_view(count).map(|view| view.sums);
        for deed in later {
            // What is struck out or taken back counts as never having been; an ended count is not ended again.
            if !matches!(deed, Deed::Strike(_) | Deed::Undo(_) | Deed::End(_) | Deed::See(..)) {
                shed.deed(&deed);
            }
            if let Deed::See(thing, _) = deed && let Some(thing) = shed.pick(&[Kind::Part, Kind::Place], thing) {
                shed.see(thing, None);
            }
        }
        prop_assert_eq!(shed.job.count_view(count).map(|view| view.sums), before);
    }

    /// What a count misses is missed from then on, until it is seen anywhere, laid anywhere, sent out or refitted.
    /// Break: in `missed_since` leave out when it was last seen.
    #[test]
    fn seen_or_moved_is_not_missed(deeds in any_deeds(), place in 0_usize..40, how in 0_u8..4) {
        let mut shed = Shed::after(&deeds);
        let Some(place) = shed.pick(&[Kind::Place], place) else { return Ok(()) };
        let taken = Change::Taken(shed.now());
        let count = shed.make(Kind::Count, vec![Change::Of(place), taken]);
        let in_other_counts: Vec<Id> = shed.parts().into_iter().filter(|part| shed.job.is_missed(*part)).collect();
        shed.end(count);
        let view = shed.job.count_view(count).expect("a count");
        prop_assert_eq!(view.sums.missing, view.sums.expected);
        for line in &view.lines {
            prop_assert!(shed.job.is_missed(line.line.id));
            prop_assert!(line.line.missing);
            if !in_other_counts.contains(&line.line.id) {
                prop_assert_eq!(shed.job.missed_since(line.line.id), view.sums.ended);
            }
        }
        let Some(part) = view.lines.first().map(|line| line.line.id) else { return Ok(()) };
        match how {
            0 => shed.see(part, None),
            1 => shed.change(part, Change::Place(place)),
            2 => shed.change(part, Change::Fit(Fit::Fitted)),
            _ => {
                let taken = Change::Taken(shed.now());
                let _ = shed.make(Kind::Outing, vec![Change::Of(part), taken]);
            }
        }
        prop_assert!(!shed.job.is_missed(part));
        for other in view.lines.iter().skip(1) {
            prop_assert!(shed.job.is_missed(other.line.id));
        }
    }

    /// What comes to a place after it was counted, by itself or in a box, was not missed by that count.
    /// Break: in `missed_since` forget when the box came.
    #[test]
    fn what_came_later_is_not_missed(deeds in any_deeds(), place in 0_usize..40) {
        let mut shed = Shed::after(&deeds);
        let Some(place) = shed.pick(&[Kind::Place], place) else { return Ok(()) };
        let bin = shed.make(Kind::Place, vec![Change::PlaceKind(PlaceKind::Box)]);
        let part = shed.make(Kind::Part, vec![Change::Place(bin)]);
        let taken = Change::Taken(shed.now());
        let count = shed.make(Kind::Count, vec![Change::Of(place), taken]);
        shed.end(count);
        shed.change(bin, Change::Within(place));
        prop_assert!(!shed.job.is_missed(part));
        // The next count misses it, unless it sees the box.
        let taken = Change::Taken(shed.now());
        let next = shed.make(Kind::Count, vec![Change::Of(place), taken]);
        let mut seeing = shed.clone();
        seeing.see(bin, Some(next));
        seeing.end(next);
        shed.end(next);
        prop_assert!(shed.job.is_missed(part));
        prop_assert!(!seeing.job.is_missed(part));
    }

    /// Whatever carries a number is found by its code, printed or typed.
    /// Break: in `carriers` leave the places out.
    #[test]
    fn a_code_finds_what_carries_it(deeds in any_deeds()) {
        let shed = Shed::after(&deeds);
        for id in shed.job.standing_ids(Kind::Part).chain(shed.job.standing_ids(Kind::Place)) {
            let number: i64 = shed.job.item(id).and_then(|item| item.read(asfound_core::record::FieldName::Tag)).expect("a tag");
            let code = TagCode::new(number).expect("a number");
            for view in [shed.job.tag_view(&code.bare(), true), shed.job.tag_view(&code.to_string(), false)] {
                let carriers = view.parts.iter().map(|line| line.line.id).chain(view.places.iter().map(|line| line.record.id));
                prop_assert!(carriers.into_iter().any(|carrier| carrier == id));
            }
        }
    }

    /// A guessed mass lies in its range, and a larger thing is not lighter.
    /// Break: in `guess_mass` take the least share for the most.
    #[test]
    fn a_guess_lies_in_its_range(
        sides in prop::array::uniform3(1_i64..10_000_000_000), more in 0_i64..1_000_000_000,
        build in prop::option::of(proptest::sample::select(Build::ALL)), material in proptest::sample::select(vec!["steel", "rubber"]),
    ) {
        let guess = |long: i64| {
            let mut shed = Shed::after(&[]);
            let mut changes = vec![Change::Long(long), Change::Wide(sides[1]), Change::High(sides[2]), Change::Material(material.to_owned())];
            changes.extend(build.map(Change::Build));
            let part = shed.make(Kind::Part, changes);
            heft(shed.job.item(part).expect("a part")).expect("a guess")
        };
        let long = sides[0];
        let (one, larger) = (guess(long), guess((long + more).min(10_000_000_000)));
        let range = one.guess.expect("a guess has a range");
        prop_assert!(range.least <= one.mass && one.mass <= range.most);
        prop_assert!(one.mass <= larger.mass);
    }
}
