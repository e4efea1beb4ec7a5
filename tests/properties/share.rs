//! Whatever a user calls things, the texts to take along stay what they are.

use ampwright_core::analysis::year;
use ampwright_core::boat::{Worksheet, demo};
use ampwright_core::decision::arrangements::{Comparison, compare};
use ampwright_core::decision::calibration;
use ampwright_core::exchange::to_link;
use ampwright_core::exchange::{
    Style, arrangements_csv, day_csv, differences, differences_text, forum_text, outcomes,
    output_csv, run_csv, year_csv,
};
use ampwright_core::report::{Report, report};
use ampwright_core::units::Reader;
use proptest::prelude::*;
use std::sync::LazyLock;

use crate::draw::any_sheet;

static DEMO: LazyLock<Report> = LazyLock::new(|| report(&demo()));
static WAYS: LazyLock<Comparison> = LazyLock::new(|| compare(&demo()));

/// Names that try to be mark-up, formulas or lines of their own.
fn name() -> impl Strategy<Value = String> {
    let word = prop_oneof![
        "\\PC{1,20}",
        any::<String>(),
        proptest::sample::select(vec![
            "**", "__", "`", "~~", "# ", "\n", "\r\n\r\n", "- ", "> ", "[/b]", "[url=x]",
            "[/list]", "](x)", "![", "<b>", "<script>", "</p>", "=1+1", "@SUM(1)", "+", "-", "\t",
            "\"", "\",", ",", "'", "|", "\\", "&lt;", "\u{202e}",
        ])
        .prop_map(str::to_string),
    ];
    proptest::collection::vec(word, 0..6).prop_map(|words| words.concat())
}

fn named(name: &str) -> Worksheet {
    let mut sheet = demo();
    sheet.name = name.to_string();
    sheet.loads[0].name = name.to_string();
    sheet
}

/// Markdown signs that no backslash takes back.
fn bare(text: &str) -> usize {
    let mut escaped = false;
    let mut count = 0;
    for c in text.chars() {
        let sign = "*_`~#<>[]|&!\\$^={}@".contains(c);
        count += usize::from(sign && !escaped && c != '\\');
        escaped = c == '\\' && !escaped;
    }
    count
}

/// The cells of a CSV text, after RFC 4180.
fn cells(text: &str) -> Vec<Vec<String>> {
    let mut rows = vec![vec![String::new()]];
    let mut quoted = false;
    let mut chars = text.chars().peekable();
    while let Some(c) = chars.next() {
        let cell = rows
            .last_mut()
            .and_then(|row| row.last_mut())
            .expect("a cell");
        match c {
            '"' if quoted && chars.peek() == Some(&'"') => cell.extend(chars.next()),
            '"' if quoted || cell.is_empty() => quoted = !quoted,
            c if quoted => cell.push(c),
            ',' => rows.last_mut().expect("a row").push(String::new()),
            '\r' => {
                assert_eq!(chars.next(), Some('\n'));
                rows.push(vec![String::new()]);
            }
            c => {
                assert!(c != '\n' && c != '"', "bare {c:?} in {text}");
                cell.push(c);
            }
        }
    }
    assert_eq!(
        rows.pop(),
        Some(vec![String::new()]),
        "ends with a line end"
    );
    rows
}

fn regular(text: &str) {
    let rows = cells(text);
    assert!(rows.len() > 1);
    for row in &rows {
        assert_eq!(row.len(), rows[0].len(), "{row:?}");
        for cell in row {
            let formula = cell
                .trim_start_matches(' ')
                .starts_with(['=', '+', '-', '@', '\t', '\r', '\n']);
            assert!(!formula || cell.parse::<f64>().is_ok(), "{cell:?}");
        }
    }
}

