//! A model as a linear program with whole numbers: the same as `tests/reference/plan_by_highs.py` makes of it, for solvers that
//! read text.

use std::fmt::Write;

use asfound_core::job::vocabulary::Relation;
use asfound_core::plan::{Chosen, Load, Model, Order};

/// Variables and rows; a row is a sum that is compared with a number.
#[derive(Default)]
struct Program {
    variables: Vec<Variable>,
    rows: Vec<(Vec<Term>, &'static str, i64)>,
}

struct Variable {
    cost: i64,
    high: i64,
    is_whole: bool,
}

/// Variable and factor.
type Term = (usize, i64);

/// One stretch of values and masses of an order: whether it is in it, and with how much.
struct Band {
    is_in: usize,
    value: usize,
    mass: usize,
}

impl Program {
    fn yes_or_no(&mut self, cost: i64) -> usize {
        self.variables.push(Variable { cost, high: 1, is_whole: true });
        self.variables.len() - 1
    }

    fn amount(&mut self, cost: i64, high: i64) -> usize {
        self.variables.push(Variable { cost, high, is_whole: false });
        self.variables.len() - 1
    }

    fn row(&mut self, terms: Vec<Term>, compared: &'static str, with: i64) {
        if !terms.is_empty() {
            self.rows.push((terms, compared, with));
        }
    }

