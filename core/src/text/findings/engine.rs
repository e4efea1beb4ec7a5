//! What is said of the engine and its space.

use crate::findings::EngineFinding;
use crate::units::Reader;
use crate::units::quantity::{
    Quantity, QuantityKind, amperes, kilowatts_of, minutes, percent, rpm,
};

/// A blower of less than this is none \[m³/h\].
const LEAST_BLOWER_M3H: f64 = 0.5;

pub(super) fn sentence(finding: &EngineFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *finding {
        EngineFinding::EngineOverloaded {
            takes_kw,
            share_pct,
            engine_rpm,
        } => format!(
            "Charging takes {} from the engine, {} of what it has at {}. It will labour and smoke: run it faster, or cap the current.",
            show(kilowatts_of(1000.0 * takes_kw)),
            show(percent(share_pct)),
            show(rpm(engine_rpm))
        ),
        EngineFinding::EngineLowLoad { hours, share_pct } => format!(
            "The engine runs {} a day at {} of what it has at this speed. Long running at low load soots a diesel and glazes its bores: charge while you motor where you can, run it at cruising load for 30 minutes at least once a month, and look at solar or a larger alternator for the rest.",
            show(minutes(60.0 * hours)),
            show(percent(share_pct))
        ),
        EngineFinding::BlowerForWanted {
            wanted_a,
            blower_m3h,
        } if blower_m3h < LEAST_BLOWER_M3H => format!(
            "The alternator holds {} hot without a blower.",
            show(amperes(wanted_a))
        ),
        EngineFinding::BlowerForWanted {
            wanted_a,
            blower_m3h,
        } => format!(
            "To hold {} hot, fit a blower of {}, as printed on it.",
            show(amperes(wanted_a)),
            show(Quantity::new(blower_m3h, QuantityKind::AirFlow))
        ),
        EngineFinding::NoBlowerForWanted { wanted_a } => format!(
            "No blower alone lets the alternator hold {} hot. More engine speed, a higher temperature limit, a cool-air duct or a larger alternator would have to help.",
            show(amperes(wanted_a))
        ),
    }
}
