//! When the bank disconnects: what stands against it, and what is left.

use ampwright_core::analysis::load_dump::DumpReport;
use ampwright_core::findings::Finding;
use ampwright_core::text::load_dump as words;
use ampwright_core::units::Reader;
use ampwright_core::{Report, Worksheet};

use super::table::{Bar, Line, bars, in_words, line, sentences, table, with_unit};
use super::{found, heading};

/// Warnings and notes, what is left, and every defence with its standing.
pub fn told(_: &Worksheet, report: &Report) -> String {
    let mut text = found(report, |finding| matches!(finding, Finding::LoadDump(_)));
    let all = &report.analyses.load_dump.machines;
    for machine in all {
        text += heading(all.len() > 1, machine.second);
        text += &left(machine);
        text += "<ul class=defences>";
        for mitigation in &machine.mitigations {
            let word = words::standing(mitigation.standing);
            text += &format!(
                "<li id=fit-defence-{}{} data-stands='{word}'><span class=standing>{word}</span><span><b>{}.</b> {}</span></li>",
                mitigation.code,
                if machine.second { "-second" } else { "" },
                words::mitigation(mitigation.code),
                words::advice(machine, mitigation, &Reader::METRIC)
            );
        }
        text += "</ul>";
    }
    text
}

/// What is left against what is borne, in words and on a rule.
fn left(machine: &DumpReport) -> String {
    let mut text = String::new();
    let volts = |figure: f64| with_unit(figure, 0, "V");
    let mut drawn = Vec::new();
    for (what, dump) in [
        ("peak, charging", &machine.charging),
        ("peak, top speed", &machine.top),
    ] {
        drawn.push(Bar(what, 0.0, dump.peak_v, volts(dump.peak_v)));
    }
    if let Some((low, high)) = machine.standard_low_v.zip(machine.standard_high_v) {
        let words = in_words((Some(low), Some(high)), 0, "V");
        drawn.push(Bar("standard's test", low, high, words));
    }
    for (when, what, left) in [
        (
            "Left when the bank opens",
            "left, bank opens",
            machine.bank_left_v(),
        ),
        (
            "Left when the switch is opened",
            "left, switch opened",
            machine.switch_left_v(),
        ),
    ] {
        if let Some(left_v) = left {
            let (left, borne) = (volts(left_v), volts(machine.bear_v));
            text += &format!("<p class=told>{when}: {left}, and {borne} are borne</p>");
            drawn.push(Bar(what, 0.0, left_v, left));
        }
    }
    text + &bars(
        machine.bear_v,
        &format!("borne: {}", volts(machine.bear_v)),
        &drawn,
    )
}

/// The figures and the sentences.
pub fn more(_: &Worksheet, report: &Report) -> String {
    let all = &report.analyses.load_dump.machines;
    let mut text = String::new();
    for machine in all {
        text += heading(all.len() > 1, machine.second);
        text += &figures(machine);
        text += &sentences(&words::sentences(machine, &Reader::METRIC));
    }
    text
}

fn figures(machine: &DumpReport) -> String {
    let (now, top) = (&machine.charging, &machine.top);
    let two = |now, top| [Some(now), Some(top)];
    let test_v = (machine.standard_low_v, machine.standard_high_v);
    let test_ohm = (machine.standard_low_ohm, machine.standard_high_ohm);
    let test_j = [now, top].map(|dump| (dump.standard_low_j, dump.standard_high_j));
    let lines = [
        line("Engine", two(now.engine_rpm, top.engine_rpm), 0, "rpm"),
        line("Cut off", two(now.amperes, top.amperes), 0, "A"),
        line("Volts before", two(now.volts, top.volts), 1, "V"),
        line(
            "Internal resistance",
            two(now.internal_ohm, top.internal_ohm),
            2,
            "Ω",
        ),
        Line("… in the standard's test", [test_ohm; 2], 1, ["Ω"; 2]),
        line("Peak, our estimate", two(now.peak_v, top.peak_v), 0, "V"),
        Line("… in the standard's test", [test_v; 2], 0, ["V"; 2]),
        line(
            "A clamp takes of our peak",
            two(now.clamp_j, top.clamp_j),
            0,
            "J",
        ),
        Line("… of the standard's", test_j, 0, ["J"; 2]),
        line(
            "Left when the bank opens",
            [now.bank_left_v, top.bank_left_v],
            0,
            "V",
        ),
        line(
            "Left when the switch is opened",
            [now.switch_left_v, top.switch_left_v],
            0,
            "V",
        ),
        line(
            "Electronics bear",
            two(machine.bear_v, machine.bear_v),
            0,
            "V",
        ),
    ];
    table("At both speeds", ["charging", "top speed"], &lines)
}
