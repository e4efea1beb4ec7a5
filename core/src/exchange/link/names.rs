//! Short names of inputs in a link. The unit at the end may be left off, and
//! the section in front where the input before stands in the same one:
//! `alt_rated=120&mass=6.4` says `alt_rated_a` and `alt_mass_kg`. The full
//! names are always understood. Which short name means which input is pinned
//! by the links that the tests keep.

use std::borrow::Cow;

use crate::boat::{Key, SectionId};
use crate::exchange::link::END;

/// Parts of a link that are no inputs.
const TAKEN: [&str; 6] = ["name", "load", "leg", "year", "way", END];
/// Longest word at the end of a name that is left off: `pct`, `rpm`, `kwh`.
const UNIT: usize = 3;

/// The shortest name that means this input after one of that section.
pub(super) fn short(key: Key, after: Option<SectionId>) -> Cow<'static, str> {
    let full = key.name();
    // The section is only left off where it is the same.
    let inner = (after == Some(key.section)).then(|| [bare(key.short()), key.short()]);
    inner
        .into_iter()
        .flatten()
        .map(Cow::Borrowed)
        .chain([Cow::Owned(bare(&full).to_string())])
        // One that begins like the end would make a cut link look whole.
        .find(|name| !name.starts_with(END) && named(name, after) == Some(key))
        .unwrap_or(Cow::Owned(full))
}

/// The input a name means after one of that section.
pub(super) fn named(name: &str, after: Option<SectionId>) -> Option<Key> {
    if TAKEN.contains(&name) {
        return None;
    }
    Key::named(name)
        .or_else(|| within(after?, name))
        .or_else(|| {
            SectionId::ALL.iter().find_map(|section| {
                let inner = name.strip_prefix(section.prefix())?.strip_prefix('_')?;
                within(*section, inner)
            })
        })
}

/// An input of a section, its unit left off or not.
fn within(section: SectionId, inner: &str) -> Option<Key> {
    section
        .keys()
        .find(|key| key.short() == inner)
        .or_else(|| section.keys().find(|key| bare(key.short()) == inner))
}

/// A name without its unit.
fn bare(name: &str) -> &str {
    match name.rsplit_once('_') {
        Some((stem, unit)) if unit.len() <= UNIT => stem,
        _ => name,
    }
}

#[cfg(test)]
mod tests {
    use crate::boat::Key;
    use crate::exchange::link::names::{named, short};

    #[test]
    fn every_short_name_leads_back() {
        for key in Key::all() {
            for after in [None, Some(key.section)] {
                let name = short(key, after);
                assert_eq!(named(&name, after), Some(key), "{name}");
            }
            assert_eq!(named(&key.name(), None), Some(key));
        }
    }
}
