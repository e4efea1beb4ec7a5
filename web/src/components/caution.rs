//! The caution that comes before the figures it belongs to.

use ampwright_core::guidance::{CautionTopic, cautions_at};
use ampwright_core::text::cautions;
use leptos::prelude::*;

use crate::state::AppState;

/// The first caution of a topic; nothing if none of it concerns the boat.
#[component]
pub fn Caution(topic: CautionTopic) -> impl IntoView {
    let state = AppState::expect();
    let code = Memo::new(move |_| {
        state.settled(|sheet, _| {
            let caution = cautions_at(&sheet.inputs, topic).next();
            caution.map(|caution| caution.code)
        })
    });
    move || {
        code.get().map(|code| {
            view! {
                <p class="caution">
                    <b>{cautions::about(code)} "."</b>
                    " "
                    {Signal::derive(move || state.reader.with(|reader| cautions::sentence(code, reader)))}
                </p>
            }
        })
    }
}
