//! Reading a link: whatever is not understood is said in a sentence, together
//! with what stands in its place.

use percent_encoding::percent_decode_str;

use crate::boat::Section;
use crate::boat::{Arrangement, Load, LoadRow, SectionId, Worksheet};
use crate::exchange::limits::{LONGEST_LINK, bounded, not_endless, shortened};
use crate::exchange::link::{END, PART, names};
use crate::exchange::version1::{NEWEST, OLDEST, keep_meaning};
use crate::schema::{Confidence, InputError, no_input, quoted};

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
    /// What was not understood, one sentence each; the last one counts what
    /// would be too much to tell.
    pub remarks: Vec<String>,
}

impl Opened {
    fn remark(&mut self, sentence: String) {
        self.remarks.push(sentence);
    }

    /// A name, as far as it is text.
    fn text(&mut self, escaped: &str) -> String {
        let text = unescape(escaped);
        if text.contains(char::REPLACEMENT_CHARACTER) && !escaped.contains("%EF%BF%BD") {
            self.remark(format!(
                "The name {} is damaged; it stays like this until you mend it.",
                quoted(&text)
            ));
        }
        text
    }
}

/// Reads the fragment of a link, with or without the `#`.
///
/// # Errors
/// A sentence when it is no link of ours or one of a later version: nothing is
/// taken from it then. Anything less is a remark.
pub fn open_link(fragment: &str) -> Result<Opened, InputError> {
    not_endless(fragment, "This link", LONGEST_LINK)?;
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
            return Err(InputError(format!(
                "This link is of version {later}; this program reads up to version {NEWEST}. Nothing was taken from it: a newer program opens it."
            )));
        }
        _ => {
            return Err(InputError(format!(
                "This is not a link to a worksheet: it does not begin with v={NEWEST}."
            )));
        }
    };
    let mut opened = Opened {
        sheet: Worksheet::default(),
        whole: false,
        lost: 0,
        remarks: Vec::new(),
    };
    let mut section = None;
    for part in parts {
        if part == END {
            opened.whole = true;
            continue;
        }
        let Some((name, value)) = part.split_once('=') else {
            opened.remark(format!(
                "{} is not understood and left out.",
                quoted(&unescape(part))
            ));
            section = None;
            continue;
        };
        match name {
            "name" => {
                if !opened.sheet.name.is_empty() {
                    opened.remark("The name is said twice; the last counts.".into());
                }
                opened.sheet.name = opened.text(value);
            }
            "load" => read_load(value, &mut opened),
            "way" => read_arrangement(value, &mut opened),
            _ => section = read_input(name, value, section, &mut opened),
        }
    }
    // First, as a worksheet is looked at once for each of its arrangements.
    bounded(&mut opened.sheet, &mut opened.remarks);
    if version == OLDEST {
        keep_meaning(&mut opened.sheet);
    }
    opened.lost = opened.remarks.len();
    shortened(&mut opened.remarks);
    if !opened.whole {
        opened.remarks.push(
            "The link is incomplete: its end is missing, so figures may be missing too.".into(),
        );
    }
    Ok(opened)
}

/// Reads one input and says the section it stands in; none when the name is
/// not known, lest what follows be taken for another section's.
fn read_input(
    name: &str,
    value: &str,
    after: Option<SectionId>,
    opened: &mut Opened,
) -> Option<SectionId> {
    let Some(key) = names::named(name, after) else {
        opened.remark(no_input(&unescape(name)));
        return None;
    };
    let spec = key.spec();
    if opened.sheet.known.get(key).is_some() {
        opened.remark(format!("{} is said twice; the last counts.", spec.label));
    }
    let (value, mark) = value.split_once(PART).unwrap_or((value, ""));
    let stated = spec
        .read(&unescape(value))
        .and_then(|value| opened.sheet.state(key, value));
    if let Err(complaint) = stated {
        let stays = spec.stays(opened.sheet.inputs.get(key));
        opened.remark(format!("{complaint} {stays}"));
    } else if let Some(known) = Confidence::ALL
        .into_iter()
        .find(|known| mark == known.letter().to_string())
    {
        opened.sheet.known.insert(key, known);
    } else if !mark.is_empty() {
        opened.remark(format!(
            "{} has a mark {} that says nothing; it counts as “{}”.",
            spec.label,
            quoted(&unescape(mark)),
            spec.usual.word()
        ));
    }
    Some(key.section)
}

fn read_load(value: &str, opened: &mut Opened) {
    let mut parts = value.split(PART);
    let name = parts.next().unwrap_or_default();
    let mut load = Load {
        name: opened.text(name),
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
            Err(complaint) => opened.remark(format!(
                "In the load {}: {complaint} {}",
                quoted(&load.name),
                field.spec.stays(field.get(&load.row))
            )),
        }
    }
    if parts.next().is_some() {
        opened.remark(format!(
            "The load {} has more figures than a load has; those beyond are left out.",
            quoted(&load.name)
        ));
    }
    opened.sheet.loads.push(load);
}

fn read_arrangement(value: &str, opened: &mut Opened) {
    let mut parts = value.split(PART);
    let name = parts.next().unwrap_or_default();
    let mut arrangement = Arrangement {
        name: opened.text(name),
        changes: Vec::new(),
    };
    while let Some(name) = parts.next() {
        let read = match (names::named(name, None), parts.next()) {
            (Some(key), Some(text)) => key
                .spec()
                .read(&unescape(text))
                .map(|value| arrangement.put(key, Some(value))),
            _ => Err(InputError(format!(
                "{} is not understood.",
                quoted(&unescape(name))
            ))),
        };
        if let Err(complaint) = read {
            opened.remark(format!(
                "In the arrangement {}: {complaint} It is left out.",
                quoted(&arrangement.name)
            ));
        }
    }
    opened.sheet.arrangements.push(arrangement);
}

fn unescape(text: &str) -> String {
    percent_decode_str(&text.replace('+', " "))
        .decode_utf8_lossy()
        .into_owned()
}
