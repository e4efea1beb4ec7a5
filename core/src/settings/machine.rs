//! What is said of every alternator: the voltage it charges at, its current,
//! where heat cuts its field.

use super::figures::{Cap, cap, set_point};
use super::{Case, Line, Source, amperes, degrees, volts};
use crate::report::Temps;
use crate::worksheet::{Alternator, Inputs, SensorPlace};

/// Volts that a machine is held at.
pub(super) fn held(case: Case, house: bool) -> Line {
    let (inputs, f) = (case.inputs, case.figures);
    if house {
        Line::new(
            "profile",
            "Charge voltage, absorption, float, compensation",
            "as for the house bank above".to_string(),
            format!(
                "A ready-made profile must come out at {}.",
                volts(f.charge_v)
            ),
        )
        .from(Source::Reckoned)
    } else {
        let start_v = start_v(inputs);
        Line::new(
            "start_voltage",
            "Charge voltage",
            format!("{} at the start battery", volts(start_v)),
            format!(
                "It feeds the start battery; the converter does the rest from {} up.",
                volts(inputs.way.lockout_v)
            ),
        )
        .at(start_v)
        .from(Source::Worksheet("way_start_v"))
    }
}

/// Volts the start battery is charged at \[V\]: the worksheet's, never above
/// 2.47 V a cell (14.8 V in 12 V, the most common practice has for lead).
pub(super) fn start_v(inputs: &Inputs) -> f64 {
    inputs.way.start_v.min(14.8 * inputs.start_blocks())
}

/// The most its regulator lets it give.
pub(super) fn current(case: Case, machine: &Alternator, plate: &'static str, house: bool) -> Line {
    let (inputs, f) = (case.inputs, case.figures);
    let (share, limit_a) = if house {
        (f.share, f.bank_limit_a)
    } else {
        (1.0, f64::INFINITY)
    };
    let (cap_a, decided) = cap(inputs, machine, share, limit_a);
    let (why, from) = match decided {
        Cap::Stated => (
            "As the worksheet has it, to spare belt and machine.".to_string(),
            Source::Worksheet("reg_current_cap_a"),
        ),
        Cap::Plate if house => (
            format!(
                "What stands on the machine; the bank may take {}.",
                amperes(limit_a)
            ),
            Source::Worksheet(plate),
        ),
        Cap::Plate => (
            format!("What stands on the machine: {:.0} A.", machine.rated_a),
            Source::Worksheet(plate),
        ),
        Cap::Bank if limit_a <= 0.0 => (
            format!(
                "At {} °C the bank may take nothing: warm it first.",
                degrees(inputs.bank.temperature_c)
            ),
            Source::Reckoned,
        ),
        Cap::Bank => (
            format!(
                "The bank may take {} from all that charge it; the house may be drawing nothing.",
                amperes(limit_a)
            ),
            Source::Reckoned,
        ),
    };
    Line::new("current_cap", "Current cap", amperes(cap_a), why)
        .at(cap_a)
        .from(from)
}

/// Where the field is cut, against the hottest its parts get.
pub(super) fn hottest(inputs: &Inputs, machine: &Alternator, peak: &Temps) -> Line {
    let set = set_point(inputs, machine, peak);
    let why = if set.over_k > 0.0 {
        format!(
            "In the run as it stands a part gets {:.0} K too hot; put this into the worksheet and look again.",
            set.over_k.ceil()
        )
    } else {
        format!(
            "{:.0} K under the {}'s limit of {:.0} °C.",
            set.limit_c - set.celsius,
            set.part,
            set.limit_c
        )
    };
    let place = match inputs.reg.sensor {
        SensorPlace::Case => "on the case",
        SensorPlace::Winding => "on the stator winding",
        SensorPlace::Rectifier => "on the rectifier plate",
    };
    Line::new(
        "set_point",
        "Temperature set-point",
        format!("{:.0} °C, sensor {place}", set.celsius.floor()),
        why,
    )
    .at(set.celsius)
    .from(if set.stated {
        Source::Worksheet("reg_set_point_c")
    } else {
        Source::Reckoned
    })
}
