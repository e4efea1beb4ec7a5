//! What is said of a bank that gets too little or too much.

use crate::findings::{ChargeFinding, LowerTo};
use crate::text::words::as_entered;
use crate::units::Reader;
use crate::units::quantity::{ampere_hours, amperes, kilowatts_of, minutes, percent, volts};

pub(super) fn sentence(finding: &ChargeFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *finding {
        ChargeFinding::BankIsEmptied { house_a } => format!(
            "The boat draws {} and the alternator gives less: the bank is emptied with the engine running. Switch loads off while you charge, or bring more current to the house side.",
            show(amperes(house_a))
        ),
        ChargeFinding::TargetNotReached {
            run_min,
            end_pct,
            target_pct,
            by_voltage,
        } => format!(
            "After {} the bank is at {}, not at {}. {}, allow a longer run, or set a lower target.",
            show(minutes(run_min)),
            // Cut, not rounded: nearly there is not there.
            show(percent((10.0 * end_pct).floor() / 10.0).to(1)),
            show(as_entered(percent(target_pct))),
            if by_voltage {
                "The charge voltage drives no more into it: charge at what its maker allows at this temperature"
            } else {
                "Bring more current to the bank"
            }
        ),
        ChargeFinding::BankLimitBinds { limit_a } => format!(
            "The regulator holds the alternator back to the {} that the battery allows over its data link.",
            show(amperes(limit_a))
        ),
        ChargeFinding::LeadOverCurrent {
            bank_a,
            limit_a,
            remedy,
        } => {
            let set = match remedy {
                LowerTo::ChargerOutput => "Set the DC-DC charger's output to",
                LowerTo::CurrentCap => "Set a current cap of",
                LowerTo::NewRegulatorsCap => "Fit an external regulator with a current cap of",
            };
            format!(
                "{} flow into the bank and it may take {}. Nothing disconnects a lead bank: it heats up, gasses and ages. {set} {}.",
                show(amperes(bank_a)),
                show(amperes(limit_a)),
                show(amperes(limit_a.floor()))
            )
        }
        ChargeFinding::ShoreNotEnough {
            charger_a: 0.0,
            day_ah,
        } => format!(
            "{} a day are left to shore power, and there is no mains charger: the bank runs empty. Enter the charger's current, or let engine or generator charge.",
            show(ampere_hours(day_ah))
        ),
        ChargeFinding::ShoreNotEnough { charger_a, day_ah } => format!(
            "{} a day are left to shore power, and with what the boat draws meanwhile a mains charger of {} never brings the bank to your daily charge target. Fit a larger one, switch loads off at the dock, or check the charge voltage.",
            show(ampere_hours(day_ah)),
            show(amperes(charger_a))
        ),
        ChargeFinding::ConverterLockedOut { start_v, lockout_v } => format!(
            "The start battery is at {} with the engine running, below the {} at which the DC-DC charger locks out: it passes nothing on. Measure that voltage, and set the lock-out below it.",
            show(volts(start_v).to(1)),
            show(volts(lockout_v).to(1))
        ),
        ChargeFinding::ConverterStarves {
            share_pct,
            lockout_v,
        } => format!(
            "{} the DC-DC charger asks for more than the alternator gives. The start battery's voltage then sinks to {} and the charger switches on and off: set its output lower, or run the engine faster.",
            match share_pct > 99.5 {
                true => "Throughout the run".to_string(),
                false => format!("For {} of the run", show(percent(share_pct))),
            },
            show(volts(lockout_v).to(1))
        ),
        // In watts: its two sides need not be of one voltage.
        ChargeFinding::ConverterLarge {
            charger_a,
            takes_w,
            rated_w,
        } => format!(
            "The DC-DC charger of {} takes about {}, more than {}the {} that the alternator is rated for; common practice stays below half. Watch the alternator's temperature, or set the charger's output lower.",
            show(amperes(charger_a)),
            show(kilowatts_of(takes_w)),
            if takes_w > rated_w { "" } else { "half of " },
            show(kilowatts_of(rated_w))
        ),
    }
}
