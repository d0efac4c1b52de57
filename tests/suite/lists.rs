use asfound_core::job::vocabulary::{Route, Standing};
use asfound_core::job::{Group, Job, PartsQuery};
use asfound_core::papers::{
    Columns, PaperWords, PartsList, Thumbs, as_entered, parts_csv, parts_html, without_location,
};
use asfound_core::quantity::Currency;

use crate::sample::{self, send};

/// The rows of a CSV, heads first, read by a reader that is not ours.
fn read(csv: &str) -> Vec<Vec<String>> {
    let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(csv.as_bytes());
    reader.records().map(|record| record.unwrap().iter().map(str::to_owned).collect()).collect()
}

fn csv(job: &Job, query: &PartsQuery) -> Vec<Vec<String>> {
    read(&parts_csv(job, query, None, &PaperWords::default()))
}

fn html(job: &Job, query: &PartsQuery) -> String {
    parts_html(job, query, None, &sample::photos(), &PaperWords::default())
}

fn column(rows: &[Vec<String>], name: &str) -> Vec<String> {
    let at = rows[0].iter().position(|head| head == name).unwrap();
    rows[1..].iter().map(|row| row[at].clone()).collect()
}

fn by_tag() -> PartsQuery {
    PartsQuery { group: Group::None, ..PartsQuery::default() }
}

#[test]
fn every_column_says_what_the_record_says() {
    let rows = csv(&sample::job(), &by_tag());
    let first: Vec<(&str, &str)> =
        rows[0].iter().map(String::as_str).zip(rows[1].iter().map(|cell| as_entered(cell))).collect();
    let photo = format!(
        "photos/{}.jpg",
        sample::job().part_line(sample::job().parts_with_tag(1).next().unwrap()).unwrap().photo.unwrap()
    );
    let expected = [
        ("tag", "1"),
        ("name", "Hub, \"outer\" & <drum>"),
        ("quantity", "1"),
        ("assembly", "Brake, front left"),
        ("side", "LEFT"),
        ("place", "Rack A > Box 07"),
        ("standing", "decided"),
        ("route", "Buy"),
        ("supplier or specialist", "@Ferrous & Sons, Ltd"),
        ("cash when chosen", "106.00"),
        ("currency", "GBP"),
        ("own hours when chosen", "0:00"),
        ("expected cost when chosen", "106.00"),
        ("with", ""),
        ("as entered", ""),
        ("price now", "106.00"),
        ("freight now", ""),
        ("tax now", ""),
        ("duty now", ""),
        ("consumables now", ""),
        ("all prices now", "106.00"),
        ("surcharge now", ""),
        ("paid at first now", "106.00"),
        ("currency now", "GBP"),
        ("own hours now", "0:00"),
        ("worth now (each rounded)", "106.00"),
        ("each year (each rounded)", "10.60"),
        ("guessed (of 100)", "0"),
        ("valid until", ""),
        ("wait (days)", ""),
        ("maker's number", "-4471/2"),
        ("casting number", "=C12"),
        ("material", "steel"),
        ("mass (kg)", "3.15"),
        ("marks", ""),
        ("notes", "Outer bearing turned on the spindle,\nkeep the cup"),
        ("photos", "1"),
        ("photo files", &photo),
    ];
    assert_eq!(first, expected);
}

#[test]
fn it_is_csv_as_the_standard_has_it() {
    let text = parts_csv(&sample::job(), &by_tag(), None, &PaperWords::default());
    assert!(text.starts_with("\u{feff}tag,"));
    assert!(text.ends_with("\r\n"));
    assert!(text.contains("\"Hub, \"\"outer\"\" & <drum>\""));
    let rows = read(&text);
    assert!(rows.iter().all(|row| row.len() == rows[0].len()));
    let bare_line_feeds = text.replace("\r\n", "").matches('\n').count();
    assert_eq!(bare_line_feeds, 1, "only the one inside the quoted note");
}

