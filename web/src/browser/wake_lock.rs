//! Keeps the screen awake, by the Screen Wake Lock API of the W3C. Where the
//! browser has none, or refuses, the screen sleeps as it always does.

use js_sys::{Function, Promise, Reflect};
use leptos::prelude::window;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// The screen stays awake until this is released, or the page is out of sight:
/// then the browser releases it by itself.
pub struct WakeLock(JsValue);

impl WakeLock {
    /// Asks for the screen to stay awake; none where it will not.
    pub async fn ask() -> Option<WakeLock> {
        let locks = Reflect::get(&window().navigator(), &"wakeLock".into()).ok()?;
        let asked = call(&locks, "request", Some("screen"))?;
        let lock = JsFuture::from(asked).await.ok()?;
        Some(WakeLock(lock))
    }

    /// Lets the screen sleep again.
    pub fn release(self) {
        // What the browser released before cannot be released again.
        let _ = call(&self.0, "release", None);
    }
}

/// Calls a method that promises something.
fn call(object: &JsValue, method: &str, argument: Option<&str>) -> Option<Promise> {
    if !object.is_object() {
        return None;
    }
    let method: Function = Reflect::get(object, &method.into()).ok()?.dyn_into().ok()?;
    let promise = match argument {
        Some(argument) => method.call1(object, &argument.into()),
        None => method.call0(object),
    };
    promise.ok()?.dyn_into().ok()
}
