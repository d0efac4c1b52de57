//! One part after the other: what is done at it, with which hardware, how tight; and the photos beside.

use serde::{Deserialize, Serialize};

use super::lack::{Lack, is_renewed};
use super::loose::{LooseJoint, still_loose_in};
use super::order::{Circle, assembly_of, paint_of};
use super::ready::{Readiness, RefitAssembly};
use super::reference::{ReferenceView, reference_of};
use crate::job::vocabulary::{Fit, Paint};
use crate::job::{Job, NoteView, PartLine, PhotoView, RecordView, bare_name};
use crate::quantity::Day;
use crate::record::{FieldName, Id, Kind, in_order, stored_enum};

stored_enum! {
    /// How far a step is.
    pub enum StepState {
        /// On for good.
        Fitted = "fitted",
        /// On for trial.
        Tried = "tried",
        /// It can be done.
        Ready = "ready",
        /// Something stands in the way.
        Waiting = "waiting",
    }
}

/// The steps of an assembly, in order.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct RefitStepsView {
    /// The assembly as it stands.
    pub assembly: RefitAssembly,
    /// Its record.
    pub record: RecordView,
    /// Every part of it that is off, or was, once.
    pub steps: Vec<StepLine>,
    /// Joints that hold no part of it that anybody has named.
    pub joints: Vec<StepJoint>,
    /// What refitting it uses up.
    pub consumables: Vec<RecordView>,
    /// What goes on after what, where it says something of this assembly.
    pub rules: Vec<RecordView>,
    /// What cannot be kept of the order.
    pub circles: Vec<Circle>,
    /// What of it is still loose.
    pub loose: Vec<LooseJoint>,
}

/// One step in the list.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct StepLine {
    /// The part.
    pub line: PartLine,
    /// How far it is.
    pub state: StepState,
    /// What stands in the way.
    pub lacks: Vec<Lack>,
    /// Before or after the paint.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub paint: Option<Paint>,
    /// It never stood in an order of removal.
    pub without_order: bool,
    /// Another piece goes on in the place of the old one.
    pub brings_new: bool,
}

/// A joint as it goes together.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct StepJoint {
    /// Its record, tightening figure included.
    pub record: RecordView,
    /// Its pieces in the order they go on: what came off last first.
    pub pieces: Vec<StepPiece>,
}

/// A piece of hardware.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct StepPiece {
    /// Its record, tightening figure included.
    pub record: RecordView,
    /// It is renewed.
    pub renew: bool,
}

/// A photo of the same thing on the other side.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct BesidePhoto {
    /// The photo.
    pub photo: PhotoView,
    /// What it is of: the part, or the whole assembly.
    pub of: String,
}

/// All that is wanted at one step.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct RefitStepView {
    /// The step as in the list.
    pub step: StepLine,
    /// The part's record.
    pub record: RecordView,
    /// The assembly; nothing where it is in none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub assembly: Option<Id>,
    /// The name of that assembly.
    pub assembly_name: String,
    /// Which step, counted from 1.
    pub number: usize,
    /// Of how many.
    pub of: usize,
    /// How far each of them is, in order.
    pub states: Vec<StepState>,
    /// The part before.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub previous: Option<Id>,
    /// The part after.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub next: Option<Id>,
    /// The first after this one that is not on for good; from the end on again from the beginning.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub next_open: Option<Id>,
    /// Its photos: before, off, after.
    pub photos: Vec<PhotoView>,
    /// Photos of the same part where it is still whole, or of that whole assembly.
    pub beside: Vec<BesidePhoto>,
    /// The joints that hold it.
    pub joints: Vec<StepJoint>,
    /// What it uses up.
    pub consumables: Vec<RecordView>,
    /// New pieces of it, ordered or here.
    pub deliveries: Vec<RecordView>,
    /// When it was out of the house.
    pub outings: Vec<RecordView>,
    /// Its notes.
    pub notes: Vec<NoteView>,
    /// How many joints are still loose in the assembly; of a part that is in none, of all such parts.
    pub loose: usize,
    /// What the assembly has to do with a reference.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reference: Option<ReferenceView>,
}

/// The steps of an assembly; nothing when none of its parts was off.
#[must_use]
pub fn steps(job: &Job, assembly: Id, today: Option<Day>) -> Option<RefitStepsView> {
    let readiness = Readiness::of(job, today);
    let line = readiness.assembly(assembly)?;
    let parts = readiness.parts_of(assembly);
    let is_here = |id: &Id| parts.contains(id) || *id == assembly;
    let rules = job.standing_ids(Kind::GoesAfter).filter(|rule| {
        let ends = [FieldName::Of, FieldName::Other].into_iter();
        let mut ends = ends.filter_map(|field| job.item(*rule)?.read::<Id>(field));
        ends.any(|end| is_here(&end))
    });
    let rules = rules.filter_map(|rule| job.record_view(rule)).collect();
    let circles = readiness.order.open_circles(job).filter(|circle| circle.parts.iter().any(&is_here));
    let joints = job.children(Kind::Joint, FieldName::Assembly, assembly);
    let is_free = |part: Id| !parts.contains(&part) && !job.is_struck(part);
    let free = joints.filter(|joint| super::ready::holds(job, *joint).is_none_or(is_free));
    Some(RefitStepsView {
        record: job.record_view(assembly)?,
        steps: parts.iter().filter_map(|part| step_line(&readiness, *part)).collect(),
        joints: free.filter_map(|joint| step_joint(job, joint)).collect(),
        consumables: job.ordered(Kind::Consumable, FieldName::Of, assembly, false),
        rules,
        circles: circles.cloned().collect(),
        loose: still_loose_in(job, Some(assembly)),
        assembly: line,
    })
}

