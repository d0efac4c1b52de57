//! Everything that can be asked of a job, as text: two jobs are the same to a person when all of it is equal.

use asfound_core::costing::PricedTest;
use asfound_core::job::vocabulary::{Aim, Route, Standing};
use asfound_core::job::{ContentsLine, Group, Job, PartsQuery, Query, SpeedUnit, ask};
use asfound_core::plan::{FrontierQuery, PlanQuery, Scarce, SwayQuery};
use asfound_core::quantity::{Day, Minutes, Unit};
use asfound_core::reckoning::{HeavyQuery, reckon};
use asfound_core::record::Id;
use asfound_core::tables::hazards::Step;

pub(crate) const GROUPS: [Group; 5] = [Group::Assembly, Group::Place, Group::Route, Group::Standing, Group::None];

/// Every query about records of these ids.
pub(crate) fn queries(ids: &[Id]) -> Vec<Query> {
    let mut queries = vec![
        Query::Commissioning,
        Query::Head,
        Query::Assemblies,
        Query::Places,
        Query::Problems,
        Query::Totals { today: None },
    ];
    queries.extend([Query::Suppliers, Query::Rules { part: None, today: Day::parse("1999-12-31") }]);
    queries.extend([Query::Certainty, Query::Undecided, Query::Plan, Query::KitContents]);
    queries.extend([Query::Frontier, Query::Sway, Query::KeptPlans]);
    for (speed, unit) in [(None, SpeedUnit::Mph), (Some(70.0), SpeedUnit::Kmh), (Some(f64::NAN), SpeedUnit::Mph)] {
        queries.push(Query::Gearing { speed, unit });
    }
    for minutes in [i64::MIN, 90, i64::MAX].map(Minutes::new) {
        queries.push(Query::ThisEvening { minutes, today: Day::parse("1999-12-31") });
    }
    queries.extend([None, Day::parse("9999-12-31")].map(|today| Query::Ready { today }));
    for text in ["205/65 R 15", "3.33, 1", "6,00-16 \u{0}"] {
        queries.push(Query::GearingTyped { tyre: Some(text.to_owned()), gears: Some(text.to_owned()) });
    }
    for group in GROUPS {
        queries.push(Query::Parts(PartsQuery { group, ..PartsQuery::default() }));
    }
    for (today, days) in [(None, None), (Day::parse("1999-12-31"), Some(i64::MIN)), (Day::parse("9999-12-31"), Some(0))]
    {
        queries.push(Query::Missing { today, out_days: days, unseen_days: days });
    }
    for text in ["0147X", "0001-0", "00019", "12344", "\u{0}"] {
        queries.extend([true, false].map(|scanned| Query::Tag { text: text.to_owned(), scanned }));
    }
    for text in ["1.2505in", "6204-2RS", "25x40x7", "\u{0}"] {
        queries.push(Query::Typed { text: text.to_owned(), unit: Unit::Millimetre });
        queries.push(Query::Identify { text: text.to_owned() });
    }
    let proof = serde_json::json!({ "unit": "inch", "places": [["1 1/4", "1.2505"], []], "most": "1.26", "as_new": "1.25", "surface": "bore" });
    queries.push(Query::Proof(serde_json::from_value(proof).expect("a question")));
    for step in Step::ALL.iter().copied() {
        queries.push(Query::Cautions { step, part: None, assembly: None });
    }
    let parts = |query| Query::Parts(query);
    queries.push(parts(PartsQuery { struck: true, ..PartsQuery::default() }));
    queries.push(parts(PartsQuery { standing: Some(Standing::Off), count: Some(2), from: 1, ..PartsQuery::default() }));
    queries.push(parts(PartsQuery { route: Some(Route::Buy), ..PartsQuery::default() }));
    for find in ["bux", "1", "exchagne", "büchse \u{0}", "  "] {
        queries.push(parts(PartsQuery { find: find.to_owned(), ..PartsQuery::default() }));
    }
    for id in ids.iter().copied() {
        queries.push(Query::Teardown { assembly: Some(id), part: Some(id) });
        queries.push(Query::Part { part: id });
        queries.push(Query::Place { place: id });
        queries.push(Query::Where { part: id });
        queries.push(Query::Count { count: id });
        queries.push(Query::Photo { photo: id });
        let set = serde_json::from_value(
            serde_json::json!({ "quotes": { id.to_string(): { "cash": 1 } }, "job": { "years": 3 } }),
        );
        queries.push(Query::Cost { part: id, today: Day::parse("1999-12-31"), set: set.ok() });
        queries.push(Query::Cost { part: id, today: None, set: None });
        queries.push(Query::Rules { part: Some(id), today: None });
        queries.push(Query::Donor { vehicle: id, today: None });
        queries.push(Query::Inspect { part: id });
        queries.push(Query::Cautions { step: Step::TakeApart, part: None, assembly: Some(id) });
        queries.push(Query::Cautions { step: Step::Route, part: Some(id), assembly: None });
        queries.push(Query::RefitSteps { assembly: id, today: Day::parse("1999-12-31") });
        queries.push(Query::RefitStep { part: id, today: None });
        queries.push(Query::History { id });
        queries.push(Query::Seen { ids: vec![id, ids[0]] });
        queries.push(parts(PartsQuery { assembly: Some(id), ..PartsQuery::default() }));
        queries.push(parts(PartsQuery { place: Some(id), group: Group::Place, ..PartsQuery::default() }));
    }
    queries
}

