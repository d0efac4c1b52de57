//! The sample job holds what can be tried out on it, and nothing that needs a person's look.

use std::collections::BTreeSet;
use std::fs;
use std::path::PathBuf;
use std::sync::LazyLock;

use asfound_demo::door::{self, Answer};
use asfound_demo::{sample, workspace};
use serde_json::{Value, json};

/// Made once; every question is asked of the file on disk.
static FILE: LazyLock<(tempfile::TempDir, PathBuf, usize)> = LazyLock::new(|| {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("sample.zip");
    sample::write(&path).unwrap();
    let length = fs::metadata(&path).unwrap().len();
    (folder, path, usize::try_from(length).unwrap())
});

fn ask(question: &str, arguments: &Value) -> Value {
    let Answer { view, problems } = door::ask(&FILE.1, question, Some(&arguments.to_string()), None).unwrap();
    assert_eq!(problems, []);
    view
}

fn rows() -> Vec<Value> {
    ask("parts", &json!({"group": "none"}))["rows"].as_array().unwrap().clone()
}

/// What every part costs, a month after the last photos were taken.
fn costs() -> Vec<Value> {
    let of = |row: &Value| ask("cost", &json!({"tag": row["tag"], "today": "2026-11-20"}));
    rows().iter().map(of).collect()
}

fn quotes(costs: &[Value]) -> Vec<&Value> {
    costs.iter().flat_map(|cost| cost["quotes"].as_array().unwrap()).collect()
}

#[test]
fn it_is_the_same_to_the_byte_and_small() {
    assert!(sample::job_file().unwrap() == fs::read(&FILE.1).unwrap());
    assert!(FILE.2 < 1_500_000, "{} bytes", FILE.2);
}

#[test]
fn it_has_seventy_parts_or_so_and_no_problems() {
    let rows = rows();
    assert!((66..=80).contains(&rows.len()), "{}", rows.len());
    // Whatever is wrong with the file or the job stands beside each answer, where `ask` looks for it.
    assert_eq!(ask("problems", &json!({}))["problems"], json!([]));
    let standing = |word: &str| rows.iter().filter(|row| row["standing"] == word).count();
    assert!(standing("judged") >= 3 && standing("decided") >= 30 && standing("on") >= 1);
    let is_off = |row: &&Value| row["standing"] != "on" && row["standing"] != "refitted";
    assert!(rows.iter().filter(is_off).all(|row| row["place"] != json!([])));
    assert!(rows.iter().any(|row| row["place"].as_array().unwrap().len() >= 4), "no place within places");
    assert!(
        ask("assemblies", &json!({}))["vehicles"].as_array().unwrap().iter().any(|one| one["values"]["donor"] == true)
    );
}

/// One assembly is refitted, one ready, the others blocked, each by what is told; the box that was counted lacks one part and
/// holds one that belongs elsewhere; only the hub nut, the seal and the stub axle of the hub have a day.
#[test]
fn it_is_being_put_together_again() {
    let ready = ask("ready", &json!({"today": "2026-11-28"}));
    let lines = ready["assemblies"].as_array().unwrap();
    let state = |name: &str| lines.iter().find(|line| line["name"] == name).unwrap()["state"].clone();
    assert_eq!(
        (state("Pedals"), state("Hand brake"), state("Front hub")),
        (json!("refitted"), json!("ready"), json!("blocked"))
    );
    for line in lines {
        let is_blocked = !["Pedals", "Hand brake"].contains(&line["name"].as_str().unwrap());
        assert_eq!((line["state"] == "blocked", line["lacks"] != json!([])), (is_blocked, is_blocked), "{line}");
    }
    let hub = lines.iter().find(|line| line["name"] == "Front hub").unwrap();
    let dated = hub["lacks"].as_array().unwrap().iter().filter(|lack| lack.get("day").is_some());
    let dated: BTreeSet<(&str, &str)> =
        dated.map(|lack| (lack["name"].as_str().unwrap(), lack["day"].as_str().unwrap())).collect();
    let expected = [("Grease seal, hub", "2026-12-10"), ("Hub nut", "2026-12-05"), ("Stub axle", "2026-12-12")];
    assert_eq!(dated, BTreeSet::from(expected));
    assert_eq!((&ready["circles"], &ready["loose"]), (&json!([]), &json!([])));
    let missing = ask("missing", &json!({"today": "2026-11-28"}));
    let names = |lines: &Value| {
        lines
            .as_array()
            .unwrap()
            .iter()
            .map(|line| line["line"]["name"].as_str().unwrap().to_owned())
            .collect::<Vec<_>>()
    };
    assert_eq!((names(&missing["missed"]), names(&missing["nowhere"])), (vec!["Grease cap".to_owned()], vec![]));
    let places = ask("places", &json!({}));
    let seven =
        places["places"].as_array().unwrap().iter().find(|line| line["record"]["values"]["name"] == "Box 07").unwrap();
    let view = ask("place", &json!({"place": seven["record"]["id"]}));
    let found = |word: &str| {
        let lines = view["parts"].as_array().unwrap().iter().filter(|line| line["counted"] == word);
        lines.map(|line| line["line"]["name"].as_str().unwrap()).collect::<Vec<_>>()
    };
    assert_eq!((found("missing"), found("foreign")), (vec!["Grease cap"], vec!["Wheel cylinder, upper"]));
}

