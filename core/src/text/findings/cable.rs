//! What is said of cables and fuses.

use crate::findings::CableFinding;
use crate::physics::fuse::CLASS_T_KA;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{Quantity, QuantityKind, amperes, celsius, volts};

pub(super) fn sentence(finding: &CableFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let between = |from, to| format!("from {} to {}", words::run_end(from), words::run_end(to));
    let kiloamperes = |value| Quantity::new(value, QuantityKind::ShortCircuitCurrent);
    match *finding {
        CableFinding::CableInsulationTooHot {
            from,
            to,
            air_c,
            rated_c,
        } => format!(
            "The air along the cable {} reaches {} and its insulation is rated for {}: it may carry nothing. Use cable of a higher rating, lead it another way, or bring the space air.",
            between(from, to),
            show(celsius(air_c)),
            show(celsius(rated_c))
        ),
        CableFinding::CableNone {
            from,
            to,
            carries_a,
            length_m,
            drop_v,
        } => format!(
            "No cable of the tables, nor three side by side, takes {} over {} {} with a voltage drop of {}. Shorten the run, allow a larger voltage drop, or raise the system voltage.",
            show(amperes(carries_a)),
            show(Quantity::new(length_m, QuantityKind::Length).to(1)),
            between(from, to),
            show(volts(drop_v).to(2))
        ),
        CableFinding::CableParallel {
            from,
            to,
            cables,
            size,
            fuse_a,
        } => format!(
            "One cable is not enough {}: lay {cables} × {size}, each with its own fuse of {}.",
            between(from, to),
            show(amperes(fuse_a))
        ),
        CableFinding::CableInverterUnsaid => "The list of loads has mains appliances, and no inverter is entered under “Cable and fuse”: its cable, mostly the thickest aboard, is not sized. Enter the inverter's power.".to_string(),
        CableFinding::FuseCannotBreak { short_ka } => format!(
            "A short circuit at the bank's posts draws up to {}, more than fuses are commonly built to break. Fuse each battery of the bank at its own post, and ask the fuse's maker.",
            show(kiloamperes(short_ka))
        ),
        CableFinding::FuseMustBreak {
            short_ka,
            breaks_ka,
        } => format!(
            "A short circuit at the bank's posts draws up to {}. Fit fuses there that can break {}: the usual class T fuses break {}, strip and blade fuses {}, and would burn on. Or fuse each battery of the bank at its own post.",
            show(kiloamperes(short_ka)),
            show(kiloamperes(breaks_ka)),
            show(kiloamperes(CLASS_T_KA)),
            reader.range(kiloamperes(1.0), kiloamperes(5.0))
        ),
    }
}
