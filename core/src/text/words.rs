//! What things are called within a sentence.

use crate::analysis::Part;
use crate::analysis::cable::RunEnd;
use crate::analysis::engine_day::DayTrouble;
use crate::analysis::load_dump::VoltageRange;
use crate::boat::{BanksJoined, BeltKind, Chemistry, WhichAlternator};
use crate::findings::Severity;
use crate::simulation::Limit;
use crate::units::Reader;
use crate::units::quantity::{Quantity, amperes, volts};

/// Which alternator: the first or the second one.
pub const fn alternator(alternator: WhichAlternator) -> &'static str {
    match alternator {
        WhichAlternator::First => "alternator",
        WhichAlternator::Second => "second alternator",
    }
}

/// Where a cable begins or ends.
pub const fn run_end(end: RunEnd) -> &'static str {
    match end {
        RunEnd::HouseBank => "house bank",
        RunEnd::StartBattery => "start battery",
        RunEnd::Alternator => "alternator",
        RunEnd::SecondAlternator => "second alternator",
        RunEnd::Charger => "DC-DC charger",
        RunEnd::SwitchPanel => "switch panel",
        RunEnd::Inverter => "inverter",
        RunEnd::Windlass => "windlass",
        RunEnd::Thruster => "thruster",
    }
}

/// What joins or splits the banks: "a relay".
pub const fn joined(joined: BanksJoined) -> &'static str {
    match joined {
        BanksJoined::Nothing => "fuse and switch",
        BanksJoined::Relay => "a relay",
        BanksJoined::Splitter => "a diode splitter",
        BanksJoined::LowLoss => "a low-loss splitter",
    }
}

/// A belt: "one 13 mm V-belt".
pub const fn belt(kind: BeltKind) -> &'static str {
    match kind {
        BeltKind::Unsaid => "a belt not entered yet",
        BeltKind::V10 => "one 10 mm V-belt",
        BeltKind::V13 => "one 13 mm V-belt",
        BeltKind::TwoV13 => "two 13 mm V-belts",
        BeltKind::Ribs6 => "a multi-rib belt with 6 ribs",
        BeltKind::Ribs8 => "a multi-rib belt with 8 ribs",
        BeltKind::Ribs10 => "a multi-rib belt with 10 ribs",
    }
}

/// "That needs two 13 mm V-belts or a multi-rib belt with 6 ribs."
pub(super) fn belt_needed(v_belts: Option<BeltKind>, ribs: Option<BeltKind>) -> String {
    match (v_belts, ribs) {
        (Some(v), Some(ribs)) => format!("That needs {} or {}.", belt(v), belt(ribs)),
        (Some(one), None) | (None, Some(one)) => format!("That needs {}.", belt(one)),
        (None, None) => {
            "No belt listed here carries that: cap the current, or share it between two alternators."
                .to_string()
        }
    }
}

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

/// What limits the current, under a heading that says so.
pub const fn limit(limit: Limit) -> &'static str {
    match limit {
        Limit::AlternatorOutput => "alternator output",
        Limit::CurrentCap => "current cap",
        Limit::Temperature => "alternator temperature",
        Limit::Ramp => "soft start",
        Limit::LowSpeed => "low-speed limit",
        Limit::FieldCap => "field cap",
        Limit::BankLimit => "battery charge limit",
        Limit::FrozenBank => "frozen bank",
        Limit::ChargeVoltage => "charge voltage",
        Limit::Converter => "DC-DC charger",
        Limit::WrongVoltage => "wrong voltage",
    }
}

/// What limits the current, in the fewest words: for a drawing.
pub const fn limit_in_brief(limit: Limit) -> &'static str {
    match limit {
        Limit::AlternatorOutput => "output",
        Limit::CurrentCap => "cap",
        Limit::Temperature => "temperature",
        Limit::Ramp => "soft start",
        Limit::LowSpeed => "low speed",
        Limit::FieldCap => "field cap",
        Limit::BankLimit => "charge limit",
        Limit::FrozenBank => "frozen",
        Limit::ChargeVoltage => "voltage",
        Limit::Converter => "DC-DC",
        Limit::WrongVoltage => "wrong voltage",
    }
}

