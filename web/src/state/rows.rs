//! The lists of a worksheet, loads, legs of the day and own arrangements: each row keeps its
//! name on the page when rows above it go.

use ampwright_core::Worksheet;
use ampwright_core::boat::{Arrangement, Leg, Load, typical_loads};
use leptos::prelude::*;

use crate::state::AppState;
use crate::state::target::{RowId, Rows, Target};

/// The names of the rows of one list, in their order.
pub type RowIds = RwSignal<Vec<RowId>>;

/// Names for rows that are put at the end; the first of them.
fn append(ids: RowIds, count: usize) -> RowId {
    let next = ids.with_untracked(|ids| ids.iter().max().map_or(0, |last| last + 1));
    ids.update(|ids| ids.extend(next..next + count as RowId));
    next
}

fn place(ids: RowIds, row: RowId) -> Option<usize> {
    ids.with_untracked(|ids| ids.iter().position(|one| *one == row))
}

impl AppState {
    /// Names the rows of a worksheet that was just opened.
    pub fn name_rows(self, sheet: &Worksheet) {
        self.loads.set((0..sheet.loads.len() as RowId).collect());
        self.legs.set((0..sheet.legs.len() as RowId).collect());
        self.arrangements
            .set((0..sheet.arrangements.len() as RowId).collect());
    }

    /// Reads something of the worksheet and where its rows stand, without
    /// following either.
    pub fn with_rows<T>(self, read: impl FnOnce(&Worksheet, Rows) -> T) -> T {
        let legs = self.legs.get_untracked();
        self.loads.with_untracked(|loads| {
            self.arrangements.with_untracked(|arrangements| {
                let rows = Rows {
                    loads,
                    legs: &legs,
                    arrangements,
                };
                self.sheet.with_untracked(|sheet| read(sheet, rows))
            })
        })
    }

    /// Changes the worksheet by where its rows stand.
    pub fn edit_rows(self, change: impl FnOnce(&mut Worksheet, Rows)) {
        let loads = self.loads.get_untracked();
        let legs = self.legs.get_untracked();
        let arrangements = self.arrangements.get_untracked();
        self.edit(|sheet| {
            let rows = Rows {
                loads: &loads,
                legs: &legs,
                arrangements: &arrangements,
            };
            change(sheet, rows);
        });
    }

    /// Puts loads at the end of the list.
    pub fn add_loads(self, loads: Vec<Load>) {
        append(self.loads, loads.len());
        self.edit(|sheet| sheet.loads.extend(loads));
    }

    /// Puts the loads of a usual boat at the end of the list.
    pub fn add_typical_loads(self) {
        self.can_undo("Typical loads added");
        self.add_loads(typical_loads());
    }

    /// Takes a load off the list.
    pub fn delete_load(self, row: RowId) {
        let Some(at) = place(self.loads, row) else {
            return;
        };
        let name = self
            .sheet
            .with_untracked(|sheet| sheet.loads.get(at).map(|load| load.name.clone()));
        self.can_undo(format!("Load “{}” deleted", name.unwrap_or_default()));
        self.void_rows(|target| matches!(target, Target::Load(of, _) if of == row));
        self.loads.update(|ids| {
            ids.remove(at);
        });
        self.edit(|sheet| {
            if at < sheet.loads.len() {
                sheet.loads.remove(at);
            }
        });
    }

    /// Puts legs at the end of the day.
    pub fn add_legs(self, legs: Vec<Leg>) {
        append(self.legs, legs.len());
        self.edit(|sheet| sheet.legs.extend(legs));
    }

    /// Puts other legs in the place of those there are.
    pub fn replace_legs(self, legs: Vec<Leg>) {
        self.void_rows(|target| matches!(target, Target::Leg(..)));
        let count = legs.len();
        append(self.legs, count);
        self.legs.update(|ids| {
            ids.drain(..ids.len() - count);
        });
        self.edit(|sheet| sheet.legs = legs);
    }

    /// Takes a leg out of the day.
    pub fn delete_leg(self, row: RowId) {
        let Some(at) = place(self.legs, row) else {
            return;
        };
        let name = self.leg(row, |leg| leg.name.clone());
        self.can_undo(format!("Leg “{}” deleted", name.unwrap_or_default()));
        self.void_rows(|target| matches!(target, Target::Leg(of, _) if of == row));
        self.legs.update(|ids| {
            ids.remove(at);
        });
        self.edit(|sheet| {
            if at < sheet.legs.len() {
                sheet.legs.remove(at);
            }
        });
    }

    /// Calls a leg something else.
    pub fn rename_leg(self, row: RowId, name: String) {
        if let Some(at) = place(self.legs, row) {
            self.edit(|sheet| {
                if let Some(leg) = sheet.legs.get_mut(at) {
                    leg.name = name;
                }
            });
        }
    }

    /// Something of a leg, followed; none once it is gone.
    pub fn leg<T>(self, row: RowId, read: impl FnOnce(&Leg) -> T) -> Option<T> {
        let at = self
            .legs
            .with(|ids| ids.iter().position(|one| *one == row))?;
        self.sheet.with(|sheet| sheet.legs.get(at).map(read))
    }

    /// Puts one of the user's own arrangements at the end of the list; its row.
    pub fn add_arrangement(self, own: Arrangement) -> RowId {
        let row = append(self.arrangements, 1);
        self.edit(|sheet| sheet.arrangements.push(own));
        row
    }

    /// Gives up one of the user's own arrangements.
    pub fn delete_arrangement(self, row: RowId) {
        let Some(at) = place(self.arrangements, row) else {
            return;
        };
        let name = self.arrangement(row, |own| own.name.clone());
        self.can_undo(format!(
            "Arrangement “{}” deleted",
            name.unwrap_or_default()
        ));
        self.void_rows(|target| matches!(target, Target::Arrangement(of, _) if of == row));
        self.arrangements.update(|ids| {
            ids.remove(at);
        });
        self.edit(|sheet| {
            if at < sheet.arrangements.len() {
                sheet.arrangements.remove(at);
            }
        });
    }

    /// Changes one load.
    pub fn edit_load(self, row: RowId, change: impl FnOnce(&mut Load)) {
        if let Some(at) = place(self.loads, row) {
            self.edit(|sheet| {
                if let Some(load) = sheet.loads.get_mut(at) {
                    change(load);
                }
            });
        }
    }

    /// Changes one of the user's own arrangements.
    pub fn edit_arrangement(self, row: RowId, change: impl FnOnce(&mut Arrangement)) {
        if let Some(at) = place(self.arrangements, row) {
            self.edit(|sheet| {
                if let Some(own) = sheet.arrangements.get_mut(at) {
                    change(own);
                }
            });
        }
    }

    /// Something of a load, followed; none once it is gone.
    pub fn load<T>(self, row: RowId, read: impl FnOnce(&Load) -> T) -> Option<T> {
        let at = self
            .loads
            .with(|ids| ids.iter().position(|one| *one == row))?;
        self.sheet.with(|sheet| sheet.loads.get(at).map(read))
    }

    /// Something of one of the user's own arrangements, followed; none once it
    /// is gone.
    pub fn arrangement<T>(self, row: RowId, read: impl FnOnce(&Arrangement) -> T) -> Option<T> {
        let ids = self.arrangements;
        let at = ids.with(|ids| ids.iter().position(|one| *one == row))?;
        self.sheet
            .with(|sheet| sheet.arrangements.get(at).map(read))
    }
}
