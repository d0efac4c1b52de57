//! What the trade and the standards say, as data.
