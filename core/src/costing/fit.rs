//! Which fit rules the decisions break, and the cheapest single change that mends each.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use super::cost::priced;
use super::kit::{covered_with, kits_for};
use crate::inspect::together;
use crate::job::vocabulary::{Relation, Route};
use crate::job::{Command, Context, Job, Sent, apply};
use crate::quantity::{Day, Estimate, Millis, Money};
use crate::record::{EntryId, FieldName, Id, Item, Kind, Replica};

/// A rule that the decisions break.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct BreachView {
    /// What stands against it.
    pub why: BreachWhy,
    /// The route that was chosen for the other instead, where one was.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub instead: Option<Route>,
    /// The parts that it concerns: those that make its subject hold, then those of the other.
    pub parts: Vec<Id>,
    /// What it costs extra as it is, where it need not hold.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price: Option<Money>,
    /// The cheapest single change after which it holds, and no other rule that must hold is broken by it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mend: Option<MendView>,
}

/// What stands against a rule.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub enum BreachWhy {
    /// Nothing was chosen for the other yet.
    NothingChosen,
    /// Something else was chosen for the other.
    OtherChosen,
    /// Nothing comes from the donor that the other is.
    NotUsed,
    /// Both were chosen, and one rules out the other.
    Both,
}

/// One change that mends a rule.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct MendView {
    /// What is chosen: for one part, and with it for those that are decided together with it.
    pub choices: Vec<MendChoice>,
    /// What the job is worth more with it; below nothing what it saves. A part that is open counts at its cheapest quote.
    pub more: Estimate,
}

/// A quote that a mend chooses.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct MendChoice {
    /// For which part.
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
}

/// A rule as it is read.
#[derive(Clone, Copy)]
struct Fit {
    relation: Relation,
    subject: Id,
    other: Id,
}

/// What is chosen, part by part.
type Choices = Vec<(Id, Id)>;

impl Fit {
    fn of(job: &Job, rule: Id) -> Option<Self> {
        let item = job.item_of(Kind::Rule, rule).filter(|item| !item.is_struck())?;
        let (relation, subject) = (item.read(FieldName::Relation)?, item.read(FieldName::Of)?);
        Some(Self { relation, subject, other: item.read(FieldName::Other)? })
    }

    fn is_broken(self, job: &Job, today: Option<Day>) -> bool {
        !holders(job, self.subject, today).is_empty()
            && holders(job, self.other, today).is_empty() != (self.relation == Relation::RulesOut)
    }
}

/// Tells of rule after rule whether, and by what, the decisions break it; with the cheapest mend. What is tried is tried on one
/// copy of the job, which is made for the first rule that is broken.
pub(crate) struct Breaches<'a> {
    job: &'a Job,
    today: Option<Day>,
    trial: Option<Trial>,
}

impl<'a> Breaches<'a> {
    pub(crate) const fn of(job: &'a Job, today: Option<Day>) -> Self {
        Self { job, today, trial: None }
    }

    pub(crate) fn breach(&mut self, rule: Id) -> Option<BreachView> {
        let mut told = against(self.job, rule, self.today)?;
        let trial = self.trial.get_or_insert_with(|| Trial::of(self.job));
        told.mend = mend(self.job, trial, rule, self.today);
        Some(told)
    }
}

/// What stands against a rule; nothing while it holds.
fn against(job: &Job, rule: Id, today: Option<Day>) -> Option<BreachView> {
    let fit = Fit::of(job, rule).filter(|fit| fit.is_broken(job, today))?;
    let mut parts = holders(job, fit.subject, today);
    let others = sides(job, fit.other);
    let chosen = |part: &Id| decided(job, *part, today).is_some() || job.route_of(*part).is_some();
    let (why, instead) = match job.kind(fit.other) {
        _ if fit.relation == Relation::RulesOut => (BreachWhy::Both, None),
        Some(Kind::Vehicle) => (BreachWhy::NotUsed, None),
        _ => match others.iter().find(|part| chosen(part)) {
            Some(part) => (BreachWhy::OtherChosen, job.route_of(*part)),
            None => (BreachWhy::NothingChosen, None),
        },
    };
    parts.extend(others.into_iter().filter(|part| !parts.contains(part)).collect::<Vec<_>>());
    let price =
        (fit.relation == Relation::GoesWith).then(|| Money::from_minor(extra(job, rule), job.settings().currency));
    Some(BreachView { why, instead, parts, price, mend: None })
}

/// The parts that a side of a rule is about, whatever is decided.
pub(crate) fn sides(job: &Job, side: Id) -> Vec<Id> {
    let parts = match job.kind(side) {
        Some(Kind::Part) => vec![side],
        Some(Kind::Quote) => covered_with(job, side),
        Some(Kind::Vehicle) => job
            .children(Kind::Quote, FieldName::Vehicle, side)
            .filter_map(|quote| job.item(quote)?.read::<Id>(FieldName::Of))
            .collect(),
        _ => Vec::new(),
    };
    let here = parts.into_iter().filter(|part| job.item_of(Kind::Part, *part).is_some_and(|item| !item.is_struck()));
    here.collect::<BTreeSet<Id>>().into_iter().collect()
}

