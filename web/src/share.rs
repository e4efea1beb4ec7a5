//! The worksheet as a link, and links opened from within the page.

use ampwright_core::worksheet::to_link;
use leptos::html::Textarea;
use leptos::prelude::*;

use crate::desk::Desk;

/// Makes a link, copies it, and opens one.
#[component]
pub fn Share() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let link = Memo::new(move |_| {
        let here = window().location();
        let origin = here.origin().unwrap_or_default();
        let path = here.pathname().unwrap_or_default();
        desk.sheet
            .with(|sheet| format!("{origin}{path}#{}", to_link(sheet)))
    });
    let area = NodeRef::<Textarea>::new();
    let said = RwSignal::new("");
    let copy = move |_| {
        // Begun inside the click: browsers refuse a copy after waiting.
        let copying = window()
            .navigator()
            .clipboard()
            .write_text(&link.get_untracked());
        if let Some(area) = area.get_untracked() {
            area.select();
        }
        said.set("The link is selected; copy it by hand if nothing is pasted.");
        let done = wasm_bindgen::closure::Closure::once(move |_| said.set("The link is copied."));
        let _ = copying.then(&done);
        done.forget();
    };
    let pasted = RwSignal::new(String::new());
    let open = move |_| {
        desk.take_link(&pasted.get_untracked());
        pasted.set(String::new());
        window().scroll_to_with_x_and_y(0.0, 0.0);
    };
    view! {
        <section class="share" aria-labelledby="share-title">
            <h2 id="share-title">"Share as a link"</h2>
            <p class="lead">"The link holds every figure you have entered and nothing else. Nothing is sent anywhere: whoever opens it reads it in their own browser."</p>
            <label for="link">"Link to this worksheet"</label>
            <textarea id="link" readonly rows="4" node_ref=area prop:value=link></textarea>
            <p class="buttons">
                <button type="button" id="copy-link" on:click=copy>"Copy the link"</button>
                <span class="said" role="status">{said}</span>
            </p>
            <label for="open-link">"Open a link"</label>
            <textarea id="open-link" rows="2" prop:value=pasted
                on:input=move |event| pasted.set(event_target_value(&event))></textarea>
            <p class="buttons">
                <button type="button" id="take-link" on:click=open
                    disabled=move || pasted.with(|text| text.trim().is_empty())>"Open as a copy"</button>
            </p>
        </section>
    }
}
