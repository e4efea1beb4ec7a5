//! What an entry on screen belongs to, what stands there, and what it shows.

use ampwright_core::Worksheet;
use ampwright_core::boat::{Basis, Key, LegRow, LoadRow, Month, MonthRow, Section as _};
use ampwright_core::schema::{Confidence, FieldSpec, Value};

/// Names a row of a list for as long as it is on the page, whatever its place.
pub type RowId = u32;

/// What an entry is of.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Target {
    /// An input of the worksheet.
    Input(Key),
    /// A column of a load.
    Load(RowId, usize),
    /// A column of a leg of the day.
    Leg(RowId, usize),
    /// A column of a month of the year.
    Month(Month, usize),
    /// What one of the user's own arrangements changes.
    Arrangement(RowId, Key),
}

/// Where the rows of the lists stand now.
#[derive(Clone, Copy)]
pub struct Rows<'a> {
    /// The loads.
    pub loads: &'a [RowId],
    /// The legs of the day.
    pub legs: &'a [RowId],
    /// The user's own arrangements.
    pub arrangements: &'a [RowId],
}

/// The place of a row in its list.
fn place(rows: &[RowId], row: RowId) -> Option<usize> {
    rows.iter().position(|one| *one == row)
}

/// What stood in an input before something was typed: its value, and how well
/// somebody said it is known.
#[derive(Clone, Copy)]
pub struct Standing {
    value: Value,
    known: Option<Confidence>,
}

impl Target {
    /// Its description.
    pub fn spec(self) -> Option<&'static FieldSpec> {
        match self {
            Target::Input(key) | Target::Arrangement(_, key) => Some(key.spec()),
            Target::Load(_, column) => LoadRow::FIELDS.get(column).map(|field| &field.spec),
            Target::Leg(_, column) => LegRow::FIELDS.get(column).map(|field| &field.spec),
            Target::Month(_, column) => MonthRow::FIELDS.get(column).map(|field| &field.spec),
        }
    }

    /// The value that stands there.
    pub fn value(self, sheet: &Worksheet, rows: Rows) -> Value {
        let value = match self {
            Target::Input(key) => Some(sheet.inputs.get(key)),
            Target::Load(row, column) => place(rows.loads, row)
                .and_then(|at| sheet.loads.get(at))
                .zip(LoadRow::FIELDS.get(column))
                .map(|(load, field)| field.get(&load.row)),
            Target::Leg(row, column) => place(rows.legs, row)
                .and_then(|at| sheet.legs.get(at))
                .zip(LegRow::FIELDS.get(column))
                .map(|(leg, field)| field.get(&leg.row)),
            Target::Month(month, column) => MonthRow::FIELDS
                .get(column)
                .map(|field| field.get(sheet.months.row(month))),
            Target::Arrangement(row, key) => place(rows.arrangements, row)
                .and_then(|at| sheet.arrangements.get(at))
                .and_then(|own| own.changes.iter().find(|(changed, _)| *changed == key))
                .map(|(_, value)| *value),
        };
        value.unwrap_or(Value::Absent)
    }

    /// Puts a value there that was read and so has been checked.
    pub fn set(self, sheet: &mut Worksheet, rows: Rows, value: Value) {
        match self {
            Target::Input(key) => drop(sheet.enter(key, value)),
            Target::Load(row, column) => {
                let load = place(rows.loads, row).and_then(|at| sheet.loads.get_mut(at));
                if let Some((load, field)) = load.zip(LoadRow::FIELDS.get(column)) {
                    field.set(&mut load.row, value);
                }
            }
            Target::Leg(row, column) => {
                let leg = place(rows.legs, row).and_then(|at| sheet.legs.get_mut(at));
                if let Some((leg, field)) = leg.zip(LegRow::FIELDS.get(column)) {
                    field.set(&mut leg.row, value);
                }
            }
            Target::Month(month, column) => {
                if let Some(field) = MonthRow::FIELDS.get(column) {
                    field.set(sheet.months.row_mut(month), value);
                }
            }
            Target::Arrangement(row, key) => {
                let at = place(rows.arrangements, row);
                if let Some(own) = at.and_then(|at| sheet.arrangements.get_mut(at)) {
                    own.put(key, Some(value));
                }
            }
        }
    }

    /// What stands there, to be put back.
    pub fn standing(self, sheet: &Worksheet, rows: Rows) -> Standing {
        let known = match self {
            Target::Input(key) => sheet.known.get(key),
            Target::Load(..) | Target::Leg(..) | Target::Month(..) | Target::Arrangement(..) => {
                None
            }
        };
        let value = self.value(sheet, rows);
        Standing { value, known }
    }

    /// Puts that back, with how well it is known.
    pub fn put_back(self, sheet: &mut Worksheet, rows: Rows, before: Standing) {
        self.set(sheet, rows, before.value);
        if let (Target::Input(key), None) = (self, before.known) {
            sheet.known.remove(key);
        }
    }

    /// Whether the answer follows it.
    pub fn matters(self, sheet: &Worksheet) -> bool {
        match self {
            Target::Input(key) => key.applies(&sheet.inputs),
            Target::Load(..) => sheet.inputs.daily.basis == Basis::Listed,
            Target::Leg(..) | Target::Month(..) | Target::Arrangement(..) => true,
        }
    }

    /// What it is called where it stands alone.
    pub fn label(self, sheet: &Worksheet, rows: Rows) -> String {
        let label = self.spec().map_or("", |spec| spec.label);
        let whose = match self {
            Target::Input(key) => {
                let mut others = Key::all().filter(|other| *other != key);
                let namesake =
                    |other: Key| other.spec().label == label && other.applies(&sheet.inputs);
                others
                    .any(namesake)
                    .then(|| key.section.title().to_string())
            }
            Target::Load(row, _) => place(rows.loads, row)
                .and_then(|at| sheet.loads.get(at))
                .map(|load| load.name.clone()),
            Target::Leg(row, _) => place(rows.legs, row)
                .and_then(|at| sheet.legs.get(at))
                .map(|leg| leg.name.clone()),
            Target::Month(month, _) => Some(month.label().to_string()),
            Target::Arrangement(row, _) => place(rows.arrangements, row)
                .and_then(|at| sheet.arrangements.get(at))
                .map(|own| own.name.clone()),
        };
        whose.map_or(label.to_string(), |whose| format!("{whose}: {label}"))
    }
}
