#![forbid(unsafe_code)]
//! The task runner: `cargo xtask`.

mod axe;
mod browser;
mod fuzz;
mod page;
mod run;
mod serve;
mod stages;
mod stamp;
mod tally;
mod tools;

use std::{env, process::ExitCode};

/// What every step answers: the reason in plain words when it went wrong.
type Result<T> = std::result::Result<T, String>;

const HELP: &str = "\
cargo xtask serve [--port N]       build the page and serve it on this computer
cargo xtask build                  build the page into dist
cargo xtask test [native|browser]  check everything, or a part
cargo xtask bundle                 build the page and write it as one file
cargo xtask size                   weigh the finished page
cargo xtask bench                  time the calculations and the page
cargo xtask soak                   a long day in the browser, and its memory
cargo xtask pictures               take the pictures of the README afresh
cargo xtask fuzz [N [runs]]        try the readers, each for N seconds or N texts";

fn main() -> ExitCode {
    let args: Vec<String> = env::args().skip(1).collect();
    let words: Vec<&str> = args.iter().map(String::as_str).collect();
    let done = match words.as_slice() {
        ["serve", rest @ ..] => serve::serve(rest),
        ["build"] => page::build(),
        ["test"] => return stages::test(&stages::ALL),
        ["test", "native"] => return stages::test(&stages::NATIVE),
        ["test", "browser"] => return stages::test(&stages::BROWSER),
        ["bundle"] => page::bundle(),
        ["size"] => page::size(),
        ["bench"] => bench(),
        ["soak"] => in_browser("soak"),
        ["pictures"] => in_browser("pictures"),
        ["fuzz", rest @ ..] => fuzz::fuzz(rest),
        ["stamp"] => stamp::stamp(),
        [] | ["help" | "--help" | "-h"] => {
            println!("{HELP}");
            Ok(())
        }
        other => Err(format!(
            "There is no task \"{}\". The tasks are:\n{HELP}",
            other.join(" ")
        )),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("{message}");
            ExitCode::FAILURE
        }
    }
}

fn bench() -> Result<()> {
    run::cargo(&[
        "run",
        "--release",
        "--package=ampwright-tests",
        "--features=bench",
        "--bin=bench",
    ])?;
    page::runs()?;
    in_browser("bench_page")
}

/// Builds the page and runs a program that looks at it in a browser.
fn in_browser(program: &str) -> Result<()> {
    page::build()?;
    browser::ready()?;
    run::cargo(&[
        "run",
        "--release",
        "--package=ampwright-tests",
        "--features=browser,size,bench",
        "--bin",
        program,
    ])
}
