//! Sections that are still text: a piece of markup, texts that follow the
//! worksheet, and acts its elements ask for. Each becomes a component of
//! `sections/`; when the last one has, this folder goes.

pub mod sure;

use std::time::Duration;

use ampwright_core::{Report, Worksheet};
use leptos::prelude::*;
use leptos::web_sys::{Element, Event, HtmlElement, HtmlInputElement};
use wasm_bindgen::{JsCast, closure::Closure};

use crate::state::{AppState, count};

/// Markup that the build writes into the page, see `print.rs`. The wasm knows
/// nothing of it: what only writes markup is not compiled into it.
#[derive(Clone, Copy)]
pub struct Paper(#[cfg(not(target_arch = "wasm32"))] pub fn() -> String);

/// Markup, by the function that writes it.
pub const fn written(paper: fn() -> String) -> Paper {
    #[cfg(target_arch = "wasm32")]
    let (_, paper) = (paper, Paper());
    #[cfg(not(target_arch = "wasm32"))]
    let paper = Paper(paper);
    paper
}

impl Paper {
    /// The text; empty in the browser, where it stands on the page already.
    pub fn text(self) -> String {
        #[cfg(target_arch = "wasm32")]
        return String::new();
        #[cfg(not(target_arch = "wasm32"))]
        (self.0)()
    }
}

/// A section of the page.
pub struct Section {
    /// Its markup; what follows the worksheet is left empty, under an id.
    pub paper: Paper,
    /// What is filled in, and filled in again whenever it changes.
    pub parts: &'static [Part],
    /// What its elements do, by the name in `data-click`, `data-input` ….
    pub acts: &'static [Act],
    /// Called once, when the markup is on the page.
    pub start: fn(AppState),
}

impl Section {
    /// Markup alone.
    pub const fn still(paper: fn() -> String) -> Section {
        Section {
            paper: written(paper),
            parts: &[],
            acts: &[],
            start: |_| (),
        }
    }
}

/// Where a text goes and where it comes from. The place is an id, whose
/// element gets the text as its markup, or `id@attribute`, where an empty text
/// takes the attribute away; `id@value` is what stands in an entry.
pub type Part = (&'static str, Text);

/// A text of the page. Words of a user pass through [`crate::words::escape`].
#[derive(Clone, Copy)]
pub enum Text {
    /// Follows the worksheet within the same frame.
    Soon(fn(&Worksheet, &Report) -> String),
    /// Follows it when that frame is on screen.
    Late(fn(&Worksheet, &Report) -> String),
    /// Follows the signals it reads.
    Own(fn(AppState) -> String),
}

/// A name, and what is done when an element of that name is used.
pub type Act = (&'static str, fn(AppState, &Element, &Event));

/// What of the user is heard; `data-` and this is the attribute that names
/// the act.
const HEARD: [&str; 8] = [
    "click",
    "input",
    "change",
    "keydown",
    "focusout",
    "pointerdown",
    "pointermove",
    "toggle",
];

/// Begins to follow the worksheet and to hear the user.
pub fn start(desk: AppState, sections: &[&'static Section]) {
    desk.at_each_change(|_| CHANGES.set(CHANGES.get().wrapping_add(1)));
    for section in sections {
        for (at, text) in section.parts {
            follow(desk, at, *text);
        }
        (section.start)(desk);
    }
    ACTS.set(sections.iter().map(|section| section.acts).collect());
    for kind in HEARD {
        listen(desk, kind, heard);
    }
    open_folds(desk);
    listen(desk, "toggle", |desk, event| {
        let target = event
            .target()
            .and_then(|target| target.dyn_into::<Element>().ok());
        if let Some(fold) = target.filter(|fold| fold.matches(FOLDS).unwrap_or_default()) {
            desk.folds.set(&fold.id(), fold.has_attribute("open"));
        }
    });
}

thread_local! {
    static ACTS: std::cell::RefCell<Vec<&'static [Act]>> = const { std::cell::RefCell::new(Vec::new()) };
}

fn follow(desk: AppState, at: &'static str, text: Text) {
    Effect::new(move |shown: Option<String>| {
        let now = match text {
            Text::Soon(text) => desk.tell(text),
            Text::Late(text) => desk.tell_later(text),
            Text::Own(text) => text(desk),
        };
        if shown.as_ref() != Some(&now) {
            write(at, &now);
        }
        now
    });
}

/// Writes a text to its place; what has the focus keeps it if it has an id.
pub fn write(at: &str, text: &str) {
    let (id, attribute) = at.split_once('@').unwrap_or((at, ""));
    let Some(element) = by_id(id) else { return };
    match attribute {
        "" => {
            let focused = document()
                .active_element()
                .map(|focused| focused.id())
                .filter(|id| !id.is_empty());
            element.set_inner_html(text);
            if let Some(id) = focused {
                focus(&id);
            }
        }
        "value" => set_value(&element, text),
        _ if text.is_empty() => drop(element.remove_attribute(attribute)),
        _ => drop(element.set_attribute(attribute, text)),
    }
}

/// The element of that id.
pub fn by_id(id: &str) -> Option<Element> {
    document().get_element_by_id(id)
}

/// Puts the cursor there, unless it is there already.
pub fn focus(id: &str) {
    let there = document()
        .active_element()
        .is_some_and(|focused| focused.id() == id);
    if !there && let Some(element) = by_id(id) {
        let _ = element.unchecked_ref::<HtmlElement>().focus();
    }
}

/// What stands in an entry, a list of options or a text area.
pub fn value(element: &Element) -> String {
    // All three have the property, under the same name.
    element.unchecked_ref::<HtmlInputElement>().value()
}

/// Writes into an entry, a list of options or a text area.
pub fn set_value(element: &Element, text: &str) {
    let entry = element.unchecked_ref::<HtmlInputElement>();
    if entry.value() != text {
        entry.set_value(text);
    }
}

/// A button that needs a text works once there is one.
pub fn offer(button: &str, text: &str) {
    let disabled = if text.trim().is_empty() {
        "disabled"
    } else {
        ""
    };
    write(&format!("{button}@disabled"), disabled);
}

/// Hears an event wherever on the page it happens.
pub fn listen(desk: AppState, kind: &str, act: fn(AppState, &Event)) {
    let heard = Closure::<dyn Fn(Event)>::new(move |event: Event| act(desk, &event));
    // A fold's event does not rise to the window by itself.
    let _ = window().add_event_listener_with_callback_and_bool(
        kind,
        heard.as_ref().unchecked_ref(),
        kind == "toggle",
    );
    heard.forget();
}

/// Does what the element, or the nearest one around it, asks for.
fn heard(desk: AppState, event: &Event) {
    let attribute = format!("data-{}", event.type_());
    let Some(element) = event
        .target()
        .and_then(|target| target.dyn_into::<Element>().ok())
        .and_then(|target| target.closest(&format!("[{attribute}]")).ok().flatten())
    else {
        return;
    };
    let name = element.get_attribute(&attribute).unwrap_or_default();
    let act = ACTS.with_borrow(|acts| {
        let mut acts = acts.iter().copied().flatten();
        acts.find(|(named, _)| *named == name).map(|(_, act)| *act)
    });
    if let Some(act) = act {
        act(desk, &element, event);
    }
}

/// Folds of these sections.
const FOLDS: &str = ".legacy details[id]:not(.load)";

/// Opens the folds that were left open.
fn open_folds(desk: AppState) {
    let Ok(folds) = document().query_selector_all(FOLDS) else {
        return;
    };
    for at in 0..folds.length() {
        let fold = folds
            .get(at)
            .and_then(|fold| fold.dyn_into::<Element>().ok());
        if let Some(fold) = fold.filter(|fold| desk.folds.is_open(&fold.id())) {
            let _ = fold.set_attribute("open", "");
        }
    }
}

/// A section of text in the place that the printed page has for it.
#[component]
pub fn LegacySection(of: &'static Section) -> impl IntoView {
    view! { <div class="legacy" inner_html=of.paper.text()></div> }
}

thread_local! {
    /// Counts changes of the worksheet.
    static CHANGES: std::cell::Cell<u32> = const { std::cell::Cell::new(0) };
}

/// Text of worksheet and report.
type Telling = fn(&Worksheet, &Report) -> String;

impl AppState {
    /// Does something now and whenever the worksheet has changed.
    pub fn at_each_change(self, act: fn(AppState)) {
        Effect::new(move |_| {
            self.opened.track();
            self.sheet.track();
            untrack(|| act(self));
        });
    }

    /// Does something long for a fold that lies open, once the worksheet has
    /// rested so long; not if it changes meanwhile.
    pub fn once_rested(self, fold: &str, rest: Duration, act: fn(AppState)) {
        if !is_open(fold) {
            return;
        }
        let changes = CHANGES.get();
        after(
            rest,
            Box::new(move || {
                if CHANGES.get() == changes {
                    act(self);
                    count(self.aside);
                }
            }),
        );
    }

    /// A text that follows worksheet and report.
    pub fn tell(self, text: Telling) -> String {
        self.now(text)
    }

    /// The same, once the frame that shows the answer is on screen.
    pub fn tell_later(self, text: Telling) -> String {
        self.settled(text)
    }

    /// The same, while a fold of the page lies open; nothing while it is closed.
    pub fn tell_open(self, fold: &str, text: Telling) -> String {
        self.aside.track();
        if is_open(fold) {
            self.settled(text)
        } else {
            String::new()
        }
    }

    /// Follows the frames that show a changed worksheet.
    pub fn track_later(self) {
        self.track_settled();
    }

    /// A text about worksheet and report as they are, without following them.
    pub fn look(self, text: &dyn Fn(&Worksheet, &Report) -> String) -> String {
        self.glance(|sheet, report| text(sheet, report))
    }
}

fn is_open(fold: &str) -> bool {
    by_id(fold).is_some_and(|fold| fold.has_attribute("open"))
}

/// Does something later.
pub fn after(rest: Duration, act: Box<dyn FnOnce()>) {
    set_timeout(act, rest);
}
