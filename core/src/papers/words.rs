//! The words that papers need. Whoever calls fills them; what is left out is British.

use serde::{Deserialize, Serialize};

use super::Mark;
use crate::job::vocabulary::{Route, Side, Standing};
use crate::tables::hazards::Hazard;

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
    /// What prices are for.
    pub prices: PriceWords,
    /// What can hurt whoever gets a part to work on.
    pub cautions: CautionWords,
    /// What only the page says.
    pub page: PageWords,
    /// What the sheet for the wall says.
    pub refit: RefitWords,
}

words! {
    /// What can hurt whoever gets a part to work on, in a line each.
    CautionWords {
        /// Before them all.
        caution: "Caution",
        /// Asbestos.
        asbestos: "old linings and gaskets may hold asbestos: wet, no air line, sealed bag",
        /// Dust.
        dust: "old paint and body solder may hold lead: extraction, respirator, no silica sand",
        /// Burnt rubber.
        burnt_rubber: "burnt fluoro-rubber may leave acid: gloves",
        /// Pressure.
        pressurised: "may be under pressure: not to be heated, cut or coated in an oven",
        /// Safety.
        safety_parts: "safety-critical: to be crack tested, no welding, competent inspection before the road",
        /// Embrittlement.
        embrittlement: "hard steel: say by which standard it is baked after acid or plating",
        /// Fume.
        metal_fume: "zinc or cadmium: toxic fume when heated or welded",
        /// Tanks.
        tanks: "an empty tank explodes: purge before any heat",
        /// Air and diesel.
        injection: "pistons leave with force under air; spray goes through the skin",
        /// Radium.
        radium: "luminous paint may hold radium: not to be opened or scraped",
    }
}

