//! The parts list and the lists of what is to be bought and sent out, over one job: a kit for two parts, a foreign price, an
//! exchange with a surcharge, a struck-out part, parts without a decision.

use asfound_core::costing::{TotalsView, totals};
use asfound_core::job::{Group, Job, PartsQuery};
use asfound_core::papers::{
    Errand, Errands, PaperWords, PartsList, Thumbs, errands_csv, errands_html, parts_csv, parts_html,
};
use asfound_core::quantity::Day;
use serde_json::{Value, json};

use crate::sample::send;

fn id(number: u16) -> String {
    format!("{number:032x}")
}

fn money(minor: i64, currency: &str) -> Value {
    json!({ "minor": minor, "currency": currency })
}

/// Part 0x101 to 0x107; each quote is its part and 0x100 more, each choice 0x200 more.
fn job() -> Job {
    let pounds = |minor| money(minor, "GBP");
    let mut commands = vec![
        json!({ "do": "create", "id": id(1), "kind": "job", "changes": [{ "currency": "GBP" }, { "hour_value": pounds(2000) }] }),
    ];
    for part in 0x101..=0x107_u16 {
        let more = if part == 0x104 {
            json!([{ "mass": 3150 }, { "remark": "Bright zinc" }])
        } else {
            json!([{ "makers_number": format!("N{part:x}") }, { "quantity": 2 }])
        };
        let mut changes = vec![json!({ "name": format!("Part {part:x}") })];
        changes.extend(more.as_array().cloned().unwrap_or_default());
        commands.push(json!({ "do": "create", "id": id(part), "kind": "part", "changes": changes }));
    }
    let quotes = [
        (
            0x101,
            json!([{ "route": "kit" }, { "from": "Sloe Hill Spares" }, { "cash": pounds(4800) }, { "freight": pounds(450) }, { "own_time": 30 }, { "valid_until": "2026-08-31" }]),
        ),
        (
            0x103,
            json!([{ "route": "exchange" }, { "from": "Ferrous & Sons" }, { "cash": money(10_001, "EUR") }, { "surcharge": money(3_003, "EUR") }, { "withheld": 2500 }, { "exchange_rate": 850_000 }, { "wait": 21 }]),
        ),
        (
            0x104,
            json!([{ "route": "send-out" }, { "from": "=Anvil Lane" }, { "cash": pounds(1550) }, { "tax": pounds(310) }, { "cash_certainty": "about" }, { "remark": "Plate it" }]),
        ),
        (0x105, json!([{ "route": "buy" }, { "cash": pounds(777) }])),
        (0x106, json!([{ "route": "buy" }, { "from": "Sloe Hill Spares" }, { "cash": pounds(90_000) }])),
    ];
    for (part, changes) in quotes {
        let mut all = vec![json!({ "of": id(part) })];
        all.extend(changes.as_array().cloned().unwrap_or_default());
        commands.push(json!({ "do": "create", "id": id(part + 0x100), "kind": "quote", "changes": all }));
    }
    let cover = |number: u16, part: u16| json!({ "do": "create", "id": id(number), "kind": "cover", "changes": [{ "of": id(0x201) }, { "part": id(part) }, { "quantity": 2 }] });
    commands.extend([cover(0x501, 0x101), cover(0x502, 0x102)]);
    for (part, quote) in
        [(0x101, 0x201), (0x102, 0x201), (0x103, 0x203), (0x104, 0x204), (0x105, 0x205), (0x106, 0x206)]
    {
        commands.push(json!({ "do": "choose", "id": id(part + 0x200), "quote": id(quote), "part": id(part) }));
    }
    commands.push(json!({ "do": "change", "ids": [id(0x106)], "changes": [{ "struck": true }] }));
    let mut job = Job::new();
    for (number, command) in (1..).zip(commands) {
        assert_eq!(send(&mut job, 1, number, &command.to_string()), [], "{command}");
    }
    job
}

fn by_tag() -> PartsQuery {
    PartsQuery { group: Group::None, ..PartsQuery::default() }
}

/// Rows as another reader reads them, each cell by the head of its column.
struct Table(Vec<Vec<String>>);

