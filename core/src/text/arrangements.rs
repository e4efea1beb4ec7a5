//! What there is to say of arrangements beside their figures.

use crate::boat::{Key, RegulatorLink};
use crate::decision::arrangements::{Disconnect, Kind, LeftOut, Outcome};
use crate::schema::Value;
use crate::text::findings;
use crate::text::year::days_aboard;
use crate::units::Reader;
use crate::units::quantity::{seconds, volts};

/// What a usual way to charge is called.
pub const fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Before => "The boat today",
        Kind::StockDirect => "Stock alternator direct, nothing watching its heat",
        Kind::ThroughCharger => "Through a DC-DC charger",
        Kind::SmallerCharger => "A smaller DC-DC charger",
        Kind::ChargerAndPanels => "DC-DC charger, and more panels",
        Kind::DirectExternal => "Direct, with an external regulator",
        Kind::DirectLinked => "Direct, with a data link to the battery",
        Kind::DirectBuiltIn => "Direct, with the built-in regulator",
        Kind::CurrentCap => "A current cap at the regulator",
        Kind::SecondAlternator => "A second alternator for the bank",
        Kind::TwoAlternators => "Two alternators for the bank",
        Kind::LargerAlternator => "A larger alternator in its place",
        Kind::NoEngine => "Solar and shore power, no engine",
        Kind::Generator => "A generator with a mains charger, no engine",
        Kind::LargerMainsCharger => "A larger mains charger",
        Kind::Own => "My arrangement",
    }
}

/// What an arrangement is called: the user's own by the name they gave it.
pub fn name(outcome: &Outcome) -> &str {
    named(outcome.kind, &outcome.arrangement.name)
}

/// What an arrangement of a kind is called that may have a name of its own.
pub(super) fn named(of: Kind, own: &str) -> &str {
    match own {
        "" => kind(of),
        own => own,
    }
}

/// What an arrangement changes: "Pulley ratio: 2.6", "Rated current: 180 A".
pub fn changes(outcome: &Outcome, reader: &Reader) -> Vec<String> {
    let said = |(key, value): (Key, Value)| {
        format!(
            "{}: {}",
            key.spec().label,
            key.spec().shown_to(reader, value)
        )
    };
    outcome.changed().map(said).collect()
}

/// What the figures of a day and of a year are of.
pub fn basis(today: &Outcome, reader: &Reader) -> String {
    format!(
        "Engine time a day is per day at anchor. Engine time, fuel and money a year are per year of {}, month by month, and the same as under “Through the year”: engine time for charging, with motoring not counted; fuel has a generator's in it.",
        days_aboard(today.sums.days_aboard, reader)
    )
}

/// What happens when the bank disconnects under load, in a few words.
pub fn disconnect(disconnect: &Disconnect, reader: &Reader) -> String {
    let whole = |v| reader.show(volts(v).to(0));
    match *disconnect {
        Disconnect::BatteryStays => "nothing: a battery stays on the alternator".to_string(),
        Disconnect::NothingCharges => "nothing: no alternator charges".to_string(),
        Disconnect::Withstood {
            left_v,
            withstand_v,
        } => format!(
            "{} for a moment, electronics withstand {}",
            whole(left_v),
            whole(withstand_v)
        ),
        Disconnect::TooMuchLeft {
            left_v,
            withstand_v,
        } => format!(
            "{} left, electronics withstand only {}",
            whole(left_v),
            whole(withstand_v)
        ),
        Disconnect::NoProtection { left_v } => {
            format!("up to {}, no protection entered", whole(left_v))
        }
    }
}

/// What the battery tells the regulator, in a few words.
pub const fn link(outcome: &Outcome) -> &'static str {
    match outcome.link {
        RegulatorLink::None => "nothing",
        RegulatorLink::Signal => "to stop, by a signal",
        RegulatorLink::Limits => "its current limit, over a data link",
        RegulatorLink::LimitsAndVolts => "current and voltage limits, over a data link",
    }
}

/// Whether the battery stops the charge in the run, and how.
pub fn opens(outcome: &Outcome, reader: &Reader) -> String {
    match outcome.opens_s {
        None => "no".to_string(),
        Some(after_s) => format!(
            "after {}, {}",
            reader.show(seconds(after_s)),
            if outcome.field_off_first {
                "field off first"
            } else {
                "while current flows"
            }
        ),
    }
}

/// Usual arrangements that are not proposed, and the sentence that says why: those
/// with the same sentence together.
pub fn not_proposed(left_out: &[LeftOut], reader: &Reader) -> Vec<(String, String)> {
    let mut said: Vec<(String, String)> = Vec::new();
    for one in left_out {
        let Some(worst) = one.harm.first() else {
            continue;
        };
        let why = findings::sentence(worst, reader);
        // Its engine does not charge at anchor; while you motor it still does.
        let why = match one.kind {
            Kind::NoEngine => format!("Under way the alternator still charges. {why}"),
            _ => why,
        };
        match said.iter_mut().find(|(_, other)| *other == why) {
            Some((names, _)) => *names += &format!("; {}", kind(one.kind)),
            None => said.push((kind(one.kind).to_string(), why)),
        }
    }
    said
}
