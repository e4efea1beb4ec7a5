//! What is read off the run at a moment.

use ampwright_core::analysis::Moment;
use ampwright_core::text::words::limit;
use ampwright_core::units::clock;

use crate::words::figure;
use crate::working::opener;

/// Its figures, each of which opens its working.
pub fn reading(moment: &Moment) -> String {
    let figures = [
        (
            "alternator",
            "moment.alternator_a",
            moment.alternator_a,
            0,
            "A",
        ),
        ("into the bank", "moment.bank_a", moment.bank_a, 0, "A"),
        ("at the bank", "moment.bank_v", moment.bank_v, 2, "V"),
        ("charge", "moment.charge_pct", moment.charge_pct, 0, "%"),
        (
            "winding",
            "moment.alternators[0].winding_c",
            moment.alternators[0].winding_c,
            0,
            "°C",
        ),
        (
            "rectifier",
            "moment.alternators[0].rectifier_c",
            moment.alternators[0].rectifier_c,
            0,
            "°C",
        ),
        (
            "case",
            "moment.alternators[0].case_c",
            moment.alternators[0].case_c,
            0,
            "°C",
        ),
        ("air", "moment.air_c", moment.air_c, 0, "°C"),
        ("shaft", "moment.shaft_w", moment.shaft_w / 1000.0, 2, "kW"),
    ];
    let mut text = read("after", &clock(moment.minute));
    for (what, id, number, decimals, unit) in figures {
        let words = format!("{} {unit}", figure(number, decimals));
        text += &read(what, &opener("reading", id, &words, ""));
    }
    text + &read("held by", limit(moment.limit))
}

fn read(what: &str, words: &str) -> String {
    format!("<div><dt>{what}</dt><dd>{words}</dd></div>")
}