impl Table {
    fn read(csv: &str) -> Self {
        let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(csv.as_bytes());
        Self(reader.records().map(|record| record.unwrap().iter().map(str::to_owned).collect()).collect())
    }

    fn parts(job: &Job) -> Self {
        Self::read(&parts_csv(job, &by_tag(), None, &PaperWords::default()))
    }

    fn errand(job: &Job, errand: Errand) -> Self {
        Self::read(&errands_csv(job, errand, &by_tag(), None, &PaperWords::default()))
    }

    fn cell(&self, row: usize, name: &str) -> &str {
        &self.0[row][self.0[0].iter().position(|head| head == name).unwrap()]
    }

    /// Rows of parts in which a column holds something, added; and what the last row that is named so says.
    fn sum(&self, name: &str, title: &str) -> (i64, i64) {
        let at = self.0[0].iter().position(|head| head == name).unwrap();
        let rows = self.0[1..].iter().filter(|row| row[0].parse::<i64>().is_ok());
        let shown = self.0.iter().rfind(|row| row[0] == title).unwrap();
        (rows.map(|row| minor(&row[at])).sum(), minor(&shown[at]))
    }
}

fn minor(cell: &str) -> i64 {
    match cell.split_once(':') {
        Some((hours, minutes)) => hours.parse::<i64>().unwrap() * 60 + minutes.parse::<i64>().unwrap(),
        None => cell.replace('.', "").parse().unwrap_or(0),
    }
}

const COLUMNS: [&str; 8] = [
    "price now",
    "freight now",
    "tax now",
    "surcharge now",
    "all prices now",
    "paid at first now",
    "own hours now",
    "worth now (each rounded)",
];

#[test]
fn every_form_of_the_parts_list_has_the_sums_of_the_totals() {
    let job = job();
    let (table, view) = (Table::parts(&job), totals(&job, None));
    let sums = COLUMNS.map(|column| table.sum(column, "Sum"));
    for (column, (added, shown)) in COLUMNS.iter().zip(sums) {
        assert_eq!(added, shown, "{column}");
    }
    // By hand: 48 + 4.50, 100.01 € at 0.85 = 85.01, 15.50 + 3.10, 7.77; the surcharge 30.03 € = 25.53.
    assert_eq!(sums.map(|(_, shown)| shown)[..7], [15628, 450, 310, 2553, 16388, 18941, 30]);
    agree(&view, &sums);
    let page = parts_html(&job, &by_tag(), None, &Thumbs::new(), &PaperWords::default());
    let below = &page[page.rfind("class=\"sums\"").unwrap()..];
    for shown in [">163.88\u{a0}GBP</td>", ">189.41\u{a0}GBP</td>", ">0:30</td>", "freight\u{a0}4.50"] {
        assert!(below.contains(shown), "{shown} in {below}");
    }
}

fn agree(view: &TotalsView, sums: &[(i64, i64); 8]) {
    assert_eq!((view.cash.minor, view.peak.minor, view.own_time.0), (sums[4].1, sums[5].1, sums[6].1));
    #[expect(clippy::cast_precision_loss, reason = "small sums")]
    let apart = (view.present.minor - sums[7].1 as f64).abs();
    assert!(apart <= 0.5 * 5.0, "five rows, each rounded by itself: {apart}");
}

#[test]
fn a_kit_stands_once_with_its_price() {
    let job = job();
    let table = Table::parts(&job);
    assert_eq!((table.cell(1, "all prices now"), table.cell(1, "with")), ("52.50", ""));
    assert_eq!((table.cell(2, "all prices now"), table.cell(2, "with")), ("", "0001"));
    assert_eq!((table.cell(1, "cash when chosen"), table.cell(2, "cash when chosen")), ("48.00", ""));
    let page = parts_html(&job, &by_tag(), None, &Thumbs::new(), &PaperWords::default());
    assert_eq!(page.matches("with 0001").count(), 1);
    assert_eq!(page.matches(">52.50\u{a0}GBP<").count(), 2, "all prices and paid at first, once each");
    // The figures of the choice, too: in the list as on the screen.
    let sums = job.parts_view(&by_tag()).sums;
    let list = PartsList::of(&job, &by_tag(), None).totals;
    assert_eq!(
        sums.cash.iter().map(|money| Some(money.minor)).collect::<Vec<_>>(),
        list.money.values().map(|sum| sum.cash).collect::<Vec<_>>()
    );
    assert_eq!((sums.own_time, sums.decided), (list.own_time, 5));
}

