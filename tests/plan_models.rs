//! Models for plans, drawn from a seed: what is hard is what they are made of. Tight budgets and hours, kits that overlap,
//! carriage that is nearly free, least charges, least orders, donors with conditions, rules between them.

#![expect(clippy::inconsistent_digit_grouping, reason = "pounds and pence are told apart")]

use asfound_core::costing::Stream;
use asfound_core::job::vocabulary::Relation;
use asfound_core::plan::{Carriage, Cell, Chosen, Limits, Load, Model, Order, Rule, Shared, Take};

/// Numbers out of a seed.
struct Dice {
    stream: Stream,
    thrown: u64,
}

impl Dice {
    /// From `least` to `most`.
    fn throw(&mut self, least: i64, most: i64) -> i64 {
        self.thrown += 1;
        let span = u64::try_from(most - least + 1).expect("in order");
        least
            + i64::try_from((u128::from(self.stream.bits(self.thrown)) * u128::from(span)) >> 64)
                .expect("below the span")
    }

    fn index(&mut self, count: usize) -> usize {
        usize::try_from(self.throw(0, i64::try_from(count).expect("few") - 1)).expect("from nothing on")
    }

    fn chance(&mut self, of_hundred: i64) -> bool {
        self.throw(1, 100) <= of_hundred
    }
}

/// A model of so many cells. A larger one has more suppliers, specialists, kits and rules; small ones have each feature by turns.
pub fn drawn(seed: u64, cells: usize) -> Model {
    let mut dice = Dice { stream: Stream::seeded(seed), thrown: 0 };
    let suppliers = 2 + cells / 15;
    let specialists = 1 + cells / 40;
    let mut model = Model {
        orders: (0..suppliers + specialists).map(|at| order(&mut dice, at >= suppliers, cells)).collect(),
        ..Model::default()
    };
    for _ in 0..cells {
        let size = dice.throw(0, 3);
        let price = dice.throw(3_00, 30_00) << size;
        let mut takes = vec![own(&mut dice, price)];
        for _ in 0..dice.throw(1, 3) {
            let order = dice.index(suppliers);
            takes.push(bought(&mut dice, price, order));
        }
        if dice.chance(50) {
            let order = suppliers + dice.index(specialists);
            takes.push(bought(&mut dice, price / 2, order));
        }
        model.cells.push(Cell { takes });
    }
    kits(&mut dice, &mut model, suppliers);
    donor(&mut dice, &mut model);
    rules(&mut dice, &mut model);
    limits(&mut dice, &mut model);
    model
}

/// Hours of one's own, hardly any cash.
fn own(dice: &mut Dice, price: i64) -> Take {
    let minutes = dice.throw(20, 240);
    let cash = price * dice.throw(0, 15) / 100;
    let risk = price * dice.throw(0, 40) / 100;
    Take { cost: cash + minutes * 25 + risk, cash, minutes, ..Take::default() }
}

fn bought(dice: &mut Dice, price: i64, order: usize) -> Take {
    let cash = price * dice.throw(75, 140) / 100;
    let minutes = dice.throw(5, 30);
    let load = Load { order, value: cash, mass: dice.throw(50, 4_000) };
    Take {
        cost: cash + minutes * 25 + cash * dice.throw(0, 20) / 100,
        cash,
        minutes,
        loads: vec![load],
        ..Take::default()
    }
}

fn order(dice: &mut Dice, works: bool, cells: usize) -> Order {
    let carriage = dice.throw(3_00, 18_00);
    let many = i64::try_from(cells).expect("few");
    let mut order = Order { carriage, ..Order::default() };
    if works {
        order.minimum_charge = dice.throw(30_00, 120_00);
    } else if dice.chance(60) {
        order.free_from = Some(dice.throw(20_00, 20_00 * (2 + many / 4)));
    } else if dice.chance(50) {
        order.tiers = vec![
            Carriage { from_value: 0, from_mass: 2_000, carriage: carriage * 2 },
            Carriage { from_value: 0, from_mass: 10_000, carriage: carriage * 4 },
        ];
    } else {
        order.tiers = vec![
            Carriage { from_value: 40_00, from_mass: 0, carriage: carriage / 2 },
            Carriage { from_value: 150_00, from_mass: 0, carriage: carriage / 4 },
        ];
    }
    if dice.chance(25) {
        order.minimum_order = dice.throw(10_00, 40_00);
    }
    order
}

