//! The page as the build writes it: all markup, with what a fresh worksheet
//! puts into it, so that there is something to read before the wasm arrives.
//! Runs natively only; `cargo xtask stamp` puts it into `index.html`.

use ampwright_core::{Worksheet, report};

use crate::app::{COLUMNS, TOP, sections};
use crate::paper::Text;
use crate::words::escape;

/// Everything within `#app`. Its entries are of no use until the worksheet has
/// started; `boot.js` enables them.
pub fn page() -> String {
    let [masthead, answer, contents, notices] = TOP.map(|section| section.paper.text());
    let mut page = format!(
        "<fieldset id=paper role=none disabled>{masthead}{answer}{contents}<main>{notices}<div class=columns>"
    );
    for (column, of) in COLUMNS {
        page += &format!("<div class={column}>");
        for section in of {
            page += &section.paper.text();
        }
        page += "</div>";
    }
    page += "</div></main><footer><p>A reckoning from published formulas and your own figures. The battery maker's sheet, local code and a licensed electrician come first.</p>";
    page += COLOPHON;
    page += "</footer></fieldset>";
    let sheet = Worksheet::default();
    let report = report(&sheet);
    for (at, text) in sections().into_iter().flat_map(|section| section.parts) {
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

/// Which build this is, and the page as one file. `boot.js` does the rest; the
/// words in capitals are filled in by `cargo xtask stamp`.
const COLOPHON: &str = r#"<p>Build <span id="build">BUILD</span>. <span id="offline"></span></p>
<!--served--><p class="buttons"><button type="button" id="aboard" data-js="aboard.js">Keep a copy aboard (one file, about WEIGHT MB)</button> <span class="said" role="status" id="aboard-said"></span></p><!--/served-->"#;

/// Writes a text to its place in the markup, as [`crate::paper::write`] does on
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
