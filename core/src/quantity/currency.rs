use std::fmt;

use serde::{Deserialize, Serialize};

/// A currency by its ISO 4217 code: three capital letters.
///
/// ```
/// use asfound_core::quantity::Currency;
/// assert_eq!(Currency::parse("EUR"), Some(Currency::EUR));
/// assert_eq!(Currency::parse("euro"), None);
/// assert_eq!(Currency::parse("JPY").unwrap().decimals(), 0);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(into = "String", try_from = "String")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct Currency(#[cfg_attr(feature = "ts", tsify(type = "string"))] [u8; 3]);

impl Currency {
    /// Pound sterling.
    pub const GBP: Self = Self(*b"GBP");
    /// Euro.
    pub const EUR: Self = Self(*b"EUR");
    /// US dollar.
    pub const USD: Self = Self(*b"USD");

    /// The currency of a three-letter code.
    #[must_use]
    pub fn parse(code: &str) -> Option<Self> {
        let letters: [u8; 3] = code.as_bytes().try_into().ok()?;
        letters.iter().all(u8::is_ascii_uppercase).then_some(Self(letters))
    }

    /// The three letters.
    #[must_use]
    pub const fn letters(self) -> [u8; 3] {
        self.0
    }

    /// Digits of the minor unit, by ISO 4217 (List One, 2024): two unless listed here.
    #[must_use]
    pub const fn decimals(self) -> u32 {
        match &self.0 {
            b"BIF" | b"CLP" | b"DJF" | b"GNF" | b"ISK" | b"JPY" | b"KMF" | b"KRW" | b"PYG" | b"RWF" | b"UGX"
            | b"UYI" | b"VND" | b"VUV" | b"XAF" | b"XOF" | b"XPF" => 0,
            b"CLF" | b"UYW" => 4,
            b"BHD" | b"IQD" | b"JOD" | b"KWD" | b"LYD" | b"OMR" | b"TND" => 3,
            _ => 2,
        }
    }
}

impl fmt::Display for Currency {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(std::str::from_utf8(&self.0).unwrap_or("???"))
    }
}

impl From<Currency> for String {
    fn from(currency: Currency) -> Self {
        currency.to_string()
    }
}

impl TryFrom<String> for Currency {
    type Error = String;

    fn try_from(code: String) -> Result<Self, Self::Error> {
        Self::parse(&code).ok_or_else(|| format!("not a currency code of three capital letters: {code}"))
    }
}
