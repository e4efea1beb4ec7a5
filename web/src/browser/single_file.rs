//! The whole page as one file that opens from disk, put together out of the
//! page's own files. The task runner writes the same, see its `bundle.rs`.

use js_sys::Promise;
use leptos::prelude::{document, window};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, FileReader, Response};

use crate::browser::files;

/// Always the same name: some browsers keep boats by it.
const NAME: &str = "ampwright.html";
/// Around what only a page from a server needs.
const SERVED: [&str; 2] = ["<!--served-->", "<!--/served-->"];
/// Around what only the one file needs; commented out until then.
const ABOARD: [&str; 2] = ["<!--aboard ", " aboard-->"];
/// What the page's parts are, by the ends of their names.
const KINDS: [(&str, &str); 4] = [
    (".css", "text/css"),
    (".js", "text/javascript"),
    (".svg", "image/svg+xml"),
    (".wasm", "application/wasm"),
];

/// Whether the page that is open is such a file.
pub fn is_open() -> bool {
    let loader = document()
        .query_selector("script[data-wasm]")
        .ok()
        .flatten();
    let wasm = loader.and_then(|loader| loader.get_attribute("data-wasm"));
    wasm.is_some_and(|wasm| wasm.starts_with("data:"))
}

/// Puts it together and saves it.
///
/// # Errors
/// What the browser says of a part that is not there.
pub async fn save() -> Result<(), JsValue> {
    let page = JsFuture::from(part("./").await?.text()?).await?;
    let page = fitted(&page.as_string().unwrap_or_default());
    let (head, body) = page.split_once("</head>").unwrap_or((&page, ""));
    let mut whole = String::new();
    // At the odd places stands what was quoted.
    for (at, piece) in head.split('"').enumerate() {
        if at > 0 {
            whole.push('"');
        }
        match kind(piece).filter(|_| at % 2 == 1) {
            None => whole += piece,
            Some(kind) => whole += &held(piece, kind).await?,
        }
    }
    let file = files::blob(&[&whole, "</head>", body], "text/html")?;
    files::save(NAME, &file)
}

/// A file of the page.
async fn part(address: &str) -> Result<Response, JsValue> {
    let answer = JsFuture::from(window().fetch_with_str(address)).await?;
    let answer: Response = answer.unchecked_into();
    match answer.ok() {
        true => Ok(answer),
        false => Err(format!("{address}: {}", answer.status()).into()),
    }
}

/// A file of the page as an address that holds it.
async fn held(name: &str, kind: &str) -> Result<String, JsValue> {
    let blob: Blob = JsFuture::from(part(name).await?.blob()?)
        .await?
        .unchecked_into();
    let blob = blob.slice_with_f64_and_f64_and_content_type(0.0, blob.size(), kind)?;
    let reader = FileReader::new()?;
    let read = Promise::new(&mut |done, failed| {
        reader.set_onload(Some(&done));
        reader.set_onerror(Some(&failed));
    });
    reader.read_as_data_url(&blob)?;
    JsFuture::from(read).await?;
    Ok(reader.result()?.as_string().unwrap_or_default())
}

/// The start page without what is for a server, with what is for the one file.
fn fitted(page: &str) -> String {
    let [begin, end] = SERVED;
    let mut pieces = page.split(begin);
    let mut kept = pieces.next().unwrap_or_default().to_string();
    for piece in pieces {
        kept += piece.split_once(end).map_or("", |(_, after)| after);
    }
    ABOARD
        .iter()
        .fold(kept, |text, mark| text.replace(mark, ""))
}

/// What kind of file a quoted text names, if it names one of the page's parts.
fn kind(name: &str) -> Option<&'static str> {
    let plain = |c: char| c.is_ascii_alphanumeric() || "_./-".contains(c);
    let (_, kind) = KINDS.iter().find(|(end, _)| name.ends_with(end))?;
    name.chars().all(plain).then_some(*kind)
}

#[cfg(test)]
mod tests {
    use super::{fitted, kind};

    #[test]
    fn the_one_file_has_what_only_it_needs() {
        let page = "a<!--served-->b<!--/served-->c<!--aboard d aboard-->e";
        assert_eq!(fitted(page), "acde");
    }

    #[test]
    fn parts_are_told_by_their_names() {
        assert_eq!(kind("./boot-1.js"), Some("text/javascript"));
        assert_eq!(kind("app_bg.wasm"), Some("application/wasm"));
        assert_eq!(kind("a b.js"), None);
        assert_eq!(kind("viewport"), None);
    }
}
