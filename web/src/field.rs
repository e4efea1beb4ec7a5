//! One input on screen. What it is called, takes and means comes from its
//! description in the core; this is only how it looks and how typing is heard.

use ampwright_core::Worksheet;
use ampwright_core::boat::{Key, is_asked};
use ampwright_core::schema::{Confidence, FieldSpec, Kind, Value};
use ampwright_core::text::errors::input_error;
use ampwright_core::units::{Other, Reader};
use leptos::prelude::*;
use leptos::web_sys::{Element, Event, KeyboardEvent};
use wasm_bindgen::JsCast;

use crate::desk::Desk;
use crate::draft;
use crate::form;
use crate::of::{Of, Shown};
use crate::paper::{Act, by_id, set_value, value};
use crate::words::escape;

/// A row of the worksheet as text, as a fresh one has it. `place` tells apart
/// two showings of one input on the page.
pub fn row(place: &str, key: Key) -> String {
    let spec = key.spec();
    let (name, label) = (key.name(), spec.label);
    let id = format!("{place}-{name}");
    let back = match (place, spec.kind) {
        ("ask", Kind::Number { .. } | Kind::Optional { .. }) if spec.is_fact() => "I don't know",
        _ => "back to the default",
    };
    let sheet = Worksheet::default();
    let mut shown = Shown::of(&sheet, Of::Input(key));
    if place == "ask" {
        shown.applies = is_asked(&sheet, key);
    }
    let mut marks = String::new();
    if spec.is_fact() {
        marks = format!(
            "<select class='mark guess' aria-label=\"{label}: how well it is known\" data-change=grade>"
        );
        for known in Confidence::ALL {
            let word = known.word();
            let chosen = if known == shown.known {
                " selected"
            } else {
                ""
            };
            marks += &format!("<option value={word}{chosen}>{word}</option>");
        }
        marks += "</select>";
    }
    format!(
        "<div class='{}'>{}<p class=margin id={id}-help>{marks}<span class=how>{}</span><button type=button class='plain forget hidden' data-click=forget aria-label=\"{label}: {back}\">{back}</button></p></div>",
        if shown.applies { "row" } else { "row hidden" },
        entry(spec, &id, &name, &shown),
        escape(spec.help)
    )
}

/// Label, entry, unit and complaint of one value, as text; `name` is what
/// [`Of::named`] reads. Labels are words of our own.
pub fn entry(spec: &FieldSpec, id: &str, name: &str, shown: &Shown) -> String {
    let (label, value) = (spec.label, spec.write(shown.value));
    let heard = format!("id={id} data-of={name}");
    let mut entry;
    match spec.kind {
        Kind::Choice { options, .. } => {
            entry = format!("<select {heard} data-change=entry>");
            for option in options {
                let chosen = if option.key == value { " selected" } else { "" };
                entry += &format!(
                    "<option value={}{chosen}>{}</option>",
                    option.key,
                    escape(option.label)
                );
            }
            entry += "</select>";
        }
        Kind::Number { unit, .. } | Kind::Optional { unit, .. } => {
            let stand_in = match spec.kind {
                Kind::Optional { .. } => format!("placeholder='{}' ", stand_in(shown, None)),
                _ => String::new(),
            };
            entry = format!(
                "<span class=entry><input {heard} value='{value}' {stand_in}type=text inputmode=decimal autocomplete=off enterkeyhint=done aria-invalid=false data-input=entry data-focusout=left data-keydown=nudge><span class=unit>{}</span></span>",
                unit.symbol
            );
        }
    }
    let absent = match spec.kind {
        Kind::Optional { empty_says, .. } => format!(" <small>empty: {empty_says}</small>"),
        _ => String::new(),
    };
    format!(
        "<label for={id}>{label}{absent}</label>{entry}<p class=complaint id={id}-complaint role=alert></p>"
    )
}

/// Shows what an entry has become; `afresh` also over what is being typed.
pub fn show(id: &str, of: Of, shown: &Shown, afresh: bool) {
    let (Some(entry), Some(spec)) = (by_id(id), of.spec()) else {
        return;
    };
    let _ = entry.set_attribute("aria-describedby", &format!("{id}-complaint {id}-help"));
    if let Some((text, why)) = draft::refused(id, of) {
        set_value(&entry, &text);
        let used = used(&entry, spec, shown.value);
        complain(&entry, &draft::sentence(spec, shown, &used, &text, &why));
    } else {
        complain(&entry, "");
        // What is being typed stays as typed, "1." and "0,5" included.
        let typed = entry.tag_name() == "INPUT" && has_focus(&entry);
        if afresh || !typed {
            set_value(&entry, &told(&entry, spec, shown.value));
        }
    }
    if let Kind::Optional { .. } = spec.kind {
        let stand_in = stand_in(shown, other(&entry, spec));
        let _ = entry.set_attribute("placeholder", &stand_in);
    }
    let Of::Input(_) = of else { return };
    let Ok(Some(row)) = entry.closest(".row") else {
        return;
    };
    row.set_class_name(if shown.applies { "row" } else { "row hidden" });
    if let Ok(Some(mark)) = row.query_selector(".mark") {
        set_value(&mark, shown.known.word());
        let guess = shown.known == Confidence::Guess;
        mark.set_class_name(if guess { "mark guess" } else { "mark" });
    }
    if let Ok(Some(forget)) = row.query_selector(".forget") {
        let hidden = if shown.said { "" } else { " hidden" };
        forget.set_class_name(&format!("plain forget{hidden}"));
    }
}

fn has_focus(entry: &Element) -> bool {
    document().active_element().as_ref() == Some(entry)
}

