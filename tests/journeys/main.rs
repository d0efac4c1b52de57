//! Journeys through browsers: only what needs a browser is here. Each engine's
//! tests carry its name, so that one engine can be run alone.

mod accessibility;
mod busy;
mod choice;
mod complaints;
mod costing;
mod deciding;
mod elsewhere;
mod faults;
mod film;
mod gearing;
mod handing;
mod hosting;
mod judging;
mod keeping;
mod keystrokes;
mod kills;
mod main_job;
mod merge;
mod phone_camera;
mod picture;
mod planning;
mod refitting;
mod rescue;
mod resend;
mod sample;
mod smoke;
mod stores;
mod strip;
mod tags_sheet;
mod terms;
mod troubles;
mod two_windows;
mod words;
