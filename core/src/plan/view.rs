use serde::{Deserialize, Serialize};

use super::search::PlanProof;
use crate::job::vocabulary::Route;
use crate::quantity::{Currency, Minutes, Money};
use crate::record::Id;

/// One quote for every part, so that all of them together cost least, with what is known of how good that is.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlanView {
    /// The currency of all sums.
    pub currency: Currency,
    /// How sure it is that nothing is better.
    pub proof: PlanProof,
    /// How many steps were made.
    pub nodes: u32,
    /// What the plan comes to; nothing while none is found that fits.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sums: Option<PlanSums>,
    /// No plan costs less.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bound: Option<Money>,
    /// What each part's own cheapest would come to together, and whether that keeps all limits and rules.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub singly: Option<PlanSums>,
    /// Where decisions are open again: what was chosen, with each open part's own cheapest.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub own: Option<PlanSums>,
    /// The way to the plan from what was chosen, or from each part's own cheapest: what brings most first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub steps: Vec<PlanStep>,
    /// What is taken for each part, by part.
    pub choices: Vec<PlanChoice>,
    /// What goes with each supplier and specialist whose terms are known, by stage and supplier.
    pub orders: Vec<PlanOrder>,
    /// Kits that are bought, by quote.
    pub kits: Vec<PlanKit>,
    /// Donors that are used, by vehicle.
    pub donors: Vec<PlanDonor>,
    /// Parts that the plan leaves out: nothing that may be chosen is quoted for them.
    pub unplanned: Vec<Id>,
    /// Rules that only cost extra, and are not kept, by id.
    pub unkept: Vec<Id>,
    /// Where nothing fits: limits that collide; without any one of them these would no longer.
    pub collide: Vec<Collides>,
}

/// What a plan comes to.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlanSums {
    /// Present value, all in.
    pub cost: Money,
    /// All that is paid at first.
    pub cash: Money,
    /// Own time.
    pub own_time: Minutes,
    /// The longest wait in days, as far as waits are known.
    pub wait: i64,
    /// Carriage and what is short of least charges.
    pub carriage: Money,
    /// It keeps all limits and rules.
    pub fits: bool,
}

/// A few parts that go over to the plan in one go.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlanStep {
    /// The parts, each with its quote in the plan.
    pub parts: Vec<PlanTaken>,
    /// Why they go over.
    pub why: StepWhy,
    /// The supplier, specialist or donor that they have together.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// By how much less the whole job then costs; less than nothing where it is dearer, but keeps a limit or a rule.
    pub saves: Money,
    /// How much more is paid at first.
    pub cash: Money,
    /// How much more own time it takes.
    pub own_time: Minutes,
}

/// A part and its quote.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlanTaken {
    /// Which part.
    pub part: Id,
    /// Which quote.
    pub quote: Id,
}

/// What parts of a step have together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum StepWhy {
    /// Nothing: it is one part, or a pair.
    Itself,
    /// A kit is paid for once.
    Kit,
    /// A donor is paid for once.
    Donor,
    /// They go with one order or batch.
    Order,
    /// A kit is not needed any more.
    NoKit,
    /// A donor is not needed any more.
    NoDonor,
    /// They leave an order or batch.
    NoOrder,
    /// All that is left.
    Rest,
}

/// What is taken for one part.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlanChoice {
    /// Which part.
    pub part: Id,
    /// Its tag.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tag: Option<i64>,
    /// Its name; empty when it has none.
    pub name: String,
    /// Which quote.
    pub quote: Id,
    /// Its route.
    pub route: Route,
    /// From whom.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<String>,
    /// The quote for pieces that a kit has too few of.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rest: Option<Id>,
    /// It was decided before, and stays.
    pub decided: bool,
    /// Somebody chose this quote.
    pub chosen: bool,
    /// The part's own cheapest, where that is another one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub instead_of: Option<Id>,
    /// Why not that one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub why: Option<PlanWhy>,
    /// What is paid at first for the whole quote, in minor units.
    pub cash: i64,
    /// The same of `rest`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rest_cash: Option<i64>,
}

/// Why a part does not take its own cheapest quote.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlanWhy {
    /// What stands against it.
    pub because: Because,
    /// What the job would cost more with it, where it would still fit; else by how much a budget or the hours are passed, in
    /// minor units or minutes.
    pub more: i64,
}

/// What stands against the cheapest quote of a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum Because {
    /// A kit, or a donor, is paid for already by others.
    Shared,
    /// An order would pay more carriage, or a batch less than it is charged for.
    Carriage,
    /// The budget.
    Budget,
    /// The own hours.
    Hours,
    /// The least order of a supplier.
    LeastOrder,
    /// A fit rule.
    Rule,
    /// The parts that are decided together.
    Together,
    /// Nothing that could be put into a word: together it is dearer.
    Dearer,
}

/// What goes with one order or batch.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlanOrder {
    /// From whom.
    pub supplier: Id,
    /// What that one is called.
    pub name: String,
    /// In which stage.
    pub stage: i64,
    /// Quotes that go with it.
    pub quotes: Vec<Id>,
    /// Their value.
    pub value: Money,
    /// Their mass in grams, as far as it is known.
    pub mass: i64,
    /// Carriage.
    pub carriage: Money,
    /// What is paid because the pieces come short of the least charge.
    pub short: Money,
    /// What is missing until carriage is free.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to_free: Option<Money>,
}

/// A kit that is bought.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlanKit {
    /// Its quote.
    pub quote: Id,
    /// From whom.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<String>,
    /// How many.
    pub copies: i64,
    /// What each costs.
    pub price: Money,
    /// What is left over.
    pub spare: Vec<Spare>,
}

/// Pieces of a kit that are left over.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Spare {
    /// Of which part.
    pub part: Id,
    /// How many.
    pub pieces: i64,
}

/// A donor that is used.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PlanDonor {
    /// Which vehicle.
    pub vehicle: Id,
    /// What it is called.
    pub name: String,
    /// What it really costs: its price, less what surplus was sold for; nothing where it is here already.
    pub cost: Money,
    /// The parts it gives.
    pub parts: Vec<Id>,
}

/// A limit or a rule that collides with others, and the cheapest way to give way.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Collides {
    /// Which.
    pub limit: Collision,
    /// The rule, or the supplier of a least order.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub of: Option<Id>,
    /// What that supplier is called, or what the rule is about and what it says of it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub names: Vec<String>,
    /// Of the stage whose budget it is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stage: Option<i64>,
    /// How much more it would take while all else is kept, in minor units or minutes; nothing where more of it alone does not
    /// help.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub more: Option<i64>,
}

/// What can collide.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum Collision {
    /// The budget.
    Budget,
    /// The budget of a stage.
    Stage,
    /// The own hours.
    Hours,
    /// The least order of a supplier.
    LeastOrder,
    /// A fit rule.
    Rule,
}
