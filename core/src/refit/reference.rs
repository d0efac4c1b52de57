//! An assembly that is kept whole on one side is the best drawing there is.

use serde::{Deserialize, Serialize};

use super::order::{vehicle_done, vehicle_of};
use crate::job::vocabulary::Fit;
use crate::job::{Job, bare_name};
use crate::record::{FieldName, Id, Kind};

/// What an assembly has to do with a reference.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct ReferenceView {
    /// It is kept whole itself; else the other one is.
    pub is_kept: bool,
    /// Its opposite number.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mirror: Option<Id>,
    /// What that is called.
    pub mirror_name: String,
    /// The opposite number is not together again: stripping the reference now would be too early.
    pub early: bool,
}

/// The assembly of the same name on the other side of the same vehicle.
pub(super) fn mirror_of(job: &Job, assembly: Id) -> Option<Id> {
    let name = bare_name(&job.name(assembly));
    let side = job.side_of_assembly(assembly)?;
    // An assembly of which nobody said the vehicle is of the one being done.
    let vehicle_of = |assembly| vehicle_of(job, assembly).or_else(|| vehicle_done(job));
    let vehicle = vehicle_of(assembly);
    let others = job.standing_ids(Kind::Assembly).filter(|other| *other != assembly && !name.is_empty());
    let mut mirrors = others.filter(|other| {
        vehicle_of(*other) == vehicle
            && bare_name(&job.name(*other)) == name
            && job.side_of_assembly(*other).is_some_and(|other| other != side)
    });
    mirrors.next()
}

/// Whether all that was off assemblies is on for good, and something was.
pub(super) fn is_together_again<'a>(job: &Job, assemblies: impl IntoIterator<Item = &'a Id>) -> bool {
    let parts = assemblies.into_iter().flat_map(|assembly| job.children(Kind::Part, FieldName::Assembly, *assembly));
    let mut off = parts.filter(|part| job.item(*part).is_some_and(|item| item.is(FieldName::Off))).peekable();
    off.peek().is_some() && off.all(|part| job.fit(part) == Some(Fit::Fitted))
}

/// What an assembly has to do with a reference, by itself or by what it is inside; nothing when neither it nor its opposite number is kept as one.
#[must_use]
pub(crate) fn reference_of(job: &Job, assembly: Id) -> Option<ReferenceView> {
    let kept_around = |id: Id| {
        let mut around = job.outwards(FieldName::Inside, id);
        around.find(|id| job.item(*id).is_some_and(|item| item.is(FieldName::Reference)))
    };
    let is_whole = |id: Id| is_together_again(job, &job.within(Kind::Assembly, FieldName::Inside, id));
    let (kept, mirror) = (kept_around(assembly), mirror_of(job, assembly));
    let mirror_is = mirror.is_some_and(|mirror| kept_around(mirror).is_some());
    // What is inside a reference stays as long as that does.
    let early = kept.is_some_and(|kept| !mirror_of(job, kept).is_some_and(is_whole));
    (kept.is_some() || mirror_is).then(|| ReferenceView {
        is_kept: kept.is_some(),
        mirror,
        mirror_name: mirror.map(|mirror| job.name(mirror)).unwrap_or_default(),
        early,
    })
}
