/// A frame of luminance with the sums of all rectangles from its corner.
pub(crate) struct Grey<'a> {
    luma: &'a [u8],
    sums: Vec<u32>,
    pub(crate) width: usize,
    pub(crate) height: usize,
}

/// Half the side of the square whose mean a spot is held against: more than a finder's dark middle.
const AROUND: usize = 26;
/// The least and the most that a frame measures along a side.
const LEAST: usize = 40;
const MOST: usize = 4_000;

impl<'a> Grey<'a> {
    pub(crate) fn new(luma: &'a [u8], width: usize, height: usize) -> Option<Self> {
        let sides = [width, height].iter().all(|side| (LEAST..=MOST).contains(side));
        if !sides || luma.len() != width * height {
            return None;
        }
        let mut sums = vec![0_u32; (width + 1) * (height + 1)];
        for (y, row) in luma.chunks_exact(width).enumerate() {
            let (above, below) = sums.split_at_mut((y + 1) * (width + 1));
            let above = &above[y * (width + 1)..];
            let mut sum = 0;
            for ((value, above), below) in row.iter().zip(&above[1..]).zip(&mut below[1..]) {
                sum += u32::from(*value);
                *below = above + sum;
            }
        }
        Some(Self { luma, sums, width, height })
    }

    /// Whether each pixel of a row is darker than what lies around it.
    pub(crate) fn dark_row(&self, y: usize, dark: &mut Vec<bool>) {
        dark.clear();
        let wide = self.width + 1;
        let (top, bottom) = (y.saturating_sub(AROUND), (y + AROUND + 1).min(self.height));
        let (upper, lower) = (&self.sums[top * wide..][..wide], &self.sums[bottom * wide..][..wide]);
        let row = &self.luma[y * self.width..][..self.width];
        dark.extend(row.iter().enumerate().map(|(x, value)| {
            let (left, right) = (x.saturating_sub(AROUND), (x + AROUND + 1).min(self.width));
            let sum = lower[right].wrapping_sub(lower[left]).wrapping_sub(upper[right]).wrapping_add(upper[left]);
            u32::from(*value) * ((right - left) * (bottom - top)) as u32 * 16 < sum * 15
        }));
    }

    /// The same of one pixel.
    pub(crate) fn is_dark(&self, x: usize, y: usize) -> bool {
        let (left, right) = (x.saturating_sub(AROUND), (x + AROUND + 1).min(self.width));
        let (top, bottom) = (y.saturating_sub(AROUND), (y + AROUND + 1).min(self.height));
        let area = ((right - left) * (bottom - top)) as u32;
        // A little darker than the mean, so that plain ground is light.
        u32::from(self.luma[y * self.width + x]) * area * 16 < self.sum(left, top, right, bottom) * 15
    }

    fn sum(&self, left: usize, top: usize, right: usize, bottom: usize) -> u32 {
        let wide = self.width + 1;
        // Beyond 2³² the sums run over, and their differences back again.
        let [a, b, c, d] =
            [(right, bottom), (left, top), (right, top), (left, bottom)].map(|(x, y)| self.sums[y * wide + x]);
        a.wrapping_add(b).wrapping_sub(c).wrapping_sub(d)
    }

    /// Luminance between pixels; nothing outside the frame.
    pub(crate) fn at(&self, x: f32, y: f32) -> Option<f32> {
        let (x, y) = (x - 0.5, y - 0.5);
        if !(x >= 0.0 && y >= 0.0) {
            return None;
        }
        let (column, row) = (x as usize, y as usize);
        if column + 1 >= self.width || row + 1 >= self.height {
            return None;
        }
        let (dx, dy) = (x - column as f32, y - row as f32);
        let at = row * self.width + column;
        let [a, b, c, d] = [at, at + 1, at + self.width, at + self.width + 1].map(|at| f32::from(self.luma[at]));
        let (upper, lower) = (a + (b - a) * dx, c + (d - c) * dx);
        Some(upper + (lower - upper) * dy)
    }

    /// The mean of so many pixels around a spot, as far as they lie in the frame.
    pub(crate) fn mean(&self, x: f32, y: f32, reach: usize) -> f32 {
        let (column, row) = ((x as usize).min(self.width - 1), (y as usize).min(self.height - 1));
        let (left, right) = (column.saturating_sub(reach), (column + reach + 1).min(self.width));
        let (top, bottom) = (row.saturating_sub(reach), (row + reach + 1).min(self.height));
        self.sum(left, top, right, bottom) as f32 / ((right - left) * (bottom - top)) as f32
    }
}
