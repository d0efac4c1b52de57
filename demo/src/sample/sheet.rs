use std::collections::BTreeMap;
use std::ops::Range;

use anyhow::Context;

use super::outline::{Outline, Point};

/// Size of every picture.
pub(super) const WIDTH: usize = 800;
pub(super) const HEIGHT: usize = 600;

/// The colours of the app, on paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Tone {
    Paper,
    Sheet,
    Well,
    Hair,
    Line,
    Ink2,
    Ink,
    Buff,
}

impl Tone {
    const fn rgb(self) -> [u8; 3] {
        match self {
            Self::Paper => [0xf2, 0xf1, 0xea],
            Self::Sheet => [0xfb, 0xfa, 0xf6],
            Self::Well => [0xe5, 0xe3, 0xd9],
            Self::Hair => [0xc6, 0xc4, 0xb9],
            Self::Line => [0x6d, 0x73, 0x71],
            Self::Ink2 => [0x40, 0x47, 0x4a],
            Self::Ink => [0x14, 0x19, 0x1b],
            Self::Buff => [0xe6, 0xb3, 0x54],
        }
    }
}

/// What a picture is stored in: the tones, and steps between them where one meets ink. Sixteen, so that a pixel is half a byte.
const PALETTE: [[u8; 3]; 16] = [
    Tone::Paper.rgb(),
    Tone::Sheet.rgb(),
    Tone::Well.rgb(),
    Tone::Hair.rgb(),
    Tone::Line.rgb(),
    Tone::Ink2.rgb(),
    Tone::Ink.rgb(),
    Tone::Buff.rgb(),
    [0xd6, 0xd5, 0xcc],
    [0xab, 0xab, 0xa4],
    [0x8c, 0x8f, 0x8a],
    [0x57, 0x5d, 0x5d],
    [0x2a, 0x30, 0x32],
    [0xb0, 0x8c, 0x46],
    [0x7c, 0x66, 0x38],
    [0x48, 0x3f, 0x29],
];

/// A picture while it is drawn. All sums are of plain floating point, so that the same drawing has the same bytes everywhere.
pub(super) struct Sheet {
    pixels: Vec<[f64; 3]>,
}

impl Sheet {
    pub(super) fn new(ground: Tone) -> Self {
        Self { pixels: vec![ground.rgb().map(f64::from); WIDTH * HEIGHT] }
    }

    /// Fills an outline, with holes where it lies over itself.
    pub(super) fn fill(&mut self, outline: &Outline, tone: Tone) {
        self.cover(outline, tone, |_, _| true);
    }

    /// Fills an outline with lines at 45 degrees.
    pub(super) fn hatch(&mut self, outline: &Outline, tone: Tone, apart: usize) {
        self.cover(outline, tone, |x, y| (x + y) % apart < 3);
    }

    fn cover(&mut self, outline: &Outline, tone: Tone, is_inked: impl Fn(usize, usize) -> bool) {
        /// Rows looked at within one row of pixels.
        const ROWS: usize = 4;
        let Some((top, bottom)) = outline.rows(HEIGHT) else { return };
        for y in top..bottom {
            let mut covered = vec![0.0; WIDTH];
            for row in 0..ROWS {
                let height = y as f64 + (row as f64 + 0.5) / ROWS as f64;
                for pair in outline.crossings(height).chunks_exact(2) {
                    add_stretch(&mut covered, pair[0], pair[1], 1.0 / ROWS as f64);
                }
            }
            for (x, share) in covered.into_iter().enumerate().filter(|(x, share)| *share > 0.0 && is_inked(*x, y)) {
                self.blend(x, y, tone, share);
            }
        }
    }

