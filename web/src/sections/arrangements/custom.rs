//! The user's own arrangements: named, changed, given up.

use std::time::Duration;

use ampwright_core::boat::{Arrangement, Key, SectionId};
use ampwright_core::schema::{Kind, Value};
use leptos::prelude::*;

use crate::browser::page;
use crate::components::{Button, Entered, Entry, NameEntry};
use crate::state::{AppState, RowId, Target};

/// The list, and a button that begins another one.
#[component]
pub fn CustomArrangements() -> impl IntoView {
    let state = AppState::expect();
    view! {
        <div id="arrange-own">
            <h3>"Your own arrangements"</h3>
            <For each=move || state.arrangements.get() key=|row| *row let:row>
                <CustomArrangement row />
            </For>
            <p class="buttons">
                <Button
                    says="Begin one from this boat"
                    id="own-new"
                    press=move |()| add(state, Arrangement::default())
                />
            </p>
        </div>
    }
}

/// Takes one among the user's own, to be changed, and leads to its name where
/// the list is in sight.
pub fn add(state: AppState, mut arrangement: Arrangement) {
    let count = state.arrangements.with_untracked(Vec::len);
    arrangement.name = match arrangement.name.as_str() {
        "" => format!("My arrangement {}", count + 1),
        name => format!("{name}, mine"),
    };
    let row = state.add_arrangement(arrangement);
    focus_soon(format!("own-{row}-name"));
}

/// Puts the cursor on what is about to be on the page.
fn focus_soon(id: String) {
    set_timeout(move || page::focus(&id), Duration::ZERO);
}

/// One of them: its name, what it changes, what else it could, and a way to be
/// rid of it.
#[component]
fn CustomArrangement(row: RowId) -> impl IntoView {
    let state = AppState::expect();
    let name = Memo::new(move |_| {
        let name = state.arrangement(row, |own| own.name.clone());
        name.unwrap_or_default()
    });
    let changed = Memo::new(move |_| {
        state
            .arrangement(row, |own| {
                own.changes.iter().map(|(key, _)| *key).collect::<Vec<_>>()
            })
            .unwrap_or_default()
    });
    view! {
        <div class="own">
            <div class="row">
                <NameEntry
                    id=format!("own-{row}-name")
                    longest="60"
                    name
                    enter=move |name| state.edit_arrangement(row, |own| own.name = name)
                />
            </div>
            <For each=move || changed.get() key=|key| *key let:key>
                <Change row key />
            </For>
            <p class="buttons">
                <ChangeAnother row />
                <Button
                    says="Delete this arrangement"
                    id=format!("own-{row}-delete")
                    class="plain"
                    press=move |()| state.delete_arrangement(row)
                />
            </p>
        </div>
    }
}

/// What an entry of an arrangement shows; none once it is gone.
fn entered(state: AppState, row: RowId, key: Key) -> Option<Entered> {
    let at = state
        .arrangements
        .with(|ids| ids.iter().position(|one| *one == row))?;
    state.sheet.with(|sheet| {
        let own = sheet.arrangements.get(at)?;
        let (_, value) = own.changes.iter().find(|(changed, _)| *changed == key)?;
        let stands_for = match key.spec().kind {
            Kind::Optional { .. } => own.on(sheet).figure(key),
            Kind::Number { .. } | Kind::Choice { .. } => None,
        };
        Some(Entered {
            value: *value,
            stands_for,
        })
    })
}

/// One input that it changes.
#[component]
fn Change(row: RowId, key: Key) -> impl IntoView {
    let state = AppState::expect();
    let (spec, target) = (key.spec(), Target::Arrangement(row, key));
    let id = format!("own-{row}-{}", key.name());
    let shown = Memo::new(move |_| {
        entered(state, row, key).unwrap_or(Entered {
            value: Value::Absent,
            stands_for: None,
        })
    });
    let take_back = move |_| {
        state.void(target);
        state.edit_arrangement(row, |own| own.put(key, None));
    };
    view! {
        <div class="row">
            <Entry id=id.clone() target spec entered=shown />
            <p class="margin" id=format!("{id}-help")>
                {key.section.title()}
                <Button
                    says="as entered for the boat"
                    id=format!("{id}-drop")
                    class="plain forget"
                    name=format!("{}: as entered for the boat", spec.label)
                    press=take_back
                />
            </p>
        </div>
    }
}

/// A list of every input that may be changed, by section; one that is chosen
/// begins with what the worksheet has.
#[component]
fn ChangeAnother(row: RowId) -> impl IntoView {
    let state = AppState::expect();
    let sections = Memo::new(move |_| {
        let at = state
            .arrangements
            .with(|ids| ids.iter().position(|one| *one == row));
        state.settled(|sheet, _| {
            let own = at.and_then(|at| sheet.arrangements.get(at));
            by_section(own.map_or_else(Vec::new, |own| own.changeable(sheet)))
        })
    });
    let change = move |name: String| {
        let Some(key) = Key::named(&name) else { return };
        let value = state.glance(|sheet, _| sheet.inputs.get(key));
        state.edit_arrangement(row, |own| own.put(key, Some(value)));
        focus_soon(format!("own-{row}-{name}"));
    };
    let option = |key: Key| view! { <option value=key.name()>{key.spec().label}</option> };
    let group = move |(section, keys): (SectionId, Vec<Key>)| {
        view! {
            <optgroup label=section.title()>
                {keys.into_iter().map(option).collect_view()}
            </optgroup>
        }
    };
    view! {
        <select
            id=format!("own-{row}-add")
            aria-label="Change something else"
            on:change:target=move |event| {
                change(event.target().value());
                event.target().set_value("");
            }
        >
            <option value="">"Change something else…"</option>
            {move || sections.get().into_iter().map(group).collect_view()}
        </select>
    }
}

/// Inputs that stand one after the other in a section, together.
fn by_section(keys: Vec<Key>) -> Vec<(SectionId, Vec<Key>)> {
    let mut sections: Vec<(SectionId, Vec<Key>)> = Vec::new();
    for key in keys {
        match sections.last_mut() {
            Some((section, keys)) if *section == key.section => keys.push(key),
            _ => sections.push((key.section, vec![key])),
        }
    }
    sections
}
