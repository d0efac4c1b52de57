use asfound_core::job::Job;
use asfound_core::record::{Entry, Hash, chunk};
use wasm_bindgen::prelude::wasm_bindgen;

/// A copy of one job, for as long as a question takes.
#[wasm_bindgen]
#[derive(Debug, Default)]
pub struct Copy {
    pub(crate) job: Job,
    entries: Vec<Entry>,
}

#[wasm_bindgen]
impl Copy {
    /// Of nothing yet.
    #[wasm_bindgen(constructor)]
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Adds a chunk as it is stored. Answers whether it is sound; whoever opens the job sets a damaged one aside.
    pub fn chunk(&mut self, name: &str, bytes: &[u8]) -> bool {
        let opened = name.parse::<Hash>().ok().and_then(|name| chunk::open(name, bytes).ok());
        let sound = opened.is_some();
        self.entries.extend(opened.into_iter().flatten());
        sound
    }

    /// Adds an entry as it lies in the tail, under its hash. Answers whether it is sound.
    pub fn entry(&mut self, hash: &str, bytes: &[u8]) -> bool {
        let kept = hash.parse() == Ok(Hash::of(bytes));
        let entry = Entry::from_bytes(bytes).ok().filter(|_| kept);
        let sound = entry.is_some();
        self.entries.extend(entry);
        sound
    }

    /// Folds what was added.
    pub fn fold(&mut self) {
        self.job.absorb(std::mem::take(&mut self.entries));
    }
}
