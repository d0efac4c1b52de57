use serde::{Deserialize, Serialize};

use super::checklist::{Asked, answers, asked, outcomes};
use super::nature::{Nature, nature};
use super::readings::{MeasureView, measures};
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
/// The worst finding says it, and of answers that two devices gave at once the worst, until somebody settles it. A part is fit only when every question of its family was answered, and every measure with a
/// limit is proved good; of a safety-critical part that is measured at all, something must be. Without a family nothing is
/// asked, and the first word at the strip never makes a part fit.
#[must_use]
pub fn verdict(job: &Job, part: Id) -> (Verdict, Vec<Reason>) {
    let looked = Looked::at(job, part);
    let reasons = looked.reasons(job, part);
    let worst = reasons.iter().map(|reason| reason.condition).max();
    let verdict = match worst {
        Some(Condition::Scrap) => Verdict::Scrap,
        Some(Condition::Rework) => Verdict::Rework,
        Some(Condition::Doubtful) => Verdict::NotKnown,
        Some(Condition::Sound) | None if looked.is_all_answered() => Verdict::Fit,
        Some(Condition::Sound) | None => Verdict::NotKnown,
    };
    (verdict, reasons)
}

/// The same where anything was ever found or read in a part: what was not looked at needs no working out.
pub(crate) fn verdict_if_touched(job: &Job, part: Id) -> Option<(Verdict, Vec<Reason>)> {
    let any = |kind| job.children(kind, FieldName::Of, part).next().is_some();
    (any(Kind::Finding) || any(Kind::Reading)).then(|| verdict(job, part))
}

/// All that was seen and measured in a part, gathered once.
struct Looked {
    nature: Nature,
    /// Every question with all that was answered.
    asked: Vec<(Asked, Vec<Option<String>>)>,
    measures: Vec<MeasureView>,
}

impl Looked {
    fn at(job: &Job, part: Id) -> Self {
        let nature = nature(job, part);
        let answers = answers(job, part);
        let asked = asked(job, part, &nature).into_iter();
        let asked = asked.map(|one| {
            let outcomes = outcomes(job, &answers, &one.question);
            (one, outcomes)
        });
        Self { nature, asked: asked.collect(), measures: measures(job, part, &nature) }
    }

    /// Whatever speaks against it, worst first.
    fn reasons(&self, job: &Job, part: Id) -> Vec<Reason> {
        let mut reasons = Vec::new();
        if self.nature.single_use {
            reasons.push(Reason::new(ReasonFrom::SingleUse, "", "", Condition::Scrap));
        }
        reasons.extend(self.asked.iter().filter_map(of_question));
        reasons.extend(self.measures.iter().filter_map(of_measure));
        let unmeasured = self.nature.safety_critical && self.measures.iter().all(|one| one.condition.is_none());
        if let Some(first) = self.measures.iter().find(|one| one.kind != LimitKind::Size).filter(|_| unmeasured) {
            reasons.push(Reason::new(ReasonFrom::Measure, &first.feature, "not-measured", Condition::Doubtful));
        }
        reasons.extend(of_triage(job, part));
        reasons.sort_by_key(|reason| std::cmp::Reverse(reason.condition));
        reasons
    }

    /// Whether every question was answered, and every measure that has a limit is proved good.
    fn is_all_answered(&self) -> bool {
        !self.asked.is_empty()
            && self.asked.iter().all(|(_, outcomes)| !outcomes.is_empty() && outcomes.iter().all(Option::is_some))
            && self.measures.iter().all(|one| one.source.is_none() || one.condition == Some(Condition::Sound))
    }
}

impl Reason {
    fn new(from: ReasonFrom, about: &str, outcome: &str, condition: Condition) -> Self {
        Self { from, about: about.to_owned(), outcome: outcome.to_owned(), condition }
    }
}

fn of_question((asked, outcomes): &(Asked, Vec<Option<String>>)) -> Option<Reason> {
    let said = outcomes.iter().flatten().map(|outcome| (asked.condition(outcome), outcome));
    let (condition, outcome) = said.max().filter(|(condition, _)| *condition != Condition::Sound)?;
    Some(Reason::new(ReasonFrom::Question, &asked.question, outcome, condition))
}

fn of_measure(measure: &MeasureView) -> Option<Reason> {
    let condition = measure.condition.filter(|condition| *condition != Condition::Sound)?;
    let against = measure.governs.and_then(|at| measure.places[at].against);
    let allows = against.map_or("", |found| found.allows.word());
    Some(Reason::new(ReasonFrom::Measure, &measure.feature, allows, condition))
}

/// A first word holds until the part has been looked at.
fn of_triage(job: &Job, part: Id) -> Option<Reason> {
    let word: Triage = job.item(part)?.read(FieldName::Triage).filter(|word| *word != Triage::LooksGood)?;
    let is_looked_at = job.children(Kind::Finding, FieldName::Of, part).next().is_some();
    (!is_looked_at).then(|| Reason::new(ReasonFrom::Triage, "", word.word(), Condition::Doubtful))
}
