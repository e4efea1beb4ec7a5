//! The page from top to bottom.

use leptos::prelude::*;

use crate::answer::AnswerStrip;
use crate::chart::{RunChart, SpeedChart};
use crate::desk::{Desk, Keeping};
use crate::figures::Figures;
use crate::findings::{Cautions, Findings};
use crate::form::Form;
use crate::look::LookSwitch;
use crate::questions::Questions;
use crate::share::Share;
use crate::shelf::{Shelf, show_demo, title};
use crate::store;
use crate::sure::{HowSure, Surety};
use crate::trial::SeaTrial;
use crate::year::ThroughTheYear;

/// The whole page.
#[component]
pub fn App() -> impl IntoView {
    let desk = Desk::open();
    provide_context(desk);
    provide_context(Surety::of(desk));
    // A phone may never come back from another app: keep what is waiting.
    for leaving in ["pagehide", "blur"] {
        let handle = window_event_listener_untyped(leaving, move |_| store::save_waiting(desk));
        on_cleanup(move || handle.remove());
    }
    let linked = window_event_listener_untyped("hashchange", move |_| desk.take_fragment());
    on_cleanup(move || linked.remove());
    view! {
        <header class="masthead">
            <div>
                <h1>"Ampwright"</h1>
                <p id="title">{move || desk.sheet.with(|sheet| title(&sheet.name).to_string())}</p>
            </div>
            <LookSwitch/>
        </header>
        <AnswerStrip/>
        <main>
            <Notices/>
            <div class="columns">
                <div class="ask"><Questions/></div>
                <div class="results">
                    <Findings/>
                    <HowSure/>
                    <RunChart/>
                    <SpeedChart/>
                    <Figures/>
                    <ThroughTheYear/>
                </div>
                <div class="rest">
                    <Form/>
                    <SeaTrial/>
                    <Shelf/>
                    <Share/>
                    <Cautions/>
                </div>
            </div>
        </main>
        <footer>
            <p>"A reckoning from published formulas and your own figures. The battery maker's sheet, local code and a licensed electrician come first."</p>
        </footer>
    }
}

/// How this worksheet came here, trouble with keeping it, a newer version.
#[component]
fn Notices() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let update = RwSignal::new(
        document()
            .document_element()
            .is_some_and(|root| root.has_attribute("data-update")),
    );
    let waiting = window_event_listener_untyped("ampwright:update", move |_| update.set(true));
    on_cleanup(move || waiting.remove());
    let take_over = move |_| {
        store::save_waiting(desk);
        if let Ok(event) = leptos::web_sys::Event::new("ampwright:take-over") {
            let _ = window().dispatch_event(&event);
        }
    };
    let fresh = move || {
        desk.arrival.with(Option::is_none)
            && desk.number.get().is_none()
            && desk.keeping.get() != Keeping::Kept
    };
    view! {
        {move || desk.arrival.get().map(|arrival| view! {
            <div class="notice" id="arrival" role="status">
                <p>{arrival.headline}</p>
                <ul>{arrival.remarks.into_iter().map(|remark| view! { <li>{remark}</li> }).collect_view()}</ul>
            </div>
        })}
        {move || match desk.keeping.get() {
            Keeping::MemoryOnly(why) => Some(view! {
                <div class="notice bad" id="memory-only" role="alert"><p>{why}</p></div>
            }),
            _ => None,
        }}
        {move || update.get().then(|| view! {
            <div class="notice" id="update" role="status">
                <p>"A newer version of this page is ready."</p>
                <button type="button" on:click=take_over>"Use it now"</button>
            </div>
        })}
        {move || fresh().then(|| view! {
            <aside class="notice welcome" id="welcome">
                <p>"How long must the engine run to fill the house bank, and will the alternator survive it? Eight questions give a first answer."</p>
                <button type="button" class="plain" id="demo" on:click=move |_| show_demo(desk)>"Look at an invented boat first"</button>
            </aside>
        })}
    }
}
