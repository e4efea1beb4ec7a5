//! Why a DC-DC charger is set so.

use crate::guidance::settings::ConverterReason;
use crate::text::words::at_most;
use crate::units::Reader;

pub(super) fn reason(reason: &ConverterReason, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *reason {
        ConverterReason::BankLimit { bank_limit } => format!(
            "The bank may take {} from everything together.",
            at_most(bank_limit, reader)
        ),
        ConverterReason::AlternatorHoldsLess { rating, hot } => format!(
            "Of {}: the alternator holds {} hot; more makes the charger switch on and off.",
            show(rating),
            show(hot)
        ),
        ConverterReason::AlternatorHoldsEnough { takes, hot } => format!(
            "It takes up to {} from an alternator that holds {} hot.",
            show(takes),
            show(hot)
        ),
        ConverterReason::RunningVoltageTooLow { running } => format!(
            "Your {} with the engine running hardly charges the start battery: correct that first.",
            show(running)
        ),
        ConverterReason::BetweenRunningAndRest { running, rest } => format!(
            "Between {} with the engine running and the {} at which a full start battery rests.",
            show(running),
            show(rest)
        ),
        ConverterReason::NoCycling { hot } => format!(
            "Keeps it from switching on and off where the alternator's {} fall short.",
            show(hot)
        ),
        ConverterReason::AsWithEngineRunning => {
            "What the start battery and the engine's services have with the engine running."
                .to_string()
        }
        ConverterReason::ServicesAndToppingUp { services, plenty } => format!(
            "{} for engine services and topping up; {} is plenty.",
            at_most(services, reader),
            show(plenty)
        ),
        ConverterReason::LoadsAreOffThere => {
            "Where the house switches its loads off; the start battery must not empty it further."
                .to_string()
        }
        ConverterReason::LossesDrain { capacity } => format!(
            "Left on, its losses drain a little of the {} all day.",
            show(capacity)
        ),
    }
}
