//! A log that was kept elsewhere.

use ampwright_core::text::calibration::log_remarks;
use leptos::prelude::*;

use crate::components::{Button, Fold};
use crate::state::{Replacement, Trial};

/// The entry for the log, and the button that makes readings of it.
#[component]
pub fn PasteLog() -> impl IntoView {
    let trial = Trial::expect();
    view! {
        <Fold id="trial-paste" title="Paste a log instead">
            <label for="trial-log">
                "Your readings"
                <small>
                    "a line each: minute, amps, case °C, air °C, rpm, volts; or your own order under headings"
                </small>
            </label>
            <textarea
                id="trial-log"
                rows="7"
                spellcheck="false"
                autocomplete="off"
                prop:value=Signal::derive(move || trial.pasted())
                on:input:target=move |event| trial.type_log(event.target().value())
            ></textarea>
            <Remarks />
            <p class="buttons">
                <Button
                    says="Take these readings"
                    id="trial-take-log"
                    disabled=Signal::derive(move || trial.pasted().trim().is_empty())
                    press=move |()| trial.replace(Replacement::Pasted)
                />
            </p>
        </Fold>
        <p class="buttons">
            <Button
                says="Fill in an example log"
                id="trial-sample"
                class="plain"
                press=move |()| trial.replace(Replacement::Example)
            />
        </p>
    }
}

/// What of the log is not understood.
#[component]
fn Remarks() -> impl IntoView {
    let trial = Trial::expect();
    let remarks = Memo::new(move |_| log_remarks(&trial.pasted_remarks()));
    let remark = |remark| view! { <li>{remark}</li> };
    view! {
        <ul class="remarks" id="trial-log-remarks">
            {move || remarks.get().into_iter().map(remark).collect_view()}
        </ul>
    }
}
