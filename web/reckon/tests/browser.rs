//! What must hold in a window.
#![cfg(target_arch = "wasm32")]

use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn the_wasm_starts_in_a_window() {
    let window = js_sys::Reflect::get(&js_sys::global(), &"document".into()).unwrap();
    assert!(window.is_object());
    assert_eq!(asfound_reckon::busy::busy(0.0), 0.0);
}
