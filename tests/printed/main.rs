//! Sheets of tags as they come out of a printer: rendered from their PDF (poppler), each label cut out where it lies on the paper
//! as it is sold, and read by two decoders that are not ours (zbar, zxing-cpp). `tests/prepare decoders` installs them.

mod decoders;
mod page;

use asfound_core::job::{Command, Context, Job, Sent, TagCode, apply};
use asfound_core::papers::{PaperWords, TagsPaper, tags_pdf};
use asfound_core::quantity::Millis;
use asfound_core::record::{Id, Replica};
use serde_json::{Value, json};

use decoders::{Seen, read_by_zbar, read_by_zxing};
use page::{Area, Page};

/// What a printed mark may be off, in millimetres.
const EXACT: f64 = 0.5;

/// A sheet as it is sold: written down here once more, so that a slip in the app is seen. Millimetres.
#[derive(Clone, Copy)]
struct Paper {
    kind: &'static str,
    page: (f64, f64),
    label: (f64, f64),
    counts: (usize, usize),
    first: (f64, f64),
    pitch: (f64, f64),
    /// How far the hole of a strip reaches; nothing on labels.
    hole: Option<f64>,
}

const A4: Paper = Paper {
    kind: "a4",
    page: (210.0, 297.0),
    label: (63.5, 38.1),
    counts: (3, 7),
    first: (7.21, 15.15),
    pitch: (66.04, 38.1),
    hole: None,
};
const LETTER: Paper = Paper {
    kind: "letter",
    page: (215.9, 279.4),
    label: (66.675, 25.4),
    counts: (3, 10),
    first: (4.7625, 12.7),
    pitch: (69.85, 25.4),
    hole: None,
};
const STRIPS_A4: Paper = Paper {
    kind: "strips-a4",
    page: (210.0, 297.0),
    label: (63.0, 46.0),
    counts: (3, 6),
    first: (10.5, 10.5),
    pitch: (63.0, 46.0),
    hole: Some(11.1),
};
const STRIPS_LETTER: Paper =
    Paper { kind: "strips-letter", page: (215.9, 279.4), counts: (3, 5), first: (13.45, 24.7), ..STRIPS_A4 };
/// Small labels, with gaps both ways.
const OWN: Paper = Paper {
    kind: "own",
    page: (148.0, 210.0),
    label: (45.0, 21.0),
    counts: (3, 9),
    first: (4.0, 5.0),
    pitch: (47.5, 22.0),
    hole: None,
};

impl Paper {
    fn sheet(&self) -> Value {
        let Self { kind, page, label, counts, first, pitch, .. } = self;
        if *kind != "own" {
            return json!({ "kind": kind });
        }
        json!({ "kind": kind, "page": page, "label": label, "across": counts.0, "down": counts.1, "left": first.0,
            "top": first.1, "pitch": pitch })
    }

    /// The sides of a label that carry a QR each, and whether what is printed there is turned round.
    fn sides(&self, slot: usize, nudge: (f64, f64)) -> Vec<(Area, bool)> {
        let (column, row) = ((slot % self.counts.0) as f64, (slot / self.counts.0) as f64);
        let left = self.first.0 + column * self.pitch.0 + nudge.0;
        let top = self.first.1 + row * self.pitch.1 + nudge.1;
        let (width, height) = self.label;
        match self.hole {
            None => vec![(Area { left, top, width, height }, false)],
            Some(_) => [false, true]
                .into_iter()
                .map(|back| {
                    let half = height / 2.0;
                    let top = if back { top + half } else { top };
                    (Area { left, top, width, height: half }, back)
                })
                .collect(),
        }
    }
}

