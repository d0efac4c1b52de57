// Generated from the Rust types of the core; do not edit.

/**
 * A record: a part, a photo, a place. Sixteen bytes made outside the core, written as 32 hexadecimal figures.
 *
 * ```
 * let id: asfound_core::record::Id = "000102030405060708090a0b0c0d0e0f".parse().unwrap();
 * assert_eq!(id.to_string(), "000102030405060708090a0b0c0d0e0f");
 * ```
 */
export type Id = string;

/**
 * One start of one window: eight random bytes, written as 16 hexadecimal figures.
 */
export type Replica = string;

/**
 * A BLAKE3 hash, the name of a chunk, a photo or a sound.
 */
export type Hash = string;

/**
 * The identity of an entry: which replica wrote it, and as its how-manyth. Written as `replica:seq`.
 */
export type EntryId = string;

/**
 * Which entries somebody has: of each replica named here those from 1 to this number.
 *
 * ```
 * use asfound_core::record::{EntryId, Held, Replica};
 * let entry = |seq| EntryId { replica: Replica::from_bytes([1; 8]), seq };
 * let held = Held(vec![entry(4)]);
 * assert!(held.holds(entry(4)) && !held.holds(entry(5)));
 * ```
 */
export type Held = EntryId[];

/**
 * What a plan takes that was kept, part by part. A quote for the pieces that a kit has too few of stands after that of the kit,
 * with the same part.
 *
 * ```
 * use asfound_core::record::{Id, KeptQuote, KeptQuotes, Stored};
 * let id = |number| Id::from_bytes([number; 16]);
 * let kept = KeptQuotes(vec![KeptQuote { part: id(1), quote: id(2), cash: 4_50 }]);
 * assert_eq!(KeptQuotes::read(&kept.store()), Some(kept));
 * ```
 */
export type KeptQuotes = KeptQuote[];

/**
 * A quote of a plan that was kept.
 */
export interface KeptQuote {
    /**
     * Which part it is for.
     */
    part: Id;
    /**
     * Which quote.
     */
    quote: Id;
    /**
     * What was paid at first for the whole quote then, in minor units of the job.
     */
    cash: number;
}

/**
 * What a record is.
 */
export type Kind = "job" | "device" | "block" | "vehicle" | "assembly" | "part" | "joint" | "piece" | "photo" | "mark" | "note" | "slice" | "place" | "quote" | "choice" | "before" | "cover" | "purchase" | "finding" | "reading" | "limit" | "instrument" | "own-family" | "own-check" | "caution" | "supplier" | "tier" | "rule" | "gearing" | "plan" | "delivery" | "outing" | "count" | "sighting" | "goes-after" | "consumable" | "fluid" | "commissioning";

/**
 * The fields that this version knows.
 */
export type FieldName = "kind" | "name" | "struck" | "done" | "remark" | "currency" | "hour_value" | "vocabulary" | "units" | "aim" | "driver_side" | "handed_out" | "interest" | "years_kept" | "tax_rate" | "threshold" | "held" | "device" | "number" | "donor" | "year" | "identity_number" | "vehicle" | "inside" | "side" | "open" | "tag" | "assembly" | "quantity" | "makers_number" | "casting_number" | "material" | "mass" | "family" | "place" | "single_use" | "cannot_be_bought" | "missing_from_start" | "wrong_piece" | "stuck" | "tried" | "off" | "order" | "from_boxes" | "triage" | "split_from" | "chosen" | "safety_critical" | "pair" | "bag" | "joint" | "thickness" | "size" | "of" | "moment" | "shot" | "caption" | "blob" | "length" | "media_type" | "taken" | "shape" | "x" | "y" | "dx" | "dy" | "text" | "lasts" | "within" | "place_kind" | "check" | "skipped" | "route" | "cash" | "own_time" | "chance" | "strip_again" | "cash_certainty" | "own_time_certainty" | "chance_certainty" | "from" | "quote" | "who" | "hour_value_then" | "expected_then" | "freight" | "tax" | "duty" | "consumables" | "surcharge" | "withheld" | "exchange_rate" | "life" | "life_certainty" | "fallback" | "fails_at_bench" | "correctness" | "valid_until" | "wait" | "cash_least" | "cash_most" | "own_time_least" | "own_time_most" | "chance_least" | "chance_most" | "life_least" | "life_most" | "part" | "wait_certainty" | "wait_least" | "wait_most" | "question" | "outcome" | "finding" | "feature" | "spot" | "measured" | "instrument" | "zero_error" | "resolution" | "uncertainty" | "coverage" | "limit_kind" | "least" | "most" | "machining_least" | "machining_most" | "as_new" | "limit_source" | "dimension" | "hazard" | "shipping" | "free_from" | "minimum_order" | "minimum_charge" | "back_order" | "return_window" | "restocking" | "surcharge_deadline" | "warranty" | "stance" | "from_value" | "from_mass" | "relation" | "other" | "stage" | "budget" | "own_hours" | "latest" | "sold" | "bought" | "swap" | "axle_ratio" | "gear_ratios" | "overdrive" | "overdrive_on" | "tyre" | "circumference" | "turns_per_mile" | "diameter" | "highest_turns" | "rate" | "rate_basis" | "area" | "duty_rate" | "fetched" | "quotes" | "oiled" | "wrapped" | "fragile" | "two_person" | "long" | "wide" | "high" | "build" | "out_for" | "due" | "arrived" | "compared" | "ended" | "in_count" | "fit" | "finished" | "paint" | "painted" | "reference" | "fit_time" | "torque" | "torque_unit" | "angle" | "sequence" | "stages" | "lubrication" | "compound" | "torque_source" | "at_ride_height" | "tightened" | "checked_again" | "renew" | "in_hand" | "drained" | "filled" | "capacity" | "commissioning_step" | "found_after" | "checking_days" | "lowered" | "on_the_road";

/**
 * Money that was paid, quoted or summed: exact, in minor units of a currency.
 *
 * An expectation is never a `Money` but an [`Estimate`](super::Estimate).
 *
 * ```
 * use asfound_core::quantity::{Currency, Money};
 * let eighteen = Money::from_minor(18_00, Currency::GBP);
 * let freight = Money::from_minor(4_50, Currency::GBP);
 * assert_eq!(eighteen.plus(freight), Some(Money::from_minor(22_50, Currency::GBP)));
 * assert_eq!(eighteen.plus(Money::from_minor(1, Currency::EUR)), None);
 * ```
 */
export interface Money {
    /**
     * Minor units: pence, cents.
     */
    minor: number;
    /**
     * ISO 4217 code.
     */
    currency: Currency;
}

/**
 * A currency by its ISO 4217 code: three capital letters.
 *
 * ```
 * use asfound_core::quantity::Currency;
 * assert_eq!(Currency::parse("EUR"), Some(Currency::EUR));
 * assert_eq!(Currency::parse("euro"), None);
 * assert_eq!(Currency::parse("JPY").unwrap().decimals(), 0);
 * ```
 */
export type Currency = string;

/**
 * An expectation in money: float minor units, never rounded here; rounding happens once, where it is shown.
 *
 * ```
 * use asfound_core::quantity::{Currency, Estimate, Money};
 * let bench = Estimate::of(Money::from_minor(18_00, Currency::GBP)).plus_minor(4000.0);
 * assert_eq!(bench.minor, 5800.0);
 * ```
 */
export interface Estimate {
    /**
     * Minor units, with fractions.
     */
    minor: number;
    /**
     * ISO 4217 code.
     */
    currency: Currency;
}

/**
 * A duration of work or waiting in whole minutes.
 *
 * ```
 * use asfound_core::quantity::{Currency, Minutes, Money};
 * let twenty_an_hour = Money::from_minor(20_00, Currency::GBP);
 * assert_eq!(Minutes::new(90).at(twenty_an_hour).minor, 3000.0);
 * ```
 */
export type Minutes = number;

/**
 * A chance in parts of ten thousand, so that it is stored exactly: 2500 is 25 of 100.
 *
 * ```
 * use asfound_core::quantity::Chance;
 * assert_eq!(Chance::of_100(25).share(), 0.25);
 * ```
 */
export type Chance = number;

/**
 * A mass in whole grams.
 *
 * ```
 * assert_eq!(asfound_core::quantity::Mass::from_kilograms(15).grams(), 15_000);
 * ```
 */
export type Mass = number;

/**
 * A tightening figure in whole micronewton-metres, up to ten thousand newton-metres ([`bounds::TORQUE`](super::bounds::TORQUE)).
 *
 * ```
 * use asfound_core::quantity::{Torque, Unit};
 * assert_eq!(Torque::read("54", Unit::NewtonMetre), Ok(Torque(54_000_000)));
 * // 4.4482216152605 N (a pound of force) × 0.3048 m, both exact by definition.
 * assert_eq!(Torque::read("40 lbf ft", Unit::NewtonMetre), Ok(Torque(54_232_718)));
 * ```
 */
export type Torque = number;

/**
 * An area in whole square millimetres.
 *
 * ```
 * assert_eq!(asfound_core::quantity::Area::from_square_decimetres(3).square_millimetres(), 30_000);
 * ```
 */
export type Area = number;

/**
 * A moment by the device's clock, in milliseconds since 1970-01-01 UTC: for display only, never for order.
 */
export type Millis = number;

/**
 * A day of the calendar, as `YYYY-MM-DD` (ISO 8601).
 *
 * ```
 * use asfound_core::quantity::Day;
 * let day = Day::parse("2024-02-29").unwrap();
 * assert_eq!(day.to_string(), "2024-02-29");
 * assert!(day < Day::parse("2024-03-01").unwrap());
 * assert_eq!(Day::parse("2023-02-29"), None);
 * ```
 */
export type Day = string;

/**
 * What one unit of a foreign currency costs in the job's own, in millionths, so that it is stored exactly: 850000 is 0.85.
 *
 * ```
 * use asfound_core::quantity::{Currency, ExchangeRate, Money};
 * let rate = ExchangeRate(850_000);
 * assert_eq!(rate.exchanged(Money::from_minor(100_00, Currency::EUR), Currency::GBP), Some(85_00));
 * let yen = Currency::parse("JPY").unwrap();
 * assert_eq!(ExchangeRate(5_200).exchanged(Money::from_minor(1_000, yen), Currency::GBP), Some(5_20));
 * ```
 */
export type ExchangeRate = number;

/**
 * Left or right, from the driver's seat.
 */
export type Side = "left" | "right";

/**
 * Which trade words are shown.
 */
export type Vocabulary = "british" | "american";

/**
 * Which units are shown.
 */
export type Units = "metric" | "inch";

/**
 * How original it must be.
 */
export type Aim = "hard-use" | "regular-road-use" | "conserve" | "show-standard";

/**
 * The first word at the strip; the judgement follows after cleaning.
 */
export type Triage = "looks-good" | "doubtful" | "scrap";

/**
 * Where in the work a photo was taken.
 */
export type Moment = "before" | "off" | "after";

/**
 * What a photo was taken for.
 */
export type Shot = "plain" | "index-mark" | "shims" | "tag";

/**
 * A mark on a photo.
 */
export type Shape = "ring" | "arrow";

/**
 * A kind of place.
 */
export type PlaceKind = "area" | "rack" | "shelf" | "box" | "bag" | "hook" | "floor";

/**
 * What is looked at before anything is slackened (common practice, no source).
 */
export type Check = "height" | "free-play" | "index-marks" | "gaps" | "tight-fasteners" | "photos";

/**
 * What happens to a part.
 */
export type Route = "use-again" | "repair-here" | "send-out" | "exchange" | "buy" | "kit" | "donor" | "irreplaceable";

/**
 * How sure a figure is, in the user's own word.
 */
export type Certainty = "sure" | "about" | "wild-guess" | "starting";

/**
 * Whether a plan is free to take something.
 */
export type Stance = "pinned" | "forbidden";

/**
 * What a rate is a price for.
 */
export type RateBasis = "piece" | "square-centimetre" | "square-decimetre" | "square-metre" | "square-inch" | "square-foot" | "kilogram" | "pound";

/**
 * What a fit rule says of its subject and the other.
 */
export type Relation = "needs" | "rules-out" | "goes-with";

/**
 * Which side of a swap a gearing is on.
 */
export type Swap = "before" | "after" | "candidate";

/**
 * How much of the box around a part it fills (common practice, no source).
 */
export type Build = "solid" | "hollow" | "sheet";

/**
 * What a part is out of the house for.
 */
export type OutFor = "work" | "loan";

/**
 * What came of comparing with the old part.
 */
export type Compared = "right" | "wrong";

/**
 * How far a part is on again.
 */
export type Fit = "tried" | "off-again" | "fitted";

/**
 * When it goes on.
 */
export type Paint = "before" | "after";

/**
 * The unit of a tightening figure.
 */
export type TorqueUnit = "newton-metre" | "pound-foot" | "pound-inch" | "kilogram-metre";

/**
 * The thread as it is tightened.
 */
export type Lubrication = "dry" | "oiled";

/**
 * How tight a joint is.
 */
export type Tightened = "finger-tight" | "tight";

/**
 * What is done between the last assembly and the road (common practice, no source).
 */
export type CommissioningStep = "fluids" | "bleed" | "prime" | "settings" | "leaks" | "retighten" | "inspection" | "running-in";

/**
 * How original what a quote brings is.
 */
export type Correctness = "original" | "new-old-stock" | "faithful-reproduction" | "pattern" | "uprated" | "home-made";

/**
 * Where a part stands; worked out, never set by hand.
 */
export type Standing = "on" | "off" | "judged" | "decided" | "out" | "order" | "tried" | "ready" | "refitted";

/**
 * One field and its new value. In JSON an object of one member: `{"name":"Hub"}`; emptied: `{"clear":"name"}`.
 */
export type Change = { clear: FieldName } | { kind: Kind } | { name: string } | { struck: boolean } | { done: boolean } | { remark: string } | { currency: Currency } | { hour_value: Money } | { vocabulary: Vocabulary } | { units: Units } | { aim: Aim } | { driver_side: Side } | { handed_out: Millis } | { held: Held } | { device: Id } | { number: number } | { donor: boolean } | { year: number } | { identity_number: string } | { vehicle: Id } | { inside: Id } | { side: Side } | { open: boolean } | { tag: number } | { assembly: Id } | { quantity: number } | { makers_number: string } | { casting_number: string } | { material: string } | { mass: Mass } | { family: string } | { place: Id } | { single_use: boolean } | { cannot_be_bought: boolean } | { missing_from_start: boolean } | { wrong_piece: boolean } | { stuck: boolean } | { tried: string } | { off: boolean } | { order: number } | { from_boxes: boolean } | { triage: Triage } | { split_from: Id } | { chosen: Id } | { bag: string } | { joint: Id } | { thickness: number } | { size: string } | { of: Id } | { moment: Moment } | { shot: Shot } | { caption: string } | { blob: Hash } | { length: number } | { media_type: string } | { taken: Millis } | { shape: Shape } | { x: number } | { y: number } | { dx: number } | { dy: number } | { text: string } | { lasts: number } | { within: Id } | { place_kind: PlaceKind } | { check: Check } | { skipped: boolean } | { route: Route } | { cash: Money } | { own_time: Minutes } | { chance: Chance } | { strip_again: Minutes } | { cash_certainty: Certainty } | { own_time_certainty: Certainty } | { chance_certainty: Certainty } | { from: string } | { quote: Id } | { who: string } | { hour_value_then: Money } | { expected_then: number } | { interest: number } | { years_kept: number } | { tax_rate: number } | { threshold: Money } | { safety_critical: boolean } | { freight: Money } | { tax: Money } | { duty: Money } | { consumables: Money } | { surcharge: Money } | { withheld: Chance } | { exchange_rate: ExchangeRate } | { life: number } | { life_certainty: Certainty } | { fallback: Id } | { fails_at_bench: boolean } | { correctness: Correctness } | { valid_until: Day } | { wait: number } | { cash_least: Money } | { cash_most: Money } | { own_time_least: Minutes } | { own_time_most: Minutes } | { chance_least: Chance } | { chance_most: Chance } | { life_least: number } | { life_most: number } | { part: Id } | { wait_certainty: Certainty } | { wait_least: number } | { wait_most: number } | { pair: boolean } | { question: string } | { outcome: string } | { finding: Id } | { feature: string } | { spot: string } | { measured: number } | { instrument: Id } | { zero_error: number } | { resolution: number } | { uncertainty: number } | { coverage: number } | { limit_kind: LimitKind } | { least: number } | { most: number } | { machining_least: number } | { machining_most: number } | { as_new: number } | { limit_source: LimitSource } | { dimension: Dimension } | { hazard: Hazard } | { shipping: Money } | { free_from: Money } | { minimum_order: Money } | { minimum_charge: Money } | { back_order: Chance } | { return_window: number } | { restocking: Chance } | { surcharge_deadline: number } | { warranty: number } | { stance: Stance } | { from_value: Money } | { from_mass: Mass } | { relation: Relation } | { other: Id } | { stage: number } | { budget: Money } | { own_hours: Minutes } | { latest: Day } | { sold: Money } | { bought: boolean } | { swap: Swap } | { axle_ratio: number } | { gear_ratios: string } | { overdrive: number } | { overdrive_on: number } | { tyre: string } | { circumference: number } | { turns_per_mile: number } | { diameter: number } | { highest_turns: number } | { rate: Money } | { rate_basis: RateBasis } | { area: Area } | { duty_rate: number } | { fetched: boolean } | { quotes: KeptQuotes } | { oiled: boolean } | { wrapped: boolean } | { fragile: boolean } | { two_person: boolean } | { long: number } | { wide: number } | { high: number } | { build: Build } | { out_for: OutFor } | { due: Day } | { arrived: Day } | { compared: Compared } | { ended: Millis } | { in_count: Id } | { fit: Fit } | { finished: boolean } | { paint: Paint } | { painted: boolean } | { reference: boolean } | { fit_time: Minutes } | { torque: Torque } | { torque_unit: TorqueUnit } | { angle: number } | { sequence: string } | { stages: string } | { lubrication: Lubrication } | { compound: string } | { torque_source: string } | { at_ride_height: boolean } | { tightened: Tightened } | { checked_again: boolean } | { renew: boolean } | { in_hand: number } | { drained: number } | { filled: number } | { capacity: number } | { commissioning_step: CommissioningStep } | { found_after: string } | { checking_days: number } | { lowered: boolean } | { on_the_road: boolean };

/**
 * The values of one record that are set and can be read; see [`FieldName`] for what each means.
 */
