use super::errands::{Errand, Errands, Group};
use super::figures;
use super::job_file::blob_path;
use super::list::{NowSums, Row};
use super::now::Prices;
use super::parts_csv::{BYTE_ORDER_MARK, harmless, write_row};
use super::words::PaperWords;
use crate::job::vocabulary::Units;
use crate::job::{Job, PartsQuery};
use crate::quantity::Day;

/// How many columns there are.
const COLUMNS: usize = 28;
/// Where the prices begin.
const PRICES: usize = 14;

/// What is to be bought or sent out, as CSV in the form of [`parts_csv`](super::parts_csv): a row of sums after those of each
/// supplier or specialist, one over all, and how many parts are not decided.
#[must_use]
pub fn errands_csv(job: &Job, errand: Errand, query: &PartsQuery, today: Option<Day>, words: &PaperWords) -> String {
    let errands = Errands::of(job, errand, query, today);
    let units = job.settings().units;
    let mut csv = String::from(BYTE_ORDER_MARK);
    write_row(&mut csv, &heads(words, units));
    for group in &errands.groups {
        for row in &group.rows {
            write_row(&mut csv, &cells(group, row, words, units));
        }
        write_row(&mut csv, &sums(&words.columns.sum, &group.from, &group.sums));
    }
    write_row(&mut csv, &sums(&words.page.sum_of_all, "", &errands.sums));
    if errands.undecided > 0 {
        let mut row: [String; COLUMNS] = std::array::from_fn(|_| String::new());
        row[0] = undecided(errands.undecided, words);
        write_row(&mut csv, &row);
    }
    csv
}

/// How many parts are not decided.
pub(super) fn undecided(parts: usize, words: &PaperWords) -> String {
    let page = &words.page;
    format!("{parts} {}", if parts == 1 { &page.not_decided } else { &page.are_not_decided })
}

fn heads(words: &PaperWords, units: Units) -> [String; COLUMNS] {
    let columns = &words.columns;
    let mass = if units == Units::Metric { &columns.kilograms } else { &columns.pounds };
    let [price, freight, tax, duty, consumables, prices, surcharge, peak, currency] = Prices::heads(words);
    let heads = [
        &columns.tag,
        &columns.from,
        &columns.name,
        &columns.quantity,
        &columns.side,
        &columns.makers_number,
        &columns.casting_number,
        &columns.material,
        mass,
        &columns.marks,
        &columns.finish,
        &columns.route,
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
        &columns.wait,
        &columns.valid_until,
        &columns.photo_files,
        &columns.cautions,
    ];
    heads.map(|head| harmless(head))
}

fn cells(group: &Group, row: &Row, words: &PaperWords, units: Units) -> [String; COLUMNS] {
    let now = row.now.as_ref();
    let counted = row.counted();
    let [price, freight, tax, duty, consumables, all, surcharge, peak, currency] =
        counted.map(|now| now.prices.cells()).unwrap_or_default();
    let photo_files: Vec<String> = row.photos.iter().map(|(hash, media_type)| blob_path(*hash, media_type)).collect();
    let route = row.decision.as_ref().and_then(|decision| decision.route);
    [
        row.tag.map(|tag| tag.to_string()).unwrap_or_default(),
        harmless(&group.from),
        harmless(&row.name),
        row.quantity.to_string(),
        row.side.map(|side| words.side(side).to_owned()).unwrap_or_default(),
        harmless(&row.makers_number),
        harmless(&row.casting_number),
        harmless(&row.material),
        row.mass.map(|mass| figures::mass(mass, units)).unwrap_or_default(),
        words.marks(&row.marks),
        harmless(&remarks(row).join("\n")),
        route.map(|route| words.route(route).to_owned()).unwrap_or_default(),
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
        currency,
        counted.map(|now| figures::hours(now.own_time)).unwrap_or_default(),
        now.and_then(|now| now.wait).map(|days| days.to_string()).unwrap_or_default(),
        now.and_then(|now| now.valid_until).map(|day| day.to_string()).unwrap_or_default(),
        photo_files.join(" "),
        cautions(row, words).join("; "),
    ]
}

/// What can hurt whoever gets it, in words.
pub(super) fn cautions<'a>(row: &Row, words: &'a PaperWords) -> Vec<&'a str> {
    row.cautions.iter().filter_map(|hazard| words.caution(*hazard)).collect()
}

/// What was remarked on the quote, then on the part.
pub(super) fn remarks(row: &Row) -> Vec<String> {
    let quote = row.now.as_ref().map(|now| now.remark.clone()).filter(|remark| !remark.trim().is_empty());
    quote.into_iter().chain(row.notes.iter().cloned()).collect()
}

fn sums(title: &str, from: &str, sums: &NowSums) -> [String; COLUMNS] {
    let mut row: [String; COLUMNS] = std::array::from_fn(|_| String::new());
    row[0] = harmless(title);
    row[1] = harmless(from);
    row[PRICES..PRICES + 9].clone_from_slice(&sums.prices.cells());
    row[PRICES + 9] = figures::hours(sums.own_time);
    row
}
