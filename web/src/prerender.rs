//! The page as the build writes it: all markup, with what a fresh worksheet
//! puts into it, so that there is something to read before the wasm arrives.
//! Runs natively only; `cargo xtask stamp` puts it into `index.html`.

use ampwright_core::{Worksheet, report};
use leptos::prelude::*;

use crate::app::{App, LEGACY};
use crate::legacy::Text;
use crate::state::AppState;
use crate::words::escape;

/// Everything within `#app`.
pub fn page() -> String {
    let mut page = Owner::new_root(None).with(|| {
        AppState::provide();
        view! { <App /> }.to_html()
    });
    let sheet = Worksheet::default();
    let report = report(&sheet);
    for (at, text) in LEGACY.into_iter().flat_map(|section| section.parts) {
        let (Text::Soon(text) | Text::Late(text)) = text else {
            continue;
        };
        // What stands in an entry may be about the address.
        if !at.ends_with("@value") {
            fill(&mut page, at, &text(&sheet, &report));
        }
    }
    // The address is for links: nobody shall go there before somebody listens.
    page.replace("href='#findings' ", "")
}

/// Writes a text to its place in the markup, as [`crate::legacy::write`] does on
/// the page; a place that is drawn later is passed over.
fn fill(page: &mut String, at: &str, text: &str) {
    let (id, attribute) = at.split_once('@').unwrap_or((at, ""));
    let quoted = page.find(&format!(" id=\"{id}\""));
    let bare = [' ', '>'].map(|end| page.find(&format!(" id={id}{end}")));
    let Some(inside) = quoted.or(bare[0]).or(bare[1]) else {
        return;
    };
    let (Some(from), Some(length)) = (page[..inside].rfind('<'), page[inside..].find('>')) else {
        return;
    };
    let to = inside + length;
    if attribute.is_empty() {
        page.insert_str(to + 1, text);
        return;
    }
    let mut tag = page[from..to].to_string();
    if let Some(start) = tag.find(&format!(" {attribute}=\"")) {
        let value = start + attribute.len() + 3;
        let end = tag[value..]
            .find('"')
            .map_or(tag.len(), |at| value + at + 1);
        tag.replace_range(start..end, "");
    }
    if !text.is_empty() {
        tag += &format!(" {attribute}=\"{}\"", escape(text));
    }
    page.replace_range(from..to, &tag);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_goes_where_the_page_would_write_it() {
        let mut page = "<p id=one></p><p class=\"lead hidden\" id=\"two\"></p>".to_string();
        fill(&mut page, "one", "<b>1</b>");
        fill(&mut page, "two@class", "lead");
        fill(&mut page, "three", "nowhere");
        assert_eq!(
            page,
            "<p id=one><b>1</b></p><p id=\"two\" class=\"lead\"></p>"
        );
    }
}
