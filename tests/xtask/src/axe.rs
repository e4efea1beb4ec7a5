//! Gets axe-core, the checks of accessibility that the browser tests run: in
//! the version and with the checksum that `tests/axe/package-lock.json` pins.
//! Nothing of it is shipped.

use crate::{
    Result,
    run::{command, say, succeed},
};
use std::fs;
use xtask::{places, programs};

/// Makes sure that it is there.
pub fn ready() -> Result<()> {
    let from = places::root().join("tests/axe");
    let to = places::target().join("tools/axe");
    let lock = "package-lock.json";
    let pinned = fs::read(from.join(lock)).map_err(|e| format!("{lock}: {e}."))?;
    if places::axe().is_file() && fs::read(to.join(lock)).is_ok_and(|had| had == pinned) {
        return Ok(());
    }
    let npm = programs::find(&["npm"]).ok_or("The search path lacks npm, which gets axe-core.")?;
    say("Getting axe-core; usually 5 seconds, the first time only.");
    fs::create_dir_all(&to).map_err(|e| format!("{}: {e}.", to.display()))?;
    let package = "package.json";
    fs::copy(from.join(package), to.join(package)).map_err(|e| format!("{package}: {e}."))?;
    fs::copy(from.join(lock), to.join(lock)).map_err(|e| format!("{lock}: {e}."))?;
    let mut install = command(npm);
    install.current_dir(&to).args([
        "ci",
        "--ignore-scripts",
        "--no-audit",
        "--no-fund",
        "--silent",
    ]);
    let done = succeed(install);
    if done.is_err() {
        fs::remove_file(to.join(lock)).ok();
    }
    done
}