#[test]
fn no_cell_runs_as_a_formula_and_each_reads_the_same() {
    let rows = csv(&sample::job(), &by_tag());
    for cell in rows.iter().flatten() {
        assert!(!cell.starts_with(['=', '+', '-', '@', '\t', '\r']), "{cell}");
    }
    let entered = |name: &str, row: usize| as_entered(&column(&rows, name)[row]).to_owned();
    assert_eq!(entered("name", 3), "+ Grease cap ½");
    assert_eq!(entered("notes", 1), "=HYPERLINK(\"http://x\")");
    assert_eq!(column(&rows, "casting number")[0].trim(), "=C12");
}

#[test]
fn totals_agree_to_the_cent() {
    let job = sample::job();
    for query in [by_tag(), PartsQuery::default(), PartsQuery { find: "shoe".to_owned(), ..by_tag() }] {
        let (rows, page) = (csv(&job, &query), html(&job, &query));
        let sum = rows.last().unwrap();
        assert_eq!(sum[0], "Sum");
        let minor = |text: &String| text.replace('.', "").parse::<i64>().unwrap_or(0);
        for name in ["cash when chosen", "expected cost when chosen"] {
            let cells = column(&rows, name);
            let (last, cells) = cells.split_last().unwrap();
            assert_eq!(cells.iter().map(minor).sum::<i64>(), minor(last), "{name}");
            assert!(page.rfind(&format!(">{last}\u{a0}GBP</td>")) > page.rfind("class=\"sums\""), "{name} {last}");
        }
        assert!(page[page.rfind("class=\"sums\"").unwrap()..].contains(&format!(">{}</td>", sum[11])));
        let view = job.parts_view(&query).sums;
        assert_eq!(view.cash.iter().map(|money| money.minor).collect::<Vec<_>>(), [minor(&sum[9])]);
        assert_eq!(view.own_time, PartsList::of(&job, &query, None).totals.own_time);
    }
    assert_eq!(csv(&job, &by_tag()).last().unwrap()[9..13], ["143.50", "GBP", "0:35", "155.72"]);
}

#[test]
fn each_currency_has_a_sum_of_its_own() {
    let mut job = sample::job();
    let commands = [
        r#"{"do":"change","ids":["00000000000000000000000000000001"],"changes":[{"currency":"JPY"},{"hour_value":{"minor":2500,"currency":"JPY"}}]}"#,
        r#"{"do":"create","id":"00000000000000000000000000000310","kind":"quote","changes":[{"of":"00000000000000000000000000000102"},{"route":"donor"},{"cash":{"minor":1500,"currency":"JPY"}},{"own_time":60}]}"#,
        r#"{"do":"choose","id":"00000000000000000000000000000410","quote":"00000000000000000000000000000310"}"#,
    ];
    for (number, command) in (1..).zip(commands) {
        assert_eq!(send(&mut job, 2, number, command), []);
    }
    let rows = csv(&job, &by_tag());
    let sums: Vec<&[String]> = rows.iter().filter(|row| row[0] == "Sum").map(|row| &row[9..13]).collect();
    assert_eq!(sums, [&["143.50", "GBP", "1:35", "155.72"][..], &["1500", "JPY", "", "4000"]]);
    let page = html(&job, &by_tag());
    assert!(page.contains(">1500\u{a0}JPY</td>") && page.contains(">143.50\u{a0}GBP</td>"));
}

#[test]
fn the_question_chooses_the_rows() {
    let job = sample::job();
    let tags = |query: PartsQuery| {
        let rows = csv(&job, &query);
        let page = html(&job, &query);
        let tags = column(&rows, "tag");
        let (_, tags) = tags.split_last().unwrap();
        assert_eq!(page.matches("<svg class=\"tag").count(), tags.len());
        tags.join(" ")
    };
    let id = |text: &str| text.parse().unwrap();
    assert_eq!(tags(by_tag()), "1 2 3 4 5");
    assert_eq!(tags(PartsQuery::default()), "5 1 2 3 4");
    assert_eq!(tags(PartsQuery { standing: Some(Standing::Judged), ..by_tag() }), "3");
    assert_eq!(tags(PartsQuery { route: Some(Route::Buy), ..by_tag() }), "1 5");
    assert_eq!(tags(PartsQuery { assembly: Some(id("00000000000000000000000000000011")), ..by_tag() }), "1 2 3");
    assert_eq!(tags(PartsQuery { place: Some(id("00000000000000000000000000000020")), ..by_tag() }), "1 5");
    assert_eq!(tags(PartsQuery { struck: true, ..by_tag() }), "");
    assert_eq!(tags(PartsQuery { from: 3, count: Some(1), ..by_tag() }), "1 2 3 4 5", "a list is never cut");
}

