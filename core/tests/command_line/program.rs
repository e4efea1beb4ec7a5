//! Running the program and looking at what it printed.

use std::io::Write as _;
use std::path::PathBuf;
use std::process::{Command, Output, Stdio};

use ampwright_core::boat::Worksheet;
use ampwright_core::exchange::to_collection;
use serde_json::Value as Json;

pub fn run(arguments: &[&str]) -> Output {
    run_with(arguments, b"")
}

pub fn run_with(arguments: &[&str], input: &[u8]) -> Output {
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

pub fn code(output: &Output) -> i32 {
    output.status.code().expect("not killed")
}

pub fn stdout(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).expect("UTF-8")
}

pub fn stderr(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

pub fn json(arguments: &[&str]) -> Json {
    let output = run(arguments);
    assert_eq!(code(&output), 0, "{arguments:?}: {}", stderr(&output));
    let json: Json = serde_json::from_str(&stdout(&output)).expect("JSON");
    assert_eq!(json["schema"], 2, "{arguments:?}");
    json
}

/// A file of this test's own.
pub fn file(name: &str, text: &[u8]) -> String {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
    std::fs::write(&path, text).expect("the folder for temporary files takes it");
    path.to_str().expect("UTF-8").to_string()
}

pub fn several_boats() -> String {
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
