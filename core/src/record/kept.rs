use serde::{Deserialize, Serialize};

use super::{Id, Stored, Value};

/// What a plan takes that was kept, part by part. A quote for the pieces that a kit has too few of stands after that of the kit,
/// with the same part.
///
/// ```
/// use asfound_core::record::{Id, KeptQuote, KeptQuotes, Stored};
/// let id = |number| Id::from_bytes([number; 16]);
/// let kept = KeptQuotes(vec![KeptQuote { part: id(1), quote: id(2), cash: 4_50 }]);
/// assert_eq!(KeptQuotes::read(&kept.store()), Some(kept));
/// ```
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct KeptQuotes(pub Vec<KeptQuote>);

/// A quote of a plan that was kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct KeptQuote {
    /// Which part it is for.
    pub part: Id,
    /// Which quote.
    pub quote: Id,
    /// What was paid at first for the whole quote then, in minor units of the job.
    pub cash: i64,
}

/// Kept as a text, `part:quote:cash` with a blank between two of them.
impl Stored for KeptQuotes {
    fn store(&self) -> Value {
        let kept = self.0.iter().map(|KeptQuote { part, quote, cash }| format!("{part}:{quote}:{cash}"));
        Value::Text(kept.collect::<Vec<_>>().join(" "))
    }

    fn read(value: &Value) -> Option<Self> {
        let Value::Text(text) = value else { return None };
        let one = |kept: &str| {
            let mut of = kept.split(':');
            let kept = KeptQuote {
                part: of.next()?.parse().ok()?,
                quote: of.next()?.parse().ok()?,
                cash: of.next()?.parse().ok()?,
            };
            of.next().is_none().then_some(kept)
        };
        let kept = Self(text.split_whitespace().map(one).collect::<Option<_>>()?);
        (kept.store() == *value).then_some(kept)
    }
}
