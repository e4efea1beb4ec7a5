//! Folders, with all they hold.

use std::{fs, io, path::Path};
use walkdir::WalkDir;

/// The names of all files in a folder and the folders in it, sorted, with `/`
/// between the parts.
pub fn names(folder: &Path) -> io::Result<Vec<String>> {
    let mut names = Vec::new();
    for entry in WalkDir::new(folder) {
        let entry = entry?;
        if entry.file_type().is_file() {
            let name = entry
                .path()
                .strip_prefix(folder)
                .map_err(io::Error::other)?;
            let parts = name.iter().map(|part| part.to_string_lossy());
            names.push(parts.collect::<Vec<_>>().join("/"));
        }
    }
    names.sort();
    Ok(names)
}

/// Copies a folder with all it holds.
pub fn copy(from: &Path, to: &Path) -> io::Result<()> {
    for name in names(from)? {
        let target = to.join(&name);
        if let Some(folder) = target.parent() {
            fs::create_dir_all(folder)?;
        }
        fs::copy(from.join(&name), target)?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_lies_deeper_is_named_by_its_way_there() {
        let names = names(Path::new(env!("CARGO_MANIFEST_DIR"))).unwrap();
        assert!(names.contains(&"Cargo.toml".to_string()), "{names:?}");
        assert!(names.contains(&"src/files.rs".to_string()), "{names:?}");
        assert!(names.is_sorted());
    }
}
