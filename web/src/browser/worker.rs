//! The service worker, which keeps one complete version of the page so that it
//! opens without a network. A newer version waits until the user wants it, in
//! each window by itself.

use std::rc::Rc;

use js_sys::Reflect;
use leptos::prelude::window;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    EventTarget, RegistrationOptions, ServiceWorker, ServiceWorkerContainer,
    ServiceWorkerRegistration, ServiceWorkerState, ServiceWorkerUpdateViaCache,
};

/// The worker's script, beside the page.
const SCRIPT: &str = "sw.js";
/// Asks a worker to drop versions that no window needs.
const TIDY: &str = "tidy";
/// Asks a worker that waits to take over.
const TAKE_OVER: &str = "take-over";

/// What is heard of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum News {
    /// The page is being kept for the first time.
    Coming,
    /// It is kept.
    Ready,
    /// Part of it did not arrive as it should.
    Partly,
    /// A newer version waits.
    UpdateWaits,
    /// A newer version has taken over.
    TakenOver,
}

/// Keeps the page, and tells what comes of it for as long as the page is open.
///
/// # Errors
/// What the browser says where it keeps no pages.
pub async fn keep_page(
    tell: impl Fn(News) + 'static,
) -> Result<ServiceWorkerRegistration, JsValue> {
    let workers = container()?;
    let options = RegistrationOptions::new();
    options.set_update_via_cache(ServiceWorkerUpdateViaCache::None);
    let registration = JsFuture::from(workers.register_with_options(SCRIPT, &options)).await?;
    let registration: ServiceWorkerRegistration = registration.unchecked_into();
    let tell: Rc<dyn Fn(News)> = Rc::new(tell);

    let told = tell.clone();
    listen(&workers, "controllerchange", move || told(News::TakenOver));
    let (told, known) = (tell.clone(), registration.clone());
    listen(&registration, "updatefound", move || {
        if let Some(coming) = known.installing() {
            watch(&coming, &known, &told);
        }
    });
    if let Some(coming) = registration.installing() {
        watch(&coming, &registration, &tell);
    }
    let (coming, waiting, active) = (
        registration.installing().is_some(),
        registration.waiting().is_some(),
        registration.active().is_some(),
    );
    if waiting && active {
        tell(News::UpdateWaits);
    }
    tell(match (active, coming || waiting) {
        (true, _) => News::Ready,
        (false, true) => News::Coming,
        (false, false) => News::Partly,
    });
    leptos::task::spawn_local(async move {
        if settle(&workers).await.is_ok() {
            tell(News::Ready);
        }
    });
    Ok(registration)
}

/// Asks the version that waits to take over; whether there is one.
pub fn take_over(registration: &ServiceWorkerRegistration) -> bool {
    let waiting = registration.waiting();
    waiting.is_some_and(|worker| worker.post_message(&TAKE_OVER.into()).is_ok())
}

/// Loads the page anew.
pub fn reload() {
    let _ = window().location().reload();
}

/// The browser's workers, where it has them.
fn container() -> Result<ServiceWorkerContainer, JsValue> {
    let navigator = window().navigator();
    let workers = Reflect::get(&navigator, &"serviceWorker".into())?;
    match workers.is_object() {
        true => Ok(workers.unchecked_into()),
        false => Err(JsValue::UNDEFINED),
    }
}

/// Waits until the page is kept, then has older versions cleared away.
async fn settle(workers: &ServiceWorkerContainer) -> Result<(), JsValue> {
    let ready = JsFuture::from(workers.ready()?).await?;
    let ready: ServiceWorkerRegistration = ready.unchecked_into();
    match ready.active() {
        Some(worker) => worker.post_message(&TIDY.into()),
        None => Ok(()),
    }
}

/// Tells what becomes of a version that is coming.
fn watch(coming: &ServiceWorker, known: &ServiceWorkerRegistration, tell: &Rc<dyn Fn(News)>) {
    let (worker, known, tell) = (coming.clone(), known.clone(), tell.clone());
    listen(coming, "statechange", move || {
        let is_first = known.active().is_none();
        match worker.state() {
            ServiceWorkerState::Installed if !is_first => tell(News::UpdateWaits),
            ServiceWorkerState::Redundant if is_first => tell(News::Partly),
            _ => {}
        }
    });
}

/// Hears an event for as long as the page is open.
fn listen(target: &EventTarget, event: &str, act: impl Fn() + 'static) {
    let heard = Closure::<dyn Fn()>::new(act).into_js_value();
    // It is refused only for a callback that is none.
    let _ = target.add_event_listener_with_callback(event, heard.unchecked_ref());
}
