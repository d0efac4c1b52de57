use asfound_core::papers::{PaperWords, TagSheets, TagsPaper};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::boundary::{crossing, received};
use crate::copy::Copy;

/// Sheets of tags as a PDF.
///
/// # Errors
/// A problem as an object when they cannot be printed so; else when the question or the words are none.
#[wasm_bindgen(js_name = tagsPdf)]
pub fn pdf(
    copy: &Copy,
    #[wasm_bindgen(unchecked_param_type = "TagsPaper")] paper: JsValue,
    #[wasm_bindgen(unchecked_param_type = "unknown")] words: JsValue,
) -> Result<Vec<u8>, JsValue> {
    let words: PaperWords = received(words)?;
    Ok(sheets(copy, paper, &words)?.pdf(&words.page.tags))
}

/// The first of these sheets as it is printed, and how many there are.
///
/// # Errors
/// The same.
#[wasm_bindgen(js_name = tagsView, unchecked_return_type = "TagSheetView")]
pub fn view(
    copy: &Copy,
    #[wasm_bindgen(unchecked_param_type = "TagsPaper")] paper: JsValue,
    #[wasm_bindgen(unchecked_param_type = "unknown")] words: JsValue,
) -> Result<JsValue, JsValue> {
    crossing(&sheets(copy, paper, &received(words)?)?.view())
}

fn sheets(copy: &Copy, paper: JsValue, words: &PaperWords) -> Result<TagSheets, JsValue> {
    let paper: TagsPaper = serde_wasm_bindgen::from_value(paper)?;
    TagSheets::of(&copy.job, &paper, words).map_err(|problem| crossing(&problem).unwrap_or_else(|error| error))
}
