//! Whether the tables hold together: every piece and condition that a line
//! names is there, and nothing of their own signs is left in what is said.

use crate::boat::{Worksheet, demo};
use crate::report::report;
use crate::working::table::{TABLES, cut, every, find, row};
use crate::working::{workings, workings_at};

/// Texts that come from the boat itself.
const OWN: &[&str] = &["limit", "clock", "rows", "nights", "trouble"];

#[test]
fn what_a_line_names_is_there() {
    for line in TABLES.iter().flat_map(|table| table.text.lines()) {
        for piece in line.split('{').skip(1) {
            let (name, sign, _) = cut(piece, b"?}");
            let name = name.trim_start_matches('!');
            assert!(sign > 0, "{line}");
            assert!(OWN.contains(&name) || find(name).is_some(), "{name}");
        }
        assert_eq!(line.matches('{').count(), line.matches('}').count());
    }
}

#[test]
fn links_and_sources_are_there() {
    for id in every(false).into_iter().chain(every(true)) {
        let (entry, _) = row(id).expect("a working");
        let source = format!("@{}", &entry.field(3)[..1]);
        assert!(find(&source).is_some(), "{id}");
        assert!(!entry.words().is_empty(), "{id}");
    }
    for line in TABLES.iter().flat_map(|table| table.text.lines()) {
        let fields: Vec<&str> = line.split('|').collect();
        if let [name, _, _, link] = fields[..] {
            assert!(find(link).is_some(), "{name} is {link}");
        }
    }
}

#[test]
fn no_signs_of_the_tables_are_left() {
    for sheet in [Worksheet::default(), demo()] {
        let report = report(&sheet);
        let mut all = workings(&sheet, &report);
        all.extend(workings_at(&sheet, &report, 10.0));
        for working in all {
            let formula = [working.symbols, working.figures].concat();
            assert!(
                !formula.contains(['{', '}', '|', '*', ';', ':', '-']),
                "{formula}"
            );
            assert!(!working.note.contains(['{', '}', '|']), "{}", working.note);
            assert_ne!(working.source, "", "{}", working.id);
        }
    }
}
