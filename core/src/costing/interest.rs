//! Money over years: what a later amount is worth now, and what an amount now is worth a year.

/// What 1 in so many years is worth now, at a yearly rate: (1 + rate)^−years.
///
/// `rate` is a share a year (0.08 for 8 %), above −1; `years` from 0 up, fractions included. Factor P/F of compound
/// interest tables.
///
/// ```
/// assert!((asfound_core::costing::worth_now(0.08, 1.0) - 0.925_926).abs() < 1e-6);
/// assert_eq!(asfound_core::costing::worth_now(0.0, 12.0), 1.0);
/// ```
#[must_use]
pub fn worth_now(rate: f64, years: f64) -> f64 {
    libm::pow(1.0 + rate, -years)
}

/// What is to be paid at the end of each of so many years for 1 now, at a yearly rate: rate ÷ (1 − (1 + rate)^−years), and
/// 1 ÷ years where the rate is 0.
///
/// `years` above 0. Capital recovery factor A/P of compound interest tables.
///
/// ```
/// assert!((asfound_core::costing::a_year(0.08, 10.0) - 0.149_029).abs() < 1e-6);
/// assert_eq!(asfound_core::costing::a_year(0.0, 4.0), 0.25);
/// ```
#[must_use]
pub fn a_year(rate: f64, years: f64) -> f64 {
    // 1 − (1 + rate)^−years, without losing the small rates to rounding.
    let recovered = -libm::expm1(-years * libm::log1p(rate));
    if rate == 0.0 || recovered == 0.0 { 1.0 / years } else { rate / recovered }
}

/// What amounts at given times (in years from now) are worth now, at a yearly rate.
///
/// ```
/// let worth = asfound_core::costing::present_value(0.1, [(0.0, 100.0), (1.0, 110.0)]);
/// assert!((worth - 200.0).abs() < 1e-12);
/// ```
#[must_use]
pub fn present_value(rate: f64, amounts: impl IntoIterator<Item = (f64, f64)>) -> f64 {
    amounts.into_iter().map(|(years, amount)| amount * worth_now(rate, years)).sum()
}
