use serde::{Deserialize, Serialize};

use super::nature::Nature;
use crate::job::{Job, RecordView};
use crate::record::{FieldName, Id, Kind};
use crate::tables::checks::Condition;
use crate::tables::features::{Dimension, LimitKind, feature};

/// A measure of a part, with its limits and readings.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct MeasureView {
    /// What is measured: a code of the tables, or the user's own word.
    pub feature: String,
    /// In what.
    pub dimension: Dimension,
    /// Which kind of limit it has.
    pub kind: LimitKind,
    /// Its limit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub limit: Option<RecordView>,
    /// A usual limit, that nobody has confirmed for this vehicle.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub usual: Option<i64>,
    /// Its readings, earliest first.
    pub readings: Vec<RecordView>,
    /// The readings of the other side.
    pub other_side: Vec<RecordView>,
}

/// What one measure comes to.
pub(super) struct Judged {
    pub(super) feature: String,
    pub(super) proof: &'static str,
    pub(super) condition: Option<Condition>,
    /// It has a limit: without a proof the part is not known.
    pub(super) needed: bool,
}

/// What is measured in a part: what its family asks for, then whatever else has a reading or a limit.
fn features(job: &Job, part: Id, nature: &Nature) -> Vec<String> {
    let asked = nature.family.map(|family| family.measures).unwrap_or_default();
    let mut all: Vec<String> = asked.iter().map(|code| (*code).to_owned()).collect();
    for kind in [Kind::Limit, Kind::Reading] {
        for id in job.children(kind, FieldName::Of, part) {
            let said: Option<String> = job.item(id).and_then(|item| item.read(FieldName::Feature));
            if let Some(said) = said.filter(|said| !all.contains(said)) {
                all.push(said);
            }
        }
    }
    all
}

/// Records of a kind about one feature of a part, earliest first.
fn about(job: &Job, part: Id, kind: Kind, of: &str) -> Vec<RecordView> {
    let ids = job.children(kind, FieldName::Of, part);
    let all = ids.filter_map(|id| job.record_view(id)).filter(|record| record.values.feature.as_deref() == Some(of));
    let mut all: Vec<RecordView> = all.collect();
    all.sort_by_key(|record| (record.values.taken, record.id));
    all
}

/// The measures of a part.
pub(super) fn measures(job: &Job, part: Id, nature: &Nature, other: Option<Id>) -> Vec<MeasureView> {
    let view = |code: String| {
        let known = feature(&code);
        let own = about(job, part, Kind::Limit, &code).pop();
        // What holds on one side holds on the other: a limit is typed once.
        let limit = own.or_else(|| about(job, other?, Kind::Limit, &code).pop());
        let said = limit.as_ref().map(|limit| &limit.values);
        MeasureView {
            dimension: said
                .and_then(|values| values.dimension)
                .or(known.map(|known| known.dimension))
                .unwrap_or(Dimension::Length),
            kind: said
                .and_then(|values| values.limit_kind)
                .or(known.map(|known| known.kind))
                .unwrap_or(LimitKind::Size),
            usual: known.and_then(|known| known.usual),
            readings: about(job, part, Kind::Reading, &code),
            other_side: other.map(|other| about(job, other, Kind::Reading, &code)).unwrap_or_default(),
            limit,
            feature: code,
        }
    };
    features(job, part, nature).into_iter().map(view).collect()
}

/// What the measures of a part come to.
pub(super) fn judged(job: &Job, part: Id, nature: &Nature) -> Vec<Judged> {
    let _ = (job, part, nature);
    Vec::new()
}
