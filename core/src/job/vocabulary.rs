//! The words that fields take. Each is stored, and crosses the protocol, as written here.

use crate::quantity::Unit;
use crate::record::stored_enum;

stored_enum! {
    /// Left or right, from the driver's seat.
    pub enum Side {
        /// Left.
        Left = "left",
        /// Right.
        Right = "right",
    }
}

stored_enum! {
    /// Which trade words are shown.
    pub enum Vocabulary {
        /// Split pin, circlip, spanner.
        British = "british",
        /// Cotter pin, snap ring, wrench.
        American = "american",
    }
}

stored_enum! {
    /// Which units are shown.
    pub enum Units {
        /// Millimetres, kilograms.
        Metric = "metric",
        /// Inches, pounds.
        Inch = "inch",
    }
}

stored_enum! {
    /// How original it must be.
    pub enum Aim {
        /// Stronger or later parts welcome.
        HardUse = "hard-use",
        /// Sound, safe, tidy.
        RegularRoadUse = "regular-road-use",
        /// Keep what is original where it is sound.
        Conserve = "conserve",
        /// As it left the factory.
        ShowStandard = "show-standard",
    }
}

stored_enum! {
    /// The first word at the strip; the judgement follows after cleaning.
    pub enum Triage {
        /// Looks good.
        LooksGood = "looks-good",
        /// Doubtful.
        Doubtful = "doubtful",
        /// Scrap.
        Scrap = "scrap",
    }
}

stored_enum! {
    /// Where in the work a photo was taken.
    pub enum Moment {
        /// Before anything is slackened.
        Before = "before",
        /// Coming off, or off.
        Off = "off",
        /// Refitted.
        After = "after",
    }
}

stored_enum! {
    /// What a photo was taken for.
    pub enum Shot {
        /// The thing itself.
        Plain = "plain",
        /// Index marks on flanges, caps, splines.
        IndexMark = "index-mark",
        /// A stack of shims, by side and thickness.
        Shims = "shims",
        /// The tag or bag.
        Tag = "tag",
    }
}

stored_enum! {
    /// A mark on a photo.
    pub enum Shape {
        /// A ring.
        Ring = "ring",
        /// An arrow.
        Arrow = "arrow",
    }
}

stored_enum! {
    /// A kind of place.
    pub enum PlaceKind {
        /// A part of the garage.
        Area = "area",
        /// A rack.
        Rack = "rack",
        /// A shelf.
        Shelf = "shelf",
        /// A box.
        Box = "box",
        /// A bag.
        Bag = "bag",
        /// A hook.
        Hook = "hook",
        /// A spot on the floor.
        Floor = "floor",
    }
}

stored_enum! {
    /// What is looked at before anything is slackened (common practice, no source).
    pub enum Check {
        /// Ride height.
        Height = "height",
        /// Free play, backlash, end float.
        FreePlay = "free-play",
        /// Index marks made and seen.
        IndexMarks = "index-marks",
        /// Gaps and alignment.
        Gaps = "gaps",
        /// Tight fasteners cracked while the vehicle stands on its wheels.
        TightFasteners = "tight-fasteners",
        /// Photos all round.
        Photos = "photos",
    }
}

stored_enum! {
    /// What happens to a part.
    pub enum Route {
        /// As it is, cleaned.
        UseAgain = "use-again",
        /// At the own bench.
        RepairHere = "repair-here",
        /// To a specialist.
        SendOut = "send-out",
        /// Against a rebuilt unit.
        Exchange = "exchange",
        /// New, singly.
        Buy = "buy",
        /// New, with others.
        Kit = "kit",
        /// From another vehicle.
        Donor = "donor",
        /// Kept and protected: there is no other.
        Irreplaceable = "irreplaceable",
    }
}

stored_enum! {
    /// How sure a figure is, in the user's own word.
    pub enum Certainty {
        /// Known: a price on paper, hours already worked.
        Sure = "sure",
        /// A fair guess.
        About = "about",
        /// Little more than a number.
        WildGuess = "wild-guess",
        /// A starting value that nobody has confirmed or replaced yet.
        Starting = "starting",
    }
}

stored_enum! {
    /// How original what a quote brings is.
    pub enum Correctness {
        /// The part itself, or one like it from the same works, used.
        Original = "original",
        /// Original, never used.
        NewOldStock = "new-old-stock",
        /// Made as the original was, to be told from it by nobody.
        FaithfulReproduction = "faithful-reproduction",
        /// Made to fit.
        Pattern = "pattern",
        /// Later or stronger.
        Uprated = "uprated",
        /// Made at home.
        HomeMade = "home-made",
    }
}

