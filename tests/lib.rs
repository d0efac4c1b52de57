//! Tests that need more than one module of the core, a folder for each kind:
//! laws, outside references, cases as data, stored forms. Journeys through
//! browsers are a crate of their own, so that nobody waits for a WebDriver
//! client to build who only wants to run a law.

pub mod golden;
pub mod plan_models;
