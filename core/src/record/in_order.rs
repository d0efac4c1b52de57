use std::cmp::Ordering;

/// What is given, in order of a key; equal keys keep the order in which they came.
///
/// One sorting of positions serves all types: a sort of its own for every type of element is the largest thing that a phone
/// would have to fetch.
pub(crate) fn in_order<T, K: Ord>(all: Vec<T>, key: impl Fn(&T) -> K) -> Vec<T> {
    ordered_by(all, |a, b| key(a).cmp(&key(b)))
}

/// What is given, in order of a comparison; equal ones keep the order in which they came.
pub(crate) fn ordered_by<T>(all: Vec<T>, compare: impl Fn(&T, &T) -> Ordering) -> Vec<T> {
    let order = positions(all.len(), &|a, b| compare(&all[a], &all[b]));
    let mut all: Vec<Option<T>> = all.into_iter().map(Some).collect();
    order.into_iter().filter_map(|at| all[at].take()).collect()
}

fn positions(count: usize, compare: &dyn Fn(usize, usize) -> Ordering) -> Vec<usize> {
    let mut positions: Vec<usize> = (0..count).collect();
    positions.sort_by(|a, b| compare(*a, *b));
    positions
}
