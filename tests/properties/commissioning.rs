//! The commissioning list and its form: names that last, the reader's units, and a
//! form that the sea trial reads.

use std::collections::BTreeSet;

use ampwright_core::boat::Worksheet;
use ampwright_core::decision::calibration;
use ampwright_core::exchange::{Remark, open_link, read_json, to_json};
use ampwright_core::guidance::commissioning::{StepCode, all_ids, form};
use ampwright_core::guidance::settings::{GroupCode, SettingCode};
use ampwright_core::guidance::{commissioning, settings};
use ampwright_core::report;
use ampwright_core::schema::Excerpt;
use ampwright_core::text;
use ampwright_core::text::headings::READINGS;
use ampwright_core::text::remarks::remark;
use ampwright_core::units::Reader;

/// Every stage, step, setting and group has a name of its own and is found by it.
#[test]
fn names_are_their_own() {
    for code in GroupCode::ALL {
        assert_eq!(GroupCode::named(code.name()), Some(*code));
    }
    for code in SettingCode::ALL {
        assert_eq!(SettingCode::named(code.name()), Some(*code));
    }
    for code in StepCode::ALL {
        assert_eq!(StepCode::named(code.name()), Some(*code));
    }
}

/// Whoever wants °F finds no °C on the sheet, and no decimal point who wants a comma.
#[test]
fn a_reader_gets_his_units_and_decimals() {
    let reader = &Reader::US.with_decimal_comma(true);
    for link in [
        "v=2&end",
        "v=2&bank_chemistry=flooded&reg_kind=internal&shore_charger_a=40&end",
        "v=2&way_kind=converter&end",
    ] {
        let sheet = open_link(link).expect("a link").sheet;
        let report = report(&sheet);
        let mut all = Vec::new();
        for group in settings(&sheet, &report).groups {
            let of = group.code();
            all.extend(group.settings.iter().flat_map(|setting| {
                let label = text::settings::label(of, setting, reader);
                let value = text::settings::value(setting, reader);
                [
                    label,
                    value,
                    text::settings::reason(&setting.reason, reader),
                ]
            }));
        }
        for stage in commissioning(&sheet, &report) {
            for step in &stage.steps {
                all.push(text::commissioning::text(step, reader));
                all.extend(
                    step.stop
                        .iter()
                        .map(|stop| text::commissioning::stop(stop, reader)),
                );
            }
        }
        for said in all {
            let kelvin = said
                .split(' ')
                .any(|word| word.trim_end_matches(['.', ',', ';']) == "K");
            assert!(!said.contains("°C") && !kelvin, "{said}");
            let digits: Vec<char> = said.chars().collect();
            let point = digits.windows(3).any(|three| {
                three[0].is_ascii_digit() && three[1] == '.' && three[2].is_ascii_digit()
            });
            assert!(!point, "{said}");
        }
    }
}

#[test]
fn ids_are_unique_and_plain() {
    let ids: Vec<&str> = all_ids().collect();
    assert_eq!(ids.iter().collect::<BTreeSet<_>>().len(), ids.len());
    for id in ids {
        let plain = |c: char| c.is_ascii_lowercase() || c == '_';
        assert!(id.chars().all(plain) && id.len() <= 16, "{id}");
    }
}

/// The sea trial reads the form as it is headed and learns from it.
#[test]
fn the_form_feeds_the_sea_trial() {
    let sheet = Worksheet::default();
    let report = report(&sheet);
    let form = form(&sheet, &report);
    let mut log = READINGS.join("\t");
    for row in &form.rows {
        let cells = [
            Some(row.minute),
            row.alternator_a,
            row.case_c,
            row.air_c,
            Some(form.engine_rpm),
            row.volts,
        ];
        let cells = cells.map(|cell| format!("{:.2}", cell.expect("within the run")));
        log.push('\n');
        log.push_str(&cells.join("\t"));
    }
    let read = calibration::read(&log);
    assert_eq!(read.remarks, []);
    assert_eq!(read.rows.len(), form.rows.len());
    // What was reckoned teaches it what it was reckoned with.
    let fit = calibration::fit(&sheet, &read).expect("a fit");
    let mut after = sheet.clone();
    calibration::apply(&mut after, &fit);
    let (before_a, after_a) = (
        report.analyses.output.hot_a,
        ampwright_core::report(&after).analyses.output.hot_a,
    );
    assert!(
        (after_a / before_a - 1.0).abs() < 0.03,
        "{before_a} became {after_a}"
    );
}

#[test]
fn an_unknown_tick_is_dropped_with_a_remark() {
    let mut json = to_json(&Worksheet::default());
    json["done"] = serde_json::json!(["fuses", "paint_the_hull", 7]);
    let reading = read_json(&json.to_string()).expect("a file");
    assert_eq!(reading.sheet.done, ["fuses"]);
    let unknown = |step: &str| Remark::UnknownTick {
        step: Excerpt::of(step),
    };
    assert_eq!(reading.remarks, [unknown("paint_the_hull"), unknown("")]);
    assert!(remark(&reading.remarks[0]).contains("paint_the_hull"));
}
