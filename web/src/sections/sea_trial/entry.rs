//! The form of one reading: large fields, for one hand on a boat that moves.

use ampwright_core::decision::calibration::columns::Column;
use ampwright_core::decision::calibration::entry::{EntryField, stamp, wanted_columns};
use ampwright_core::text::sea_trial::{entry_error, entry_unit, field_label};
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

use crate::browser::page;
use crate::components::Button;
use crate::state::{AppState, Trial};

/// The field of a column on the page.
fn field_id(field: EntryField) -> String {
    match field {
        EntryField::Minute => "trial-minute".to_string(),
        EntryField::Figure(column) => format!("trial-{}", column.name()),
    }
}

/// The fields, the button that adds what is typed, and what is wrong with it.
#[component]
pub fn ReadingEntry() -> impl IntoView {
    let state = AppState::expect();
    let trial = Trial::expect();
    let columns = Memo::new(move |_| {
        let wanted = state.settled(|sheet, _| wanted_columns(&sheet.inputs));
        // A reading that is corrected may have more.
        let entry = trial.entry();
        let more = Column::ALL.into_iter();
        let more =
            more.filter(|column| !wanted.contains(column) && !entry.text(*column).is_empty());
        let more: Vec<Column> = more.collect();
        [wanted, more].concat()
    });
    let fields = Memo::new(move |_| {
        let figures = columns.get().into_iter().map(EntryField::Figure);
        figures.chain([EntryField::Minute]).collect::<Vec<_>>()
    });
    let add = move || {
        if trial.add() {
            page::focus(&field_id(EntryField::Figure(Column::Amps)));
        } else if let Some(wrong) = trial.complaint.get_untracked() {
            page::focus(&field_id(wrong.field));
        }
    };
    // "Next" of the phone's keys goes from field to field, and at last adds.
    let next = Callback::new(move |after: EntryField| {
        let fields = fields.get_untracked();
        let at = fields.iter().position(|field| *field == after);
        match at.and_then(|at| fields.get(at + 1)) {
            Some(EntryField::Figure(column)) => page::focus(&field_id(EntryField::Figure(*column))),
            _ => add(),
        }
    });
    let corrects = Signal::derive(move || trial.correcting().is_some());
    let complaint = Signal::derive(move || {
        let wrong = trial.complaint.get()?;
        let shaft_speed = trial.with_log(|log| log.shaft_speed);
        Some(entry_error(
            &wrong,
            shaft_speed,
            &state.preferences.entries(),
        ))
    });
    view! {
        <div class="big-fields" role="group" aria-label="A reading">
            <For each=move || fields.get() key=|field| field_id(*field) let:field>
                <BigField field next />
            </For>
        </div>
        <p class="complaint" id="trial-complaint" role="alert">
            {complaint}
        </p>
        <p class="buttons add">
            <Button
                says=Signal::derive(move || if corrects.get() { "Save the correction" } else { "Add reading" }.to_string())
                id="trial-add"
                press=move |()| add()
            />
            <Button
                says="Leave it as it was"
                class="plain"
                hidden=Signal::derive(move || !corrects.get())
                press=move |()| trial.leave_as_it_was()
            />
        </p>
    }
}

/// One field with its label and unit.
#[component]
fn BigField(field: EntryField, next: Callback<EntryField>) -> impl IntoView {
    let state = AppState::expect();
    let trial = Trial::expect();
    let id = field_id(field);
    let label = Signal::derive(move || match field {
        EntryField::Minute => "Minute".to_string(),
        EntryField::Figure(column) => {
            field_label(column, trial.with_log(|log| log.shaft_speed)).to_string()
        }
    });
    let unit = Signal::derive(move || match field {
        EntryField::Minute => "min".to_string(),
        EntryField::Figure(column) => entry_unit(column, &state.preferences.entries()).to_string(),
    });
    let text = Memo::new(move |_| {
        let entry = trial.entry();
        match field {
            EntryField::Minute => entry.minute,
            EntryField::Figure(column) => entry.text(column).to_string(),
        }
    });
    // What the clock would stamp now.
    let stand_in = Signal::derive(move || match field {
        EntryField::Minute => trial.elapsed_min().map(f64::floor).and_then(stamp),
        EntryField::Figure(_) => None,
    });
    let keys = match field {
        EntryField::Figure(Column::Rpm) => "numeric",
        _ => "decimal",
    };
    let wrong = Signal::derive(move || {
        let complaint = trial.complaint.read();
        let is_here = complaint.as_ref().is_some_and(|wrong| wrong.field == field);
        is_here.to_string()
    });
    let press = move |event: KeyboardEvent| {
        if event.key() == "Enter" {
            event.prevent_default();
            next.run(field);
        }
    };
    view! {
        <div class="big-field">
            <label for=id.clone()>{label} " " <small>{unit}</small></label>
            <input
                id=id
                type="text"
                inputmode=keys
                autocomplete="off"
                enterkeyhint="next"
                aria-describedby="trial-complaint"
                aria-invalid=wrong
                placeholder=stand_in
                value=text
                prop:value=text
                on:input:target=move |event| {
                    let text = event.target().value();
                    match field {
                        EntryField::Minute => trial.type_minute(text),
                        EntryField::Figure(column) => trial.type_figure(column, text),
                    }
                }
                on:keydown=press
            />
        </div>
    }
}
