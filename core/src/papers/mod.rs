//! What leaves the phone: lists and the job file.
