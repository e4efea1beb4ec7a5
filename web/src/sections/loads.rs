//! The list of loads: among the questions and in the worksheet.

use ampwright_core::boat::{Basis, Field, Load, LoadRow, Section as _, key};
use ampwright_core::schema::{FieldSpec, FieldType};
use ampwright_core::units::quantity::ampere_hours;
use ampwright_core::units::{Quantity, QuantityKind};
use leptos::prelude::*;

use crate::components::{Button, Entered, Entry, Fold, NameEntry};
use crate::state::{AppState, RowId, Target};

/// Energy of a day \[W·h\], in whole ones.
fn watt_hours(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::DayEnergy)
}

/// The list at one of its places, "ask" or "sheet"; among the questions the
/// button that begins one.
#[component]
pub fn Loads(place: &'static str) -> impl IntoView {
    let state = AppState::expect();
    let listed = Memo::new(move |_| {
        state
            .sheet
            .with(|sheet| sheet.inputs.daily.basis == Basis::Listed)
    });
    view! {
        <div id=format!("{place}-loads")>
            {(place == "ask").then(|| view! { <Begin listed /> })}
            <Show when=move || listed.get()>
                <List place />
            </Show>
        </div>
    }
}

/// Begins a list with the loads of a usual boat.
#[component]
fn Begin(listed: Memo<bool>) -> impl IntoView {
    let state = AppState::expect();
    let begin = move |_| {
        let listed = Basis::Listed.to_value();
        state.edit(|sheet| drop(sheet.state(key!(daily.basis), listed)));
        if state.loads.read_untracked().is_empty() {
            state.add_typical_loads();
        }
    };
    view! {
        <Button says="Help me add it up" id="add-it-up" hidden=listed press=begin />
    }
}

#[component]
fn List(place: &'static str) -> impl IntoView {
    let state = AppState::expect();
    let total = Signal::derive(move || {
        state.now(|_, report| {
            let energy = &report.analyses.energy;
            let day = |wh, ah| {
                format!(
                    "{}, {}",
                    state.show(watt_hours(wh)),
                    state.show(ampere_hours(ah))
                )
            };
            format!(
                "At anchor {}; under way {}.",
                day(energy.anchor.use_wh, energy.anchor.use_ah),
                day(energy.under_way.use_wh, energy.under_way.use_ah)
            )
        })
    });
    let add = move |_| {
        state.add_loads(vec![Load {
            name: "New load".into(),
            ..Load::default()
        }]);
    };
    view! {
        <div class="loads">
            <For each=move || state.loads.get() key=|row| *row let:row>
                <LoadFold place row />
            </For>
            <p class="total" id=format!("{place}-total")>
                {total}
            </p>
            <p class="buttons">
                <Button says="Add a load" id=format!("{place}-load-add") press=add />
                <Button
                    says="Start from a usual list"
                    hidden=Signal::derive(move || !state.loads.read().is_empty())
                    press=move |()| state.add_typical_loads()
                />
            </p>
        </div>
    }
}

/// One load: its name, its figures, and a way to be rid of it.
#[component]
fn LoadFold(place: &'static str, row: RowId) -> impl IntoView {
    let state = AppState::expect();
    let id = format!("{place}-load-{row}");
    let name = Memo::new(move |_| {
        state
            .load(row, |load| load.name.clone())
            .unwrap_or_default()
    });
    let day = Signal::derive(move || {
        let at = state
            .loads
            .with(|ids| ids.iter().position(|one| *one == row));
        state.now(|_, report| {
            let used = at.and_then(|at| report.analyses.energy.rows.get(at))?;
            Some(state.show(watt_hours(used.anchor_wh.max(used.under_way_wh))))
        })
    });
    view! {
        <Fold id=id.clone() title=name class="load" note=day>
            <LoadForm id=id.clone() row name />
        </Fold>
    }
}

#[component]
fn LoadForm(id: String, row: RowId, name: Memo<String>) -> impl IntoView {
    let state = AppState::expect();
    let cell = |(column, field): (usize, &'static Field<LoadRow>)| {
        let entered =
            Memo::new(move |_| Entered::in_row(state.load(row, |load| field.get(&load.row))));
        let id = format!("{id}-{}", field.name);
        view! { <Cell id target=Target::Load(row, column) spec=&field.spec entered /> }
    };
    let cells = LoadRow::FIELDS.iter().enumerate().map(cell).collect_view();
    view! {
        <div class="cell">
            <NameEntry
                id=format!("{id}-name")
                longest="80"
                name
                enter=move |name| state.edit_load(row, |load| load.name = name)
            />
        </div>
        <div class="cells">{cells}</div>
        <p class="buttons">
            <Button says="Delete this load" press=move |()| state.delete_load(row) />
        </p>
    }
}

/// A figure of a row of a list, with its help.
#[component]
pub fn Cell(
    id: String,
    target: Target,
    spec: &'static FieldSpec,
    entered: Memo<Entered>,
) -> impl IntoView {
    view! {
        <div class="cell">
            <Entry id=id.clone() target spec entered />
            <p class="margin" id=format!("{id}-help")>
                {spec.help}
            </p>
        </div>
    }
}
