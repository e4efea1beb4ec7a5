//! How sure the answer is: ranges that hold the answer, do not depend on how
//! the reckoning is cut up, and narrow when the right thing is measured.

use ampwright_core::boat::{Key, demo};
use ampwright_core::decision::uncertainty::{Certainty, Choice, Decisions, Range, Uncertainty};
use ampwright_core::exchange::{decisions_json, uncertainty_json};
use ampwright_core::schema::{Confidence, Kind, Spread, Value};
use ampwright_core::units::Reader;
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;
use serde_json::Value as Json;

use crate::draw::any_sheet;
use crate::regulated::regulated;

fn key(name: &str) -> Key {
    Key::named(name).expect("a key")
}

fn certainty(sheet: &Worksheet) -> Certainty {
    let mut sure = Uncertainty::new(sheet);
    sure.step(Uncertainty::RUNS);
    sure.certainty()
}

fn measured(sheet: &Worksheet, key: Key) -> Worksheet {
    let mut measured = sheet.clone();
    measured.know(key, Confidence::Measured);
    measured
}

/// Two boats, the default one and the demo, with their plates read.
fn boats() -> [Worksheet; 2] {
    [regulated(), demo()].map(|mut sheet| {
        sheet.know(key("alt_plate"), Confidence::Measured);
        sheet
    })
}

#[test]
fn the_best_reading_narrows_more_than_an_idle_one() {
    let of: [fn(Certainty) -> Range; 2] = [|c| c.engine_h, |c| c.hot_a];
    for sheet in boats() {
        for of in of {
            let before = of(certainty(&sheet));
            let best = before.readings.first().expect("something to read");
            let idle = key("eng_warm_up_min");
            assert!(before.readings.iter().all(|reading| reading.key != idle));
            let after = of(certainty(&measured(&sheet, best.key)));
            let after_idle = of(certainty(&measured(&sheet, idle)));
            let (gain, idle_gain) = (before.width - after.width, before.width - after_idle.width);
            assert!(gain > 0.05 * before.width, "{}: {gain}", best.what);
            assert!(gain > 3.0 * idle_gain, "{gain} against {idle_gain}");
            // What was promised is about what comes of it.
            let miss = (after.width - best.width).abs();
            assert!(miss < 0.15 * before.width, "{} of {}", miss, before.width);
        }
    }
}

/// Cold or warm, each as likely: what reading the plate promises is the mean
/// of what either outcome leaves.
#[test]
fn a_plate_is_worth_the_mean_of_its_outcomes() {
    let blank = regulated();
    let before = certainty(&blank).hot_a;
    let plate = key("alt_plate");
    let promise = before.readings.iter().find(|reading| reading.key == plate);
    let widths = [0, 1].map(|option| {
        let mut sheet = blank.clone();
        sheet
            .state(plate, Value::Choice(option))
            .expect("an option");
        sheet.know(plate, Confidence::Measured);
        certainty(&sheet).hot_a.width
    });
    let mean = 0.5 * (widths[0] + widths[1]);
    let promised = promise.expect("it matters").width;
    // Eight groups of 64 runs know their widths to a tenth each, the mean to 4 %.
    assert!(
        (mean - promised).abs() < 0.09 * mean,
        "{mean}, {promised} promised"
    );
    assert!(mean < 0.9 * before.width, "{mean} of {}", before.width);
}

/// Everything read off an instrument leaves less than a third of the range.
#[test]
fn a_measured_boat_is_surer() {
    for sheet in boats() {
        let before = certainty(&sheet);
        let mut all = sheet.clone();
        for key in Key::all() {
            all.know(key, Confidence::Measured);
        }
        let after = certainty(&all);
        assert!(after.engine_h.width < before.engine_h.width / 3.0);
        assert!(after.hot_a.width < before.hot_a.width / 3.0);
    }
}

