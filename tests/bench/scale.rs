//! How the cost grows with what a worksheet holds: as much as it can hold
//! against a tenth of that.

use std::fmt::Write;
use std::fs;
use std::hint::black_box;
use std::time::Instant;

use ampwright_core::boat::{Drawn, Leg, LegRow, Worksheet, demo, typical_loads};
use ampwright_core::decision::calibration;
use ampwright_core::exchange::{
    MOST_LEGS, MOST_LOADS, collect_texts, open_link, read_file, to_collection, to_json, to_link,
};
use ampwright_core::report;

use crate::watch::row;

/// Most boats that the page was tried with; see `soak.rs`.
const BOATS: usize = 500;
const LINES: usize = 10_000;

/// The table. A growth that is no more than the tenfold, or twelvefold of the
/// legs, is in proportion.
pub fn table() {
    println!(
        "\n{:<44} {:>12} {:>10} {:>10}",
        "as much as there can be, and a tenth", "a tenth", "all", "growth"
    );
    boats();
    loads();
    logs();
    legs();
}

fn boats() {
    let sheets = vec![demo(); BOATS];
    let texts: Vec<String> = sheets.iter().map(|one| to_json(one).to_string()).collect();
    let file = |many: usize| to_collection(&sheets[..many]).to_string();
    let (few, all) = (file(BOATS / 10), file(BOATS));
    grown("500 boats as one file", BOATS / 10, BOATS, |many| {
        file(many).len()
    });
    grown("… put together as kept", BOATS / 10, BOATS, |many| {
        collect_texts(texts[..many].iter().map(String::as_str))
    });
    grown("… read from it", &few, &all, |text: &String| {
        read_file(text).map(|read| read.len())
    });
}

/// A boat with so many loads, over the day or with the engine.
fn loaded(many: usize, drawn: Drawn) -> Worksheet {
    let mut sheet = demo();
    sheet.loads = typical_loads().into_iter().cycle().take(many).collect();
    for (at, load) in sheet.loads.iter_mut().enumerate() {
        load.row.drawn = drawn;
        // Each ends at a time of its own.
        load.row.hours = 0.1 + 5.0 * at as f64 / MOST_LOADS as f64;
        load.row.draw = 1.0;
    }
    sheet
}

fn loads() {
    for (what, drawn) in [
        ("report with 500 loads over the day", Drawn::OverDay),
        ("report with 500 loads with the engine", Drawn::WithEngine),
    ] {
        let [few, all] = [MOST_LOADS / 10, MOST_LOADS].map(|many| loaded(many, drawn));
        grown(what, &few, &all, report);
    }
    let [few, all] = [MOST_LOADS / 10, MOST_LOADS].map(|many| loaded(many, Drawn::OverDay));
    grown("link with 500 loads, written", &few, &all, to_link);
    let [few, all] = [few, all].map(|sheet| to_link(&sheet));
    grown("… read", &few, &all, |link: &String| open_link(link));
}

fn logs() {
    // All of three hours.
    let log = |lines: usize| {
        let mut text = String::from("minute;amps;case;air\n");
        for line in 0..lines {
            let minute = 180.0 * line as f64 / lines as f64;
            let warm = 1.0 - (-minute / 15.0).exp();
            let (amps, case_c) = (95.0 - 25.0 * warm, 30.0 + 65.0 * warm);
            let air_c = 30.0 + 20.0 * warm;
            writeln!(text, "{minute:.2};{amps:.1};{case_c:.1};{air_c:.1}").expect("a text");
        }
        text
    };
    let (few, all) = (log(LINES / 10), log(LINES));
    grown("log of 10 000 lines, read", &few, &all, |text: &String| {
        calibration::read(text)
    });
    let most = calibration::log::MOST_ROWS;
    let [few, all] = [most / 10, most].map(|lines| calibration::read(&log(lines)));
    grown("… its first 2000 learned from", &few, &all, |log| {
        calibration::fit(&demo(), log)
    });
}

fn legs() {
    let day = |legs: usize| {
        let row = LegRow {
            rpm: 2200.0,
            minutes: Some(30.0),
            pause_h: 0.5,
            ..LegRow::default()
        };
        let leg = Leg {
            name: "Under way".into(),
            row,
        };
        Worksheet {
            legs: vec![leg; legs],
            ..demo()
        }
    };
    grown(
        "report with 12 legs (1 leg for a tenth)",
        &day(1),
        &day(MOST_LEGS),
        report,
    );
}

/// Least times of a work with little and with all, and how much more the second
/// is.
fn grown<G: Copy, T>(what: &str, few: G, all: G, work: impl Fn(G) -> T) {
    let [few_s, all_s] = [few, all].map(|given| least_s(|| work(given)));
    let cell = |seconds: f64| format!("{:.0} µs", 1e6 * seconds);
    row(
        what,
        &[cell(few_s), cell(all_s), format!("{:.1}", all_s / few_s)],
    );
}

/// The least of five means \[s\], each over a fifth of a second or more: the
/// system tells in steps of some milliseconds, and what else a busy machine did
/// is in the others.
fn least_s<T>(mut work: impl FnMut() -> T) -> f64 {
    let begin = Instant::now();
    let means = std::iter::repeat_with(|| {
        let (before_s, mut runs) = (worked_s(begin), 0.0);
        loop {
            black_box(work());
            runs += 1.0;
            let worked_s = worked_s(begin) - before_s;
            if worked_s > 0.2 {
                return worked_s / runs;
            }
        }
    });
    means.take(5).fold(f64::INFINITY, f64::min)
}

/// How long this thread has been at work \[s\], where the system tells (Linux),
/// without the time that others had the processor; elsewhere the time since.
fn worked_s(begin: Instant) -> f64 {
    let told = fs::read_to_string("/proc/thread-self/schedstat").ok();
    let worked_ns = told.and_then(|text| text.split(' ').next()?.parse::<f64>().ok());
    worked_ns.map_or_else(|| begin.elapsed().as_secs_f64(), |ns| 1e-9 * ns)
}
