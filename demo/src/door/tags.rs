use std::path::Path;

use asfound_core::job::Job;
use asfound_core::papers::{PaperWords, TagSheets, TagsPaper};
use asfound_core::problem::Problem;
use serde_json::{Value, json};

use super::{Answer, Unreadable, output};

pub(super) const KIND: &str = "tags-pdf";

/// Writes sheets of tags; without arguments, all parts on A4. What cannot be printed is told, and nothing is written.
pub(super) fn paper(
    job: &Job,
    mut problems: Vec<Problem>,
    out: &Path,
    arguments: Option<&str>,
) -> Result<Answer, Unreadable> {
    let asked = arguments.unwrap_or(r#"{"labels":{"of":"parts"}}"#);
    let paper: TagsPaper = serde_json::from_str(asked).map_err(|error| Unreadable::asked(&error.to_string()))?;
    let words = PaperWords::default();
    let sheets = match TagSheets::of(job, &paper, &words) {
        Ok(sheets) => sheets,
        Err(problem) => {
            problems.push(problem);
            return Ok(Answer { view: Value::Null, problems });
        }
    };
    let pdf = sheets.pdf(&words.page.tags);
    output::put(out, &pdf)?;
    let view = json!({"view": "paper", "kind": KIND, "labels": sheets.labels(), "sheets": sheets.sheets(),
        "untagged": sheets.untagged, "unprinted": sheets.unprinted(), "bytes": pdf.len()});
    Ok(Answer { view, problems })
}
