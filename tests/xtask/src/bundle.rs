//! The whole page as one file that opens from disk, and the sums of its files.
//! `web/src/browser/single_file.rs` makes the same file in the browser.

use base64::{Engine, engine::general_purpose::STANDARD};
use sha2::{Digest, Sha256};
use std::{fs, path::Path};

/// The page that all begins with.
pub const START: &str = "index.html";
/// Around what only a page from a server needs.
const SERVED: [&str; 2] = ["<!--served-->", "<!--/served-->"];
/// Around what only the one file needs; commented out until then.
const ABOARD: [&str; 2] = ["<!--aboard ", " aboard-->"];
/// What its parts are, by the ends of their names.
const KINDS: [(&str, &str); 4] = [
    (".css", "text/css"),
    (".js", "text/javascript"),
    (".svg", "image/svg+xml"),
    (".wasm", "application/wasm"),
];

/// The page of a folder as one text: every address in its head that names a
/// file becomes one that holds the file.
pub fn bundle(folder: &Path) -> Result<String, String> {
    let read = |name: &str| {
        let file = folder.join(name);
        fs::read(&file).map_err(|e| format!("{}: {e}.", file.display()))
    };
    let page = String::from_utf8(read(START)?).map_err(|e| format!("{START}: {e}."))?;
    let page = fitted(&page)?;
    let (head, body) = page
        .split_once("</head>")
        .ok_or_else(|| format!("{START} has no head."))?;
    // At the odd places stands what was quoted.
    let mut whole = String::new();
    for (at, piece) in head.split('"').enumerate() {
        if at > 0 {
            whole.push('"');
        }
        match kind(piece).filter(|_| at % 2 == 1) {
            None => whole += piece,
            Some(kind) => {
                let bytes = read(piece.strip_prefix("./").unwrap_or(piece))?;
                whole += &format!("data:{kind};base64,{}", STANDARD.encode(bytes));
            }
        }
    }
    Ok(whole + "</head>" + body)
}

/// The start page without what is for a server, with what is for the one file.
fn fitted(page: &str) -> Result<String, String> {
    let [begin, end] = SERVED;
    let mut pieces = page.split(begin);
    let mut kept = pieces.next().unwrap_or("").to_string();
    for piece in pieces {
        kept += piece
            .split_once(end)
            .ok_or_else(|| format!("{START}: a {begin} has no {end}."))?
            .1;
    }
    Ok(ABOARD
        .iter()
        .fold(kept, |text, mark| text.replace(mark, "")))
}

/// What kind of file a quoted text names, if it names one of the page's parts.
fn kind(name: &str) -> Option<&'static str> {
    let plain = |c: char| c.is_ascii_alphanumeric() || "_./-".contains(c);
    let (_, kind) = KINDS.iter().find(|(end, _)| name.ends_with(end))?;
    name.chars().all(plain).then_some(kind)
}

/// The sum by which a browser tells that a file arrived as it was built.
pub fn integrity(bytes: &[u8]) -> String {
    format!("sha256-{}", STANDARD.encode(Sha256::digest(bytes)))
}

/// So many digits of the sum over a file.
pub fn short_sum(bytes: &[u8], digits: usize) -> String {
    let sum = Sha256::digest(bytes);
    let mut text: String = sum.iter().map(|byte| format!("{byte:02x}")).collect();
    text.truncate(digits);
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_for_a_server_goes_and_what_is_for_the_file_comes() {
        let page =
            "a<!--served-->b<!--/served-->c<!--aboard d aboard-->e<!--served--><!--/served-->";
        assert_eq!(fitted(page).unwrap(), "acde");
        assert!(fitted("a<!--served-->b").is_err());
    }

    #[test]
    fn only_names_of_parts_are_taken_for_such() {
        assert_eq!(kind("./boot-01.js"), Some("text/javascript"));
        assert_eq!(kind("icons/mark.svg"), Some("image/svg+xml"));
        assert_eq!(kind("image/svg+xml"), None);
        assert_eq!(kind("See boot.js"), None);
        assert_eq!(kind("data:text/css,.js"), None);
    }

    #[test]
    fn the_sums_are_the_published_ones() {
        // FIPS 180-4's example "abc", as NIST prints it; base64 of it by hand.
        assert_eq!(short_sum(b"abc", 16), "ba7816bf8f01cfea");
        assert_eq!(
            integrity(b"abc"),
            "sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0="
        );
    }
}
