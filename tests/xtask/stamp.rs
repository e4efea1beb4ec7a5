//! Writes the page's markup into its start page, and the list of finished files
//! with a version over their contents into the service worker, and takes the
//! comments out of the scripts. The page build
//! calls this before it puts the files in place.

use crate::{
    Result,
    run::{cargo_command, shown},
};
use std::{
    env, fs,
    path::{Path, PathBuf},
    process::Stdio,
};

const START: &str = "index.html";
/// Where the markup goes in the start page.
const PLACE: &str = r#"<div id="app"></div>"#;
const WORKER: &str = "sw.js";
const VERSION: &str = "const VERSION = 'unstamped';";
const FILES: &str = "const FILES = [];";

pub fn stamp() -> Result<()> {
    let folder = env::var_os("TRUNK_STAGING_DIR")
        .map(PathBuf::from)
        .ok_or("The page build calls this task; there is no need to.")?;
    let failed = |e: std::io::Error| format!("{}: {e}.", folder.display());
    let start = folder.join(START);
    let page = fs::read_to_string(&start).map_err(failed)?;
    fs::write(&start, written(&page, &markup()?)?).map_err(failed)?;
    let mut names = Vec::new();
    list(&folder, "", &mut names).map_err(failed)?;
    names.sort();

    for name in names.iter().filter(|name| is_ours(name)) {
        let script = fs::read_to_string(folder.join(name)).map_err(failed)?;
        fs::write(folder.join(name), bare(&script)).map_err(failed)?;
    }
    let worker = fs::read_to_string(folder.join(WORKER)).map_err(failed)?;
    let mut sum = Sum::new();
    sum.add(worker.as_bytes());
    names.retain(|name| name != WORKER);
    for name in &names {
        sum.add(name.as_bytes());
        sum.add(&fs::read(folder.join(name)).map_err(failed)?);
    }
    let stamped = stamped(&worker, &format!("{:016x}", sum.0), &names)?;
    fs::write(folder.join(WORKER), stamped).map_err(failed)
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

fn written(page: &str, markup: &str) -> Result<String> {
    if page.matches(PLACE).count() != 1 {
        return Err(format!("{START} must hold this once: {PLACE}"));
    }
    Ok(page.replace(
        PLACE,
        &PLACE.replace("></", &format!(">{}</", markup.trim())),
    ))
}

/// The names of all files in a folder, with `/` between the parts.
fn list(folder: &Path, before: &str, names: &mut Vec<String>) -> std::io::Result<()> {
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let name = format!("{before}{}", entry.file_name().to_string_lossy());
        if entry.file_type()?.is_dir() {
            list(&entry.path(), &format!("{name}/"), names)?;
        } else {
            names.push(name);
        }
    }
    Ok(())
}

fn stamped(worker: &str, version: &str, names: &[String]) -> Result<String> {
    for line in [VERSION, FILES] {
        if worker.matches(line).count() != 1 {
            return Err(format!("{WORKER} must hold this line once: {line}"));
        }
    }
    let rows: String = names
        .iter()
        // The start page is asked for by its folder.
        .map(|name| match name.as_str() {
            START => "  './',\n".to_string(),
            other => format!("  '{other}',\n"),
        })
        .collect();
    Ok(worker
        .replace(VERSION, &format!("const VERSION = '{version}';"))
        .replace(FILES, &format!("const FILES = [\n{rows}];")))
}

/// Whether a file is a script of `web/shell`.
fn is_ours(name: &str) -> bool {
    name.ends_with(".js") && !name.starts_with("ampwright-web")
}

/// A script as it is sent: without the lines of comment, and without indents.
fn bare(script: &str) -> String {
    let lines = script.lines().map(str::trim_start);
    let kept = lines.filter(|line| !line.is_empty() && !line.starts_with("//"));
    kept.flat_map(|line| [line, "\n"]).collect()
}

/// FNV-1a over 64 bits: enough to tell one build from another.
struct Sum(u64);

impl Sum {
    fn new() -> Sum {
        Sum(0xcbf2_9ce4_8422_2325)
    }

    fn add(&mut self, bytes: &[u8]) {
        for byte in bytes {
            self.0 = (self.0 ^ u64::from(*byte)).wrapping_mul(0x100_0000_01b3);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_sum_is_the_published_one() {
        let mut sum = Sum::new();
        sum.add(b"foobar");
        assert_eq!(sum.0, 0x8594_4171_f739_67e8);
    }

    #[test]
    fn comments_stay_at_home() {
        assert_eq!(
            bare("// What for.\n\nif (a) {\n  // Why.\n  b('//');\n}\n"),
            "if (a) {\nb('//');\n}\n"
        );
        assert!(is_ours("boot.js") && !is_ours("ampwright-web-1a.js") && !is_ours("a.css"));
    }

    #[test]
    fn the_worker_gets_version_and_files() {
        let worker = include_str!("../../web/shell/sw.js");
        let names = ["boot.js".to_string(), "index.html".to_string()];
        let text = stamped(worker, "00ff", &names).unwrap();
        assert!(text.contains("const VERSION = '00ff';"), "{text}");
        assert!(text.contains("[\n  'boot.js',\n  './',\n];"), "{text}");
    }

    #[test]
    fn the_markup_goes_into_the_start_page() {
        let page = include_str!("../../index.html");
        let text = written(page, "<p>A</p>\n").unwrap();
        assert!(text.contains(r#"<div id="app"><p>A</p></div>"#), "{text}");
        assert!(written(&text, "<p>B</p>").is_err());
    }

    #[test]
    fn a_worker_is_stamped_once() {
        assert!(stamped("nothing to fill in", "00ff", &[]).is_err());
    }
}
