//! Plans that are kept under a name: told at once nothing has changed.

use asfound_core::job::vocabulary::{Relation, Route};
use asfound_core::job::{Change, Command};
use asfound_core::plan::{PlanChoice, PlanQuery, kept_plans, plan};
use asfound_core::quantity::{Currency, Minutes, Money};
use asfound_core::record::{Id, KeptQuote, KeptQuotes, Kind};
use proptest::prelude::*;

use crate::cases;
use crate::garage::Garage;

/// A quote of a drawn part: route, price, minutes, whether from the supplier.
type Offered = (Route, i64, i64, bool);

/// A job with a few parts, a donor, a supplier with carriage, a kit over the first two, a rule and decisions.
#[derive(Debug, Clone)]
struct Drawn {
    /// For each part how many pieces, and its quotes.
    parts: Vec<(i64, Vec<Offered>)>,
    /// The price of the kit, and how many pieces of each it holds.
    kit: Option<(i64, i64, i64)>,
    donor: i64,
    carriage: (i64, i64),
    rule: (Relation, usize, usize, i64),
    decided: Vec<Option<usize>>,
    budget: Option<i64>,
    reopen: bool,
}

fn any_drawn() -> impl Strategy<Value = Drawn> {
    let route = proptest::sample::select(vec![Route::UseAgain, Route::Buy, Route::Donor, Route::Exchange, Route::Buy]);
    let quotes = prop::collection::vec((route, 0_i64..60, 0_i64..90, any::<bool>()), 1..4);
    let parts = prop::collection::vec((1_i64..5, quotes), 4);
    let relation = proptest::sample::select(vec![Relation::Needs, Relation::RulesOut, Relation::GoesWith]);
    let decided = prop::collection::vec(prop::option::weighted(0.3, 0_usize..4), 4);
    let kit = prop::option::of((5_i64..70, 1_i64..4, 1_i64..4));
    (parts, kit, 0_i64..50, (0_i64..30, 10_i64..90), (relation, 0_usize..20, 0_usize..20, 0_i64..40), decided)
        .prop_flat_map(|(parts, kit, donor, carriage, rule, decided)| {
            (prop::option::of(20_i64..300), any::<bool>()).prop_map(move |(budget, reopen)| Drawn {
                parts: parts.clone(),
                kit,
                donor,
                carriage,
                rule,
                decided: decided.clone(),
                budget,
                reopen,
            })
        })
}

fn money(minor: i64) -> Money {
    Money::from_minor(minor, Currency::GBP)
}

fn set(drawn: &Drawn) -> Garage {
    let mut garage = Garage::new();
    let mut done = |command: &dyn Fn(Id) -> Command| {
        let id = garage.fresh();
        let applied = garage.command(0, command(id));
        assert!(applied.problems.is_empty(), "{:?}", applied.problems);
        id
    };
    let mut make = |kind, changes: Vec<Change>| done(&|id| Command::Create { id, kind, changes: changes.clone() });
    let (shipping, free) = drawn.carriage;
    let terms =
        vec![Change::Name("Spares".to_owned()), Change::Shipping(money(shipping)), Change::FreeFrom(money(free))];
    make(Kind::Supplier, terms);
    let donor = make(Kind::Vehicle, vec![Change::Donor(true), Change::Cash(money(drawn.donor))]);
    let mut quotes: Vec<(Id, Id)> = Vec::new();
    let parts: Vec<Id> =
        drawn.parts.iter().map(|(pieces, _)| make(Kind::Part, vec![Change::Quantity(*pieces)])).collect();
    for (part, (_, of_part)) in parts.iter().zip(&drawn.parts) {
        for (route, cash, minutes, spares) in of_part {
            let mut changes = vec![Change::Of(*part), Change::Route(*route), Change::Cash(money(*cash))];
            changes.push(Change::OwnTime(Minutes::new(*minutes)));
            changes.extend((*route == Route::Donor).then_some(Change::Vehicle(donor)));
            changes.extend(spares.then(|| Change::From("spares".to_owned())));
            quotes.push((*part, make(Kind::Quote, changes)));
        }
    }
    if let Some((price, first, second)) = drawn.kit {
        let changes = vec![Change::Of(parts[0]), Change::Route(Route::Kit), Change::Cash(money(price))];
        let kit = make(Kind::Quote, changes);
        for (part, pieces) in parts.iter().zip([first, second]) {
            make(Kind::Cover, vec![Change::Of(kit), Change::Part(*part), Change::Quantity(pieces)]);
        }
        quotes.extend([(parts[0], kit), (parts[1], kit)]);
    }
    let sides: Vec<Id> = parts.iter().copied().chain([donor]).chain(quotes.iter().map(|(_, quote)| *quote)).collect();
    let (relation, one, other, price) = drawn.rule;
    let (one, other) = (sides[one % sides.len()], sides[other % sides.len()]);
    if one != other {
        let changes =
            vec![Change::Of(one), Change::Relation(relation), Change::Other(other), Change::Cash(money(price))];
        make(Kind::Rule, changes);
    }
    for (part, which) in parts.iter().zip(&drawn.decided) {
        let own: Vec<Id> = quotes.iter().filter(|(of, _)| of == part).map(|(_, quote)| *quote).collect();
        if let Some(which) = which {
            done(&|id| Command::Choose { id, quote: own[which % own.len()], part: Some(*part), who: None });
        }
    }
    garage
}

