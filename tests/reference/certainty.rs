//! Guesses, chance and what finding out is worth, against rows from outside that the shipped formulas cover.

use asfound_core::beta::beta_below;
use asfound_core::costing::{
    DecisionTable, Dial, Drawn, Figures, Guess, Input, PricedTest, Setting, Stream, Terms, ThreePoint, exact_chances,
    exact_means, simulate, tested, worth_of_knowing,
};
use asfound_core::job::vocabulary::Route;
use asfound_core::record::Id;

fn near(one: f64, other: f64, tolerance: f64) {
    assert!((one - other).abs() <= tolerance, "{one} is not {other}");
}

/// A guess with its mean, its deviation and what is below shares of it, by scipy 1.17.1, `scipy.stats.beta` with a = 1 + 4
/// (likely − least) ÷ (most − least), b = 6 − a: `mean`, `std`, `ppf` at .01, .1, .5, .9, .99, `cdf` at 5, 25 and 70 of 100
/// of the way.
struct Row {
    guess: (f64, f64, f64),
    mean: f64,
    deviation: f64,
    quantiles: [f64; 5],
    below: [f64; 3],
}

const SCIPY: [Row; 5] = [
    Row {
        guess: (0.0, 1.0, 4.0),
        mean: 1.333_333_333_333_333_3,
        deviation: 0.712_696_645_099_798_4,
        quantiles: [
            0.130_728_448_802_411_52,
            0.448_939_834_183_434_2,
            1.255_240_681_822_789_7,
            2.335_561_498_478_116,
            3.111_710_866_460_007_3,
        ],
        below: [0.022_592_499_999_999_995, 0.367_187_5, 0.969_22],
    },
    Row {
        guess: (10.0, 20.0, 60.0),
        mean: 25.0,
        deviation: 8.660_254_037_844_387,
        quantiles: [
            11.156_726_309_613_235,
            14.495_106_522_962_082,
            23.833_612_969_625_946,
            37.266_702_521_679_09,
            47.427_966_431_481_74,
        ],
        below: [0.037_852_340_849_909_2, 0.442_733_093_116_540_3, 0.979_839_687_293_459_9],
    },
    Row {
        guess: (2.0, 2.0, 8.0),
        mean: 3.0,
        deviation: 0.845_154_254_728_516_6,
        quantiles: [
            2.012_048_290_031_445,
            2.125_109_825_834_139_4,
            2.776_696_620_223_255_3,
            4.214_255_933_118_840_5,
            5.611_356_976_679_016,
        ],
        below: [0.226_219_062_499_999_87, 0.762_695_312_5, 0.997_57],
    },
    Row {
        guess: (1.0, 5.0, 5.0),
        mean: 4.333_333_333_333_334,
        deviation: 0.563_436_169_819_011,
        quantiles: [
            2.592_428_682_213_989_3,
            3.523_829_377_920_773,
            4.482_202_253_184_496_5,
            4.916_593_449_443_907,
            4.991_967_806_645_704,
        ],
        below: [3.125e-7, 0.000_976_562_5, 0.168_07],
    },
    Row {
        guess: (0.0, 5.0, 10.0),
        mean: 5.0,
        deviation: 1.889_822_365_046_136,
        quantiles: [
            1.056_398_435_507_743_4,
            2.466_364_532_884_665_7,
            5.0,
            7.533_635_467_115_333,
            8.943_601_564_492_257,
        ],
        below: [0.001_158_125, 0.103_515_625, 0.836_92],
    },
];

/// Guesses of three points beside scipy 1.17.1; and what is drawn from them.
#[test]
fn guesses_of_three_points() {
    for row in &SCIPY {
        let (least, likely, most) = row.guess;
        let guess = ThreePoint::new(least, likely, most);
        near(guess.mean(), row.mean, 1e-12);
        near(guess.deviation(), row.deviation, 1e-12);
        let drawn = Drawn::new(guess);
        for (share, expected) in [0.01, 0.1, 0.5, 0.9, 0.99].into_iter().zip(row.quantiles) {
            near(guess.quantile(share), expected, 1e-11 * (most - least));
            near(drawn.at(share), expected, 1e-6 * (most - least));
        }
        for (share, expected) in [0.05, 0.25, 0.7].into_iter().zip(row.below) {
            near(guess.below(least + (most - least) * share), expected, 1e-13);
        }
    }
}

