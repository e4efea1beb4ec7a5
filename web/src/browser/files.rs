//! Files of the user's: saved and read.

use std::error::Error;
use std::fmt;
use std::time::Duration;

use js_sys::Array;
use leptos::prelude::{document, set_timeout};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, Url};

/// Most that is read \[bytes\]: more than any browser keeps for one page.
const MOST_BYTES: f64 = 2e7;
/// How long a file may take to be written.
const WRITTEN: Duration = Duration::from_secs(60);

/// Why a file was not read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FileError {
    /// It is far too large to be one of ours.
    TooLarge,
    /// The browser could not read it.
    Unreadable,
}

impl Error for FileError {}

impl fmt::Display for FileError {
    fn fmt(&self, text: &mut fmt::Formatter) -> fmt::Result {
        text.write_str(match self {
            FileError::TooLarge => "It is larger than 20 MB, far more than any boats take.",
            FileError::Unreadable => "The browser could not read it.",
        })
    }
}

/// Saves a text as a file of this name.
pub fn save_text(name: &str, text: &str) {
    // The browser has no more to say than that it has no memory left.
    if let Ok(blob) = blob(&[text], "text/plain") {
        let _ = save(&plain(name), &blob);
    }
}

/// Texts one after the other, as the contents of a file of this kind.
///
/// # Errors
/// What the browser says if it cannot hold them.
pub fn blob(texts: &[&str], kind: &str) -> Result<Blob, JsValue> {
    let parts: Array = texts.iter().map(|text| JsValue::from_str(text)).collect();
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    Blob::new_with_str_sequence_and_options(&parts, &options)
}

/// Saves something as a file of exactly this name.
///
/// # Errors
/// What the browser says if it cannot.
pub fn save(name: &str, contents: &Blob) -> Result<(), JsValue> {
    let address = Url::create_object_url_with_blob(contents)?;
    let link: HtmlAnchorElement = document().create_element("a")?.unchecked_into();
    link.set_href(&address);
    link.set_download(name);
    link.click();
    let release = move || drop(Url::revoke_object_url(&address));
    set_timeout(release, WRITTEN);
    Ok(())
}

/// The text of a file.
///
/// # Errors
/// Why it was not read.
pub async fn read(file: &File) -> Result<String, FileError> {
    if file.size() > MOST_BYTES {
        return Err(FileError::TooLarge);
    }
    let text = JsFuture::from(file.text()).await;
    let text = text.ok().and_then(|text| text.as_string());
    text.ok_or(FileError::Unreadable)
}

/// A name that every file system takes: letters, digits and dots, with a dash
/// for whatever stands between them.
fn plain(name: &str) -> String {
    let mut plain = String::new();
    for letter in name.chars() {
        match letter {
            letter if letter.is_alphanumeric() || letter == '.' => plain.push(letter),
            _ if plain.ends_with('-') => {}
            _ => plain.push('-'),
        }
    }
    plain
}

#[cfg(test)]
mod tests {
    use super::plain;

    #[test]
    fn names_are_plain() {
        assert_eq!(plain("Möwe: «2»/run.csv"), "Möwe-2-run.csv");
        assert_eq!(plain("Plover.json"), "Plover.json");
    }
}
