//! What is said while a sea trial goes on: where the case is heading, when to
//! stop, and what is wrong with a reading that was typed.

use crate::analysis::Part;
use crate::decision::calibration::columns::Column;
use crate::decision::calibration::entry::{EntryError, EntryField};
use crate::decision::calibration::outlook::Outlook;
use crate::decision::calibration::stop::{StopCause, StopLimits, StopWay};
use crate::decision::calibration::{LineError, Log};
use crate::text::words;
use crate::units::quantity::{celsius, kelvin, minutes, volts};
use crate::units::{CELSIUS, Quantity, QuantityKind, Reader};

/// Older than this a reading says little about now \[min\]. Own reasoning.
const OLD_MIN: f64 = 10.0;

/// What a field of the form is called.
pub const fn field_label(column: Column, shaft_speed: bool) -> &'static str {
    match column {
        Column::Amps => "Amps",
        Column::Case => "Case",
        Column::Air => "Air",
        Column::Rpm if shaft_speed => "Alternator rpm",
        Column::Rpm => "Engine rpm",
        Column::Volts => "Volts",
        Column::Winding => "Winding",
        Column::Rectifier => "Rectifier",
    }
}

/// When to stop, before the trial begins.
pub fn stop_line(limits: &StopLimits, reader: &Reader) -> String {
    let why = match limits.decided_by {
        Part::Case => "its bearing grease takes no more".to_string(),
        part => format!(
            "by the calculation the {} inside is then at its limit of {}",
            words::part(part),
            reader.show(celsius(limits.part_limit_c))
        ),
    };
    let then = match limits.disconnects {
        true => "beyond that the battery management system disconnects the bank",
        false => "no working regulator goes beyond that",
    };
    format!(
        "Stop when the case reaches {} ({why}) or the volts at the alternator reach {} ({then}).",
        reader.show(celsius(limits.case_c)),
        reader.show(volts(limits.volts).to(1))
    )
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

/// Where the case is heading, counted from now. `next_c` is the level it was
/// held against \[°C\], `since_min` how long ago the last reading was taken.
pub fn outlook(
    outlook: &Outlook,
    limits: &StopLimits,
    next_c: f64,
    since_min: f64,
    reader: &Reader,
) -> String {
    let level = reader.show(celsius(next_c));
    let at = |case_c: f64| reader.show(celsius(case_c));
    let rate = |k_min: f64| format!("{} a minute", reader.show(kelvin(k_min).to(1)));
    if since_min > OLD_MIN {
        return format!(
            "The last reading is {} old: take another one.",
            reader.show(minutes(since_min))
        );
    }
    match *outlook {
        Outlook::TooFew => {
            "Two readings of the case, a minute or more apart, tell how fast it warms; four tell where it levels off.".to_string()
        }
        Outlook::Reached { case_c } => format!("The case is at {}, over the stop line.", at(case_c)),
        Outlook::Falls { case_c, k_min } => {
            format!("The case is at {} and cools by {}.", at(case_c), rate(k_min))
        }
        Outlook::Steady { case_c } => format!("The case holds steady at {}.{}", at(case_c), held(limits, case_c, reader)),
        Outlook::LevelsOff { at_c } => format!(
            "The case is levelling off at about {}, below {level}.",
            at(at_c)
        ),
        Outlook::Rises {
            k_min,
            earliest_min,
            likely_min,
            latest_min,
        } => {
            let meaning = meaning(limits, next_c);
            let left = |minutes: f64| (minutes - since_min).max(0.0);
            let time = match (likely_min, latest_min) {
                (Some(likely), Some(latest)) if is_narrow(earliest_min, latest) => {
                    format!(" in {}", about(left(likely), reader))
                }
                (_, Some(latest)) => format!(" in {}", span(left(earliest_min), left(latest), reader)),
                (_, None) => format!(
                    " in {} at the earliest; it may also level off before",
                    about(left(earliest_min), reader)
                ),
            };
            format!(
                "The case rises by {}. At this rate it reaches {level}{meaning}{time}.",
                rate(k_min)
            )
        }
    }
}

/// What a steady case means where a regulator holds a temperature.
fn held(limits: &StopLimits, case_c: f64, reader: &Reader) -> String {
    match limits.holds_c {
        Some(holds_c) if limits.is_not_held(case_c) => format!(
            " The regulator should hold {}: check that its sensor sits bare and tight on the case.",
            reader.show(celsius(holds_c))
        ),
        _ => String::new(),
    }
}

/// What happens at a level.
fn meaning(limits: &StopLimits, next_c: f64) -> &'static str {
    match limits.holds_c {
        Some(holds_c) if holds_c == next_c && next_c < limits.case_c => {
            ", where the regulator begins to hold it,"
        }
        _ => ", the stop line,",
    }
}

