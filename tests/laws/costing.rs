use asfound_core::costing::{Expected, Figures, break_even_hours, expected_costs};
use asfound_core::quantity::{Chance, Currency, Minutes, Money};
use asfound_core::record::Id;
use proptest::prelude::*;

use crate::cases;

fn any_quotes() -> impl Strategy<Value = Vec<Figures>> {
    let quote = (0_i64..500_000, 0_i64..6_000, 0_i64..=10_000, 0_i64..2_000, prop::bool::weighted(0.8));
    prop::collection::vec(quote, 1..7).prop_map(|quotes| {
        let figures = quotes.into_iter().zip(1_u8..).map(|((cash, own, chance, strip, allowed), id)| Figures {
            id: Id::from_bytes([id; 16]),
            cash,
            own_time: Minutes::new(own),
            chance: Chance(chance),
            strip_again: Minutes::new(strip),
            allowed,
        });
        figures.collect()
    })
}

fn value(minor: i64) -> Money {
    Money::from_minor(minor, Currency::GBP)
}

fn totals(quotes: &[Figures], hour: Money) -> Vec<f64> {
    expected_costs(quotes, hour).iter().map(Expected::total).collect()
}

/// The expected cost with own hours that need not be whole minutes, by the formula alone.
fn total_at(quote: &Figures, hours: f64, varied: Id, all: &[Figures], hour: f64) -> f64 {
    let minor = |whole: i64| f64::from(i32::try_from(whole).expect("small"));
    let own = |figures: &Figures| if figures.id == varied { hours } else { minor(figures.own_time.0) / 60.0 };
    let direct = |figures: &Figures| minor(figures.cash) + own(figures) * hour;
    let others = all.iter().filter(|other| other.allowed && other.id != quote.id).map(direct);
    let fallback = others.min_by(f64::total_cmp).unwrap_or(0.0);
    direct(quote) + quote.chance.share() * (fallback + minor(quote.strip_again.0) / 60.0 * hour)
}

const SLACK: f64 = 1e-6;

proptest! {
    #![proptest_config(cases(2_000))]

    /// The named lines add up to the expected cost, which is what the formula says when it is worked out otherwise.
    /// Break: in `Expected::total` leave `own_time` out.
    #[test]
    fn the_lines_add_up_to_the_formula(quotes in any_quotes(), hour in 0_i64..10_000) {
        for (quote, cost) in quotes.iter().zip(expected_costs(&quotes, value(hour))) {
            prop_assert!((cost.cash + cost.own_time + cost.risk - cost.total()).abs() < SLACK);
            let hours = f64::from(i32::try_from(quote.own_time.0).expect("small")) / 60.0;
            let formula = total_at(quote, hours, quote.id, &quotes, f64::from(i32::try_from(hour).expect("small")));
            prop_assert!((cost.total() - formula).abs() < SLACK, "{} {}", cost.total(), formula);
        }
    }

    /// A higher price, more hours or a higher value of an hour never make any quote cheaper.
    /// Break: in `direct` subtract the hours.
    #[test]
    fn dearer_is_never_cheaper(quotes in any_quotes(), at in any::<prop::sample::Index>(), more in 1_i64..90_000, which in 0_u8..4) {
        let hour = value(2_000);
        let before = totals(&quotes, hour);
        let mut dearer = quotes.clone();
        let quote = &mut dearer[at.index(quotes.len())];
        let mut hour_after = hour;
        match which {
            0 => quote.cash += more,
            1 => quote.own_time.0 += more % 5_000,
            2 => quote.strip_again.0 += more % 5_000,
            _ => hour_after = value(hour.minor + more % 5_000),
        }
        for (before, after) in before.into_iter().zip(totals(&dearer, hour_after)) {
            prop_assert!(after >= before - SLACK);
        }
    }

    /// A higher chance of failing is never cheaper while falling back costs anything, and touches no other quote.
    /// Break: in `expected` weigh what follows by `1 - chance`.
    #[test]
    fn likelier_failing_is_never_cheaper(quotes in any_quotes(), at in any::<prop::sample::Index>(), more in 1_i64..10_000) {
        let at = at.index(quotes.len());
        let before = totals(&quotes, value(2_000));
        let mut likelier = quotes.clone();
        likelier[at].chance = Chance((likelier[at].chance.0 + more).min(10_000));
        for (number, (before, after)) in before.into_iter().zip(totals(&likelier, value(2_000))).enumerate() {
            let holds = if number == at { after >= before - SLACK } else { after.total_cmp(&before).is_eq() };
            prop_assert!(holds, "quote {}: {} then {}", number, before, after);
        }
    }

    /// The order in which quotes were entered does not matter, to the last bit.
    /// Break: in `fallback` leave the id out of the comparison.
    #[test]
    fn the_order_of_quotes_is_nothing((quotes, other) in any_quotes().prop_flat_map(|mut quotes| {
        // Some of them cost the same, so that the cheapest other is not one alone.
        if quotes.len() > 2 {
            quotes[1] = Figures { id: quotes[1].id, allowed: true, ..quotes[0] };
        }
        (Just(quotes.clone()), Just(quotes).prop_shuffle())
    })) {
        let of = |quotes: &[Figures]| {
            let mut costs: Vec<_> = quotes.iter().map(|quote| quote.id).zip(expected_costs(quotes, value(2_000))).collect();
            costs.sort_by_key(|(id, _)| *id);
            costs
        };
        prop_assert_eq!(of(&quotes), of(&other));
    }

    /// At the break-even both cost the same; where the lines cross, the one that was cheaper below is dearer above, the
    /// bend where the other falls back on the varied quote included. Where there is none, a scan finds none either.
    /// Break: in `break_even_hours` leave the stretch on which the other falls back on the quote out.
    #[test]
    fn the_order_flips_at_the_break_even(mut quotes in any_quotes(), hour in 1_i64..10_000) {
        prop_assume!(quotes.len() > 1);
        quotes[0].allowed = true;
        let (quote, against) = (quotes[0], quotes[1]);
        let price = f64::from(i32::try_from(hour).expect("small"));
        let gap = |hours: f64| {
            total_at(&quote, hours, quote.id, &quotes, price) - total_at(&against, hours, quote.id, &quotes, price)
        };
        match break_even_hours(&quote, &against, &quotes, value(hour)) {
            Some(hours) => {
                prop_assert!(hours >= 0.0 && hours.is_finite());
                prop_assert!(gap(hours).abs() < 1e-3, "gap {} at {}", gap(hours), hours);
                // Own hours make the quote dearer at least as fast as the other, so it is cheaper below and dearer above.
                prop_assert!(gap((hours - 0.01).max(0.0)) <= 1e-3);
                prop_assert!(gap(hours + 0.01) >= -1e-3);
            }
            None => {
                let signs: Vec<bool> = (0..2_000).map(|tenth| gap(f64::from(tenth) * 5.0) > 1e-3).collect();
                prop_assert!(signs.iter().all(|sign| *sign == signs[0]), "crosses at {:?}", signs.iter().position(|sign| *sign != signs[0]));
            }
        }
    }
}
