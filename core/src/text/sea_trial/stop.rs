//! When to stop a sea trial, how, and what to do before it.

use crate::analysis::Part;
use crate::decision::calibration::stop::{StopCause, StopLimits, StopWay};
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{celsius, volts};

/// When to stop, before the trial begins.
pub fn stop_line(limits: &StopLimits, reader: &Reader) -> String {
    format!(
        "Stop when the case reaches {} or the alternator {}.",
        reader.show(celsius(limits.case_c)),
        reader.show(volts(limits.volts).to(1))
    )
}

/// Why just there.
pub fn why_stop(limits: &StopLimits, reader: &Reader) -> String {
    let hot = match limits.decided_by {
        Part::Case => "The bearing grease takes no more heat".to_string(),
        part => format!(
            "With the case that hot the {} inside is calculated to be at its limit of {}",
            words::part(part),
            reader.show(celsius(limits.part_limit_c))
        ),
    };
    let high = match limits.disconnects {
        true => "at more volts the battery management system disconnects the bank under load",
        false => "a regulator that works stays below those volts",
    };
    format!("{hot}; {high}.")
}

/// What else ends a trial, whatever the meters show.
pub const STOP_ANYWAY: &str = "Stop at once, whatever the meters show: smoke, a smell of hot varnish or rubber, a squealing or jumping belt, or amps that drop to nothing while the volts jump – the battery has disconnected.";

/// How to stop without doing harm.
pub const fn how_to_stop(way: StopWay) -> &'static str {
    match way {
        StopWay::CutField => {
            "How to stop: switch the regulator off, so that the alternator gives nothing, and let the engine idle for five minutes: the fan cools. If the amps do not fall to zero, stop the engine. Never open a battery switch and never pull a lead or a fuse while the engine runs."
        }
        StopWay::StopEngine => {
            "How to stop: stop the engine by its own stop. The built-in regulator cannot be switched off, and idling cools little. Never open a battery switch and never pull a lead or a fuse while the engine runs."
        }
    }
}

/// What to do before the engine starts, a sentence each.
pub const BEFORE: [&str; 4] = [
    "Before the engine starts: tape on the case, thermometer lead tied clear of belts and fan, sleeves and hair tied back, engine box open only as far as you need. Once it turns, nothing goes near the belt.",
    "Two people: one steers and listens, one reads. In a seaway one hand stays on the boat; if it needs both, leave the reading out.",
    "Fresh air: with the engine box open exhaust gas reaches the cabin. Alarm on, hatches open.",
    "Afterwards the case burns skin for half an hour. Take the tape off tomorrow.",
];

/// A reading at which to stop, and what to do.
pub fn stop_now(cause: &StopCause, limits: &StopLimits, reader: &Reader) -> String {
    let (what, at) = match *cause {
        StopCause::Hot {
            part,
            read_c,
            stop_c,
        } => (
            format!(
                "the {} is at {}",
                words::part(part),
                reader.show(celsius(read_c))
            ),
            reader.show(celsius(stop_c)),
        ),
        StopCause::Volts { read_v, stop_v } => (
            format!("{} at the alternator", reader.show(volts(read_v))),
            reader.show(volts(stop_v).to(1)),
        ),
    };
    let act = match limits.way {
        StopWay::CutField => "Switch the regulator off now; the engine may idle.",
        StopWay::StopEngine => "Stop the engine now.",
    };
    format!("STOP: {what}, the limit is {at}. {act} Touch no battery switch.")
}
