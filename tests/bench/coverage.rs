#![forbid(unsafe_code)]
//! How often ranges hold the truth, for 500 boats each: the table of the README.
//!
//! `cargo run --release -p ampwright-tests --features bench --bin bench_coverage`; with
//! `-- --picture` it draws the README's picture of it as well.

#[path = "../coverage/mod.rs"]
mod coverage;
mod trust;

use coverage::{Coverage, boats, other, own};
use trust::Group;

/// Boats in all.
const BOATS: u64 = 500;

fn main() {
    let boats = boats();
    let each = BOATS / boats.len() as u64;
    println!(
        "| of {BOATS} boats | before a trial | after one | width of the range, before | after |"
    );
    println!("|---|---|---|---|---|");
    let all = |of: fn(&ampwright_core::Worksheet, u64) -> Coverage| {
        let found = boats.iter().map(|(_, sheet)| of(sheet, each));
        found.fold(Coverage::default(), Coverage::and)
    };
    let (before, after) = (all(own::before_a_trial), all(own::after_a_trial));
    row(
        "hot current, drawn from what each figure may be",
        Coverage::hot_a_pct,
        &before,
        &after,
    );
    row(
        "engine time a day, likewise",
        Coverage::engine_h_pct,
        &before,
        &after,
    );
    let (before_other, after_other) = boats
        .iter()
        .filter(|(_, sheet)| sheet.inputs.bank.chemistry.lead().is_none())
        .map(|(_, sheet)| other::coverage(sheet, BOATS / 3))
        .fold(
            Default::default(),
            |(before, after): (Coverage, Coverage), (b, a)| (before.and(b), after.and(a)),
        );
    row(
        "hot current, alternators with another network",
        Coverage::hot_a_pct,
        &before_other,
        &after_other,
    );
    let groups = [
        Group {
            name: "Boats of this model's kind",
            before,
            after,
        },
        Group {
            name: "Alternators it cannot follow",
            before: before_other,
            after: after_other,
        },
    ];
    if std::env::args().any(|argument| argument == "--picture") {
        trust::write(&groups).expect("the picture is written");
    }
}

fn row(what: &str, pct: fn(&Coverage) -> f64, before: &Coverage, after: &Coverage) {
    println!(
        "| {what} | {:.0} % | {:.0} % of {} | {:.0} % | {:.0} % |",
        pct(before),
        pct(after),
        after.boats,
        before.width_pct(),
        after.width_pct(),
    );
}
