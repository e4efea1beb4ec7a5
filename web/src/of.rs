//! What an entry on screen belongs to, what stands there, and what is shown.

use ampwright_core::Worksheet;
use ampwright_core::boat::Section as _;
use ampwright_core::boat::{Basis, Key, LoadRow};
use ampwright_core::schema::{Confidence, FieldSpec, Value};

/// What an entry is of.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Of {
    /// An input of the worksheet.
    Input(Key),
    /// A column of a load.
    Load(usize, usize),
    /// What one of the user's own arrangements changes.
    Own(usize, Key),
}

impl Of {
    /// As it stands in `data-of`: a key, load and column, or arrangement and key.
    pub fn named(name: &str) -> Option<Of> {
        match name.split_once('.') {
            None => Key::named(name).map(Of::Input),
            Some((at, part)) => {
                let at = at.parse().ok()?;
                match Key::named(part) {
                    Some(key) => Some(Of::Own(at, key)),
                    None => Some(Of::Load(at, part.parse().ok()?)),
                }
            }
        }
    }

    /// Its description.
    pub fn spec(self) -> Option<&'static FieldSpec> {
        match self {
            Of::Input(key) | Of::Own(_, key) => Some(key.spec()),
            Of::Load(_, column) => LoadRow::FIELDS.get(column).map(|field| &field.spec),
        }
    }

    /// Puts a value there that was read and so has been checked.
    pub fn set(self, sheet: &mut Worksheet, value: Value) {
        match self {
            Of::Input(key) => drop(sheet.state(key, value)),
            Of::Load(at, column) => {
                if let (Some(load), Some(field)) =
                    (sheet.loads.get_mut(at), LoadRow::FIELDS.get(column))
                {
                    field.set(&mut load.row, value);
                }
            }
            Of::Own(at, key) => {
                if let Some(own) = sheet.arrangements.get_mut(at) {
                    own.put(key, Some(value));
                }
            }
        }
    }
}

/// What stood in an input before something was typed: its value, and how well
/// somebody said it is known.
#[derive(Clone, Copy)]
pub struct Standing {
    value: Value,
    known: Option<Confidence>,
}

impl Of {
    /// What stands there.
    pub fn standing(self, sheet: &Worksheet) -> Standing {
        let known = match self {
            Of::Input(key) => sheet.known.get(key),
            Of::Load(..) | Of::Own(..) => None,
        };
        let value = Shown::of(sheet, self).value;
        Standing { value, known }
    }

    /// Puts that back, with how well it is known.
    pub fn put_back(self, sheet: &mut Worksheet, before: Standing) {
        self.set(sheet, before.value);
        if let (Of::Input(key), None) = (self, before.known) {
            sheet.known.remove(key);
        }
    }

    /// Whether the answer follows it.
    pub fn matters(self, sheet: &Worksheet) -> bool {
        match self {
            Of::Input(key) => key.applies(&sheet.inputs),
            Of::Load(..) => sheet.inputs.daily.basis == Basis::Listed,
            Of::Own(..) => true,
        }
    }

    /// What it is called where it stands alone.
    pub fn label(self, sheet: &Worksheet) -> String {
        let label = self.spec().map_or("", |spec| spec.label);
        let whose = match self {
            Of::Input(key) => {
                let mut others = Key::all().filter(|other| *other != key);
                let namesake =
                    |other: Key| other.spec().label == label && other.applies(&sheet.inputs);
                let title = key.section.title().to_string();
                others.any(namesake).then_some(title)
            }
            Of::Load(at, _) => sheet.loads.get(at).map(|load| load.name.clone()),
            Of::Own(at, _) => sheet.arrangements.get(at).map(|own| own.name.clone()),
        };
        whose.map_or(label.to_string(), |whose| format!("{whose}: {label}"))
    }
}

/// What an entry shows.
#[derive(Clone, Copy, PartialEq)]
pub struct Shown {
    /// What stands in it.
    pub value: Value,
    /// Whether the input matters.
    pub applies: bool,
    /// Whether somebody vouched for it.
    pub said: bool,
    /// How well it is known.
    pub known: Confidence,
    /// What it stands for when it is empty.
    pub stands_for: Option<f64>,
}

impl Shown {
    /// What is neither graded nor ever without meaning.
    pub fn bare() -> Shown {
        Shown {
            value: Value::Absent,
            applies: true,
            said: true,
            known: Confidence::Guess,
            stands_for: None,
        }
    }

    /// As the worksheet has it.
    pub fn of(sheet: &Worksheet, of: Of) -> Shown {
        match of {
            Of::Input(key) => Shown {
                value: sheet.inputs.get(key),
                applies: key.applies(&sheet.inputs),
                said: sheet.is_said(key),
                known: sheet.knowledge(key),
                stands_for: sheet.figure(key),
            },
            Of::Load(at, column) => Shown {
                value: match (sheet.loads.get(at), LoadRow::FIELDS.get(column)) {
                    (Some(load), Some(field)) => field.get(&load.row),
                    _ => Value::Absent,
                },
                ..Shown::bare()
            },
            Of::Own(at, key) => Shown {
                value: sheet
                    .arrangements
                    .get(at)
                    .and_then(|own| own.changes.iter().find(|(changed, _)| *changed == key))
                    .map_or(Value::Absent, |(_, value)| *value),
                ..Shown::bare()
            },
        }
    }
}
