//! The year aboard in sentences.

mod mains;

use crate::analysis::year::{MonthReport, Year};
use crate::boat::Month;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{Quantity, QuantityKind, ampere_hours, minutes, percent};

/// Less charging than this a year is none \[h\].
const NO_CHARGING_H: f64 = 0.5;

/// A month by its number, 1 to 12: "January"; nothing for another number.
pub fn month(number: usize) -> &'static str {
    number
        .checked_sub(1)
        .and_then(|at| Month::OPTIONS.get(at))
        .map_or("", |option| option.label)
}

fn hours(h: f64, reader: &Reader) -> String {
    reader.show(Quantity::new(h, QuantityKind::Hours))
}

fn clock(h: f64, reader: &Reader) -> String {
    reader.show(minutes(60.0 * h))
}

/// What the settled day of a month is like, in a few sentences.
pub fn settled_day(month: &MonthReport, reader: &Reader) -> String {
    let day = &month.day;
    if day.hours.is_empty() {
        return format!("You are not aboard in {}.", self::month(month.month));
    }
    let pattern = match day.repeats_days {
        Some(1) => "At anchor every day goes like this.".to_string(),
        Some(days) if day.engine_h + day.generator_h + day.shore_h > 0.0 => {
            let most = if day.shore_h > day.engine_h {
                "the most time on shore power"
            } else if day.generator_h > day.engine_h {
                "the most generator time"
            } else {
                "the most engine time"
            };
            format!("At anchor the days repeat every {days} days; this is the one with {most}.")
        }
        Some(days) => {
            format!("At anchor the days repeat every {days} days; this is one of them.")
        }
        None => "At anchor no two days are quite alike; this is one of them.".to_string(),
    };
    let mut engine = if day.engine_h > 0.0 {
        format!(" The engine runs {}.", clock(day.engine_h, reader))
    } else {
        " The engine does not run.".to_string()
    };
    if day.generator_h > 0.0 {
        engine += &format!(" The generator runs {}.", clock(day.generator_h, reader));
    }
    if day.shore_h > 0.0 {
        engine += &format!(" Shore power charges for {}.", clock(day.shore_h, reader));
    }
    let mut low = (day.end_charge_pct, 24);
    let mut high = low;
    for hour in day.hours.iter().rev() {
        if hour.charge_pct <= low.0 {
            low = (hour.charge_pct, hour.hour);
        }
        if hour.charge_pct >= high.0 {
            high = (hour.charge_pct, hour.hour);
        }
    }
    let at = |(pct, hour): (f64, usize)| format!("{} at {hour} h", reader.show(percent(pct)));
    format!(
        "{pattern}{engine} The bank is lowest, {}, and highest, {}.",
        at(low),
        at(high)
    )
}

/// What there is to say of a year, most telling first, one sentence or two each.
pub fn sentences(year: &Year, reader: &Reader) -> Vec<String> {
    if year.sums.days_aboard <= 0.0 {
        return vec!["You are aboard on no day of this year, so nothing is used.".to_string()];
    }
    let mut said = Vec::new();
    // An engine that is never asked for is no trouble.
    let asked = |m: &&MonthReport| m.trouble.is_some() && m.lowest_pct <= year.start_pct + 0.5;
    let troubled: Vec<&MonthReport> = year.months.iter().filter(asked).collect();
    let charges = |m: &MonthReport| m.days_aboard > 0.0 && m.trouble.is_none();
    match troubled.first().and_then(|month| month.trouble) {
        Some(trouble) if year.months.iter().any(charges) => {
            let names: Vec<&str> = troubled.iter().map(|m| month(m.month)).collect();
            said.push(format!(
                "In {}: {} It is not run for charging then.",
                names.join(", "),
                words::why_not_charged(trouble)
            ));
            said.push(engine(year, reader));
        }
        Some(trouble) => said.push(format!(
            "{} In this year it is not run for charging.",
            words::why_not_charged(trouble)
        )),
        None => said.push(engine(year, reader)),
    }
    if year.at_dock {
        said.push(mains::shore(year, reader));
    }
    if year.by_generator {
        said.push(mains::generator(year, reader));
    }
    said.extend(mains::give_nothing(year));
    said.extend(empty(year, reader));
    said.extend(below(year, reader));
    said
}

