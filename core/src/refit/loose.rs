//! What is still loose: fasteners that were only run in by hand, or are tightened at ride height. It stands in the way of
//! lowering the vehicle, and of the road.

use serde::{Deserialize, Serialize};

use super::order::{assembly_of, is_donors, is_of_donor, vehicle_done};
use super::ready::holds;
use super::reference::is_together_again;
use super::step::{StepJoint, step_joint};
use crate::job::Job;
use crate::job::vocabulary::{Fit, Tightened};
use crate::record::{FieldName, Id, Kind, in_order};

/// A joint that is not tight.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct LooseJoint {
    /// The joint.
    pub joint: Id,
    /// Its name.
    pub name: String,
    /// The part it holds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub part: Option<Id>,
    /// The tag of that part.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tag: Option<i64>,
    /// The name of that part.
    pub part_name: String,
    /// The assembly.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub assembly: Option<Id>,
    /// The name of that assembly.
    pub assembly_name: String,
    /// It is tightened only at ride height.
    pub at_ride_height: bool,
    /// It was run in by hand; else nobody has said anything of it.
    pub finger_tight: bool,
    /// Its record and its pieces: how tight it is to be.
    pub hardware: StepJoint,
}

/// What stands in the way of a step.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Gate {
    /// Nothing does.
    pub open: bool,
    /// It was done.
    pub done: bool,
    /// The joints that do.
    pub joints: Vec<Id>,
}

/// What is still loose in all of the job: joints of what is on for good, and joints that were run in by hand.
#[must_use]
pub fn still_loose(job: &Job) -> Vec<LooseJoint> {
    let joints = job.standing_ids(Kind::Joint).filter(|joint| is_loose(job, *joint));
    let joints = joints.filter_map(|joint| told(job, joint)).collect();
    in_order(joints, |joint: &LooseJoint| (joint.assembly, joint.tag, joint.name.clone(), joint.joint))
}

/// The same in one assembly, or of parts that are in none.
pub(super) fn still_loose_in(job: &Job, assembly: Option<Id>) -> Vec<LooseJoint> {
    let mut loose = still_loose(job);
    loose.retain(|joint| joint.assembly == assembly);
    loose
}

/// What is tight, and was not checked a second time.
#[must_use]
pub fn to_check_again(job: &Job) -> Vec<LooseJoint> {
    let joints = job.standing_ids(Kind::Joint).filter(|joint| {
        job.item(*joint).is_some_and(|item| {
            item.read(FieldName::Tightened) == Some(Tightened::Tight) && !item.is(FieldName::CheckedAgain)
        })
    });
    let joints = joints.filter_map(|joint| told(job, joint)).collect();
    in_order(joints, |joint: &LooseJoint| (joint.assembly, joint.tag, joint.name.clone(), joint.joint))
}

/// A joint that holds no part by name goes on with the last of its assembly.
fn is_loose(job: &Job, joint: Id) -> bool {
    let Some(item) = job.item(joint) else { return false };
    match item.read(FieldName::Tightened) {
        Some(Tightened::Tight) => false,
        Some(Tightened::FingerTight) => true,
        None => match holds(job, joint) {
            Some(part) => !job.is_struck(part) && job.fit(part) == Some(Fit::Fitted),
            None => {
                let within = |id| job.within(Kind::Assembly, FieldName::Inside, id);
                item.read(FieldName::Assembly)
                    .is_some_and(|id| !job.is_struck(id) && is_together_again(job, &within(id)))
            }
        },
    }
}

/// A joint by its names; nothing where it holds a donor's part.
fn told(job: &Job, joint: Id) -> Option<LooseJoint> {
    let item = job.item(joint)?;
    let part = holds(job, joint).filter(|part| !job.is_struck(*part));
    if part.is_some_and(|part| is_of_donor(job, part)) {
        return None;
    }
    let own =
        || item.read(FieldName::Assembly).filter(|id| job.kind(*id) == Some(Kind::Assembly) && !job.is_struck(*id));
    let assembly = part.and_then(|part| assembly_of(job, part)).or_else(own);
    if assembly.is_some_and(|assembly| is_donors(job, assembly)) {
        return None;
    }
    Some(LooseJoint {
        joint,
        name: job.name(joint),
        tag: part.and_then(|part| job.item(part)?.read(FieldName::Tag)),
        part_name: part.map(|part| job.name(part)).unwrap_or_default(),
        part,
        assembly_name: assembly.map(|assembly| job.name(assembly)).unwrap_or_default(),
        assembly,
        at_ride_height: item.is(FieldName::AtRideHeight),
        finger_tight: item.read(FieldName::Tightened) == Some(Tightened::FingerTight),
        hardware: step_joint(job, joint)?,
    })
}

/// What stands in the way of lowering, and of the road. What is tightened at ride height can only be once it stands on its
/// wheels: it is in the way of the road alone.
#[must_use]
pub fn gates(job: &Job, loose: &[LooseJoint]) -> (Gate, Gate) {
    let done = vehicle_done(job).and_then(|vehicle| job.item(vehicle));
    let is = |field| done.is_some_and(|vehicle| vehicle.is(field));
    let gate = |joints: Vec<Id>, done| Gate { open: joints.is_empty(), done, joints };
    let now = loose.iter().filter(|joint| !joint.at_ride_height).map(|joint| joint.joint).collect();
    let all = loose.iter().map(|joint| joint.joint).collect();
    (gate(now, is(FieldName::Lowered)), gate(all, is(FieldName::OnTheRoad)))
}
