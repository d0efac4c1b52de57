//! The words that fields take. Each is stored, and crosses the protocol, as written here.

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
    }
}
