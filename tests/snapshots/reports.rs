//! Reports of a few worksheets, without their long series.

use ampwright_core::Worksheet;
use ampwright_core::boat::{Key, RegulatorKind, demo};
use ampwright_core::exchange::{Style, differences, differences_text, forum_text};
use ampwright_core::exchange::{report_json, to_json, to_link};
use ampwright_core::report::report;
use ampwright_core::schema::Value;
use ampwright_core::text::sentence;
use ampwright_core::units::Reader;
use serde_json::Value as Json;

use crate::round::rounded;

/// The report less what is only drawn.
fn summary(sheet: &Worksheet) -> Json {
    let mut json = report_json(
        sheet,
        &report(sheet),
        &ampwright_core::units::Reader::METRIC,
    );
    for (part, long) in [("run", "series"), ("output", "by_engine_rpm")] {
        let rows = json[part][long].as_array().map_or(0, Vec::len);
        json[part][long] = format!("{rows} rows").into();
    }
    rounded(json)
}

fn pretty(json: &Json) -> String {
    serde_json::to_string_pretty(json).expect("JSON writes")
}

/// A default boat with some choices and figures.
fn boat(said: &[(&str, Value)]) -> Worksheet {
    let mut sheet = Worksheet::default();
    for (name, value) in said {
        let key = Key::named(name).expect("a key");
        sheet.state(key, *value).expect("in range");
    }
    sheet
}

#[test]
fn demo_report() {
    insta::assert_snapshot!(pretty(&summary(&demo())));
}

#[test]
fn demo_sentence() {
    insta::assert_snapshot!(sentence(&demo(), &report(&demo()), &Reader::METRIC));
}

/// As it would stand in each kind of forum, with a name that tries to be more.
#[test]
fn demo_forum() {
    let mut sheet = demo();
    sheet.name = "**Turn[b]stone** <script>".to_string();
    let mut changed = sheet.clone();
    changed.name = "Turnstone_2".to_string();
    changed.inputs.reg.kind = RegulatorKind::Internal;
    let (report, change) = (
        report(&changed),
        differences(&sheet, &changed, &Reader::METRIC),
    );
    let texts: Vec<String> = Style::ALL
        .into_iter()
        .map(|style| {
            let text = forum_text(
                &sheet,
                &report,
                None,
                "https://boat.example/#v=1&end",
                style,
            );
            format!(
                "== {} ==\n{text}\n{}",
                style.word(),
                differences_text(&change, style)
            )
        })
        .collect();
    insta::assert_snapshot!(texts.join("\n"));
}

#[test]
fn demo_link() {
    insta::assert_snapshot!(to_link(&demo()));
}

#[test]
fn demo_file() {
    insta::assert_snapshot!(pretty(&to_json(&demo())));
}

#[test]
fn default_report() {
    insta::assert_snapshot!(pretty(&summary(&Worksheet::default())));
}

#[test]
fn converter_report() {
    let sheet = boat(&[
        ("way_kind", Value::Choice(1)),
        ("way_converter_a", Value::Number(30.0)),
    ]);
    insta::assert_snapshot!(pretty(&summary(&sheet)));
}

#[test]
fn unwatched_report() {
    let sheet = boat(&[
        ("reg_kind", Value::Choice(1)),
        ("alt_rated_a", Value::Number(150.0)),
    ]);
    insta::assert_snapshot!(pretty(&summary(&sheet)));
}
