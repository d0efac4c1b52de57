use serde::{Deserialize, Serialize};

use super::checklist::{Answers, Asked, answers, asked, outcome};
use super::counterpart::{counterpart, together};
use super::nature::{Nature, nature};
use super::readings::{MeasureView, measures, with_settling};
use super::verdict::{Reason, Verdict, verdict};
use crate::costing::{Barred, WhyNot};
use crate::job::vocabulary::Route;
use crate::job::{Job, PartLine, PhotoView, RecordView};
use crate::quantity::Length;
use crate::record::{FieldName, Id, Kind};
use crate::tables::checks::Condition;
use crate::tables::{UsualInstrument, propose};

/// One part under judgement.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct InspectView {
    /// Which part.
    pub part: Id,
    /// Its family: a code of the tables, or the id of one of the user's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub family: Option<String>,
    /// The name of the family, where it is one of the user's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub own_family: Option<String>,
    /// Families that its name suggests, likeliest first, while none is said.
    pub proposed: Vec<ProposedView>,
    /// Families of the user's own, in order of name.
    pub own_families: Vec<RecordView>,
    /// Renewed whatever it looks like.
    pub single_use: bool,
    /// Both sides of an axle together.
    pub pair: bool,
    /// Kept and renewed together with what it was matched to.
    pub matched: bool,
    /// Somebody can be hurt when it breaks.
    pub safety_critical: bool,
    /// The questions in order, with what was answered.
    pub asked: Vec<AskedView>,
    /// The first question that has neither an answer nor was left out, by its place in `asked`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub next: Option<usize>,
    /// What is measured, with its limits, readings and proof.
    pub measures: Vec<MeasureView>,
    /// What it comes to.
    pub verdict: Verdict,
    /// What speaks for that, worst first.
    pub reasons: Vec<Reason>,
    /// Every route, with why it is not left.
    pub routes: Vec<RouteLeft>,
    /// It stays on the shelf as a pattern, until its replacement has been compared with it.
    pub keep_as_pattern: bool,
    /// The same part on the other side.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other_side: Option<PartLine>,
    /// What the other side comes to.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other_verdict: Option<Verdict>,
    /// What is measured with, in order of name.
    pub instruments: Vec<RecordView>,
    /// What a garage usually measures with, to be taken over.
    pub usual_instruments: Vec<UsualInstrumentView>,
    /// Parts that are decided together with it.
    pub together: Vec<PartLine>,
}

/// An instrument with its usual figures: common practice, no source.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct UsualInstrumentView {
    /// Which.
    pub instrument: UsualInstrument,
    /// Its least step.
    pub resolution: Length,
    /// Its uncertainty, coverage factor 2; left out where the step says it all.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stated: Option<Length>,
}

/// A family that a name suggests.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct ProposedView {
    /// Its code, or the id of one of the user's own.
    pub family: String,
    /// The user said so of a part of that name before.
    pub learnt: bool,
}

/// A question with what was answered.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct AskedView {
    /// Its code, or the id of the user's own.
    pub question: String,
    /// Its words, where it is the user's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub text: Option<String>,
    /// What may be answered, best first.
    pub outcomes: Vec<OutcomeView>,
    /// The standard that names the damage.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub standard: Option<String>,
    /// What was answered.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub answer: Option<String>,
    /// It was left out.
    pub skipped: bool,
    /// The record of the answer.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub finding: Option<RecordView>,
    /// Photos that show it.
    pub photos: Vec<PhotoView>,
    /// What was answered on the other side.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other_side: Option<String>,
}

/// One answer with what it means.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct OutcomeView {
    /// Its code.
    pub code: String,
    /// What it means.
    pub condition: Condition,
}

/// A route, and whether the judgement leaves it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct RouteLeft {
    /// Which.
    pub route: Route,
    /// Why it is not left; left out when it is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub why: Option<WhyNot>,
    /// The usual one when a part of its family is not used again.
    pub usual: bool,
}

