//! Plans of drawn jobs, searched for step by step from JavaScript, and the same models as text for a general solver.

mod program;

use asfound_core::plan::{PlanLinks, PlanProof, Search, Solved};
use asfound_tests::plan_models::drawn;
use wasm_bindgen::prelude::wasm_bindgen;

/// A search that goes on for as long as it is asked to.
#[wasm_bindgen]
pub struct Planner {
    search: Search<'static>,
    solved: Solved,
}

#[wasm_bindgen]
impl Planner {
    /// Begins with a model of so many cells. It is never freed: the page that asks ends with its worker.
    #[wasm_bindgen(constructor)]
    #[must_use]
    pub fn new(cells: usize, seed: u32) -> Self {
        let model = Box::leak(Box::new(drawn(u64::from(seed), cells)));
        let links = Box::leak(Box::new(PlanLinks::of(model)));
        let search = Search::begin(model, links, u64::from(seed));
        let solved = search.solved();
        Self { search, solved }
    }

    /// Makes one step; whether there is more to do.
    pub fn step(&mut self) -> bool {
        let more = self.search.step();
        self.solved = self.search.solved();
        more
    }

    /// What the best plan costs, once there is one.
    #[must_use]
    pub fn cost(&self) -> Option<f64> {
        self.solved.cost.map(|cost| cost as f64)
    }

    /// What no plan is less than, once that is known.
    #[must_use]
    pub fn bound(&self) -> Option<f64> {
        self.solved.bound.map(|bound| bound as f64)
    }

    /// How many steps were made.
    #[must_use]
    pub fn nodes(&self) -> u32 {
        self.solved.nodes
    }

    /// What is proved, as one word.
    #[must_use]
    pub fn proof(&self) -> String {
        let word = match self.solved.proof {
            PlanProof::Best => "best",
            PlanProof::Within => "within",
            PlanProof::NothingFits => "nothing fits",
            PlanProof::Open => "open",
        };
        word.to_owned()
    }
}

/// The same model as a linear program with whole numbers, in the text form that solvers read.
#[wasm_bindgen]
#[must_use]
pub fn program(cells: usize, seed: u32) -> String {
    program::of(&drawn(u64::from(seed), cells))
}
