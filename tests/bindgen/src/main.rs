#![forbid(unsafe_code)]
//! Does what the page build asks of the `wasm-bindgen` command, over the same
//! library, so that nobody has to build the whole command.

use std::{env, path::PathBuf, process::ExitCode};
use wasm_bindgen_cli_support::Bindgen;

/// The version of the library, as the manifest pins it.
const VERSION: &str = "0.2.130";

fn main() -> ExitCode {
    let args: Vec<String> = env::args().skip(1).collect();
    if args.iter().any(|arg| arg == "--version") {
        println!("wasm-bindgen {VERSION}");
        return ExitCode::SUCCESS;
    }
    match run(&args) {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("{message}");
            ExitCode::FAILURE
        }
    }
}

fn run(args: &[String]) -> Result<(), String> {
    let mut make = Bindgen::new();
    let mut folder = None;
    make.web(true).map_err(|e| e.to_string())?;
    // Function names are of no use to a visitor, and weigh much.
    make.remove_name_section(true)
        .remove_producers_section(true);
    for arg in args {
        match arg.split_once('=').unwrap_or((arg, "")) {
            ("--target", "web") => {}
            ("--out-dir", path) => folder = Some(PathBuf::from(path)),
            ("--out-name", name) => {
                make.out_name(name);
            }
            ("--no-typescript", _) => {
                make.typescript(false);
            }
            (option, _) if option.starts_with('-') => {
                return Err(format!("This stand-in does not know the option {arg}."));
            }
            _ => {
                make.input_path(arg);
            }
        }
    }
    let folder = folder.ok_or("Say where to write with --out-dir=FOLDER.")?;
    make.generate(folder).map_err(|e| format!("{e:?}"))
}