/// The parts by whose decisions a side of a rule holds: a quote that was chosen; a part that another piece comes in for; a donor
/// that gives something.
fn holders(job: &Job, side: Id, today: Option<Day>) -> Vec<Id> {
    let is_renewed = |route| matches!(route, Route::Exchange | Route::Buy | Route::Kit | Route::Donor);
    let holds = |part: &Id| match job.kind(side) {
        Some(Kind::Part) => job.route_of(*part).is_some_and(is_renewed),
        Some(Kind::Quote) => decided(job, *part, today) == Some(side),
        _ => decided(job, *part, today).and_then(|quote| donor_of(job, quote)) == Some(side),
    };
    sides(job, side).into_iter().filter(holds).collect()
}

/// The quote that a part is decided for.
pub(crate) fn decided(job: &Job, part: Id, today: Option<Day>) -> Option<Id> {
    match job.choice_of(part) {
        Some(choice) => job.item(choice)?.read(FieldName::Quote).filter(|quote| !job.is_struck(*quote)),
        None if job.is_decided_unasked(part) => priced(job, part, today, None).decided_quote(),
        None => None,
    }
}

/// The donor that a quote takes its part from.
fn donor_of(job: &Job, quote: Id) -> Option<Id> {
    let item = job.item(quote).filter(|item| item.read(FieldName::Route) == Some(Route::Donor))?;
    item.read::<Id>(FieldName::Vehicle).filter(|donor| job.item_of(Kind::Vehicle, *donor).is_some())
}

/// What a rule that need not hold costs extra, in minor units.
fn extra(job: &Job, rule: Id) -> i64 {
    let price: Option<Money> = job.item(rule).and_then(|item| item.read(FieldName::Cash));
    price.filter(|price| price.currency == job.settings().currency).map_or(0, |price| price.minor.max(0))
}

/// What a donor really costs, and what is paid for it: nothing where it is here already.
pub(crate) fn donor_cost(job: &Job, vehicle: Id) -> (i64, i64) {
    let Some(item) = job.item(vehicle).filter(|item| !item.is(FieldName::Bought)) else { return (0, 0) };
    let minor = |item: &Item, field| {
        let money: Option<Money> = item.read(field);
        money.filter(|money| money.currency == job.settings().currency).map_or(0, |money| money.minor)
    };
    let pieces = donor_pieces(job, vehicle).into_iter().filter_map(|part| job.item(part));
    let sold = pieces.map(|part| minor(part, FieldName::Sold)).fold(minor(item, FieldName::Sold), i64::saturating_add);
    (minor(item, FieldName::Cash).saturating_sub(sold), minor(item, FieldName::Cash))
}

/// The parts that are listed on a vehicle: in its assemblies, and in what is inside those.
pub(crate) fn donor_pieces(job: &Job, vehicle: Id) -> Vec<Id> {
    let mut within: BTreeSet<Id> = BTreeSet::new();
    let mut open: Vec<Id> = job.children(Kind::Assembly, FieldName::Vehicle, vehicle).collect();
    while let Some(assembly) = open.pop() {
        if within.insert(assembly) {
            open.extend(job.children(Kind::Assembly, FieldName::Inside, assembly));
        }
    }
    within.into_iter().flat_map(|assembly| job.children(Kind::Part, FieldName::Assembly, assembly)).collect()
}

/// The cheapest change of one decision, tried on a job of its own.
fn mend(job: &Job, trial: &mut Trial, rule: Id, today: Option<Day>) -> Option<MendView> {
    let fit = Fit::of(job, rule)?;
    let mut parts = holders(job, fit.subject, today);
    parts.extend(sides(job, fit.other));
    let parts: BTreeSet<Id> = parts.into_iter().collect();
    let all: Vec<Choices> = parts.iter().flat_map(|part| changes(job, *part, today)).collect();
    let others: Vec<(Id, Fit)> = job
        .standing_ids(Kind::Rule)
        .filter(|other| *other != rule)
        .filter_map(|other| Some((other, Fit::of(job, other)?)))
        .filter(|(_, other)| other.relation != Relation::GoesWith && !other.is_broken(job, today))
        .collect();
    let mut best: Option<(f64, Choices)> = None;
    for choices in all {
        let concerned = concerned(job, &choices);
        let before = worth(job, &concerned, today);
        let Some(entry) = trial.choose(&choices) else { continue };
        let now = &trial.job;
        let is_mended = !fit.is_broken(now, today) && others.iter().all(|(_, other)| !other.is_broken(now, today));
        let more = worth(now, &concerned, today) - before;
        trial.undo(entry);
        if is_mended && best.as_ref().is_none_or(|(least, _)| more < *least) {
            best = Some((more, choices));
        }
    }
    let (more, choices) = best?;
    let told = choices.into_iter().filter_map(|(part, quote)| {
        let item = job.item(quote)?;
        Some(MendChoice {
            part,
            tag: job.item(part)?.read(FieldName::Tag),
            name: job.name(part),
            quote,
            route: item.read(FieldName::Route)?,
            from: item.read(FieldName::From),
        })
    });
    Some(MendView { choices: told.collect(), more: Estimate::from_minor(more, job.settings().currency) })
}

