//! Cable and fuse: the runs as a table, on a narrow screen each as an entry of
//! its own.

use ampwright_core::wiring::{Pick, Run};
use ampwright_core::{Report, Worksheet, wiring};

use super::table::sentences;
use crate::findings;

/// Heads of the columns; on a narrow screen they stand beside the figures.
const HEADS: [&str; 5] = ["Cable", "Bears", "Loses", "Decided by", "Fuse"];

/// What to mind, and the runs.
pub fn told(sheet: &Worksheet, report: &Report) -> String {
    let wiring = wiring(sheet, report);
    let mut text = String::from("<ul class=findings>");
    for finding in &wiring.findings {
        text += &findings::item(finding);
    }
    text += "</ul><table class=runs role=table aria-label='Cable and fuse of each run'><thead role=rowgroup><tr role=row>";
    for head in HEADS {
        text += &format!("<th scope=col role=columnheader>{head}</th>");
    }
    text += "</tr></thead>";
    for run in &wiring.runs {
        text += &entry(run);
    }
    text + "</table>"
}

/// One run: what is asked of it, both sizes, its fuse.
fn entry(run: &Run) -> String {
    let mut text = format!(
        "<tbody role=rowgroup id=fit-run-{}><tr role=row class=name><th scope=rowgroup role=rowheader colspan=5><span>{} – {}</span> <b>{:.0}\u{a0}A</b></th></tr><tr role=row class=whole><td role=cell colspan=5>{}</td></tr>",
        run.key, run.from, run.to, run.carries_a, run.asks
    );
    for pick in run.metric.iter().chain(&run.gauge) {
        text += &row(pick);
    }
    text += &format!(
        "<tr role=row class=whole><td role=cell colspan=5><p><b>{}</b> {}</p>",
        run.fuse_for, run.fuse_at
    );
    for note in &run.notes {
        text += &format!("<p>{note}</p>");
    }
    let mut beside = String::new();
    if let Some(gauge) = run.gauge_from_memory {
        beside += &format!(" the circular-mil rule gives {gauge}.");
    }
    if let Some(pick) = &run.metric
        && let Some(bears_a) = pick.bears_from_memory_a
    {
        beside += &format!(" ISO 10133 lets {} bear {bears_a:.0}\u{a0}A.", pick.size);
    }
    if !beside.is_empty() {
        text += &format!("<p class=margin>Beside it, from memory:{beside}</p>");
    }
    text + "</td></tr></tbody>"
}

/// One size: each figure, and under it what is to spare.
fn row(pick: &Pick) -> String {
    let each = if pick.cables > 1 { " each" } else { "" };
    let cells = [
        (
            format!("{:.0}\u{a0}A{each}", pick.bears_a),
            format!("{:.0}\u{a0}% to spare", pick.spare_pct),
        ),
        (
            format!("{:.2}\u{a0}V", pick.drop_v),
            format!("{:.2}\u{a0}V to spare", pick.spare_v),
        ),
        (pick.bound.words().to_string(), String::new()),
        (
            format!("{}\u{a0}A{each}", pick.fuse_a),
            format!(
                "{:.0} to {:.0}\u{a0}A",
                pick.fuse_least_a.ceil(),
                pick.fuse_most_a.floor()
            ),
        ),
    ];
    let mut text = format!(
        "<tr role=row class=size><th scope=row role=rowheader>{}</th>",
        pick.words()
    );
    for (head, (figure, spare)) in HEADS.iter().skip(1).zip(cells) {
        text += &format!(
            "<td role=cell data-head='{head}'><span>{figure}<small>{spare}</small></span></td>"
        );
    }
    text + "</tr>"
}

/// What the figures rest on, the rule, where they come from.
pub fn more(sheet: &Worksheet, report: &Report) -> String {
    let wiring = wiring(sheet, report);
    format!(
        "<p class=margin>Reckoned for air of {:.0}\u{a0}°C in the engine space and {:.0}\u{a0}°C elsewhere, insulation for {:.0}\u{a0}°C, and {:.1}\u{a0}kA from a short at the house bank's posts.</p><h3>The rule</h3>{}<h3>Where this comes from</h3>{}",
        wiring.engine_air_c,
        wiring.other_air_c,
        wiring.insulation_c,
        wiring.short_circuit_a / 1000.0,
        sentences(&wiring.rule),
        sentences(wiring.sources)
    )
}
