#![forbid(unsafe_code)]
//! `ampwright`: everything that follows from a boat's worksheet, on the command
//! line.
//!
//! `arguments` says what can be asked for, `boat` reads the worksheet,
//! `analyses`, `inputs`, `exchange` and `tables` answer, `document` prints
//! JSON, and `error` says why there is no answer.

mod analyses;
mod arguments;
mod boat;
mod document;
mod error;
mod exchange;
mod inputs;
mod tables;

use std::io::Write as _;
use std::process::ExitCode;

use clap::Parser as _;

use arguments::{Arguments, Command};
use error::Error;

/// How a command that printed its answer ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Outcome {
    /// Nothing to object to.
    Fine,
    /// The worksheet has a Danger, and it was asked to tell by its exit code.
    Danger,
    /// `check` found something that was not understood.
    NotUnderstood,
}

impl From<Outcome> for ExitCode {
    fn from(outcome: Outcome) -> ExitCode {
        match outcome {
            Outcome::Fine => ExitCode::SUCCESS,
            Outcome::Danger => ExitCode::from(1),
            Outcome::NotUnderstood => ExitCode::from(3),
        }
    }
}

fn main() -> ExitCode {
    let arguments = Arguments::parse();
    match answer(&arguments.command) {
        Ok(outcome) => outcome.into(),
        Err(error) if error.is_closed_pipe() => ExitCode::SUCCESS,
        Err(error) => {
            // If standard error is closed as well, only the exit code is left.
            let _ = writeln!(std::io::stderr(), "ampwright: {error}");
            ExitCode::from(error.exit_code())
        }
    }
}

fn answer(command: &Command) -> Result<Outcome, Error> {
    match command {
        Command::Report(options) => return analyses::report(options),
        Command::Check(source) => return exchange::check(source),
        Command::Year(boat) => analyses::year(&boat.read()?)?,
        Command::Legs(boat) => analyses::legs(&boat.read()?)?,
        Command::Arrangements(boat) => analyses::arrangements(&boat.read()?)?,
        Command::Costs(boat) => analyses::costs(&boat.read()?)?,
        Command::Goal(boat) => analyses::goal(&boat.read()?)?,
        Command::Uncertainty(boat) => analyses::uncertainty(&boat.read()?)?,
        Command::Cables(boat) => analyses::cables(&boat.read()?)?,
        Command::Belts(boat) => analyses::belts(&boat.read()?)?,
        Command::LoadDump(boat) => analyses::load_dump(&boat.read()?)?,
        Command::Settings(boat) => analyses::settings(&boat.read()?)?,
        Command::Commissioning(boat) => analyses::commissioning(&boat.read()?)?,
        Command::Workings(options) => analyses::workings(options)?,
        Command::Inputs => inputs::inputs()?,
        Command::Worksheet(boat) => exchange::worksheet(&boat.read()?)?,
        Command::Link(boat) => exchange::link(&boat.read()?)?,
        Command::Csv(options) => tables::csv(options)?,
    }
    Ok(Outcome::Fine)
}