export interface Values {
    /**
     *
     */
    kind?: Kind;
    /**
     *
     */
    name?: string;
    /**
     *
     */
    struck?: boolean;
    /**
     *
     */
    done?: boolean;
    /**
     *
     */
    remark?: string;
    /**
     *
     */
    currency?: Currency;
    /**
     *
     */
    hour_value?: Money;
    /**
     *
     */
    vocabulary?: Vocabulary;
    /**
     *
     */
    units?: Units;
    /**
     *
     */
    aim?: Aim;
    /**
     *
     */
    driver_side?: Side;
    /**
     *
     */
    handed_out?: Millis;
    /**
     *
     */
    held?: Held;
    /**
     *
     */
    device?: Id;
    /**
     *
     */
    number?: number;
    /**
     *
     */
    donor?: boolean;
    /**
     *
     */
    year?: number;
    /**
     *
     */
    identity_number?: string;
    /**
     *
     */
    vehicle?: Id;
    /**
     *
     */
    inside?: Id;
    /**
     *
     */
    side?: Side;
    /**
     *
     */
    open?: boolean;
    /**
     *
     */
    tag?: number;
    /**
     *
     */
    assembly?: Id;
    /**
     *
     */
    quantity?: number;
    /**
     *
     */
    makers_number?: string;
    /**
     *
     */
    casting_number?: string;
    /**
     *
     */
    material?: string;
    /**
     *
     */
    mass?: Mass;
    /**
     *
     */
    family?: string;
    /**
     *
     */
    place?: Id;
    /**
     *
     */
    single_use?: boolean;
    /**
     *
     */
    cannot_be_bought?: boolean;
    /**
     *
     */
    missing_from_start?: boolean;
    /**
     *
     */
    wrong_piece?: boolean;
    /**
     *
     */
    stuck?: boolean;
    /**
     *
     */
    tried?: string;
    /**
     *
     */
    off?: boolean;
    /**
     *
     */
    order?: number;
    /**
     *
     */
    from_boxes?: boolean;
    /**
     *
     */
    triage?: Triage;
    /**
     *
     */
    split_from?: Id;
    /**
     *
     */
    chosen?: Id;
    /**
     *
     */
    bag?: string;
    /**
     *
     */
    joint?: Id;
    /**
     *
     */
    thickness?: number;
    /**
     *
     */
    size?: string;
    /**
     *
     */
    of?: Id;
    /**
     *
     */
    moment?: Moment;
    /**
     *
     */
    shot?: Shot;
    /**
     *
     */
    caption?: string;
    /**
     *
     */
    blob?: Hash;
    /**
     *
     */
    length?: number;
    /**
     *
     */
    media_type?: string;
    /**
     *
     */
    taken?: Millis;
    /**
     *
     */
    shape?: Shape;
    /**
     *
     */
    x?: number;
    /**
     *
     */
    y?: number;
    /**
     *
     */
    dx?: number;
    /**
     *
     */
    dy?: number;
    /**
     *
     */
    text?: string;
    /**
     *
     */
    lasts?: number;
    /**
     *
     */
    within?: Id;
    /**
     *
     */
    place_kind?: PlaceKind;
    /**
     *
     */
    check?: Check;
    /**
     *
     */
    skipped?: boolean;
    /**
     *
     */
    route?: Route;
    /**
     *
     */
    cash?: Money;
    /**
     *
     */
    own_time?: Minutes;
    /**
     *
     */
    chance?: Chance;
    /**
     *
     */
    strip_again?: Minutes;
    /**
     *
     */
    cash_certainty?: Certainty;
    /**
     *
     */
    own_time_certainty?: Certainty;
    /**
     *
     */
    chance_certainty?: Certainty;
    /**
     *
     */
    from?: string;
    /**
     *
     */
    quote?: Id;
    /**
     *
     */
    who?: string;
    /**
     *
     */
    hour_value_then?: Money;
    /**
     *
     */
    expected_then?: number;
    /**
     *
     */
    interest?: number;
    /**
     *
     */
    years_kept?: number;
    /**
     *
     */
    tax_rate?: number;
    /**
     *
     */
    threshold?: Money;
    /**
     *
     */
    safety_critical?: boolean;
    /**
     *
     */
    freight?: Money;
    /**
     *
     */
    tax?: Money;
    /**
     *
     */
    duty?: Money;
    /**
     *
     */
    consumables?: Money;
    /**
     *
     */
    surcharge?: Money;
    /**
     *
     */
    withheld?: Chance;
    /**
     *
     */
    exchange_rate?: ExchangeRate;
    /**
     *
     */
    life?: number;
    /**
     *
     */
    life_certainty?: Certainty;
    /**
     *
     */
    fallback?: Id;
    /**
     *
     */
    fails_at_bench?: boolean;
    /**
     *
     */
    correctness?: Correctness;
    /**
     *
     */
    valid_until?: Day;
    /**
     *
     */
    wait?: number;
    /**
     *
     */
    cash_least?: Money;
    /**
     *
     */
    cash_most?: Money;
    /**
     *
     */
    own_time_least?: Minutes;
    /**
     *
     */
    own_time_most?: Minutes;
    /**
     *
     */
    chance_least?: Chance;
    /**
     *
     */
    chance_most?: Chance;
    /**
     *
     */
    life_least?: number;
    /**
     *
     */
    life_most?: number;
    /**
     *
     */
    part?: Id;
    /**
     *
     */
    wait_certainty?: Certainty;
    /**
     *
     */
    wait_least?: number;
    /**
     *
     */
    wait_most?: number;
    /**
     *
     */
    pair?: boolean;
    /**
     *
     */
    question?: string;
    /**
     *
     */
    outcome?: string;
    /**
     *
     */
    finding?: Id;
    /**
     *
     */
    feature?: string;
    /**
     *
     */
    spot?: string;
    /**
     *
     */
    measured?: number;
    /**
     *
     */
    instrument?: Id;
    /**
     *
     */
    zero_error?: number;
    /**
     *
     */
    resolution?: number;
    /**
     *
     */
    uncertainty?: number;
    /**
     *
     */
    coverage?: number;
    /**
     *
     */
    limit_kind?: LimitKind;
    /**
     *
     */
    least?: number;
    /**
     *
     */
    most?: number;
    /**
     *
     */
    machining_least?: number;
    /**
     *
     */
    machining_most?: number;
    /**
     *
     */
    as_new?: number;
    /**
     *
     */
    limit_source?: LimitSource;
    /**
     *
     */
    dimension?: Dimension;
    /**
     *
     */
    hazard?: Hazard;
    /**
     *
     */
    shipping?: Money;
    /**
     *
     */
    free_from?: Money;
    /**
     *
     */
    minimum_order?: Money;
    /**
     *
     */
    minimum_charge?: Money;
    /**
     *
     */
    back_order?: Chance;
    /**
     *
     */
    return_window?: number;
    /**
     *
     */
    restocking?: Chance;
    /**
     *
     */
    surcharge_deadline?: number;
    /**
     *
     */
    warranty?: number;
    /**
     *
     */
    stance?: Stance;
    /**
     *
     */
    from_value?: Money;
    /**
     *
     */
    from_mass?: Mass;
    /**
     *
     */
    relation?: Relation;
    /**
     *
     */
    other?: Id;
    /**
     *
     */
    stage?: number;
    /**
     *
     */
    budget?: Money;
    /**
     *
     */
    own_hours?: Minutes;
    /**
     *
     */
    latest?: Day;
    /**
     *
     */
    sold?: Money;
    /**
     *
     */
    bought?: boolean;
    /**
     *
     */
    swap?: Swap;
    /**
     *
     */
    axle_ratio?: number;
    /**
     *
     */
    gear_ratios?: string;
    /**
     *
     */
    overdrive?: number;
    /**
     *
     */
    overdrive_on?: number;
    /**
     *
     */
    tyre?: string;
    /**
     *
     */
    circumference?: number;
    /**
     *
     */
    turns_per_mile?: number;
    /**
     *
     */
    diameter?: number;
    /**
     *
     */
    highest_turns?: number;
    /**
     *
     */
    rate?: Money;
    /**
     *
     */
    rate_basis?: RateBasis;
    /**
     *
     */
    area?: Area;
    /**
     *
     */
    duty_rate?: number;
    /**
     *
     */
    fetched?: boolean;
    /**
     *
     */
    quotes?: KeptQuotes;
    /**
     *
     */
    oiled?: boolean;
    /**
     *
     */
    wrapped?: boolean;
    /**
     *
     */
    fragile?: boolean;
    /**
     *
     */
    two_person?: boolean;
    /**
     *
     */
    long?: number;
    /**
     *
     */
    wide?: number;
    /**
     *
     */
    high?: number;
    /**
     *
     */
    build?: Build;
    /**
     *
     */
    out_for?: OutFor;
    /**
     *
     */
    due?: Day;
    /**
     *
     */
    arrived?: Day;
    /**
     *
     */
    compared?: Compared;
    /**
     *
     */
    ended?: Millis;
    /**
     *
     */
    in_count?: Id;
    /**
     *
     */
    fit?: Fit;
    /**
     *
     */
    finished?: boolean;
    /**
     *
     */
    paint?: Paint;
    /**
     *
     */
    painted?: boolean;
    /**
     *
     */
    reference?: boolean;
    /**
     *
     */
    fit_time?: Minutes;
    /**
     *
     */
    torque?: Torque;
    /**
     *
     */
    torque_unit?: TorqueUnit;
    /**
     *
     */
    angle?: number;
    /**
     *
     */
    sequence?: string;
    /**
     *
     */
    stages?: string;
    /**
     *
     */
    lubrication?: Lubrication;
    /**
     *
     */
    compound?: string;
    /**
     *
     */
    torque_source?: string;
    /**
     *
     */
    at_ride_height?: boolean;
    /**
     *
     */
    tightened?: Tightened;
    /**
     *
     */
    checked_again?: boolean;
    /**
     *
     */
    renew?: boolean;
    /**
     *
     */
    in_hand?: number;
    /**
     *
     */
    drained?: number;
    /**
     *
     */
    filled?: number;
    /**
     *
     */
    capacity?: number;
    /**
     *
     */
    commissioning_step?: CommissioningStep;
    /**
     *
     */
    found_after?: string;
    /**
     *
     */
    checking_days?: number;
    /**
     *
     */
    lowered?: boolean;
    /**
     *
     */
    on_the_road?: boolean;
}

/**
 * What is to be done. Ids of new records are made by whoever sends it.
 */
export type Command = { do: "create"; id: Id; kind: Kind; changes?: Change[] } | { do: "change"; ids: Id[]; changes: Change[]; seen?: Seen } | { do: "undo"; entry: EntryId } | { do: "split"; part: Id; into: SplitOff[] } | { do: "choose"; id: Id; quote: Id; part?: Id; who?: string } | { do: "all"; commands: Command[] };

/**
 * A part that comes out of another.
 */
export interface SplitOff {
    /**
     * Its id.
     */
    id: Id;
    /**
     * Its name, if it differs.
     */
    name?: string;
    /**
     * How many pieces; one if left out.
     */
    quantity?: number;
}

/**
 * A command under its own id: sent again after a crash, it is recognised and not done twice.
 */
export interface Sent {
    /**
     * Made by whoever sends it, once.
     */
    id: Id;
    /**
     * What is to be done.
     */
    command: Command;
}

/**
 * What the outside says with a command: who records, and when it is by their clock.
 */
export interface Context {
    /**
     * This start of this window.
     */
    replica: Replica;
    /**
     * The phone or computer; it draws tag numbers from its own block.
     */
    device: Id;
    /**
     * Now, by the device's clock.
     */
    at: Millis;
}

/**
 * A question. It never changes anything.
 */
export type Query = { ask: "head" } | { ask: "teardown"; assembly?: Id | undefined; part?: Id | undefined } | { ask: "assemblies" } | ({ ask: "parts" } & PartsQuery) | { ask: "part"; part: Id } | { ask: "photo"; photo: Id } | { ask: "cost"; part: Id; today?: Day; set?: WhatIf } | { ask: "totals"; today?: Day } | { ask: "inspect"; part: Id } | ({ ask: "proof" } & ProofQuery) | { ask: "typed"; text: string; unit: Unit } | { ask: "identify"; text: string } | { ask: "cautions"; step: Step; part?: Id; assembly?: Id } | { ask: "certainty" } | { ask: "undecided" } | { ask: "plan" } | { ask: "frontier" } | { ask: "sway" } | { ask: "kept-plans" } | { ask: "ready"; today?: Day } | { ask: "refit-steps"; assembly: Id; today?: Day } | { ask: "refit-step"; part: Id; today?: Day } | { ask: "this-evening"; minutes: Minutes; today?: Day } | { ask: "commissioning" } | { ask: "places" } | { ask: "place"; place: Id } | { ask: "where"; part: Id } | { ask: "count"; count: Id } | { ask: "missing"; today?: Day; out_days?: number; unseen_days?: number } | { ask: "tag"; text: string; scanned?: boolean } | { ask: "suppliers" } | { ask: "rules"; part?: Id; today?: Day } | { ask: "kit-contents" } | { ask: "donor"; vehicle: Id; today?: Day } | { ask: "gearing"; speed?: number; unit?: SpeedUnit } | { ask: "gearing-typed"; tyre?: string; gears?: string } | { ask: "problems" } | { ask: "history"; id: Id } | { ask: "seen"; ids: Id[] };

/**
 * Which parts, and how they are listed.
 */
export interface PartsQuery {
    /**
     * Words sought in tag, name, numbers, notes and place; empty for all.
     */
    find?: string;
    /**
     * Only parts of this assembly, or of one inside it.
     */
    assembly?: Id | undefined;
    /**
     * Only parts that lie in this place, or in one within it.
     */
    place?: Id | undefined;
    /**
     * Only parts that stand so.
     */
    standing?: Standing | undefined;
    /**
     * Only parts for which this route was chosen.
     */
    route?: Route | undefined;
    /**
     * Struck-out ones instead of the others.
     */
    struck?: boolean;
    /**
     * How they are put together.
     */
    group?: Group;
    /**
     * The first row wanted, counted from 0.
     */
    from?: number;
    /**
     * How many rows are wanted; left out: all.
     */
    count?: number | undefined;
}

/**
 * How a list of parts is put together.
 */
export type Group = "assembly" | "place" | "route" | "standing" | "none";

/**
 * The answer to a [`Query`](super::Query).
 */
export type View = ({ view: "head" } & HeadView) | ({ view: "teardown" } & TeardownView) | ({ view: "assemblies" } & AssembliesView) | ({ view: "parts" } & PartsView) | ({ view: "part" } & PartView) | ({ view: "photo" } & PhotoView) | ({ view: "cost" } & CostView) | ({ view: "totals" } & TotalsView) | ({ view: "inspect" } & InspectView) | ({ view: "proof" } & ProofView) | ({ view: "typed" } & TypedView) | ({ view: "identify" } & IdentifyView) | ({ view: "cautions" } & CautionsView) | ({ view: "ready" } & ReadyView) | ({ view: "refit-steps" } & RefitStepsView) | ({ view: "refit-step" } & RefitStepView) | ({ view: "this-evening" } & EveningView) | ({ view: "commissioning" } & CommissioningView) | ({ view: "places" } & PlacesView) | ({ view: "place" } & PlaceView) | ({ view: "where" } & WhereView) | ({ view: "count" } & CountView) | ({ view: "missing" } & MissingView) | ({ view: "tag" } & TagView) | ({ view: "suppliers" } & SuppliersView) | ({ view: "rules" } & RulesView) | ({ view: "donor" } & DonorView) | ({ view: "gearing" } & GearingView) | ({ view: "gearing-typed" } & GearingTypedView) | ({ view: "problems" } & ProblemsView) | ({ view: "history" } & HistoryView) | ({ view: "refused" } & Problem) | ({ view: "seen" } & SeenView) | { view: "nothing" };

/**
 * One record with its values and what an edit of it must name as seen.
 */
export interface RecordView {
    /**
     * Its id.
     */
    id: Id;
    /**
     * What it is.
     */
    kind: Kind;
    /**
     * Its values.
     */
    values: Values;
    /**
     * Whether it is struck out.
     */
    struck: boolean;
    /**
     * The entries behind its values, by field: sent back with an edit.
     */
    seen: Seen;
    /**
     * Fields with more than one value, to be settled.
     */
    conflicts: ConflictView[];
}

/**
 * A field with more than one value.
 */
export interface ConflictView {
    /**
     * The record.
     */
    id: Id;
    /**
     * The field.
     */
    field: FieldName;
    /**
     * Its values.
     */
    values: WrittenView[];
}

/**
 * A value, by whom and when.
 */
export interface WrittenView {
    /**
     * The entry that wrote it.
     */
    entry: EntryId;
    /**
     * When, by the clock of the device.
     */
    at: Millis;
    /**
     * The value; nothing when this version cannot read it.
     */
    change?: Change;
    /**
     * The values it points at, by name.
     */
    named?: string;
}

/**
 * Name, settings and counts of the job.
 */
export interface HeadView {
    /**
     * The job's own record.
     */
    job: RecordView;
    /**
     * Settings, each with its starting value where the user said nothing.
     */
    settings: Settings;
    /**
     * The vehicle being done, then its donors.
     */
    vehicles: RecordView[];
    /**
     * Parts that are not struck out.
     */
    parts: number;
    /**
     * Parts for which no quote is chosen.
     */
    undecided: number;
    /**
     * Photos that are not struck out.
     */
    photos: number;
    /**
     * All entries.
     */
    entries: number;
    /**
     * When the last job file was made.
     */
    handed_out?: Millis;
    /**
     * Photos taken since.
     */
    photos_since: number;
    /**
     * How many problems wait.
     */
    problems: number;
}

/**
 * Settings of a job.
 */
export interface Settings {
    /**
     * Its currency.
     */
    currency: Currency;
    /**
     * What an hour is worth.
     */
    hour_value: Money;
    /**
     * Trade words.
     */
    vocabulary: Vocabulary;
    /**
     * Units.
     */
    units: Units;
    /**
     * How original.
     */
    aim: Aim;
    /**
     * Where the driver sits.
     */
    driver_side: Side;
    /**
     * Yearly rate of interest, in parts of ten thousand.
     */
    interest: number;
    /**
     * How many years the vehicle will be kept.
     */
    years_kept: number;
    /**
     * Usual rate of tax, in parts of ten thousand.
     */
    tax_rate: number;
    /**
     * By how much another route must be cheaper before a decision comes back.
     */
    threshold: Money;
    /**
     * The most cash that may be out at once; nothing while nobody said one.
     */
    budget?: Money;
    /**
     * The most own hours.
     */
    own_hours?: Minutes;
    /**
     * The day by which everything must be in.
     */
    latest?: Day;
}

