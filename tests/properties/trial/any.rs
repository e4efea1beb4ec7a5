//! Any readings and any text: a finite result or a refusal.

use super::*;
use crate::draw::any_sheet;
use ampwright_core::decision::calibration;
use ampwright_core::text::calibration::log_remarks;

proptest! {
    #![proptest_config(crate::cases(100))]

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
            let log = calibration::read(&text);
            prop_assert!(log.rows.len() <= calibration::log::MOST_ROWS);
            for row in &log.rows {
                prop_assert!(row.minute.is_finite() && row.line >= 1);
            }
            for remark in log_remarks(&log.remarks) {
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
    let fit = match calibration::fit(sheet, &calibration::read(text)) {
        Ok(fit) => fit,
        Err(wrong) => {
            let words = refusal_sentence(&wrong);
            prop_assert!(words.ends_with(['.', '?']) && words.len() > 30, "{words}");
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
    let hot_a = report(&corrected(sheet, &fit)).analyses.output.hot_a;
    prop_assert!(hot_a.is_finite());
    Ok(())
}
