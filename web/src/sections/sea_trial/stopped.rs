//! Winding and rotor by their resistance: a small form, whose results go into the
//! reading and the boat.

use ampwright_core::decision::calibration::columns::Column;
use ampwright_core::decision::calibration::entry::as_typed;
use ampwright_core::decision::calibration::stopped::{
    Stopped, StoppedError, StoppedField, rotor_rise_k, take_rotor_rise,
};
use ampwright_core::text::sea_trial::{
    STOPPED_HOW, rotor_is, stopped_error, stopped_label, winding_was,
};
use ampwright_core::units::Reader;
use ampwright_core::units::quantity::kelvin;
use leptos::either::Either;
use leptos::prelude::*;

use crate::components::{Button, Fold};
use crate::state::{AppState, Trial};

/// The form.
#[component]
pub fn ByResistance() -> impl IntoView {
    // What is typed stays when the fold is closed.
    let typed = RwSignal::new(Stopped::default());
    view! {
        <Fold id="trial-stopped" title="Winding and rotor by resistance">
            <ol class="steps">{STOPPED_HOW.map(|step| view! { <li>{step}</li> }).collect_view()}</ol>
            {StoppedField::ALL.map(|field| view! { <Field typed field /> }).collect_view()}
            <Winding typed />
            <Rotor typed />
        </Fold>
    }
}

/// A field with its label.
#[component]
fn Field(typed: RwSignal<Stopped>, field: StoppedField) -> impl IntoView {
    let state = AppState::expect();
    let id = format!("trial-stopped-{}", field as usize);
    let label = move || stopped_label(field, &state.preferences.entries());
    let text = Signal::derive(move || typed.with(|typed| typed.text(field).to_string()));
    let type_it = move |text: String| typed.update(|typed| typed.set(field, text));
    let entry = match field {
        StoppedField::Readings => Either::Left(view! { <textarea
            id=id.clone()
            rows="4"
            spellcheck="false"
            autocomplete="off"
            prop:value=text
            on:input:target=move |event| type_it(event.target().value())
        ></textarea> }),
        _ => Either::Right(view! { <input
            id=id.clone()
            type="text"
            inputmode="decimal"
            autocomplete="off"
            prop:value=text
            on:input:target=move |event| type_it(event.target().value())
        /> }),
    };
    view! {
        <div class="big-field">
            <label for=id>{label}</label>
            {entry}
        </div>
    }
}

/// What came of it, or what is wrong.
type Found = Result<Option<f64>, StoppedError>;

fn complaint(found: &Found, reader: &Reader) -> Option<String> {
    found
        .as_ref()
        .err()
        .map(|error| stopped_error(error, reader))
}

/// The winding when the engine stopped, and the button that puts it into the reading.
#[component]
fn Winding(typed: RwSignal<Stopped>) -> impl IntoView {
    let state = AppState::expect();
    let trial = Trial::expect();
    let entries = move || state.preferences.entries();
    let found = Memo::new(move |_| typed.with(|typed| typed.winding_c(&entries())));
    let says = move || match found.get() {
        Ok(Some(winding_c)) => winding_was(winding_c, &state.reader.get()),
        found => complaint(&found, &entries()).unwrap_or_default(),
    };
    let take = move |()| {
        if let Ok(Some(winding_c)) = found.get_untracked() {
            let text = as_typed(Column::Winding, winding_c.round(), &untrack(entries));
            trial.type_figure(Column::Winding, text);
        }
    };
    view! {
        <p role="status">{says}</p>
        <p class="buttons">
            <Button
                says="Put the winding into the reading"
                id="trial-take-winding"
                disabled=Signal::derive(move || !matches!(found.get(), Ok(Some(_))))
                press=take
            />
        </p>
    }
}

/// The rotor, and the button that puts its rise over the case into the boat.
#[component]
fn Rotor(typed: RwSignal<Stopped>) -> impl IntoView {
    let state = AppState::expect();
    let trial = Trial::expect();
    let entries = move || state.preferences.entries();
    let found = Memo::new(move |_| typed.with(|typed| typed.rotor_c(&entries())));
    let rise_k = Memo::new(move |_| {
        let rotor_c = found.get().ok().flatten()?;
        let case_c = trial.with_log(|log| {
            let rows = log.rows.iter().rev();
            rows.filter_map(|row| row.get(Column::Case)).next()
        });
        rotor_rise_k(rotor_c, case_c?)
    });
    let says = move || {
        let reader = state.reader.get();
        match found.get() {
            Ok(Some(rotor_c)) => {
                let above = rise_k.get().map(|rise_k| reader.show(kelvin(rise_k)));
                rotor_is(rotor_c, above, &reader)
            }
            found => complaint(&found, &entries()).unwrap_or_default(),
        }
    };
    let take = move |()| {
        if let Some(rise_k) = rise_k.get_untracked() {
            state.edit(|sheet| take_rotor_rise(sheet, rise_k));
        }
    };
    view! {
        <p role="status">{says}</p>
        <p class="buttons">
            <Button
                says="Take this rise of the rotor over the case"
                id="trial-take-rotor"
                disabled=Signal::derive(move || rise_k.get().is_none())
                press=take
            />
        </p>
    }
}
