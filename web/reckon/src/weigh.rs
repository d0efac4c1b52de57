use asfound_core::plan::plan_while;
use asfound_core::reckoning::{HeavyQuery, Reckoned, reckon};
use js_sys::Function;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::boundary::crossing;
use crate::copy::Copy;

/// Answers a heavy question: one that draws figures over and over, or searches. A plan is told while it becomes better: before
/// each step `due` is asked whether to, and `told` hears of it.
///
/// # Errors
/// When the question is none of these.
#[wasm_bindgen(unchecked_return_type = "Reckoned")]
pub fn weigh(
    copy: &Copy,
    #[wasm_bindgen(unchecked_param_type = "HeavyQuery")] query: JsValue,
    #[wasm_bindgen(unchecked_param_type = "() => boolean")] due: &Function,
    #[wasm_bindgen(unchecked_param_type = "(answer: Reckoned) => void")] told: &Function,
) -> Result<JsValue, JsValue> {
    let query: HeavyQuery = serde_wasm_bindgen::from_value(query).map_err(JsValue::from)?;
    let HeavyQuery::Plan(asked) = &query else { return crossing(&reckon(&copy.job, &query)) };
    let mut failed = None;
    let view = plan_while(&copy.job, asked, &mut |so_far| {
        let tell = || {
            if due.call0(&JsValue::NULL)?.is_truthy() {
                told.call1(&JsValue::NULL, &crossing(&Reckoned::Plan(Box::new(so_far())))?)?;
            }
            Ok(())
        };
        failed = tell().err();
        failed.is_none()
    });
    match failed {
        Some(error) => Err(error),
        None => crossing(&Reckoned::Plan(Box::new(view))),
    }
}