    fn text(&self) -> String {
        let mut text = "Minimize\n obj:".to_owned();
        self.variables.iter().enumerate().for_each(|(at, variable)| sum(&mut text, &[(at, variable.cost)]));
        text.push_str("\nSubject To\n");
        for (at, (terms, compared, with)) in self.rows.iter().enumerate() {
            let _ = write!(text, " r{at}:");
            sum(&mut text, terms);
            let _ = writeln!(text, " {compared} {with}");
        }
        text.push_str("Bounds\n");
        for (at, variable) in self.variables.iter().enumerate() {
            let _ = writeln!(text, " 0 <= x{at} <= {}", variable.high);
        }
        text.push_str("Generals\n");
        for at in (0..self.variables.len()).filter(|at| self.variables[*at].is_whole) {
            let _ = writeln!(text, " x{at}");
        }
        text.push_str("End\n");
        text
    }
}

/// A term a line: lines of solvers are not long without limit.
fn sum(text: &mut String, terms: &[Term]) {
    for (at, factor) in terms {
        let _ = write!(text, "\n {factor:+} x{at}");
    }
}

/// Stretches between the points where something changes, up to the most.
fn stretches(mut points: Vec<i64>, most: i64) -> Vec<(i64, i64)> {
    points.retain(|point| (0..=most).contains(point));
    points.sort_unstable();
    points.dedup();
    let ends = points.iter().skip(1).map(|after| after - 1).chain([most]);
    points.iter().copied().zip(ends).collect()
}

pub(crate) fn of(model: &Model) -> String {
    let mut program = Program::default();
    let taken: Vec<Vec<usize>> =
        model.cells.iter().map(|cell| cell.takes.iter().map(|take| program.yes_or_no(take.cost)).collect()).collect();
    let used: Vec<usize> = model.shared.iter().map(|shared| program.yes_or_no(shared.cost)).collect();
    for variables in &taken {
        program.row(variables.iter().map(|variable| (*variable, 1)).collect(), "=", 1);
    }
    share(&mut program, model, &taken, &used);
    let mut loaded: Vec<(usize, &[Load])> = Vec::new();
    for (variables, cell) in taken.iter().zip(&model.cells) {
        loaded.extend(variables.iter().zip(&cell.takes).map(|(variable, take)| (*variable, &take.loads[..])));
    }
    loaded.extend(used.iter().zip(&model.shared).map(|(variable, shared)| (*variable, &shared.loads[..])));
    let mut charges = Vec::new();
    for (at, order) in model.orders.iter().enumerate() {
        let goods: Vec<(usize, i64, i64)> = loaded
            .iter()
            .flat_map(|(variable, loads)| loads.iter().map(move |load| (*variable, load)))
            .filter(|(_, load)| load.order == at)
            .map(|(variable, load)| (variable, load.value, load.mass))
            .collect();
        charges.extend(charge(&mut program, order, &goods));
    }
    limit(&mut program, model, &taken, &used, charges);
    let chosen = |chosen: &Chosen, factor: i64| -> Vec<Term> {
        match chosen {
            Chosen::Takes { cell, which } => {
                let counted = taken[*cell].iter().zip(which).filter(|(_, counts)| **counts);
                counted.map(|(variable, _)| (*variable, factor)).collect()
            }
            Chosen::Shared(at) => vec![(used[*at], factor)],
            Chosen::Never => Vec::new(),
        }
    };
    for rule in &model.rules {
        let is_ruled_out = rule.relation == Relation::RulesOut;
        let mut terms = chosen(&rule.subject, 1);
        terms.extend(chosen(&rule.other, if is_ruled_out { 1 } else { -1 }));
        if rule.relation == Relation::GoesWith {
            terms.push((program.yes_or_no(rule.price), -1));
        }
        program.row(gathered(terms), "<=", i64::from(is_ruled_out));
    }
    program.text()
}

/// What is shared is paid where anybody uses it, and there alone.
fn share(program: &mut Program, model: &Model, taken: &[Vec<usize>], used: &[usize]) {
    for (at, variable) in used.iter().enumerate() {
        let mut all = vec![(*variable, 1)];
        for (variables, cell) in taken.iter().zip(&model.cells) {
            let users = variables.iter().zip(&cell.takes).filter(|(_, take)| take.uses.contains(&at));
            let mut terms: Vec<Term> = users.map(|(user, _)| (*user, 1)).collect();
            if !terms.is_empty() {
                all.extend(terms.iter().map(|(user, _)| (*user, -1)));
                terms.push((*variable, -1));
                program.row(terms, "<=", 0);
            }
        }
        program.row(all, "<=", 0);
    }
}

/// What an order costs by its value and mass. Answers what is paid, as terms.
fn charge(program: &mut Program, order: &Order, goods: &[(usize, i64, i64)]) -> Vec<Term> {
    let most_value = goods.iter().map(|(_, value, _)| value).sum();
    let most_mass = goods.iter().map(|(_, _, mass)| mass).sum();
    let mut values = vec![0, order.minimum_order, order.minimum_charge, order.free_from.unwrap_or(0)];
    values.extend(order.tiers.iter().map(|tier| tier.from_value));
    let mut masses = vec![0];
    masses.extend(order.tiers.iter().map(|tier| tier.from_mass));
    let (mut bands, mut charges) = (Vec::new(), Vec::new());
    for (low_mass, high_mass) in stretches(masses, most_mass) {
        for (low, high) in stretches(values.clone(), most_value) {
            if low < order.minimum_order {
                continue;
            }
            let is_short = low < order.minimum_charge;
            let paid = order.carriage_of(low, low_mass) + if is_short { order.minimum_charge } else { 0 };
            let is_in = program.yes_or_no(paid);
            let value = program.amount(if is_short { -1 } else { 0 }, high);
            let mass = program.amount(0, high_mass);
            for (amount, least, most) in [(value, low, high), (mass, low_mass, high_mass)] {
                program.row(vec![(amount, 1), (is_in, -least)], ">=", 0);
                program.row(vec![(amount, 1), (is_in, -most)], "<=", 0);
            }
            charges.push((is_in, paid));
            if is_short {
                charges.push((value, -1));
            }
            bands.push(Band { is_in, value, mass });
        }
    }
    program.row(bands.iter().map(|band| (band.is_in, 1)).collect(), "<=", 1);
    for (variable, _, _) in goods {
        let mut terms = vec![(*variable, 1)];
        terms.extend(bands.iter().map(|band| (band.is_in, -1)));
        program.row(terms, "<=", 0);
    }
    if !goods.is_empty() {
        let all = |of: fn(&Band) -> usize, goods: Vec<Term>| {
            gathered(bands.iter().map(|band| (of(band), 1)).chain(goods).collect())
        };
        let values = all(|band| band.value, goods.iter().map(|(at, value, _)| (*at, -value)).collect());
        let masses = all(|band| band.mass, goods.iter().map(|(at, _, mass)| (*at, -mass)).collect());
        program.row(values, "=", 0);
        program.row(masses, "=", 0);
    }
    charges
}

fn limit(program: &mut Program, model: &Model, taken: &[Vec<usize>], used: &[usize], charges: Vec<Term>) {
    let takes = || taken.iter().flatten().copied().zip(model.cells.iter().flat_map(|cell| &cell.takes));
    let shared = || used.iter().copied().zip(&model.shared);
    if let Some(cash) = model.limits.cash {
        let mut terms: Vec<Term> = takes().map(|(variable, take)| (variable, take.cash)).collect();
        terms.extend(shared().map(|(variable, shared)| (variable, shared.cash)));
        terms.extend(charges);
        program.row(terms, "<=", cash);
    }
    if let Some(minutes) = model.limits.minutes {
        let mut terms: Vec<Term> = takes().map(|(variable, take)| (variable, take.minutes)).collect();
        terms.extend(shared().map(|(variable, shared)| (variable, shared.minutes)));
        program.row(terms, "<=", minutes);
    }
}

/// Each variable once, as text forms want it.
fn gathered(mut terms: Vec<Term>) -> Vec<Term> {
    terms.sort_unstable_by_key(|(at, _)| *at);
    let mut gathered: Vec<Term> = Vec::new();
    for (at, factor) in terms {
        match gathered.last_mut() {
            Some((last, sum)) if *last == at => *sum += factor,
            _ => gathered.push((at, factor)),
        }
    }
    gathered
}
