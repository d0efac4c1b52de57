//! Cases over the whole core: what leaves the phone, and comes back.

mod cautions;
mod costing;
mod errands;
mod job_file;
mod lists;
mod sample;