/// What the page keeps of a plan.
fn quotes(choices: &[PlanChoice]) -> KeptQuotes {
    let of = |choice: &PlanChoice| {
        let one = KeptQuote { part: choice.part, quote: choice.quote, cash: choice.cash };
        let rest = choice.rest.zip(choice.rest_cash).map(|(quote, cash)| KeptQuote { quote, cash, ..one });
        std::iter::once(one).chain(rest).collect::<Vec<_>>()
    };
    KeptQuotes(choices.iter().flat_map(of).collect())
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// A plan that is kept and told at once is as it was: its sums are those of the plan it came from, and nothing has changed.
    /// Break: in `Kept::told` forget the second quote of a part (`None` instead of `quotes.get(1)`).
    #[test]
    fn a_plan_kept_is_the_plan_it_came_from(drawn in any_drawn()) {
        let mut garage = set(&drawn);
        let query = PlanQuery { reopen: drawn.reopen, budget: drawn.budget, nodes: Some(60), ..PlanQuery::default() };
        let view = plan(&garage.devices[0], &query);
        let Some(sums) = view.sums else { return Ok(()) };
        #[expect(clippy::cast_precision_loss, reason = "a few pounds")]
        let expected = Change::ExpectedThen(sums.cost.minor as f64);
        let changes = vec![
            Change::Name("One".to_owned()),
            Change::Quotes(quotes(&view.choices)),
            Change::Cash(sums.cash),
            Change::OwnTime(sums.own_time),
            expected,
        ];
        let id = garage.fresh();
        let applied = garage.command(0, Command::Create { id, kind: Kind::Plan, changes });
        prop_assert_eq!(applied.problems, vec![]);
        let told = kept_plans(&garage.devices[0], None);
        prop_assert_eq!(told.plans.len(), 1);
        let kept = &told.plans[0];
        // The budget was asked for alone; the job has none.
        let now = &kept.now;
        prop_assert_eq!((now.cost, now.cash, now.own_time, now.carriage), (sums.cost, sums.cash, sums.own_time, sums.carriage));
        prop_assert_eq!((kept.kept.cost, kept.kept.cash), (Some(sums.cost), Some(sums.cash)));
        prop_assert_eq!(kept.more.minor, 0);
        let parts: Vec<(Id, Option<Id>, bool)> = view.choices.iter().map(|one| (one.part, Some(one.quote), one.chosen)).collect();
        prop_assert!(kept.parts.iter().all(|part| part.since.is_none() && part.open));
        prop_assert_eq!(kept.parts.iter().map(|part| (part.part, part.quote, part.chosen)).collect::<Vec<_>>(), parts);
    }
}
