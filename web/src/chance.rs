//! The one place that asks for chance.

use asfound_core::record::{Id, Replica};
use js_sys::Uint8Array;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen]
extern "C" {
    #[wasm_bindgen(js_namespace = crypto, js_name = getRandomValues)]
    fn get_random_values(array: &Uint8Array);
}

fn bytes<const N: usize>() -> [u8; N] {
    let array = Uint8Array::new_with_length(u32::try_from(N).unwrap_or_default());
    get_random_values(&array);
    let mut bytes = [0; N];
    array.copy_to(&mut bytes);
    bytes
}

/// A replica, new for every start.
#[must_use]
pub fn replica() -> Replica {
    Replica::from_bytes(bytes())
}

/// An id.
#[must_use]
pub fn id() -> Id {
    Id::from_bytes(bytes())
}