/// What is drawn is close to what the distribution says, at all shares and for all forms: less than a millionth of the range.
#[test]
fn what_is_drawn_is_close() {
    let mut worst: f64 = 0.0;
    for place in 0..=50 {
        let guess = ThreePoint::new(0.0, f64::from(place) / 50.0, 1.0);
        let drawn = Drawn::new(guess);
        for share in (1..1_000).map(|share| f64::from(share) / 1_000.0).chain([1e-9, 1e-6, 1.0 - 1e-9]) {
            worst = worst.max((drawn.at(share) - guess.quantile(share)).abs());
        }
    }
    println!("off by {worst:e} at most");
    assert!(worst < 1e-6, "{worst:e}");
}

/// Brackets of 8 in 10 as a guess: ends by scipy 1.17.1, `brentq` over `scipy.stats.beta.ppf` at .1 and .9.
#[test]
fn brackets_of_eight_in_ten() {
    let rows = [
        ((85.0, 100.0, 125.0), (72.185_225_767_939_95, 153.294_457_845_048_38)),
        ((50.0, 100.0, 200.0), (8.543_155_657_746_894, 318.886_327_198_511_2)),
        ((40.0, 50.0, 60.0), (30.265_511_495_650_394, 69.734_488_504_349_6)),
    ];
    for ((low, likely, high), (least, most)) in rows {
        let guess = ThreePoint::bracket(likely, low, high, 0.0, f64::INFINITY);
        near(guess.least(), least, 1e-8);
        near(guess.most(), most, 1e-8);
        near(guess.quantile(0.1), low, 1e-9);
        near(guess.quantile(0.9), high, 1e-9);
    }
}

/// By definition: an end that a figure cannot pass stays there, and 1 in 10 is still above the bracket.
#[test]
fn brackets_at_a_bound() {
    let low = ThreePoint::bracket(0.05, 0.0, 0.2, 0.0, 1.0);
    assert_eq!((low.least(), low.likely()), (0.0, 0.05));
    near(low.quantile(0.9), 0.2, 1e-9);
    let high = ThreePoint::bracket(0.95, 0.8, 1.0, 0.0, 1.0);
    assert_eq!((high.likely(), high.most()), (0.95, 1.0));
    near(high.quantile(0.1), 0.8, 1e-9);
    let both = ThreePoint::bracket(0.5, 0.01, 0.99, 0.0, 1.0);
    assert_eq!((both.least(), both.most()), (0.0, 1.0));
    let open_above = ThreePoint::bracket(20.0, 20.0, 30.0, 0.0, f64::INFINITY);
    assert_eq!((open_above.least(), open_above.likely()), (20.0, 20.0));
    near(open_above.quantile(0.9), 30.0, 1e-9);
    assert!(ThreePoint::bracket(20.0, 20.0, 20.0, 0.0, 100.0).is_sure());
}

/// The incomplete beta function at whole numbers is a binomial sum (NIST DLMF 8.17.5, from memory): of 5 tries that succeed 3
/// times of 10, two or more do in 1 − .7^5 − 5 × .3 × .7^4.
#[test]
fn beta_as_a_binomial_sum() {
    near(beta_below(0.3, 2.0, 4.0), 1.0 - 0.7_f64.powi(5) - 5.0 * 0.3 * 0.7_f64.powi(4), 1e-15);
}

/// `SplitMix64` from seed 1234567, as its published test values have it (from memory).
#[test]
fn split_mix() {
    let expected = [
        6_457_827_717_110_365_317,
        3_203_168_211_198_807_973,
        9_817_491_932_198_370_423,
        4_593_380_528_125_082_431,
        16_408_922_859_458_223_821,
    ];
    let stream = Stream::seeded(1_234_567);
    for (number, expected) in (0..).zip(expected) {
        assert_eq!(stream.bits(number), expected);
    }
}

fn id(number: u8) -> Id {
    Id::from_bytes([number; 16])
}

fn priced(number: u8, cash: f64) -> Figures {
    Figures { cash, ..Figures::bare(id(number), Route::Buy) }
}

fn setting(quotes: &[Figures]) -> Setting {
    Setting { quotes: quotes.to_vec(), terms: Terms { hour_value: 20.0, interest: 0.0, years: 10.0 } }
}

fn cash_of(number: u8, least: f64, likely: f64, most: f64) -> Guess {
    let dial = Dial { input: Input::Cash, quote: Some(id(number)) };
    Guess { dial, range: ThreePoint::new(least, likely, most) }
}