/// In which months the bank runs empty.
fn empty(year: &Year, reader: &Reader) -> Option<String> {
    let empty: Vec<&MonthReport> = year
        .months
        .iter()
        .filter(|month| month.short_ah_day > 0.0)
        .collect();
    let worst = most(&empty, |month| month.short_ah_day)?;
    let barred = year.months.iter().any(|m| m.mains_trouble.is_some());
    let why = match (year.at_dock, year.trouble) {
        _ if barred => "",
        (true, _) => " The mains charger is too small for this use, or cannot charge this bank.",
        (false, _) if year.by_generator => {
            " The generator may not start early enough or run long enough for this use."
        }
        (false, None) => " The engine may not start early enough or run long enough for this use.",
        (false, Some(_)) => "",
    };
    Some(format!(
        "The bank runs empty in {}; in {} you are short of {} a day aboard.{why}",
        months(empty.len()),
        month(worst.month),
        reader.show(ampere_hours(worst.short_ah_day.max(1.0)))
    ))
}

/// In which months the bank falls below what is wanted.
fn below(year: &Year, reader: &Reader) -> Option<String> {
    let below: Vec<&MonthReport> = year
        .months
        .iter()
        .filter(|month| month.days_below > 0)
        .collect();
    let worst = most(&below, |month| f64::from(month.days_below))?;
    Some(format!(
        "The bank falls below your lowest state of charge of {} in {}; in {} on {}.",
        reader.show(percent(year.low_pct)),
        months(below.len()),
        month(worst.month),
        // Parts of a day count as one, aboard and below.
        match f64::from(worst.days_below) >= worst.days_aboard {
            true => "every day aboard".to_string(),
            false => format!(
                "{} of {} days aboard",
                worst.days_below,
                reader.number(days(worst.days_aboard))
            ),
        }
    ))
}

fn engine(year: &Year, reader: &Reader) -> String {
    let all: Vec<&MonthReport> = year.months.iter().collect();
    let (charging_h, motoring_h) = (year.sums.charging_h, year.sums.motoring_h);
    let gives = all.iter().any(|month| month.balance.engine_ah > 0.0);
    let anyway = if motoring_h >= NO_CHARGING_H && gives {
        format!(
            ", and {} of motoring charge the bank too",
            hours(motoring_h, reader)
        )
    } else {
        String::new()
    };
    let longest = most(&all, |month| month.charging_h);
    if longest.is_some() && charging_h < NO_CHARGING_H {
        let need = match year.at_dock || year.by_generator {
            true => "is not run",
            false => "need not run",
        };
        return format!("The engine {need} for charging in any month{anyway}.");
    }
    let runs = format!(
        "In a year of {} the engine runs about {} for charging{anyway}.",
        aboard(year, reader),
        hours(charging_h, reader)
    );
    match longest {
        Some(worst) if year.months_differ => {
            format!("{runs} It runs longest in {}.", month(worst.month))
        }
        _ => runs,
    }
}

/// "180 days aboard".
pub fn aboard(year: &Year, reader: &Reader) -> String {
    days_aboard(year.sums.days_aboard, reader)
}

/// Days aboard by their number: "180 days aboard", "1 day aboard".
pub fn days_aboard(count: f64, reader: &Reader) -> String {
    let one = if count.round() == 1.0 { "day" } else { "days" };
    format!("{} {one} aboard", reader.number(days(count)))
}

/// What fuel a plan takes in the year's days aboard: "195 L per year aboard".
pub fn plan_fuel(fuel_year_l: Option<f64>, reader: &Reader) -> String {
    match fuel_year_l {
        Some(litres) => format!(
            "{} per year aboard",
            reader.show(Quantity::new(litres, QuantityKind::Fuel))
        ),
        None => "with days in the year on which the bank runs empty".to_string(),
    }
}

fn days(count: f64) -> Quantity {
    Quantity::new(count, QuantityKind::Count)
}

fn most<'a>(
    months: &[&'a MonthReport],
    by: impl Fn(&MonthReport) -> f64,
) -> Option<&'a MonthReport> {
    months
        .iter()
        .copied()
        .max_by(|a, b| by(a).total_cmp(&by(b)))
}

fn months(count: usize) -> String {
    match count {
        1 => "one month".to_string(),
        12 => "every month".to_string(),
        count => format!("{count} months"),
    }
}
