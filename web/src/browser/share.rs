//! Handing a link to another app.

use js_sys::Reflect;
use leptos::prelude::window;
use leptos::task::spawn_local;
use wasm_bindgen_futures::JsFuture;
use web_sys::ShareData;

/// Whether this browser can.
pub fn is_there() -> bool {
    Reflect::has(&window().navigator(), &"share".into()).unwrap_or_default()
}

/// Asks the user where to, and hands the link over. Browsers allow it only
/// within the click that asks for it.
pub fn link(address: &str) {
    let data = ShareData::new();
    data.set_url(address);
    let shared = window().navigator().share_with_data(&data);
    spawn_local(async move {
        // Who changes their mind has not failed.
        let _ = JsFuture::from(shared).await;
    });
}
