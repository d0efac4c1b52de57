use std::path::Path;

use asfound_core::job::Job;
use asfound_core::papers::{PaperWords, photos_of_refit, refit_html};
use asfound_core::problem::{Code, Problem};
use asfound_core::quantity::Day;
use asfound_core::record::Id;
use serde::Deserialize;
use serde_json::{Value, json};

use super::opened::Opened;
use super::{Answer, Unreadable, output, thumbs};

pub(super) const KIND: &str = "refit-html";

#[derive(Deserialize)]
struct Asked {
    assembly: Id,
}

/// Writes the steps of an assembly as a page for the wall. Where nothing of it was off that is told, and nothing is written.
pub(super) fn paper(
    opened: &Opened,
    job: &Job,
    mut problems: Vec<Problem>,
    out: &Path,
    arguments: Option<&str>,
    today: Option<Day>,
) -> Result<Answer, Unreadable> {
    let asked: Asked = serde_json::from_str(arguments.unwrap_or("{}"))
        .map_err(|error: serde_json::Error| Unreadable::asked(&error.to_string()))?;
    let photos = photos_of_refit(job, asked.assembly);
    let (thumbs, damaged) = thumbs::of(photos.iter().copied(), opened);
    problems.extend(damaged);
    let Some(page) = refit_html(job, asked.assembly, today, &thumbs, &PaperWords::default()) else {
        problems.push(Problem::error(Code::UnknownRecord).at(asked.assembly).value("id", asked.assembly));
        return Ok(Answer { view: Value::Null, problems });
    };
    output::put(out, page.as_bytes())?;
    let steps = page.matches("<li class=\"step\">").count();
    Ok(Answer { view: json!({"view": "paper", "kind": KIND, "steps": steps, "bytes": page.len()}), problems })
}
