//! What a part still lacks before it can go on for good.

use serde::{Deserialize, Serialize};

use crate::job::Job;
use crate::job::vocabulary::{Compared, Fit, OutFor, Route, Side};
use crate::quantity::Day;
use crate::record::{FieldName, Id, Item, Kind, stored_enum};
use crate::tables::renewed_by_name;

stored_enum! {
    /// Why something cannot go on yet.
    pub enum LackWhy {
        /// Nobody has decided what happens to it.
        Undecided = "undecided",
        /// It is not where it should be, or was never there.
        Missing = "missing",
        /// Somebody works on it.
        OutForWork = "out-for-work",
        /// Somebody has it on loan.
        OnLoan = "on-loan",
        /// It has not gone to the specialist yet.
        ToSend = "to-send",
        /// The work on it here is not done.
        ToRepair = "to-repair",
        /// It was tried, and is off for finish.
        ToFinish = "to-finish",
        /// It is on for trial only, and has to come off again.
        TriedOnly = "tried-only",
        /// New pieces are not ordered.
        ToOrder = "to-order",
        /// New pieces are on their way.
        OnOrder = "on-order",
        /// It is still on the donor.
        ToFetch = "to-fetch",
        /// What came in was not compared with the old one.
        ToCompare = "to-compare",
        /// What came in was found wrong.
        Wrong = "wrong",
        /// New hardware is not here.
        Hardware = "hardware",
        /// Grease, sealant or the like is not here.
        Consumable = "consumable",
        /// It goes on after something that is not on.
        GoesAfter = "goes-after",
        /// It goes on after the paint.
        Paint = "paint",
        /// It waits for itself, by way of others.
        Circle = "circle",
    }
}

/// One thing that stands in the way.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Lack {
    /// What.
    pub why: LackWhy,
    /// The part that lacks it; nothing where the whole assembly does.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub part: Option<Id>,
    /// Its tag.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tag: Option<i64>,
    /// What the part is called, or what the hardware or consumable is.
    pub name: String,
    /// The piece, consumable, delivery, outing, or what it goes on after.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other: Option<Id>,
    /// What that is called, where it is a part or an assembly.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub other_name: String,
    /// Its tag, where it is a part.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other_tag: Option<i64>,
    /// Its side.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other_side: Option<Side>,
    /// How many pieces are short.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pieces: Option<i64>,
    /// It can be done here and now, by whoever asks.
    pub own: bool,
    /// The day from which on it is no longer lacking, checking counted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub day: Option<Day>,
    /// No such day is known.
    pub no_date: bool,
    /// The day on which it was due has passed.
    pub overdue: bool,
}

/// What counts for every lack of a job.
#[derive(Debug, Clone, Copy)]
pub(super) struct Terms {
    /// Nothing while nobody says which day it is: then no day has passed.
    pub(super) today: Option<Day>,
    /// Days that comparing a new part with the old one takes.
    pub(super) checking: i64,
}

/// Comparing takes a day until the user says otherwise (common practice, no source).
const CHECKING: i64 = 1;

impl Terms {
    pub(super) fn of(job: &Job, today: Option<Day>) -> Self {
        let said = job.id().and_then(|id| job.item(id)?.read(FieldName::CheckingDays));
        Self { today, checking: said.unwrap_or(CHECKING).clamp(0, 3_650) }
    }

    /// The day after checking what comes in on a day; what should have been here already has none.
    fn checked(self, due: Option<Day>) -> (Option<Day>, bool) {
        let overdue = due.zip(self.today).is_some_and(|(due, today)| due < today);
        let day = due.filter(|_| !overdue).and_then(|due| Day::from_count(due.count() + self.checking));
        (day, overdue)
    }

    /// The day after checking what is here.
    fn checked_by(self, arrived: Option<Day>) -> Option<Day> {
        let from = arrived.max(self.today)?;
        Day::from_count(from.count() + self.checking)
    }
}

