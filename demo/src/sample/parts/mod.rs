//! How each kind of part is drawn.

pub(super) mod cast;
pub(super) mod long;
pub(super) mod turned;
