//! Why there is no answer.

use std::fmt;
use std::io;

use ampwright_core::exchange::ReadError;
use ampwright_core::schema::InputError;
use ampwright_core::text::errors::input_error;
use ampwright_core::text::remarks::read_error;
use ampwright_core::units::Reader;

/// Why a command gave no answer.
#[derive(Debug)]
pub enum Error {
    /// A file, or standard input, cannot be read.
    Unreadable {
        /// What was to be read.
        from: String,
        /// What the system says.
        source: io::Error,
    },
    /// It is no worksheet, or one of a later version.
    NotAWorksheet {
        /// What was read.
        from: String,
        /// What the reader says.
        reason: ReadError,
    },
    /// It holds several boats, and none was chosen.
    SeveralBoats(Vec<String>),
    /// It holds no boat of that name or number.
    NoSuchBoat {
        /// What was asked for.
        wanted: String,
        /// The names there are.
        there: Vec<String>,
    },
    /// Several boats have that name.
    SameName {
        /// The name.
        name: String,
        /// Their numbers, from 1.
        numbers: Vec<usize>,
    },
    /// No input has that key.
    NoSuchInput(String),
    /// The input does not take that value.
    BadValue {
        /// The input's key.
        key: String,
        /// Why.
        reason: InputError,
    },
    /// No figure of this boat has that name.
    NoSuchFigure(String),
    /// The answer cannot be written.
    Unwritable(io::Error),
}

impl Error {
    /// 3 where the worksheet or the output is to blame, 2 for the command line.
    pub fn exit_code(&self) -> u8 {
        match self {
            Error::Unreadable { .. } | Error::NotAWorksheet { .. } | Error::Unwritable(_) => 3,
            Error::SeveralBoats(_)
            | Error::NoSuchBoat { .. }
            | Error::SameName { .. }
            | Error::NoSuchInput(_)
            | Error::BadValue { .. }
            | Error::NoSuchFigure(_) => 2,
        }
    }

    /// Whether the reader of the output has read enough, as `head` does.
    pub fn is_closed_pipe(&self) -> bool {
        matches!(self, Error::Unwritable(source) if source.kind() == io::ErrorKind::BrokenPipe)
    }
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Error::Unreadable { from, source } => write!(f, "{from} cannot be read: {source}."),
            Error::NotAWorksheet { from, reason } => {
                write!(f, "{from}: {}", read_error(reason))
            }
            Error::SeveralBoats(there) => write!(
                f,
                "The file holds several boats; choose one with --boat: {}.",
                numbered(there)
            ),
            Error::NoSuchBoat { wanted, there } => write!(
                f,
                "The file holds no boat “{wanted}”. It holds {}.",
                numbered(there)
            ),
            Error::SameName { name, numbers } => {
                let numbers: Vec<String> = numbers.iter().map(usize::to_string).collect();
                write!(
                    f,
                    "Several boats are called “{name}”; choose by number: {}.",
                    numbers.join(", ")
                )
            }
            Error::NoSuchInput(key) => write!(
                f,
                "No input has the key “{key}”; “ampwright inputs” lists them."
            ),
            Error::BadValue { key, reason } => {
                write!(f, "--set {key}: {}", input_error(reason, &Reader::METRIC))
            }
            Error::NoSuchFigure(id) => write!(
                f,
                "This boat has no figure “{id}”; “ampwright workings” without --id lists them."
            ),
            Error::Unwritable(source) => write!(f, "The answer cannot be written: {source}."),
        }
    }
}

impl std::error::Error for Error {
    fn source(&self) -> Option<&(dyn std::error::Error + 'static)> {
        match self {
            Error::Unreadable { source, .. } | Error::Unwritable(source) => Some(source),
            Error::NotAWorksheet { reason, .. } => Some(reason),
            Error::BadValue { reason, .. } => Some(reason),
            _ => None,
        }
    }
}

impl From<io::Error> for Error {
    fn from(source: io::Error) -> Error {
        Error::Unwritable(source)
    }
}

/// `1 “Tern”, 2 without a name`.
fn numbered(names: &[String]) -> String {
    /// Most that are listed.
    const MOST: usize = 20;
    let mut listed: Vec<String> = (1..)
        .zip(names)
        .take(MOST)
        .map(|(number, name)| match name.trim() {
            "" => format!("{number} without a name"),
            name => format!("{number} “{name}”"),
        })
        .collect();
    if names.len() > MOST {
        listed.push(format!("and {} more", names.len() - MOST));
    }
    listed.join(", ")
}
