use std::borrow::Cow;
use std::fmt;

use serde::de::{Error, MapAccess, Visitor};
use serde::ser::{SerializeMap, SerializeStruct};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::vocabulary::{
    Aim, Build, Certainty, Check, CommissioningStep, Compared, Correctness, Fit, Lubrication, Moment, OutFor, Paint,
    PlaceKind, RateBasis, Relation, Route, Shape, Shot, Side, Stance, Swap, Tightened, TorqueUnit, Triage, Units,
    Vocabulary,
};
use crate::quantity::bounds::{self, Bound};
use crate::quantity::{Area, Chance, Currency, Day, ExchangeRate, Mass, Millis, Minutes, Money, Torque};
use crate::record::{FieldName, Hash, Held, Id, Item, KeptQuotes, Kind, Stored, Value};
use crate::tables::features::{Dimension, LimitKind, LimitSource};
use crate::tables::hazards::Hazard;

struct OneMember;

impl<'de> Deserialize<'de> for Change {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_map(OneMember)
    }
}

/// Writes one member if it is set.
#[inline(never)]
fn put<S: SerializeStruct, T: Serialize>(
    object: &mut S,
    name: &'static str,
    value: Option<&T>,
) -> Result<(), S::Error> {
    match value {
        Some(value) => object.serialize_field(name, value),
        None => object.skip_field(name),
    }
}

