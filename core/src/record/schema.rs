//! The fields by their numbers. The list only grows: a number, once given, means the same for ever.

use serde::{Deserialize, Serialize};

use super::stored_enum;

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
    }
}

/// The number of a field; numbers of later versions pass through.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FieldId(pub u16);

macro_rules! fields {
    ($($(#[$meta:meta])* $number:literal $name:ident on $kinds:tt;)*) => {
        /// The fields that this version knows.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(rename_all = "snake_case")]
        #[cfg_attr(feature = "ts", derive(tsify::Tsify))]
        pub enum FieldName { $($(#[$meta])* $name,)* }

        impl FieldName {
            /// All of them, by number.
            pub const ALL: &'static [Self] = &[$(Self::$name,)*];

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
    1 Kind on (any);
    /// What people call it.
    2 Name on (any);
    /// Struck out (true) or brought back.
    3 Struck on (any);
    /// The command of this id was carried out.
    4 Done on (any);
    /// Free words about it.
    5 Remark on (any);

    /// Currency of the job.
    10 Currency on (Job);
    /// What an hour of the user's own time is worth; may be zero.
    11 HourValue on (Job);
    /// British or American words.
    12 Vocabulary on (Job);
    /// Millimetres or inches, kilograms or pounds.
    13 Units on (Job);
    /// How original it must be.
    14 Aim on (Job);
    /// The side on which the driver sits.
    15 DriverSide on (Job);
    /// When a job file that holds everything was last handed out, by the clock of the device.
    16 HandedOut on (Job);
    /// Which entries that job file held.
    23 Held on (Job);

    /// Whose block it is.
    20 Device on (Block);
    /// Which block, from 0.
    21 Number on (Block);

    /// It gives parts to the other.
    30 Donor on (Vehicle);
    /// Model year.
    31 Year on (Vehicle);
    /// Chassis, engine or body number.
    32 IdentityNumber on (Vehicle);

    /// Which vehicle it belongs to.
    40 Vehicle on (Assembly);
    /// Which assembly it is inside.
    41 Inside on (Assembly);
    /// Left or right, from the driver's seat.
    42 Side on (Assembly Part Piece);
    /// Being taken apart now.
    43 Open on (Assembly);

    /// The number on its tag.
    50 Tag on (Part);
    /// Which assembly it came from.
    51 Assembly on (Part Joint Before);
    /// How many pieces.
    52 Quantity on (Part Piece);
    /// The maker's part number.
    53 MakersNumber on (Part);
    /// The number cast or stamped in.
    54 CastingNumber on (Part);
    /// What it is made of.
    55 Material on (Part);
    /// How heavy it is, in grams.
    56 Mass on (Part);
    /// Which family it is of.
    57 Family on (Part);
    /// Where it lies.
    58 Place on (Part Joint);
    /// Renewed whatever it looks like.
    59 SingleUse on (Part);
    /// No replacement is to be had.
    60 CannotBeBought on (Part);
    /// It was not there when the work began.
    61 MissingFromStart on (Part);
    /// A former owner fitted a wrong piece.
    62 WrongPiece on (Part);
    /// It will not come off; later.
    63 Stuck on (Part);
    /// What was tried on it.
    64 Tried on (Part);
    /// Off the vehicle (true) or still on it.
    65 Off on (Part);
    /// Position: of removal for parts, of coming off for pieces, of taking for photos, of time for stretches of sound.
    66 Order on (Part Piece Photo Slice Mark);
    /// Bought in boxes: there is no order of removal.
    67 FromBoxes on (Part);
    /// The first word at the strip.
    68 Triage on (Part);
    /// The part whose tag was split.
    69 SplitFrom on (Part);
    /// The decision that holds.
    70 Chosen on (Part);

    /// The bag it is kept in.
    75 Bag on (Joint);
    /// The joint it is a piece of.
    76 Joint on (Piece);
    /// Thickness in micrometres.
    77 Thickness on (Piece);
    /// Size in free words.
    78 Size on (Piece);

    /// What it is of: the part of a photo, the photo of a mark.
    81 Of on (Joint Photo Mark Note Slice Quote Choice);
    /// Before, off, after.
    82 Moment on (Photo);
    /// What the photo was taken for.
    83 Shot on (Photo);
    /// Words under the photo.
    84 Caption on (Photo);
    /// Its bytes, by their hash.
    85 Blob on (Photo Slice);
    /// How many bytes.
    86 Length on (Photo Slice);
    /// Which form the bytes have.
    87 MediaType on (Photo Slice);
    /// When it was taken, said or decided.
    88 Taken on (Photo Note Choice Before);
    /// Ring or arrow.
    89 Shape on (Mark);
    /// Centre of a ring, tip of an arrow: parts of ten thousand of the width.
    90 X on (Mark);
    /// The same of the height.
    91 Y on (Mark);
    /// Half the width of a ring, tail of an arrow relative to its tip: parts of ten thousand of the width.
    92 Dx on (Mark);
    /// The same of the height.
    93 Dy on (Mark);
    /// What was written or found.
    94 Text on (Note Before);
    /// How long it lasts, in milliseconds.
    95 Lasts on (Slice);

    /// The place it is in.
    96 Within on (Place);
    /// Area, rack, shelf, box, bag, hook, floor.
    97 PlaceKind on (Place);

    /// What was looked at.
    98 Check on (Before Photo);
    /// It was left out on purpose.
    99 Skipped on (Before);

    /// What happens to the part.
    100 Route on (Quote Choice);
    /// Cash.
    101 Cash on (Quote Choice);
    /// Own hours, in minutes.
    102 OwnTime on (Quote Choice);
    /// The chance that it fails.
    103 Chance on (Quote Choice);
    /// Own hours to strip again when it has failed, in minutes.
    104 StripAgain on (Quote Choice);
    /// How sure the cash is.
    105 CashCertainty on (Quote);
    /// How sure the own hours are.
    106 OwnTimeCertainty on (Quote);
    /// How sure the chance is.
    107 ChanceCertainty on (Quote);
    /// The supplier or specialist.
    108 From on (Quote Choice);
    /// The quote that was chosen.
    109 Quote on (Choice);
    /// Who decided.
    110 Who on (Choice);
    /// The value of an hour at the time.
    111 HourValueThen on (Choice);
    /// The expected cost at the time, in minor units.
    112 ExpectedThen on (Choice);
}
