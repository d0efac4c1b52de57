use wasm_bindgen::prelude::wasm_bindgen;

/// The codes of all tags that can be read in a frame of `width` × `height` bytes of luminance, each once. What is no frame holds none.
#[wasm_bindgen(js_name = readFrame)]
#[must_use]
pub fn read_frame(luma: &[u8], width: usize, height: usize) -> Vec<String> {
    asfound_scan::read(luma, width, height)
}
