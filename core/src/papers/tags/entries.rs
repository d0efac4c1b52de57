//! What stands on each label.

use super::{MOST, TagLabels};
use crate::job::vocabulary::Side;
use crate::job::{Job, PartsQuery, TagCode};
use crate::papers::PaperWords;
use crate::problem::{Code, Hint, Problem};
use crate::quantity::bounds;
use crate::record::{FieldName, Id, Kind};

/// What stands on one label.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Entry {
    pub(super) code: TagCode,
    pub(super) is_place: bool,
    /// The name; empty when it is not known yet.
    pub(super) name: String,
    /// Side and assembly of a part, what a place is in; may be empty.
    pub(super) second: String,
}

/// The labels that are asked for, and how many more carry no tag.
pub(super) fn of(job: &Job, labels: &TagLabels, words: &PaperWords) -> Result<(Vec<Entry>, usize), Problem> {
    match labels {
        TagLabels::Blank { from, count, places } => Ok((blank(*from, *count, *places)?, 0)),
        TagLabels::Parts { ids, assembly } => {
            let query = PartsQuery { assembly: *assembly, ..PartsQuery::default() };
            let mut found = job.parts_found(&query);
            if let Some(ids) = ids {
                found.retain(|part| ids.contains(part));
            }
            let (mut entries, untagged) = tagged(job, &found, |part| of_part(job, part, words));
            // Of one number on two parts either is printed: the record tells of it.
            entries.sort_by_key(|entry| entry.code);
            Ok((entries, untagged))
        }
        TagLabels::Places { ids } => {
            let mut all: Vec<Id> = job.places_view().places.iter().map(|line| line.record.id).collect();
            if let Some(ids) = ids {
                all.retain(|place| ids.contains(place));
            }
            Ok(tagged(job, &all, |place| of_place(job, place)))
        }
    }
}

fn blank(from: i64, count: usize, is_place: bool) -> Result<Vec<Entry>, Problem> {
    let bound = |what, least: i64, most: i64| {
        let problem = Problem::error(Code::OutOfBounds).hint(Hint::CorrectValue);
        problem.value("what", what).value("least", least).value("most", most)
    };
    if count > MOST {
        return Err(bound("labels", 1, i64::try_from(MOST).unwrap_or(i64::MAX)));
    }
    let numbers = (0_i64..).take(count).map(|past| TagCode::new(from.checked_add(past)?));
    let codes: Option<Vec<TagCode>> = numbers.collect();
    let codes = codes.ok_or_else(|| bound("tag", bounds::TAG.least, bounds::TAG.most))?;
    Ok(codes.into_iter().map(|code| Entry { code, is_place, name: String::new(), second: String::new() }).collect())
}

/// Those that carry a tag within bounds, and the count of the others.
fn tagged(job: &Job, ids: &[Id], written: impl Fn(Id) -> (String, String)) -> (Vec<Entry>, usize) {
    let code_of = |id: Id| job.item(id)?.read::<i64>(FieldName::Tag).and_then(TagCode::new);
    let entries: Vec<Entry> = ids
        .iter()
        .take(MOST)
        .filter_map(|id| {
            let code = code_of(*id)?;
            let (name, second) = written(*id);
            Some(Entry { code, is_place: job.kind(*id) == Some(Kind::Place), name, second })
        })
        .collect();
    let untagged = ids.len() - entries.len();
    (entries, untagged)
}

fn of_part(job: &Job, part: Id, words: &PaperWords) -> (String, String) {
    let item = job.item(part);
    let side = item.and_then(|item| job.side_of_part(item)).map(|side| match side {
        Side::Left => words.sides.left.as_str(),
        Side::Right => words.sides.right.as_str(),
    });
    let assembly = item.and_then(|item| item.read::<Id>(FieldName::Assembly)).map(|id| job.name(id));
    let said = side.into_iter().chain(assembly.as_deref()).filter(|word| !word.is_empty());
    (job.name(part), said.collect::<Vec<_>>().join(" · "))
}

fn of_place(job: &Job, place: Id) -> (String, String) {
    let mut path = job.place_path(place);
    let name = path.pop().unwrap_or_default();
    (name, path.join(" · "))
}
