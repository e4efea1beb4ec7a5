//! What is said of every alternator: the voltage it charges at, its current,
//! where heat cuts its field.

use crate::analysis::PartTemperatures;
use crate::boat::{Alternator, Inputs, SensorPlace};
use crate::guidance::settings::cap::{Decided, cap};
use crate::guidance::settings::figures::set_point;
use crate::guidance::settings::{Case, Line, Source};
use crate::simulation::management::setting_within_a;
use crate::units::{amperes, volts};

/// Voltage an alternator is held at.
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
        .from(Source::Calculated)
    } else {
        let start_v = start_v(inputs);
        Line::new(
            "start_voltage",
            "Charge voltage",
            format!("{} at the start battery", volts(start_v)),
            format!(
                "It feeds the start battery; the DC-DC charger works from {} up.",
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

/// Which alternator is spoken of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Nth {
    First,
    Second,
}

/// The most its regulator lets it give.
pub(super) fn current(case: Case, nth: Nth, house: bool) -> Line {
    let (inputs, f) = (case.inputs, case.figures);
    let [first_a, second_a] = f.hot_a;
    let (machine, rating, hot_a) = match nth {
        Nth::First => (&inputs.alt, "alt_rated_a", first_a),
        Nth::Second => (&inputs.alt2, "alt2_rated_a", second_a),
    };
    let (share, limit_a) = if house {
        (f.share, f.bank_limit_a)
    } else {
        (1.0, f64::INFINITY)
    };
    let (cap_a, decided) = cap(inputs, machine, hot_a, share, setting_within_a(limit_a));
    let (what, key) = ("Current cap", "current_cap");
    if cap_a <= 0.0 {
        let why = format!(
            "Its share of the bank's {} would be next to nothing.",
            amperes(limit_a)
        );
        let value = "leave it off the house bank".to_string();
        return Line::new(key, what, value, why).from(Source::Calculated);
    }
    let (why, from) = match decided {
        Decided::Stated => (
            format!("As you set it; it holds {hot_a:.0} A hot."),
            Source::Worksheet("reg_current_cap_a"),
        ),
        Decided::Hot => (
            format!(
                "It holds {hot_a:.0} A hot at {:.0} engine rpm; 15 % more spares it while cold.",
                inputs.eng.rpm
            ),
            Source::Calculated,
        ),
        Decided::Rating => (
            format!(
                "What it is rated at{}.",
                if house {
                    format!("; the bank may take {}", amperes(limit_a))
                } else {
                    String::new()
                }
            ),
            Source::Worksheet(rating),
        ),
        Decided::Bank => (
            format!(
                "A little less than the {} that the bank may take from all that charges it; the house may be drawing nothing.",
                amperes(limit_a)
            ),
            Source::Calculated,
        ),
    };
    Line::new(key, what, amperes(cap_a), why)
        .at(cap_a)
        .from(from)
}

/// Where the field is cut, against the hottest its parts get.
pub(super) fn hottest(inputs: &Inputs, machine: &Alternator, peak: &PartTemperatures) -> Line {
    let set = set_point(inputs, machine, peak);
    let why = if set.over_k > 0.0 {
        format!(
            "In the run as it stands a part gets {:.0} K too hot; enter this limit and look again.",
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
        "Temperature limit the regulator holds",
        format!("{:.0} °C, sensor {place}", set.celsius.floor()),
        why,
    )
    .at(set.celsius)
    .from(if set.stated {
        Source::Worksheet("reg_set_point_c")
    } else {
        Source::Calculated
    })
}
