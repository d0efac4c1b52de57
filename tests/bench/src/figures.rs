//! Percentiles of what a page has measured.

use anyhow::Context;
use serde_json::Value;

/// Measured times or lengths, sorted.
#[derive(Debug, Clone)]
pub(crate) struct Figures(Vec<f64>);

impl Figures {
    pub(crate) fn of(mut values: Vec<f64>) -> anyhow::Result<Self> {
        anyhow::ensure!(!values.is_empty(), "nothing was measured");
        values.sort_by(f64::total_cmp);
        Ok(Self(values))
    }

    /// From a list that a page answers.
    pub(crate) fn read(list: &Value) -> anyhow::Result<Self> {
        let list = list.as_array().with_context(|| format!("no list: {list}"))?;
        Self::of(list.iter().filter_map(Value::as_f64).collect())
    }

    /// The nearest value at a share, as 0.95.
    pub(crate) fn at(&self, share: f64) -> f64 {
        let rank = (share * self.0.len() as f64).ceil() as usize;
        self.0[rank.clamp(1, self.0.len()) - 1]
    }

    pub(crate) fn p50(&self) -> f64 {
        self.at(0.5)
    }

    pub(crate) fn p95(&self) -> f64 {
        self.at(0.95)
    }

    pub(crate) fn most(&self) -> f64 {
        self.0[self.0.len() - 1]
    }

    /// How many are longer.
    pub(crate) fn over(&self, limit: f64) -> usize {
        self.0.iter().filter(|value| **value > limit).count()
    }

    pub(crate) fn count(&self) -> usize {
        self.0.len()
    }

    /// `12 / 20 ms` with how many there were.
    pub(crate) fn said(&self) -> String {
        format!("{} / {} ms (n = {})", ms(self.p50()), ms(self.p95()), self.count())
    }
}

/// Milliseconds with as many figures as they bear.
pub(crate) fn ms(value: f64) -> String {
    if value >= 20.0 {
        format!("{value:.0}")
    } else if value >= 1.0 {
        format!("{value:.1}")
    } else {
        format!("{value:.2}")
    }
}

#[cfg(test)]
mod tests {
    use super::Figures;

    #[test]
    fn percentiles_are_values_that_were_measured() {
        let figures = Figures::of((1..=100).map(f64::from).collect()).unwrap();
        assert_eq!((figures.p50(), figures.p95(), figures.most()), (50.0, 95.0, 100.0));
        assert!(Figures::of(vec![]).is_err());
    }
}
