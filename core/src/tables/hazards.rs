//! What can hurt somebody, and where it arises. The words, and their sources, are written at the edge.

use crate::record::stored_enum;

stored_enum! {
    /// A hazard of the work.
    pub enum Hazard {
        /// The vehicle falls.
        VehicleFalls = "vehicle-falls",
        /// A spring lets go.
        StoredSpring = "stored-spring",
        /// Dust of old linings and gaskets.
        Asbestos = "asbestos",
        /// Dust of blasting media, lead, old paint.
        Dust = "dust",
        /// Hardener of two-pack paint.
        Isocyanates = "isocyanates",
        /// Solvents and petrol.
        Solvents = "solvents",
        /// Acid from burnt fluoro-rubber; contested.
        BurntRubber = "burnt-rubber",
        /// Gas-filled dampers, air bags, accumulators.
        Pressurised = "pressurised",
        /// Brakes, steering, wheels, seat belts.
        SafetyParts = "safety-parts",
        /// Hydrogen in hard steel after acid or plating.
        Embrittlement = "embrittlement",
        /// Fume of zinc and cadmium.
        MetalFume = "metal-fume",
        /// Batteries.
        Battery = "battery",
        /// Heavy parts.
        Lifting = "lifting",
        /// Chlorinated cleaner, then welding.
        Phosgene = "phosgene",
        /// Tanks that are said to be empty.
        Tanks = "tanks",
        /// Exhaust gas in a closed room.
        ExhaustGas = "exhaust-gas",
        /// Caustic and acid.
        Caustic = "caustic",
        /// Wheel rims in several pieces.
        SplitRims = "split-rims",
        /// Air behind pistons, diesel through the skin.
        Injection = "injection",
        /// Luminous paint of old instruments.
        Radium = "radium",
    }
}

stored_enum! {
    /// Where in the work one stands.
    pub enum Step {
        /// Taking apart.
        TakeApart = "take-apart",
        /// Looking at a part, cleaning it.
        Judge = "judge",
        /// Choosing a route, working on it.
        Route = "route",
        /// Putting together and starting.
        Refit = "refit",
    }
}

/// When a hazard is in hand: any one of these.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Trigger {
    /// The hazard.
    pub hazard: Hazard,
    /// At which steps.
    pub steps: &'static [Step],
    /// Families of parts, by code.
    pub families: &'static [&'static str],
    /// Words in the name of a part.
    pub parts: &'static [&'static str],
    /// Words in the name of an assembly.
    pub assemblies: &'static [&'static str],
    /// Words of a process, in what is said of a quote or of the part itself: name, remark, from whom, what was tried.
    pub processes: &'static [&'static str],
    /// Words of a material.
    pub materials: &'static [&'static str],
    /// Only in vehicles up to this model year; one of which none is said counts as old.
    pub until_year: Option<i64>,
    /// Parts that two people lift; where nobody knows a mass, those that are usually heavy stand in the words.
    pub heavy: bool,
    /// Safety-critical parts.
    pub safety_critical: bool,
    /// A finding `burnt`.
    pub burnt: bool,
    /// Words in the name of the vehicle.
    pub vehicles: &'static [&'static str],
    /// Every list that is not empty must fit, instead of any one.
    pub all: bool,
}

const NONE: Trigger = Trigger {
    hazard: Hazard::VehicleFalls,
    steps: &[],
    families: &[],
    parts: &[],
    assemblies: &[],
    processes: &[],
    materials: &[],
    until_year: None,
    heavy: false,
    safety_critical: false,
    burnt: false,
    vehicles: &[],
    all: false,
};

use Step::{Judge, Refit, Route, TakeApart};

