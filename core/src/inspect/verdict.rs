use serde::{Deserialize, Serialize};

use super::checklist::{asked, findings, outcome};
use super::nature::nature;
use super::readings::measures;
use crate::job::Job;
use crate::job::vocabulary::Triage;
use crate::record::{FieldName, Id, Kind, stored_enum};
use crate::tables::checks::Condition;
use crate::tables::features::LimitKind;

stored_enum! {
    /// What looking and measuring come to.
    pub enum Verdict {
        /// Fit to use again.
        Fit = "fit",
        /// Not as it is, but it can be put right.
        Rework = "rework",
        /// Not again.
        Scrap = "scrap",
        /// Not known yet.
        NotKnown = "not-known",
    }
}

/// One thing that speaks for a verdict.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Reason {
    /// What it comes from.
    pub from: ReasonFrom,
    /// The question or feature, by code or id; empty for what comes from the part itself.
    pub about: String,
    /// What was answered or proved there: a code.
    pub outcome: String,
    /// What that means.
    pub condition: Condition,
}

stored_enum! {
    /// Where a reason comes from.
    pub enum ReasonFrom {
        /// The part is renewed whatever it looks like.
        SingleUse = "single-use",
        /// A question of the check-list.
        Question = "question",
        /// A measure.
        Measure = "measure",
        /// The first word at the strip.
        Triage = "triage",
    }
}

/// What a part comes to, and why: whatever speaks against it, worst first; what is still open; nothing when it is fit.
///
/// The worst finding says it. A part is fit only when every question of its family was answered, and every measure with a
/// limit is proved good; of a safety-critical part that is measured at all, something must be. Without a family nothing is
/// asked, and the first word at the strip never makes a part fit.
#[must_use]
pub fn verdict(job: &Job, part: Id) -> (Verdict, Vec<Reason>) {
    let reasons = reasons(job, part);
    let worst = reasons.iter().map(|reason| reason.condition).max();
    let verdict = match worst {
        Some(Condition::Scrap) => Verdict::Scrap,
        Some(Condition::Rework) => Verdict::Rework,
        Some(Condition::Doubtful) => Verdict::NotKnown,
        Some(Condition::Sound) | None if is_all_answered(job, part) => Verdict::Fit,
        Some(Condition::Sound) | None => Verdict::NotKnown,
    };
    (verdict, reasons)
}

/// The same where anything was ever found or read in a part: what was not looked at needs no working out.
pub(crate) fn verdict_if_touched(job: &Job, part: Id) -> Option<(Verdict, Vec<Reason>)> {
    let any = |kind| job.children(kind, FieldName::Of, part).next().is_some();
    (any(Kind::Finding) || any(Kind::Reading)).then(|| verdict(job, part))
}

fn reasons(job: &Job, part: Id) -> Vec<Reason> {
    let nature = nature(job, part);
    let mut reasons = Vec::new();
    let mut say = |from, about: &str, outcome: &str, condition| {
        reasons.push(Reason { from, about: about.to_owned(), outcome: outcome.to_owned(), condition });
    };
    if nature.single_use {
        say(ReasonFrom::SingleUse, "", "", Condition::Scrap);
    }
    let asked = asked(job, part, &nature);
    for one in &asked {
        let Some(outcome) = outcome(job, part, &one.question) else { continue };
        if let Some(condition) = one.condition(&outcome).filter(|condition| *condition != Condition::Sound) {
            say(ReasonFrom::Question, &one.question, &outcome, condition);
        }
    }
    let measures = measures(job, part, &nature);
    for measure in &measures {
        if let Some(condition) = measure.condition.filter(|condition| *condition != Condition::Sound) {
            let allows =
                measure.governs.and_then(|at| measure.places[at].against).map_or("", |found| found.allows.word());
            say(ReasonFrom::Measure, &measure.feature, allows, condition);
        }
    }
    let unmeasured = nature.safety_critical && measures.iter().all(|measure| measure.condition.is_none());
    if let Some(first) = measures.iter().find(|measure| measure.kind != LimitKind::Size).filter(|_| unmeasured) {
        say(ReasonFrom::Measure, &first.feature, "not-measured", Condition::Doubtful);
    }
    // A first word holds until the part has been looked at.
    if findings(job, part).is_empty() {
        match job.item(part).and_then(|item| item.read::<Triage>(FieldName::Triage)) {
            Some(Triage::Scrap) => say(ReasonFrom::Triage, "", Triage::Scrap.word(), Condition::Doubtful),
            Some(Triage::Doubtful) => say(ReasonFrom::Triage, "", Triage::Doubtful.word(), Condition::Doubtful),
            Some(Triage::LooksGood) | None => {}
        }
    }
    reasons.sort_by_key(|reason| std::cmp::Reverse(reason.condition));
    reasons
}

/// Whether every question was answered, and every measure that has a limit is proved good.
fn is_all_answered(job: &Job, part: Id) -> bool {
    let nature = nature(job, part);
    let asked = asked(job, part, &nature);
    !asked.is_empty()
        && asked.iter().all(|one| outcome(job, part, &one.question).is_some())
        && measures(job, part, &nature)
            .iter()
            .all(|one| one.source.is_none() || one.condition == Some(Condition::Sound))
}
