//! Finds programs on the search path.

use crate::places;
use std::{
    env, fs,
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

/// The second browser.
pub fn firefox() -> Option<PathBuf> {
    find(&["firefox-esr", "firefox"])
}

/// The program that drives it: the user's own, or the one that was built here.
pub fn geckodriver() -> Option<PathBuf> {
    find(&["geckodriver"]).or_else(|| program_in(&places::tools(), "geckodriver"))
}

/// The program that drives the third.
pub fn webkit_driver() -> Option<PathBuf> {
    find(&["WebKitWebDriver"])
}

/// The third: a small browser in the folder of WebKit's library.
pub fn webkit_browser() -> Option<PathBuf> {
    let libraries = fs::read_dir("/usr/lib").ok()?;
    let mut folders: Vec<PathBuf> = libraries.flatten().map(|entry| entry.path()).collect();
    folders.push(PathBuf::from("/usr/lib"));
    folders
        .iter()
        .flat_map(|folder| ["webkit2gtk-4.1", "webkit2gtk-4.0"].map(|name| folder.join(name)))
        .find_map(|folder| program_in(&folder, "MiniBrowser"))
}
