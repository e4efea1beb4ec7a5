//! Arrangements beside each other: a table on a wide screen, cards to swipe
//! on a narrow one. Reckoned only while they lie open, once typing rests.

mod rows;

use std::cell::RefCell;
use std::time::Duration;

use ampwright_core::boat::{Arrangement, Key, SectionId, Worksheet};
use ampwright_core::decision::arrangements::{Comparison, Outcome, all, compare};
use ampwright_core::findings::Finding;
use ampwright_core::guidance::CautionTopic;
use ampwright_core::text::findings;
use ampwright_core::units::Reader;
use leptos::prelude::*;
use leptos::web_sys::{Element, Event};

use rows::{ROWS, Row};

use crate::come::Arrival;
use crate::fit::caution;
use crate::legacy::{Section, Text, written};
use crate::money::{chart, money};
use crate::state::AppState;
use crate::words::escape;
use crate::{field, own};

/// How long typing must rest before they are reckoned anew.
const REST: Duration = Duration::from_millis(300);

thread_local! {
    static RECKONED: RefCell<Option<Comparison>> = const { RefCell::new(None) };
}

/// The section.
pub const SECTION: Section = Section {
    paper: written(|| {
        let mut prices = String::new();
        for section in [SectionId::cost, SectionId::price, SectionId::shore] {
            prices += &format!(
                "<h3>{}</h3><p class=lead>{}</p>",
                section.title(),
                section.about()
            );
            for key in section.keys() {
                prices += &field::row("money", key);
            }
        }
        format!(
            r#"<section class="arrange" id="arrange" aria-labelledby="arrange-title"><h2 id="arrange-title">Which arrangement, and what to buy first</h2>
<p class="lead">The same boat set up in other ways, each reckoned like the worksheet itself, both machines' heat in the same space included.</p>
<p class="caution" id="arrange-caution"></p>
<details class="finer" id="arrangements" data-toggle="arrange"><summary>Put them side by side</summary>
<div id="arrange-table"></div><div id="arrange-left-out"></div><div class="chart" id="arrange-chart"></div>
<div class="cards" id="arrange-cards" tabindex="0" role="region" aria-label="The arrangements one by one"></div>
<div id="arrange-own"></div>
<details class="finer" id="arrange-prices"><summary>Prices and what an hour costs</summary>{prices}</details>
<p class="about">Every price is a round figure of our own until you put in yours. Days aboard are taken as days like this worksheet's. Berth fees are not counted, nor is the pleasure of silence.</p></details></section>"#
        )
    }),
    parts: &[
        (
            "arrange-caution",
            Text::Late(|sheet, _| caution(sheet, CautionTopic::Exhaust)),
        ),
        ("arrange-table", Text::Own(|desk| with(desk, table))),
        ("arrange-left-out", Text::Own(left_out)),
        ("arrange-chart", Text::Own(|desk| with(desk, chart))),
        ("arrange-cards", Text::Own(|desk| with(desk, cards))),
    ],
    acts: &[
        ("arrange", |desk, _, _| reckon(desk, Duration::ZERO)),
        ("arrange-use", take_over),
        ("arrange-copy", |desk, button, _| {
            if let Some(chosen) = chosen(desk, button) {
                own::add(desk, chosen);
            }
        }),
    ],
    start: |desk| desk.at_each_change(|desk| reckon(desk, REST)),
};

/// Reckons them if they lie open, unless something is typed meanwhile.
fn reckon(desk: AppState, rest: Duration) {
    desk.once_rested("arrangements", rest, |desk| {
        RECKONED.set(Some(desk.sheet.with_untracked(compare)));
    });
}

/// A text about them, once they are reckoned.
fn with(desk: AppState, text: fn(&Worksheet, &[Outcome]) -> String) -> String {
    desk.aside.track();
    RECKONED.with_borrow(|reckoned| match reckoned {
        Some(compared) => desk
            .sheet
            .with_untracked(|sheet| text(sheet, &compared.outcomes)),
        None => String::new(),
    })
}

/// The arrangement a button belongs to.
fn chosen(desk: AppState, button: &Element) -> Option<Arrangement> {
    let at: usize = button.get_attribute("data-at")?.parse().ok()?;
    desk.sheet
        .with_untracked(|sheet| all(sheet).into_iter().nth(at))
}

/// The worksheet becomes the arrangement; the old one stays on the shelf.
fn take_over(desk: AppState, button: &Element, _: &Event) {
    let Some(chosen) = chosen(desk, button) else {
        return;
    };
    crate::store::save_waiting(desk);
    let mut sheet = desk.sheet.with_untracked(|sheet| chosen.on(sheet));
    sheet.name = format!("{}: {}", crate::shelf::title(&sheet.name), chosen.name);
    let arrival = Arrival {
        headline:
            "This is a copy, set up the other way. The worksheet it came from is kept as it was."
                .into(),
        remarks: Vec::new(),
    };
    desk.open(sheet, None, Some(arrival));
    crate::store::save_soon(desk);
    window().scroll_to_with_x_and_y(0.0, 0.0);
}

/// The letter of an arrangement.
pub fn letter(at: usize) -> char {
    char::from(b'A' + at.min(25) as u8)
}

