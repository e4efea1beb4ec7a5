//! What changed between two worksheets.

use crate::boat::Section;
use crate::boat::{Arrangement, Key, Load, LoadRow, Worksheet};
use crate::schema::Value;

/// One thing that changed.
#[derive(Debug, Clone, PartialEq)]
pub struct Difference {
    /// The section of the worksheet it stands in.
    pub section: &'static str,
    /// The input's label; of a load or an arrangement its name, as the user
    /// wrote it.
    pub label: String,
    /// What it was.
    pub was: String,
    /// What it is.
    pub is: String,
}

/// Stands where there was, or is, nothing of that name.
const NOTHING: &str = "not there";

/// What changed between two worksheets, in worksheet order. Loads and
/// arrangements are matched by their names; their order is no difference.
pub fn differences(from: &Worksheet, to: &Worksheet) -> Vec<Difference> {
    let mut found = Vec::new();
    let mut note = |section: &'static str, label: &str, was: String, is: String| {
        found.push(Difference {
            section,
            label: label.to_string(),
            was,
            is,
        });
    };
    if from.name != to.name {
        let named = |name: &String| match name.as_str() {
            "" => "no name".to_string(),
            name => name.to_string(),
        };
        note("Worksheet", "Name", named(&from.name), named(&to.name));
    }
    for key in Key::all() {
        let same_figure = from.inputs.get(key) == to.inputs.get(key);
        let same_known = from.knowledge(key) == to.knowledge(key);
        if !same_figure || !same_known {
            let said = |sheet: &Worksheet| told(sheet, key, !same_known);
            note(key.section.title(), key.spec().label, said(from), said(to));
        }
    }
    let rows = |sheet: &Worksheet| -> Vec<[String; 2]> { sheet.loads.iter().map(row).collect() };
    let ways =
        |sheet: &Worksheet| -> Vec<[String; 2]> { sheet.arrangements.iter().map(way).collect() };
    for (section, before, after) in [
        ("Loads", rows(from), rows(to)),
        ("Arrangements", ways(from), ways(to)),
    ] {
        for [name, was, is] in matched(before, after) {
            note(section, &name, was, is);
        }
    }
    found
}

/// An input's value with its unit, and where asked how well it is known.
pub(super) fn told(sheet: &Worksheet, key: Key, with_mark: bool) -> String {
    let value = key.spec().shown(sheet.inputs.get(key));
    match with_mark {
        true => [&value, " (", sheet.knowledge(key).word(), ")"].concat(),
        false => value,
    }
}

/// Name and figures of a load.
fn row(load: &Load) -> [String; 2] {
    let mut figures = String::new();
    for field in LoadRow::FIELDS {
        let value = field.get(&load.row);
        let shown = field.spec.shown(value);
        let part = match (field.name, value) {
            // Its unit is the next column, so a comma would part them.
            ("draw", _) => shown,
            ("kind", _) => [" ", &shown].concat(),
            (_, Value::Choice(_)) => [", ", &shown].concat(),
            _ => [", ", &field.spec.label.to_ascii_lowercase(), " ", &shown].concat(),
        };
        figures.push_str(&part);
    }
    [load.name.clone(), figures]
}

/// Name and changes of an arrangement.
fn way(arrangement: &Arrangement) -> [String; 2] {
    let mut changes = String::new();
    for (key, value) in &arrangement.changes {
        if !changes.is_empty() {
            changes.push_str("; ");
        }
        let spec = key.spec();
        changes.push_str(spec.label);
        changes.push_str(": ");
        changes.push_str(&spec.shown(*value));
    }
    if changes.is_empty() {
        changes.push_str("as the worksheet stands");
    }
    [arrangement.name.clone(), changes]
}

/// Name, before and after of everything that is not in both lists alike.
fn matched(mut before: Vec<[String; 2]>, mut after: Vec<[String; 2]>) -> Vec<[String; 3]> {
    // What is alike in both goes first, so that one of two of the same name
    // is not taken for the other.
    before.retain(|old| match after.iter().position(|new| new == old) {
        Some(at) => {
            after.remove(at);
            false
        }
        None => true,
    });
    let mut found = Vec::new();
    for [name, was] in before {
        let is = after
            .iter()
            .position(|[new, _]| *new == name)
            .map(|at| after.remove(at))
            .map_or(NOTHING.to_string(), |[_, is]| is);
        found.push([name, was, is]);
    }
    for [name, is] in after {
        found.push([name, NOTHING.to_string(), is]);
    }
    found
}

#[cfg(test)]
mod tests {
    use crate::boat::{Arrangement, Key, demo};
    use crate::exchange::differences::differences;
    use crate::schema::{Confidence, Value};

    #[test]
    fn each_change_is_one_line() {
        let (from, mut to) = (demo(), demo());
        assert_eq!(differences(&from, &to), []);
        to.name.clear();
        let capacity = Key::named("bank_capacity_ah").expect("a key");
        to.state(capacity, Value::Number(600.0)).expect("in range");
        let rated = Key::named("alt_rated_a").expect("a key");
        to.know(rated, Confidence::Measured);
        to.loads[0].row.draw = 60.0;
        to.loads.swap(1, 2);
        to.loads.pop();
        to.arrangements.push(Arrangement {
            name: "More".to_string(),
            changes: vec![(rated, Value::Number(200.0))],
        });
        let found: Vec<String> = differences(&from, &to)
            .iter()
            .map(|d| format!("{} | {} | {} | {}", d.section, d.label, d.was, d.is))
            .collect();
        assert_eq!(
            found,
            [
                "Worksheet | Name | Demo: the invented sloop Turnstone | no name",
                "House bank | Capacity | 420 A·h | 600 A·h",
                "Alternator | Rated current | 120 A (nameplate) | 120 A (measured)",
                "Loads | Refrigerator | 45 W, from the bank, how many 1, hours a day 24 h, runs for 45 %, at anchor and under way, used at night 45 % | 60 W, from the bank, how many 1, hours a day 24 h, runs for 45 %, at anchor and under way, used at night 45 %",
                "Loads | Watermaker | 240 W, from the bank, how many 1, hours a day 1.5 h, runs for 100 %, at anchor and under way, used at night 0 % | not there",
                "Arrangements | More | not there | Rated current: 200 A",
            ]
        );
    }
}
