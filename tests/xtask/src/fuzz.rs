//! Runs the fuzz targets of `tests/fuzz`: libFuzzer writes texts, the readers
//! must bear them. What it learns stays under `target/fuzz`.

use crate::{
    Result,
    run::{cargo_command, say, succeed},
    tally::Tally,
    tools::pinned,
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

/// What libFuzzer begins with, unless others are wanted.
pub const SEED: u32 = 1;
/// Texts that each reader is tried with in every check.
const BOUNDED: u64 = 30_000;

/// A short run that always begins alike, as a part of every check.
pub fn bounded() -> (Tally, Result<()>) {
    let mut tally = Tally::default();
    if programs::find(&["c++", "g++", "clang++"]).is_none() {
        say("LEFT OUT: libFuzzer needs a C++ compiler, and there is none.");
        tally.left_out.push("libFuzzer");
        return (tally, Ok(()));
    }
    (tally, fuzz(Bound::Runs(BOUNDED), SEED))
}

/// How long each reader is tried.
pub enum Bound {
    /// So many seconds; as usual when nobody says.
    Seconds(Option<u64>),
    /// So many texts.
    Runs(u64),
}

/// Tries each reader with texts that follow from a seed.
pub fn fuzz(bound: Bound, seed: u32) -> Result<()> {
    let bound = match bound {
        Bound::Seconds(number) => format!("-max_total_time={}", number.unwrap_or(SECONDS)),
        Bound::Runs(number) => format!("-runs={number}"),
    };
    pinned("cargo-fuzz", CARGO_FUZZ, &[], "a minute")?;
    let home = places::target().join("fuzz");
    let folder = places::root().join("tests").join("fuzz");
    begin_with(&home)?;
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
            "-verbosity=0",
            "-print_final_stats=1",
            &format!("-seed={seed}"),
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

/// Texts to begin with.
fn begin_with(home: &Path) -> Result<()> {
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
