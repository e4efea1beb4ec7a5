//! The modules of the core stand in one order, and none uses one below it.
//!
//! Reads the sources: every path that begins with `crate::` counts, in `use` lines
//! and elsewhere; comments and tests do not.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

/// The folders of `core/src` from top to bottom, as its documentation lists them.
const LAYERS: [&str; 15] = [
    "numerics",
    "formula",
    "units",
    "schema",
    "physics",
    "boat",
    "simulation",
    "analysis",
    "findings",
    "report",
    "decision",
    "guidance",
    "text",
    "explain",
    "exchange",
];

fn core() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/src")
}

/// Every source file beneath a folder.
fn sources(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            found.extend(sources(&path));
        } else if path.extension().is_some_and(|kind| kind == "rs") {
            found.push(path);
        }
    }
    found
}

/// The code of a file: without its tests and comments.
fn code(path: &Path) -> String {
    if path
        .file_stem()
        .is_some_and(|stem| stem.to_string_lossy().ends_with("tests"))
    {
        return String::new();
    }
    let text = fs::read_to_string(path).expect("a source file");
    let code = text.split("#[cfg(test)]\nmod tests {").next();
    let lines = code.unwrap_or_default().lines();
    let lines = lines.filter(|line| !line.trim_start().starts_with("//"));
    lines.collect::<Vec<_>>().join("\n")
}

/// The paths that a module's code names beneath the crate's root, each as its parts.
fn named(own: &[String], code: &str) -> Vec<Vec<String>> {
    let is_path = |c: char| c.is_alphanumeric() || c == '_' || c == ':';
    let parts = |rest: &str| -> Vec<String> {
        let path: String = rest.chars().take_while(|c| is_path(*c)).collect();
        path.split("::").map(str::to_string).collect()
    };
    let absolute = code.split("crate::").skip(1).map(parts);
    // `super::super::x` of `a::b::c` is `a::x`.
    let relative = code.split(|c| !is_path(c)).filter_map(|path| {
        let ups = path.split("::").take_while(|part| *part == "super").count();
        let above = own.len().checked_sub(ups)?;
        let below = path.split("::").skip(ups).map(str::to_string);
        (ups > 0).then(|| own[..above].iter().cloned().chain(below).collect())
    });
    absolute.chain(relative).collect()
}

/// The parts of a file's module path: `["analysis", "belt", "words"]`.
fn module(path: &Path) -> Vec<String> {
    let inside = path
        .strip_prefix(core())
        .expect("in the core")
        .with_extension("");
    let mut parts: Vec<String> = inside
        .components()
        .map(|part| part.as_os_str().to_string_lossy().into_owned())
        .collect();
    if parts.last().is_some_and(|last| last == "mod") {
        parts.pop();
    }
    parts
}

#[test]
fn every_folder_is_a_layer() {
    let folders: BTreeSet<String> = sources(&core())
        .iter()
        .filter_map(|path| module(path).first().cloned())
        .filter(|name| name != "lib" && name != "bin")
        .collect();
    assert_eq!(folders, LAYERS.map(str::to_string).into_iter().collect());
}

#[test]
fn no_layer_uses_one_below_it() {
    let place = |name: &str| LAYERS.iter().position(|layer| *layer == name);
    let mut wrong = BTreeSet::new();
    for path in sources(&core()) {
        let own = module(&path);
        let Some(here) = own.first().and_then(|name| place(name)) else {
            continue;
        };
        for used in named(&own, &code(&path)) {
            if used
                .first()
                .and_then(|name| place(name))
                .is_some_and(|there| there > here)
            {
                wrong.insert(format!("{} uses {}", own.join("::"), used.join("::")));
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// Every module that has modules of its own, as the parts of its path: the layers, and
/// whatever folders they have at any depth.
fn parents() -> BTreeSet<Vec<String>> {
    let modules = sources(&core()).into_iter().map(|path| module(&path));
    let above = modules.flat_map(|own| (1..own.len()).map(move |depth| own[..depth].to_vec()));
    above.filter(|parent| parent[0] != "bin").collect()
}

/// Which of a module's own modules each of them uses.
fn within(parent: &[String]) -> BTreeMap<String, BTreeSet<String>> {
    let mut uses: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let depth = parent.len();
    for path in sources(&core()) {
        let own = module(&path);
        // What gathers the modules uses them all.
        let Some(name) = own.get(depth).filter(|_| own.starts_with(parent)) else {
            continue;
        };
        let entry = uses.entry(name.clone()).or_default();
        for used in named(&own, &code(&path)) {
            if used.starts_with(parent)
                && let Some(there) = used.get(depth).filter(|there| *there != name)
            {
                entry.insert(there.clone());
            }
        }
    }
    let known: BTreeSet<String> = uses.keys().cloned().collect();
    for used in uses.values_mut() {
        used.retain(|name| known.contains(name));
    }
    uses
}

/// What is left once everything is taken away that uses nothing that is left: only
/// circles, and what uses them.
fn circles(mut uses: BTreeMap<String, BTreeSet<String>>) -> BTreeMap<String, BTreeSet<String>> {
    loop {
        let free: BTreeSet<String> = uses
            .iter()
            .filter(|(_, used)| used.is_empty())
            .map(|(name, _)| name.clone())
            .collect();
        if free.is_empty() {
            return uses;
        }
        uses.retain(|name, _| !free.contains(name));
        for used in uses.values_mut() {
            used.retain(|name| !free.contains(name));
        }
    }
}

#[test]
fn no_circle_within_a_module() {
    let parents = parents();
    let deep = ["decision", "arrangements", "parts"].map(str::to_string);
    assert!(
        parents.contains(&deep[..]),
        "modules of modules of a layer are seen"
    );
    let mut wrong = Vec::new();
    for parent in &parents {
        let name = parent.join("::");
        let left = circles(within(parent)).into_iter();
        wrong.extend(left.map(|(own, used)| format!("{name}::{own} uses {used:?}")));
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn a_circle_is_seen() {
    let uses = |name: &str, used: &[&str]| {
        let used = used.iter().map(|name| name.to_string());
        (name.to_string(), used.collect::<BTreeSet<_>>())
    };
    let map = BTreeMap::from([
        uses("a", &["b"]),
        uses("b", &["a", "c"]),
        uses("c", &[]),
        uses("d", &["c"]),
    ]);
    let left: Vec<String> = circles(map).into_keys().collect();
    assert_eq!(left, ["a", "b"]);
}
