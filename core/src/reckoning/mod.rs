//! Heavy questions: what is drawn over and over, or searched for. They are answered apart from quick ones, so that whoever
//! answers those alone carries nothing of it.

mod heavy_query;
mod reckoned;

pub use heavy_query::HeavyQuery;
pub use reckoned::{Reckoned, reckon};