#[test]
fn every_part_has_its_photos_and_every_photo_its_bytes() {
    let (mut photos, mut marks, mut notes, mut moments) = (0, 0, 0, BTreeSet::new());
    for row in rows() {
        let part = ask("part", &json!({"tag": row["tag"]}));
        let of_part = part["photos"].as_array().unwrap();
        assert!(!of_part.is_empty(), "{}", row["name"]);
        photos += of_part.len();
        marks += of_part.iter().filter(|photo| photo["marks"] != json!([])).count();
        notes += part["notes"].as_array().unwrap().len();
        moments
            .extend(of_part.iter().filter_map(|photo| photo["record"]["values"]["moment"].as_str().map(str::to_owned)));
    }
    assert!(photos > 70 && marks >= 5 && notes >= 30, "{photos} photos, {marks} with marks, {notes} notes");
    assert_eq!(moments, BTreeSet::from(["after", "before", "off"].map(str::to_owned)));
    // A photo that is named and not in the file would have been a problem; here each is a picture without anything beside it.
    let zip = fs::read(&FILE.1).unwrap();
    for beside in [&b"eXIf"[..], b"Exif", b"tEXt", b"iTXt"] {
        assert!(!zip.windows(beside.len()).any(|four| four == beside));
    }
}

#[test]
fn quotes_take_every_route_and_all_sorts_of_figures() {
    let costs = costs();
    let quotes = quotes(&costs);
    let routes: BTreeSet<&str> = quotes.iter().map(|quote| quote["route"].as_str().unwrap()).collect();
    let all = ["buy", "donor", "exchange", "irreplaceable", "kit", "repair-here", "send-out", "use-again"];
    assert_eq!(routes, BTreeSet::from(all));
    for figure in [
        "cash",
        "own_time",
        "chance",
        "strip_again",
        "life",
        "freight",
        "tax",
        "duty",
        "consumables",
        "surcharge",
        "withheld",
        "exchange_rate",
        "valid_until",
        "correctness",
        "wait",
        "fallback",
        "fails_at_bench",
        "cash_least",
        "own_time_most",
        "chance_most",
        "life_least",
        "cash_certainty",
        "own_time_certainty",
        "chance_certainty",
        "life_certainty",
        "wait_most",
        "wait_certainty",
    ] {
        assert!(quotes.iter().any(|quote| !quote["record"]["values"][figure].is_null()), "{figure}");
    }
    let why: BTreeSet<&str> = quotes.iter().filter_map(|quote| quote["why"].as_str()).collect();
    assert_eq!(
        why,
        BTreeSet::from([
            "below-aim",
            "cannot-be-bought",
            "judged-scrap",
            "run-out",
            "safety",
            "single-use",
            "waits-for-proof"
        ])
    );
    assert!(costs.iter().filter(|cost| cost["quotes"].as_array().unwrap().len() >= 2).count() >= 40);
}

