use std::collections::BTreeMap;

use super::now::{Now, Prices};
use crate::job::vocabulary::{Route, Side, Standing};
use crate::job::{Job, NoteView, PartView, PartsGroup, PartsQuery, PhotoView, Values};
use crate::quantity::{Currency, Day, Mass, Minutes, Money};
use crate::record::{FieldName, Hash, Id};
use crate::tables::hazards::Hazard;

/// The rows and sums of a parts list: what every paper of it shows, so that papers agree.
#[derive(Debug, Clone, PartialEq)]
pub struct PartsList {
    /// Groups in order; each begins at a row.
    pub groups: Vec<PartsGroup>,
    /// All rows that match, whatever stretch of them the question asked for.
    pub rows: Vec<Row>,
    /// Sums over the rows.
    pub totals: Totals,
}

/// One part.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Row {
    /// Its id.
    pub id: Id,
    /// Its tag.
    pub tag: Option<i64>,
    /// Its name; empty when nobody gave one.
    pub name: String,
    /// How many pieces.
    pub quantity: i64,
    /// The assembly it came from; empty when there is none.
    pub assembly: String,
    /// Left or right.
    pub side: Option<Side>,
    /// Where it lies, from the outermost place.
    pub place: Vec<String>,
    /// Where it stands.
    pub standing: Standing,
    /// It is out on loan.
    pub lent: bool,
    /// There is no other.
    pub irreplaceable: bool,
    /// The decision that holds.
    pub decision: Option<Decision>,
    /// The chosen quote as it stands now.
    pub now: Option<Now>,
    /// The part in the list beside which its kit stands and counts; nothing when it counts here.
    pub with: Option<String>,
    /// The maker's part number.
    pub makers_number: String,
    /// The number cast or stamped in.
    pub casting_number: String,
    /// What it is made of.
    pub material: String,
    /// How heavy it is.
    pub mass: Option<Mass>,
    /// Its marks.
    pub marks: Vec<Mark>,
    /// Remark, what was tried, notes in order of time.
    pub notes: Vec<String>,
    /// Its photos in order, by hash, with their media types.
    pub photos: Vec<(Hash, String)>,
    /// What can hurt whoever gets it to work on; filled where it is sent out.
    pub cautions: Vec<Hazard>,
}

impl Row {
    /// The chosen quote as it stands now, where it counts: not in the row of a part that goes along in a kit.
    #[must_use]
    pub fn counted(&self) -> Option<&Now> {
        self.now.as_ref().filter(|_| self.with.is_none())
    }
}

/// The figures at which a route was chosen.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Decision {
    /// The quote.
    pub quote: Option<Id>,
    /// The route.
    pub route: Option<Route>,
    /// Supplier or specialist.
    pub from: String,
    /// Cash.
    pub cash: Option<Money>,
    /// Own hours.
    pub own_time: Minutes,
    /// Expected cost, rounded to the minor unit, halves away from zero.
    pub expected: Option<Money>,
}

/// What sets a part apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mark {
    /// Renewed whatever it looks like.
    SingleUse,
    /// No replacement is to be had.
    CannotBeBought,
    /// It was not there when the work began.
    MissingFromStart,
    /// A former owner fitted a wrong piece.
    WrongPiece,
    /// It will not come off.
    Stuck,
    /// Struck out.
    StruckOut,
}

/// Exact sums: of the figures that stand in the rows, so that adding up a column gives what stands below it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Totals {
    /// Cash and expected cost, in minor units, by currency.
    pub money: BTreeMap<Currency, Sum>,
    /// Own hours.
    pub own_time: Minutes,
    /// Chosen quotes as they stand now.
    pub now: NowSums,
}

/// Sums of chosen quotes as they stand now, in the job's currency.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NowSums {
    /// Prices, exact.
    pub prices: Prices,
    /// Own hours.
    pub own_time: Minutes,
    /// Worth now: the figures in the rows, each rounded by itself.
    pub present: Money,
    /// Each year: the figures in the rows, each rounded by itself.
    pub yearly: Money,
}

/// Sums in one currency, in minor units.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Sum {
    /// Cash.
    pub cash: Option<i64>,
    /// Expected cost.
    pub expected: Option<i64>,
}

impl PartsList {
    /// The parts that a question is about; quotes that were valid until before `today` have run out.
    #[must_use]
    pub fn of(job: &Job, query: &PartsQuery, today: Option<Day>) -> Self {
        let view = job.parts_view(&PartsQuery { from: 0, count: None, ..query.clone() });
        let mut rows: Vec<Row> =
            view.rows.iter().filter_map(|line| Some(row(job, job.part_view(line.id)?, today))).collect();
        count_once(&mut rows);
        Self { groups: view.groups, totals: Totals::of(&rows, job.settings().currency), rows }
    }
}

/// A kit that was chosen for several parts is paid for once: its figures stay beside the first of them.
fn count_once(rows: &mut [Row]) {
    let mut first: BTreeMap<Id, String> = BTreeMap::new();
    for row in rows {
        let Some(quote) = row.decision.as_ref().and_then(|decision| decision.quote) else { continue };
        row.with = first.get(&quote).cloned();
        if row.with.is_none() {
            first.insert(quote, row.tag.map_or_else(|| row.name.clone(), crate::job::tag_text));
            continue;
        }
        if let Some(decision) = &mut row.decision {
            decision.cash = None;
            decision.own_time = Minutes::default();
        }
        if let Some(now) = &mut row.now {
            now.prices = Prices::none(now.prices.currency);
            now.own_time = Minutes::default();
            (now.present.minor, now.yearly.minor) = (0, 0);
            now.as_entered.clear();
        }
    }
}

