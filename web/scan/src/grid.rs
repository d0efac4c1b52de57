use crate::SIDE;
use crate::finders::Finder;
use crate::grey::Grey;

/// Where the modules lie: the middles of the three finders, and the point opposite that would make a square of them, in pixels.
/// Upper left, upper right, lower left, lower right.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Grid([(f32, f32); 4]);

/// The least that all that is known must agree with a frame: before anything is fitted, and after it. On frames made by code
/// those that could be read began at 0.24 or more.
const PROMISING: f32 = 0.14;
const AGREES: f32 = 0.2;
/// How many grids are looked at of three finders and of two, the likeliest by their shape; and how many of two are followed.
const OF_THREE: usize = 16;
const LOOKED_AT: usize = 40;
const OF_TWO: usize = 2;

/// How much a module of data counts beside one that is known.
const DATA: f32 = 0.4;
/// So much of what is known must lie in the frame.
const LEAST_SEEN: f32 = 150.0;
/// What is as dark as this is not looked into further: differences there are grain.
const DARKEST: f32 = 8.0;

/// The ground that each module is held against. It hardly changes while a grid is moved, so it is worked out once.
struct Ground(Vec<f32>);

impl Ground {
    fn of(grid: &Grid, grey: &Grey<'_>) -> Self {
        let (map, reach) = (grid.map(), grid.reach());
        let mean = |at: usize| {
            let (x, y) =
                map.as_ref().map_or((0.0, 0.0), |map| map.at((at % RING) as f32 - 0.5, (at / RING) as f32 - 0.5));
            grey.mean(x, y, reach) + DARKEST
        };
        Self((0..RING * RING).map(mean).collect())
    }
}

/// A grid's own map from modules to pixels.
struct Map([f32; 8]);

impl Map {
    /// Modules are counted from the upper left corner; the middle of a finder is at 3.5.
    fn at(&self, column: f32, row: f32) -> (f32, f32) {
        let m = &self.0;
        let (u, v) = ((column - 3.5) / 14.0, (row - 3.5) / 14.0);
        let w = m[6] * u + m[7] * v + 1.0;
        ((m[0] * u + m[1] * v + m[2]) / w, (m[3] * u + m[4] * v + m[5]) / w)
    }
}

impl Grid {
    /// The square seen from an angle (a homography of the unit square).
    fn map(&self) -> Option<Map> {
        let [a, b, c, d] = self.0;
        let (sx, sy) = (a.0 - b.0 + d.0 - c.0, a.1 - b.1 + d.1 - c.1);
        let (dx1, dx2, dy1, dy2) = (b.0 - d.0, c.0 - d.0, b.1 - d.1, c.1 - d.1);
        let whole = dx1 * dy2 - dx2 * dy1;
        if whole.abs() < 1.0 {
            return None;
        }
        let (g, h) = ((sx * dy2 - sy * dx2) / whole, (dx1 * sy - dy1 * sx) / whole);
        if g <= -0.8 || h <= -0.8 || g + h <= -0.8 {
            return None;
        }
        Some(Map([b.0 - a.0 + g * b.0, c.0 - a.0 + h * c.0, a.0, b.1 - a.1 + g * b.1, c.1 - a.1 + h * c.1, a.1, g, h]))
    }

    fn module(&self) -> f32 {
        let [a, b, c, _] = self.0;
        ((b.0 - a.0).hypot(b.1 - a.1) + (c.0 - a.0).hypot(c.1 - a.1)) / 28.0
    }

    /// How well a frame agrees with what is the same on every symbol: finders, white around them, timing.
    fn rough_score(&self, grey: &Grey<'_>) -> f32 {
        let reach = self.reach();
        self.agreement(0.0, |_, x, y| Some((grey.at(x, y)?, grey.mean(x, y, reach) + DARKEST)))
    }

    /// The same, and modules that hold data speak for a grid when they are clearly dark or clearly light.
    fn score(&self, grey: &Grey<'_>, ground: &Ground) -> f32 {
        self.agreement(DATA, |at, x, y| Some((grey.at(x, y)?, ground.0[at])))
    }

    fn agreement(&self, data: f32, seen: impl Fn(usize, f32, f32) -> Option<(f32, f32)>) -> f32 {
        let Some(map) = self.map() else { return -1.0 };
        let (mut sum, mut count) = (0.0, 0.0);
        for (at, known) in KNOWN.iter().flatten().enumerate() {
            if *known == 0 && data == 0.0 {
                continue;
            }
            let (x, y) = map.at((at % RING) as f32 - 0.5, (at / RING) as f32 - 0.5);
            let Some((value, ground)) = seen(at, x, y) else { continue };
            let value = ((value - ground) / ground).clamp(-0.6, 0.6);
            match known {
                0 => (sum, count) = (sum + value.abs() * data, count + data),
                known => (sum, count) = (sum + value * f32::from(*known), count + 1.0),
            }
        }
        if count < LEAST_SEEN { -1.0 } else { sum / count }
    }

