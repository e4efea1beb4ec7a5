//! Why a bank may take so much at a temperature of its cells.

use crate::guidance::settings::{CellTemperatureReason, CurrentInTheCold};
use crate::text::settings::words::rate as show_rate;
use crate::units::Reader;

pub(super) fn reason(reason: &CellTemperatureReason, reader: &Reader) -> String {
    match *reason {
        CellTemperatureReason::AllStops => {
            "The battery management system must stop everything that charges.".to_string()
        }
        CellTemperatureReason::OwnLimit { rate, set: None } => format!(
            "{}: the bank's own limit, the setting for the season.",
            show_rate(rate, reader)
        ),
        CellTemperatureReason::OwnLimit {
            rate,
            set: Some(set),
        } => format!(
            "{}: the bank's own limit. For the season set what charges it to {} in all: the other packs bear that when one opens.",
            show_rate(rate, reader),
            reader.show(set)
        ),
        CellTemperatureReason::FirstLess { rate, held_by } => {
            format!("{}. {}", show_rate(rate, reader), held(held_by))
        }
        CellTemperatureReason::Less { rate } => format!("{}.", show_rate(rate, reader)),
    }
}

const fn held(by: CurrentInTheCold) -> &'static str {
    match by {
        CurrentInTheCold::DataLink => {
            "The battery tells the regulator over its data link; set what has no link by hand."
        }
        CurrentInTheCold::ChargerByHand => {
            "Nothing tells the charger: set it by hand, or the battery management system disconnects."
        }
        CurrentInTheCold::RegulatorByHand => {
            "Nothing tells the regulator: set it by hand in such cold, or the battery management system disconnects under load."
        }
        CurrentInTheCold::RegulatorByHandOrStopped => {
            "The signal stops the charging but says no limit: set the regulator by hand in such cold, or the bank is charged on and off."
        }
        CurrentInTheCold::DcDcChargerByHand => {
            "Nothing tells the DC-DC charger: set it by hand in such cold, or the battery management system disconnects."
        }
    }
}
