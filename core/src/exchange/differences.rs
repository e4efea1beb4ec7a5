//! What changed between two worksheets.

use crate::boat::Section;
use crate::boat::{Arrangement, Key, Leg, LegRow, Load, LoadRow, Month, MonthRow, Worksheet};
use crate::schema::Value;
use crate::units::Reader;

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

/// What changed between two worksheets, in worksheet order and in a reader's
/// units. Loads and arrangements are matched by their names; their order is no
/// difference.
pub fn differences(from: &Worksheet, to: &Worksheet, reader: &Reader) -> Vec<Difference> {
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
        note("Boat", "Name", named(&from.name), named(&to.name));
    }
    for key in Key::all() {
        let same_figure = from.inputs.get(key) == to.inputs.get(key);
        let same_known = from.knowledge(key) == to.knowledge(key);
        if !same_figure || !same_known {
            let said = |sheet: &Worksheet| value_text(sheet, key, !same_known, reader);
            note(key.section.title(), key.spec().label, said(from), said(to));
        }
    }
    for month in Month::ALL.iter().copied() {
        let (was, is) = (from.months.row(month), to.months.row(month));
        if was != is {
            let [was, is] = [was, is].map(|row| described_month(row, reader));
            note("Year by months", month.label(), was, is);
        }
    }
    let loads = |sheet: &Worksheet| -> Vec<Described> {
        let all = sheet.loads.iter();
        all.map(|load| described_load(load, reader)).collect()
    };
    let legs = |sheet: &Worksheet| -> Vec<Described> {
        let all = sheet.legs.iter();
        all.map(|leg| described_leg(leg, reader)).collect()
    };
    let arrangements = |sheet: &Worksheet| -> Vec<Described> {
        let all = sheet.arrangements.iter();
        all.map(|one| described_arrangement(one, reader)).collect()
    };
    for (section, before, after) in [
        ("Loads", loads(from), loads(to)),
        ("Legs of the day", legs(from), legs(to)),
        ("Arrangements", arrangements(from), arrangements(to)),
    ] {
        for change in matched(before, after) {
            note(section, &change.name, change.was, change.is);
        }
    }
    found
}

/// An input's value with its unit, and where asked how well it is known.
pub(super) fn value_text(sheet: &Worksheet, key: Key, with_mark: bool, reader: &Reader) -> String {
    let value = key.spec().shown_to(reader, sheet.inputs.get(key));
    match with_mark {
        true => format!("{value} ({})", sheet.knowledge(key).word()),
        false => value,
    }
}

/// A load or an arrangement in words.
#[derive(PartialEq)]
pub(super) struct Described {
    pub(super) name: String,
    pub(super) says: String,
}

/// A load or an arrangement that is not in both worksheets alike.
struct Change {
    name: String,
    was: String,
    is: String,
}

/// "air 24 °C, days aboard 30 d", or that nothing is said.
pub(super) fn described_month(row: &MonthRow, reader: &Reader) -> String {
    let said: Vec<String> = MonthRow::FIELDS
        .iter()
        .filter(|field| field.get(row) != field.spec.default())
        .map(|field| {
            let shown = field.spec.shown_to(reader, field.get(row));
            format!("{} {shown}", field.spec.label.to_ascii_lowercase())
        })
        .collect();
    match said.is_empty() {
        true => "as the other inputs say".to_string(),
        false => said.join(", "),
    }
}

fn described_load(load: &Load, reader: &Reader) -> Described {
    let figures = LoadRow::FIELDS.iter().map(|field| {
        let value = field.get(&load.row);
        let shown = field.spec.shown_to(reader, value);
        match (field.name, value) {
            // Its unit is the next column, so a comma would part them.
            ("draw", _) => shown,
            ("kind", _) => format!(" {shown}"),
            ("drawn", value) if value == field.spec.default() => String::new(),
            (_, Value::Choice(_)) => format!(", {shown}"),
            _ => format!(", {} {shown}", field.spec.label.to_ascii_lowercase()),
        }
    });
    Described {
        name: load.name.clone(),
        says: figures.collect(),
    }
}

