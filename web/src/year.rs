//! The year, month by month, and the hours of a settled day: reckoned only
//! while it lies open, and only once typing rests.

use std::fmt::Write;
use std::time::Duration;

use ampwright_core::worksheet::Month;
use ampwright_core::year::MonthReport;
use ampwright_core::{Year, year};
use leptos::prelude::*;
use leptos::web_sys::Element;
use wasm_bindgen::JsCast;

use crate::chart::drawing::{Anchor, Drawing};
use crate::chart::plot::{LEFT, RIGHT, WIDTH, grid, mark, minutes, sample};
use crate::chart::scale::Scale;
use crate::desk::Desk;

/// How long typing must rest before the year is reckoned anew.
const REST: Duration = Duration::from_millis(250);

/// The section; everything in it is drawn when somebody opens it.
#[component]
pub fn ThroughTheYear() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let open = RwSignal::new(false);
    let reckoned = RwSignal::new(None::<Year>);
    let chosen = RwSignal::new(None::<usize>);
    let turn = StoredValue::new(0_u32);
    Effect::new(move |was_open: Option<bool>| {
        desk.sheet.track();
        let is_open = open.get();
        let now = turn.get_value().wrapping_add(1);
        turn.set_value(now);
        let rest = if was_open == Some(true) {
            REST
        } else {
            Duration::ZERO
        };
        if is_open {
            let reckon = move || {
                if turn.get_value() == now {
                    reckoned.set(Some(desk.sheet.with_untracked(year)));
                }
            };
            set_timeout(reckon, rest);
        }
        is_open
    });
    let toggle = move |event: leptos::ev::Event| {
        let details = event
            .current_target()
            .and_then(|target| target.dyn_into::<Element>().ok());
        open.set(details.is_some_and(|details| details.has_attribute("open")));
    };
    let month = move || {
        let asked = desk.sheet.with(|sheet| sheet.inputs.sun.month as usize);
        chosen.get().unwrap_or(asked)
    };
    let choose = move |event| chosen.set(event_target_value(&event).parse().ok());
    view! {
        <section class="year" aria-labelledby="year-title">
            <h2 id="year-title">"Through the year"</h2>
            <details class="finer" id="year" on:toggle=toggle>
                <summary>"Engine, bank and sun month by month"</summary>
                {move || reckoned.with(|year| year.as_ref().map(|year| table(year).into_any()))}
                <div class="row">
                    <label for="year-month">"A settled day in"</label>
                    <select id="year-month" prop:value=move || month().to_string() on:change=choose>
                        {Month::OPTIONS.iter().enumerate().map(|(at, option)| view! {
                            <option value=at.to_string() selected=at == month()>{option.label}</option>
                        }).collect_view()}
                    </select>
                </div>
                {move || {
                    let at = month();
                    reckoned.with(|year| {
                        let year = year.as_ref()?;
                        Some(day(year, year.months.get(at)?).into_any())
                    })
                }}
                <p class="about">"There are no clouds in it: every day has its month's mean sun, and a grey week asks more. When the engine is started stands in the worksheet under Engine rule; full is what is full for daily use. Hours are the sun's: at 12 it stands highest."</p>
            </details>
        </section>
    }
}

/// The months as a table, a bar at the end of each row. Rows and lines are
/// written as text, numbers and names of our own only: a view of each would
/// take several times the code.
fn table(year: &Year) -> impl IntoView + use<> {
    let whole = |m: &MonthReport| m.engine_ah_day + m.sun_ah_day;
    let most = year.months.iter().map(whole).fold(1.0, f64::max);
    let mut rows = String::new();
    for m in &year.months {
        let below = if m.days_below > 0 { "below" } else { "" };
        let parts = [
            m.engine_ah_day,
            m.sun_ah_day - m.wasted_ah_day,
            m.wasted_ah_day,
        ];
        // Writing to a String cannot fail.
        let _ = write!(
            rows,
            "<tr><th scope=row>{:.3}</th><td>{:.0}</td><td><b>{:.1}</b></td><td class='{below}'>{:.0}</td><td>{:.0}</td><td>{}</td></tr>",
            m.name(),
            m.sun_ah_day,
            m.engine_h_week,
            m.lowest_pct,
            m.wasted_pct,
            bar(most, parts)
        );
    }
    let alike = if year.sun_by_month {
        ""
    } else {
        "Every month is alike here. For summer and winter give panels, and let their sun be reckoned from latitude, month and sky."
    };
    let legend = format!(
        "<span>{} engine</span> <span>{} sun taken</span> <span>{} sun wasted: the bank was full</span>",
        bar(1.0, [1.0, 0.0, 0.0]),
        bar(1.0, [0.0, 1.0, 0.0]),
        bar(1.0, [0.0, 0.0, 1.0])
    );
    view! {
        <p class="told">{year.sentences().join(" ")}</p>
        <p class="lead">{alike}</p>
        <div class="scroll" tabindex="0" role="region" aria-label="The months as a table">
            <table class="run months">
                <thead><tr>
                    <th scope="col">"Month"</th><th scope="col">"Sun A·h/day"</th><th scope="col">"Engine h/week"</th>
                    <th scope="col">"Lowest %"</th><th scope="col">"Wasted %"</th><th scope="col">"A·h a day"</th>
                </tr></thead>
                <tbody inner_html=rows></tbody>
            </table>
        </div>
        <p class="margin bars" inner_html=legend></p>
    }
}

