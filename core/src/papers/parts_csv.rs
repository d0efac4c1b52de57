//! The parts list as a table for a spreadsheet: RFC 4180, UTF-8.
//!
//! A byte order mark stands first: without it, the spreadsheet most people have takes UTF-8 for an old code page and shows
//! `½` and `Ø` as two wrong letters. Readers that know CSV skip it.
//!
//! A cell that a spreadsheet would run as a formula gets a no-break space in front. It looks the same, it is text to every
//! spreadsheet (a no-break space is no blank that they skip), and trimming the cell gives back what was entered. An
//! apostrophe, the usual remedy, is shown in cells that came from a file. [`as_entered`] undoes it exactly.

use super::job_file::blob_path;
use super::list::{NowSums, PartsList, Row, Sum};
use super::now::Prices;
use super::words::PaperWords;
use super::{figures, list};
use crate::job::vocabulary::Units;
use crate::job::{Job, PartsQuery};
use crate::quantity::{Currency, Day, Money};

pub(super) const BYTE_ORDER_MARK: char = '\u{feff}';
const NO_BREAK_SPACE: char = '\u{a0}';

/// The parts that a question is about, as CSV, with a row of sums for each currency at the end. `today` says which quotes have
/// run out, as in the totals of the job.
///
/// ```
/// use asfound_core::{job::{Job, PartsQuery}, papers::{PaperWords, parts_csv}};
/// let csv = parts_csv(&Job::new(), &PartsQuery::default(), None, &PaperWords::default());
/// assert!(csv.starts_with("\u{feff}tag,name,quantity,"));
/// ```
#[must_use]
pub fn parts_csv(job: &Job, query: &PartsQuery, today: Option<Day>, words: &PaperWords) -> String {
    let list = PartsList::of(job, query, today);
    let units = job.settings().units;
    let mut csv = String::from(BYTE_ORDER_MARK);
    write_row(&mut csv, &heads(words, units));
    for row in &list.rows {
        write_row(&mut csv, &cells(row, words, units));
    }
    for sums in sums(&list.totals, words) {
        write_row(&mut csv, &sums);
    }
    csv
}

/// How many columns there are.
const COLUMNS: usize = 38;
const CASH: usize = 9;
/// Where the figures of the quote as it stands now begin.
const NOW: usize = 15;

fn heads(words: &PaperWords, units: Units) -> [String; COLUMNS] {
    let columns = &words.columns;
    let mass = if units == Units::Metric { &columns.kilograms } else { &columns.pounds };
    let [price, freight, tax, duty, consumables, prices, surcharge, peak, currency] = Prices::heads(words);
    let heads = [
        &columns.tag,
        &columns.name,
        &columns.quantity,
        &columns.assembly,
        &columns.side,
        &columns.place,
        &columns.standing,
        &columns.route,
        &columns.from,
        &columns.cash,
        &columns.currency,
        &columns.own_hours,
        &columns.expected_cost,
        &columns.with,
        &columns.as_entered,
        price,
        freight,
        tax,
        duty,
        consumables,
        prices,
        surcharge,
        peak,
        currency,
        &columns.own_hours_now,
        &columns.worth_now,
        &columns.each_year,
        &columns.guessed,
        &columns.valid_until,
        &columns.wait,
        &columns.makers_number,
        &columns.casting_number,
        &columns.material,
        mass,
        &columns.marks,
        &columns.notes,
        &columns.photos,
        &columns.photo_files,
    ];
    heads.map(|head| harmless(head))
}