/**
 * What the strip needs.
 */
export interface TeardownView {
    /**
     * The assembly that is being taken apart.
     */
    assembly?: AssemblyLine;
    /**
     * All that are open.
     */
    open: AssemblyLine[];
    /**
     * The part in hand.
     */
    part?: PartView;
    /**
     * The tag that the next part will carry.
     */
    next_tag: number;
    /**
     * Names likely to come next, learnt from this job, likeliest first.
     */
    names: string[];
    /**
     * The places used last, latest first.
     */
    places: PlaceLine[];
    /**
     * The joints of the assembly.
     */
    joints: JointView[];
    /**
     * Its parts, in order of removal, latest last.
     */
    parts: PartLine[];
}

/**
 * Vehicles and assemblies.
 */
export interface AssembliesView {
    /**
     * The vehicle being done, then its donors.
     */
    vehicles: RecordView[];
    /**
     * Each after the one it is inside.
     */
    assemblies: AssemblyLine[];
}

/**
 * One assembly.
 */
export interface AssemblyLine {
    /**
     * Its record.
     */
    record: RecordView;
    /**
     * Left or right: its own, or of the assembly it is inside.
     */
    side?: Side;
    /**
     * How deep it is inside others.
     */
    depth: number;
    /**
     * Parts of its own.
     */
    parts: number;
    /**
     * What was looked at before anything was slackened.
     */
    before: RecordView[];
    /**
     * Photos of the assembly itself.
     */
    photos: PhotoView[];
    /**
     * It is kept whole as the reference, or its opposite number is.
     */
    reference?: ReferenceView;
}

/**
 * One part in a list.
 */
export interface PartLine {
    /**
     * Its id.
     */
    id: Id;
    /**
     * Its tag.
     */
    tag?: number;
    /**
     * Its name; empty when nobody gave one.
     */
    name: string;
    /**
     * The assembly it came from.
     */
    assembly?: Id;
    /**
     * The name of that assembly; empty when there is none.
     */
    assembly_name: string;
    /**
     * Left or right: its own, or of its assembly.
     */
    side?: Side;
    /**
     * How many pieces.
     */
    quantity: number;
    /**
     * Where it lies, from the outermost place.
     */
    place: string[];
    /**
     * Where it stands.
     */
    standing: Standing;
    /**
     * It is out on loan, for no work.
     */
    lent?: boolean;
    /**
     * The route chosen.
     */
    route?: Route;
    /**
     * There is no other.
     */
    irreplaceable: boolean;
    /**
     * It was not there when the work began.
     */
    missing: boolean;
    /**
     * A former owner fitted a wrong piece.
     */
    wrong_piece: boolean;
    /**
     * It will not come off.
     */
    stuck: boolean;
    /**
     * It is struck out.
     */
    struck: boolean;
    /**
     * Its first photo.
     */
    photo?: Hash;
    /**
     * How many photos.
     */
    photos: number;
    /**
     * Where the words sought were found.
     */
    found: Found[];
}

/**
 * A place in a text where words sought were found.
 */
export interface Found {
    /**
     * In what.
     */
    within: FoundIn;
    /**
     * The text that holds it.
     */
    text: string;
    /**
     * Where it begins, in UTF-16 units as a browser counts.
     */
    from: number;
    /**
     * Where it ends.
     */
    to: number;
}

/**
 * What was searched.
 */
export type FoundIn = "tag" | "name" | "number" | "place" | "note";

/**
 * A list of parts.
 */
export interface PartsView {
    /**
     * Parts in the job that are not struck out.
     */
    total: number;
    /**
     * Parts that match.
     */
    found: number;
    /**
     * Groups in order; each begins at a row.
     */
    groups: PartsGroup[];
    /**
     * The first row given.
     */
    from: number;
    /**
     * The rows.
     */
    rows: PartLine[];
    /**
     * Sums over all that match.
     */
    sums: Sums;
}

/**
 * A group of rows.
 */
export interface PartsGroup {
    /**
     * The assembly or place, where it is one.
     */
    id?: Id;
    /**
     * Its name; empty for those that have none.
     */
    title: string;
    /**
     * Left or right.
     */
    side?: Side;
    /**
     * The route, where it is one.
     */
    route?: Route;
    /**
     * The standing, where it is one.
     */
    standing?: Standing;
    /**
     * How many rows.
     */
    count: number;
    /**
     * Its first row.
     */
    from: number;
}

/**
 * Exact sums over chosen quotes.
 */
export interface Sums {
    /**
     * Cash, one sum a currency.
     */
    cash: Money[];
    /**
     * Own hours.
     */
    own_time: Minutes;
    /**
     * Parts with a chosen quote.
     */
    decided: number;
}

/**
 * All about one part.
 */
export interface PartView {
    /**
     * As in a list.
     */
    line: PartLine;
    /**
     * Its record.
     */
    record: RecordView;
    /**
     * Its photos in order, struck-out ones last.
     */
    photos: PhotoView[];
    /**
     * Its notes in order of time.
     */
    notes: NoteView[];
    /**
     * The joints that hold it.
     */
    joints: JointView[];
    /**
     * New pieces of it, ordered or here.
     */
    deliveries: RecordView[];
    /**
     * Parts split from it, and the one it was split from.
     */
    split: PartLine[];
    /**
     * The latest entry about it, to be undone.
     */
    latest?: EntryId;
}

/**
 * One photo.
 */
export interface PhotoView {
    /**
     * Its record: hash, moment, shot, caption.
     */
    record: RecordView;
    /**
     * Its rings and arrows in order.
     */
    marks: RecordView[];
}

/**
 * One note.
 */
export interface NoteView {
    /**
     * Its record: text, when.
     */
    record: RecordView;
    /**
     * The stretches of a spoken note in order.
     */
    slices: RecordView[];
}

/**
 * One joint.
 */
export interface JointView {
    /**
     * Its record: name, bag, place.
     */
    record: RecordView;
    /**
     * Its pieces in the order they came off.
     */
    pieces: RecordView[];
}

/**
 * All assemblies to be refitted.
 */
export interface ReadyView {
    /**
     * In the order in which they are begun; refitted ones last.
     */
    assemblies: RefitAssembly[];
    /**
     * Parts that are off and in no assembly: they stand in no order.
     */
    in_no_assembly: number;
    /**
     * What cannot be kept of the order.
     */
    circles: Circle[];
    /**
     * What is still loose.
     */
    loose: LooseJoint[];
    /**
     * What is tight, and was not checked a second time.
     */
    unchecked: LooseJoint[];
    /**
     * What stands in the way of lowering the vehicle on to its wheels.
     */
    lowering: Gate;
    /**
     * What stands in the way of the road.
     */
    road: Gate;
}

/**
 * One assembly to be refitted.
 */
export interface RefitAssembly {
    /**
     * Its id.
     */
    id: Id;
    /**
     * Its name.
     */
    name: string;
    /**
     * Left or right.
     */
    side?: Side;
    /**
     * How it stands.
     */
    state: RefitState;
    /**
     * Parts that are off, or were.
     */
    parts: number;
    /**
     * How many of them are on for good.
     */
    fitted: number;
    /**
     * How many are on for trial.
     */
    tried: number;
    /**
     * What stands in the way, in the order of its parts.
     */
    lacks: Lack[];
    /**
     * The first day on which nothing does any more; nothing while no such day is known, or nothing stands in the way.
     */
    earliest?: Day;
    /**
     * For some of it no day is known.
     */
    no_date: boolean;
    /**
     * All of it can be done here and now.
     */
    own: boolean;
    /**
     * Own time for what is not on yet.
     */
    minutes: Minutes;
    /**
     * That time is a starting value for some of it.
     */
    starting: boolean;
    /**
     * Parts that lie nowhere anybody has said.
     */
    nowhere: number;
    /**
     * It is kept whole as the reference, or its opposite number is.
     */
    reference?: ReferenceView;
}

/**
 * How an assembly stands.
 */
export type RefitState = "ready" | "blocked" | "refitted";

/**
 * One thing that stands in the way.
 */
export interface Lack {
    /**
     * What.
     */
    why: LackWhy;
    /**
     * The part that lacks it; nothing where the whole assembly does.
     */
    part?: Id;
    /**
     * Its tag.
     */
    tag?: number;
    /**
     * What the part is called, or what the hardware or consumable is.
     */
    name: string;
    /**
     * The piece, consumable, delivery, outing, or what it goes on after.
     */
    other?: Id;
    /**
     * What that is called, where it is a part or an assembly.
     */
    other_name?: string;
    /**
     * Its tag, where it is a part.
     */
    other_tag?: number;
    /**
     * Its side.
     */
    other_side?: Side;
    /**
     * How many pieces are short.
     */
    pieces?: number;
    /**
     * It can be done here and now, by whoever asks.
     */
    own: boolean;
    /**
     * The day from which on it is no longer lacking, checking counted.
     */
    day?: Day;
    /**
     * No such day is known.
     */
    no_date: boolean;
    /**
     * The day on which it was due has passed.
     */
    overdue: boolean;
}

/**
 * Why something cannot go on yet.
 */
export type LackWhy = "undecided" | "missing" | "out-for-work" | "on-loan" | "to-send" | "to-repair" | "to-finish" | "tried-only" | "to-order" | "on-order" | "to-fetch" | "to-compare" | "wrong" | "hardware" | "consumable" | "goes-after" | "paint" | "circle";

/**
 * What goes on after one another in a circle: no order can keep all of it.
 */
export interface Circle {
    /**
     * The parts in it, each after the one before.
     */
    parts: Id[];
    /**
     * The rules that make it, in the same order; of each pair of neighbours one.
     */
    rules: Id[];
    /**
     * The paint is one of its steps.
     */
    paint: boolean;
}

/**
 * A joint that is not tight.
 */
export interface LooseJoint {
    /**
     * The joint.
     */
    joint: Id;
    /**
     * Its name.
     */
    name: string;
    /**
     * The part it holds.
     */
    part?: Id;
    /**
     * The tag of that part.
     */
    tag?: number;
    /**
     * The name of that part.
     */
    part_name: string;
    /**
     * The assembly.
     */
    assembly?: Id;
    /**
     * The name of that assembly.
     */
    assembly_name: string;
    /**
     * It is tightened only at ride height.
     */
    at_ride_height: boolean;
    /**
     * It was run in by hand; else nobody has said anything of it.
     */
    finger_tight: boolean;
    /**
     * Its record and its pieces: how tight it is to be.
     */
    hardware: StepJoint;
}

/**
 * What stands in the way of a step.
 */
export interface Gate {
    /**
     * Nothing does.
     */
    open: boolean;
    /**
     * It was done.
     */
    done: boolean;
    /**
     * The joints that do.
     */
    joints: Id[];
}

/**
 * What an assembly has to do with a reference.
 */
export interface ReferenceView {
    /**
     * It is kept whole itself; else the other one is.
     */
    is_kept: boolean;
    /**
     * Its opposite number.
     */
    mirror?: Id;
    /**
     * What that is called.
     */
    mirror_name: string;
    /**
     * The opposite number is not together again: stripping the reference now would be too early.
     */
    early: boolean;
}

/**
 * The steps of an assembly, in order.
 */
export interface RefitStepsView {
    /**
     * The assembly as it stands.
     */
    assembly: RefitAssembly;
    /**
     * Its record.
     */
    record: RecordView;
    /**
     * Every part of it that is off, or was, once.
     */
    steps: StepLine[];
    /**
     * Joints that hold no part of it that anybody has named.
     */
    joints: StepJoint[];
    /**
     * What refitting it uses up.
     */
    consumables: RecordView[];
    /**
     * What goes on after what, where it says something of this assembly.
     */
    rules: RecordView[];
    /**
     * What cannot be kept of the order.
     */
    circles: Circle[];
    /**
     * What of it is still loose.
     */
    loose: LooseJoint[];
}

/**
 * All that is wanted at one step.
 */
export interface RefitStepView {
    /**
     * The step as in the list.
     */
    step: StepLine;
    /**
     * The part's record.
     */
    record: RecordView;
    /**
     * The assembly; nothing where it is in none.
     */
    assembly?: Id;
    /**
     * The name of that assembly.
     */
    assembly_name: string;
    /**
     * Which step, counted from 1.
     */
    number: number;
    /**
     * Of how many.
     */
    of: number;
    /**
     * How far each of them is, in order.
     */
    states: StepState[];
    /**
     * The part before.
     */
    previous?: Id;
    /**
     * The part after.
     */
    next?: Id;
    /**
     * The first after this one that is not on for good; from the end on again from the beginning.
     */
    next_open?: Id;
    /**
     * Its photos: before, off, after.
     */
    photos: PhotoView[];
    /**
     * Photos of the same part where it is still whole, or of that whole assembly.
     */
    beside: BesidePhoto[];
    /**
     * The joints that hold it.
     */
    joints: StepJoint[];
    /**
     * What it uses up.
     */
    consumables: RecordView[];
    /**
     * New pieces of it, ordered or here.
     */
    deliveries: RecordView[];
    /**
     * When it was out of the house.
     */
    outings: RecordView[];
    /**
     * Its notes.
     */
    notes: NoteView[];
    /**
     * How many joints are still loose in the assembly; of a part that is in none, of all such parts.
     */
    loose: number;
    /**
     * What the assembly has to do with a reference.
     */
    reference?: ReferenceView;
}

/**
 * One step in the list.
 */
export interface StepLine {
    /**
     * The part.
     */
    line: PartLine;
    /**
     * How far it is.
     */
    state: StepState;
    /**
     * What stands in the way.
     */
    lacks: Lack[];
    /**
     * Before or after the paint.
     */
    paint?: Paint;
    /**
     * It never stood in an order of removal.
     */
    without_order: boolean;
    /**
     * Another piece goes on in the place of the old one.
     */
    brings_new: boolean;
}

/**
 * How far a step is.
 */
export type StepState = "fitted" | "tried" | "ready" | "waiting";

/**
 * A joint as it goes together.
 */
export interface StepJoint {
    /**
     * Its record, tightening figure included.
     */
    record: RecordView;
    /**
     * Its pieces in the order they go on: what came off last first.
     */
    pieces: StepPiece[];
}

/**
 * A piece of hardware.
 */
export interface StepPiece {
    /**
     * Its record, tightening figure included.
     */
    record: RecordView;
    /**
     * It is renewed.
     */
    renew: boolean;
}

/**
 * A photo of the same thing on the other side.
 */
export interface BesidePhoto {
    /**
     * The photo.
     */
    photo: PhotoView;
    /**
     * What it is of: the part, or the whole assembly.
     */
    of: string;
}

/**
 * What can be done in an evening.
 */
export interface EveningView {
    /**
     * The time at hand.
     */
    minutes: Minutes;
    /**
     * Everything that nothing stands in the way of, in the order it is best taken up.
     */
    items: EveningItem[];
    /**
     * How long all that fits takes.
     */
    picked: Minutes;
}

/**
 * One thing that can be done.
 */
export interface EveningItem {
    /**
     * What.
     */
    kind: EveningKind;
    /**
     * The assembly, or the part.
     */
    id: Id;
    /**
     * Its name.
     */
    name: string;
    /**
     * The tag of a part.
     */
    tag?: number;
    /**
     * Left or right.
     */
    side?: Side;
    /**
     * Steps that can be done one after the other before something stands in the way.
     */
    steps: number;
    /**
     * It is done with that: nothing of the assembly is left.
     */
    whole: boolean;
    /**
     * Own time for it.
     */
    minutes: Minutes;
    /**
     * That is a starting value, at least for some of it.
     */
    starting: boolean;
    /**
     * Steps that fit into what is left of the time once what stands before it is done; none where it does not fit.
     */
    fits: number;
}

/**
 * What can be done.
 */
export type EveningKind = "refit" | "compare" | "repair" | "take-off" | "finish" | "fetch" | "decide";

/**
 * From the last assembly to the road.
 */
export interface CommissioningView {
    /**
     * The vehicle being done.
     */
    vehicle?: RecordView;
    /**
     * Assemblies that are not together again.
     */
    open: number;
    /**
     * What was drained, and what is filled in.
     */
    fluids: RecordView[];
    /**
     * The steps in their order.
     */
    steps: CommissioningLine[];
    /**
     * What was found before anything was slackened.
     */
    before: BeforeLine[];
    /**
     * What is still loose.
     */
    loose: LooseJoint[];
    /**
     * What stands in the way of lowering the vehicle on to its wheels.
     */
    lowering: Gate;
    /**
     * What stands in the way of the road.
     */
    road: Gate;
    /**
     * What is left over.
     */
    left: LeftView;
}

/**
 * One step.
 */
export interface CommissioningLine {
    /**
     * Which.
     */
    step: CommissioningStep;
    /**
     * What was said of it: done, with a finding, or left out.
     */
    record?: RecordView;
}

/**
 * What was found before anything was slackened, to be compared.
 */
export interface BeforeLine {
    /**
     * The assembly.
     */
    assembly: Id;
    /**
     * Its name.
     */
    assembly_name: string;
    /**
     * Left or right.
     */
    side?: Side;
    /**
     * What was found, and what is found now.
     */
    record: RecordView;
}

/**
 * What is left over at the end.
 */
export interface LeftView {
    /**
     * Parts that are off and not on for good: nobody ticked them.
     */
    parts: PartLine[];
    /**
     * Joints that nobody ticked as tight.
     */
    never_ticked: LooseJoint[];
    /**
     * What was renewed.
     */
    renewed: Renewed[];
}

/**
 * Something that was renewed.
 */
export interface Renewed {
    /**
     * The part or the piece of hardware.
     */
    id: Id;
    /**
     * The part, or the part that the hardware holds.
     */
    part?: Id;
    /**
     * The tag of that part.
     */
    tag?: number;
    /**
     * What it is called.
     */
    name: string;
    /**
     * How many pieces.
     */
    pieces: number;
}

/**
 * All places.
 */
export interface PlacesView {
    /**
     * Each after the one it is within.
     */
    places: PlaceLine[];
    /**
     * Parts that lie nowhere.
     */
    nowhere: number;
}

/**
 * One place.
 */
export interface PlaceLine {
    /**
     * Its record.
     */
    record: RecordView;
    /**
     * Its kind.
     */
    place_kind?: PlaceKind;
    /**
     * The code on its tag, as it is printed.
     */
    code?: string;
    /**
     * Names from the outermost place to this one.
     */
    path: string[];
    /**
     * How deep it is.
     */
    depth: number;
    /**
     * Parts that lie right here.
     */
    parts: number;
    /**
     * Parts here and in all places within.
     */
    parts_within: number;
}

