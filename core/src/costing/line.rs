//! Straight pieces: costs as one figure is turned, and where they cross.

use super::expected::{costs, tried};
use super::figures::Figures;
use super::input::{Dial, Input, Setting};
use crate::record::ordered_by;

/// Present values of all quotes while one figure is turned. Between two neighbouring bends each is a straight line in
/// money, hours, the value of an hour and chances: only the order of trying fallbacks bends it.
pub(super) struct Turning<'a> {
    setting: &'a Setting,
    dial: Dial,
}

impl<'a> Turning<'a> {
    /// Only for figures in which costs are straight.
    pub(super) const fn new(setting: &'a Setting, dial: Dial) -> Self {
        Self { setting, dial }
    }

    pub(super) const fn is_straight(input: Input) -> bool {
        !matches!(input, Input::Life | Input::Interest | Input::Years)
    }

    pub(super) fn presents(&self, at: f64) -> Vec<f64> {
        let setting = self.setting.turned(self.dial, at);
        costs(&setting.quotes, &setting.terms).iter().map(super::expected::Cost::present).collect()
    }

    /// Where the lines bend, sorted: where what others save by a kit no longer covers its bill, and where the order of trying
    /// changes. There the ratios of two quotes cross, which is where `cost_a × (1 − chance_b) − cost_b × (1 − chance_a)`,
    /// itself a straight line between the former, is nothing.
    fn bends(&self) -> Vec<f64> {
        let most = self.dial.input.most();
        let is_within = |bend: &f64| *bend > 0.0 && *bend < most;
        let covered = self.covered().filter(is_within);
        let mut bends: Vec<f64> = covered.into_iter().collect();
        let starts = std::iter::once(0.0).chain(covered);
        for (low, high) in starts.zip(covered.into_iter().chain([most])) {
            // Two places on the line, of the size of what is met there.
            let [one, other] = [0.25, 0.75].map(|share| low + (high - low).min(10_000.0) * share);
            let zeros = self.gaps(one).into_iter().zip(self.gaps(other));
            let zeros = zeros.filter_map(|(at_one, at_other)| zero(one, at_one, other, at_other));
            bends.extend(zeros.filter(|bend| *bend > low && *bend < high));
        }
        ordered_by(bends, f64::total_cmp)
    }

    /// Up to where, turning a price of a kit, all of its bill is saved by others.
    fn covered(&self) -> Option<f64> {
        let is_billed = matches!(self.dial.input, Input::Cash | Input::Freight | Input::Tax | Input::Duty);
        let quote = self.dialled().filter(|quote| is_billed && quote.shared > 0.0)?;
        Some(self.setting.read(self.dial)? + quote.shared - quote.bill())
    }

    fn dialled(&self) -> Option<&Figures> {
        self.setting.quotes.iter().find(|quote| Some(quote.id) == self.dial.quote)
    }

    fn gaps(&self, at: f64) -> Vec<f64> {
        let setting = self.setting.turned(self.dial, at);
        let open: Vec<_> = setting.quotes.iter().filter(|quote| quote.allowed).collect();
        let tried: Vec<f64> = open.iter().map(|quote| tried(quote, &setting.terms)).collect();
        let mut gaps = Vec::new();
        for a in 0..open.len() {
            for b in a + 1..open.len() {
                gaps.push(tried[a] * (1.0 - open[b].chance) - tried[b] * (1.0 - open[a].chance));
            }
        }
        gaps
    }

    /// The straight pieces from a value on, upwards or downwards; the last one upwards ends at the most.
    pub(super) fn pieces(&self, from: f64, up: bool) -> impl Iterator<Item = Piece> {
        let most = self.dial.input.most();
        let bends = self.bends();
        let mut ends: Vec<f64> = if up {
            bends.into_iter().filter(|bend| *bend > from).chain([most]).collect()
        } else {
            bends.into_iter().filter(|bend| *bend < from).rev().chain([0.0]).collect()
        };
        ends.dedup();
        let starts = std::iter::once(from).chain(ends.clone());
        starts.zip(ends).filter(|(start, end)| start != end).map(|(start, end)| self.piece(start, end))
    }

    fn piece(&self, start: f64, end: f64) -> Piece {
        let inside = |share: f64| start + (end - start) * share;
        let [one, other] = [0.25, 0.75].map(|share| (inside(share), self.presents(inside(share))));
        Piece { start, end, one, other }
    }

    /// Where two quotes are worth the same within a piece. Found from two places far apart, and again from two close by: over
    /// a long piece the difference of large amounts takes digits away.
    pub(super) fn crossing(&self, piece: &Piece, a: usize, b: usize) -> Option<f64> {
        let (low, high) = (piece.start.min(piece.end), piece.start.max(piece.end));
        let gap = |presents: &[f64]| presents[a] - presents[b];
        let rough = zero(piece.one.0, gap(&piece.one.1), piece.other.0, gap(&piece.other.1))?;
        let room = (high - low) * 1e-6;
        if rough < low - room || rough > high + room {
            return None;
        }
        let rough = rough.clamp(low, high);
        let span = (high - low).min(rough.abs().max(1.0));
        let beside = |at: f64| at.clamp(low + span * 1e-6, high - span * 1e-6);
        let (under, over) = (beside(rough - span * 0.5), beside(rough + span * 0.5));
        let found = zero(under, gap(&self.presents(under)), over, gap(&self.presents(over)))?;
        let slack = found.abs().max(1e-3) * 1e-9;
        (found >= low - slack && found <= high + slack).then(|| found.clamp(low, high))
    }
}

/// A stretch on which every present value is a straight line. It is looked at inside alone, since at the ends it may jump.
pub(super) struct Piece {
    pub(super) start: f64,
    end: f64,
    one: (f64, Vec<f64>),
    other: (f64, Vec<f64>),
}

/// Where a straight line through two points is nothing.
fn zero(at: f64, value: f64, other_at: f64, other_value: f64) -> Option<f64> {
    let fall = value - other_value;
    let zero = at + (other_at - at) * (value / fall);
    (fall != 0.0 && zero.is_finite()).then_some(zero)
}
