use crate::record::stored_enum;

stored_enum! {
    /// Rust on uncoated steel, by looks (ISO 8501-1:2007): there are no shares of the surface to it.
    pub enum RustGrade {
        /// Covered with mill scale that holds, hardly any rust.
        A = "a",
        /// Beginning to rust, mill scale beginning to flake.
        B = "b",
        /// Mill scale rusted away or easily scraped off, slight pitting.
        C = "c",
        /// Mill scale rusted away, pitting all over.
        D = "d",
    }
}

stored_enum! {
    /// How far a surface is prepared (ISO 8501-1:2007): St by hand and power tool, Sa by blasting.
    pub enum Preparation {
        /// St 2, thorough, by hand and power tool.
        St2 = "st-2",
        /// St 3, very thorough, by hand and power tool.
        St3 = "st-3",
        /// Sa 1, light blast.
        Sa1 = "sa-1",
        /// Sa 2, thorough blast.
        Sa2 = "sa-2",
        /// Sa 2½, very thorough blast.
        Sa2Half = "sa-2-half",
        /// Sa 3, blasted to visually clean steel.
        Sa3 = "sa-3",
    }
}

stored_enum! {
    /// Rust coming through a coating (ISO 4628-3), by share of the surface.
    pub enum CoatingRust {
        /// Ri 0.
        Ri0 = "ri-0",
        /// Ri 1.
        Ri1 = "ri-1",
        /// Ri 2.
        Ri2 = "ri-2",
        /// Ri 3.
        Ri3 = "ri-3",
        /// Ri 4.
        Ri4 = "ri-4",
        /// Ri 5.
        Ri5 = "ri-5",
    }
}

impl CoatingRust {
    /// The share of the surface that the grade stands for, in percent; for Ri 5 the standard says 40 to 50.
    #[must_use]
    pub const fn percent(self) -> f64 {
        match self {
            Self::Ri0 => 0.0,
            Self::Ri1 => 0.05,
            Self::Ri2 => 0.5,
            Self::Ri3 => 1.0,
            Self::Ri4 => 8.0,
            Self::Ri5 => 50.0,
        }
    }

    /// The least grade whose share is not exceeded; nothing below 0 or above 50 %, which is beyond the scale.
    ///
    /// ```
    /// use asfound_core::tables::CoatingRust;
    /// assert_eq!(CoatingRust::of_percent(0.7), Some(CoatingRust::Ri3));
    /// ```
    #[must_use]
    pub fn of_percent(percent: f64) -> Option<Self> {
        Self::ALL.iter().copied().find(|grade| percent >= 0.0 && percent <= grade.percent())
    }
}

/// The most rust, in percent of the surface, of grades 10 to 1 of ASTM D610-08 (2012), table 1; grade 0 is above the last.
pub const D610_PERCENT: [f64; 10] = [0.01, 0.03, 0.1, 0.3, 1.0, 3.0, 10.0, 16.0, 33.0, 50.0];

/// The grade of ASTM D610, 10 (hardly any) to 0 (more than half); nothing for what is no share.
///
/// ```
/// use asfound_core::tables::d610_grade;
/// assert_eq!([0.0, 0.02, 50.0, 51.0].map(d610_grade), [Some(10), Some(9), Some(1), Some(0)]);
/// ```
#[must_use]
pub fn d610_grade(percent: f64) -> Option<u8> {
    let bands = (1..=10).rev().zip(D610_PERCENT);
    let grade = bands.into_iter().find(|(_, most)| percent <= *most).map_or(0, |(grade, _)| grade);
    (0.0..=100.0).contains(&percent).then_some(grade)
}