#[test]
fn the_routes_that_want_a_second_look_are_there() {
    let costs = costs();
    let any = |is: &dyn Fn(&Value) -> bool| costs.iter().any(is);
    let chosen = |cost: &Value| {
        let id = cost["chosen"]["values"]["quote"].clone();
        cost["quotes"].as_array().unwrap().iter().find(|quote| quote["id"] == id).map(|quote| quote["route"].clone())
    };
    assert!(any(&|cost| chosen(cost) == Some(json!("exchange"))));
    assert!(any(&|cost| chosen(cost) == Some(json!("irreplaceable"))));
    assert!(any(&|cost| cost["kits"]
        .as_array()
        .unwrap()
        .iter()
        .any(|kit| kit["covers"].as_array().unwrap().len() >= 5)));
    assert!(any(&|cost| !cost["overtaken"].is_null()));
    assert!(any(&|cost| cost["open_with"] != json!([])));
    // Undecided, and another route is cheaper as soon as the hours run a little over.
    let flips = |cost: &Value| {
        let near = |flip: &Value| {
            let (now, at) = (flip["now"].as_f64().unwrap(), flip["at"].as_f64().unwrap());
            flip["input"] == "own_time" && at != now && (at - now).abs() <= 0.1 * now
        };
        cost["chosen"].is_null() && cost["flips"].as_array().unwrap().iter().any(near)
    };
    assert!(any(&flips));
}

#[test]
fn its_totals_and_its_purchase_are_told() {
    let totals = ask("totals", &json!({"today": "2026-11-20"}));
    let minor = |name: &str| totals[name]["minor"].as_f64().unwrap();
    assert!(totals["decided"].as_u64().unwrap() > totals["open"].as_u64().unwrap());
    assert!(totals["open"].as_u64().unwrap() >= 3);
    assert!(minor("cash") > 0.0 && minor("peak") > minor("cash") && minor("spent") > 0.0);
    let purchases = totals["purchases"].as_array().unwrap();
    assert!(purchases.iter().any(|purchase| purchase["photos"].as_array().unwrap().len() == 1));
    let head = ask("head", &json!({}));
    assert_eq!(head["settings"]["hour_value"], json!({"minor": 2000, "currency": "GBP"}));
    assert_eq!(head["settings"]["vocabulary"], "british");
}

/// The page tells a sample from a job of one's own by what its id begins with.
#[test]
fn the_page_knows_it_by_its_id() {
    let page = fs::read_to_string(workspace::shell().join("page/first/sample-job.ts")).unwrap();
    let prefix =
        page.split("'").find(|word| word.len() == 16 && word.bytes().all(|byte| byte.is_ascii_hexdigit())).unwrap();
    let id = ask("head", &json!({}))["job"]["id"].as_str().unwrap().to_owned();
    assert!(id.starts_with(prefix), "{id} {prefix}");
}

/// Some parts are looked over and measured: what they come to differs, a limit is typed once for both sides, and what is not
/// decided is ranked by what is at stake.
#[test]
fn some_parts_are_judged() {
    let of = |name: &str, side: Option<&str>| {
        let rows = rows();
        let is = |row: &&Value| row["name"] == name && side.is_none_or(|side| row["side"] == side);
        let tag = rows.iter().find(is).unwrap()["tag"].clone();
        ask("inspect", &json!({"tag": tag}))
    };
    assert_eq!(of("Outer wheel bearing", None)["verdict"], "scrap");
    assert_eq!(of("Leaf spring, left", None)["verdict"], "rework");
    assert_eq!(of("Leaf spring, left", None)["other_side"]["name"], "Leaf spring, right");
    let drum = of("Brake drum, rear", Some("right"));
    assert_eq!(drum["verdict"], "not-known");
    assert_eq!(drum["measures"][0]["limit"]["values"]["text"], "page 88");
    assert_eq!(drum["measures"][0]["condition"], "sound");
    assert_eq!(of("Brake drum, rear", Some("left"))["verdict"], "fit");
    let undecided = ask("undecided", &json!({}));
    let regrets: Vec<f64> =
        undecided["parts"].as_array().unwrap().iter().filter_map(|part| part["regret"]["minor"].as_f64()).collect();
    assert!(regrets[0] > 500.0 && regrets.is_sorted_by(|one, next| one >= next), "{regrets:?}");
}
