//! Answers without drawing, where there is a formula.

use super::expected::tried;
use super::guess::{Guess, Model};
use super::input::{Input, Setting};
use super::three_point::ThreePoint;

/// The mean of the present value of every quote that may be chosen, in order of id; nothing where there is no formula.
///
/// A present value is made of sums and products of figures that are independent of one another, each at most once in a
/// product; so its mean is the present value at the means of the figures. That holds while the fallbacks keep their order
/// whatever the figures turn out to be, and where neither the life of the quote, the interest nor the years are unsure: a
/// life is done again a whole number of times.
///
/// ```
/// use asfound_core::costing::{exact_means, Dial, Figures, Guess, Input, Setting, Terms, ThreePoint};
/// use asfound_core::job::vocabulary::Route;
/// use asfound_core::record::Id;
/// let one = Id::from_bytes([1; 16]);
/// let quote = Figures { cash: 10_00.0, own_time: 60.0, ..Figures::bare(one, Route::RepairHere) };
/// let setting = Setting { quotes: vec![quote], terms: Terms { hour_value: 12_00.0, interest: 0.0, years: 10.0 } };
/// let range = ThreePoint::new(30.0, 60.0, 210.0);
/// let guess = Guess { dial: Dial { input: Input::OwnTime, quote: Some(one) }, range };
/// // 80 minutes in the mean, at 12 an hour.
/// assert_eq!(exact_means(&setting, &[guess]), [Some(26_00.0)]);
/// ```
#[must_use]
pub fn exact_means(setting: &Setting, guesses: &[Guess]) -> Vec<Option<f64>> {
    let mut model = Model::new(setting, guesses);
    let exact = exact(&mut model);
    at_means(&mut model);
    let means = model.presents().to_vec();
    exact.into_iter().zip(means).map(|(exact, mean)| exact.then_some(mean)).collect()
}

/// How often each of two quotes is the cheaper, in order of id, by integrating over what they may cost; nothing where there
/// are not two, or where they are not straight lines in one unsure figure each.
///
/// The chance that A is below B is the integral of A's density × B's share above; by Simpson's rule, on pieces that end where
/// B's share bends.
#[must_use]
pub fn exact_chances(setting: &Setting, guesses: &[Guess]) -> Option<[f64; 2]> {
    let mut model = Model::new(setting, guesses);
    let exact = exact(&mut model);
    if exact.len() != 2 || exact.contains(&false) {
        return None;
    }
    let lines = [line(&mut model, 0)?, line(&mut model, 1)?];
    let [(one, of_one), (other, of_other)] = lines;
    if of_one.is_some() && of_one == of_other {
        return None;
    }
    let first = below(&one, &other);
    Some([first, 1.0 - first])
}

/// What a quote is worth as the one figure it hangs on is turned, with which guess that is; nothing when there are more.
fn line(model: &mut Model, quote: usize) -> Option<(ThreePoint, Option<usize>)> {
    at_means(model);
    let mut found = (ThreePoint::sure(model.presents()[quote]), None);
    for guess in 0..model.guesses.len() {
        let range = model.guesses[guess].range;
        let [least, likely, most] = [range.least(), range.likely(), range.most()].map(|value| {
            model.set(guess, value);
            model.presents()[quote]
        });
        model.set(guess, range.mean());
        if least.total_cmp(&most).is_ne() {
            // What falls as its figure rises is turned round with its ends.
            let line = ThreePoint::new(least, likely, most);
            found = if found.1.is_none() { (line, Some(guess)) } else { return None };
        }
    }
    Some(found)
}

/// How often the first is below the second; of equal ones the first counts as it.
fn below(one: &ThreePoint, other: &ThreePoint) -> f64 {
    let above = |value: f64| if other.is_sure() && value <= other.likely() { 1.0 } else { 1.0 - other.below(value) };
    if one.is_sure() {
        return above(one.likely());
    }
    if other.is_sure() {
        return one.below(other.likely());
    }
    let mut ends = vec![one.least(), one.most()];
    ends.extend([other.least(), other.most()].into_iter().filter(|end| *end > one.least() && *end < one.most()));
    ends.sort_unstable_by(f64::total_cmp);
    let shape = one.shape();
    let range = one.most() - one.least();
    let density = |value: f64| shape.density(((value - one.least()) / range).clamp(0.0, 1.0)) / range;
    let pieces = ends.windows(2).map(|ends| integral(ends[0], ends[1], |value| density(value) * above(value)));
    pieces.sum::<f64>().clamp(0.0, 1.0)
}

/// Simpson's rule, with steps that draw together towards both ends, where densities bend most.
fn integral(from: f64, to: f64, function: impl Fn(f64) -> f64) -> f64 {
    const STEPS: u32 = 256;
    let at = |step: u32| {
        let even = f64::from(step) / f64::from(STEPS);
        let place = even * even * even * ((6.0 * even - 15.0) * even + 10.0);
        let slope = 30.0 * even * even * (1.0 - even) * (1.0 - even);
        function(from + (to - from) * place) * slope
    };
    let inner = (1..STEPS).map(|step| at(step) * if step % 2 == 1 { 4.0 } else { 2.0 });
    let sum = at(0) + at(STEPS) + inner.sum::<f64>();
    sum * (to - from) / (3.0 * f64::from(STEPS))
}

pub(super) fn at_means(model: &mut Model) {
    for guess in 0..model.guesses.len() {
        model.set(guess, model.guesses[guess].range.mean());
    }
}

/// Whether the present value of each quote is a sum of products of independent figures, whatever they turn out to be.
fn exact(model: &mut Model) -> Vec<bool> {
    let is_bent = |guess: &Guess| matches!(guess.dial.input, Input::Interest | Input::Years);
    let bent = model.guesses.iter().any(is_bent);
    let ends = [false, true].map(|most| {
        for guess in 0..model.guesses.len() {
            let range = model.guesses[guess].range;
            model.set(guess, if most { range.most() } else { range.least() });
        }
        model.setting.clone()
    });
    // Of two quotes each has one to fall back on, whatever the order.
    let keep_order = ends[0].quotes.len() <= 2 || keep_order(&ends);
    let quotes = ends[0].quotes.iter().zip(&ends[1].quotes);
    let exact = quotes.map(|(low, high)| {
        let lives =
            model.guesses.iter().any(|guess| guess.dial.quote == Some(low.id) && guess.dial.input == Input::Life);
        !bent && !lives && (high.chance == 0.0 || keep_order)
    });
    let covered = ends[0]
        .quotes
        .iter()
        .zip(&ends[1].quotes)
        .all(|(low, high)| low.shared <= low.bill() || low.shared >= high.bill() || low.shared == 0.0);
    exact.map(|exact| exact && covered).collect()
}

/// Whether what trying the quotes costs keeps its order between the ends: it grows with each of the figures.
fn keep_order([low, high]: &[Setting; 2]) -> bool {
    let ratio = |setting: &Setting, at: usize| {
        let quote = &setting.quotes[at];
        tried(quote, &setting.terms) / (1.0 - quote.chance)
    };
    let mut ranges: Vec<(f64, f64)> = (0..low.quotes.len()).map(|at| (ratio(low, at), ratio(high, at))).collect();
    ranges.sort_unstable_by(|one, other| one.0.total_cmp(&other.0).then(one.1.total_cmp(&other.1)));
    let is_sure = |range: &(f64, f64)| range.0.total_cmp(&range.1).is_eq();
    ranges.windows(2).all(|pair| pair[0].1 < pair[1].0 || (is_sure(&pair[0]) && is_sure(&pair[1])))
}
