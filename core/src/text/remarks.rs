//! What is said of a link or a file that is no worksheet, and of what in one was
//! not understood. Links and files hold figures in the first unit of their input, and
//! so are the ranges told.

use crate::boat::reading::{Listed, ReadError, Remark, TextKind};
use crate::schema::KeptValue;
use crate::text::errors::input_error;
use crate::units::Reader;

/// Why nothing was taken from a link or a file.
pub fn read_error(error: &ReadError) -> String {
    match error {
        ReadError::TooLong { what, most_bytes } => format!(
            "{} is longer than {} MB, which no worksheet is. Nothing was taken from it.",
            this(*what),
            most_bytes / 1_000_000
        ),
        ReadError::Empty => "There is nothing in it.".to_string(),
        ReadError::BreaksOff { line } => format!(
            "The worksheet breaks off in line {line}: its end is missing. Nothing was taken from it."
        ),
        ReadError::NotJson { line, column } => format!(
            "This is not a worksheet: line {line} is not understood at its character {column}. Nothing was taken from it."
        ),
        ReadError::NotAWorksheet => "This is not a worksheet.".to_string(),
        ReadError::WrongType { expected } => {
            format!("This is not a worksheet: its “type” is not “{expected}”.")
        }
        ReadError::NotALink { newest } => {
            format!("This is not a link to a worksheet: it does not begin with v={newest}.")
        }
        ReadError::NoVersion { what } => format!(
            "{} does not say its version. Nothing was taken from it.",
            this(*what)
        ),
        ReadError::LaterVersion {
            what,
            version,
            newest,
        } => format!(
            "{} is of version {version}; this program reads up to version {newest}. Nothing was taken from it: a newer program opens it.",
            this(*what)
        ),
        ReadError::NoWorksheets => "This file holds no worksheets.".to_string(),
        ReadError::NoneRead { remarks } => self::remarks(remarks).join(" "),
    }
}

fn this(what: TextKind) -> &'static str {
    match what {
        TextKind::Link => "This link",
        TextKind::File => "This file",
        TextKind::Worksheet => "This worksheet",
        TextKind::Collection => "This file of worksheets",
    }
}

/// A sentence, or two, for each.
pub fn remarks(remarks: &[Remark]) -> Vec<String> {
    remarks.iter().map(remark).collect()
}

