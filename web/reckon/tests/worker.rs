//! What must hold in a worker.
#![cfg(target_arch = "wasm32")]

use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_dedicated_worker);

#[wasm_bindgen_test]
fn the_wasm_starts_in_a_worker() {
    let scope = js_sys::Reflect::get(&js_sys::global(), &"WorkerGlobalScope".into()).unwrap();
    assert!(scope.is_function());
    assert_eq!(asfound_reckon::busy::busy(0.0), 0.0);
}
