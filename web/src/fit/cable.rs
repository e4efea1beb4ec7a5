//! Cable and fuse: the runs as a table, on a narrow screen each as an entry of
//! its own.

use ampwright_core::analysis::cable::{CableChoice, CableRun};
use ampwright_core::findings::Finding;
use ampwright_core::text::cable as told;
use ampwright_core::text::words::run_end;
use ampwright_core::units::Reader;
use ampwright_core::{Report, Worksheet};

use super::found;
use super::table::{in_words, sentence, with_unit};

/// Heads of the columns; on a narrow screen they stand beside the figures.
const HEADS: [&str; 5] = ["Cable", "Bears", "Loses", "Decided by", "Fuse"];

/// Warnings and notes, and the runs.
pub fn told(_: &Worksheet, report: &Report) -> String {
    let wiring = &report.analyses.cables;
    let mut text = found(report, |finding| matches!(finding, Finding::Cable(_)));
    text += "<table class=runs role=table aria-label='Cable and fuse of each run'><thead role=rowgroup><tr role=row>";
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
fn entry(run: &CableRun) -> String {
    let mut text = format!(
        "<tbody role=rowgroup id=fit-run-{}><tr role=row class=name><th scope=rowgroup role=rowheader colspan=5><span>{} – {}</span> <b>{:.0}\u{a0}A</b></th></tr><tr role=row class=whole><td role=cell colspan=5>{}</td></tr>",
        run.code,
        run_end(run.from),
        run_end(run.to),
        run.carries_a,
        told::asks(run, &Reader::METRIC)
    );
    for pick in run.metric.iter().chain(&run.gauge) {
        text += &row(pick);
    }
    text += &format!(
        "<tr role=row class=whole><td role=cell colspan=5><p><b>{}</b> {}</p>",
        told::fuse(run, &Reader::METRIC),
        told::fuse_place(run, &Reader::METRIC)
    );
    for note in &run.notes {
        text += &format!("<p>{}</p>", told::note(note, &Reader::METRIC));
    }
    let mut beside = String::new();
    if let Some(gauge) = run.gauge_from_memory {
        beside += &format!(" the circular-mil rule gives {gauge}.");
    }
    if let Some(pick) = &run.metric
        && let Some(ampacity_a) = pick.ampacity_from_memory_a
    {
        beside += &format!(" ISO 10133 lets {} bear {ampacity_a:.0}\u{a0}A.", pick.size);
    }
    if !beside.is_empty() {
        text += &format!("<p class=margin>Beside it, from memory:{beside}</p>");
    }
    text + "</td></tr></tbody>"
}

/// One size: each figure, and under it what is to spare.
fn row(pick: &CableChoice) -> String {
    let each = if pick.cables > 1 { "A each" } else { "A" };
    let fuse = (
        Some(pick.fuse_least_a.ceil()),
        Some(pick.fuse_most_a.floor()),
    );
    // One rating that is sold has a half.
    let halves = usize::from(pick.fuse_a.fract() > 0.0);
    let cells = [
        with_unit(pick.ampacity_a, 0, each),
        with_unit(pick.spare_pct, 0, "% to spare"),
        with_unit(pick.drop_v, 2, "V"),
        with_unit(pick.spare_v, 2, "V to spare"),
        told::sized_by(pick.bound).to_string(),
        String::new(),
        with_unit(pick.fuse_a, halves, each),
        in_words(fuse, 0, "A"),
    ];
    let mut text = format!(
        "<tr role=row class=size><th scope=row role=rowheader>{}</th>",
        told::size(pick)
    );
    for (head, cell) in HEADS.iter().skip(1).zip(cells.chunks_exact(2)) {
        text += &format!("<td role=cell data-head='{head}'><span>");
        if let [figure, spare] = cell {
            text += &format!("{figure}<small>{spare}</small>");
        }
        text += "</span></td>";
    }
    text + "</tr>"
}

/// What the figures rest on, the rule, where they come from.
pub fn more(_: &Worksheet, report: &Report) -> String {
    let wiring = &report.analyses.cables;
    let mut text = format!(
        "<p class=margin>Reckoned for air of {:.0}\u{a0}°C in the engine space and {:.0}\u{a0}°C elsewhere, insulation for {:.0}\u{a0}°C, and {:.1}\u{a0}kA from a short at the house bank's posts.</p>",
        wiring.engine_air_c,
        wiring.other_air_c,
        wiring.insulation_c,
        wiring.short_circuit_a / 1000.0,
    );
    for remark in &wiring.remarks {
        text += &format!(
            "<p class=margin>{}</p>",
            told::remark(remark, &Reader::METRIC)
        );
    }
    for (heading, said) in [
        ("The rule", told::rule(wiring.flag)),
        ("Where this comes from", told::SOURCES),
    ] {
        text += &format!("<h3>{heading}</h3><ul class='remarks margin'>");
        for words in said {
            text += &sentence(words);
        }
        text += "</ul>";
    }
    text
}
