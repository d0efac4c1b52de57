//! Two people in one garage: a phone and a computer that record for themselves and now and then exchange what they have.

use asfound_core::job::vocabulary::Route;
use asfound_core::job::{Applied, Change, Command, Context, Job, Sent, SplitOff, apply};
use asfound_core::quantity::{Chance, Currency, Millis, Minutes, Money};
use asfound_core::record::{EntryId, Id, Kind, Replica};
use proptest::prelude::*;

/// What somebody does; numbers pick among what is there.
#[derive(Debug, Clone)]
pub(crate) enum Deed {
    Make(Kind, String),
    Rename(usize, String),
    /// An assembly or place into another.
    Move(usize, usize),
    /// A part into a place.
    Lay(usize, usize),
    Strike(usize),
    BringBack(usize),
    Retag(usize, i64),
    Quote(usize, Route, i64, i64),
    Choose(usize),
    Split(usize),
    Undo(usize),
}

/// A deed by device 0 or 1, or an exchange: what `from` has comes to `to`.
#[derive(Debug, Clone)]
pub(crate) enum Step {
    Do(usize, Deed),
    Bring(usize),
}

pub(crate) fn any_deed() -> impl Strategy<Value = Deed> {
    let pick = || 0_usize..12;
    let name =
        || proptest::sample::select(vec!["Hub", "Stub axle", "Brake hose", "Shelf 2", ""]).prop_map(str::to_owned);
    let kind = proptest::sample::select(vec![Kind::Part, Kind::Part, Kind::Assembly, Kind::Place]);
    prop_oneof![
        8 => (kind, name()).prop_map(|(kind, name)| Deed::Make(kind, name)),
        3 => (pick(), name()).prop_map(|(record, name)| Deed::Rename(record, name)),
        4 => (pick(), pick()).prop_map(|(inner, outer)| Deed::Move(inner, outer)),
        3 => (pick(), pick()).prop_map(|(part, place)| Deed::Lay(part, place)),
        2 => pick().prop_map(Deed::Strike),
        1 => pick().prop_map(Deed::BringBack),
        1 => (pick(), 1_i64..6).prop_map(|(part, tag)| Deed::Retag(part, tag)),
        3 => (pick(), proptest::sample::select(Route::ALL), 0_i64..9_000, 0_i64..10_000)
            .prop_map(|(part, route, cash, chance)| Deed::Quote(part, route, cash, chance)),
        2 => pick().prop_map(Deed::Choose),
        1 => pick().prop_map(Deed::Split),
        2 => pick().prop_map(Deed::Undo),
    ]
}

pub(crate) fn any_steps() -> impl Strategy<Value = Vec<Step>> {
    let step = prop_oneof![
        6 => (0_usize..2, any_deed()).prop_map(|(device, deed)| Step::Do(device, deed)),
        1 => (0_usize..2).prop_map(Step::Bring),
    ];
    prop::collection::vec(step, 1..24)
}

#[derive(Debug, Clone)]
pub(crate) struct Garage {
    pub(crate) devices: [Job; 2],
    made: u64,
    commands: u64,
}

fn derived(purpose: &str, number: u64) -> Id {
    Id::derived(Id::from_bytes([77; 16]), purpose, number)
}

pub(crate) fn context(device: usize) -> Context {
    let number = u8::try_from(device + 1).expect("few devices");
    Context { replica: Replica::from_bytes([number; 8]), device: Id::from_bytes([number; 16]), at: Millis(1) }
}

impl Garage {
    /// One job that both devices have, and of which nothing else is known.
    pub(crate) fn new() -> Self {
        let mut garage = Self { devices: [Job::new(), Job::new()], made: 0, commands: 0 };
        let id = garage.fresh();
        let _ = garage.command(0, Command::Create { id, kind: Kind::Job, changes: vec![] });
        garage.bring(0);
        garage
    }

    pub(crate) fn after(steps: &[Step]) -> Self {
        let mut garage = Self::new();
        for step in steps {
            garage.step(step);
        }
        garage
    }

