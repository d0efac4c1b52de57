use crate::quantity::Length;
use crate::record::stored_enum;

stored_enum! {
    /// What a garage measures with, coarsest first. Resolutions and uncertainties (factor 2) are common practice, no source: what
    /// is stated for the instrument at hand goes before.
    pub enum UsualInstrument {
        /// A steel rule, read to half a millimetre.
        SteelRule = "steel-rule",
        /// Feeler gauges, in steps of 0.05 mm.
        FeelerGauge = "feeler-gauge",
        /// Plastic gauge, squeezed in a bearing.
        PlasticGauge = "plastic-gauge",
        /// A vernier caliper.
        VernierCaliper = "vernier-caliper",
        /// A dial indicator on a stand.
        DialIndicator = "dial-indicator",
        /// A bore gauge with a dial, set with a micrometer.
        BoreGauge = "bore-gauge",
        /// A micrometer.
        Micrometer = "micrometer",
    }
}

impl UsualInstrument {
    /// The least step that is read off.
    #[must_use]
    pub const fn resolution(self) -> Length {
        Length::from_micrometres(match self {
            Self::SteelRule => 500,
            Self::FeelerGauge => 50,
            Self::PlasticGauge => 25,
            Self::VernierCaliper => 20,
            Self::DialIndicator | Self::BoreGauge | Self::Micrometer => 10,
        })
    }

    /// The usual expanded uncertainty, factor 2; nothing where the step says it all.
    #[must_use]
    pub const fn stated(self) -> Option<Length> {
        Some(Length::from_micrometres(match self {
            Self::VernierCaliper => 30,
            Self::BoreGauge => 10,
            Self::Micrometer => 4,
            Self::SteelRule | Self::FeelerGauge | Self::PlasticGauge | Self::DialIndicator => return None,
        }))
    }
}
