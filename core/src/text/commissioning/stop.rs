//! When to stop in a step.

use crate::guidance::commissioning::StepStop;
use crate::units::Reader;

/// When to stop and not go on, in a sentence.
pub fn stop(stop: &StepStop, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *stop {
        StepStop::BankOrLug { bank, lug } => format!(
            "Stop the engine if the bank passes {}, or a lug gets warmer than {}.",
            show(bank),
            show(lug)
        ),
        StepStop::BankVoltageOrTemperature {
            voltage,
            temperature,
        } => format!(
            "Switch it off if the bank passes {} or {}.",
            show(voltage),
            show(temperature)
        ),
        StepStop::HotRun {
            case,
            plate,
            lug,
            coolant,
        } => format!(
            "Stop at a case of {}, a rectifier plate of {}, a lug of {}, coolant of {}, or smoke, smell or squeal: charging off first, then the engine.",
            show(case),
            show(plate),
            show(lug),
            show(coolant)
        ),
        StepStop::Winding { winding } => format!("Stop at a winding of {}.", show(winding)),
        StepStop::Lug { lug } => format!("Stop at a lug of {}.", show(lug)),
        StepStop::Bank { bank } => format!("Stop charging at {}.", show(bank)),
        StepStop::CurrentRemains { within } => format!(
            "Stop the engine if the current has not gone within {}; leave the alternator off the bank until it works.",
            show(within)
        ),
    }
}
