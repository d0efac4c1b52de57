//! Journeys through browsers: only what needs a browser is here. Each engine's
//! tests carry its name, so that one engine can be run alone.

mod busy;
mod handing;
mod hosting;
mod main_job;
mod picture;
mod resend;
mod smoke;
mod troubles;
