//! The sea trial: readings of a real run are pasted, the model is fitted to
//! them, and the worksheet takes over what they tell.

use std::fmt::Write;

use ampwright_core::fields::Complaint;
use ampwright_core::report;
use ampwright_core::trial::{self, Fit, Fitted, HOW_TO, SAMPLE, apply};
use leptos::prelude::*;

use crate::chart::drawing::{Anchor, Drawing};
use crate::chart::plot::{LEFT, RIGHT, WIDTH, grid, minutes, sample};
use crate::chart::scale::Scale;
use crate::desk::Desk;
use crate::words::figure;

/// Top and bottom of the drawing's field, and its height.
const FIELD: (f64, f64) = (18.0, 150.0);
const HEIGHT: f64 = 168.0;

/// What came of a log.
#[derive(Clone, PartialEq)]
struct Outcome {
    /// What of the log was not understood.
    unread: Vec<String>,
    found: Result<Fit, Complaint>,
    /// Hot amps before and after.
    hot_a: (f64, f64),
    /// The worksheet it belongs to, by the desk's count.
    turn: u32,
}

/// The section.
#[component]
pub fn SeaTrial() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let text = RwSignal::new(String::new());
    let outcome = RwSignal::new(None::<Outcome>);
    let taken = RwSignal::new(false);
    let fit = move |_| {
        let log = text.with_untracked(|text| trial::read(text));
        taken.set(false);
        outcome.set(Some(desk.sheet.with_untracked(|sheet| {
            let found = trial::fit(sheet, &log);
            let mut after = sheet.clone();
            if let Ok(fit) = &found {
                apply(&mut after, fit);
            }
            Outcome {
                hot_a: (
                    desk.report.with_untracked(|report| report.machine.hot_a),
                    report(&after).machine.hot_a,
                ),
                found,
                unread: log.remarks,
                turn: desk.turn.get_untracked(),
            }
        })));
    };
    let take_over = move |_| {
        outcome.with_untracked(|outcome| {
            if let Some(Outcome { found: Ok(fit), .. }) = outcome {
                desk.edit(|sheet| apply(sheet, fit));
                taken.set(true);
            }
        });
    };
    // What was found belongs to the worksheet it was found with.
    let shown = move || {
        outcome
            .get()
            .filter(|outcome| outcome.turn == desk.turn.get())
    };
    view! {
        <section class="trial" id="trial" aria-labelledby="trial-title">
            <h2 id="trial-title">"Sea trial"</h2>
            <p class="lead">"Half an hour with a thermometer makes the hot figures yours: the model is fitted to your readings."</p>
            <details class="finer">
                <summary>"How to take the readings"</summary>
                <ol class="steps">{HOW_TO.map(|step| view! { <li>{step}</li> }).collect_view()}</ol>
            </details>
            <label for="trial-log">"Your readings"
                <small>"a line each: minute, amps, case °C, air °C, rpm, volts; or your own order under headings"</small>
            </label>
            <textarea id="trial-log" rows="7" spellcheck="false" autocomplete="off" prop:value=text
                on:input=move |event| text.set(event_target_value(&event))></textarea>
            <p class="buttons">
                <button type="button" id="trial-fit" on:click=fit
                    disabled=move || text.with(|text| text.trim().is_empty())>"Fit the model"</button>
                <button type="button" class="plain" id="trial-sample"
                    on:click=move |_| text.set(SAMPLE.to_string())>"Fill in an invented log"</button>
            </p>
            <div id="trial-outcome" role="status">{move || shown().map(|outcome| view! {
                {notes(&outcome.unread)}
                {match &outcome.found {
                    Err(wrong) => view! { <p class="complaint">{wrong.0.clone()}</p> }.into_any(),
                    Ok(fit) => found(fit, outcome.hot_a),
                }}
            })}</div>
            {move || shown().filter(|outcome| outcome.found.is_ok()).map(|_| view! {
                <p class="buttons">
                    <button type="button" id="trial-use" on:click=take_over disabled=taken>"Use these values"</button>
                    <span class="said" role="status">{move || taken.get().then_some("The worksheet has them, marked as measured.")}</span>
                </p>
            })}
        </section>
    }
}