/**
 * Suppliers and specialists.
 */
export interface SuppliersView {
    /**
     * By name.
     */
    suppliers: SupplierLine[];
    /**
     * Names that quotes carry and that no supplier and no vehicle has, the most used first.
     */
    unnamed: UnnamedSupplier[];
}

/**
 * One supplier or specialist. Quotes are theirs by name, spaces and case aside.
 */
export interface SupplierLine {
    /**
     * The record: name and terms.
     */
    record: RecordView;
    /**
     * What carriage costs from a value or a mass on, the least first.
     */
    tiers: RecordView[];
    /**
     * How many quotes are from them. Of several of one name the first by id has the quotes.
     */
    quotes: number;
}

/**
 * A name without a record.
 */
export interface UnnamedSupplier {
    /**
     * As most quotes write it.
     */
    name: string;
    /**
     * How many quotes carry it.
     */
    quotes: number;
}

/**
 * One place with what is in it.
 */
export interface PlaceView {
    /**
     * As in the list of places.
     */
    line: PlaceLine;
    /**
     * The way to it, from the outermost place; itself last.
     */
    way: PlaceStep[];
    /**
     * Its photos.
     */
    photos: PhotoView[];
    /**
     * Places right in it, by name.
     */
    inside: PlaceLine[];
    /**
     * The rack that it is, or is in.
     */
    rack?: RackView;
    /**
     * Parts right here, with those missed anywhere within and those that the last count found foreign: missing first, then
     * foreign, then by tag.
     */
    parts: StoredLine[];
    /**
     * The last count of it that was ended.
     */
    counted?: CountSums;
    /**
     * The count that is under way.
     */
    running?: CountSums;
}

/**
 * A place on the way to something.
 */
export interface PlaceStep {
    /**
     * Its id.
     */
    id: Id;
    /**
     * Its name.
     */
    name: string;
    /**
     * Its kind.
     */
    place_kind?: PlaceKind;
    /**
     * The code on its tag.
     */
    code?: string;
    /**
     * Its first photo.
     */
    photo?: Hash;
}

/**
 * One part in stores.
 */
export interface StoredLine {
    /**
     * As in other lists; `place` is where the record says that it lies.
     */
    line: PartLine;
    /**
     * Where it is.
     */
    lies: LiesIn;
    /**
     * The place that it lies in.
     */
    place?: Id;
    /**
     * The outing, while it is out of the house.
     */
    out?: RecordView;
    /**
     * Out longer than it should be: by so many days past the day it was due, or in all where it has none.
     */
    late?: number;
    /**
     * What another would cost by the cheapest quote, while it is out of the house.
     */
    worth?: Money;
    /**
     * How it is to be kept.
     */
    care: Care;
    /**
     * What the count says of it.
     */
    counted?: Counted;
    /**
     * The sighting in that count, to be taken back.
     */
    sighting?: Id;
    /**
     * What the count found amiss was put right since: seen again, moved, or laid here.
     */
    settled: boolean;
    /**
     * When and where it was last seen, or put where it lies.
     */
    seen?: SeenAt;
    /**
     * Since when it is missed where it should lie.
     */
    missed?: Millis;
    /**
     * Why it does not lie well.
     */
    awkward: Suits[];
}

/**
 * Where a part is; always exactly one.
 */
export type LiesIn = "place" | "nowhere" | "out" | "vehicle" | "refitted";

/**
 * How a part is to be kept and lifted.
 */
export interface Care {
    /**
     * Oiled against rust.
     */
    oiled: boolean;
    /**
     * Wrapped up.
     */
    wrapped: boolean;
    /**
     * Nothing may lie on it.
     */
    fragile: boolean;
    /**
     * How it is lifted, where that is known or guessed.
     */
    lift?: Lift;
}

/**
 * When and where something was seen.
 */
export interface SeenAt {
    /**
     * When.
     */
    at: Millis;
    /**
     * Where, from the outermost place; empty when nobody said.
     */
    path: string[];
    /**
     * In another place than the record says, after it was put there.
     */
    elsewhere: boolean;
}

/**
 * Why a place suits a part, or does not (common practice, no source).
 */
export type Suits = "heavy-low" | "fragile-high" | "sheet-on-edge" | "same-assembly" | "same-area" | "empty" | "heavy-high" | "fragile-low" | "sheet-in-box" | "sides-mixed" | "under-heavy";

/**
 * How a part is lifted.
 */
export type Lift = "alone" | "two-at-reach" | "two";

/**
 * How heavy one piece of a part is.
 */
export interface Heft {
    /**
     * The mass: weighed, or the usual one of such a size and material.
     */
    mass: Mass;
    /**
     * Guessed from size, material and build: the least and the most it may be. Nothing when somebody said it.
     */
    guess?: HeftGuess;
}

/**
 * The range of a guess.
 */
export interface HeftGuess {
    /**
     * The least.
     */
    least: Mass;
    /**
     * The most.
     */
    most: Mass;
    /**
     * Nobody said how much of its size is filled.
     */
    any_build: boolean;
}

/**
 * A rack as it is drawn.
 */
export interface RackView {
    /**
     * The rack.
     */
    id: Id;
    /**
     * Its name.
     */
    name: string;
    /**
     * Its shelves, the lowest first: by name, shelf 1 lowest. What stands in the rack without a shelf is in one of its own.
     */
    shelves: ShelfView[];
}

/**
 * One shelf of a rack.
 */
export interface ShelfView {
    /**
     * The shelf; nothing for what stands in the rack without one.
     */
    id?: Id;
    /**
     * Its name.
     */
    name: string;
    /**
     * Boxes and whatever else stands on it, by name.
     */
    boxes: BoxView[];
    /**
     * Parts that lie on it openly, by name.
     */
    loose: LooseView[];
}

/**
 * Something that stands on a shelf.
 */
export interface BoxView {
    /**
     * The place.
     */
    id: Id;
    /**
     * Its name.
     */
    name: string;
    /**
     * Parts in it and all within.
     */
    parts: number;
    /**
     * How many of them are missed.
     */
    missing: number;
    /**
     * The place asked about is this, or in it.
     */
    here: boolean;
}

/**
 * Parts of one name that lie openly.
 */
export interface LooseView {
    /**
     * The first of them by tag.
     */
    id: Id;
    /**
     * Their name.
     */
    name: string;
    /**
     * How many pieces.
     */
    pieces: number;
}

/**
 * What a count says of a thing.
 */
export type Counted = "here" | "with-bag" | "missing" | "foreign";

/**
 * What a count comes to. Parts that were seen and parts that are missing are those expected.
 */
export interface CountSums {
    /**
     * The count.
     */
    count: Id;
    /**
     * When it began.
     */
    began: Millis;
    /**
     * When it was ended.
     */
    ended?: Millis;
    /**
     * Parts that should be here.
     */
    expected: number;
    /**
     * Of them those that were seen, or whose bag was.
     */
    seen: number;
    /**
     * Of them those that were not.
     */
    missing: number;
    /**
     * Parts that were seen, and do not belong here.
     */
    foreign: number;
    /**
     * Of them those that lie in another place by the record.
     */
    elsewhere: number;
}

/**
 * A count, under way or ended: as things lay when it was ended.
 */
export interface CountView {
    /**
     * Its record.
     */
    record: RecordView;
    /**
     * Of which place.
     */
    place: PlaceLine;
    /**
     * What it comes to.
     */
    sums: CountSums;
    /**
     * Every part expected once, and every foreign one: missing first, then foreign, then by tag.
     */
    lines: StoredLine[];
    /**
     * Bags and boxes that should be here, and those that should not.
     */
    places: CountedPlace[];
}

/**
 * A bag or box in a count.
 */
export interface CountedPlace {
    /**
     * As in the list of places.
     */
    line: PlaceLine;
    /**
     * What the count says of it; with its contents when one of them was seen.
     */
    counted: Counted;
    /**
     * The sighting of its own tag.
     */
    sighting?: Id;
}

/**
 * Where a part is.
 */
export interface WhereView {
    /**
     * The part.
     */
    part: StoredLine;
    /**
     * The way to the place it lies in, from the outermost.
     */
    way: PlaceStep[];
    /**
     * How heavy it is.
     */
    heft?: Heft;
    /**
     * Where it may be laid next, the best first.
     */
    next: Advice[];
}

/**
 * A place that is proposed.
 */
export interface Advice {
    /**
     * The place.
     */
    place: Id;
    /**
     * Names from the outermost place.
     */
    path: string[];
    /**
     * Why, the weightiest first.
     */
    because: Suits[];
}

/**
 * What is not where it should be, or not known to be.
 */
export interface MissingView {
    /**
     * Not found by the last count of where they lie; the longest first.
     */
    missed: StoredLine[];
    /**
     * All that is out of the house; what is out too long first.
     */
    out: StoredLine[];
    /**
     * Off, and in no place; by tag.
     */
    nowhere: StoredLine[];
    /**
     * Lying in a place, and not seen for long; the longest first.
     */
    unseen: StoredLine[];
    /**
     * How many there are of each, in this order: only the first are listed.
     */
    totals: [number, number, number, number];
    /**
     * Out of the house and late.
     */
    late: number;
    /**
     * What another of each that is out would cost, as far as quotes say.
     */
    worth: Money;
    /**
     * Out of the house, and no quote says what another would cost.
     */
    unpriced: number;
    /**
     * Days after which what is out with no day counts as late (a starting value).
     */
    out_days: number;
    /**
     * Days after which what lies in a place counts as not seen for long (a starting value).
     */
    unseen_days: number;
}

/**
 * What carries a code.
 */
export interface TagView {
    /**
     * What came of reading it.
     */
    read: TagRead;
    /**
     * The number it stands for; nothing when it was misread or is not ours.
     */
    number?: number;
    /**
     * The code of that number, as it is printed.
     */
    code?: string;
    /**
     * The parts that carry it: two after a clash.
     */
    parts: StoredLine[];
    /**
     * The places that carry it.
     */
    places: PlaceLine[];
}

/**
 * Rules between parts.
 */
export interface RulesView {
    /**
     * In order of what they are about.
     */
    rules: RuleLine[];
}

/**
 * One rule.
 */
export interface RuleLine {
    /**
     * The record: relation, price.
     */
    record: RecordView;
    /**
     * What its subject is called: a part, a donor, or the part of a quote with whom that is from. Empty when it is not here.
     */
    subject: string;
    /**
     * The route of the subject, where it is a quote.
     */
    subject_route?: Route;
    /**
     * What the other is called.
     */
    other: string;
    /**
     * The route of the other, where it is a quote.
     */
    other_route?: Route;
    /**
     * The part of the subject, where it is a quote.
     */
    subject_part?: Id;
    /**
     * The part of the other, where it is a quote.
     */
    other_part?: Id;
    /**
     * The decisions break it.
     */
    breach?: BreachView;
}

/**
 * A rule that the decisions break.
 */
export interface BreachView {
    /**
     * What stands against it.
     */
    why: BreachWhy;
    /**
     * The route that was chosen for the other instead, where one was.
     */
    instead?: Route;
    /**
     * The parts that it concerns: those that make its subject hold, then those of the other.
     */
    parts: Id[];
    /**
     * What it costs extra as it is, where it need not hold.
     */
    price?: Money;
    /**
     * The cheapest single change after which it holds, and no other rule that must hold is broken by it.
     */
    mend?: MendView;
}

/**
 * What stands against a rule.
 */
export type BreachWhy = "nothing-chosen" | "other-chosen" | "not-used" | "both";

/**
 * One change that mends a rule.
 */
export interface MendView {
    /**
     * What is chosen: for one part, and with it for those that are decided together with it.
     */
    choices: MendChoice[];
    /**
     * What the job is worth more with it; below nothing what it saves. A part that is open counts at its cheapest quote.
     */
    more: Estimate;
}

/**
 * A quote that a mend chooses.
 */
export interface MendChoice {
    /**
     * For which part.
     */
    part: Id;
    /**
     * Its tag.
     */
    tag?: number;
    /**
     * Its name; empty when it has none.
     */
    name: string;
    /**
     * Which quote.
     */
    quote: Id;
    /**
     * Its route.
     */
    route: Route;
    /**
     * From whom.
     */
    from?: string;
}

/**
 * One line of what is in a kit.
 */
export interface ContentsLine {
    /**
     * The number of the part; empty where none is said.
     */
    number?: string;
    /**
     * Its name; empty where none is said.
     */
    name?: string;
    /**
     * How many pieces; left out where it is not said.
     */
    quantity?: number;
}

/**
 * What a list is taken to mean.
 */
export interface ContentsView {
    /**
     * In order of the lines; one line may be for several parts, left and right.
     */
    rows: ContentsRow[];
}

/**
 * What one line is taken to mean.
 */
export interface ContentsRow {
    /**
     * Which line, counted from 0.
     */
    line: number;
    /**
     * The part that is proposed.
     */
    part?: Id;
    /**
     * How many pieces for it.
     */
    pieces: number;
    /**
     * By what it was found.
     */
    by?: FoundBy;
    /**
     * Nothing speaks for another part.
     */
    sure: boolean;
    /**
     * The kit is said to cover that part already.
     */
    covered: boolean;
    /**
     * Other parts that it may be, the likeliest first.
     */
    others: Id[];
}

/**
 * By what a line was found.
 */
export type FoundBy = "number" | "name";

/**
 * A donor with what is known of it.
 */
export interface DonorView {
    /**
     * Which vehicle.
     */
    vehicle: Id;
    /**
     * What it gives: chosen for a part of the job, or taken off it already.
     */
    taken: DonorLine[];
    /**
     * What it has besides.
     */
    left: DonorLine[];
    /**
     * What was paid for it.
     */
    paid?: Money;
    /**
     * What all of its surplus was sold for.
     */
    sold: Money;
    /**
     * What it really cost: paid, less sold; nothing while no price is known.
     */
    really?: Money;
}

/**
 * Something on a donor: what was quoted for a part of the job, or a part that is listed in its own assemblies.
 */
export interface DonorLine {
    /**
     * The part of the job that it is for, or the part itself.
     */
    part: Id;
    /**
     * Its tag.
     */
    tag?: number;
    /**
     * Its name; empty when it has none.
     */
    name: string;
    /**
     * It is a quote for a part of the job, and chosen there.
     */
    chosen: boolean;
    /**
     * It was taken off.
     */
    off: boolean;
    /**
     * What it was sold for.
     */
    sold?: Money;
    /**
     * The record that is ticked: the quote (`fetched`), or the part (`off`).
     */
    record: RecordView;
}

/**
 * How a price at a rate came about.
 */
export interface Rated {
    /**
     * The price for one.
     */
    rate: Money;
    /**
     * One of what.
     */
    basis: RateBasis;
    /**
     * How many pieces.
     */
    pieces: number;
    /**
     * How much of it all: pieces, square millimetres, grams.
     */
    amount: number;
    /**
     * What it comes to, rounded once to the minor unit.
     */
    total: Money;
}

/**
 * Gearings before and after a swap.
 */
export interface GearingView {
    /**
     * Before, after, those thought about, the others; each by name.
     */
    sets: GearingLine[];
    /**
     * The road speed that was asked about, in km/h.
     */
    kmh?: number;
    /**
     * Why the speed asked about is none.
     */
    problems?: Problem[];
}

/**
 * One gearing, as far as it is known.
 */
export interface GearingLine {
    /**
     * The record: name, ratios, tyre.
     */
    record: RecordView;
    /**
     * What its vehicle is called.
     */
    vehicle?: string;
    /**
     * The marking, read.
     */
    tyre?: Tyre;
    /**
     * How far the tyre rolls: the best that is known of it.
     */
    rolling?: RollingView;
    /**
     * A row for each gear, the shortest first; with the overdrive in right after the same without.
     */
    rows: GearRow[];
    /**
     * What has to be said before there are rows.
     */
    needs?: FieldName[];
    /**
     * What of it cannot be read. It is kept as it is.
     */
    problems?: Problem[];
    /**
     * What changes against the one before.
     */
    against?: GearingChange;
}

/**
 * How far a tyre rolls.
 */
export interface RollingView {
    /**
     * From what that is known.
     */
    from: RollingFrom;
    /**
     * It was measured, by somebody or by the maker.
     */
    measured: boolean;
    /**
     * In one turn, in millimetres.
     */
    circumference: number;
    /**
     * Circumference ÷ π, in millimetres.
     */
    diameter: number;
    /**
     * Turns in a mile.
     */
    turns_per_mile: number;
    /**
     * Turns in a kilometre.
     */
    turns_per_km: number;
    /**
     * By how much more often it turns under load, least and most, as shares; nothing where the load is in the figure.
     */
    loaded?: [number, number];
    /**
     * By which share it turns more often than its marking says.
     */
    beside_marking?: number;
}

/**
 * One gear.
 */
export interface GearRow {
    /**
     * Which gear, from 1.
     */
    gear: number;
    /**
     * With the overdrive in.
     */
    overdriven: boolean;
    /**
     * It is the one in which the engine turns least.
     */
    top: boolean;
    /**
     * Turns of the engine for one of the gearbox.
     */
    ratio: number;
    /**
     * Turns of the engine for one of the wheel.
     */
    overall: number;
    /**
     * Miles an hour at 1000 turns a minute.
     */
    mph: number;
    /**
     * Kilometres an hour at 1000 turns a minute.
     */
    kmh: number;
    /**
     * Turns a minute at the speed that was asked about.
     */
    turns?: number;
    /**
     * Kilometres an hour at the most turns of the engine.
     */
    highest_kmh?: number;
    /**
     * By which share the engine turns more often at the same speed than before in the same gear; below 0: less.
     */
    change?: number;
}

/**
 * What a gearing changes against the one before. Shares: 0.1 is a tenth more, -0.1 a tenth less.
 */
export interface GearingChange {
    /**
     * The one before.
     */
    before: Id;
    /**
     * Turns of the engine at the same speed, each in its highest gear.
     */
    top?: number;
    /**
     * How far the tyre rolls.
     */
    rolling: number;
    /**
     * What a speedometer that was right shows too much when it is driven from the gearbox.
     */
    speedometer?: number;
    /**
     * What it shows too much when it is driven from a wheel.
     */
    wheel_speedometer: number;
}

/**
 * What a marking and a list of ratios say.
 */
export interface GearingTypedView {
    /**
     * The tyre.
     */
    tyre?: Tyre;
    /**
     * How far it rolls.
     */
    rolling?: RollingView;
    /**
     * The gears, the shortest first.
     */
    gears?: number[];
    /**
     * What cannot be read, with its field.
     */
    problems?: Problem[];
}

