//! The year, month by month, and the hours of a settled day: reckoned only
//! while it lies open, and only once typing rests.

use std::cell::RefCell;
use std::fmt::Write;
use std::time::Duration;

use ampwright_core::analysis::year;
use ampwright_core::analysis::year::Year;
use ampwright_core::analysis::year::{HourReport, MonthReport};
use ampwright_core::boat::Month;
use ampwright_core::text::year::{month as month_name, sentences, settled_day};
use ampwright_core::units::Reader;
use leptos::prelude::*;

use crate::chart::drawing::{Anchor, Drawing};
use crate::chart::plot::{LEFT, RIGHT, WIDTH, grid, mark, minutes, sample};
use crate::chart::scale::Scale;
use crate::desk::{Desk, count};
use crate::paper::{Section, Text, value, written};

/// How long typing must rest before the year is reckoned anew.
const REST: Duration = Duration::from_millis(250);

/// What lies open of it.
#[derive(Default)]
struct Opened {
    reckoned: Option<Year>,
    chosen: Option<usize>,
}

thread_local! {
    static OPENED: RefCell<Opened> = RefCell::new(Opened::default());
}

/// The section; everything in it is drawn when somebody opens it.
pub const SECTION: Section = Section {
    paper: written(|| {
        let mut months = String::new();
        for (at, option) in Month::OPTIONS.iter().enumerate() {
            months += &format!("<option value={at}>{}</option>", option.label);
        }
        format!(
            r#"<section class="year" aria-labelledby="year-title"><h2 id="year-title">Through the year</h2>
<details class="finer" id="year" data-toggle="year"><summary>Engine, shore power, bank and sun month by month</summary><div id="year-table"></div>
<div class="row"><label for="year-month">A settled day in</label><select id="year-month" data-change="year-month">{months}</select></div><div id="year-drawn"></div>
<p class="about">There are no clouds in it: every day has its month's mean sun, and a grey week asks more. When charging starts and stops stands in the worksheet under Engine rule; full is what is full for daily use. Hours are the sun's: at 12 it stands highest.</p></details></section>"#
        )
    }),
    parts: &[
        (
            "year-table",
            Text::Own(|desk| with_year(desk, |year, _| Some(table(year)))),
        ),
        (
            "year-month@value",
            Text::Own(|desk| {
                desk.aside.track();
                month(desk).to_string()
            }),
        ),
        (
            "year-drawn",
            Text::Own(|desk| with_year(desk, |year, at| Some(day(year, year.months.get(at)?)))),
        ),
    ],
    acts: &[
        ("year", |desk, _, _| reckon(desk, Duration::ZERO)),
        ("year-month", |desk, list, _| {
            let chosen = value(list).parse().ok();
            OPENED.with_borrow_mut(|opened| opened.chosen = chosen);
            count(desk.aside);
        }),
    ],
    start: |desk| desk.at_each_change(|desk| reckon(desk, REST)),
};

/// Reckons the year if it lies open, unless something is typed meanwhile.
fn reckon(desk: Desk, rest: Duration) {
    desk.at_rest("year", rest, |desk| {
        let reckoned = desk.sheet.with_untracked(year);
        OPENED.with_borrow_mut(|opened| opened.reckoned = Some(reckoned));
    });
}

/// The month whose day is drawn.
fn month(desk: Desk) -> usize {
    let asked = desk.sheet.with(|sheet| sheet.inputs.sun.month as usize);
    OPENED.with_borrow(|opened| opened.chosen).unwrap_or(asked)
}

/// A text about the year, once it is reckoned.
fn with_year(desk: Desk, text: fn(&Year, usize) -> Option<String>) -> String {
    desk.aside.track();
    let at = month(desk);
    OPENED.with_borrow(|opened| {
        let year = opened.reckoned.as_ref();
        year.and_then(|year| text(year, at)).unwrap_or_default()
    })
}

