#![forbid(unsafe_code)]
//! Three charging runs against an independent implementation of the same
//! equations, integrated by SciPy's LSODA (A. C. Hindmarsh, L. R. Petzold;
//! P. Virtanen et al., "SciPy 1.0", Nature Methods 17, 2020) to one part in 10⁹.
//! `charge_runs.py` beside this makes the file afresh and says what differs. They
//! are not measurements: they show that this program solves its equations, not that
//! the equations are right.

mod inputs;

use ampwright_core::analysis::{Moment, RunReport};
use ampwright_core::report;
use serde_json::Value as Json;

const RUNS: &str = include_str!("charge_runs.json");

#[track_caller]
fn near(what: &str, ours: f64, theirs: f64, tolerance: f64) {
    assert!(
        (ours - theirs).abs() <= tolerance,
        "{what}: ours {ours:.4}, reference {theirs:.4}, allowed {tolerance:.4}"
    );
}

/// A thousandth of a figure: what the run's own steps are off by at most.
fn a_thousandth(theirs: f64) -> f64 {
    0.001 * theirs.abs()
}

fn check(name: &str) {
    let runs: Json = serde_json::from_str(RUNS).expect("the reference file is JSON");
    let run = &runs[name];
    let number = |part: &str, key: &str| run[part][key].as_f64().expect("a number");
    let sheet = inputs::worksheet(&run["inputs"]);
    let ours = report(&sheet);
    let summary = |key: &str| number("summary", key);

    near(
        "shaft rpm",
        ours.analyses.alternators[0].shaft_rpm,
        summary("alt_rpm"),
        1e-3,
    );
    near(
        "I inf",
        ours.analyses.alternators[0].infinite_a,
        summary("I_inf"),
        1e-4,
    );
    near(
        "phase ohm",
        ours.analyses.alternators[0].phase_20c_ohm,
        summary("R20_ohm"),
        1e-7,
    );
    near(
        "cooling",
        ours.analyses.alternators[0].cooling_factor,
        summary("g_thermal"),
        1e-5,
    );
    near(
        "cold",
        ours.analyses.output.full_cold_a,
        summary("I_full_cold"),
        1e-4,
    );
    near(
        "air",
        ours.analyses.output.space_air_m3h,
        summary("vent_m3h"),
        1e-3,
    );
    let run_ours = &ours.analyses.run;
    for (what, ours, theirs) in [
        ("start", run_ours.start_a, summary("I_start")),
        ("mid", run_ours.mid_a, summary("I_mid_hot")),
        ("mid bank", run_ours.mid_bank_a, summary("I_bank_mid")),
        ("mean bank", run_ours.mean_bank_a, summary("I_bank_mean")),
    ] {
        near(what, ours, theirs, a_thousandth(theirs));
    }
    for (what, ours, theirs) in [
        ("to 80 %", run_ours.minutes_to_80, summary("t_min_to_80")),
        ("to 90 %", run_ours.minutes_to_90, summary("t_min_to_90")),
        (
            "to the end",
            run_ours.minutes_to_target,
            summary("t_min_end"),
        ),
    ] {
        let ours = ours.expect("the charge gets there");
        near(what, ours, theirs, a_thousandth(theirs));
    }
    for (what, ours, theirs) in [
        (
            "winding",
            run_ours.alternators[0].peak.winding_c,
            summary("T_winding_max"),
        ),
        (
            "case",
            run_ours.alternators[0].peak.case_c,
            summary("T_body_max"),
        ),
        (
            "rectifier",
            run_ours.alternators[0].peak.rectifier_c,
            summary("T_rect_max"),
        ),
        ("air", run_ours.peak_air_c, summary("T_air_max")),
    ] {
        near(what, ours, theirs, 0.1);
    }
    near(
        "shaft W",
        run_ours.peak_shaft_w,
        summary("P_shaft_max_W"),
        a_thousandth(summary("P_shaft_max_W")),
    );
    near(
        "efficiency",
        run_ours.mid_efficiency_pct,
        100.0 * summary("eff_mid"),
        0.01,
    );
    series(&run["series"], run_ours);
}

/// Every fifth minute of the run: currents within a thousandth and 0.05 A, temperatures within 0.1 K.
fn series(theirs: &Json, ours: &RunReport) {
    let column = |name: &str| -> Vec<f64> {
        theirs[name]
            .as_array()
            .expect("a column")
            .iter()
            .map(|v| v.as_f64().expect("a number"))
            .collect()
    };
    let minutes = column("t_min");
    let mut compared = 0;
    type Column = (&'static str, (f64, f64), fn(&Moment) -> f64);
    let columns: [Column; 8] = [
        ("I_alt", (0.001, 0.05), |m| m.alternator_a),
        ("I_bank", (0.001, 0.05), |m| m.bank_a),
        ("V", (0.0, 0.001), |m| m.alternators[0].volts),
        ("T_winding", (0.0, 0.1), |m| m.alternators[0].winding_c),
        ("T_body", (0.0, 0.1), |m| m.alternators[0].case_c),
        ("T_rectifier", (0.0, 0.1), |m| m.alternators[0].rectifier_c),
        ("T_air", (0.0, 0.1), |m| m.air_c),
        ("P_shaft_W", (0.001, 1.0), |m| m.shaft_w),
    ];
    for (name, tolerance, get) in columns {
        for (minute, theirs) in minutes.iter().zip(column(name)) {
            let Some(moment) = ours
                .series
                .iter()
                .find(|m| (m.minute - minute).abs() < 1e-9)
            else {
                continue;
            };
            let allowed = tolerance.0 * theirs.abs() + tolerance.1;
            near(
                &format!("{name} at {minute} min"),
                get(moment),
                theirs,
                allowed,
            );
            compared += 1;
        }
    }
    assert!(compared > 8 * 40, "only {compared} points compared");
}

#[test]
fn converter_from_the_stock_machine() {
    check("A_dcdc_40A_from_stock_machine");
}

#[test]
fn regulated_machine_in_a_warm_space() {
    check("B_115A_regulated_direct_warm_space");
}

#[test]
fn second_machine_with_a_blower() {
    check("C_180A_second_machine_with_blower");
}
