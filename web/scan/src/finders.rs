use crate::grey::Grey;

/// A square mark: dark, light, three dark, light, dark along every line through its middle.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Finder {
    pub(crate) x: f32,
    pub(crate) y: f32,
    /// What a module measures there, along rows and columns together.
    pub(crate) module: f32,
    /// On how many rows it was seen.
    seen: u32,
}

/// How many are looked at further.
const MOST: usize = 12;
/// Rows that are looked along: each third. The middle of a finder is three modules high.
const EACH: usize = 3;

/// Finders, those seen most often first.
pub(crate) fn find(grey: &Grey<'_>) -> Vec<Finder> {
    let mut found: Vec<Finder> = Vec::new();
    let mut row = Vec::with_capacity(grey.width);
    for y in (EACH / 2..grey.height).step_by(EACH) {
        grey.dark_row(y, &mut row);
        let mut runs = [0_usize; 5];
        let mut dark = false;
        for x in 0..=grey.width {
            let now = row.get(x).copied().unwrap_or(false);
            if now == dark && x < grey.width {
                runs[4] += 1;
                continue;
            }
            if dark && is_finder(&runs) {
                let end = x as f32;
                let middle = end - runs[4] as f32 - runs[3] as f32 - runs[2] as f32 / 2.0;
                if let Some(finder) = confirmed(grey, middle, y, runs.iter().sum()) {
                    add(&mut found, finder);
                }
            }
            runs.rotate_left(1);
            runs[4] = 1;
            dark = now;
        }
    }
    found.sort_by_key(|finder| std::cmp::Reverse(finder.seen));
    found.truncate(MOST);
    found
}

/// Whether five runs measure 1, 1, 3, 1, 1.
fn is_finder(runs: &[usize; 5]) -> bool {
    let all: usize = runs.iter().sum();
    if all < 10 {
        return false;
    }
    let module = all as f32 / 7.0;
    let off = |run: usize, wanted: f32| (run as f32 - wanted * module).abs();
    let single = [0, 1, 3, 4].iter().all(|at| off(runs[*at], 1.0) <= 0.75 * module + 0.5);
    single && off(runs[2], 3.0) <= 1.1 * module + 0.5
}

/// The same along the column through its middle, and along the row through the middle of that.
fn confirmed(grey: &Grey<'_>, x: f32, y: usize, across: usize) -> Option<Finder> {
    let column = x as usize;
    let (middle_y, down) = crossed(grey.height, y, across * 3, |at| grey.is_dark(column, at))?;
    let row = middle_y as usize;
    let (middle_x, across) = crossed(grey.width, column, down * 3, |at| grey.is_dark(at, row))?;
    let module = (across + down) as f32 / 14.0;
    Some(Finder { x: middle_x, y: middle_y, module, seen: 1 })
}

/// The middle and length of the five runs through a point along a line of so many pixels.
fn crossed(length: usize, through: usize, longest: usize, is_dark: impl Fn(usize) -> bool) -> Option<(f32, usize)> {
    let mut runs = [0_usize; 5];
    let mut at = through;
    for (nth, dark) in [(2, true), (1, false), (0, true)] {
        while is_dark(at) == dark {
            runs[nth] += 1;
            if runs[nth] > longest {
                return None;
            }
            if at == 0 {
                break;
            }
            at -= 1;
        }
    }
    let mut at = through + 1;
    for (nth, dark) in [(2, true), (3, false), (4, true)] {
        while at < length && is_dark(at) == dark {
            runs[nth] += 1;
            if runs[nth] > longest {
                return None;
            }
            at += 1;
        }
    }
    is_finder(&runs).then(|| (at as f32 - (runs[4] + runs[3]) as f32 - runs[2] as f32 / 2.0, runs.iter().sum()))
}

fn add(found: &mut Vec<Finder>, new: Finder) {
    let near = |old: &&mut Finder| (old.x - new.x).abs() < 2.0 * old.module && (old.y - new.y).abs() < 2.0 * old.module;
    let Some(old) = found.iter_mut().find(near) else {
        found.push(new);
        return;
    };
    let weight = old.seen as f32;
    let mean = |old: f32, new: f32| (old * weight + new) / (weight + 1.0);
    (old.x, old.y, old.module) = (mean(old.x, new.x), mean(old.y, new.y), mean(old.module, new.module));
    old.seen += 1;
}