#[test]
fn a_foreign_price_stands_as_entered_and_at_its_rate() {
    let table = Table::parts(&job());
    assert_eq!(table.cell(3, "as entered"), "price 100.01\u{a0}EUR; surcharge 30.03\u{a0}EUR; at 0.85");
    assert_eq!((table.cell(3, "price now"), table.cell(3, "surcharge now")), ("85.01", "25.53"));
    assert_eq!((table.cell(3, "currency now"), table.cell(3, "wait (days)")), ("GBP", "21"));
    assert_eq!((table.cell(1, "valid until"), table.cell(4, "guessed (of 100)")), ("2026-08-31", "100"));
}

/// A part that goes along in a kit has no figures of its own: a nought would say that it costs nothing, or takes no time.
#[test]
fn a_part_that_goes_along_has_no_figures() {
    let job = job();
    let table = Table::parts(&job);
    assert_eq!(table.cell(2, "with"), "0001");
    for column in ["own hours when chosen", "worth now (each rounded)", "each year (each rounded)", "guessed (of 100)"]
    {
        assert_eq!(table.cell(2, column), "", "{column}");
        assert_ne!(table.cell(1, column), "", "{column}");
    }
    let errand = Table::errand(&job, Errand::Buy);
    let along = errand.0.iter().position(|row| row[0] == "2").unwrap();
    assert_eq!(errand.cell(along, "with"), "0001");
    for column in ["own hours now", "all prices now", "paid at first now"] {
        assert_eq!(errand.cell(along, column), "", "{column}");
    }
    let page = parts_html(&job, &by_tag(), None, &Thumbs::new(), &PaperWords::default());
    let row = page.split("<tr>").find(|row| row.contains("with 0001")).unwrap();
    assert!(
        !row.contains(">0:00<") && !row.contains(">0.00\u{a0}GBP<") && !row.contains("0.00\u{a0}GBP each year"),
        "{row}"
    );
}

/// What would be turned to after a failure has run out: the next one is dearer, in the list as in the totals.
#[test]
fn the_lists_and_the_totals_are_of_one_day() {
    let mut job = job();
    let quote = |number: u16, route: &str, cash: i64, more: Value| json!({ "do": "create", "id": id(number), "kind": "quote", "changes": [{ "of": id(0x108) }, { "route": route }, { "cash": money(cash, "GBP") }, more] });
    let commands = [
        json!({ "do": "create", "id": id(0x108), "kind": "part", "changes": [{ "tag": 8 }] }),
        quote(0x220, "repair-here", 1000, json!({ "chance": 5000 })),
        quote(0x221, "buy", 5000, json!({ "valid_until": "2026-05-01" })),
        quote(0x222, "donor", 9000, json!({ "wait": 3 })),
        json!({ "do": "choose", "id": id(0x320), "quote": id(0x220), "part": id(0x108) }),
    ];
    for (number, command) in (1..).zip(commands) {
        assert_eq!(send(&mut job, 3, number, &command.to_string()), [], "{command}");
    }
    // By hand: 10 + 0.5 × 50 while the price holds, 10 + 0.5 × 90 from the day after.
    for (day, worth) in [(None, "35.00"), (Day::parse("2026-05-01"), "35.00"), (Day::parse("2026-05-02"), "55.00")] {
        let table = Table::read(&parts_csv(&job, &by_tag(), day, &PaperWords::default()));
        let at = table.0.iter().position(|row| row[0] == "8").unwrap();
        assert_eq!(table.cell(at, "worth now (each rounded)"), worth, "{day:?}");
        agree(&totals(&job, day), &COLUMNS.map(|column| table.sum(column, "Sum")));
        let page = parts_html(&job, &by_tag(), day, &Thumbs::new(), &PaperWords::default());
        assert!(page.contains(&format!(">{worth}\u{a0}GBP</td>")), "{day:?}");
    }
}