impl Lack {
    fn new(job: &Job, part: Id, why: LackWhy) -> Self {
        let tag = job.item(part).and_then(|item| item.read(FieldName::Tag));
        let name = job.name(part);
        Self { tag, name, part: Some(part), ..Self::of(why) }
    }

    /// One that no part has by itself.
    pub(super) const fn of(why: LackWhy) -> Self {
        Self {
            why,
            part: None,
            tag: None,
            name: String::new(),
            other: None,
            other_name: String::new(),
            other_tag: None,
            other_side: None,
            pieces: None,
            own: false,
            day: None,
            no_date: false,
            overdue: false,
        }
    }

    /// In the user's own hands: nothing has to be waited for.
    const fn own(mut self) -> Self {
        self.own = true;
        self
    }

    /// In somebody's hands, without a day.
    const fn undated(mut self) -> Self {
        self.no_date = true;
        self
    }

    fn due(mut self, terms: Terms, due: Option<Day>) -> Self {
        (self.day, self.overdue) = terms.checked(due);
        self.no_date = self.day.is_none();
        self
    }
}

/// What a part lacks by itself and in its hardware. Nothing once it is on for good.
pub(super) fn lacks_of(job: &Job, part: Id, terms: Terms) -> Vec<Lack> {
    if job.fit(part) == Some(Fit::Fitted) {
        return Vec::new();
    }
    let mut lacks = of_itself(job, part, terms);
    for joint in job.children(Kind::Joint, FieldName::Of, part) {
        lacks.extend(of_joint(job, joint, Some(part), terms));
    }
    lacks.extend(of_consumables(job, part, Some(part), terms));
    lacks
}

fn of_itself(job: &Job, part: Id, terms: Terms) -> Vec<Lack> {
    let lack = |why| Lack::new(job, part, why);
    let Some(item) = job.item_of(Kind::Part, part) else { return Vec::new() };
    // Whoever has it has it, although somebody said that it is on for trial.
    if job.fit(part) == Some(Fit::Tried) && job.out(part).is_none() {
        return vec![lack(LackWhy::TriedOnly).own()];
    }
    let Some(route) = job.route_of(part) else { return vec![lack(LackWhy::Undecided).own().undated()] };
    let brings_new = Job::brings_new(route);
    let coming = if brings_new { of_new(job, part, route, terms) } else { Vec::new() };
    if !coming.is_empty() {
        return coming;
    }
    // New pieces, too, may be at the painter's.
    let outs: Vec<Lack> = job
        .outs(part)
        .map(|out| {
            let why = if out.out_for == OutFor::Loan { LackWhy::OnLoan } else { LackWhy::OutForWork };
            // Only work that was decided for is looked at when it comes back.
            let is_compared = out.out_for == OutFor::Work && route == Route::SendOut;
            let terms = if is_compared { terms } else { Terms { checking: 0, ..terms } };
            Lack { other: Some(out.outing), ..lack(why).due(terms, out.due) }
        })
        .collect();
    if !outs.is_empty() {
        return outs;
    }
    if !brings_new && (item.is(FieldName::MissingFromStart) || job.is_missed(part)) {
        return vec![lack(LackWhy::Missing).undated()];
    }
    let is_finished = item.is(FieldName::Finished);
    match route {
        _ if job.fit(part) == Some(Fit::OffAgain) && !is_finished => vec![lack(LackWhy::ToFinish).own()],
        Route::RepairHere if !is_finished => vec![lack(LackWhy::ToRepair).own()],
        // Work done at the bench says nothing of work that is sent out.
        Route::SendOut => match job.back_from_work(part) {
            None => vec![lack(LackWhy::ToSend).own().undated()],
            Some((day, None)) => vec![Lack { day: terms.checked_by(Some(day)), ..lack(LackWhy::ToCompare).own() }],
            Some((_, Some(Compared::Wrong))) => vec![lack(LackWhy::Wrong).undated()],
            Some((_, Some(Compared::Right))) => Vec::new(),
        },
        _ => Vec::new(),
    }
}

