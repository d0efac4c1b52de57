//! A reading and its limit as somebody types them, for a question outside the record.

use serde::{Deserialize, Serialize};

use super::limits::{Against, Limits, against};
use super::proof::{Bounds, DEFAULT_RULE, Rule, worst};
use super::readings::exact;
use super::settle::{Settling, settling};
use super::sizes::{NextSize, SizeSteps, next_size};
use super::uncertainty::{Instrument, Measured, measured};
use crate::quantity::{Dimension, Unit, Unreadable, bounds, read};
use crate::tables::features::Surface;

/// Readings, an instrument and limits, each as typed: `31.76`, `1.2505in`, `1 1/4`, `-2 thou`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct ProofQuery {
    /// The unit of figures that have none.
    pub unit: Unit,
    /// The repeats, place by place.
    pub places: Vec<Vec<String>>,
    /// The least step of the instrument; nothing says nothing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub resolution: Option<String>,
    /// Its stated uncertainty; nothing says nothing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub uncertainty: Option<String>,
    /// The coverage factor of that, from 0.5 to 10; 2 when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub coverage: Option<f64>,
    /// What it shows where it should show nothing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub zero_error: Option<String>,
    /// The least that it may be.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least: Option<String>,
    /// The most that it may be.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub most: Option<String>,
    /// The least that it may be after machining.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machining_least: Option<String>,
    /// The most that it may be after machining.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machining_most: Option<String>,
    /// What it was when new.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub as_new: Option<String>,
    /// Which rule decides; the edition of 2017 when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rule: Option<Rule>,
    /// What would be cut, for the next standard size of a length.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub surface: Option<Surface>,
    /// In which steps; by the unit when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub steps: Option<SizeSteps>,
    /// What has to come off the diameter to clean up; nothing when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cut: Option<String>,
}

impl ProofQuery {
    /// Readings of which nothing else is said.
    #[must_use]
    pub const fn of(unit: Unit, places: Vec<Vec<String>>) -> Self {
        Self {
            unit,
            places,
            resolution: None,
            uncertainty: None,
            coverage: None,
            zero_error: None,
            least: None,
            most: None,
            machining_least: None,
            machining_most: None,
            as_new: None,
            rule: None,
            surface: None,
            steps: None,
            cut: None,
        }
    }
}

/// What readings prove. All amounts are in the base unit: nanometres, millinewtons, a count.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct ProofView {
    /// The places in their order.
    pub places: Vec<Measured>,
    /// Which of them governs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub governs: Option<usize>,
    /// What each proves against the limits.
    pub against: Vec<Against>,
    /// What would settle it, where it proves nothing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub settling: Option<Settling>,
    /// The next standard size that cleans up; left out where none does, or nobody asked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub next_size: Option<NextSize>,
    /// What could not be read, and why; then nothing else is answered.
    pub unread: Vec<UnreadView>,
}

/// A text that could not be read.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct UnreadView {
    /// Which member held it.
    pub member: String,
    /// The text.
    pub text: String,
    /// Why.
    pub why: Unreadable,
}

/// What a typed text says.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct TypedView {
    /// The amount in the base unit of what is measured.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub amount: Option<i64>,
    /// The unit that it was typed in, or that was meant.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub unit: Option<Unit>,
    /// Why it could not be read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub why: Option<Unreadable>,
}

/// Reads what somebody typed; figures without a unit are in `unit`.
#[must_use]
pub fn typed(text: &str, unit: Unit) -> TypedView {
    match read(text, unit) {
        Ok(typed) => TypedView { amount: Some(typed.amount), unit: Some(typed.unit), why: None },
        Err(why) => TypedView { amount: None, unit: None, why: Some(why) },
    }
}

/// Reads one member after another, and keeps what could not be read.
struct Reader {
    unit: Unit,
    unread: Vec<UnreadView>,
}

impl Reader {
    fn read(&mut self, member: &str, text: &str) -> Option<f64> {
        match read(text, self.unit) {
            Ok(typed) => Some(exact(typed.amount)),
            Err(why) => self.refuse(member, text, why),
        }
    }

