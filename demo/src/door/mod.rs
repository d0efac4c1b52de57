//! The native door: works job files from a shell, through the core alone, with the page's own commands, queries and views.
//! `demo/PROTOCOL.md` describes all of it.

mod answer;
mod blobs;
mod command_file;
mod moment;
mod opened;
mod output;
mod question;
mod tags;
mod thumbs;
mod wall_sheet;

use std::path::Path;

use asfound_core::job::{Context, Query, View, apply as carry_out, ask as answer_to, troubles};
use asfound_core::papers::{Errand, Errands, PaperWords, errands_csv, errands_html, parts_csv, parts_html};
use asfound_core::problem::{Code, Hint, Problem};
use asfound_core::quantity::{Day, Millis};
use asfound_core::reckoning::{Reckoned, reckon};
use asfound_core::record::{Id, Kind, Replica};
use serde_json::{Value, json};

pub use answer::{Answer, Unreadable};
use blobs::Blobs;
pub use moment::moment;
use opened::Opened;

/// What `apply` is told besides its files.
#[derive(Debug, Clone, Copy)]
pub struct Applying<'a> {
    /// Who records.
    pub replica: Replica,
    /// From whose block tags are drawn.
    pub device: Id,
    /// When it is.
    pub at: Millis,
    /// Where new photos lie.
    pub photos: Option<&'a Path>,
}

/// A device for those who name none: one for each replica.
#[must_use]
pub fn device_of(replica: Replica) -> Id {
    let mut bytes = [0; 16];
    bytes[..8].copy_from_slice(replica.bytes());
    Id::derived(Id::from_bytes(bytes), "device", 0)
}

/// Carries out commands, one a line, on a job file or, with `-`, on a new job. What one line gets wrong stops that line.
///
/// # Errors
/// When something cannot be read; nothing is written then.
pub fn apply(from: &str, commands: &Path, out: &Path, applying: Applying<'_>) -> Result<Answer, Unreadable> {
    let opened = if from == "-" { None } else { Some(Opened::read(Path::new(from))?) };
    let lines = command_file::read(commands, applying.photos)?;
    let (mut job, mut problems) = opened.as_ref().map_or_else(Default::default, Opened::job);
    let context = Context { replica: applying.replica, device: applying.device, at: applying.at };
    let (mut done, mut again, mut refused) = (0, 0, 0);
    for (line, sent) in &lines {
        let applied = carry_out(&job, sent, &context);
        match (applied.again, applied.entries.is_empty()) {
            (true, _) => again += 1,
            (false, true) => refused += 1,
            (false, false) => done += 1,
        }
        problems.extend(applied.problems.into_iter().map(|problem| problem.value("line", line)));
        job.absorb(applied.entries);
    }
    let written = output::job_file(out, &job, &Blobs::new(opened.as_slice(), applying.photos)?)?;
    problems.extend(written.problems);
    let entries = job.record().len();
    let view = json!({"view": "applied", "job": job.id(), "done": done, "again": again, "refused": refused,
        "entries": entries, "photos": written.blobs});
    Ok(Answer { view, problems })
}

/// Brings two job files of one job together.
///
/// # Errors
/// When one of them cannot be read; nothing is written then.
pub fn merge(a: &Path, b: &Path, out: &Path) -> Result<Answer, Unreadable> {
    let files = [Opened::read(a)?, Opened::read(b)?];
    let (mut job, mut problems) = files[0].job();
    let brought = files[1].file().dry_run(Some(&job), &|hash| files[0].has(hash));
    if brought.other_job {
        let ids = job.id().into_iter().chain(brought.job).collect();
        let view = json!({"view": "merged", "job": job.id(), "brought": brought});
        return Ok(Answer { view, problems: vec![Problem::error(Code::OtherJob).with(ids)] });
    }
    let (theirs, damaged) = files[1].job();
    problems.extend(damaged);
    job.absorb(theirs.record().entries().cloned());
    let written = output::job_file(out, &job, &Blobs::new(&files, None)?)?;
    problems.extend(written.problems);
    problems.extend(troubles(&job));
    let view = json!({"view": "merged", "job": job.id(), "entries": job.record().len(), "photos": written.blobs,
        "brought": brought});
    Ok(Answer { view, problems })
}