#[test]
fn words_come_from_whoever_calls() {
    let columns = Columns { sum: "Total".to_owned(), ..Columns::default() };
    let words = PaperWords { columns, ..PaperWords::default() };
    let job = sample::job();
    assert_eq!(read(&parts_csv(&job, &by_tag(), None, &words)).last().unwrap()[0], "Total");
    assert!(parts_html(&job, &by_tag(), None, &Thumbs::new(), &words).contains(">Total</th>"));
    let partly: PaperWords = serde_json::from_str(r#"{"sides":{"left":"links"}}"#).unwrap();
    assert_eq!((partly.sides.left.as_str(), partly.sides.right.as_str()), ("links", "RIGHT"));
}

#[test]
fn the_page_needs_nothing_else_and_runs_nothing() {
    let page = html(&sample::job(), &PartsQuery::default());
    for outside in ["http://", "https://", "<script", "<link", "@import", "url("] {
        let entered = "=HYPERLINK(&quot;http://x&quot;)";
        assert!(!page.replace(entered, "").contains(outside), "{outside}");
    }
    assert!(page.contains("Hub, &quot;outer&quot; &amp; &lt;drum&gt;"));
    assert!(!page.contains("<drum>"));
    for print in ["@page", "@media print", "table-header-group", "break-inside: avoid"] {
        assert!(page.contains(print), "{print}");
    }
}

/// What a data address holds.
fn pictures(page: &str) -> Vec<Vec<u8>> {
    let addresses = page.split("data:image/jpeg;base64,").skip(1);
    addresses.map(|address| decoded(address.split('"').next().unwrap())).collect()
}

fn decoded(base64: &str) -> Vec<u8> {
    let value = |letter: u8| match letter {
        b'A'..=b'Z' => letter - b'A',
        b'a'..=b'z' => letter - b'a' + 26,
        b'0'..=b'9' => letter - b'0' + 52,
        b'+' => 62,
        _ => 63,
    };
    let letters: Vec<u8> = base64.bytes().filter(|letter| *letter != b'=').map(value).collect();
    let bits =
        |four: &[u8]| four.iter().chain(&[0; 4]).take(4).fold(0_u32, |bits, letter| bits << 6 | u32::from(*letter));
    letters.chunks(4).flat_map(|four| bits(four).to_be_bytes()[1..four.len()].to_vec()).collect()
}

#[test]
fn photos_in_the_page_carry_no_location() {
    let tells = |bytes: &[u8]| {
        ["Exif", "GPS", "GPSTESTMAKER", "ns.adobe.com"]
            .iter()
            .any(|word| bytes.windows(word.len()).any(|window| window == word.as_bytes()))
    };
    assert!(sample::photos().values().any(|photo| tells(photo)), "the sample does tell where it was taken");
    let pictures = pictures(&html(&sample::job(), &by_tag()));
    assert_eq!(pictures.len(), 3);
    for picture in &pictures {
        assert!(!tells(picture));
        assert_eq!(without_location(picture).as_ref(), Some(picture), "nothing is left to take away");
    }
    let no_jpeg: Thumbs = sample::photos().into_keys().map(|hash| (hash, b"GPS".to_vec())).collect();
    let page = parts_html(&sample::job(), &by_tag(), None, &no_jpeg, &PaperWords::default());
    assert!(!page.contains("<img"));
}

#[test]
fn pounds_stand_where_the_job_says_so() {
    let mut job = sample::job();
    let inch = r#"{"do":"change","ids":["00000000000000000000000000000001"],"changes":[{"units":"inch"}]}"#;
    assert_eq!(send(&mut job, 2, 1, inch), []);
    assert_eq!(column(&csv(&job, &by_tag()), "mass (lb)")[0], "6.94");
    assert!(html(&job, &by_tag()).contains("6.94\u{a0}lb"));
    assert_eq!(job.settings().currency, Currency::GBP);
}