/// Prints, and reads every label back: its code, its place on the page, its size. `codes` are expected in their order.
fn is_read_back(job: &Job, paper: Paper, labels: &Value, skip: usize, nudge: (f64, f64), numbers: &[i64]) {
    let asked = json!({ "sheet": paper.sheet(), "labels": labels, "skip": skip, "nudge": { "right": nudge.0, "down": nudge.1 } });
    let asked: TagsPaper = serde_json::from_value(asked).unwrap();
    let pdf = tags_pdf(job, &asked, &PaperWords::default()).unwrap();
    let folder = tempfile::tempdir().unwrap();
    let a_sheet = paper.counts.0 * paper.counts.1;
    let pages = page::rendered(&pdf, folder.path(), paper.page);
    assert_eq!(pages.len(), (skip + numbers.len()).div_ceil(a_sheet), "{}", paper.kind);

    let mut wanted: Vec<(String, Area, bool)> = Vec::new();
    let mut cut: Vec<std::path::PathBuf> = Vec::new();
    for (nth, number) in numbers.iter().enumerate() {
        let (sheet, slot) = ((skip + nth) / a_sheet, (skip + nth) % a_sheet);
        for (area, turned) in paper.sides(slot, nudge) {
            let file = folder.path().join(format!("label-{}.pgm", cut.len()));
            pages[sheet].cut(area, &file);
            cut.push(file);
            wanted.push((TagCode::new(*number).unwrap().bare(), area, turned));
        }
    }
    let (zbar, zxing) = (read_by_zbar(&cut), read_by_zxing(&cut));
    for (at, (code, area, turned)) in wanted.iter().enumerate() {
        let told = format!("{} on {}, {area:?}", code, paper.kind);
        assert_eq!(zbar[at], std::slice::from_ref(code), "zbar: {told}");
        let [Seen { text, corners }] = &zxing[at][..] else { panic!("zxing-cpp: {told}: {:?}", zxing[at]) };
        assert_eq!(text, code, "zxing-cpp: {told}");
        lies_right(paper, *area, *turned, corners, &told);
    }
    nothing_else(&pages, paper, skip, numbers.len(), nudge);
}

/// The QR begins four modules from the label's edge or the hole, in the middle of its height, and measures 15 mm where there is room.
fn lies_right(paper: Paper, area: Area, turned: bool, corners: &[(f64, f64); 4], told: &str) {
    let millimetres = corners.map(|(x, y)| (page::millimetres(x), page::millimetres(y)));
    let edge = |pick: fn(f64, f64) -> f64, of: fn(&(f64, f64)) -> f64| millimetres.iter().map(of).reduce(pick).unwrap();
    let (left, right) = (edge(f64::min, |at| at.0), edge(f64::max, |at| at.0));
    let (top, bottom) = (edge(f64::min, |at| at.1), edge(f64::max, |at| at.1));
    let module = (right - left) / 21.0;
    let near = |here: f64, there: f64| (here - there).abs() <= EXACT;
    let free = 4.0 * module + if turned { 0.0 } else { paper.hole.unwrap_or(0.0) };
    let begins = if turned { area.width - right } else { left };
    assert!(near(begins, free), "{told}: begins at {begins:.2}, not at {free:.2} mm");
    assert!(near((top + bottom) / 2.0, area.height / 2.0), "{told}: from {top:.2} to {bottom:.2} mm");
    assert!(near(right - left, bottom - top), "{told}: {:.2} × {:.2} mm", right - left, bottom - top);
    let least = if paper.kind == "own" { 12.0 } else { 15.0 };
    assert!(right - left >= least - 0.1, "{told}: {:.2} mm", right - left);
}

/// Labels that are used already, and those behind the last, stay white.
fn nothing_else(pages: &[Page], paper: Paper, skip: usize, count: usize, nudge: (f64, f64)) {
    let a_sheet = paper.counts.0 * paper.counts.1;
    let all = pages.len() * a_sheet;
    for slot in (0..skip).chain(skip + count..all) {
        for (area, _) in paper.sides(slot % a_sheet, nudge) {
            // A cut line between strips belongs to the neighbour as well.
            let inner =
                Area { left: area.left + 1.0, top: area.top + 1.0, width: area.width - 2.0, height: area.height - 2.0 };
            assert!(pages[slot / a_sheet].is_white(inner), "{}: label {slot} is printed", paper.kind);
        }
    }
}

fn id(number: u32) -> Id {
    format!("{number:032x}").parse().unwrap()
}

