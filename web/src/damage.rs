//! What was found damaged while loading, as an answer: everything sound is open all the same.

use asfound_core::problem::{Code, Hint, Problem};

use crate::answer::Answer;
use crate::load::Loaded;
use crate::store::{Failure, TroubleCode};

/// The answer to opening a job.
#[must_use]
pub(crate) fn told(loaded: &Loaded) -> Answer {
    let damaged =
        loaded.damaged.iter().map(|name| Problem::warning(Code::Damaged).value("name", name).hint(Hint::FetchAgain));
    let newer =
        loaded.newer.iter().map(|name| Problem::warning(Code::NewerForm).value("name", name).hint(Hint::UseNewer));
    let mut answer = Answer::with(damaged.chain(newer).collect());
    if let Some(first) = loaded.damaged.first() {
        let words = format!("{} damaged, the first: {first}", loaded.damaged.len());
        answer.trouble = Some(Failure::new(TroubleCode::ChunkDamaged, words));
    }
    answer
}
