//! Logs that say nothing are refused in words.

use super::*;
use ampwright_core::decision::calibration;

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
    assert!(calibration::fit(&sheet, &calibration::read(&rows(usual))).is_ok());
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
        (with(1, |_| 0.0), "amps are zero"),
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
