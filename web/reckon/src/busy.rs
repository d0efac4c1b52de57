use wasm_bindgen::prelude::wasm_bindgen;

/// Works for so many seconds without ever looking up: proof that nothing here delays anybody. Answers a sum of its work.
#[wasm_bindgen]
#[must_use]
pub fn busy(seconds: f64) -> f64 {
    let end = js_sys::Date::now() + seconds * 1_000.0;
    let mut sum = 0.0;
    while js_sys::Date::now() < end {
        sum += (1..10_000).map(|step| 1.0 / f64::from(step)).sum::<f64>();
    }
    sum
}
