//! What is to be bought for an arrangement, and what a year with it costs; each
//! figure of the year explains itself.

use ampwright_core::decision::arrangements::{Outcome, YearCost};
use ampwright_core::explain::{Working, arrangement_working};
use ampwright_core::report;
use ampwright_core::text::purchase;
use ampwright_core::units::Reader;
use ampwright_core::units::quantity::money;
use leptos::prelude::*;

use super::Compared;
use crate::components::explanation::{Explanation, Opener};
use crate::state::{AppState, ExplainedAt};

/// A part of what a year costs.
struct YearLine {
    /// Its name in the report.
    id: &'static str,
    what: &'static str,
    cost: fn(&YearCost) -> f64,
}

const fn line(id: &'static str, what: &'static str, cost: fn(&YearCost) -> f64) -> YearLine {
    YearLine { id, what, cost }
}

static YEAR: [YearLine; 7] = [
    line("arrangement.year.fuel", "A year: fuel", |year| year.fuel),
    line(
        "arrangement.year.engine",
        "… engine, service and wear",
        |year| year.engine,
    ),
    line(
        "arrangement.year.generator",
        "… generator, service and wear",
        |year| year.generator,
    ),
    line("arrangement.year.shore", "… shore power", |year| {
        year.shore
    }),
    line("arrangement.year.bank", "… wear of the bank", |year| {
        year.bank
    }),
    line(
        "arrangement.year.capital",
        "… the purchase, spread",
        |year| year.capital,
    ),
    line("arrangement.year.total", "… all in", |year| year.total),
];

/// Purchases, then what a year costs.
#[component]
pub fn Costs<'a>(
    /// Its place in the comparison.
    at: usize,
    outcome: &'a Outcome,
    reader: &'a Reader,
    compared: Compared,
) -> impl IntoView + use<> {
    let state = AppState::expect();
    let place = ExplainedAt::Arrangement(at);
    let explain = Callback::new(move |id| explain(state, compared, at, id));
    let bought = outcome.parts.iter().map(|part| {
        view! {
            <tr>
                <th scope="row">{purchase(part, reader)}</th>
                <td class="figure">{reader.show(money(part.price))}</td>
            </tr>
        }
    });
    let nothing = outcome.parts.is_empty().then(|| {
        view! {
            <tr>
                <th scope="row">"Nothing to buy"</th>
                <td></td>
            </tr>
        }
    });
    let year = outcome.year.iter().flat_map(|year| {
        let costs = YEAR.iter().map(|line| (line, (line.cost)(year)));
        costs.filter(|(_, cost)| *cost > 0.0)
    });
    let year = year.map(|(line, cost)| {
        let words = reader.show(money(cost));
        view! {
            <tr>
                <th scope="row">{line.what}</th>
                <td class="figure">
                    <Opener at=place id=line.id words />
                </td>
            </tr>
        }
    });
    view! {
        <table>
            <tbody>
                {bought.collect_view()} {nothing} {year.collect_view()}
            </tbody>
        </table>
        <Explanation at=place explain />
    }
}

/// How a figure of an arrangement came about.
fn explain(state: AppState, compared: Compared, at: usize, id: &str) -> Option<Working> {
    let compared = compared.get()?;
    let outcome = compared.outcomes.get(at)?;
    let today = compared.outcomes.first()?;
    let with = state.glance(|sheet, _| outcome.arrangement.on(sheet));
    arrangement_working(&with, &report(&with), outcome, today, id)
}
