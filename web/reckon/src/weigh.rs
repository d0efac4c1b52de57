use asfound_core::costing::reckon;
use asfound_core::job::Query;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsError, JsValue};

use crate::boundary::crossing;
use crate::copy::Copy;

/// Answers a question that draws figures over and over: how sure the quotes of a part are, and what is to be decided first.
///
/// # Errors
/// When the question is none, or not a heavy one.
#[wasm_bindgen(unchecked_return_type = "Reckoned")]
pub fn weigh(copy: &Copy, #[wasm_bindgen(unchecked_param_type = "Query")] query: JsValue) -> Result<JsValue, JsValue> {
    let query: Query = serde_wasm_bindgen::from_value(query).map_err(JsValue::from)?;
    let view = reckon(&copy.job, &query).ok_or_else(|| JsError::new("not a heavy question"))?;
    crossing(&view)
}