/// A part under judgement; nothing when there is no such part.
#[must_use]
pub fn inspect(job: &Job, part: Id) -> Option<InspectView> {
    let item = job.item_of(Kind::Part, part)?;
    let nature = nature(job, part);
    let other = counterpart(job, part);
    let mine = answers(job, part);
    let theirs = other.map(|other| answers(job, other)).unwrap_or_default();
    let asked = asked(job, part, &nature).into_iter().map(|one| asked_view(job, &mine, &theirs, one));
    let asked: Vec<AskedView> = asked.collect();
    let (verdict_here, reasons) = verdict(job, part);
    // A word that names no family known here says nothing; it stays in the record.
    let is_known = nature.family.is_some() || nature.own.is_some();
    let family: Option<String> = item.read(FieldName::Family).filter(|_| is_known);
    Some(InspectView {
        part,
        proposed: if family.is_some() { Vec::new() } else { proposed(job, part) },
        family,
        own_family: nature.own.map(|id| job.name(id)),
        own_families: by_name(job, Kind::OwnFamily),
        instruments: by_name(job, Kind::Instrument),
        usual_instruments: usual_instruments(),
        single_use: nature.single_use,
        pair: nature.pair,
        matched: nature.matched,
        safety_critical: nature.safety_critical,
        next: asked.iter().position(|one| one.answer.is_none() && !one.skipped),
        asked,
        measures: measures(job, part, &nature).into_iter().map(with_settling).collect(),
        keep_as_pattern: verdict_here == Verdict::Scrap && !item.is(FieldName::MissingFromStart),
        verdict: verdict_here,
        reasons,
        routes: routes_left(job, part, &nature),
        other_verdict: other.map(|other| verdict(job, other).0),
        other_side: other.and_then(|other| job.part_line(other)),
        together: together(job, part).into_iter().filter_map(|id| job.part_line(id)).collect(),
    })
}

fn asked_view(job: &Job, mine: &Answers, theirs: &Answers, one: Asked) -> AskedView {
    let finding = mine.get(&one.question).and_then(|ids| job.record_view(*ids.last()?));
    let values = finding.as_ref().map(|finding| &finding.values);
    let photos = finding.iter().flat_map(|finding| job.children(Kind::Photo, FieldName::Finding, finding.id));
    let outcomes = one.outcomes.iter();
    AskedView {
        photos: photos.filter_map(|photo| job.photo_view(photo)).collect(),
        answer: values.and_then(|values| values.outcome.clone()),
        skipped: values.is_some_and(|values| values.skipped == Some(true) && values.outcome.is_none()),
        other_side: outcome(job, theirs, &one.question),
        outcomes: outcomes.map(|one| OutcomeView { code: one.code.to_owned(), condition: one.condition }).collect(),
        standard: one.standard.map(str::to_owned),
        question: one.question,
        text: one.text,
        finding,
    }
}

/// Families that the name of a part suggests: first what the user said of parts of that name, then what the trade calls so.
fn proposed(job: &Job, part: Id) -> Vec<ProposedView> {
    let name = job.name(part);
    let learnt = learnt(job, part, &name).map(|family| ProposedView { family, learnt: true });
    let usual = propose(&name).into_iter().map(|family| ProposedView { family: family.code.to_owned(), learnt: false });
    let mut all: Vec<ProposedView> = Vec::new();
    for one in learnt.into_iter().chain(usual) {
        if all.iter().all(|known| known.family != one.family) {
            all.push(one);
        }
    }
    all
}

/// The family that most other parts of the same name have, by the user's word.
fn learnt(job: &Job, part: Id, name: &str) -> Option<String> {
    let words = crate::tables::words_of(name);
    if words.is_empty() {
        return None;
    }
    let mut said: std::collections::BTreeMap<String, usize> = std::collections::BTreeMap::new();
    for id in job.standing_ids(Kind::Part).filter(|id| *id != part) {
        let Some(item) = job.item(id) else { continue };
        let Some(family) = item.read::<String>(FieldName::Family).filter(|family| !family.is_empty()) else { continue };
        if crate::tables::words_of(&job.name(id)) == words {
            *said.entry(family).or_default() += 1;
        }
    }
    said.into_iter().max_by_key(|(family, times)| (*times, std::cmp::Reverse(family.clone()))).map(|(family, _)| family)
}

fn usual_instruments() -> Vec<UsualInstrumentView> {
    let view = |instrument: &UsualInstrument| UsualInstrumentView {
        instrument: *instrument,
        resolution: instrument.resolution(),
        stated: instrument.stated(),
    };
    UsualInstrument::ALL.iter().map(view).collect()
}

/// The records of a kind in order of name.
fn by_name(job: &Job, kind: Kind) -> Vec<RecordView> {
    let mut all: Vec<RecordView> = job.standing_ids(kind).filter_map(|id| job.record_view(id)).collect();
    all.sort_by(|a, b| (&a.values.name, a.id).cmp(&(&b.values.name, b.id)));
    all
}

/// Every route, and why the judgement does not leave it.
fn routes_left(job: &Job, part: Id, nature: &Nature) -> Vec<RouteLeft> {
    let usual: &[Route] = match nature.own.and_then(|own| job.item(own)?.read::<Route>(FieldName::Route)) {
        Some(route) => &[route],
        None => nature.family.map(|family| family.otherwise).unwrap_or_default(),
    };
    let barred = Barred::of(job, part);
    let left = |route: &Route| RouteLeft {
        route: *route,
        why: barred.as_ref().and_then(|barred| barred.why_not(*route)),
        usual: usual.contains(route),
    };
    Route::ALL.iter().map(left).collect()
}