/// Writes the sample job.
///
/// # Errors
/// When it cannot be made, or the file cannot be written.
pub fn sample(out: &Path) -> Result<Answer, Unreadable> {
    let bytes = crate::sample::job_file().map_err(|error| Unreadable::asked(&format!("{error:#}")))?;
    output::put(out, &bytes)?;
    let (job, problems) = Opened::read(out)?.job();
    let parts = job.ids(Kind::Part).count();
    let view = json!({"view": "sample", "job": job.id(), "parts": parts, "photos": job.blobs().len()});
    Ok(Answer { view, problems })
}

/// Answers a question about a job file.
///
/// # Errors
/// When the file or the question cannot be read.
pub fn ask(file: &Path, word: &str, arguments: Option<&str>, device: Option<Id>) -> Result<Answer, Unreadable> {
    let opened = Opened::read(file)?;
    let (job, mut problems) = opened.job();
    let device = device.or_else(|| job.ids(Kind::Device).next()).unwrap_or(Id::from_bytes([0; 16]));
    let view =
        if matches!(word, "certainty" | "undecided" | "plan" | "frontier" | "sway" | "kept-plans" | "kit-contents") {
            as_json(&question::read(&job, word, arguments)?.map_or(Reckoned::Nothing, |query| reckon(&job, &query)))
        } else {
            let query: Option<Query> = question::read(&job, word, arguments)?;
            as_json(&query.map_or(View::Nothing, |query| answer_to(&job, &query, device)))
        };
    problems.extend(opened.missing(&job));
    problems.extend(troubles(&job));
    Ok(Answer { view, problems })
}

/// Writes a list. `today` says which quotes have run out.
///
/// # Errors
/// When the file or the question cannot be read, or the kind is not known.
pub fn paper(
    file: &Path,
    kind: &str,
    out: &Path,
    arguments: Option<&str>,
    today: Option<Day>,
) -> Result<Answer, Unreadable> {
    let opened = Opened::read(file)?;
    let (job, mut problems) = opened.job();
    if kind == tags::KIND {
        return tags::paper(&job, problems, out, arguments);
    }
    if kind == wall_sheet::KIND {
        return wall_sheet::paper(&opened, &job, problems, out, arguments, today);
    }
    let query = question::parts(&job, arguments)?;
    let words = PaperWords::default();
    let text = match kind {
        "parts-csv" => parts_csv(&job, &query, today, &words),
        "to-buy-csv" => errands_csv(&job, Errand::Buy, &query, today, &words),
        "to-send-csv" => errands_csv(&job, Errand::Send, &query, today, &words),
        "parts-html" | "to-buy-html" | "to-send-html" => {
            let (thumbs, damaged) = thumbs::of_list(&job, &query, &opened);
            problems.extend(damaged);
            match errand(kind) {
                Some(errand) => errands_html(&job, errand, &query, today, &thumbs, &words),
                None => parts_html(&job, &query, today, &thumbs, &words),
            }
        }
        _ => return Err(Unreadable::asked(&format!("no paper {kind}: {PAPERS}"))),
    };
    output::put(out, text.as_bytes())?;
    let parts = errand(kind)
        .map_or_else(|| job.parts_found(&query).len(), |errand| Errands::of(&job, errand, &query, today).parts());
    Ok(Answer { view: json!({"view": "paper", "kind": kind, "parts": parts, "bytes": text.len()}), problems })
}

const PAPERS: &str = "parts-csv, parts-html, to-buy-csv, to-buy-html, to-send-csv, to-send-html, refit-html, tags-pdf";

fn errand(kind: &str) -> Option<Errand> {
    match kind {
        "to-buy-csv" | "to-buy-html" => Some(Errand::Buy),
        "to-send-csv" | "to-send-html" => Some(Errand::Send),
        _ => None,
    }
}

fn as_json(view: &impl serde::Serialize) -> Value {
    serde_json::to_value(view).unwrap_or(Value::Null)
}

/// A new photo is named in the record but lies nowhere.
fn not_there(file: &str) -> Problem {
    Problem::error(Code::BlobMissing).value("file", file).hint(Hint::CorrectValue)
}
