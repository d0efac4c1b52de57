use serde::{Deserialize, Serialize};

use crate::job::vocabulary::Route;
use crate::quantity::{Chance, Minutes};

/// What a quote is given to start with where the user enters a price alone. It is written with the word *starting*, counts
/// as a guess, and stays marked until it is confirmed or replaced.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct StartingValues {
    /// For which route.
    pub route: Route,
    /// Usual own hours, in minutes.
    pub own_time: Minutes,
    /// Usual chance that it fails.
    pub chance: Chance,
    /// Usual own hours to strip again, in minutes.
    pub strip_again: Minutes,
    /// Usual service life in months.
    pub life: i64,
}

/// Starting values of every route: common practice, no source; round figures for a part of middling size.
#[must_use]
pub const fn starting_values() -> [StartingValues; 8] {
    [
        values(Route::UseAgain, 30, 10, 120, 120),
        values(Route::RepairHere, 150, 20, 120, 120),
        values(Route::SendOut, 45, 5, 120, 180),
        values(Route::Exchange, 45, 10, 120, 120),
        values(Route::Buy, 15, 5, 120, 144),
        values(Route::Kit, 20, 5, 120, 144),
        values(Route::Donor, 90, 20, 120, 96),
        values(Route::Irreplaceable, 120, 10, 120, 180),
    ]
}

const fn values(route: Route, own: i64, percent: i64, strip: i64, life: i64) -> StartingValues {
    let (own_time, strip_again) = (Minutes::new(own), Minutes::new(strip));
    StartingValues { route, own_time, chance: Chance::of_100(percent), strip_again, life }
}
