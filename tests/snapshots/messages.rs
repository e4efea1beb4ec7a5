//! Every kind of sentence a user can be told.

use ampwright_core::boat::Key;
use ampwright_core::decision::calibration::read;
use ampwright_core::exchange::{open_link, read_file};
use ampwright_core::guidance::CAUTIONS;
use ampwright_core::report::report;
use ampwright_core::schema::Value;
use ampwright_core::text;
use ampwright_core::text::calibration::log_remarks;
use ampwright_core::text::cautions;
use ampwright_core::text::errors::input_error;
use ampwright_core::text::findings::sentence;
use ampwright_core::text::remarks::{read_error, remarks};
use ampwright_core::text::words::severity;
use ampwright_core::units::Reader;
use ampwright_tests::troubled::TROUBLED;

/// A number, one that may be empty, and a choice, given what they do not take.
#[test]
fn complaints() {
    let typed = [
        ("bank_capacity_ah", ""),
        ("bank_capacity_ah", "5"),
        ("bank_capacity_ah", "1e99"),
        ("bank_capacity_ah", "1e999"),
        ("bank_capacity_ah", "-0.00001"),
        ("bank_capacity_ah", "four hundred ampere-hours or so"),
        ("alt_pulley_ratio", "9"),
        ("bank_charge_v", "142"),
        ("bank_charge_v", "14.2 A"),
        ("reg_kind", ""),
        ("reg_kind", "smart"),
    ];
    let mut lines: Vec<String> = typed
        .iter()
        .map(|(name, text)| {
            let complaint = Key::named(name).expect("a key").spec().read(text);
            let complaint = input_error(&complaint.expect_err("refused"), &Reader::METRIC);
            format!("{name} “{text}”: {complaint}")
        })
        .collect();
    let choice = Key::named("reg_kind").expect("a key").spec();
    let wrong = choice.accept(Value::Number(1.0)).expect_err("refused");
    lines.push(format!(
        "reg_kind, a number: {}",
        input_error(&wrong, &Reader::METRIC)
    ));
    insta::assert_snapshot!(lines.join("\n"));
}

#[test]
fn damaged_links() {
    let links = [
        "",
        "v=3&end",
        "bank_capacity_ah=400",
        "v=2&bank_capacity_ah=400",
        "v=2&colour=red&end",
        "v=2&what%20is%20this&end",
        "v=2&bank_capacity_ah=4&end",
        "v=2&bank_capacity_ah=400~x&end",
        "v=later&end",
        "v=99999999999&bank_capacity=400&end",
        "v=2&bank_capacity=400&capacity=500&end",
        "v=2&bank_charge=142&end",
        "v=2&alt_colour=red&rated=120&end",
        "v=2&name=Sea%ff&end",
        "v=2&name=%3Cscript%3E&%3Cscript%3E=1&%3Cimg%20src%3Dx%3E&end",
        "v=2&load=Kettle&end",
        "v=2&load=Kettle~&end",
        "v=2&load=%3Cb%3EKettle~much&end",
        "v=2&load=Kettle~1000~acw~1~0.2~100~both~0~7&end",
        "v=2&way=Larger~alt_rated~5000&end",
        "v=2&way=Larger~alt_rated&end",
        "v=2&way=Larger~colour~red&end",
        "v=2&load=Kettle~1000~acw~1~99~100~both~0&end",
    ];
    let many = format!("v=2{}&end", "&x".repeat(50));
    let lines: Vec<String> = links
        .into_iter()
        .chain([many.as_str()])
        .map(|link| match open_link(link) {
            Ok(opened) => format!("{link}: {}", remarks(&opened.remarks).join(" ")),
            Err(error) => format!("{link}: refused: {}", read_error(&error)),
        })
        .collect();
    insta::assert_snapshot!(lines.join("\n"));
}

