//! What things are called within a sentence.

use crate::analysis::Part;
use crate::analysis::engine_day::DayTrouble;
use crate::analysis::load_dump::VoltageRange;
use crate::boat::Chemistry;
use crate::findings::Severity;
use crate::simulation::Limit;
use crate::units::Reader;
use crate::units::quantity::{Quantity, amperes, volts};

pub(super) use crate::analysis::belt::words::asks as belt_asked;
pub(super) use crate::analysis::peak_loads::called as alternator;

/// How bad a finding is, in a word: "Danger", "Fix", "Note".
pub const fn severity(severity: Severity) -> &'static str {
    match severity {
        Severity::Danger => "Danger",
        Severity::Fix => "Fix",
        Severity::Note => "Note",
    }
}

/// So many findings of a severity: "1 danger", "2 to fix", "4 notes".
pub fn tally(severity: Severity, count: usize) -> String {
    match (severity, count) {
        (Severity::Danger, 1) => "1 danger".to_string(),
        (Severity::Danger, count) => format!("{count} dangers"),
        (Severity::Fix, count) => format!("{count} to fix"),
        (Severity::Note, 1) => "1 note".to_string(),
        (Severity::Note, count) => format!("{count} notes"),
    }
}

/// What limits the current, in one word or two, for tight places.
pub const fn limit(limit: Limit) -> &'static str {
    match limit {
        Limit::AlternatorOutput => "output",
        Limit::CurrentCap => "cap",
        Limit::Temperature => "heat",
        Limit::Ramp => "soft start",
        Limit::LowSpeed => "low speed",
        Limit::BankLimit => "bank limit",
        Limit::ChargeVoltage => "voltage",
        Limit::Converter => "charger",
        Limit::WrongVoltage => "wrong voltage",
    }
}

/// Why a day's need is not met, in a few words, where the engine time would stand.
pub const fn day_trouble(trouble: DayTrouble) -> &'static str {
    match trouble {
        DayTrouble::CannotBeCharged => "cannot be charged",
        DayTrouble::NothingLeft => "no charge left",
        DayTrouble::ManagementOpens => "battery disconnects",
        DayTrouble::WrongVoltage => "wrong voltage",
        DayTrouble::TooSlow => "more than a day",
        DayTrouble::BankTooSmall => "bank too small",
    }
}

/// What a part of an alternator is called.
pub const fn part(part: Part) -> &'static str {
    match part {
        Part::Winding => "winding",
        Part::Rectifier => "rectifier plate",
        Part::Case => "case",
    }
}

/// What a part's limit is that of.
pub(super) const fn limited_by(part: Part) -> &'static str {
    match part {
        Part::Winding => "its insulation class",
        Part::Rectifier => "what its diodes withstand for long",
        Part::Case => "what bearing grease withstands for long",
    }
}

/// What a bank is.
pub(super) const fn bank(chemistry: Chemistry) -> &'static str {
    match chemistry {
        Chemistry::Lfp => "a lithium bank",
        Chemistry::Agm => "an AGM bank",
        Chemistry::Gel => "a gel bank",
        Chemistry::Flooded => "a flooded bank",
    }
}

/// "twice", "3 times".
pub(super) fn times(runs: f64) -> String {
    if runs == 2.0 {
        "twice".to_string()
    } else {
        format!("{runs:.0} times")
    }
}

/// A figure as somebody has entered it.
pub(super) fn as_entered(quantity: Quantity) -> Quantity {
    quantity.up_to(2)
}

/// A current to set at most, never rounded up: whole from 10 A, in tenths below.
pub(super) fn at_most(amperes_a: f64, reader: &Reader) -> String {
    let (parts, decimals) = if amperes_a < 10.0 {
        (10.0, 1)
    } else {
        (1.0, 0)
    };
    let down_a = (amperes_a * parts).floor() / parts;
    if amperes_a > 0.0 && down_a <= 0.0 {
        return format!("less than {}", reader.show(amperes(0.1).to(1)));
    }
    reader.show(amperes(down_a).to(decimals))
}

/// Where an estimated voltage lies: "68 to 86 V", or one figure.
pub(super) fn voltage_range(range: VoltageRange, reader: &Reader) -> String {
    let (low, high) = (volts(range.low_v).to(0), volts(range.high_v).to(0));
    if reader.number(low) == reader.number(high) {
        reader.show(low)
    } else {
        reader.range(low, high)
    }
}
