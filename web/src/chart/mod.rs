//! The charging run as a chart: a finger, the mouse or the keyboard reads off
//! a moment, and the same figures stand in a table behind it.

pub(crate) mod drawing;
pub(crate) mod plot;
pub(crate) mod scale;
mod speed;

use ampwright_core::report::{Moment, RunReport, clock};
use ampwright_core::worksheet::RegulatorKind;
use leptos::ev::PointerEvent;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

use crate::desk::Desk;
use crate::words::figure;
pub use speed::SpeedChart;

use plot::{HEIGHT, LEFT, RIGHT, WIDTH, plot, time_scale};

/// The chart with its reading line and table.
#[component]
pub fn RunChart() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let run = Memo::new(move |_| desk.report.with(|report| report.run.clone()));
    // As a share of the run, so that the place holds while figures change.
    let at = RwSignal::new(0.5_f64);
    let moment = Memo::new(move |_| run.with(|run| nearest(run, at.get() * run.minutes)));
    let marks = move || {
        desk.sheet.with(|sheet| {
            let class_c = sheet.inputs.alt.class.limit_c();
            let mut marks = vec![(class_c, "winding limit")];
            if sheet.inputs.reg.kind == RegulatorKind::External {
                marks.push((sheet.inputs.reg.set_point_c, "set-point"));
            }
            marks
        })
    };
    let point = move |event: PointerEvent| {
        let Some(drawing) = event
            .current_target()
            .and_then(|target| target.dyn_into::<leptos::web_sys::Element>().ok())
        else {
            return;
        };
        let place = drawing.get_bounding_client_rect();
        if place.width() > 0.0 {
            let across = (f64::from(event.client_x()) - place.left()) / place.width() * WIDTH;
            at.set(((across - LEFT) / (RIGHT - LEFT)).clamp(0.0, 1.0));
        }
    };
    let slide = move |event| {
        if let Ok(percent) = event_target_value(&event).parse::<f64>() {
            at.set(percent / 100.0);
        }
    };
    let hover = move |event: PointerEvent| {
        if event.buttons() > 0 || event.pointer_type() == "mouse" {
            point(event);
        }
    };
    let cursor = move || {
        run.with(|run| {
            moment.with(|moment| moment.map(|moment| time_scale(run).place(moment.minute)))
        })
    };
    let title = move || {
        desk.sheet.with(|sheet| {
            format!(
                "The charging run, {} to {} %",
                sheet.inputs.run.from_pct, sheet.inputs.run.to_pct
            )
        })
    };
    view! {
        <section class="chart" aria-labelledby="chart-title">
            <h2 id="chart-title">{title}</h2>
            <p class="lead">{move || run.with(shares)}</p>
            <svg viewBox=format!("0 0 {WIDTH} {HEIGHT}") role="img" aria-labelledby="chart-title"
                on:pointerdown=point on:pointermove=hover>
                <g inner_html=move || run.with(|run| plot(run, &marks()))></g>
                {move || cursor().map(|x| view! { <line class="cursor" x1=x x2=x y1=14.0 y2=HEIGHT - 24.0></line> })}
            </svg>
            <label class="reading-label" for="reading">"Read off at"</label>
            <input id="reading" type="range" min="0" max="100" step="any"
                prop:value=move || (at.get() * 100.0).to_string()
                aria-valuetext=move || moment.get().map(|m| clock(m.minute)).unwrap_or_default()
                on:input=slide
                on:keydown=move |event: leptos::ev::KeyboardEvent| step(&event, at, run)/>
            <dl class="reading" id="reading-values"
                inner_html=move || moment.get().map(reading).unwrap_or_default()></dl>
            <details class="finer">
                <summary>"The run as a table"</summary>
                <div class="scroll" tabindex="0" role="region" aria-label="The run as a table"
                    inner_html=move || run.with(table)></div>
            </details>
        </section>
    }
}

