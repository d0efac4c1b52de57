use std::collections::BTreeMap;

use serde::Serialize;

use crate::job::{Job, Values};
use crate::record::{FieldName, Id, Item};

/// The form of the job file as a whole.
pub const FORM: u32 = 1;

/// The readable snapshot.
#[derive(Serialize)]
struct Snapshot<'a> {
    form: u32,
    job: Option<Id>,
    entries: usize,
    /// By kind; each kind in order of id.
    records: BTreeMap<&'a str, Vec<Told>>,
}

/// One record.
#[derive(Serialize)]
struct Told {
    id: Id,
    values: Values,
    /// How often each field was written.
    written: BTreeMap<FieldName, usize>,
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    struck: bool,
    /// Fields with more than one value; `values` holds one of them.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    conflicts: Vec<FieldName>,
    /// Fields of a later version, by number, which this one keeps but cannot tell.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    unknown: Vec<u16>,
}

/// Every record of a job by kind, with its values, as JSON for people and programs.
#[must_use]
pub fn snapshot(job: &Job) -> String {
    let mut records: BTreeMap<&str, Vec<Told>> = BTreeMap::new();
    for (id, item) in job.record().items() {
        let kind = job.kind(id).map_or("unknown", crate::record::Kind::word);
        records.entry(kind).or_default().push(told(id, item));
    }
    let snapshot = Snapshot { form: FORM, job: job.id(), entries: job.record().len(), records };
    serde_json::to_string_pretty(&snapshot).unwrap_or_default()
}

fn told(id: Id, item: &Item) -> Told {
    let known = || item.fields().filter_map(FieldName::of);
    Told {
        id,
        values: Values::of(item),
        written: known().map(|field| (field, item.history(field.id()).len())).collect(),
        struck: item.is_struck(),
        conflicts: item.conflicts().into_iter().filter_map(FieldName::of).collect(),
        unknown: item.fields().filter(|field| FieldName::of(*field).is_none()).map(|field| field.0).collect(),
    }
}
