//! What of a log was not understood.

use std::fmt;

use serde::{Serialize, Serializer};

use crate::decision::calibration::columns::Column;
use crate::schema::Excerpt;

/// Most lines or columns that are remarked on one by one.
pub(super) const MOST_REMARKS: usize = 12;

/// Why a line of a log is no reading.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum LineError {
    /// Nothing stands where its time should.
    NoTime,
    /// No time, or one beyond two days.
    NotATime {
        /// What stands there.
        typed: Excerpt,
    },
    /// No number.
    NotANumber {
        /// What stands there.
        typed: Excerpt,
    },
    /// A reading that cannot be; see [`Column::range`].
    OutOfRange {
        /// The kind of reading.
        #[serde(serialize_with = "name")]
        column: Column,
        /// What stands there.
        typed: Excerpt,
    },
    /// A time and no reading.
    OnlyATime,
}

impl LineError {
    /// A name for it that does not change.
    pub const fn code(&self) -> &'static str {
        match self {
            LineError::NoTime => "no_time",
            LineError::NotATime { .. } => "not_a_time",
            LineError::NotANumber { .. } => "not_a_number",
            LineError::OutOfRange { .. } => "out_of_range",
            LineError::OnlyATime => "only_a_time",
        }
    }
}

impl fmt::Display for LineError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            LineError::NoTime => f.write_str("no time"),
            LineError::NotATime { typed } => write!(f, "{typed:?} is not a time"),
            LineError::NotANumber { typed } => write!(f, "{typed:?} is not a number"),
            LineError::OutOfRange { column, typed } => {
                write!(f, "{}: {typed} is out of range", column.name())
            }
            LineError::OnlyATime => f.write_str("no reading"),
        }
    }
}

impl std::error::Error for LineError {}

/// Something in a log that was left out.
///
/// Its sentence is [`crate::text::calibration::log_remark`].
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum LogRemark {
    /// A line.
    Line {
        /// Its number in the text, from 1.
        line: usize,
        /// Why.
        why: LineError,
    },
    /// Lines too many to be told one by one.
    MoreLines {
        /// How many.
        count: usize,
    },
    /// Everything from a line on: there are more rows than are read.
    TooManyRows {
        /// The first line that was not read, from 1.
        line: usize,
        /// Most rows that are read.
        most: usize,
    },
    /// A column of which the heading is not known, or that stands twice.
    Column {
        /// The heading.
        heading: Excerpt,
    },
    /// Columns too many to be told one by one.
    MoreColumns {
        /// How many.
        count: usize,
    },
    /// No heading names a time, so there is no reading.
    NoTimeColumn,
}

impl LogRemark {
    /// A name for it that does not change.
    pub const fn code(&self) -> &'static str {
        match self {
            LogRemark::Line { .. } => "line",
            LogRemark::MoreLines { .. } => "more_lines",
            LogRemark::TooManyRows { .. } => "too_many_rows",
            LogRemark::Column { .. } => "column",
            LogRemark::MoreColumns { .. } => "more_columns",
            LogRemark::NoTimeColumn => "no_time_column",
        }
    }
}

/// Writes a kind of reading as its name.
fn name<S: Serializer>(column: &Column, to: S) -> Result<S::Ok, S::Error> {
    to.serialize_str(column.name())
}
