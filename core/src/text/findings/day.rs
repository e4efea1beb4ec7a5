//! What is said of the daily engine runs.

use crate::boat::Chemistry;
use crate::findings::{BelowWindowRemedy, DayFinding, NotCharged, NotCovered};
use crate::text::words::{self, as_entered};
use crate::units::Reader;
use crate::units::quantity::{ampere_hours, amperes, celsius, minutes, percent, volts};

pub(super) fn sentence(finding: &DayFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match finding {
        DayFinding::CannotBeCharged(why) => not_charged(why, reader),
        DayFinding::DayDisconnects => "On the daily engine run the battery management system disconnects the bank with the alternator working. Keep current and voltage below what the bank may take: check its charge limit and charge voltage.".to_string(),
        DayFinding::DayNotCovered(NotCovered::NothingLeft { house_a }) => format!(
            "The boat draws {} while the engine runs, all that reaches the house side: nothing is left to charge the bank with. Switch loads off meanwhile, or bring more current to the house side.",
            show(amperes(*house_a))
        ),
        DayFinding::DayNotCovered(NotCovered::TooSlow {
            need_ah,
            target_pct,
        }) => format!(
            "Charging works, but a whole day of engine does not put back {}. Bring more current to the bank, use less, add panels, or stop at a lower state of charge than {}.",
            show(ampere_hours(*need_ah)),
            show(as_entered(percent(*target_pct)))
        ),
        DayFinding::BankTooSmall {
            capacity_ah,
            need_ah,
        } => format!(
            "A bank of {} is too small for {} a day: even with an engine run every two hours it is empty before the next one. Fit a larger bank or use less.",
            show(as_entered(ampere_hours(*capacity_ah))),
            show(ampere_hours(*need_ah))
        ),
        DayFinding::SeveralRunsADay {
            capacity_ah,
            runs,
            run_hours,
            one_run_ah,
        } => {
            let larger = match one_run_ah {
                Some(one_run_ah) => format!(
                    " A bank of {} needs one run a day.",
                    show(ampere_hours(*one_run_ah))
                ),
                None => String::new(),
            };
            format!(
                "The bank of {} does not hold a day's use: the engine has to run {} a day, {} each time.{larger}",
                show(as_entered(ampere_hours(*capacity_ah))),
                words::times(f64::from(*runs)),
                show(minutes(60.0 * run_hours))
            )
        }
        DayFinding::DayBelowWindow {
            chemistry,
            from_pct,
            low_pct,
            remedy,
        } => {
            let why = match chemistry {
                Chemistry::Lfp => "little is left for a day without engine",
                _ => "lead that is emptied so far every day ages fast",
            };
            format!(
                "The bank falls to {} before each engine run, below the {} you want to keep: {why}. {}",
                show(percent(from_pct.max(0.0))),
                show(percent(*low_pct)),
                keep_above(remedy, reader)
            )
        }
    }
}

/// Why nothing goes into the bank, and what to do.
fn not_charged(why: &NotCharged, reader: &Reader) -> String {
    match *why {
        NotCharged::Temperature { bank_c } => format!(
            "The engine cannot charge this bank: at {} it may get no current. Warm its cells before you start the engine, with a heating mat or by moving the bank to a warmer place.",
            reader.show(celsius(bank_c))
        ),
        NotCharged::ChargeVoltage {
            chemistry,
            charge_v,
            usual_v,
            ends_pct,
            target_pct,
        } => {
            let reaches = if ends_pct < 1.0 {
                "does not charge this bank at all".to_string()
            } else if ends_pct >= target_pct {
                // Cold it would do.
                format!(
                    "does not bring this bank to your target of {}: a built-in regulator holds less as it warms",
                    reader.show(as_entered(percent(target_pct)))
                )
            } else {
                format!(
                    "charges this bank to about {} and no further; your target is {}",
                    reader.show(percent(ends_pct)),
                    reader.show(as_entered(percent(target_pct)))
                )
            };
            let kind = match chemistry {
                Chemistry::Lfp => "a lithium bank",
                _ => "a lead bank of this kind",
            };
            format!(
                "A charge voltage of {} {reaches}. Set the voltage that the battery maker gives, {} is usual for {kind}, or stop at a lower state of charge.",
                reader.show(volts(charge_v).to(1)),
                reader.show(volts(usual_v).to(1))
            )
        }
    }
}

/// How to stay above the lowest state of charge wanted.
fn keep_above(remedy: &BelowWindowRemedy, reader: &Reader) -> String {
    match *remedy {
        BelowWindowRemedy::MoreRunsOrLargerBank { runs, capacity_ah } => {
            let first = match runs {
                Some(runs) => format!("Run the engine {} a day, fit", words::times(runs)),
                None => "Fit".to_string(),
            };
            format!(
                "{first} a bank of {}, add panels or use less.",
                reader.show(ampere_hours(capacity_ah))
            )
        }
        BelowWindowRemedy::ChargeHigher { target_pct } => format!(
            "Charge to more than {}: that is no higher than the lowest you want.",
            reader.show(as_entered(percent(target_pct)))
        ),
    }
}
