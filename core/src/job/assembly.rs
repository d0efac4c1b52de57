use super::view::{AssembliesView, AssemblyLine, RecordView};
use super::vocabulary::Side;
use super::whole::Job;
use crate::record::{FieldName, Id, Kind, in_order};
use crate::refit::reference_of;

impl Job {
    /// The side of an assembly: its own, or of the nearest one it is inside.
    #[must_use]
    pub fn side_of_assembly(&self, assembly: Id) -> Option<Side> {
        self.outwards(FieldName::Inside, assembly).find_map(|id| self.item(id)?.read(FieldName::Side))
    }

    /// One assembly.
    pub(super) fn assembly_line(&self, assembly: Id, depth: usize) -> Option<AssemblyLine> {
        let record = self.record_view(assembly).filter(|record| record.kind == Kind::Assembly)?;
        Some(AssemblyLine {
            record,
            side: self.side_of_assembly(assembly),
            depth,
            parts: self.children(Kind::Part, FieldName::Assembly, assembly).count(),
            before: self.ordered(Kind::Before, FieldName::Assembly, assembly, false),
            photos: self.photos_of(assembly),
            reference: reference_of(self, assembly),
        })
    }

    /// All assemblies, each after the one it is inside.
    pub(super) fn assembly_lines(&self) -> Vec<AssemblyLine> {
        let nested = self.nested(Kind::Assembly, FieldName::Inside).into_iter();
        nested.filter_map(|(id, depth)| self.assembly_line(id, depth)).collect()
    }

    /// The vehicle being done, then its donors.
    pub(super) fn vehicles(&self) -> Vec<RecordView> {
        let vehicles = self.standing_ids(Kind::Vehicle).filter_map(|id| self.record_view(id)).collect();
        in_order(vehicles, |vehicle: &RecordView| {
            (vehicle.values.donor == Some(true), vehicle.values.name.clone(), vehicle.id)
        })
    }

    /// Vehicles and assemblies.
    #[must_use]
    pub fn assemblies_view(&self) -> AssembliesView {
        AssembliesView { vehicles: self.vehicles(), assemblies: self.assembly_lines() }
    }
}
