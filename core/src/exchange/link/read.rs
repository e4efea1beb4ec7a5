//! Reading a link: whatever is not understood is remarked on, together with what
//! stands in its place. Uses the readers of its parts.

use crate::boat::Worksheet;
use crate::boat::reading::{ReadError, Remark, TextKind};
use crate::exchange::limits::{LONGEST_LINK, bounded, not_endless};
use crate::exchange::link::END;
use crate::exchange::link::parts::{read_arrangement, read_input, read_leg, read_load, read_month};
use crate::exchange::link::reader::{LinkReader, excerpt};
use crate::exchange::version1::{NEWEST, OLDEST, keep_meaning};

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
    let mut reader = LinkReader::default();
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