/**
 * What a road speed is told in.
 */
export type SpeedUnit = "mph" | "kmh";

/**
 * The size that a tyre is marked with: nominal, unloaded, new.
 */
export interface Tyre {
    /**
     * Width of the section in millimetres: 105 to 445 metric, 3 to 9.99 in otherwise.
     */
    width: number;
    /**
     * Height of the section as a share of its width, 0.25 to 1.
     */
    aspect: number;
    /**
     * Diameter of the rim in millimetres.
     */
    rim: number;
    /**
     * From where the height is known.
     */
    aspect_from: AspectFrom;
}

/**
 * From where it is known how high the section of a tyre is.
 */
export type AspectFrom = "marked" | "metric" | "inch";

/**
 * Why a marking cannot be read.
 */
export type TyreUnread = "empty" | "form" | "width" | "aspect" | "rim" | "rest";

/**
 * Why a list of gear ratios cannot be read.
 */
export type RatiosUnread = "empty" | "not-a-ratio" | "commas" | "order" | "too-many";

/**
 * From what it is known how far a tyre rolls in one turn, best first.
 */
export type RollingFrom = "circumference" | "turns" | "diameter" | "marking";

/**
 * What waits for a person.
 */
export interface ProblemsView {
    /**
     * Worst first.
     */
    problems: Problem[];
    /**
     * Fields with more than one value.
     */
    conflicts: ConflictView[];
}

/**
 * What was ever written to a record, and to what was said about it: findings, readings, quotes and the like.
 */
export interface HistoryView {
    /**
     * The record.
     */
    id: Id;
    /**
     * What it is.
     */
    kind?: Kind;
    /**
     * What it hangs on in the end: the part that a finding is of.
     */
    home?: Id;
    /**
     * One line for an entry and a record, latest last.
     */
    lines: HistoryLine[];
}

/**
 * What a change of several records at once names as seen.
 */
export interface SeenView {
    /**
     * The entries behind the values of all of them, by field.
     */
    seen: Seen;
}

/**
 * One entry as far as it concerns one record.
 */
export interface HistoryLine {
    /**
     * The entry.
     */
    entry: EntryId;
    /**
     * When.
     */
    at: Millis;
    /**
     * The record, where it is another one than was asked for.
     */
    about?: Id;
    /**
     * What that record is.
     */
    kind?: Kind;
    /**
     * What it wrote.
     */
    changes: Change[];
}

/**
 * The quotes of a part, side by side.
 */
export interface CostView {
    /**
     * Which part.
     */
    part: Id;
    /**
     * The currency of all estimates.
     */
    currency: Currency;
    /**
     * What an hour is worth: of the job, or as it was turned for this question, like the two below.
     */
    hour_value: Estimate;
    /**
     * Yearly rate of interest, as a share.
     */
    interest: number;
    /**
     * How many years the vehicle will be kept.
     */
    years_kept: number;
    /**
     * Its quotes, in order of id; kits that are quoted on other parts and cover this one among them.
     */
    quotes: QuoteCost[];
    /**
     * The allowed quote of the least present value.
     */
    cheapest?: Id;
    /**
     * The figures are so unsure that each of these may be cheaper than the cheapest after all: the order is open.
     */
    open_with: Id[];
    /**
     * At which value of which figure another quote becomes the cheapest.
     */
    flips: Flip[];
    /**
     * Where two quotes cost the same.
     */
    break_evens: BreakEven[];
    /**
     * The kits among the quotes, with what they cover.
     */
    kits: KitView[];
    /**
     * The decision that holds, with the figures it was made at.
     */
    chosen?: RecordView;
    /**
     * Another quote is cheaper than the chosen one by more than the threshold of the job.
     */
    overtaken?: Overtaken;
    /**
     * The routes that are left for the part, whatever its quotes say: the usual ones of its family first.
     */
    left: Route[];
    /**
     * What a quote of each route starts with.
     */
    starting: StartingValues[];
}

/**
 * One quote with what it really costs.
 */
export interface QuoteCost {
    /**
     * Its id.
     */
    id: Id;
    /**
     * Its route.
     */
    route: Route;
    /**
     * The supplier or specialist.
     */
    from?: string;
    /**
     * Whether it may be chosen.
     */
    allowed: boolean;
    /**
     * Why not.
     */
    why?: WhyNot;
    /**
     * The lines that add up to the present value; a line that is nothing is left out, but for cash, own time and risk.
     */
    lines: CostLine[];
    /**
     * What it is expected to cost now: the lines but the renewals.
     */
    expected: Estimate;
    /**
     * What it is worth now over the years that the vehicle is kept.
     */
    present: Estimate;
    /**
     * The same as equal sums at the end of every year.
     */
    yearly: Estimate;
    /**
     * How often it is done again within those years.
     */
    renewals: number;
    /**
     * So low 8 times in 10, at least.
     */
    low: Estimate;
    /**
     * So high 8 times in 10, at most.
     */
    high: Estimate;
    /**
     * The share of the lines that rests on guesses, from 0 to 1.
     */
    guessed: number;
    /**
     * All that is paid at first: prices, and the surcharge in full.
     */
    peak: Money;
    /**
     * Cash as entered, or as it comes to at the rate that was.
     */
    cash?: Money;
    /**
     * How that came about, where a rate was entered.
     */
    rated?: Rated;
    /**
     * The rate at which its duty was worked out by the terms of its supplier, in parts of ten thousand.
     */
    duty_rate?: number;
    /**
     * The same of its tax.
     */
    tax_rate?: number;
    /**
     * Own hours as entered, in minutes.
     */
    own_time: Minutes;
    /**
     * The chance that it fails, as entered.
     */
    chance: Chance;
    /**
     * Own hours to strip again as entered, in minutes.
     */
    strip_again: Minutes;
    /**
     * Whether the cost rests on a guess.
     */
    guess: boolean;
    /**
     * How sure the cash is.
     */
    cash_certainty?: Certainty;
    /**
     * How sure the own hours are.
     */
    own_time_certainty?: Certainty;
    /**
     * How sure the chance is.
     */
    chance_certainty?: Certainty;
    /**
     * The quote that is turned to first when it fails.
     */
    fallback?: Id;
    /**
     * It can fail, and there is no other quote to fall back on: the cost of that is not known, and not counted.
     */
    fails_into_nothing: boolean;
    /**
     * Its record, for editing.
     */
    record: RecordView;
}

/**
 * A named part of a cost.
 */
export interface CostLine {
    /**
     * Which part.
     */
    kind: LineKind;
    /**
     * How much.
     */
    amount: Estimate;
    /**
     * It rests on a guess.
     */
    guess: boolean;
}

/**
 * The parts of a cost.
 */
export type LineKind = "cash" | "freight" | "tax" | "duty" | "consumables" | "surcharge" | "shared" | "own-time" | "risk" | "renewals";

/**
 * Where two quotes cost the same.
 */
export interface BreakEven {
    /**
     * The quote whose own hours are varied.
     */
    quote: Id;
    /**
     * The quote it is held against.
     */
    against: Id;
    /**
     * Own hours on the first, with fractions, at which both cost the same; left out when there are none.
     */
    hours?: number;
    /**
     * The value of an hour, in minor units, at which both cost the same; left out when there is none.
     */
    hour_value?: number;
}

/**
 * A value of one figure at which another quote becomes the cheapest, all other figures as they are.
 */
export interface Flip {
    /**
     * Which figure; its unit is told there.
     */
    input: Input;
    /**
     * Of which quote; left out for figures of the job.
     */
    quote?: Id;
    /**
     * What it is now.
     */
    now: number;
    /**
     * Up to where the cheapest stays the cheapest.
     */
    at: number;
    /**
     * Which way the figure has to go.
     */
    beyond: Beyond;
    /**
     * What is cheapest beyond it.
     */
    then: Id;
}

/**
 * A direction.
 */
export type Beyond = "above" | "below";

/**
 * One figure on which the order of the quotes depends, in the unit in which it is answered and set.
 */
export type Input = "cash" | "freight" | "tax" | "duty" | "consumables" | "surcharge" | "withheld" | "own_time" | "strip_again" | "chance" | "life" | "hour_value" | "interest" | "years";

/**
 * Figures turned for one question, without writing anything: of quotes by their id, and of the job.
 *
 * Each is in the unit of its [`Input`]: money in minor units of the job's currency, hours in minutes, chances from 0 to 1, a
 * life in months, interest as a share, years. What is beyond the accepted is kept within it.
 *
 * ```
 * use asfound_core::costing::WhatIf;
 * let set: WhatIf = serde_json::from_str(r#"{"job":{"hour_value":2500}}"#).unwrap();
 * assert_eq!(set.job.len(), 1);
 * ```
 */
export interface WhatIf {
    /**
     * Of quotes.
     */
    quotes?: Record<string, Partial<Record<Input, number>>>;
    /**
     * Of the job.
     */
    job?: Partial<Record<Input, number>>;
}

/**
 * What a kit is worth beside its pieces bought singly.
 */
export interface KitView {
    /**
     * The quote.
     */
    quote: Id;
    /**
     * What it covers, by part.
     */
    covers: CoverView[];
    /**
     * Its price.
     */
    price: Money;
    /**
     * What the parts in it that are still to be bought cost singly, as far as prices are known.
     */
    singly: Money;
    /**
     * The kit, and singly what it holds too few of.
     */
    with_kit: Money;
}

/**
 * A part that a kit covers.
 */
export interface CoverView {
    /**
     * The record that says so.
     */
    cover: Id;
    /**
     * Which part.
     */
    part: Id;
    /**
     * How many pieces are in the kit.
     */
    pieces: number;
    /**
     * How many are needed.
     */
    needed: number;
    /**
     * It is decided otherwise, or struck out: the kit spares nothing there.
     */
    spare: boolean;
    /**
     * The entries behind that record, for striking it out; none for the part that the kit is quoted on.
     */
    seen: Seen;
    /**
     * The least price for all that are needed, bought singly.
     */
    singly?: Money;
}

/**
 * A decision that another quote has overtaken.
 */
export interface Overtaken {
    /**
     * The quote that is cheaper now.
     */
    by: Id;
    /**
     * How much cheaper.
     */
    saves: Estimate;
}

/**
 * A question whose answer draws figures over and over, or looks through all parts for each line of a list; [`reckon`](super::reckon) answers it. It stands beside
 * [`Query`](crate::job::Query), so that whoever answers quick questions alone carries nothing of it.
 */
export type HeavyQuery = { ask: "certainty"; part: Id; today?: Day; set?: WhatIf; test?: PricedTest; draws?: number; seed?: number } | { ask: "undecided"; today?: Day; draws?: number; seed?: number } | { ask: "kit-contents"; quote: Id; lines: ContentsLine[] } | ({ ask: "plan" } & PlanQuery) | ({ ask: "frontier" } & FrontierQuery) | ({ ask: "sway" } & SwayQuery) | { ask: "kept-plans"; today?: Day };

/**
 * What a plan is asked for. What is left out is as the job says.
 */
export interface PlanQuery {
    /**
     * Which day it is: quotes that have run out, and waits that would pass the latest day, are left out.
     */
    today?: Day;
    /**
     * The most cash that is paid at first, in minor units; the budget of the job where it is left out.
     */
    budget?: number;
    /**
     * The same for stages, each with its number.
     */
    stages?: StageBudget[];
    /**
     * The most own time, in minutes; the own hours of the job where it is left out.
     */
    minutes?: number;
    /**
     * The day by which everything must be in.
     */
    latest?: Day;
    /**
     * Another aim.
     */
    aim?: Aim;
    /**
     * Quotes, suppliers and donors that must be taken where they offer something, besides those the job pins.
     */
    pin?: Id[];
    /**
     * Quotes, suppliers and donors that must not be taken, besides those the job forbids.
     */
    forbid?: Id[];
    /**
     * What is decided may be decided otherwise, unless it is pinned.
     */
    reopen?: boolean;
    /**
     * Routes that must not be taken.
     */
    forbid_routes?: Route[];
    /**
     * Budget, hours and latest day of the job do not count.
     */
    without_limits?: boolean;
    /**
     * Figures turned for this question alone, as in `cost`.
     */
    set?: WhatIf;
    /**
     * The seed from which plans are shaken.
     */
    seed?: number;
    /**
     * How many steps are made at most, from 1 to 100,000; left out, 300.
     */
    nodes?: number;
}

/**
 * The most cash that is paid in one stage.
 */
export interface StageBudget {
    /**
     * Which stage.
     */
    stage: number;
    /**
     * How much, in minor units.
     */
    budget: number;
}

/**
 * One quote for every part, so that all of them together cost least, with what is known of how good that is.
 */
export interface PlanView {
    /**
     * The currency of all sums.
     */
    currency: Currency;
    /**
     * How sure it is that nothing is better.
     */
    proof: PlanProof;
    /**
     * How many steps were made.
     */
    nodes: number;
    /**
     * What the plan comes to; nothing while none is found that fits.
     */
    sums?: PlanSums;
    /**
     * No plan costs less.
     */
    bound?: Money;
    /**
     * What each part's own cheapest would come to together, and whether that keeps all limits and rules.
     */
    singly?: PlanSums;
    /**
     * Where decisions are open again: what was chosen, with each open part's own cheapest.
     */
    own?: PlanSums;
    /**
     * The way to the plan from what was chosen, or from each part's own cheapest: what brings most first.
     */
    steps?: PlanStep[];
    /**
     * What is taken for each part, by part.
     */
    choices: PlanChoice[];
    /**
     * What goes with each supplier and specialist whose terms are known, by stage and supplier.
     */
    orders: PlanOrder[];
    /**
     * Kits that are bought, by quote.
     */
    kits: PlanKit[];
    /**
     * Donors that are used, by vehicle.
     */
    donors: PlanDonor[];
    /**
     * Parts that the plan leaves out: nothing that may be chosen is quoted for them.
     */
    unplanned: Id[];
    /**
     * Rules that only cost extra, and are not kept, by id.
     */
    unkept: Id[];
    /**
     * Where nothing fits: limits that collide; without any one of them these would no longer.
     */
    collide: Collides[];
}

/**
 * What a plan comes to.
 */
export interface PlanSums {
    /**
     * Present value, all in.
     */
    cost: Money;
    /**
     * All that is paid at first.
     */
    cash: Money;
    /**
     * Own time.
     */
    own_time: Minutes;
    /**
     * The longest wait in days, as far as waits are known.
     */
    wait: number;
    /**
     * Carriage and what is short of least charges.
     */
    carriage: Money;
    /**
     * It keeps all limits and rules.
     */
    fits: boolean;
}

/**
 * What is taken for one part.
 */
export interface PlanChoice {
    /**
     * Which part.
     */
    part: Id;
    /**
     * Its tag.
     */
    tag?: number;
    /**
     * Its name; empty when it has none.
     */
    name: string;
    /**
     * Which quote.
     */
    quote: Id;
    /**
     * Its route.
     */
    route: Route;
    /**
     * From whom.
     */
    from?: string;
    /**
     * The quote for pieces that a kit has too few of.
     */
    rest?: Id;
    /**
     * It was decided before, and stays.
     */
    decided: boolean;
    /**
     * Somebody chose this quote.
     */
    chosen: boolean;
    /**
     * The part's own cheapest, where that is another one.
     */
    instead_of?: Id;
    /**
     * Why not that one.
     */
    why?: PlanWhy;
    /**
     * What is paid at first for the whole quote, in minor units.
     */
    cash: number;
    /**
     * The same of `rest`.
     */
    rest_cash?: number;
}

/**
 * Why a part does not take its own cheapest quote.
 */
export interface PlanWhy {
    /**
     * What stands against it.
     */
    because: Because;
    /**
     * What the job would cost more with it, where it would still fit; else by how much a budget or the hours are passed, in
     * minor units or minutes.
     */
    more: number;
}

/**
 * A few parts that go over to the plan in one go.
 */
export interface PlanStep {
    /**
     * The parts, each with its quote in the plan.
     */
    parts: PlanTaken[];
    /**
     * Why they go over.
     */
    why: StepWhy;
    /**
     * The supplier, specialist or donor that they have together.
     */
    name?: string;
    /**
     * By how much less the whole job then costs; less than nothing where it is dearer, but keeps a limit or a rule.
     */
    saves: Money;
    /**
     * How much more is paid at first.
     */
    cash: Money;
    /**
     * How much more own time it takes.
     */
    own_time: Minutes;
}

/**
 * A part and its quote.
 */
export interface PlanTaken {
    /**
     * Which part.
     */
    part: Id;
    /**
     * Which quote.
     */
    quote: Id;
}

/**
 * What parts of a step have together.
 */
export type StepWhy = "itself" | "kit" | "donor" | "order" | "no-kit" | "no-donor" | "no-order" | "rest";

/**
 * What there is never enough of.
 */
export type Scarce = "cash" | "hours";

/**
 * What a frontier is asked for.
 */
export interface FrontierQuery {
    /**
     * Against what.
     */
    of: Scarce;
    /**
     * The plan whose frontier it is; `nodes` are the steps for each point.
     */
    plan?: PlanQuery;
    /**
     * How many points between the least that will do and as much as is ever wanted, from 2 to 40.
     */
    points?: number;
}

/**
 * How what the whole job costs hangs on the budget, or on the own hours.
 */
export interface FrontierView {
    /**
     * Against what.
     */
    of: Scarce;
    /**
     * The currency of all sums.
     */
    currency: Currency;
    /**
     * The limit that is kept today, in minor units or minutes.
     */
    limit?: number;
    /**
     * Nothing is to be had with less than this; nothing where that is not proved.
     */
    least?: number;
    /**
     * The best plan for each limit, the least limit first: none costs more than the one before.
     */
    points: FrontierPoint[];
    /**
     * The plan at today's limit.
     */
    plan?: FrontierPoint;
    /**
     * What was chosen, with each open part's own cheapest: what it uses, and what it costs.
     */
    own?: FrontierPoint;
    /**
     * What a little more of the limit saves; nothing where there is none.
     */
    more?: OneMore;
}

/**
 * The best plan for one limit.
 */
export interface FrontierPoint {
    /**
     * The limit, in minor units or minutes.
     */
    limit: number;
    /**
     * How much of it the plan uses.
     */
    used: number;
    /**
     * Its present value, all in.
     */
    cost: Money;
    /**
     * No plan within the limit costs less.
     */
    bound: Money;
    /**
     * What is paid at first.
     */
    cash: Money;
    /**
     * Own time.
     */
    own_time: Minutes;
    /**
     * How sure it is that nothing is better.
     */
    proof: PlanProof;
}

