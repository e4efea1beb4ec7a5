//! A worksheet comes back from a link, a file and the storage as it went: every
//! number to the last bit, every name to the last character.

use ampwright_core::Worksheet;
use ampwright_core::boat::Section;
use ampwright_core::boat::{Arrangement, Key, Leg, LegRow, Load, LoadRow, Month, MonthRow};
use ampwright_core::exchange::{
    LONGEST_NAME, open_link, read_file, read_json, to_collection, to_json, to_link,
};
use ampwright_core::schema::Value;
use proptest::prelude::*;
use proptest::sample::{Index, select};

use crate::draw::{Drawn, any_sheet, with_legs, with_months};

/// Names that try a reader: signs with a meaning in a link or a file, what looks
/// like an end, characters that show as nothing, run the other way, are built
/// of several, or stand for one that was lost.
fn odd_name() -> impl Strategy<Value = String> {
    let odd = select(vec![
        "end",
        "&end",
        "v=1&end",
        "~",
        "~~m",
        "+",
        "%",
        "%2B",
        "%EF%BF%BD",
        "amp;",
        "#",
        " ",
        "  ",
        "\t",
        "\r\n",
        "\0",
        "\u{7f}",
        "\u{85}",
        "\u{a0}",
        "\u{ad}",
        "\u{200b}",
        "\u{200d}",
        "\u{202e}",
        "\u{2028}",
        "\u{feff}",
        "\u{fffd}",
        "\u{fffe}",
        "\u{10ffff}",
        "e\u{301}",
        "ÅÄÖß",
        "Ἀργώ",
        "سفينة",
        "船",
        "⛵",
        "👩‍✈️",
        "\"",
        "\\",
        "\\u0041",
        "'",
        "{}",
        "null",
        "<script>alert(1)</script>",
        "<img src=x onerror=alert(1)>",
        "&lt;b&gt;",
        "]]>",
        "1e999",
        "-0",
    ]);
    let piece = prop_oneof![
        4 => odd.prop_map(String::from),
        1 => any::<char>().prop_map(String::from),
        1 => "\\PC{0,12}",
    ];
    prop_oneof![
        9 => proptest::collection::vec(piece, 0..6).prop_map(|pieces| pieces.concat()),
        1 => any::<char>().prop_map(|c| c.to_string().repeat(LONGEST_NAME)),
    ]
}

/// A number at an end of its range, at nought, or a bit beside them or beside
/// what it was, as far as it is taken.
fn extreme(key: Key, was: Value, which: usize) -> Value {
    let Some((low, high)) = key.spec().range() else {
        return was;
    };
    let was_number = match was {
        Value::Number(number) => number,
        _ => low,
    };
    let number = [
        low,
        low.next_up(),
        high,
        high.next_down(),
        0.0,
        -0.0,
        f64::MIN_POSITIVE,
        f64::from_bits(1),
        0.1 + 0.2,
        was_number.next_up(),
        was_number.next_down(),
    ][which % 11];
    key.spec().accept(Value::Number(number)).unwrap_or(was)
}

/// A drawn worksheet with odd names and extreme figures.
fn odd_sheet() -> impl Strategy<Value = Drawn> {
    let picks = proptest::collection::vec(any::<Index>(), 300);
    let names = proptest::collection::vec(odd_name(), 8);
    (any_sheet(), names, picks).prop_map(|(Drawn(mut sheet), mut names, picks)| {
        for (key, pick) in Key::all().zip(picks) {
            // A third of them as drawn.
            let which = pick.index(17);
            if which < 11 && sheet.is_said(key) {
                let value = extreme(key, sheet.inputs.get(key), which);
                sheet.state(key, value).expect("within its range");
            }
        }
        let mut name = || names.pop().unwrap_or_default();
        sheet.name = name();
        sheet.loads.iter_mut().for_each(|load| load.name = name());
        let arrangements = sheet.arrangements.iter_mut();
        arrangements.for_each(|arrangement| arrangement.name = name());
        Drawn(sheet)
    })
}

