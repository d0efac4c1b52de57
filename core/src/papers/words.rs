//! The words that papers need. Whoever calls fills them; what is left out is British.

use serde::{Deserialize, Serialize};

use super::Mark;
use crate::job::vocabulary::{Route, Side, Standing};

macro_rules! words {
    ($(#[$meta:meta])* $name:ident { $($(#[$doc:meta])* $member:ident: $text:expr,)* }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
        #[serde(default)]
        #[cfg_attr(feature = "ts", derive(tsify::Tsify))]
        pub struct $name { $($(#[$doc])* pub $member: String,)* }

        impl Default for $name {
            fn default() -> Self {
                Self { $($member: String::from($text),)* }
            }
        }
    };
}

/// Every word of the papers.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, Default)]
#[serde(default)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct PaperWords {
    /// Heads of the columns.
    pub columns: Columns,
    /// Sides.
    pub sides: SideWords,
    /// Standings.
    pub standings: StandingWords,
    /// Routes.
    pub routes: RouteWords,
    /// Marks.
    pub marks: MarkWords,
    /// What only the page says.
    pub page: PageWords,
}

words! {
    /// Heads of the columns.
    Columns {
        /// Number on the tag.
        tag: "tag",
        /// Name.
        name: "name",
        /// Pieces.
        quantity: "quantity",
        /// Assembly.
        assembly: "assembly",
        /// Left or right.
        side: "side",
        /// Where it lies.
        place: "place",
        /// Where it stands.
        standing: "standing",
        /// Route chosen.
        route: "route",
        /// Supplier or specialist.
        from: "supplier or specialist",
        /// Cash.
        cash: "cash",
        /// Currency of the cash.
        currency: "currency",
        /// Own hours as hours and minutes.
        own_hours: "own hours",
        /// Expected cost when it was chosen.
        expected_cost: "expected cost",
        /// Maker's part number.
        makers_number: "maker's number",
        /// Number cast or stamped in.
        casting_number: "casting number",
        /// Material.
        material: "material",
        /// Mass in kilograms.
        kilograms: "mass (kg)",
        /// Mass in pounds.
        pounds: "mass (lb)",
        /// Marks.
        marks: "marks",
        /// Notes.
        notes: "notes",
        /// How many photos.
        photos: "photos",
        /// Their files in a job file.
        photo_files: "photo files",
        /// Beside a sum.
        sum: "Sum",
    }
}

words! {
    /// Sides, from the driver's seat.
    SideWords {
        /// Left.
        left: "LEFT",
        /// Right.
        right: "RIGHT",
    }
}

words! {
    /// Standings.
    StandingWords {
        /// On the vehicle.
        on: "on",
        /// Off.
        off: "off",
        /// A first word was said.
        judged: "judged",
        /// A quote was chosen.
        decided: "decided",
    }
}

words! {
    /// Routes.
    RouteWords {
        /// As it is.
        use_again: "Use again",
        /// At the own bench.
        repair_here: "Repair here",
        /// To a specialist.
        send_out: "Send out",
        /// Against a rebuilt unit.
        exchange: "Exchange",
        /// New, singly.
        buy: "Buy",
        /// New, with others.
        kit: "Kit",
        /// From another vehicle.
        donor: "Donor",
        /// Kept.
        irreplaceable: "Irreplaceable",
    }
}

words! {
    /// Marks.
    MarkWords {
        /// Renewed whatever it looks like.
        single_use: "single use",
        /// No replacement is to be had.
        cannot_be_bought: "cannot be bought",
        /// It was not there.
        missing_from_start: "missing from the start",
        /// A former owner fitted it.
        wrong_piece: "wrong piece",
        /// It will not come off.
        stuck: "stuck",
        /// Struck out.
        struck_out: "struck out",
    }
}

words! {
    /// What only the page says.
    PageWords {
        /// BCP 47 tag of the language.
        language: "en-GB",
        /// Over the list.
        title: "Parts list",
        /// Where a part has no name.
        no_name: "no name yet",
        /// Over parts of no assembly, place or route.
        none: "None",
        /// After the number of parts, if it is one.
        part: "part",
        /// After the number of parts, if it is not one.
        parts: "parts",
        /// Below the list.
        photos_carry_no_location: "Photos in this list carry no location.",
        /// Says what the expected cost is.
        expected_cost_is: "Expected cost: cash, own hours at their value, and the chance that it fails, as they were when the route was chosen.",
        /// Alternative text of a photo, before the tag or name.
        photo_of: "Photo of",
        /// `READ ME.txt` of a job file.
        read_me: READ_ME,
    }
}

/// What the job file says of itself.
const READ_ME: &str = "\
This is a job file of asfound: everything recorded about one vehicle that is being taken apart.

You need no app to read it:
  parts.csv   the parts list; opens in any spreadsheet
  job.json    every record with its values, to be read by people and programs
  photos      photos and spoken notes, as they were taken; their names stand in parts.csv and job.json
  chunks      what was said, entry by entry, in a form for programs

To bring it back, or into another phone: open asfound, Hand over, Bring in a job file.
Bringing it in twice does no harm.

The photos are originals. They may hold the place where they were taken: think of that before you pass this file on.

The name of each photo and chunk is the BLAKE3 hash of its bytes: a damaged one can be told from a sound one.
";

impl PaperWords {
    /// The word for a side.
    #[must_use]
    pub fn side(&self, side: Side) -> &str {
        match side {
            Side::Left => &self.sides.left,
            Side::Right => &self.sides.right,
        }
    }

    /// The word for a standing.
    #[must_use]
    pub fn standing(&self, standing: Standing) -> &str {
        match standing {
            Standing::On => &self.standings.on,
            Standing::Off => &self.standings.off,
            Standing::Judged => &self.standings.judged,
            Standing::Decided => &self.standings.decided,
        }
    }

    /// The word for a route.
    #[must_use]
    pub fn route(&self, route: Route) -> &str {
        match route {
            Route::UseAgain => &self.routes.use_again,
            Route::RepairHere => &self.routes.repair_here,
            Route::SendOut => &self.routes.send_out,
            Route::Exchange => &self.routes.exchange,
            Route::Buy => &self.routes.buy,
            Route::Kit => &self.routes.kit,
            Route::Donor => &self.routes.donor,
            Route::Irreplaceable => &self.routes.irreplaceable,
        }
    }

    /// The words for marks, one after another.
    #[must_use]
    pub fn marks(&self, marks: &[Mark]) -> String {
        marks.iter().map(|mark| self.mark(*mark)).collect::<Vec<_>>().join(", ")
    }

    fn mark(&self, mark: Mark) -> &str {
        match mark {
            Mark::SingleUse => &self.marks.single_use,
            Mark::CannotBeBought => &self.marks.cannot_be_bought,
            Mark::MissingFromStart => &self.marks.missing_from_start,
            Mark::WrongPiece => &self.marks.wrong_piece,
            Mark::Stuck => &self.marks.stuck,
            Mark::StruckOut => &self.marks.struck_out,
        }
    }
}
