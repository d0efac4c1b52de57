use std::collections::BTreeSet;

use asfound_core::papers::{Errand, PartsList, Thumbs, errands_csv, errands_html, parts_csv, parts_html};
use asfound_core::record::Hash;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::boundary::{crossing, received};
use crate::copy::Copy;

/// The parts list as a table.
///
/// # Errors
/// When the question, the day or the words are none.
#[wasm_bindgen(js_name = partsCsv)]
pub fn csv(
    copy: &Copy,
    #[wasm_bindgen(unchecked_param_type = "PartsQuery")] query: JsValue,
    #[wasm_bindgen(unchecked_param_type = "string | undefined")] today: JsValue,
    #[wasm_bindgen(unchecked_param_type = "unknown")] words: JsValue,
) -> Result<String, JsValue> {
    Ok(parts_csv(&copy.job, &received(query)?, received(today)?, &received(words)?))
}

/// The small pictures for a list as a page.
#[wasm_bindgen]
#[derive(Debug, Default)]
pub struct Pictures {
    thumbs: Thumbs,
}

#[wasm_bindgen]
impl Pictures {
    /// None yet.
    #[wasm_bindgen(constructor)]
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Adds the small picture of a photo.
    pub fn add(&mut self, photo: &str, jpeg: Vec<u8>) {
        self.thumbs.extend(photo.parse().ok().map(|photo: Hash| (photo, jpeg)));
    }
}

/// The photos that a list shows.
///
/// # Errors
/// When the question is none.
#[wasm_bindgen(js_name = photosOfList, unchecked_return_type = "Hash[]")]
pub fn photos_of_list(
    copy: &Copy,
    #[wasm_bindgen(unchecked_param_type = "PartsQuery")] query: JsValue,
) -> Result<JsValue, JsValue> {
    let list = PartsList::of(&copy.job, &received(query)?, None);
    let photos: BTreeSet<Hash> = list.rows.iter().filter_map(|row| Some(row.photos.first()?.0)).collect();
    crossing(&photos)
}

/// The parts list as one page that needs nothing else.
///
/// # Errors
/// When the question, the day or the words are none.
#[wasm_bindgen(js_name = partsHtml)]
pub fn html(
    copy: &Copy,
    #[wasm_bindgen(unchecked_param_type = "PartsQuery")] query: JsValue,
    #[wasm_bindgen(unchecked_param_type = "string | undefined")] today: JsValue,
    pictures: &Pictures,
    #[wasm_bindgen(unchecked_param_type = "unknown")] words: JsValue,
) -> Result<String, JsValue> {
    Ok(parts_html(&copy.job, &received(query)?, received(today)?, &pictures.thumbs, &received(words)?))
}

/// What is to be bought or, with `send`, to be sent out, as a table.
///
/// # Errors
/// When the question, the day or the words are none.
#[wasm_bindgen(js_name = errandsCsv)]
pub fn table_of_errands(
    copy: &Copy,
    send: bool,
    #[wasm_bindgen(unchecked_param_type = "PartsQuery")] query: JsValue,
    #[wasm_bindgen(unchecked_param_type = "string | undefined")] today: JsValue,
    #[wasm_bindgen(unchecked_param_type = "unknown")] words: JsValue,
) -> Result<String, JsValue> {
    Ok(errands_csv(&copy.job, errand(send), &received(query)?, received(today)?, &received(words)?))
}

/// The same as one page that needs nothing else.
///
/// # Errors
/// When the question, the day or the words are none.
#[wasm_bindgen(js_name = errandsHtml)]
pub fn page_of_errands(
    copy: &Copy,
    send: bool,
    #[wasm_bindgen(unchecked_param_type = "PartsQuery")] query: JsValue,
    #[wasm_bindgen(unchecked_param_type = "string | undefined")] today: JsValue,
    pictures: &Pictures,
    #[wasm_bindgen(unchecked_param_type = "unknown")] words: JsValue,
) -> Result<String, JsValue> {
    Ok(errands_html(&copy.job, errand(send), &received(query)?, received(today)?, &pictures.thumbs, &received(words)?))
}

const fn errand(send: bool) -> Errand {
    if send { Errand::Send } else { Errand::Buy }
}
