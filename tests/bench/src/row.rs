//! One line of the table of results.

/// What was measured, beside what, and what it should be.
#[derive(Debug, Default)]
pub(crate) struct Row {
    what: String,
    ours: String,
    beside: String,
    target: String,
    met: Option<bool>,
}

impl Row {
    pub(crate) fn new(what: impl Into<String>, ours: impl Into<String>) -> Self {
        let (what, ours) = (what.into(), ours.into());
        eprintln!("   {what}: {ours}");
        Self { what, ours, ..Self::default() }
    }

    /// The peer or the bare operation, in the same run.
    pub(crate) fn beside(mut self, beside: impl Into<String>) -> Self {
        self.beside = beside.into();
        self
    }

    /// What it should be, and whether it is.
    pub(crate) fn target(mut self, target: impl Into<String>, met: bool) -> Self {
        self.target = target.into();
        self.met = Some(met);
        self
    }

    pub(crate) fn line(&self) -> String {
        let verdict = match self.met {
            None => "",
            Some(true) => "met",
            Some(false) => "**missed**",
        };
        format!("| {} | {} | {} | {} | {verdict} |\n", self.what, self.ours, self.beside, self.target)
    }
}

pub(crate) fn head() -> String {
    "| What | asfound | beside it | target | |\n| --- | --- | --- | --- | --- |\n".to_owned()
}

/// An area that could not be measured is told, never left out.
pub(crate) fn failed(area: &str, error: &anyhow::Error) -> String {
    let first = error.to_string().lines().next().unwrap_or_default().replace('|', "/");
    format!("| {area} | not measured: {first} | | | **failed** |\n")
}

/// How busy the machine was in the last minute: on a busy one times are longer, and ratios less sure.
pub(crate) fn load(area: &str) -> String {
    let load = std::fs::read_to_string("/proc/loadavg").unwrap_or_default();
    let minute = load.split(' ').next().unwrap_or_default();
    format!("| *{area}: load of the machine in its last minute* | *{minute}* | | | |\n")
}
