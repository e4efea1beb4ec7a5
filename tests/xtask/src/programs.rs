//! Finds programs on the search path.

use std::{
    env,
    path::{Path, PathBuf},
};

/// Names under which Chromium is installed, the likeliest first.
pub const BROWSERS: [&str; 4] = [
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
];

/// The first of these names that is a program on the search path.
pub fn find(names: &[&str]) -> Option<PathBuf> {
    let path = env::var_os("PATH")?;
    names
        .iter()
        .find_map(|name| env::split_paths(&path).find_map(|folder| program_in(&folder, name)))
}

/// Where a program of this name would lie in a folder, when it is there.
pub fn program_in(folder: &Path, name: &str) -> Option<PathBuf> {
    let file = folder.join(format!("{name}{}", env::consts::EXE_SUFFIX));
    file.is_file().then_some(file)
}

/// The browser that the tests drive.
pub fn browser() -> Option<PathBuf> {
    find(&BROWSERS)
}

/// The program that drives it.
pub fn chromedriver() -> Option<PathBuf> {
    find(&["chromedriver"])
}
