use crate::record::stored_enum;

stored_enum! {
    /// The six classes of ISO 15243:2017, 5.1 to 5.6 (from its contents).
    pub enum DamageClass {
        /// 5.1 Rolling contact fatigue.
        Fatigue = "fatigue",
        /// 5.2 Wear.
        Wear = "wear",
        /// 5.3 Corrosion.
        Corrosion = "corrosion",
        /// 5.4 Electrical erosion.
        ElectricalErosion = "electrical-erosion",
        /// 5.5 Plastic deformation.
        PlasticDeformation = "plastic-deformation",
        /// 5.6 Cracking and fracture.
        Fracture = "fracture",
    }
}

stored_enum! {
    /// What rolling bearings suffer, as ISO 15243:2017 divides it; the division below the classes as restated by makers of
    /// bearings.
    pub enum BearingDamage {
        /// Fatigue from below the surface: flakes.
        SubsurfaceFatigue = "subsurface-fatigue",
        /// Fatigue from the surface: fine pits, dull patches.
        SurfaceFatigue = "surface-fatigue",
        /// Abrasive wear: dull, scored by grit.
        AbrasiveWear = "abrasive-wear",
        /// Adhesive wear: smearing.
        AdhesiveWear = "adhesive-wear",
        /// Moisture corrosion: rust, stains at the pitch of the rollers.
        MoistureCorrosion = "moisture-corrosion",
        /// Frictional corrosion: fretting at the seats.
        FrettingCorrosion = "fretting-corrosion",
        /// Frictional corrosion: false brinelling, hollows at the pitch of the rollers from shaking while it stands.
        FalseBrinelling = "false-brinelling",
        /// Excessive current or voltage: craters.
        ExcessiveCurrent = "excessive-current",
        /// Leaking current: fluting.
        CurrentLeakage = "current-leakage",
        /// Overload: dents at the pitch of the rollers.
        OverloadDeformation = "overload-deformation",
        /// Dents of particles rolled in.
        ParticleIndentation = "particle-indentation",
        /// Dents of handling: blows, being pulled off through the rollers.
        HandlingIndentation = "handling-indentation",
        /// Forced fracture.
        ForcedFracture = "forced-fracture",
        /// Fatigue fracture.
        FatigueFracture = "fatigue-fracture",
        /// Thermal cracking.
        ThermalCracking = "thermal-cracking",
    }
}

impl BearingDamage {
    /// The class it belongs to.
    ///
    /// ```
    /// use asfound_core::tables::{BearingDamage, DamageClass};
    /// assert_eq!(BearingDamage::FalseBrinelling.class(), DamageClass::Corrosion);
    /// ```
    #[must_use]
    pub const fn class(self) -> DamageClass {
        match self {
            Self::SubsurfaceFatigue | Self::SurfaceFatigue => DamageClass::Fatigue,
            Self::AbrasiveWear | Self::AdhesiveWear => DamageClass::Wear,
            Self::MoistureCorrosion | Self::FrettingCorrosion | Self::FalseBrinelling => DamageClass::Corrosion,
            Self::ExcessiveCurrent | Self::CurrentLeakage => DamageClass::ElectricalErosion,
            Self::OverloadDeformation | Self::ParticleIndentation | Self::HandlingIndentation => {
                DamageClass::PlasticDeformation
            }
            Self::ForcedFracture | Self::FatigueFracture | Self::ThermalCracking => DamageClass::Fracture,
        }
    }
}
