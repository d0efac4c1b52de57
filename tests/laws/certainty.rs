use asfound_core::costing::{
    Dial, Figures, Guess, Input, PricedTest, Setting, Simulation, Spread, ThreePoint, exact_chances, exact_means,
    guesses, simulate, tested, worth_of_knowing,
};
use proptest::prelude::*;

use crate::cases;
use crate::costing::{any_setting, presents, slack};

/// Of each figure that may carry a word: whether it is unsure, and how far it may be off below and above.
type Words = Vec<[Option<(f64, f64)>; 4]>;

const UNSURE: [Input; 4] = [Input::Cash, Input::OwnTime, Input::Chance, Input::Life];

fn any_words() -> impl Strategy<Value = Words> {
    let word =
        || prop::option::weighted(0.4, (prop_oneof![Just(1.0), 0.2_f64..1.0], prop_oneof![Just(1.0), 1.0_f64..3.0]));
    prop::collection::vec([word(), word(), word(), word()], 6)
}

fn unsure(setting: &Setting, words: &Words) -> Vec<Guess> {
    let all = setting.quotes.iter().zip(words).flat_map(|(quote, words)| {
        UNSURE.into_iter().zip(words).filter_map(|(input, word)| {
            let dial = Dial { input, quote: Some(quote.id) };
            let (under, over) = (*word)?;
            let now = setting.read(dial).filter(|_| input != Input::Life || quote.life.is_some())?;
            let most = if input == Input::Chance { 1.0 } else { f64::INFINITY };
            let spread = Spread { dial, least: now * under, most: (now * over).min(most) };
            (spread.least < spread.most).then_some(spread)
        })
    });
    guesses(setting, &all.collect::<Vec<_>>())
}

/// Quotes that do not wear out and name no fallback.
fn plain(setting: &mut Setting) {
    setting.quotes.iter_mut().for_each(|quote| *quote = Figures { fallback: None, life: None, ..*quote });
}

fn largest(found: &Simulation) -> f64 {
    found.quotes.iter().map(|quote| quote.mean.abs() + quote.deviation).fold(1.0, f64::max)
}