stored_enum! {
    /// What a rate is a price for.
    pub enum RateBasis {
        /// One piece.
        Piece = "piece",
        /// A square centimetre.
        SquareCentimetre = "square-centimetre",
        /// A square decimetre.
        SquareDecimetre = "square-decimetre",
        /// A square metre.
        SquareMetre = "square-metre",
        /// A square inch.
        SquareInch = "square-inch",
        /// A square foot.
        SquareFoot = "square-foot",
        /// A kilogram.
        Kilogram = "kilogram",
        /// A pound.
        Pound = "pound",
    }
}

stored_enum! {
    /// Whether a plan is free to take something.
    pub enum Stance {
        /// It must be in the plan.
        Pinned = "pinned",
        /// It must not.
        Forbidden = "forbidden",
    }
}

stored_enum! {
    /// What a fit rule says of its subject and the other.
    pub enum Relation {
        /// The subject is chosen only together with the other.
        Needs = "needs",
        /// They are never chosen together.
        RulesOut = "rules-out",
        /// The subject without the other costs extra.
        GoesWith = "goes-with",
    }
}

stored_enum! {
    /// Which side of a swap a gearing is on.
    pub enum Swap {
        /// As it was, or is now.
        Before = "before",
        /// As it is to be.
        After = "after",
        /// One that is thought about.
        Candidate = "candidate",
    }
}

stored_enum! {
    /// How much of the box around a part it fills (common practice, no source).
    pub enum Build {
        /// Full through and through: a shaft, a pin.
        Solid = "solid",
        /// A casting or pressing with walls: a housing, a drum.
        Hollow = "hollow",
        /// Sheet or frame: a panel, a bracket of strip.
        Sheet = "sheet",
    }
}

stored_enum! {
    /// What a part is out of the house for.
    pub enum OutFor {
        /// Somebody works on it.
        Work = "work",
        /// Somebody has it on loan.
        Loan = "loan",
    }
}

stored_enum! {
    /// What came of comparing with the old part.
    pub enum Compared {
        /// It is the same where it matters.
        Right = "right",
        /// It is not: it cannot go on.
        Wrong = "wrong",
    }
}

stored_enum! {
    /// How far a part is on again.
    pub enum Fit {
        /// On for trial; to come off again for finish.
        Tried = "tried",
        /// Off again after the trial.
        OffAgain = "off-again",
        /// On for good.
        Fitted = "fitted",
    }
}

stored_enum! {
    /// When it goes on.
    pub enum Paint {
        /// Before the paint.
        Before = "before",
        /// After the paint.
        After = "after",
    }
}

stored_enum! {
    /// The unit of a tightening figure.
    pub enum TorqueUnit {
        /// N·m.
        NewtonMetre = "newton-metre",
        /// lbf·ft.
        PoundFoot = "pound-foot",
        /// lbf·in.
        PoundInch = "pound-inch",
        /// kgf·m.
        KilogramMetre = "kilogram-metre",
    }
}

impl TorqueUnit {
    /// As a unit of what is typed and told.
    #[must_use]
    pub const fn unit(self) -> Unit {
        match self {
            Self::NewtonMetre => Unit::NewtonMetre,
            Self::PoundFoot => Unit::PoundFoot,
            Self::PoundInch => Unit::PoundInch,
            Self::KilogramMetre => Unit::KilogramMetre,
        }
    }
}

stored_enum! {
    /// The thread as it is tightened.
    pub enum Lubrication {
        /// Dry.
        Dry = "dry",
        /// Oiled.
        Oiled = "oiled",
    }
}

stored_enum! {
    /// How tight a joint is.
    pub enum Tightened {
        /// By hand.
        FingerTight = "finger-tight",
        /// As it is to be.
        Tight = "tight",
    }
}

stored_enum! {
    /// What is done between the last assembly and the road (common practice, no source).
    pub enum CommissioningStep {
        /// Fluids filled in.
        Fluids = "fluids",
        /// Hydraulics bled.
        Bleed = "bleed",
        /// Oil and fuel primed.
        Prime = "prime",
        /// Settings made: clearances, timing, tracking, lamps.
        Settings = "settings",
        /// Looked at for leaks.
        Leaks = "leaks",
        /// Tightened again.
        Retighten = "retighten",
        /// Looked over by somebody competent.
        Inspection = "inspection",
        /// Run in.
        RunningIn = "running-in",
    }
}

stored_enum! {
    /// Where a part stands; worked out, never set by hand.
    pub enum Standing {
        /// On the vehicle.
        On = "on",
        /// Off, and nothing said of it yet.
        Off = "off",
        /// A first word was said.
        Judged = "judged",
        /// A quote was chosen.
        Decided = "decided",
        /// Out of the house: for work, or lent.
        Out = "out",
        /// New pieces are on their way.
        OnOrder = "order",
        /// Tried, and to come off again for finish.
        Tried = "tried",
        /// Everything it needs to go on is here.
        Ready = "ready",
        /// On for good.
        Refitted = "refitted",
    }
}
