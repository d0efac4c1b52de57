//! Using a page as a person does.

use std::path::Path;

use anyhow::Context;
use thirtyfour::Key;

use crate::browser::Browser;

impl Browser {
    /// Waits for an element and clicks it.
    pub fn click(&self, selector: &str) -> anyhow::Result<()> {
        self.wait_for(selector)?;
        let element = self.element(selector)?;
        self.ask(|_| element.click()).with_context(|| format!("clicking {selector}"))
    }

    /// Waits for a field and types into it, after what it holds already.
    pub fn type_into(&self, selector: &str, words: &str) -> anyhow::Result<()> {
        self.wait_for(selector)?;
        let element = self.element(selector)?;
        self.ask(|_| element.send_keys(words)).with_context(|| format!("typing into {selector}"))
    }

    /// Waits for a field, empties it and types into it.
    pub fn replace_in(&self, selector: &str, words: &str) -> anyhow::Result<()> {
        self.wait_for(selector)?;
        let element = self.element(selector)?;
        self.ask(|_| element.clear()).with_context(|| format!("emptying {selector}"))?;
        self.type_into(selector, words)
    }

    /// Hands a file to a file field, which may be hidden.
    pub fn upload(&self, selector: &str, file: &Path) -> anyhow::Result<()> {
        let file = file.canonicalize().with_context(|| format!("{}", file.display()))?;
        self.type_into(selector, &file.to_string_lossy())
    }

    /// Types at whatever has the focus.
    pub fn type_text(&self, words: &str) -> anyhow::Result<()> {
        self.ask(|session| async move { session.action_chain().send_keys(words).perform().await })
    }

    /// Presses one key at whatever has the focus.
    pub fn press(&self, key: Key) -> anyhow::Result<()> {
        self.type_text(&key.value().to_string())
    }
}
