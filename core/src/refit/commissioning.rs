//! From the last assembly to the road: fluids in, bled, primed, set, looked over; what was found before anything was slackened
//! beside what is found now; what is left over.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use super::lack::is_renewed;
use super::loose::{Gate, LooseJoint, gates, still_loose};
use super::order::{RefitOrder, assembly_of, is_donor, is_donors, vehicle_done};
use super::ready::holds;
use crate::job::vocabulary::{CommissioningStep, Fit, Side, Tightened};
use crate::job::{Job, PartLine, RecordView};
use crate::record::{FieldName, Id, Kind, in_order};

/// From the last assembly to the road.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct CommissioningView {
    /// The vehicle being done.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub vehicle: Option<RecordView>,
    /// Assemblies that are not together again.
    pub open: usize,
    /// What was drained, and what is filled in.
    pub fluids: Vec<RecordView>,
    /// The steps in their order.
    pub steps: Vec<CommissioningLine>,
    /// What was found before anything was slackened.
    pub before: Vec<BeforeLine>,
    /// What is still loose.
    pub loose: Vec<LooseJoint>,
    /// What stands in the way of lowering the vehicle on to its wheels.
    pub lowering: Gate,
    /// What stands in the way of the road.
    pub road: Gate,
    /// What is left over.
    pub left: LeftView,
}

/// One step.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct CommissioningLine {
    /// Which.
    pub step: CommissioningStep,
    /// What was said of it: done, with a finding, or left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub record: Option<RecordView>,
}

/// What was found before anything was slackened, to be compared.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct BeforeLine {
    /// The assembly.
    pub assembly: Id,
    /// Its name.
    pub assembly_name: String,
    /// Left or right.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub side: Option<Side>,
    /// What was found, and what is found now.
    pub record: RecordView,
}

/// What is left over at the end.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct LeftView {
    /// Parts that are off and not on for good: nobody ticked them.
    pub parts: Vec<PartLine>,
    /// Joints that nobody ticked as tight.
    pub never_ticked: Vec<LooseJoint>,
    /// What was renewed.
    pub renewed: Vec<Renewed>,
}

/// Something that was renewed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Renewed {
    /// The part or the piece of hardware.
    pub id: Id,
    /// The part, or the part that the hardware holds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub part: Option<Id>,
    /// The tag of that part.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tag: Option<i64>,
    /// What it is called.
    pub name: String,
    /// How many pieces.
    pub pieces: i64,
}

/// From the last assembly to the road.
#[must_use]
pub fn commissioning(job: &Job) -> CommissioningView {
    let vehicle = vehicle_done(job);
    let order = RefitOrder::of(job);
    let loose = still_loose(job);
    let (lowering, road) = gates(job, &loose);
    let records = |kind| job.standing_ids(kind).filter_map(|id| job.record_view(id)).collect::<Vec<RecordView>>();
    let is_ours = |of: Option<Id>| !of.is_some_and(|of| is_donors(job, of) || is_donor(job, of));
    let mut said = records(Kind::Commissioning);
    said.retain(|line| is_ours(line.values.of));
    let of = |step: CommissioningStep| said.iter().filter(move |record| record.values.commissioning_step == Some(step));
    let steps = CommissioningStep::ALL.iter().copied().map(|step| CommissioningLine {
        step,
        // What one device did and another left out was done.
        record: of(step)
            .max_by_key(|record| (record.values.skipped != Some(true), record.values.taken, record.id))
            .cloned(),
    });
    // What was drained from a donor is not filled in again.
    let mut fluids = records(Kind::Fluid);
    fluids.retain(|fluid| is_ours(fluid.values.of));
    let left = left(job, &order, &loose);
    CommissioningView {
        vehicle: vehicle.and_then(|id| job.record_view(id)),
        open: open_assemblies(job, &left),
        fluids: in_order(fluids, |fluid: &RecordView| (fluid.values.name.clone(), fluid.id)),
        steps: steps.collect(),
        before: before(job),
        lowering,
        road,
        left,
        loose,
    }
}

fn open_assemblies(job: &Job, left: &LeftView) -> usize {
    let ids: BTreeSet<Id> = left.parts.iter().filter_map(|part| assembly_of(job, part.id)).collect();
    ids.len()
}

/// What was found, of assemblies that are not a donor's; what was left out then has nothing to be compared with.
fn before(job: &Job) -> Vec<BeforeLine> {
    let lines = job.standing_ids(Kind::Before).filter_map(|id| {
        let record = job.record_view(id).filter(|record| record.values.skipped != Some(true))?;
        record.values.text.as_ref()?;
        let assembly = record.values.assembly?;
        if is_donors(job, assembly) {
            return None;
        }
        let (assembly_name, side) = (job.name(assembly), job.side_of_assembly(assembly));
        Some(BeforeLine { assembly, assembly_name, side, record })
    });
    in_order(lines.collect(), |line: &BeforeLine| {
        (line.assembly_name.clone(), line.side, line.record.values.check, line.record.id)
    })
}

/// What is left over: parts that nobody ticked, joints that nobody ticked; and what was renewed.
fn left(job: &Job, order: &RefitOrder, loose: &[LooseJoint]) -> LeftView {
    let is_fitted = |part: &Id| job.fit(*part) == Some(Fit::Fitted);
    let (fitted, open): (Vec<Id>, Vec<Id>) = order.parts.iter().copied().partition(is_fitted);
    let tag = |part: Id| job.item(part).and_then(|item| item.read(FieldName::Tag));
    let new = fitted.iter().copied().filter(|part| job.route_of(*part).is_some_and(Job::brings_new));
    let new = new.map(|part| Renewed {
        id: part,
        part: Some(part),
        tag: tag(part),
        name: job.name(part),
        pieces: job.pieces_wanted(part),
    });
    let tight = job.standing_ids(Kind::Joint).filter(|joint| {
        let tightened = job.item(*joint).and_then(|item| item.read::<Tightened>(FieldName::Tightened));
        tightened == Some(Tightened::Tight)
    });
    let pieces = tight.flat_map(|joint| {
        let part = holds(job, joint);
        let pieces = job.children(Kind::Piece, FieldName::Joint, joint).filter_map(|id| Some((id, job.item(id)?)));
        pieces.filter(|(_, piece)| is_renewed(piece)).map(move |(id, piece)| Renewed {
            id,
            part,
            tag: part.and_then(tag),
            name: job.name(id),
            pieces: piece.read(FieldName::Quantity).unwrap_or(1),
        })
    });
    LeftView {
        parts: open.into_iter().filter_map(|part| job.part_line(part)).collect(),
        never_ticked: loose.iter().filter(|joint| !joint.finger_tight).cloned().collect(),
        renewed: new.chain(pieces).collect(),
    }
}
