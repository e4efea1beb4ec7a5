//! What readers refuse and remark on, as codes and figures: a program goes by
//! these, and they do not change with the sentences.

use std::error::Error;

use ampwright_core::boat::Key;
use ampwright_core::decision::calibration;
use ampwright_core::decision::calibration::{FitRemark, LineError, LogRemark, Refusal};
use ampwright_core::exchange::{ReadError, Remark, TextKind, open_link, read_file};
use ampwright_core::schema::{Excerpt, InputError};
use ampwright_core::text::remarks::{read_error, remark};
use serde::Serialize;
use serde_json::{Value, json};

fn as_json(told: &impl Serialize) -> Value {
    serde_json::to_value(told).expect("JSON")
}

/// Its code as JSON has it, which is its own.
#[track_caller]
fn code(remark: &Remark) -> &'static str {
    assert_eq!(as_json(remark)["code"], remark.code());
    remark.code()
}

/// Every remark a link can bring about.
#[test]
fn remarks_on_links() {
    let long_name = "x".repeat(201);
    let links: &[(&str, &[&str])] = &[
        ("colour=red&end", &["unknown_key"]),
        ("bank_capacity_ah=4&end", &["value_refused"]),
        ("bank_capacity=400&bank_capacity=500&end", &["input_twice"]),
        ("bank_capacity=400~x&end", &["unknown_mark"]),
        ("what&end", &["unreadable_part"]),
        ("name=Tern&name=Gull&end", &["name_twice"]),
        ("name=Sea%ff&end", &["name_damaged"]),
        (&format!("name={long_name}&end"), &["name_cut"]),
        ("load=Kettle~much&end", &["load_value_refused"]),
        (
            "load=Kettle~1~acw~1~1~1~both~0~engine~7&end",
            &["extra_load_figures"],
        ),
        ("leg=Home~fast&end", &["leg_value_refused"]),
        ("leg=Home~~~~~~7&end", &["extra_leg_figures"]),
        (&format!("{}end", "leg=Home&".repeat(13)), &["too_many"]),
        ("year=13~20&end", &["unknown_month"]),
        ("year=6~200&end", &["month_value_refused"]),
        ("year=6~20~~~~~30~~7&end", &["extra_month_figures"]),
        ("year=6~20&year=6~~~~~~12&end", &["month_twice"]),
        ("way=More~colour~red&end", &["unreadable_change"]),
        ("way=More~alt_rated~5000&end", &["change_refused"]),
        (&format!("{}end", "load=Lamp~5&".repeat(501)), &["too_many"]),
        ("bank_capacity=400", &["link_cut"]),
    ];
    for (link, codes) in links {
        let opened = open_link(&format!("v=2&{link}")).expect(link);
        let found: Vec<&str> = opened.remarks.iter().map(code).collect();
        assert_eq!(found, *codes, "{link}");
    }
    let many = open_link(&format!("v=2{}&end", "&x".repeat(50))).expect("a link");
    assert_eq!(many.remarks.last(), Some(&Remark::More { count: 10 }));
    assert_eq!(code(&many.remarks[40]), "more");
}

