//! What there is to say of a belt beside its figures.

use crate::analysis::belt::BeltReport;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{Quantity, QuantityKind, amperes, kilowatts_of, percent, rpm};

/// More than this share of what a belt carries is not told any finer \[%\].
pub(super) const MOST_TOLD_PCT: f64 = 999.0;

/// What there is to say of one belt, one sentence or two each.
pub fn sentences(belt: &BeltReport, reader: &Reader) -> Vec<String> {
    let mut said = vec![taken(belt, reader), taken_cold(belt, reader)];
    said.extend(carried(belt, reader));
    if let Some(side_n) = belt.side_n {
        said.push(format!(
            "Tightened as usual, the belt pulls the end of the crankshaft sideways with up to {}. How far out the pulley sits counts too: ask the engine's maker what the crankshaft withstands.",
            reader.show(Quantity::new(side_n, QuantityKind::Force))
        ));
    }
    if let Some(shared_a) = belt.shared_with_pump_a {
        said.push(format!(
            "This belt turns the water pump too, so the pump's bearing carries the same pull. One belt for both is good for about {} (common practice).",
            reader.show(amperes(shared_a))
        ));
    }
    said.push("Tighten a new belt again after 10 to 15 minutes, and once more after 5 hours (common practice).".to_string());
    said
}

/// What the shaft takes while charging.
fn taken(belt: &BeltReport, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let now = &belt.charging;
    format!(
        "While charging with the engine at {}, the {} takes up to {} and {} at its shaft for {}. The rule of thumb, one horsepower for each 25 A at 12 V, gives {}.",
        show(rpm(now.engine_rpm)),
        words::alternator(belt.alternator),
        show(kilowatts_of(now.shaft_w)),
        show(Quantity::new(now.shaft_nm, QuantityKind::Torque).to(1)),
        show(amperes(now.amperes)),
        show(kilowatts_of(now.rule_w))
    )
}

/// What the shaft can take, cold and with the engine at its highest.
fn taken_cold(belt: &BeltReport, reader: &Reader) -> String {
    let top = &belt.top;
    format!(
        "Cold, with the engine at {}, it can take {} for {}.",
        reader.show(rpm(top.engine_rpm)),
        reader.show(kilowatts_of(top.shaft_w)),
        reader.show(amperes(top.amperes))
    )
}

/// What the belt carries by the formula and by the rule of thumb; what it would
/// need where it is not entered.
fn carried(belt: &BeltReport, reader: &Reader) -> Vec<String> {
    let (now, top) = (&belt.charging, &belt.top);
    let share =
        |used: Option<f64>| reader.show(percent(used.unwrap_or_default().min(MOST_TOLD_PCT)));
    let (Some(kind), Some(carries_w), Some(low_a), Some(high_a)) =
        (belt.belt, now.carries_w, belt.rule_low_a, belt.rule_high_a)
    else {
        return vec![format!(
            "You have not entered which belt turns it. {}",
            words::belt_needed(belt.asks_v, belt.asks_ribs)
        )];
    };
    vec![
        format!(
            "By the belt formula, {} running at {} with a wrap of {} carries {} before it slips. Charging uses {} of that; with the engine at its highest speed it is {} of what the belt carries there.",
            words::belt(kind),
            reader.show(Quantity::new(now.belt_m_s, QuantityKind::BeltSpeed).to(1)),
            reader.show(Quantity::new(belt.wrap_deg, QuantityKind::Angle)),
            reader.show(kilowatts_of(carries_w)),
            share(now.formula_pct),
            share(top.formula_pct)
        ),
        format!(
            "By the rule of thumb it is good for {}. Charging uses {} of that, the highest engine speed {}.",
            reader.range(amperes(low_a), amperes(high_a)),
            share(now.rule_pct),
            share(top.rule_pct)
        ),
        "The formula is for a new, tight and dry belt; the rule of thumb leaves room for age, heat and damp. Where they differ, go by the one that allows less.".to_string(),
    ]
}
