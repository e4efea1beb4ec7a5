//! Runs the fuzz targets of `tests/fuzz`: libFuzzer writes texts, the readers
//! must bear them. What it learns stays under `target/fuzz`.

use crate::{
    Result,
    run::{answer, cargo_command, command, say, succeed},
    tools,
    versions::CARGO_FUZZ,
};
use std::{fs, path::Path};
use xtask::{places, programs};

const TARGETS: [&str; 3] = ["link", "file", "log"];
/// How long each one runs when nobody says \[s\].
const SECONDS: u64 = 60;
/// Logs to begin with; links and files come from those kept for ever.
const LOGS: [&str; 2] = [
    "min\tamps\tcase\tair\trpm\tvolts\n0\t95\t30\t30\t1400\t13.9\n5\t80\t70\t40\t1400\t14.0\n",
    "time;alternator A;case (°F);shaft rpm\n23:58;90;100;3000\n0:03;80,5;150;3000\n",
];

/// Texts that each reader is tried with in every check.
const BOUNDED: u64 = 30_000;

/// A short run that always begins alike, as a part of every check.
pub fn bounded() -> Result<()> {
    if programs::find(&["c++", "g++", "clang++"]).is_none() {
        say("LEFT OUT: libFuzzer needs a C++ compiler, and there is none.");
        return Ok(());
    }
    fuzz(Bound::Runs(BOUNDED))
}

/// How long each reader is tried.
pub enum Bound {
    /// So many seconds; as usual when nobody says.
    Seconds(Option<u64>),
    /// So many texts.
    Runs(u64),
}

/// Tries each reader.
pub fn fuzz(bound: Bound) -> Result<()> {
    let bound = match bound {
        Bound::Seconds(number) => format!("-max_total_time={}", number.unwrap_or(SECONDS)),
        Bound::Runs(number) => format!("-runs={number}"),
    };
    ready()?;
    let home = places::target().join("fuzz");
    let folder = places::root().join("tests").join("fuzz");
    seed(&home)?;
    for target in TARGETS {
        say(&format!("Trying the reader of a {target}."));
        let corpus = made(home.join("corpus").join(target))?;
        let found = made(home.join("found").join(target))?;
        // No sanitizer: there is no unsafe code to watch, and so no nightly
        // compiler is needed.
        let mut run = cargo_command(&["fuzz", "run", "--sanitizer", "none"]);
        run.arg("--fuzz-dir").arg(&folder);
        run.arg("--target-dir").arg(home.join("build"));
        run.arg(target)
            .arg(corpus)
            .arg(home.join("seeds").join(target));
        run.args([
            "--",
            "-max_len=1000",
            "-timeout=10",
            "-seed=1",
            "-verbosity=0",
            "-print_final_stats=1",
            &bound,
        ]);
        run.arg(format!("-dict={}", folder.join("words.dict").display()));
        run.arg(format!("-artifact_prefix={}/", found.display()));
        succeed(run).map_err(|e| {
            format!(
                "{e} The text that did it is in {}; add it to a test.",
                found.display()
            )
        })?;
    }
    Ok(())
}

/// cargo-fuzz in the pinned version.
fn ready() -> Result<()> {
    let right = programs::program_in(&places::tools(), "cargo-fuzz").is_some_and(|file| {
        let mut version = command(file);
        version.arg("--version");
        answer(version).is_some_and(|line| line == format!("cargo-fuzz {CARGO_FUZZ}"))
    });
    if right {
        return Ok(());
    }
    tools::install("cargo-fuzz", CARGO_FUZZ, &[], "a minute")
}

/// Texts to begin with.
fn seed(home: &Path) -> Result<()> {
    let links = places::root().join("tests/snapshots/version1/links.txt");
    let links = fs::read_to_string(&links).map_err(|e| format!("{}: {e}.", links.display()))?;
    let starting = |sign: &str| -> Vec<&str> {
        links
            .lines()
            .filter(|line| line.starts_with(sign))
            .collect()
    };
    for (target, texts) in TARGETS
        .into_iter()
        .zip([starting("v=2"), starting("{"), LOGS.to_vec()])
    {
        let folder = made(home.join("seeds").join(target))?;
        for (at, text) in texts.iter().enumerate() {
            let file = folder.join(at.to_string());
            fs::write(&file, text).map_err(|e| format!("{}: {e}.", file.display()))?;
        }
    }
    Ok(())
}

fn made(folder: std::path::PathBuf) -> Result<std::path::PathBuf> {
    fs::create_dir_all(&folder).map_err(|e| format!("{}: {e}.", folder.display()))?;
    Ok(folder)
}