fn notes(remarks: &[String]) -> AnyView {
    let lines: Vec<_> = remarks
        .iter()
        .map(|remark| view! { <li>{remark.clone()}</li> })
        .collect();
    view! { <ul class="remarks">{lines}</ul> }.into_any()
}

fn found(fit: &Fit, (before_a, after_a): (f64, f64)) -> AnyView {
    let mut rows: Vec<[String; 4]> = fit.figures.iter().map(row).collect();
    rows.push([
        "Amps held hot".to_string(),
        format!("{} A", figure(after_a, 0)),
        String::new(),
        figure(before_a, 0),
    ]);
    // Written as text: figures and words of our own only.
    let rows: String = rows
        .into_iter()
        .map(|[what, value, spread, was]| {
            format!("<tr><th scope=row>{what}</th><td class=figure>{value}</td><td>{spread}</td><td>{was}</td></tr>")
        })
        .collect();
    let missed = format!(
        "The model misses the thermometer by {} K on average (root mean square). ± is one standard deviation, a fair share for the meters included.",
        figure(fit.residual_k, 1)
    );
    view! {
        <table class="run" id="trial-figures">
            <thead><tr>
                <th scope="col">"What the log says"</th><th scope="col">"fitted"</th>
                <th scope="col">"±"</th><th scope="col">"was"</th>
            </tr></thead>
            <tbody inner_html=rows></tbody>
        </table>
        <p class="margin">{missed}</p>
        {drawing(fit)}
        {notes(&fit.remarks)}
    }
    .into_any()
}

fn row(fitted: &Fitted) -> [String; 4] {
    let Fitted { unit, decimals, .. } = *fitted;
    let gap = if unit.is_empty() { "" } else { " " };
    [
        fitted.label.to_string(),
        format!("{}{gap}{unit}", figure(fitted.value, decimals)),
        figure(fitted.deviation, decimals),
        fitted
            .was
            .map_or("–".to_string(), |was| figure(was, decimals)),
    ]
}

/// Case as measured, a dot each, against the modelled line.
fn drawing(fit: &Fit) -> AnyView {
    let (Some(first), Some(last)) = (fit.series.first(), fit.series.last()) else {
        return ().into_any();
    };
    let heat = fit
        .series
        .iter()
        .flat_map(|at| [at.measured_c, at.modelled_c]);
    let low = heat.clone().fold(f64::INFINITY, f64::min);
    let high = heat.fold(f64::NEG_INFINITY, f64::max);
    let time = Scale::new(first.minute, last.minute, LEFT, RIGHT);
    let heat = Scale::rounded(low, high, FIELD.1, FIELD.0);
    let (mut dots, mut line) = (String::new(), String::new());
    for at in &fit.series {
        let x = time.place(at.minute);
        // Writing to a String cannot fail.
        let _ = write!(dots, "M{x:.1} {:.1}h0", heat.place(at.measured_c));
        let letter = if line.is_empty() { 'M' } else { 'L' };
        let _ = write!(line, "{letter}{x:.1} {:.1}", heat.place(at.modelled_c));
    }
    let mut drawing = Drawing::default();
    grid(&mut drawing, &time, &heat, FIELD, "°C", 5.0);
    minutes(&mut drawing, &time, FIELD.1 + 13.0);
    drawing.path("line second", &line);
    drawing.path("dots", &dots);
    drawing.path("dots", "M120 10h0");
    drawing.word("name", (126.0, 13.5), Anchor::Start, "case, measured");
    sample(&mut drawing, (210.0, 10.0), "second", "modelled");
    view! {
        <div class="chart">
            <svg viewBox=format!("0 0 {WIDTH} {HEIGHT}") role="img"
                aria-label="Case temperature over time: dots as measured, a line as modelled"
                inner_html=drawing.finish()></svg>
        </div>
    }
    .into_any()
}
