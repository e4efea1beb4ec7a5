//! What version 1 of links and files means, for ever.
//!
//! `version1/defaults.txt` holds every input of version 1: name, what it takes,
//! default, and how well a figure counts as known when a link does not say. A
//! link leaves out whatever is at its default, so a version 1 link must still
//! open with these values, whatever the defaults are now.
//!
//! `version1/links.txt` holds links as they were sent, and the same worksheets
//! as files. Neither file is ever edited. What the links give in hours and amps
//! is a REGRESSION VALUE OF OUR OWN OUTPUT, kept as a snapshot.

use std::fmt::Write;

use ampwright_core::boat::Section;
use ampwright_core::boat::{Key, LoadRow};
use ampwright_core::exchange::{open_link, read_file, read_json, to_json, to_link};
use ampwright_core::report;
use ampwright_core::schema::{FieldSpec, Kind, Value};

const DEFAULTS: &str = include_str!("version1/defaults.txt");
const LINKS: &str = include_str!("version1/links.txt");

/// What to do about a difference.
const ADVICE: &str = "\
A link of version 1 leaves out what is at its default, so links already sent would now mean another boat. \
Either put it back as it was, or state the old value in `keep_meaning` of core/src/exchange/version1.rs. \
A range may grow and options may be added at the end.";

/// Every input and load column as it is now, with its name and what a link of
/// version 1 that leaves it out means.
fn now() -> Vec<(String, &'static FieldSpec, Value)> {
    let bare = open_link("v=1&end").expect("a link").sheet;
    let inputs = Key::all().map(|key| (key.name(), key.spec(), bare.inputs.get(key)));
    let columns = LoadRow::FIELDS.iter().map(|field| {
        let name = format!("load {}", field.name);
        (name, &field.spec, field.spec.default())
    });
    inputs.chain(columns).collect()
}

/// What of an old line no longer holds; none when all does.
fn broken(old: &str, spec: &FieldSpec, meant: Value) -> Option<&'static str> {
    let parts: Vec<&str> = old.split(" | ").map(str::trim).collect();
    let [_, takes, default, usual] = parts[..] else {
        return Some("cannot be read");
    };
    let takes_all = match (spec.kind, takes.strip_suffix(" or empty")) {
        (Kind::Choice { options, .. }, None) => takes
            .split(' ')
            .enumerate()
            .all(|(at, key)| options.get(at).is_some_and(|option| option.key == key)),
        (Kind::Number { low, high, .. }, None) | (Kind::Optional { low, high, .. }, _) => takes
            .trim_end_matches(" or empty")
            .split_once(" to ")
            .is_some_and(|(was_low, was_high)| {
                low <= was_low.parse().expect("a number")
                    && high >= was_high.parse().expect("a number")
            }),
        _ => false,
    };
    // What was worked out when left empty may be stated as that figure.
    let worked_out = default.is_empty() && meant != Value::Absent;
    if default != spec.write(meant) && !worked_out {
        Some("its default has changed")
    } else if usual != spec.usual.word() {
        Some("how well it counts as known has changed")
    } else if !takes_all {
        Some("it no longer takes all that it took")
    } else {
        None
    }
}

#[test]
fn defaults_stay() {
    let now = now();
    let mut wrong = String::new();
    for old in DEFAULTS.lines().filter(|line| !line.starts_with('#')) {
        let name = old.split(" | ").next().unwrap_or_default();
        let found = now.iter().find(|(now, ..)| now == name);
        let why = found.map_or(Some("it is gone"), |(_, spec, meant)| {
            broken(old, spec, *meant)
        });
        if let Some(why) = why {
            let _ = writeln!(wrong, "  {old}: {why}.");
        }
    }
    assert!(
        wrong.is_empty(),
        "Of version 1 this no longer holds:\n{wrong}{ADVICE}"
    );
}

/// Title, link and file of each frozen worksheet.
fn frozen() -> Vec<[&'static str; 3]> {
    LINKS
        .split("\n\n")
        .map(|block| block.lines().filter(|line| !line.starts_with("##")))
        .map(|mut lines| std::array::from_fn(|_| lines.next().expect("title, link, file")))
        .collect()
}

#[test]
fn links_mean_what_they_meant() {
    for [title, link, file] in frozen() {
        let opened = open_link(link).expect(title);
        assert!(opened.whole, "{title}: {link}");
        assert_eq!(opened.remarks, [], "{title}: {link}");
        let readings = read_file(file).expect(title);
        let [reading] = &readings[..] else {
            panic!("{title}: not one worksheet")
        };
        assert_eq!(reading.remarks, [], "{title}");
        assert_eq!(
            opened.sheet, reading.sheet,
            "{title}: link and file no longer say the same. {ADVICE}"
        );
        let again = open_link(&to_link(&opened.sheet)).expect(title);
        assert_eq!(again.sheet, opened.sheet, "{title}");
        let filed = read_json(&to_json(&opened.sheet).to_string()).expect(title);
        assert_eq!(filed.sheet, opened.sheet, "{title}");
    }
}

/// Regression values: a change means that the reckoning changed, and belongs
/// under "Results changed".
#[test]
fn frozen_links_results() {
    let lines: Vec<String> = frozen()
        .into_iter()
        .map(|[title, link, _]| {
            let report = report(&open_link(link).expect(title).sheet);
            let hours = report.analyses.day.engine_hours;
            let hours = hours.map_or("never".to_string(), |hours| format!("{hours:.3} h"));
            format!(
                "{}: engine {hours} a day, hot {:.2} A",
                title.trim_start_matches("# "),
                report.analyses.output.hot_a
            )
        })
        .collect();
    insta::assert_snapshot!(lines.join("\n"));
}

/// A worksheet of about twenty inputs and no loads fits in 300 characters.
#[test]
fn a_typical_link_is_short() {
    let mut sheet = ampwright_core::boat::demo();
    sheet.name = "Turnstone".to_string();
    sheet.loads.clear();
    assert_eq!(sheet.known.count(), 19);
    let link = to_link(&sheet);
    assert!(link.len() <= 300, "{} characters: {link}", link.len());
}