/// Facility size, operations-management text, supplement A, slides: with P = .6 and .4, large (200 000,
/// −180 000), small (100 000, −20 000), nothing (0, 0): 48 000, 52 000 and 0; 120 000 with perfect information, which is
/// worth 68 000 (the cells −180 000, 100 000 and −20 000 from memory; they give the expectations seen). A gain is a negative
/// cost.
#[test]
fn facility_size() {
    let costs = vec![vec![-200_000.0, 180_000.0], vec![-100_000.0, 20_000.0], vec![0.0, 0.0]];
    let table = DecisionTable { chances: vec![0.6, 0.4], costs };
    for (found, expected) in table.expected().into_iter().zip([-48_000.0, -52_000.0, 0.0]) {
        near(found, expected, 1e-9);
    }
    assert_eq!(table.best(), Some(1));
    near(table.worth_of_certainty(), 68_000.0, 1e-9);
    near(52_000.0 + table.worth_of_certainty(), 120_000.0, 1e-9);
    // By definition: a trial that is always right is worth as much, one that tells nothing is worth nothing.
    near(table.worth_of_trial(&[vec![1.0, 0.0], vec![0.0, 1.0]]), 68_000.0, 1e-9);
    near(table.worth_of_trial(&[vec![0.5, 0.5], vec![0.5, 0.5]]), 0.0, 0.0);
}

/// Managerial Decision Modeling with Spreadsheets, chapter 8: large 200, 100, −120 thousand, small 90, 50, −20, none 0. The
/// best of the best is 200 thousand (maximax); the best of the worst, which is the third state for all, is 0 (maximin).
#[test]
fn three_outcomes() {
    let costs = vec![vec![-200.0, -100.0, 120.0], vec![-90.0, -50.0, 20.0], vec![0.0; 3]];
    let sure = |state: usize| {
        let chances = (0..3).map(|at| if at == state { 1.0 } else { 0.0 }).collect();
        let table = DecisionTable { chances, costs: costs.clone() };
        table.best().map(|at| (at, table.expected()[at]))
    };
    assert_eq!(sure(0), Some((0, -200.0)));
    assert_eq!(sure(2), Some((2, 0.0)));
    // No choice is worse than another one in every state: each is the best at some chances, or second in all.
    assert!(costs[1].iter().zip(&costs[0]).any(|(small, large)| small < large));
}

/// Bayes' rule on the case of D. Eddy 1982 (from memory): 1 in 100 has it, the test says so of 80 in 100 that have it and of
/// 9.6 in 100 that do not: 7.8 in 100 of those it says so of have it. Worked by hand beside it, costs 50 with and 90 without
/// a repair that fails 2 of 10 (then 90 more), tested at .9 and .8: it says so .9 × .2 + .2 × .8 = .34 of the time; then
/// failing is at 18 of 34, and buying saves 50 + 90 × 18 ÷ 34 − 90 = 7.647; so it is worth .34 × 7.647 = 2.60.
#[test]
fn a_test_by_bayes() {
    let repair = Figures { chance: 0.2, ..priced(1, 50.0) };
    let setting = setting(&[repair, priced(2, 90.0)]);
    let eddy = PricedTest {
        quote: id(1),
        sensitivity: 0.8,
        specificity: 0.904,
        price: 2.0,
        own_time: 0.0,
        chance: Some(0.01),
    };
    near(tested(&setting, &[], &eddy, 512, 1).expect("there").chance_if_fails, 0.078, 0.000_5);
    let by_hand = PricedTest { sensitivity: 0.9, specificity: 0.8, own_time: 1.5, chance: None, ..eddy };
    let found = tested(&setting, &[], &by_hand, 512, 1).expect("there");
    near(found.says_fails, 0.34, 1e-12);
    near(found.chance_if_fails, 18.0 / 34.0, 1e-12);
    near(found.worth, 2.6, 1e-9);
    near(found.costs, 2.5, 1e-12);
    near(found.gain(), 0.1, 1e-9);
    assert_eq!((found.best_if_fails, found.best_if_not), (id(2), id(1)));
}

/// One price of 60, 90, 180 against one of 80, 100, 150: scipy 1.17.1, `quad` over `scipy.stats.beta`: the first is the
/// cheaper .597509851743 of the time; all that is worth knowing comes to 7.841171094146; the first price alone to
/// 6.675720214844, the second alone to 2.906383205190.
#[test]
fn two_unsure_prices() {
    let setting = setting(&[priced(1, 90.0), priced(2, 100.0)]);
    let guesses = [cash_of(1, 60.0, 90.0, 180.0), cash_of(2, 80.0, 100.0, 150.0)];
    let [first, second] = exact_chances(&setting, &guesses).expect("straight");
    near(first, 0.597_509_851_743, 1e-8);
    near(first + second, 1.0, 0.0);
    assert_eq!(exact_means(&setting, &guesses), [Some(100.0), Some(105.0)]);
    let draws = 100_000;
    let found = simulate(&setting, &guesses, draws, 11);
    let room = 4.0 / f64::from(draws).sqrt();
    near(found.quotes[0].cheapest, first, (first * second).sqrt() * room);
    for (quote, exact) in found.quotes.iter().zip([100.0, 105.0]) {
        near(quote.mean, exact, quote.deviation * room);
    }
    near(found.worth_of_all, 7.841_171_094_146, 20.0 * room);
    let known = worth_of_knowing(&setting, &guesses, found.worth_of_all, 512, 11);
    for (known, (input, expected)) in known.iter().zip([(id(1), 6.675_720_214_844), (id(2), 2.906_383_205_19)]) {
        assert_eq!(known.guess.dial.quote, Some(input));
        near(known.worth, expected, 0.05);
    }
}

