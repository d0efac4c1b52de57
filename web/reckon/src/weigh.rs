use asfound_core::reckoning::{HeavyQuery, reckon};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::boundary::crossing;
use crate::copy::Copy;

/// Answers a question that draws figures over and over: how sure the quotes of a part are, and what is to be decided first.
///
/// # Errors
/// When the question is none of these.
#[wasm_bindgen(unchecked_return_type = "Reckoned")]
pub fn weigh(
    copy: &Copy,
    #[wasm_bindgen(unchecked_param_type = "HeavyQuery")] query: JsValue,
) -> Result<JsValue, JsValue> {
    let query: HeavyQuery = serde_wasm_bindgen::from_value(query).map_err(JsValue::from)?;
    crossing(&reckon(&copy.job, &query))
}