/// Every remark only a file can bring about.
#[test]
fn remarks_on_files() {
    let files: &[(&str, &[&str])] = &[
        (
            r#""known":{"bank_capacity_ah":"well"}"#,
            &["unknown_confidence"],
        ),
        (r#""colour":"red""#, &["unknown_part"]),
        (r#""name":7"#, &["name_not_text"]),
        (r#""loads":["Kettle"]"#, &["load_not_understood"]),
        (r#""loads":[{"colour":1}]"#, &["unknown_load_figure"]),
        (r#""legs":["Home"]"#, &["leg_not_understood"]),
        (r#""legs":[{"wind":1}]"#, &["unknown_leg_figure"]),
        (r#""year":{"months":[7]}"#, &["unknown_month"]),
        (
            r#""year":{"months":[{"month":6,"wind":1}]}"#,
            &["unknown_month_figure"],
        ),
        (r#""year":{"weeks":[]}"#, &["unknown_part"]),
        (r#""arrangements":[7]"#, &["arrangement_not_understood"]),
        (
            r#""arrangements":[{"changes":{"x":1}}]"#,
            &["unknown_change"],
        ),
        (r#""done":["paint_the_hull"]"#, &["unknown_tick"]),
    ];
    const HEAD: &str = r#"{"type":"ampwright-worksheet","version":2"#;
    for (file, codes) in files {
        let readings = read_file(&format!("{HEAD},{file}}}")).expect(file);
        let found: Vec<&str> = readings[0].remarks.iter().map(code).collect();
        assert_eq!(found, *codes, "{file}");
    }
    let two = format!(r#"{{"type":"ampwright-worksheets","version":2,"worksheets":[7,{HEAD}}}]}}"#);
    let readings = read_file(&two).expect("one of two");
    let not_read = Remark::WorksheetNotRead {
        number: 1,
        of: 2,
        error: Box::new(ReadError::NotAWorksheet),
    };
    assert_eq!(readings[0].remarks, [not_read]);
    assert_eq!(code(&readings[0].remarks[0]), "worksheet_not_read");
}

/// The figures are there, with the unit, and the sentence tells the same.
#[test]
fn a_refused_value_in_full() {
    let opened = open_link("v=2&bank_capacity=4&end").expect("a link");
    let told = json!({
        "code": "value_refused",
        "key": "bank_capacity_ah",
        "error": {
            "code": "too_low",
            "label": "Capacity",
            "typed": "4",
            "range": {"low": 10.0, "high": 5000.0, "unit": "A·h"},
        },
        "kept": {"kind": "number", "number": 400.0, "unit": "A·h"},
    });
    assert_eq!(as_json(&opened.remarks[0]), told);
    assert_eq!(
        remark(&opened.remarks[0]),
        "4 is too little; Capacity takes 10 to 5000 A·h. It stays at 400 A·h."
    );
}

/// A refusal says where, and is an error like any other.
#[test]
fn refusals_of_readers() {
    let file = |text: &str| read_file(text).expect_err(text);
    let link = |text: &str| open_link(text).expect_err(text);
    let refused = [
        (file(""), ReadError::Empty),
        (file("{\n\"type\":"), ReadError::BreaksOff { line: 2 }),
        (file("{\n ?"), ReadError::NotJson { line: 2, column: 2 }),
        (file("[]"), ReadError::NotAWorksheet),
        (link("v=1x"), ReadError::NotALink { newest: 2 }),
        (
            file(r#"{"type":"ampwright-worksheet"}"#),
            ReadError::NoVersion {
                what: TextKind::Worksheet,
            },
        ),
        (
            link("v=7"),
            ReadError::LaterVersion {
                what: TextKind::Link,
                version: 7,
                newest: 2,
            },
        ),
        (
            link(&"x".repeat(1_000_001)),
            ReadError::TooLong {
                what: TextKind::Link,
                most_bytes: 1_000_000,
            },
        ),
        (
            file(r#"{"type":"ampwright-worksheets","version":2}"#),
            ReadError::NoWorksheets,
        ),
    ];
    for (found, meant) in refused {
        assert_eq!(found, meant);
        assert_eq!(as_json(&found)["code"], found.code());
        assert!(read_error(&found).ends_with('.'), "{found:?}");
        let error: Box<dyn Error> = Box::new(found);
        assert!(!error.to_string().is_empty());
    }
    let none = file(r#"{"type":"ampwright-worksheets","version":2,"worksheets":[7,8]}"#);
    assert_eq!(none.code(), "none_read");
    assert_eq!(as_json(&none)["remarks"][1]["number"], 2);
}

/// Whatever is typed, an error holds no more of it than a sentence can take.
#[test]
fn errors_hold_an_excerpt() {
    let typed = "1".repeat(1_000_000);
    for key in Key::all() {
        let Err(error) = key.spec().read(&typed) else {
            panic!("{} takes a number of a million digits", key.name());
        };
        let told = as_json(&error)["typed"].as_str().map(str::len);
        assert!(told.is_some_and(|long| long <= 30), "{error:?}");
        assert!(matches!(
            error,
            InputError::NotFinite { .. } | InputError::NotAnOption { .. }
        ));
    }
}

/// Lines of a log that are left out are told with their number and why.
#[test]
fn remarks_on_logs() {
    let log = calibration::read("minute;amps;case;mood\n0;50;40;fair\n1;50;4000\nnoon;50;40");
    let typed = Excerpt::of;
    let left_out = [
        LogRemark::Column {
            heading: typed("mood"),
        },
        LogRemark::Line {
            line: 3,
            why: LineError::OutOfRange {
                column: calibration::columns::Column::Case,
                typed: typed("4000"),
            },
        },
        LogRemark::Line {
            line: 4,
            why: LineError::NotATime {
                typed: typed("noon"),
            },
        },
    ];
    assert_eq!(log.remarks, left_out);
    for remark in &log.remarks {
        assert_eq!(as_json(remark)["code"], remark.code());
    }
    assert_eq!(
        as_json(&log.remarks[1]),
        json!({"code": "line", "line": 3, "why": {"code": "out_of_range", "column": "case", "typed": "4000"}})
    );
    let sheet = ampwright_core::Worksheet::default();
    let few = calibration::fit(&sheet, &log).expect_err("one reading");
    assert_eq!(few, Refusal::FewReadings { count: 1, least: 6 });
    assert_eq!(
        as_json(&few),
        json!({"code": few.code(), "count": 1, "least": 6})
    );
    let error: Box<dyn Error> = Box::new(few);
    assert_eq!(error.to_string(), "1 of 6 readings");
}

/// The sample log tells the cooling, and what it cannot tell is a list of codes.
#[test]
fn remarks_on_a_fit() {
    let log = calibration::read(calibration::SAMPLE);
    let sheet = ampwright_core::Worksheet::default();
    let fit = calibration::fit(&sheet, &log).expect("the sample fits");
    assert!(!fit.remarks.contains(&FitRemark::CoolingUntold));
    assert!(fit.remarks.contains(&FitRemark::AirOfTheDay));
    for remark in &fit.remarks {
        assert_eq!(as_json(remark)["code"], remark.code());
    }
}