/// Every other quote that may be chosen for a part, with what then goes the same way because it is decided together with it.
fn changes(job: &Job, part: Id, today: Option<Day>) -> Vec<Choices> {
    let now = decided(job, part, today);
    let quotes = priced(job, part, today, None).views;
    let open = quotes.iter().filter(|quote| quote.allowed && Some(quote.id) != now);
    let with = |quote: &super::view::QuoteCost| {
        let mut choices = vec![(part, quote.id)];
        for other in together(job, part).into_iter().filter(|other| job.route_of(*other) != Some(quote.route)) {
            let priced = priced(job, other, today, None);
            let same = priced.views.iter().filter(|view| view.allowed && view.route == quote.route);
            let least = same.min_by(|a, b| {
                (a.id != quote.id).cmp(&(b.id != quote.id)).then(a.present.minor.total_cmp(&b.present.minor))
            });
            match least {
                Some(least) => choices.push((other, least.id)),
                // What is open may stay so; what is decided otherwise would be parted from it.
                None if job.route_of(other).is_none() => {}
                None => return None,
            }
        }
        Some(choices)
    };
    open.filter_map(with).collect()
}

/// The parts whose worth a change may move: those that it chooses for, and those in one kit with them.
fn concerned(job: &Job, choices: &Choices) -> BTreeSet<Id> {
    let kits = choices.iter().flat_map(|(part, _)| kits_for(job, *part));
    let with = kits.flat_map(|kit| covered_with(job, kit));
    choices.iter().map(|(part, _)| *part).chain(with).filter(|part| !job.is_struck(*part)).collect()
}

/// What some parts are worth over the years: what is decided, a kit once; what is open at its cheapest; with donors that are
/// used, and what broken rules cost extra.
fn worth(job: &Job, parts: &BTreeSet<Id>, today: Option<Day>) -> f64 {
    let mut paid: BTreeSet<Id> = BTreeSet::new();
    let mut sum = 0.0;
    for part in parts {
        let priced = priced(job, *part, today, None);
        let whole = |quote| priced.whole(quote).map_or(0.0, |whole| whole.present.minor);
        match priced.decided_quote() {
            Some(quote) if paid.insert(quote) => sum += whole(quote),
            Some(_) => {}
            None => {
                let cheapest = priced.cheapest().and_then(|id| priced.views.iter().find(|view| view.id == id));
                sum += cheapest.map_or(0.0, |quote| quote.present.minor);
            }
        }
    }
    let donors = job.standing_ids(Kind::Vehicle).filter(|donor| !holders(job, *donor, today).is_empty());
    let donors: i64 = donors.map(|donor| donor_cost(job, donor).0).sum();
    let rules = job.standing_ids(Kind::Rule).filter(|rule| {
        Fit::of(job, *rule).is_some_and(|fit| fit.relation == Relation::GoesWith && fit.is_broken(job, today))
    });
    let rules: i64 = rules.map(|rule| extra(job, rule)).sum();
    sum + super::figures::whole(donors.saturating_add(rules))
}

/// A copy of a job, in which decisions are tried and taken back.
struct Trial {
    job: Job,
    tried: u64,
}

impl Trial {
    fn of(job: &Job) -> Self {
        Self { job: job.clone(), tried: 0 }
    }

    /// Ids that nobody else makes.
    fn fresh(&mut self) -> Id {
        self.tried += 1;
        Id::derived(Id::from_bytes([0xfe; 16]), "trial", self.tried)
    }

    fn carry_out(&mut self, command: Command) -> Option<EntryId> {
        let context =
            Context { replica: Replica::from_bytes([0xfe; 8]), device: Id::from_bytes([0xfe; 16]), at: Millis(0) };
        let id = self.fresh();
        let applied = apply(&self.job, &Sent { id, command }, &context);
        let entry = applied.entries.first().map(|entry| entry.id);
        self.job.absorb(applied.entries);
        entry
    }

    fn choose(&mut self, choices: &Choices) -> Option<EntryId> {
        let all = choices.iter().map(|(part, quote)| {
            let id = self.fresh();
            Command::Choose { id, quote: *quote, part: Some(*part), who: None }
        });
        let commands = all.collect();
        self.carry_out(Command::All { commands })
    }

    fn undo(&mut self, entry: EntryId) {
        self.carry_out(Command::Undo { entry });
    }
}
