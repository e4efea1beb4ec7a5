//! What can be taken along and brought back: links, a code to scan, a text for
//! a forum, what was changed, files of worksheets, tables of results, paper.

use std::cell::Cell;

use ampwright_core::analysis::year;
use ampwright_core::decision::arrangements::compare;
use ampwright_core::exchange::{
    Style, arrangements_csv, day_csv, differences_text, forum_text, output_csv, run_csv, year_csv,
};
use ampwright_core::exchange::{read_file, to_json, to_link};
use ampwright_core::text::remarks::{read_error, remarks};
use ampwright_core::{Report, Worksheet};
use leptos::prelude::*;

use crate::come::Arrival;
use crate::legacy::{Section, Text, by_id, offer, value, write, written};
use crate::shelf::{number, title};
use crate::state::{AppState, count};
use crate::store::{self, Store, tell_browser};
use crate::words::escape;
use crate::{arrive, shelf, sure};

/// A table of results as a file: its name and how it is made.
type Table = (&'static str, fn(&Worksheet, &Report) -> String);

const TABLES: [Table; 5] = [
    ("run", |_, report| run_csv(report)),
    ("output", |_, report| output_csv(report)),
    ("year", |sheet, _| year_csv(&year(sheet))),
    ("day", |sheet, _| {
        let year = year(sheet);
        let month = year.months.get(sheet.inputs.sun.month as usize);
        month.map_or(String::new(), |month| day_csv(&month.day))
    }),
    ("arrangements", |sheet, _| arrangements_csv(&compare(sheet))),
];

thread_local! {
    /// For which kind of forum.
    static STYLE: Cell<u32> = const { Cell::new(0) };
}

/// The section.
pub const SECTION: Section = Section {
    paper: written(|| {
        let mut styles = String::new();
        for (at, style) in Style::ALL.iter().enumerate() {
            let checked = if at == 0 { " checked" } else { "" };
            styles += &format!(
                "<label class=tick><input type=radio name=forum-style data-change=forum-style value={at}{checked}>{}</label>",
                style.word()
            );
        }
        let mut tables = String::new();
        let words = [
            "The charging run",
            "Output against engine speed",
            "The year by months",
            "A settled day by hours",
            "The arrangements",
        ];
        for (at, words) in words.iter().enumerate() {
            tables += &format!(
                "<li><span>{words}</span><button type=button class=plain id=csv-{at} data-click=csv data-number={at} aria-label='Save as a table: {words}'>Save</button></li>"
            );
        }
        format!(
            r#"<section class="share" aria-labelledby="share-title"><h2 id="share-title">Take it along</h2>
<p class="lead">A link holds every figure you have entered and nothing else. Nothing is sent anywhere: whoever opens it reads it in their own browser.</p>
<label for="link">Link to this worksheet</label><textarea id="link" readonly rows="3"></textarea>
<p class="buttons"><button type="button" id="copy-link" data-do="copy" data-on="link">Copy the link</button> <button type="button" id="share-link" class="hidden" data-do="share" data-on="link">Share</button> <span class="said" id="link-length"></span> <span class="said" role="status" id="link-said"></span></p>
<details class="finer" id="scan" data-toggle="fold"><summary>A code to scan</summary><div id="code"></div><p>The link is too long for a code that a phone can scan: more than 858 characters. Each load less in the list saves some thirty.</p></details>
<details class="finer" id="forum" data-toggle="fold"><summary>A text for a forum</summary>
<fieldset class="kinds"><legend class="unseen">Written for</legend>{styles}</fieldset>
<label for="forum-text" class="unseen">The text</label><textarea id="forum-text" readonly rows="12"></textarea>
<p class="buttons"><button type="button" id="copy-forum" data-do="copy" data-on="forum-text">Copy the text</button> <span class="said" role="status"></span></p></details>
<details class="finer" id="compare" data-toggle="fold"><summary>What I changed</summary>
<p class="about">Since this worksheet came here, or against any other one: results first, then what makes them differ. The text for a forum then tells it too.</p>
<label for="compare-kept">Compare with one kept here</label><select id="compare-kept" data-change="compare-kept"></select>
<label for="compare-link">Compare with a link</label><textarea id="compare-link" rows="2" data-input="compare"></textarea>{changes}</details>
<details class="finer" id="files"><summary>Files and paper</summary>
<p class="buttons"><button type="button" id="save-all" data-do="files">All worksheets as a file</button> <button type="button" data-do="print">Print this worksheet</button></p>
<p class="about">Results as tables for any spreadsheet (CSV):</p><ul class="tables-out">{tables}</ul></details>
<h3>Bring one in</h3><label for="open-link">Open a link, or the text of a file</label><textarea id="open-link" rows="2" data-input="link"></textarea>
<p class="buttons"><button type="button" id="take-link" data-click="take-link" disabled>Open as a copy</button></p>
<label for="import">Add worksheets from a file</label><input type="file" id="import" accept=".json,application/json"><div id="carry" data-input="carry" hidden></div></section>"#,
            changes = arrive::changes("compare-table")
        )
    }),
    parts: &[
        ("link@value", Text::Late(|sheet, _| link(sheet))),
        (
            "link-length",
            Text::Own(|desk| {
                desk.tell_later(|sheet, _| format!("{} characters", link(sheet).len()))
            }),
        ),
        (
            // Drawn by code.js.
            "code@data-text",
            Text::Own(|desk| desk.tell_open("scan", |sheet, _| link(sheet))),
        ),
        (
            "forum-text@value",
            Text::Own(|desk| {
                desk.surety.track();
                desk.tell_open("forum", forum)
            }),
        ),
        ("compare-kept", Text::Own(shelf::others)),
        (
            "compare-table",
            Text::Own(|desk| {
                desk.tell_open("compare", |sheet, report| {
                    match arrive::since(sheet, report) {
                        Ok(found) => arrive::rows(&found),
                        Err(why) => ["<tr><td colspan=3>", &escape(&why)].concat(),
                    }
                })
            }),
        ),
    ],
    acts: &[
        ("forum-style", |desk, choice, _| {
            STYLE.set(value(choice).parse().unwrap_or(0));
            count(desk.aside);
        }),
        ("compare", |desk, area, _| {
            arrive::compare_with(desk, &value(area));
        }),
        ("compare-kept", |desk, list, _| {
            arrive::compare_kept(desk, value(list).parse().unwrap_or_default());
        }),
        ("csv", |desk, button, _| {
            if let Some((name, table)) = TABLES.get(number(button) as usize) {
                let boat = desk
                    .sheet
                    .with_untracked(|sheet| title(&sheet.name).to_string());
                write("carry@data-name", &[&boat, "-", name, ".csv"].concat());
                write("carry@data-text", &desk.look(table));
                tell_browser("ampwright:save");
            }
        }),
        ("carry", |desk, carry, _| {
            add(desk, &carry.get_attribute("data-text").unwrap_or_default());
        }),
        ("link", |_, area, _| offer("take-link", &value(area))),
        ("take-link", |desk, _, _| open(desk)),
    ],
    start: |_| (),
};

/// The link to a worksheet, at the address of this page.
pub fn link(sheet: &Worksheet) -> String {
    let here = window().location().href().unwrap_or_default();
    let page = here.split(['?', '#']).next().unwrap_or_default();
    [page, "#", &to_link(sheet)].concat()
}

fn forum(sheet: &Worksheet, report: &Report) -> String {
    let style = Style::ALL.get(STYLE.get() as usize);
    let style = style.copied().unwrap_or(Style::Plain);
    let mut text =
        sure::certain(&|certainty| forum_text(sheet, report, certainty, &link(sheet), style));
    if let Ok(found) = arrive::since(sheet, report)
        && !found.is_empty()
    {
        text.push('\n');
        text += &differences_text(&found, style);
    }
    text
}

fn open(desk: AppState) {
    let text = by_id("open-link").map_or(String::new(), |area| value(&area));
    match text.trim_start().starts_with('{') {
        true => add(desk, &text),
        false => desk.take_link(&text),
    }
    write("open-link@value", "");
    offer("take-link", "");
    window().scroll_to_with_x_and_y(0.0, 0.0);
}

/// Adds the worksheets of a file to those kept; none is replaced.
fn add(desk: AppState, text: &str) {
    store::save_waiting(desk);
    let mut arrival = Arrival {
        headline: "The file could not be read; nothing was added.".to_string(),
        remarks: Vec::new(),
    };
    match read_file(text) {
        Err(error) => arrival.remarks.push(read_error(&error)),
        Ok(readings) => {
            let (mut added, all) = (0, readings.len());
            for reading in readings {
                let text = to_json(&reading.sheet).to_string();
                let kept = Store::open().and_then(|store| store.keep(store.next_number(), &text));
                match kept {
                    Ok(()) => added += 1,
                    Err(why) => arrival.remarks.push(why.to_string()),
                }
                arrival.remarks.extend(remarks(&reading.remarks));
            }
            arrival.headline = format!(
                "Added from the file: {added} of {all} worksheets. None was replaced; they stand in the list of worksheets."
            );
        }
    }
    desk.arrival.set(Some(arrival));
    count(desk.shelved);
    window().scroll_to_with_x_and_y(0.0, 0.0);
}