/// Engine, sun and wasted sun one after the other, as parts of the most.
fn bar(most: f64, parts: [f64; 3]) -> String {
    let mut text = String::from(
        "<svg class=bar viewBox='0 0 100 10' preserveAspectRatio=none aria-hidden=true>",
    );
    let mut from = 0.0;
    for (class, part) in ["engine", "sun", "wasted"].into_iter().zip(parts) {
        let width = 100.0 * part / most;
        if width >= 0.05 {
            let _ = write!(
                text,
                "<rect class={class} x={from:.1} y=1 width={width:.1} height=8></rect>"
            );
        }
        from += width;
    }
    text + "</svg>"
}

const CHARGE: (f64, f64) = (18.0, 96.0);
const POWER: (f64, f64) = (128.0, 206.0);
const BAND: (f64, f64) = (214.0, 230.0);

/// A day: charge above, sun and use below, and when the engine runs.
fn day(year: &Year, month: &MonthReport) -> impl IntoView + use<> {
    let hours = &month.day.hours;
    let time = Scale::new(0.0, 24.0 * 60.0, LEFT, RIGHT);
    let across = |hour: f64| time.place(60.0 * hour);
    let charge = Scale::new(0.0, 100.0, CHARGE.1, CHARGE.0);
    let most_w = hours
        .iter()
        .fold(10.0, |most: f64, hour| most.max(hour.sun_w).max(hour.use_w));
    let power = Scale::rounded(0.0, most_w, POWER.1, POWER.0);
    let [mut bank, mut sun, mut used, mut engine] = [const { String::new() }; 4];
    let engine_min = |at: usize| hours.get(at).map_or(0.0, |hour| hour.engine_min);
    for (at, hour) in hours.iter().enumerate() {
        let (from, to) = (across(at as f64), across(at as f64 + 1.0));
        let step = |path: &mut String, figure: f64| {
            let _ = write!(path, "L{from:.1} {:.1}H{to:.1}", power.place(figure));
        };
        step(&mut sun, hour.sun_w);
        step(&mut used, hour.use_w);
        let _ = write!(bank, "L{from:.1} {:.1}", charge.place(hour.charge_pct));
        // Part of an hour lies at its end where the next one goes on with it.
        let width = (to - from) * hour.engine_min / 60.0;
        let begins = engine_min(at + 1) > 0.0 && (at == 0 || engine_min(at - 1) == 0.0);
        let x = if begins { to - width } else { from };
        let _ = write!(
            engine,
            "M{x:.1} {}h{width:.1}v{}h-{width:.1}z",
            BAND.0,
            BAND.1 - BAND.0
        );
    }
    let _ = write!(
        bank,
        "L{RIGHT} {:.1}",
        charge.place(month.day.end_charge_pct)
    );
    let mut drawing = Drawing::default();
    grid(&mut drawing, &time, &charge, CHARGE, "%", 2.0);
    grid(&mut drawing, &time, &power, POWER, "W", 4.0);
    for (class, path) in [("first", bank), ("first", sun), ("third", used)] {
        let path = format!("M{}", path.trim_start_matches('L'));
        drawing.path(&format!("line {class}"), &path);
    }
    drawing.path("on", &engine);
    drawing.line("edge", (LEFT, BAND.1), (RIGHT, BAND.1));
    drawing.word("name", (LEFT - 4.0, BAND.1 - 4.0), Anchor::End, "engine");
    for (pct, words) in [(year.full_pct, "full"), (year.low_pct, "lowest wanted")] {
        mark(
            &mut drawing,
            charge.place(pct),
            &format!("{words} {pct:.0}"),
        );
    }
    let names = [
        (CHARGE.0, LEFT, "first", "bank"),
        (POWER.0, LEFT, "first", "sun"),
        (POWER.0, LEFT + 60.0, "third", "use"),
    ];
    for (top, x, class, name) in names {
        sample(&mut drawing, (x, top - 7.0), class, name);
    }
    minutes(&mut drawing, &time, 244.0);
    view! {
        <div class="chart">
            <svg viewBox=format!("0 0 {WIDTH} 252") role="img" aria-label=format!("A settled day in {}", month.name())
                inner_html=drawing.finish()></svg>
            <p class="told" id="year-day">{month.day_words()}</p>
        </div>
    }
}
