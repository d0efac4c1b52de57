//! Cases over the whole core: what leaves the phone, and comes back.

mod bench;
mod cautions;
mod certainty;
mod contents;
mod costing;
mod errands;
mod frontier;
mod gearing;
mod history;
mod job_file;
mod judging;
mod lists;
mod planning;
mod rates;
mod refit;
mod refit_at_odds;
mod sample;
mod stores;
mod terms;
mod tightening;
mod wall_sheet;
