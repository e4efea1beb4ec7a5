//! Why a text is no worksheet.

use std::fmt;

use serde::Serialize;

use crate::boat::reading::Remark;

/// The kinds of text that are read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum TextKind {
    /// The fragment of a link.
    Link,
    /// A file, before anything of it is known.
    File,
    /// One worksheet as JSON.
    Worksheet,
    /// A file of several worksheets.
    Collection,
}

/// Why nothing was taken from a link or a file.
///
/// The sentence for the user is [`crate::text::remarks::read_error`]; `Display`
/// gives a short line for logs and programs.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum ReadError {
    /// Longer than any worksheet.
    TooLong {
        /// What was read.
        what: TextKind,
        /// Most that is looked at \[bytes\].
        most_bytes: usize,
    },
    /// There is nothing in it.
    Empty,
    /// Its end is missing.
    BreaksOff {
        /// Last line, from 1.
        line: usize,
    },
    /// Not JSON.
    NotJson {
        /// Line of the first character that is not understood, from 1.
        line: usize,
        /// Its place in the line \[bytes\], from 1.
        column: usize,
    },
    /// JSON, but no object.
    NotAWorksheet,
    /// JSON of another type.
    WrongType {
        /// What the type of a worksheet is called.
        expected: &'static str,
    },
    /// Not the fragment of a link to a worksheet.
    NotALink {
        /// The version with which a link written now begins.
        newest: u64,
    },
    /// It does not say which version it is of, or says it wrongly.
    NoVersion {
        /// What was read.
        what: TextKind,
    },
    /// Written by a later program.
    LaterVersion {
        /// What was read.
        what: TextKind,
        /// Its version.
        version: u64,
        /// The latest version that is read.
        newest: u64,
    },
    /// A file of several worksheets with none in it.
    NoWorksheets,
    /// A file of several worksheets none of which can be read.
    NoneRead {
        /// Why, one by one; see [`Remark::WorksheetNotRead`].
        remarks: Vec<Remark>,
    },
}

impl ReadError {
    /// A name for it that does not change.
    pub const fn code(&self) -> &'static str {
        match self {
            ReadError::TooLong { .. } => "too_long",
            ReadError::Empty => "empty",
            ReadError::BreaksOff { .. } => "breaks_off",
            ReadError::NotJson { .. } => "not_json",
            ReadError::NotAWorksheet => "not_a_worksheet",
            ReadError::WrongType { .. } => "wrong_type",
            ReadError::NotALink { .. } => "not_a_link",
            ReadError::NoVersion { .. } => "no_version",
            ReadError::LaterVersion { .. } => "later_version",
            ReadError::NoWorksheets => "no_worksheets",
            ReadError::NoneRead { .. } => "none_read",
        }
    }
}

impl fmt::Display for ReadError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            ReadError::TooLong { most_bytes, .. } => write!(f, "longer than {most_bytes} bytes"),
            ReadError::Empty => f.write_str("empty"),
            ReadError::BreaksOff { line } => write!(f, "breaks off in line {line}"),
            ReadError::NotJson { line, column } => write!(f, "{line}:{column}: not JSON"),
            ReadError::NotAWorksheet => f.write_str("not an object"),
            ReadError::WrongType { expected } => write!(f, "type is not {expected:?}"),
            ReadError::NotALink { newest } => write!(f, "does not begin with v={newest}"),
            ReadError::NoVersion { .. } => f.write_str("no version"),
            ReadError::LaterVersion {
                version, newest, ..
            } => write!(f, "version {version} is later than {newest}"),
            ReadError::NoWorksheets => f.write_str("no worksheets"),
            ReadError::NoneRead { remarks } => {
                write!(f, "no worksheet can be read, {} remarks", remarks.len())
            }
        }
    }
}

impl std::error::Error for ReadError {}
