use asfound_core::job::Change;
use asfound_core::job::vocabulary::{Aim, PlaceKind, Side, Units, Vocabulary};
use asfound_core::quantity::Currency;
use asfound_core::record::{Id, Kind};

use super::bench::Bench;
use super::quote::pounds;

/// What both strips need: vehicles, assemblies, places.
pub(super) struct Garage {
    pub(super) job: Id,
    pub(super) van: Id,
    pub(super) donor: Id,
    pub(super) front: Id,
    pub(super) hub: Id,
    pub(super) steering: Id,
    pub(super) rear: Id,
    pub(super) brake_left: Id,
    pub(super) brake_right: Id,
    pub(super) donor_rear: Id,
    pub(super) rack: Id,
    pub(super) box_7: Id,
    pub(super) bag_7a: Id,
    pub(super) box_8: Id,
    pub(super) box_9: Id,
    pub(super) box_12: Id,
    pub(super) bag_12a: Id,
    pub(super) floor: Id,
    pub(super) hook: Id,
    pub(super) drawer: Id,
    pub(super) yard: Id,
}

impl Garage {
    pub(super) fn begin(bench: &mut Bench) -> Self {
        let job = bench.create(
            Kind::Job,
            vec![
                Change::Name("Sample: Tessick 8 cwt van, 1957".into()),
                Change::Remark(
                    "An invented van, to try things out on. Names, firms and figures are invented, too.".into(),
                ),
                Change::Currency(Currency::GBP),
                Change::HourValue(pounds(20_00)),
                Change::Interest(300),
                Change::YearsKept(10),
                Change::TaxRate(2_000),
                Change::Threshold(pounds(15_00)),
                Change::Aim(Aim::Conserve),
                Change::Vocabulary(Vocabulary::British),
                Change::Units(Units::Metric),
                Change::DriverSide(Side::Right),
            ],
        );
        let (van, donor) = vehicles(bench);
        let front = assembly(bench, "Front axle", van, None, None);
        let hub = assembly(bench, "Front hub", van, Some(front), Some(Side::Left));
        let steering = assembly(bench, "Steering", van, Some(front), None);
        let rear = assembly(bench, "Rear axle", van, None, None);
        let brake_left = assembly(bench, "Brake, rear", van, Some(rear), Some(Side::Left));
        let brake_right = assembly(bench, "Brake, rear", van, Some(rear), Some(Side::Right));
        let donor_rear = assembly(bench, "Rear axle of the donor", donor, None, None);
        let garage = bench.place("Garage", PlaceKind::Area, None);
        let rack = bench.place("Rack A", PlaceKind::Rack, Some(garage));
        let upper = bench.place("Shelf A2", PlaceKind::Shelf, Some(rack));
        let lower = bench.place("Shelf A1", PlaceKind::Shelf, Some(rack));
        let box_7 = bench.place("Box 07", PlaceKind::Box, Some(upper));
        let box_12 = bench.place("Box 12", PlaceKind::Box, Some(lower));
        let house = bench.place("House", PlaceKind::Area, None);
        Self {
            job,
            van,
            donor,
            front,
            hub,
            steering,
            rear,
            brake_left,
            brake_right,
            donor_rear,
            rack,
            box_7,
            bag_7a: bench.place("Bag 07a", PlaceKind::Bag, Some(box_7)),
            box_8: bench.place("Box 08", PlaceKind::Box, Some(upper)),
            box_9: bench.place("Box 09", PlaceKind::Box, Some(upper)),
            box_12,
            bag_12a: bench.place("Bag 12a", PlaceKind::Bag, Some(box_12)),
            floor: bench.place("Floor by the door", PlaceKind::Floor, Some(garage)),
            hook: bench.place("Hook 3", PlaceKind::Hook, Some(garage)),
            drawer: bench.place("Desk drawer", PlaceKind::Box, Some(house)),
            yard: bench.place("Yard, under the sheet", PlaceKind::Area, None),
        }
    }
}

fn vehicles(bench: &mut Bench) -> (Id, Id) {
    let van = bench.create(
        Kind::Vehicle,
        vec![
            Change::Name("Tessick 8 cwt van".into()),
            Change::Year(1957),
            Change::IdentityNumber("TV8-20417".into()),
            Change::Remark("Off the road since 1983. Bought from the family of the baker who had it new.".into()),
        ],
    );
    let donor = bench.create(
        Kind::Vehicle,
        vec![
            Change::Name("Tessick 10 cwt pick-up".into()),
            Change::Year(1962),
            Change::IdentityNumber("TP10-33902".into()),
            Change::Donor(true),
            Change::Cash(pounds(240_00)),
            Change::Sold(pounds(95_00)),
            Change::Bought(true),
            Change::Remark("Rear axle is the later one, same brakes. Body gone.".into()),
        ],
    );
    (van, donor)
}

fn assembly(bench: &mut Bench, name: &str, vehicle: Id, inside: Option<Id>, side: Option<Side>) -> Id {
    // All the others are done.
    let is_open = name == "Rear axle";
    let said = [Change::Name(name.into()), Change::Vehicle(vehicle), Change::Open(is_open)];
    let more = inside.map(Change::Inside).into_iter().chain(side.map(Change::Side));
    bench.create(Kind::Assembly, said.into_iter().chain(more).collect())
}
