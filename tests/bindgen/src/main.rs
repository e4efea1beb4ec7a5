#![forbid(unsafe_code)]
//! Does what the page build asks of the `wasm-bindgen` command, over the same
//! library, so that nobody has to build the whole command. Before that it takes
//! the program apart; see `parts.rs`.

mod parts;

use std::{env, fs, path::PathBuf, process::ExitCode};
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
    let (mut folder, mut name, mut input) = (None, None, None);
    make.web(true).map_err(|e| e.to_string())?;
    // Function names are of no use to a visitor, and weigh much.
    make.remove_name_section(true)
        .remove_producers_section(true);
    // The second part calls the first through its table.
    make.keep_lld_exports(true);
    for arg in args {
        match arg.split_once('=').unwrap_or((arg, "")) {
            ("--target", "web") => {}
            ("--out-dir", path) => folder = Some(PathBuf::from(path)),
            ("--out-name", given) => name = Some(given),
            ("--no-typescript", _) => {
                make.typescript(false);
            }
            (option, _) if option.starts_with('-') => {
                return Err(format!("This stand-in does not know the option {arg}."));
            }
            _ => input = Some(PathBuf::from(arg)),
        }
    }
    let folder = folder.ok_or("Say where to write with --out-dir=FOLDER.")?;
    let name = name.ok_or("Say what to call it with --out-name=NAME.")?;
    let input = input.ok_or("Say which program it is about.")?;
    let program = fs::read(&input).map_err(|e| format!("{}: {e}.", input.display()))?;
    make.out_name(name)
        .input_path(parts::take_apart(&program, &folder)?)
        .generate(&folder)
        .map_err(|e| format!("{e:?}"))?;
    let script = folder.join(format!("{name}.js"));
    let failed = |e| format!("{}: {e}.", script.display());
    let text = fs::read_to_string(&script).map_err(failed)?;
    fs::write(&script, parts::with_loader(&text)?).map_err(failed)
}