/// Where each hazard arises (common practice, no source, where `words/cautions` names none).
pub const TRIGGERS: &[Trigger] = &[
    Trigger {
        hazard: Hazard::VehicleFalls,
        steps: &[TakeApart, Refit],
        assemblies: &[
            "axle",
            "suspension",
            "hub",
            "brake",
            "steering",
            "gearbox",
            "transmission",
            "exhaust",
            "propshaft",
            "propeller shaft",
            "underside",
            "wheel",
            "differential",
            "fuel tank",
            "sump",
            "drivetrain",
            "corner",
        ],
        parts: &["wheel", "axle", "gearbox", "exhaust", "propshaft", "propeller shaft"],
        families: &["spring", "damper", "stub-axle", "ball-joint", "pivot-pin", "brake-drum", "brake-disc"],
        ..NONE
    },
    Trigger {
        hazard: Hazard::StoredSpring,
        steps: &[TakeApart, Refit],
        families: &["spring", "brake-lining"],
        parts: &["torsion bar", "return spring", "strut", "coil spring"],
        assemblies: &["suspension", "drum brake", "spring"],
        ..NONE
    },
    Trigger {
        hazard: Hazard::Asbestos,
        steps: &[TakeApart, Judge, Route],
        families: &["brake-lining", "brake-drum"],
        parts: &["clutch", "exhaust gasket", "manifold gasket", "head gasket", "clutch plate", "backplate"],
        assemblies: &["brake", "clutch"],
        until_year: Some(1999),
        ..NONE
    },
    Trigger {
        hazard: Hazard::Dust,
        steps: &[Route],
        families: &["panel"],
        processes: &[
            "blast",
            "sand",
            "grind",
            "strip",
            "linish",
            "wire brush",
            "rub down",
            "shot",
            "grit",
            "soda",
            "lead load",
            "body solder",
        ],
        ..NONE
    },
    Trigger {
        hazard: Hazard::Isocyanates,
        steps: &[Route],
        processes: &["two pack", "two-pack", "2k", "2 pack", "spray", "lacquer", "clear coat", "hardener"],
        ..NONE
    },
    Trigger {
        hazard: Hazard::Solvents,
        steps: &[TakeApart, Judge, Route],
        parts: &[
            "carburettor",
            "carburetor",
            "fuel pump",
            "fuel pipe",
            "fuel line",
            "fuel hose",
            "fuel tank",
            "petrol tank",
        ],
        assemblies: &["fuel", "carburettor", "carburetor", "petrol"],
        processes: &["degrease", "solvent", "petrol", "paraffin", "kerosene", "thinners", "parts wash"],
        ..NONE
    },
    Trigger { hazard: Hazard::BurntRubber, steps: &[TakeApart, Judge], burnt: true, ..NONE },
    Trigger {
        hazard: Hazard::Pressurised,
        steps: &[TakeApart, Judge, Route],
        families: &["damper"],
        parts: &["accumulator", "air bag", "airbag", "gas strut", "belt tensioner", "air spring"],
        ..NONE
    },
    Trigger { hazard: Hazard::SafetyParts, steps: &[Judge, Route, Refit], safety_critical: true, ..NONE },
    Trigger {
        hazard: Hazard::Embrittlement,
        steps: &[Route],
        families: &["safety-fastener", "spring"],
        processes: &["plat", "zinc", "chrome", "acid", "derust", "pickle", "electroly", "galvanis", "galvaniz"],
        all: true,
        ..NONE
    },
    Trigger {
        hazard: Hazard::MetalFume,
        steps: &[Route],
        materials: &["galvanised", "galvanized", "zinc", "cadmium", "plated"],
        processes: &["galvanised", "galvanized", "cadmium", "braze"],
        ..NONE
    },
    Trigger {
        hazard: Hazard::Battery,
        steps: &[TakeApart, Judge, Refit],
        parts: &["battery", "battery lead", "battery tray"],
        assemblies: &["electric", "electrical", "wiring", "battery", "loom"],
        ..NONE
    },
    Trigger {
        hazard: Hazard::Lifting,
        steps: &[TakeApart, Judge, Refit],
        parts: &[
            "engine",
            "gearbox",
            "axle casing",
            "differential",
            "cylinder head",
            "crankshaft",
            "door",
            "leaf spring",
            "bonnet",
            "hood",
            "axle",
            "flywheel",
            "radiator",
        ],
        heavy: true,
        ..NONE
    },
    Trigger { hazard: Hazard::Phosgene, steps: &[Route], processes: &["weld", "braze", "chlorinated"], ..NONE },
    Trigger {
        hazard: Hazard::Tanks,
        steps: &[TakeApart, Route],
        parts: &["fuel tank", "petrol tank", "gas tank", "tank"],
        assemblies: &["fuel tank", "petrol tank"],
        ..NONE
    },
    Trigger {
        hazard: Hazard::ExhaustGas,
        steps: &[Refit],
        assemblies: &["engine", "exhaust"],
        parts: &["engine"],
        ..NONE
    },
    Trigger {
        hazard: Hazard::Caustic,
        steps: &[TakeApart, Judge, Route],
        parts: &["battery"],
        processes: &["caustic", "acid", "derust", "electroly", "pickle", "rust remover", "hot tank", "dip"],
        ..NONE
    },
    Trigger {
        hazard: Hazard::SplitRims,
        steps: &[TakeApart, Judge, Refit],
        parts: &["split rim", "lock ring", "side ring"],
        ..NONE
    },
    Trigger {
        hazard: Hazard::SplitRims,
        steps: &[TakeApart, Judge, Refit],
        parts: &["rim", "wheel rim", "road wheel", "wheel"],
        vehicles: &["lorry", "truck", "van", "pick-up", "pickup", "bus", "coach", "wagon", "commercial"],
        all: true,
        ..NONE
    },
    Trigger {
        hazard: Hazard::Injection,
        steps: &[TakeApart, Judge, Route],
        families: &["hydraulic-cylinder"],
        parts: &["injector", "injection pump", "caliper"],
        assemblies: &["injection", "diesel"],
        ..NONE
    },
    Trigger {
        hazard: Hazard::Radium,
        steps: &[TakeApart, Judge, Route],
        parts: &["instrument", "speedometer", "clock", "gauge", "ammeter", "tachometer", "rev counter", "dial"],
        assemblies: &["instrument", "dashboard"],
        until_year: Some(1970),
        ..NONE
    },
];
