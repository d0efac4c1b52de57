use std::error::Error;

use serde::Serialize;

/// Why the store could not do what it was asked.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Failure {
    /// Which trouble it is.
    pub code: TroubleCode,
    /// What the browser said, for a report; never shown as it is.
    pub detail: String,
}

/// The troubles that the page knows; each has its sentence there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum TroubleCode {
    /// No room is left.
    QuotaExceeded,
    /// The browser took back what it was to store.
    TransactionAborted,
    /// The database does not answer on this connection.
    ConnectionLost,
    /// The database was written by a newer version.
    NewerDatabase,
    /// Another window with a newer version closed it.
    ClosedElsewhere,
    /// A chunk or an entry is damaged; it was set aside.
    ChunkDamaged,
    /// This browser keeps nothing here.
    PrivateWindow,
    /// What was stored cannot be read back as it was written.
    ReadFailed,
}

impl Failure {
    /// A failure with what is known of it.
    #[must_use]
    pub fn new(code: TroubleCode, detail: impl Into<String>) -> Self {
        Self { code, detail: detail.into() }
    }

    /// What rexie says, with its whole chain of causes: its own words alone say nothing.
    #[must_use]
    pub(super) fn of(error: &rexie::Error) -> Self {
        Self::named(chain(error))
    }

    /// From the browser's words, which hold the name of its exception.
    #[must_use]
    pub(super) fn named(detail: String) -> Self {
        let code = NAMES.iter().find(|(name, _)| detail.contains(name)).map(|(_, code)| *code);
        Self { code: code.unwrap_or(TroubleCode::ConnectionLost), detail }
    }
}

/// The browsers' names, the telling ones first.
const NAMES: [(&str, TroubleCode); 12] = [
    ("QuotaExceededError", TroubleCode::QuotaExceeded),
    ("VersionError", TroubleCode::NewerDatabase),
    ("SecurityError", TroubleCode::PrivateWindow),
    ("indexed db not found", TroubleCode::PrivateWindow),
    ("NotReadableError", TroubleCode::ReadFailed),
    ("DataCloneError", TroubleCode::ReadFailed),
    ("ConstraintError", TroubleCode::TransactionAborted),
    ("InvalidStateError", TroubleCode::ConnectionLost),
    ("UnknownError", TroubleCode::ConnectionLost),
    ("NotFoundError", TroubleCode::NewerDatabase),
    ("AbortError", TroubleCode::TransactionAborted),
    ("TransactionInactiveError", TroubleCode::TransactionAborted),
];

fn chain(error: &dyn Error) -> String {
    let mut words = error.to_string();
    let mut next = error.source();
    while let Some(source) = next {
        words.push_str(": ");
        words.push_str(&source.to_string());
        next = source.source();
    }
    words
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_browsers_names_are_told_apart() {
        for (words, code) in [
            ("idb error: failed to add a value: QuotaExceededError: full", TroubleCode::QuotaExceeded),
            ("idb error: DOM exception: AbortError", TroubleCode::TransactionAborted),
            ("idb error: DOM exception: VersionError: less than existing", TroubleCode::NewerDatabase),
            ("UnknownError: Connection to Indexed Database server lost", TroubleCode::ConnectionLost),
            ("something never seen", TroubleCode::ConnectionLost),
        ] {
            assert_eq!(Failure::named(words.to_owned()).code, code, "{words}");
        }
    }
}
