//! The record worker's exports.

use wasm_bindgen::prelude::wasm_bindgen;

/// The number that tells which form of the protocol this build speaks.
#[wasm_bindgen]
pub fn form() -> u32 {
    1
}
