//! What happens when the battery goes, in words.

use crate::analysis::load_dump::{DumpReport, Exposure, VoltageRange};
use crate::analysis::peak_loads::AlternatorPeaks;
use crate::boat::Connection;
use crate::physics::dump::{TOUCH_V, withstand_v};

/// What there is to say of one machine, one sentence each.
pub(super) fn sentences(machine: &AlternatorPeaks, dump: &DumpReport) -> Vec<String> {
    let name = machine.name();
    if !machine.installed.fits() {
        return vec![format!(
            "The {name} is of another voltage than the battery its cable leads to and must not be connected: there is no load to lose."
        )];
    }
    let (now, top) = (&dump.charging, &dump.top);
    let mut said = vec![match dump.exposure {
        Exposure::Bank => format!(
            "The {name} works straight into the house bank. If the bank's management system opens while {:.0} A flow, that current has nowhere to go and the voltage jumps.",
            now.amperes
        ),
        Exposure::LeadBank => format!(
            "The {name} works straight into a bank of lead, which does not open by itself; only a switch, a blown fuse or a loose lug parts the two."
        ),
        Exposure::StartBattery => format!(
            "The {name} keeps the start battery whatever the house bank does, so the bank's disconnecting makes no such voltage spike on it; only a switch, a blown fuse or a loose lug would."
        ),
    }];
    if machine.installed.connection == Connection::ThroughCharger {
        said.push("The DC-DC charger loses its bank instead: what hangs on the house side is then fed by it alone. Its maker says whether it may run without a battery.".to_string());
    }
    let parted = match dump.exposure {
        Exposure::Bank => "With nothing against it",
        _ => "Parted from it all the same, with nothing against it,",
    };
    said.push(format!(
        "{parted} the voltage would peak at {} at {:.0} engine rpm and at {} at {:.0}, behind {:.2} to {:.2} Ω. This is an estimate of our own; its upper end is wider by a factor of {:.2}, as wide as the range of the standard's test.",
        range(dump.peak_range(now)),
        now.engine_rpm,
        range(dump.peak_range(top)),
        top.engine_rpm,
        now.internal_ohm.min(top.internal_ohm),
        now.internal_ohm.max(top.internal_ohm),
        dump.margin
    ));
    said.push(standard(dump));
    if machine.installed.blocks() > 2.5 {
        said.push(format!(
            "Electronics of 48 V systems are made for {TOUCH_V:.0} V for long and about {:.0} V for a moment (ISO 21780, from memory); above {TOUCH_V:.0} V direct current protection against touch begins.",
            withstand_v(4.0)
        ));
    }
    if let Some(left_v) = dump.bank_left_v() {
        let with = if dump.defended() {
            "With the protection you entered"
        } else {
            "With no protection entered"
        };
        said.push(left(with, left_v, dump));
    }
    if let Some(left_v) = dump.switch_left_v() {
        said.push(left(
            "When the switch in its output lead is opened",
            left_v,
            dump,
        ));
    }
    said
}

fn standard(dump: &DumpReport) -> String {
    let (now, top) = (&dump.charging, &dump.top);
    let ours = format!(
        "a clamp at {:.0} V takes {:.0} J at charging speed and {:.0} J with the engine at its highest",
        dump.clamp_v, now.clamp_j, top.clamp_j
    );
    match (
        dump.standard_low_v.zip(dump.standard_high_v),
        dump.standard_low_ohm.zip(dump.standard_high_ohm),
        now.standard_low_j.zip(now.standard_high_j),
    ) {
        (Some((low_v, high_v)), Some((low_ohm, high_ohm)), Some((low_j, high_j))) => format!(
            "ISO 16750-2 tests electronics with {low_v:.0} to {high_v:.0} V behind {low_ohm} to {high_ohm} Ω. Of our estimate {ours}; of the standard's peaks {low_j:.0} to {high_j:.0} J at charging speed."
        ),
        _ => format!("ISO 16750-2 has no pulse for this voltage. Of our estimate {ours}."),
    }
}

fn left(when: &str, left_v: f64, dump: &DumpReport) -> String {
    let bear_v = dump.bear_v;
    if left_v > bear_v {
        format!(
            "{when}, {} are left, more than the {bear_v:.0} V that the electronics withstand.",
            range(dump.left_range(left_v))
        )
    } else if dump.too_much(left_v) {
        format!(
            "{when}, {} are left by that estimate, too near the {bear_v:.0} V that the electronics withstand to count on.",
            range(dump.left_range(left_v))
        )
    } else {
        format!(
            "{when}, up to {left_v:.0} V are left, within the {bear_v:.0} V that the electronics withstand. That holds only while every part of it works: try it, and look at it each season."
        )
    }
}

/// "68 to 86 V", or one figure.
fn range(range: VoltageRange) -> String {
    if range.high_v > range.low_v {
        format!("{:.0} to {:.0} V", range.low_v, range.high_v)
    } else {
        format!("{:.0} V", range.low_v)
    }
}
