//! Reading the parts of a link: an input, a load, a leg, a month, an arrangement.

use crate::boat::reading::Remark;
use crate::boat::{Arrangement, Leg, LegRow, Load, LoadRow, Month, MonthRow, Section, SectionId};
use crate::exchange::link::reader::{LinkReader, excerpt, unescape};
use crate::exchange::link::{PART, names};
use crate::schema::{Confidence, Excerpt};

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
    let name = parts.next().unwrap_or_default();
    let mut load = Load {
        name: reader.text(name),
        row: LoadRow::default(),
    };
    for (at, field) in LoadRow::FIELDS.iter().enumerate() {
        let part = match parts.next() {
            // Left out or left empty: as usual; but it must say what it draws.
            None | Some("") if at > 0 => continue,
            part => part.unwrap_or_default(),
        };
        match field.spec.read(&unescape(part)) {
            Ok(value) => field.set(&mut load.row, value),
            Err(error) => reader.remark(Remark::LoadValueRefused {
                load: Excerpt::of(&load.name),
                error,
                kept: field.spec.kept(field.get(&load.row)),
            }),
        }
    }
    if parts.next().is_some() {
        reader.remark(Remark::ExtraLoadFigures {
            load: Excerpt::of(&load.name),
        });
    }
    reader.sheet.loads.push(load);
}

/// Reads a leg of the day: its name, and its figures as far as they are said.
pub(super) fn read_leg(value: &str, reader: &mut LinkReader) {
    let mut parts = value.split(PART);
    let mut leg = Leg {
        name: reader.text(parts.next().unwrap_or_default()),
        row: LegRow::default(),
    };
    for field in LegRow::FIELDS {
        // Left out or left empty: as usual.
        let part = match parts.next() {
            None | Some("") => continue,
            Some(part) => part,
        };
        match field.spec.read(&unescape(part)) {
            Ok(value) => field.set(&mut leg.row, value),
            Err(error) => reader.remark(Remark::LegValueRefused {
                leg: Excerpt::of(&leg.name),
                error,
                kept: field.spec.kept(field.get(&leg.row)),
            }),
        }
    }
    if parts.next().is_some() {
        reader.remark(Remark::ExtraLegFigures {
            leg: Excerpt::of(&leg.name),
        });
    }
    reader.sheet.legs.push(leg);
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
    let mut remarks = Vec::new();
    if *row != MonthRow::default() {
        remarks.push(Remark::MonthTwice { month });
    }
    for field in MonthRow::FIELDS {
        // Left out or left empty: nothing is said.
        let part = match parts.next() {
            None | Some("") => continue,
            Some(part) => part,
        };
        match field.spec.read(&unescape(part)) {
            Ok(value) => field.set(row, value),
            Err(error) => remarks.push(Remark::MonthValueRefused {
                month,
                error,
                kept: field.spec.kept(field.get(row)),
            }),
        }
    }
    if parts.next().is_some() {
        remarks.push(Remark::ExtraMonthFigures { month });
    }
    remarks.into_iter().for_each(|remark| reader.remark(remark));
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
