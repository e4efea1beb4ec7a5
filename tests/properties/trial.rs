//! The sea trial: any text is read, logs of known machines give them back, and
//! logs of other machines break nothing.
//!
//! The logs here come from our own equations, so that they show what a log can
//! tell, not how near the model is to a boat.

use std::fmt::Write;

use ampwright_core::charge::plant::Plant;
use ampwright_core::charge::run::{Fineness, charge};
use ampwright_core::fields::{Knowledge, Value};
use ampwright_core::trial::{self, Fit, apply};
use ampwright_core::worksheet::{Key, demo};
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;

use crate::draw::any_sheet;

/// What the house draws meanwhile \[A\].
const LOAD_A: f64 = 6.0;

/// Random numbers: G. Marsaglia, "Xorshift RNGs", J. Statistical Software
/// 8(14), 2003, the triple 13, 7, 17.
struct Noise(u64);

impl Noise {
    fn even(&mut self) -> f64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 11) as f64 / (1u64 << 53) as f64
    }

    /// Normal with standard deviation 1, to within what twelve even ones sum to.
    fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.even()).sum::<f64>() - 6.0
    }
}

fn say(sheet: &mut Worksheet, name: &str, number: f64) {
    let key = Key::named(name).expect("a key");
    sheet.state(key, Value::Number(number)).expect("in range");
}

/// What a log holds.
#[derive(Debug, Clone, Copy)]
struct Logged {
    /// Minutes of the run it begins and ends at.
    minutes: (u32, u32),
    air: bool,
    volts: bool,
}

const HALF_AN_HOUR: Logged = Logged {
    minutes: (0, 45),
    air: true,
    volts: false,
};

/// A log of a boat's first minutes, one reading a minute, with 2 % of noise on
/// the amps and 1 K on thermometers.
fn log_of(truth: &Worksheet, logged: Logged, seed: u64) -> String {
    let mut noise = Noise(seed | 1);
    let (first, last) = logged.minutes;
    let plant = Plant::new(&truth.inputs, LOAD_A);
    let trace = charge(&plant, 0.3, 1.0, f64::from(last) * 60.0, &Fineness::USUAL);
    let mut text = String::from("minute;amps;case;air;volts\n");
    for minute in first..=last {
        let sample = trace.sample(60.0 * f64::from(minute));
        let (given, t) = (sample.moment.flow.main, sample.temperatures);
        let amps = given.amperes * (1.0 + 0.02 * noise.normal());
        let mut kept = |kept: bool, value: f64| match kept {
            true => format!("{:.2}", value + noise.normal()),
            false => String::new(),
        };
        let case = kept(true, t.body_c);
        let air = kept(logged.air, t.air_c);
        let volts = match logged.volts {
            true => format!("{:.2}", given.volts),
            false => String::new(),
        };
        writeln!(text, "{minute};{amps:.1};{case};{air};{volts}").expect("a text");
    }
    text
}

fn fitted(sheet: &Worksheet, text: &str) -> Fit {
    let log = trial::read(text);
    assert!(log.remarks.is_empty(), "{:?}", log.remarks);
    trial::fit(sheet, &log).unwrap_or_else(|wrong| panic!("{wrong}\n{text}"))
}

fn refusal(sheet: &Worksheet, text: &str) -> String {
    match trial::fit(sheet, &trial::read(text)) {
        Ok(fit) => panic!("{:?}", fit.figures),
        Err(wrong) => wrong.0,
    }
}

fn corrected(sheet: &Worksheet, fit: &Fit) -> Worksheet {
    let mut sheet = sheet.clone();
    apply(&mut sheet, fit);
    sheet
}

fn has(fit: &Fit, label: &str) -> bool {
    fit.figures
        .iter()
        .any(|figure| figure.label.contains(label))
}

fn remarks(fit: &Fit) -> String {
    fit.remarks.join("\n")
}

/// A boat on which nobody has looked at heat, its bank large enough to take
/// all the machine gives.
fn unseen() -> Worksheet {
    let mut sheet = demo();
    say(&mut sheet, "bank_capacity_ah", 900.0);
    say(&mut sheet, "run_house_load_a", LOAD_A);
    sheet
}

/// The same boat as it really is.
fn truth(anchor_c: f64, capacity: f64) -> Worksheet {
    let mut truth = unseen();
    say(&mut truth, "alt_anchor_winding_c", anchor_c);
    say(&mut truth, "alt_heat_capacity_factor", capacity);
    truth
}

