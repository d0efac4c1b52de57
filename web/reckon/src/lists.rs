use asfound_core::papers::parts_csv;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::boundary::received;
use crate::copy::Copy;

/// The parts list as a table.
///
/// # Errors
/// When the question or the words are none.
#[wasm_bindgen(js_name = partsCsv)]
pub fn csv(
    copy: &Copy,
    #[wasm_bindgen(unchecked_param_type = "PartsQuery")] query: JsValue,
    #[wasm_bindgen(unchecked_param_type = "unknown")] words: JsValue,
) -> Result<String, JsValue> {
    Ok(parts_csv(&copy.job, &received(query)?, &received(words)?))
}
