use super::expected::{direct, failing, renewals, stripping, tried};
use super::figures::{Figures, Terms};
use super::input::Setting;
use super::interest::worth_now;

/// Present values of the same quotes over and over while their figures are turned: what [`costs`](super::costs) answers, to
/// the last bit, without its lines, and without asking for memory anew each time.
#[derive(Debug, Clone)]
pub(super) struct Valuer {
    /// The quote that each one names to fall back on.
    named: Vec<Option<usize>>,
    /// What 1 is worth now at every end of a life, by quote.
    ends: Vec<Vec<f64>>,
    ratios: Vec<f64>,
    order: Vec<usize>,
    tried: Vec<bool>,
    chain: Vec<usize>,
}

impl Valuer {
    pub(super) fn new(setting: &Setting) -> Self {
        let quotes = &setting.quotes;
        let place = |quote: &Figures| quotes.iter().position(|other| Some(other.id) == quote.fallback);
        let mut valuer = Self {
            named: quotes.iter().map(place).collect(),
            ends: vec![Vec::new(); quotes.len()],
            ratios: vec![0.0; quotes.len()],
            order: (0..quotes.len()).collect(),
            tried: vec![false; quotes.len()],
            chain: Vec::with_capacity(quotes.len()),
        };
        (0..quotes.len()).for_each(|at| valuer.live(at, setting));
        valuer
    }

    /// To be called when the life of a quote, the rate of interest or the years were turned.
    pub(super) fn live(&mut self, at: usize, setting: &Setting) {
        self.ends[at].clear();
        let ends = renewals(&setting.quotes[at], &setting.terms).into_iter();
        self.ends[at].extend(ends.map(|years| worth_now(setting.terms.interest, years)));
    }

    /// What every quote is worth now.
    pub(super) fn presents(&mut self, setting: &Setting, into: &mut Vec<f64>) {
        let (quotes, terms) = (&setting.quotes, &setting.terms);
        if quotes.iter().any(|quote| quote.chance > 0.0) {
            self.arrange(quotes, terms);
        }
        into.clear();
        for (at, quote) in quotes.iter().enumerate() {
            let risk =
                if quote.chance > 0.0 { quote.chance * (failing(quote, terms) + self.then(at, setting)) } else { 0.0 };
            let expected = direct(quote, terms) + risk;
            let each = expected + stripping(quote, terms);
            let again: f64 = self.ends[at].iter().map(|worth| each * worth).sum();
            into.push(expected + again);
        }
    }

    /// The order of trying, as `order_of_trying` has it.
    fn arrange(&mut self, quotes: &[Figures], terms: &Terms) {
        for (ratio, quote) in self.ratios.iter_mut().zip(quotes) {
            let found = tried(quote, terms) / (1.0 - quote.chance);
            *ratio = if found.is_finite() && quote.chance < 1.0 { found } else { f64::INFINITY };
        }
        let ratios = &self.ratios;
        self.order.sort_unstable_by(|a, b| ratios[*a].total_cmp(&ratios[*b]).then(quotes[*a].id.cmp(&quotes[*b].id)));
    }

    /// What all that is turned to when a quote fails is expected to cost.
    fn then(&mut self, first: usize, setting: &Setting) -> f64 {
        let (quotes, terms) = (&setting.quotes, &setting.terms);
        self.tried.fill(false);
        self.tried[first] = true;
        self.chain.clear();
        let mut last = first;
        while last == first || quotes[last].chance > 0.0 {
            let is_open = |at: &usize| quotes[*at].allowed && !self.tried[*at];
            let named = self.named[last].filter(is_open);
            let Some(next) = named.or_else(|| self.order.iter().copied().find(is_open)) else { break };
            self.tried[next] = true;
            self.chain.push(next);
            last = next;
        }
        let after = self.chain.iter().rev().map(|at| &quotes[*at]);
        after.fold(0.0, |then, next| direct(next, terms) + next.chance * (failing(next, terms) + then))
    }
}