/**
 * What a little more of a limit saves.
 */
export interface OneMore {
    /**
     * So much more, in minor units or minutes.
     */
    more: number;
    /**
     * By how much less the job then costs.
     */
    saves: Money;
    /**
     * It is sure to the minor unit: both plans are proved.
     */
    sure: boolean;
}

/**
 * What it is asked with.
 */
export interface SwayQuery {
    /**
     * The plan that is looked at; `nodes` are the steps for each draw, `seed` is what figures are drawn from.
     */
    plan?: PlanQuery;
    /**
     * How often figures are drawn, from 1 to 400; left out, 20 times.
     */
    draws?: number;
}

/**
 * How steady the plan of the whole job is, its figures being guesses.
 */
export interface SwayView {
    /**
     * How often figures were drawn.
     */
    draws: number;
    /**
     * How often a plan was found that fits.
     */
    fitted: number;
    /**
     * The parts that go another way in some draw, the least steady first.
     */
    parts: SwayPart[];
    /**
     * How many parts go the same way every time.
     */
    steady: number;
}

/**
 * A part that goes another way in some draw.
 */
export interface SwayPart {
    /**
     * Which part.
     */
    part: Id;
    /**
     * Its tag.
     */
    tag?: number;
    /**
     * Its name; empty when it has none.
     */
    name: string;
    /**
     * Its quotes, the one taken most often first.
     */
    quotes: SwayQuote[];
}

/**
 * How often a quote was in the best plan.
 */
export interface SwayQuote {
    /**
     * Which quote.
     */
    quote: Id;
    /**
     * Its route.
     */
    route: Route;
    /**
     * From whom.
     */
    from?: string;
    /**
     * In how many draws.
     */
    times: number;
    /**
     * It is in the plan with figures as they stand.
     */
    planned: boolean;
}

/**
 * All plans that were kept, by name, each counted again as the job is today.
 */
export interface KeptPlansView {
    /**
     * The currency of all sums that are counted now.
     */
    currency: Currency;
    /**
     * What an hour is worth now.
     */
    hour_value: Money;
    /**
     * The plans.
     */
    plans: KeptPlan[];
}

/**
 * A plan that was kept.
 */
export interface KeptPlan {
    /**
     * Its record, without its quotes.
     */
    record: RecordView;
    /**
     * What it came to when it was kept, as far as that was noted.
     */
    kept: KeptSums;
    /**
     * What it comes to now. A part that came later, or whose quote may not be taken any more, counts at its own cheapest.
     */
    now: PlanSums;
    /**
     * Its parts, and those that came later, by part.
     */
    parts: KeptPart[];
    /**
     * How much more is paid at first for those of its quotes that may still be taken, each in full and once.
     */
    more: Money;
}

/**
 * What a plan came to when it was kept.
 */
export interface KeptSums {
    /**
     * Present value, all in.
     */
    cost?: Money;
    /**
     * All that is paid at first.
     */
    cash?: Money;
    /**
     * Own time.
     */
    own_time?: Minutes;
    /**
     * What an hour was worth in it.
     */
    hour_value?: Money;
}

/**
 * A part of a plan that was kept, or one that came later.
 */
export interface KeptPart {
    /**
     * Which part.
     */
    part: Id;
    /**
     * Its tag.
     */
    tag?: number;
    /**
     * Its name; empty when it has none.
     */
    name: string;
    /**
     * Its quote in the plan; nothing where it came later.
     */
    quote?: Id;
    /**
     * The route of that, as far as it is known.
     */
    route?: Route;
    /**
     * From whom.
     */
    from?: string;
    /**
     * It may be taken.
     */
    open: boolean;
    /**
     * It is what somebody chose.
     */
    chosen: boolean;
    /**
     * What has changed since.
     */
    since?: KeptSince;
    /**
     * How much more is paid for it at first. A kit stands with the first of its parts.
     */
    more?: Money;
}

/**
 * What has changed for a part since a plan was kept.
 */
export type KeptSince = "part-gone" | "quote-gone" | "barred" | "later" | "price";

/**
 * What stands against the cheapest quote of a part.
 */
export type Because = "shared" | "carriage" | "budget" | "hours" | "least-order" | "rule" | "together" | "dearer";

/**
 * What goes with one order or batch.
 */
export interface PlanOrder {
    /**
     * From whom.
     */
    supplier: Id;
    /**
     * What that one is called.
     */
    name: string;
    /**
     * In which stage.
     */
    stage: number;
    /**
     * Quotes that go with it.
     */
    quotes: Id[];
    /**
     * Their value.
     */
    value: Money;
    /**
     * Their mass in grams, as far as it is known.
     */
    mass: number;
    /**
     * Carriage.
     */
    carriage: Money;
    /**
     * What is paid because the pieces come short of the least charge.
     */
    short: Money;
    /**
     * What is missing until carriage is free.
     */
    to_free?: Money;
}

/**
 * A kit that is bought.
 */
export interface PlanKit {
    /**
     * Its quote.
     */
    quote: Id;
    /**
     * From whom.
     */
    from?: string;
    /**
     * How many.
     */
    copies: number;
    /**
     * What each costs.
     */
    price: Money;
    /**
     * What is left over.
     */
    spare: Spare[];
}

/**
 * Pieces of a kit that are left over.
 */
export interface Spare {
    /**
     * Of which part.
     */
    part: Id;
    /**
     * How many.
     */
    pieces: number;
}

/**
 * A donor that is used.
 */
export interface PlanDonor {
    /**
     * Which vehicle.
     */
    vehicle: Id;
    /**
     * What it is called.
     */
    name: string;
    /**
     * What it really costs: its price, less what surplus was sold for; nothing where it is here already.
     */
    cost: Money;
    /**
     * The parts it gives.
     */
    parts: Id[];
}

/**
 * A limit or a rule that collides with others, and the cheapest way to give way.
 */
export interface Collides {
    /**
     * Which.
     */
    limit: Collision;
    /**
     * The rule, or the supplier of a least order.
     */
    of?: Id;
    /**
     * What that supplier is called, or what the rule is about and what it says of it.
     */
    names?: string[];
    /**
     * Of the stage whose budget it is.
     */
    stage?: number;
    /**
     * How much more it would take while all else is kept, in minor units or minutes; nothing where more of it alone does not
     * help.
     */
    more?: number;
}

/**
 * What can collide.
 */
export type Collision = "budget" | "stage" | "hours" | "least-order" | "rule";

/**
 * How sure it is that no plan is better.
 */
export type PlanProof = "best" | "within" | "nothing-fits" | "open";

/**
 * A test that may be made before choosing: whether a quote's route will fail.
 */
export interface PricedTest {
    /**
     * The quote whose failing is asked about.
     */
    quote: Id;
    /**
     * Of those that will fail, which share the test says so of, from 0 to 1.
     */
    sensitivity: number;
    /**
     * Of those that will not fail, which share the test says so of, from 0 to 1.
     */
    specificity: number;
    /**
     * What it costs, in minor units of the job's currency.
     */
    price?: number;
    /**
     * Own time that it takes, in minutes.
     */
    own_time?: number;
    /**
     * How likely failing is before it, from 0 to 1; left out: the mean of what was said.
     */
    chance?: number;
}

/**
 * The answer to a heavy question. It stands beside [`View`](crate::job::View), so that whoever answers quick questions
 * alone does not carry what heavy ones need.
 */
export type Reckoned = ({ view: "certainty" } & CertaintyView) | ({ view: "undecided" } & UndecidedView) | ({ view: "kit-contents" } & ContentsView) | ({ view: "plan" } & PlanView) | ({ view: "frontier" } & FrontierView) | ({ view: "sway" } & SwayView) | ({ view: "kept-plans" } & KeptPlansView) | { view: "nothing" };

/**
 * How sure one may be of what the quotes of a part come to, by drawing their unsure figures over and over.
 */
export interface CertaintyView {
    /**
     * Which part.
     */
    part: Id;
    /**
     * The currency of all estimates.
     */
    currency: Currency;
    /**
     * How often figures were drawn.
     */
    draws: number;
    /**
     * The seed they were drawn from: the same gives the same answer.
     */
    seed: number;
    /**
     * The quote of the least present value at the figures as they were said: what costing calls the cheapest.
     */
    cheapest?: Id;
    /**
     * What choosing that one is expected to cost beyond what turns out the cheapest.
     */
    regret: Estimate;
    /**
     * What it would be worth to know every figure before choosing: the least regret of any quote. It is below `regret` where
     * another quote than `cheapest` costs less in the mean.
     */
    worth_of_all: Estimate;
    /**
     * The quotes that may be chosen, in order of id.
     */
    quotes: QuoteCertainty[];
    /**
     * What it would be worth to know one unsure figure before choosing, the most first.
     */
    knowing: KnowingView[];
    /**
     * What the test that was asked about is worth; left out when none was, or its quote may not be chosen.
     */
    test?: TestView;
}

/**
 * One quote, as it came out over all draws.
 */
export interface QuoteCertainty {
    /**
     * Its id.
     */
    id: Id;
    /**
     * Its route.
     */
    route: Route;
    /**
     * The chance that it is the cheapest, from 0 to 1.
     */
    cheapest: number;
    /**
     * The same by a formula, where there is one.
     */
    exact_cheapest?: number;
    /**
     * The mean of its present value.
     */
    mean: Estimate;
    /**
     * The same by a formula, where there is one.
     */
    exact_mean?: Estimate;
    /**
     * Its present value is below this 1 time in 10.
     */
    p10: Estimate;
    /**
     * And this 5 times in 10.
     */
    p50: Estimate;
    /**
     * And this 9 times in 10.
     */
    p90: Estimate;
    /**
     * What choosing it is expected to cost beyond what turns out the cheapest.
     */
    regret: Estimate;
    /**
     * How long it takes to come in, where that was said.
     */
    wait?: WaitView;
}

/**
 * An unsure figure, and what it would be worth to know it.
 */
export interface KnowingView {
    /**
     * Whose figure it is.
     */
    quote?: Id;
    /**
     * Which figure.
     */
    input: Input;
    /**
     * The least that it may be, in the unit of the figure.
     */
    least: number;
    /**
     * What was said.
     */
    likely: number;
    /**
     * The most that it may be.
     */
    most: number;
    /**
     * What it is worth to know it: nothing where it cannot change the choice.
     */
    worth: Estimate;
}

/**
 * What a test is worth that may be made before choosing.
 */
export interface TestView {
    /**
     * The quote whose failing it is about.
     */
    quote: Id;
    /**
     * How likely failing is before it.
     */
    chance: number;
    /**
     * How likely the test is to say that it fails.
     */
    says_fails: number;
    /**
     * How likely failing is once it said so.
     */
    chance_if_fails: number;
    /**
     * How likely failing is once it said that it does not fail.
     */
    chance_if_not: number;
    /**
     * The best quote once it said that it fails.
     */
    best_if_fails: Id;
    /**
     * The best quote once it said that it does not fail.
     */
    best_if_not: Id;
    /**
     * What it is worth at most.
     */
    worth: Estimate;
    /**
     * What it costs, own time counted.
     */
    costs: Estimate;
    /**
     * What is left of its worth when it is paid; below nothing it should not be made.
     */
    gain: Estimate;
}

/**
 * The parts that are not decided, those first where a wrong choice would cost most.
 */
export interface UndecidedView {
    /**
     * The currency of all estimates.
     */
    currency: Currency;
    /**
     * How often figures were drawn for each part.
     */
    draws: number;
    /**
     * The seed they were drawn from.
     */
    seed: number;
    /**
     * The parts: with quotes that may be chosen, by what a wrong choice would cost, then by the cash at stake; then those
     * that wait for something, by what it is.
     */
    parts: UndecidedPart[];
}

/**
 * A part that is not decided.
 */
export interface UndecidedPart {
    /**
     * Its id.
     */
    part: Id;
    /**
     * Its tag.
     */
    tag?: number;
    /**
     * Its name; empty when nobody gave one.
     */
    name: string;
    /**
     * Where it stands.
     */
    standing: Standing;
    /**
     * How many quotes may be chosen.
     */
    quotes: number;
    /**
     * Which of them costs least at the figures as they were said.
     */
    cheapest?: Id;
    /**
     * Its route.
     */
    route?: Route;
    /**
     * The chance that it is the cheapest, from 0 to 1.
     */
    chance?: number;
    /**
     * What choosing it is expected to cost beyond what turns out the cheapest.
     */
    regret: Estimate;
    /**
     * All that is paid for it at first, surcharge in full.
     */
    cash: Money;
    /**
     * What it waits for, where no quote may be chosen.
     */
    waits?: Waits;
}

/**
 * How long one waits for a quote, in days: exact, as nothing else moves it.
 */
export interface WaitView {
    /**
     * What was said.
     */
    likely: number;
    /**
     * The mean.
     */
    mean: number;
    /**
     * It is shorter than this 1 time in 10.
     */
    p10: number;
    /**
     * And this 5 times in 10.
     */
    p50: number;
    /**
     * And this 9 times in 10.
     */
    p90: number;
}

/**
 * What a part waits for before its route can be decided.
 */
export type Waits = "quote" | "allowed-quote" | "first-word" | "coming-off";

/**
 * What a quote is given to start with where the user enters a price alone. It is written with the word *starting*, counts
 * as a guess, and stays marked until it is confirmed or replaced.
 */
export interface StartingValues {
    /**
     * For which route.
     */
    route: Route;
    /**
     * Usual own hours, in minutes.
     */
    own_time: Minutes;
    /**
     * Usual chance that it fails.
     */
    chance: Chance;
    /**
     * Usual own hours to strip again, in minutes.
     */
    strip_again: Minutes;
    /**
     * Usual service life in months.
     */
    life: number;
}

/**
 * What the job comes to so far.
 */
export interface TotalsView {
    /**
     * Parts that are decided.
     */
    decided: number;
    /**
     * Of those, parts without a price: renewed whatever they look like, and no quote says for how much.
     */
    unpriced: number;
    /**
     * Parts that are open: with quotes or without.
     */
    open: number;
    /**
     * Of those, parts that have a quote which may be chosen.
     */
    quoted: number;
    /**
     * All prices of what is decided, without surcharges that come back. A kit counts once.
     */
    cash: Money;
    /**
     * All that is paid at first for what is decided, surcharges in full.
     */
    peak: Money;
    /**
     * Own hours of what is decided, in minutes.
     */
    own_time: Minutes;
    /**
     * What is decided, worth now over the years.
     */
    present: Estimate;
    /**
     * What is open, at the cheapest quote of each part that has one.
     */
    open_present: Estimate;
    /**
     * The share of both that rests on guesses, from 0 to 1.
     */
    guessed: number;
    /**
     * What was bought.
     */
    spent: Money;
    /**
     * Purchases in another currency than the job's: not in the sum.
     */
    spent_elsewhere: number;
    /**
     * Decisions that another quote has overtaken by more than the threshold, with their parts.
     */
    overtaken: Id[];
    /**
     * Purchases, latest first.
     */
    purchases: PurchaseView[];
}

/**
 * Something bought, with the photos of its receipt.
 */
export interface PurchaseView {
    /**
     * Its record.
     */
    record: RecordView;
    /**
     * Photos of the receipt, in order.
     */
    photos: PhotoView[];
    /**
     * The name of the part that it was bought for; empty when none was said.
     */
    part_name: string;
}

/**
 * Why a quote cannot be chosen.
 */
export type WhyNot = "cannot-be-bought" | "single-use" | "other-currency" | "nothing-there" | "below-aim" | "safety" | "run-out" | "not-in-trade" | "judged-scrap" | "needs-rework" | "waits-for-proof" | "amount-missing";

/**
 * One part under judgement.
 */
export interface InspectView {
    /**
     * Which part.
     */
    part: Id;
    /**
     * Its family: a code of the tables, or the id of one of the user's own.
     */
    family?: string;
    /**
     * The name of the family, where it is one of the user's own.
     */
    own_family?: string;
    /**
     * Families that its name suggests, likeliest first, while none is said.
     */
    proposed: ProposedView[];
    /**
     * Families of the user's own, in order of name.
     */
    own_families: RecordView[];
    /**
     * Renewed whatever it looks like.
     */
    single_use: boolean;
    /**
     * Both sides of an axle together.
     */
    pair: boolean;
    /**
     * Kept and renewed together with what it was matched to.
     */
    matched: boolean;
    /**
     * Somebody can be hurt when it breaks.
     */
    safety_critical: boolean;
    /**
     * The questions in order, with what was answered.
     */
    asked: AskedView[];
    /**
     * The first question that has neither an answer nor was left out, by its place in `asked`.
     */
    next?: number;
    /**
     * What is measured, with its limits, readings and proof.
     */
    measures: MeasureView[];
    /**
     * What it comes to.
     */
    verdict: Verdict;
    /**
     * What speaks for that, worst first.
     */
    reasons: Reason[];
    /**
     * Every route, with why it is not left.
     */
    routes: RouteLeft[];
    /**
     * It stays on the shelf as a pattern, until its replacement has been compared with it.
     */
    keep_as_pattern: boolean;
    /**
     * The same part on the other side.
     */
    other_side?: PartLine;
    /**
     * What the other side comes to.
     */
    other_verdict?: Verdict;
    /**
     * What is measured with, in order of name.
     */
    instruments: RecordView[];
    /**
     * What a garage usually measures with, to be taken over.
     */
    usual_instruments: UsualInstrumentView[];
    /**
     * Parts that are decided together with it.
     */
    together: PartLine[];
}

/**
 * A family that a name suggests.
 */
export interface ProposedView {
    /**
     * Its code, or the id of one of the user's own.
     */
    family: string;
    /**
     * The user said so of a part of that name before.
     */
    learnt: boolean;
}

/**
 * An instrument with its usual figures: common practice, no source.
 */
export interface UsualInstrumentView {
    /**
     * Which.
     */
    instrument: UsualInstrument;
    /**
     * Its least step.
     */
    resolution: Length;
    /**
     * Its uncertainty, coverage factor 2; left out where the step says it all.
     */
    stated?: Length;
}

/**
 * A question with what was answered.
 */
export interface AskedView {
    /**
     * Its code, or the id of the user's own.
     */
    question: string;
    /**
     * Its words, where it is the user's own.
     */
    text?: string;
    /**
     * What may be answered, best first.
     */
    outcomes: OutcomeView[];
    /**
     * The standard that names the damage.
     */
    standard?: string;
    /**
     * What was answered.
     */
    answer?: string;
    /**
     * It was left out.
     */
    skipped: boolean;
    /**
     * The record of the answer.
     */
    finding?: RecordView;
    /**
     * Photos that show it.
     */
    photos: PhotoView[];
    /**
     * What was answered on the other side.
     */
    other_side?: string;
}

