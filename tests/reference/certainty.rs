//! Guesses, chance and what finding out is worth, against rows from outside that the shipped formulas cover.

use asfound_core::costing::{Drawn, Stream, ThreePoint, beta_below};

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
            near(drawn.at(share), expected, 1e-5 * (most - least));
        }
        for (share, expected) in [0.05, 0.25, 0.7].into_iter().zip(row.below) {
            near(guess.below(least + (most - least) * share), expected, 1e-13);
        }
    }
}

/// What is drawn is close to what the distribution says, at all shares and for all forms: less than a hundred-thousandth of
/// the range.
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
    assert!(worst < 1e-5, "{worst:e}");
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
