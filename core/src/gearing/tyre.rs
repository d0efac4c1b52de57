use serde::{Deserialize, Serialize};

use super::INCH;
use crate::record::stored_enum;

/// The longest marking that is looked at, in bytes.
const LONGEST: usize = 60;

stored_enum! {
    /// From where it is known how high the section of a tyre is.
    pub enum AspectFrom {
        /// It is marked: the 65 of 205/65 R 15.
        Marked = "marked",
        /// A metric marking without one: 80 % by common practice, no source; 82 % is told, too.
        Metric = "metric",
        /// An inch marking, cross-ply: 95 % for low sections, else as high as it is wide, by common practice, no source;
        /// the diameter is about 3 % either way.
        Inch = "inch",
    }
}

stored_enum! {
    /// Why a marking cannot be read.
    pub enum TyreUnread {
        /// Nothing was typed.
        Empty = "empty",
        /// It is not width, perhaps height, rim.
        Form = "form",
        /// No tyre is as wide or as narrow.
        Width = "width",
        /// The height is not 25 to 100 % of the width.
        Aspect = "aspect",
        /// The rim is neither 8 to 24 in nor 300 to 450 mm.
        Rim = "rim",
        /// What stands after the size is no load, speed or ply mark.
        Rest = "rest",
    }
}

/// The size that a tyre is marked with: nominal, unloaded, new.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Tyre {
    /// Width of the section in millimetres: 105 to 445 metric, 3 to 9.99 in otherwise.
    pub width: f64,
    /// Height of the section as a share of its width, 0.25 to 1.
    pub aspect: f64,
    /// Diameter of the rim in millimetres.
    pub rim: f64,
    /// From where the height is known.
    pub aspect_from: AspectFrom,
}

impl Tyre {
    /// What a marking says: `205/65 R 15`, `205/65R15 91H`, `145-80-13`, `185/70-13`, `165 SR 13`, `190/65 HR 390`; in inches
    /// `5.20-13`, `6,00 x 16 6PR`, `600-16`. Load, speed and ply marks after it are passed over. Sizes that tell no height are
    /// taken as common practice has them ([`AspectFrom`]).
    ///
    /// ```
    /// use asfound_core::gearing::{AspectFrom, Tyre, TyreUnread};
    /// let tyre = Tyre::read("205/65 R 15 91H").unwrap();
    /// assert_eq!((tyre.width, tyre.aspect, tyre.rim), (205.0, 0.65, 381.0));
    /// assert_eq!(Tyre::read("5.20-13").unwrap().aspect_from, AspectFrom::Inch);
    /// assert_eq!(Tyre::read("ER70-13"), Err(TyreUnread::Form));
    /// ```
    ///
    /// # Errors
    ///
    /// Which of its figures cannot be meant. Nothing is guessed.
    pub fn read(marking: &str) -> Result<Self, TyreUnread> {
        if marking.trim().is_empty() {
            return Err(TyreUnread::Empty);
        }
        if marking.len() > LONGEST {
            return Err(TyreUnread::Form);
        }
        let plain = plain(marking);
        let mut rest = Rest(plain.strip_prefix("LT").or_else(|| plain.strip_prefix('P')).unwrap_or(&plain).trim());
        let (width, has_point) = rest.figure().ok_or(TyreUnread::Form)?;
        let has_letters = rest.separator()?;
        let (mut second, _) = rest.figure().ok_or(TyreUnread::Form)?;
        let mut marked = None;
        // Heights and rims share no figures: what stands second is known by its size.
        if !has_letters && (25.0..=100.0).contains(&second) {
            marked = Some(second / 100.0);
            rest.separator()?;
            second = rest.figure().ok_or(TyreUnread::Form)?.0;
        } else if !has_letters && second > 24.0 && second < 300.0 {
            return Err(if rest.0.is_empty() { TyreUnread::Rim } else { TyreUnread::Aspect });
        }
        let rim = rim(second).ok_or(TyreUnread::Rim)?;
        if rest.is_marks() { Self::of(width, has_point, marked, rim) } else { Err(TyreUnread::Rest) }
    }

