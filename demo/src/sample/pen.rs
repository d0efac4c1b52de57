use super::outline::{Outline, Point};
use super::sheet::{HEIGHT, Sheet, Tone, WIDTH};

/// Draws on a sheet in units of the part: the middle is 0, one is what half the height of the picture shows.
pub(super) struct Pen<'a> {
    sheet: &'a mut Sheet,
    middle: Point,
    scale: f64,
    turn: f64,
}

/// How wide lines are, in pixels: the edge of a part, an edge within it, a fine one.
const EDGE: f64 = 6.5;
const WITHIN: f64 = 4.5;
const FINE: f64 = 3.0;

impl<'a> Pen<'a> {
    /// In the middle of the sheet.
    pub(super) const fn new(sheet: &'a mut Sheet) -> Self {
        Self { sheet, middle: (WIDTH as f64 / 2.0, HEIGHT as f64 / 2.0), scale: HEIGHT as f64 / 2.0, turn: 0.0 }
    }

    /// The same sheet, elsewhere, smaller or greater, turned by so many turns.
    pub(super) fn placed(&mut self, at: Point, size: f64, turn: f64) -> Pen<'_> {
        let middle = self.to_sheet(at);
        Pen { sheet: self.sheet, middle, scale: self.scale * size, turn: self.turn + turn }
    }

    /// Where a place lies, in pixels.
    pub(super) fn to_sheet(&self, (x, y): Point) -> Point {
        let angle = self.turn * std::f64::consts::TAU;
        let (sine, cosine) = (libm::sin(angle), libm::cos(angle));
        let (x, y) = (x * self.scale, y * self.scale);
        (self.middle.0 + x * cosine - y * sine, self.middle.1 + x * sine + y * cosine)
    }

    /// A surface without an edge.
    pub(super) fn fill(&mut self, outline: &Outline, tone: Tone) {
        let outline = outline.map(|point| self.to_sheet(point));
        self.sheet.fill(&outline, tone);
    }

    /// A surface in shade.
    pub(super) fn hatch(&mut self, outline: &Outline, tone: Tone) {
        let outline = outline.map(|point| self.to_sheet(point));
        self.sheet.hatch(&outline, tone, 10);
    }

    /// A surface with a strong edge around it.
    pub(super) fn body(&mut self, outline: &Outline, tone: Tone) {
        self.edged(outline, tone, EDGE);
    }

    /// A surface on a body.
    pub(super) fn face(&mut self, outline: &Outline, tone: Tone) {
        self.edged(outline, tone, WITHIN);
    }

    fn edged(&mut self, outline: &Outline, tone: Tone, width: f64) {
        self.fill(outline, tone);
        for line in &outline.map(|point| self.to_sheet(point)).0 {
            let closed: Vec<Point> = line.iter().chain(line.first()).copied().collect();
            self.sheet.line(&closed, width, Tone::Ink);
        }
    }

    /// A strong line.
    pub(super) fn edge(&mut self, points: &[Point]) {
        self.line(points, EDGE, Tone::Ink);
    }

    /// A line on a body.
    pub(super) fn within(&mut self, points: &[Point]) {
        self.line(points, WITHIN, Tone::Ink);
    }

    /// A fine line.
    pub(super) fn fine(&mut self, points: &[Point], tone: Tone) {
        self.line(points, FINE, tone);
    }

    /// A rod seen from the side: ink with a lighter core, so wide in units of the part.
    pub(super) fn rod(&mut self, points: &[Point], width: f64, tone: Tone) {
        let pixels = width * self.scale;
        self.line(points, pixels, Tone::Ink);
        self.line(points, (pixels - 2.0 * WITHIN).max(1.0), tone);
    }

    fn line(&mut self, points: &[Point], width: f64, tone: Tone) {
        let points: Vec<Point> = points.iter().map(|point| self.to_sheet(*point)).collect();
        self.sheet.line(&points, width, tone);
    }
}
