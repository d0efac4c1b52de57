use super::guess::{Guess, Model, least};
use super::input::Setting;
use crate::record::Id;

/// What the present values of some quotes may come to, by drawing their unsure figures over and over.
#[derive(Debug, Clone, PartialEq)]
pub struct Simulation {
    /// The quotes that may be chosen, in order of id.
    pub quotes: Vec<Simulated>,
    /// What it would be worth to know every figure before choosing (the expected value of perfect information): the least
    /// regret of any quote.
    pub worth_of_all: f64,
}

/// One quote in a [`Simulation`]; money in minor units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Simulated {
    /// Which quote.
    pub id: Id,
    /// How often it was the cheapest, from 0 to 1; of equal ones the first by id was.
    pub cheapest: f64,
    /// The mean of its present value.
    pub mean: f64,
    /// The standard deviation of its present value.
    pub deviation: f64,
    /// Its present value is below this 1 time in 10.
    pub p10: f64,
    /// And this 5 times in 10.
    pub p50: f64,
    /// And this 9 times in 10.
    pub p90: f64,
    /// What choosing it costs, in the mean, beyond whatever turned out the cheapest.
    pub regret: f64,
}

/// Draws the unsure figures so many times and works out what every quote is worth each time.
///
/// In one draw every quote is worked out from the same figures, so that what two quotes share moves both (common random
/// numbers). What is drawn for a figure hangs on the seed, the quote's id and which figure it is, and on nothing else: the
/// order in which quotes are given is nothing, and a seed gives the same answer on every machine. Fallbacks follow what was
/// drawn: the next to be tried is the one that is cheapest to try at these figures.
///
/// Quantiles are those of Hyndman and Fan's definition 7 (1996). The mean is off by about deviation ÷ √draws.
///
/// ```
/// use asfound_core::costing::{simulate, Dial, Figures, Guess, Input, Setting, Terms, ThreePoint};
/// use asfound_core::job::vocabulary::Route;
/// use asfound_core::record::Id;
/// let (one, other) = (Id::from_bytes([1; 16]), Id::from_bytes([2; 16]));
/// let repair = Figures { cash: 90_00.0, ..Figures::bare(one, Route::RepairHere) };
/// let buy = Figures { cash: 100_00.0, ..Figures::bare(other, Route::Buy) };
/// let terms = Terms { hour_value: 20_00.0, interest: 0.0, years: 10.0 };
/// let setting = Setting { quotes: vec![repair, buy], terms };
/// let range = ThreePoint::new(60_00.0, 90_00.0, 180_00.0);
/// let guess = Guess { dial: Dial { input: Input::Cash, quote: Some(one) }, range };
/// let found = simulate(&setting, &[guess], 10_000, 1);
/// assert_eq!(found.quotes[1].p50, 100_00.0);
/// assert!((found.quotes[0].mean - 100_00.0).abs() < 1_00.0);
/// assert!((found.quotes[0].cheapest - range.below(100_00.0)).abs() < 0.02);
/// ```
#[must_use]
pub fn simulate(setting: &Setting, guesses: &[Guess], draws: u32, seed: u64) -> Simulation {
    let mut model = Model::new(setting, guesses);
    let streams = model.streams(seed, 0);
    let count = model.setting.quotes.len();
    let mut presents = vec![Vec::with_capacity(draws as usize); count];
    let mut wins = vec![0_u32; count];
    let mut regrets = vec![0.0; count];
    for draw in 0..draws {
        for (guess, stream) in streams.iter().enumerate() {
            let value = model.drawn(guess, stream.even(draw.into()));
            model.set(guess, value);
        }
        let found = model.presents();
        let Some(best) = least(found) else { break };
        wins[best] += 1;
        for at in 0..count {
            presents[at].push(found[at]);
            regrets[at] += found[at] - found[best];
        }
    }
    let times = f64::from(draws.max(1));
    let all = presents.into_iter().zip(wins).zip(regrets).zip(&model.setting.quotes);
    let quotes: Vec<Simulated> = all
        .map(|(((values, wins), regret), quote)| summed(quote.id, values, f64::from(wins) / times, regret / times))
        .collect();
    let worth_of_all = quotes.iter().map(|quote| quote.regret).min_by(f64::total_cmp).unwrap_or(0.0);
    Simulation { quotes, worth_of_all }
}

fn summed(id: Id, mut values: Vec<f64>, cheapest: f64, regret: f64) -> Simulated {
    values.sort_unstable_by(f64::total_cmp);
    let times = f64::from(u32::try_from(values.len()).unwrap_or(u32::MAX).max(1));
    // From the middle value on, so that figures without a range have themselves as their mean, to the last bit.
    let middle = values.get(values.len() / 2).copied().unwrap_or(0.0);
    let off = values.iter().map(|value| value - middle).sum::<f64>() / times;
    let squares: f64 = values.iter().map(|value| value - middle - off).map(|off| off * off).sum();
    let deviation = libm::sqrt(squares / (times - 1.0).max(1.0));
    let [p10, p50, p90] = [0.1, 0.5, 0.9].map(|share| quantile(&values, share));
    Simulated { id, cheapest, mean: middle + off, deviation, p10, p50, p90, regret }
}

/// The value below which a share of sorted values lies: between two of them in a straight line.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a place among the values")]
fn quantile(values: &[f64], share: f64) -> f64 {
    let Some(last) = values.len().checked_sub(1) else { return 0.0 };
    let place = f64::from(u32::try_from(last).unwrap_or(u32::MAX)) * share;
    let under = libm::floor(place);
    let at = (under as usize).min(last);
    let (low, high) = (values[at], values[(at + 1).min(last)]);
    low + (high - low) * (place - under)
}