/// Everything of a worksheet, the numbers as their bits.
fn bits(sheet: &Worksheet) -> Vec<String> {
    let exact = |value: Value| match value {
        Value::Number(number) => format!("{:x}", number.to_bits()),
        other => format!("{other:?}"),
    };
    let input = |key: Key| {
        let known = sheet.known.get(key);
        format!("{} {} {known:?}", key.name(), exact(sheet.inputs.get(key)))
    };
    let load = |load: &Load| {
        let figures = LoadRow::FIELDS.iter().map(|field| field.get(&load.row));
        let figures: Vec<String> = figures.map(exact).collect();
        format!("{:?} {}", load.name, figures.join(" "))
    };
    let arrangement = |one: &Arrangement| {
        let change = |(key, value): &(Key, Value)| format!("{} {}", key.name(), exact(*value));
        let changes: Vec<String> = one.changes.iter().map(change).collect();
        format!("{:?} {}", one.name, changes.join(" "))
    };
    let month = |(month, row): (Month, &MonthRow)| {
        let figures = MonthRow::FIELDS.iter().map(|field| field.get(row));
        let figures: Vec<String> = figures.map(exact).collect();
        format!("{month:?} {}", figures.join(" "))
    };
    let leg = |leg: &Leg| {
        let figures = LegRow::FIELDS.iter().map(|field| field.get(&leg.row));
        let figures: Vec<String> = figures.map(exact).collect();
        format!("{:?} {}", leg.name, figures.join(" "))
    };
    [format!("{:?} {:?}", sheet.name, sheet.done)]
        .into_iter()
        .chain(sheet.legs.iter().map(leg))
        .chain(sheet.months.said().map(month))
        .chain(Key::all().map(input))
        .chain(sheet.loads.iter().map(load))
        .chain(sheet.arrangements.iter().map(arrangement))
        .collect()
}

/// What a link carries: a boat, not what was done on it.
fn told(sheet: &Worksheet) -> Worksheet {
    Worksheet {
        done: Vec::new(),
        ..sheet.clone()
    }
}

fn through_a_link(sheet: &Worksheet) -> Result<(), TestCaseError> {
    let link = to_link(sheet);
    prop_assert!(link.is_ascii());
    let opened = open_link(&link).expect("a link of ours");
    prop_assert!(opened.whole);
    prop_assert_eq!(opened.lost, 0);
    prop_assert_eq!(&opened.remarks, &[]);
    prop_assert_eq!(bits(&opened.sheet), bits(&told(sheet)));
    prop_assert_eq!(to_link(&opened.sheet), link);
    Ok(())
}

/// As the storage keeps it, and as a file for people is printed.
fn through_json(sheet: &Worksheet) -> Result<(), TestCaseError> {
    let json = to_json(sheet);
    let printed = serde_json::to_string_pretty(&json).expect("text");
    for text in [json.to_string(), printed.replace('\n', "\r\n")] {
        let reading = read_json(&text).expect("a file of ours");
        prop_assert_eq!(&reading.remarks, &[]);
        prop_assert_eq!(bits(&reading.sheet), bits(sheet));
        prop_assert_eq!(&to_json(&reading.sheet), &json);
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(500))]

    #[test]
    fn any_sheet_comes_back(drawn in with_legs(with_months(any_sheet()))) {
        through_a_link(&drawn.0)?;
        through_json(&drawn.0)?;
    }

    #[test]
    fn odd_names_and_extreme_figures_come_back(drawn in odd_sheet()) {
        through_a_link(&drawn.0)?;
        through_json(&drawn.0)?;
    }

    /// From one boat to the next: by link, by file, into a file of all.
    #[test]
    fn the_long_way_round(drawn in odd_sheet(), other in odd_sheet()) {
        let opened = open_link(&to_link(&drawn.0)).expect("a link of ours").sheet;
        let sheets = [opened, other.0];
        let kept = to_collection(&sheets).to_string();
        let readings = read_file(&kept).expect("a file of ours");
        prop_assert_eq!(readings.len(), 2);
        for (reading, sheet) in readings.iter().zip([told(&drawn.0), sheets[1].clone()]) {
            prop_assert_eq!(&reading.remarks, &[]);
            prop_assert_eq!(bits(&reading.sheet), bits(&sheet));
            through_a_link(&reading.sheet)?;
        }
    }

    #[test]
    fn a_cut_link_is_noticed(drawn in odd_sheet(), part in 0.0..1.0f64) {
        let link = to_link(&drawn.0);
        let cut = (link.len() as f64 * part) as usize;
        if let Ok(opened) = open_link(&link[..cut]) {
            prop_assert!(!opened.whole);
            prop_assert!(!opened.remarks.is_empty());
        }
    }
}
