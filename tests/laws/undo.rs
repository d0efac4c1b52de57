use asfound_core::job::{Command, Job, Values};
use asfound_core::record::{EntryId, FieldName, Id, Kind};
use proptest::prelude::*;

use crate::cases;
use crate::garage::{Deed, Garage, any_deed, any_steps, context};

/// Values and conflicts of everything a person made, and whether it is struck out; blocks and devices were claimed on the
/// way and stay.
fn said(job: &Job) -> Vec<(Id, Values, bool, usize)> {
    let shown = [Kind::Part, Kind::Assembly, Kind::Place, Kind::Quote];
    let ids: Vec<Id> = shown.iter().flat_map(|kind| job.standing_ids(*kind)).collect();
    let views = ids.into_iter().filter_map(|id| job.record_view(id));
    // Said to be standing and never having been struck out are the same to a person.
    let calm = |values: Values| Values { struck: None, ..values };
    views.map(|view| (view.id, calm(view.values), view.struck, view.conflicts.len())).collect()
}

fn undo(garage: &mut Garage, entry: EntryId) -> Option<EntryId> {
    Some(garage.command(0, Command::Undo { entry }).entries.first()?.id)
}

proptest! {
    #![proptest_config(cases(1_500))]

    /// Undo brings the former values back, a settled conflict too; undo of the undo the later ones.
    /// Break: in `undo_op` take only the last of the former values; or the value of the op itself.
    #[test]
    fn undo_restores_and_undo_of_undo_too(steps in any_steps(), deed in any_deed()) {
        let mut garage = Garage::after(&steps);
        let Some(command) = garage.command_of(0, &deed) else { return Ok(()) };
        let before = garage.devices[0].clone();
        let former = said(&before);
        let Some(entry) = garage.command(0, command).entries.first().cloned() else { return Ok(()) };
        // Writing to what is struck out brings it back, and taking the write back leaves it there.
        let brings_back = entry.ops.iter().any(|op| before.is_struck(op.record));
        prop_assume!(!brings_back || matches!(deed, Deed::Strike(_) | Deed::BringBack(_)));
        let entry = entry.id;
        let later = said(&garage.devices[0]);
        let undone = undo(&mut garage, entry);
        prop_assert!(undone.is_some());
        prop_assert_eq!(said(&garage.devices[0]), former);
        prop_assert!(undo(&mut garage, undone.expect("seen above")).is_some());
        prop_assert_eq!(said(&garage.devices[0]), later);
    }

    /// What somebody else wrote meanwhile stays a head, whatever is undone.
    /// Break: in `undo_op` overwrite all heads instead of the entry's own.
    #[test]
    fn undo_hides_nothing_of_others(steps in any_steps(), deed in any_deed(), other in any_deed(), pick in any::<prop::sample::Index>()) {
        let mut garage = Garage::after(&steps);
        garage.bring_all();
        for (device, deed) in [(0, deed), (1, other)] {
            let Some(command) = garage.command_of(device, &deed) else { return Ok(()) };
            let _ = garage.command(device, command);
        }
        let theirs = garage.devices[1].record().entries().filter(|entry| entry.id.replica == context(1).replica).last();
        let Some(theirs) = theirs.cloned() else { return Ok(()) };
        garage.bring(1);
        let mine = garage.devices[0].record().entries().map(|entry| entry.id);
        let mine: Vec<EntryId> = mine.filter(|id| id.replica == context(0).replica).collect();
        let heads = |garage: &Garage| -> Vec<bool> {
            let record = garage.devices[0].record();
            let is_head = |op: &asfound_core::record::Op| {
                record.item(op.record).is_some_and(|item| item.head_entries(op.field).contains(&theirs.id))
            };
            // A strike may take the place of a strike: what both say stays said.
            theirs.ops.iter().filter(|op| op.field != FieldName::Struck.id()).map(is_head).collect()
        };
        let before = heads(&garage);
        let _ = undo(&mut garage, mine[pick.index(mine.len())]);
        prop_assert_eq!(heads(&garage), before);
    }
}
