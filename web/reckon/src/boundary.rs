//! Values across the boundary: plain objects one way and the other.

use serde::Serialize;
use serde::de::DeserializeOwned;
use wasm_bindgen::JsValue;

pub(crate) fn crossing<T: Serialize>(value: &T) -> Result<JsValue, JsValue> {
    let serializer = serde_wasm_bindgen::Serializer::new().serialize_maps_as_objects(true);
    value.serialize(&serializer).map_err(JsValue::from)
}

/// What was sent; what was left out is what it is when nobody says.
pub(crate) fn received<T: DeserializeOwned + Default>(value: JsValue) -> Result<T, JsValue> {
    if value.is_undefined() || value.is_null() {
        return Ok(T::default());
    }
    serde_wasm_bindgen::from_value(value).map_err(JsValue::from)
}
