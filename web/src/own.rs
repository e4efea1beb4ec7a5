//! The user's own arrangements: named, changed, given up.

use std::cell::RefCell;
use std::time::Duration;

use ampwright_core::boat::{Arrangement, Key, SectionId, Worksheet};
use leptos::prelude::*;

use crate::arrange::changeable;
use crate::draft;
use crate::form::{self, Row};
use crate::legacy::after;
use crate::legacy::{Act, Section, Text, by_id, focus, set_value, value, written};
use crate::of::Of;
use crate::state::{AppState, count};
use crate::words::escape;

thread_local! {
    static ROWS: RefCell<Vec<Row>> = const { RefCell::new(Vec::new()) };
}

/// Only acts: the list stands among the arrangements.
pub const SECTION: Section = Section {
    paper: written(String::new),
    parts: &[("arrange-own", Text::Own(list))],
    acts: ACTS,
    start: |desk| {
        desk.at_each_change(|desk| {
            // Once the list is written.
            after(Duration::ZERO, Box::new(move || refresh(desk)));
        });
    },
};

const ACTS: &[Act] = &[
    ("own-name", |desk, entry, _| {
        let name = value(entry);
        change(desk, at(entry), &mut |own| own.name.clone_from(&name));
    }),
    ("own-add", |desk, list, _| {
        let Some(key) = Key::named(&value(list)) else {
            return;
        };
        let now = desk.sheet.with_untracked(|sheet| sheet.inputs.get(key));
        change(desk, at(list), &mut |own| own.put(key, Some(now)));
        set_value(list, "");
        focus_soon(format!("own-{}-{}", at(list), key.name()));
    }),
    ("own-drop", |desk, button, _| {
        let key = button
            .get_attribute("data-key")
            .and_then(|name| Key::named(&name));
        if let Some(key) = key {
            draft::void(desk, Of::Own(at(button), key));
            change(desk, at(button), &mut |own| own.put(key, None));
        }
    }),
    ("own-delete", |desk, button, _| {
        let at = at(button);
        draft::close_gap(desk, at, place_of, |of| match of {
            Of::Own(at, key) => Of::Own(at.saturating_sub(1), key),
            other => other,
        });
        desk.edit(|sheet| {
            if at < sheet.arrangements.len() {
                sheet.arrangements.remove(at);
            }
        });
        ROWS.take();
        count(desk.aside);
    }),
    ("own-new", |desk, _, _| add(desk, Arrangement::default())),
];

/// The arrangement that an entry belongs to.
fn place_of(of: Of) -> Option<usize> {
    match of {
        Of::Own(at, _) => Some(at),
        _ => None,
    }
}

fn at(element: &leptos::web_sys::Element) -> usize {
    let at = element.get_attribute("data-at");
    at.and_then(|at| at.parse().ok()).unwrap_or(usize::MAX)
}

fn change(desk: AppState, at: usize, change: &mut dyn FnMut(&mut Arrangement)) {
    desk.edit(|sheet| {
        if let Some(own) = sheet.arrangements.get_mut(at) {
            change(own);
        }
    });
    count(desk.aside);
}

/// Takes one into the worksheet, to be changed.
pub fn add(desk: AppState, mut own: Arrangement) {
    let place = desk.sheet.with_untracked(|sheet| sheet.arrangements.len());
    own.name = match own.name.as_str() {
        "" => format!("My arrangement {}", place + 1),
        name => format!("{name}, mine"),
    };
    desk.edit(|sheet| sheet.arrangements.push(own));
    count(desk.aside);
    focus_soon(format!("own-{place}-name"));
}

/// Puts the cursor there once it is written.
fn focus_soon(id: String) {
    after(Duration::ZERO, Box::new(move || focus(&id)));
}

/// The list: names, changed inputs, and what else could be changed. Values are
/// filled in by [`refresh`], so that typing is not disturbed.
fn list(desk: AppState) -> String {
    desk.aside.track();
    desk.opened.track();
    desk.sheet.with_untracked(all_of)
}

fn all_of(sheet: &Worksheet) -> String {
    let mut text = String::from("<h3>Your own arrangements</h3>");
    for (at, own) in sheet.arrangements.iter().enumerate() {
        text += &format!(
            "<div class=own><div class=row><label for=own-{at}-name>Name</label><input id=own-{at}-name type=text maxlength=60 autocomplete=off data-input=own-name data-at={at}></div>"
        );
        for (key, _) in &own.changes {
            let name = key.name();
            text += &format!(
                "<div class=row>{}<p class=margin id=own-{at}-{name}-help>{}<button type=button class='plain forget' id=own-{at}-{name}-drop data-click=own-drop data-at={at} data-key={name}>as the worksheet has it</button></p></div>",
                entry(at, &name),
                escape(key.section.title()),
            );
        }
        text += &format!(
            "<p class=buttons><select id=own-{at}-add aria-label='Change something else' data-change=own-add data-at={at}><option value=''>Change something else…</option>{}</select><button type=button class=plain id=own-{at}-delete data-click=own-delete data-at={at}>Give this one up</button></p></div>",
            options(&own.on(sheet))
        );
    }
    text + "<p class=buttons><button type=button id=own-new data-click=own-new>Begin one from this worksheet</button></p>"
}

/// The entry of an input: that of the worksheet, under another name.
fn entry(at: usize, name: &str) -> String {
    let sheet = format!("sheet-{name}");
    let entry = by_id(&sheet).and_then(|entry| entry.closest(".row").ok().flatten());
    let row = entry.map_or(String::new(), |row| row.inner_html());
    // Without what is complained of there.
    let entry = row.split("<p").next().unwrap_or_default();
    entry
        .replace(&sheet, &format!("own-{at}-{name}"))
        .replace(&format!("\"{name}\""), &format!("\"{at}.{name}\""))
        .replace("\"true\"", "\"false\"")
        + &format!("<p class=complaint id=own-{at}-{name}-complaint role=alert></p>")
}

/// Every input that may be changed, by section.
fn options(sheet: &Worksheet) -> String {
    let mut text = String::new();
    let mut open: Option<SectionId> = None;
    for key in changeable().filter(|key| key.applies(&sheet.inputs)) {
        if open != Some(key.section) {
            if open.is_some() {
                text += "</optgroup>";
            }
            text += &format!("<optgroup label='{}'>", escape(key.section.title()));
            open = Some(key.section);
        }
        text += &format!(
            "<option value={}>{}</option>",
            key.name(),
            escape(key.spec().label)
        );
    }
    if open.is_some() {
        text += "</optgroup>";
    }
    text
}

/// Fills in names and values once the list is written.
fn refresh(desk: AppState) {
    let wanted: Vec<(String, Of)> = desk.sheet.with_untracked(|sheet| {
        let mut wanted = Vec::new();
        for (at, own) in sheet.arrangements.iter().enumerate() {
            let name = by_id(&format!("own-{at}-name"));
            let typed = document().active_element();
            // What is being typed stays, but for a name just written.
            let waits = |entry: &_| typed.as_ref() != Some(entry) || value(entry).is_empty();
            if let Some(entry) = name.filter(waits) {
                set_value(&entry, &own.name);
            }
            for (key, _) in &own.changes {
                wanted.push((format!("own-{at}-{}", key.name()), Of::Own(at, *key)));
            }
        }
        wanted
    });
    ROWS.with_borrow_mut(|rows| {
        rows.clear();
        for (id, of) in wanted {
            rows.push(Row::new(id, of));
        }
        form::follow(desk, rows, false);
    });
}