    fn of(width: f64, has_point: bool, marked: Option<f64>, rim: f64) -> Result<Self, TyreUnread> {
        let tyre = |width, aspect, aspect_from| Ok(Self { width, aspect, rim, aspect_from });
        match marked {
            Some(aspect) if !has_point && (105.0..=445.0).contains(&width) => tyre(width, aspect, AspectFrom::Marked),
            None if !has_point && (105.0..=250.0).contains(&width) => tyre(width, 0.80, AspectFrom::Metric),
            // 600-16 is 6.00-16 without its point.
            None if !has_point && (400.0..1_000.0).contains(&width) => Self::of(width / 100.0, true, None, rim),
            None if has_point && (3.0..10.0).contains(&width) => {
                let hundredths = (width * 100.0).round() % 100.0;
                let is_low = rim <= 13.0 * INCH || hundredths % 25.0 != 0.0;
                tyre(width * INCH, if is_low { 0.95 } else { 1.0 }, AspectFrom::Inch)
            }
            _ => Err(TyreUnread::Width),
        }
    }

    /// Diameter, nominal and unloaded, in millimetres: 2 × width × aspect + rim. Source: tyre makers' pages give 647 mm for
    /// 205/65 R 15.
    ///
    /// ```
    /// use asfound_core::gearing::Tyre;
    /// assert_eq!(Tyre::read("205/65R15").unwrap().diameter(), 647.5);
    /// ```
    #[must_use]
    pub fn diameter(&self) -> f64 {
        2.0 * self.width * self.aspect + self.rim
    }
}

/// In inches 8 to 24, whole or half; in millimetres 300 to 450.
fn rim(figure: f64) -> Option<f64> {
    let is_inch = (8.0..=24.0).contains(&figure) && figure * 2.0 % 1.0 == 0.0;
    let is_metric = (300.0..=450.0).contains(&figure) && figure % 1.0 == 0.0;
    if is_inch { Some(figure * INCH) } else { is_metric.then_some(figure) }
}

/// Capitals, plain marks, points for decimal commas, single spaces.
fn plain(marking: &str) -> String {
    let letter = |letter: char| match letter {
        '−' | '–' | '—' | '‐' | '‑' => '-',
        '×' => 'X',
        ',' => '.',
        '⁄' | '∕' => '/',
        letter => letter.to_ascii_uppercase(),
    };
    marking.chars().map(letter).collect::<String>().split_whitespace().collect::<Vec<_>>().join(" ")
}

/// What is left to be read.
struct Rest<'a>(&'a str);

impl Rest<'_> {
    /// A figure, and whether it has a point.
    fn figure(&mut self) -> Option<(f64, bool)> {
        let end = self.0.find(|letter: char| !letter.is_ascii_digit() && letter != '.').unwrap_or(self.0.len());
        let (figures, rest) = self.0.split_at(end);
        self.0 = rest;
        super::figures(figures).map(|figure| (figure, figures.contains('.')))
    }

    /// What stands between two figures: a dash or a stroke, or at most three letters. Whether it has letters.
    fn separator(&mut self) -> Result<bool, TyreUnread> {
        let end = self.0.find(|letter: char| letter.is_ascii_digit()).ok_or(TyreUnread::Form)?;
        let (between, rest) = self.0.split_at(end);
        self.0 = rest;
        let letters = between.chars().filter(char::is_ascii_uppercase).count();
        let marks = between.chars().filter(|letter| matches!(letter, '-' | '/')).count();
        let others = between.chars().filter(|letter| *letter != ' ').count() - letters - marks;
        let fits = others == 0 && letters <= 3 && marks <= 1 && !between.is_empty();
        if fits { Ok(letters > 0) } else { Err(TyreUnread::Form) }
    }

    /// Whether nothing is left but marks of load, speed, plies, and words.
    fn is_marks(&self) -> bool {
        !self.0.starts_with(['-', '/', '.']) && self.0.split(' ').all(is_mark)
    }
}

/// `91H`, `104/102R`, `4PR`, `TL`, `M+S`, `(82S)`.
fn is_mark(word: &str) -> bool {
    let word = word.trim_matches(['(', ')']);
    let end = word.find(|letter: char| !letter.is_ascii_digit() && letter != '/').unwrap_or(word.len());
    let (figures, letters) = word.split_at(end);
    let short = figures.split('/').all(|figure| figure.len() <= 3) && figures.split('/').count() <= 2;
    let is_word = letters.chars().all(|letter| letter.is_ascii_uppercase() || matches!(letter, '+' | '&'));
    // A figure and more than two letters is something else: a second size.
    short && is_word && (figures.is_empty() || letters.len() <= 2)
}

