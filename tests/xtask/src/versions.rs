//! The versions of the tools that the task runner installs. Those of the
//! libraries stand in the `Cargo.toml` of the workspace, wasm-bindgen's among
//! them, and that of axe-core in `tests/axe`.

/// The bundler of the page.
pub const TRUNK: &str = "0.21.14";
/// What looks at licences, sources and advisories.
pub const CARGO_DENY: &str = "0.20.2";
/// What runs the fuzz targets.
pub const CARGO_FUZZ: &str = "0.13.2";

/// What drives Firefox.
pub const GECKODRIVER: &str = "0.37.1";

#[cfg(test)]
mod tests {
    #[test]
    fn the_bundler_is_told_the_version_of_the_library() {
        let version = |text: &str, key: &str| {
            let line = text.lines().find_map(|line| line.strip_prefix(key));
            line.map(|rest| rest.trim_matches(['"', '=', ' ']).to_string())
        };
        let library = version(include_str!("../../../Cargo.toml"), "wasm-bindgen = ");
        let told = version(include_str!("../../../Trunk.toml"), "wasm_bindgen = ");
        assert!(library.is_some());
        assert_eq!(library, told);
    }
}
