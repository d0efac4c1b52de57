//! A published instance with a known best: uncapacitated facility location cap71 of the OR-Library (J. E. Beasley, Journal of the
//! Operational Research Society 41, 1990, pp. 1069-1072). 16 sites of which each costs 7500 to open (site 11 nothing), 50 customers
//! of whom each is served from one: as a plan, parts that each take one of 16 donors.

use asfound_core::plan::{Cell, Model, PlanProof, Shared, Take, solve};

/// `cap71.txt` beside this file: sites and customers; for each site its capacity (which does not count here) and what it costs;
/// for each customer the demand, and what it costs to serve all of that from each site.
const CAP71: &str = include_str!("cap71.txt");

/// All figures are whole in eightieths.
fn eightieths(figure: &str) -> i64 {
    let (whole, part) = figure.split_once('.').unwrap_or((figure, ""));
    let of = |digits: &str| digits.parse::<i64>().unwrap_or(0);
    let part = of(&format!("{part:0<5}")) * 80;
    assert_eq!(part % 100_000, 0, "{figure} is not whole in eightieths");
    of(whole) * 80 + part / 100_000
}

/// Published: 932 615.750, with the sites 1 2 3 4 6 7 8 9 11 12 13.
/// Break: in `Relaxed::find` leave out what cells pay for what they use.
#[test]
fn the_published_best_is_found_and_proved() {
    let mut figures = CAP71.split_whitespace();
    let mut next = || figures.next().expect("a figure");
    let (sites, customers) = (next().parse::<usize>().expect("a count"), next().parse::<usize>().expect("a count"));
    let mut model = Model::default();
    for _ in 0..sites {
        next();
        model.shared.push(Shared { cost: eightieths(next()), ..Shared::default() });
    }
    for _ in 0..customers {
        next();
        let takes = (0..sites).map(|site| Take { cost: eightieths(next()), uses: vec![site], ..Take::default() });
        model.cells.push(Cell { takes: takes.collect() });
    }
    assert_eq!((sites, customers, figures.next()), (16, 50, None));
    let solved = solve(&model, 200, 1);
    assert_eq!((solved.proof, solved.cost), (PlanProof::Best, Some(74_609_260)));
    assert_eq!(74_609_260.0 / 80.0, 932_615.75);
    let used = model.worth(&solved.taken.expect("a plan")).used;
    let open: Vec<usize> = (1..=sites).filter(|site| used[site - 1]).collect();
    assert_eq!(open, [1, 2, 3, 4, 6, 7, 8, 9, 11, 12, 13]);
}
