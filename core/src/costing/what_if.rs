use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::input::{Dial, Input, Setting};
use crate::record::Id;

/// Figures turned for one question, without writing anything: of quotes by their id, and of the job.
///
/// Each is in the unit of its [`Input`]: money in minor units of the job's currency, hours in minutes, chances from 0 to 1, a
/// life in months, interest as a share, years. What is beyond the accepted is kept within it.
///
/// ```
/// use asfound_core::costing::WhatIf;
/// let set: WhatIf = serde_json::from_str(r#"{"job":{"hour_value":2500}}"#).unwrap();
/// assert_eq!(set.job.len(), 1);
/// ```
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct WhatIf {
    /// Of quotes.
    #[cfg_attr(feature = "ts", tsify(type = "Record<string, Partial<Record<Input, number>>>"))]
    pub quotes: BTreeMap<Id, BTreeMap<Input, f64>>,
    /// Of the job.
    #[cfg_attr(feature = "ts", tsify(type = "Partial<Record<Input, number>>"))]
    pub job: BTreeMap<Input, f64>,
}

impl WhatIf {
    /// Turns the figures. One of the job is not turned under a quote, nor the other way round.
    pub fn turn(&self, setting: &mut Setting) {
        let of_quotes = self.quotes.iter().flat_map(|(id, inputs)| {
            let of_quote = inputs.iter().filter(|(input, _)| Input::OF_QUOTE.contains(input));
            of_quote.map(|(input, to)| (Some(*id), *input, *to))
        });
        let of_job = self.job.iter().map(|(input, to)| (None, *input, *to));
        for (quote, input, to) in of_quotes.chain(of_job) {
            *setting = setting.turned(Dial { input, quote }, to.max(input.least()));
        }
    }
}
