#![forbid(unsafe_code)]
//! The command line as a script meets it: what it prints, how it ends, and that
//! nothing that is handed to it makes it panic.

mod program;
mod refusals;

use ampwright_core::boat::{Key, demo};
use ampwright_core::exchange::{open_link, read_json};

use program::{code, file, json, run, run_with, several_boats, stderr, stdout};

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
