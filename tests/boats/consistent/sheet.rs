//! The settings sheet agrees with the boat, the findings and itself.

use ampwright_core::guidance::settings::{GroupCode, Setting, SettingCode};
use ampwright_core::text::settings as text;
use ampwright_core::units::Reader;

use crate::answers::said;
use crate::says::Says;

/// Most volts a cell: 3.65 for lithium, 2.5 for lead; common practice.
const MOST_LITHIUM_V: f64 = 3.65;
const MOST_LEAD_V: f64 = 2.5;

pub fn check(says: &Says) {
    for group in &says.settings().groups {
        for setting in &group.settings {
            let name = format!("{}.{}", group.code().name(), setting.code.name());
            let value = text::value(setting, &Reader::METRIC);
            let nothing = ["0.0 A", "0 A", "0.00 V", "0.0 V"].iter().any(|zero| {
                value == *zero
                    || value.starts_with(&format!("{zero} "))
                    || value.ends_with(&format!(" {zero}"))
            });
            says.holds(!nothing, || format!("{name} is to be set to “{value}”"));
            says.holds(setting.number().is_none_or(f64::is_finite), || {
                format!("{name} is no number")
            });
        }
    }
    volts(says);
    currents(says);
    cap(says);
}

/// The cap on the sheet is no higher than the one a finding asks for.
fn cap(says: &Says) {
    let Some(sheet_a) =
        number(says, GroupCode::Regulator, SettingCode::CurrentCap).filter(|_| says.direct())
    else {
        return;
    };
    for finding in &says.report.findings {
        let said = said(finding);
        let asked = said.split("current cap of ").nth(1);
        let asked_a = asked.and_then(|rest| rest.split(' ').next()?.parse::<f64>().ok());
        says.holds(
            asked_a.is_none_or(|asked_a| sheet_a <= asked_a + 0.5),
            || {
                format!(
                    "a cap of {sheet_a:.0} A on the sheet, and {}: {}",
                    finding.code(),
                    said
                )
            },
        );
    }
}

fn number(says: &Says, group: GroupCode, code: SettingCode) -> Option<f64> {
    says.setting(group, code).and_then(Setting::number)
}

fn volts(says: &Says) {
    let cells = says.cells();
    let most_v = cells
        * if says.lithium() {
            MOST_LITHIUM_V
        } else {
            MOST_LEAD_V
        };
    let charge_v = number(says, GroupCode::Charge, SettingCode::Voltage);
    says.some_between(
        "charge voltage on the sheet",
        charge_v,
        0.9 * most_v,
        most_v + 1e-6,
    );
    let charge_v = charge_v.unwrap_or(most_v);
    if says.has("charge_voltage_no_room") {
        says.between(
            "charge voltage that leaves room",
            charge_v,
            3.4 * cells,
            3.55 * cells + 1e-6,
        );
    }
    if let Some(float_v) = number(says, GroupCode::Charge, SettingCode::Float) {
        says.between("float", float_v, 0.8 * most_v, charge_v);
    }
    if says.lithium() && says.chosen("packs_management") == "closed" {
        // Closed packs have nothing that can be set.
        let open_v = number(says, GroupCode::Management, SettingCode::HighContactor);
        says.holds(open_v.is_none(), || "a closed pack is set".into());
    } else if says.lithium() {
        let steps = [
            SettingCode::HighWarning,
            SettingCode::HighChargingOff,
            SettingCode::HighContactor,
        ];
        let high = steps.map(|code| number(says, GroupCode::Management, code).unwrap_or(0.0));
        let rising = charge_v < high[0] && high[0] < high[1] && high[1] < high[2];
        says.holds(rising, || {
            format!("charge at {charge_v:.2} V, steps at {high:.2?} V")
        });
        says.between(
            "contactor V a cell",
            high[2] / cells,
            3.5,
            MOST_LITHIUM_V + 1e-6,
        );
        let steps = [
            SettingCode::LowWarning,
            SettingCode::LowLoadsOff,
            SettingCode::LowContactor,
        ];
        let low = steps.map(|code| number(says, GroupCode::Management, code).unwrap_or(0.0));
        let falling = low[0] > low[1] && low[1] > low[2] && low[2] >= 2.5 * cells;
        says.holds(falling, || format!("low steps at {low:.2?} V"));
    } else {
        let steps = [
            SettingCode::LowWarning,
            SettingCode::LowLoadsOff,
            SettingCode::LowAllOff,
        ];
        let low = steps.map(|code| number(says, GroupCode::LowVolts, code).unwrap_or(0.0));
        let falling = low[0] > low[1] && low[1] > low[2] && low[2] >= 10.5 * says.blocks();
        says.holds(falling, || format!("low steps at {low:.2?} V"));
    }
}

/// Nothing that charges the bank is set to more than the bank may take.
fn currents(says: &Says) {
    let limit_a = says.figure("bank_charge_limit_a");
    let direct = says.direct();
    for (group, code) in [
        (GroupCode::Regulator, SettingCode::CurrentCap),
        (GroupCode::Converter, SettingCode::Current),
        (GroupCode::ShoreCharger, SettingCode::Current),
    ] {
        let others = match group {
            GroupCode::Regulator => !direct,
            GroupCode::Converter => direct,
            _ => false,
        };
        if others {
            continue;
        }
        if let Some(most_a) = number(says, group, code) {
            // What the house draws meanwhile may come on top.
            let most = limit_a + says.report.analyses.run.house_load_a + 1.0;
            let name = format!("{}.{}", group.name(), code.name());
            says.between(&name, most_a, 0.1, most);
        }
    }
}
