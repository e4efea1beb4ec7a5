//! Checks everything, stage by stage, and counts.

use crate::{
    Result, axe, browser, fuzz, page,
    run::{cargo, cargo_command, say, shown},
    supply,
    tally::Tally,
    tools,
};
use std::{
    env,
    io::{BufRead, BufReader},
    process::{ExitCode, Stdio},
    time::Instant,
};

/// One step of the check.
#[derive(Clone, Copy)]
pub struct Stage {
    name: &'static str,
    usual: &'static str,
    run: fn() -> (Tally, Result<()>),
}

const FORMAT: Stage = Stage {
    name: "Formatting",
    usual: "a second",
    run: || bare(tools::linters().and_then(|()| cargo(&["fmt", "--all", "--check"]))),
};

const LINTS: Stage = Stage {
    name: "Lints of the calculations and the tests",
    usual: "a minute the first time",
    run: || {
        bare(cargo(&[
            "clippy",
            "--quiet",
            "--locked",
            "--workspace",
            "--exclude=ampwright-web",
            "--all-targets",
            "--all-features",
            "--",
            "-Dwarnings",
        ]))
    },
};

const PAGE_LINTS: Stage = Stage {
    name: "Lints of the page",
    usual: "a minute the first time",
    run: || {
        bare(tools::target().and_then(|()| {
            cargo(&[
                "clippy",
                "--quiet",
                "--locked",
                "--package=ampwright-web",
                "--target=wasm32-unknown-unknown",
                "--",
                "-Dwarnings",
            ])
        }))
    },
};

const SUPPLY: Stage = Stage {
    name: "Licences, sources and advisories of what is used",
    usual: "2 minutes the first time",
    run: supply::check,
};

const TESTS: Stage = Stage {
    name: "Tests of the calculations",
    usual: "2 minutes the first time",
    run: || {
        let mut tally = Tally::default();
        let args = [
            "test",
            "--quiet",
            "--locked",
            "--workspace",
            "--exclude=bindgen-standin",
            "--features=ampwright-core/cli",
            "--no-fail-fast",
        ];
        let done = count(&args, &mut tally);
        (tally, done)
    },
};

const READERS: Stage = Stage {
    name: "Trying the readers with texts of libFuzzer's",
    usual: "3 minutes the first time",
    run: fuzz::bounded,
};

const BUILD: Stage = Stage {
    name: "Building the page",
    usual: "5 minutes the first time",
    run: || bare(page::build()),
};

const SIZE: Stage = Stage {
    name: "Weighing the page",
    usual: "20 seconds",
    run: || bare(page::size()),
};

const IN_BROWSER: Stage = Stage {
    name: "Tests in a browser",
    usual: "a few minutes",
    run: || {
        let mut tally = Tally::default();
        let done = browser::ready()
            .and_then(|()| {
                let mut args = IN_BROWSER_ARGS.to_vec();
                args.push("--lib");
                count(&args, &mut tally)
            })
            .and_then(|()| {
                let mut args = IN_BROWSER_ARGS.to_vec();
                args.extend(["--test=browser", "--", "--test-threads=2"]);
                for (with, tests, ready) in BESIDES {
                    if let Err(reason) = ready() {
                        say(&format!(
                            "LEFT OUT: the page was not tried with {with}, which could not be had. {reason}"
                        ));
                        tally.left_out.push(with);
                        args.extend(["--skip", tests]);
                    }
                }
                count(&args, &mut tally)
            });
        (tally, done)
    },
};

/// What makes itself ready, or says why it cannot.
type Ready = fn() -> Result<()>;

/// What the page is tried with beside Chromium, the tests that need it, and how
/// it is had.
const BESIDES: [(&str, &str, Ready); 3] = [
    ("axe-core", "axe_core", axe::ready),
    ("Firefox", "engines::firefox", browser::firefox),
    ("WebKit", "engines::webkit", browser::webkit),
];

const IN_BROWSER_ARGS: [&str; 5] = [
    "test",
    "--quiet",
    "--locked",
    "--package=ampwright-tests",
    "--features=browser",
];

pub const NATIVE: [Stage; 6] = [FORMAT, LINTS, PAGE_LINTS, SUPPLY, TESTS, READERS];
pub const SUPPLIES: [Stage; 1] = [SUPPLY];
pub const BROWSER: [Stage; 3] = [BUILD, SIZE, IN_BROWSER];
pub const ALL: [Stage; 9] = [
    FORMAT, LINTS, PAGE_LINTS, SUPPLY, TESTS, READERS, BUILD, SIZE, IN_BROWSER,
];

/// Runs all stages, whatever happens, and ends with one line of counts.
pub fn test(stages: &[Stage]) -> ExitCode {
    let mut total = Tally::default();
    let mut reasons = Vec::new();
    for (number, stage) in (1..).zip(stages) {
        let Stage { name, usual, run } = stage;
        say(&format!(
            "[{number}/{}] {name}; usually {usual}.",
            stages.len()
        ));
        let start = Instant::now();
        let (tally, done) = run();
        let has_failures = tally.failed > 0;
        total.add(tally);
        if let Err(reason) = done {
            // Failing tests count one by one, any other failure as one.
            if !has_failures {
                total.failed += 1;
            }
            say(&format!("{name}: {reason}"));
            reasons.push(*name);
        }
        say(&format!("      {} s", start.elapsed().as_secs()));
    }
    if !reasons.is_empty() {
        say(&format!("Failed: {}.", reasons.join("; ")));
    }
    if !total.unasked.is_empty() {
        say(&format!(
            "Not asked, as nobody could be reached: {}.",
            total.unasked.join(", ")
        ));
    }
    let is_whole = total.left_out.is_empty();
    let left_out = match is_whole {
        true => String::new(),
        false => format!(", left out: {}", total.left_out.join(", ")),
    };
    println!("{} passed, {} failed{left_out}", total.passed, total.failed);
    // Whoever is to trust the answer wants all of it.
    let must_be_whole = env::var_os("CI").is_some_and(|ci| ci == "true");
    if total.failed == 0 && (is_whole || !must_be_whole) {
        ExitCode::SUCCESS
    } else {
        ExitCode::FAILURE
    }
}

fn bare(done: Result<()>) -> (Tally, Result<()>) {
    (Tally::default(), done)
}

/// Runs cargo's tests, lets the output through and adds up the results.
fn count(args: &[&str], total: &mut Tally) -> Result<()> {
    let mut command = cargo_command(args);
    let line = shown(&command);
    let mut child = command
        .stdout(Stdio::piped())
        .spawn()
        .map_err(|e| format!("{line} does not start: {e}."))?;
    if let Some(output) = child.stdout.take() {
        for row in BufReader::new(output).lines() {
            let row = row.map_err(|e| format!("{line} broke off: {e}."))?;
            println!("{row}");
            if let Some(tally) = Tally::of_line(&row) {
                total.add(tally);
            }
        }
    }
    let status = child.wait().map_err(|e| format!("{line}: {e}."))?;
    if status.success() {
        return Ok(());
    }
    Err(format!("{line} failed ({status})."))
}