/**
 * One answer with what it means.
 */
export interface OutcomeView {
    /**
     * Its code.
     */
    code: string;
    /**
     * What it means.
     */
    condition: Condition;
}

/**
 * A measure of a part, with its limits, its readings and what they prove. All amounts are in the base unit of the
 * dimension: nanometres, millinewtons, a count.
 */
export interface MeasureView {
    /**
     * What is measured: a code of the tables, or the user's own word.
     */
    feature: string;
    /**
     * In what.
     */
    dimension: Dimension;
    /**
     * Which kind of limit it has.
     */
    kind: LimitKind;
    /**
     * Its limit: of this part, else of the same part on the other side.
     */
    limit?: RecordView;
    /**
     * Where the limit that counts comes from; left out where there is none.
     */
    source?: LimitSource;
    /**
     * The limits that count.
     */
    limits: Limits;
    /**
     * Its readings, earliest first.
     */
    readings: RecordView[];
    /**
     * The places that were measured, in order of name; for a difference between sides, the places of both.
     */
    places: PlaceMeasured[];
    /**
     * Which of the places governs: the worst.
     */
    governs?: number;
    /**
     * What would settle it, where it proves nothing.
     */
    settling?: Settling;
    /**
     * The next standard size that a worn bore or journal cleans up at, as far as the readings say; in the steps of the job's
     * units.
     */
    next_size?: NextSize;
    /**
     * What it comes to; left out where nothing was read, or nothing is limited.
     */
    condition?: Condition;
    /**
     * The places of the other side.
     */
    other_side: PlaceMeasured[];
}

/**
 * One place as measured, with what that proves.
 */
export interface PlaceMeasured {
    /**
     * Where it was measured; empty when nobody said.
     */
    spot: string;
    /**
     * The mean of its repeats and how far that may be off.
     */
    measured: Measured;
    /**
     * What it proves against the limits.
     */
    against?: Against;
}

/**
 * The limits of one feature, in the base unit of what is measured.
 */
export interface Limits {
    /**
     * Beyond it the part is scrap.
     */
    discard: Bounds;
    /**
     * What it may be after machining; stricter than the discard limit.
     */
    machining: Bounds;
    /**
     * What it was when new.
     */
    as_new?: number;
}

/**
 * What may be: no less, no more, or both, in the base unit of what is measured. With neither, nothing is limited.
 */
export interface Bounds {
    /**
     * The least that is good.
     */
    least?: number;
    /**
     * The most that is good.
     */
    most?: number;
}

/**
 * A reading against both limits.
 */
export interface Against {
    /**
     * What it allows.
     */
    allows: Use;
    /**
     * What it proves against the discard limit.
     */
    discard?: Proof;
    /**
     * What it proves against the machining limit.
     */
    machining?: Proof;
    /**
     * The most that may be cut off a size that has one machining limit, with both limits still proved kept; left out where
     * nothing may.
     */
    most_cut?: number;
    /**
     * Wear as a share of the allowance.
     */
    wear?: Wear;
}

/**
 * What a reading proves against a limit, and by which rule.
 */
export interface Proof {
    /**
     * What is proved.
     */
    proved: Proved;
    /**
     * By which rule.
     */
    rule: Rule;
    /**
     * The chance of conforming, from 0 to 1; left out where nothing is known of the instrument.
     */
    chance?: number;
    /**
     * How wide the guard band is on each side of a limit. By the edition of 2017, between two limits so near to one another
     * that both are in doubt, what is proved good may have to lie further inside than this.
     */
    guard: number;
    /**
     * How far inside the nearer end the reading is; less than nothing outside.
     */
    margin: number;
}

/**
 * What a reading proves. In order: the worst first.
 */
export type Proved = "proved-bad" | "not-proved" | "proved-good";

/**
 * Which rule decides.
 */
export type Rule = "iso-14253-1-1998" | "iso-14253-1-2017";

/**
 * What a reading allows.
 */
export type Use = "scrap" | "not-proved" | "not-to-be-cut" | "as-it-is" | "may-be-cut";

/**
 * Wear as a share of what may be worn.
 */
export interface Wear {
    /**
     * 0 as new, 1 at the discard limit; below 0 and above 1 as it comes out.
     */
    share: number;
    /**
     * Where that stands.
     */
    stands: WearStands;
}

/**
 * Where wear stands.
 */
export type WearStands = "unworn" | "within" | "beyond";

/**
 * A place as measured: the mean of its repeats, its zero error taken off, and how far that may be off.
 */
export interface Measured {
    /**
     * The corrected mean.
     */
    value: number;
    /**
     * How many repeats; of a difference, on the side that has fewer.
     */
    count: number;
    /**
     * The sample deviation of the repeats; left out where there is one only, or for a difference.
     */
    deviation?: number;
    /**
     * The parts of the uncertainty. One reading alone says nothing of its scatter: the part `repeats` is missing then.
     */
    parts: UncertaintyPart[];
    /**
     * The combined standard uncertainty: the root of the sum of squares.
     */
    combined: number;
    /**
     * The effective degrees of freedom; left out where they are without limit.
     */
    freedom?: number;
    /**
     * The coverage factor for 95.45 %.
     */
    factor: number;
    /**
     * The expanded uncertainty U: `factor` × `combined`.
     */
    expanded: number;
    /**
     * On how many sides something was read: 2 for a difference.
     */
    sides: number;
}

/**
 * One part of an uncertainty.
 */
export interface UncertaintyPart {
    /**
     * Where it comes from.
     */
    from: Source;
    /**
     * The standard uncertainty.
     */
    standard: number;
    /**
     * Its degrees of freedom; left out where they are without limit.
     */
    freedom?: number;
}

/**
 * Where a part of the uncertainty comes from.
 */
export type Source = "repeats" | "resolution" | "stated" | "zero";

/**
 * What would settle it, should mean and scatter stay as they are.
 */
export interface Settling {
    /**
     * So many repeats in all, 30 at most; left out where the instrument is too coarse for that to help, or where one reading
     * alone does not tell the scatter.
     */
    repeats?: number;
    /**
     * An instrument whose resolution and stated uncertainty are at most this share of those at hand (0 to 1); left out
     * where the scatter alone is too much, or nothing is known of the instrument.
     */
    share?: number;
    /**
     * Usual instruments that would, coarsest first, where a length is measured; whether one reaches the place is for the user to know.
     */
    instruments: UsualInstrument[];
}

/**
 * What a garage measures with, coarsest first. Resolutions and uncertainties (factor 2) are common practice, no source: what
 * is stated for the instrument at hand goes before.
 */
export type UsualInstrument = "steel-rule" | "feeler-gauge" | "plastic-gauge" | "vernier-caliper" | "dial-indicator" | "bore-gauge" | "micrometer";

/**
 * Readings, an instrument and limits, each as typed: `31.76`, `1.2505in`, `1 1/4`, `-2 thou`.
 */
export interface ProofQuery {
    /**
     * The unit of figures that have none.
     */
    unit: Unit;
    /**
     * The repeats, place by place.
     */
    places: string[][];
    /**
     * The least step of the instrument; nothing says nothing.
     */
    resolution?: string;
    /**
     * Its stated uncertainty; nothing says nothing.
     */
    uncertainty?: string;
    /**
     * The coverage factor of that, from 0.5 to 10; 2 when left out.
     */
    coverage?: number;
    /**
     * What it shows where it should show nothing.
     */
    zero_error?: string;
    /**
     * The least that it may be.
     */
    least?: string;
    /**
     * The most that it may be.
     */
    most?: string;
    /**
     * The least that it may be after machining.
     */
    machining_least?: string;
    /**
     * The most that it may be after machining.
     */
    machining_most?: string;
    /**
     * What it was when new.
     */
    as_new?: string;
    /**
     * Which rule decides; the edition of 2017 when left out.
     */
    rule?: Rule;
    /**
     * What would be cut, for the next standard size of a length.
     */
    surface?: Surface;
    /**
     * In which steps; by the unit when left out.
     */
    steps?: SizeSteps;
    /**
     * What has to come off the diameter to clean up; nothing when left out.
     */
    cut?: string;
}

/**
 * What readings prove. All amounts are in the base unit: nanometres, millinewtons, a count.
 */
export interface ProofView {
    /**
     * The places in their order.
     */
    places: Measured[];
    /**
     * Which of them governs.
     */
    governs?: number;
    /**
     * What each proves against the limits.
     */
    against: Against[];
    /**
     * What would settle it, where it proves nothing.
     */
    settling?: Settling;
    /**
     * The next standard size that cleans up; left out where none does, or nobody asked.
     */
    next_size?: NextSize;
    /**
     * What could not be read, and why; then nothing else is answered.
     */
    unread: UnreadView[];
}

/**
 * A text that could not be read.
 */
export interface UnreadView {
    /**
     * Which member held it.
     */
    member: string;
    /**
     * The text.
     */
    text: string;
    /**
     * Why.
     */
    why: Unreadable;
}

/**
 * What a typed text says.
 */
export interface TypedView {
    /**
     * The amount in the base unit of what is measured.
     */
    amount?: number;
    /**
     * The unit that it was typed in, or that was meant.
     */
    unit?: Unit;
    /**
     * Why it could not be read.
     */
    why?: Unreadable;
}

/**
 * Why something typed is not a measure.
 */
export type Unreadable = "empty" | "not-a-number" | "fraction" | "unknown-unit" | "ambiguous-unit" | "other-dimension" | "thousands-or-decimals" | "not-whole" | "too-many-figures" | "out-of-bounds";

/**
 * A unit that people read off an instrument or a manual.
 *
 * ```
 * use asfound_core::quantity::Unit;
 * assert_eq!(Unit::Inch.figures(31_762_700), "1.2505");
 * assert_eq!(Unit::Millimetre.figures(-50_800), "-0.0508");
 * ```
 */
export type Unit = "millimetre" | "centimetre" | "micrometre" | "inch" | "thou" | "newton" | "kilonewton" | "pound-force" | "kilogram-force" | "newton-metre" | "pound-foot" | "pound-inch" | "kilogram-metre" | "one";

/**
 * A size to machine to, in nanometres.
 */
export interface NextSize {
    /**
     * Over or under the size when new, on the diameter.
     */
    step: number;
    /**
     * The size it comes to.
     */
    size: number;
    /**
     * What is cut off beyond what cleaning up needs.
     */
    spare: number;
}

/**
 * What is cut.
 */
export type Surface = "bore" | "journal";

/**
 * Which steps the parts for it come in: common practice, no source; the supplier's list goes before.
 */
export type SizeSteps = "inch" | "metric";

/**
 * What a text stamped on a part says.
 */
export interface IdentifyView {
    /**
     * A bearing of that designation.
     */
    bearing?: Bearing;
    /**
     * A shaft seal of that size.
     */
    seal?: Seal;
}

/**
 * A bearing with its boundary dimensions.
 */
export interface Bearing {
    /**
     * Its designation without suffixes.
     */
    designation: string;
    /**
     * Bore.
     */
    bore: Length;
    /**
     * Outside diameter.
     */
    outside: Length;
    /**
     * Width; of a taper roller bearing that of cup and cone together.
     */
    width: Length;
    /**
     * Sources disagree: another has this width. Measure before ordering.
     */
    or_width?: Length;
    /**
     * What its suffixes mean.
     */
    suffixes: BearingSuffix[];
    /**
     * What follows and is not known here; empty when all was read.
     */
    not_read: string;
    /**
     * Where the dimensions come from.
     */
    source: BearingSource;
}

/**
 * What a suffix means, where that is the same with every maker.
 */
export type BearingSuffix = "two-seals" | "one-seal" | "two-shields" | "one-shield" | "c2" | "c3" | "c4" | "snap-ring" | "snap-ring-groove";

/**
 * Where the dimensions of a bearing come from.
 */
export type BearingSource = "din-625-1" | "iso-15-from-memory" | "inch-ball" | "taper-metric" | "taper-inch";

/**
 * A shaft seal by its size.
 */
export interface Seal {
    /**
     * The shaft it runs on.
     */
    shaft: Length;
    /**
     * The bore it sits in.
     */
    bore: Length;
    /**
     * How wide it is.
     */
    width: Length;
    /**
     * What follows, as it was written: kind, rubber, maker.
     */
    not_read: string;
}

/**
 * A length in whole nanometres, up to ten metres either way ([`bounds::READING`]): 25 400 000 to the inch, so that what an
 * instrument shows is exact in both systems.
 *
 * ```
 * use asfound_core::quantity::{Length, Unit};
 * assert_eq!(Length::read("1 1/4", Unit::Millimetre), Length::read("31.75", Unit::Millimetre));
 * assert_eq!(Length::read("-2 thou", Unit::Millimetre), Ok(Length(-50_800)));
 * assert_eq!(Length(31_762_700).write(Unit::Inch), "1.2505 in");
 * ```
 */
export type Length = number;

/**
 * One thing that speaks for a verdict.
 */
export interface Reason {
    /**
     * What it comes from.
     */
    from: ReasonFrom;
    /**
     * The question or feature, by code or id; empty for what comes from the part itself.
     */
    about: string;
    /**
     * What was answered or proved there: a code.
     */
    outcome: string;
    /**
     * What that means.
     */
    condition: Condition;
}

/**
 * Where a reason comes from.
 */
export type ReasonFrom = "single-use" | "question" | "measure" | "triage";

/**
 * What looking and measuring come to.
 */
export type Verdict = "fit" | "rework" | "scrap" | "not-known";

/**
 * A route, and whether the judgement leaves it.
 */
export interface RouteLeft {
    /**
     * Which.
     */
    route: Route;
    /**
     * Why it is not left; left out when it is.
     */
    why?: WhyNot;
    /**
     * The usual one when a part of its family is not used again.
     */
    usual: boolean;
}

/**
 * What an outcome means for using the part again.
 */
export type Condition = "sound" | "doubtful" | "rework" | "scrap";

/**
 * What is measured in: each has one unit in which it is kept.
 */
export type Dimension = "length" | "force" | "number";

/**
 * What kind of limit a measure has.
 */
export type LimitKind = "minimum" | "maximum" | "range" | "difference" | "size";

/**
 * Where a limit comes from.
 */
export type LimitSource = "manual" | "usual" | "own";

/**
 * What can hurt whoever works on something.
 */
export interface CautionsView {
    /**
     * In the order of the hazards.
     */
    cautions: CautionView[];
}

/**
 * One hazard that is in hand.
 */
export interface CautionView {
    /**
     * Which.
     */
    hazard: Hazard;
    /**
     * What brings it about: parts, then the assembly, in order of id.
     */
    because: Id[];
    /**
     * Where it was read and acknowledged, once for the whole job.
     */
    acknowledged?: RecordView;
}

/**
 * A hazard of the work.
 */
export type Hazard = "vehicle-falls" | "stored-spring" | "asbestos" | "dust" | "isocyanates" | "solvents" | "burnt-rubber" | "pressurised" | "safety-parts" | "embrittlement" | "metal-fume" | "battery" | "lifting" | "phosgene" | "tanks" | "exhaust-gas" | "caustic" | "split-rims" | "injection" | "radium";

/**
 * Where in the work one stands.
 */
export type Step = "take-apart" | "judge" | "route" | "refit";

/**
 * One thing that is wrong: a stable code, how bad, where, with which values, and what would help.
 */
export interface Problem {
    /**
     * Which kind of problem; stable over versions.
     */
    code: Code;
    /**
     * How bad it is.
     */
    severity: Severity;
    /**
     * Where it is.
     */
    place: Site;
    /**
     * The values that its sentence needs, by name.
     */
    values: Record<string, string>;
    /**
     * What would help, most likely first.
     */
    hints: Hint[];
}

/**
 * How bad a problem is.
 */
export type Severity = "error" | "warning";

/**
 * Where a problem is: a record, a field of it, other records that share it.
 */
export interface Site {
    /**
     * The record.
     */
    id?: Id;
    /**
     * The field.
     */
    field?: FieldName;
    /**
     * The others it shares the problem with, sorted.
     */
    others?: Id[];
}

/**
 * Which kind of problem. A code is never reused for something else.
 */
export type Code = "conflict" | "tag-twice" | "block-twice" | "loop" | "dangling" | "in-struck-out" | "kind-missing" | "kind-twice" | "value-unreadable" | "field-out-of-place" | "overwrite-loop" | "entry-twice" | "entries-missing" | "choice-stale" | "other-currency" | "unknown-record" | "wrong-kind" | "id-taken" | "out-of-bounds" | "missing" | "refit-circle" | "still-loose" | "nothing-to-undo" | "damaged" | "newer-form" | "not-ours" | "blob-missing" | "other-job" | "not-an-answer" | "limit-crossed" | "pair-apart" | "heavy-question" | "tyre-unreadable" | "ratios-unreadable" | "labels-do-not-fit";

/**
 * What would help; each has its sentence at the edge.
 */
export type Hint = "settle-values" | "retag-one" | "move-one-out" | "bring-in-other" | "use-newer" | "bring-back-or-move" | "choose-again" | "enter-in-job-currency" | "correct-value" | "fetch-again" | "ask-reckoning" | "measure-rolling" | "drop-rule" | "tighten-first";

/**
 * Every word of the papers.
 */
export interface PaperWords {
    /**
     * Heads of the columns.
     */
    columns?: Columns;
    /**
     * Sides.
     */
    sides?: SideWords;
    /**
     * Standings.
     */
    standings?: StandingWords;
    /**
     * Routes.
     */
    routes?: RouteWords;
    /**
     * Marks.
     */
    marks?: MarkWords;
    /**
     * What prices are for.
     */
    prices?: PriceWords;
    /**
     * What can hurt whoever gets a part to work on.
     */
    cautions?: CautionWords;
    /**
     * What only the page says.
     */
    page?: PageWords;
    /**
     * What the sheet for the wall says.
     */
    refit?: RefitWords;
}

/**
 * What prices are for.
 */
export interface PriceWords {
    /**
     * Price.
     */
    price?: string;
    /**
     * Freight.
     */
    freight?: string;
    /**
     * Tax.
     */
    tax?: string;
    /**
     * Duty.
     */
    duty?: string;
    /**
     * Consumables.
     */
    consumables?: string;
    /**
     * Surcharge.
     */
    surcharge?: string;
}

/**
 * What the sheet for the wall says.
 */
