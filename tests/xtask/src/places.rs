//! Where things are in this working copy.

use std::{
    env,
    path::{Path, PathBuf},
};

/// The top folder of the working copy.
pub fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).unwrap_or(here).to_path_buf()
}

/// The finished page.
pub fn dist() -> PathBuf {
    root().join("dist")
}

/// Everything built on the way.
pub fn target() -> PathBuf {
    match env::var_os("CARGO_TARGET_DIR") {
        Some(folder) => root().join(folder),
        None => root().join("target"),
    }
}

/// The build tools that the task runner installs.
pub fn tools() -> PathBuf {
    target().join("tools").join("bin")
}

/// The checks of accessibility, once the task runner has got them.
pub fn axe() -> PathBuf {
    target().join("tools/axe/node_modules/axe-core/axe.min.js")
}

/// The pictures that the browser tests take.
pub fn shots() -> PathBuf {
    target().join("shots")
}
