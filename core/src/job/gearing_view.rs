//! What the answers about gearing look like.

use serde::{Deserialize, Serialize};

use super::view::RecordView;
use crate::gearing::{RollingFrom, Tyre};
use crate::problem::Problem;
use crate::record::{FieldName, Id};

/// Gearings before and after a swap.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct GearingView {
    /// Before, after, those thought about, the others; each by name.
    pub sets: Vec<GearingLine>,
    /// The road speed that was asked about, in km/h.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kmh: Option<f64>,
    /// Why the speed asked about is none.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub problems: Vec<Problem>,
}

/// One gearing, as far as it is known.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct GearingLine {
    /// The record: name, ratios, tyre.
    pub record: RecordView,
    /// What its vehicle is called.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub vehicle: Option<String>,
    /// The marking, read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tyre: Option<Tyre>,
    /// How far the tyre rolls: the best that is known of it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rolling: Option<RollingView>,
    /// A row for each gear, the shortest first; with the overdrive in right after the same without.
    pub rows: Vec<GearRow>,
    /// What has to be said before there are rows.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub needs: Vec<FieldName>,
    /// What of it cannot be read. It is kept as it is.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub problems: Vec<Problem>,
    /// What changes against the one before.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub against: Option<GearingChange>,
}

/// How far a tyre rolls.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct RollingView {
    /// From what that is known.
    pub from: RollingFrom,
    /// It was measured, by somebody or by the maker.
    pub measured: bool,
    /// In one turn, in millimetres.
    pub circumference: f64,
    /// Circumference ÷ π, in millimetres.
    pub diameter: f64,
    /// Turns in a mile.
    pub turns_per_mile: f64,
    /// Turns in a kilometre.
    pub turns_per_km: f64,
    /// By how much more often it turns under load, least and most, as shares; nothing where the load is in the figure.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub loaded: Option<[f64; 2]>,
    /// By which share it turns more often than its marking says.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub beside_marking: Option<f64>,
}

/// One gear.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct GearRow {
    /// Which gear, from 1.
    pub gear: usize,
    /// With the overdrive in.
    pub overdriven: bool,
    /// It is the one in which the engine turns least.
    pub top: bool,
    /// Turns of the engine for one of the gearbox.
    pub ratio: f64,
    /// Turns of the engine for one of the wheel.
    pub overall: f64,
    /// Miles an hour at 1000 turns a minute.
    pub mph: f64,
    /// Kilometres an hour at 1000 turns a minute.
    pub kmh: f64,
    /// Turns a minute at the speed that was asked about.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub turns: Option<f64>,
    /// Kilometres an hour at the most turns of the engine.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub highest_kmh: Option<f64>,
    /// By which share the engine turns more often at the same speed than before in the same gear; below 0: less.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub change: Option<f64>,
}

/// What a gearing changes against the one before. Shares: 0.1 is a tenth more, -0.1 a tenth less.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct GearingChange {
    /// The one before.
    pub before: Id,
    /// Turns of the engine at the same speed, each in its highest gear.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub top: Option<f64>,
    /// How far the tyre rolls.
    pub rolling: f64,
    /// What a speedometer that was right shows too much when it is driven from the gearbox.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub speedometer: Option<f64>,
    /// What it shows too much when it is driven from a wheel.
    pub wheel_speedometer: f64,
}

/// What a marking and a list of ratios say.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct GearingTypedView {
    /// The tyre.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tyre: Option<Tyre>,
    /// How far it rolls.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rolling: Option<RollingView>,
    /// The gears, the shortest first.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gears: Option<Vec<f64>>,
    /// What cannot be read, with its field.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub problems: Vec<Problem>,
}