/// What was chosen keeps the figures of its day; the other columns, and the totals, follow the quote.
#[test]
fn the_figures_of_the_choice_and_of_now_part_when_the_quote_changes() {
    let mut job = job();
    let dearer = json!({ "do": "change", "ids": [id(0x205)], "changes": [{ "cash": money(1000, "GBP") }] });
    assert_eq!(send(&mut job, 2, 1, &dearer.to_string()), []);
    let table = Table::parts(&job);
    assert_eq!((table.cell(5, "cash when chosen"), table.cell(5, "price now")), ("7.77", "10.00"));
    agree(&totals(&job, None), &COLUMNS.map(|column| table.sum(column, "Sum")));
    assert!(
        parts_html(&job, &by_tag(), None, &Thumbs::new(), &PaperWords::default())
            .contains("the chosen quote as it stands today")
    );
}

#[test]
fn to_buy_goes_by_supplier() {
    let job = job();
    let table = Table::errand(&job, Errand::Buy);
    let firsts: Vec<(&str, &str)> = table.0[1..].iter().map(|row| (row[0].as_str(), row[1].as_str())).collect();
    let expected = [
        ("3", "Ferrous & Sons"),
        ("Sum", "Ferrous & Sons"),
        ("1", "Sloe Hill Spares"),
        ("2", "Sloe Hill Spares"),
        ("Sum", "Sloe Hill Spares"),
        ("5", ""),
        ("Sum", ""),
        ("Sum of all", ""),
        ("1 part is not decided yet", ""),
    ];
    assert_eq!(firsts, expected);
    assert_eq!((table.cell(5, "paid at first now"), table.cell(2, "paid at first now")), ("52.50", "110.54"));
    assert_eq!(
        (table.cell(4, "maker's number"), table.cell(4, "quantity"), table.cell(4, "with")),
        ("N102", "2", "0001")
    );
    for column in ["price now", "freight now", "all prices now", "paid at first now"] {
        let (added, shown) = table.sum(column, "Sum of all");
        assert_eq!(added, shown, "{column}");
    }
    let page = errands_html(&job, Errand::Buy, &by_tag(), None, &Thumbs::new(), &PaperWords::default());
    for shown in [
        "<h1>To buy</h1>",
        "Ferrous &amp; Sons</th>",
        "No supplier named",
        "1 part is not decided yet",
        ">170.81\u{a0}GBP</td>",
        "21\u{a0}days’ wait",
    ] {
        assert!(page.contains(shown), "{shown}");
    }
    assert!(!page.contains("900.00"), "what is struck out is not bought");
}

#[test]
fn what_is_struck_out_is_not_bought_when_asked_for_either() {
    let errands = Errands::of(&job(), Errand::Buy, &PartsQuery { struck: true, ..by_tag() }, None);
    assert_eq!((errands.parts(), errands.undecided, errands.sums.prices.peak().minor), (0, 0, 0));
}

#[test]
fn to_send_goes_by_specialist() {
    let job = job();
    let table = Table::errand(&job, Errand::Send);
    assert_eq!(table.0.len(), 5, "heads, one part, two sums, the undecided");
    assert_eq!((table.cell(1, "tag"), table.cell(1, "supplier or specialist")), ("4", "\u{a0}=Anvil Lane"));
    assert_eq!((table.cell(1, "finish or remark"), table.cell(1, "mass (kg)")), ("Plate it\nBright zinc", "3.15"));
    assert_eq!(table.sum("all prices now", "Sum of all"), (1860, 1860));
    let page = errands_html(&job, Errand::Send, &by_tag(), None, &Thumbs::new(), &PaperWords::default());
    for shown in
        ["<h1>To send</h1>", "=Anvil Lane</th>", "aria-label=\"0004\"", "Plate it", "3.15\u{a0}kg", "@media print"]
    {
        assert!(page.contains(shown), "{shown}");
    }
    assert!(!page.contains("<script") && !page.contains("://"));
}