proptest! {
    #![proptest_config(cases(1_000))]

    /// One quote is the cheapest in each draw: the chances add up to 1. No regret is below nothing, quantiles stand in
    /// order, and knowing everything saves what the least regret is.
    /// Break: in `simulate` divide the wins by one more than the draws.
    #[test]
    fn the_chances_add_up_to_one(setting in any_setting(), words in any_words(), seed in any::<u64>()) {
        let found = simulate(&setting, &unsure(&setting, &words), 100, seed);
        prop_assert_eq!(found.quotes.len(), setting.quotes.iter().filter(|quote| quote.allowed).count());
        let sum: f64 = found.quotes.iter().map(|quote| quote.cheapest).sum();
        prop_assert!(found.quotes.is_empty() || (sum - 1.0).abs() < 1e-12, "{}", sum);
        for quote in &found.quotes {
            prop_assert!(quote.regret >= found.worth_of_all && found.worth_of_all >= 0.0);
            prop_assert!(quote.p10 <= quote.p50 && quote.p50 <= quote.p90);
            // Whoever is always the cheapest regrets nothing.
            prop_assert!(quote.cheapest < 1.0 || quote.regret == 0.0);
        }
    }

    /// The same seed gives the same answer to the last bit; another one another.
    /// Break: in `Stream::of` begin with 0 instead of the seed.
    #[test]
    fn the_same_seed_gives_the_same_answer(setting in any_setting(), words in any_words(), seed in any::<u64>()) {
        let guesses = unsure(&setting, &words);
        let found = simulate(&setting, &guesses, 50, seed);
        prop_assert_eq!(&found, &simulate(&setting, &guesses, 50, seed));
        if found.quotes.iter().any(|quote| quote.deviation > 1.0) {
            prop_assert_ne!(found, simulate(&setting, &guesses, 50, seed ^ 1));
        }
    }

    /// The order in which quotes and guesses are given is nothing, to the last bit.
    /// Break: in `Model::streams` seed each row by its place instead of its figure, and in `Model::new` leave the sort of
    /// the guesses out.
    #[test]
    fn the_order_of_quotes_is_nothing(
        (setting, guesses, quotes, shuffled) in (any_setting(), any_words()).prop_flat_map(|(setting, words)| {
            let guesses = unsure(&setting, &words);
            (Just(setting.clone()), Just(guesses.clone()), Just(setting.quotes).prop_shuffle(), Just(guesses).prop_shuffle())
        }),
        seed in any::<u64>(),
    ) {
        let other = Setting { quotes, ..setting.clone() };
        prop_assert_eq!(simulate(&setting, &guesses, 50, seed), simulate(&other, &shuffled, 50, seed));
        prop_assert_eq!(exact_means(&setting, &guesses), exact_means(&other, &shuffled));
    }

    /// Where nothing has a range, the cheapest is the cheapest for certain, nothing is regretted, and every quote is worth
    /// what costing says, to the last bit: also at figures that were turned.
    /// Break: in `Valuer::presents` leave what comes again out.
    #[test]
    fn without_ranges_it_is_what_costing_says(setting in any_setting()) {
        let sure: Vec<Guess> = setting.quotes.iter().map(|quote| {
            let dial = Dial { input: Input::Cash, quote: Some(quote.id) };
            Guess { dial, range: ThreePoint::sure(quote.cash) }
        }).collect();
        let found = simulate(&setting, &sure, 3, 1);
        let expected: Vec<(_, f64)> = setting.quotes.iter().zip(presents(&setting)).filter(|(quote, _)| quote.allowed).map(|(quote, present)| (quote.id, present)).collect();
        let told: Vec<(_, f64)> = found.quotes.iter().map(|quote| (quote.id, quote.mean)).collect();
        prop_assert_eq!(told, expected);
        prop_assert_eq!(found.worth_of_all, 0.0);
        let least = found.quotes.iter().map(|quote| quote.mean).fold(f64::INFINITY, f64::min);
        for quote in &found.quotes {
            prop_assert!(quote.cheapest == 0.0 || (quote.cheapest == 1.0 && quote.regret == 0.0 && quote.mean == least));
            prop_assert_eq!((quote.p10, quote.p90, quote.deviation), (quote.mean, quote.mean, 0.0));
        }
        for (exact, quote) in exact_means(&setting, &sure).into_iter().zip(&found.quotes) {
            prop_assert!(exact.is_none() || exact == Some(quote.mean));
        }
    }

    /// Raising a price never raises the chance that its quote is the cheapest: the draws are the same.
    /// Break: in `Model::streams` mix the bits of the likeliest value into the seed.
    #[test]
    fn dearer_is_never_likelier_the_cheapest(mut setting in any_setting(), words in any_words(), at in any::<prop::sample::Index>(), more in 1.0_f64..200_000.0, seed in any::<u64>()) {
        // With lives or named fallbacks, what falls back on it may become dearer than itself does.
        plain(&mut setting);
        let dial = Dial { input: Input::Cash, quote: Some(setting.quotes[at.index(setting.quotes.len())].id) };
        let dearer = setting.turned(dial, setting.read(dial).expect("there") + more);
        let [before, after] = [&setting, &dearer].map(|setting| simulate(setting, &unsure(setting, &words), 100, seed));
        for (before, after) in before.quotes.iter().zip(&after.quotes).filter(|(before, _)| Some(before.id) == dial.quote) {
            prop_assert!(after.cheapest <= before.cheapest, "{} then {}", before.cheapest, after.cheapest);
        }
    }

    /// A test that costs more is worth as much and leaves less; none is worth less than nothing, nor more than one that is
    /// always right; a better one is worth no less.
    /// Break: in `tested` leave the hours out of what it costs; in `posterior` answer the chances as they were.
    #[test]
    fn a_dearer_test_leaves_less(mut setting in any_setting(), words in any_words(), right in [0.5_f64..1.0, 0.5_f64..1.0], better in [0.0_f64..1.0, 0.0_f64..1.0], price in 0.0_f64..9_000.0, hours in 1.0_f64..900.0) {
        // With more quotes than two the order of falling back changes what is weighed.
        setting.quotes.truncate(2);
        plain(&mut setting);
        let guesses: Vec<Guess> = unsure(&setting, &words).into_iter().filter(|guess| guess.dial.input == Input::Chance).collect();
        let test = PricedTest { quote: setting.quotes[0].id, sensitivity: right[0], specificity: right[1], price, own_time: 0.0, chance: None };
        let Some(found) = tested(&setting, &guesses, &test, 512, 7) else { return Ok(()) };
        let of = |test: PricedTest| tested(&setting, &guesses, &test, 512, 7).expect("there");
        let dearer = of(PricedTest { own_time: hours, ..test });
        prop_assert_eq!(dearer.worth, found.worth);
        prop_assert!(dearer.gain() <= found.gain() && (setting.terms.hour_value == 0.0 || dearer.gain() < found.gain()));
        let perfect = of(PricedTest { sensitivity: 1.0, specificity: 1.0, ..test });
        let room = slack(presents(&setting).into_iter().fold(1.0, f64::max)) * 10.0;
        prop_assert!(found.worth >= 0.0 && found.worth <= perfect.worth + room, "{} of {}", found.worth, perfect.worth);
        let [sensitivity, specificity] = [0, 1].map(|at| right[at] + (1.0 - right[at]) * better[at]);
        let surer = of(PricedTest { sensitivity, specificity, ..test });
        prop_assert!(surer.worth >= found.worth - room);
        let useless = of(PricedTest { sensitivity: right[0], specificity: 1.0 - right[0], ..test });
        prop_assert!(useless.worth <= room);
        prop_assert!(found.chance_if_fails >= found.chance - 1e-12 && found.chance_if_not <= found.chance + 1e-12);
        let tells = right[0] + right[1] > 1.01 && (1e-6..=1.0 - 1e-6).contains(&found.chance);
        prop_assert!(!tells || (found.chance_if_fails > found.chance && found.chance_if_not < found.chance));
    }
}

