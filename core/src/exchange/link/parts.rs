//! Reading the parts of a link: an input, a load, a leg, a month, an arrangement.

use std::str::Split;

use crate::boat::reading::Remark;
use crate::boat::{Arrangement, Leg, LegRow, Load, LoadRow, Month, MonthRow, Section, SectionId};
use crate::exchange::link::reader::{LinkReader, excerpt, unescape};
use crate::exchange::link::{PART, names};
use crate::schema::{Confidence, Excerpt, InputError, KeptValue};

/// Reads one input and says the section it stands in; none when the name is
/// not known, so that what follows is not taken for another section's.
pub(super) fn read_input(
    name: &str,
    value: &str,
    after: Option<SectionId>,
    reader: &mut LinkReader,
) -> Option<SectionId> {
    let Some(key) = names::named(name, after) else {
        reader.remark(Remark::UnknownKey {
            name: excerpt(name),
        });
        return None;
    };
    let spec = key.spec();
    if reader.sheet.known.get(key).is_some() {
        reader.remark(Remark::InputTwice { key });
    }
    let (value, mark) = value.split_once(PART).unwrap_or((value, ""));
    let stated = spec
        .read(&unescape(value))
        .and_then(|value| reader.sheet.state(key, value));
    if let Err(error) = stated {
        let kept = spec.kept(reader.sheet.inputs.get(key));
        reader.remark(Remark::ValueRefused { key, error, kept });
    } else if let Some(known) = Confidence::ALL
        .into_iter()
        .find(|known| mark == known.letter().to_string())
    {
        reader.sheet.known.insert(key, known);
    } else if !mark.is_empty() {
        reader.remark(Remark::UnknownMark {
            key,
            mark: excerpt(mark),
            counts_as: spec.usual,
        });
    }
    Some(key.section)
}

/// Reads a load: its name, its draw, and the other figures as far as they are said.
pub(super) fn read_load(value: &str, reader: &mut LinkReader) {
    let mut parts = value.split(PART);
    let mut load = Load {
        name: reader.text(parts.next().unwrap_or_default()),
        row: LoadRow::default(),
    };
    let name = Excerpt::of(&load.name);
    let refused = |error, kept| Remark::LoadValueRefused {
        load: name.clone(),
        error,
        kept,
    };
    let extra = Remark::ExtraLoadFigures { load: name.clone() };
    // It must say what it draws.
    let remarks = read_figures(&mut load.row, &mut parts, 1, refused, extra);
    reader.sheet.loads.push(load);
    reader.remark_all(remarks);
}

/// Reads a leg of the day: its name, and its figures as far as they are said.
pub(super) fn read_leg(value: &str, reader: &mut LinkReader) {
    let mut parts = value.split(PART);
    let mut leg = Leg {
        name: reader.text(parts.next().unwrap_or_default()),
        row: LegRow::default(),
    };
    let name = Excerpt::of(&leg.name);
    let refused = |error, kept| Remark::LegValueRefused {
        leg: name.clone(),
        error,
        kept,
    };
    let extra = Remark::ExtraLegFigures { leg: name.clone() };
    let remarks = read_figures(&mut leg.row, &mut parts, 0, refused, extra);
    reader.sheet.legs.push(leg);
    reader.remark_all(remarks);
}

/// Takes the figures of a row in their order. One that is left out or left empty
/// is as usual, but for the first so many that must be said; `extra` is what to
/// remark where more are said than it has.
fn read_figures<R: Section>(
    row: &mut R,
    parts: &mut Split<char>,
    must_be_said: usize,
    refused: impl Fn(InputError, KeptValue) -> Remark,
    extra: Remark,
) -> Vec<Remark> {
    let mut remarks = Vec::new();
    for (at, field) in R::FIELDS.iter().enumerate() {
        let part = match parts.next() {
            None | Some("") if at >= must_be_said => continue,
            part => part.unwrap_or_default(),
        };
        match field.spec.read(&unescape(part)) {
            Ok(value) => field.set(row, value),
            Err(error) => remarks.push(refused(error, field.spec.kept(field.get(row)))),
        }
    }
    remarks.extend(parts.next().map(|_| extra));
    remarks
}

/// Reads a month: its number, and what is said of it.
pub(super) fn read_month(value: &str, reader: &mut LinkReader) {
    let mut parts = value.split(PART);
    let number = parts.next().unwrap_or_default();
    let Some(month) = number.parse().ok().and_then(Month::numbered) else {
        reader.remark(Remark::UnknownMonth {
            month: excerpt(number),
        });
        return;
    };
    let row = reader.sheet.months.row_mut(month);
    let is_told = *row != MonthRow::default();
    let twice = is_told.then_some(Remark::MonthTwice { month });
    let refused = |error, kept| Remark::MonthValueRefused { month, error, kept };
    let extra = Remark::ExtraMonthFigures { month };
    let remarks = read_figures(row, &mut parts, 0, refused, extra);
    reader.remark_all(twice.into_iter().chain(remarks));
}

/// Reads an arrangement: its name, and each input that it changes.
pub(super) fn read_arrangement(value: &str, reader: &mut LinkReader) {
    let mut parts = value.split(PART);
    let name = parts.next().unwrap_or_default();
    let mut arrangement = Arrangement {
        name: reader.text(name),
        changes: Vec::new(),
    };
    while let Some(name) = parts.next() {
        let (Some(key), Some(text)) = (names::named(name, None), parts.next()) else {
            reader.remark(Remark::UnreadableChange {
                arrangement: Excerpt::of(&arrangement.name),
                part: excerpt(name),
            });
            continue;
        };
        match key.spec().read(&unescape(text)) {
            Ok(value) => arrangement.put(key, Some(value)),
            Err(error) => reader.remark(Remark::ChangeRefused {
                arrangement: Excerpt::of(&arrangement.name),
                key,
                error,
            }),
        }
    }
    reader.sheet.arrangements.push(arrangement);
}