/// What limits the current, after "limited by".
pub const fn limited_by(limit: Limit) -> &'static str {
    match limit {
        Limit::AlternatorOutput => "alternator output",
        Limit::CurrentCap => "the current cap",
        Limit::Temperature => "alternator temperature",
        Limit::Ramp => "soft start",
        Limit::LowSpeed => "the low-speed limit",
        Limit::FieldCap => "the field cap",
        Limit::BankLimit => "the battery charge limit",
        Limit::FrozenBank => "the frozen bank, which takes no charge",
        Limit::ChargeVoltage => "charge voltage",
        Limit::Converter => "the size of the DC-DC charger",
        Limit::WrongVoltage => "an alternator built for another voltage",
    }
}

/// Why a day's need is not met, as one sentence.
pub const fn why_not_charged(trouble: DayTrouble) -> &'static str {
    match trouble {
        DayTrouble::CannotBeCharged => "The engine cannot charge the bank to its target.",
        DayTrouble::BankFrozen => {
            "The engine cannot charge the bank: its acid is frozen and takes no charge."
        }
        DayTrouble::NothingLeft => {
            "The engine cannot charge the bank: the boat uses all that the alternator gives it."
        }
        DayTrouble::ManagementOpens => {
            "The engine cannot charge the bank: the battery management system stops the charging."
        }
        DayTrouble::WrongVoltage => {
            "The engine cannot charge the bank: the alternator is built for another voltage than the battery it is connected to."
        }
        DayTrouble::TooSlow => {
            "The engine charges too slowly: a whole day does not put back what the boat uses."
        }
        DayTrouble::BankTooSmall => {
            "The bank is too small for a day's use, however often you run the engine."
        }
    }
}

/// Why a day's need is not met, in a few words, where the engine time would stand.
pub const fn day_trouble(trouble: DayTrouble) -> &'static str {
    match trouble {
        DayTrouble::CannotBeCharged => "cannot be charged",
        DayTrouble::BankFrozen => "bank frozen",
        DayTrouble::NothingLeft => "no charge left",
        DayTrouble::ManagementOpens => "battery stops it",
        DayTrouble::WrongVoltage => "wrong voltage",
        DayTrouble::TooSlow => "more than a day",
        DayTrouble::BankTooSmall => "bank too small",
    }
}

/// What a part does, or may do where nobody has measured it: "reaches" or "may
/// reach".
pub(crate) fn may(at_most: bool, does: &'static str, do_it: &str) -> String {
    if at_most {
        format!("may {do_it}")
    } else {
        does.to_string()
    }
}

/// Why a winding only may get so hot; a sentence that follows another.
pub(crate) const fn only_case_known(at_most: bool) -> &'static str {
    if at_most {
        " Only its case was measured, and nobody knows how much hotter the winding runs: this is the upper end of what it may be. A sensor on the stator would tell."
    } else {
        ""
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
pub(super) const fn limit_of(part: Part) -> &'static str {
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
pub(super) fn at_most(current: Quantity, reader: &Reader) -> String {
    let a = current.value;
    let (parts, decimals) = if a < 10.0 { (10.0, 1) } else { (1.0, 0) };
    let floored_a = (a * parts).floor() / parts;
    if a > 0.0 && floored_a <= 0.0 {
        return format!("less than {}", reader.show(amperes(0.1).to(1)));
    }
    reader.show(amperes(floored_a).to(decimals))
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

/// What a bank is made of, in the middle of a sentence.
pub const fn chemistry(chemistry: Chemistry) -> &'static str {
    match chemistry {
        Chemistry::Lfp => "lithium",
        Chemistry::Agm => "AGM lead",
        Chemistry::Gel => "gel lead",
        Chemistry::Flooded => "flooded lead",
    }
}

#[cfg(test)]
mod tests {
    use crate::text::words::at_most;
    use crate::units::Reader;
    use crate::units::quantity::amperes;

    #[test]
    fn a_limit_is_never_rounded_up() {
        let show = |a| at_most(amperes(a), &Reader::METRIC);
        assert_eq!(
            [0.0, 0.04, 0.38, 9.97, 10.0, 99.9].map(show),
            ["0.0 A", "less than 0.1 A", "0.3 A", "9.9 A", "10 A", "99 A"]
        );
        let comma = Reader::METRIC.with_decimal_comma(true);
        assert_eq!(at_most(amperes(9.97), &comma), "9,9 A");
    }
}
