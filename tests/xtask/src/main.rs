#![forbid(unsafe_code)]
//! The task runner: `cargo xtask`.

mod axe;
mod browser;
mod fuzz;
mod nightly;
mod page;
mod run;
mod serve;
mod stages;
mod stamp;
mod supply;
mod tally;
mod tools;
mod versions;

use clap::{Parser, Subcommand, ValueEnum};
use std::process::ExitCode;

/// What every step answers: the reason in plain words when it went wrong.
type Result<T> = std::result::Result<T, String>;

/// Builds, checks and shows the page.
#[derive(Parser)]
#[command(
    bin_name = "cargo xtask",
    arg_required_else_help = true,
    disable_help_subcommand = true
)]
struct Arguments {
    #[command(subcommand)]
    task: Task,
}

#[derive(Subcommand)]
enum Task {
    /// Build the page and serve it on this computer
    Serve {
        /// The port, 0 for any; without it 8080, or any when that is taken
        #[arg(long)]
        port: Option<u16>,
    },
    /// Build the page into dist
    Build,
    /// Check everything, or a part
    Test { part: Option<Part> },
    /// Build the page and write it as one file
    Bundle,
    /// Weigh the finished page
    Size,
    /// Time the calculations and the page
    Bench,
    /// A long day in the browser, and its memory
    Soak,
    /// Take the pictures of the README afresh
    Pictures,
    /// Try the readers, each for so many seconds or, with "runs", texts
    Fuzz {
        number: Option<u64>,
        #[arg(requires = "number")]
        count: Option<Count>,
    },
    /// Look for trouble with numbers that nobody has drawn before
    Nightly {
        /// The seed to draw from; without it another one each time
        #[arg(long)]
        seed: Option<u32>,
        /// How long each reader is tried, in seconds
        #[arg(long, default_value_t = 600)]
        fuzz: u64,
    },
    /// What the page build calls when the files are made
    #[command(hide = true)]
    Stamp,
}

/// A part of the check.
#[derive(Clone, Copy, ValueEnum)]
enum Part {
    Native,
    Browser,
    Supply,
}

/// What a number counts in place of seconds.
#[derive(Clone, Copy, ValueEnum)]
enum Count {
    Runs,
}

fn main() -> ExitCode {
    let done = match Arguments::parse().task {
        Task::Serve { port } => serve::serve(port),
        Task::Build => page::build(),
        Task::Test { part } => {
            return match part {
                None => stages::test(&stages::ALL),
                Some(Part::Native) => stages::test(&stages::NATIVE),
                Some(Part::Browser) => stages::test(&stages::BROWSER),
                Some(Part::Supply) => stages::test(&stages::SUPPLIES),
            };
        }
        Task::Bundle => page::bundle(),
        Task::Size => page::size(),
        Task::Bench => bench(),
        Task::Soak => in_browser("soak"),
        Task::Pictures => in_browser("pictures"),
        Task::Fuzz { number, count } => {
            let bound = match (number, count) {
                (Some(number), Some(Count::Runs)) => fuzz::Bound::Runs(number),
                (seconds, _) => fuzz::Bound::Seconds(seconds),
            };
            fuzz::fuzz(bound, fuzz::SEED)
        }
        Task::Nightly { seed, fuzz } => nightly::nightly(seed, fuzz),
        Task::Stamp => stamp::stamp(),
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
    let mut calculations = run::cargo_command(&[
        "run",
        "--release",
        "--package=ampwright-tests",
        "--features=bench",
        "--bin=bench",
    ]);
    // The C library of Linux else gives memory back to the system after each
    // calculation, to ask for it again in the next one.
    calculations
        .env("MALLOC_TRIM_THRESHOLD_", "1000000000")
        .env("MALLOC_MMAP_MAX_", "0");
    run::succeed(calculations)?;
    run::cargo(&[
        "run",
        "--release",
        "--package=ampwright-tests",
        "--features=bench",
        "--bin=bench_coverage",
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

#[cfg(test)]
mod tests {
    use super::*;
    use clap::CommandFactory;

    #[test]
    fn the_tasks_are_told_apart() {
        Arguments::command().debug_assert();
        let task = |line: &str| Arguments::try_parse_from(line.split(' ')).map(|read| read.task);
        assert!(matches!(
            task("xtask serve --port 0"),
            Ok(Task::Serve { port: Some(0) })
        ));
        assert!(matches!(
            task("xtask fuzz 100 runs"),
            Ok(Task::Fuzz {
                number: Some(100),
                count: Some(Count::Runs)
            })
        ));
        assert!(matches!(
            task("xtask nightly --seed 7"),
            Ok(Task::Nightly {
                seed: Some(7),
                fuzz: 600
            })
        ));
        assert!(task("xtask serve --port 99999").is_err());
        assert!(task("xtask test nothing").is_err());
    }

    #[test]
    fn the_workflow_for_hosts_names_tasks_that_there_are() {
        let workflow = include_str!("../../../.github/workflows/check.yml");
        let lines: Vec<&str> = workflow
            .lines()
            .filter_map(|line| line.split_once("run: cargo "))
            .map(|(_, line)| line)
            .collect();
        assert!(!lines.is_empty());
        for line in lines {
            assert!(Arguments::try_parse_from(line.split(' ')).is_ok(), "{line}");
        }
    }
}
