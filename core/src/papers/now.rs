use super::figures;
use super::list::rounded;
use super::words::PaperWords;
use crate::costing::{PRICES, decided_now, in_job_currency};
use crate::job::Job;
use crate::quantity::{Currency, Day, ExchangeRate, Minutes, Money};
use crate::record::{FieldName, Id};

const COUNT: usize = PRICES.len();
const SURCHARGE: usize = COUNT - 1;

/// The chosen quote of a part as it stands now, in the job's currency: what the totals of the job count.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Now {
    /// The quote.
    pub quote: Id,
    /// Supplier or specialist.
    pub from: String,
    /// What was remarked on the quote.
    pub remark: String,
    /// Its prices.
    pub prices: Prices,
    /// Prices in another currency as entered, with what they are.
    pub as_entered: Vec<(FieldName, Money)>,
    /// The rate at which they count.
    pub rate: Option<ExchangeRate>,
    /// Own hours.
    pub own_time: Minutes,
    /// Worth over the years, rounded to the minor unit.
    pub present: Money,
    /// The same each year, rounded to the minor unit.
    pub yearly: Money,
    /// The share that rests on guesses, in whole parts of a hundred.
    pub guessed: i64,
    /// The last day on which it holds.
    pub valid_until: Option<Day>,
    /// How long one waits, in days.
    pub wait: Option<i64>,
}

/// Prices in minor units of one currency, exact.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Prices {
    /// Which currency.
    pub currency: Currency,
    /// Price, freight, tax, duty, consumables, surcharge; nothing where it was not said, or cannot be exchanged.
    each: [Option<i64>; COUNT],
}

impl Prices {
    /// None at all.
    pub(super) const fn none(currency: Currency) -> Self {
        Self { currency, each: [None; COUNT] }
    }

    /// All that is paid and does not come back.
    #[must_use]
    pub fn kept(&self) -> Money {
        self.sum(&self.each[..SURCHARGE])
    }

    /// All that is paid at first.
    #[must_use]
    pub fn peak(&self) -> Money {
        self.sum(&self.each)
    }

    fn sum(&self, each: &[Option<i64>]) -> Money {
        Money::from_minor(each.iter().flatten().copied().fold(0, i64::saturating_add), self.currency)
    }

    /// Adds those of another quote.
    pub(super) fn add(&mut self, other: &Self) {
        for (sum, more) in self.each.iter_mut().zip(other.each) {
            if let Some(more) = more {
                *sum = Some(sum.unwrap_or(0).saturating_add(more));
            }
        }
    }

    /// Cells: price, freight, tax, duty, consumables, all of them, surcharge, paid at first, currency.
    pub(super) fn cells(&self) -> [String; 9] {
        let cell = |at: usize| self.each[at].map(|minor| figures::decimal(minor, self.currency)).unwrap_or_default();
        let [price, freight, tax, duty, consumables, surcharge] = std::array::from_fn(cell);
        let (kept, peak) = (figures::money(self.kept()), figures::money(self.peak()));
        [price, freight, tax, duty, consumables, kept, surcharge, peak, self.currency.to_string()]
    }

    /// Heads of these cells.
    pub(super) fn heads(words: &PaperWords) -> [&String; 9] {
        let columns = &words.columns;
        [
            &columns.price_now,
            &columns.freight_now,
            &columns.tax_now,
            &columns.duty_now,
            &columns.consumables_now,
            &columns.prices_now,
            &columns.surcharge_now,
            &columns.paid_at_first,
            &columns.currency_now,
        ]
    }

    /// Each price that was said, in words, where there is more than one.
    pub(super) fn told(&self, words: &PaperWords) -> String {
        if self.each.iter().flatten().count() < 2 {
            return String::new();
        }
        let names = PRICES.map(|field| price_word(words, field));
        let each = names.into_iter().zip(self.each);
        let told =
            each.filter_map(|(name, minor)| Some(format!("{name}\u{a0}{}", figures::decimal(minor?, self.currency))));
        told.collect::<Vec<_>>().join(" · ")
    }
}

impl Now {
    /// The quote that counts for a decided part; nothing when it is not decided or has none.
    pub(super) fn of(job: &Job, part: Id, today: Option<Day>) -> Option<Self> {
        let cost = decided_now(job, part, today)?;
        let item = job.item(cost.id)?;
        let currency = job.settings().currency;
        let entered = PRICES.map(|field| item.read::<Money>(field));
        let foreign = PRICES.into_iter().zip(entered).filter_map(|(field, money)| Some((field, money?)));
        Some(Self {
            quote: cost.id,
            from: item.read(FieldName::From).unwrap_or_default(),
            remark: item.read(FieldName::Remark).unwrap_or_default(),
            prices: Prices { currency, each: entered.map(|money| in_job_currency(job, item, money?)) },
            as_entered: foreign.filter(|(_, money)| money.currency != currency).collect(),
            rate: item.read(FieldName::ExchangeRate),
            own_time: cost.own_time,
            present: rounded(cost.present.minor, currency),
            yearly: rounded(cost.yearly.minor, currency),
            guessed: rounded(cost.guessed * 100.0, currency).minor,
            valid_until: item.read(FieldName::ValidUntil),
            wait: item.read(FieldName::Wait),
        })
    }

    /// Prices in another currency as entered, and the rate; empty when there are none.
    pub(super) fn entered(&self, words: &PaperWords) -> String {
        if self.as_entered.is_empty() {
            return String::new();
        }
        let each = self.as_entered.iter().map(|(field, money)| {
            format!("{} {}\u{a0}{}", price_word(words, *field), figures::money(*money), money.currency)
        });
        let rate = self.rate.map(|rate| format!("{} {}", words.page.rate, figures::rate(rate)));
        each.chain(rate).collect::<Vec<_>>().join("; ")
    }
}

fn price_word(words: &PaperWords, field: FieldName) -> &str {
    let prices = &words.prices;
    match field {
        FieldName::Freight => &prices.freight,
        FieldName::Tax => &prices.tax,
        FieldName::Duty => &prices.duty,
        FieldName::Consumables => &prices.consumables,
        FieldName::Surcharge => &prices.surcharge,
        _ => &prices.price,
    }
}
