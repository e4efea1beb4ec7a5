//! How numbers are written where the reader lives.

use js_sys::{Array, Function, Reflect};
use leptos::prelude::window;
use wasm_bindgen::{JsCast, JsValue};

/// Whether the browser's language writes decimals behind a comma. One that names
/// no language, as "C" does on some computers, does not.
pub fn has_decimal_comma() -> bool {
    let language = window().navigator().language().unwrap_or_default();
    written(1.5, &language).is_ok_and(|half| half.contains(','))
}

/// A number as a language writes it.
///
/// # Errors
/// What the browser throws where it knows no such language.
fn written(number: f64, language: &str) -> Result<String, JsValue> {
    let intl = Reflect::get(&window(), &"Intl".into())?;
    let class: Function = Reflect::get(&intl, &"NumberFormat".into())?.dyn_into()?;
    let format = Reflect::construct(&class, &Array::of1(&language.into()))?;
    let write: Function = Reflect::get(&format, &"format".into())?.dyn_into()?;
    let text = write.call1(&JsValue::UNDEFINED, &number.into())?;
    Ok(text.as_string().unwrap_or_default())
}
