//! Builds and weighs the finished page.

use crate::{
    Result,
    run::{cargo, command, say, succeed},
    tools,
};
use ampwright_tests::places;
use std::time::Instant;

/// Builds the page into `dist`.
pub fn build() -> Result<()> {
    let trunk = tools::ready()?;
    say("Building the page; usually 2 minutes the first time, seconds later.");
    let start = Instant::now();
    let mut build = command(trunk);
    build
        .args(["build", "--color=never"])
        // Trunk refuses to start when this common setting is "1".
        .env_remove("NO_COLOR");
    succeed(build)?;
    say(&format!(
        "The page is in {}, after {} seconds.",
        places::dist().display(),
        start.elapsed().as_secs()
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