fn cooling(sheet: &Worksheet) -> f64 {
    Plant::new(&sheet.inputs, LOAD_A).main.cooling
}

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
        for (label, value) in [("Winding at full", anchor_c), ("Heat capacity", capacity)] {
            let figure = fit.figures.iter().find(|figure| figure.label.contains(label));
            let (low, high) = figure.expect("fitted").range;
            prop_assert!((low..=high).contains(&value), "{label} {value} outside {low} to {high}");
        }
    }

    /// One lump that warms by 1 − exp(−t/τ) under a steady current, from a
    /// formula and none of our equations.
    #[test]
    fn another_machine_breaks_nothing(
        rise_k in 5.0..220.0f64,
        minutes in 1.0..60.0f64,
        amps in 5.0..300.0f64,
        lasts in 6u32..90,
        seed in any::<u64>(),
    ) {
        let mut noise = Noise(seed | 1);
        let mut text = String::from("minute amps case air\n");
        for minute in 0..=lasts {
            let air = 28.0 + 0.3 * f64::from(minute);
            let case = air + rise_k * (1.0 - (-f64::from(minute) / minutes).exp()) + noise.normal();
            writeln!(text, "{minute} {amps:.0} {case:.1} {air:.1}").expect("a text");
        }
        check_honest(&unseen(), &text)?;
    }

    /// Any numbers at all.
    #[test]
    fn any_readings_break_nothing(
        sheet in any_sheet(),
        rows in proptest::collection::vec((0.0..5.0f64, 0.0..2000.0f64, -30.0..350.0f64, -30.0..350.0f64), 0..60),
        speed in 300.0..6000.0f64,
    ) {
        let mut minute = 0.0;
        let mut text = String::from("minute;amps;case;air;rpm\n");
        for (step, amps, case, air) in rows {
            minute += step;
            writeln!(text, "{minute:.2};{amps:.1};{case:.1};{air:.1};{speed:.0}").expect("a text");
        }
        check_honest(&sheet.0, &text)?;
    }

    #[test]
    fn any_text_breaks_nothing(text in any::<String>(), nearly in nearly()) {
        for text in [text, nearly] {
            let log = trial::read(&text);
            prop_assert!(log.rows.len() <= trial::log::MOST_ROWS);
            for row in &log.rows {
                prop_assert!(row.minute.is_finite() && row.line >= 1);
            }
            for remark in &log.remarks {
                prop_assert!(remark.ends_with('.'), "{remark}");
            }
            check_honest(&Worksheet::default(), &text)?;
        }
    }
}

/// Texts that look a little like a log.
fn nearly() -> impl Strategy<Value = String> {
    let cell = prop_oneof![
        8 => (0u32..2000).prop_map(|number| number.to_string()),
        4 => (0.0..120.0f64).prop_map(|number| format!("{number:.1}").replace('.', ",")),
        2 => (0u32..30, 0u32..70).prop_map(|(hours, minutes)| format!("{hours}:{minutes:02}")),
        1 => "\\PC{0,6}",
        1 => prop::sample::select(vec!["", "-", "\"", "°C", "45 °C", "113 °F", "1e999", "NaN", "minute", "air temp", "#", "\u{feff}"])
            .prop_map(str::to_string),
    ];
    let line = proptest::collection::vec(cell, 0..8);
    let separator = prop::sample::select(vec![",", ";", "\t", " ", "; "]);
    (proptest::collection::vec(line, 0..30), separator).prop_map(|(lines, separator)| {
        let lines: Vec<String> = lines.iter().map(|cells| cells.join(separator)).collect();
        lines.join("\n")
    })
}

/// A refusal in a sentence, or finite figures inside their ranges, residuals
/// as stated, and a worksheet whose report is made of numbers.
fn check_honest(sheet: &Worksheet, text: &str) -> Result<(), TestCaseError> {
    let fit = match trial::fit(sheet, &trial::read(text)) {
        Ok(fit) => fit,
        Err(wrong) => {
            prop_assert!(
                wrong.0.ends_with(['.', '?']) && wrong.0.len() > 30,
                "{wrong}"
            );
            return Ok(());
        }
    };
    for figure in &fit.figures {
        let numbers = [
            figure.value,
            figure.deviation,
            figure.range.0,
            figure.range.1,
        ];
        prop_assert!(numbers.iter().all(|x| x.is_finite()), "{figure:?}");
        prop_assert!(figure.deviation >= 0.0, "{figure:?}");
        prop_assert!(
            figure.range.0 <= figure.value && figure.value <= figure.range.1,
            "{figure:?}"
        );
    }
    let squares = fit
        .series
        .iter()
        .map(|at| (at.modelled_c - at.measured_c).powi(2));
    let rms = (squares.sum::<f64>() / fit.series.len() as f64).sqrt();
    prop_assert!(
        (rms - fit.residual_k).abs() < 1e-6,
        "{rms} is not {}",
        fit.residual_k
    );
    let hot_a = report(&corrected(sheet, &fit)).machine.hot_a;
    prop_assert!(hot_a.is_finite());
    Ok(())
}

