//! What was entered, in words: for paper.

use crate::boat::{Key, Load, LoadRow, Month, Section, SectionId, Worksheet};
use crate::exchange::differences::{
    Described, described_arrangement, described_leg, described_month, value_text,
};
use crate::schema::Value;
use crate::units::Reader;

/// What was entered in one part of the worksheet.
#[derive(Debug, Clone, PartialEq)]
pub struct EnteredPart {
    /// The part's title.
    pub title: &'static str,
    /// Label and value of each input; of a load, a leg or an arrangement its
    /// name and what it is.
    pub lines: Vec<(String, String)>,
}

/// All that was entered and matters as the boat stands, in worksheet order and
/// in a reader's units. What is a fact comes with how well it is known. Parts of
/// which nothing was said are left out.
pub fn entered(sheet: &Worksheet, reader: &Reader) -> Vec<EnteredPart> {
    let inputs = |section: &SectionId| {
        let said = section.keys();
        let said = said.filter(|key| sheet.is_said(*key) && key.applies(&sheet.inputs));
        let line = |key: Key| {
            let value = value_text(sheet, key, key.spec().is_fact(), reader);
            (key.spec().label.to_string(), value)
        };
        EnteredPart {
            title: section.title(),
            lines: said.map(line).collect(),
        }
    };
    let months = Month::ALL
        .iter()
        .map(|month| (*month, sheet.months.row(*month)));
    let months = months.filter(|(month, _)| sheet.months.said().any(|(said, _)| said == *month));
    let months =
        months.map(|(month, row)| (month.label().to_string(), described_month(row, reader)));
    let part = |title, lines: Vec<(String, String)>| EnteredPart { title, lines };
    let named = |one: Described| (one.name, one.says);
    let loads = sheet.loads.iter();
    let loads = loads.map(|load| (load.name.clone(), brief_load(load, reader)));
    let legs = sheet.legs.iter().map(|leg| described_leg(leg, reader));
    let own = sheet.arrangements.iter();
    let own = own.map(|one| described_arrangement(one, reader));
    let lists = [
        part("Year by months", months.collect()),
        part("Loads", loads.collect()),
        part("Legs of the day", legs.map(named).collect()),
        part("Arrangements", own.map(named).collect()),
    ];
    let all = SectionId::ALL.iter().map(inputs).chain(lists);
    all.filter(|part| !part.lines.is_empty()).collect()
}

/// "45 W, hours a day 24 h, duty cycle 45 %": the draw, and what is otherwise
/// than for any load.
fn brief_load(load: &Load, reader: &Reader) -> String {
    let fields = LoadRow::FIELDS.iter();
    let told = fields.filter_map(|field| {
        let value = field.get(&load.row);
        let shown = field.spec.shown_to(reader, value);
        let label = field.spec.label.to_ascii_lowercase();
        match (field.name, value) {
            ("draw", _) => Some(shown),
            // Its unit is the next column, so a comma would part them.
            ("kind", _) => Some(format!(" {}", shown.trim_end_matches(", from the bank"))),
            ("hours", _) => Some(format!(", {label} {shown}")),
            (_, value) if value == field.spec.default() => None,
            (_, Value::Choice(_)) => Some(format!(", {shown}")),
            _ => Some(format!(", {label} {shown}")),
        }
    });
    told.collect()
}

#[cfg(test)]
mod tests {
    use crate::boat::{Worksheet, demo, key};
    use crate::exchange::entered::entered;
    use crate::schema::Value;
    use crate::units::Reader;

    #[test]
    fn only_what_was_said_and_matters_is_there() {
        assert_eq!(entered(&Worksheet::default(), &Reader::METRIC), []);
        let mut sheet = Worksheet::default();
        let mut say = |key, value| sheet.state(key, value).expect("in range");
        say(key!(bank.capacity_ah), Value::Number(230.0));
        // Without panels nobody asks what they give.
        say(key!(sun.yield_pct), Value::Number(70.0));
        let found = entered(&sheet, &Reader::METRIC);
        let all: Vec<_> = found.iter().map(|part| (part.title, &part.lines)).collect();
        let line = ("Capacity".to_string(), "230 A·h (nameplate)".to_string());
        assert_eq!(all, [("House bank", &vec![line])]);
    }

    #[test]
    fn loads_are_told_by_their_names() {
        let found = entered(&demo(), &Reader::METRIC);
        let loads = found.iter().find(|part| part.title == "Loads");
        let loads = &loads.expect("the demo lists its loads").lines;
        assert_eq!(loads.len(), demo().loads.len());
        assert!(
            loads
                .iter()
                .any(|(name, says)| name == "Refrigerator" && says.contains("45 W"))
        );
    }
}