/// New pieces: what of them is here and right, here, coming, or not even ordered.
fn of_new(job: &Job, part: Id, route: Route, terms: Terms) -> Vec<Lack> {
    let delivered = job.delivered(part);
    if delivered.is_complete() {
        return Vec::new();
    }
    let mut short = delivered.wanted - delivered.right;
    let mut lacks = Vec::new();
    let mut take = |of: i64, lack: Lack| {
        let pieces = short.min(of);
        if pieces > 0 {
            short -= pieces;
            lacks.push(Lack { pieces: Some(pieces), ..lack });
        }
    };
    let lack = |why| Lack::new(job, part, why);
    take(delivered.to_compare, Lack { day: terms.checked_by(delivered.arrived), ..lack(LackWhy::ToCompare).own() });
    // Those first of which it is known when they come; what is overdue is waited for last.
    let due = delivered
        .coming
        .iter()
        .map(|lot| (lot.pieces, Lack { other: Some(lot.delivery), ..lack(LackWhy::OnOrder).due(terms, lot.due) }));
    let (dated, undated): (Vec<_>, Vec<_>) = due.partition(|(_, lack)| !lack.no_date);
    for (pieces, lack) in dated.into_iter().chain(undated) {
        take(pieces, lack);
    }
    take(delivered.wrong, lack(LackWhy::Wrong).undated());
    let rest = match route {
        Route::Donor => lack(LackWhy::ToFetch).own(),
        _ => lack(LackWhy::ToOrder).own().undated(),
    };
    take(i64::MAX, rest);
    lacks
}

/// Whether a piece of hardware is renewed: what was said of it, else by its name.
pub(super) fn is_renewed(piece: &Item) -> bool {
    let name: Option<String> = piece.read(FieldName::Name);
    piece.read(FieldName::Renew).unwrap_or_else(|| name.is_some_and(|name| renewed_by_name(&name)))
}

/// New pieces of a joint's hardware that are not here.
pub(super) fn of_joint(job: &Job, joint: Id, part: Option<Id>, terms: Terms) -> Vec<Lack> {
    let pieces = job.children(Kind::Piece, FieldName::Joint, joint).filter_map(|id| Some((id, job.item(id)?)));
    let renewed = pieces.filter(|(_, piece)| is_renewed(piece));
    let mut lacks: Vec<Lack> =
        renewed.filter_map(|(id, piece)| short_of(job, (id, piece), part, LackWhy::Hardware, terms)).collect();
    lacks.extend(of_consumables(job, joint, part, terms));
    lacks
}

/// Consumables of a record that are not here.
pub(super) fn of_consumables(job: &Job, of: Id, part: Option<Id>, terms: Terms) -> Vec<Lack> {
    let all = job.children(Kind::Consumable, FieldName::Of, of).filter_map(|id| Some((id, job.item(id)?)));
    all.filter_map(|(id, item)| short_of(job, (id, item), part, LackWhy::Consumable, terms)).collect()
}

fn short_of(job: &Job, (id, item): (Id, &Item), part: Option<Id>, why: LackWhy, terms: Terms) -> Option<Lack> {
    let wanted: i64 = item.read(FieldName::Quantity).unwrap_or(1);
    let short = wanted.saturating_sub(item.read(FieldName::InHand).unwrap_or(0));
    (short > 0).then(|| {
        let due: Option<Day> = item.read(FieldName::Due);
        let tag = part.and_then(|part| job.item(part)?.read(FieldName::Tag));
        let lack = Lack { part, tag, name: job.name(id), other: Some(id), pieces: Some(short), ..Lack::of(why) };
        // Nothing is compared there: a split pin is a split pin.
        Lack { own: due.is_none(), ..lack.due(Terms { checking: 0, ..terms }, due) }
    })
}
