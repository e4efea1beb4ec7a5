//! What the program does not understand, and how it says so.

use serde_json::Value as Json;

use crate::LINK;
use crate::program::{code, file, json, run, run_with, several_boats, stderr, stdout};

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
