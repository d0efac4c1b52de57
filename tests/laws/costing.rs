use asfound_core::costing::{
    Beyond, Cost, Dial, Figures, Flip, Input, Setting, Spread, Terms, break_even, cheapest, costs, flips, open_with,
    ranges,
};
use asfound_core::job::vocabulary::Route;
use asfound_core::record::Id;
use proptest::prelude::*;

use crate::cases;

/// Money, hours, chances as people enter them: whole minor units, minutes and hundredths of a percent.
fn any_figures() -> impl Strategy<Value = Figures> {
    let money = || prop_oneof![2 => Just(0_u32), 1 => 0_u32..40_000];
    let prices = (0_u32..500_000, money(), money(), money(), money());
    let hours = (0_u32..6_000, 0_u32..2_000, any::<bool>());
    let chances = (prop_oneof![2 => 0_u32..10_000, 1 => Just(0_u32), 1 => Just(10_000_u32)], 0_u32..=10_000);
    let life = prop::option::of(1_u32..400);
    (prices, hours, chances, life, prop::bool::weighted(0.8)).prop_map(|(prices, hours, chances, life, allowed)| {
        let share = |parts: u32| f64::from(parts) / 10_000.0;
        Figures {
            allowed,
            cash: f64::from(prices.0),
            freight: f64::from(prices.1),
            consumables: f64::from(prices.2),
            surcharge: f64::from(prices.3),
            shared: f64::from(prices.4),
            withheld: share(chances.1),
            own_time: f64::from(hours.0),
            strip_again: f64::from(hours.1),
            fails_at_bench: hours.2,
            chance: share(chances.0),
            life: life.map(f64::from),
            ..Figures::bare(Id::from_bytes([0; 16]), Route::Buy)
        }
    })
}

pub(crate) fn any_setting() -> impl Strategy<Value = Setting> {
    let named = prop::collection::vec(prop::option::weighted(0.3, 0_usize..6), 6);
    let terms = (0_u32..10_000, prop_oneof![Just(0_u32), 1_u32..2_000], 1_u32..40);
    (prop::collection::vec(any_figures(), 1..6), named, terms).prop_map(|(mut quotes, named, terms)| {
        let count = quotes.len();
        for ((quote, number), named) in quotes.iter_mut().zip(1_u8..).zip(named) {
            quote.id = id(number);
            quote.fallback = named.filter(|at| *at < count).and_then(|at| Some(id(u8::try_from(at + 1).ok()?)));
        }
        let terms = Terms {
            hour_value: f64::from(terms.0),
            interest: f64::from(terms.1) / 10_000.0,
            years: f64::from(terms.2),
        };
        Setting { quotes, terms }
    })
}

pub(crate) fn id(number: u8) -> Id {
    Id::from_bytes([number; 16])
}

pub(crate) fn presents(setting: &Setting) -> Vec<f64> {
    costs(&setting.quotes, &setting.terms).iter().map(Cost::present).collect()
}

fn best(setting: &Setting) -> Option<Id> {
    cheapest(&setting.quotes, &costs(&setting.quotes, &setting.terms)).map(|at| setting.quotes[at].id)
}

/// Room for rounding: a share of the amount, and a hundred-thousandth of a minor unit.
pub(crate) fn slack(amount: f64) -> f64 {
    amount.abs() * 1e-11 + 1e-5
}

/// What trying quotes one after the other costs, in a given order, by going through every outcome.
fn by_outcomes(order: &[Figures], terms: &Terms) -> f64 {
    let Some((first, rest)) = order.split_first() else { return 0.0 };
    let strip = if first.fails_at_bench { 0.0 } else { first.strip_again };
    let prices = first.cash + first.freight + first.consumables + first.surcharge * first.withheld;
    let saved = first.shared.min(first.cash + first.freight);
    let succeeds = prices - saved + first.own_time / 60.0 * terms.hour_value;
    let fails = succeeds + strip / 60.0 * terms.hour_value + by_outcomes(rest, terms);
    (1.0 - first.chance) * succeeds + first.chance * fails
}

