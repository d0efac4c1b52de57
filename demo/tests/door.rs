//! The native door from outside: only files, words on a command line, and what comes back.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

struct Bench(tempfile::TempDir);

/// What the door said, and its exit code.
struct Said(Value, i32);

impl Said {
    fn codes(&self) -> Vec<&str> {
        self.0["problems"].as_array().unwrap().iter().map(|problem| problem["code"].as_str().unwrap()).collect()
    }
}

const HUB: &str = "00000000000000000000000000000100";

impl Bench {
    fn new() -> Self {
        Self(tempfile::tempdir().unwrap())
    }

    fn path(&self, name: &str) -> PathBuf {
        self.0.path().join(name)
    }

    fn asfound(&self, words: &[&str]) -> Said {
        let output =
            Command::new(env!("CARGO_BIN_EXE_asfound")).current_dir(self.0.path()).args(words).output().unwrap();
        let said = serde_json::from_slice(&output.stdout).unwrap_or_else(|_| panic!("{words:?} said {output:?}"));
        Said(said, output.status.code().unwrap())
    }

    /// The front brake of the suite as `job.zip`.
    fn front_brake(&self) {
        let suite = Path::new(env!("CARGO_MANIFEST_DIR")).join("../tests/suite");
        let (commands, photos) = (suite.join("front-brake.jsonl"), suite.join("photos"));
        let words = ["apply", "-", commands.to_str().unwrap(), "job.zip", "--replica", "0101010101010101"];
        let more = ["--at", "2026-05-01T09:30:00Z", "--photos", photos.to_str().unwrap()];
        let said = self.asfound(&[&words[..], &more].concat());
        assert_eq!((said.1, said.codes()), (0, vec![]));
    }

    fn apply(&self, from: &str, commands: &str, out: &str, replica: &str) -> Said {
        fs::write(self.path("commands.jsonl"), commands).unwrap();
        self.asfound(&["apply", from, "commands.jsonl", out, "--replica", replica, "--at", "2026-05-02T09:30:00+02:00"])
    }

    /// Everything that can be asked of a job file.
    fn views(&self, file: &str) -> Vec<Value> {
        let plain = ["head", "teardown", "assemblies", "parts", "places", "problems"]
            .map(|query| self.asfound(&["ask", file, query]));
        let parts: Vec<String> =
            plain[3].0["view"]["rows"].as_array().unwrap().iter().map(|row| row["id"].to_string()).collect();
        let about = parts.iter().flat_map(|id| {
            let (part, record) = (format!("{{\"part\":{id}}}"), format!("{{\"id\":{id}}}"));
            [("part", part.clone()), ("cost", part), ("history", record)]
        });
        let about: Vec<Said> =
            about.map(|(query, arguments)| self.asfound(&["ask", file, query, &arguments])).collect();
        plain.into_iter().chain(about).map(|said| said.0).collect()
    }

    /// Photos of a job file by name, read by its own means: they are stored as they are.
    fn holds(&self, file: &str, photo: &[u8]) -> bool {
        fs::read(self.path(file)).unwrap().windows(photo.len()).any(|window| window == photo)
    }
}

fn photos() -> BTreeMap<String, Vec<u8>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../tests/suite/photos");
    let files = fs::read_dir(folder).unwrap().map(|file| file.unwrap().path());
    files.map(|path| (path.file_name().unwrap().to_string_lossy().into_owned(), fs::read(path).unwrap())).collect()
}