/// Kits that overlap, some of which several are needed of.
fn kits(dice: &mut Dice, model: &mut Model, suppliers: usize) {
    for _ in 0..1 + model.cells.len() / 12 {
        let copies = usize::try_from(dice.throw(1, 2)).expect("few");
        let first = model.shared.len();
        let inside: Vec<usize> = (0..dice.throw(2, 6)).map(|_| dice.index(model.cells.len())).collect();
        let mut value = 0;
        for cell in &inside {
            let dearest = model.cells[*cell].takes.iter().map(|take| take.cash).max().unwrap_or(0);
            value += dearest;
            let needed = if dice.chance(30) { copies } else { 1 };
            let minutes = dice.throw(5, 20);
            model.cells[*cell].takes.push(Take {
                cost: minutes * 25,
                minutes,
                uses: (first..first + needed).collect(),
                ..Take::default()
            });
        }
        let cash = value * dice.throw(30, 80) / 100;
        let order = dice.index(suppliers);
        for _ in 0..copies {
            model.shared.push(Shared {
                cost: cash,
                cash,
                loads: vec![Load { order, value: cash, mass: 900 }],
                ..Shared::default()
            });
        }
    }
}

fn donor(dice: &mut Dice, model: &mut Model) {
    let at = model.shared.len();
    let price = dice.throw(20_00, 200_00);
    model.shared.push(Shared { cost: price, cash: price, ..Shared::default() });
    for cell in 0..model.cells.len() {
        if dice.chance(30) {
            let minutes = dice.throw(20, 120);
            model.cells[cell].takes.push(Take {
                cost: minutes * 25 + dice.throw(0, 9_00),
                minutes,
                uses: vec![at],
                ..Take::default()
            });
        }
    }
}

fn rules(dice: &mut Dice, model: &mut Model) {
    for _ in 0..1 + model.cells.len() / 8 {
        let relation = [Relation::Needs, Relation::RulesOut, Relation::GoesWith][dice.index(3)];
        let rule =
            Rule { relation, subject: chosen(dice, model), other: chosen(dice, model), price: dice.throw(1_00, 20_00) };
        model.rules.push(rule);
    }
}

fn chosen(dice: &mut Dice, model: &Model) -> Chosen {
    if dice.chance(20) {
        return Chosen::Shared(dice.index(model.shared.len()));
    }
    let cell = dice.index(model.cells.len());
    let takes = model.cells[cell].takes.len();
    let mut which = vec![false; takes];
    which[dice.index(takes)] = true;
    if dice.chance(40) {
        which[dice.index(takes)] = true;
    }
    Chosen::Takes { cell, which }
}

/// About a fifth of the way up from the least cash that every part takes by itself to what is paid where each part is settled at
/// its own cheapest, and the same with hours: so that the best plan without limits passes them more often than not, and now and
/// then nothing fits.
fn limits(dice: &mut Dice, model: &mut Model) {
    let between = |what: &dyn Fn(&Take) -> i64, percent: i64| -> i64 {
        let (mut least, mut cheapest) = (0, 0);
        for cell in &model.cells {
            let alone = || cell.takes.iter().filter(|take| take.uses.is_empty());
            least += alone().map(what).min().unwrap_or(0);
            cheapest += alone().min_by_key(|take| take.cost).map_or(0, what);
        }
        least + (cheapest - least) * percent / 100
    };
    let mut limits = Limits::default();
    let (cash, minutes) = (dice.chance(70), dice.chance(50));
    if cash {
        let percent = if minutes { dice.throw(25, 60) } else { dice.throw(10, 40) };
        limits.cash = Some(between(&|take| take.cash, percent));
    }
    if minutes {
        let percent = if cash { dice.throw(110, 200) } else { dice.throw(20, 60) };
        limits.minutes = Some(between(&|take| take.minutes, percent));
    }
    model.limits = limits;
}
