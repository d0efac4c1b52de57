use std::collections::BTreeMap;

use super::view::{PartLine, PlaceLine, TeardownView};
use super::whole::Job;
use crate::quantity::Millis;
use crate::record::{FieldName, Id, Kind, ordered_by};

/// How many names and places are offered.
const OFFERED: usize = 12;

impl Job {
    /// What the strip needs.
    #[must_use]
    pub fn teardown_view(&self, assembly: Option<Id>, part: Option<Id>, device: Id) -> TeardownView {
        let line = assembly.and_then(|id| self.assembly_line(id, 0)).filter(|line| !line.record.struck);
        let open = self.assembly_lines().into_iter().filter(|line| line.record.values.open == Some(true));
        TeardownView {
            open: open.collect(),
            part: part.and_then(|part| self.part_view(part)).map(Box::new),
            next_tag: self.next_tag(device),
            names: self.likely_names(assembly),
            places: self.latest_places(),
            joints: assembly.map(|id| self.joints_of(FieldName::Assembly, id)).unwrap_or_default(),
            parts: assembly.map(|id| self.removed_from(id)).unwrap_or_default(),
            assembly: line,
        }
    }

    /// The parts of an assembly in order of removal.
    fn removed_from(&self, assembly: Id) -> Vec<PartLine> {
        let mut parts: Vec<(i64, Id)> = self
            .children(Kind::Part, FieldName::Assembly, assembly)
            .filter_map(|part| Some((self.item(part)?.read(FieldName::Order).unwrap_or(i64::MAX), part)))
            .collect();
        parts.sort_unstable();
        parts.into_iter().filter_map(|(_, part)| self.part_line(part)).collect()
    }

    /// Names of parts that are likely to come next, learnt from this job alone. First those that came off an assembly of
    /// the same name (the other side) and have not come off this one yet, in their order of removal; then the names used
    /// most.
    fn likely_names(&self, assembly: Option<Id>) -> Vec<String> {
        let mut names: Vec<String> = assembly.map(|assembly| self.names_of_twins(assembly)).unwrap_or_default();
        let mut counted: BTreeMap<String, usize> = BTreeMap::new();
        for part in self.standing_ids(Kind::Part) {
            *counted.entry(self.name(part)).or_default() += 1;
        }
        let counted = counted.into_iter().filter(|(name, _)| !name.is_empty()).collect();
        let counted = ordered_by(counted, |a: &(String, usize), b| b.1.cmp(&a.1).then_with(|| a.0.cmp(&b.0)));
        for (name, _) in counted {
            if !names.contains(&name) {
                names.push(name);
            }
        }
        names.truncate(OFFERED);
        names
    }

    fn names_of_twins(&self, assembly: Id) -> Vec<String> {
        let name = self.name(assembly).to_lowercase();
        let twins = self.standing_ids(Kind::Assembly).filter(|id| *id != assembly && !name.is_empty());
        let twins = twins.filter(|id| self.name(*id).to_lowercase() == name);
        let here: Vec<String> = self.removed_from(assembly).into_iter().map(|part| part.name).collect();
        let mut names = Vec::new();
        for part in twins.flat_map(|twin| self.removed_from(twin)) {
            if !part.name.is_empty() && !here.contains(&part.name) && !names.contains(&part.name) {
                names.push(part.name);
            }
        }
        names
    }

    /// The places that parts were last put in, latest first.
    fn latest_places(&self) -> Vec<PlaceLine> {
        let mut latest: BTreeMap<Id, Millis> = BTreeMap::new();
        for place in self.standing_ids(Kind::Place) {
            let made = self.item(place).and_then(|item| item.written_at(FieldName::Kind));
            latest.insert(place, made.unwrap_or_default());
        }
        for part in self.standing_ids(Kind::Part) {
            let Some(item) = self.item(part) else { continue };
            let Some(head) = item.written_at(FieldName::Place) else { continue };
            if let Some(at) = item.read::<Id>(FieldName::Place).and_then(|place| latest.get_mut(&place)) {
                *at = head.max(*at);
            }
        }
        let latest = latest.into_iter().map(|(id, at)| (at, id)).collect();
        let latest = ordered_by(latest, |a: &(Millis, Id), b| b.cmp(a));
        latest.into_iter().take(OFFERED).filter_map(|(_, place)| self.place_line(place)).collect()
    }
}
