//! What is otherwise in each month: one column at a time, so that twelve entries
//! find room on a phone.

use ampwright_core::boat::{Month, MonthRow, Section as _, YearAboard, key};
use leptos::prelude::*;

use crate::components::{Button, Entered, FieldRow, Fold, NumberEntry};
use crate::state::{AppState, Target};

/// The table, closed until it is wanted.
#[component]
pub fn MonthEntries() -> impl IntoView {
    view! {
        <Fold id="months" title="Days aboard, weather, solar and use of each month">
            <Columns />
        </Fold>
    }
}

/// Usual ways to spend a year, and the entries of the chosen column.
#[component]
fn Columns() -> impl IntoView {
    let state = AppState::expect();
    let column = RwSignal::new(MonthRow::column("days").unwrap_or(0));
    let spend = move |how: YearAboard, says: &str| {
        state.can_undo(format!("Days aboard: {says}"));
        state.void_rows(|target| matches!(target, Target::Month(..)));
        state.edit(|sheet| sheet.live_aboard(how));
        if let Some(days) = MonthRow::column("days") {
            column.set(days);
        }
    };
    view! {
        <FieldRow place="months" key=key!(sun.basis) />
        <FieldRow place="months" key=key!(sun.latitude_deg) />
        <p class="buttons" role="group" aria-label="Days aboard">
            {YearAboard::ALL
                .iter()
                .zip(YearAboard::OPTIONS)
                .map(|(how, option)| {
                    let how = *how;
                    view! {
                        <Button
                            says=option.label
                            class="plain"
                            press=move |()| spend(how, option.label)
                        />
                    }
                })
                .collect_view()}
        </p>
        <FieldRow place="months" key=key!(rule.aboard) />
        <div class="row">
            <label for="months-column">"Column"</label>
            <select
                id="months-column"
                on:change:target=move |event| {
                    if let Ok(chosen) = event.target().value().parse() {
                        column.set(chosen);
                    }
                }
            >
                {MonthRow::FIELDS
                    .iter()
                    .enumerate()
                    .map(|(at, field)| {
                        view! {
                            <option value=at.to_string() prop:selected=move || column.get() == at>
                                {field.spec.label}
                            </option>
                        }
                    })
                    .collect_view()}
            </select>
        </div>
        {move || view! { <Column column=column.get() /> }}
    }
}

/// Twelve entries.
#[component]
fn Column(column: usize) -> impl IntoView {
    let state = AppState::expect();
    let field = MonthRow::FIELDS.get(column)?;
    let spec = &field.spec;
    let figures = Memo::new(move |_| {
        state.sheet.with(|sheet| {
            let used = sheet.month_figures().map(|month| month.columns());
            let said = Month::ALL
                .iter()
                .map(|month| field.get(sheet.months.row(*month)));
            said.zip(used.map(|columns| columns.get(column).copied()))
                .map(|(value, stands_for)| Entered { value, stands_for })
                .collect::<Vec<_>>()
        })
    });
    let cell = |month: &Month| {
        let (month, id) = (*month, format!("months-{}-{}", month.number(), field.name));
        let nothing = Entered {
            value: spec.default(),
            stands_for: None,
        };
        let entered = Memo::new(move |_| {
            figures
                .read()
                .get(month as usize)
                .copied()
                .unwrap_or(nothing)
        });
        view! {
            <div class="cell">
                <label for=id.clone()>{month.label()}</label>
                <NumberEntry id target=Target::Month(month, column) spec entered />
            </div>
        }
    };
    Some(view! {
        <p class="margin">{spec.help}</p>
        <div class="cells">{Month::ALL.iter().map(cell).collect_view()}</div>
    })
}
