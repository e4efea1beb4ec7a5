//! The sea trial: readings of a real run are pasted, the model is fitted to
//! them, and the worksheet takes over what they tell.

use std::cell::RefCell;
use std::fmt::Write;

use ampwright_core::decision::calibration;
use ampwright_core::decision::calibration::{Fit, Fitted, LogRemark, Refusal, SAMPLE, apply};
use ampwright_core::guidance::CautionTopic;
use ampwright_core::report;
use ampwright_core::text::calibration::{
    HOW_TO, fit_remarks, fitted as called, log_remarks, refusal,
};
use leptos::prelude::*;

use crate::chart::drawing::{Anchor, Drawing};
use crate::chart::plot::{LEFT, RIGHT, WIDTH, grid, minutes, sample};
use crate::chart::scale::Scale;
use crate::desk::{Desk, count};
use crate::fit::caution;
use crate::paper::{Section, Text, by_id, offer, value, write, written};
use crate::words::{escape, figure};

/// Top and bottom of the drawing's field, and its height.
const FIELD: (f64, f64) = (18.0, 150.0);
const HEIGHT: f64 = 168.0;

/// What came of a log.
struct Outcome {
    /// What of the log was not understood.
    unread: Vec<LogRemark>,
    found: Result<Fit, Refusal>,
    /// Hot amps before and after.
    hot_a: (f64, f64),
    /// The worksheet it belongs to, by the desk's count.
    turn: u32,
    /// Whether the worksheet took it over.
    taken: bool,
}

thread_local! {
    static OUTCOME: RefCell<Option<Outcome>> = const { RefCell::new(None) };
}

/// The section.
pub const SECTION: Section = Section {
    paper: written(|| {
        let steps = HOW_TO
            .map(|step| format!("<li>{}</li>", escape(step)))
            .concat();
        format!(
            r#"<section class="trial" id="trial" aria-labelledby="trial-title"><h2 id="trial-title">Sea trial</h2>
<p class="lead">Half an hour with a thermometer makes the hot figures yours: the model is fitted to your readings.</p>
<p class="caution" id="trial-caution"></p>
<details class="finer"><summary>How to take the readings</summary><ol class="steps">{steps}</ol></details>
<label for="trial-log">Your readings<small>a line each: minute, amps, case °C, air °C, rpm, volts; or your own order under headings</small></label>
<textarea id="trial-log" rows="7" spellcheck="false" autocomplete="off" data-input="log"></textarea>
<p class="buttons"><button type="button" id="trial-fit" data-click="fit" disabled>Fit the model</button>
<button type="button" class="plain" id="trial-sample" data-click="log-sample">Fill in an invented log</button></p>
<div id="trial-outcome" role="status"></div><div id="trial-take"></div></section>"#
        )
    }),
    parts: &[
        (
            "trial-caution",
            Text::Late(|sheet, _| caution(sheet, CautionTopic::Heat)),
        ),
        (
            "trial-outcome",
            Text::Own(|desk| {
                with_outcome(desk, |outcome| {
                    let notes = notes(&log_remarks(&outcome.unread));
                    match &outcome.found {
                        Err(wrong) => {
                            format!("{notes}<p class=complaint>{}</p>", escape(&refusal(wrong)))
                        }
                        Ok(fit) => notes + &found(fit, outcome.hot_a),
                    }
                })
            }),
        ),
        (
            "trial-take",
            Text::Own(|desk| {
                with_outcome(desk, |outcome| {
                    let (disabled, said) = match (&outcome.found, outcome.taken) {
                        (Err(_), _) => return String::new(),
                        (Ok(_), false) => ("", ""),
                        (Ok(_), true) => {
                            ("disabled", "The worksheet has them, marked as measured.")
                        }
                    };
                    format!(
                        "<p class=buttons><button type=button id=trial-use data-click=use-fit {disabled}>Use these values</button> <span class=said role=status>{said}</span></p>"
                    )
                })
            }),
        ),
    ],
    acts: &[
        ("log", |_, area, _| offer("trial-fit", &value(area))),
        ("log-sample", |_, _, _| {
            write("trial-log@value", SAMPLE);
            offer("trial-fit", SAMPLE);
        }),
        ("fit", |desk, _, _| fit(desk)),
        ("use-fit", |desk, _, _| {
            OUTCOME.with_borrow_mut(|outcome| {
                if let Some(outcome) = outcome
                    && let Ok(fit) = &outcome.found
                {
                    desk.edit(|sheet| apply(sheet, fit));
                    outcome.taken = true;
                }
            });
            count(desk.aside);
        }),
    ],
    start: |_| (),
};

