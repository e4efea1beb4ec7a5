//! What is told of each arrangement: the rows of the table, and of the cards.

use ampwright_core::decision::arrangements::{Outcome, Role};
use ampwright_core::text::{self, words};
use ampwright_core::units::quantity::{amperes, celsius, minutes, money, percent};
use ampwright_core::units::{Quantity, QuantityKind, Reader};

/// A row: what it tells of an outcome, and by what that is judged: the less the
/// better, not at all if it is no number.
struct Row {
    /// What it is about.
    title: &'static str,
    cell: fn(&Reader, &Outcome) -> (String, f64),
}

/// How a cell compares with the others of its row.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Judged {
    /// None is better.
    Best,
    /// None is worse.
    Worst,
    /// Neither, or not to be judged.
    Between,
}

/// A row as it is shown.
pub struct JudgedRow {
    /// What it is about.
    pub title: &'static str,
    /// Its cells, one for each arrangement.
    pub cells: Vec<(String, Judged)>,
}

/// Every row, the best and the worst of the safe arrangements named in each, if
/// it is one alone.
pub fn judged_rows(outcomes: &[Outcome], reader: &Reader) -> Vec<JudgedRow> {
    let judged = |row: &Row| JudgedRow {
        title: row.title,
        cells: judged(row, outcomes, reader),
    };
    let rows = ROWS.iter().map(judged);
    // What no arrangement has is no row.
    rows.filter(|row| row.cells.iter().any(|(text, _)| text != NOTHING))
        .collect()
}

fn judged(row: &Row, outcomes: &[Outcome], reader: &Reader) -> Vec<(String, Judged)> {
    let cell = |outcome: &Outcome| {
        let (text, by) = (row.cell)(reader, outcome);
        // The boat of before competes with none of them.
        let competes = outcome.harm.is_empty() && outcome.role != Role::Before;
        (text, if competes { by } else { f64::NAN })
    };
    let cells: Vec<(String, f64)> = outcomes.iter().map(cell).collect();
    let figures = || cells.iter().filter(|cell| !cell.1.is_nan());
    let best = figures().map(|cell| cell.1).fold(f64::INFINITY, f64::min);
    let worst = figures()
        .map(|cell| cell.1)
        .fold(f64::NEG_INFINITY, f64::max);
    // What reads the same is the same: a tie has no winner.
    let alone = |text: &str| figures().filter(|cell| cell.0 == text).count() == 1;
    let judge = |(text, by): &(String, f64)| match *by {
        _ if best == worst || !alone(text) => Judged::Between,
        by if by == best => Judged::Best,
        by if by == worst => Judged::Worst,
        _ => Judged::Between,
    };
    let judged: Vec<Judged> = cells.iter().map(judge).collect();
    let texts = cells.into_iter().map(|(text, _)| text);
    texts.zip(judged).collect()
}

const fn row(title: &'static str, cell: fn(&Reader, &Outcome) -> (String, f64)) -> Row {
    Row { title, cell }
}

/// What is not to be judged.
fn plain(text: String) -> (String, f64) {
    (text, f64::NAN)
}

/// What stands where there is no figure.
const NOTHING: &str = "–";

/// A figure that may be missing, the less the better.
fn figure(reader: &Reader, value: Option<f64>, of: fn(f64) -> Quantity) -> (String, f64) {
    match value {
        None => plain(NOTHING.to_string()),
        Some(value) => (reader.show(of(value)), value),
    }
}

fn engine_time(reader: &Reader, outcome: &Outcome) -> (String, f64) {
    let time = |hours| reader.show(minutes(60.0 * hours));
    match (outcome.hours_day, outcome.runs) {
        (None, _) => {
            let why = outcome.trouble.map_or("none does", words::day_trouble);
            (why.to_string(), f64::INFINITY)
        }
        (Some(hours), 0 | 1) => (time(hours), hours),
        (Some(hours), runs) => (format!("{} in {runs} runs", time(hours)), hours),
    }
}