/// A job with parts of long and short names, on both sides.
fn a_job() -> Job {
    let mut job = Job::new();
    let mut sent = 0;
    let mut send = |command: Value| {
        sent += 1;
        let command: Command = serde_json::from_value(command).unwrap();
        let context = Context { replica: Replica::from_bytes([7; 8]), device: id(2), at: Millis(0) };
        let applied = apply(&job, &Sent { id: id(9_000 + sent), command }, &context);
        assert_eq!(applied.problems, vec![]);
        job.absorb(applied.entries);
    };
    send(json!({ "do": "create", "id": id(1), "kind": "job", "changes": [] }));
    send(
        json!({ "do": "create", "id": id(3), "kind": "assembly", "changes": [{ "name": "Front suspension, near side" }, { "side": "left" }] }),
    );
    let names = [
        "Stub axle",
        "Lower wishbone fulcrum shaft with bushes and both end caps",
        "½ in cotter",
        "Œil de ressort, côté gauche",
        "",
    ];
    for (nth, name) in (0..).zip(names.iter().cycle().take(23)) {
        let changes = if nth % 2 == 0 {
            json!([{ "name": name }, { "assembly": id(3) }])
        } else {
            json!([{ "name": name }, { "side": "right" }])
        };
        send(json!({ "do": "create", "id": id(100 + nth), "kind": "part", "changes": changes }));
    }
    send(json!({ "do": "create", "id": id(4), "kind": "place", "changes": [{ "name": "Rack B" }, { "tag": 700 }] }));
    send(
        json!({ "do": "create", "id": id(5), "kind": "place", "changes": [{ "name": "Box 07" }, { "tag": 512 }, { "within": id(4) }] }),
    );
    job
}

fn blank(from: i64, count: usize, places: bool) -> Value {
    json!({ "of": "blank", "from": from, "count": count, "places": places })
}

fn run(from: i64, count: usize) -> Vec<i64> {
    (from..).take(count).collect()
}

#[test]
fn a4_labels_are_read_back() {
    is_read_back(&Job::new(), A4, &blank(147, 40, false), 0, (0.0, 0.0), &run(147, 40));
    is_read_back(&a_job(), A4, &json!({ "of": "parts" }), 4, (0.0, 0.0), &run(1, 23));
}

#[test]
fn letter_labels_are_read_back() {
    is_read_back(&a_job(), LETTER, &json!({ "of": "parts" }), 11, (0.0, 0.0), &run(1, 23));
    is_read_back(&Job::new(), LETTER, &blank(9_990, 30, true), 0, (0.8, -1.2), &run(9_990, 30));
    // Places in the order in which they lie in one another.
    is_read_back(&a_job(), LETTER, &json!({ "of": "places" }), 0, (0.0, 0.0), &[700, 512]);
}

#[test]
fn strips_are_read_back_from_both_sides() {
    is_read_back(&a_job(), STRIPS_A4, &json!({ "of": "parts" }), 2, (0.0, 0.0), &run(1, 23));
    is_read_back(&Job::new(), STRIPS_LETTER, &blank(1_234_567, 15, true), 0, (-0.5, 0.5), &run(1_234_567, 15));
}

#[test]
fn labels_of_an_own_grid_are_read_back() {
    is_read_back(&a_job(), OWN, &json!({ "of": "parts" }), 0, (0.0, 0.0), &run(1, 23));
    is_read_back(&Job::new(), OWN, &blank(9_999_973, 27, false), 0, (0.0, 0.0), &run(9_999_973, 27));
}

/// Names and figures are letters in the file, not strokes: they can be searched, and no font is embedded.
#[test]
fn figures_and_names_are_text() {
    let asked: TagsPaper = serde_json::from_value(json!({ "labels": { "of": "parts" } })).unwrap();
    let pdf = tags_pdf(&a_job(), &asked, &PaperWords::default()).unwrap();
    let text = page::text_of(&pdf);
    for wanted in ["0001", "Stub axle", "LEFT · Front\nsuspension, near side", "½ in cotter", "Œil de ressort", "RIGHT"]
    {
        assert!(text.contains(wanted), "{wanted} is not in {text}");
    }
    assert!(!pdf.windows(9).any(|stretch| stretch == b"/FontFile"));
}
