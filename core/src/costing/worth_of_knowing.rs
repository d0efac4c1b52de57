use super::decision_table::DecisionTable;
use super::guess::{Guess, Model};
use super::input::{Dial, Setting};

/// How many values of a figure are tried, each as likely as the others.
const VALUES: u32 = 32;
/// How many draws of all other figures stand beside each of them, at most.
const BESIDE: u32 = 512;

/// What it would be worth to know one figure before choosing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Known {
    /// The guess.
    pub guess: Guess,
    /// What knowing it saves in the mean, in minor units: nothing where whatever it turns out to be leaves the same quote
    /// the best.
    pub worth: f64,
}

/// What perfect information on each unsure figure alone is worth, the most first.
///
/// The figure is put at 32 values that are as likely as one another (the means of as many equal shares of its distribution);
/// at each of them the quotes are worth their mean over the same draws of the other figures (512 at most), stratified (Latin
/// hypercube; McKay, Beckman and Conover 1979). What is saved by choosing anew at each value is the answer. So it is never
/// below nothing, and exactly nothing where the choice stays. Its bias: a value at which the choice turns is somewhere
/// within a share, so that a little is lost there, less than a hundredth; means of 512 draws may be off either way, little,
/// since costs are nearly sums. `most` is the most that it is said to be: what everything is worth.
#[must_use]
pub fn worth_of_knowing(setting: &Setting, guesses: &[Guess], most: f64, draws: u32, seed: u64) -> Vec<Known> {
    let mut model = Model::new(setting, guesses);
    let beside = stratified(&model, draws, seed);
    let mut found: Vec<Known> = (0..model.guesses.len())
        .map(|at| {
            let guess = model.guesses[at];
            let values = guess.range.of_equal_shares(VALUES);
            let worth = table(&mut model, &beside, guess.dial, &values).worth_of_certainty();
            Known { guess, worth: worth.min(most) }
        })
        .collect();
    found.sort_by(|one, other| {
        let dial = |known: &Known| (known.guess.dial.quote, known.guess.dial.input);
        other.worth.total_cmp(&one.worth).then(dial(one).cmp(&dial(other)))
    });
    found
}

/// What every quote is worth in the mean when a figure is at each of some values, which are as likely as one another.
pub(super) fn table(model: &mut Model, beside: &[Vec<f64>], dial: Dial, values: &[f64]) -> DecisionTable {
    let share = 1.0 / f64::from(u32::try_from(values.len()).unwrap_or(u32::MAX).max(1));
    let by_value: Vec<Vec<f64>> = values.iter().map(|value| means(model, beside, dial, *value)).collect();
    let costs = (0..model.setting.quotes.len()).map(|quote| by_value.iter().map(|means| means[quote]).collect());
    DecisionTable { chances: vec![share; values.len()], costs: costs.collect() }
}

/// What every quote is worth in the mean while one figure stays where it is put.
pub(super) fn means(model: &mut Model, beside: &[Vec<f64>], dial: Dial, value: f64) -> Vec<f64> {
    let others: Vec<usize> = (0..model.guesses.len()).filter(|guess| model.guesses[*guess].dial != dial).collect();
    model.turn(dial, value);
    let mut sums = vec![0.0; model.setting.quotes.len()];
    // Where nothing else is unsure, once is enough.
    let times = if others.is_empty() { 1 } else { beside.len() };
    for draw in beside.iter().take(times) {
        for guess in &others {
            model.set(*guess, draw[*guess]);
        }
        for (sum, present) in sums.iter_mut().zip(model.presents()) {
            *sum += present;
        }
    }
    let times = f64::from(u32::try_from(times).unwrap_or(u32::MAX));
    sums.iter().map(|sum| sum / times).collect()
}

/// Draws of all guesses: of each one value from each of as many equal shares of its distribution, in an order of chance.
pub(super) fn stratified(model: &Model, draws: u32, seed: u64) -> Vec<Vec<f64>> {
    let count = draws.clamp(1, BESIDE);
    let mut all = vec![Vec::with_capacity(model.guesses.len()); count as usize];
    for (guess, stream) in model.streams(seed, 1).into_iter().enumerate() {
        let mut order: Vec<u32> = (0..count).collect();
        order.sort_by_key(|share| stream.bits((*share).into()));
        for (draw, share) in all.iter_mut().zip(order) {
            draw.push(model.drawn(guess, (f64::from(share) + 0.5) / f64::from(count)));
        }
    }
    all
}
