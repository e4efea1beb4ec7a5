//! The results as tables of figures, each of which opens its explanation.

mod lines;
mod tables;

use ampwright_core::Report;
use ampwright_core::text::words::day_trouble;
use ampwright_core::units::quantity::minutes;
use ampwright_core::units::{Quantity, QuantityKind, Reader};
use leptos::prelude::*;

use crate::components::explanation::{Explanation, Opener, PrintExplanations};
use crate::state::{AppState, ExplainedAt};
use lines::{Line, Runs};
use tables::{TABLES, Table};

/// The section.
#[component]
pub fn Figures() -> impl IntoView {
    view! {
        <section class="figures" aria-labelledby="figures-title">
            <h2 id="figures-title">"Figures"</h2>
            <p class="lead">"Press a figure to see how it came about."</p>
            <div class="tables">
                {TABLES
                    .iter()
                    .map(|table| view! { <FigureTable table /> })
                    .collect_view()}
            </div>
            <PrintExplanations />
        </section>
    }
}

/// A figure as a table writes it.
#[derive(Clone, PartialEq, Default)]
struct Written {
    figure: String,
    unit: String,
}

#[component]
fn FigureTable(table: &'static Table) -> impl IntoView {
    let state = AppState::expect();
    let written = Memo::new(move |_| {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let lines = match (table.instead)(report) {
                Some(_) => &[],
                None => table.lines,
            };
            let lines = lines.iter();
            lines
                .map(|line| write(line, report, &reader))
                .collect::<Vec<_>>()
        })
    });
    let row = move |(at, line): (usize, &'static Line)| {
        let written = Memo::new(move |_| written.with(|all| all.get(at).cloned().flatten()));
        view! { <FigureRow table=table.name line written /> }
    };
    let instead =
        Memo::new(move |_| state.settled(|_, report| (table.instead)(report).map(str::to_string)));
    view! {
        <table>
            <caption>{table.caption}</caption>
            <tbody id=format!("figures-{}", table.name)>
                {table.lines.iter().enumerate().map(row).collect_view()}
                <tr class:hidden=Signal::derive(move || instead.get().is_none())>
                    <th scope="row">{instead}</th>
                    <td class="figure">"–"</td>
                    <td class="unit"></td>
                </tr>
            </tbody>
        </table>
    }
}

/// A line of a table, and below it its explanation while that lies open.
#[component]
fn FigureRow(
    table: &'static str,
    line: &'static Line,
    written: Memo<Option<Written>>,
) -> impl IntoView {
    let state = AppState::expect();
    let at = ExplainedAt::Table(table);
    let words = Signal::derive(move || written.get().unwrap_or_default().figure);
    let unit = Signal::derive(move || written.get().unwrap_or_default().unit);
    let explained = move || {
        state.explanations.is_open(at, line.id).then(|| {
            view! {
                <tr class="opened">
                    <td colspan="3">
                        <Explanation at />
                    </td>
                </tr>
            }
        })
    };
    view! {
        <tr class:hidden=Signal::derive(move || written.read().is_none())>
            <th scope="row">{line.label()}</th>
            <td class="figure">
                <Opener at id=line.id words unit />
            </td>
            <td class="unit">{unit}</td>
        </tr>
        {explained}
    }
}

/// A figure as its line writes it; none where the boat has no such figure.
fn write(line: &Line, report: &Report, reader: &Reader) -> Option<Written> {
    let day = &report.analyses.day;
    let runs = match line.runs {
        Runs::None => 0,
        Runs::Day => day.runs,
        Runs::Lead => report.analyses.lead.report().map_or(0, |lead| lead.runs),
    };
    let unit = line.unit.unwrap_or_else(|| reader.unit(line.kind));
    let written = |figure: String, unit: &str| {
        let unit = unit.to_string();
        Some(Written { figure, unit })
    };
    match (line.figure)(report) {
        None => {
            let trouble = day.trouble.filter(|_| line.runs == Runs::Day);
            let words = trouble.map(day_trouble).or(line.without)?;
            written(words.to_string(), if line.keeps_unit { unit } else { "" })
        }
        Some(0.0) if line.runs != Runs::None => written("none".to_string(), ""),
        Some(time) if line.kind == QuantityKind::Time => {
            let several = format!("{runs} runs");
            let unit = if runs > 1 { several.as_str() } else { "" };
            written(reader.show(minutes(time)), unit)
        }
        Some(value) => {
            let quantity = Quantity::new(value, line.kind).to(line.decimals);
            written(reader.number(quantity), unit)
        }
    }
}