    /// Draws a line with round ends through points.
    pub(super) fn line(&mut self, points: &[Point], width: f64, tone: Tone) {
        // How near each pixel lies to the line, looked at only around each stretch of it.
        let mut nearest = BTreeMap::new();
        let half = width / 2.0;
        for ends in points.windows(2) {
            let columns = reach(ends[0].0, ends[1].0, half, WIDTH);
            for y in reach(ends[0].1, ends[1].1, half, HEIGHT) {
                for x in columns.clone() {
                    let squared = squared_distance((x as f64 + 0.5, y as f64 + 0.5), ends);
                    let known = nearest.entry((y, x)).or_insert(squared);
                    *known = squared.min(*known);
                }
            }
        }
        for ((y, x), squared) in nearest {
            let share = (half - squared.sqrt() + 0.5).clamp(0.0, 1.0);
            if share > 0.0 {
                self.blend(x, y, tone, share);
            }
        }
    }

    fn blend(&mut self, x: usize, y: usize, tone: Tone, share: f64) {
        let pixel = &mut self.pixels[y * WIDTH + x];
        for (now, then) in pixel.iter_mut().zip(tone.rgb()) {
            *now += (f64::from(then) - *now) * share.min(1.0);
        }
    }

    /// The picture as PNG, sixteen colours, nothing beside them.
    pub(super) fn png(&self) -> anyhow::Result<Vec<u8>> {
        let mut bytes = Vec::new();
        let mut encoder = png::Encoder::new(&mut bytes, WIDTH as u32, HEIGHT as u32);
        encoder.set_color(png::ColorType::Indexed);
        encoder.set_depth(png::BitDepth::Four);
        encoder.set_palette(PALETTE.as_flattened());
        encoder.set_compression(png::Compression::High);
        // Few colours pack best as they are.
        encoder.set_filter(png::Filter::NoFilter);
        // Most pixels are as the one before.
        let mut last = ([f64::NAN; 3], 0);
        let mut index = |pixel: [f64; 3]| {
            if last.0 != pixel {
                last = (pixel, nearest(pixel));
            }
            last.1
        };
        let packed: Vec<u8> = self.pixels.chunks_exact(2).map(|two| index(two[0]) << 4 | index(two[1])).collect();
        let mut writer = encoder.write_header().context("beginning a picture")?;
        writer.write_image_data(&packed).context("writing a picture")?;
        writer.finish().context("ending a picture")?;
        Ok(bytes)
    }
}

/// Adds a stretch of a row to how far its pixels are covered.
fn add_stretch(covered: &mut [f64], from: f64, to: f64, weight: f64) {
    let (from, to) = (from.max(0.0), to.min(covered.len() as f64));
    if from >= to {
        return;
    }
    for (x, share) in covered.iter_mut().enumerate().take(to.ceil() as usize).skip(from as usize) {
        let inside = to.min(x as f64 + 1.0) - from.max(x as f64);
        *share += inside.max(0.0) * weight;
    }
}

/// Pixels of a row or column that a stretch of a line may touch.
fn reach(from: f64, to: f64, half: f64, most: usize) -> Range<usize> {
    let whole = |at: f64| at.clamp(0.0, most as f64) as usize;
    whole(from.min(to) - half - 1.0)..whole(from.max(to) + half + 2.0)
}

fn squared_distance(from: Point, ends: &[Point]) -> f64 {
    let (a, b) = (ends[0], ends[1]);
    let (along, across) = ((b.0 - a.0, b.1 - a.1), (from.0 - a.0, from.1 - a.1));
    let length = along.0 * along.0 + along.1 * along.1;
    let at = if length > 0.0 { ((across.0 * along.0 + across.1 * along.1) / length).clamp(0.0, 1.0) } else { 0.0 };
    let (x, y) = (across.0 - along.0 * at, across.1 - along.1 * at);
    x * x + y * y
}

fn nearest(pixel: [f64; 3]) -> u8 {
    let far = |colour: &[u8; 3]| -> f64 {
        colour.iter().zip(pixel).map(|(one, other)| (f64::from(*one) - other) * (f64::from(*one) - other)).sum()
    };
    let found = (0_u8..).zip(&PALETTE).min_by(|(_, one), (_, other)| far(one).total_cmp(&far(other)));
    found.map_or(0, |(index, _)| index)
}
