//! What of a worksheet was not understood.

use serde::{Serialize, Serializer};

use crate::boat::reading::ReadError;
use crate::boat::{Key, Month};
use crate::schema::{Confidence, Excerpt, InputError, KeptValue};

/// What a worksheet or a file has several of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Listed {
    /// Loads of a worksheet.
    Loads,
    /// Legs of a worksheet's day.
    Legs,
    /// Arrangements of a worksheet.
    Arrangements,
    /// Worksheets of a file.
    Worksheets,
}

/// Something in a link or a file that was not understood, or not taken as it
/// stands, and what holds instead. The rest was taken.
///
/// Its sentence is [`crate::text::remarks::remark`].
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum Remark {
    /// No input has that name; left out.
    UnknownKey {
        /// The name.
        name: Excerpt,
    },
    /// An input does not take the value; it holds another.
    ValueRefused {
        /// The input.
        #[serde(serialize_with = "name")]
        key: Key,
        /// Why.
        error: InputError,
        /// What it holds instead.
        kept: KeptValue,
    },
    /// An input stands twice; the last one counts.
    InputTwice {
        /// The input.
        #[serde(serialize_with = "name")]
        key: Key,
    },
    /// A file says how well an input is known in a word that is none of
    /// [`Confidence::word`].
    UnknownConfidence {
        /// The input.
        #[serde(serialize_with = "name")]
        key: Key,
        /// The word.
        word: Excerpt,
        /// How well it counts as known.
        counts_as: Confidence,
    },
    /// A link says how well an input is known by a mark that is none of
    /// [`Confidence::letter`].
    UnknownMark {
        /// The input.
        #[serde(serialize_with = "name")]
        key: Key,
        /// The mark.
        mark: Excerpt,
        /// How well it counts as known.
        counts_as: Confidence,
    },
    /// A part of a file that no worksheet has, or not like this; left out.
    UnknownPart {
        /// Its name.
        part: Excerpt,
    },
    /// A part of a link that names no value; left out.
    UnreadablePart {
        /// What stands there.
        part: Excerpt,
    },
    /// A name in a file that is no text; left out.
    NameNotText,
    /// A link names the boat twice; the last name counts.
    NameTwice,
    /// A name in a link that is no UTF-8, as far as it could be read.
    NameDamaged {
        /// What was read of it.
        name: Excerpt,
    },
    /// A name was cut.
    NameCut {
        /// Its beginning.
        name: Excerpt,
        /// Most characters that are kept.
        longest: usize,
    },
    /// A load in a file is no object; left out.
    LoadNotUnderstood,
    /// A load has no figure of that name; left out.
    UnknownLoadFigure {
        /// The name.
        name: Excerpt,
    },
    /// A load in a link has more figures than a load has; those beyond were
    /// left out.
    ExtraLoadFigures {
        /// The load's name.
        load: Excerpt,
    },
    /// A figure of a load was not taken; it holds another.
    LoadValueRefused {
        /// The load's name.
        load: Excerpt,
        /// Why.
        error: InputError,
        /// What it holds instead.
        kept: KeptValue,
    },
    /// A leg of the day in a file is no object; left out.
    LegNotUnderstood,
    /// A leg of the day has no figure of that name; left out.
    UnknownLegFigure {
        /// The name.
        name: Excerpt,
    },
    /// A leg of the day in a link has more figures than a leg has; those beyond
    /// were left out.
    ExtraLegFigures {
        /// The leg's name.
        leg: Excerpt,
    },
    /// A figure of a leg of the day was not taken; it holds another.
    LegValueRefused {
        /// The leg's name.
        leg: Excerpt,
        /// Why.
        error: InputError,
        /// What it holds instead.
        kept: KeptValue,
    },
    /// There is no such month, or it is not told like one; left out.
    UnknownMonth {
        /// What stands there.
        month: Excerpt,
    },
    /// A month of the year has no figure of that name; left out.
    UnknownMonthFigure {
        /// The name.
        name: Excerpt,
    },
    /// A month in a link has more figures than a month has; those beyond were
    /// left out.
    ExtraMonthFigures {
        /// Which, as its name.
        #[serde(serialize_with = "month_name")]
        month: Month,
    },
    /// A figure of a month was not taken; it holds another.
    MonthValueRefused {
        /// Which, as its name.
        #[serde(serialize_with = "month_name")]
        month: Month,
        /// Why.
        error: InputError,
        /// What it holds instead.
        kept: KeptValue,
    },
    /// A month stands twice; figures of the last one count.
    MonthTwice {
        /// Which, as its name.
        #[serde(serialize_with = "month_name")]
        month: Month,
    },
    /// An arrangement in a file is no object; left out.
    ArrangementNotUnderstood,
    /// An arrangement in a file changes an input that there is not; left out.
    UnknownChange {
        /// The arrangement's name.
        arrangement: Excerpt,
        /// The name of the input.
        name: Excerpt,
    },
    /// An arrangement in a link changes an input that there is not, or to
    /// nothing; left out.
    UnreadableChange {
        /// The arrangement's name.
        arrangement: Excerpt,
        /// What stands there for an input.
        part: Excerpt,
    },
    /// An arrangement changes an input to what it does not take; left out.
    ChangeRefused {
        /// The arrangement's name.
        arrangement: Excerpt,
        /// The input.
        #[serde(serialize_with = "name")]
        key: Key,
        /// Why.
        error: InputError,
    },
    /// A tick of a step that the commissioning list does not have; left out.
    UnknownTick {
        /// What the step is called.
        step: Excerpt,
    },
    /// More of something than is taken.
    TooMany {
        /// Of what.
        what: Listed,
        /// How many there are.
        count: usize,
        /// How many were taken, from the first.
        kept: usize,
    },
    /// One of several worksheets cannot be read; the others were taken.
    WorksheetNotRead {
        /// Its place in the file, from 1.
        number: usize,
        /// How many there are.
        of: usize,
        /// Why.
        error: Box<ReadError>,
    },
    /// The end of a link is missing.
    LinkCut,
    /// There is more to remark on than is told one by one.
    More {
        /// How many remarks were dropped.
        count: usize,
    },
}

