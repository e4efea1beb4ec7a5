//! What is told of each arrangement: the rows of the table, and of the cards.

use ampwright_core::boat::Worksheet;
use ampwright_core::decision::arrangements::Outcome;
use ampwright_core::text::arrangements::disconnect;
use ampwright_core::text::words;
use ampwright_core::units::{Reader, clock};

use crate::money::{cents, money};
use crate::words::figure;

/// What a row of the table shows of an outcome, and by what it is judged: the
/// less the better, not at all if it is no number.
pub type Row = (&'static str, fn(&Worksheet, &Outcome) -> (String, f64));

fn hours(outcome: &Outcome) -> (String, f64) {
    match (outcome.hours_day, outcome.runs) {
        (None, _) => {
            let why = outcome.trouble.map_or("none does", words::day_trouble);
            (why.into(), f64::INFINITY)
        }
        (Some(hours), 0 | 1) => (clock(60.0 * hours), hours),
        (Some(hours), runs) => (format!("{} in {runs} runs", clock(60.0 * hours)), hours),
    }
}

fn amount(sheet: &Worksheet, amount: Option<f64>) -> (String, f64) {
    match amount {
        None => ("–".into(), f64::NAN),
        Some(amount) => (money(sheet, amount), amount),
    }
}

fn plain(text: String) -> (String, f64) {
    (text, f64::NAN)
}

/// Every row, in the order of the table.
pub const ROWS: [Row; 18] = [
    ("Engine, a day", |_, o| hours(o)),
    ("Alternator survives", |_, o| match o.verdict.survives() {
        true => ("yes".into(), 0.0),
        false => ("no".into(), 1.0),
    }),
    ("… a year", |_, o| match o.hours_year {
        None => plain("–".into()),
        Some(hours) => (format!("{} h", figure(hours, 0)), hours),
    }),
    ("To the target of the run", |_, o| {
        match o.minutes_to_target {
            None => ("not reached".into(), f64::INFINITY),
            Some(minutes) => (clock(minutes), minutes),
        }
    }),
    ("Alternator, at the start", |_, o| {
        (format!("{} A", figure(o.start_a, 0)), -o.start_a)
    }),
    ("… hot", |_, o| {
        (format!("{} A", figure(o.hot_a, 0)), -o.hot_a)
    }),
    ("Limited by", |_, o| plain(words::limit(o.limit).into())),
    ("Closest to its limit", |_, o| {
        let hottest = &o.hottest;
        let text = format!(
            "{} {} of {} °C",
            words::part(hottest.part),
            figure(hottest.celsius, 0),
            figure(hottest.limit_c, 0)
        );
        (text, -hottest.margin_k())
    }),
    ("Belts take", |_, o| {
        let text = format!(
            "{} kW, {} % of the engine",
            figure(o.belt_kw, 1),
            figure(o.engine_share_pct, 0)
        );
        (text, o.belt_kw)
    }),
    ("Hardest worked belt", |_, o| match o.belt_pct {
        None => plain("not named".into()),
        Some(percent) => (
            format!("{} % of what it bears", figure(percent, 0)),
            percent,
        ),
    }),
    ("When the bank disconnects", |_, o| {
        plain(disconnect(&o.disconnect, &Reader::METRIC))
    }),
    ("Findings", |_, o| {
        let text = format!("{} danger, {} to fix", o.dangers, o.fixes);
        (text, (100 * o.dangers + o.fixes) as f64)
    }),
    ("Fuel, a year", |_, o| match o.fuel_year_l {
        None => plain("–".into()),
        Some(litres) => (format!("{} L", figure(litres, 0)), litres),
    }),
    ("To buy", |sheet, o| amount(sheet, Some(o.bought))),
    ("A year, all in", |sheet, o| {
        amount(sheet, o.year.map(|year| year.total))
    }),
    ("A kW·h from the engine", |sheet, o| match o.engine_kwh {
        None => plain("–".into()),
        Some(price) => (cents(sheet, price), price),
    }),
    ("A kW·h used aboard, all in", |sheet, o| match o.used_kwh {
        None => plain("–".into()),
        Some(price) => (cents(sheet, price), price),
    }),
    ("Paid back after", |_, o| match o.payback_years {
        _ if o.bought == 0.0 => plain("–".into()),
        None => ("never".into(), f64::INFINITY),
        Some(years) => (format!("{} years", figure(years, 1)), years),
    }),
];
