use std::collections::BTreeMap;

use super::nature::Nature;
use crate::job::Job;
use crate::quantity::Millis;
use crate::record::{FieldName, Id, Item, Kind, Replica, Stored};
use crate::tables::Outcome;
use crate::tables::checks::{Condition, OWN_OUTCOMES, look};

/// A question that is asked of a part.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Asked {
    /// Its code, or the id of the user's own.
    pub(super) question: String,
    /// Its words, where it is the user's own.
    pub(super) text: Option<String>,
    /// What may be answered.
    pub(super) outcomes: &'static [Outcome],
    /// The standard that names the damage.
    pub(super) standard: Option<&'static str>,
}

impl Asked {
    /// What an answer means. One that the question does not have, from two devices or a newer version, leaves it open.
    pub(super) fn condition(&self, outcome: &str) -> Condition {
        self.outcomes.iter().find(|one| one.code == outcome).map_or(Condition::Doubtful, |one| one.condition)
    }
}

/// The questions that the family of a part asks, then the user's own for that family; last, questions that were answered
/// before the family was changed: nothing recorded is lost.
pub(super) fn asked(job: &Job, part: Id, nature: &Nature) -> Vec<Asked> {
    let codes = nature.family.map(|family| family.looks).unwrap_or_default();
    let mut asked: Vec<Asked> = codes.iter().filter_map(|code| of_table(code)).collect();
    let word = nature.family.map(|family| family.code.to_owned()).or_else(|| nature.own.map(|id| id.to_string()));
    let own = job.standing_ids(Kind::OwnCheck).filter(|id| {
        let of: Option<String> = job.item(*id).and_then(|item| item.read(FieldName::Family));
        of.is_some() && of == word
    });
    asked.extend(own.filter_map(|id| of_user(job, id)));
    for question in findings(job, part).into_iter().filter_map(|(_, item)| item.read::<String>(FieldName::Question)) {
        if asked.iter().any(|one| one.question == question) {
            continue;
        }
        let own = question.parse::<Id>().ok().and_then(|id| of_user(job, id));
        asked.extend(of_table(&question).or(own));
    }
    asked
}

fn of_table(code: &str) -> Option<Asked> {
    let look = look(code)?;
    Some(Asked { question: code.to_owned(), text: None, outcomes: look.outcomes, standard: look.standard })
}

fn of_user(job: &Job, id: Id) -> Option<Asked> {
    let item = job.item_of(Kind::OwnCheck, id)?;
    let text = item.read(FieldName::Text).unwrap_or_default();
    Some(Asked { question: id.to_string(), text: Some(text), outcomes: OWN_OUTCOMES, standard: None })
}

/// Whether a question has an answer: nothing where the question is not known here. `is_own` says whether a record is a question
/// of the user's own.
pub(crate) fn has_answer(question: &str, outcome: &str, is_own: impl Fn(Id) -> bool) -> Option<bool> {
    let of_user = || question.parse().ok().filter(|id| is_own(*id)).map(|_| OWN_OUTCOMES);
    let outcomes = look(question).map(|look| look.outcomes).or_else(of_user)?;
    Some(outcomes.iter().any(|one| one.code == outcome))
}

/// The findings of a part, earliest first.
pub(super) fn findings(job: &Job, part: Id) -> Vec<(Id, &Item)> {
    let all = job.children(Kind::Finding, FieldName::Of, part).filter_map(|id| Some((id, job.item(id)?)));
    let mut all: Vec<(Id, &Item)> = all.collect();
    all.sort_by_key(|(id, item)| (item.read::<Millis>(FieldName::Taken), *id));
    all
}

/// What was answered to each question: the latest finding that says one, or that it was left out, last; before it the latest of
/// each other device. Whoever knows of a finding writes over it: those devices did not know of one another.
pub(super) type Answers = BTreeMap<String, Vec<Id>>;

/// The answers of a part.
pub(super) fn answers(job: &Job, part: Id) -> Answers {
    let mut answers = Answers::new();
    for (id, item) in findings(job, part) {
        let Some(question) = item.read(FieldName::Question) else { continue };
        let of_question: &mut Vec<Id> = answers.entry(question).or_default();
        of_question.retain(|other| job.item(*other).and_then(device) != device(item));
        of_question.push(id);
    }
    answers
}

/// Which device began a record.
fn device(item: &Item) -> Option<Replica> {
    item.heads(FieldName::Kind.id()).first().map(|head| head.entry.replica)
}

/// Findings of a part that answer a question otherwise than the one that is shown, each with that one.
pub(crate) fn answers_apart(job: &Job, part: Id) -> Vec<(Id, Id)> {
    let said = |id: &Id| job.item(*id).and_then(|item| item.read::<String>(FieldName::Outcome));
    let apart = answers(job, part).into_values().flat_map(|mut ids| {
        let shown = ids.pop();
        let other = ids.into_iter().filter_map(move |id| Some((id, shown?)));
        other.filter(|(id, shown)| said(id).is_some() && said(id) != said(shown)).collect::<Vec<_>>()
    });
    apart.collect()
}

/// All that was answered to a question: several things where devices answered without knowing of one another, nothing among them
/// where the one that is shown is open, or was taken back.
pub(super) fn outcomes(job: &Job, answers: &Answers, question: &str) -> Vec<Option<String>> {
    let Some((shown, others)) = answers.get(question).and_then(|ids| ids.split_last()) else { return Vec::new() };
    let said = |id: &Id| -> Vec<Option<String>> {
        let heads = job.item(*id).map(|item| item.heads(FieldName::Outcome.id())).unwrap_or_default();
        heads.into_iter().map(|head| Stored::read(&head.value)).collect()
    };
    let mut all = said(shown);
    if all.is_empty() {
        all.push(None);
    }
    all.extend(others.iter().flat_map(said).filter(Option::is_some));
    all
}

/// What is shown as the answer to a question.
pub(super) fn outcome(job: &Job, answers: &Answers, question: &str) -> Option<String> {
    job.item(*answers.get(question)?.last()?)?.read(FieldName::Outcome)
}
