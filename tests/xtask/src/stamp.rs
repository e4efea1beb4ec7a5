//! Finishes the page: puts its markup into the start page, gives the shell's
//! scripts names by their contents, writes the build on the page, and the list
//! of finished files into the service worker. The page build calls this before
//! it puts the files in place.

use crate::{
    Result,
    run::{cargo_command, shown},
};
use std::{env, fs, path::PathBuf, process::Stdio};
use xtask::{
    bundle::{START, bundle, integrity, short_sum},
    files,
};

/// Where the markup goes in the start page.
const PLACE: &str = r#"<div id="app"></div>"#;
/// Where the page finds which build it is, and what the copy in one file weighs
/// \[MB\].
const BUILD: &str = r#"data-build="""#;
const WEIGHT: &str = r#"data-weight="""#;
/// Where the first part of the program finds the second one, and what the build
/// calls that.
const LATER: &str = r#"data-rest="""#;
const LATER_FILE: &str = "snippets/later.wasm";
const WORKER: &str = "sw.js";
const VERSION: &str = "const VERSION = 'unstamped';";
const FILES: &str = "const FILES = {};";

pub fn stamp() -> Result<()> {
    let folder = env::var_os("TRUNK_STAGING_DIR")
        .map(PathBuf::from)
        .ok_or("The page build calls this task; there is no need to.")?;
    let failed = |e: std::io::Error| format!("{}: {e}.", folder.display());
    let start = folder.join(START);
    let mut page = fs::read_to_string(&start).map_err(failed)?;
    page = put(
        &page,
        PLACE,
        &PLACE.replace("></", &format!(">{}</", markup()?.trim())),
    )?;

    let later = fs::read(folder.join(LATER_FILE)).map_err(failed)?;
    let later_name = format!("later-{}.wasm", short_sum(&later, 16));
    fs::write(folder.join(&later_name), later).map_err(failed)?;
    fs::remove_dir_all(folder.join("snippets")).map_err(failed)?;
    page = put(
        &page,
        LATER,
        &LATER.replace(r#""""#, &format!("\"./{later_name}\"")),
    )?;

    let mut names = files::names(&folder).map_err(failed)?;
    for name in &mut names {
        let Some((stem, kind)) = ours(name) else {
            continue;
        };
        let file = folder.join(&*name);
        let text = fs::read_to_string(&file).map_err(failed)?;
        let text = match kind {
            "css" => plain(&text),
            _ => bare(&text),
        };
        fs::write(&file, &text).map_err(failed)?;
        if name == WORKER {
            continue;
        }
        let new = format!("{stem}-{}.{kind}", short_sum(text.as_bytes(), 16));
        page = put(&page, &format!("{name}\""), &format!("{new}\""))?;
        fs::rename(&file, folder.join(&new)).map_err(failed)?;
        *name = new;
    }
    names.sort();
    fs::write(&start, &page).map_err(failed)?;

    // The build is the sum over everything, before it says so itself.
    let mut sums = String::new();
    for name in &names {
        let bytes = fs::read(folder.join(name)).map_err(failed)?;
        sums += &format!("{name} {}\n", integrity(&bytes));
    }
    let build = short_sum(sums.as_bytes(), 8);
    let megabytes = bundle(&folder)?.len() as f64 / 1e6;
    page = put(
        &page,
        BUILD,
        &BUILD.replace(r#""""#, &format!("\"{build}\"")),
    )?;
    page = put(
        &page,
        WEIGHT,
        &WEIGHT.replace(r#""""#, &format!("\"{megabytes:.1}\"")),
    )?;
    fs::write(&start, &page).map_err(failed)?;

    let mut rows = Vec::new();
    for name in names.iter().filter(|name| *name != WORKER) {
        let bytes = fs::read(folder.join(name)).map_err(failed)?;
        rows.push((name.as_str(), integrity(&bytes)));
    }
    let worker = fs::read_to_string(folder.join(WORKER)).map_err(failed)?;
    fs::write(folder.join(WORKER), stamped(&worker, &build, &rows)?).map_err(failed)
}

/// Stem and kind of a script of the shell, whose name does not tell its contents
/// yet, or of the style, whose name tells what it was.
fn ours(name: &str) -> Option<(&str, &str)> {
    match name.rsplit_once('.')? {
        (stem, "js") if !stem.contains(['/', '-']) => Some((stem, "js")),
        (stem, "css") => Some((stem.split('-').next()?, "css")),
        _ => None,
    }
}

/// A style without remarks and indents. No text in it holds their signs.
fn plain(style: &str) -> String {
    let mut pieces = style.split("/*");
    let first = pieces.next().unwrap_or_default().to_string();
    let bare = pieces
        .filter_map(|piece| Some(piece.split_once("*/")?.1))
        .fold(first, |all, piece| all + piece);
    bare.lines()
        .map(str::trim)
        .filter(|line| !line.is_empty())
        .flat_map(|line| [line, "\n"])
        .collect()
}

/// A script without the lines that are only for who reads it.
fn bare(script: &str) -> String {
    script
        .lines()
        .filter(|line| !line.is_empty() && !line.trim_start().starts_with("//"))
        .flat_map(|line| [line, "\n"])
        .collect()
}

/// Puts a text in its place, which must be there once.
fn put(page: &str, place: &str, text: &str) -> Result<String> {
    if page.matches(place).count() != 1 {
        return Err(format!("{START} must hold this once: {place}"));
    }
    Ok(page.replace(place, text))
}

/// The page's markup, which the front end prints when it is built natively.
fn markup() -> Result<String> {
    let mut print = cargo_command(&["run", "--quiet", "--locked", "--package=ampwright-web"]);
    print.stderr(Stdio::inherit());
    let output = print
        .output()
        .map_err(|e| format!("{} does not start: {e}.", shown(&print)))?;
    if !output.status.success() {
        return Err(format!("{} failed ({}).", shown(&print), output.status));
    }
    String::from_utf8(output.stdout).map_err(|e| format!("The page's markup: {e}."))
}

fn stamped(worker: &str, version: &str, files: &[(&str, String)]) -> Result<String> {
    for line in [VERSION, FILES] {
        if worker.matches(line).count() != 1 {
            return Err(format!("{WORKER} must hold this line once: {line}"));
        }
    }
    let rows: String = files
        .iter()
        // The start page is asked for by its folder.
        .map(|(name, sum)| match *name {
            START => format!("  './': '{sum}',\n"),
            other => format!("  '{other}': '{sum}',\n"),
        })
        .collect();
    Ok(worker
        .replace(VERSION, &format!("const VERSION = '{version}';"))
        .replace(FILES, &format!("const FILES = {{\n{rows}}};")))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_worker_gets_version_and_files() {
        let worker = include_str!("../../../web/shell/sw.js");
        let files = ["boot-1.js", "index.html"].map(|name| (name, format!("sum of {name}")));
        let text = stamped(worker, "00ff", &files).unwrap();
        assert!(text.contains("const VERSION = '00ff';"), "{text}");
        let list = "{\n  'boot-1.js': 'sum of boot-1.js',\n  './': 'sum of index.html',\n};";
        assert!(text.contains(list), "{text}");
    }

    #[test]
    fn the_markup_goes_into_the_start_page_once() {
        let page = include_str!("../../../index.html");
        let text = put(page, PLACE, "<p>A</p>").unwrap();
        assert!(text.contains("<p>A</p>"), "{text}");
        assert!(put(&text, PLACE, "<p>B</p>").is_err());
    }

    #[test]
    fn remarks_stay_at_home() {
        assert_eq!(
            bare("// A.\n\na('//b'); // c\n  // d\n  e\n"),
            "a('//b'); // c\n  e\n"
        );
    }

    #[test]
    fn a_worker_is_stamped_once() {
        assert!(stamped("nothing to fill in", "00ff", &[]).is_err());
    }

    #[test]
    fn the_shell_is_what_has_no_sum_in_its_name() {
        assert_eq!(ours("boot.js"), Some(("boot", "js")));
        assert_eq!(ours("style-01.css"), Some(("style", "css")));
        assert!(ours(WORKER).is_some());
        assert_eq!(ours("ampwright-web-01.js"), None);
        assert_eq!(ours("icons/a.js"), None);
    }

    #[test]
    fn a_style_goes_out_plain() {
        let style = "/* A */\na { b: c; }\n@media print {\n  d { e: f; /* g\n h */ }\n}\n";
        assert_eq!(
            plain(style),
            "a { b: c; }\n@media print {\nd { e: f;  }\n}\n"
        );
    }
}
