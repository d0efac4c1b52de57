use std::fmt;
use std::str::FromStr;

use serde::{Deserialize, Serialize};

/// Writes bytes as lower-case hexadecimal figures.
fn write_hex(bytes: &[u8], f: &mut fmt::Formatter<'_>) -> fmt::Result {
    bytes.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
}

/// Reads exactly `N` bytes of hexadecimal figures.
fn read_hex<const N: usize>(text: &str) -> Option<[u8; N]> {
    if text.len() != 2 * N || !text.bytes().all(|byte| byte.is_ascii_hexdigit()) {
        return None;
    }
    let mut bytes = [0; N];
    for (index, byte) in bytes.iter_mut().enumerate() {
        *byte = u8::from_str_radix(&text[2 * index..2 * index + 2], 16).ok()?;
    }
    Some(bytes)
}

macro_rules! hex_id {
    ($(#[$meta:meta])* $name:ident, $bytes:literal, $what:literal) => {
        $(#[$meta])*
        #[derive(Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
        #[serde(into = "String", try_from = "String")]
        #[cfg_attr(feature = "ts", derive(tsify::Tsify))]
        pub struct $name(#[cfg_attr(feature = "ts", tsify(type = "string"))] [u8; $bytes]);

        impl $name {
            /// From its bytes.
            #[must_use]
            pub const fn from_bytes(bytes: [u8; $bytes]) -> Self {
                Self(bytes)
            }

            /// Its bytes.
            #[must_use]
            pub const fn bytes(&self) -> &[u8; $bytes] {
                &self.0
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write_hex(&self.0, f)
            }
        }

        impl fmt::Debug for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write_hex(&self.0, f)
            }
        }

        impl FromStr for $name {
            type Err = String;

            fn from_str(text: &str) -> Result<Self, Self::Err> {
                read_hex(text).map(Self).ok_or_else(|| format!(concat!("not ", $what, ": {}"), text))
            }
        }

        impl TryFrom<String> for $name {
            type Error = String;

            fn try_from(text: String) -> Result<Self, Self::Error> {
                text.parse()
            }
        }

        impl From<$name> for String {
            fn from(id: $name) -> Self {
                id.to_string()
            }
        }
    };
}

hex_id! {
    /// A record: a part, a photo, a place. Sixteen bytes made outside the core, written as 32 hexadecimal figures.
    ///
    /// ```
    /// let id: asfound_core::record::Id = "000102030405060708090a0b0c0d0e0f".parse().unwrap();
    /// assert_eq!(id.to_string(), "000102030405060708090a0b0c0d0e0f");
    /// ```
    Id, 16, "an id of 32 hexadecimal figures"
}
hex_id! {
    /// One start of one window: eight random bytes, written as 16 hexadecimal figures.
    Replica, 8, "a replica of 16 hexadecimal figures"
}
hex_id! {
    /// A BLAKE3 hash, the name of a chunk, a photo or a sound.
    Hash, 32, "a hash of 64 hexadecimal figures"
}

impl Hash {
    /// The hash of bytes.
    #[must_use]
    pub fn of(bytes: &[u8]) -> Self {
        Self(*blake3::hash(bytes).as_bytes())
    }
}

impl Id {
    /// An id that follows from others, so that the same command makes the same records when it is sent again.
    #[must_use]
    pub fn derived(from: Self, purpose: &str, number: u64) -> Self {
        let mut hasher = blake3::Hasher::new();
        hasher.update(&from.0).update(purpose.as_bytes()).update(&number.to_le_bytes());
        let mut bytes = [0; 16];
        bytes.copy_from_slice(&hasher.finalize().as_bytes()[..16]);
        Self(bytes)
    }
}

/// The identity of an entry: which replica wrote it, and as its how-manyth. Written as `replica:seq`.
#[derive(Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(into = "String", try_from = "String")]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
#[cfg_attr(feature = "ts", tsify(type = "string"))]
pub struct EntryId {
    /// Who wrote it.
    pub replica: Replica,
    /// Its number, from 1.
    pub seq: u64,
}

impl fmt::Display for EntryId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}:{}", self.replica, self.seq)
    }
}

impl fmt::Debug for EntryId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

impl FromStr for EntryId {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, Self::Err> {
        let parsed = text
            .split_once(':')
            .and_then(|(replica, seq)| Some(Self { replica: replica.parse().ok()?, seq: seq.parse().ok()? }));
        parsed.ok_or_else(|| format!("not an entry as replica:number: {text}"))
    }
}

impl TryFrom<String> for EntryId {
    type Error = String;

    fn try_from(text: String) -> Result<Self, Self::Error> {
        text.parse()
    }
}

impl From<EntryId> for String {
    fn from(id: EntryId) -> Self {
        id.to_string()
    }
}
