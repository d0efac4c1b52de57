//! Runs every example of `PROTOCOL.md`, in its order, and checks that nothing of the protocol is left out of it.

use std::fs;
use std::path::Path;
use std::process::Command;

use asfound_core::record::{FieldName, Kind};
use asfound_demo::workspace;
use serde_json::Value;

const PAGE: &str = include_str!("../PROTOCOL.md");

/// The fenced blocks of the page: what stands after the fence, and the block.
fn blocks() -> Vec<(&'static str, &'static str)> {
    let fenced = PAGE.split("\n```").skip(1).step_by(2);
    fenced.map(|block| block.split_once('\n').unwrap()).collect()
}

#[test]
fn every_example_does_what_it_says() {
    let folder = tempfile::tempdir().unwrap();
    let photos = folder.path().join("photos");
    fs::create_dir(&photos).unwrap();
    fs::write(photos.join("hub.jpg"), include_bytes!("../../tests/suite/photos/hub.jpg")).unwrap();
    let mut examples = 0;
    for (fence, block) in blocks() {
        if let Some(name) = fence.strip_prefix("jsonl ") {
            fs::write(folder.path().join(name), block).unwrap();
        } else if fence == "console" {
            examples += run(folder.path(), block);
        }
    }
    assert!(examples >= 25, "only {examples} examples were found");
}

/// Runs a block: lines that begin with `$`, each followed by what it answers and, if not 0, the exit code.
fn run(folder: &Path, block: &str) -> usize {
    let examples = format!("\n{block}");
    let examples: Vec<&str> = examples.split("\n$ asfound ").skip(1).collect();
    for example in &examples {
        let (words, expected) = example.split_once('\n').unwrap();
        let (expected, exit) = expected.split_once("\n[exit ").unwrap_or((expected, "0]"));
        let output =
            Command::new(env!("CARGO_BIN_EXE_asfound")).current_dir(folder).args(split(words)).output().unwrap();
        let answer: Value = serde_json::from_slice(&output.stdout).unwrap();
        let expected: Value = serde_json::from_str(expected.trim()).unwrap();
        assert_eq!(answer["form"], 1);
        assert!(holds(&answer, &expected), "{words}\nanswered {answer}\nexpected {expected}");
        assert_eq!(format!("{}]", output.status.code().unwrap()), exit.trim(), "{words}");
    }
    examples.len()
}

/// Words, those with quotes around them whole.
fn split(words: &str) -> Vec<&str> {
    let mut all = Vec::new();
    for (index, stretch) in words.split('\'').enumerate() {
        if index % 2 == 1 { all.push(stretch) } else { all.extend(stretch.split_whitespace()) }
    }
    all
}

/// Whether an answer says at least what is expected; arrays have as many members.
fn holds(answer: &Value, expected: &Value) -> bool {
    match (answer, expected) {
        (Value::Object(answer), Value::Object(expected)) => {
            expected.iter().all(|(name, value)| answer.get(name).is_some_and(|told| holds(told, value)))
        }
        (Value::Array(answer), Value::Array(expected)) => {
            answer.len() == expected.len() && answer.iter().zip(expected).all(|(told, value)| holds(told, value))
        }
        _ => answer == expected,
    }
}

#[test]
fn what_is_missing_from_an_answer_is_seen() {
    let value = |text: &str| serde_json::from_str::<Value>(text).unwrap();
    assert!(holds(&value(r#"{"a":1,"b":[{"c":2,"d":3}]}"#), &value(r#"{"b":[{"d":3}]}"#)));
    for expected in [r#"{"a":2}"#, r#"{"e":1}"#, r#"{"b":[]}"#, r#"{"b":[{"d":4}]}"#, "[]"] {
        assert!(!holds(&value(r#"{"a":1,"b":[{"c":2,"d":3}]}"#), &value(expected)), "{expected}");
    }
}

/// The words that stand behind a tag in the generated protocol.
fn words(tag: &str) -> Vec<String> {
    let protocol = fs::read_to_string(workspace::shell().join("bridge/protocol.ts")).unwrap();
    let before = format!("{tag}: \"");
    let words = protocol.split(&before).skip(1).map(|rest| rest.split('"').next().unwrap().to_owned());
    words.collect()
}

#[test]
fn every_command_and_question_has_an_example() {
    let examples: String = blocks().iter().map(|(_, block)| *block).collect();
    let (commands, questions) = (words("do"), words("ask"));
    assert!(commands.len() >= 6 && questions.len() >= 10, "{commands:?} {questions:?}");
    for command in commands {
        assert!(examples.contains(&format!("{{\"do\":\"{command}\"")), "{command}");
        assert!(PAGE.contains(&format!("### {command}\n")), "{command}");
    }
    for question in questions {
        assert!(examples.contains(&format!(".zip {question}")), "{question}");
    }
}

#[test]
fn every_field_stands_in_the_table_on_its_kinds() {
    let name = |field: FieldName| serde_json::to_value(field).unwrap().as_str().unwrap().to_owned();
    for field in FieldName::ALL.iter().filter(|field| !matches!(field, FieldName::Kind | FieldName::Done)) {
        let kinds: Vec<&str> = Kind::ALL.iter().filter(|kind| field.is_on(**kind)).map(|kind| kind.word()).collect();
        let row = PAGE.lines().find_map(|line| line.strip_prefix(&format!("| `{}` | ", name(*field)))).unwrap();
        let told = row.split(" | ").next().unwrap();
        let mut told: Vec<&str> =
            if told == "all" { Kind::ALL.iter().map(|kind| kind.word()).collect() } else { told.split(", ").collect() };
        told.sort_unstable();
        let mut kinds = kinds;
        kinds.sort_unstable();
        assert_eq!(told, kinds, "{field:?}");
    }
}
