use std::collections::BTreeMap;

use super::nature::Nature;
use crate::job::Job;
use crate::quantity::Millis;
use crate::record::{FieldName, Id, Item, Kind};
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
    /// What an answer means.
    pub(super) fn condition(&self, outcome: &str) -> Option<Condition> {
        self.outcomes.iter().find(|one| one.code == outcome).map(|one| one.condition)
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

/// The findings of a part, earliest first.
pub(super) fn findings(job: &Job, part: Id) -> Vec<(Id, &Item)> {
    let all = job.children(Kind::Finding, FieldName::Of, part).filter_map(|id| Some((id, job.item(id)?)));
    let mut all: Vec<(Id, &Item)> = all.collect();
    all.sort_by_key(|(id, item)| (item.read::<Millis>(FieldName::Taken), *id));
    all
}

/// What was answered to each question: the latest finding that says one, or that it was left out.
pub(super) fn answers(job: &Job, part: Id) -> BTreeMap<String, Id> {
    let all = findings(job, part).into_iter();
    all.filter_map(|(id, item)| Some((item.read(FieldName::Question)?, id))).collect()
}

/// What one of these answers says.
pub(super) fn outcome(job: &Job, answers: &BTreeMap<String, Id>, question: &str) -> Option<String> {
    job.item(*answers.get(question)?)?.read(FieldName::Outcome)
}