proptest! {
    #![proptest_config(cases(150))]

    /// Knowing one figure is never worth less than nothing, nor more than knowing all of them, but for the chance of drawing;
    /// and what cannot change the choice is worth exactly nothing. (150 cases: each works out tens of thousands of costs.)
    /// Break: in `DecisionTable::worth_of_certainty` take the most instead of the least.
    #[test]
    fn knowing_one_is_worth_no_more_than_knowing_all(mut setting in any_setting(), words in any_words(), seed in any::<u64>()) {
        setting.quotes.truncate(3);
        let mut guesses = unsure(&setting, &words);
        guesses.truncate(4);
        let draws = 1_000;
        let found = simulate(&setting, &guesses, draws, seed);
        let spread = found.quotes.iter().map(|quote| quote.deviation).fold(0.0, f64::max);
        let room = spread * 5.0 * (1.0 / f64::from(draws).sqrt() + 1.0 / 512_f64.sqrt()) + slack(largest(&found));
        for known in worth_of_knowing(&setting, &guesses, f64::INFINITY, 512, seed) {
            prop_assert!(known.worth >= 0.0 && known.worth <= found.worth_of_all + room, "{} of {}", known.worth, found.worth_of_all);
        }
        let kept = worth_of_knowing(&setting, &guesses, found.worth_of_all, 512, seed);
        prop_assert!(kept.iter().all(|known| known.worth <= found.worth_of_all));
        // Own hours that are worth nothing change nothing, whatever else is unsure.
        setting.terms.hour_value = 0.0;
        let known = worth_of_knowing(&setting, &guesses, f64::INFINITY, 512, seed);
        prop_assert!(known.iter().filter(|known| known.guess.dial.input == Input::OwnTime).all(|known| known.worth == 0.0));
    }

    /// Where there is a formula, it and the simulation agree within 4 standard errors, in the means and in the chances.
    /// (150 cases of 4,000 draws.)
    /// Break: in `exact` leave `keep_order` out; in `ThreePoint::mean` weigh the likeliest by 3 of 5.
    #[test]
    fn formula_and_simulation_agree(setting in any_setting(), words in any_words(), seed in any::<u64>()) {
        let draws = 4_000_u32;
        let guesses = unsure(&setting, &words);
        let found = simulate(&setting, &guesses, draws, seed);
        let error = 1.0 / f64::from(draws).sqrt();
        for (exact, quote) in exact_means(&setting, &guesses).into_iter().zip(&found.quotes) {
            let Some(exact) = exact else { continue };
            let room = 4.0 * quote.deviation * error + slack(exact);
            prop_assert!((exact - quote.mean).abs() <= room, "{} is not {} ± {}", exact, quote.mean, room);
        }
        let mut two = setting;
        two.quotes.retain(|quote| quote.allowed);
        two.quotes.truncate(2);
        plain(&mut two);
        two.quotes.iter_mut().for_each(|quote| quote.chance = 0.0);
        let mut guesses = unsure(&two, &words);
        guesses.retain(|guess| guess.dial.input == Input::Cash);
        let found = simulate(&two, &guesses, draws, seed);
        if let Some(exact) = exact_chances(&two, &guesses) {
            for (exact, quote) in exact.into_iter().zip(&found.quotes) {
                let room = 4.0 * (exact * (1.0 - exact)).sqrt() * error + 1.0 / f64::from(draws);
                prop_assert!((exact - quote.cheapest).abs() <= room, "{} is not {}", exact, quote.cheapest);
            }
        }
    }
}