#[test]
fn damaged_files() {
    let head = r#"{"type":"ampwright-worksheet","version":2"#;
    let many = r#"{"type":"ampwright-worksheets","version":2,"worksheets":[7"#;
    let files = [
        "".to_string(),
        "[]".to_string(),
        "{}".to_string(),
        r#"{"type":"ampwright-worksheet"}"#.to_string(),
        r#"{"type":"ampwright-worksheet","version":3}"#.to_string(),
        format!(r#"{head},"inputs":{{"bank_capacity_ah":4}}}}"#),
        format!(r#"{head},"inputs":{{"bank_capacity_ah":null}}}}"#),
        format!(r#"{head},"inputs":{{"bank_capacity_ah":[400]}}}}"#),
        format!(r#"{head},"inputs":{{"colour":"red"}}}}"#),
        format!(r#"{head},"known":{{"bank_capacity_ah":"well"}}}}"#),
        format!(r#"{head},"loads":[{{"name":"Kettle","draw":1e9,"colour":1}}]}}"#),
        format!(r#"{head},"name":7,"inputs":[],"colour":"red"}}"#),
        format!(r#"{head},"loads":["Kettle",{{"name":null,"draw":"<b>"}}]}}"#),
        format!(
            r#"{head},"arrangements":["More",{{"changes":{{"alt_rated_a":5000,"x":1}},"why":1}}]}}"#
        ),
        format!(r#"{many},{head}}}]}}"#),
        r#"{"type":"ampwright-worksheets","version":3,"worksheets":[]}"#.to_string(),
        r#"{"type":"ampwright-worksheets","version":2}"#.to_string(),
        r#"{"type":"ampwright-worksheets","version":2,"worksheets":{}}"#.to_string(),
        r#"{"type":"ampwright-worksheets","version":2,"worksheets":[7,{}]}"#.to_string(),
        format!(
            r#"{many},{{"type":"ampwright-worksheet","version":9}},{head},"inputs":{{"bank_capacity_ah":4}}}}],"colour":1}}"#
        ),
    ];
    let lines: Vec<String> = files
        .iter()
        .map(|file| match read_file(file) {
            Ok(readings) => {
                let told: Vec<String> = readings
                    .iter()
                    .map(|reading| {
                        format!(
                            "  {}. {}",
                            reading.sheet.contents(),
                            remarks(&reading.remarks).join(" ")
                        )
                    })
                    .collect();
                format!("{file}\n{}", told.join("\n"))
            }
            Err(error) => format!("{file}\n  refused: {}", read_error(&error)),
        })
        .collect();
    insta::assert_snapshot!(lines.join("\n"));
}

#[test]
fn damaged_logs() {
    let texts = [
        "",
        "a log of nothing at all",
        "0,55,60\nnoon,55,60\n2,lots,60\n3,55,999\n4\n49:00,55,60",
        "min,amps,amps,colour\n0,55,60,red",
        "amps,case\n55,60",
        "min;<script>;case\n0;1;<img src=x>",
    ];
    let lines: Vec<String> = texts
        .iter()
        .map(|text| {
            let log = read(text);
            format!(
                "{text:?}: {} rows. {}",
                log.rows.len(),
                log_remarks(&log.remarks).join(" ")
            )
        })
        .collect();
    insta::assert_snapshot!(lines.join("\n"));
}

#[test]
fn cautions() {
    let lines: Vec<String> = CAUTIONS
        .iter()
        .map(|caution| {
            let about = cautions::about(caution.code);
            let sentence = cautions::sentence(caution.code, &Reader::METRIC);
            format!("{about}: {sentence}")
        })
        .collect();
    insta::assert_snapshot!(lines.join("\n"));
}

/// What is said of belts and of a bank that disconnects.
#[test]
fn fitting() {
    let boats = [
        "",
        "way_kind=converter&belt_kind=v13&belt_pump=yes&",
        "reg_kind=internal&belt_kind=ribs6&guard_warning=yes&guard_clamp=avalanche&guard_clamp_j=250&guard_switch=yes&",
        "two_role=house&bank_nominal_v=24&belt2_kind=v10&guard_lead=yes&guard_switch=no&",
        "bank_chemistry=agm&bank_nominal_v=48&guard_clamp=none&guard_switch=yes&",
    ];
    let mut lines = Vec::new();
    for boat in boats {
        let sheet = open_link(&format!("v=2&{boat}end")).expect("a link").sheet;
        let report = report(&sheet);
        lines.push(boat.to_string());
        for belt in &report.analyses.belts {
            lines.extend(
                text::belt::sentences(belt, &Reader::METRIC)
                    .iter()
                    .map(|said| format!("  {said}")),
            );
        }
        for machine in &report.analyses.load_dump.alternators {
            lines.extend(
                text::load_dump::sentences(machine, &Reader::METRIC)
                    .iter()
                    .map(|said| format!("  {said}")),
            );
            for mitigation in &machine.mitigations {
                let stands = text::load_dump::standing(mitigation.standing);
                lines.push(format!(
                    "  {}, {stands}: {}",
                    text::load_dump::mitigation(mitigation.code),
                    text::load_dump::advice(machine, mitigation, &Reader::METRIC)
                ));
            }
        }
    }
    insta::assert_snapshot!(lines.join("\n"));
}

#[test]
fn findings() {
    let lines: Vec<String> = TROUBLED
        .iter()
        .map(|link| {
            let opened = open_link(link).expect("a link");
            assert!(opened.remarks.is_empty(), "{link}: {:?}", opened.remarks);
            let found: Vec<String> = report(&opened.sheet)
                .findings
                .iter()
                .map(|f| {
                    format!(
                        "  {} {}: {}",
                        severity(f.severity()),
                        f.code(),
                        sentence(f, &Reader::METRIC)
                    )
                })
                .collect();
            format!("{link}\n{}", found.join("\n"))
        })
        .collect();
    insta::assert_snapshot!(lines.join("\n"));
}
