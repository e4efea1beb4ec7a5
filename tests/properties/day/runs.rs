//! A bank that holds no day gets several runs, and no more than needed.

use ampwright_core::analysis::engine_day::daily_trace;
use ampwright_core::report;
use ampwright_core::simulation::run::{Fineness, charge};
use ampwright_core::text::sentence;
use ampwright_core::units::Reader;

use crate::day::boats::{boat, finding, plant_and_need, put};

#[test]
fn a_small_bank_gets_several_runs() {
    // 25 A of the 50 A·h bank's limit, held by the data link.
    let sheet = boat(&[("bank_capacity_ah", "50"), ("reg_link", "limits")]);
    let report = report(&sheet);
    let day = report.analyses.day;
    assert_eq!((day.runs, day.trouble), (3, None));
    // Each begins at or above the lowest wanted, 10 %; two would not.
    assert!(day.from_pct.is_some_and(|pct| pct >= 10.0));
    let each = day.run_hours.expect("a run");
    assert!((day.engine_hours.expect("hours") - 3.0 * each).abs() < 1e-9);
    let said = sentence(&sheet, &report, &Reader::METRIC);
    assert!(said.contains("in 3 runs of"), "{said}");
    assert!(finding(&report, "several_runs_a_day").is_some_and(|text| text.contains("3 times")));
    assert_eq!(finding(&report, "day_below_window"), None);
}

/// Two runs of a bank of 60 A·h would begin below its 10 %, three do not; and no
/// more runs than needed.
#[test]
fn no_more_runs_than_the_window_asks_for() {
    for capacity_ah in [30.0, 45.0, 60.0, 80.0, 95.0, 110.0] {
        let mut sheet = boat(&[("reg_link", "limits")]);
        put(&mut sheet, "bank_capacity_ah", capacity_ah);
        let (plant, need) = plant_and_need(&sheet);
        let found = daily_trace(&plant, &need).expect("a daily run");
        assert!(found.runs > 1, "{capacity_ah} A·h");
        assert!(found.run.from >= need.low - 1e-4, "{capacity_ah} A·h");
        // One run fewer takes more at once: from the lowest wanted it covers
        // too little of a day.
        let fewer = f64::from(found.runs - 1);
        let trace = charge(&plant, need.low, need.to, 86_400.0, &Fineness::USUAL);
        let seconds = trace.reaches(need.to).expect("reached");
        let covers_ah = (need.to - need.low) * capacity_ah + plant.load_a * seconds / 3600.0;
        assert!(fewer * covers_ah < need.need_ah, "{capacity_ah} A·h");
    }
}