#[cfg(test)]
mod tests {
    use super::{AspectFrom, INCH, Tyre, TyreUnread};

    fn said(marking: &str) -> Result<(f64, f64, f64, AspectFrom), TyreUnread> {
        Tyre::read(marking).map(|tyre| (tyre.width, tyre.aspect, tyre.rim / INCH, tyre.aspect_from))
    }

    #[test]
    fn every_accepted_form() {
        use AspectFrom::{Inch, Marked, Metric};
        let metric = [
            ("205/65 R 15", 205.0, 0.65, 15.0, Marked),
            ("205/65R15 91H", 205.0, 0.65, 15.0, Marked),
            ("  p205/65r15 ", 205.0, 0.65, 15.0, Marked),
            ("LT245/75R16 120/116Q", 245.0, 0.75, 16.0, Marked),
            ("205/65 ZR 15 XL", 205.0, 0.65, 15.0, Marked),
            ("205 65 15", 205.0, 0.65, 15.0, Marked),
            ("145-80-13", 145.0, 0.80, 13.0, Marked),
            ("145/80 – 13 (75S) TL", 145.0, 0.80, 13.0, Marked),
            ("185/70-13", 185.0, 0.70, 13.0, Marked),
            ("185/70 HR 13", 185.0, 0.70, 13.0, Marked),
            ("195/75 R 16C 107/105 R M+S", 195.0, 0.75, 16.0, Marked),
            ("165R13", 165.0, 0.80, 13.0, Metric),
            ("165 SR 13 82S", 165.0, 0.80, 13.0, Metric),
            ("155-15", 155.0, 0.80, 15.0, Metric),
            ("145x10", 145.0, 0.80, 10.0, Metric),
        ];
        for (marking, width, aspect, rim, from) in metric {
            assert_eq!(said(marking), Ok((width, aspect, rim, from)), "{marking}");
        }
        let inch = [
            ("5.20-13", 5.20, 0.95, 13.0),
            ("5,20 - 13", 5.20, 0.95, 13.0),
            ("520-13", 5.20, 0.95, 13.0),
            ("5.90 S 15", 5.90, 0.95, 15.0),
            ("6.00-16", 6.00, 1.0, 16.0),
            ("6.00 × 16 6PR", 6.00, 1.0, 16.0),
            ("600/16", 6.00, 1.0, 16.0),
            ("5.25-17", 5.25, 1.0, 17.0),
            ("6.50-13", 6.50, 0.95, 13.0),
        ];
        for (marking, width, aspect, rim) in inch {
            assert_eq!(said(marking), Ok((width * INCH, aspect, rim, Inch)), "{marking}");
        }
        // Rims in millimetres are marked without a word of it.
        assert_eq!(Tyre::read("190/65 HR 390").map(|tyre| tyre.rim), Ok(390.0));
        assert_eq!(said("205/75 R 16.5").map(|tyre| tyre.2), Ok(16.5));
    }

    #[test]
    fn what_is_refused() {
        use TyreUnread::{Aspect, Empty, Form, Rest, Rim, Width};
        for (marking, why) in [
            ("", Empty),
            ("   ", Empty),
            ("R15", Form),
            ("ER70-14", Form),
            ("205", Form),
            ("205/65", Form),
            ("205/65 R", Form),
            ("205//65R15", Form),
            ("205/65 RADIAL 15", Form),
            ("205..5/65R15", Form),
            ("-205/65R15", Form),
            ("205/65R1e5", Rim),
            ("ж205/65R15", Form),
            ("205ж65R15", Form),
            ("95/65R15", Width),
            ("2050/65R15", Width),
            ("205.5/65R15", Width),
            ("325-19", Width),
            ("2.50-18", Width),
            ("205/165R15", Aspect),
            ("205/250", Rim),
            ("205/65R7", Rim),
            ("205/65R26", Rim),
            ("205/65R15.3", Rim),
            ("165-13-5", Rest),
            ("155R13 or 165R13", Rest),
            ("205/65R15/91H", Rest),
        ] {
            assert_eq!(said(marking), Err(why), "{marking}");
        }
        assert_eq!(said(&"9".repeat(400)), Err(Form));
        assert_eq!(said(&"9".repeat(50)), Err(Form));
    }
}