/// A row's cells, the best and the worst of the safe ones named.
fn cells(row: &Row, sheet: &Worksheet, outcomes: &[Outcome]) -> Vec<String> {
    let cell = |outcome: &Outcome| {
        let (text, by) = (row.1)(sheet, outcome);
        let safe = outcome.harm.is_empty();
        (text, if safe { by } else { f64::NAN })
    };
    let cells: Vec<(String, f64)> = outcomes.iter().map(cell).collect();
    let judged = || cells.iter().map(|cell| cell.1).filter(|by| !by.is_nan());
    let best = judged().fold(f64::INFINITY, f64::min);
    let worst = judged().fold(f64::NEG_INFINITY, f64::max);
    cells
        .iter()
        .map(|(text, by)| {
            let text = escape(text);
            if best == worst || by.is_nan() {
                text
            } else if *by == best {
                format!("<b>{text}</b> <small class=best>best</small>")
            } else if *by == worst {
                format!("{text} <small class=worst>worst</small>")
            } else {
                text
            }
        })
        .collect()
}

fn table(sheet: &Worksheet, outcomes: &[Outcome]) -> String {
    let mut text = String::from(
        "<div class=scroll tabindex=0 role=region aria-label='Arrangements side by side'><table class='run ways'><thead><tr><td></td>",
    );
    for (at, outcome) in outcomes.iter().enumerate() {
        let today = if at == 0 {
            "<small>this worksheet</small>"
        } else {
            ""
        };
        text += &format!(
            "<th scope=col><i>{}</i> {}{today}{}</th>",
            letter(at),
            escape(&outcome.name),
            if outcome.harm.is_empty() {
                ""
            } else {
                " <small class=worst>not safe</small>"
            }
        );
    }
    text += "</tr></thead><tbody>";
    for row in &ROWS {
        text += &format!("<tr><th scope=row>{}</th>", row.0);
        for cell in cells(row, sheet, outcomes) {
            text += &format!("<td>{cell}</td>");
        }
        text += "</tr>";
    }
    text + "</tbody></table></div>"
}

fn cards(sheet: &Worksheet, outcomes: &[Outcome]) -> String {
    let columns: Vec<Vec<String>> = ROWS.iter().map(|row| cells(row, sheet, outcomes)).collect();
    let mut text = String::new();
    for (at, outcome) in outcomes.iter().enumerate() {
        text += &format!(
            "<article aria-label=\"{0} {1}\"><h3><i>{0}</i> {1}</h3>{2}<dl>",
            letter(at),
            escape(&outcome.name),
            against(&outcome.harm)
        );
        for (row, cells) in ROWS.iter().zip(&columns) {
            let cell = cells.get(at).map_or("", String::as_str);
            text += &format!("<div><dt>{}</dt><dd>{cell}</dd></div>", row.0);
        }
        text += "</dl>";
        text += &bought(sheet, outcome);
        if at > 0 {
            text += &format!(
                "<p class=buttons><button type=button id=way-use-{at} data-click=arrange-use data-at={at}>Set up a copy like this</button><button type=button class=plain id=way-copy-{at} data-click=arrange-copy data-at={at}>Make it mine and change it</button></p>"
            );
        }
        text += "</article>";
    }
    text
}

/// What speaks against an arrangement, said before anything else.
fn against(harm: &[Finding]) -> String {
    if harm.is_empty() {
        return String::new();
    }
    format!(
        "<p class=told><small class=worst>not safe</small> {}</p>",
        escape(&findings::sentences(harm, &Reader::METRIC))
    )
}

/// Usual arrangements that are not proposed, and why.
fn left_out(desk: AppState) -> String {
    desk.aside.track();
    RECKONED.with_borrow(|reckoned| {
        let left_out = reckoned.as_ref().map_or(&[][..], |c| &c.left_out);
        let mut text = String::new();
        for one in left_out {
            let why = one.harm.first().map_or(String::new(), |finding| {
                findings::sentence(finding, &Reader::METRIC)
            });
            text += &format!("<li><b>{}</b>: {}</li>", escape(one.name), escape(&why));
        }
        if text.is_empty() {
            text
        } else {
            format!("<p class=about>Not proposed, because it would not be safe:</p><ul>{text}</ul>")
        }
    })
}

/// What is to be bought, and what a year's cost is made of.
fn bought(sheet: &Worksheet, outcome: &Outcome) -> String {
    let mut lines = Vec::new();
    for part in &outcome.parts {
        lines.push((part.what.clone(), part.price));
    }
    let mut text = String::from("<table><tbody>");
    let line = |what: &str, price: f64| {
        format!(
            "<tr><th scope=row>{}</th><td class=figure>{}</td></tr>",
            escape(what),
            money(sheet, price)
        )
    };
    for (what, price) in &lines {
        text += &line(what, *price);
    }
    if lines.is_empty() {
        text += "<tr><th scope=row>Nothing to buy</th><td></td></tr>";
    }
    if let Some(year) = &outcome.year {
        let parts = [
            ("A year: fuel", year.fuel),
            ("… engine, service and wear", year.engine),
            ("… shore power", year.shore),
            ("… wear of the bank", year.bank),
            ("… the purchase, spread", year.capital),
        ];
        for (what, price) in parts {
            if price > 0.0 {
                text += &line(what, price);
            }
        }
    }
    text += "</tbody></table>";
    if !outcome.changes.is_empty() {
        text += &format!(
            "<p class=margin>{}.</p>",
            escape(&outcome.changes.join("; "))
        );
    }
    text
}

/// Every input an arrangement of one's own may change.
pub fn changeable() -> impl Iterator<Item = Key> {
    let kept = [SectionId::goal, SectionId::rule];
    Key::all().filter(move |key| !kept.contains(&key.section))
}
