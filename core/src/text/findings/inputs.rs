//! What is said of inputs that do not go together.

use crate::findings::InputFinding;
use crate::text::words::{self, as_entered};
use crate::text::year::month as month_name;
use crate::units::quantity::{amperes, percent, rpm};
use crate::units::{Quantity, QuantityKind, Reader};

fn day_count(days: f64) -> Quantity {
    Quantity::new(days, QuantityKind::Count).up_to(2)
}

pub(super) fn sentence(finding: &InputFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(as_entered(quantity));
    match *finding {
        InputFinding::CurvePoints {
            alternator,
            second_a,
            second_rpm,
            rated_a,
            rated_rpm,
        } => format!(
            "No output curve of the {} passes through {} at {} and {} at {}. The slower point must have clearly less current, but not next to nothing; until then the rating alone is used.",
            words::alternator(alternator),
            show(amperes(second_a)),
            show(rpm(second_rpm)),
            show(amperes(rated_a)),
            show(rpm(rated_rpm))
        ),
        InputFinding::EfficiencyTooHigh {
            alternator,
            efficiency_pct,
        } => format!(
            "An efficiency of {} at the rating of the {} leaves nothing for the copper once diodes, field, iron and fan have had their share. Enter the efficiency at full load, or smaller shares.",
            show(percent(efficiency_pct)),
            words::alternator(alternator)
        ),
        InputFinding::AnchorOutOfReach { alternator } => format!(
            "No cooling makes the {} settle at the winding temperature entered for the bench test; the nearest possible one is used. Check that temperature, its speed and its air.",
            words::alternator(alternator)
        ),
        InputFinding::TargetBelowStart { from_pct, to_pct } => format!(
            "The charge is to end at {} and starts at {}: there is nothing to charge. Correct the wrong one.",
            show(percent(to_pct)),
            show(percent(from_pct))
        ),
        InputFinding::MonthTooLong {
            month,
            days,
            length,
        } => format!(
            "{} has no {} days: {} are taken for it. Correct the days aboard in the table of months.",
            month_name(month),
            reader.number(day_count(days)),
            reader.number(day_count(length.ceil()))
        ),
        InputFinding::EmptyWindow { low_pct, high_pct } => format!(
            "A bank that you charge to {} and never let fall below {} has nothing to give. Correct the wrong one.",
            show(percent(high_pct)),
            show(percent(low_pct))
        ),
    }
}
