//! Why the house bank is charged so.

use crate::guidance::settings::ChargeReason;
use crate::text::words::at_most;
use crate::units::Reader;

pub(super) fn reason(reason: &ChargeReason, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *reason {
        ChargeReason::NoRoomBelowContactor {
            cell,
            given,
            contactor,
        } => format!(
            "{} a cell. Your {} leaves no room below the {} at which the contactor opens; this fills the bank as well.",
            show(cell),
            show(given),
            show(contactor)
        ),
        ChargeReason::MoreThanItWithstands { given, cell } => format!(
            "Your {} is more than the {} a cell that such a battery withstands every day.",
            show(given),
            show(cell)
        ),
        ChargeReason::WouldChargeNothing { cell, given } => format!(
            "{} a cell. Your {} would charge nothing: it is not a charge voltage of this bank.",
            show(cell),
            show(given)
        ),
        ChargeReason::CellsInSeries { cells, cell, at } => format!(
            "{} cells in series at {} each, at {}.",
            show(cells),
            show(cell),
            show(at)
        ),
        ChargeReason::FullByThen {
            share,
            capacity,
            house_load,
        } => {
            let full = format!("{} of {}: full by then.", show(share), show(capacity));
            match house_load {
                Some(house_load) => format!(
                    "{full} A sensor on the alternator also counts the {} the house draws.",
                    show(house_load)
                ),
                None => full,
            }
        }
        ChargeReason::RestsWhenFull { cell } => format!(
            "A full bank rests at {} a cell; more holds it at the top.",
            show(cell)
        ),
        ChargeReason::KeepsFull { cell } => format!(
            "{} a cell keeps a full bank full without gassing.",
            show(cell)
        ),
        ChargeReason::CompensationIsForLead {
            lead_cell,
            charge,
            moves,
            from,
            to,
        } => format!(
            "Meant for lead: {} a cell would move {} by {} between {}.",
            show(lead_cell),
            show(charge),
            show(moves),
            reader.both(from, to)
        ),
        ChargeReason::NoCompensationGiven {
            charge,
            least,
            most,
        } => format!(
            "You set none: {} in frost and in the tropics alike. {} a cell is usual.",
            show(charge),
            reader.range(least, most)
        ),
        ChargeReason::Compensated {
            cold,
            cold_at,
            hot,
            hot_at,
        } => format!(
            "{} at {} and {} at {}, sensor on a terminal of the bank.",
            show(cold),
            show(cold_at),
            show(hot),
            show(hot_at)
        ),
        ChargeReason::LeadHotOrFrozen { freezes_at } => format!(
            "A hot lead battery runs away; a frozen one can burst. A flat one freezes at {}.",
            show(freezes_at)
        ),
        ChargeReason::LithiumColdOrHot => {
            "Colder, metal plates out and spoils the cells; hotter, they age fast.".to_string()
        }
        ChargeReason::LithiumIsBalanced { withstands } => format!(
            "Far above the {} it withstands; its management system balances the cells.",
            show(withstands)
        ),
        ChargeReason::SealedBattery => {
            "A sealed battery loses gas that cannot be put back, unless its maker's sheet asks for it."
                .to_string()
        }
        ChargeReason::EqualiseWithCare => {
            "Only if its maker's sheet says so: by the mains charger, hatches open, no flame, what cannot withstand it off, water afterwards."
                .to_string()
        }
        ChargeReason::Sulphates { full_below } => format!(
            "Until it takes less than {} at the charge voltage; otherwise it sulphates.",
            at_most(full_below, reader)
        ),
        ChargeReason::PlatesCovered => {
            "Distilled, after charging, up to the mark; the plates must stay covered.".to_string()
        }
    }
}
