//! A worksheet as the fragment of a link, readable and editable by hand:
//! `v=1&name=…&bank_capacity_ah=460&reg_kind=internal&load=…&end`.
//!
//! Only what was said stands in it. `~m`, `~n` or `~g` after a value says how
//! well it is known where that is not the usual. Nothing but unreserved
//! characters, `=`, `&` and `%` is used, and the word `end` closes it, so that
//! a link cut short on its way is noticed. The ticks of the first run stay
//! behind: a link tells a boat, not a progress.

use std::fmt::Write;

use percent_encoding::{AsciiSet, NON_ALPHANUMERIC, percent_decode_str, utf8_percent_encode};

use super::{Arrangement, Key, Load, LoadRow, Worksheet};
use crate::fields::{Complaint, Knowledge, Section};

/// The version of link this program writes.
const VERSION: &str = "1";
/// Closes a link.
const END: &str = "end";
/// Stands between the parts of a load and before a mark of knowledge.
const PART: char = '~';
/// Unreserved by RFC 3986 section 2.3, less the part mark.
const KEPT: &AsciiSet = &NON_ALPHANUMERIC.remove(b'-').remove(b'.').remove(b'_');

/// A link that was opened.
#[derive(Debug, Clone, PartialEq)]
pub struct Opened {
    /// What was understood; the rest is at its default.
    pub sheet: Worksheet,
    /// Whether the link's end was there.
    pub whole: bool,
    /// What was not understood, one sentence each.
    pub remarks: Vec<String>,
}

/// Writes the fragment of a link, without the `#`.
pub fn to_link(sheet: &Worksheet) -> String {
    let mut link = format!("v={VERSION}");
    if !sheet.name.is_empty() {
        push(&mut link, "name", &escape(&sheet.name));
    }
    for key in Key::all().filter(|key| sheet.is_said(*key)) {
        let mut value = key.spec().write(sheet.inputs.get(key));
        let knowledge = sheet.knowledge(key);
        if knowledge != key.spec().usual {
            value.push(PART);
            value.push(knowledge.letter());
        }
        push(&mut link, &key.name(), &value);
    }
    for load in &sheet.loads {
        let parts: Vec<String> = std::iter::once(escape(&load.name))
            .chain(
                LoadRow::FIELDS
                    .iter()
                    .map(|field| field.spec.write(field.get(&load.row))),
            )
            .collect();
        push(&mut link, "load", &parts.join(&PART.to_string()));
    }
    for arrangement in &sheet.arrangements {
        let mut parts = escape(&arrangement.name);
        for (key, value) in &arrangement.changes {
            // Writing to a String cannot fail.
            let _ = write!(
                parts,
                "{PART}{}{PART}{}",
                key.name(),
                key.spec().write(*value)
            );
        }
        push(&mut link, "way", &parts);
    }
    link.push('&');
    link.push_str(END);
    link
}

/// Reads the fragment of a link, with or without the `#`.
///
/// # Errors
/// A sentence when it is no link of ours or one of a later version. Anything
/// less is a remark.
pub fn open_link(fragment: &str) -> Result<Opened, Complaint> {
    let fragment = fragment.trim().trim_start_matches('#');
    let mut parts = fragment.split('&').filter(|part| !part.is_empty());
    match parts.next().and_then(|part| part.strip_prefix("v=")) {
        Some(VERSION) => {}
        Some(other) => {
            return Err(Complaint(format!(
                "This link is of version {other}; this program reads version {VERSION}."
            )));
        }
        None => {
            return Err(Complaint(
                "This is not a link to a worksheet: it does not begin with v=1.".into(),
            ));
        }
    }
    let mut opened = Opened {
        sheet: Worksheet::default(),
        whole: false,
        remarks: Vec::new(),
    };
    for part in parts {
        if part == END {
            opened.whole = true;
            continue;
        }
        let Some((name, value)) = part.split_once('=') else {
            opened
                .remarks
                .push(format!("“{}” is not understood.", unescape(part)));
            continue;
        };
        match name {
            "name" => opened.sheet.name = unescape(value),
            "load" => read_load(value, &mut opened),
            "way" => read_arrangement(value, &mut opened),
            _ => read_input(name, value, &mut opened),
        }
    }
    if !opened.whole {
        opened.remarks.push(
            "The link is incomplete: its end is missing, so figures may be missing too.".into(),
        );
    }
    Ok(opened)
}

fn read_input(name: &str, value: &str, opened: &mut Opened) {
    let Some(key) = Key::named(name) else {
        let name = unescape(name);
        opened.remarks.push(format!("No input is called “{name}”."));
        return;
    };
    let (value, mark) = value.split_once(PART).unwrap_or((value, ""));
    let stated = key
        .spec()
        .read(&unescape(value))
        .and_then(|value| opened.sheet.state(key, value));
    if let Err(complaint) = stated {
        opened.remarks.push(complaint.0);
        return;
    }
    if mark.is_empty() {
        return;
    }
    match Knowledge::ALL
        .into_iter()
        .find(|known| mark == known.letter().to_string())
    {
        Some(known) => {
            opened.sheet.known.insert(key, known);
        }
        None => opened.remarks.push(format!(
            "{name} has a mark “{}” that says nothing.",
            unescape(mark)
        )),
    }
}

fn read_load(value: &str, opened: &mut Opened) {
    let mut parts = value.split(PART);
    let mut load = Load {
        name: parts.next().map(unescape).unwrap_or_default(),
        row: LoadRow::default(),
    };
    for field in LoadRow::FIELDS {
        let Some(part) = parts.next() else {
            opened
                .remarks
                .push(format!("The load “{}” is cut short.", load.name));
            break;
        };
        match field.spec.read(&unescape(part)) {
            Ok(value) => field.set(&mut load.row, value),
            Err(complaint) => opened
                .remarks
                .push(format!("In the load “{}”: {complaint}", load.name)),
        }
    }
    opened.sheet.loads.push(load);
}

fn read_arrangement(value: &str, opened: &mut Opened) {
    let mut parts = value.split(PART);
    let mut arrangement = Arrangement {
        name: parts.next().map(unescape).unwrap_or_default(),
        changes: Vec::new(),
    };
    while let Some(name) = parts.next() {
        let read = match (Key::named(name), parts.next()) {
            (Some(key), Some(text)) => key
                .spec()
                .read(&unescape(text))
                .map(|value| arrangement.put(key, Some(value))),
            _ => Err(Complaint(format!(
                "“{}” is not understood.",
                unescape(name)
            ))),
        };
        if let Err(complaint) = read {
            opened.remarks.push(format!(
                "In the arrangement “{}”: {complaint}",
                arrangement.name
            ));
        }
    }
    opened.sheet.arrangements.push(arrangement);
}

fn push(link: &mut String, name: &str, value: &str) {
    // Writing to a String cannot fail.
    let _ = write!(link, "&{name}={value}");
}

fn escape(text: &str) -> String {
    utf8_percent_encode(text, KEPT).to_string()
}

fn unescape(text: &str) -> String {
    percent_decode_str(text).decode_utf8_lossy().into_owned()
}
