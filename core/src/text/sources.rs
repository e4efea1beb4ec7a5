//! What charges beside sun and engine, in sentences.

use crate::report::Report;
use crate::units::Reader;
use crate::units::quantity::{Quantity, QuantityKind, ampere_hours, minutes, percent};

/// What other sources and a generator give in a day, a line each; nothing of a
/// boat that has none.
pub fn lines(report: &Report, reader: &Reader) -> Vec<String> {
    let energy = &report.analyses.energy;
    let other = (energy.other_ah > 0.0).then(|| {
        format!(
            "Other sources bring {} a day at anchor",
            reader.show(ampere_hours(energy.other_ah))
        )
    });
    other.into_iter().chain(generator(report, reader)).collect()
}

/// How long a generator runs a day, and what it burns; none where none charges.
pub fn generator(report: &Report, reader: &Reader) -> Option<String> {
    let generator = report.analyses.generator?;
    let Some(hours) = generator.hours else {
        return Some("Generator a day: no run puts back the use".to_string());
    };
    let kilowatts = Quantity::new(generator.rated_kw, QuantityKind::LargePower).to(1);
    let burnt = generator.fuel_l.zip(generator.load_pct);
    let burnt = burnt.map_or(String::new(), |(fuel_l, load_pct)| {
        format!(
            ", {} of fuel, at {} of its {}",
            reader.show(Quantity::new(fuel_l, QuantityKind::Fuel).to(1)),
            reader.show(percent(load_pct)),
            reader.show(kilowatts)
        )
    });
    Some(format!(
        "Generator a day: {}{burnt}",
        reader.show(minutes(60.0 * hours))
    ))
}
