//! Logs of known machines give them back; what a log cannot tell is left alone.

use super::*;
use ampwright_core::decision::calibration;

proptest! {
    #![proptest_config(crate::cases(100))]

    /// 2 % and 1 K of noise: cooling within 5 %, capacity within 10 %, and the
    /// stated range holds the truth. Without the air, cooling within 15 %.
    #[test]
    fn a_known_machine_is_given_back(
        anchor_c in 125.0..190.0f64,
        capacity in 0.7..1.5f64,
        air in any::<bool>(),
        seed in any::<u64>(),
    ) {
        let truth = truth(anchor_c, capacity);
        let fit = fitted(&unseen(), &log_of(&truth, Logged { air, ..HALF_AN_HOUR }, seed));
        let corrected = corrected(&unseen(), &fit);
        let g = cooling(&corrected) / cooling(&truth);
        let c = corrected.inputs.alt.heat_capacity_factor / capacity;
        prop_assert!((g - 1.0).abs() < if air { 0.05 } else { 0.15 }, "cooling {g} of the true one");
        prop_assert!((c - 1.0).abs() < 0.10, "capacity {c} of the true one");
        prop_assert!((0.5..1.6).contains(&fit.residual_k), "residual {} K", fit.residual_k);
        let true_factor = cooling(&truth) / cooling(&unseen());
        for (label, value) in [("Cooling", true_factor), ("Heat capacity", capacity)] {
            let figure = fit.figures.iter().find(|figure| calibration_text::fitted(figure.what).contains(label));
            let (low, high) = figure.expect("fitted").range;
            prop_assert!((low..=high).contains(&value), "{label} {value} outside {low} to {high}");
        }
    }
}

proptest! {
    #![proptest_config(crate::cases(20))]

    /// However closely the winding follows the case, after a trial that read the case
    /// alone it is no hotter than the most that it may be, thermometers' 3 K aside.
    #[test]
    fn the_winding_of_a_read_case_is_never_hotter_than_it_may_be(
        coupling in 2.0..10.0f64,
        anchor_c in 125.0..165.0f64,
        seed in any::<u64>(),
    ) {
        let mut truth = truth(anchor_c, 1.0);
        say(&mut truth, "alt_coupling_w_k", coupling);
        let fit = fitted(&unseen(), &log_of(&truth, HALF_AN_HOUR, seed));
        let after = report(&corrected(&unseen(), &fit));
        let told = after.analyses.run.alternators[0].peak;
        let really = report(&truth).analyses.run.alternators[0].peak;
        prop_assert!(told.winding_may_be_c.is_some());
        // Air and amps of the log scatter: a twentieth of what it is above the case.
        let slack_k = 3.0 + 0.05 * (really.winding_c - really.case_c);
        prop_assert!(
            really.winding_c <= told.winding_at_most_c() + slack_k,
            "{} °C, {} at most was told", really.winding_c, told.winding_at_most_c()
        );
    }
}

#[test]
fn figures_taken_over_are_marked_measured_and_move_the_hot_current() {
    let fit = fitted(&unseen(), &log_of(&truth(175.0, 1.3), HALF_AN_HOUR, 7));
    let after = corrected(&unseen(), &fit);
    for name in [
        "alt_anchor_case_c",
        "alt_anchor_case_a",
        "alt_heat_capacity_factor",
        "space_hot_c",
        "space_basis",
    ] {
        let key = Key::named(name).expect("a key");
        assert_eq!(after.knowledge(key), Confidence::Measured, "{name}");
    }
    let (before, after) = (
        report(&unseen()).analyses.output.hot_a,
        report(&after).analyses.output.hot_a,
    );
    assert!(after < 0.95 * before, "{before} A became {after}");
}

#[test]
fn heat_capacity_moves_the_rise_and_not_the_hot_current() {
    let at = |factor: f64| {
        let sheet = truth(150.0, factor);
        let trace = charge(
            &Plant::new(&sheet.inputs, LOAD_A),
            0.3,
            1.0,
            300.0,
            &Fineness::USUAL,
        );
        (
            trace.sample(300.0).thermal[0].t.body_c,
            report(&sheet).analyses.output.hot_a,
        )
    };
    let ((light_c, light_a), (heavy_c, heavy_a)) = (at(0.7), at(1.4));
    assert!(light_c > heavy_c + 10.0, "{light_c} °C and {heavy_c}");
    assert!(
        (light_a - heavy_a).abs() < 1e-6,
        "{light_a} A and {heavy_a}"
    );
}