fn fit(desk: Desk) {
    let log = by_id("trial-log").map_or(String::new(), |area| value(&area));
    let log = calibration::read(&log);
    let outcome = desk.sheet.with_untracked(|sheet| {
        let found = calibration::fit(sheet, &log);
        let mut after = sheet.clone();
        if let Ok(fit) = &found {
            apply(&mut after, fit);
        }
        let before_a = desk
            .report
            .with_untracked(|report| report.analyses.machine.hot_a);
        Outcome {
            hot_a: (before_a, report(&after).analyses.machine.hot_a),
            found,
            unread: log.remarks,
            turn: desk.turn.get_untracked(),
            taken: false,
        }
    });
    OUTCOME.set(Some(outcome));
    count(desk.aside);
}

/// A text about what was found, which belongs to the worksheet it was found
/// with.
fn with_outcome(desk: Desk, text: fn(&Outcome) -> String) -> String {
    desk.aside.track();
    let turn = desk.turn.get();
    OUTCOME.with_borrow(|outcome| match outcome {
        Some(outcome) if outcome.turn == turn => text(outcome),
        _ => String::new(),
    })
}

fn notes(remarks: &[String]) -> String {
    let mut text = String::from("<ul class=remarks>");
    for remark in remarks {
        text += &format!("<li>{}</li>", escape(remark));
    }
    text + "</ul>"
}

fn found(fit: &Fit, (before_a, after_a): (f64, f64)) -> String {
    let mut rows: Vec<[String; 4]> = fit.figures.iter().map(row).collect();
    rows.push([
        "Amps held hot".to_string(),
        format!("{} A", figure(after_a, 0)),
        String::new(),
        figure(before_a, 0),
    ]);
    let mut text = String::from(
        r#"<table class="run" id="trial-figures"><thead><tr><th scope="col">What the log says</th><th scope="col">fitted</th><th scope="col">±</th><th scope="col">was</th></tr></thead><tbody>"#,
    );
    // Figures and words of our own only.
    for [what, value, spread, was] in rows {
        text += &format!(
            "<tr><th scope=row>{what}</th><td class=figure>{value}</td><td>{spread}</td><td>{was}</td></tr>"
        );
    }
    format!(
        "{text}</tbody></table><p class=margin>The model misses the thermometer by {} K on average (root mean square). ± is one standard deviation, a fair share for the meters included.</p>{}{}",
        figure(fit.residual_k, 1),
        drawing(fit),
        notes(&fit_remarks(&fit.remarks))
    )
}

fn row(fitted: &Fitted) -> [String; 4] {
    let Fitted { unit, decimals, .. } = *fitted;
    let gap = if unit.is_empty() { "" } else { " " };
    [
        called(fitted.what).to_string(),
        format!("{}{gap}{unit}", figure(fitted.value, decimals)),
        figure(fitted.deviation, decimals),
        fitted
            .was
            .map_or("–".to_string(), |was| figure(was, decimals)),
    ]
}

/// Case as measured, a dot each, against the modelled line.
fn drawing(fit: &Fit) -> String {
    let (Some(first), Some(last)) = (fit.series.first(), fit.series.last()) else {
        return String::new();
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
    format!(
        r#"<div class="chart"><svg viewBox="0 0 {WIDTH} {HEIGHT}" role="img" aria-label="Case temperature over time: dots as measured, a line as modelled">{}</svg></div>"#,
        drawing.finish()
    )
}
