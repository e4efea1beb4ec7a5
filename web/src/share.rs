//! The worksheet as a link, and links opened from within the page.

use ampwright_core::worksheet::to_link;
use leptos::prelude::*;
use leptos::web_sys::HtmlTextAreaElement;
use wasm_bindgen::{JsCast, closure::Closure};

use crate::desk::Desk;
use crate::paper::{Section, Text, by_id, offer, value, write, written};

/// Makes a link, copies it, and opens one.
pub const SECTION: Section = Section {
    paper: written(|| {
        r#"<section class="share" aria-labelledby="share-title"><h2 id="share-title">Share as a link</h2>
<p class="lead">The link holds every figure you have entered and nothing else. Nothing is sent anywhere: whoever opens it reads it in their own browser.</p>
<label for="link">Link to this worksheet</label><textarea id="link" readonly rows="4"></textarea>
<p class="buttons"><button type="button" id="copy-link" data-click="copy-link">Copy the link</button> <span class="said" role="status" id="link-said"></span></p>
<label for="open-link">Open a link</label><textarea id="open-link" rows="2" data-input="link"></textarea>
<p class="buttons"><button type="button" id="take-link" data-click="take-link" disabled>Open as a copy</button></p></section>"#
            .to_string()
    }),
    parts: &[(
        "link@value",
        Text::Late(|sheet, _| {
            let here = window().location();
            let origin = here.origin().unwrap_or_default();
            let path = here.pathname().unwrap_or_default();
            format!("{origin}{path}#{}", to_link(sheet))
        }),
    )],
    acts: &[
        ("copy-link", |_, _, _| copy()),
        ("link", |_, area, _| offer("take-link", &value(area))),
        ("take-link", |desk, _, _| open(desk)),
    ],
    start: |_| (),
};

fn copy() {
    let Some(area) = by_id("link") else { return };
    // Begun inside the click: browsers refuse a copy after waiting.
    let copying = window().navigator().clipboard().write_text(&value(&area));
    area.unchecked_ref::<HtmlTextAreaElement>().select();
    let said = "The link is selected; copy it by hand if nothing is pasted.";
    write("link-said", said);
    let done = Closure::once(|_| write("link-said", "The link is copied."));
    let _ = copying.then(&done);
    done.forget();
}

fn open(desk: Desk) {
    let link = by_id("open-link").map_or(String::new(), |area| value(&area));
    desk.take_link(&link);
    write("open-link@value", "");
    offer("take-link", "");
    window().scroll_to_with_x_and_y(0.0, 0.0);
}
