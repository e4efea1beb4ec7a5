//! What must hold of any text that a reader is given. The fuzz targets and the
//! property tests both call these; each panics when it does not hold.
#![allow(dead_code)]

use ampwright_core::boat::{Key, LegRow, MonthRow, Section as _, Worksheet};
use ampwright_core::decision::calibration;
use ampwright_core::exchange::{
    LONGEST_NAME, MOST_ARRANGEMENTS, MOST_LEGS, MOST_LOADS, open_link, read_file, read_json,
    to_collection, to_json, to_link,
};
use ampwright_core::exchange::{Style, differences, differences_text};
use ampwright_core::text::calibration::log_remarks;
use ampwright_core::text::remarks::{read_error, remarks};
use ampwright_core::units::Reader;

/// A link opens or is refused with a sentence, and what was understood comes
/// back whole.
pub fn link(text: &str) {
    match open_link(text) {
        Ok(opened) => {
            told(&remarks(&opened.remarks));
            assert!(
                opened.lost == 0 || !opened.remarks.is_empty(),
                "something was lost without a word"
            );
            if !opened.whole {
                assert!(!opened.remarks.is_empty(), "cut without a word");
            }
            understood(&opened.sheet);
        }
        Err(error) => told(&[read_error(&error)]),
    }
}

/// A file of one worksheet or many is read or refused with a sentence.
pub fn file(text: &str) {
    match read_file(text) {
        Ok(readings) => {
            assert!(!readings.is_empty(), "neither read nor refused");
            let mut sheets = Vec::new();
            for reading in readings {
                told(&remarks(&reading.remarks));
                understood(&reading.sheet);
                sheets.push(reading.sheet);
            }
            let again = read_file(&to_collection(&sheets).to_string()).expect("a file of ours");
            let again: Vec<Worksheet> = again.into_iter().map(|reading| reading.sheet).collect();
            assert_eq!(again, sheets, "lost in a file of many");
        }
        Err(error) => told(&[read_error(&error)]),
    }
}

/// A log is read as far as it can be, and every figure of it can be worked with.
pub fn log(text: &str) {
    let log = calibration::read(text);
    told(&log_remarks(&log.remarks));
    assert!(log.rows.len() <= calibration::log::MOST_ROWS);
    for row in &log.rows {
        assert!(row.minute.is_finite());
        for column in calibration::columns::Column::ALL {
            let (low, high) = column.range();
            assert!(
                row.get(column).is_none_or(|x| (low..=high).contains(&x)),
                "{column:?} out of its range"
            );
        }
    }
}

/// Everything in it is within its range, and it comes back from link and file
/// as it went.
fn understood(sheet: &Worksheet) {
    assert!(sheet.loads.len() <= MOST_LOADS);
    assert!(sheet.legs.len() <= MOST_LEGS);
    assert!(sheet.arrangements.len() <= MOST_ARRANGEMENTS);
    let loads = sheet.loads.iter().map(|load| &load.name);
    let arrangements = sheet.arrangements.iter().map(|one| &one.name);
    for name in [&sheet.name].into_iter().chain(loads).chain(arrangements) {
        assert!(name.chars().count() <= LONGEST_NAME, "{name}");
    }
    for key in Key::all() {
        let value = sheet.inputs.get(key);
        let accepted = key.spec().accept(value);
        assert!(accepted == Ok(value), "{} is {value:?}", key.name());
    }
    for (month, row) in sheet.months.said() {
        for field in MonthRow::FIELDS {
            let value = field.get(row);
            let accepted = field.spec.accept(value);
            assert!(
                accepted == Ok(value),
                "{month:?} {} is {value:?}",
                field.name
            );
        }
    }
    for leg in &sheet.legs {
        assert!(leg.name.chars().count() <= LONGEST_NAME, "{}", leg.name);
        for field in LegRow::FIELDS {
            let value = field.get(&leg.row);
            assert!(field.spec.accept(value) == Ok(value), "leg {}", field.name);
        }
    }
    let link = to_link(sheet);
    assert!(link.is_ascii());
    let opened = open_link(&link).expect("a link of ours");
    assert!(
        opened.whole && opened.remarks.is_empty(),
        "{link}: {:?}",
        opened.remarks
    );
    same(&opened.sheet, &unticked(sheet), &link);
    let file = to_json(sheet).to_string();
    let reading = read_json(&file).expect("a file of ours");
    assert!(reading.remarks.is_empty(), "{file}: {:?}", reading.remarks);
    same(&reading.sheet, sheet, &file);
}

/// What a link carries: all but the ticks of the first run.
pub fn unticked(sheet: &Worksheet) -> Worksheet {
    Worksheet {
        done: Vec::new(),
        ..sheet.clone()
    }
}

fn same(again: &Worksheet, sheet: &Worksheet, text: &str) {
    if again != sheet {
        let changed = differences_text(&differences(sheet, again, &Reader::METRIC), Style::Plain);
        panic!("{text} comes back with changes.\n{changed}");
    }
}

/// Sentences short enough to read, and not too many.
fn told(sentences: &[String]) {
    assert!(sentences.len() <= 100, "{} sentences", sentences.len());
    for sentence in sentences {
        // A file of many joins what it says about each.
        assert!(sentence.chars().count() <= 20_000, "too long: {sentence}");
        assert!(sentence.ends_with('.'), "no sentence: {sentence}");
    }
}
