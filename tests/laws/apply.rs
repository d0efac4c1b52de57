use asfound_core::job::{Change, Command, Sent, apply};
use asfound_core::problem::Severity;
use asfound_core::record::{Id, Kind};
use proptest::prelude::*;

use crate::cases;
use crate::garage::{Garage, any_deed, any_steps, context};

proptest! {
    #![proptest_config(cases(1_000))]

    /// A command sent again, after others and on whatever device has seen it, is known and not done twice.
    /// Break: in `apply` leave out the op that says the command was done.
    #[test]
    fn a_command_sent_again_does_nothing(steps in any_steps(), deed in any_deed(), more in any_steps()) {
        let mut garage = Garage::after(&steps);
        let Some(command) = garage.command_of(0, &deed) else { return Ok(()) };
        let sent = Sent { id: Id::from_bytes([250; 16]), command };
        let applied = apply(&garage.devices[0], &sent, &context(0));
        prop_assume!(!applied.entries.is_empty());
        garage.devices[0].absorb(applied.entries);
        for step in &more {
            garage.step(step);
        }
        garage.bring_all();
        for device in 0..2 {
            let again = apply(&garage.devices[device], &sent, &context(device));
            prop_assert!(again.again && again.entries.is_empty() && again.problems.is_empty());
        }
    }

    /// All of a list of commands, or none: one that is refused leaves nothing of the others.
    /// Break: in `apply` go on although `has_error`.
    #[test]
    fn all_or_none(steps in any_steps(), deeds in prop::collection::vec(any_deed(), 1..5), at in any::<prop::sample::Index>()) {
        let mut garage = Garage::after(&steps);
        let mut commands: Vec<Command> = deeds.iter().filter_map(|deed| garage.command_of(0, deed)).collect();
        let nobody = Id::from_bytes([251; 16]);
        let refused = Command::Change { ids: vec![nobody], changes: vec![Change::Name("x".to_owned())], seen: None };
        commands.insert(at.index(commands.len() + 1), refused);
        let before = garage.devices[0].record().clone();
        let applied = garage.command(0, Command::All { commands });
        prop_assert!(applied.entries.is_empty());
        prop_assert!(applied.problems.iter().any(|problem| problem.severity == Severity::Error));
        prop_assert_eq!(garage.devices[0].record(), &before);
    }

    /// A command without an error writes exactly one entry, the next of its replica.
    /// Break: in `apply` number the entry by `len` of the record.
    #[test]
    fn entries_are_numbered_without_a_gap(steps in any_steps()) {
        let mut garage = Garage::after(&steps);
        garage.bring_all();
        prop_assert_eq!(garage.devices[0].record().missing(), vec![]);
        let twice = garage.devices[0].record().faults();
        prop_assert_eq!(twice, vec![]);
    }

    /// A new part is off the vehicle with a tag and, unless it came out of a box, after all others in the order of removal.
    /// Break: in `next_removal` begin at nought every time.
    #[test]
    fn a_new_part_comes_last(steps in any_steps(), boxed in any::<bool>()) {
        let mut garage = Garage::after(&steps);
        let id = garage.fresh();
        let orders = |garage: &Garage| -> Vec<i64> {
            let job = &garage.devices[0];
            job.ids(Kind::Part).filter_map(|part| job.record_view(part)?.values.order).collect()
        };
        let before = orders(&garage);
        let changes = if boxed { vec![Change::FromBoxes(true)] } else { vec![] };
        let _ = garage.command(0, Command::Create { id, kind: Kind::Part, changes });
        let values = garage.devices[0].record_view(id).expect("it was made").values;
        prop_assert!(values.tag.is_some() && values.off == Some(true));
        prop_assert_eq!(values.order.is_none(), boxed);
        prop_assert!(values.order.is_none_or(|order| before.iter().all(|other| *other < order)));
    }
}
