//! Builds and weighs the finished page.

use crate::{
    Result,
    run::{cargo, cargo_command, command, say, succeed},
    tools,
};
use std::{env, fs, path::PathBuf, time::Instant};
use xtask::{bundle, places};

/// Builds the page into `dist`.
pub fn build() -> Result<()> {
    let trunk = tools::ready()?;
    say("Building the page; usually 4 minutes the first time, seconds later.");
    let start = Instant::now();
    // What prints the markup, see `stamp.rs`; built first, as it may still need
    // the network.
    cargo(&["build", "--quiet", "--locked", "--package=ampwright-web"])?;
    let mut build = command(trunk);
    build
        .args(["build", "--color=never"])
        // Trunk refuses to start when this common setting is "1".
        .env_remove("NO_COLOR")
        // Cargo adds these to the flags in .cargo/config.toml.
        .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS", flags());
    succeed(build)?;
    say(&format!(
        "The page is in {}, after {} seconds.",
        places::dist().display(),
        start.elapsed().as_secs()
    ));
    Ok(())
}

/// Builds the charging runs of the bench as the page is built.
pub fn runs() -> Result<()> {
    tools::ready()?;
    say("Building charging runs for the browser; usually a minute the first time.");
    let mut build = cargo_command(&[
        "build",
        "--quiet",
        "--locked",
        "--profile=page",
        "--target=wasm32-unknown-unknown",
        "--package=ampwright-tests",
        "--features=bench",
        "--bin=bench_runs",
    ]);
    build.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS", flags());
    succeed(build)
}

/// Keeps the folders of the machine that builds the page out of it.
fn flags() -> String {
    let home = env::var_os("CARGO_HOME").map(PathBuf::from);
    let home = home.or_else(|| Some(env::home_dir()?.join(".cargo")));
    [(home, "cargo"), (Some(places::root()), "ampwright")]
        .into_iter()
        .filter_map(|(folder, instead)| Some((folder?.to_str()?.to_owned(), instead)))
        // Flags are parted at spaces.
        .filter(|(folder, _)| !folder.contains(' '))
        .map(|(folder, instead)| format!("--remap-path-prefix={folder}={instead} "))
        .collect()
}

/// Builds the page and writes it as one file.
pub fn bundle() -> Result<()> {
    build()?;
    let page = bundle::bundle(&places::dist())?;
    let folder = places::target().join("bundle");
    let file = folder.join("ampwright.html");
    fs::create_dir_all(&folder)
        .and_then(|()| fs::write(&file, &page))
        .map_err(|e| format!("{}: {e}.", file.display()))?;
    say(&format!(
        "The page as one file of {:.1} MB is {}.",
        page.len() as f64 / 1e6,
        file.display()
    ));
    Ok(())
}

/// Weighs the page against its budget.
pub fn size() -> Result<()> {
    if !places::dist().join("index.html").is_file() {
        build()?;
    }
    say("Weighing the page; usually 20 seconds the first time.");
    cargo(&[
        "run",
        "--quiet",
        "--release",
        "--package=ampwright-tests",
        "--features=size",
        "--bin=size",
    ])
}
