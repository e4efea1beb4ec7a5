//! Short names for what the program and its script ask of each other. The long
//! ones tell what each is, and a hash with it; no visitor reads them.

use std::collections::BTreeMap;
use walrus::{Module, ModuleConfig};

/// What the exports begin with by which the script calls closures.
const CLOSURE: &str = "wasm_bindgen_";

/// The program and its script with short names for all imports, and for the
/// exports with long ones.
pub fn shortened(program: &[u8], script: &str) -> Result<(Vec<u8>, String), String> {
    let mut config = ModuleConfig::new();
    config
        .generate_name_section(false)
        .generate_producers_section(false);
    let mut program: Module = config.parse(program).map_err(|e| format!("{e:?}"))?;
    let closures = program.exports.iter_mut().map(|export| &mut export.name);
    let closures = closures.filter(|name| name.starts_with(CLOSURE));
    let imports = program.imports.iter_mut().map(|import| &mut import.name);
    let mut short = BTreeMap::new();
    for name in imports.chain(closures) {
        let number = short.len();
        let new = short.entry(name.clone());
        *name = new.or_insert_with(|| format!("_{number}")).clone();
    }
    Ok((program.emit_wasm(), renamed(script, &short)))
}

/// A script with other names for some things.
fn renamed(script: &str, names: &BTreeMap<String, String>) -> String {
    let is_letter = |c: char| c.is_ascii_alphanumeric() || matches!(c, '_' | '$');
    let mut text = String::new();
    let mut rest = script;
    while let Some(begin) = rest.find(is_letter) {
        let (before, from) = rest.split_at(begin);
        let end = from.find(|c| !is_letter(c)).unwrap_or(from.len());
        let (word, after) = from.split_at(end);
        text += before;
        text += names.get(word).map_or(word, |name| name);
        rest = after;
    }
    text + rest
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn whole_words_have_other_names() {
        let names = [("log_1f", "_0"), ("log", "_1")];
        let names = names.map(|(old, new)| (old.to_string(), new.to_string()));
        let script = "log_1f: (a) => console.log(a),\nlog_1f2(log)";
        let text = renamed(script, &names.into());
        assert_eq!(text, "_0: (a) => console._1(a),\nlog_1f2(_1)");
    }

    #[test]
    fn program_and_script_agree() {
        let mut program = Module::with_config(ModuleConfig::new());
        let no_parameters = program.types.add(&[], &[]);
        let (asked, _) = program.add_import_func("here", "__wbg_now_0f1e", no_parameters);
        program.exports.add("wasm_bindgen_0a___invoke", asked);
        program.exports.add("main", asked);
        let script = "({ __wbg_now_0f1e: () => wasm.wasm_bindgen_0a___invoke(), f: wasm.main })";
        let (program, script) = shortened(&program.emit_wasm(), script).unwrap();
        assert_eq!(script, "({ _0: () => wasm._1(), f: wasm.main })");
        let program = Module::from_buffer(&program).unwrap();
        assert!(program.imports.iter().all(|import| import.name == "_0"));
        let mut exports: Vec<&str> = program.exports.iter().map(|one| &*one.name).collect();
        exports.sort_unstable();
        assert_eq!(exports, ["_1", "main"]);
    }
}
