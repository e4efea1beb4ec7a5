//! Why the start battery is set so.

use crate::guidance::settings::StartBatteryReason;
use crate::units::Reader;

pub(super) fn reason(reason: &StartBatteryReason, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *reason {
        StartBatteryReason::RestsAt { rest } => {
            format!("It rests at about {} when full.", show(rest))
        }
        StartBatteryReason::Gases { cell, at } => {
            format!(
                "{} a cell, for lead at {}; above, it gases.",
                show(cell),
                show(at)
            )
        }
        StartBatteryReason::FlowsWithoutLimit { house, start } => format!(
            "Joined, current flows between them without a limit: {} at rest near full against {}.",
            show(house),
            show(start)
        ),
        StartBatteryReason::DifferentVoltages { house, start } => format!(
            "Banks of {} and {} must never be joined.",
            show(house),
            show(start)
        ),
    }
}