/// Arrow keys go from moment to moment.
fn step(event: &leptos::ev::KeyboardEvent, at: RwSignal<f64>, run: Memo<RunReport>) {
    let by: isize = match event.key().as_str() {
        "ArrowRight" | "ArrowUp" => 1,
        "ArrowLeft" | "ArrowDown" => -1,
        _ => return,
    };
    event.prevent_default();
    run.with_untracked(|run| {
        let minute = at.get_untracked() * run.minutes;
        let Some(here) = nearest_at(run, minute) else {
            return;
        };
        let last = run.series.len().saturating_sub(1);
        let next = here.saturating_add_signed(by).min(last);
        if let Some(moment) = run.series.get(next) {
            at.set(moment.minute / run.minutes.max(1e-9));
        }
    });
}

fn nearest_at(run: &RunReport, minute: f64) -> Option<usize> {
    let distance = |moment: &Moment| (moment.minute - minute).abs();
    (0..run.series.len())
        .min_by(|a, b| distance(&run.series[*a]).total_cmp(&distance(&run.series[*b])))
}

fn nearest(run: &RunReport, minute: f64) -> Option<Moment> {
    nearest_at(run, minute).and_then(|at| run.series.get(at).copied())
}

/// "Heat: the regulator holds back 78 % of the time, the machine 22 %."
fn shares(run: &RunReport) -> String {
    if run.limit_shares.is_empty() {
        return "There is nothing to charge.".to_string();
    }
    let parts: Vec<String> = run
        .limit_shares
        .iter()
        .map(|share| format!("{} {} %", share.limit.words(), figure(share.share_pct, 0)))
        .collect();
    format!("Held down by {}.", parts.join(", "))
}

// What follows is written as text, figures and words of our own only.

fn reading(moment: Moment) -> String {
    let lines = [
        ("after", clock(moment.minute)),
        (
            "alternator",
            format!("{} A", figure(moment.alternator_a, 0)),
        ),
        ("into the bank", format!("{} A", figure(moment.bank_a, 0))),
        ("at the bank", format!("{} V", figure(moment.bank_v, 2))),
        ("charge", format!("{} %", figure(moment.charge_pct, 0))),
        ("winding", format!("{} °C", figure(moment.winding_c, 0))),
        ("rectifier", format!("{} °C", figure(moment.rectifier_c, 0))),
        ("case", format!("{} °C", figure(moment.case_c, 0))),
        ("air", format!("{} °C", figure(moment.air_c, 0))),
        (
            "shaft",
            format!("{} kW", figure(moment.shaft_w / 1000.0, 2)),
        ),
        ("held by", moment.limit.short().to_string()),
    ];
    lines
        .map(|(what, words)| format!("<div><dt>{what}</dt><dd>{words}</dd></div>"))
        .concat()
}

/// The same figures as a table, some twenty rows of them.
fn table(run: &RunReport) -> String {
    const HEADS: [&str; 8] = [
        "After",
        "Alt. A",
        "Bank A",
        "Full %",
        "Wind. °C",
        "Case °C",
        "Air °C",
        "Held by",
    ];
    let every = (run.series.len() / 20).max(1);
    let last = run.series.len().saturating_sub(1);
    let heads = HEADS
        .map(|head| format!("<th scope=col>{head}</th>"))
        .concat();
    let mut text = format!("<table class=run><thead><tr>{heads}</tr></thead><tbody>");
    for (at, m) in run.series.iter().enumerate() {
        if at % every != 0 && at != last {
            continue;
        }
        let figures = [
            m.alternator_a,
            m.bank_a,
            m.charge_pct,
            m.winding_c,
            m.case_c,
            m.air_c,
        ];
        let cells = figures
            .map(|number| format!("<td>{}</td>", figure(number, 0)))
            .concat();
        text += &format!(
            "<tr><th scope=row>{}</th>{cells}<td>{}</td></tr>",
            clock(m.minute),
            m.limit.short()
        );
    }
    text + "</tbody></table>"
}
