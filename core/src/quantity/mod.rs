//! One quantity, one type, one file; [`bounds`] is the one table of what is accepted.

mod area;
pub mod bounds;
mod chance;
mod currency;
mod day;
mod estimate;
mod exchange_rate;
mod force;
mod length;
mod mass;
mod minutes;
mod moment_in_time;
mod money;
mod torque;
mod typed;
mod unit;

pub use area::Area;
pub use chance::Chance;
pub use currency::Currency;
pub use day::Day;
pub use estimate::Estimate;
pub use exchange_rate::ExchangeRate;
pub use force::Force;
pub use length::Length;
pub use mass::Mass;
pub use minutes::Minutes;
pub use moment_in_time::Millis;
pub use money::Money;
pub use torque::Torque;
pub use typed::{Typed, Unreadable, read};
pub use unit::{Dimension, Unit};