/// A plausible range holds the usual figure and lies within what is accepted.
#[test]
fn spreads_are_about_what_is_usual() {
    let blank = regulated();
    for key in Key::all() {
        let (spec, name) = (key.spec(), key.name());
        match spec.spread {
            Some(Spread::Between(low, high)) => {
                let usual = blank.figure(key).expect("a figure");
                let (least, most) = spec.range().expect("a number");
                assert!(least <= low && high <= most, "{name}");
                assert!((low..=high).contains(&usual), "{name}: {usual}");
                assert!(low < high, "{name}");
            }
            Some(Spread::Percent(off) | Spread::By(off)) => assert!(off > 0.0, "{name}"),
            Some(Spread::Either) => assert!(matches!(spec.kind, Kind::Choice { .. }), "{name}"),
            None => {}
        }
    }
}

/// JSON holds no number that is not finite, it writes `null`.
fn sound(certainty: &Certainty, sheet: &Worksheet) -> Result<(), TestCaseError> {
    let json = uncertainty_json(certainty);
    for of in ["engine_h", "hot_a"] {
        let range = &json[of];
        let number = |name: &str| range[name].as_f64();
        for name in ["width", "never_pct"] {
            prop_assert!(number(name).is_some_and(|x| x >= 0.0), "{of} {name}");
        }
        let ends = ["low", "middle", "high"].map(|name| number(name).unwrap_or(f64::INFINITY));
        prop_assert!(ends[0] <= ends[1] && ends[1] <= ends[2], "{of} {ends:?}");
        prop_assert!(ends[0] >= 0.0, "{of} {ends:?}");
        let never = number("never_pct").unwrap_or_default();
        prop_assert!(ends[2].is_finite() || never > 5.0, "{of} {ends:?} {never}");
        for reading in range["readings"].as_array().into_iter().flatten() {
            let known = Key::named(reading["key"].as_str().unwrap_or_default());
            prop_assert!(known.is_some_and(|key| key.applies(&sheet.inputs)));
            prop_assert!(reading["share_pct"].as_f64().is_some());
            prop_assert!(reading["width"].as_f64() <= number("width"));
        }
        let words = range["sentence"].as_str().unwrap_or_default();
        prop_assert!(!words.contains("NaN") && !words.contains("inf"), "{words}");
        prop_assert!(words != Json::Null);
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(100))]

    #[test]
    fn every_worksheet_has_a_finite_range(drawn in any_sheet()) {
        let mut sure = Uncertainty::new(&drawn.0);
        sure.step(16);
        sound(&sure.certainty(), &drawn.0)?;
    }

    /// The figures as they stand give what the report says.
    #[test]
    fn the_range_is_about_the_report(drawn in any_sheet()) {
        let certainty = Uncertainty::new(&drawn.0).certainty();
        let report = report(&drawn.0);
        prop_assert_eq!(certainty.engine_h.stands, report.analyses.day.engine_hours);
        prop_assert_eq!(certainty.hot_a.stands, Some(report.analyses.output.hot_a));
    }
}

/// What an arrangement and a setting hang on is a sentence, and an input of the boat.
fn decided(decisions: &Decisions, sheet: &Worksheet) -> Result<(), TestCaseError> {
    let json = decisions_json(decisions, &Reader::METRIC);
    let settings = json["settings"].as_array().into_iter().flatten();
    let choice = Some(&json["arrangement"]).filter(|choice| choice.is_object());
    for one in settings.chain(choice) {
        let text = one["text"].as_str().unwrap_or_default();
        prop_assert!(text.ends_with('.'), "{one}");
        prop_assert!(!text.contains("NaN") && !text.contains("inf"), "{text}");
        let key = one["reading"]["key"].as_str();
        let applies = |key: Key| key.applies(&sheet.inputs);
        let known = key.is_none_or(|key| Key::named(key).is_some_and(applies));
        prop_assert!(known, "{key:?}");
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(20))]

    #[test]
    fn every_worksheet_has_decisions_or_none(drawn in any_sheet()) {
        let mut choice = Choice::new(&drawn.0);
        for _ in 0..20 {
            choice.step();
        }
        decided(&choice.decisions(), &drawn.0)?;
    }

    #[test]
    fn it_does_not_matter_how_it_is_cut(drawn in any_sheet(), piece in 1..60usize) {
        let mut whole = Uncertainty::new(&drawn.0);
        whole.step(60);
        let mut pieces = Uncertainty::new(&drawn.0);
        while pieces.runs() < 60 {
            pieces.step(piece.min(60 - pieces.runs()));
        }
        prop_assert_eq!(whole.certainty(), pieces.certainty());
    }
}
