//! Copying a text.

use js_sys::Reflect;
use leptos::prelude::window;
use leptos::task::spawn_local;
use wasm_bindgen_futures::JsFuture;

/// Copies a text, and tells when it is done; where the browser refuses, nothing
/// is told. Browsers allow it only within the click that asks for it.
pub fn copy(text: &str, done: impl FnOnce() + 'static) {
    let navigator = window().navigator();
    // A page that came without encryption has none.
    let there = Reflect::get(&navigator, &"clipboard".into());
    if !there.is_ok_and(|clipboard| clipboard.is_object()) {
        return;
    }
    let copied = navigator.clipboard().write_text(text);
    spawn_local(async move {
        if JsFuture::from(copied).await.is_ok() {
            done();
        }
    });
}
