//! What is said of a generator that charges the bank.

use crate::findings::GeneratorFinding;
use crate::text::words::as_entered;
use crate::units::quantity::{ampere_hours, amperes, minutes, percent};
use crate::units::{Quantity, QuantityKind, Reader};

fn kilowatts(kw: f64) -> Quantity {
    Quantity::new(kw, QuantityKind::LargePower).to(1)
}

pub(super) fn sentence(finding: &GeneratorFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *finding {
        GeneratorFinding::GeneratorNotEnough {
            need_ah,
            target_pct,
            charger_a,
        } => format!(
            "A whole day of generator with a charger of {} does not put back {} up to {}. Fit a larger charger, use less, add panels, check the charge voltage, or stop at a lower state of charge.",
            show(amperes(charger_a)),
            show(ampere_hours(need_ah)),
            show(as_entered(percent(target_pct)))
        ),
        GeneratorFinding::GeneratorTooLong { hours, allowed_h } => format!(
            "The generator has to run {} a day, and you let it run {}: the bank falls a little further every day. A larger mains charger shortens it, as far as bank and generator bear it; panels or lighter loads do too.",
            show(minutes(60.0 * hours)),
            show(minutes(60.0 * allowed_h))
        ),
        GeneratorFinding::GeneratorTooSmall {
            rated_kw,
            charger_kw,
            charger_a,
        } => format!(
            "At full output the charger asks the generator for {}, and it gives {} for hours on end: it trips or overheats. Set the charger's mains input limit so that it gives no more than {}; the hours here are calculated with that.",
            show(kilowatts(charger_kw)),
            show(kilowatts(rated_kw)),
            show(amperes(charger_a))
        ),
        GeneratorFinding::GeneratorLowLoad { load_pct, rated_kw } => format!(
            "The generator of {} runs at {} of its output. A diesel that is loaded so little soots and glazes its bores. Use a larger charger or a smaller generator, or run the watermaker and the cooker meanwhile.",
            show(kilowatts(rated_kw)),
            show(percent(load_pct))
        ),
    }
}
