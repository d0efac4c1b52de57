//! What suppliers and specialists ask for, and what fits what.

use asfound_core::job::Change;
use asfound_core::job::vocabulary::Relation;
use asfound_core::quantity::{Chance, Mass};
use asfound_core::record::{FieldName, Id, Kind};

use super::bench::Bench;
use super::garage::Garage;
use super::quote::pounds;

/// Puts the terms down, and from which donor the parts are that are quoted from one.
pub(super) fn agree(bench: &mut Bench, garage: &Garage) {
    bench.day("2026-11-08T19:00:00Z");
    let spares = supplier(bench, "Sloe Hill Spares", "Posts twice a week.");
    bench.say(
        spares,
        vec![
            Change::Shipping(pounds(6_50)),
            Change::FreeFrom(pounds(245_00)),
            Change::Wait(4),
            Change::WaitLeast(2),
            Change::WaitMost(10),
            Change::BackOrder(Chance(1_500)),
            Change::ReturnWindow(30),
            Change::Restocking(Chance(1_000)),
            Change::SurchargeDeadline(28),
        ],
    );
    let linings = supplier(bench, "Bramble & Tarn, brake linings", "Charges by the batch.");
    bench.say(linings, vec![Change::MinimumCharge(pounds(185_00)), Change::Shipping(pounds(9_00)), Change::Wait(12)]);
    let bearings = supplier(bench, "Kettleby Bearings", "");
    bench
        .say(bearings, vec![Change::Shipping(pounds(3_95)), Change::FreeFrom(pounds(60_00)), Change::ReturnWindow(14)]);
    let springs = supplier(bench, "Lower Wick Spring Works", "By carrier, by weight.");
    bench.say(springs, vec![Change::Shipping(pounds(12_00)), Change::Warranty(24)]);
    for (mass, carriage) in [(10, 18_00), (25, 27_00)] {
        let from = Change::FromMass(Mass::from_kilograms(mass));
        bench.create(Kind::Tier, vec![Change::Of(springs), from, Change::Shipping(pounds(carriage))]);
    }
    let donated = bench.quotes_by_donor();
    for quote in &donated {
        bench.say(*quote, vec![Change::Vehicle(garage.donor)]);
    }
    if let [first, .., last] = donated[..] {
        let rule = vec![
            Change::Of(last),
            Change::Relation(Relation::GoesWith),
            Change::Other(first),
            Change::Cash(pounds(12_00)),
        ];
        let rule = bench.create(Kind::Rule, rule);
        bench.say(rule, vec![Change::Remark("Both from one axle: the same wear on both.".into())]);
    }
}

fn supplier(bench: &mut Bench, name: &str, remark: &str) -> Id {
    let id = bench.create(Kind::Supplier, vec![Change::Name(name.into())]);
    let remark = if remark.is_empty() { Change::Clear(FieldName::Remark) } else { Change::Remark(remark.into()) };
    bench.say(id, vec![remark]);
    id
}
