//! Whether each alternator is of the voltage of the battery it is led to.

use crate::analysis::peak_loads::called;
use crate::boat::{AlternatorVolts, Inputs, Key, WayKind, Worksheet};
use crate::findings::{Finding, Severity, add};

/// Whether each alternator is of the voltage of the battery it is led to.
pub(super) fn voltage_findings(sheet: &Worksheet, found: &mut Vec<Finding>) {
    for (second, seen) in alternators(&sheet.inputs) {
        if !seen.alternator_fits() {
            mismatch(second, &seen, found);
        } else {
            unsaid(sheet, second, &seen, found);
        }
        contradiction(second, &seen, found);
    }
}

/// The worksheet as each alternator sees it, and whether it is the second one.
fn alternators(inputs: &Inputs) -> Vec<(bool, Inputs)> {
    let first = (false, *inputs);
    std::iter::once(first)
        .chain(inputs.as_second().map(|seen| (true, seen)))
        .collect()
}

fn volts(blocks: f64) -> f64 {
    12.0 * blocks
}

fn mismatch(second: bool, seen: &Inputs, found: &mut Vec<Finding>) {
    let name = called(second);
    let (own_v, other_v) = (volts(seen.alternator_blocks()), volts(seen.led_to_blocks()));
    let battery = match seen.way.kind {
        WayKind::Direct => "house bank",
        WayKind::Converter => "start battery",
    };
    let why = if own_v < other_v {
        "it cannot charge that battery, and its regulator and rectifier do not withstand the battery's voltage".to_string()
    } else {
        format!(
            "its regulator would lift that battery to about {:.0} V",
            14.0 * seen.alternator_blocks()
        )
    };
    let remedy = match (seen.way.kind, second) {
        (WayKind::Direct, false) => format!(
            "Lead it to a start battery of {own_v:.0} V and charge the house bank through a DC-DC charger from {own_v:.0} to {other_v:.0} V, or fit an alternator of {other_v:.0} V"
        ),
        _ => {
            format!("Lead it to a battery of {own_v:.0} V, or fit an alternator of {other_v:.0} V")
        }
    };
    add(
        found,
        Severity::Stop,
        "alternator_voltage_mismatch",
        format!(
            "The {name} is built for {own_v:.0} V and its cable leads to the {battery} of {other_v:.0} V. Do not connect it: {why}. Here it is taken to charge nothing. {remedy}; if its plate says otherwise, correct the alternator's voltage."
        ),
    );
}

fn unsaid(sheet: &Worksheet, second: bool, seen: &Inputs, found: &mut Vec<Finding>) {
    let key = Key::named(if second {
        "alt2_nominal_v"
    } else {
        "alt_nominal_v"
    });
    let said = key.is_some_and(|key| sheet.known.get(key).is_some());
    if said || !seen.alternator_voltage_assumed() {
        return;
    }
    let bank_v = volts(seen.led_to_blocks());
    let rated_v = seen.alternator_test_v();
    add(
        found,
        Severity::Mend,
        "alternator_voltage_assumed",
        format!(
            "The {} is taken as one of {bank_v:.0} V because its cable leads to the {bank_v:.0} V bank. Most engines come with a 12 V alternator, which cannot charge that bank at all. Read its plate: 14 V means 12 V, {rated_v:.0} V means {bank_v:.0} V. Then enter the alternator's voltage.",
            called(second)
        ),
    );
}

/// A voltage that is stated, and a rating taken at that of another system.
fn contradiction(second: bool, seen: &Inputs, found: &mut Vec<Finding>) {
    let Some(test_v) = seen.alt.test_v else {
        return;
    };
    let mut rated = *seen;
    rated.alt.nominal_v = AlternatorVolts::Same;
    let (own, by_rating) = (seen.alternator_blocks(), rated.alternator_blocks());
    if own != by_rating {
        add(
            found,
            Severity::Mend,
            "alternator_voltage_contradiction",
            format!(
                "The {} is said to be one of {:.0} V, and its rating to be taken at {test_v} V, which is usual for {:.0} V. One of the two is wrong, and its output with it: read the plate and correct it.",
                called(second),
                volts(own),
                volts(by_rating)
            ),
        );
    }
}
