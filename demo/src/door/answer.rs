use std::path::Path;

use asfound_core::problem::{Code, Problem, Severity};
use serde_json::{Value, json};

/// What the door says: a view and what is wrong.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// The view.
    pub view: Value,
    /// What is wrong.
    pub problems: Vec<Problem>,
}

/// What was handed in cannot be read.
#[derive(Debug)]
pub struct Unreadable(pub Box<Problem>);

impl Answer {
    /// As it goes to standard output.
    #[must_use]
    pub fn to_json(&self) -> String {
        json!({"form": 1, "view": self.view, "problems": self.problems}).to_string()
    }

    /// 1 when a problem is an error, else 0.
    #[must_use]
    pub fn exit_code(&self) -> u8 {
        u8::from(self.problems.iter().any(|problem| problem.severity == Severity::Error))
    }
}

impl Unreadable {
    /// A file that cannot be opened, read or written.
    pub(super) fn file(path: &Path, error: &std::io::Error) -> Self {
        let code = if error.kind() == std::io::ErrorKind::NotFound { Code::Missing } else { Code::NotOurs };
        Self::of(Problem::error(code).value("file", path.display()).value("detail", error))
    }

    /// What was asked makes no sense.
    #[must_use]
    pub fn asked(detail: &str) -> Self {
        Self::of(Problem::error(Code::NotOurs).value("detail", detail))
    }

    pub(super) fn of(problem: Problem) -> Self {
        Self(Box::new(problem))
    }

    /// As it goes to standard output.
    #[must_use]
    pub fn into_answer(self) -> Answer {
        Answer { view: Value::Null, problems: vec![*self.0] }
    }
}