impl Remark {
    /// A name for it that does not change.
    pub const fn code(&self) -> &'static str {
        match self {
            Remark::UnknownKey { .. } => "unknown_key",
            Remark::ValueRefused { .. } => "value_refused",
            Remark::InputTwice { .. } => "input_twice",
            Remark::UnknownConfidence { .. } => "unknown_confidence",
            Remark::UnknownMark { .. } => "unknown_mark",
            Remark::UnknownPart { .. } => "unknown_part",
            Remark::UnreadablePart { .. } => "unreadable_part",
            Remark::NameNotText => "name_not_text",
            Remark::NameTwice => "name_twice",
            Remark::NameDamaged { .. } => "name_damaged",
            Remark::NameCut { .. } => "name_cut",
            Remark::LoadNotUnderstood => "load_not_understood",
            Remark::UnknownLoadFigure { .. } => "unknown_load_figure",
            Remark::ExtraLoadFigures { .. } => "extra_load_figures",
            Remark::LoadValueRefused { .. } => "load_value_refused",
            Remark::LegNotUnderstood => "leg_not_understood",
            Remark::UnknownLegFigure { .. } => "unknown_leg_figure",
            Remark::ExtraLegFigures { .. } => "extra_leg_figures",
            Remark::LegValueRefused { .. } => "leg_value_refused",
            Remark::UnknownMonth { .. } => "unknown_month",
            Remark::UnknownMonthFigure { .. } => "unknown_month_figure",
            Remark::ExtraMonthFigures { .. } => "extra_month_figures",
            Remark::MonthValueRefused { .. } => "month_value_refused",
            Remark::MonthTwice { .. } => "month_twice",
            Remark::ArrangementNotUnderstood => "arrangement_not_understood",
            Remark::UnknownChange { .. } => "unknown_change",
            Remark::UnreadableChange { .. } => "unreadable_change",
            Remark::ChangeRefused { .. } => "change_refused",
            Remark::UnknownTick { .. } => "unknown_tick",
            Remark::TooMany { .. } => "too_many",
            Remark::WorksheetNotRead { .. } => "worksheet_not_read",
            Remark::LinkCut => "link_cut",
            Remark::More { .. } => "more",
        }
    }
}

/// Writes a month as its name.
fn month_name<S: Serializer>(month: &Month, to: S) -> Result<S::Ok, S::Error> {
    to.serialize_str(month.label())
}

/// Writes an input as its name.
fn name<S: Serializer>(key: &Key, to: S) -> Result<S::Ok, S::Error> {
    to.serialize_str(&key.name())
}