/// What was not understood, and what holds instead.
pub fn remark(remark: &Remark) -> String {
    match remark {
        Remark::UnknownKey { name } => format!("No input is called “{name}”; it is left out."),
        Remark::ValueRefused { error, kept, .. } => {
            format!("{} {}", input_error(error, &Reader::METRIC), stays(kept))
        }
        Remark::InputTwice { key } => {
            format!("{} is said twice; the last counts.", key.spec().label)
        }
        Remark::UnknownConfidence {
            key,
            word,
            counts_as,
        } => format!(
            "{} cannot be known as “{word}”; it counts as “{}”.",
            key.spec().label,
            counts_as.word()
        ),
        Remark::UnknownMark {
            key,
            mark,
            counts_as,
        } => format!(
            "{} has a mark “{mark}” that says nothing; it counts as “{}”.",
            key.spec().label,
            counts_as.word()
        ),
        Remark::UnknownPart { part } => {
            format!("The part “{part}” is not understood and left out.")
        }
        Remark::UnreadablePart { part } => format!("“{part}” is not understood and left out."),
        Remark::NameNotText => "A name that is not a text is left out.".to_string(),
        Remark::NameTwice => "The name is said twice; the last counts.".to_string(),
        Remark::NameDamaged { name } => {
            format!("The name “{name}” is damaged; it stays like this until you correct it.")
        }
        Remark::NameCut { name, longest } => {
            format!("The name “{name}” is longer than {longest} characters; the rest is left out.")
        }
        Remark::LoadNotUnderstood => "A load that is not understood is left out.".to_string(),
        Remark::UnknownLoadFigure { name } => {
            format!("A load has no figure “{name}”; it is left out.")
        }
        Remark::ExtraLoadFigures { load } => format!(
            "The load “{load}” has more figures than a load has; those beyond are left out."
        ),
        Remark::LoadValueRefused { load, error, kept } => format!(
            "In the load “{load}”: {} {}",
            input_error(error, &Reader::METRIC),
            stays(kept)
        ),
        Remark::LegNotUnderstood => {
            "A leg of the day that is not understood is left out.".to_string()
        }
        Remark::UnknownLegFigure { name } => {
            format!("A leg of the day has no figure “{name}”; it is left out.")
        }
        Remark::ExtraLegFigures { leg } => {
            format!("The leg “{leg}” has more figures than a leg has; those beyond are left out.")
        }
        Remark::LegValueRefused { leg, error, kept } => format!(
            "In the leg “{leg}”: {} {}",
            input_error(error, &Reader::METRIC),
            stays(kept)
        ),
        Remark::UnknownMonth { month } => {
            format!("No month of the year is “{month}”; it is left out.")
        }
        Remark::UnknownMonthFigure { name } => {
            format!("A month has no figure “{name}”; it is left out.")
        }
        Remark::ExtraMonthFigures { month } => format!(
            "{} has more figures than a month has; those beyond are left out.",
            month.label()
        ),
        Remark::MonthValueRefused { month, error, kept } => format!(
            "In {}: {} {}",
            month.label(),
            input_error(error, &Reader::METRIC),
            stays(kept)
        ),
        Remark::MonthTwice { month } => {
            format!("{} is said twice; the last counts.", month.label())
        }
        Remark::ArrangementNotUnderstood => {
            "An arrangement that is not understood is left out.".to_string()
        }
        Remark::UnknownChange { arrangement, name } => format!(
            "In the arrangement “{arrangement}”: No input is called “{name}”. It is left out."
        ),
        Remark::UnreadableChange { arrangement, part } => format!(
            "In the arrangement “{arrangement}”: “{part}” is not understood. It is left out."
        ),
        Remark::ChangeRefused {
            arrangement, error, ..
        } => format!(
            "In the arrangement “{arrangement}”: {} It is left out.",
            input_error(error, &Reader::METRIC)
        ),
        Remark::UnknownTick { step } => {
            format!("No commissioning step is called “{step}”; its tick is left out.")
        }
        Remark::TooMany {
            what: Listed::Worksheets,
            count,
            kept,
        } => format!("This file holds {count} worksheets; the first {kept} were taken."),
        Remark::TooMany {
            what: Listed::Loads,
            count,
            kept,
        } => too_many(*count, "loads", *kept),
        Remark::TooMany {
            what: Listed::Legs,
            count,
            kept,
        } => too_many(*count, "legs of the day", *kept),
        Remark::TooMany {
            what: Listed::Arrangements,
            count,
            kept,
        } => too_many(*count, "arrangements", *kept),
        Remark::WorksheetNotRead { number, of, error } => format!(
            "Worksheet {number} of {of} was not read: {}",
            read_error(error)
        ),
        Remark::LinkCut => {
            "The link is incomplete: its end is missing, so figures may be missing too.".to_string()
        }
        Remark::More { count } => format!("{count} more parts were not understood."),
    }
}

fn too_many(count: usize, what: &str, kept: usize) -> String {
    format!("{count} {what} are more than a worksheet holds; the first {kept} were taken.")
}

/// What an input holds instead of a value it did not take.
fn stays(kept: &KeptValue) -> String {
    match kept {
        KeptValue::Empty => "It stays empty.".to_string(),
        KeptValue::Number { number, unit } => {
            let gap = if unit.symbol.is_empty() { "" } else { " " };
            format!("It stays at {number}{gap}{}.", unit.symbol)
        }
        KeptValue::Option(option) => format!("It stays at {}.", option.label),
    }
}
