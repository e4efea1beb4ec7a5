//! What is said of how the battery talks to the regulator.

use crate::boat::{NoLink, RegulatorLink};
use crate::findings::{LinkFinding, LostLink};
use crate::simulation::management::OpeningCause;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{amperes, seconds, volts};

pub(super) fn sentence(finding: &LinkFinding, reader: &Reader) -> String {
    match finding {
        LinkFinding::LinkHasNoEffect {
            link,
            because,
            through_charger,
        } => no_effect(*link, *because, *through_charger).to_string(),
        LinkFinding::LinkLossNotSaid { lost } => format!(
            "What the regulator does when the data link is lost is not known. {} Look it up in its manual: it should stop charging then{}.",
            goes_on("If it goes on with its own set voltages", lost, reader),
            or_cap(lost, reader)
        ),
        LinkFinding::LinkLossOpens { lost, signal_stays } => format!(
            "{} {} Set it to stop charging on a lost link{}.",
            goes_on(
                "When the data link is lost the regulator goes on with its own set voltages",
                lost,
                reader
            ),
            if *signal_stays {
                "The charge-disable signal still cuts the field first, so nothing opens under load, but charging stops."
            } else {
                "Nothing takes the field off first."
            },
            or_cap(lost, reader)
        ),
    }
}

const fn no_effect(link: RegulatorLink, because: NoLink, through_charger: bool) -> &'static str {
    let signal = matches!(link, RegulatorLink::Signal);
    match (because, signal) {
        (NoLink::BuiltInRegulator, true) => {
            "A built-in regulator has no input for a charge-disable signal: the battery can ask it to stop and it goes on charging. Fit an external regulator with such an input, or charge through a DC-DC charger that the signal switches off."
        }
        (NoLink::BuiltInRegulator, false) => {
            "A built-in regulator has no data link: the battery can send its limits and it goes on charging as before. Fit an external regulator that understands the battery's messages, or charge through a small enough DC-DC charger."
        }
        (NoLink::ClosedPacks, true) => {
            "Drop-in packs have no charge-disable signal to wire to the regulator: choose packs that have one, or plan without."
        }
        (NoLink::ClosedPacks, false) => {
            "Drop-in packs have no data link, so they send the regulator no limits: choose packs that have one, or plan without."
        }
        (NoLink::DcDcCharger, _) if through_charger => {
            "The alternator charges the start battery, so its regulator has no use for what the house bank tells it. Wire the charge-disable signal to the DC-DC charger instead, and keep its output within the bank's limit."
        }
        (NoLink::DcDcCharger, _) => {
            "No alternator charges the house bank directly, so its regulator has no use for what the bank tells it."
        }
    }
}

/// What happens with the link gone.
fn goes_on(when: &str, lost: &LostLink, reader: &Reader) -> String {
    let after = reader.show(seconds(lost.after_s));
    let why = match lost.cause {
        OpeningCause::OverCurrent => format!(
            "{} flow into a bank that may take {}",
            reader.show(amperes(lost.bank_a)),
            reader.show(amperes(lost.limit_a))
        ),
        OpeningCause::OverVoltage => format!(
            "the bank is charged to {}",
            reader.show(volts(lost.bank_v).to(1))
        ),
        OpeningCause::Cold => "current flows into cells that are too cold".to_string(),
        OpeningCause::Hot => "current flows into cells that are too hot".to_string(),
    };
    format!("{when}, {why}, and the battery management system opens {after} after the start.")
}

/// A cap that holds without the link.
fn or_cap(lost: &LostLink, reader: &Reader) -> String {
    match lost
        .cap_a
        .filter(|_| lost.cause == OpeningCause::OverCurrent)
    {
        Some(cap_a) => format!(
            ", or have a current cap of {} that holds without it",
            words::at_most(amperes(cap_a), reader)
        ),
        None => String::new(),
    }
}
