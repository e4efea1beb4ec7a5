//! What is set for every alternator: the voltage it charges at, its current,
//! and the temperature at which its field is cut.

use serde::Serialize;

use crate::analysis::{Part, PartTemperatures};
use crate::boat::key;
use crate::boat::{Alternator, Inputs, InstalledAlternator};
use crate::guidance::settings::amount::set_a;
use crate::guidance::settings::cap::{Decided, MARGIN, cap};
use crate::guidance::settings::charger::profile;
use crate::guidance::settings::figures::set_point;
use crate::guidance::settings::{Case, Setting, SettingCode, SettingValue, Source, Terminals};
use crate::simulation::management::setting_within_a;
use crate::units::Quantity;
use crate::units::quantity::{amperes, celsius, kelvin, percent, rpm, volts};

/// Why an alternator is set so.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum AlternatorReason {
    /// It feeds the start battery, and a DC-DC charger from there.
    FeedsStartBattery {
        /// The DC-DC charger works from this voltage up.
        charger_from: Quantity,
    },
    /// Its share of what the bank may take is next to nothing.
    ShareIsNothing {
        /// What the bank may take.
        bank_limit: Quantity,
    },
    /// The worksheet's own cap.
    AsGiven {
        /// What it holds hot.
        hot: Quantity,
    },
    /// The worksheet's part of what it holds hot.
    PartOfHot {
        /// The part.
        part: Quantity,
        /// What it holds hot.
        hot: Quantity,
    },
    /// The worksheet's own cap, measured at the house bank.
    AsGivenAtBank {
        /// What the house draws on top of it.
        house: Quantity,
    },
    /// What it holds hot, and a margin that spares it while it is cold.
    HoldsHot {
        /// What it holds hot
        hot: Quantity,
        /// at this engine speed.
        engine: Quantity,
        /// The margin.
        margin: Quantity,
    },
    /// Its rating.
    Rating {
        /// What the bank may take, where it charges the house bank.
        bank_limit: Option<Quantity>,
    },
    /// A little less than what the bank may take from everything together.
    BankLimit {
        /// What the bank may take.
        bank_limit: Quantity,
        /// Whether that is with one of its packs out.
        one_pack_out: bool,
    },
    /// In the run a part gets too hot.
    PartTooHot {
        /// By how much.
        over: Quantity,
    },
    /// So far below the limit of the part.
    BelowLimit {
        /// How far.
        below: Quantity,
        /// The part.
        part: Part,
        /// Its limit.
        limit: Quantity,
    },
}

/// Voltage an alternator is held at.
pub(super) fn held(case: Case, house: bool) -> Setting {
    if house {
        return profile(case);
    }
    let way = &case.inputs.way;
    let reason = AlternatorReason::FeedsStartBattery {
        charger_from: volts(way.lockout_v),
    };
    Setting::new(
        SettingCode::StartVoltage,
        at_start_battery(case.inputs),
        reason,
        Source::Worksheet(key!(way.start_v)),
    )
}

/// Voltage the start battery is charged at \[V\]: the worksheet's, never above
/// 2.47 V a cell (14.8 V in 12 V, the most common practice has for lead).
pub(super) fn start_v(inputs: &Inputs) -> f64 {
    inputs.way.start_v.min(14.8 * inputs.start_blocks())
}

/// Voltage the start battery is charged at, at the terminals it is measured at.
pub(super) fn at_start_battery(inputs: &Inputs) -> SettingValue {
    SettingValue::VoltageAt {
        voltage: volts(start_v(inputs)),
        at: Terminals::StartBattery,
    }
}

/// The most its regulator lets it give.
pub(super) fn current(case: Case, installed: &InstalledAlternator) -> Setting {
    let (inputs, f) = (case.inputs, case.figures);
    let rating = installed.key(Alternator::rated_a);
    let hot_a = f.hot_a_of(installed.which);
    let house = installed.connection.on_house();
    let (share, limit_a) = if house {
        (f.share, f.setting_limit_a)
    } else {
        (1.0, f64::INFINITY)
    };
    // Two regulators that know nothing of each other: each keeps to its half, as
    // the finding that asks for a cap says it. Two that measure at the bank each see
    // what both give.
    let at_bank = inputs.bank_cap_a().is_some();
    let both = house && inputs.two_on_house() && !inputs.limit_linked() && !at_bank;
    let within_a = setting_within_a(limit_a) / if both { 2.0 } else { 1.0 };
    let (cap_a, decided) = cap(inputs, installed.alternator, hot_a, share, within_a);
    let (bank_limit, hot) = (amperes(limit_a), amperes(hot_a));
    let code = SettingCode::CurrentCap;
    if cap_a <= 0.0 {
        let value = SettingValue::OffTheHouseBank;
        let reason = AlternatorReason::ShareIsNothing { bank_limit };
        return Setting::new(code, value, reason, Source::Calculated);
    }
    let (reason, from) = match decided {
        Decided::Stated => (
            if house && at_bank {
                AlternatorReason::AsGivenAtBank {
                    house: amperes(case.report.analyses.run.house_load_a),
                }
            } else {
                AlternatorReason::AsGiven { hot }
            },
            Source::Worksheet(key!(reg.current_cap_a)),
        ),
        Decided::OfHot => (
            AlternatorReason::PartOfHot {
                part: percent(inputs.reg.hot_cap_pct.unwrap_or(100.0)),
                hot,
            },
            Source::Worksheet(key!(reg.hot_cap_pct)),
        ),
        Decided::Hot => (
            AlternatorReason::HoldsHot {
                hot,
                engine: rpm(inputs.eng.rpm),
                margin: percent((MARGIN - 1.0) * 100.0),
            },
            Source::Calculated,
        ),
        Decided::Rating => (
            AlternatorReason::Rating {
                bank_limit: house.then_some(bank_limit),
            },
            Source::Worksheet(rating),
        ),
        Decided::Bank => (
            AlternatorReason::BankLimit {
                bank_limit,
                one_pack_out: f.setting_limit_a < f.bank_limit_a,
            },
            Source::Calculated,
        ),
    };
    let value = SettingValue::Exactly {
        quantity: set_a(cap_a),
    };
    Setting::new(code, value, reason, from)
}

/// Where the field is cut, against the hottest its parts get.
pub(super) fn hottest(installed: &InstalledAlternator, peak: &PartTemperatures) -> Setting {
    let set = set_point(installed, peak);
    let reason = if set.over_k > 0.0 {
        AlternatorReason::PartTooHot {
            over: kelvin(set.over_k.ceil()),
        }
    } else {
        AlternatorReason::BelowLimit {
            below: kelvin(set.limit_c - set.celsius),
            part: set.part,
            limit: celsius(set.limit_c),
        }
    };
    let value = SettingValue::TemperatureLimit {
        limit: celsius(set.celsius.floor()),
        sensor: set.part,
    };
    let from = if set.stated {
        Source::Worksheet(key!(reg.set_point_c))
    } else {
        Source::Calculated
    };
    Setting::new(SettingCode::SetPoint, value, reason, from)
}