macro_rules! changes {
    ($($member:ident: $name:ident($type:ty),)*) => {
        /// One field and its new value. In JSON an object of one member: `{"name":"Hub"}`; emptied: `{"clear":"name"}`.
        #[derive(Debug, Clone, PartialEq)]
        #[cfg_attr(feature = "ts", derive(tsify::Tsify), serde(rename_all = "snake_case"))]
        pub enum Change {
            /// The field becomes empty.
            Clear(FieldName),
            $(#[doc = concat!("[`FieldName::", stringify!($name), "`].")] $name($type),)*
        }

        /// The values of one record that are set and can be read; see [`FieldName`] for what each means.
        #[derive(Debug, Clone, Default, PartialEq, Deserialize)]
        #[cfg_attr(feature = "ts", derive(tsify::Tsify))]
        pub struct Values {
            $(
                #[doc = concat!("[`FieldName::", stringify!($name), "`].")]
                #[serde(default)]
                #[cfg_attr(feature = "ts", tsify(optional))]
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

        // A call for each member: what would be derived holds all of them in one function, so long that an engine was seen to
        // compile it wrongly ("What is proven where" in DEVELOPERS.md).
        impl Serialize for Values {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                let set = [$(self.$member.is_some()),*];
                let mut object = serializer.serialize_struct("Values", set.into_iter().filter(|&set| set).count())?;
                $(put(&mut object, stringify!($member), self.$member.as_ref())?;)*
                object.end()
            }
        }

        // One look into the table of fields, then the value by its type: what would be derived is several times as long,
        // once for each way in which a change can cross.
        impl Serialize for Change {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                let mut map = serializer.serialize_map(Some(1))?;
                match self {
                    Self::Clear(field) => map.serialize_entry("clear", field)?,
                    $(Self::$name(value) => map.serialize_entry(FieldName::$name.word(), value)?,)*
                }
                map.end()
            }
        }

        impl<'de> Visitor<'de> for OneMember {
            type Value = Change;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("an object of one member: a field and its value")
            }

            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Change, A::Error> {
                let word: Option<Cow<'de, str>> = map.next_key()?;
                let word = word.ok_or_else(|| A::Error::custom("a change names a field"))?;
                let field = FieldName::ALL.iter().copied().find(|field| field.word() == word);
                let change = match field {
                    _ if word == "clear" => Change::Clear(map.next_value()?),
                    $(Some(FieldName::$name) => Change::$name(map.next_value()?),)*
                    None => return Err(A::Error::custom(format_args!("unknown field `{word}`"))),
                };
                match map.next_key::<Cow<'de, str>>()? {
                    None => Ok(change),
                    Some(_) => Err(A::Error::custom("a change has one member")),
                }
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
    interest: Interest(i64), years_kept: YearsKept(i64), tax_rate: TaxRate(i64), threshold: Threshold(Money),
    safety_critical: SafetyCritical(bool), freight: Freight(Money), tax: Tax(Money), duty: Duty(Money),
    consumables: Consumables(Money), surcharge: Surcharge(Money), withheld: Withheld(Chance),
    exchange_rate: ExchangeRate(ExchangeRate), life: Life(i64), life_certainty: LifeCertainty(Certainty),
    fallback: Fallback(Id), fails_at_bench: FailsAtBench(bool), correctness: Correctness(Correctness),
    valid_until: ValidUntil(Day), wait: Wait(i64), cash_least: CashLeast(Money), cash_most: CashMost(Money),
    own_time_least: OwnTimeLeast(Minutes), own_time_most: OwnTimeMost(Minutes), chance_least: ChanceLeast(Chance),
    chance_most: ChanceMost(Chance), life_least: LifeLeast(i64), life_most: LifeMost(i64), part: Part(Id),
    wait_certainty: WaitCertainty(Certainty), wait_least: WaitLeast(i64), wait_most: WaitMost(i64),
    pair: Pair(bool), question: Question(String), outcome: Outcome(String), finding: Finding(Id),
    feature: Feature(String), spot: Spot(String), measured: Measured(i64), instrument: Instrument(Id),
    zero_error: ZeroError(i64), resolution: Resolution(i64), uncertainty: Uncertainty(i64), coverage: Coverage(i64),
    limit_kind: LimitKind(LimitKind), least: Least(i64), most: Most(i64), machining_least: MachiningLeast(i64),
    machining_most: MachiningMost(i64), as_new: AsNew(i64), limit_source: LimitSource(LimitSource),
    dimension: Dimension(Dimension), hazard: Hazard(Hazard), shipping: Shipping(Money), free_from: FreeFrom(Money),
    minimum_order: MinimumOrder(Money), minimum_charge: MinimumCharge(Money), back_order: BackOrder(Chance),
    return_window: ReturnWindow(i64), restocking: Restocking(Chance), surcharge_deadline: SurchargeDeadline(i64),
    warranty: Warranty(i64), stance: Stance(Stance), from_value: FromValue(Money), from_mass: FromMass(Mass),
    relation: Relation(Relation), other: Other(Id), stage: Stage(i64), budget: Budget(Money),
    own_hours: OwnHours(Minutes), latest: Latest(Day), sold: Sold(Money), bought: Bought(bool),
    swap: Swap(Swap), axle_ratio: AxleRatio(i64), gear_ratios: GearRatios(String), overdrive: Overdrive(i64),
    overdrive_on: OverdriveOn(i64), tyre: Tyre(String), circumference: Circumference(i64),
    turns_per_mile: TurnsPerMile(i64), diameter: Diameter(i64), highest_turns: HighestTurns(i64),
    rate: Rate(Money), rate_basis: RateBasis(RateBasis), area: Area(Area), duty_rate: DutyRate(i64), fetched: Fetched(bool),
    quotes: Quotes(KeptQuotes), oiled: Oiled(bool), wrapped: Wrapped(bool), fragile: Fragile(bool),
    two_person: TwoPerson(bool), long: Long(i64), wide: Wide(i64), high: High(i64), build: Build(Build),
    out_for: OutFor(OutFor), due: Due(Day), arrived: Arrived(Day), compared: Compared(Compared), ended: Ended(Millis),
    in_count: InCount(Id), fit: Fit(Fit), finished: Finished(bool), paint: Paint(Paint), painted: Painted(bool),
    reference: Reference(bool), fit_time: FitTime(Minutes), torque: Torque(Torque), torque_unit: TorqueUnit(TorqueUnit),
    angle: Angle(i64), sequence: Sequence(String), stages: Stages(String), lubrication: Lubrication(Lubrication),
    compound: Compound(String), torque_source: TorqueSource(String), at_ride_height: AtRideHeight(bool),
    tightened: Tightened(Tightened), checked_again: CheckedAgain(bool), renew: Renew(bool), in_hand: InHand(i64),
    drained: Drained(i64), filled: Filled(i64), capacity: Capacity(i64),
    commissioning_step: CommissioningStep(CommissioningStep), found_after: FoundAfter(String),
    checking_days: CheckingDays(i64), lowered: Lowered(bool), on_the_road: OnTheRoad(bool),
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
            | Self::Quote(id)
            | Self::Fallback(id)
            | Self::Finding(id)
            | Self::Instrument(id)
            | Self::Other(id)
            | Self::InCount(id)
            | Self::Part(id) => Some(*id),
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
            Self::Stage(stage) => (bounds::STAGE, *stage),
            Self::Mass(mass) | Self::FromMass(mass) => (bounds::MASS, mass.grams()),
            Self::Area(area) => (bounds::AREA, area.square_millimetres()),
            Self::Thickness(length) => (bounds::LENGTH, *length),
            Self::HourValue(money)
            | Self::Cash(money)
            | Self::Rate(money)
            | Self::HourValueThen(money)
            | Self::Threshold(money)
            | Self::Freight(money)
            | Self::Tax(money)
            | Self::Duty(money)
            | Self::Consumables(money)
            | Self::Surcharge(money)
            | Self::CashLeast(money)
            | Self::CashMost(money)
            | Self::Shipping(money)
            | Self::FreeFrom(money)
            | Self::MinimumOrder(money)
            | Self::MinimumCharge(money)
            | Self::FromValue(money)
            | Self::Budget(money)
            | Self::Sold(money) => (bounds::PRICE, money.minor),
            Self::OwnTime(time)
            | Self::StripAgain(time)
            | Self::OwnTimeLeast(time)
            | Self::OwnTimeMost(time)
            | Self::FitTime(time)
            | Self::OwnHours(time) => (bounds::MINUTES, time.0),
            Self::Chance(chance)
            | Self::Withheld(chance)
            | Self::ChanceLeast(chance)
            | Self::ChanceMost(chance)
            | Self::BackOrder(chance)
            | Self::Restocking(chance) => (bounds::CHANCE, chance.0),
            Self::Life(months) | Self::LifeLeast(months) | Self::LifeMost(months) | Self::Warranty(months) => {
                (bounds::LIFE, *months)
            }
            Self::YearsKept(years) => (bounds::YEARS, *years),
            Self::Interest(rate) => (bounds::INTEREST, *rate),
            Self::TaxRate(rate) | Self::DutyRate(rate) => (bounds::TAX, *rate),
            Self::Wait(days)
            | Self::WaitLeast(days)
            | Self::WaitMost(days)
            | Self::ReturnWindow(days)
            | Self::CheckingDays(days)
            | Self::SurchargeDeadline(days) => (bounds::DAYS, *days),
            Self::Long(length) | Self::Wide(length) | Self::High(length) => (bounds::SPAN, *length),
            Self::Torque(torque) => (bounds::TORQUE, torque.0),
            Self::Angle(degrees) => (bounds::ANGLE, *degrees),
            Self::InHand(pieces) => (bounds::IN_HAND, *pieces),
            Self::Drained(volume) | Self::Filled(volume) | Self::Capacity(volume) => (bounds::VOLUME, *volume),
            Self::ExchangeRate(rate) => (bounds::EXCHANGE, rate.0),
            Self::ExpectedThen(expected) => (bounds::EXPECTED, whole(*expected)),
            Self::Number(block) => (bounds::BLOCK, *block),
            Self::Year(year) => (bounds::YEAR, *year),
            Self::Held(held) => (bounds::DEVICES, i64::try_from(held.0.len()).unwrap_or(i64::MAX)),
            Self::Quotes(quotes) => (bounds::PLANNED, i64::try_from(quotes.0.len()).unwrap_or(i64::MAX)),
            Self::HandedOut(moment) | Self::Taken(moment) | Self::Ended(moment) => (bounds::MOMENT, moment.0),
            Self::Length(bytes) => (bounds::BYTES, *bytes),
            Self::Lasts(lasts) => (bounds::SOUND, *lasts),
            Self::Order(order) => (bounds::ORDER, *order),
            Self::Measured(value)
            | Self::ZeroError(value)
            | Self::Least(value)
            | Self::Most(value)
            | Self::MachiningLeast(value)
            | Self::MachiningMost(value)
            | Self::AsNew(value) => (bounds::READING, *value),
            Self::Resolution(value) | Self::Uncertainty(value) => (bounds::UNCERTAINTY, *value),
            Self::Coverage(value) => (bounds::COVERAGE, *value),
            Self::AxleRatio(ratio) => (bounds::AXLE_RATIO, *ratio),
            Self::Overdrive(ratio) => (bounds::OVERDRIVE, *ratio),
            Self::OverdriveOn(gears) => (bounds::OVERDRIVE_ON, *gears),
            Self::Circumference(length) => (bounds::CIRCUMFERENCE, *length),
            Self::TurnsPerMile(turns) => (bounds::TURNS_PER_MILE, *turns),
            Self::Diameter(length) => (bounds::DIAMETER, *length),
            Self::HighestTurns(turns) => (bounds::HIGHEST_TURNS, *turns),
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
            | Self::Question(text)
            | Self::Outcome(text)
            | Self::Feature(text)
            | Self::Spot(text)
            | Self::GearRatios(text)
            | Self::Tyre(text)
            | Self::Sequence(text)
            | Self::Stages(text)
            | Self::Compound(text)
            | Self::TorqueSource(text)
            | Self::FoundAfter(text)
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