export interface RefitWords {
    /**
     * Before the name of the assembly, in the title of the page.
     */
    title?: string;
    /**
     * After the number of steps.
     */
    steps?: string;
    /**
     * In which order.
     */
    order?: string;
    /**
     * What it uses up.
     */
    uses?: string;
    /**
     * After what it uses up.
     */
    not_here?: string;
    /**
     * A part in the place of the old one.
     */
    is_new?: string;
    /**
     * A donor's part in the place of the old one.
     */
    from_donor?: string;
    /**
     * Before the paint.
     */
    before_paint?: string;
    /**
     * After the paint.
     */
    after_paint?: string;
    /**
     * Before the letter of a joint.
     */
    joint?: string;
    /**
     * Before what stands on a bag.
     */
    bag?: string;
    /**
     * Beside a box.
     */
    tight?: string;
    /**
     * After that, where it waits.
     */
    at_ride_height?: string;
    /**
     * Beside a box.
     */
    checked_again?: string;
    /**
     * A piece without a name.
     */
    piece?: string;
    /**
     * After a piece that is renewed.
     */
    renew?: string;
    /**
     * The thread.
     */
    dry?: string;
    /**
     * The thread.
     */
    oiled?: string;
    /**
     * Before stages.
     */
    in_stages?: string;
    /**
     * Before degrees.
     */
    then_on_by?: string;
    /**
     * Before a sequence.
     */
    sequence?: string;
    /**
     * Before a compound.
     */
    with?: string;
    /**
     * Over joints that hold no named part.
     */
    free_joints?: string;
    /**
     * The vehicle falls.
     */
    vehicle_falls?: string;
    /**
     * A spring lets go.
     */
    stored_spring?: string;
    /**
     * Safety parts.
     */
    safety_parts?: string;
    /**
     * Battery.
     */
    battery?: string;
    /**
     * Lifting.
     */
    lifting?: string;
    /**
     * Exhaust gas.
     */
    exhaust_gas?: string;
    /**
     * Rims.
     */
    split_rims?: string;
}

/**
 * Heads of the columns.
 */
export interface Columns {
    /**
     * Number on the tag.
     */
    tag?: string;
    /**
     * What can hurt whoever gets it.
     */
    cautions?: string;
    /**
     * Name.
     */
    name?: string;
    /**
     * Pieces.
     */
    quantity?: string;
    /**
     * Assembly.
     */
    assembly?: string;
    /**
     * Left or right.
     */
    side?: string;
    /**
     * Where it lies.
     */
    place?: string;
    /**
     * Where it stands.
     */
    standing?: string;
    /**
     * Route chosen.
     */
    route?: string;
    /**
     * Supplier or specialist.
     */
    from?: string;
    /**
     * Cash.
     */
    cash?: string;
    /**
     * Currency of the cash.
     */
    currency?: string;
    /**
     * Own hours as hours and minutes.
     */
    own_hours?: string;
    /**
     * Expected cost when it was chosen.
     */
    expected_cost?: string;
    /**
     * Beside which part the kit counts.
     */
    with?: string;
    /**
     * Prices in another currency, and the rate.
     */
    as_entered?: string;
    /**
     * Price of the chosen quote as it stands now.
     */
    price_now?: string;
    /**
     * Freight now.
     */
    freight_now?: string;
    /**
     * Tax now.
     */
    tax_now?: string;
    /**
     * Duty now.
     */
    duty_now?: string;
    /**
     * Consumables now.
     */
    consumables_now?: string;
    /**
     * All of these.
     */
    prices_now?: string;
    /**
     * Surcharge now.
     */
    surcharge_now?: string;
    /**
     * All prices, the surcharge in full.
     */
    paid_at_first?: string;
    /**
     * The job's currency.
     */
    currency_now?: string;
    /**
     * Own hours of the chosen quote as it stands now.
     */
    own_hours_now?: string;
    /**
     * Present value, rounded in each row.
     */
    worth_now?: string;
    /**
     * Yearly cost, rounded in each row.
     */
    each_year?: string;
    /**
     * Share that rests on guesses.
     */
    guessed?: string;
    /**
     * Last day on which it holds.
     */
    valid_until?: string;
    /**
     * Days of waiting.
     */
    wait?: string;
    /**
     * Finish wanted, remarks.
     */
    finish?: string;
    /**
     * Maker's part number.
     */
    makers_number?: string;
    /**
     * Number cast or stamped in.
     */
    casting_number?: string;
    /**
     * Material.
     */
    material?: string;
    /**
     * Mass in kilograms.
     */
    kilograms?: string;
    /**
     * Mass in pounds.
     */
    pounds?: string;
    /**
     * Marks.
     */
    marks?: string;
    /**
     * Notes.
     */
    notes?: string;
    /**
     * How many photos.
     */
    photos?: string;
    /**
     * Their files in a job file.
     */
    photo_files?: string;
    /**
     * Beside a sum.
     */
    sum?: string;
}

/**
 * Sides, from the driver's seat.
 */
export interface SideWords {
    /**
     * Left.
     */
    left?: string;
    /**
     * Right.
     */
    right?: string;
}

/**
 * Standings.
 */
export interface StandingWords {
    /**
     * On the vehicle.
     */
    on?: string;
    /**
     * Off.
     */
    off?: string;
    /**
     * A first word was said.
     */
    judged?: string;
    /**
     * A quote was chosen.
     */
    decided?: string;
    /**
     * Out of the house.
     */
    out?: string;
    /**
     * Out of the house, with somebody who borrowed it.
     */
    lent?: string;
    /**
     * New pieces are on their way.
     */
    order?: string;
    /**
     * Tried.
     */
    tried?: string;
    /**
     * Ready to go on.
     */
    ready?: string;
    /**
     * On for good.
     */
    refitted?: string;
}

/**
 * Routes.
 */
export interface RouteWords {
    /**
     * As it is.
     */
    use_again?: string;
    /**
     * At the own bench.
     */
    repair_here?: string;
    /**
     * To a specialist.
     */
    send_out?: string;
    /**
     * Against a rebuilt unit.
     */
    exchange?: string;
    /**
     * New, singly.
     */
    buy?: string;
    /**
     * New, with others.
     */
    kit?: string;
    /**
     * From another vehicle.
     */
    donor?: string;
    /**
     * Kept.
     */
    irreplaceable?: string;
}

/**
 * Marks.
 */
export interface MarkWords {
    /**
     * Renewed whatever it looks like.
     */
    single_use?: string;
    /**
     * No replacement is to be had.
     */
    cannot_be_bought?: string;
    /**
     * It was not there.
     */
    missing_from_start?: string;
    /**
     * A former owner fitted it.
     */
    wrong_piece?: string;
    /**
     * It will not come off.
     */
    stuck?: string;
    /**
     * Struck out.
     */
    struck_out?: string;
}

/**
 * What only the page says.
 */
export interface PageWords {
    /**
     * BCP 47 tag of the language.
     */
    language?: string;
    /**
     * Over the list.
     */
    title?: string;
    /**
     * Title of the sheets of tags.
     */
    tags?: string;
    /**
     * Where a part has no name.
     */
    no_name?: string;
    /**
     * Over parts of no assembly, place or route.
     */
    none?: string;
    /**
     * After the number of parts, if it is one.
     */
    part?: string;
    /**
     * After the number of parts, if it is not one.
     */
    parts?: string;
    /**
     * Below the list.
     */
    photos_carry_no_location?: string;
    /**
     * Says what the expected cost is.
     */
    expected_cost_is?: string;
    /**
     * Says what the figures now are.
     */
    now_is?: string;
    /**
     * Before the part beside which a kit counts.
     */
    with?: string;
    /**
     * Before a rate.
     */
    rate?: string;
    /**
     * Before a day.
     */
    valid_until?: string;
    /**
     * After a number of days of waiting.
     */
    days?: string;
    /**
     * After the yearly cost.
     */
    each_year?: string;
    /**
     * After the share that rests on guesses.
     */
    guessed?: string;
    /**
     * Over the list of what is to be bought.
     */
    to_buy?: string;
    /**
     * Over the list of what is to be sent out.
     */
    to_send?: string;
    /**
     * Where no supplier was named.
     */
    no_supplier?: string;
    /**
     * Where no specialist was named.
     */
    no_specialist?: string;
    /**
     * Beside the sum over all of them.
     */
    sum_of_all?: string;
    /**
     * After the number of parts that are not decided, if it is one.
     */
    not_decided?: string;
    /**
     * The same, if it is not one.
     */
    are_not_decided?: string;
    /**
     * Alternative text of a photo, before the tag or name.
     */
    photo_of?: string;
    /**
     * `READ ME.txt` of a job file.
     */
    read_me?: string;
}

/**
 * What can hurt whoever gets a part to work on, in a line each.
 */
export interface CautionWords {
    /**
     * Before them all.
     */
    caution?: string;
    /**
     * Asbestos.
     */
    asbestos?: string;
    /**
     * Dust.
     */
    dust?: string;
    /**
     * Burnt rubber.
     */
    burnt_rubber?: string;
    /**
     * Pressure.
     */
    pressurised?: string;
    /**
     * Safety.
     */
    safety_parts?: string;
    /**
     * Embrittlement.
     */
    embrittlement?: string;
    /**
     * Fume.
     */
    metal_fume?: string;
    /**
     * Tanks.
     */
    tanks?: string;
    /**
     * Air and diesel.
     */
    injection?: string;
    /**
     * Radium.
     */
    radium?: string;
}

/**
 * What bringing in a job file would do, before anything is done.
 */
export interface DryRun {
    /**
     * The job that the file holds; nothing when its first entries are damaged and the file does not say it either.
     */
    job?: Id;
    /**
     * Its name.
     */
    name: string;
    /**
     * It is another job than the one it was held against.
     */
    other_job: boolean;
    /**
     * Entries that are not here yet.
     */
    entries_new: number;
    /**
     * Entries that are here already.
     */
    entries_here: number;
    /**
     * Parts that are not here yet.
     */
    parts_new: number;
    /**
     * Photos and sounds in the file that are not here yet.
     */
    photos_new: number;
    /**
     * Their bytes.
     */
    bytes_new: number;
    /**
     * Photos and sounds in the file that are here already.
     */
    photos_here: number;
    /**
     * Photos and sounds that the file names, and that are neither in it nor here.
     */
    missing: Hash[];
    /**
     * Fields that would have more than one value and have not now.
     */
    conflicts_new: number;
    /**
     * What is wrong with the file.
     */
    problems: Problem[];
}

/**
 * What came of reading a code.
 */
export type TagRead = { read: "code"; number: number } | { read: "either"; number: number; other: number } | { read: "number"; number: number } | { read: "wrong-check" } | { read: "not-ours" };

/**
 * Which tags are printed, and on what.
 */
export interface TagsPaper {
    /**
     * The sheet.
     */
    sheet?: TagSheet;
    /**
     * What stands on the labels; left out: all parts.
     */
    labels?: TagLabels;
    /**
     * How many labels of the first sheet are used already.
     */
    skip?: number;
    /**
     * How far everything is moved, for a printer that is off.
     */
    nudge?: TagNudge;
}

/**
 * What stands on the labels.
 */
export type TagLabels = { of: "blank"; from: number; count: number; places?: boolean } | { of: "parts"; ids?: Id[] | undefined; assembly?: Id | undefined } | { of: "places"; ids?: Id[] | undefined };

/**
 * The sheets that are ready made, and one of the user's own.
 */
export type TagSheet = { kind: "a4" } | { kind: "letter" } | { kind: "strips-a4" } | { kind: "strips-letter" } | ({ kind: "own" } & TagGrid);

/**
 * Where labels lie on a sheet, in millimetres.
 */
export interface TagGrid {
    /**
     * Width and height of the sheet.
     */
    page: [number, number];
    /**
     * Width and height of a label.
     */
    label: [number, number];
    /**
     * How many across.
     */
    across: number;
    /**
     * How many down.
     */
    down: number;
    /**
     * From the left edge of the sheet to the first label.
     */
    left: number;
    /**
     * From its upper edge.
     */
    top: number;
    /**
     * From one label to the next, across and down.
     */
    pitch: [number, number];
    /**
     * They are strips: to be cut, folded in the middle and tied on.
     */
    strips?: boolean;
}

/**
 * How far everything is moved, in millimetres.
 */
export interface TagNudge {
    /**
     * To the right.
     */
    right?: number;
    /**
     * Downwards.
     */
    down?: number;
}

/**
 * One sheet to be looked at before it is printed.
 */
export interface TagSheetView {
    /**
     * Its grid.
     */
    grid: TagGrid;
    /**
     * Its labels.
     */
    labels: TagLabel[];
    /**
     * How many sheets there are in all.
     */
    sheets: number;
    /**
     * How many labels on all of them.
     */
    all: number;
    /**
     * Parts or places that were asked for and carry no tag yet.
     */
    untagged: number;
    /**
     * Labels with letters that cannot be printed: a question mark stands for each.
     */
    unprinted: number;
}

/**
 * One label on its sheet.
 */
export interface TagLabel {
    /**
     * What stands in its QR.
     */
    code: string;
    /**
     * Its left edge on the page, in millimetres.
     */
    x: number;
    /**
     * Its upper edge.
     */
    y: number;
    /**
     * What is drawn, in millimetres from the upper left corner of the page.
     */
    shapes: TagShape[];
}

/**
 * One thing that is drawn.
 */
export type TagShape = { draw: "line"; points: [number, number][]; closed: boolean; thick: number; dashed: boolean } | { draw: "ring"; x: number; y: number; radius: number; thick: number } | { draw: "text"; x: number; y: number; size: number; length: number; text: string; turned: boolean } | { draw: "dark"; boxes: [number, number, number, number][] };

/** The entries seen on screen, by field. */
export type Seen = Partial<Record<FieldName, EntryId[]>>;

/** Families of parts, by code. */
export type FamilyCode = "rolling-bearing" | "seal" | "crush-spacer" | "locking-piece" | "rubber-bush" | "plain-bearing" | "pivot-pin" | "stub-axle" | "ball-joint" | "spring" | "damper" | "brake-disc" | "brake-drum" | "brake-lining" | "hydraulic-cylinder" | "hose-pipe" | "gear" | "shaft" | "casting" | "engine-internal" | "unit" | "wiring" | "panel" | "bright-trim" | "glass" | "soft-trim" | "fastener" | "safety-fastener";

/** Questions of the check-lists by code, each with its answers, best first. */
export interface Looks {
    "spalls": "none" | "flaked";
    "wear-scoring": "none" | "light" | "deep";
    "smearing": "none" | "smeared";
    "track-rust": "none" | "stain" | "etched";
    "fluting": "none" | "washboard";
    "dents": "none" | "faint" | "at-pitch";
    "track-cracks": "none" | "cracked";
    "heat-colour": "none" | "straw" | "blue";
    "cage": "sound" | "loose" | "cracked";
    "runs": "quiet" | "not-clean" | "rough";
    "pulled-through": "no" | "unknown" | "yes";
    "kept-together": "yes" | "mixed";
    "rust-grade": "a" | "b" | "c" | "d";
    "coating": "ri0" | "ri1" | "ri2" | "ri3" | "ri4" | "ri5";
    "cracks": "none" | "not-tested" | "cracked";
    "crack-test": "clean" | "not-tested" | "shows";
    "bend": "straight" | "unsure" | "bent";
    "thread": "clean" | "worn" | "stripped";
    "tapped-thread": "clean" | "stripped";
    "pits": "none" | "light" | "deep";
    "steps": "none" | "felt";
    "rock": "none" | "slight" | "rocks";
    "scoring": "none" | "light" | "deep";
    "ridge": "none" | "felt";
    "burnt": "no" | "burnt";
    "lugs": "whole" | "broken";
    "faces": "flat" | "warped";
    "rubber": "sound" | "cracked" | "swollen";
    "set": "none" | "set";
    "bond": "holds" | "parted";
    "boot": "sound" | "split";
    "pattern": "kept" | "not-yet";
    "orientation": "photographed" | "not-yet";
    "age": "known-new" | "unknown" | "years";
    "ends": "sound" | "rusty";
    "sag": "level" | "sags";
    "leaf": "whole" | "broken";
    "eye": "round" | "worn";
    "leaks": "dry" | "damp" | "leaks";
    "stroke": "smooth" | "rough" | "dead-spot";
    "spindle-rock": "none" | "rocks";
    "matches-pair": "matches" | "not-tried" | "differs";
    "lip": "none" | "lip";
    "bell-mouth": "none" | "bell-mouthed";
    "lining": "clean" | "contaminated";
    "lining-cracks": "none" | "cracked";
    "cylinder-bore": "unmarked" | "light" | "deep";
    "piston": "free" | "stuck";
    "teeth": "unmarked" | "pitted" | "chipped";
    "contact": "centred" | "not-looked" | "off";
    "numbers-match": "match" | "unread" | "differ";
    "splines": "straight" | "stepped" | "twisted";
    "seal-track": "smooth" | "groove";
    "joint-play": "none" | "play";
    "works": "tested-good" | "not-tested" | "fails";
    "complete": "complete" | "pieces-missing";
    "cover": "supple" | "stiff" | "brittle";
    "copper": "bright" | "green";
    "fraying": "none" | "frayed";
    "connections": "photographed" | "not-yet";
    "rust-through": "none" | "pin-holes" | "holes";
    "panel-dents": "none" | "dents";
    "filler": "none" | "found";
    "plating": "sound" | "pitted" | "worn-through";
    "glass": "sound" | "chipped" | "cracked";
    "fabric": "sound" | "torn" | "rotten";
    "clips": "complete" | "missing";
    "head": "crisp" | "rounded";
    "stretch": "none" | "unsure" | "stretched";
    "marking": "read" | "unread";
    "nick": "none" | "nicked";
    "hole": "noted" | "not-noted";
}

/** Answers to a question of the user's own, best first. */
export type OwnOutcome = "good" | "doubtful" | "rework" | "scrap";

/** What is measured, by code. */
export type FeatureCode = "bore-size" | "outside-size" | "width-size" | "length-size" | "thread-size" | "plain-shank" | "pattern-size" | "bush-bore" | "pin-diameter" | "clearance" | "run-out" | "shaft-diameter" | "free-length" | "free-length-sides" | "fitted-load" | "disc-thickness" | "disc-run-out" | "drum-bore" | "drum-ovality" | "lining-thickness" | "cylinder-bore" | "backlash" | "end-float" | "seal-track-diameter" | "flatness" | "journal" | "cylinder-wear" | "spindle-clearance" | "brush-length" | "metal-left";