#[test]
fn a_steady_log_tells_cooling_and_not_capacity() {
    let late = Logged {
        minutes: (50, 80),
        ..HALF_AN_HOUR
    };
    let fit = fitted(&unseen(), &log_of(&truth(165.0, 1.0), late, 3));
    assert!(has(&fit, "Case at a known current") && !has(&fit, "Heat capacity"));
    assert!(remarks(&fit).contains("Begin with the first minute after a cold start"));
    let g = cooling(&corrected(&unseen(), &fit)) / cooling(&truth(165.0, 1.0));
    assert!((g - 1.0).abs() < 0.05, "cooling {g}");
}

#[test]
fn a_short_log_tells_capacity_and_not_cooling() {
    let short = Logged {
        minutes: (0, 8),
        ..HALF_AN_HOUR
    };
    let fit = fitted(&unseen(), &log_of(&truth(165.0, 1.3), short, 3));
    assert!(has(&fit, "Heat capacity") && !has(&fit, "Case at a known current"));
    assert!(remarks(&fit).contains("Go on for 30 minutes"));
}

/// Own warm air and cooling cannot be told apart, but together they give the
/// current the machine holds.
#[test]
fn own_warm_air_is_left_alone_and_the_hot_current_right_all_the_same() {
    let mut truth = truth(150.0, 1.0);
    say(&mut truth, "space_recirculation_pct", 32.0);
    let fit = fitted(&unseen(), &log_of(&truth, HALF_AN_HOUR, 11));
    assert!(!has(&fit, "Own warm air"));
    assert!(remarks(&fit).contains("looks just like worse cooling"));
    let hot_a = |sheet: &Worksheet| report(sheet).analyses.output.hot_a;
    let (before, after) = (hot_a(&unseen()), hot_a(&corrected(&unseen(), &fit)));
    let true_a = hot_a(&truth);
    assert!(
        (before - true_a).abs() > 0.08 * true_a,
        "{before} of {true_a} A"
    );
    assert!(
        (after - true_a).abs() < 0.05 * true_a,
        "{after} of {true_a} A"
    );
}

#[test]
fn output_is_weighed_where_the_machine_was_at_full_field() {
    let mut weak = truth(150.0, 1.0);
    weak.state(Key::named("alt_curve").expect("a key"), Value::Choice(1))
        .expect("an option");
    say(&mut weak, "alt_second_rpm", 3360.0);
    say(&mut weak, "alt_second_a", 101.0);
    let volts = Logged {
        volts: true,
        ..HALF_AN_HOUR
    };
    let fit = fitted(&unseen(), &log_of(&weak, volts, 5));
    let found = corrected(&unseen(), &fit).inputs.alt;
    assert!((found.second_a - 101.0).abs() < 3.0, "{} A", found.second_a);
    assert!(
        (found.second_rpm - 3360.0).abs() < 1.0,
        "{} rpm",
        found.second_rpm
    );
    let g = cooling(&corrected(&unseen(), &fit)) / cooling(&weak);
    assert!((g - 1.0).abs() < 0.05, "cooling {g}");
    // Right curve; no volts; held back all the time.
    let fit = fitted(&unseen(), &log_of(&truth(150.0, 1.0), volts, 5));
    assert!(
        remarks(&fit).contains("gave what the worksheet"),
        "{}",
        remarks(&fit)
    );
    let fit = fitted(&unseen(), &log_of(&weak, HALF_AN_HOUR, 5));
    assert!(remarks(&fit).contains("that takes the volts as well"));
    say(&mut weak, "reg_current_cap_a", 50.0);
    let mut sheet = unseen();
    say(&mut sheet, "reg_current_cap_a", 50.0);
    let fit = fitted(&sheet, &log_of(&weak, volts, 5));
    assert!(
        remarks(&fit).contains("may have been what limited it"),
        "{}",
        remarks(&fit)
    );
}

#[test]
fn the_sample_is_understood_whole() {
    let fit = fitted(&crate::regulated::regulated(), calibration::SAMPLE);
    assert!(fit.residual_k < 2.0, "{} K", fit.residual_k);
    for label in [
        "Cooling",
        "Case at a known current",
        "Heat capacity",
        "Hot, near",
    ] {
        assert!(has(&fit, label), "{label}: {:?}", fit.figures);
    }
}