/// The unit an entry is filled in in, where its reader chose another one;
/// `units.js` marks those.
fn other(entry: &Element, spec: &FieldSpec) -> Option<Other> {
    let marked = entry.has_attribute("data-other");
    spec.unit().filter(|_| marked)?.other
}

/// A value as its entry shows it, with the reader's decimal sign.
fn told(entry: &Element, spec: &FieldSpec, value: Value) -> String {
    let text = spec.write_in(other(entry, spec), value);
    let root = document().document_element();
    match root.and_then(|root| root.get_attribute("data-point")) {
        Some(point) if spec.unit().is_some() => text.replace('.', &point),
        _ => text,
    }
}

/// The same with its unit.
fn used(entry: &Element, spec: &FieldSpec, value: Value) -> String {
    let symbol = match (other(entry, spec), spec.unit()) {
        (Some(other), _) => other.symbol,
        (None, Some(unit)) => unit.symbol,
        (None, None) => "",
    };
    let figure = told(entry, spec, value);
    format!("{figure} {symbol}").trim_end().to_string()
}

/// What stands in an empty entry.
fn stand_in(shown: &Shown, other: Option<Other>) -> String {
    shown.stands_for.map_or("none".to_string(), |figure| {
        let figure = other.map_or(figure, |other| other.to(figure));
        ((figure * 100.0).round() / 100.0).to_string()
    })
}

/// The help text of an input, which stands on the page.
pub fn how(name: &str) -> String {
    let css = format!("#sheet-{name}-help .how");
    let how = document().query_selector(&css).ok().flatten();
    how.map_or(String::new(), |how| how.inner_html())
}

fn complain(entry: &Element, words: &str) {
    if entry.has_attribute("aria-invalid") {
        let invalid = if words.is_empty() { "false" } else { "true" };
        let _ = entry.set_attribute("aria-invalid", invalid);
    }
    if let Some(place) = by_id(&format!("{}-complaint", entry.id()))
        && place.text_content().as_deref() != Some(words)
    {
        place.set_text_content(Some(words));
    }
}

/// What an entry, or what stands beside it in its row, belongs to.
pub fn of(element: &Element) -> Option<Of> {
    let name = element.get_attribute("data-of").or_else(|| {
        let row = element.closest(".row").ok()??;
        let entry = row.query_selector("[data-of]").ok()??;
        entry.get_attribute("data-of")
    });
    Of::named(&name?)
}

/// What the entries do.
pub const ACTS: &[Act] = &[
    ("entry", typed),
    ("left", left),
    ("nudge", nudge),
    ("grade", grade),
    ("forget", |desk, button, _| {
        if let Some(Of::Input(key)) = of(button) {
            draft::void(desk, Of::Input(key));
            desk.edit(|sheet| sheet.forget(key));
            form::renew(desk, Of::Input(key));
        }
    }),
];

fn typed(desk: Desk, entry: &Element, _: &Event) {
    let Some(of) = of(entry) else { return };
    let Some(spec) = of.spec() else { return };
    let text = value(entry);
    match spec.read_in(other(entry, spec), &text) {
        Ok(value) => {
            complain(entry, "");
            draft::accept(desk, &entry.id(), of, value);
            // A choice is made at once.
            if spec.unit().is_none() {
                draft::leave(of);
            }
        }
        Err(wrong) => {
            let why = input_error(&wrong, &Reader::METRIC);
            draft::refuse(desk, &entry.id(), of, text.clone(), why.clone());
            let shown = shown(desk, of);
            let used = used(entry, spec, shown.value);
            let words = draft::sentence(spec, &shown, &used, &text, &why);
            complain(entry, &words);
        }
    }
}

/// Arrow keys step a figure; `steps.js` presses them for a thumb. Enter is
/// done with it.
fn nudge(desk: Desk, entry: &Element, event: &Event) {
    let up = match event.unchecked_ref::<KeyboardEvent>().key().as_str() {
        "ArrowUp" => true,
        "ArrowDown" => false,
        "Enter" => return settle(desk, entry),
        _ => return,
    };
    event.prevent_default();
    let Some(of) = of(entry) else { return };
    let Some(spec) = of.spec() else { return };
    let now = shown(desk, of);
    let value = spec.step(other(entry, spec), now.value, now.stands_for, up);
    // A step is whole: the next one, and what is typed next, begin from it.
    draft::accept(desk, &entry.id(), of, value);
    settle(desk, entry);
}

/// An entry loses the focus. A window that loses it leaves the entry as it is:
/// the typing may go on.
fn left(desk: Desk, entry: &Element, _: &Event) {
    if !has_focus(entry) {
        settle(desk, entry);
    }
}

/// A figure that was understood is written as figures are, and is what typing
/// goes back to from now on.
fn settle(desk: Desk, entry: &Element) {
    let Some(of) = of(entry) else { return };
    let Some(spec) = of.spec() else { return };
    if draft::refused(&entry.id(), of).is_none() {
        draft::leave(of);
        complain(entry, "");
        set_value(entry, &told(entry, spec, shown(desk, of).value));
    }
}

fn shown(desk: Desk, of: Of) -> Shown {
    desk.sheet.with_untracked(|sheet| Shown::of(sheet, of))
}

fn grade(desk: Desk, mark: &Element, _: &Event) {
    let word = value(mark);
    let known = Confidence::ALL
        .into_iter()
        .find(|known| known.word() == word);
    if let (Some(Of::Input(key)), Some(known)) = (of(mark), known) {
        desk.edit(|sheet| sheet.know(key, known));
    }
}
