//! A fixed job and all that can be asked of it, as one hash: the same on every machine, native and in wasm.
#![expect(clippy::inconsistent_digit_grouping, reason = "pounds and pence are told apart")]

use asfound_core::costing::PricedTest;
use asfound_core::inspect::{ProofQuery, Surface};
use asfound_core::job::vocabulary::{Certainty, PlaceKind, Route, Side, Swap, Triage};
use asfound_core::job::{Change, Command, Context, Group, Job, PartsQuery, Query, Sent, SpeedUnit, apply, ask};
use asfound_core::plan::{FrontierQuery, PlanQuery, Scarce, SwayQuery};
use asfound_core::quantity::{Chance, Currency, Mass, Millis, Minutes, Money, Unit};
use asfound_core::reckoning::{HeavyQuery, reckon};
use asfound_core::record::{Hash, Id, KeptQuote, KeptQuotes, Kind, Replica};
use asfound_core::tables::hazards::Step;

/// What [`hash`] answers everywhere. When a view changes on purpose, this changes with it.
pub const HASH: &str = "74914435981cea3235310a2f025eebd85f4984f14f88b7f4b8685d4f469edc1e";

const JOB: u8 = 1;
const AXLE: u8 = 2;
const SHELF: u8 = 3;
const BOX: u8 = 4;
const PARTS: [u8; 3] = [10, 11, 12];

/// Of the hub's repair, whether it will fail.
const TEST: PricedTest = PricedTest {
    quote: Id::from_bytes([20; 16]),
    sensitivity: 0.85,
    specificity: 0.7,
    price: 333.0,
    own_time: 17.0,
    chance: None,
};

fn id(number: u8) -> Id {
    Id::from_bytes([number; 16])
}

fn create(number: u8, kind: Kind, changes: Vec<Change>) -> Command {
    Command::Create { id: id(number), kind, changes }
}

fn change(number: u8, changes: Vec<Change>) -> Command {
    Command::Change { ids: vec![id(number)], changes, seen: None }
}

fn name(name: &str) -> Change {
    Change::Name(name.to_owned())
}

fn money(minor: i64) -> Change {
    Change::Cash(Money::from_minor(minor, Currency::GBP))
}

/// A quote whose hours and chance leave fractions of a penny.
fn quote(number: u8, part: u8, route: Route, figures: [i64; 4]) -> Command {
    let [cash, own_time, chance, strip_again] = figures;
    let changes = vec![
        Change::Of(id(part)),
        Change::Route(route),
        money(cash),
        Change::OwnTime(Minutes::new(own_time)),
        Change::Chance(Chance(chance)),
        Change::StripAgain(Minutes::new(strip_again)),
        Change::CashCertainty(Certainty::About),
    ];
    create(number, Kind::Quote, changes)
}

/// Ratios and sizes that leave fractions everywhere.
fn gearing(number: u8, swap: Swap, axle: i64, tyre: &str) -> Command {
    let gears = Change::GearRatios("3.67, 2.22, 1.43, 1".to_owned());
    let over = [Change::Overdrive(7_860), Change::OverdriveOn(2), Change::HighestTurns(5_900)];
    let changes = [Change::Swap(swap), Change::AxleRatio(axle), gears, Change::Tyre(tyre.to_owned())];
    create(number, Kind::Gearing, changes.into_iter().chain(over).collect())
}

/// Quotes of a plan that was kept: part, quote, what it was.
fn kept(quotes: &[(u8, u8, i64)]) -> Change {
    let quotes = quotes.iter().map(|(part, quote, cash)| KeptQuote { part: id(*part), quote: id(*quote), cash: *cash });
    Change::Quotes(KeptQuotes(quotes.collect()))
}

fn commands() -> Vec<Command> {
    let hour = Change::HourValue(Money::from_minor(17_77, Currency::GBP));
    let [hub, hose, caliper] = PARTS;
    vec![
        create(JOB, Kind::Job, vec![name("Long wheelbase"), hour, Change::Interest(475), Change::YearsKept(11)]),
        create(AXLE, Kind::Assembly, vec![name("Front axle"), Change::Side(Side::Left)]),
        create(SHELF, Kind::Place, vec![name("Shelf 10"), Change::PlaceKind(PlaceKind::Shelf)]),
        create(BOX, Kind::Place, vec![name("Büchse 9"), Change::Within(id(SHELF))]),
        create(hub, Kind::Part, vec![name("Hub"), Change::Assembly(id(AXLE)), Change::Place(id(BOX))]),
        create(hose, Kind::Part, vec![name("Brake hose"), Change::SingleUse(true), Change::Mass(Mass(181))]),
        create(caliper, Kind::Part, vec![name("Caliper"), Change::Triage(Triage::Doubtful), Change::Quantity(2)]),
        quote(20, hub, Route::RepairHere, [18_00, 127, 2_500, 91]),
        quote(21, hub, Route::Buy, [106_00, 7, 100, 50]),
        quote(22, hub, Route::SendOut, [61_13, 13, 1_111, 77]),
        quote(23, hose, Route::UseAgain, [0, 10, 3_333, 100]),
        quote(24, hose, Route::Buy, [12_34, 11, 0, 0]),
        quote(25, caliper, Route::Exchange, [89_99, 41, 777, 333]),
        change(20, vec![Change::Life(50), Change::ChanceMost(Chance(4_444)), Change::Fallback(id(22))]),
        change(21, vec![Change::Life(101), Change::Freight(Money::from_minor(7_77, Currency::GBP))]),
        quote(26, hub, Route::Kit, [130_01, 23, 321, 99]),
        create(40, Kind::Cover, vec![Change::Of(id(26)), Change::Part(id(hose)), Change::Quantity(1)]),
        Command::Choose { id: id(30), quote: id(20), part: None, who: Some("Ada".to_owned()) },
        Command::Choose { id: id(31), quote: id(24), part: None, who: None },
        change(hub, vec![Change::Remark("face of the seal is worn".to_owned())]),
        change(caliper, vec![Change::Struck(true)]),
        change(caliper, vec![name("Calliper")]),
        gearing(50, Swap::Before, 43_000, "5.90-15"),
        gearing(51, Swap::After, 38_889, "165 SR 15"),
        create(
            60,
            Kind::Plan,
            vec![name("In spring"), kept(&[(hub, 22, 61_00), (hose, 24, 12_34), (caliper, 61, 1)]), money(73_34)],
        ),
    ]
}