fn step_line(readiness: &Readiness<'_>, part: Id) -> Option<StepLine> {
    let job = readiness.job;
    Some(StepLine {
        line: job.part_line(part)?,
        state: state_of(readiness, part),
        lacks: readiness.lacks(part).to_vec(),
        paint: paint_of(job, part),
        without_order: job.item(part)?.read::<i64>(FieldName::Order).is_none(),
        brings_new: job.route_of(part).is_some_and(Job::brings_new),
    })
}

fn state_of(readiness: &Readiness<'_>, part: Id) -> StepState {
    match readiness.job.fit(part) {
        Some(Fit::Fitted) => StepState::Fitted,
        Some(Fit::Tried) => StepState::Tried,
        _ if readiness.lacks(part).is_empty() => StepState::Ready,
        _ => StepState::Waiting,
    }
}

pub(super) fn step_joint(job: &Job, joint: Id) -> Option<StepJoint> {
    let mut pieces = job.ordered(Kind::Piece, FieldName::Joint, joint, false);
    pieces.reverse();
    let pieces = pieces.into_iter().map(|record| {
        let renew = job.item(record.id).is_some_and(is_renewed);
        StepPiece { record, renew }
    });
    Some(StepJoint { pieces: pieces.collect(), record: job.record_view(joint)? })
}

/// All that is wanted at the step of one part; nothing when it was never off.
#[must_use]
pub fn step(job: &Job, part: Id, today: Option<Day>) -> Option<RefitStepView> {
    let loose = still_loose_in(job, assembly_of(job, part)).len();
    step_of(&Readiness::of(job, today), part, loose)
}

/// All that is wanted at each step of an assembly, in order.
#[must_use]
pub fn each_step(job: &Job, assembly: Id, today: Option<Day>) -> Vec<RefitStepView> {
    let readiness = Readiness::of(job, today);
    let loose = still_loose_in(job, Some(assembly)).len();
    readiness.parts_of(assembly).iter().filter_map(|part| step_of(&readiness, *part, loose)).collect()
}

/// With how many joints are loose around it, which is the same for all steps of an assembly.
fn step_of(readiness: &Readiness<'_>, part: Id, loose: usize) -> Option<RefitStepView> {
    let job = readiness.job;
    let assembly = assembly_of(job, part);
    let parts = match assembly {
        Some(assembly) => readiness.parts_of(assembly).to_vec(),
        None => readiness.order.parts.iter().copied().filter(|part| assembly_of(job, *part).is_none()).collect(),
    };
    let at = parts.iter().position(|known| *known == part)?;
    let is_open = |part: &&Id| job.fit(**part) != Some(Fit::Fitted);
    let states = parts.iter().map(|part| state_of(readiness, *part));
    let joints = job.ordered(Kind::Joint, FieldName::Of, part, false).into_iter();
    let mut photos = job.photos_of(part);
    photos.retain(|photo| !photo.record.struck);
    Some(RefitStepView {
        step: step_line(readiness, part)?,
        record: job.record_view(part)?,
        assembly_name: assembly.map(|assembly| job.name(assembly)).unwrap_or_default(),
        number: at + 1,
        of: parts.len(),
        states: states.collect(),
        previous: at.checked_sub(1).map(|before| parts[before]),
        next: parts.get(at + 1).copied(),
        next_open: parts[at + 1..].iter().chain(&parts[..at]).find(is_open).copied(),
        photos: in_order(photos, |photo: &PhotoView| photo.record.values.moment),
        beside: beside(job, part, assembly),
        joints: joints.filter_map(|joint| step_joint(job, joint.id)).collect(),
        consumables: job.ordered(Kind::Consumable, FieldName::Of, part, false),
        deliveries: job.ordered(Kind::Delivery, FieldName::Of, part, false),
        outings: job.ordered(Kind::Outing, FieldName::Of, part, false),
        notes: job.notes_of(part),
        loose,
        reference: assembly.and_then(|assembly| reference_of(job, assembly)),
        assembly,
    })
}

/// Photos of the opposite number in the assembly that is kept whole, then of that assembly itself.
fn beside(job: &Job, part: Id, assembly: Option<Id>) -> Vec<BesidePhoto> {
    let Some(mirror) = assembly.and_then(|assembly| super::reference::mirror_of(job, assembly)) else {
        return Vec::new();
    };
    let name = bare_name(&job.name(part));
    let twins = job.children(Kind::Part, FieldName::Assembly, mirror);
    let twins = twins.filter(|twin| !name.is_empty() && bare_name(&job.name(*twin)) == name);
    let of: Vec<Id> = twins.chain([mirror]).collect();
    let photos = of.into_iter().flat_map(|id| {
        let of = job.name(id);
        job.photos_of(id).into_iter().map(move |photo| BesidePhoto { photo, of: of.clone() })
    });
    photos.filter(|beside| !beside.photo.record.struck).collect()
}
