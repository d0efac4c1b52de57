//! The tools that build the app, serve it and write its types. None of them
//! knows anything of parts or costs: that is the core's. The sample job is data
//! that goes through it.

#[cfg(feature = "build")]
pub mod bindings;
#[cfg(feature = "door")]
pub mod door;
#[cfg(feature = "door")]
pub mod sample;
pub mod server;
#[cfg(feature = "build")]
pub mod shell;
pub mod workspace;
