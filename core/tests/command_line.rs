#![forbid(unsafe_code)]
//! The command line as a script meets it: what it prints, how it ends, and that
//! nothing that is handed to it makes it panic.

use std::io::Write as _;
use std::path::PathBuf;
use std::process::{Command, Output, Stdio};

use ampwright_core::boat::{Key, Worksheet, demo};
use ampwright_core::exchange::{open_link, read_json, to_collection};
use serde_json::Value as Json;

/// Every command that takes a worksheet and prints JSON with a schema.
const ANALYSES: [&str; 12] = [
    "report",
    "year",
    "arrangements",
    "costs",
    "goal",
    "uncertainty",
    "cables",
    "belts",
    "load-dump",
    "settings",
    "commissioning",
    "workings",
];

/// A boat with some figures of its own.
const LINK: &str = "v=2&bank_capacity=200&eng_rpm=1500&end";

fn run(arguments: &[&str]) -> Output {
    run_with(arguments, b"")
}

fn run_with(arguments: &[&str], input: &[u8]) -> Output {
    let mut child = Command::new(env!("CARGO_BIN_EXE_ampwright"))
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts");
    // One that does not read its input closes it early.
    let _ = child.stdin.take().expect("piped").write_all(input);
    let output = child.wait_with_output().expect("the program ends");
    let said = String::from_utf8_lossy(&output.stderr);
    assert!(!said.contains("panicked"), "{arguments:?}: {said}");
    output
}

fn code(output: &Output) -> i32 {
    output.status.code().expect("not killed")
}

fn stdout(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).expect("UTF-8")
}

