//! Runs other programs, in the top folder of the working copy.

use crate::Result;
use std::{
    env,
    ffi::OsString,
    path::Path,
    process::{Command, Stdio},
};
use xtask::places;

/// A command with the build tools first on the search path and nothing to read.
pub fn command(program: impl AsRef<Path>) -> Command {
    let mut command = Command::new(program.as_ref());
    command
        .current_dir(places::root())
        .stdin(Stdio::null())
        .env("PATH", path());
    // Told to this program by cargo; it is not about the programs it starts.
    for (name, _) in env::vars_os() {
        let text = name.to_string_lossy();
        if text.starts_with("CARGO_PKG_") || text.starts_with("CARGO_MANIFEST_") {
            command.env_remove(&name);
        }
    }
    command
}

fn path() -> OsString {
    let old = env::var_os("PATH").unwrap_or_default();
    let folders = std::iter::once(places::tools()).chain(env::split_paths(&old));
    env::join_paths(folders).unwrap_or(old)
}

/// The cargo that started this program.
pub fn cargo_command(args: &[&str]) -> Command {
    let cargo = env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let mut command = command(Path::new(&cargo));
    command.args(args);
    command
}

/// Runs cargo and lets its output through.
pub fn cargo(args: &[&str]) -> Result<()> {
    succeed(cargo_command(args))
}

/// Runs a command and lets its output through.
pub fn succeed(mut command: Command) -> Result<()> {
    let shown = shown(&command);
    let status = command
        .status()
        .map_err(|e| format!("{shown} does not start: {e}."))?;
    if status.success() {
        return Ok(());
    }
    Err(format!("{shown} failed ({status})."))
}

/// What a command prints, without the line end; `None` when it fails.
pub fn answer(mut command: Command) -> Option<String> {
    let output = command.stderr(Stdio::null()).output().ok()?;
    let text = String::from_utf8_lossy(&output.stdout).trim().to_string();
    output.status.success().then_some(text)
}

/// A command as a person would type it.
pub fn shown(command: &Command) -> String {
    let program = Path::new(command.get_program());
    let name = program.file_stem().unwrap_or(program.as_os_str());
    let mut line = name.to_string_lossy().into_owned();
    for arg in command.get_args() {
        line.push(' ');
        line.push_str(&arg.to_string_lossy());
    }
    line
}

/// Says what happens next; on the error stream, as cargo does.
pub fn say(text: &str) {
    eprintln!("{text}");
}
