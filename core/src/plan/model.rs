use crate::job::vocabulary::Relation;

/// A job as a plan sees it: what is chosen among, what is paid once, and what must hold. Whole numbers throughout: money in
/// minor units of the job's currency, time in minutes, mass in grams.
///
/// A plan takes one [`Take`] for every [`Cell`]. What several takes share (a kit, a donor) is a [`Shared`], paid once when
/// anybody uses it. What is bought from one supplier, or sent to one specialist, in one stage is an [`Order`], whose carriage and
/// least charge hang on all that goes with it.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Model {
    /// What is decided, each by one take.
    pub cells: Vec<Cell>,
    /// What is paid once, whoever uses it.
    pub shared: Vec<Shared>,
    /// Orders and batches.
    pub orders: Vec<Order>,
    /// Fit rules.
    pub rules: Vec<Rule>,
    /// What must not be passed.
    pub limits: Limits,
}

/// A part, or parts that are decided together.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Cell {
    /// What may be taken, at least one.
    pub takes: Vec<Take>,
}

/// One way to settle a cell.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Take {
    /// Present value, without carriage and what is shared.
    pub cost: i64,
    /// All that is paid at first.
    pub cash: i64,
    /// Own time.
    pub minutes: i64,
    /// In which stage it is paid, counted from 0.
    pub stage: usize,
    /// What it adds to orders.
    pub loads: Vec<Load>,
    /// What it uses that is shared.
    pub uses: Vec<usize>,
}

/// What is added to an order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Load {
    /// Which order.
    pub order: usize,
    /// Its value.
    pub value: i64,
    /// Its mass.
    pub mass: i64,
}

/// Something that is paid once: a copy of a kit, a donor.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Shared {
    /// Present value.
    pub cost: i64,
    /// All that is paid at first.
    pub cash: i64,
    /// Own time.
    pub minutes: i64,
    /// In which stage it is paid, counted from 0.
    pub stage: usize,
    /// What it adds to orders.
    pub loads: Vec<Load>,
}

/// What is bought from one supplier, or sent to one specialist, in one stage.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Order {
    /// In which stage it is paid, counted from 0.
    pub stage: usize,
    /// Carriage where no tier holds.
    pub carriage: i64,
    /// Other carriages, from a value and a mass on; the last one that holds counts.
    pub tiers: Vec<Carriage>,
    /// The value from which carriage is free.
    pub free_from: Option<i64>,
    /// The least value that is accepted.
    pub minimum_order: i64,
    /// The least that a batch is charged: what its pieces come short of it is paid on top.
    pub minimum_charge: i64,
}

/// A carriage that holds from a value and a mass on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Carriage {
    /// From this value of the order.
    pub from_value: i64,
    /// And from this mass.
    pub from_mass: i64,
    /// What is paid.
    pub carriage: i64,
}

/// What goes, or does not go, with what.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Rule {
    /// Needs, rules out or goes with.
    pub relation: Relation,
    /// Whom it is about.
    pub subject: Chosen,
    /// What the subject needs, rules out or goes with.
    pub other: Chosen,
    /// What the subject costs extra without the other, where it goes with it.
    pub price: i64,
}

/// Something that a plan chooses or not.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Chosen {
    /// One of some takes of a cell.
    Takes {
        /// Which cell.
        cell: usize,
        /// For each of its takes whether it counts.
        which: Vec<bool>,
    },
    /// Something shared.
    Shared(usize),
    /// Nothing that this plan can choose.
    Never,
}

/// What must not be passed.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Limits {
    /// All that is paid at first.
    pub cash: Option<i64>,
    /// The same for one stage.
    pub stages: Vec<(usize, i64)>,
    /// Own time.
    pub minutes: Option<i64>,
}

impl Order {
    /// Carriage and what a batch comes short of the least charge, for all that goes with the order.
    ///
    /// Worked by hand: minimum 75, freight 16, 4.50 a piece.
    ///
    /// ```
    /// use asfound_core::plan::Order;
    /// let plater = Order { carriage: 16_00, minimum_charge: 75_00, ..Order::default() };
    /// let batch = |pieces: i64| pieces * 4_50 + plater.charge(pieces * 4_50, 0);
    /// assert_eq!([12, 16, 17].map(batch), [91_00, 91_00, 92_50]);
    /// assert_eq!(batch(8) + batch(8), 182_00);
    /// ```
    #[must_use]
    pub fn charge(&self, value: i64, mass: i64) -> i64 {
        self.carriage_of(value, mass).saturating_add(self.minimum_charge.saturating_sub(value).max(0))
    }

    /// Carriage alone.
    #[must_use]
    pub fn carriage_of(&self, value: i64, mass: i64) -> i64 {
        if self.free_from.is_some_and(|free| value >= free) {
            return 0;
        }
        let holding = self.tiers.iter().rev().find(|tier| value >= tier.from_value && mass >= tier.from_mass);
        holding.map_or(self.carriage, |tier| tier.carriage)
    }
}

impl Chosen {
    /// Whether a plan chooses it. `taken` has the take of each cell, `used` says what is shared.
    #[must_use]
    pub fn holds(&self, taken: &[usize], used: impl Fn(usize) -> bool) -> bool {
        match self {
            Self::Takes { cell, which } => which[taken[*cell]],
            Self::Shared(at) => used(*at),
            Self::Never => false,
        }
    }
}

impl Rule {
    /// Whether the rule is broken: of one that only costs extra, whether that is due.
    #[must_use]
    pub fn is_broken(&self, taken: &[usize], used: impl Fn(usize) -> bool) -> bool {
        self.subject.holds(taken, &used) && (self.other.holds(taken, &used) == (self.relation == Relation::RulesOut))
    }

    /// Whether it must hold, and not only costs extra.
    #[must_use]
    pub fn is_hard(&self) -> bool {
        self.relation != Relation::GoesWith
    }
}

/// A small model with a bit of everything, for tests: 81 plans.
#[cfg(test)]
pub(super) fn one_of_everything() -> Model {
    let load = |value| Load { order: 0, value, mass: value / 10 };
    let take = |cost: i64, uses: Vec<usize>, loads: Vec<Load>| Take {
        cost,
        cash: cost,
        minutes: cost % 7,
        uses,
        loads,
        ..Take::default()
    };
    let cells = (0..4).map(|cell| Cell {
        takes: vec![
            take(50 + cell, vec![], vec![load(50 + cell)]),
            take(9, vec![0], vec![]),
            take(3, vec![0, 1], vec![load(3)]),
        ],
    });
    let tiers = vec![
        Carriage { from_value: 60, from_mass: 0, carriage: 4 },
        Carriage { from_value: 0, from_mass: 9, carriage: 30 },
    ];
    Model {
        cells: cells.collect(),
        shared: vec![
            Shared { cost: 40, cash: 41, ..Shared::default() },
            Shared { cost: 7, loads: vec![load(7)], ..Shared::default() },
        ],
        orders: vec![Order {
            carriage: 11,
            tiers,
            free_from: Some(150),
            minimum_order: 55,
            minimum_charge: 70,
            ..Order::default()
        }],
        rules: [Relation::Needs, Relation::RulesOut, Relation::GoesWith]
            .map(|relation| Rule {
                relation,
                subject: Chosen::Takes { cell: 1, which: vec![true, false, true] },
                other: Chosen::Shared(1),
                price: 5,
            })
            .into(),
        ..Model::default()
    }
}