#[test]
fn figures_taken_over_are_marked_measured_and_move_the_hot_current() {
    let fit = fitted(&unseen(), &log_of(&truth(175.0, 1.3), HALF_AN_HOUR, 7));
    let after = corrected(&unseen(), &fit);
    for name in [
        "alt_anchor_winding_c",
        "alt_heat_capacity_factor",
        "space_hot_c",
        "space_basis",
    ] {
        let key = Key::named(name).expect("a key");
        assert_eq!(after.knowledge(key), Knowledge::Measured, "{name}");
    }
    let (before, after) = (
        report(&unseen()).machine.hot_a,
        report(&after).machine.hot_a,
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
            trace.sample(300.0).temperatures.body_c,
            report(&sheet).machine.hot_a,
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
    assert!(has(&fit, "Winding at full field") && !has(&fit, "Heat capacity"));
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
    assert!(has(&fit, "Heat capacity") && !has(&fit, "Winding at full field"));
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
    let hot_a = |sheet: &Worksheet| report(sheet).machine.hot_a;
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
        remarks(&fit).contains("may have held it back"),
        "{}",
        remarks(&fit)
    );
}

/// Twenty rows, changed here and there.
fn rows(of: impl Fn(f64) -> [f64; 5]) -> String {
    let row = |minute: u32| {
        of(f64::from(minute))
            .map(|figure| format!("{figure:.2}"))
            .join(";")
    };
    (0..20).map(row).collect::<Vec<_>>().join("\n")
}

#[test]
fn logs_that_say_nothing_are_refused_in_words() {
    let sheet = unseen();
    let usual = |m: f64| {
        [
            m,
            60.0,
            30.0 + 70.0 * (1.0 - (-m / 10.0).exp()),
            30.0,
            1400.0,
        ]
    };
    assert!(trial::fit(&sheet, &trial::read(&rows(usual))).is_ok());
    let with = |at: usize, change: fn(f64) -> f64| {
        rows(move |m| {
            let mut row = usual(m);
            row[at] = change(m);
            row
        })
    };
    for (text, said) in [
        (String::new(), "at least 6"),
        ("0;60;30\n5;60;40\n10;60;50".to_string(), "at least 6"),
        (
            rows(|m| {
                let mut row = usual(m);
                row[0] /= 4.0;
                row
            }),
            "at least 8 min",
        ),
        (with(0, |m| (m - 10.0).abs()), "times have to rise"),
        (
            "minute;amps;air\n".to_string() + &rows(usual),
            "temperature of the case is missing",
        ),
        (
            "minute;x;case;air\n".to_string() + &rows(usual),
            "amps are missing",
        ),
        (with(1, |_| 0.0), "all nought"),
        (with(4, |m| 1000.0 + 40.0 * m), "speed wandered"),
        (with(4, |_| 100.0), "not the speed of an engine"),
        (with(2, |_| 33.0), "neither warmed up nor stood above"),
        (
            log_of(&truth(150.0, 3.0), HALF_AN_HOUR, 1),
            "far too slowly",
        ),
        (with(1, |_| 160.0), "cooling outside anything plausible"),
        (
            with(2, |m| if m > 10.0 { 40.0 } else { 50.0 + 6.0 * m }),
            "cannot follow these readings",
        ),
    ] {
        let wrong = refusal(&sheet, &text);
        assert!(wrong.contains(said), "{said}: {wrong}");
    }
}

#[test]
fn the_sample_is_understood_whole() {
    let fit = fitted(&Worksheet::default(), trial::SAMPLE);
    assert!(fit.residual_k < 2.0, "{} K", fit.residual_k);
    for label in [
        "Cooling",
        "Winding at full field",
        "Heat capacity",
        "Hot, near",
    ] {
        assert!(has(&fit, label), "{label}: {:?}", fit.figures);
    }
}