fn hours(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Hours)
}

fn litres(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Fuel)
}

fn kilowatts(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::LargePower).to(1)
}

/// The price of a kilowatt-hour.
fn cents(value: f64) -> Quantity {
    money(value).to(2)
}

/// Years until a purchase has paid for itself.
fn years(reader: &Reader, value: f64) -> String {
    let years = Quantity::new(value, QuantityKind::Count).to(1);
    format!("{} years", reader.show(years))
}

/// Every row, in the order of the table.
static ROWS: [Row; 24] = [
    row("Engine, a day", engine_time),
    row("Alternator survives", |_, o| match o.verdict.survives() {
        true => ("yes".to_string(), 0.0),
        false => ("no".to_string(), 1.0),
    }),
    row("Engine, a year", |r, o| figure(r, o.hours_year, hours)),
    row("Generator, a day", |r, o| {
        figure(r, o.generator_h_day, |hours| minutes(60.0 * hours))
    }),
    row("Generator, a year", |r, o| {
        figure(r, o.generator_h_year, hours)
    }),
    row("Filled at the dock in", |r, o| {
        figure(r, o.dock_fill_h, |hours| minutes(60.0 * hours))
    }),
    row("To the target of the run", |r, o| {
        match o.minutes_to_target {
            None => ("not reached".to_string(), f64::INFINITY),
            Some(time) => (r.show(minutes(time)), time),
        }
    }),
    row("Alternator, at the start", |r, o| {
        (r.show(amperes(o.start_a)), -o.start_a)
    }),
    row("… hot", |r, o| (r.show(amperes(o.hot_a)), -o.hot_a)),
    row("Limited by", |_, o| {
        plain(words::limited_by(o.limit).to_string())
    }),
    row("Closest to its limit", |r, o| {
        let hottest = &o.hottest;
        let text = format!(
            "{} {} of {}",
            words::part(hottest.part),
            r.number(celsius(hottest.celsius)),
            r.show(celsius(hottest.limit_c))
        );
        (text, -hottest.margin_k())
    }),
    row("Belts take", |r, o| {
        let text = format!(
            "{}, {} of the engine",
            r.show(kilowatts(o.belt_kw)),
            r.show(percent(o.engine_share_pct))
        );
        (text, o.belt_kw)
    }),
    row("Belt load (worst)", |r, o| match o.belt_pct {
        None => plain("no belt entered".to_string()),
        Some(load) => (format!("{} of its capacity", r.show(percent(load))), load),
    }),
    row("The battery tells the regulator", |_, o| {
        plain(text::arrangements::link(o).to_string())
    }),
    row("Battery stops the charge", |r, o| {
        plain(text::arrangements::opens(o, r))
    }),
    row("Load dump", |r, o| {
        plain(text::arrangements::disconnect(&o.disconnect, r))
    }),
    row("Findings", |_, o| {
        let text = format!("{} danger, {} to fix", o.dangers, o.fixes);
        (text, (100 * o.dangers + o.fixes) as f64)
    }),
    row("Fuel, a year", |r, o| figure(r, o.fuel_year_l, litres)),
    row("To buy", |r, o| figure(r, Some(o.bought), money)),
    row("A year, all in", |r, o| {
        figure(r, o.year.map(|year| year.total), money)
    }),
    row("A kW·h from the engine", |r, o| {
        figure(r, o.engine_kwh, cents)
    }),
    row("A kW·h used aboard, all in", |r, o| {
        figure(r, o.used_kwh, cents)
    }),
    row("The bank lasts", |r, o| match o.bank_years {
        None => plain(NOTHING.to_string()),
        Some(time) => (years(r, time), -time),
    }),
    row("Paid back after", |r, o| match o.payback_years {
        _ if o.bought == 0.0 => plain(NOTHING.to_string()),
        None => ("never".to_string(), f64::INFINITY),
        Some(time) => (years(r, time), time),
    }),
];
