use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use super::checklist::{answers, outcomes};
use super::heft::{Lift, is_lift_known, lift};
use super::nature::nature;
use crate::job::{Job, RecordView};
use crate::record::{FieldName, Id, Kind};
use crate::tables::hazards::{Hazard, Step, TRIGGERS, Trigger};
use crate::tables::{Family, propose};

/// What can hurt whoever works on something.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct CautionsView {
    /// In the order of the hazards.
    pub cautions: Vec<CautionView>,
}

/// One hazard that is in hand.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct CautionView {
    /// Which.
    pub hazard: Hazard,
    /// What brings it about: parts, then the assembly, in order of id.
    pub because: Vec<Id>,
    /// Where it was read and acknowledged, once for the whole job.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub acknowledged: Option<RecordView>,
}

/// A part with what it is taken for: where nobody said its family, what its name says; a caution too many hurts nobody.
struct Handled {
    id: Id,
    family: Option<&'static Family>,
    safety_critical: bool,
}

impl Handled {
    fn of(job: &Job, id: Id) -> Self {
        let nature = nature(job, id);
        let is_said = nature.family.is_some() || nature.own.is_some();
        let family = if is_said { nature.family } else { propose(&job.name(id)).first().copied() };
        // What the user said of the part itself goes before.
        let said: Option<bool> = job.item(id).and_then(|item| item.read(FieldName::SafetyCritical));
        let by_name = !is_said && said.is_none() && family.is_some_and(|family| family.safety_critical);
        Self { id, family, safety_critical: nature.safety_critical || by_name }
    }
}

/// What is in hand at a step: an assembly, a part, or the whole job.
struct InHand<'a> {
    job: &'a Job,
    /// The model year of the oldest vehicle, where it is known of all.
    year: Option<i64>,
    vehicles: String,
}

/// The hazards at a step of the work: of one part, else of one assembly with its parts, else of the whole job.
#[must_use]
pub fn cautions(job: &Job, step: Step, part: Option<Id>, assembly: Option<Id>) -> CautionsView {
    let hand = InHand::of(job);
    let (parts, assemblies): (Vec<Id>, Vec<Id>) = match (part, assembly) {
        (Some(part), _) => {
            (vec![part], job.item(part).and_then(|item| item.read(FieldName::Assembly)).into_iter().collect())
        }
        (None, Some(assembly)) => (job.children(Kind::Part, FieldName::Assembly, assembly).collect(), vec![assembly]),
        (None, None) => (job.standing_ids(Kind::Part).collect(), job.standing_ids(Kind::Assembly).collect()),
    };
    let acknowledged = acknowledged(job);
    let parts: Vec<Handled> = parts.into_iter().map(|part| Handled::of(job, part)).collect();
    let view = |hazard: &Hazard| {
        let because = hand.because(*hazard, step, &parts, &assemblies);
        (!because.is_empty()).then(|| CautionView {
            hazard: *hazard,
            because,
            acknowledged: acknowledged
                .iter()
                .find(|(known, _)| known == hazard)
                .and_then(|(_, id)| job.record_view(*id)),
        })
    };
    CautionsView { cautions: Hazard::ALL.iter().filter_map(view).collect() }
}

/// The hazards of one part that concern whoever gets it to work on, by code.
#[must_use]
pub fn caution_codes(job: &Job, part: Id) -> Vec<Hazard> {
    cautions(job, Step::Route, Some(part), None).cautions.into_iter().map(|caution| caution.hazard).collect()
}

fn acknowledged(job: &Job) -> Vec<(Hazard, Id)> {
    let all = job.standing_ids(Kind::Caution);
    all.filter_map(|id| Some((job.item(id)?.read::<Hazard>(FieldName::Hazard)?, id))).collect()
}

impl<'a> InHand<'a> {
    fn of(job: &'a Job) -> Self {
        let vehicles = job.standing_ids(Kind::Vehicle).filter_map(|id| job.item(id));
        let vehicles: Vec<_> = vehicles.collect();
        // Whichever is oldest: what it brings is in the garage. One of which nobody knows may be older than all others.
        let years: Option<Vec<i64>> = vehicles.iter().map(|item| item.read(FieldName::Year)).collect();
        let year = years.and_then(|years| years.into_iter().min());
        let names = vehicles.iter().filter_map(|item| item.read::<String>(FieldName::Name));
        Self {
            job,
            year,
            vehicles: names
                .chain([job.id().map(|id| job.name(id)).unwrap_or_default()])
                .collect::<Vec<_>>()
                .join(" ")
                .to_lowercase(),
        }
    }