    fn refuse(&mut self, member: &str, text: &str, why: Unreadable) -> Option<f64> {
        self.unread.push(UnreadView { member: member.to_owned(), text: text.to_owned(), why });
        None
    }

    /// A least above the most is a limit that nothing can keep.
    fn in_order(&mut self, member: &str, least: Option<&String>, bounds: Bounds) {
        if let Some(text) = least.filter(|_| bounds.is_crossed()) {
            self.refuse(member, text, Unreadable::OutOfBounds);
        }
    }

    fn maybe(&mut self, member: &str, text: Option<&String>) -> Option<f64> {
        text.and_then(|text| self.read(member, text))
    }

    /// What is never below nothing, and no more than an uncertainty may be.
    fn width(&mut self, member: &str, text: Option<&String>) -> Option<f64> {
        let text = text?;
        let width = self.read(member, text)?;
        let is_one = (0.0..=exact(bounds::UNCERTAINTY.most)).contains(&width);
        if is_one { Some(width) } else { self.refuse(member, text, Unreadable::OutOfBounds) }
    }

    fn factor(&mut self, factor: f64) -> f64 {
        let most = exact(bounds::COVERAGE.most) / 100.0;
        if !(exact(bounds::COVERAGE.least) / 100.0..=most).contains(&factor) {
            self.refuse("coverage", &factor.to_string(), Unreadable::OutOfBounds);
        }
        factor
    }
}

/// What readings prove against limits.
#[must_use]
pub fn proof(query: &ProofQuery) -> ProofView {
    let mut reader = Reader { unit: query.unit, unread: Vec::new() };
    let places: Vec<Vec<f64>> = query
        .places
        .iter()
        .map(|repeats| repeats.iter().filter_map(|text| reader.read("places", text)).collect())
        .collect();
    // As of a recorded instrument: an instrument without any uncertainty is one of which nothing is known.
    let instrument = Instrument {
        resolution: reader.width("resolution", query.resolution.as_ref()).filter(|step| *step > 0.0),
        stated: reader.width("uncertainty", query.uncertainty.as_ref()).filter(|stated| *stated > 0.0),
        factor: query.coverage.map_or(2.0, |factor| reader.factor(factor)),
        zero_error: reader.maybe("zero_error", query.zero_error.as_ref()),
    };
    let discard =
        Bounds { least: reader.maybe("least", query.least.as_ref()), most: reader.maybe("most", query.most.as_ref()) };
    let machining = Bounds {
        least: reader.maybe("machining_least", query.machining_least.as_ref()),
        most: reader.maybe("machining_most", query.machining_most.as_ref()),
    };
    reader.in_order("least", query.least.as_ref(), discard);
    reader.in_order("machining_least", query.machining_least.as_ref(), machining);
    let as_new = reader.maybe("as_new", query.as_new.as_ref());
    let cut = reader.width("cut", query.cut.as_ref()).unwrap_or(0.0);
    if !reader.unread.is_empty() {
        return ProofView { unread: reader.unread, ..ProofView::default() };
    }
    let limits = Limits { discard, machining, as_new };
    let rule = query.rule.unwrap_or(DEFAULT_RULE);
    let places: Vec<Measured> = places.iter().filter_map(|repeats| measured(repeats, &instrument)).collect();
    let governs = worst(&places, &discard, rule).map(|(at, _)| at);
    let is_length = query.unit.dimension() == Dimension::Length;
    let found = governs.and_then(|at| settling(&places[at], &discard, rule));
    let surface = query.surface.filter(|_| is_length);
    let steps = query.steps.unwrap_or(match query.unit {
        Unit::Inch | Unit::Thou => SizeSteps::Inch,
        _ => SizeSteps::Metric,
    });
    ProofView {
        against: places.iter().map(|place| against(place, &limits, rule)).collect(),
        settling: found.map(|found| if is_length { found } else { found.of_no_length() }),
        next_size: surface.zip(as_new).and_then(|(surface, new)| next_size(&places, new, surface, steps, cut)),
        unread: Vec::new(),
        governs,
        places,
    }
}