/// One price of 60, 90, 180 against one of 100 that is sure: scipy 1.17.1, `quad`: it is above 100 by 8.779149519890 in the
/// mean, and below 100 .539094650206 of the time.
#[test]
fn one_unsure_price() {
    let setting = setting(&[priced(1, 90.0), priced(2, 100.0)]);
    let guesses = [cash_of(1, 60.0, 90.0, 180.0)];
    near(exact_chances(&setting, &guesses).expect("straight")[0], 0.539_094_650_206, 1e-11);
    let found = simulate(&setting, &guesses, 100_000, 3);
    near(found.worth_of_all, 8.779_149_519_89, 4.0 * 12.0 / 100_000_f64.sqrt());
    // The only thing that is unsure is worth what everything is worth.
    let known = worth_of_knowing(&setting, &guesses, f64::INFINITY, 512, 3);
    near(known[0].worth, 8.779_149_519_89, 0.02);
    assert_eq!((found.quotes[1].p10, found.quotes[1].mean, found.quotes[1].p90), (100.0, 100.0, 100.0));
}

/// Quantiles between what was drawn, as numpy 2.4.6 has them (`quantile`, its usual method) for what is drawn here.
#[test]
fn quantiles_of_few_draws() {
    let setting = setting(&[priced(1, 90.0)]);
    let found = simulate(&setting, &[cash_of(1, 60.0, 90.0, 180.0)], 1, 5).quotes[0];
    assert_eq!((found.p10, found.p90, found.deviation), (found.mean, found.mean, 0.0));
    // Of two values 1 in 10 is a tenth of the way from the lower to the higher.
    let found = simulate(&setting, &[cash_of(1, 60.0, 90.0, 180.0)], 2, 5).quotes[0];
    let half = found.deviation / 2.0_f64.sqrt();
    near(found.p10, found.mean - 0.8 * half, 1e-9);
    near(found.p90, found.mean + 0.8 * half, 1e-9);
}

/// Error law of simulation, textbook result: means of n draws from N(10, 3) are off by 3 ÷ √n in the root mean square: .300,
/// .150, .075, .0375 for n = 100, 400, 1600, 6400 (numpy gave .3043, .1465, .0751, .0370); here with the shipped chance, by
/// Box and Muller's rule, and with the shipped guesses, whose deviation is known.
#[test]
fn the_error_of_simulation() {
    let guess = ThreePoint::new(60.0, 90.0, 180.0);
    let drawn = Drawn::new(guess);
    let repeats = 2_000_u64;
    for (n, expected) in [(100_u32, 0.3), (400, 0.15), (1_600, 0.075), (6_400, 0.037_5)] {
        let (mut normal, mut beta) = (0.0, 0.0);
        for repeat in 0..repeats {
            let stream = Stream::seeded(repeat.wrapping_mul(0x2545_f491_4f6c_dd1d));
            let (mut sum, mut guesses) = (0.0, 0.0);
            for draw in 0..u64::from(n) {
                let (one, other) = (stream.even(2 * draw), stream.even(2 * draw + 1));
                sum += 10.0 + 3.0 * (-2.0 * one.ln()).sqrt() * (std::f64::consts::TAU * other).cos();
                guesses += drawn.at(one);
            }
            normal += (sum / f64::from(n) - 10.0).powi(2);
            beta += (guesses / f64::from(n) - guess.mean()).powi(2);
        }
        #[expect(clippy::cast_precision_loss, reason = "a small number")]
        let root = |squares: f64| (squares / repeats as f64).sqrt();
        println!("n = {n}: {} of {expected}; guesses {}", root(normal), root(beta));
        near(root(normal), expected, expected * 0.05);
        let of_guess = guess.deviation() / f64::from(n).sqrt();
        near(root(beta), of_guess, of_guess * 0.05);
    }
}
