//! The management system that guards a lithium house bank.

use serde::Serialize;

use crate::boat::{RegulatorKind, WayKind};
use crate::guidance::settings::{
    Case, ChargingOff, Device, FieldCut, Group, Setting, SettingCode, SettingValue, Source,
};
use crate::units::quantity::{
    Quantity, QuantityKind, amperes, count, kiloamperes_of, percent, volts,
};

/// The contactor opens so long after charging is off \[s\], common practice.
const CONTACTOR_S: [f64; 2] = [2.0, 5.0];

/// Why a management system is set so.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum ManagementReason {
    /// It never sounds on a usual day.
    AboveCharge {
        /// So far above the charge voltage.
        above: Quantity,
    },
    /// A built-in regulator must be opened for a relay.
    RegulatorNeedsRelay,
    /// The alternator must be off before the bank disconnects.
    AlternatorOffFirst {
        /// What it gives at the start.
        current: Quantity,
    },
    /// Whatever charges stops before the bank disconnects.
    ChargersOffFirst,
    /// The most a cell may have.
    MostForACell {
        /// The charge voltage, to be lowered where the maker's step is lower.
        charge: Quantity,
    },
    /// The cells are nearly empty.
    NearlyEmpty {
        /// What you keep in reserve.
        reserve: Quantity,
    },
    /// What is left is for what the boat needs most.
    LeftForSafety,
    /// Saves the cells; charging must still get in.
    SavesTheCells,
    /// The bank's limit for each ampere hour.
    Rate {
        /// Current for each ampere hour of capacity \[1/h\].
        rate: Quantity,
    },
    /// Packs do not share a current alike.
    SharesUnequally {
        /// Part that the pack with the least resistance takes.
        most: Quantity,
        /// What all of them may take together.
        together: Quantity,
    },
    /// What each pack carries, and what a short circuit draws.
    PackCarries {
        /// The least rating for what it carries.
        least: Quantity,
        /// What a short circuit at a pack draws from the others.
        others_short: Quantity,
    },
    /// The packs open without warning.
    OpensWithoutWarning {
        /// About where.
        opens_at: Quantity,
    },
    /// The packs warn nobody: a battery monitor or switch must.
    WarnsNobody,
    /// It is fixed inside the pack.
    FixedInside,
    /// They belong to the cells; no rule of thumb replaces them.
    BelongsToItsCells {
        /// How many cells are in series.
        cells: Quantity,
    },
}

/// The lithium bank's management system.
pub(super) fn management(case: Case) -> Group {
    let f = case.figures;
    let [warn_v, off_v, open_v] = f.high_v;
    let cell = |v: f64| volts(f.cell_v(v)).to(2);
    let [soonest, latest] = CONTACTOR_S.map(|s| Quantity::new(s, QuantityKind::Seconds));
    let mut settings = vec![
        Setting::new(
            SettingCode::HighWarning,
            SettingValue::CellVoltage {
                bank: volts(warn_v),
                cell: cell(warn_v),
            },
            ManagementReason::AboveCharge {
                above: volts(warn_v - f.charge_v),
            },
            Source::Calculated,
        ),
        Setting::new(
            SettingCode::HighChargingOff,
            SettingValue::ChargingOff {
                bank: volts(off_v),
                cell: cell(off_v),
                acts: charging_off(case),
            },
            off_first(case),
            Source::Calculated,
        ),
        Setting::new(
            SettingCode::HighContactor,
            SettingValue::ContactorOpens {
                bank: volts(open_v),
                cell: cell(open_v),
                soonest,
                latest,
            },
            ManagementReason::MostForACell {
                charge: volts(f.charge_v),
            },
            Source::BatteryMaker,
        ),
    ];
    settings.extend(low(case));
    settings.extend(limits(case));
    Group {
        device: Device::Management,
        settings,
    }
}

/// What the bank and each of its packs may take, and what only the maker can say.
pub(super) fn limits(case: Case) -> Vec<Setting> {
    let f = case.figures;
    let mut settings = vec![Setting::new(
        SettingCode::ChargeCurrent,
        SettingValue::current(f.bank_limit_a),
        ManagementReason::Rate {
            rate: count(f.bank_limit_a / case.inputs.bank.capacity_ah).to(2),
        },
        f.limit_from,
    )];
    settings.extend(packs(case));
    settings.push(Setting::new(
        SettingCode::CellLimits,
        SettingValue::AskBatteryMaker,
        ManagementReason::BelongsToItsCells {
            cells: count(f.cells),
        },
        Source::BatteryMaker,
    ));
    settings
}

/// Limit and fuse of each of several packs.
fn packs(case: Case) -> Vec<Setting> {
    let Some(packs) = &case.report.analyses.packs else {
        return Vec::new();
    };
    vec![
        Setting::new(
            SettingCode::EachPack,
            SettingValue::current(case.inputs.pack_limit_a()),
            ManagementReason::SharesUnequally {
                most: percent(packs.most_share_pct),
                together: amperes(packs.together_a),
            },
            case.figures.limit_from,
        ),
        Setting::new(
            SettingCode::PackFuse,
            SettingValue::Fuse {
                rating: packs.fuse_a.map(amperes),
                breaks: packs.breaks_ka.map(|ka| kiloamperes_of(1000.0 * ka)),
            },
            ManagementReason::PackCarries {
                least: amperes(packs.fuse_least_a),
                others_short: kiloamperes_of(packs.others_short_a).to(1),
            },
            Source::Calculated,
        ),
    ]
}

/// The three steps of low voltage.
pub(super) fn low(case: Case) -> [Setting; 3] {
    let f = case.figures;
    let [warn_v, loads_off_v, open_v] = f.low_v;
    let reserve = percent(case.inputs.window_low_pct());
    let step = |code, v: f64, reason, from| {
        let value = SettingValue::CellVoltage {
            bank: volts(v),
            cell: volts(f.cell_v(v)).to(2),
        };
        Setting::new(code, value, reason, from)
    };
    let (usual, maker) = (Source::CommonPractice, Source::BatteryMaker);
    [
        step(
            SettingCode::LowWarning,
            warn_v,
            ManagementReason::NearlyEmpty { reserve },
            usual,
        ),
        step(
            SettingCode::LowLoadsOff,
            loads_off_v,
            ManagementReason::LeftForSafety,
            usual,
        ),
        step(
            SettingCode::LowContactor,
            open_v,
            ManagementReason::SavesTheCells,
            maker,
        ),
    ]
}

fn off_first(case: Case) -> ManagementReason {
    let inputs = case.inputs;
    match (inputs.straight_into_house(), inputs.reg.kind) {
        (true, RegulatorKind::Internal) => ManagementReason::RegulatorNeedsRelay,
        (true, RegulatorKind::External) => ManagementReason::AlternatorOffFirst {
            current: amperes(case.report.analyses.run.most_a()),
        },
        (false, _) => ManagementReason::ChargersOffFirst,
    }
}

/// What the second step of high voltage switches off.
fn charging_off(case: Case) -> ChargingOff {
    let inputs = case.inputs;
    ChargingOff {
        field: inputs
            .straight_into_house()
            .then_some(match inputs.reg.kind {
                RegulatorKind::External => FieldCut::AtRegulator,
                RegulatorKind::Internal => FieldCut::ByRelay,
            }),
        dc_dc_charger: inputs.engine_charges() && inputs.way.kind == WayKind::Converter,
    }
}
