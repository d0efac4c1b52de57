//! A job as the page and the native door would record it, command by command.

use asfound_core::job::{Command, Context, Job, Query, Sent, View, apply, ask};
use asfound_core::problem::Problem;
use asfound_core::quantity::Millis;
use asfound_core::record::{Id, Replica};
use serde_json::{Value, json};

/// A job, and the number of the last command.
pub(crate) struct Bench {
    pub(crate) job: Job,
    number: u16,
    device: u8,
    clock: i64,
}

pub(crate) const PART: u16 = 100;

/// The id of a number.
pub(crate) fn id(number: u16) -> Id {
    format!("{number:032x}").parse().expect("an id")
}

pub(crate) fn money(minor: i64) -> Value {
    json!({ "minor": minor, "currency": "GBP" })
}

impl Bench {
    /// A job with one part, an hour being worth 20.
    pub(crate) fn new() -> Self {
        let mut bench = Self { job: Job::new(), number: 9_000, device: 7, clock: 0 };
        bench.done(json!({ "do": "create", "id": id(1), "kind": "job", "changes": [{ "hour_value": money(2000) }] }));
        bench.part(PART, 1);
        bench
    }

    /// Another window on the same job, whose commands have other numbers.
    pub(crate) fn other_window(&self) -> Self {
        Self { job: self.job.clone(), number: 20_000, device: self.device, clock: self.clock }
    }

    /// Another device with the same job.
    pub(crate) fn other_device(&self) -> Self {
        Self { job: self.job.clone(), number: 30_000, device: 8, clock: self.clock }
    }

    /// What is done from now on is done at this moment.
    pub(crate) const fn at(&mut self, moment: i64) {
        self.clock = moment;
    }

    /// Brings in what another device wrote.
    pub(crate) fn bring(&mut self, other: &Self) {
        self.job.absorb(other.job.record().entries().cloned());
    }

    pub(crate) fn part(&mut self, number: u16, pieces: i64) {
        self.done(json!({ "do": "create", "id": id(number), "kind": "part", "changes": [{ "quantity": pieces }] }));
    }

    /// A quote on a part with these further values.
    pub(crate) fn quote(&mut self, number: u16, part: u16, route: &str, cash: i64, more: Value) {
        let mut changes = vec![json!({ "of": id(part) }), json!({ "route": route }), json!({ "cash": money(cash) })];
        changes.extend(more.as_array().cloned().unwrap_or_default());
        self.done(json!({ "do": "create", "id": id(number), "kind": "quote", "changes": changes }));
    }

    pub(crate) fn change(&mut self, number: u16, change: Value) {
        self.done(json!({ "do": "change", "ids": [id(number)], "changes": [change] }));
    }

    pub(crate) fn done(&mut self, command: Value) {
        let problems = self.tried(command);
        assert_eq!(problems, vec![]);
    }

    pub(crate) fn tried(&mut self, command: Value) -> Vec<Problem> {
        self.number += 1;
        let command: Command = serde_json::from_value(command).expect("a command");
        let context = Context { replica: Replica::from_bytes([self.device; 8]), device: id(2), at: Millis(self.clock) };
        let applied = apply(&self.job, &Sent { id: id(self.number), command }, &context);
        self.job.absorb(applied.entries);
        applied.problems
    }

    pub(crate) fn cost(&self, part: u16) -> Value {
        self.asked(json!({ "ask": "cost", "part": id(part) }))
    }

    pub(crate) fn asked(&self, query: Value) -> Value {
        let query: Query = serde_json::from_value(query).expect("a query");
        let view: View = ask(&self.job, &query, id(2));
        serde_json::to_value(view).expect("a view")
    }
}