/// Whether a range of times is told as one time.
fn is_narrow(earliest_min: f64, latest_min: f64) -> bool {
    latest_min - earliest_min <= (0.25 * latest_min).max(2.0)
}

fn about(minutes_left: f64, reader: &Reader) -> String {
    match minutes_left.round() {
        left if left < 1.0 => "less than a minute".to_string(),
        left => reader.show(minutes(left)),
    }
}

fn span(earliest_min: f64, latest_min: f64, reader: &Reader) -> String {
    let (earliest, latest) = (earliest_min.round().max(1.0), latest_min.round().max(1.0));
    if earliest == latest {
        return about(latest, reader);
    }
    let earliest = Quantity::new(earliest, QuantityKind::Count);
    format!(
        "{} to {}",
        reader.number(earliest),
        reader.show(minutes(latest))
    )
}

/// How the case compares with what was calculated for the same minute; nothing
/// within what a thermometer can tell.
pub fn against_calculation(read_c: f64, calculated_c: f64, reader: &Reader) -> String {
    /// What thermometer and taped spot are off by \[K\]: own reasoning.
    const SAME_K: f64 = 3.0;
    let more_k = read_c - calculated_c;
    let by = reader.show(kelvin(more_k.abs()));
    if more_k.abs() < SAME_K {
        "That is what was calculated for this minute.".to_string()
    } else if more_k > 0.0 {
        format!("That is {by} hotter than calculated for this minute.")
    } else {
        format!("That is {by} cooler than calculated for this minute.")
    }
}

/// A reading in a line: "80 A, case 95 °C, 13.4 V".
pub fn reading(log: &Log, at: usize, reader: &Reader) -> String {
    let Some(row) = log.rows.get(at) else {
        return String::new();
    };
    let figure = |column: Column| {
        let figure = reader.show(column.quantity(row.get(column)?));
        Some(match column {
            Column::Amps | Column::Volts | Column::Rpm => figure,
            column => format!("{} {figure}", column.name()),
        })
    };
    let figures: Vec<String> = Column::ALL.into_iter().filter_map(figure).collect();
    figures.join(", ")
}

/// When a reading was taken: "minute 12.5".
pub fn reading_time(minute: f64, reader: &Reader) -> String {
    let minute = Quantity::new(minute, QuantityKind::Count).up_to(1);
    format!("minute {}", reader.number(minute))
}

/// What is wrong with a reading that was typed, and what to do.
pub fn entry_error(error: &EntryError, shaft_speed: bool, reader: &Reader) -> String {
    let field = match error.field {
        EntryField::Minute => "Minute",
        EntryField::Figure(column) => field_label(column, shaft_speed),
    };
    match &error.why {
        LineError::NoTime => {
            "No minute yet: press “Engine started”, or type the minutes since the engine started."
                .to_string()
        }
        LineError::NotATime { typed } => {
            format!("Minute: “{typed}” is not a number of minutes. Type it as 12 or 12.5.")
        }
        LineError::NotANumber { typed } => format!("{field}: “{typed}” is not a number."),
        LineError::OutOfRange { column, typed } => {
            let (low, high) = column.range();
            format!(
                "{field}: “{typed}” cannot be; it takes {}.",
                reader.input_range(low, high, column.measure())
            )
        }
        LineError::OnlyATime => "Type at least one reading.".to_string(),
    }
}

/// What is asked before readings are replaced, or deleted for a new trial.
pub fn ask_to_replace(count: usize, new_trial: bool) -> String {
    let readings = match count {
        1 => "the reading".to_string(),
        count => format!("the {count} readings"),
    };
    match new_trial {
        true => format!("A new trial deletes {readings} you have here."),
        false => format!("This takes the place of {readings} you have here."),
    }
}

/// What to know of readings that nobody took.
pub const EXAMPLE_READINGS: &str = "These are example readings of an invented boat: nobody has taken them. Fit the model to see how it works, and do not use the values for your boat.";

/// How long the engine has run: "12:05 since the engine started".
pub fn engine_clock(elapsed_min: f64) -> String {
    let seconds = (60.0 * elapsed_min).floor().max(0.0) as u64;
    let (hours, minutes, seconds) = (seconds / 3600, seconds / 60 % 60, seconds % 60);
    let time = match hours {
        0 => format!("{minutes}:{seconds:02}"),
        hours => format!("{hours}:{minutes:02}:{seconds:02}"),
    };
    format!("{time} since the engine started")
}

/// The unit a column is typed in.
pub fn entry_unit(column: Column, reader: &Reader) -> &'static str {
    match column.kind() {
        QuantityKind::Temperature => reader
            .other(CELSIUS)
            .map_or(CELSIUS.symbol, |other| other.symbol),
        kind => kind.unit().symbol,
    }
}