fn rename(name: &str) -> String {
    format!(r#"{{"do":"change","ids":["{HUB}"],"changes":[{{"name":"{name}"}}]}}"#)
}

#[test]
fn merged_in_either_order_views_and_photos_are_equal() {
    let bench = Bench::new();
    bench.front_brake();
    let photo = b"\xff\xd8 a photo taken elsewhere";
    fs::create_dir(bench.path("new")).unwrap();
    fs::write(bench.path("new/pin.jpg"), photo).unwrap();
    let part = format!(
        "{}\n{}\n{}",
        r#"{"do":"create","id":"00000000000000000000000000000fff","kind":"part","changes":[{"name":"Split pin"}]}"#,
        r#"{"do":"create","id":"00000000000000000000000000000ffe","kind":"photo","changes":[{"of":"00000000000000000000000000000fff"},{"blob":"$file:pin.jpg"},{"media_type":"image/jpeg"}]}"#,
        rename("Hub with studs"),
    );
    fs::write(bench.path("part.jsonl"), part).unwrap();
    let words = [
        "apply",
        "job.zip",
        "part.jsonl",
        "a.zip",
        "--replica",
        "aaaaaaaaaaaaaaaa",
        "--at",
        "2026-05-02T09:30:00Z",
        "--photos",
        "new",
    ];
    assert_eq!(bench.asfound(&words).1, 0);
    assert_eq!(bench.apply("job.zip", &rename("Hub"), "b.zip", "bbbbbbbbbbbbbbbb").1, 0);

    assert_eq!(bench.asfound(&["merge", "a.zip", "b.zip", "ab.zip"]).codes(), ["conflict"]);
    assert_eq!(bench.asfound(&["merge", "b.zip", "a.zip", "ba.zip"]).codes(), ["conflict"]);
    assert_eq!(bench.asfound(&["merge", "ab.zip", "b.zip", "twice.zip"]).codes(), ["conflict"]);
    let views = bench.views("ab.zip");
    assert!(views.len() > 20);
    assert_eq!(views, bench.views("ba.zip"));
    let bytes = |name| fs::read(bench.path(name)).unwrap();
    assert_eq!(bytes("ab.zip"), bytes("ba.zip"));
    assert_eq!(bytes("ab.zip"), bytes("twice.zip"));
    for photo in photos().values().map(Vec::as_slice).chain([&photo[..]]) {
        assert!(bench.holds("ab.zip", photo));
    }
}

#[test]
fn a_damaged_photo_is_told_and_the_rest_is_there() {
    let bench = Bench::new();
    bench.front_brake();
    let mut bytes = fs::read(bench.path("job.zip")).unwrap();
    let hub = &photos()["hub.jpg"];
    let at = bytes.windows(hub.len()).position(|window| window == &hub[..]).unwrap();
    bytes[at + 1000] ^= 1;
    fs::write(bench.path("damaged.zip"), bytes).unwrap();
    let said = bench.asfound(&["paper", "damaged.zip", "parts-html", "list.html"]);
    assert_eq!((said.codes(), said.1), (vec!["damaged"], 0));
    assert!(said.0["problems"][0]["values"]["file"].as_str().unwrap().starts_with("photos/"));
    assert_eq!(fs::read_to_string(bench.path("list.html")).unwrap().matches("<img").count(), 2);
    assert_eq!(bench.views("damaged.zip"), bench.views("job.zip"));

    let healed = bench.asfound(&["merge", "damaged.zip", "job.zip", "healed.zip"]);
    assert_eq!(healed.codes(), Vec::<&str>::new());
    assert_eq!(fs::read(bench.path("healed.zip")).unwrap(), fs::read(bench.path("job.zip")).unwrap());
    let lost = bench.apply("damaged.zip", &rename("Hub"), "lost.zip", "cccccccccccccccc");
    assert_eq!(lost.codes(), ["damaged"]);
    assert_eq!(bench.asfound(&["ask", "lost.zip", "head"]).codes(), ["blob-missing"]);
}

#[test]
fn another_job_is_not_mixed_in() {
    let bench = Bench::new();
    bench.front_brake();
    let create = r#"{"do":"create","id":"000000000000000000000000000000aa","kind":"job","changes":[{"name":"Other"}]}"#;
    assert_eq!(bench.apply("-", create, "other.zip", "dddddddddddddddd").1, 0);
    let said = bench.asfound(&["merge", "job.zip", "other.zip", "mixed.zip"]);
    assert_eq!((said.codes(), said.1), (vec!["other-job"], 1));
    assert!(!bench.path("mixed.zip").exists());
    let again = bench.apply("job.zip", create, "again.zip", "dddddddddddddddd");
    assert_eq!((again.codes(), again.1), (vec!["other-job"], 1));
}

#[test]
fn totals_of_both_papers_agree_and_no_photo_tells_where() {
    let bench = Bench::new();
    bench.front_brake();
    assert_eq!(bench.asfound(&["paper", "job.zip", "parts-csv", "list.csv"]).1, 0);
    assert_eq!(bench.asfound(&["paper", "job.zip", "parts-html", "list.html"]).1, 0);
    let mut reader = csv::ReaderBuilder::new().has_headers(false).from_path(bench.path("list.csv")).unwrap();
    let last = reader.records().last().unwrap().unwrap();
    let page = fs::read_to_string(bench.path("list.html")).unwrap();
    let sums = &page[page.find("class=\"sums\"").unwrap()..];
    for column in [9, 11, 12] {
        assert!(!last[column].is_empty() && sums.contains(&last[column]), "{last:?}");
    }
    assert_eq!(page.matches("data:image/jpeg;base64,/9j/").count(), 3);
    // "Exif" and "GPST" at each of the three places of base64.
    for told in ["RXhpZ", "V4aW", "FeGlm", "R1BTV", "dQU1", "HUFNU"] {
        let pictures: Vec<&str> = page.split("base64,").skip(1).map(|rest| &rest[..40.min(rest.len())]).collect();
        assert!(pictures.iter().all(|start| !start.contains(told)), "{told}");
    }
}

#[test]
fn what_cannot_be_read_ends_with_two_and_writes_nothing() {
    let bench = Bench::new();
    bench.front_brake();
    for commands in [
        "{",
        r#"{"do":"dance"}"#,
        r#"{"do":"undo"}"#,
        r#"{"id":"xx","command":{"do":"undo","entry":"0101010101010101:1"}}"#,
    ] {
        let said = bench.apply("job.zip", &format!("\n{commands}\n"), "out.zip", "eeeeeeeeeeeeeeee");
        assert_eq!((said.codes(), said.1), (vec!["not-ours"], 2), "{commands}");
        assert_eq!(said.0["problems"][0]["values"]["line"], "2");
    }
    let photo = r#"{"do":"create","id":"00000000000000000000000000000ffe","kind":"photo","changes":[{"blob":"$file:../job.zip"}]}"#;
    assert_eq!(bench.apply("job.zip", photo, "out.zip", "eeeeeeeeeeeeeeee").codes(), ["blob-missing"]);
    for words in [
        &["ask", "job.zip", "weather"][..],
        &["ask", "job.zip", "parts", "[]"],
        &["ask", "job.zip", "cost", "{}"],
        &["paper", "job.zip", "poem", "out.zip"],
        &["apply", "job.zip", "commands.jsonl", "out.zip"],
        &["apply", "job.zip", "commands.jsonl", "out.zip", "--replica", "ee", "--at", "2026-05-01T00:00:00Z"],
        &["merge", "job.zip"],
        &["ask", "job.zip", "head", "--loud"],
    ] {
        assert_eq!(bench.asfound(words).1, 2, "{words:?}");
    }
    assert!(!bench.path("out.zip").exists());
}

#[test]
fn what_cannot_be_written_leaves_nothing_behind() {
    let bench = Bench::new();
    bench.front_brake();
    fs::create_dir(bench.path("folder")).unwrap();
    for words in [&["merge", "job.zip", "job.zip", "folder"][..], &["paper", "job.zip", "parts-csv", "folder"]] {
        assert_eq!(bench.asfound(words).1, 2);
        assert!(!bench.path("folder.part").exists(), "{words:?}");
    }
}

#[test]
fn a_byte_order_mark_in_front_of_the_commands_says_nothing() {
    let bench = Bench::new();
    bench.front_brake();
    let said = bench.apply("job.zip", &format!("\u{feff}{}\n", rename("Hub")), "out.zip", "eeeeeeeeeeeeeeee");
    assert_eq!((said.1, said.codes()), (0, vec![]));
}

#[cfg(unix)]
#[test]
fn a_word_that_is_no_text_is_answered() {
    use std::os::unix::ffi::OsStrExt;
    let word = std::ffi::OsStr::from_bytes(b"\xff.zip");
    let output = Command::new(env!("CARGO_BIN_EXE_asfound")).args(["ask".as_ref(), word, "head".as_ref()]).output();
    let output = output.unwrap();
    let said: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!((output.status.code(), &said["problems"][0]["code"]), (Some(2), &Value::from("not-ours")));
}

/// Standard output takes nothing: the exit code still says that something went wrong, and nothing panics.
#[cfg(target_os = "linux")]
#[test]
fn an_answer_that_cannot_be_told_ends_with_two() {
    let full = fs::OpenOptions::new().write(true).open("/dev/full").unwrap();
    let mut door = Command::new(env!("CARGO_BIN_EXE_asfound"));
    let output = door.args(["ask", "nowhere.zip", "head"]).stdout(full).output().unwrap();
    assert_eq!((output.status.code(), output.stderr.len()), (Some(2), 0));
}
