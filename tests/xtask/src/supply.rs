//! What is used of other people's: whether its licences and sources are ones
//! that `.cargo/deny.toml` allows, and whether anything is known against it.
//!
//! Licences and sources stand in the packages and are always looked at. What is
//! known against a package is asked of those who keep count of it; where they
//! cannot be reached the check says so, which is no fault of the project.

use crate::{
    Result,
    run::{answer, cargo_command, command, say, succeed},
    tally::Tally,
    tools::pinned,
    versions::CARGO_DENY,
};
use std::process::{Command, Stdio};
use xtask::{places, programs};

/// The workspaces.
const WORKSPACES: [&str; 2] = ["Cargo.toml", "tests/fuzz/Cargo.toml"];

/// Looks at all packages.
pub fn check() -> (Tally, Result<()>) {
    let mut tally = Tally::default();
    let done = crates(&mut tally);
    let scripts = npm(&mut tally);
    (tally, done.and(scripts))
}

fn crates(tally: &mut Tally) -> Result<()> {
    pinned(
        "cargo-deny",
        CARGO_DENY,
        &["--no-default-features"],
        "1 to 2 minutes",
    )?;
    each(&["licenses", "sources", "bans"])?;
    let mut fetch = deny(WORKSPACES[0], &["fetch", "db"]);
    // Nobody is there to be asked for a password.
    fetch.env("GIT_TERMINAL_PROMPT", "0");
    if answer(fetch).is_none() {
        unasked(tally, "advisories of the crates");
        return Ok(());
    }
    each(&["advisories"])
}

/// Runs these checks for each workspace, even when one fails.
fn each(checks: &[&str]) -> Result<()> {
    // What one workspace needs the other may do without.
    let args = [&["check", "--allow", "unused-wrapper"], checks].concat();
    let done = WORKSPACES.map(|workspace| succeed(deny(workspace, &args)));
    done.into_iter().collect()
}

fn deny(workspace: &str, args: &[&str]) -> Command {
    let mut deny = cargo_command(&["deny", "--locked", "--manifest-path", workspace]);
    deny.args(["--config", ".cargo/deny.toml"]).args(args);
    deny
}

/// What is known against the packages of npm; how they are had says `axe.rs`.
fn npm(tally: &mut Tally) -> Result<()> {
    const WHAT: &str = "advisories of npm";
    let Some(npm) = programs::find(&["npm"]) else {
        unasked(tally, WHAT);
        return Ok(());
    };
    let mut audit = command(npm);
    audit
        .current_dir(places::root().join("tests/axe"))
        .args(["audit", "--json", "--fetch-retries=0"])
        .stderr(Stdio::null());
    let output = audit.output().map_err(|e| format!("npm: {e}."))?;
    let text = String::from_utf8_lossy(&output.stdout);
    match (is_report(&text), output.status.success()) {
        (false, _) => unasked(tally, WHAT),
        (true, true) => (),
        (true, false) => {
            say(&text);
            return Err("npm audit found something.".into());
        }
    }
    Ok(())
}

/// Whether npm says what it found, and not why it could not ask.
fn is_report(text: &str) -> bool {
    text.contains("\"auditReportVersion\"")
}

fn unasked(tally: &mut Tally, what: &'static str) {
    say(&format!("NOT ASKED: {what}; nobody could be reached."));
    tally.unasked.push(what);
}

#[cfg(test)]
mod tests {
    use super::is_report;

    #[test]
    fn a_refusal_is_no_report() {
        assert!(is_report(
            r#"{ "auditReportVersion": 2, "vulnerabilities": {} }"#
        ));
        assert!(!is_report(
            r#"{ "message": "405 Method Not Allowed", "error": {} }"#
        ));
        assert!(!is_report(""));
    }
}
