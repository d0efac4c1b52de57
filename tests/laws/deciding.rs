use asfound_core::job::vocabulary::{Standing, Triage};
use asfound_core::job::{Change, Command};
use asfound_core::record::Kind;
use proptest::prelude::*;

use crate::cases;
use crate::garage::{Garage, any_steps};

proptest! {
    #![proptest_config(cases(1_000))]

    /// Standing is worked out from what is recorded, and nothing else: a decision that stands or needs nobody, else a first word,
    /// else whether it is off.
    /// Break: in `choice_of` leave out that a decision which was struck out does not hold.
    #[test]
    fn standing_is_worked_out(steps in any_steps(), words in prop::collection::vec(0_usize..9, 0..4)) {
        let mut garage = Garage::after(&steps);
        for (part, number) in garage.ids(0, Kind::Part).into_iter().zip(words) {
            let change = match number {
                0 => Change::Triage(Triage::Doubtful),
                1 => Change::Off(false),
                2 => Change::Family("seal".to_owned()),
                3 => Change::SingleUse(true),
                _ => continue,
            };
            let _ = garage.command(0, Command::Change { ids: vec![part], changes: vec![change], seen: None });
        }
        for choice in garage.ids(0, Kind::Choice).into_iter().step_by(2) {
            let strike = Command::Change { ids: vec![choice], changes: vec![Change::Struck(true)], seen: None };
            let _ = garage.command(0, strike);
        }
        let job = &garage.devices[0];
        for part in job.ids(Kind::Part) {
            let values = job.record_view(part).expect("a part").values;
            let choice = values.chosen.and_then(|choice| job.record_view(choice));
            let family = values.family.as_deref().and_then(asfound_core::tables::families::family);
            let renewed = values.single_use.unwrap_or(family.is_some_and(|family| family.single_use));
            let unasked = renewed && values.cannot_be_bought != Some(true);
            let worked_out = if unasked || choice.is_some_and(|choice| choice.kind == Kind::Choice && !choice.struck) {
                Standing::Decided
            } else if values.triage.is_some() {
                Standing::Judged
            } else if values.off == Some(true) {
                Standing::Off
            } else {
                Standing::On
            };
            prop_assert_eq!(job.standing(part), worked_out);
            let query = asfound_core::job::PartsQuery { standing: Some(worked_out), struck: job.is_struck(part), ..Default::default() };
            prop_assert!(job.parts_found(&query).contains(&part));
        }
    }

    /// A decision keeps the figures it was made at: what is quoted or worth otherwise later does not change it, and the sum
    /// over all parts is the sum of their decisions.
    /// Break: in `choose` leave `Change::Cash` out.
    #[test]
    fn a_decision_keeps_its_figures(steps in any_steps(), cash in 0_i64..100_000, later in 0_i64..100_000) {
        use asfound_core::job::vocabulary::Route;
        use asfound_core::quantity::{Currency, Money};
        let mut garage = Garage::after(&steps);
        let (part, quote, choice) = (garage.fresh(), garage.fresh(), garage.fresh());
        let before = garage.devices[0].sums(&garage.ids(0, Kind::Part));
        let _ = garage.command(0, Command::Create { id: part, kind: Kind::Part, changes: vec![] });
        let money = |minor| Change::Cash(Money::from_minor(minor, Currency::GBP));
        let changes = vec![Change::Of(part), Change::Route(Route::Buy), money(cash)];
        let _ = garage.command(0, Command::Create { id: quote, kind: Kind::Quote, changes });
        let _ = garage.command(0, Command::Choose { id: choice, quote, part: None, who: Some("Ada".to_owned()) });
        let _ = garage.command(0, Command::Change { ids: vec![quote], changes: vec![money(later)], seen: None });
        let job = &garage.devices[0];
        let values = job.record_view(choice).expect("decided").values;
        prop_assert_eq!(values.cash, Some(Money::from_minor(cash, Currency::GBP)));
        prop_assert_eq!(values.expected_then, Some(f64::from(u32::try_from(cash).expect("small"))));
        prop_assert_eq!((values.who.as_deref(), values.quote), (Some("Ada"), Some(quote)));
        let sum = |sums: &asfound_core::job::Sums| sums.cash.iter().map(|money| money.minor).sum::<i64>();
        let after = job.sums(&garage.ids(0, Kind::Part));
        prop_assert_eq!(sum(&after), sum(&before) + cash);
        prop_assert_eq!(after.decided, before.decided + 1);
    }
}
