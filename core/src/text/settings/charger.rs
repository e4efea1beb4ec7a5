//! Why a charger is set so.

use crate::guidance::settings::ChargerReason;
use crate::text::words::at_most;
use crate::units::Reader;

pub(super) fn reason(reason: &ChargerReason, reader: &Reader) -> String {
    match *reason {
        ChargerReason::ProfileMustMatch { charge } => {
            format!(
                "A ready-made profile must charge to {}.",
                reader.show(charge)
            )
        }
        ChargerReason::StopsBeforeContactor { at } => format!(
            "It must stop at {}, before the contactor opens.",
            reader.show(at)
        ),
        ChargerReason::BankTakesLess { charger } => format!(
            "The bank may take no more; the charger could give {}.",
            reader.show(charger)
        ),
        ChargerReason::ChargerGivesLess { bank_limit } => format!(
            "All it gives; the bank may take {}.",
            at_most(bank_limit, reader)
        ),
    }
}