fn stderr(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

fn json(arguments: &[&str]) -> Json {
    let output = run(arguments);
    assert_eq!(code(&output), 0, "{arguments:?}: {}", stderr(&output));
    let json: Json = serde_json::from_str(&stdout(&output)).expect("JSON");
    assert_eq!(json["schema"], 2, "{arguments:?}");
    json
}

/// A file of this test's own.
fn file(name: &str, text: &[u8]) -> String {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
    std::fs::write(&path, text).expect("the folder for temporary files takes it");
    path.to_str().expect("UTF-8").to_string()
}

fn several_boats() -> String {
    let named = |name: &str| Worksheet {
        name: name.to_string(),
        ..Worksheet::default()
    };
    let sheets = ["Tern", "Gannet", "Twin", "Twin"].map(named);
    file(
        "several.json",
        to_collection(&sheets).to_string().as_bytes(),
    )
}

#[test]
fn every_analysis_prints_json_with_its_schema() {
    for analysis in ANALYSES {
        let json = json(&[analysis, LINK]);
        assert!(json.as_object().expect("an object").len() > 1, "{analysis}");
    }
}

#[test]
fn the_report_is_that_of_the_core() {
    let sheet = open_link(LINK).expect("a link").sheet;
    let expected = ampwright_core::report(&sheet);
    let printed = json(&["report", LINK]);
    assert_eq!(
        printed["output"]["hot_a"].as_f64(),
        Some(expected.analyses.output.hot_a)
    );
    let codes: Vec<_> = expected
        .findings
        .iter()
        .map(|found| serde_json::json!(found.code()))
        .collect();
    let printed_codes: Vec<_> = printed["findings"]
        .as_array()
        .expect("a list")
        .iter()
        .map(|found| found["code"].clone())
        .collect();
    assert_eq!(printed_codes, codes);
}

/// An alternator that gets hot, told in °F.
#[test]
fn sentences_are_in_the_readers_units() {
    let link = "v=2&alt_anchor_winding=240&reg_kind=internal&eng_rpm=2500&end";
    let metric = json(&["report", link]).to_string();
    let us = json(&["report", "--units=us", "--decimal-comma", link]);
    let sentences = us["findings"].to_string();
    assert!(metric.contains("°C") && sentences.contains("°F") && !sentences.contains("°C"));
    assert_eq!(
        us["output"]["hot_a"],
        json(&["report", link])["output"]["hot_a"]
    );
}

#[test]
fn a_file_standard_input_and_a_link_are_one_boat() {
    let from_link = stdout(&run(&["worksheet", LINK]));
    let path = file("one.json", from_link.as_bytes());
    let address = format!("https://boat.example/page/#{LINK}");
    let link_file = file("link.txt", format!("#{LINK}\n").as_bytes());
    for from in [&path, &address, &link_file] {
        assert_eq!(stdout(&run(&["worksheet", from])), from_link, "{from}");
    }
    for input in [from_link.as_bytes(), LINK.as_bytes()] {
        assert_eq!(stdout(&run_with(&["worksheet", "-"], input)), from_link);
    }
    assert_eq!(
        read_json(&from_link).expect("a worksheet").sheet,
        open_link(LINK).expect("a link").sheet
    );
}

#[test]
fn without_a_file_it_is_the_example_boat() {
    let printed = stdout(&run(&["worksheet"]));
    assert_eq!(read_json(&printed).expect("a worksheet").sheet, demo());
    let link = stdout(&run(&["link"]));
    assert_eq!(open_link(&link).expect("a link").sheet, demo());
}

#[test]
fn an_input_is_set_as_on_the_page() {
    let printed = stdout(&run(&[
        "worksheet",
        "--set",
        "bank_capacity_ah=612,5",
        "--set=reg_kind=internal",
        "--set",
        "eng_rpm = 1800 ",
    ]));
    let sheet = read_json(&printed).expect("a worksheet").sheet;
    assert_eq!(sheet.inputs.bank.capacity_ah, 612.5);
    assert_eq!(sheet.inputs.eng.rpm, 1800.0);
    for (change, why) in [
        ("bank_capacity_ah=1000000", "takes"),
        ("bank_capacity_ah=NaN", "takes"),
        ("bank_capacity_ah=", "empty"),
        ("reg_kind=clockwork", "one of"),
        ("bank_size=3", "bank_size"),
        ("bank_capacity_ah", "KEY=VALUE"),
    ] {
        let output = run(&["worksheet", "--set", change]);
        assert_eq!(code(&output), 2, "{change}");
        assert!(
            stderr(&output).contains(why),
            "{change}: {}",
            stderr(&output)
        );
        assert!(output.stdout.is_empty(), "{change}");
    }
}

#[test]
fn one_of_several_boats() {
    let boats = several_boats();
    for (wanted, name) in [("Gannet", "Gannet"), ("1", "Tern"), ("4", "Twin")] {
        let printed = stdout(&run(&["worksheet", &boats, "--boat", wanted]));
        assert_eq!(read_json(&printed).expect("a worksheet").sheet.name, name);
    }
    for (arguments, why) in [
        (vec!["worksheet", &boats], "--boat: 1 “Tern”, 2 “Gannet”"),
        (vec!["worksheet", &boats, "--boat", "0"], "no boat"),
        (vec!["worksheet", &boats, "--boat", "5"], "no boat"),
        (vec!["worksheet", &boats, "--boat", "Skua"], "no boat"),
        (vec!["worksheet", &boats, "--boat", "Twin"], "3, 4"),
    ] {
        let output = run(&arguments);
        assert_eq!(code(&output), 2, "{arguments:?}");
        assert!(stderr(&output).contains(why), "{}", stderr(&output));
    }
}

/// A poorly cooled alternator at full output with nothing that holds it back,
/// and one behind a DC-DC charger of 30 A.
#[test]
fn a_danger_shows_in_the_exit_code_only_when_asked() {
    let is_danger = |link: &str| {
        let report = ampwright_core::report(&open_link(link).expect("a link").sheet);
        report
            .findings
            .iter()
            .any(|found| found.severity() == ampwright_core::findings::Severity::Danger)
    };
    let bad = "v=2&alt_anchor_winding=240&reg_kind=internal&eng_rpm=2500&end";
    let good = "v=2&way_kind=dcdc&way_converter=30&end";
    assert!(is_danger(bad) && !is_danger(good));
    assert_eq!(code(&run(&["report", bad])), 0);
    assert_eq!(code(&run(&["report", "--fail-on-danger", bad])), 1);
    assert_eq!(code(&run(&["report", "--fail-on-danger", good])), 0);
}

#[test]
fn what_was_not_understood_is_told() {
    let odd = r#"{"type":"ampwright-worksheet","version":2,"inputs":{"bank_capacity_ah":1e999,"sails":2}}"#;
    let path = file("odd.json", odd.as_bytes());
    let output = run(&["worksheet", &path]);
    assert_eq!(code(&output), 0);
    assert_eq!(stderr(&output).lines().count(), 2, "{}", stderr(&output));
    let output = run(&["check", &path]);
    assert_eq!(code(&output), 3);
    let check: Json = serde_json::from_str(&stdout(&output)).expect("JSON");
    assert_eq!(check["understood"], false);
    let remarks = &check["boats"][0]["not_understood"];
    assert_eq!(remarks.as_array().map(Vec::len), Some(2));
    assert_eq!(remarks[0]["code"], "value_refused");
    assert_eq!(remarks[0]["error"]["range"]["high"], 5000.0);
    assert_eq!(remarks[1]["code"], "unknown_key");
    assert_eq!(
        remarks[1]["text"],
        "No input is called “sails”; it is left out."
    );
    let check = json(&["check", &several_boats()]);
    assert_eq!(check["understood"], true);
    assert_eq!(check["boats"][1]["name"], "Gannet");
    // A link that was cut says so.
    assert_eq!(code(&run(&["check", "v=2&bank_capacity=200"])), 3);
}

#[test]
fn what_is_no_worksheet_ends_with_3() {
    let deep = "[".repeat(100_000);
    let long = " ".repeat(11_000_000);
    let texts: [&[u8]; 12] = [
        b"",
        b"{",
        b"[]",
        b"null",
        b"not a worksheet",
        b"#",
        b"v=99&end",
        b"v=&&&=%",
        b"\xff\xfe\x00",
        br#"{"type":"ampwright-worksheet","version":99}"#,
        deep.as_bytes(),
        long.as_bytes(),
    ];
    for (at, text) in texts.iter().enumerate() {
        for command in ["report", "check", "link"] {
            let output = run_with(&[command, "-"], text);
            assert_eq!(code(&output), 3, "text {at}, {command}");
            assert!(!output.stderr.is_empty() && output.stdout.is_empty());
        }
    }
    for from in [
        "/no/such/file",
        ".",
        "",
        "v=3&end",
        "https://boat.example/#x",
    ] {
        let output = run(&["report", from]);
        assert_eq!(code(&output), 3, "{from}: {}", stderr(&output));
    }
}

#[test]
fn a_wrong_command_line_ends_with_2() {
    for arguments in [
        &[][..],
        &["sail"],
        &["report", "--quickly"],
        &["report", "a.json", "b.json"],
        &["report", "--text=verse"],
        &["csv", "--table=day", "--month=13"],
        &["workings", LINK, "--id", "machine.colour"],
    ] {
        let output = run(arguments);
        assert_eq!(code(&output), 2, "{arguments:?}");
        assert!(output.stdout.is_empty() && !output.stderr.is_empty());
    }
}

#[test]
fn help_has_exit_codes_and_an_example_of_every_command() {
    let help = stdout(&run(&["--help"]));
    assert!(help.contains("Exit codes") && help.contains("--fail-on-danger"));
    let others = ["inputs", "worksheet", "link", "csv", "check"];
    for command in ANALYSES.into_iter().chain(others) {
        assert!(help.contains(&format!("\n  {command} ")), "{command}");
        let output = run(&[command, "--help"]);
        assert_eq!(code(&output), 0);
        let help = stdout(&output);
        let example = format!("\n  ampwright {command}");
        assert!(help.contains(&example), "{command}");
        // What an example sets is an input, and a value it takes.
        for change in help.split("--set ").skip(1) {
            let change = change.split_whitespace().next().unwrap_or_default();
            if change.contains('=') && !change.contains("KEY") {
                let output = run(&["worksheet", "--set", change]);
                assert_eq!(code(&output), 0, "{change}: {}", stderr(&output));
            }
        }
    }
}

#[test]
fn inputs_lists_all_there_are() {
    let listed = json(&["inputs"]);
    let listed = listed["inputs"].as_array().expect("a list");
    assert_eq!(listed.len(), Key::all().count());
    for (key, input) in Key::all().zip(listed) {
        assert_eq!(input["key"], key.name());
        for part in ["section", "label", "kind", "help"] {
            let text = input[part].as_str().unwrap_or_default();
            assert!(!text.is_empty(), "{}: {part}", key.name());
        }
        assert_eq!(input["unit"].is_null(), input["kind"] == "choice");
    }
}

#[test]
fn one_figure_is_explained() {
    let workings = json(&["workings", LINK, "--id", "output.hot_a"]);
    let workings = workings["workings"].as_array().expect("a list");
    assert_eq!(workings.len(), 1);
    assert_eq!(workings[0]["id"], "output.hot_a");
}

#[test]
fn the_text_is_told_in_each_style() {
    for (flag, sign) in [
        ("--text", "What follows\n"),
        ("--text=markdown", "**What follows**"),
        ("--text=bbcode", "[b]What follows[/b]"),
    ] {
        let text = stdout(&run(&["report", flag, LINK]));
        assert!(text.contains(sign), "{text}");
        assert!(text.contains("#v=2&bank_capacity=200"), "{text}");
    }
}

#[test]
fn each_table_stands_alone_and_among_all() {
    let all = stdout(&run(&["csv", LINK]));
    for table in ["run", "output", "year", "day", "arrangements"] {
        let one = stdout(&run(&["csv", "--table", table, LINK]));
        assert!(one.lines().count() > 1, "{table}");
        assert!(all.contains(&one), "{table}");
    }
    assert_eq!(
        all.lines().filter(|line| line.starts_with("# ")).count(),
        16
    );
}
