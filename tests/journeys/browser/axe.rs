//! Accessibility by axe-core: WCAG 2.2 A and AA, and its own best practices.

use std::fmt;
use std::fs;

use anyhow::Context;
use asfound_demo::workspace;
use serde_json::{Value, json};

use crate::browser::Browser;

const TAGS: [&str; 6] = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/// One rule broken, with every place that breaks it.
#[derive(Debug)]
pub struct Violation {
    /// The rule's name in axe-core.
    pub rule: String,
    /// What it asks for.
    pub help: String,
    /// The elements, as selectors, each with what is wrong there.
    pub places: Vec<String>,
}

impl fmt::Display for Violation {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(out, "{}: {}", self.rule, self.help)?;
        self.places.iter().try_for_each(|place| writeln!(out, "  {place}"))
    }
}

impl Browser {
    /// Looks at the parts of the page that the selectors name; at all of it
    /// when there are none.
    pub fn axe(&self, selectors: &[&str]) -> anyhow::Result<Vec<Violation>> {
        let path = workspace::shell().join("node_modules/axe-core/axe.min.js");
        let source = fs::read_to_string(&path).with_context(|| format!("{}", path.display()))?;
        let body = format!(
            "{source}
             const [selectors, tags] = given;
             const context = selectors.length > 0 ? {{ include: selectors.map((s) => [s]) }} : document;
             const found = await window.axe.run(context, {{ runOnly: tags, resultTypes: ['violations'] }});
             return found.violations;"
        );
        let found = self.run_async_js(&body, vec![json!(selectors), json!(TAGS)]).context("axe")?;
        Ok(found.as_array().into_iter().flatten().map(violation).collect())
    }
}

fn violation(found: &Value) -> Violation {
    let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
    let place = |node: &Value| format!("{} {}", node["target"], text(&node["failureSummary"]).replace('\n', " "));
    Violation {
        rule: text(&found["id"]),
        help: text(&found["help"]),
        places: found["nodes"].as_array().into_iter().flatten().map(place).collect(),
    }
}
