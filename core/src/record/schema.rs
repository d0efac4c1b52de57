//! The fields by their numbers. The list only grows: a number, once given, means the same for ever.

use super::{said_as_word, stored_enum};

stored_enum! {
    /// What a record is.
    pub enum Kind {
        /// One vehicle being done, with its donors: name and settings. Its id is the id of the job.
        Job = "job",
        /// A phone or computer that records.
        Device = "device",
        /// A block of tag numbers that a device draws from.
        Block = "block",
        /// The vehicle itself, or one that gives parts.
        Vehicle = "vehicle",
        /// A corner, an axle, a gearbox; may hold others.
        Assembly = "assembly",
        /// Anything that comes off.
        Part = "part",
        /// What a set of fasteners holds together.
        Joint = "joint",
        /// One piece of a joint: bolt, washer, shim.
        Piece = "piece",
        /// A photo.
        Photo = "photo",
        /// A ring or arrow on a photo.
        Mark = "mark",
        /// A note, typed or spoken.
        Note = "note",
        /// A stretch of a spoken note.
        Slice = "slice",
        /// Where things lie; places hold places.
        Place = "place",
        /// A priced way to follow a route.
        Quote = "quote",
        /// A decision for a quote, with the figures it was made at.
        Choice = "choice",
        /// Something looked at before anything is slackened.
        Before = "before",
        /// A part that a kit covers, with how many pieces.
        Cover = "cover",
        /// Something bought, with its receipt.
        Purchase = "purchase",
        /// What was seen in a part: the answer to a question of its check-list.
        Finding = "finding",
        /// What was measured in a part.
        Reading = "reading",
        /// What a measure of a part may be.
        Limit = "limit",
        /// What is measured with.
        Instrument = "instrument",
        /// A family of parts of the user's own.
        OwnFamily = "own-family",
        /// A question of the user's own.
        OwnCheck = "own-check",
        /// A caution that was read and acknowledged.
        Caution = "caution",
        /// Who sells, or who works on what is sent out, with terms.
        Supplier = "supplier",
        /// What carriage costs from a value or a mass on.
        Tier = "tier",
        /// What goes, or does not go, with what.
        Rule = "rule",
        /// Axle, gearbox, overdrive and tyre that are in, or could be.
        Gearing = "gearing",
        /// A plan of the whole job, kept under a name.
        Plan = "plan",
        /// New pieces of a part, ordered and on their way, or here.
        Delivery = "delivery",
        /// A part out of the house: for work, or lent.
        Outing = "outing",
        /// What lies in a place, gone through tag by tag.
        Count = "count",
        /// A tag that was seen in a place.
        Sighting = "sighting",
        /// What goes on after what.
        GoesAfter = "goes-after",
        /// Grease, sealant, locking compound: what refitting uses up.
        Consumable = "consumable",
        /// A fluid that was drained, and is to be filled in again.
        Fluid = "fluid",
        /// A step between the last assembly and the road.
        Commissioning = "commissioning",
    }
}

/// The number of a field; numbers of later versions pass through.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FieldId(pub u16);