/// The months as a table, a bar at the end of each row; numbers and names of
/// our own only.
fn table(year: &Year) -> String {
    let whole = |m: &MonthReport| m.engine_ah_day + m.shore_ah_day + m.sun_ah_day;
    let most = year.months.iter().map(whole).fold(1.0, f64::max);
    let mut rows = String::new();
    for m in &year.months {
        let below = if m.days_below > 0 { "below" } else { "" };
        let dock = match year.at_dock {
            true => format!("<td><b>{:.1}</b></td>", m.shore_h_week),
            false => String::new(),
        };
        let parts = [
            m.engine_ah_day,
            m.shore_ah_day,
            m.sun_ah_day - m.wasted_ah_day,
            m.wasted_ah_day,
        ];
        // Writing to a String cannot fail.
        let _ = write!(
            rows,
            "<tr><th scope=row>{:.3}</th><td>{:.0}</td><td><b>{:.1}</b></td>{dock}<td class='{below}'>{:.0}</td><td>{:.0}</td><td>{}</td></tr>",
            month_name(m.month),
            m.sun_ah_day,
            m.engine_h_week,
            m.lowest_pct,
            m.wasted_pct,
            bar(most, parts)
        );
    }
    let alike = match year.sun_by_month {
        true => "",
        false => {
            "Every month is alike here. For summer and winter give panels, and let their sun be reckoned from latitude, month and sky."
        }
    };
    let (dock, shore) = match year.at_dock {
        true => (
            r#"<th scope="col">Dock h/week</th>"#,
            format!(
                "<span>{} shore power</span> ",
                bar(1.0, [0.0, 1.0, 0.0, 0.0])
            ),
        ),
        false => ("", String::new()),
    };
    let legend = format!(
        "<span>{} engine</span> {shore}<span>{} sun taken</span> <span>{} sun wasted: the bank was full</span>",
        bar(1.0, [1.0, 0.0, 0.0, 0.0]),
        bar(1.0, [0.0, 0.0, 1.0, 0.0]),
        bar(1.0, [0.0, 0.0, 0.0, 1.0])
    );
    format!(
        r#"<p class="told">{}</p><p class="lead">{alike}</p><div class="scroll" tabindex="0" role="region" aria-label="The months as a table"><table class="run months"><thead><tr><th scope="col">Month</th><th scope="col">Sun A·h/day</th><th scope="col">Engine h/week</th>{dock}<th scope="col">Lowest %</th><th scope="col">Wasted %</th><th scope="col">A·h a day</th></tr></thead><tbody>{rows}</tbody></table></div><p class="margin bars">{legend}</p>"#,
        sentences(year, &Reader::METRIC).join(" ")
    )
}

/// Engine, shore power, sun and wasted sun one after the other, as parts of
/// the most.
fn bar(most: f64, parts: [f64; 4]) -> String {
    let mut text = String::from(
        "<svg class=bar viewBox='0 0 100 10' preserveAspectRatio=none aria-hidden=true>",
    );
    let mut from = 0.0;
    for (class, part) in ["engine", "shore", "sun", "wasted"].into_iter().zip(parts) {
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

/// When something runs through a day, by its minutes of each hour: areas of the
/// band at the foot.
fn stretches(hours: &[HourReport], time: &Scale, minutes: fn(&HourReport) -> f64) -> String {
    let of = |at: usize| hours.get(at).map_or(0.0, minutes);
    let mut path = String::new();
    for at in 0..hours.len() {
        let (from, to) = (
            time.place(60.0 * at as f64),
            time.place(60.0 * (at as f64 + 1.0)),
        );
        let width = (to - from) * of(at) / 60.0;
        // Part of an hour lies at its end where the next one goes on with it.
        let begins = of(at + 1) > 0.0 && (at == 0 || of(at - 1) == 0.0);
        let x = if begins { to - width } else { from };
        let _ = write!(
            path,
            "M{x:.1} {}h{width:.1}v{}h-{width:.1}z",
            BAND.0,
            BAND.1 - BAND.0
        );
    }
    path
}

/// A day: charge above, sun and use below, and when the engine runs.
fn day(year: &Year, month: &MonthReport) -> String {
    let hours = &month.day.hours;
    let time = Scale::new(0.0, 24.0 * 60.0, LEFT, RIGHT);
    let across = |hour: f64| time.place(60.0 * hour);
    let charge = Scale::new(0.0, 100.0, CHARGE.1, CHARGE.0);
    let most_w = hours
        .iter()
        .fold(10.0, |most: f64, hour| most.max(hour.sun_w).max(hour.use_w));
    let power = Scale::rounded(0.0, most_w, POWER.1, POWER.0);
    let [mut bank, mut sun, mut used] = [const { String::new() }; 3];
    for (at, hour) in hours.iter().enumerate() {
        let (from, to) = (across(at as f64), across(at as f64 + 1.0));
        let step = |path: &mut String, figure: f64| {
            let _ = write!(path, "L{from:.1} {:.1}H{to:.1}", power.place(figure));
        };
        step(&mut sun, hour.sun_w);
        step(&mut used, hour.use_w);
        let _ = write!(bank, "L{from:.1} {:.1}", charge.place(hour.charge_pct));
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
    drawing.path("on", &stretches(hours, &time, |hour| hour.engine_min));
    drawing.path("on shore", &stretches(hours, &time, |hour| hour.shore_min));
    drawing.line("edge", (LEFT, BAND.1), (RIGHT, BAND.1));
    let charged_by = if year.at_dock { "dock" } else { "engine" };
    drawing.word("name", (LEFT - 4.0, BAND.1 - 4.0), Anchor::End, charged_by);
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
    format!(
        r#"<div class="chart"><svg viewBox="0 0 {WIDTH} 252" role="img" aria-label="A settled day in {}">{}</svg><p class="told" id="year-day">{}</p></div>"#,
        month_name(month.month),
        drawing.finish(),
        settled_day(month, &Reader::METRIC)
    )
}