pub(super) fn described_leg(leg: &Leg, reader: &Reader) -> Described {
    let figures = LegRow::FIELDS.iter().map(|field| {
        let shown = field.spec.shown_to(reader, field.get(&leg.row));
        format!("{} {shown}", field.spec.label.to_ascii_lowercase())
    });
    Described {
        name: leg.name.clone(),
        says: figures.collect::<Vec<_>>().join(", "),
    }
}

pub(super) fn described_arrangement(arrangement: &Arrangement, reader: &Reader) -> Described {
    let changes: Vec<String> = arrangement
        .changes
        .iter()
        .map(|(key, value)| {
            let spec = key.spec();
            format!("{}: {}", spec.label, spec.shown_to(reader, *value))
        })
        .collect();
    Described {
        name: arrangement.name.clone(),
        says: match changes.is_empty() {
            true => "as the boat stands".to_string(),
            false => changes.join("; "),
        },
    }
}

/// What is not in both lists alike, before and after.
fn matched(mut before: Vec<Described>, mut after: Vec<Described>) -> Vec<Change> {
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
    for Described { name, says: was } in before {
        let is = after
            .iter()
            .position(|new| new.name == name)
            .map(|at| after.remove(at))
            .map_or(NOTHING.to_string(), |new| new.says);
        found.push(Change { name, was, is });
    }
    for Described { name, says: is } in after {
        let was = NOTHING.to_string();
        found.push(Change { name, was, is });
    }
    found
}

#[cfg(test)]
mod tests {
    use crate::boat::{Arrangement, demo, key};
    use crate::exchange::differences::differences;
    use crate::schema::{Confidence, Value};
    use crate::units::Reader;

    #[test]
    fn figures_are_told_in_the_units_of_the_reader() {
        let (from, mut to) = (demo(), demo());
        let limit = key!(reg.set_point_c);
        to.state(limit, Value::Number(100.0)).expect("in range");
        let us = Reader::US.with_decimal_comma(true);
        let found = differences(&from, &to, &us);
        assert_eq!(found[0].is, "212 °F", "{found:?}");
    }

    #[test]
    fn each_change_is_one_line() {
        let (from, mut to) = (demo(), demo());
        assert_eq!(differences(&from, &to, &Reader::METRIC), []);
        to.name.clear();
        let capacity = key!(bank.capacity_ah);
        to.state(capacity, Value::Number(600.0)).expect("in range");
        let rated = key!(alt.rated_a);
        to.know(rated, Confidence::Measured);
        to.loads[0].row.draw = 60.0;
        to.loads.swap(1, 2);
        to.loads.pop();
        to.arrangements.push(Arrangement {
            name: "More".to_string(),
            changes: vec![(rated, Value::Number(200.0))],
        });
        let found: Vec<String> = differences(&from, &to, &Reader::METRIC)
            .iter()
            .map(|d| format!("{} | {} | {} | {}", d.section, d.label, d.was, d.is))
            .collect();
        assert_eq!(
            found,
            [
                "Boat | Name | Demo: the invented sloop Turnstone | no name",
                "House bank | Capacity | 420 A·h | 600 A·h",
                "Alternator | Rated current | 120 A (nameplate) | 120 A (measured)",
                "Loads | Refrigerator | 45 W, from the bank, how many 1, hours a day 24 h, duty cycle 45 %, at anchor and under way, used at night 45 % | 60 W, from the bank, how many 1, hours a day 24 h, duty cycle 45 %, at anchor and under way, used at night 45 %",
                "Loads | Watermaker | 240 W, from the bank, how many 1, hours a day 1.5 h, duty cycle 100 %, at anchor and under way, used at night 0 % | not there",
                "Arrangements | More | not there | Rated current: 200 A",
            ]
        );
    }
}
