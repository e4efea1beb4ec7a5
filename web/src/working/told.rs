//! A working as text: formula, numbers, what it used, note and source.

use ampwright_core::explain::{Used, Working};
use ampwright_core::schema::Confidence;
use ampwright_core::units::clock;

use super::formula::formula;
use crate::words::{escape, figure};

/// The figure as the tables write it.
pub fn figured(made: &Working, none: &str) -> String {
    match (made.value, made.unit) {
        (None, _) => none.to_string(),
        (Some(hours), "h") if made.id != "inner.sun_full_hours" => clock(60.0 * hours),
        (Some(minutes), "min") => clock(minutes),
        (Some(value), "") => figure(value, made.decimals),
        (Some(value), unit) => figure(value, made.decimals) + " " + unit,
    }
}

fn with_unit(figure: String, unit: &str) -> String {
    match unit {
        "" => figure,
        unit => figure + "\u{a0}" + unit,
    }
}

/// Formula, numbers, what it used, note and source; on screen with the ways on.
pub fn tell(text: &mut String, made: &Working, live: bool) {
    if !made.symbols.is_empty() {
        let value = figure(made.value.unwrap_or(0.0), made.decimals);
        let lines = [
            formula(&made.symbols),
            formula(&made.figures),
            with_unit(value, made.unit),
        ];
        for line in lines {
            *text += &format!("<p class=formula>= {line}</p>");
        }
    }
    if !made.uses.is_empty() {
        *text += "<ul class=uses aria-label='What it used'>";
        for used in &made.uses {
            row(text, used, live);
        }
        *text += "</ul>";
    }
    *text += &format!(
        "<p class=margin>{}</p><p class='margin source'>{}</p>",
        escape(&made.note),
        made.source
    );
}

fn row(text: &mut String, used: &Used, live: bool) {
    let mut what = escape(&used.name);
    let mut value = with_unit(used.figure(), used.unit);
    if used.value.is_none() {
        value = escape(used.says);
    } else if !used.says.is_empty() {
        what += &format!(" <small>{}</small>", escape(used.says));
    }
    if let Some(known) = used.known {
        let guess = if known == Confidence::Guess {
            " guess"
        } else {
            ""
        };
        what += &format!(" <span class='mark{guess}'>{}</span>", known.word());
    }
    if let (Some(key), true) = (&used.key, live) {
        what += &format!(
            "<button type=button class='plain forget' id=use.{key} data-click=how-go data-key={key} aria-label='go there: {}'>go there</button>",
            escape(&used.name)
        );
    }
    if let (Some(id), true) = (used.working, live) {
        value = format!(
            "<button type=button class=how id=on.{id} data-click=how-on data-how={id} aria-label='How {value} came about: {}'>{value}</button>",
            escape(&used.name)
        );
    }
    *text += &format!(
        "<li><span class=sign>{}</span><span>{what}</span><span class=value>{value}</span></li>",
        formula(&used.symbol)
    );
}
