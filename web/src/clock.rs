//! The one place that asks the time.

use asfound_core::quantity::Millis;

/// Now, by the device's clock.
#[must_use]
#[expect(clippy::cast_possible_truncation, reason = "whole milliseconds, far below 2^53")]
pub fn now() -> Millis {
    Millis(js_sys::Date::now() as i64)
}
