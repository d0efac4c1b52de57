use super::{Hash, Id, Value};
use crate::quantity::{Area, Chance, Currency, Day, ExchangeRate, Mass, Millis, Minutes, Money, Torque};

/// A type that is kept in a field: how it becomes a [`Value`] and back.
pub trait Stored: Sized {
    /// As it is stored.
    fn store(&self) -> Value;
    /// From what is stored; nothing when it is of another kind.
    fn read(value: &Value) -> Option<Self>;
}

macro_rules! stored {
    ($type:ty, $store:expr, $pattern:pat => $read:expr) => {
        impl Stored for $type {
            fn store(&self) -> Value {
                let store: fn(&Self) -> Value = $store;
                store(self)
            }

            fn read(value: &Value) -> Option<Self> {
                match value {
                    $pattern => $read,
                    _ => None,
                }
            }
        }
    };
}

stored!(bool, |flag| Value::Flag(*flag), Value::Flag(flag) => Some(*flag));
stored!(i64, |number| Value::Whole(*number), Value::Whole(number) => Some(*number));
stored!(f64, |number| Value::Real(number.to_bits()), Value::Real(bits) => Some(Self::from_bits(*bits)));
stored!(String, |text| Value::Text(text.clone()), Value::Text(text) => Some(text.clone()));
stored!(Id, |id| Value::Ref(*id), Value::Ref(id) => Some(*id));
stored!(Hash, |hash| Value::Blob(*hash), Value::Blob(hash) => Some(*hash));
stored!(Minutes, |minutes| Value::Whole(minutes.0), Value::Whole(number) => Some(Self(*number)));
stored!(Millis, |millis| Value::Whole(millis.0), Value::Whole(number) => Some(Self(*number)));
stored!(Chance, |chance| Value::Whole(chance.0), Value::Whole(number) => Some(Self(*number)));
stored!(ExchangeRate, |rate| Value::Whole(rate.0), Value::Whole(number) => Some(Self(*number)));
stored!(Day, |day| Value::Whole(day.count()), Value::Whole(number) => Self::from_count(*number));
stored!(Area, |area| Value::Whole(area.0), Value::Whole(number) => Some(Self(*number)));
stored!(Torque, |torque| Value::Whole(torque.0), Value::Whole(number) => Some(Self(*number)));
stored!(Mass, |mass| Value::Whole(mass.0), Value::Whole(number) => Some(Self(*number)));
stored!(Currency, |currency| Value::Text(currency.to_string()), Value::Text(code) => Self::parse(code));
stored!(
    Money,
    |money| Value::Money(money.minor, money.currency.letters()),
    Value::Money(minor, letters) => {
        let currency = std::str::from_utf8(letters).ok().and_then(Currency::parse)?;
        Some(Self::from_minor(*minor, currency))
    }
);

/// Lets a type cross the protocol as its word, by one look into its table: what is derived for every type anew is many
/// times as long, and has to be fetched by a phone.
macro_rules! said_as_word {
    ($name:ident) => {
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.serialize_str(self.word())
            }
        }

        impl<'de> serde::Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                let word = <std::borrow::Cow<'de, str> as serde::Deserialize>::deserialize(deserializer)?;
                let found = Self::ALL.iter().copied().find(|one| one.word() == word);
                found.ok_or_else(|| serde::de::Error::custom(format_args!("unknown word `{word}`")))
            }
        }
    };
}
pub(crate) use said_as_word;

/// An enumeration that is stored, and crosses the protocol, as the words given here; they never change.
macro_rules! stored_enum {
    ($(#[$outer:meta])* pub enum $name:ident { $($(#[$meta:meta])* $variant:ident = $word:literal,)* }) => {
        $(#[$outer])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[cfg_attr(feature = "ts", derive(tsify::Tsify))]
        pub enum $name { $($(#[$meta])* #[cfg_attr(feature = "ts", serde(rename = $word))] $variant,)* }

        $crate::record::said_as_word!($name);

        impl $name {
            /// All of them, in order of declaration.
            pub const ALL: &'static [Self] = &[$(Self::$variant,)*];

            /// The word it is stored as.
            #[must_use]
            pub const fn word(self) -> &'static str {
                match self { $(Self::$variant => $word,)* }
            }
        }

        impl $crate::record::Stored for $name {
            fn store(&self) -> $crate::record::Value {
                $crate::record::Value::Text(self.word().to_owned())
            }

            fn read(value: &$crate::record::Value) -> Option<Self> {
                match value {
                    $crate::record::Value::Text(word) => Self::ALL.iter().copied().find(|one| one.word() == word),
                    _ => None,
                }
            }
        }
    };
}
pub(crate) use stored_enum;
