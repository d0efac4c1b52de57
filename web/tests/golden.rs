//! The fixed job answers in wasm what it answers natively, to the last bit of a float.
#![cfg(target_arch = "wasm32")]

use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn the_fixed_job_answers_the_same_in_wasm() {
    assert_eq!(asfound_tests::golden::hash(), asfound_tests::golden::HASH);
}