    /// How far around a module the ground is looked at, in pixels.
    fn reach(&self) -> usize {
        (self.module() * 5.0) as usize
    }

    /// Seen from an angle, the point opposite is where it cannot be reckoned from the others.
    fn turn_opposite(&mut self, grey: &Grey<'_>, ground: &Ground, best: &mut f32) {
        let [a, b, c, from] = self.0;
        let step = |way: i32, to: (f32, f32)| ((to.0 - a.0) * way as f32 * 0.1, (to.1 - a.1) * way as f32 * 0.1);
        for right in -2..=2 {
            for down in -2..=2 {
                let (along, across) = (step(right, b), step(down, c));
                let other = Self([a, b, c, (from.0 + along.0 + across.0, from.1 + along.1 + across.1)]);
                let score = other.score(grey, ground);
                if score > *best {
                    (*best, *self) = (score, other);
                }
            }
        }
    }

    /// Its points moved by a step until nothing agrees better.
    fn move_points(&mut self, grey: &Grey<'_>, ground: &Ground, best: &mut f32, step: f32) {
        for _ in 0..3 {
            let before = *best;
            for point in [3, 0, 1, 2] {
                for (dx, dy) in [(step, 0.0), (-step, 0.0), (0.0, step), (0.0, -step)] {
                    let mut other = *self;
                    other.0[point].0 += dx;
                    other.0[point].1 += dy;
                    let score = other.score(grey, ground);
                    if score > *best {
                        (*best, *self) = (score, other);
                        break;
                    }
                }
            }
            if *best <= before {
                break;
            }
        }
    }

    /// Luminance of a module: the mean of five spots in it. Nothing where it leaves the frame.
    pub(crate) fn sampled(&self, grey: &Grey<'_>) -> Option<Vec<f32>> {
        let map = self.map()?;
        let spots = [(0.5, 0.5), (0.3, 0.5), (0.7, 0.5), (0.5, 0.3), (0.5, 0.7)];
        let cells = (0..SIDE).flat_map(|row| (0..SIDE).map(move |column| (row as f32, column as f32)));
        let mean = |(row, column): (f32, f32)| {
            let seen = spots.iter().filter_map(|(dx, dy)| {
                let (x, y) = map.at(column + dx, row + dy);
                grey.at(x, y)
            });
            let (sum, count) = seen.fold((0.0, 0.0), |(sum, count), value| (sum + value, count + 1.0));
            if count > 0.0 { sum / count } else { f32::NAN }
        };
        Some(cells.map(mean).collect())
    }
}

/// What every module counts for: dark on every symbol (below nothing), light on every one, or data. The ring around is light.
const KNOWN: [[i8; RING]; RING] = known();
const RING: usize = SIDE + 2;

const fn known() -> [[i8; RING]; RING] {
    let mut all = [[0; RING]; RING];
    let last = SIDE as i32 - 1;
    let mut at = 0;
    while at < RING * RING {
        let (row, column) = ((at / RING) as i32 - 1, (at % RING) as i32 - 1);
        let outside = row < 0 || column < 0 || row > last || column > last;
        let timing = if row == 6 {
            Some(column % 2 == 0)
        } else if column == 6 {
            Some(row % 2 == 0)
        } else {
            None
        };
        let dark = match (finder(row, column), finder(row, last - column), finder(last - row, column)) {
            (Some(dark), ..) | (_, Some(dark), _) | (.., Some(dark)) => Some(dark),
            _ if outside => Some(false),
            _ if row == 13 && column == 8 => Some(true),
            _ => timing,
        };
        all[at / RING][at % RING] = match dark {
            Some(true) => -1,
            Some(false) => 1,
            None => 0,
        };
        at += 1;
    }
    all
}

/// Whether a module of a finder in the corner is dark; nothing beyond the white line around it.
const fn finder(row: i32, column: i32) -> Option<bool> {
    let (down, across) = ((row - 3).abs(), (column - 3).abs());
    match if down > across { down } else { across } {
        0 | 1 | 3 => Some(true),
        2 | 4 => Some(false),
        _ => None,
    }
}

/// A grid that is moved until nothing agrees better.
pub(crate) struct Fit<'a> {
    grey: &'a Grey<'a>,
    ground: Ground,
    pub(crate) grid: Grid,
    best: f32,
    step: usize,
}

/// Steps of the fit, in modules.
const STEPS: [f32; 4] = [1.0, 0.5, 0.25, 0.12];

impl<'a> Fit<'a> {
    pub(crate) fn new(grey: &'a Grey<'a>, grid: Grid) -> Self {
        let ground = Ground::of(&grid, grey);
        Self { grey, best: grid.score(grey, &ground), ground, grid, step: 0 }
    }

