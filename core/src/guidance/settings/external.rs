//! Settings of an external regulator.

use crate::boat::WayKind;
use crate::guidance::settings::machine::{Nth, current, held, hottest};
use crate::guidance::settings::{Case, Group, Line, Source};
use crate::units::{tenths, volts};

/// A wait before the first field \[s\], common practice.
const DELAY_S: f64 = 60.0;
/// A soft start where you set none \[min\], common practice.
const RAMP_MIN: f64 = 2.0;
/// A fan is slow below this speed of the shaft \[rpm\], common practice.
const SLOW_RPM: f64 = 2000.0;

/// The external regulator.
pub(super) fn regulator(case: Case) -> Group {
    let (inputs, report, f) = (case.inputs, case.report, case.figures);
    let house = inputs.way.kind == WayKind::Direct;
    let mut lines = vec![held(case, house)];
    if house {
        let run = &report.analyses.run;
        lines.push(
            Line::new(
                "sense",
                "Voltage sensed at",
                "the bank's terminals, by a fused wire of its own".to_string(),
                format!(
                    "At {:.0} A the {} mΩ of switch, fuse and cable drop {}.",
                    run.start_a,
                    tenths(inputs.bank.harness_mohm),
                    volts(run.start_a * inputs.bank.harness_mohm / 1000.0)
                ),
            )
            .from(Source::CommonPractice),
        );
    }
    lines.push(current(case, Nth::First, house));
    lines.push(hottest(inputs, &inputs.alt, &report.analyses.run.peak));
    lines.push(
        Line::new(
            "fold_back",
            "Derating range",
            format!(
                "full field to none across {} K",
                tenths(inputs.reg.fold_band_k)
            ),
            format!(
                "Around the temperature limit; held there the alternator gives {:.0} A.",
                f.hot_a[0]
            ),
        )
        .from(Source::Worksheet("reg_fold_band_k")),
    );
    lines.push(low_speed(case));
    lines.push(
        Line::new(
            "delay",
            "Start delay",
            format!("{DELAY_S:.0} s"),
            format!(
                "The engine has oil pressure and turns {:.0} rpm before the belt pulls.",
                inputs.eng.rpm
            ),
        )
        .at(DELAY_S),
    );
    lines.push(ramp(case));
    if f.lithium && inputs.straight_into_house() {
        lines.push(
            Line::new(
                "field_cut",
                "Field cut-off input",
                "the management system's charge-disable signal".to_string(),
                format!(
                    "The field is off at {}, {} before the contactor opens.",
                    volts(f.high_v[1]),
                    volts(f.high_v[2] - f.high_v[1])
                ),
            )
            .from(Source::CommonPractice),
        );
    }
    Group {
        key: "regulator",
        title: "Regulator",
        lines,
    }
}

fn low_speed(case: Case) -> Line {
    let (reg, ratio) = (&case.inputs.reg, case.inputs.alt.pulley_ratio);
    let (what, key) = ("Low-speed cap", "low_speed");
    let shaft_rpm = case.report.analyses.machine.shaft_rpm;
    let words = |pct: f64, rpm: f64| {
        format!(
            "{pct:.0} % field below {rpm:.0} rpm, {:.0} of the engine",
            rpm / ratio
        )
    };
    if reg.low_speed_rpm > 0.0 {
        let why =
            format!("Its fan is slow there; you charge at {shaft_rpm:.0} rpm of the alternator.");
        Line::new(key, what, words(reg.low_speed_pct, reg.low_speed_rpm), why)
            .at(reg.low_speed_pct)
            .from(Source::Worksheet("reg_low_speed_rpm"))
    } else if shaft_rpm > SLOW_RPM {
        let why = format!(
            "Its fan is slow there; at your {:.0} engine rpm it holds nothing back.",
            case.inputs.eng.rpm
        );
        Line::new(key, what, words(50.0, SLOW_RPM), why).at(50.0)
    } else {
        let why = format!(
            "You charge at {shaft_rpm:.0} rpm of the alternator, where a cap would hold back every run: the temperature limit has to do it."
        );
        Line::new(key, what, "none".to_string(), why)
    }
}

fn ramp(case: Case) -> Line {
    let stated_min = case.inputs.reg.ramp_min;
    let (minutes, from) = if stated_min > 0.0 {
        (stated_min, Source::Worksheet("reg_ramp_min"))
    } else {
        (RAMP_MIN, Source::CommonPractice)
    };
    Line::new(
        "ramp",
        "Soft start",
        format!("{} min to full field", tenths(minutes)),
        format!(
            "Belt and engine take up {:.1} kW gently; it gets as hot as without.",
            case.report.analyses.engine.peak_kw
        ),
    )
    .at(minutes)
    .from(from)
}