    /// Parts and assemblies that bring a hazard about.
    fn because(&self, hazard: Hazard, step: Step, parts: &[Handled], assemblies: &[Id]) -> Vec<Id> {
        let mut because = BTreeSet::new();
        let of_hazard = TRIGGERS.iter().filter(|trigger| trigger.hazard == hazard);
        for trigger in of_hazard.filter(|trigger| trigger.steps.contains(&step) && self.is_old_enough(trigger)) {
            because.extend(parts.iter().filter(|part| self.is_of_part(trigger, part)).map(|part| part.id));
            if !trigger.all {
                let named = |id: &&Id| holds_word(&self.job.name(**id).to_lowercase(), trigger.assemblies);
                because.extend(assemblies.iter().filter(named));
            }
        }
        because.into_iter().collect()
    }

    fn is_old_enough(&self, trigger: &Trigger) -> bool {
        trigger.until_year.is_none_or(|until| self.year.is_none_or(|year| year <= until))
    }

    fn is_of_part(&self, trigger: &Trigger, handled: &Handled) -> bool {
        let part = handled.id;
        let Some(item) = self.job.item(part) else { return false };
        let text = |field| item.read::<String>(field).unwrap_or_default().to_lowercase();
        let family = handled.family.is_some_and(|family| trigger.families.contains(&family.code));
        let named = holds_word(&text(FieldName::Name), trigger.parts);
        let material = holds_word(&text(FieldName::Material), trigger.materials);
        let process = !trigger.processes.is_empty()
            && self.processes(part).iter().any(|words| holds_word(words, trigger.processes));
        if trigger.all {
            let wanted = [
                (!trigger.families.is_empty(), family),
                (!trigger.parts.is_empty(), named),
                (!trigger.processes.is_empty(), process),
                (!trigger.vehicles.is_empty(), holds_word(&self.vehicles, trigger.vehicles)),
            ];
            return wanted.iter().all(|(wanted, fits)| !wanted || *fits);
        }
        let heavy = trigger.heavy && lift(item) == Some(Lift::Two);
        // What is known to be less goes before a name that is usually heavy; a guess does not.
        let named = named && !(trigger.heavy && is_lift_known(item));
        let burnt = trigger.burnt && self.is_burnt(part);
        family || named || material || process || heavy || burnt || (trigger.safety_critical && handled.safety_critical)
    }

    /// What is said of what will be done with a part, in small letters: on its quotes and on itself.
    fn processes(&self, part: Id) -> Vec<String> {
        let job = self.job;
        let quotes = job.children(Kind::Quote, FieldName::Of, part);
        let said = quotes.chain([part]).filter_map(|id| job.item(id));
        let fields = [FieldName::Name, FieldName::Remark, FieldName::From, FieldName::Tried];
        let texts = said.flat_map(|item| fields.into_iter().filter_map(|field| item.read::<String>(field)));
        texts.map(|text| text.to_lowercase()).collect()
    }

    fn is_burnt(&self, part: Id) -> bool {
        // What was answered last holds: an answer may be put right.
        let said = outcomes(self.job, &answers(self.job, part), "burnt");
        said.iter().any(|outcome| outcome.as_deref() == Some("burnt"))
    }
}

/// Whether a text in small letters holds one of these words, from the beginning of a word on: "blast" is in "blasting", but
/// "van" is not in "advance".
fn holds_word(text: &str, words: &[&str]) -> bool {
    words.iter().any(|word| {
        text.match_indices(word).any(|(at, _)| !text[..at].chars().next_back().is_some_and(char::is_alphanumeric))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_begin_where_a_word_begins() {
        assert!(holds_word("shot blasting", &["blast"]));
        assert!(holds_word("old fuel tank", &["fuel tank"]));
        assert!(!holds_word("advance unit", &["van"]));
        assert!(!holds_word("", &["van"]));
    }
}