/// Every heavy query about records of these ids, with few draws.
fn heavy_queries(ids: &[Id]) -> Vec<HeavyQuery> {
    let undecided = HeavyQuery::Undecided { today: Day::parse("1999-12-31"), draws: Some(0), seed: Some(u32::MAX) };
    let certainty = ids.iter().map(|id| {
        let test = PricedTest {
            quote: *id,
            sensitivity: 0.9,
            specificity: -3.0,
            price: 1e300,
            own_time: f64::NAN,
            chance: Some(f64::INFINITY),
        };
        HeavyQuery::Certainty { part: *id, today: None, set: None, test: Some(test), draws: Some(3), seed: None }
    });
    let limits = PlanQuery {
        budget: Some(-1),
        minutes: Some(i64::MAX),
        latest: Day::parse("1999-12-31"),
        nodes: Some(12),
        ..PlanQuery::default()
    };
    let pinned = PlanQuery { pin: ids.to_vec(), nodes: Some(0), aim: Some(Aim::ShowStandard), ..PlanQuery::default() };
    let frontiers = [Scarce::Cash, Scarce::Hours].map(|of| {
        let plan = PlanQuery { budget: Some(i64::MIN), nodes: Some(2), ..pinned.clone() };
        HeavyQuery::Frontier(Box::new(FrontierQuery { of, plan, points: Some(0) }))
    });
    let swaying = PlanQuery { reopen: true, minutes: Some(i64::MIN), nodes: Some(2), ..PlanQuery::default() };
    let sway = HeavyQuery::Sway(Box::new(SwayQuery { plan: swaying, draws: Some(2) }));
    let plans = [limits, pinned].map(|query| HeavyQuery::Plan(Box::new(query)));
    let line =
        |number: &str, quantity| ContentsLine { number: number.to_owned(), name: "Hub \u{0}".to_owned(), quantity };
    let lines = vec![line("", Some(i64::MIN)), line("1 - 2", Some(i64::MAX)), line("x", None)];
    let kits = ids.iter().map(|id| HeavyQuery::KitContents { quote: *id, lines: lines.clone() });
    let kept = [None, Day::parse("1999-12-31")].map(|today| HeavyQuery::KeptPlans { today });
    std::iter::once(undecided)
        .chain(kept)
        .chain(certainty)
        .chain(plans)
        .chain(frontiers)
        .chain([sway])
        .chain(kits)
        .collect()
}

/// All answers, as they cross the protocol.
pub(crate) fn all_views(job: &Job, device: Id) -> Vec<String> {
    let ids: Vec<Id> = job.record().items().map(|(id, _)| id).collect();
    let quick = queries(&ids).into_iter().map(|query| {
        let view = ask(job, &query, device);
        format!("{query:?} -> {}", serde_json::to_string(&view).expect("views cross the protocol"))
    });
    let heavy = heavy_queries(&ids).into_iter().map(|query| {
        let view = reckon(job, &query);
        format!("{query:?} -> {}", serde_json::to_string(&view).expect("views cross the protocol"))
    });
    quick.chain(heavy).collect()
}
