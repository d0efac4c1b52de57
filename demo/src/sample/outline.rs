/// A place on a drawing: to the right, down.
pub(super) type Point = (f64, f64);

/// One or more closed lines. Where they lie over one another there is a hole.
#[derive(Debug, Clone, Default)]
pub(super) struct Outline(pub(super) Vec<Vec<Point>>);

impl Outline {
    pub(super) fn polygon(points: &[Point]) -> Self {
        Self(vec![points.to_vec()])
    }

    pub(super) fn rectangle(left: f64, top: f64, right: f64, bottom: f64) -> Self {
        Self::polygon(&[(left, top), (right, top), (right, bottom), (left, bottom)])
    }

    pub(super) fn circle(middle: Point, radius: f64) -> Self {
        Self::ellipse(middle, radius, radius)
    }

    pub(super) fn ellipse(middle: Point, across: f64, down: f64) -> Self {
        Self(vec![arc(middle, (across, down), 0.0, 1.0)])
    }

    pub(super) fn ring(middle: Point, outer: f64, inner: f64) -> Self {
        Self::circle(middle, outer).and(Self::circle(middle, inner))
    }

    /// Part of a ring, between two turns: 0 points right, a quarter down.
    pub(super) fn sector(middle: Point, outer: f64, inner: f64, from: f64, to: f64) -> Self {
        let mut points = arc(middle, (outer, outer), from, to);
        points.extend(arc(middle, (inner, inner), to, from));
        Self(vec![points])
    }

    /// A wheel with teeth.
    pub(super) fn toothed(middle: Point, outer: f64, inner: f64, teeth: usize) -> Self {
        let step = 1.0 / teeth as f64;
        let tooth = |index: usize| {
            let turn = index as f64 * step;
            [(0.0, inner), (0.2, outer), (0.5, outer), (0.7, inner)]
                .map(|(at, radius)| around(middle, radius, turn + at * step))
        };
        Self(vec![(0..teeth).flat_map(tooth).collect()])
    }

    /// The same with another cut out of it or beside it.
    pub(super) fn and(mut self, other: Self) -> Self {
        self.0.extend(other.0);
        self
    }

    pub(super) fn map(&self, to: impl Fn(Point) -> Point) -> Self {
        Self(self.0.iter().map(|line| line.iter().map(|point| to(*point)).collect()).collect())
    }

    /// The rows that it touches, of so many.
    pub(super) fn rows(&self, most: usize) -> Option<(usize, usize)> {
        let heights = || self.0.iter().flatten().map(|point| point.1);
        let (top, bottom) = (heights().fold(f64::INFINITY, f64::min), heights().fold(f64::NEG_INFINITY, f64::max));
        let whole = |height: f64| height.clamp(0.0, most as f64);
        (top < bottom).then(|| (whole(top.floor()) as usize, whole(bottom.ceil()) as usize))
    }

    /// Where its lines cross a height, from left to right.
    pub(super) fn crossings(&self, height: f64) -> Vec<f64> {
        let sides = self.0.iter().flat_map(|line| line.iter().zip(line.iter().cycle().skip(1)).take(line.len()));
        let crossed = sides.filter(|(from, to)| (from.1 <= height) != (to.1 <= height));
        let mut found: Vec<f64> =
            crossed.map(|(from, to)| from.0 + (to.0 - from.0) * (height - from.1) / (to.1 - from.1)).collect();
        found.sort_by(f64::total_cmp);
        found
    }
}

/// A place on a circle.
pub(super) fn around(middle: Point, radius: f64, turn: f64) -> Point {
    let angle = turn * std::f64::consts::TAU;
    (middle.0 + radius * libm::cos(angle), middle.1 + radius * libm::sin(angle))
}

/// Places along an ellipse.
pub(super) fn arc(middle: Point, radii: (f64, f64), from: f64, to: f64) -> Vec<Point> {
    let steps = 6 + (90.0 * (to - from).abs()) as usize;
    let at = |step: usize| from + (to - from) * step as f64 / steps as f64;
    let place = |turn: f64| {
        let (x, y) = around((0.0, 0.0), 1.0, turn);
        (middle.0 + x * radii.0, middle.1 + y * radii.1)
    };
    (0..=steps).map(|step| place(at(step))).collect()
}
