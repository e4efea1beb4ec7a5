//! Typing, adding, correcting and deleting readings.

use ampwright_core::decision::calibration::columns::Column;
use ampwright_core::decision::calibration::entry::Entry;
use ampwright_core::decision::calibration::log::Row;
use ampwright_core::decision::calibration::{Log, LogRemark, SAMPLE, read};
use ampwright_core::units::Reader;
use leptos::prelude::*;

use crate::state::trial::kept::{Draft, readings};
use crate::state::trial::{Replacement, Trial};

impl Trial {
    /// How figures are typed here.
    fn typed_by(self) -> Reader {
        self.state.preferences.entries()
    }

    /// A figure was typed. The first one of a reading takes the time: that is
    /// when it was read.
    pub fn type_figure(self, column: Column, text: String) {
        let reader = untrack(|| self.typed_by());
        let stamp = self.stamp_now().map(|stamp| reader.decimal(&stamp));
        self.complaint.set(None);
        self.change(|draft| {
            let began = draft.entry.is_empty();
            draft.entry.figures[column as usize] = text;
            let is_new = draft.correcting.is_none();
            if is_new && draft.entry.is_empty() {
                draft.entry.minute.clear();
            } else if is_new && began && draft.entry.minute.is_empty() {
                draft.entry.minute = stamp.unwrap_or_default();
            }
        });
    }

    /// The minute was typed.
    pub fn type_minute(self, text: String) {
        self.complaint.set(None);
        self.change(|draft| draft.entry.minute = text);
    }

    /// A log was pasted or typed.
    pub fn type_log(self, text: String) {
        self.change(|draft| draft.pasted = text);
    }

    /// As much of what is typed as is a reading already.
    pub fn typed_so_far(self) -> Option<Row> {
        let reader = self.typed_by();
        self.draft.with(|draft| draft.entry.so_far(&reader))
    }

    /// Puts what is typed among the readings; whether it is one.
    pub fn add(self) -> bool {
        let reader = untrack(|| self.typed_by());
        let typed = self.draft.with_untracked(|draft| draft.entry.read(&reader));
        match typed {
            Err(wrong) => {
                self.complaint.set(Some(wrong));
                false
            }
            Ok(row) => {
                if self.draft.with_untracked(corrected).is_some() {
                    self.can_undo("Reading corrected");
                }
                self.change(|draft| {
                    if let Some(at) = corrected(draft) {
                        draft.log.rows.remove(at);
                    }
                    draft.log.put(row);
                    end_correction(draft);
                });
                true
            }
        }
    }

    /// Takes a reading up to correct it; what was half typed comes back after.
    pub fn correct(self, at: usize) {
        let reader = untrack(|| self.typed_by());
        self.complaint.set(None);
        self.change(|draft| {
            let Some(row) = draft.log.rows.get(at) else {
                return;
            };
            let taken = Entry::of(row, &reader);
            if draft.correcting.is_none() {
                draft.aside = std::mem::take(&mut draft.entry);
            }
            draft.entry = taken;
            draft.correcting = Some(at);
        });
    }

    /// Leaves a reading as it was.
    pub fn leave_as_it_was(self) {
        self.complaint.set(None);
        self.change(end_correction);
    }

    /// Deletes a reading.
    pub fn delete(self, at: usize) {
        if at < untrack(|| self.count()) {
            self.can_undo("Reading deleted");
        }
        self.change(|draft| {
            if at < draft.log.rows.len() {
                draft.log.rows.remove(at);
            }
            if draft.correcting.is_some() {
                end_correction(draft);
            }
        });
    }

    /// Puts the readings of an earlier state back.
    pub(super) fn put_back(self, before: &str) {
        self.complaint.set(None);
        self.change(|draft| {
            draft.put_back(Draft::of_text(before));
            if draft.correcting.is_some() {
                end_correction(draft);
            }
        });
    }

    /// Puts something in the place of all readings; asks before where there are
    /// some.
    pub fn replace(self, with: Replacement) {
        if self.draft.with_untracked(|draft| draft.log.rows.is_empty()) {
            self.replace_now(with);
        } else {
            self.asked.set(Some(with));
        }
    }

    /// Puts it there.
    pub fn replace_now(self, with: Replacement) {
        self.asked.set(None);
        self.complaint.set(None);
        if untrack(|| self.count()) > 0 {
            self.can_undo(match with {
                Replacement::Nothing => "Readings deleted",
                Replacement::Example | Replacement::Pasted => "Readings replaced",
            });
        }
        self.change(|draft| {
            if draft.correcting.is_some() {
                end_correction(draft);
            }
            draft.log = match with {
                Replacement::Example => readings(SAMPLE),
                Replacement::Pasted => readings(&draft.pasted),
                Replacement::Nothing => Log::default(),
            };
            if with == Replacement::Nothing {
                draft.entry = Entry::default();
                draft.started_ms = None;
                draft.runs = false;
            }
        });
    }

    /// What of the pasted log is not understood.
    pub fn pasted_remarks(self) -> Vec<LogRemark> {
        self.draft.with(|draft| read(&draft.pasted).remarks)
    }
}

/// The place of the reading that is being corrected, if it is there still.
fn corrected(draft: &Draft) -> Option<usize> {
    draft.correcting.filter(|at| *at < draft.log.rows.len())
}

/// What was half typed before a correction is there again.
fn end_correction(draft: &mut Draft) {
    draft.correcting = None;
    draft.entry = std::mem::take(&mut draft.aside);
}
