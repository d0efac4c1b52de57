//! The QR of a code: ISO/IEC 18004, the smallest version that holds it, error correction level Q.

use qrcode::{Color, EcLevel, QrCode};

/// Light modules that must be left around a symbol.
pub(super) const QUIET: f64 = 4.0;

/// A square of dark and light modules.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Symbol {
    size: usize,
    dark: Vec<bool>,
}

impl Symbol {
    /// The symbol that holds a text; nothing when no version is large enough.
    ///
    /// ```
    /// use asfound_core::papers::Symbol;
    /// assert_eq!(Symbol::of("0079X").unwrap().size(), 21);
    /// ```
    #[must_use]
    pub fn of(text: &str) -> Option<Self> {
        let code = QrCode::with_error_correction_level(text, EcLevel::Q).ok()?;
        Some(Self { size: code.width(), dark: code.to_colors().into_iter().map(|one| one == Color::Dark).collect() })
    }

    /// Modules along each side.
    #[must_use]
    pub const fn size(&self) -> usize {
        self.size
    }

    /// Whether a module is dark; those outside are light.
    #[must_use]
    pub fn is_dark(&self, row: usize, column: usize) -> bool {
        column < self.size && self.dark.get(row * self.size + column).copied().unwrap_or(false)
    }

    /// Dark modules side by side: row, column of the first, how many.
    pub(super) fn runs(&self) -> Vec<(usize, usize, usize)> {
        let mut runs: Vec<(usize, usize, usize)> = Vec::new();
        for row in 0..self.size {
            let mut begun = None;
            for column in 0..=self.size {
                match (begun, self.is_dark(row, column)) {
                    (None, true) => begun = Some(column),
                    (Some(first), false) => {
                        runs.push((row, first, column - first));
                        begun = None;
                    }
                    _ => {}
                }
            }
        }
        runs
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::TagCode;

    #[test]
    fn every_code_fits_the_smallest_version() {
        for number in [1, 79, 147, 9_999, 10_000, 999_999, 9_999_999] {
            assert_eq!(Symbol::of(&TagCode::new(number).unwrap().bare()).unwrap().size(), 21, "{number}");
        }
    }

    #[test]
    fn runs_are_the_dark_modules() {
        let symbol = Symbol::of("0079X").unwrap();
        let runs = symbol.runs();
        let dark =
            (0..21).flat_map(|row| (0..21).map(move |column| (row, column))).filter(|(r, c)| symbol.is_dark(*r, *c));
        assert_eq!(runs.iter().map(|(_, _, length)| length).sum::<usize>(), dark.count());
        assert!(
            runs.iter().all(|(row, first, length)| (*first..first + length).all(|column| symbol.is_dark(*row, column)))
        );
    }
}
