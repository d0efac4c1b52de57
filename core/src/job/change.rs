use serde::{Deserialize, Serialize};

use super::vocabulary::{
    Aim, Certainty, Check, Moment, PlaceKind, Route, Shape, Shot, Side, Triage, Units, Vocabulary,
};
use crate::quantity::bounds::{self, Bound};
use crate::quantity::{Chance, Currency, Mass, Millis, Minutes, Money};
use crate::record::{FieldName, Hash, Held, Id, Item, Kind, Stored, Value};

macro_rules! changes {
    ($($member:ident: $name:ident($type:ty),)*) => {
        /// One field and its new value. In JSON an object of one member: `{"name":"Hub"}`; emptied: `{"clear":"name"}`.
        #[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
        #[serde(rename_all = "snake_case")]
        #[cfg_attr(feature = "ts", derive(tsify::Tsify))]
        pub enum Change {
            /// The field becomes empty.
            Clear(FieldName),
            $(#[doc = concat!("[`FieldName::", stringify!($name), "`].")] $name($type),)*
        }

        /// The values of one record that are set and can be read; see [`FieldName`] for what each means.
        #[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
        #[cfg_attr(feature = "ts", derive(tsify::Tsify))]
        pub struct Values {
            $(
                #[doc = concat!("[`FieldName::", stringify!($name), "`].")]
                #[serde(default, skip_serializing_if = "Option::is_none")]
                pub $member: Option<$type>,
            )*
        }

        impl Values {
            /// The values of a record.
            #[must_use]
            pub fn of(item: &Item) -> Self {
                Self { $($member: item.read(FieldName::$name),)* }
            }
        }

        impl Change {
            /// Which field it writes.
            #[must_use]
            pub const fn field(&self) -> FieldName {
                match self {
                    Self::Clear(field) => *field,
                    $(Self::$name(_) => FieldName::$name,)*
                }
            }

            /// The value as it is stored.
            #[must_use]
            pub fn store(&self) -> Value {
                match self {
                    Self::Clear(_) => Value::Cleared,
                    $(Self::$name(value) => value.store(),)*
                }
            }

            /// What a stored value says; nothing when this version cannot read it.
            #[must_use]
            pub fn read(field: FieldName, value: &Value) -> Option<Self> {
                if *value == Value::Cleared {
                    return Some(Self::Clear(field));
                }
                match field {
                    $(FieldName::$name => Stored::read(value).map(Self::$name),)*
                }
            }
        }
    };
}

changes! {
    kind: Kind(Kind), name: Name(String), struck: Struck(bool), done: Done(bool), remark: Remark(String),
    currency: Currency(Currency), hour_value: HourValue(Money), vocabulary: Vocabulary(Vocabulary),
    units: Units(Units), aim: Aim(Aim), driver_side: DriverSide(Side), handed_out: HandedOut(Millis), held: Held(Held),
    device: Device(Id), number: Number(i64), donor: Donor(bool), year: Year(i64),
    identity_number: IdentityNumber(String), vehicle: Vehicle(Id), inside: Inside(Id), side: Side(Side),
    open: Open(bool), tag: Tag(i64), assembly: Assembly(Id), quantity: Quantity(i64),
    makers_number: MakersNumber(String), casting_number: CastingNumber(String), material: Material(String),
    mass: Mass(Mass), family: Family(String), place: Place(Id), single_use: SingleUse(bool),
    cannot_be_bought: CannotBeBought(bool), missing_from_start: MissingFromStart(bool), wrong_piece: WrongPiece(bool),
    stuck: Stuck(bool), tried: Tried(String), off: Off(bool), order: Order(i64), from_boxes: FromBoxes(bool),
    triage: Triage(Triage), split_from: SplitFrom(Id), chosen: Chosen(Id), bag: Bag(String), joint: Joint(Id),
    thickness: Thickness(i64), size: Size(String), of: Of(Id), moment: Moment(Moment), shot: Shot(Shot),
    caption: Caption(String), blob: Blob(Hash), length: Length(i64), media_type: MediaType(String),
    taken: Taken(Millis), shape: Shape(Shape), x: X(i64), y: Y(i64), dx: Dx(i64), dy: Dy(i64), text: Text(String),
    lasts: Lasts(i64), within: Within(Id), place_kind: PlaceKind(PlaceKind), check: Check(Check),
    skipped: Skipped(bool), route: Route(Route), cash: Cash(Money), own_time: OwnTime(Minutes),
    chance: Chance(Chance), strip_again: StripAgain(Minutes), cash_certainty: CashCertainty(Certainty),
    own_time_certainty: OwnTimeCertainty(Certainty), chance_certainty: ChanceCertainty(Certainty), from: From(String),
    quote: Quote(Id), who: Who(String), hour_value_then: HourValueThen(Money), expected_then: ExpectedThen(f64),
}

impl Change {
    /// The record it points at, if it points at one.
    #[must_use]
    pub const fn target(&self) -> Option<Id> {
        match self {
            Self::Device(id)
            | Self::Vehicle(id)
            | Self::Inside(id)
            | Self::Assembly(id)
            | Self::Place(id)
            | Self::SplitFrom(id)
            | Self::Chosen(id)
            | Self::Joint(id)
            | Self::Of(id)
            | Self::Within(id)
            | Self::Quote(id) => Some(*id),
            _ => None,
        }
    }

    /// The bound that its value breaks, if it breaks one.
    #[must_use]
    pub fn broken_bound(&self) -> Option<Bound> {
        let (bound, value) = self.bounded()?;
        (!bound.holds(value)).then_some(bound)
    }

    /// The value as a number, with its bound.
    fn bounded(&self) -> Option<(Bound, i64)> {
        Some(match self {
            Self::Tag(number) => (bounds::TAG, *number),
            Self::Quantity(pieces) => (bounds::PIECES, *pieces),
            Self::Mass(mass) => (bounds::MASS, mass.grams()),
            Self::Thickness(length) => (bounds::LENGTH, *length),
            Self::HourValue(money) | Self::Cash(money) | Self::HourValueThen(money) => (bounds::PRICE, money.minor),
            Self::ExpectedThen(expected) => (bounds::EXPECTED, whole(*expected)),
            Self::Number(block) => (bounds::BLOCK, *block),
            Self::Year(year) => (bounds::YEAR, *year),
            Self::Held(held) => (bounds::DEVICES, i64::try_from(held.0.len()).unwrap_or(i64::MAX)),
            Self::HandedOut(moment) | Self::Taken(moment) => (bounds::MOMENT, moment.0),
            Self::Length(bytes) => (bounds::BYTES, *bytes),
            Self::Lasts(lasts) => (bounds::SOUND, *lasts),
            Self::OwnTime(time) | Self::StripAgain(time) => (bounds::MINUTES, time.0),
            Self::Chance(chance) => (bounds::CHANCE, chance.0),
            Self::Order(order) => (bounds::ORDER, *order),
            Self::X(share) | Self::Y(share) | Self::Dx(share) | Self::Dy(share) => (bounds::SHARE, *share),
            Self::Name(text)
            | Self::Remark(text)
            | Self::IdentityNumber(text)
            | Self::MakersNumber(text)
            | Self::CastingNumber(text)
            | Self::Material(text)
            | Self::Family(text)
            | Self::Tried(text)
            | Self::Bag(text)
            | Self::Size(text)
            | Self::Caption(text)
            | Self::MediaType(text)
            | Self::Text(text)
            | Self::From(text)
            | Self::Who(text) => (bounds::TEXT, i64::try_from(text.len()).unwrap_or(i64::MAX)),
            _ => return None,
        })
    }
}

/// The whole part of an expectation; what is no number lies beyond every bound.
#[expect(clippy::cast_possible_truncation, reason = "a float beyond 64 bits becomes the greatest or least of them")]
const fn whole(expected: f64) -> i64 {
    if expected.is_nan() { i64::MAX } else { expected as i64 }
}