impl NowSums {
    /// Nothing yet.
    pub(super) fn none(currency: Currency) -> Self {
        let nothing = Money::from_minor(0, currency);
        Self { prices: Prices::none(currency), own_time: Minutes::default(), present: nothing, yearly: nothing }
    }

    pub(super) fn add(&mut self, now: &Now) {
        self.prices.add(&now.prices);
        self.own_time.0 = self.own_time.0.saturating_add(now.own_time.0);
        self.present.minor = self.present.minor.saturating_add(now.present.minor);
        self.yearly.minor = self.yearly.minor.saturating_add(now.yearly.minor);
    }
}

impl Totals {
    fn of(rows: &[Row], currency: Currency) -> Self {
        let now = NowSums::none(currency);
        let mut totals = Self { money: BTreeMap::new(), own_time: Minutes::default(), now };
        for now in rows.iter().filter_map(|row| row.now.as_ref()) {
            totals.now.add(now);
            totals.money.entry(currency).or_default();
        }
        for decision in rows.iter().filter_map(|row| row.decision.as_ref()) {
            totals.own_time = Minutes::new(totals.own_time.0.saturating_add(decision.own_time.0));
            if let Some(cash) = decision.cash {
                add(&mut totals.money.entry(cash.currency).or_default().cash, cash.minor);
            }
            if let Some(expected) = decision.expected {
                add(&mut totals.money.entry(expected.currency).or_default().expected, expected.minor);
            }
        }
        totals
    }
}

fn add(sum: &mut Option<i64>, minor: i64) {
    *sum = Some(sum.unwrap_or(0).saturating_add(minor));
}

fn row(job: &Job, part: PartView, today: Option<Day>) -> Row {
    let values = &part.record.values;
    let text = |text: &Option<String>| text.clone().unwrap_or_default();
    Row {
        id: part.line.id,
        tag: part.line.tag,
        quantity: part.line.quantity,
        side: part.line.side,
        standing: part.line.standing,
        lent: part.line.lent,
        irreplaceable: part.line.irreplaceable,
        decision: decision(job, part.line.id, today),
        now: Now::of(job, part.line.id, today),
        with: None,
        makers_number: text(&values.makers_number),
        casting_number: text(&values.casting_number),
        material: text(&values.material),
        mass: values.mass,
        marks: marks(values, part.line.struck),
        notes: notes(values, &part.notes),
        photos: photos(&part.photos),
        cautions: Vec::new(),
        name: part.line.name,
        assembly: part.line.assembly_name,
        place: part.line.place,
    }
}

fn decision(job: &Job, part: Id, today: Option<Day>) -> Option<Decision> {
    let Some(choice) = job.choice_of(part).and_then(|choice| job.item(choice)) else {
        return unasked(job, part, today);
    };
    let cash: Option<Money> = choice.read(FieldName::Cash);
    let hour_value: Option<Money> = choice.read(FieldName::HourValueThen);
    let currency = hour_value.or(cash).map_or_else(|| job.settings().currency, |money| money.currency);
    let expected: Option<f64> = choice.read(FieldName::ExpectedThen);
    Some(Decision {
        quote: choice.read(FieldName::Quote),
        route: choice.read(FieldName::Route),
        from: choice.read(FieldName::From).unwrap_or_default(),
        cash,
        own_time: choice.read(FieldName::OwnTime).unwrap_or_default(),
        expected: expected.filter(|minor| minor.is_finite()).map(|minor| rounded(minor, currency)),
    })
}

/// A part that is decided although nobody chose: it says its route, and its quote where there is one; no figures of a day.
fn unasked(job: &Job, part: Id, today: Option<Day>) -> Option<Decision> {
    let route = job.route_of(part)?;
    let now = crate::costing::decided_now(job, part, today);
    Some(Decision {
        quote: now.as_ref().map(|now| now.id),
        route: Some(now.as_ref().map_or(route, |now| now.route)),
        from: now.and_then(|now| now.from).unwrap_or_default(),
        cash: None,
        own_time: Minutes::default(),
        expected: None,
    })
}

/// To the minor unit, halves away from zero.
#[expect(clippy::cast_possible_truncation, reason = "a cast keeps within 64 bits")]
pub(super) fn rounded(minor: f64, currency: Currency) -> Money {
    Money::from_minor(libm::round(minor) as i64, currency)
}

fn marks(values: &Values, struck: bool) -> Vec<Mark> {
    let marks = [
        (Mark::SingleUse, values.single_use),
        (Mark::CannotBeBought, values.cannot_be_bought),
        (Mark::MissingFromStart, values.missing_from_start),
        (Mark::WrongPiece, values.wrong_piece),
        (Mark::Stuck, values.stuck),
        (Mark::StruckOut, Some(struck)),
    ];
    marks.into_iter().filter(|(_, set)| *set == Some(true)).map(|(mark, _)| mark).collect()
}

fn notes(values: &Values, notes: &[NoteView]) -> Vec<String> {
    let own = [values.remark.clone(), values.tried.clone()].into_iter();
    let written = notes.iter().map(|note| note.record.values.text.clone());
    own.chain(written).flatten().filter(|text| !text.trim().is_empty()).collect()
}

fn photos(photos: &[PhotoView]) -> Vec<(Hash, String)> {
    let standing = photos.iter().filter(|photo| !photo.record.struck).map(|photo| &photo.record.values);
    standing.filter_map(|values| Some((values.blob?, values.media_type.clone().unwrap_or_default()))).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_expected_cost_is_rounded_once_and_away_from_zero() {
        assert_eq!(rounded(9200.5, Currency::GBP).minor, 9201);
        assert_eq!(rounded(9200.49, Currency::GBP).minor, 9200);
        assert_eq!(rounded(-0.5, Currency::GBP).minor, -1);
        assert_eq!(rounded(f64::MAX, Currency::GBP).minor, i64::MAX);
    }
}
