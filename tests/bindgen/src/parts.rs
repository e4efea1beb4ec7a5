//! The program in two parts: what the first screen needs, and the rest, which a
//! slow phone need not wait for. What belongs where follows from who calls what:
//! `later_parts` of the page is where the second part begins.

use std::{
    fs,
    path::{Path, PathBuf},
};
use walrus::ModuleConfig;
use wasm_split_cli_support::{Options, transform};

/// The module of which the first part asks the second one.
const LINK: &str = "./__wasm_split.js";
/// What fetches the second part.
const LOADER: &str = include_str!("../../../web/shell/later.js");
/// The loader's name, which the first part imports.
const LOAD: &str = "__wasm_split_load_later";

/// Writes the second part to `snippets/later.wasm` of a folder, from where the
/// page build takes it along; says where the first one lies.
pub fn take_apart(program: &[u8], folder: &Path) -> Result<PathBuf, String> {
    let parts = folder.join("parts");
    let first = parts.join("first.wasm");
    let mut options = Options::new(program);
    options.output_dir = &parts;
    options.main_out_path = &first;
    options.link_name = LINK;
    let apart = transform(options).map_err(|e| format!("{e:?}"))?;
    let [later] = &apart.split_modules[..] else {
        return Err(format!(
            "Two parts were expected: {:?}.",
            apart.split_modules
        ));
    };
    // Written anew it takes less: the linker left room in every number.
    let mut config = ModuleConfig::new();
    config
        .generate_name_section(false)
        .generate_producers_section(false);
    let mut later = config.parse_file(later).map_err(|e| format!("{e:?}"))?;
    let snippets = folder.join("snippets");
    fs::create_dir_all(&snippets).map_err(|e| format!("{}: {e}.", snippets.display()))?;
    later
        .emit_wasm_file(snippets.join("later.wasm"))
        .map_err(|e| format!("{e:?}"))?;
    Ok(first)
}

/// The script of the first part with the loader in it. A module of its own would
/// have to be found by its name, which a copy of the page in one file has not.
pub fn with_loader(script: &str) -> Result<String, String> {
    let is_import = |line: &&str| line.starts_with("import ") && line.contains(LINK);
    let mut imports = script.lines().filter(is_import);
    let (Some(import), None) = (imports.next(), imports.next()) else {
        return Err(format!("The script must import {LINK} once."));
    };
    let name = import
        .strip_prefix("import * as ")
        .and_then(|rest| rest.split_once(' '))
        .ok_or_else(|| format!("Unexpected: {import}"))?
        .0;
    let joined = format!("const {name} = {{ {LOAD} }};");
    Ok(script.replacen(import, &joined, 1) + LOADER)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_loader_stands_in_place_of_its_import() {
        let script = "import * as import1 from \"./__wasm_split.js\"\nlet wasm;\n";
        let text = with_loader(script).unwrap();
        assert!(text.starts_with("const import1 = { __wasm_split_load_later };\nlet wasm;\n"));
        assert!(text.contains("async function __wasm_split_load_later("));
        assert!(with_loader("let wasm;\n").is_err());
    }
}