/// The fixed job.
#[must_use]
pub fn job() -> Job {
    let mut job = Job::new();
    for (number, command) in (100_u8..).zip(commands()) {
        let at = Millis(1_700_000_000_000 + i64::from(number));
        let context = Context { replica: Replica::from_bytes([9; 8]), device: id(9), at };
        let applied = apply(&job, &Sent { id: id(number), command }, &context);
        job.absorb(applied.entries);
    }
    job
}

fn queries() -> Vec<Query> {
    let parts = |find: &str, group| Query::Parts(PartsQuery { find: find.to_owned(), group, ..PartsQuery::default() });
    let mut queries = vec![
        Query::Head,
        Query::Assemblies,
        Query::Places,
        Query::Problems,
        Query::Totals { today: None },
        Query::Teardown { assembly: Some(id(AXLE)), part: Some(id(PARTS[0])) },
        parts("callipre", Group::None),
        parts("", Group::Place),
        parts("hub", Group::Route),
        Query::Certainty,
        Query::Proof(proof()),
        Query::Gearing { speed: Some(70.0), unit: SpeedUnit::Mph },
    ];
    for part in PARTS.map(id) {
        queries.extend([
            Query::Cost { part, today: None, set: None },
            Query::Inspect { part },
            Query::Cautions { step: Step::TakeApart, part: Some(part), assembly: None },
            Query::Part { part },
            Query::History { id: part },
        ]);
    }
    queries
}

/// Repeats with few degrees of freedom near a limit: the quantiles of Student's t are in it.
fn proof() -> ProofQuery {
    let typed = |texts: &[&str]| texts.iter().map(|text| (*text).to_owned()).collect();
    let places = vec![typed(&["31.718", "31.722", "31.727"]), typed(&["1.2495 in", "1.2492 in"])];
    ProofQuery {
        resolution: Some("0.01".to_owned()),
        uncertainty: Some("0.004".to_owned()),
        zero_error: Some("-0.002".to_owned()),
        least: Some("31.720".to_owned()),
        as_new: Some("31.75".to_owned()),
        surface: Some(Surface::Journal),
        ..ProofQuery::of(Unit::Millimetre, places)
    }
}

fn heavy_queries() -> impl Iterator<Item = HeavyQuery> {
    let undecided = HeavyQuery::Undecided { today: None, draws: None, seed: None };
    let certainty = PARTS.map(|part| HeavyQuery::Certainty {
        part: id(part),
        today: None,
        set: None,
        test: Some(TEST),
        draws: Some(400),
        seed: Some(3),
    });
    let limits = PlanQuery { budget: Some(250_00), minutes: Some(300), nodes: Some(20), ..PlanQuery::default() };
    let reopened = PlanQuery { reopen: true, nodes: Some(20), ..PlanQuery::default() };
    let frontier = FrontierQuery { of: Scarce::Hours, plan: limits.clone(), points: Some(3) };
    let sway = SwayQuery { plan: reopened.clone(), draws: Some(4) };
    let plans = [PlanQuery::default(), limits, reopened].map(|query| HeavyQuery::Plan(Box::new(query)));
    let more = [HeavyQuery::Frontier(Box::new(frontier)), HeavyQuery::Sway(Box::new(sway))];
    let kept = HeavyQuery::KeptPlans { today: None };
    std::iter::once(undecided).chain(certainty).chain(plans).chain(more).chain([kept])
}

/// All answers, a line each, as they cross the protocol.
///
/// # Panics
/// When an answer cannot be written as JSON.
#[must_use]
pub fn answers() -> String {
    let job = job();
    let line = |query| serde_json::to_string(&ask(&job, query, id(9))).expect("views are JSON") + "\n";
    // What is drawn by chance and counted in fractions is the same everywhere, too.
    let heavy = |query| serde_json::to_string(&reckon(&job, &query)).expect("views are JSON") + "\n";
    queries().iter().map(line).chain(heavy_queries().map(heavy)).collect()
}

/// The hash of all answers.
#[must_use]
pub fn hash() -> String {
    Hash::of(answers().as_bytes()).to_string()
}

#[cfg(test)]
mod tests {
    #[test]
    fn the_fixed_job_answers_the_same_everywhere() {
        assert_eq!(super::hash(), super::HASH, "{}", super::answers());
    }

    /// The hash is worth something only if fractions of a penny are in it.
    #[test]
    fn its_costs_have_fractions() {
        let cost = asfound_core::costing::cost(&super::job(), super::id(super::PARTS[0]), None, None);
        assert!(cost.quotes.iter().all(|quote| quote.expected.minor.fract() != 0.0));
        assert!(cost.break_evens.iter().any(|even| even.hours.is_some_and(|hours| hours.fract() != 0.0)));
        assert_eq!(super::job().record().len(), super::commands().len());
    }
}
