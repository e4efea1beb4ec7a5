//! How numbers are written where the reader lives.

/// Whether the browser's language writes decimals behind a comma.
pub fn has_decimal_comma() -> bool {
    let language = leptos::prelude::window().navigator().language();
    let half = js_sys::Number::from(1.5);
    let text = half.to_locale_string(&language.unwrap_or_default());
    String::from(text).contains(',')
}
