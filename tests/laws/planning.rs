use asfound_core::plan::{Model, PlanProof, Worth, solve};
use asfound_tests::plan_models::drawn;

/// Every plan there is, one after another.
fn brute_force(model: &Model) -> Option<i64> {
    let mut taken = vec![0; model.cells.len()];
    let mut best: Option<i64> = None;
    loop {
        let worth: Worth = model.worth(&taken);
        if worth.breach.is_none() && best.is_none_or(|best| worth.cost < best) {
            best = Some(worth.cost);
        }
        let next = (0..taken.len()).find(|cell| taken[*cell] + 1 < model.cells[*cell].takes.len());
        let Some(next) = next else { return best };
        taken[next] += 1;
        taken[..next].fill(0);
    }
}

/// 500 small jobs with every feature, against every plan there is: the same cost to the minor unit, and what cannot be done is
/// told so.
/// Break: in `Relaxed::find` add what a limit is priced at instead of taking it away.
#[test]
fn it_finds_what_brute_force_finds() {
    let mut nothing = 0;
    for seed in 1..=500 {
        let model = drawn(seed, 3 + usize::try_from(seed % 3).expect("few"));
        let solved = solve(&model, 20_000, seed);
        let best = brute_force(&model);
        assert_eq!(solved.cost, best, "seed {seed}");
        assert_eq!(solved.proof, if best.is_some() { PlanProof::Best } else { PlanProof::NothingFits }, "seed {seed}");
        nothing += usize::from(best.is_none());
    }
    assert!((25..400).contains(&nothing), "{nothing} of 500 cannot be done: the draw does not try both");
}

/// With more money, more hours or one rule less nothing costs more; with one take less nothing costs less.
/// Break: in `Relaxed::find` add what a limit is priced at instead of taking it away.
#[test]
fn giving_way_never_costs_more() {
    for seed in 1_000..1_030 {
        let model = drawn(seed, 6);
        let cost = |model: &Model| {
            let solved = solve(model, 20_000, 1);
            assert!(matches!(solved.proof, PlanProof::Best | PlanProof::NothingFits), "seed {seed}");
            solved.cost.unwrap_or(i64::MAX)
        };
        let now = cost(&model);
        let mut richer = model.clone();
        richer.limits.cash = richer.limits.cash.map(|cash| cash + 20_00);
        let mut freer = model.clone();
        freer.limits.minutes = freer.limits.minutes.map(|minutes| minutes + 60);
        let mut ruled = model.clone();
        ruled.rules.pop();
        for other in [&richer, &freer, &ruled] {
            assert!(cost(other) <= now, "seed {seed}");
        }
        let mut fewer = model.clone();
        let cell = usize::try_from(seed % 6).expect("few");
        fewer.cells[cell].takes.truncate(2);
        fewer.rules.clear();
        ruled.rules.clear();
        assert!(cost(&fewer) >= cost(&ruled), "seed {seed}");
    }
}

/// The order of cells is nothing to what the best plan costs; the same steps give the same plan.
/// Break: in `Relaxed::find` add what a limit is priced at instead of taking it away.
#[test]
fn order_is_nothing_and_the_same_steps_give_the_same_plan() {
    for seed in 2_000..2_020 {
        let mut model = drawn(seed, 7);
        model.rules.clear();
        let solved = solve(&model, 20_000, 1);
        assert_eq!(solved, solve(&model, 20_000, 1), "seed {seed}");
        model.cells.reverse();
        model.cells.iter_mut().for_each(|cell| cell.takes.reverse());
        assert_eq!(solved.cost, solve(&model, 20_000, 1).cost, "seed {seed}");
    }
}
