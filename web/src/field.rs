//! One input on screen. What it is called, takes and means comes from its
//! description in the core; this is only how it looks and how typing is heard.

use ampwright_core::fields::{Kind, Knowledge, Spec, Spread};
use ampwright_core::worksheet::Key;
use leptos::prelude::*;
use leptos::web_sys::{Element, Event};

use crate::desk::Desk;
use crate::form;
use crate::of::{Of, Shown};
use crate::paper::{Act, by_id, set_value, value};
use crate::words::escape;

/// A row of the worksheet as text. `place` tells apart two showings of one
/// input on the page.
pub fn row(place: &str, key: Key) -> String {
    let spec = key.spec();
    let (name, label) = (key.name(), spec.label);
    let id = format!("{place}-{name}");
    let back = match (place, spec.kind) {
        ("ask", Kind::Number { .. } | Kind::Maybe { .. }) => "I don't know",
        _ => "back to the default",
    };
    form::heed(id.clone(), key);
    // A choice is made, not measured, unless it is one of fact.
    let graded = spec.spread == Some(Spread::Either) || !matches!(spec.kind, Kind::Choice { .. });
    let mut marks = String::new();
    if graded {
        marks = format!(
            "<select class=mark id={id}-known aria-label=\"{label}: how well it is known\" data-change=grade data-of={name}>"
        );
        for known in Knowledge::ALL {
            let word = known.word();
            marks += &format!("<option value={word}>{word}</option>");
        }
        marks += "</select>";
    }
    format!(
        "<div class=row>{}<p class=margin id={id}-help>{marks}{}<button type=button class='plain forget' id={id}-forget data-click=forget data-of={name} aria-label=\"{label}: {back}\">{back}</button></p></div>",
        entry(spec, &id, Of::Input(key)),
        escape(spec.help)
    )
}

/// Label, entry, unit and complaint of one value, as text. Labels are words of
/// our own.
pub fn entry(spec: &Spec, id: &str, of: Of) -> String {
    let (name, label) = (of.name(), spec.label);
    let heard = format!("id={id} aria-describedby='{id}-complaint {id}-help' data-of={name}");
    let mut entry;
    match spec.kind {
        Kind::Choice { options, .. } => {
            entry = format!("<select {heard} data-change=entry>");
            for option in options {
                entry += &format!(
                    "<option value={}>{}</option>",
                    option.key,
                    escape(option.label)
                );
            }
            entry += "</select>";
        }
        Kind::Number { unit, .. } | Kind::Maybe { unit, .. } => {
            entry = format!(
                "<span class=entry><input {heard} type=text inputmode=decimal autocomplete=off enterkeyhint=done aria-invalid=false data-input=entry data-focusout=left><span class=unit>{}</span></span>",
                unit.symbol
            );
        }
    }
    let absent = match spec.kind {
        Kind::Maybe { absent, .. } => format!(" <small>empty: {}</small>", absent.says),
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
    if afresh {
        complain(&entry, "");
    }
    // What is being typed stays as typed, "1." and "0,5" included.
    let typed = entry.get_attribute("aria-invalid").as_deref() == Some("true")
        || document().active_element().as_ref() == Some(&entry) && entry.tag_name() == "INPUT";
    if afresh || !typed {
        set_value(&entry, &spec.write(shown.value));
    }
    if let Kind::Maybe { .. } = spec.kind {
        let words = shown.stands_for.map_or("none".to_string(), |figure| {
            ((figure * 100.0).round() / 100.0).to_string()
        });
        let _ = entry.set_attribute("placeholder", &words);
    }
    let Of::Input(_) = of else { return };
    if let Ok(Some(row)) = entry.closest(".row") {
        row.set_class_name(if shown.applies { "row" } else { "row hidden" });
    }
    if let Some(mark) = by_id(&format!("{id}-known")) {
        set_value(&mark, shown.known.word());
        let guess = shown.known == Knowledge::Guess;
        mark.set_class_name(if guess { "mark guess" } else { "mark" });
    }
    if let Some(forget) = by_id(&format!("{id}-forget")) {
        let hidden = if shown.said { "" } else { " hidden" };
        forget.set_class_name(&format!("plain forget{hidden}"));
    }
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

fn of(element: &Element) -> Option<Of> {
    Of::named(&element.get_attribute("data-of")?)
}

/// What the entries do.
pub const ACTS: &[Act] = &[
    ("entry", typed),
    ("left", left),
    ("grade", grade),
    ("forget", |desk, button, _| {
        if let Some(Of::Input(key)) = of(button) {
            desk.edit(|sheet| sheet.forget(key));
            form::renew(desk, Of::Input(key));
        }
    }),
];

fn typed(desk: Desk, entry: &Element, _: &Event) {
    let Some(of) = of(entry) else { return };
    match of.spec().map(|spec| spec.read(&value(entry))) {
        Some(Ok(value)) => {
            complain(entry, "");
            desk.edit(|sheet| of.set(sheet, value));
        }
        Some(Err(wrong)) => complain(entry, &wrong.0),
        None => {}
    }
}

/// A figure that was understood is written as figures are.
fn left(desk: Desk, entry: &Element, _: &Event) {
    let Some(of) = of(entry) else { return };
    if let Some(spec) = of.spec()
        && entry.get_attribute("aria-invalid").as_deref() != Some("true")
    {
        let shown = desk.sheet.with_untracked(|sheet| Shown::of(sheet, of));
        set_value(entry, &spec.write(shown.value));
    }
}

fn grade(desk: Desk, mark: &Element, _: &Event) {
    let word = value(mark);
    let known = Knowledge::ALL
        .into_iter()
        .find(|known| known.word() == word);
    if let (Some(Of::Input(key)), Some(known)) = (of(mark), known) {
        desk.edit(|sheet| sheet.know(key, known));
    }
}
