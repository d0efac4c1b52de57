//! Tables from outside the project, the source beside each row, and what our own code answers to them.

mod bearings;
mod calendar;
mod certainty;
mod check_characters;
mod currencies;
mod engineering_economy;
mod expected_cost;
mod facility_location;
mod gearing;
mod labels;
mod measurement;
mod plans;
mod qr;
mod rust_grades;
