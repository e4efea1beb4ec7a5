//! A worksheet as the fragment of a link, readable and editable by hand:
//! `v=2&name=Turnstone&bank_capacity=460&alt_rated=120~m&pulley_ratio=2.4&load=Lights~15&end`.
//!
//! Only what was said stands in it, under short names (see `names`). `~m`,
//! `~n` or `~g` after a value says how well it is known where that is not the
//! usual. In a load, figures at their default are left empty, and at the end
//! left out. `year=6~28~~~8~80~30` is a month by its number and what is said of
//! it, in the order of its columns; `leg=Home~2000~40` one leg of the day. A blank is `+`; else nothing but unreserved characters, `=`, `&`
//! and `%` is used, and the word `end` closes it, so that a link cut short on
//! its way is noticed. The ticks of the first run stay behind: a link tells a
//! boat, not a progress.

mod names;
mod parts;
mod read;
mod reader;

use std::fmt::Write;

use percent_encoding::{AsciiSet, NON_ALPHANUMERIC, utf8_percent_encode};

use crate::boat::Section;
use crate::boat::{Arrangement, Key, Leg, LegRow, Load, LoadRow, Month, MonthRow, Worksheet};
use crate::exchange::version1::NEWEST;

pub use read::{Opened, open_link};

/// Closes a link.
const END: &str = "end";
/// Stands between the parts of a load and before a mark of knowledge.
const PART: char = '~';
/// Unreserved by RFC 3986 section 2.3, less the part mark.
const KEPT: &AsciiSet = &NON_ALPHANUMERIC.remove(b'-').remove(b'.').remove(b'_');

/// Writes the fragment of a link, without the `#`.
pub fn to_link(sheet: &Worksheet) -> String {
    let mut link = format!("v={NEWEST}");
    if !sheet.name.is_empty() {
        push(&mut link, "name", &escape(&sheet.name));
    }
    let mut section = None;
    for key in Key::all().filter(|key| sheet.is_said(*key)) {
        let mut value = key.spec().write(sheet.inputs.get(key));
        let knowledge = sheet.knowledge(key);
        if knowledge != key.spec().usual {
            value.push(PART);
            value.push(knowledge.letter());
        }
        push(&mut link, &names::short(key, section), &value);
        section = Some(key.section);
    }
    for load in &sheet.loads {
        push(&mut link, "load", &load_text(load));
    }
    for leg in &sheet.legs {
        push(&mut link, "leg", &leg_text(leg));
    }
    for (month, row) in sheet.months.said() {
        push(&mut link, "year", &month_text(month, row));
    }
    for arrangement in &sheet.arrangements {
        push(&mut link, "way", &arrangement_text(arrangement));
    }
    link.push('&');
    link.push_str(END);
    link
}

/// Its name, its draw, and the other figures as far as they are not the usual.
fn load_text(load: &Load) -> String {
    let mut text = escape(&load.name);
    let mut gap = String::new();
    for (at, field) in LoadRow::FIELDS.iter().enumerate() {
        gap.push(PART);
        let value = field.get(&load.row);
        if at == 0 || value != field.spec.default() {
            text.push_str(&gap);
            text.push_str(&field.spec.write(value));
            gap.clear();
        }
    }
    text
}

/// Its number, and what is said of it.
fn month_text(month: Month, row: &MonthRow) -> String {
    month.number().to_string() + &said(row)
}

/// Its name, and its figures as far as they are not the usual.
fn leg_text(leg: &Leg) -> String {
    escape(&leg.name) + &said::<LegRow>(&leg.row)
}

/// The figures of a row in the order of its columns, each after a part mark;
/// those at their default are left empty, and at the end left out.
fn said<S: Section>(row: &S) -> String {
    let (mut text, mut gap) = (String::new(), String::new());
    for field in S::FIELDS {
        gap.push(PART);
        let value = field.get(row);
        if value != field.spec.default() {
            text.push_str(&gap);
            text.push_str(&field.spec.write(value));
            gap.clear();
        }
    }
    text
}

fn arrangement_text(arrangement: &Arrangement) -> String {
    let mut text = escape(&arrangement.name);
    for (key, value) in &arrangement.changes {
        let (name, value) = (names::short(*key, None), key.spec().write(*value));
        // Writing to a String cannot fail.
        let _ = write!(text, "{PART}{name}{PART}{value}");
    }
    text
}

fn push(link: &mut String, name: &str, value: &str) {
    // Writing to a String cannot fail.
    let _ = write!(link, "&{name}={value}");
}

fn escape(text: &str) -> String {
    utf8_percent_encode(text, KEPT)
        .to_string()
        .replace("%20", "+")
}
