//! Where things lie: what was counted, what is missing, where it may be.

mod missed;
