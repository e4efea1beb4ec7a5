//! Reading a link: whatever is not understood is remarked on, together with what
//! stands in its place.

use percent_encoding::percent_decode_str;

use crate::boat::Section;
use crate::boat::reading::{ReadError, Remark, TextKind};
use crate::boat::{Arrangement, Leg, LegRow, Load, LoadRow, Month, MonthRow, SectionId, Worksheet};
use crate::exchange::limits::{LONGEST_LINK, bounded, not_endless};
use crate::exchange::link::{END, PART, names};
use crate::exchange::remarks::Remarks;
use crate::exchange::version1::{NEWEST, OLDEST, keep_meaning};
use crate::schema::{Confidence, Excerpt};

/// A link that was opened.
#[derive(Debug, Clone, PartialEq)]
pub struct Opened {
    /// What was understood; the rest is at its default.
    /// [`Worksheet::contents`] counts it.
    pub sheet: Worksheet,
    /// Whether the link's end was there.
    pub whole: bool,
    /// How many of its parts, or figures in them, were not understood.
    pub lost: usize,
    /// What was not understood; the last one counts what would be too much to
    /// tell.
    pub remarks: Vec<Remark>,
}

/// A link as it is being read.
#[derive(Default)]
struct Reader {
    sheet: Worksheet,
    whole: bool,
    remarks: Remarks,
}

impl Reader {
    fn remark(&mut self, remark: Remark) {
        self.remarks.push(remark);
    }

    /// A name, as far as it is text.
    fn text(&mut self, escaped: &str) -> String {
        let text = unescape(escaped);
        if text.contains(char::REPLACEMENT_CHARACTER) && !escaped.contains("%EF%BF%BD") {
            self.remark(Remark::NameDamaged {
                name: Excerpt::of(&text),
            });
        }
        text
    }
}

/// Reads the fragment of a link, with or without the `#`.
///
/// # Errors
/// When it is no link of ours or one of a later version: nothing is taken from it
/// then. Anything less is a remark.
pub fn open_link(fragment: &str) -> Result<Opened, ReadError> {
    not_endless(fragment, TextKind::Link, LONGEST_LINK)?;
    // Mail breaks lines, and takes the sign after a link for a part of it.
    let fragment: String = fragment.chars().filter(|c| !c.is_control()).collect();
    let fragment = fragment.trim().trim_start_matches('#');
    let bare = fragment.trim_end_matches(|c: char| !c.is_ascii_alphanumeric());
    let fragment = if bare.ends_with(END) { bare } else { fragment };
    let mut parts = fragment
        .split('&')
        .map(|part| part.strip_prefix("amp;").unwrap_or(part))
        .filter(|part| !part.is_empty());
    let version = parts.next().and_then(|part| part.strip_prefix("v="));
    let version = match version.map(str::parse::<u64>) {
        Some(Ok(version)) if (OLDEST..=NEWEST).contains(&version) => version,
        Some(Ok(later)) if later > NEWEST => {
            return Err(ReadError::LaterVersion {
                what: TextKind::Link,
                version: later,
                newest: NEWEST,
            });
        }
        _ => return Err(ReadError::NotALink { newest: NEWEST }),
    };
    let mut reader = Reader::default();
    let mut section = None;
    for part in parts {
        if part == END {
            reader.whole = true;
            continue;
        }
        let Some((name, value)) = part.split_once('=') else {
            reader.remark(Remark::UnreadablePart {
                part: excerpt(part),
            });
            section = None;
            continue;
        };
        match name {
            "name" => {
                if !reader.sheet.name.is_empty() {
                    reader.remark(Remark::NameTwice);
                }
                reader.sheet.name = reader.text(value);
            }
            "load" => read_load(value, &mut reader),
            "leg" => read_leg(value, &mut reader),
            "year" => read_month(value, &mut reader),
            "way" => read_arrangement(value, &mut reader),
            _ => section = read_input(name, value, section, &mut reader),
        }
    }
    // First, as a worksheet is looked at once for each of its arrangements.
    bounded(&mut reader.sheet, &mut reader.remarks);
    if version == OLDEST {
        keep_meaning(&mut reader.sheet);
    }
    let lost = reader.remarks.count();
    let mut remarks = reader.remarks.finish();
    if !reader.whole {
        remarks.push(Remark::LinkCut);
    }
    Ok(Opened {
        sheet: reader.sheet,
        whole: reader.whole,
        lost,
        remarks,
    })
}

/// Reads one input and says the section it stands in; none when the name is
/// not known, lest what follows be taken for another section's.
fn read_input(
    name: &str,
    value: &str,
    after: Option<SectionId>,
    reader: &mut Reader,
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

fn read_load(value: &str, reader: &mut Reader) {
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

fn read_leg(value: &str, reader: &mut Reader) {
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

fn read_month(value: &str, reader: &mut Reader) {
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

fn read_arrangement(value: &str, reader: &mut Reader) {
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

/// The beginning of a part of a link, as text.
fn excerpt(escaped: &str) -> Excerpt {
    Excerpt::of(&unescape(escaped))
}

fn unescape(text: &str) -> String {
    percent_decode_str(&text.replace('+', " "))
        .decode_utf8_lossy()
        .into_owned()
}