fn cells(row: &Row, words: &PaperWords, units: Units) -> [String; COLUMNS] {
    let decision = row.decision.as_ref();
    let now = row.now.as_ref();
    let counted = row.counted();
    let prices = counted.map(|now| now.prices.cells()).unwrap_or_default();
    let [price, freight, tax, duty, consumables, all, surcharge, peak, currency_now] = prices;
    let photo_files: Vec<String> = row.photos.iter().map(|(hash, media_type)| blob_path(*hash, media_type)).collect();
    [
        row.tag.map(|tag| tag.to_string()).unwrap_or_default(),
        harmless(&row.name),
        row.quantity.to_string(),
        harmless(&row.assembly),
        row.side.map(|side| words.side(side).to_owned()).unwrap_or_default(),
        harmless(&row.place.join(" > ")),
        words.stands(row.standing, row.lent).to_owned(),
        decision.and_then(|decision| decision.route).map(|route| words.route(route).to_owned()).unwrap_or_default(),
        decision.map(|decision| harmless(&decision.from)).unwrap_or_default(),
        decision.and_then(|decision| decision.cash).map(figures::money).unwrap_or_default(),
        decision.and_then(currency).map(|currency| currency.to_string()).unwrap_or_default(),
        decision.filter(|_| row.with.is_none()).map(|decision| figures::hours(decision.own_time)).unwrap_or_default(),
        decision.map(expected).unwrap_or_default(),
        row.with.as_ref().map(|with| harmless(with)).unwrap_or_default(),
        now.map(|now| now.entered(words)).unwrap_or_default(),
        price,
        freight,
        tax,
        duty,
        consumables,
        all,
        surcharge,
        peak,
        currency_now,
        counted.map(|now| figures::hours(now.own_time)).unwrap_or_default(),
        counted.map(|now| figures::money(now.present)).unwrap_or_default(),
        counted.map(|now| figures::money(now.yearly)).unwrap_or_default(),
        counted.map(|now| now.guessed.to_string()).unwrap_or_default(),
        now.and_then(|now| now.valid_until).map(|day| day.to_string()).unwrap_or_default(),
        now.and_then(|now| now.wait).map(|days| days.to_string()).unwrap_or_default(),
        harmless(&row.makers_number),
        harmless(&row.casting_number),
        harmless(&row.material),
        row.mass.map(|mass| figures::mass(mass, units)).unwrap_or_default(),
        words.marks(&row.marks),
        harmless(&row.notes.join("\n")),
        row.photos.len().to_string(),
        photo_files.join(" "),
    ]
}

/// The currency of a row: that of the cash, else of the expected cost.
fn currency(decision: &list::Decision) -> Option<Currency> {
    decision.cash.or(decision.expected).map(|money| money.currency)
}

/// The expected cost; with its own currency where that differs from the row's, as after a change of the job's currency.
fn expected(decision: &list::Decision) -> String {
    match decision.expected {
        Some(expected) if currency(decision) == Some(expected.currency) => figures::money(expected),
        Some(expected) => format!("{} {}", figures::money(expected), expected.currency),
        None => String::new(),
    }
}

fn sums(totals: &list::Totals, words: &PaperWords) -> Vec<[String; COLUMNS]> {
    let mut rows: Vec<[String; COLUMNS]> = totals
        .money
        .iter()
        .map(|(currency, sum)| {
            let mut row = sum_row(*currency, *sum, words);
            if *currency == totals.now.prices.currency {
                row[NOW..NOW + 12].clone_from_slice(&now_sums(&totals.now));
            }
            row
        })
        .collect();
    if rows.is_empty() {
        rows.push(named(words));
    }
    // Hours have no currency: they stand once, in the first row of sums.
    rows[0][CASH + 2] = figures::hours(totals.own_time);
    rows
}

fn sum_row(currency: Currency, sum: Sum, words: &PaperWords) -> [String; COLUMNS] {
    let money =
        |minor: Option<i64>| minor.map(|minor| figures::money(Money::from_minor(minor, currency))).unwrap_or_default();
    let mut row = named(words);
    row[CASH] = money(sum.cash);
    row[CASH + 1] = currency.to_string();
    row[CASH + 3] = money(sum.expected);
    row
}

