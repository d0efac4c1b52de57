use asfound_core::job::{Job, PartsQuery, Query, TagCode};
use serde::de::DeserializeOwned;
use serde_json::{Map, Value, json};

use super::Unreadable;

/// A question by its word and its arguments; nothing when it is about a tag that nothing carries.
pub(super) fn read<T: DeserializeOwned>(
    job: &Job,
    word: &str,
    arguments: Option<&str>,
) -> Result<Option<T>, Unreadable> {
    let mut question = object(arguments)?;
    if let Some(member) = member_by_tag(word)
        && let Some(tag) = question.remove("tag")
    {
        let tag = tag.as_i64().ok_or_else(|| Unreadable::asked("tag is not a number"))?;
        let found = if word == "place" { job.places_with_tag(tag).next() } else { job.parts_with_tag(tag).next() };
        let Some(id) = found else { return Ok(None) };
        question.insert(member.to_owned(), json!(id));
    }
    if word == "tag"
        && let Some(number) = question.remove("number")
    {
        let code = number.as_i64().and_then(TagCode::new).ok_or_else(|| Unreadable::asked("no number of a tag"))?;
        question.insert("text".to_owned(), json!(code.to_string()));
    }
    question.insert("ask".to_owned(), json!(word));
    serde_json::from_value(Value::Object(question)).map(Some).map_err(unreadable)
}

/// Which parts a list is about.
pub(super) fn parts(job: &Job, arguments: Option<&str>) -> Result<PartsQuery, Unreadable> {
    match read::<Query>(job, "parts", arguments)? {
        Some(Query::Parts(query)) => Ok(query),
        _ => Ok(PartsQuery::default()),
    }
}

/// Where the id of a part, or of a place, stands in questions about one.
fn member_by_tag(word: &str) -> Option<&'static str> {
    match word {
        "part" | "cost" | "certainty" | "inspect" | "cautions" | "refit-step" | "where" => Some("part"),
        "place" => Some("place"),
        "history" => Some("id"),
        _ => None,
    }
}

fn object(arguments: Option<&str>) -> Result<Map<String, Value>, Unreadable> {
    serde_json::from_str(arguments.unwrap_or("{}")).map_err(unreadable)
}

#[expect(clippy::needless_pass_by_value, reason = "as map_err hands it over")]
fn unreadable(error: serde_json::Error) -> Unreadable {
    Unreadable::asked(&error.to_string())
}
