//! Strict durability and the cause of aborts; the why stands in `strict.js`.

use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen(module = "/src/store/strict.js")]
extern "C" {
    /// Makes every writing transaction of this worker strict. Once is enough.
    #[wasm_bindgen(js_name = makeStrict)]
    pub fn make_strict();

    /// What the last writing transaction was given; nothing where the engine does not tell.
    #[wasm_bindgen(js_name = lastDurability)]
    pub fn last_durability() -> Option<String>;

    /// Why the last writing transaction was taken back, if it is known.
    #[wasm_bindgen(js_name = lastCause)]
    pub(super) fn last_cause() -> Option<String>;
}
