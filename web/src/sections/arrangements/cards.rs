//! The arrangements one by one: cards to swipe on a narrow screen; what is to
//! be bought for each, and what can be done with it.

use ampwright_core::boat::Arrangement;
use ampwright_core::decision::arrangements::Outcome;
use ampwright_core::text::{findings, purchase};
use ampwright_core::units::Reader;
use ampwright_core::units::quantity::money;
use leptos::prelude::*;

use super::rows::JudgedRow;
use super::table::Cell;
use super::{custom, letter};
use crate::browser::page;
use crate::state::saved_boats::title;
use crate::state::{AppState, Arrival};

/// Each on a card of its own.
#[component]
pub fn Cards<'a>(
    outcomes: &'a [Outcome],
    rows: &'a [JudgedRow],
    reader: &'a Reader,
) -> impl IntoView + use<> {
    let card = |(at, outcome): (usize, &Outcome)| {
        let line = |row: &JudgedRow| {
            let (text, judged) = row.cells.get(at)?.clone();
            Some(view! {
                <div>
                    <dt>{row.title}</dt>
                    <dd>
                        <Cell text judged />
                    </dd>
                </div>
            })
        };
        view! {
            <article aria-label=format!("{} {}", letter(at), outcome.name)>
                <h3>
                    <i>{letter(at)}</i>
                    " "
                    {outcome.name.clone()}
                </h3>
                <Harm outcome reader />
                <dl>{rows.iter().map(line).collect_view()}</dl>
                <Bought outcome reader />
                {(at > 0)
                    .then(|| view! { <Choose at arrangement=outcome.arrangement.clone() /> })}
            </article>
        }
    };
    view! {
        <div
            class="cards"
            id="arrange-cards"
            tabindex="0"
            role="region"
            aria-label="The arrangements one by one"
        >
            {outcomes.iter().enumerate().map(card).collect_view()}
        </div>
    }
}

/// What speaks against an arrangement, before anything else.
#[component]
fn Harm<'a>(outcome: &'a Outcome, reader: &'a Reader) -> impl IntoView + use<> {
    (!outcome.harm.is_empty()).then(|| {
        view! {
            <p class="told">
                <small class="worst">"not safe"</small>
                " "
                {findings::sentences(&outcome.harm, reader)}
            </p>
        }
    })
}

/// What is to be bought, and what a year's cost is made of.
#[component]
fn Bought<'a>(outcome: &'a Outcome, reader: &'a Reader) -> impl IntoView + use<> {
    let line = |(what, price): (String, Option<f64>)| {
        view! {
            <tr>
                <th scope="row">{what}</th>
                <td class="figure">{price.map(|price| reader.show(money(price)))}</td>
            </tr>
        }
    };
    let changes: Vec<String> = outcome
        .changed()
        .map(|(key, value)| {
            let spec = key.spec();
            format!("{}: {}", spec.label, spec.shown_to(reader, value))
        })
        .collect();
    view! {
        <table>
            <tbody>{cost_lines(outcome, reader).into_iter().map(line).collect_view()}</tbody>
        </table>
        {(!changes.is_empty())
            .then(|| view! { <p class="margin">{changes.join("; ")} "."</p> })}
    }
}

/// What the money goes to, with its price.
fn cost_lines(outcome: &Outcome, reader: &Reader) -> Vec<(String, Option<f64>)> {
    let parts = outcome.parts.iter();
    let mut lines: Vec<_> = parts
        .map(|part| (purchase(part, reader), Some(part.price)))
        .collect();
    if lines.is_empty() {
        lines.push(("Nothing to buy".to_string(), None));
    }
    if let Some(year) = &outcome.year {
        let of_year = [
            ("A year: fuel", year.fuel),
            ("… engine, service and wear", year.engine),
            ("… shore power", year.shore),
            ("… wear of the bank", year.bank),
            ("… the purchase, spread", year.capital),
        ];
        let of_year = of_year.into_iter().filter(|(_, price)| *price > 0.0);
        lines.extend(of_year.map(|(what, price)| (what.to_string(), Some(price))));
    }
    lines
}

/// What can be done with an arrangement.
#[component]
fn Choose(at: usize, arrangement: Arrangement) -> impl IntoView {
    let state = AppState::expect();
    let arrangement = StoredValue::new(arrangement);
    view! {
        <p class="buttons">
            <button
                type="button"
                id=format!("way-use-{at}")
                on:click=move |_| arrangement.with_value(|chosen| set_up(state, chosen))
            >
                "Save as a new boat"
            </button>
            <button
                type="button"
                class="plain"
                id=format!("way-copy-{at}")
                on:click=move |_| custom::add(state, arrangement.get_value())
            >
                "Edit as my own arrangement"
            </button>
        </p>
    }
}

/// Opens a copy of the worksheet that is set up like an arrangement; the one it
/// came from is kept.
fn set_up(state: AppState, chosen: &Arrangement) {
    state.save_waiting();
    let mut sheet = state.sheet.with_untracked(|sheet| chosen.on(sheet));
    sheet.name = format!("{}: {}", title(&sheet.name), chosen.name);
    let arrival = Arrival::of(
        "This is a copy, set up the other way. The worksheet it came from is kept as it was.",
    );
    state.open(sheet, None, Some(arrival));
    state.save_soon();
    page::to_top();
}
