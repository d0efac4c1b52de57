//! Prints drawn plan models as JSON lines: seed, cells, model. `plan_by_highs.py` beside it reads them.

use asfound_core::job::vocabulary::Relation;
use asfound_core::plan::{Chosen, Load, Model};
use asfound_tests::plan_models::drawn;
use serde_json::{Value, json};

fn main() {
    let mut arguments = std::env::args().skip(1).map(|argument| argument.parse::<u64>().expect("a number"));
    let mut next = || arguments.next().expect("CELLS FIRST LAST");
    let (cells, first, last) = (next(), next(), next());
    for seed in first..=last {
        let model = drawn(seed, usize::try_from(cells).expect("few"));
        println!("{}", json!({ "seed": seed, "cells": cells, "model": told(&model) }));
    }
}

fn told(model: &Model) -> Value {
    let loads =
        |loads: &[Load]| loads.iter().map(|load| json!([load.order, load.value, load.mass])).collect::<Vec<_>>();
    let chosen = |chosen: &Chosen| match chosen {
        Chosen::Takes { cell, which } => json!({ "cell": cell, "which": which }),
        Chosen::Shared(at) => json!({ "shared": at }),
        Chosen::Never => json!({}),
    };
    json!({
        "cells": model.cells.iter().map(|cell| cell.takes.iter().map(|take| json!({
            "cost": take.cost, "cash": take.cash, "minutes": take.minutes, "loads": loads(&take.loads), "uses": take.uses,
        })).collect::<Vec<_>>()).collect::<Vec<_>>(),
        "shared": model.shared.iter().map(|shared| json!({
            "cost": shared.cost, "cash": shared.cash, "minutes": shared.minutes, "loads": loads(&shared.loads),
        })).collect::<Vec<_>>(),
        "orders": model.orders.iter().map(|order| json!({
            "carriage": order.carriage, "free_from": order.free_from, "minimum_order": order.minimum_order,
            "minimum_charge": order.minimum_charge,
            "tiers": order.tiers.iter().map(|tier| json!([tier.from_value, tier.from_mass, tier.carriage])).collect::<Vec<_>>(),
        })).collect::<Vec<_>>(),
        "rules": model.rules.iter().map(|rule| json!({
            "relation": match rule.relation { Relation::Needs => "needs", Relation::RulesOut => "rules-out", Relation::GoesWith => "goes-with" },
            "subject": chosen(&rule.subject), "other": chosen(&rule.other), "price": rule.price,
        })).collect::<Vec<_>>(),
        "cash": model.limits.cash, "minutes": model.limits.minutes,
    })
}
