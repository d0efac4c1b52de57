use std::collections::{BTreeMap, BTreeSet};

use super::nature::{Nature, nature};
use crate::job::vocabulary::Side;
use crate::job::{Job, bare_name};
use crate::record::{FieldName, Id, Item, Kind};
use crate::tables::words_of;

/// The same part on the other side: of the same name and the other side, from the same assembly or from one of the same
/// name. Where several are, the one that came off at the same place among them.
#[must_use]
pub fn counterpart(job: &Job, part: Id) -> Option<Id> {
    let item = job.item_of(Kind::Part, part)?;
    let side = job.side_of_part(item)?;
    let here = like(job, item, side);
    let there = like(job, item, other(side));
    let at = here.iter().position(|id| *id == part)?;
    there.get(at).or_else(|| there.last()).copied()
}

/// Parts of the same name on one side, in assemblies of the same name, in order of removal.
fn like(job: &Job, item: &Item, side: Side) -> Vec<Id> {
    let name = bare_name(&item.read::<String>(FieldName::Name).unwrap_or_default());
    let assembly = assembly_name(job, item);
    let others = job.alike(&name).filter(|id| !job.is_struck(*id)).filter_map(|id| Some((id, job.item(id)?)));
    let alike = others
        .filter(|(_, other)| job.side_of_part(other) == Some(side) && assembly_name(job, other) == assembly)
        .map(|(id, other)| (other.read(FieldName::Order).unwrap_or(i64::MAX), id));
    let mut alike: Vec<(i64, Id)> = alike.collect();
    alike.sort_unstable();
    alike.into_iter().map(|(_, id)| id).collect()
}

fn assembly_name(job: &Job, item: &Item) -> String {
    let assembly: Option<Id> = item.read(FieldName::Assembly);
    assembly.map(|assembly| bare_name(&job.name(assembly))).unwrap_or_default()
}

const fn other(side: Side) -> Side {
    match side {
        Side::Left => Side::Right,
        Side::Right => Side::Left,
    }
}

/// The parts that are decided together with one, in order of id: both sides of an axle, and the pieces of a matched set, which
/// are of the same family in the same assembly, with names that differ by no more than words for such pieces.
#[must_use]
pub fn together(job: &Job, part: Id) -> Vec<Id> {
    let nature = nature(job, part);
    let mut ids: BTreeSet<Id> =
        if nature.pair { counterpart(job, part).into_iter().collect() } else { BTreeSet::new() };
    ids.extend(mates(job, part, &nature));
    ids.remove(&part);
    ids.into_iter().collect()
}

fn mates(job: &Job, part: Id, nature: &Nature) -> Vec<Id> {
    let (Some(family), Some(item)) = (nature.family.filter(|family| !family.matched.is_empty()), job.item(part)) else {
        return Vec::new();
    };
    let key = |item: &Item| {
        let name = item.read::<String>(FieldName::Name).unwrap_or_default();
        let words = words_of(&bare_name(&name)).into_iter().filter(|word| !family.matched.contains(&word.as_str()));
        // Of a pair both sides make one set.
        let side = if nature.pair { None } else { job.side_of_part(item) };
        (words.collect::<Vec<_>>(), assembly_name(job, item), side)
    };
    let wanted = key(item);
    let is_mate = |id: &Id| {
        let other = job.item(*id);
        other.is_some_and(|other| {
            other.read::<String>(FieldName::Family).as_deref() == Some(family.code) && key(other) == wanted
        })
    };
    let assemblies = job.standing_ids(Kind::Assembly).filter(|id| bare_name(&job.name(*id)) == wanted.1);
    assemblies.flat_map(|id| job.children(Kind::Part, FieldName::Assembly, id)).filter(is_mate).collect()
}

/// Parts of one side with their order of removal.
type InOrder = Vec<(i64, Id)>;

/// Parts of pairs that were both decided and belong together by name and assembly: left with right, in order of id of the first.
#[must_use]
pub(crate) fn couples(job: &Job) -> Vec<(Id, Id)> {
    let mut sides: BTreeMap<(String, String), [InOrder; 2]> = BTreeMap::new();
    let chosen = job.standing_ids(Kind::Part).filter(|id| job.choice_of(*id).is_some());
    let pairs = chosen.filter(|id| nature(job, *id).pair);
    for (id, item) in pairs.filter_map(|id| Some((id, job.item(id)?))) {
        let name = bare_name(&item.read::<String>(FieldName::Name).unwrap_or_default());
        let Some(side) = job.side_of_part(item).filter(|_| !name.is_empty()) else { continue };
        let both = sides.entry((name, assembly_name(job, item))).or_default();
        both[usize::from(side == Side::Right)].push((item.read(FieldName::Order).unwrap_or(i64::MAX), id));
    }
    let mut couples: Vec<(Id, Id)> = Vec::new();
    for [mut left, mut right] in sides.into_values() {
        left.sort_unstable();
        right.sort_unstable();
        couples.extend(left.into_iter().zip(right).map(|((_, left), (_, right))| (left, right)));
    }
    couples.sort_unstable();
    couples
}