/// Prices, hours, worth now and each year.
fn now_sums(sums: &NowSums) -> [String; 12] {
    let [price, freight, tax, duty, consumables, all, surcharge, peak, currency] = sums.prices.cells();
    let (hours, worth, yearly) =
        (figures::hours(sums.own_time), figures::money(sums.present), figures::money(sums.yearly));
    [price, freight, tax, duty, consumables, all, surcharge, peak, currency, hours, worth, yearly]
}

fn named(words: &PaperWords) -> [String; COLUMNS] {
    let mut row: [String; COLUMNS] = std::array::from_fn(|_| String::new());
    row[0] = harmless(&words.columns.sum);
    row
}

pub(super) fn write_row(csv: &mut String, cells: &[String]) {
    for (index, cell) in cells.iter().enumerate() {
        if index > 0 {
            csv.push(',');
        }
        write_cell(csv, cell);
    }
    csv.push_str("\r\n");
}

fn write_cell(csv: &mut String, cell: &str) {
    let edges = cell.starts_with(char::is_whitespace) || cell.ends_with(char::is_whitespace);
    if !edges && !cell.contains(['"', ',', ';', '\r', '\n', '\t']) {
        return csv.push_str(cell);
    }
    csv.push('"');
    csv.push_str(&cell.replace('"', "\"\""));
    csv.push('"');
}

/// The text, with a no-break space in front if a spreadsheet would run it.
///
/// ```
/// use asfound_core::papers::{as_entered, harmless};
/// assert_eq!(harmless("=1+1"), "\u{a0}=1+1");
/// assert_eq!(harmless("Hub"), "Hub");
/// assert_eq!(as_entered(&harmless("=1+1")), "=1+1");
/// ```
#[must_use]
pub fn harmless(text: &str) -> String {
    if runs(text) { format!("{NO_BREAK_SPACE}{text}") } else { text.to_owned() }
}

/// What was entered, from what [`harmless`] made of it.
#[must_use]
pub fn as_entered(cell: &str) -> &str {
    cell.strip_prefix(NO_BREAK_SPACE).filter(|text| runs(text)).unwrap_or(cell)
}

/// Whether a spreadsheet might run a text as a formula: it begins with a tab or the end of a line, or, after blanks,
/// which some skip, with a sign that begins a formula, or its full-width twin. What already has a no-break space in front
/// counts as what is behind it, so that taking one away always undoes adding one.
fn runs(text: &str) -> bool {
    let text = text.trim_start_matches(NO_BREAK_SPACE);
    text.starts_with(['\t', '\r', '\n']) || text.trim_start().starts_with(['=', '+', '-', '@', '＝', '＋', '－', '＠'])
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn cells_that_would_run_are_made_harmless() {
        for text in ["=A1", "+4", "-6 fitting", "@top", "\tx", "\rx", " =A1", "＝A1", "\u{a0}=A1", "\u{a0}\r"] {
            let cell = harmless(text);
            assert!(cell.starts_with(NO_BREAK_SPACE), "{text:?}");
            assert_eq!(as_entered(&cell), text);
            assert_eq!(cell.trim(), text.trim(), "trimming reads the same");
        }
        for text in ["", "Hub", "2 = 2", "a-b", "\u{a0}Hub", "'=A1"] {
            assert_eq!(harmless(text), text);
            assert_eq!(as_entered(text), text);
        }
    }

    proptest! {
        /// Breaks when `harmless` leaves alone a text that already begins with a no-break space.
        #[test]
        fn any_text_comes_back_from_a_reader_of_its_own(text in "[=+@\u{a0}\t\r\n\",; -]{0,4}.{0,12}") {
            let mut csv = String::new();
            write_row(&mut csv, &["first".to_owned(), harmless(&text)]);
            let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(csv.as_bytes());
            let record = reader.records().next().unwrap().unwrap();
            prop_assert_eq!(as_entered(&record[1]), text);
            prop_assert_eq!(&record[0], "first");
            prop_assert!(!record[1].starts_with(['=', '+', '-', '@', '\t', '\r']));
        }
    }
}