fn orders(quotes: &[Figures]) -> Vec<Vec<Figures>> {
    if quotes.is_empty() {
        return vec![Vec::new()];
    }
    let firsts = (0..quotes.len()).flat_map(|at| {
        let mut rest = quotes.to_vec();
        let first = rest.remove(at);
        orders(&rest).into_iter().map(move |order| std::iter::once(first).chain(order).collect())
    });
    firsts.collect()
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// The named lines add up to the expected cost and to the present value.
    /// Break: in `Cost::direct` leave `own_time` out.
    #[test]
    fn the_lines_add_up(setting in any_setting()) {
        for cost in costs(&setting.quotes, &setting.terms) {
            let prices = cost.cash + cost.freight + cost.tax + cost.duty + cost.consumables + cost.surcharge + cost.shared;
            let sum = prices + cost.own_time + cost.risk;
            prop_assert!((sum - cost.expected()).abs() <= slack(sum));
            prop_assert!((sum + cost.renewals - cost.present()).abs() <= slack(cost.present()));
        }
    }

    /// Where no fallback is named, no order of trying the others costs less than the one that is taken, by going through
    /// every order and every outcome.
    /// Break: in `order_of_trying` sort by what trying costs alone.
    #[test]
    fn no_order_of_trying_is_cheaper(setting in any_setting()) {
        let quotes: Vec<Figures> =
            setting.quotes.iter().map(|quote| Figures { fallback: None, life: None, ..*quote }).collect();
        for (quote, cost) in quotes.iter().zip(costs(&quotes, &setting.terms)) {
            let others: Vec<Figures> = quotes.iter().filter(|other| other.id != quote.id && other.allowed).copied().collect();
            let after = orders(&others).into_iter().map(|order| {
                by_outcomes(&std::iter::once(*quote).chain(order).collect::<Vec<_>>(), &setting.terms)
            });
            let least = after.min_by(f64::total_cmp).expect("at least one order");
            prop_assert!((cost.expected() - least).abs() <= slack(least), "{} {}", cost.expected(), least);
        }
    }

    /// Fallbacks that name one another in a circle still end: every cost is a number.
    /// Break: in `chain` leave `tried` out of `is_open`.
    #[test]
    fn circles_of_fallbacks_end(setting in any_setting()) {
        prop_assert!(presents(&setting).iter().all(|present| present.is_finite()));
    }

    /// A higher price, more hours, a likelier loss of the surcharge or a higher value of an hour never make any quote
    /// cheaper.
    /// Break: in `direct` subtract the hours.
    #[test]
    fn dearer_is_never_cheaper(mut setting in any_setting(), at in any::<prop::sample::Index>(), which in 0_usize..8, more in 0.0_f64..5_000.0) {
        // A dearer one may be tried later, and so may be the dear one that it names.
        setting.quotes.iter_mut().for_each(|quote| quote.fallback = None);
        let inputs = [Input::Cash, Input::Freight, Input::Tax, Input::Consumables, Input::Surcharge, Input::OwnTime, Input::StripAgain, Input::HourValue];
        let quote = setting.quotes[at.index(setting.quotes.len())].id;
        let input = inputs[which];
        let dial = Dial { input, quote: (input != Input::HourValue).then_some(quote) };
        let dearer = setting.turned(dial, setting.read(dial).expect("there") + more);
        for (before, after) in presents(&setting).into_iter().zip(presents(&dearer)) {
            prop_assert!(after >= before - slack(before), "{:?}: {} then {}", input, before, after);
        }
    }

    /// A higher chance of failing makes no quote cheaper: what is fallen back on never costs less than nothing.
    /// Break: in `cost` weigh what follows by `1 - chance`.
    #[test]
    fn likelier_failing_is_never_cheaper(mut setting in any_setting(), at in any::<prop::sample::Index>(), more in 0.0_f64..1.0) {
        // With fallbacks named, failing may lead away from a dear one.
        setting.quotes.iter_mut().for_each(|quote| quote.fallback = None);
        let dial = Dial { input: Input::Chance, quote: Some(setting.quotes[at.index(setting.quotes.len())].id) };
        let likelier = setting.turned(dial, setting.read(dial).expect("there") + more);
        for (before, after) in presents(&setting).into_iter().zip(presents(&likelier)) {
            prop_assert!(after >= before - slack(before), "{} then {}", before, after);
        }
    }

    /// What lasts longer is never dearer, and what is kept longer never cheaper.
    /// Break: in `renewals` multiply the years instead of the lives.
    #[test]
    fn what_lasts_longer_is_never_dearer(setting in any_setting(), at in any::<prop::sample::Index>(), more in 0.0_f64..300.0) {
        let quote = setting.quotes[at.index(setting.quotes.len())];
        let lasting = Dial { input: Input::Life, quote: Some(quote.id) };
        let longer = setting.turned(lasting, setting.read(lasting).expect("there") + more);
        for (before, after) in presents(&setting).into_iter().zip(presents(&longer)) {
            prop_assert!(after <= before + slack(before));
        }
        let kept = Dial { input: Input::Years, quote: None };
        let longer = setting.turned(kept, setting.terms.years + more / 12.0);
        for (before, after) in presents(&setting).into_iter().zip(presents(&longer)) {
            prop_assert!(after >= before - slack(before));
        }
    }

    /// The order in which quotes were entered does not matter, to the last bit.
    /// Break: in `order_of_trying` leave the id out of the comparison.
    #[test]
    fn the_order_of_quotes_is_nothing((setting, shuffled) in any_setting().prop_flat_map(|mut setting| {
        // Some of them cost the same, so that the next one is not one alone.
        if setting.quotes.len() > 2 {
            setting.quotes[1] = Figures { id: setting.quotes[1].id, allowed: true, ..setting.quotes[0] };
        }
        (Just(setting.clone()), Just(setting.quotes).prop_shuffle())
    })) {
        let of = |quotes: &[Figures]| {
            let mut found: Vec<_> = quotes.iter().map(|quote| quote.id).zip(costs(quotes, &setting.terms)).collect();
            found.sort_by_key(|(id, _)| *id);
            found
        };
        prop_assert_eq!(of(&setting.quotes), of(&shuffled));
    }

    /// A flip flips: up to it the cheapest stays what it is, just beyond it is the one that was told.
    /// Break: in `Search::by_pieces` take the first crossing without trying it.
    #[test]
    fn a_flip_flips(setting in any_setting(), between in prop::collection::vec(0.0_f64..1.0, 8)) {
        let now = best(&setting);
        for flip in flips(&setting) {
            let dial = Dial { input: flip.input, quote: flip.quote };
            prop_assert_eq!(setting.read(dial), Some(flip.now));
            let beyond = just_beyond(&flip);
            prop_assert_eq!(best(&setting.turned(dial, beyond)), Some(flip.then), "beyond {:?}", flip);
            prop_assert_ne!(Some(flip.then), now);
            for share in &between {
                let at = flip.now + (flip.at - flip.now) * share;
                let there = setting.turned(dial, at);
                // At a tie either is the cheapest.
                prop_assert!(best(&there) == now || is_tie(&there, now), "{} before {:?}", at, flip);
            }
        }
    }

    /// Where no flip is told, none is found by trying values all over.
    /// Break: in `flips` leave `Beyond::Below` out.
    #[test]
    fn no_flip_is_missed(setting in any_setting(), which in 0_usize..10, at in any::<prop::sample::Index>(), shares in prop::collection::vec(0.0_f64..1.0, 16)) {
        let inputs = [Input::Cash, Input::Surcharge, Input::Withheld, Input::OwnTime, Input::StripAgain, Input::Chance, Input::Life, Input::HourValue, Input::Years, Input::Interest];
        let input = inputs[which];
        let quote = setting.quotes[at.index(setting.quotes.len())];
        let of_job = matches!(input, Input::HourValue | Input::Years | Input::Interest);
        prop_assume!(of_job || quote.allowed);
        let dial = Dial { input, quote: (!of_job).then_some(quote.id) };
        let (Some(start), Some(_)) = (setting.read(dial), best(&setting)) else { return Ok(()) };
        let found: Vec<Flip> = flips(&setting).into_iter().filter(|flip| flip.input == input && flip.quote == dial.quote).collect();
        let most = match input {
            Input::Withheld | Input::Chance => 1.0,
            Input::Interest => 0.5,
            Input::Years => 60.0,
            Input::Life => setting.terms.years * 12.0,
            _ => start * 3.0 + 100_000.0,
        };
        for share in shares {
            let to = most * share;
            let there = setting.turned(dial, to);
            if best(&there) == best(&setting) || is_tie(&there, best(&setting)) || input == Input::Life && to < 1.0 {
                continue;
            }
            let told = found.iter().any(|flip| match flip.beyond {
                Beyond::Above => to > start && flip.at <= to,
                Beyond::Below => to < start && flip.at >= to,
            });
            prop_assert!(told, "{:?} of {:?} at {} flips from {}", input, dial.quote, to, start);
        }
    }

    /// At the break-even both are worth the same.
    /// Break: in `Turning::pieces` leave the bends out.
    #[test]
    fn at_the_break_even_both_cost_the_same(mut setting in any_setting(), by_value in any::<bool>()) {
        // Where a fallback that was named comes in, costs jump, and may pass one another without ever being the same.
        setting.quotes.iter_mut().for_each(|quote| quote.fallback = None);
        prop_assume!(setting.quotes.len() > 1);
        let (one, other) = (setting.quotes[0].id, setting.quotes[1].id);
        let dial = if by_value { Dial { input: Input::HourValue, quote: None } } else { Dial { input: Input::OwnTime, quote: Some(one) } };
        let gap = |at: f64| {
            let found = presents(&setting.turned(dial, at));
            (found[0] - found[1], found[0].abs() + found[1].abs())
        };
        if let Some(at) = break_even(&setting, dial, one, other) {
            let (gap, size) = gap(at);
            prop_assert!(at >= 0.0 && gap.abs() <= size * 1e-9 + 1e-4, "{} at {}", gap, at);
        } else {
            let signs: Vec<bool> = (0..400).map(|step| gap(f64::from(step) * 60.0)).filter(|(gap, size)| gap.abs() > size * 1e-9 + 1e-4).map(|(gap, _)| gap > 0.0).collect();
            prop_assert!(signs.windows(2).all(|pair| pair[0] == pair[1]));
        }
    }

    /// What is sure has no range; a range holds the figure, and grows with what is unsure.
    /// Break: in `ranges` let one end overwrite the other.
    #[test]
    fn a_range_holds_what_it_is_of(setting in any_setting(), at in any::<prop::sample::Index>(), over in 1.0_f64..2.0) {
        prop_assert!(ranges(&setting, &[]).iter().zip(presents(&setting)).all(|((low, high), now)| *low == now && *high == now));
        let quote = setting.quotes[at.index(setting.quotes.len())];
        let spread = |input, now: f64| Spread { dial: Dial { input, quote: Some(quote.id) }, least: now / over, most: now * over };
        let one = vec![spread(Input::Cash, quote.cash)];
        let two = vec![one[0], spread(Input::OwnTime, quote.own_time)];
        let ends = ranges(&setting, &one).into_iter().zip(ranges(&setting, &two)).zip(presents(&setting));
        for (((low, high), (lower, higher)), now) in ends {
            prop_assert!(low <= now && now <= high);
            prop_assert!(lower <= low + slack(low) && higher >= high - slack(high));
        }
    }

    /// The order is open only with a quote that does come out cheaper when all that is unsure turns against the cheapest.
    /// Break: in `open_with` compare the squares with the difference.
    #[test]
    fn an_open_order_can_turn(setting in any_setting(), over in 1.0_f64..3.0) {
        let found = costs(&setting.quotes, &setting.terms);
        let Some(at) = cheapest(&setting.quotes, &found) else { return Ok(()) };
        let spreads: Vec<Spread> = setting.quotes.iter().map(|quote| {
            let dial = Dial { input: Input::Cash, quote: Some(quote.id) };
            Spread { dial, least: quote.cash / over, most: quote.cash * over }
        }).collect();
        prop_assert!(open_with(&setting, &[], at).is_empty());
        for rival in open_with(&setting, &spreads, at) {
            let lead = |setting: &Setting| {
                let now = presents(setting);
                let rival = setting.quotes.iter().position(|quote| quote.id == rival).expect("there");
                now[rival] - now[at]
            };
            let lost: f64 = spreads.iter().flat_map(|spread| [spread.least, spread.most].map(|end| (lead(&setting.turned(spread.dial, end)) - lead(&setting)).min(0.0))).sum();
            prop_assert!(lead(&setting) + lost <= 0.0);
        }
    }
}

fn just_beyond(flip: &Flip) -> f64 {
    let size = flip.at.abs().max(if matches!(flip.input, Input::Chance | Input::Withheld | Input::Interest) {
        1e-3
    } else {
        1.0
    });
    let nudge = size * 1e-6;
    match flip.beyond {
        Beyond::Above => flip.at + nudge,
        Beyond::Below => flip.at - nudge,
    }
}

/// Whether the quote is as cheap as the cheapest, but for rounding.
fn is_tie(setting: &Setting, quote: Option<Id>) -> bool {
    let found = presents(setting);
    let allowed = setting.quotes.iter().zip(&found).filter(|(quote, _)| quote.allowed);
    let least = allowed.map(|(_, present)| *present).fold(f64::INFINITY, f64::min);
    let mine = setting.quotes.iter().zip(&found).find(|(one, _)| Some(one.id) == quote);
    mine.is_some_and(|(_, present)| present - least <= slack(least) * 10.0)
}
