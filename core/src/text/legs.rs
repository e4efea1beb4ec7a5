//! The day as legs in sentences.

use crate::analysis::legs::{LegReport, LegsReport};
use crate::boat::Purpose;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{
    Quantity, QuantityKind, ampere_hours, amperes, celsius, minutes, percent, rpm, seconds,
};

/// What the list is for.
pub const ABOUT: &str = "List the day's engine runs in their order: out of harbour, motoring home, charging at anchor. Each goes on from the charge and the heat that the one before has left. Without any, the day has the one charging run above.";

/// A difference in charge that is none \[%\].
const SAME_PCT: f64 = 1.0;

/// A leg by its number and its name: "leg 2, “Back in”,".
pub fn called(number: usize, name: &str) -> String {
    match name.trim() {
        "" => format!("leg {number}"),
        name => format!("leg {number}, “{name}”,"),
    }
}

/// What the engine is run for, in a word or two.
pub const fn purpose(purpose: Purpose) -> &'static str {
    match purpose {
        Purpose::Charging => "for charging",
        Purpose::Anyway => "motoring anyway",
    }
}

fn hours(h: f64, reader: &Reader) -> String {
    reader.show(minutes(60.0 * h))
}

fn litres(l: f64) -> Quantity {
    Quantity::new(l, QuantityKind::Fuel).to(1)
}

/// The totals: how long the engine runs and what for, the fuel, and how the bank
/// stands.
pub fn totals(legs: &LegsReport, reader: &Reader) -> Vec<String> {
    let runs = match (legs.charging_h > 0.0, legs.motoring_h > 0.0) {
        (true, true) => format!(
            "{}: {} only for charging, {} motoring anyway",
            hours(legs.engine_h, reader),
            hours(legs.charging_h, reader),
            hours(legs.motoring_h, reader)
        ),
        (true, false) => format!("{}, all of it for charging", hours(legs.engine_h, reader)),
        (false, true) => format!(
            "{}, all of it motoring anyway",
            hours(legs.engine_h, reader)
        ),
        (false, false) => "no time at all: the bank is at its target already".to_string(),
    };
    let mut said = vec![
        format!("Engine runs {runs}."),
        match legs.bank_ah > 0.0 {
            true => format!(
                "Charging takes {} of fuel and brings {} into the bank.",
                reader.show(litres(legs.fuel_l)),
                reader.show(ampere_hours(legs.bank_ah))
            ),
            false => format!(
                "Charging takes {} of fuel and brings the bank nothing: the boat draws all that the alternator gives.",
                reader.show(litres(legs.fuel_l))
            ),
        },
    ];
    let bank = format!(
        "The bank goes from {} to {}",
        reader.show(percent(legs.from_pct)),
        reader.show(percent(legs.end_pct.max(0.0)))
    );
    let opens = legs.legs.iter().zip(1..).find_map(|(leg, number)| {
        let opening = leg.opening?;
        Some((called(number, &leg.name), opening.after_s))
    });
    if let Some((leg, after_s)) = opens {
        said.push(format!(
            "This is as if the charging went on: in {leg} the battery management system stops it after {}.",
            reader.show(seconds(after_s))
        ));
    }
    said.push(match legs.next_day_pct {
        None => format!(
            "{bank}. With the pauses the legs take {}, more than a day.",
            hours(legs.engine_h + legs.pause_h, reader)
        ),
        Some(next_pct) => format!(
            "{bank}. A day after the first leg began it is at {}: {}.",
            reader.show(percent(next_pct)),
            if next_pct < legs.from_pct - SAME_PCT {
                "less than it began with, so this day does not put back what you use"
            } else if next_pct > legs.from_pct + SAME_PCT {
                "more than it began with, so the engine could run less"
            } else {
                "as much as it began with"
            }
        ),
    });
    said
}

/// One leg in a line: when, how long, what it gives, how hot it gets, what limits
/// it.
pub fn line(number: usize, leg: &LegReport, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let pause = match leg.pause_h > 0.0 {
        true => format!(", after {} off", show(minutes(60.0 * leg.pause_h))),
        false => String::new(),
    };
    let name = match leg.name.trim() {
        "" => String::new(),
        name => format!(", {name}"),
    };
    format!(
        "Leg {number}{name}: {} at {}, {}{pause}; {} at the start, {} at the end, {} into the bank, from {} to {}; winding up to {}, case up to {}; limited by {}; {}",
        show(minutes(leg.minutes)),
        show(rpm(leg.rpm)),
        purpose(leg.purpose),
        show(amperes(leg.start_a)),
        show(amperes(leg.end_a)),
        show(ampere_hours(leg.bank_ah)),
        show(percent(leg.from_pct.max(0.0))),
        show(percent(leg.to_pct.max(0.0))),
        show(celsius(leg.hottest_winding_c())),
        show(celsius(leg.hottest_case_c())),
        words::limited_by(leg.limit),
        show(litres(leg.fuel_l))
    )
}
