//! Gets the tools that the page build needs, once, in the pinned versions.

use crate::{
    Result,
    run::{answer, cargo, cargo_command, command, say, succeed},
    versions::TRUNK,
};
use std::{
    env, fs,
    path::{Path, PathBuf},
};
use xtask::{places, programs};

const TARGET: &str = "wasm32-unknown-unknown";

/// Makes everything ready and says where trunk is.
pub fn ready() -> Result<PathBuf> {
    target()?;
    bindgen()?;
    let trunk = trunk()?;
    // The build itself never touches the network.
    cargo(&["fetch", "--quiet", "--locked", "--target", TARGET])?;
    Ok(trunk)
}

/// The compiler's library for the browser.
pub fn target() -> Result<()> {
    let mut rustc = command("rustc");
    rustc.args(["--print", "sysroot"]);
    let sysroot = answer(rustc).ok_or("The Rust compiler rustc is not on the search path.")?;
    let library = Path::new(&sysroot).join("lib/rustlib").join(TARGET);
    if library.is_dir() {
        return Ok(());
    }
    say(&format!(
        "Adding the compiler target {TARGET}; usually 10 seconds."
    ));
    let mut rustup = command("rustup");
    rustup.args(["target", "add", TARGET]);
    succeed(rustup).map_err(|e| {
        format!("{e} Please add the target {TARGET} to this Rust installation by hand.")
    })
}

/// The formatter and the linter, which a minimal Rust lacks.
pub fn linters() -> Result<()> {
    for (command_name, component) in [("fmt", "rustfmt"), ("clippy", "clippy")] {
        if answer(cargo_command(&[command_name, "--version"])).is_some() {
            continue;
        }
        say(&format!("Adding {component}; usually 10 seconds."));
        let mut rustup = command("rustup");
        rustup.args(["component", "add", component]);
        succeed(rustup)?;
    }
    Ok(())
}

/// Our own stand-in for the wasm-bindgen command; cargo knows when it is stale.
fn bindgen() -> Result<()> {
    let file = format!("wasm-bindgen{}", env::consts::EXE_SUFFIX);
    let (folder, place) = (places::tools(), places::tools().join(file));
    if !place.is_file() {
        say("Building the wasm-bindgen step; usually half a minute, the first time only.");
    }
    cargo(&["build", "--quiet", "--locked", "--package=bindgen-standin"])?;
    let built = places::target().join("debug");
    let built = programs::program_in(&built, "bindgen-standin")
        .ok_or("Cargo built bindgen-standin, but not where it was expected.")?;
    if fs::read(&built).ok() == fs::read(&place).ok() {
        return Ok(());
    }
    fs::create_dir_all(&folder)
        .and_then(|()| fs::remove_file(&place).or(Ok(())))
        .and_then(|()| fs::copy(&built, &place))
        .map_err(|e| format!("{}: {e}.", place.display()))?;
    Ok(())
}

/// The bundler: ours, or the user's own when it has the right version.
fn trunk() -> Result<PathBuf> {
    if let Some(found) = right_trunk() {
        return Ok(found);
    }
    install("trunk", TRUNK, &["--no-default-features"], "2 to 3 minutes")?;
    right_trunk().ok_or_else(|| format!("Trunk {TRUNK} was installed, but does not run."))
}

/// Makes sure that a program is among our own tools in this version.
pub fn pinned(name: &str, version: &str, options: &[&str], usual: &str) -> Result<()> {
    let right = programs::program_in(&places::tools(), name).is_some_and(|file| {
        let mut ask = command(file);
        ask.arg("--version");
        answer(ask).is_some_and(|line| line == format!("{name} {version}"))
    });
    if right {
        return Ok(());
    }
    install(name, version, options, usual)
}

/// Builds a program that cargo can install, into our own folder.
pub fn install(name: &str, version: &str, options: &[&str], usual: &str) -> Result<()> {
    say(&format!(
        "Installing {name} {version}; usually {usual}, the first time only."
    ));
    let root = places::tools();
    let root = root.parent().unwrap_or(&root).to_string_lossy();
    let mut install = cargo_command(&["install", name, "--version", version, "--locked"]);
    install
        .args(["--quiet", "--debug", "--no-track"])
        .args(options)
        .args(["--force", "--root", &root])
        .env("CARGO_PROFILE_DEV_DEBUG", "0")
        .env_remove("CARGO_TARGET_DIR");
    succeed(install)
}

fn right_trunk() -> Option<PathBuf> {
    let cargo_home = env::var_os("CARGO_HOME")
        .map(PathBuf::from)
        .or_else(|| env::home_dir().map(|home| home.join(".cargo")));
    [
        programs::program_in(&places::tools(), "trunk"),
        cargo_home.and_then(|home| programs::program_in(&home.join("bin"), "trunk")),
        programs::find(&["trunk"]),
    ]
    .into_iter()
    .flatten()
    .find(|file| {
        let mut version = command(file);
        version.arg("--version");
        answer(version).is_some_and(|line| line == format!("trunk {TRUNK}"))
    })
}
