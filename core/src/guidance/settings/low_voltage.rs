//! What a lead bank has in place of a management system: an alarm and a switch.

use serde::Serialize;

use crate::guidance::settings::{Case, Device, Group, Setting, SettingCode, SettingValue, Source};
use crate::units::quantity::{Quantity, QuantityKind, amperes, minutes, percent, volts};

/// The warning sounds after the voltage was low for so long \[min\], common practice.
const WARNING_MIN: f64 = 5.0;
/// Loads go off after the voltage was low for so long \[s\], common practice.
const OFF_S: f64 = 60.0;

/// Why a low-voltage step of a lead bank lies where it does.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum LowVoltageReason {
    /// What the bank stands at under the usual load, at the least charge wanted.
    UnderUsualLoad {
        /// The least charge wanted.
        soc: Quantity,
        /// Where it rests.
        rest: Quantity,
        /// Where it stands under load.
        under_load: Quantity,
        /// The usual load.
        load: Quantity,
    },
    /// What the peak load pulls it to.
    UnderPeakLoad {
        /// The peak load.
        load: Quantity,
        /// Where the bank stands then.
        under_load: Quantity,
        /// Whether that trips the switch, so that it must wait longer.
        trips: bool,
    },
    /// Lower, the bank loses life for good.
    LosesLife,
}

/// The alarm and the switch.
pub(super) fn low_voltage(case: Case) -> Group {
    let (inputs, f) = (case.inputs, case.figures);
    let [warn_v, loads_off_v, off_v] = f.low_v;
    let low_pct = inputs.window_low_pct();
    let bank = inputs.house_bank();
    let rest_v = bank.rest_v(low_pct / 100.0);
    let under = |load_a: f64| (rest_v - load_a * bank.giving_ohm()).max(0.0);
    let usual_a = case.report.analyses.run.house_load_a;
    let peak_v = under(case.peak_house_a);
    let step = |code, v: f64, time, reason| {
        let voltage = volts(v);
        let value = SettingValue::VoltageFor { voltage, time };
        Setting::new(code, value, reason, Source::Calculated)
    };
    let off_after = Quantity::new(OFF_S, QuantityKind::Seconds);
    Group {
        device: Device::LowVolts,
        settings: vec![
            step(
                SettingCode::LowWarning,
                warn_v,
                minutes(WARNING_MIN),
                LowVoltageReason::UnderUsualLoad {
                    soc: percent(low_pct),
                    rest: volts(rest_v),
                    under_load: volts(under(usual_a)),
                    load: amperes(usual_a).up_to(1),
                },
            ),
            step(
                SettingCode::LowLoadsOff,
                loads_off_v,
                off_after,
                LowVoltageReason::UnderPeakLoad {
                    load: amperes(case.peak_house_a),
                    under_load: volts(peak_v),
                    trips: peak_v < loads_off_v,
                },
            ),
            step(
                SettingCode::LowAllOff,
                off_v,
                off_after,
                LowVoltageReason::LosesLife,
            ),
        ],
    }
}
