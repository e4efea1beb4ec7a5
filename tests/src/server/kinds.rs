//! What kind of content a file holds, told from its name.

use std::path::Path;

/// The content type to announce for a file.
pub fn content_type(file: &Path) -> &'static str {
    match file.extension().and_then(|e| e.to_str()).unwrap_or("") {
        "html" => "text/html; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "json" => "application/json",
        "txt" => "text/plain; charset=utf-8",
        "wasm" => "application/wasm",
        "webmanifest" => "application/manifest+json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "ico" => "image/x-icon",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_browser_learns_what_it_must_know() {
        for (name, wanted) in [
            ("a.wasm", "application/wasm"),
            ("manifest.webmanifest", "application/manifest+json"),
            ("boot.js", "text/javascript; charset=utf-8"),
            ("LICENSE", "application/octet-stream"),
        ] {
            assert_eq!(content_type(Path::new(name)), wanted, "{name}");
        }
    }
}
