use asfound_core::job::{Change, Command};
use asfound_core::problem::Code;
use asfound_core::record::{FieldName, Id, Kind};
use proptest::prelude::*;

use crate::cases;
use crate::garage::{Deed, Garage, any_deed, any_steps};

/// A garage in which both devices know the same, with a part that stands.
fn with_part(garage: &mut Garage) -> Id {
    garage.bring_all();
    let part = garage.fresh();
    let _ = garage.command(0, Command::Create { id: part, kind: Kind::Part, changes: vec![] });
    garage.bring_all();
    part
}

fn change(part: Id, change: Change) -> Command {
    Command::Change { ids: vec![part], changes: vec![change], seen: None }
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// Struck out here, edited there without having seen it: the part is back on both, with the edit.
    /// Break: in `is_struck` answer true without asking what was seen.
    #[test]
    fn a_concurrent_edit_brings_a_struck_part_back(steps in any_steps(), name in "[a-z]{1,5}", strikes_first in any::<bool>()) {
        let mut garage = Garage::after(&steps);
        let part = with_part(&mut garage);
        let (striker, editor) = if strikes_first { (0, 1) } else { (1, 0) };
        let _ = garage.command(striker, change(part, Change::Struck(true)));
        prop_assert!(garage.devices[striker].is_struck(part));
        let _ = garage.command(editor, change(part, Change::Name(name.clone())));
        garage.bring_all();
        for job in &garage.devices {
            prop_assert!(!job.is_struck(part));
            prop_assert_eq!(job.name(part), name.clone());
        }
    }

    /// Struck out after the edit was seen, it stays struck out.
    /// Break: in `Draft::over` let striking out name only the heads of its own field.
    #[test]
    fn a_seen_edit_does_not(steps in any_steps(), name in "[a-z]{1,5}") {
        let mut garage = Garage::after(&steps);
        let part = with_part(&mut garage);
        let _ = garage.command(1, change(part, Change::Name(name)));
        garage.bring(1);
        let _ = garage.command(0, change(part, Change::Struck(true)));
        garage.bring_all();
        prop_assert!(garage.devices.iter().all(|job| job.is_struck(part)));
    }

    /// Struck out over a screen on which the edit did not stand yet, the part is back although the edit had come in.
    /// Break: in `Draft::over` let striking out take all heads although it was said what was seen.
    #[test]
    fn an_edit_behind_the_screen_brings_it_back(steps in any_steps(), name in "[a-z]{1,5}") {
        let mut garage = Garage::after(&steps);
        let part = with_part(&mut garage);
        let _ = garage.command(0, change(part, Change::Name("Hub".to_owned())));
        let seen = garage.devices[0].record_view(part).expect("a part").seen;
        garage.bring(0);
        let _ = garage.command(1, change(part, Change::Name(name)));
        garage.bring(1);
        let strike = Command::Change { ids: vec![part], changes: vec![Change::Struck(true)], seen: Some(seen) };
        let _ = garage.command(0, strike);
        prop_assert!(!garage.devices[0].is_struck(part));
    }

    /// Several struck out at once over a screen: the one that an edit came in behind is back, the others stay struck out.
    /// Break: in `Job::seen_of` let the entries of the last record replace those of the others.
    #[test]
    fn of_several_the_one_edited_behind_the_screen_comes_back(steps in any_steps(), name in "[a-z]{1,5}") {
        let mut garage = Garage::after(&steps);
        let parts = [with_part(&mut garage), with_part(&mut garage), with_part(&mut garage)];
        for part in parts {
            let _ = garage.command(1, change(part, Change::Name("Hub".to_owned())));
        }
        garage.bring_all();
        let seen = garage.devices[0].seen_of(&parts);
        let _ = garage.command(1, change(parts[1], Change::Name(name)));
        garage.bring(1);
        let _ = garage.command(0, Command::Change { ids: parts.to_vec(), changes: vec![Change::Struck(true)], seen: Some(seen) });
        prop_assert_eq!(parts.map(|part| garage.devices[0].is_struck(part)), [true, false, true]);
    }

    /// The same with a field that had no value on the screen.
    /// Break: in `Draft::was_seen` take a field of which nothing was said for seen.
    #[test]
    fn a_value_first_given_behind_the_screen_brings_it_back(steps in any_steps(), name in "[a-z]{1,5}") {
        let mut garage = Garage::after(&steps);
        let part = with_part(&mut garage);
        let seen = garage.devices[0].record_view(part).expect("a part").seen;
        let _ = garage.command(1, change(part, Change::Name(name)));
        garage.bring(1);
        let strike = Command::Change { ids: vec![part], changes: vec![Change::Struck(true)], seen: Some(seen) };
        let _ = garage.command(0, strike);
        prop_assert!(!garage.devices[0].is_struck(part));
    }

    /// What the same window has just written does not stand in the way of its own next change, although the screen from
    /// which that comes does not show it yet.
    /// Break: in `Draft::was_seen` leave the own replica out.
    #[test]
    fn what_one_wrote_oneself_one_has_seen(steps in any_steps(), first in "[a-z]{1,5}", then in "[A-Z]{1,5}") {
        let mut garage = Garage::after(&steps);
        let part = with_part(&mut garage);
        let seen = garage.devices[0].record_view(part).expect("a part").seen;
        let over = |change| Command::Change { ids: vec![part], changes: vec![change], seen: Some(seen.clone()) };
        let _ = garage.command(0, over(Change::Name(first)));
        let _ = garage.command(0, over(Change::Name(then.clone())));
        prop_assert_eq!(garage.devices[0].record_view(part).expect("a part").conflicts, vec![]);
        prop_assert_eq!(garage.devices[0].name(part), then);
        let _ = garage.command(0, over(Change::Struck(true)));
        prop_assert!(garage.devices[0].is_struck(part));
    }

    /// Struck out here, brought back there at the same time: it stands, and the two are shown to be settled.
    /// Break: in `is_struck` be content with one head that strikes.
    #[test]
    fn brought_back_meanwhile_it_stands(steps in any_steps(), first in 0_usize..2) {
        let mut garage = Garage::after(&steps);
        let part = with_part(&mut garage);
        let _ = garage.command(first, change(part, Change::Struck(false)));
        let _ = garage.command(1 - first, change(part, Change::Struck(true)));
        garage.bring_all();
        for job in &garage.devices {
            prop_assert!(!job.is_struck(part));
            let told = asfound_core::job::troubles(job).into_iter();
            prop_assert!(told.filter(|problem| problem.place.id == Some(part)).any(|problem| problem.code == Code::Conflict));
        }
    }

    /// A value that came in while a form was open is not overwritten by the form: both stand, and it is told.
    /// Break: in `Draft::over` take all heads although it was said what was seen.
    #[test]
    fn what_came_in_behind_a_form_stays(steps in any_steps(), mine in "[a-z]{1,5}", theirs in "[A-Z]{1,5}") {
        let mut garage = Garage::after(&steps);
        let part = with_part(&mut garage);
        let seen = garage.devices[0].record_view(part).expect("a part").seen;
        let _ = garage.command(1, change(part, Change::Name(theirs.clone())));
        garage.bring(1);
        let form = Command::Change { ids: vec![part], changes: vec![Change::Name(mine.clone())], seen: Some(seen) };
        let _ = garage.command(0, form);
        let conflicts = garage.devices[0].record_view(part).expect("a part").conflicts;
        prop_assert_eq!(conflicts.len(), 1);
        let mut values: Vec<Option<Change>> = conflicts[0].values.iter().map(|value| value.change.clone()).collect();
        values.sort_by_key(|change| format!("{change:?}"));
        let mut both = vec![Some(Change::Name(mine)), Some(Change::Name(theirs))];
        both.sort_by_key(|change| format!("{change:?}"));
        prop_assert_eq!(values, both);
    }

    /// Whatever two devices write at the same time, each written value is a head on both unless the one that wrote it later
    /// on that device went over it; after settling one stands.
    /// Break: in `Draft::over` answer no heads at all, so that one's own edit makes a conflict.
    #[test]
    fn one_person_alone_never_conflicts(deeds in prop::collection::vec(any_deed(), 1..30)) {
        let mut garage = Garage::new();
        for deed in &deeds {
            // Undoing a settled conflict or swapping tags is none of this.
            if let Some(command) = garage.command_of(0, deed).filter(|_| !matches!(deed, Deed::Undo(_))) {
                let _ = garage.command(0, command);
            }
        }
        let job = &garage.devices[0];
        let conflicts: Vec<_> = job.record().items().flat_map(|(_, item)| item.conflicts()).collect();
        prop_assert_eq!(conflicts, vec![]);
        prop_assert!(job.record().items().all(|(_, item)| item.fields().all(|field| item.head_entries(field).len() == 1)));
        prop_assert!(FieldName::ALL.len() > 60);
    }
}