words! {
    /// Heads of the columns.
    Columns {
        /// Number on the tag.
        tag: "tag",
        /// What can hurt whoever gets it.
        cautions: "caution",
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
        cash: "cash when chosen",
        /// Currency of the cash.
        currency: "currency",
        /// Own hours as hours and minutes.
        own_hours: "own hours when chosen",
        /// Expected cost when it was chosen.
        expected_cost: "expected cost when chosen",
        /// Beside which part the kit counts.
        with: "with",
        /// Prices in another currency, and the rate.
        as_entered: "as entered",
        /// Price of the chosen quote as it stands now.
        price_now: "price now",
        /// Freight now.
        freight_now: "freight now",
        /// Tax now.
        tax_now: "tax now",
        /// Duty now.
        duty_now: "duty now",
        /// Consumables now.
        consumables_now: "consumables now",
        /// All of these.
        prices_now: "all prices now",
        /// Surcharge now.
        surcharge_now: "surcharge now",
        /// All prices, the surcharge in full.
        paid_at_first: "paid at first now",
        /// The job's currency.
        currency_now: "currency now",
        /// Own hours of the chosen quote as it stands now.
        own_hours_now: "own hours now",
        /// Present value, rounded in each row.
        worth_now: "worth now (each rounded)",
        /// Yearly cost, rounded in each row.
        each_year: "each year (each rounded)",
        /// Share that rests on guesses.
        guessed: "guessed (of 100)",
        /// Last day on which it holds.
        valid_until: "valid until",
        /// Days of waiting.
        wait: "wait (days)",
        /// Finish wanted, remarks.
        finish: "finish or remark",
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
        /// Out of the house.
        out: "out for work",
        /// Out of the house, with somebody who borrowed it.
        lent: "on loan",
        /// New pieces are on their way.
        order: "on order",
        /// Tried.
        tried: "tried",
        /// Ready to go on.
        ready: "ready",
        /// On for good.
        refitted: "refitted",
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
    /// What prices are for.
    PriceWords {
        /// Price.
        price: "price",
        /// Freight.
        freight: "freight",
        /// Tax.
        tax: "tax",
        /// Duty.
        duty: "duty",
        /// Consumables.
        consumables: "consumables",
        /// Surcharge.
        surcharge: "surcharge",
    }
}

words! {
    /// What the sheet for the wall says.
    RefitWords {
        /// Before the name of the assembly, in the title of the page.
        title: "Refit",
        /// After the number of steps.
        steps: "steps",
        /// In which order.
        order: "last off, first on",
        /// What it uses up.
        uses: "Uses up",
        /// After what it uses up.
        not_here: "not here",
        /// A part in the place of the old one.
        is_new: "new, in place of the old",
        /// A donor's part in the place of the old one.
        from_donor: "from the donor, in place of the old",
        /// Before the paint.
        before_paint: "before paint",
        /// After the paint.
        after_paint: "after paint",
        /// Before the letter of a joint.
        joint: "Joint",
        /// Before what stands on a bag.
        bag: "bag",
        /// Beside a box.
        tight: "tight",
        /// After that, where it waits.
        at_ride_height: "at ride height",
        /// Beside a box.
        checked_again: "checked again",
        /// A piece without a name.
        piece: "piece",
        /// After a piece that is renewed.
        renew: "NEW",
        /// The thread.
        dry: "dry",
        /// The thread.
        oiled: "oiled",
        /// Before stages.
        in_stages: "in stages",
        /// Before degrees.
        then_on_by: "then on by",
        /// Before a sequence.
        sequence: "sequence",
        /// Before a compound.
        with: "with",
        /// Over joints that hold no named part.
        free_joints: "Joints that hold no named part",
        /// The vehicle falls.
        vehicle_falls: "stands on firm ground, never a jack alone",
        /// A spring lets go.
        stored_spring: "springs: proper compressor, load carried until the last nut is on",
        /// Safety parts.
        safety_parts: "safety-critical: the manual’s figures, a second check, competent inspection before the road",
        /// Battery.
        battery: "battery: earth strap last, no spark near it",
        /// Lifting.
        lifting: "heavy: two people or a hoist; mind your fingers",
        /// Exhaust gas.
        exhaust_gas: "first start: doors open, exhaust led outside",
        /// Rims.
        split_rims: "rims in several pieces: only in a cage, by somebody who knows them",
    }
}

words! {
    /// What only the page says.
    PageWords {
        /// BCP 47 tag of the language.
        language: "en-GB",
        /// Over the list.
        title: "Parts list",
        /// Title of the sheets of tags.
        tags: "Tags",
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
        /// Says what the figures now are.
        now_is: "Now: the chosen quote as it stands today, in the job’s currency, as the job’s totals count it. Prices and hours add up exactly; what is worth now and each year is rounded one by one, so that their sums may differ a little from the job’s. A kit counts once, beside the first of its parts.",
        /// Before the part beside which a kit counts.
        with: "with",
        /// Before a rate.
        rate: "at",
        /// Before a day.
        valid_until: "valid until",
        /// After a number of days of waiting.
        days: "days’ wait",
        /// After the yearly cost.
        each_year: "each year",
        /// After the share that rests on guesses.
        guessed: "of 100 guessed",
        /// Over the list of what is to be bought.
        to_buy: "To buy",
        /// Over the list of what is to be sent out.
        to_send: "To send",
        /// Where no supplier was named.
        no_supplier: "No supplier named",
        /// Where no specialist was named.
        no_specialist: "No specialist named",
        /// Beside the sum over all of them.
        sum_of_all: "Sum of all",
        /// After the number of parts that are not decided, if it is one.
        not_decided: "part is not decided yet",
        /// The same, if it is not one.
        are_not_decided: "parts are not decided yet",
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
    /// What a hazard is called for whoever gets the part; nothing where it concerns nobody but the sender.
    pub(super) fn caution(&self, hazard: Hazard) -> Option<&str> {
        let cautions = &self.cautions;
        Some(match hazard {
            Hazard::Asbestos => &cautions.asbestos,
            Hazard::Dust => &cautions.dust,
            Hazard::BurntRubber => &cautions.burnt_rubber,
            Hazard::Pressurised => &cautions.pressurised,
            Hazard::SafetyParts => &cautions.safety_parts,
            Hazard::Embrittlement => &cautions.embrittlement,
            Hazard::MetalFume => &cautions.metal_fume,
            Hazard::Tanks => &cautions.tanks,
            Hazard::Injection => &cautions.injection,
            Hazard::Radium => &cautions.radium,
            _ => return None,
        })
    }

    /// A hazard in a line, for whoever puts things together; nothing where it arises elsewhere.
    pub(super) fn refit_caution(&self, hazard: Hazard) -> Option<&str> {
        let words = &self.refit;
        Some(match hazard {
            Hazard::VehicleFalls => &words.vehicle_falls,
            Hazard::StoredSpring => &words.stored_spring,
            Hazard::SafetyParts => &words.safety_parts,
            Hazard::Battery => &words.battery,
            Hazard::Lifting => &words.lifting,
            Hazard::ExhaustGas => &words.exhaust_gas,
            Hazard::SplitRims => &words.split_rims,
            other => return self.caution(other),
        })
    }

    /// The word for a side.
    #[must_use]
    pub fn side(&self, side: Side) -> &str {
        match side {
            Side::Left => &self.sides.left,
            Side::Right => &self.sides.right,
        }
    }

    /// How a part stands: what is out on loan is out for no work.
    #[must_use]
    pub fn stands(&self, standing: Standing, lent: bool) -> &str {
        if lent { &self.standings.lent } else { self.standing(standing) }
    }

    /// The word for a standing.
    #[must_use]
    pub fn standing(&self, standing: Standing) -> &str {
        match standing {
            Standing::On => &self.standings.on,
            Standing::Off => &self.standings.off,
            Standing::Judged => &self.standings.judged,
            Standing::Decided => &self.standings.decided,
            Standing::Out => &self.standings.out,
            Standing::OnOrder => &self.standings.order,
            Standing::Tried => &self.standings.tried,
            Standing::Ready => &self.standings.ready,
            Standing::Refitted => &self.standings.refitted,
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tables::hazards::{Step, TRIGGERS};

    /// Every hazard that arises at refitting has its line on the sheet for the wall.
    /// Break: in `refit_caution` leave an arm out.
    #[test]
    fn every_hazard_of_refitting_is_told() {
        let words = PaperWords::default();
        let at_refit = TRIGGERS.iter().filter(|one| one.steps.is_empty() || one.steps.contains(&Step::Refit));
        for trigger in at_refit {
            assert!(words.refit_caution(trigger.hazard).is_some_and(|text| !text.is_empty()), "{:?}", trigger.hazard);
        }
    }
}