proptest! {
    #![proptest_config(crate::cases(1000))]

    #[test]
    fn a_name_is_never_mark_up(name in name()) {
        let sheet = named(&name);
        let link = format!("https://boat.example/#{}", to_link(&sheet));
        let usual = named("Turnstone");
        for style in Style::ALL {
            let text = forum_text(&sheet, &DEMO, None, &link, style);
            let plain = forum_text(&usual, &DEMO, None, &link, style);
            prop_assert_eq!(text.lines().count(), plain.lines().count(), "{}", text);
            let heading = text.lines().next().unwrap_or_default();
            match style {
                Style::Plain => {}
                Style::Markdown => prop_assert_eq!(bare(heading), 4, "{}", heading),
                Style::BbCode => {
                    prop_assert_eq!(text.matches('[').count(), plain.matches('[').count());
                    prop_assert_eq!(text.matches(']').count(), plain.matches(']').count());
                }
            }
            prop_assert!(text.contains(&link));
            let changed = differences_text(&differences(&usual, &sheet, &Reader::METRIC), style);
            let other = differences_text(&differences(&usual, &named("Other"), &Reader::METRIC), style);
            if !name.is_empty() && name != "Turnstone" {
                prop_assert_eq!(changed.lines().count(), other.lines().count());
                prop_assert_eq!(bare(&changed) == bare(&other) || style != Style::Markdown, true);
            }
        }
    }

    #[test]
    fn a_name_is_never_a_formula(name in name()) {
        // An arrangement that nobody has named goes by its kind.
        prop_assume!(!name.is_empty());
        let mut ways = WAYS.clone();
        ways.outcomes[0].arrangement.name = name.clone();
        let text = arrangements_csv(&ways);
        regular(&text);
        let found = cells(&text)[1][0].clone();
        prop_assert!(found == name || found == format!("'{name}"), "{}", found);
    }

    #[test]
    fn nothing_changed_only_when_alike(one in any_sheet(), other in any_sheet()) {
        prop_assert_eq!(differences(&one.0, &one.0, &Reader::METRIC), []);
        if to_link(&one.0) != to_link(&other.0) {
            prop_assert!(!differences(&one.0, &other.0, &Reader::METRIC).is_empty());
        }
    }
}

/// Alike boats differ in no result; hotter air shows what it costs.
#[test]
fn results_differ_where_boats_do() {
    let (cool, mut hot) = (demo(), demo());
    assert_eq!(
        outcomes(&report(&cool), &report(&cool), &Reader::METRIC),
        []
    );
    hot.name = "Another name alone".into();
    assert_eq!(outcomes(&report(&cool), &report(&hot), &Reader::METRIC), []);
    hot.inputs.space.outside_c += 10.0;
    let found = outcomes(&report(&cool), &report(&hot), &Reader::METRIC);
    let amps = found.iter().find(|one| one.label == "Alternator, hot");
    let amps = amps.expect("hotter air costs amperes");
    let number = |told: &str| -> f64 { told.trim_end_matches(" A").parse().unwrap() };
    assert!(number(&amps.is) < number(&amps.was), "{amps:?}");
    assert!(found.iter().any(|one| one.label == "Engine time a day"));
}

#[test]
fn every_series_is_regular() {
    let year = year(&demo());
    for text in [
        run_csv(&DEMO),
        output_csv(&DEMO),
        year_csv(&year),
        day_csv(&year.months[0].day),
    ] {
        regular(&text);
    }
    assert_eq!(cells(&year_csv(&year)).len(), 13);
    assert_eq!(cells(&day_csv(&year.months[0].day)).len(), 25);
}

/// The sea trial takes the run's table for a log.
#[test]
fn the_run_is_a_log() {
    use calibration::columns::Column;
    let log = calibration::read(&run_csv(&DEMO));
    let series = &DEMO.analyses.run.series;
    assert_eq!(log.rows.len(), series.len());
    for (row, moment) in log.rows.iter().zip(series) {
        for (found, expected) in [
            (Some(row.minute), moment.minute),
            (row.get(Column::Amps), moment.alternator_a),
            (row.get(Column::Case), moment.alternators[0].case_c),
            (row.get(Column::Winding), moment.alternators[0].winding_c),
            (row.get(Column::Air), moment.air_c),
            (row.get(Column::Volts), moment.alternators[0].volts),
        ] {
            let found = found.expect("read");
            assert!(
                (found - expected).abs() <= 0.0005,
                "{found}, not {expected}"
            );
        }
    }
}
