//! Works job files from a shell. `demo/PROTOCOL.md` describes every command and question.

use std::ffi::OsString;
use std::io::{self, Write};
use std::path::Path;
use std::process::ExitCode;

use asfound_core::quantity::Day;
use asfound_core::record::{Id, Replica};
use asfound_demo::door::{self, Answer, Applying, Unreadable};

const USAGE: &str = "\
asfound apply IN|- COMMANDS.jsonl OUT --replica HEX16 --at RFC3339 [--device HEX32] [--photos DIR]
asfound merge A B OUT
asfound ask JOBFILE QUERY ['{args}'] [--device HEX32]
asfound paper JOBFILE parts-csv|parts-html|to-buy-csv|to-buy-html|to-send-csv|to-send-html|refit-html|tags-pdf OUT ['{args}'] [--today YYYY-MM-DD]
asfound sample OUT

Standard output: {\"form\":1,\"view\":…,\"problems\":[…]}
Exit: 0; 1 when a problem is an error; 2 when the input cannot be read.";

fn main() -> ExitCode {
    let words: Vec<OsString> = std::env::args_os().skip(1).collect();
    if words.iter().any(|word| word == "--help" || word == "-h") {
        return say(USAGE, 0);
    }
    match text(words).and_then(run) {
        Ok(answer) => say(&answer.to_json(), answer.exit_code()),
        Err(unreadable) => say(&unreadable.into_answer().to_json(), 2),
    }
}

/// Says it on standard output; where nobody can be told, the exit code says that, too.
fn say(text: &str, exit_code: u8) -> ExitCode {
    let mut out = io::stdout().lock();
    let said = writeln!(out, "{text}").and_then(|()| out.flush());
    ExitCode::from(if said.is_ok() { exit_code } else { 2 })
}

/// A word that is no text cannot be told in an answer either.
fn text(words: Vec<OsString>) -> Result<Vec<String>, Unreadable> {
    let text =
        |word: OsString| word.into_string().map_err(|_| Unreadable::asked("a word on the command line is not UTF-8"));
    words.into_iter().map(text).collect()
}

fn run(words: Vec<String>) -> Result<Answer, Unreadable> {
    let told = Told::read(words)?;
    let words: Vec<&str> = told.words.iter().map(String::as_str).collect();
    match words[..] {
        ["apply", from, commands, out] => {
            let applying = told.applying()?;
            door::apply(from, Path::new(commands), Path::new(out), applying)
        }
        ["merge", a, b, out] => door::merge(Path::new(a), Path::new(b), Path::new(out)),
        ["ask", file, query] => door::ask(Path::new(file), query, None, told.device()?),
        ["ask", file, query, arguments] => door::ask(Path::new(file), query, Some(arguments), told.device()?),
        ["paper", file, kind, out] => door::paper(Path::new(file), kind, Path::new(out), None, told.today()?),
        ["paper", file, kind, out, arguments] => {
            door::paper(Path::new(file), kind, Path::new(out), Some(arguments), told.today()?)
        }
        ["sample", out] => door::sample(Path::new(out)),
        _ => {
            eprintln!("{USAGE}");
            Err(Unreadable::asked("no such command"))
        }
    }
}

/// What was said on the command line.
#[derive(Default)]
struct Told {
    words: Vec<String>,
    replica: Option<String>,
    at: Option<String>,
    device: Option<String>,
    photos: Option<String>,
    today: Option<String>,
}

impl Told {
    fn read(words: Vec<String>) -> Result<Self, Unreadable> {
        let mut told = Self::default();
        let mut words = words.into_iter();
        while let Some(word) = words.next() {
            let option = match word.as_str() {
                "--replica" => &mut told.replica,
                "--at" => &mut told.at,
                "--device" => &mut told.device,
                "--photos" => &mut told.photos,
                "--today" => &mut told.today,
                _ if word.starts_with("--") => return Err(Unreadable::asked(&format!("no option {word}"))),
                _ => {
                    told.words.push(word);
                    continue;
                }
            };
            *option = Some(words.next().ok_or_else(|| Unreadable::asked(&format!("{word} wants a value")))?);
        }
        Ok(told)
    }

    fn device(&self) -> Result<Option<Id>, Unreadable> {
        self.device.as_ref().map(|id| id.parse().map_err(|error: String| Unreadable::asked(&error))).transpose()
    }

    fn today(&self) -> Result<Option<Day>, Unreadable> {
        let day = |text: &String| Day::parse(text).ok_or_else(|| Unreadable::asked("--today wants YYYY-MM-DD"));
        self.today.as_ref().map(day).transpose()
    }

    fn applying(&self) -> Result<Applying<'_>, Unreadable> {
        let wanted = |option: &str| Unreadable::asked(&format!("apply wants {option}"));
        let replica: Replica =
            self.replica.as_ref().and_then(|hex| hex.parse().ok()).ok_or_else(|| wanted("--replica HEX16"))?;
        let at = self.at.as_deref().and_then(door::moment).ok_or_else(|| wanted("--at RFC3339"))?;
        let device = self.device()?.unwrap_or_else(|| door::device_of(replica));
        Ok(Applying { replica, device, at, photos: self.photos.as_deref().map(Path::new) })
    }
}