    pub(crate) fn step(&mut self, step: &Step) {
        match step {
            Step::Do(device, deed) => {
                if let Some(command) = self.command_of(*device, deed) {
                    let _ = self.command(*device, command);
                }
            }
            Step::Bring(from) => self.bring(*from),
        }
    }

    pub(crate) fn fresh(&mut self) -> Id {
        self.made += 1;
        derived("record", self.made)
    }

    pub(crate) fn command(&mut self, device: usize, command: Command) -> Applied {
        self.commands += 1;
        let sent = Sent { id: derived("command", self.commands), command };
        let applied = apply(&self.devices[device], &sent, &context(device));
        self.devices[device].absorb(applied.entries.clone());
        applied
    }

    /// What one device has comes to the other.
    pub(crate) fn bring(&mut self, from: usize) {
        let entries: Vec<_> = self.devices[from].record().entries().cloned().collect();
        self.devices[1 - from].absorb(entries);
    }

    pub(crate) fn bring_all(&mut self) {
        self.bring(0);
        self.bring(1);
    }

    pub(crate) fn ids(&self, device: usize, kind: Kind) -> Vec<Id> {
        self.devices[device].ids(kind).collect()
    }

    fn pick(&self, device: usize, kinds: &[Kind], number: usize) -> Option<Id> {
        let ids: Vec<Id> = kinds.iter().flat_map(|kind| self.ids(device, *kind)).collect();
        ids.get(number % ids.len().max(1)).copied()
    }

    pub(crate) fn command_of(&mut self, device: usize, deed: &Deed) -> Option<Command> {
        let change = |id, change| Command::Change { ids: vec![id], changes: vec![change], seen: None };
        let shown = [Kind::Part, Kind::Assembly, Kind::Place];
        Some(match deed {
            Deed::Make(kind, name) => {
                Command::Create { id: self.fresh(), kind: *kind, changes: vec![Change::Name(name.clone())] }
            }
            Deed::Rename(record, name) => change(self.pick(device, &shown, *record)?, Change::Name(name.clone())),
            Deed::Move(inner, outer) => {
                let kind = if inner % 2 == 0 { Kind::Assembly } else { Kind::Place };
                let outer = self.pick(device, &[kind], *outer)?;
                let to = if kind == Kind::Assembly { Change::Inside(outer) } else { Change::Within(outer) };
                change(self.pick(device, &[kind], *inner)?, to)
            }
            Deed::Lay(part, place) => {
                let part = self.pick(device, &[Kind::Part], *part)?;
                change(part, Change::Place(self.pick(device, &[Kind::Place], *place)?))
            }
            Deed::Strike(record) => change(self.pick(device, &shown, *record)?, Change::Struck(true)),
            Deed::BringBack(record) => change(self.pick(device, &shown, *record)?, Change::Struck(false)),
            Deed::Retag(part, tag) => change(self.pick(device, &[Kind::Part], *part)?, Change::Tag(*tag)),
            Deed::Quote(part, route, cash, chance) => {
                let part = self.pick(device, &[Kind::Part], *part)?;
                let changes = vec![
                    Change::Of(part),
                    Change::Route(*route),
                    Change::Cash(Money::from_minor(*cash, Currency::GBP)),
                    Change::OwnTime(Minutes::new(*cash % 700)),
                    Change::Chance(Chance(*chance)),
                ];
                Command::Create { id: self.fresh(), kind: Kind::Quote, changes }
            }
            Deed::Choose(quote) => {
                let quote = self.pick(device, &[Kind::Quote], *quote)?;
                Command::Choose { id: self.fresh(), quote, part: None, who: Some("Ada".to_owned()) }
            }
            Deed::Split(part) => {
                let part = self.pick(device, &[Kind::Part], *part)?;
                Command::Split { part, into: vec![SplitOff { id: self.fresh(), name: None, quantity: None }] }
            }
            Deed::Undo(entry) => {
                let entries: Vec<EntryId> = self.devices[device].record().entries().map(|entry| entry.id).collect();
                Command::Undo { entry: entries[entry % entries.len()] }
            }
        })
    }
}
