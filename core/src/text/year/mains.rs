//! What the mains, at the dock or of a generator, give in a year, in sentences.

use crate::analysis::engine_day::DayTrouble;
use crate::analysis::year::{MonthReport, Year};
use crate::boat::MONTHS;
use crate::text::year::{NO_CHARGING_H, aboard, hours, month, months, most};
use crate::units::Reader;
use crate::units::quantity::{Quantity, QuantityKind, percent};

/// Less shore power than this a year is none \[kW·h\].
const NO_SHORE_KWH: f64 = 0.5;

/// In which months the mains must not charge the bank.
pub(super) fn give_nothing(year: &Year) -> Option<String> {
    let barred = |m: &&MonthReport| m.mains_trouble.is_some();
    let all: Vec<&MonthReport> = year.months.iter().filter(barred).collect();
    let names: Vec<&str> = all.iter().map(|m| month(m.month)).collect();
    let why = match all.first()?.mains_trouble? {
        DayTrouble::BankFrozen => {
            "the bank is frozen where charging would begin. It must not be charged then, from the mains either: keep it warmer or fuller"
        }
        _ => {
            "the cells are too cold or too hot. They must not be charged then, from the mains either: keep them in a heated or shaded place"
        }
    };
    let when = match names.len() {
        MONTHS => months(MONTHS),
        _ => names.join(", "),
    };
    Some(format!("In {when} {why}."))
}

/// What shore power gives in a year.
pub(super) fn shore(year: &Year, reader: &Reader) -> String {
    let all: Vec<&MonthReport> = year.months.iter().collect();
    match most(&all, |month| month.shore_kwh) {
        Some(worst) if year.sums.shore_kwh >= NO_SHORE_KWH => {
            let months = if year.months_differ {
                format!(", most of it in {}", month(worst.month))
            } else {
                String::new()
            };
            format!(
                "The bank is charged at the dock whenever it falls to {}: about {} in a year of {}{months}.",
                reader.show(percent(year.start_pct)),
                reader.show(Quantity::new(year.sums.shore_kwh, QuantityKind::Energy)),
                aboard(year, reader)
            )
        }
        _ if year.sums.covered => "No month needs shore power.".to_string(),
        _ => "Shore power gives the bank nothing.".to_string(),
    }
}

/// How long the generator runs in a year.
pub(super) fn generator(year: &Year, reader: &Reader) -> String {
    let all: Vec<&MonthReport> = year.months.iter().collect();
    match most(&all, |month| month.generator_h) {
        Some(worst) if year.sums.generator_h >= NO_CHARGING_H => {
            let months = if year.months_differ {
                format!(", longest in {}", month(worst.month))
            } else {
                String::new()
            };
            format!(
                "In a year of {} the generator runs about {} and burns {}{months}.",
                aboard(year, reader),
                hours(year.sums.generator_h, reader),
                reader.show(Quantity::new(
                    year.sums.generator_fuel_l,
                    QuantityKind::Fuel
                ))
            )
        }
        _ if year.sums.covered => "No month needs the generator.".to_string(),
        _ => "The generator gives the bank nothing.".to_string(),
    }
}