    /// One step; false when the last one is done.
    pub(crate) fn go_on(&mut self) -> bool {
        if self.step == 0 {
            self.grid.turn_opposite(self.grey, &self.ground, &mut self.best);
        } else {
            let Some(step) = STEPS.get(self.step - 1) else { return false };
            let step = step * self.grid.module();
            self.grid.move_points(self.grey, &self.ground, &mut self.best, step);
        }
        self.step += 1;
        // What is no symbol does not become one by going on.
        self.is_sound()
    }

    pub(crate) fn is_sound(&self) -> bool {
        self.best > AGREES
    }
}

fn away(a: &Finder, b: &Finder) -> f32 {
    (a.x - b.x).hypot(a.y - b.y)
}

/// Grids of three finders that may belong together, the likeliest first, each with its finders.
pub(crate) fn from_three(grey: &Grey<'_>, found: &[Finder]) -> Vec<(Grid, [usize; 3])> {
    let mut shaped: Vec<(f32, Grid, [usize; 3])> = Vec::new();
    for a in 0..found.len() {
        for b in 0..found.len() {
            for c in b + 1..found.len() {
                if a == b || a == c {
                    continue;
                }
                let corner = corner(&found[a], &found[b], &found[c]);
                shaped.extend(corner.map(|(off, grid)| (off, grid, [a, b, c])));
            }
        }
    }
    shaped.sort_by(|one, other| one.0.total_cmp(&other.0));
    let scored = shaped.into_iter().take(OF_THREE).map(|(_, grid, of)| (grid.rough_score(grey), grid, of));
    let mut grids: Vec<_> = scored.filter(|(score, ..)| *score > PROMISING).collect();
    grids.sort_by(|one, other| other.0.total_cmp(&one.0));
    grids.into_iter().map(|(_, grid, of)| (grid, of)).collect()
}

/// The grid whose upper left finder is `a`, when the others may be its neighbours, and how far that is from a plain square.
fn corner(a: &Finder, b: &Finder, c: &Finder) -> Option<(f32, Grid)> {
    let modules = [a.module, b.module, c.module];
    let (least, most) = (modules.iter().copied().fold(f32::MAX, f32::min), modules.iter().copied().fold(0.0, f32::max));
    let (one, other) = (away(a, b), away(a, c));
    let mean = modules.iter().sum::<f32>() / 3.0;
    let fits = |leg: f32| (0.5..2.0).contains(&(leg / (14.0 * mean)));
    if most > 2.2 * least || !fits(one) || !fits(other) || one > 2.6 * other || other > 2.6 * one {
        return None;
    }
    let turn = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    if turn.abs() < 0.3 * one * other {
        return None;
    }
    // On a screen whose y points down the lower left lies clockwise of the upper right.
    let (right, below) = if turn > 0.0 { (b, c) } else { (c, b) };
    let opposite = (right.x + below.x - a.x, right.y + below.y - a.y);
    let off = most / least + one.max(other) / one.min(other) + one * other / turn.abs();
    Some((off, Grid([(a.x, a.y), (right.x, right.y), (below.x, below.y), opposite])))
}

/// Grids of two finders alone, where the third is hidden: seen straight on.
pub(crate) fn from_two(grey: &Grey<'_>, found: &[Finder]) -> Vec<Grid> {
    let mut shaped: Vec<(f32, Grid)> = Vec::new();
    for (nth, a) in found.iter().enumerate() {
        for b in &found[nth + 1..] {
            let module = (a.module + b.module) / 2.0;
            for (p, q) in [((a.x, a.y), (b.x, b.y)), ((b.x, b.y), (a.x, a.y))] {
                for grid in completed(p, q) {
                    let off = [grid.module() / module, a.module / b.module].map(|ratio| ratio.max(1.0 / ratio));
                    if off[0] < 1.6 && off[1] < 1.6 {
                        shaped.push((off[0] * off[1], grid));
                    }
                }
            }
        }
    }
    shaped.sort_by(|one, other| one.0.total_cmp(&other.0));
    let scored = shaped.into_iter().take(LOOKED_AT).map(|(_, grid)| (grid.rough_score(grey), grid));
    let mut grids: Vec<_> = scored.filter(|(score, _)| *score > PROMISING).collect();
    grids.sort_by(|one, other| other.0.total_cmp(&one.0));
    grids.into_iter().take(OF_TWO).map(|(_, grid)| grid).collect()
}

/// The squares that two finders may be of: the upper two, the left two, or those across from one another.
fn completed(p: (f32, f32), q: (f32, f32)) -> [Grid; 3] {
    let (dx, dy) = (q.0 - p.0, q.1 - p.1);
    let plus = |point: (f32, f32), x: f32, y: f32| (point.0 + x, point.1 + y);
    [
        Grid([p, q, plus(p, -dy, dx), plus(q, -dy, dx)]),
        Grid([p, plus(p, dy, -dx), q, plus(q, dy, -dx)]),
        Grid([plus(p, (dx + dy) / 2.0, (dy - dx) / 2.0), q, p, plus(p, (dx - dy) / 2.0, (dy + dx) / 2.0)]),
    ]
}
