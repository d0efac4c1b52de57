//! What pages complain of: uncaught errors, refusals by their policy, errors told on the console. None is heard of in passing:
//! a browser that ends with one fails its journey. Only Chromium keeps such a log.

use std::cell::RefCell;

use anyhow::{bail, ensure};

use crate::browser::Browser;
use crate::engine::Engine;

/// A policy's refusal is told on the console only by some of its rules.
pub(crate) const TELL_REFUSALS: &str = "addEventListener('securitypolicyviolation', (e) => console.error(`policy: ${e.violatedDirective} ${e.blockedURI}`));";

/// Everything heard over all pages of a browser, in all its windows, and what the journey expects of it.
#[derive(Default)]
pub(crate) struct Complaints {
    heard: RefCell<Vec<String>>,
    expected: RefCell<Vec<&'static str>>,
}

impl Browser {
    /// This journey makes its pages complain: those with these words in them do not count.
    pub fn expect_complaints(&self, words: &'static str) {
        self.complaints.expected.borrow_mut().push(words);
    }

    /// Everything complained of since the browser began (Chromium only), but what was expected.
    pub fn complaints(&self) -> anyhow::Result<Vec<String>> {
        if self.engine() != Engine::Chromium {
            bail!("only Chromium keeps a log of complaints");
        }
        let log = self.ask(|session| session.browser_log())?;
        // A request that fails is no complaint: journeys take the network away.
        let bad = log.into_iter().filter(|entry| entry.level == "SEVERE" && entry.source.as_deref() != Some("network"));
        self.complaints.heard.borrow_mut().extend(bad.map(|entry| entry.message));
        let expected = self.complaints.expected.borrow();
        let counts = |heard: &&String| !expected.iter().any(|words| heard.contains(words));
        Ok(self.complaints.heard.borrow().iter().filter(counts).cloned().collect())
    }

    pub(crate) fn has_no_complaints(&self) -> anyhow::Result<()> {
        // A browser that cannot be asked any more was killed from outside, or has failed its journey already.
        let complaints = if self.engine() == Engine::Chromium { self.complaints().unwrap_or_default() } else { vec![] };
        ensure!(complaints.is_empty(), "the page complains: {complaints:#?}");
        Ok(())
    }
}
