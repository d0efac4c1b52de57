use super::model::Model;
use super::state::{Links, State};

/// What is broken, from what is worst on, then what it costs.
type Merit = [i64; 5];

/// How many steps are told by themselves; what is left comes as one.
const TOLD: usize = 6;

/// What is done otherwise in one go: cells, with what that brings.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Step {
    pub(super) cells: Vec<usize>,
    /// What they have together.
    pub(super) by: By,
    /// What the job costs less after it.
    pub(super) saves: i64,
    /// And how much more is paid at first, and how many minutes more it takes.
    pub(super) cash: i64,
    pub(super) minutes: i64,
}

/// What the cells of a step have together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum By {
    /// Nothing: it is one.
    Itself,
    /// They go over to it.
    Shared(usize),
    Order(usize),
    /// They leave it.
    NoShared(usize),
    NoOrder(usize),
    /// They are what is left.
    Rest,
}

/// The way from one plan to another, what brings most first: one cell, or all that go over together to the same kit, donor or
/// order, because none of them is worth anything alone. What breaks a limit or a rule comes after what breaks less.
pub(super) fn steps(model: &Model, from: &[usize], to: &[usize]) -> Vec<Step> {
    let links = Links::of(model);
    let mut state = State::new(model, &links, from);
    let mut found = Vec::new();
    loop {
        let open: Vec<usize> = (0..to.len()).filter(|cell| state.taken[*cell] != to[*cell]).collect();
        if open.is_empty() {
            return found;
        }
        let ways = if found.len() == TOLD { vec![(By::Rest, open)] } else { ways(model, &state.taken, to, &open) };
        let merit = |state: &State<'_>| -> Merit {
            let breach = state.breach();
            [breach.rules, breach.orders, breach.cash, breach.minutes, state.cost()]
        };
        let before = (state.cost(), state.cash(), state.minutes());
        let mut best: Option<(Merit, usize)> = None;
        for (at, (_, cells)) in ways.iter().enumerate() {
            let back: Vec<usize> = cells.iter().map(|cell| state.turn(*cell, to[*cell])).collect();
            let reached = (merit(&state), cells.len());
            cells.iter().zip(back).for_each(|(cell, take)| {
                state.turn(*cell, take);
            });
            // Of equal ones the one that changes fewer.
            if best.is_none_or(|(known, of)| (reached.0, reached.1) < (known, ways[of].1.len())) {
                best = Some((reached.0, at));
            }
        }
        let Some((_, at)) = best else { return found };
        let (by, cells) = ways[at].clone();
        cells.iter().for_each(|cell| {
            state.turn(*cell, to[*cell]);
        });
        found.push(Step {
            cells,
            by,
            saves: before.0 - state.cost(),
            cash: state.cash() - before.1,
            minutes: state.minutes() - before.2,
        });
    }
}

/// Each cell that is open, and those that go over together.
fn ways(model: &Model, from: &[usize], to: &[usize], open: &[usize]) -> Vec<(By, Vec<usize>)> {
    let take = |cell: usize, at: &[usize]| &model.cells[cell].takes[at[cell]];
    let mut ways: Vec<(By, Vec<usize>)> = open.iter().map(|cell| (By::Itself, vec![*cell])).collect();
    let mut together = |by: By, goes: &dyn Fn(usize) -> bool| {
        let cells: Vec<usize> = open.iter().copied().filter(|cell| goes(*cell)).collect();
        if cells.len() > 1 {
            ways.push((by, cells));
        }
    };
    for shared in 0..model.shared.len() {
        // A kit is taken together, and left together.
        together(By::Shared(shared), &|cell| take(cell, to).uses.contains(&shared));
        together(By::NoShared(shared), &|cell| take(cell, from).uses.contains(&shared));
    }
    for order in 0..model.orders.len() {
        let goes = |cell: usize, at: &[usize]| take(cell, at).loads.iter().any(|load| load.order == order);
        together(By::Order(order), &|cell| goes(cell, to));
        together(By::NoOrder(order), &|cell| goes(cell, from));
    }
    ways
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::model::one_of_everything;

    /// All steps together are the whole way, and bring what the plans differ by. The kit of two is taken in one step: one part of
    /// it alone would only cost.
    /// Break: in `ways` leave out what is shared.
    #[test]
    fn steps_lead_all_the_way() {
        let model = one_of_everything();
        for (from, to) in [([0, 0, 0, 0], [1, 1, 2, 2]), ([2, 1, 0, 1], [0, 2, 1, 0])] {
            let found = steps(&model, &from, &to);
            let (before, after) = (model.worth(&from), model.worth(&to));
            assert_eq!(found.iter().map(|step| step.saves).sum::<i64>(), before.cost - after.cost);
            assert_eq!(found.iter().map(|step| step.cash).sum::<i64>(), after.cash - before.cash);
            assert_eq!(found.iter().map(|step| step.minutes).sum::<i64>(), after.minutes - before.minutes);
            let mut cells: Vec<usize> = found.iter().flat_map(|step| step.cells.clone()).collect();
            cells.sort_unstable();
            assert_eq!(cells, (0..4).filter(|cell| from[*cell] != to[*cell]).collect::<Vec<_>>());
        }
        let found = steps(&model, &[0, 0, 0, 0], &[1, 1, 1, 1]);
        assert_eq!(found[0].by, By::Shared(0));
        assert!(found[0].cells.len() > 1, "{found:?}");
    }
}
