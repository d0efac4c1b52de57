//! Plans of drawn jobs: when the first is there, how far from the best it can be after a second and after five, when it is
//! proved. `cargo run --release -p asfound-tests --example bench-plan`.

use std::time::{Duration, Instant};

use asfound_core::plan::{PlanLinks, PlanProof, Search};
use asfound_tests::plan_models::drawn;

fn main() {
    println!("cells seed   first ms   gap at 1 s   gap at 5 s   done ms   proof   cost   nodes");
    for cells in [30, 100, 300, 1_000] {
        for seed in 1..=6 {
            let model = drawn(seed, cells);
            let links = PlanLinks::of(&model);
            let start = Instant::now();
            let mut search = Search::begin(&model, &links, seed);
            let mut first = search.solved().cost.map(|_| start.elapsed());
            let (mut one, mut five) = (None, None);
            let gap = |search: &Search<'_>| {
                let solved = search.solved();
                solved.cost.zip(solved.bound).map(|(cost, bound)| (cost - bound) as f64 / cost as f64 * 100.0)
            };
            while start.elapsed() < Duration::from_secs(8) {
                let more = search.step();
                if first.is_none() {
                    first = search.solved().cost.map(|_| start.elapsed());
                }
                if one.is_none() && start.elapsed() > Duration::from_secs(1) {
                    one = gap(&search);
                }
                if five.is_none() && start.elapsed() > Duration::from_secs(5) {
                    five = gap(&search);
                }
                if !more {
                    break;
                }
            }
            let solved = search.solved();
            let said = |gap: Option<f64>| gap.map_or("done".to_owned(), |gap| format!("{gap:.3} %"));
            let proof = if solved.proof == PlanProof::Within {
                format!("{:.3} %", gap(&search).unwrap_or(100.0))
            } else {
                format!("{:?}", solved.proof)
            };
            println!(
                "{cells:5} {seed:4} {:10?} {:>12} {:>12} {:9} {proof} {:?} {}",
                first.map(|first| first.as_millis()),
                said(one),
                said(five),
                start.elapsed().as_millis(),
                solved.cost,
                solved.nodes
            );
        }
    }
}
