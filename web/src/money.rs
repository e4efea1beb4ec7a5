//! Amounts of money, and engine hours drawn against them.

use ampwright_core::boat::{Currency, Worksheet};
use ampwright_core::decision::arrangements::Outcome;

use crate::arrange::letter;
use crate::chart::drawing::{Anchor, Drawing};
use crate::chart::plot::{LEFT, RIGHT, WIDTH};
use crate::chart::scale::Scale;
use crate::words::{axis_time, escape, figure};

/// The sign before an amount, with its gap.
fn sign(sheet: &Worksheet) -> String {
    let currency = sheet.inputs.cost.currency;
    match (currency, Currency::OPTIONS.get(currency as usize)) {
        (Currency::Plain, _) | (_, None) => String::new(),
        (_, Some(option)) => format!("{}\u{202f}", option.label),
    }
}

/// An amount in whole units, by thousands.
pub fn money(sheet: &Worksheet, amount: f64) -> String {
    let digits = figure(amount.abs(), 0);
    let mut text = sign(sheet);
    if amount <= -0.5 {
        text.push('\u{2212}');
    }
    let first = digits.len() % 3;
    for (at, digit) in digits.chars().enumerate() {
        if at > 0 && at % 3 == first {
            text.push('\u{202f}');
        }
        text.push(digit);
    }
    text
}

/// A small amount, to the hundredth.
pub fn cents(sheet: &Worksheet, amount: f64) -> String {
    sign(sheet) + &figure(amount, 2)
}

const FIELD: (f64, f64) = (18.0, 168.0);

/// Engine time a day against the price of each arrangement.
pub fn chart(sheet: &Worksheet, outcomes: &[Outcome]) -> String {
    let most = outcomes.iter().map(|o| o.bought).fold(100.0, f64::max);
    let hours = || outcomes.iter().filter_map(|o| o.hours_day);
    let longest = 60.0 * hours().fold(0.5, f64::max);
    let price = Scale::new(0.0, 1.08 * most, LEFT + 12.0, RIGHT);
    let time = Scale::new(0.0, 1.1 * longest, FIELD.1, FIELD.0);
    let mut drawing = Drawing::default();
    for tick in time.time_ticks(5.0) {
        let y = time.place(tick);
        drawing.line("rule", (LEFT + 12.0, y), (RIGHT, y));
        drawing.word("tick", (LEFT + 8.0, y + 3.5), Anchor::End, &axis_time(tick));
    }
    drawing.line("edge", (LEFT + 12.0, FIELD.1), (RIGHT, FIELD.1));
    for tick in price.ticks(5.0) {
        let x = price.place(tick);
        drawing.line("edge", (x, FIELD.1), (x, FIELD.1 + 4.0));
        drawing.word(
            "tick",
            (x, FIELD.1 + 15.0),
            Anchor::Middle,
            &money(sheet, tick),
        );
    }
    drawing.word("name", (LEFT + 12.0, 10.0), Anchor::Start, "engine a day");
    drawing.word("name", (RIGHT, FIELD.1 - 5.0), Anchor::End, "to buy");
    let mut names = String::new();
    for (at, outcome) in outcomes.iter().enumerate() {
        let Some(hours) = outcome.hours_day else {
            continue;
        };
        let (x, y) = (price.place(outcome.bought), time.place(60.0 * hours));
        drawing.area("point", (x - 3.0, y - 3.0), (6.0, 6.0));
        // Letters of points that lie together stand one beside the other.
        let beside = outcomes
            .iter()
            .take(at)
            .filter(|other| {
                let near_x = (price.place(other.bought) - x).abs() < 12.0;
                let near_y = other
                    .hours_day
                    .is_some_and(|hours| (time.place(60.0 * hours) - y).abs() < 10.0);
                near_x && near_y
            })
            .count();
        let mut text = [0; 4];
        let word = letter(at).encode_utf8(&mut text);
        drawing.word(
            "name",
            (x + 6.0 + 9.0 * beside as f64, y - 4.0),
            Anchor::Start,
            word,
        );
        names += &format!("{} {}. ", letter(at), escape(&outcome.name));
    }
    format!(
        "<svg viewBox='0 0 {WIDTH} 190' role=img aria-label='Engine time a day against the price of each arrangement; the same figures stand in the table'>{}</svg><p class=margin>{names}Nearer to the lower left corner is better.</p>",
        drawing.finish()
    )
}
