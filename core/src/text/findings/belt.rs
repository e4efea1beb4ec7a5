//! What is said of belts and pulleys.

use crate::analysis::belt::USUAL_SIDE_N;
use crate::boat::BeltKind;
use crate::findings::BeltFinding;
use crate::text::belt::MOST_TOLD_PCT;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{
    Quantity, QuantityKind, amperes, count, kilowatts_of, millimetres, percent,
};

pub(super) fn sentence(finding: &BeltFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let degrees = |value| show(Quantity::new(value, QuantityKind::Angle));
    let newtons = |value| show(Quantity::new(value, QuantityKind::Force));
    match finding {
        BeltFinding::BeltNotSaid {
            alternator,
            shaft_w,
            alternator_a,
            v_belts,
            ribs,
        } => format!(
            "The {} needs up to {} for {}, more than the one V-belt that most engines have carries: it would slip, heat up and wear. {} Enter which belt it has.",
            words::alternator(*alternator),
            show(kilowatts_of(*shaft_w)),
            show(amperes(*alternator_a)),
            words::belt_needed(*v_belts, *ribs)
        ),
        BeltFinding::BeltTooSmall {
            alternator,
            belt,
            used_pct,
            shaft_w,
            alternator_a,
            v_belts,
            ribs,
        } => format!(
            "The {}'s belt, {}, has to carry {} of what the belt formula or the rule of thumb allows, with up to {} and {}: it will slip, heat up and wear. {}",
            words::alternator(*alternator),
            words::belt(*belt),
            show(percent(used_pct.min(MOST_TOLD_PCT))),
            show(kilowatts_of(*shaft_w)),
            show(amperes(*alternator_a)),
            words::belt_needed(*v_belts, *ribs)
        ),
        BeltFinding::PulleysOverlap {
            alternator,
            pulley_mm,
            engine_pulley_mm,
            centres_mm,
        } => format!(
            "Pulleys of {} do not fit side by side at a centre distance of {}. Measure the {}'s again.",
            reader.both(millimetres(*pulley_mm), millimetres(*engine_pulley_mm)),
            show(millimetres(*centres_mm)),
            words::alternator(*alternator)
        ),
        BeltFinding::RatioDisagrees {
            alternator,
            pulley_mm,
            engine_pulley_mm,
            made_ratio,
            entered_ratio,
        } => format!(
            "The {}'s pulleys of {} make a ratio of {}, and you entered {}. Speed, current and heat depend on it: measure again and correct the wrong one.",
            words::alternator(*alternator),
            reader.both(millimetres(*engine_pulley_mm), millimetres(*pulley_mm)),
            show(count(*made_ratio).to(2)),
            show(count(*entered_ratio).to(2))
        ),
        BeltFinding::BeltWrapSmall {
            alternator,
            wrap_deg,
        } => format!(
            "The {}'s belt lies only {} round the smaller pulley; at least {} for a V-belt and {} for a multi-rib belt is common practice. An idler on the slack side, or a greater centre distance, gives it more grip.",
            words::alternator(*alternator),
            degrees(wrap_deg.floor()),
            degrees(120.0),
            degrees(140.0)
        ),
        BeltFinding::BeltPulleySmall { belt, pulley_mm } => format!(
            "A pulley of {} bends {} so sharply that it heats up and cracks early. A larger pair with the same ratio makes it last.",
            show(millimetres(*pulley_mm)),
            words::belt(*belt)
        ),
        BeltFinding::BeltSharedPump {
            alternator_a,
            shared_a,
        } => format!(
            "One belt turns the water pump and an alternator of up to {}: the pump's bearing carries all that pull, and a belt that slips stops the cooling. Above about {} give the alternator a belt of its own (common practice), or cap its current.",
            show(amperes(*alternator_a)),
            show(amperes(*shared_a))
        ),
        BeltFinding::CrankSideLoad { both, side_n } => format!(
            "{} the crankshaft's end sideways with up to {}; {}, which many engines are built for, gives about {}. Ask the engine's maker what it withstands, or take the pull on a pulley with its own bearing.",
            if *both {
                "Both alternators' belts together pull"
            } else {
                "The alternator's belt pulls"
            },
            newtons(*side_n),
            words::belt(BeltKind::V13),
            newtons(USUAL_SIDE_N)
        ),
    }
}
