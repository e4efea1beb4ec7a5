//! The worksheets kept in this browser.

use ampwright_core::Worksheet;
use ampwright_core::worksheet::demo;
use leptos::prelude::*;

use crate::desk::{Arrival, Desk, Keeping};
use crate::store::{self, Store};

/// Name of the open worksheet, and the others.
#[component]
pub fn Shelf() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let name = Memo::new(move |_| desk.sheet.with(|sheet| sheet.name.clone()));
    let rename = move |event| {
        let text = event_target_value(&event);
        desk.edit(|sheet| sheet.name = text);
    };
    let fresh = move |_| {
        store::save_waiting(desk);
        desk.lay(Worksheet::default(), None, None);
    };
    let copy = move |_| {
        store::save_waiting(desk);
        let mut sheet = desk.sheet.get_untracked();
        sheet.name = format!("{}, copy", title(&sheet.name));
        desk.lay(sheet, None, None);
        store::save_soon(desk);
    };
    view! {
        <section class="shelf" aria-labelledby="shelf-title">
            <h2 id="shelf-title">"Worksheets"</h2>
            <label for="sheet-name">"Name of this worksheet"</label>
            <input id="sheet-name" type="text" autocomplete="off" maxlength="80" prop:value=name on:input=rename/>
            <p class="keeping" id="keeping">{move || match desk.keeping.get() {
                Keeping::Fresh => "Kept in this browser as soon as something is entered.".to_string(),
                Keeping::Kept => "Kept in this browser only. A link or a note of it is the true backup.".to_string(),
                Keeping::MemoryOnly(why) => why,
            }}</p>
            <ul class="sheets">
                {move || {
                    desk.shelved.track();
                    Store::open().map(|store| store.numbers()).unwrap_or_default().into_iter()
                        .map(|number| view! { <Kept number/> }).collect_view()
                }}
            </ul>
            <p class="buttons">
                <button type="button" id="new-sheet" on:click=fresh>"New worksheet"</button>
                <button type="button" id="copy-sheet" on:click=copy>"Copy this one"</button>
                <button type="button" on:click=move |_| show_demo(desk)>"Show the demo"</button>
            </p>
        </section>
    }
}

/// Lays the demo on the desk, unsaved and marked as one.
pub fn show_demo(desk: Desk) {
    store::save_waiting(desk);
    let arrival = Arrival {
        headline: "A demo: an invented boat. None of its figures was measured on any boat.".into(),
        remarks: Vec::new(),
    };
    desk.lay(demo(), None, Some(arrival));
    window().scroll_to_with_x_and_y(0.0, 0.0);
}

#[component]
fn Kept(number: u32) -> impl IntoView {
    let desk = expect_context::<Desk>();
    let read = move || {
        let text = Store::open().ok()?.text(number)?;
        Some(store::read(&text))
    };
    let name = match read() {
        Some(Ok((sheet, _))) => title(&sheet.name).to_string(),
        _ => format!("Worksheet {number}, which cannot be read"),
    };
    let open = move |_| {
        store::save_waiting(desk);
        match read() {
            Some(Ok((sheet, _))) => {
                if let Ok(store) = Store::open() {
                    store.make_last(number);
                }
                desk.lay(sheet, Some(number), None);
                desk.keeping.set(Keeping::Kept);
                window().scroll_to_with_x_and_y(0.0, 0.0);
            }
            Some(Err(why)) => desk.arrival.set(Some(Arrival {
                headline: "This worksheet cannot be read; it is left as it is.".into(),
                remarks: vec![why],
            })),
            None => {}
        }
    };
    let asked = RwSignal::new(false);
    let remove = move |_| {
        if !asked.get_untracked() {
            asked.set(true);
            return;
        }
        if let Ok(store) = Store::open() {
            store.remove(number);
        }
        if desk.number.get_untracked() == Some(number) {
            // What lies open stays open; only its kept copy is gone.
            desk.number.set(None);
            desk.keeping.set(Keeping::Fresh);
        }
        desk.shelved.update(|count| *count += 1);
    };
    let here = move || desk.number.get() == Some(number);
    view! {
        <li class:here=here>
            <button type="button" class="plain title" on:click=open aria-current=move || here().then_some("true")>{name}</button>
            <button type="button" class="plain" on:click=remove>
                {move || if asked.get() { "Really delete" } else { "Delete" }}
            </button>
        </li>
    }
}

/// The name, or what stands for none.
pub fn title(name: &str) -> &str {
    if name.trim().is_empty() {
        "Unnamed boat"
    } else {
        name
    }
}
