//! The day as legs: the engine's runs as the user lists them, and what comes of
//! each.

use ampwright_core::analysis::legs::{LegReport, LegsReport};
use ampwright_core::boat::{Field, Leg, LegRow, Section as _, usual_legs};
use ampwright_core::exchange::MOST_LEGS;
use ampwright_core::text;
use ampwright_core::text::words;
use ampwright_core::units::quantity::{ampere_hours, amperes, celsius, minutes, percent};
use ampwright_core::units::{Quantity, QuantityKind, Reader};
use leptos::prelude::*;

use crate::components::{Button, Entered, Fold, NameEntry, ScrollingTable, TextRow};
use crate::sections::loads::Cell;
use crate::state::{AppState, RowId, Target};

/// The list, and below it what comes of it.
#[component]
pub fn Legs() -> impl IntoView {
    let state = AppState::expect();
    let none = Signal::derive(move || state.legs.read().is_empty());
    let add = move |()| {
        let rpm = state.sheet.with_untracked(|sheet| sheet.inputs.eng.rpm);
        let row = LegRow {
            rpm,
            ..LegRow::default()
        };
        state.add_legs(vec![Leg {
            name: "New leg".into(),
            row,
        }]);
    };
    let usual = move |()| {
        state.can_undo("Usual legs added");
        state.add_legs(state.sheet.with_untracked(usual_legs));
    };
    let restore = move |()| {
        state.can_undo("Legs replaced by a usual day");
        state.replace_legs(state.sheet.with_untracked(usual_legs));
    };
    view! {
        <p class="margin">{text::legs::ABOUT}</p>
        <div class="loads">
            <For each=move || state.legs.get() key=|row| *row let:row>
                <LegFold row />
            </For>
            <p class="buttons">
                <Button
                    says="Add a leg"
                    id="leg-add"
                    disabled=Signal::derive(move || state.legs.read().len() >= MOST_LEGS)
                    press=add
                />
                <Button
                    says="Start from a usual day"
                    hidden=Signal::derive(move || !none.get())
                    press=usual
                />
                <Button says="Replace by a usual day" hidden=none press=restore />
            </p>
        </div>
        <Show when=move || !none.get()>
            <Results />
        </Show>
    }
}

/// One leg: its name, its figures, and a way to be rid of it.
#[component]
fn LegFold(row: RowId) -> impl IntoView {
    let state = AppState::expect();
    let id = format!("day-leg-{row}");
    let name = Memo::new(move |_| state.leg(row, |leg| leg.name.clone()).unwrap_or_default());
    let time = Signal::derive(move || {
        let at = state
            .legs
            .with(|ids| ids.iter().position(|one| *one == row));
        state.now(|_, report| {
            let leg = report.analyses.legs.as_ref()?.legs.get(at?)?;
            Some(state.show(minutes(leg.minutes)))
        })
    });
    view! {
        <Fold id=id.clone() title=name class="load" note=time>
            <LegForm id=id.clone() row name />
        </Fold>
    }
}

#[component]
fn LegForm(id: String, row: RowId, name: Memo<String>) -> impl IntoView {
    let state = AppState::expect();
    let cell = |(column, field): (usize, &'static Field<LegRow>)| {
        let entered =
            Memo::new(move |_| Entered::in_row(state.leg(row, |leg| field.get(&leg.row))));
        let id = format!("{id}-{}", field.name);
        view! { <Cell id target=Target::Leg(row, column) spec=&field.spec entered /> }
    };
    let cells = LegRow::FIELDS.iter().enumerate().map(cell).collect_view();
    view! {
        <div class="cell">
            <NameEntry
                id=format!("{id}-name")
                longest="80"
                name
                enter=move |name| state.rename_leg(row, name)
            />
        </div>
        <div class="cells">{cells}</div>
        <p class="buttons">
            <Button says="Delete this leg" press=move |()| state.delete_leg(row) />
        </p>
    }
}

/// A column: what stands over it, the kind of its figures, and the figure.
type Column = (&'static str, QuantityKind, fn(&LegReport) -> Quantity);

static COLUMNS: [Column; 8] = [
    ("Start", QuantityKind::Current, |leg| amperes(leg.start_a)),
    ("End", QuantityKind::Current, |leg| amperes(leg.end_a)),
    ("Bank", QuantityKind::Charge, |leg| {
        ampere_hours(leg.bank_ah)
    }),
    ("From", QuantityKind::Percent, |leg| {
        percent(leg.from_pct.max(0.0))
    }),
    ("To", QuantityKind::Percent, |leg| {
        percent(leg.to_pct.max(0.0))
    }),
    ("Winding", QuantityKind::Temperature, |leg| {
        celsius(leg.hottest_winding_c())
    }),
    ("Case", QuantityKind::Temperature, |leg| {
        celsius(leg.hottest_case_c())
    }),
    ("Fuel", QuantityKind::Fuel, |leg| {
        Quantity::new(leg.fuel_l, QuantityKind::Fuel).to(1)
    }),
];

/// The totals in words, and a row for each leg.
#[component]
fn Results() -> impl IntoView {
    let state = AppState::expect();
    let totals = Signal::derive(move || {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let legs = report.analyses.legs.as_ref();
            legs.map(|legs| text::legs::totals(legs, &reader).join(" "))
        })
    });
    let heads = Signal::derive(move || {
        let reader = state.reader.get();
        let head = |(what, kind, _): &Column| format!("{what} {}", reader.unit(*kind));
        let figures = COLUMNS.iter().map(head);
        ["Leg".to_string(), "Time".to_string()]
            .into_iter()
            .chain(figures)
            .chain(["Limited by".to_string()])
            .collect()
    });
    let rows = Signal::derive(move || {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let legs = report.analyses.legs.as_ref();
            legs.map_or(Vec::new(), |legs| rows(legs, &reader))
        })
    });
    view! {
        <p class="total" id="legs-total">
            {totals}
        </p>
        <ScrollingTable id="legs-table" name="The legs of the day" heads rows />
    }
}

fn rows(legs: &LegsReport, reader: &Reader) -> Vec<TextRow> {
    let row = |leg: &LegReport| {
        let figures = COLUMNS
            .iter()
            .map(|(_, _, figure)| reader.number(figure(leg)));
        TextRow {
            head: leg.name.clone(),
            cells: [reader.show(minutes(leg.minutes))]
                .into_iter()
                .chain(figures)
                .chain([words::limit(leg.limit).to_string()])
                .collect(),
        }
    };
    legs.legs.iter().map(row).collect()
}
