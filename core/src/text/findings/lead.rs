//! What is said of a bank of lead.

use crate::boat::Chemistry;
use crate::findings::lead::HOT_C;
use crate::findings::{FrozenWhen, LeadFinding, LeadHigh, LeadLow, SetBy};
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{Quantity, QuantityKind, celsius, percent, volts};

/// Where the voltages of data sheets hold \[°C\].
const DATA_SHEET_C: f64 = 25.0;

pub(super) fn sentence(finding: &LeadFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match finding {
        LeadFinding::LeadHot { bank_c } => format!(
            "A lead battery at {} must not be charged: it can run away and boil. Let it cool below {}.",
            show(celsius(*bank_c)),
            show(celsius(HOT_C))
        ),
        LeadFinding::LeadFrozen {
            when,
            bank_c,
            lowest_pct,
            freezes_c,
            safe_pct,
        } => {
            let keep = match safe_pct {
                Some(safe_pct) => {
                    format!("Keep it above {} in such cold.", show(percent(*safe_pct)))
                }
                None => "Even a full one is not safe in such cold: take it somewhere warmer."
                    .to_string(),
            };
            let bank = show(celsius(*bank_c));
            let lowest = show(percent(*lowest_pct));
            let freezes = show(celsius(*freezes_c));
            let frozen = match when {
                FrozenWhen::EngineStarts => format!(
                    "The bank is frozen when the engine starts: it is at {bank}, and at {lowest} charge its acid freezes at {freezes}. It takes no charge, so no engine time puts back what you use. Ice cracks plates and cases, and charging a frozen battery can burst it: do not charge it. Thaw it somewhere warm and check the cases for cracks first."
                ),
                FrozenWhen::AtTheLowest => format!(
                    "The bank freezes before it is down to {lowest}, the lowest you allow: it is at {bank}, and at {lowest} charge its acid freezes at {freezes}. Ice cracks plates and cases, and charging a frozen battery can burst it."
                ),
            };
            format!("{frozen} {keep}")
        }
        LeadFinding::LeadMayFreeze {
            bank_c,
            lowest_pct,
            freezes_c,
            flat_freezes_c,
        } => format!(
            "The bank is at {}. At {} charge its acid freezes at {}, flat already at {}. Do not leave it discharged in frost, and never charge a frozen battery.",
            show(celsius(*bank_c)),
            show(percent(*lowest_pct)),
            show(celsius(*freezes_c)),
            show(celsius(*flat_freezes_c))
        ),
        LeadFinding::LeadOvervoltage(high) => too_high(high, reader),
        LeadFinding::LeadUndervoltage(low) => too_low(low, reader),
        LeadFinding::LeadNeverFull {
            target_pct,
            to_full_h,
        } => format!(
            "The daily charge ends at {}, so the engine never fills this bank. Lead that is not full about once a week sulphates and loses capacity: from there to full takes some {} more at the charge voltage. Let panels or a mains charger do it.",
            show(percent(*target_pct)),
            show(Quantity::new(to_full_h.ceil(), QuantityKind::Hours))
        ),
    }
}

/// What the bank is charged to.
const fn charged_to(set_by: SetBy) -> &'static str {
    match set_by {
        SetBy::BuiltInRegulator => "The built-in regulator holds",
        SetBy::Setting => "The charge voltage comes to",
    }
}

fn too_high(high: &LeadHigh, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let at_25c = format!(
        "{} at {}",
        show(volts(high.highest_25c_v)),
        show(celsius(DATA_SHEET_C))
    );
    // Said once where both are the same.
    let allowed = if high.highest_v == high.highest_25c_v {
        format!("{} there", show(volts(high.highest_v)))
    } else {
        format!("{} there ({at_25c})", show(volts(high.highest_v)))
    };
    let to_do = match high.set_by {
        SetBy::BuiltInRegulator => {
            "Fit a regulator that can be set, or charge through a DC-DC charger.".to_string()
        }
        SetBy::Setting => format!("Set no more than {at_25c}, with temperature compensation."),
    };
    let harm = match high.chemistry {
        Chemistry::Flooded => "It gasses hard, loses water and warms; more is only for equalising.",
        _ => "It vents gas that cannot be put back, dries out and may run away.",
    };
    format!(
        "{} {} on {} at {}; data sheets usually allow {}. {harm} {to_do}",
        charged_to(high.set_by),
        show(volts(high.charge_v)),
        words::bank(high.chemistry),
        show(celsius(high.bank_c)),
        allowed
    )
}

fn too_low(low: &LeadLow, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let to_do = match (low.set_by, low.others_fill) {
        (SetBy::Setting, _) => format!("Set at least {}.", show(volts(low.least_v))),
        (SetBy::BuiltInRegulator, true) => {
            "Let panels or a mains charger fill it about once a week, or fit a regulator that can be set.".to_string()
        }
        (SetBy::BuiltInRegulator, false) => {
            "Fit a regulator that can be set, and set the other chargers higher.".to_string()
        }
    };
    format!(
        "{} {}, and {} at {} needs at least {}: it never gets full, sulphates and loses capacity. {to_do}",
        charged_to(low.set_by),
        show(volts(low.charge_v)),
        words::bank(low.chemistry),
        show(celsius(low.bank_c)),
        show(volts(low.least_v))
    )
}