macro_rules! fields {
    ($($(#[$meta:meta])* $number:literal $name:ident $word:literal on $kinds:tt;)*) => {
        /// The fields that this version knows.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[cfg_attr(feature = "ts", derive(tsify::Tsify))]
        pub enum FieldName { $($(#[$meta])* #[cfg_attr(feature = "ts", serde(rename = $word))] $name,)* }

        said_as_word!(FieldName);

        impl FieldName {
            /// All of them, by number.
            pub const ALL: &'static [Self] = &[$(Self::$name,)*];

            /// Its word in the protocol.
            #[must_use]
            pub const fn word(self) -> &'static str {
                match self { $(Self::$name => $word,)* }
            }

            /// Its number.
            #[must_use]
            pub const fn id(self) -> FieldId {
                match self { $(Self::$name => FieldId($number),)* }
            }

            /// The field of a number, if this version knows it.
            #[must_use]
            pub const fn of(id: FieldId) -> Option<Self> {
                match id.0 { $($number => Some(Self::$name),)* _ => None }
            }

            /// Whether records of this kind have it.
            #[must_use]
            pub fn is_on(self, kind: Kind) -> bool {
                match self { $(Self::$name => fields!(@is kind $kinds),)* }
            }
        }
    };
    (@is $kind:ident (any)) => { { let _ = $kind; true } };
    (@is $kind:ident ($($one:ident)*)) => { matches!($kind, $(Kind::$one)|*) };
}

fields! {
    /// What the record is.
    1 Kind "kind" on (any);
    /// What people call it.
    2 Name "name" on (any);
    /// Struck out (true) or brought back.
    3 Struck "struck" on (any);
    /// The command of this id was carried out.
    4 Done "done" on (any);
    /// Free words about it.
    5 Remark "remark" on (any);

    /// Currency of the job.
    10 Currency "currency" on (Job);
    /// What an hour of the user's own time is worth; may be zero.
    11 HourValue "hour_value" on (Job);
    /// British or American words.
    12 Vocabulary "vocabulary" on (Job);
    /// Millimetres or inches, kilograms or pounds.
    13 Units "units" on (Job);
    /// How original it must be.
    14 Aim "aim" on (Job);
    /// The side on which the driver sits.
    15 DriverSide "driver_side" on (Job);
    /// When a job file that holds everything was last handed out, by the clock of the device.
    16 HandedOut "handed_out" on (Job);

    /// Yearly rate of interest, in parts of ten thousand.
    17 Interest "interest" on (Job);
    /// How many years the vehicle will be kept.
    18 YearsKept "years_kept" on (Job);
    /// Usual rate of tax, in parts of ten thousand.
    19 TaxRate "tax_rate" on (Job Supplier);
    /// By how much another route must be cheaper before a decision comes back.
    22 Threshold "threshold" on (Job);
    /// Which entries that job file held.
    23 Held "held" on (Job);

    /// Whose block it is.
    20 Device "device" on (Block);
    /// Which block, from 0.
    21 Number "number" on (Block);

    /// It gives parts to the other.
    30 Donor "donor" on (Vehicle);
    /// Model year.
    31 Year "year" on (Vehicle);
    /// Chassis, engine or body number.
    32 IdentityNumber "identity_number" on (Vehicle);

    /// Which vehicle it belongs to.
    40 Vehicle "vehicle" on (Assembly Quote Gearing);
    /// Which assembly it is inside.
    41 Inside "inside" on (Assembly);
    /// Left or right, from the driver's seat.
    42 Side "side" on (Assembly Part Piece);
    /// Being taken apart now.
    43 Open "open" on (Assembly);

    /// The number on its tag.
    50 Tag "tag" on (Part Place);
    /// Which assembly it came from.
    51 Assembly "assembly" on (Part Joint Before);
    /// How many pieces.
    52 Quantity "quantity" on (Part Piece Cover Delivery Consumable);
    /// The maker's part number.
    53 MakersNumber "makers_number" on (Part);
    /// The number cast or stamped in.
    54 CastingNumber "casting_number" on (Part);
    /// What it is made of.
    55 Material "material" on (Part);
    /// How heavy it is, in grams.
    56 Mass "mass" on (Part);
    /// Which family it is of.
    57 Family "family" on (Part OwnCheck);
    /// Where it lies.
    58 Place "place" on (Part Joint Sighting);
    /// Renewed whatever it looks like.
    59 SingleUse "single_use" on (Part OwnFamily);
    /// No replacement is to be had.
    60 CannotBeBought "cannot_be_bought" on (Part);
    /// It was not there when the work began.
    61 MissingFromStart "missing_from_start" on (Part);
    /// A former owner fitted a wrong piece.
    62 WrongPiece "wrong_piece" on (Part);
    /// It will not come off; later.
    63 Stuck "stuck" on (Part);
    /// What was tried on it.
    64 Tried "tried" on (Part);
    /// Off the vehicle (true) or still on it.
    65 Off "off" on (Part);
    /// Position: of removal for parts, of coming off for pieces, of taking for photos, of time for stretches of sound.
    66 Order "order" on (Part Piece Photo Slice Mark);
    /// Bought in boxes: there is no order of removal.
    67 FromBoxes "from_boxes" on (Part);
    /// The first word at the strip.
    68 Triage "triage" on (Part);
    /// The part whose tag was split.
    69 SplitFrom "split_from" on (Part);
    /// The decision that holds.
    70 Chosen "chosen" on (Part);
    /// Brakes, steering, wheels, seat belts: somebody can be hurt when it breaks.
    71 SafetyCritical "safety_critical" on (Part OwnFamily);
    /// Renewed on both sides of an axle together.
    72 Pair "pair" on (Part OwnFamily);

    /// The bag it is kept in.
    75 Bag "bag" on (Joint);
    /// The joint it is a piece of.
    76 Joint "joint" on (Piece);
    /// Thickness in micrometres.
    77 Thickness "thickness" on (Piece);
    /// Size in free words.
    78 Size "size" on (Piece);

    /// What it is of: the part of a photo, the photo of a mark.
    81 Of "of" on (Joint Photo Mark Note Slice Quote Choice Cover Finding Reading Limit Tier Rule Delivery Outing Count Sighting GoesAfter Consumable Fluid Commissioning);
    /// Before, off, after.
    82 Moment "moment" on (Photo);
    /// What the photo was taken for.
    83 Shot "shot" on (Photo);
    /// Words under the photo.
    84 Caption "caption" on (Photo);
    /// Its bytes, by their hash.
    85 Blob "blob" on (Photo Slice);
    /// How many bytes.
    86 Length "length" on (Photo Slice);
    /// Which form the bytes have.
    87 MediaType "media_type" on (Photo Slice);
    /// When it was taken, said or decided.
    88 Taken "taken" on (Photo Note Choice Before Purchase Finding Reading Caution Plan Delivery Outing Count Sighting Commissioning);
    /// Ring or arrow.
    89 Shape "shape" on (Mark);
    /// Centre of a ring, tip of an arrow: parts of ten thousand of the width.
    90 X "x" on (Mark);
    /// The same of the height.
    91 Y "y" on (Mark);
    /// Half the width of a ring, tail of an arrow relative to its tip: parts of ten thousand of the width.
    92 Dx "dx" on (Mark);
    /// The same of the height.
    93 Dy "dy" on (Mark);
    /// What was written or found.
    94 Text "text" on (Note Before Reading Limit OwnCheck Fluid Commissioning);
    /// How long it lasts, in milliseconds.
    95 Lasts "lasts" on (Slice);

    /// The place it is in.
    96 Within "within" on (Place);
    /// Area, rack, shelf, box, bag, hook, floor.
    97 PlaceKind "place_kind" on (Place);

    /// What was looked at.
    98 Check "check" on (Before Photo);
    /// It was left out on purpose.
    99 Skipped "skipped" on (Before Finding Commissioning);

    /// What happens to the part.
    100 Route "route" on (Quote Choice Purchase OwnFamily);
    /// Cash.
    101 Cash "cash" on (Quote Choice Purchase Vehicle Rule Plan);
    /// Own hours, in minutes.
    102 OwnTime "own_time" on (Quote Choice Plan);
    /// The chance that it fails.
    103 Chance "chance" on (Quote Choice);
    /// Own hours to strip again when it has failed, in minutes.
    104 StripAgain "strip_again" on (Quote Choice);
    /// How sure the cash is.
    105 CashCertainty "cash_certainty" on (Quote);
    /// How sure the own hours are.
    106 OwnTimeCertainty "own_time_certainty" on (Quote);
    /// How sure the chance is.
    107 ChanceCertainty "chance_certainty" on (Quote);
    /// The supplier or specialist.
    108 From "from" on (Quote Choice Purchase Delivery);
    /// The quote that was chosen.
    109 Quote "quote" on (Choice);
    /// Who decided.
    110 Who "who" on (Choice Finding Reading Caution Outing);
    /// The value of an hour at the time.
    111 HourValueThen "hour_value_then" on (Choice Plan);
    /// What it was worth over the years at the time, in minor units.
    112 ExpectedThen "expected_then" on (Choice Plan);
    /// Freight both ways.
    113 Freight "freight" on (Quote);
    /// Tax.
    114 Tax "tax" on (Quote);
    /// Duty.
    115 Duty "duty" on (Quote);
    /// What the work uses up.
    116 Consumables "consumables" on (Quote);
    /// Paid at first, and returned when the old unit is accepted.
    117 Surcharge "surcharge" on (Quote Choice);
    /// The chance that the surcharge is withheld.
    118 Withheld "withheld" on (Quote);
    /// What one unit of the quote's currency costs in the job's.
    119 ExchangeRate "exchange_rate" on (Quote);
    /// Service life in months.
    120 Life "life" on (Quote);
    /// How sure the life is.
    121 LifeCertainty "life_certainty" on (Quote);
    /// The quote that is turned to when it fails.
    122 Fallback "fallback" on (Quote);
    /// A failure shows at the bench: nothing is stripped again for it.
    123 FailsAtBench "fails_at_bench" on (Quote);
    /// How original what it brings is.
    124 Correctness "correctness" on (Quote);
    /// The last day on which it holds.
    125 ValidUntil "valid_until" on (Quote);
    /// How long one waits for it, in days.
    126 Wait "wait" on (Quote Supplier);
    /// The least that the cash may be.
    127 CashLeast "cash_least" on (Quote);
    /// The most that the cash may be.
    128 CashMost "cash_most" on (Quote);
    /// The least own hours, in minutes.
    129 OwnTimeLeast "own_time_least" on (Quote);
    /// The most own hours, in minutes.
    130 OwnTimeMost "own_time_most" on (Quote);
    /// The least chance that it fails.
    131 ChanceLeast "chance_least" on (Quote);
    /// The most chance that it fails.
    132 ChanceMost "chance_most" on (Quote);
    /// The shortest life in months.
    133 LifeLeast "life_least" on (Quote);
    /// The longest life in months.
    134 LifeMost "life_most" on (Quote);
    /// The part that a kit covers, or that something was bought for.
    135 Part "part" on (Cover Purchase);
    /// How sure the wait is.
    136 WaitCertainty "wait_certainty" on (Quote Supplier);
    /// The shortest wait in days.
    137 WaitLeast "wait_least" on (Quote Supplier);
    /// The longest wait in days.
    138 WaitMost "wait_most" on (Quote Supplier);

    /// Which question was answered: a code of the tables, or the id of a question of the user's own.
    140 Question "question" on (Finding);
    /// The answer.
    141 Outcome "outcome" on (Finding);
    /// The finding that a photo shows.
    142 Finding "finding" on (Photo);
    /// What is measured: a code of the tables, or the user's own word.
    143 Feature "feature" on (Reading Limit);
    /// Where it was measured: the place and the plane.
    144 Spot "spot" on (Reading);
    /// What was read off, in the unit of its dimension: nanometres, millinewtons, or a count.
    145 Measured "measured" on (Reading);
    /// What it was measured with.
    146 Instrument "instrument" on (Reading);
    /// What the instrument shows where it should show nothing, in nanometres; subtracted first.
    147 ZeroError "zero_error" on (Reading Instrument);
    /// The least step that it shows, in nanometres.
    148 Resolution "resolution" on (Instrument);
    /// The uncertainty that is stated for it, in nanometres.
    149 Uncertainty "uncertainty" on (Instrument);
    /// The coverage factor of that uncertainty, in hundredths.
    150 Coverage "coverage" on (Instrument);
    /// Which kind of limit it is.
    151 LimitKind "limit_kind" on (Limit);
    /// The least that it may be.
    152 Least "least" on (Limit);
    /// The most that it may be.
    153 Most "most" on (Limit);
    /// The least that it may be after machining.
    154 MachiningLeast "machining_least" on (Limit);
    /// The most that it may be after machining.
    155 MachiningMost "machining_most" on (Limit);
    /// What it was when new.
    156 AsNew "as_new" on (Limit);
    /// Where the limit comes from.
    157 LimitSource "limit_source" on (Limit);
    /// What it is measured in.
    158 Dimension "dimension" on (Limit);
    /// Which hazard.
    159 Hazard "hazard" on (Caution);
    /// Carriage of one order or one batch.
    160 Shipping "shipping" on (Supplier Tier);
    /// The value of an order from which its carriage is free.
    161 FreeFrom "free_from" on (Supplier);
    /// The least value of an order.
    162 MinimumOrder "minimum_order" on (Supplier);
    /// The least that a batch is charged.
    163 MinimumCharge "minimum_charge" on (Supplier);
    /// The chance that what is ordered has to wait until it is made or comes in.
    164 BackOrder "back_order" on (Supplier);
    /// How many days after receipt a part may go back.
    165 ReturnWindow "return_window" on (Supplier);
    /// The share of the price that is kept when a part goes back.
    166 Restocking "restocking" on (Supplier);
    /// Days within which the old unit must be back for the surcharge to be returned.
    167 SurchargeDeadline "surcharge_deadline" on (Supplier);
    /// Warranty in months.
    168 Warranty "warranty" on (Supplier);
    /// Whether a plan must take it or must leave it.
    169 Stance "stance" on (Quote Supplier Vehicle);
    /// The value of an order from which a carriage holds.
    170 FromValue "from_value" on (Tier);
    /// The mass of an order from which a carriage holds.
    171 FromMass "from_mass" on (Tier);
    /// What a rule says.
    172 Relation "relation" on (Rule);
    /// What the subject of a rule needs, rules out or goes with.
    173 Other "other" on (Rule GoesAfter);
    /// In which stage of ordering.
    174 Stage "stage" on (Part Assembly);
    /// The most cash that may be out at once.
    175 Budget "budget" on (Job);
    /// The most own hours, in minutes.
    176 OwnHours "own_hours" on (Job);
    /// The day by which everything must be in.
    177 Latest "latest" on (Job);
    /// What surplus of a donor was sold for, all of it or one part.
    178 Sold "sold" on (Vehicle Part);
    /// A donor that is here already: what it cost is spent.
    179 Bought "bought" on (Vehicle);
    /// Before the swap, after it, or another that is thought about.
    180 Swap "swap" on (Gearing);
    /// Turns of the propeller shaft for one of the wheel, in parts of ten thousand.
    181 AxleRatio "axle_ratio" on (Gearing);
    /// The ratios of the gears, as somebody wrote them.
    182 GearRatios "gear_ratios" on (Gearing);
    /// The ratio of the overdrive, in parts of ten thousand.
    183 Overdrive "overdrive" on (Gearing);
    /// On how many of the upper gears the overdrive works.
    184 OverdriveOn "overdrive_on" on (Gearing);
    /// What the tyre is marked with, as somebody wrote it.
    185 Tyre "tyre" on (Gearing);
    /// How far it rolls in one turn, measured on the floor, in nanometres.
    186 Circumference "circumference" on (Gearing);
    /// How often the tyre turns in a mile by a data book, in hundredths.
    187 TurnsPerMile "turns_per_mile" on (Gearing);
    /// How much the tyre measures across, in nanometres.
    188 Diameter "diameter" on (Gearing);
    /// The most turns of the engine a minute.
    189 HighestTurns "highest_turns" on (Gearing);

    /// A price for one of something, in place of a price for all.
    190 Rate "rate" on (Quote);
    /// What that is a price for: a piece, an area, a mass.
    191 RateBasis "rate_basis" on (Quote);
    /// How large the surface of one piece is, in square millimetres.
    192 Area "area" on (Part);
    /// Rate of duty on what comes from there, in parts of ten thousand.
    193 DutyRate "duty_rate" on (Supplier);
    /// It was taken off the donor.
    194 Fetched "fetched" on (Quote);
    /// What a plan takes, part by part.
    196 Quotes "quotes" on (Plan);

    /// Oiled against rust.
    200 Oiled "oiled" on (Part);
    /// Wrapped up.
    201 Wrapped "wrapped" on (Part);
    /// Nothing may lie on it.
    202 Fragile "fragile" on (Part);
    /// To be lifted by two.
    203 TwoPerson "two_person" on (Part);
    /// How long it is, in nanometres.
    204 Long "long" on (Part);
    /// How wide it is, in nanometres.
    205 Wide "wide" on (Part);
    /// How high it is, in nanometres.
    206 High "high" on (Part);
    /// How much of the box around it is filled.
    207 Build "build" on (Part);
    /// What it is out of the house for.
    208 OutFor "out_for" on (Outing);
    /// The day on which it is to come in.
    209 Due "due" on (Delivery Outing Piece Consumable);
    /// The day on which it came in.
    210 Arrived "arrived" on (Delivery Outing);
    /// What came of comparing it with the old part.
    211 Compared "compared" on (Delivery Outing);
    /// When the count was ended.
    212 Ended "ended" on (Count);
    /// In which count it was seen.
    213 InCount "in_count" on (Sighting);
    /// How far a part is on again.
    214 Fit "fit" on (Part);
    /// The work on it is done.
    216 Finished "finished" on (Part);
    /// Before or after the paint.
    217 Paint "paint" on (Part Assembly);
    /// It is painted.
    218 Painted "painted" on (Vehicle);
    /// Kept whole until its opposite number is together again.
    219 Reference "reference" on (Assembly);
    /// Own hours to refit it, in minutes.
    220 FitTime "fit_time" on (Part Assembly);
    /// How tight, in micronewton-metres.
    221 Torque "torque" on (Joint Piece);
    /// The unit it was read in.
    222 TorqueUnit "torque_unit" on (Joint Piece);
    /// How far on from there, in degrees.
    223 Angle "angle" on (Joint Piece);
    /// In which sequence.
    224 Sequence "sequence" on (Joint Piece);
    /// In which stages.
    225 Stages "stages" on (Joint Piece);
    /// Whether the thread is dry or oiled.
    226 Lubrication "lubrication" on (Joint Piece);
    /// Sealant or locking compound.
    227 Compound "compound" on (Joint Piece);
    /// Where the figure stands: manual and page.
    228 TorqueSource "torque_source" on (Joint Piece);
    /// Tightened only at ride height.
    229 AtRideHeight "at_ride_height" on (Joint);
    /// How tight it is now.
    230 Tightened "tightened" on (Joint);
    /// Checked a second time.
    231 CheckedAgain "checked_again" on (Joint);
    /// Renewed whenever it was off.
    232 Renew "renew" on (Piece);
    /// How many pieces are here.
    233 InHand "in_hand" on (Piece Consumable);
    /// How much was drained, in millilitres.
    235 Drained "drained" on (Fluid);
    /// How much was filled in, in millilitres.
    236 Filled "filled" on (Fluid);
    /// How much the manual says, in millilitres.
    237 Capacity "capacity" on (Fluid);
    /// Which step.
    238 CommissioningStep "commissioning_step" on (Commissioning);
    /// What was found once it was together again.
    239 FoundAfter "found_after" on (Before);
    /// Days that comparing a new part with the old one takes.
    240 CheckingDays "checking_days" on (Job);
    /// It stands on its wheels again.
    242 Lowered "lowered" on (Vehicle);
    /// It is on the road again.
    243 OnTheRoad "on_the_road" on (Vehicle);
}
