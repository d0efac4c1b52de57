use std::collections::BTreeSet;

use asfound_core::papers::{
    Errand, PartsList, Thumbs, errands_csv, errands_html, parts_csv, parts_html, photos_of_refit, refit_html,
};
use asfound_core::record::{Hash, Id};
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

/// The photos that the sheet of an assembly shows.
///
/// # Errors
/// When the assembly is no id.
#[wasm_bindgen(js_name = photosOfRefit, unchecked_return_type = "Hash[]")]
pub fn photos_of_sheet(copy: &Copy, assembly: &str) -> Result<JsValue, JsValue> {
    crossing(&photos_of_refit(&copy.job, id(assembly)?))
}

/// The steps of an assembly as one page for the wall.
///
/// # Errors
/// When the assembly is none that was taken apart, or the day or the words are none.
#[wasm_bindgen(js_name = refitHtml)]
pub fn wall_sheet(
    copy: &Copy,
    assembly: &str,
    #[wasm_bindgen(unchecked_param_type = "string | undefined")] today: JsValue,
    pictures: &Pictures,
    #[wasm_bindgen(unchecked_param_type = "unknown")] words: JsValue,
) -> Result<String, JsValue> {
    let page = refit_html(&copy.job, id(assembly)?, received(today)?, &pictures.thumbs, &received(words)?);
    page.ok_or_else(|| JsValue::from_str("nothing of it was off"))
}

fn id(text: &str) -> Result<Id, JsValue> {
    text.parse().map_err(|_| JsValue::from_str("no id"))
}

const fn errand(send: bool) -> Errand {
    if send { Errand::Send } else { Errand::Buy }
}
