//! What is being typed. An entry's text is in force while it is valid. While
//! it is not, the value from before the typing began stands again, the entry
//! keeps its text, and the answer says that it does not include it.

use ampwright_core::schema::{InputError, Value};
use leptos::prelude::*;

use crate::state::AppState;
use crate::state::target::{Standing, Target};

/// An entry in which something was typed that is not settled yet.
#[derive(Clone)]
struct Draft {
    target: Target,
    /// The entry's id, as an input may have two entries on the page.
    entry: String,
    text: Typed,
}

#[derive(Clone)]
enum Typed {
    /// The text is valid and in force; this stood before it was typed.
    InForce { before: Standing },
    /// The text is not valid; what stood before is in force again.
    Refused(Refusal),
}

/// A text that is not in force, and why.
#[derive(Clone, PartialEq)]
pub struct Refusal {
    /// As it was typed.
    pub text: String,
    /// What is wrong with it.
    pub why: InputError,
}

/// Something typed that the answer does not include.
#[derive(Clone, PartialEq)]
pub struct LeftOut {
    /// The id of its entry.
    pub entry: String,
    /// What the entry is called.
    pub label: String,
    /// What was typed.
    pub text: String,
}

/// At most one draft for each target.
#[derive(Clone, Copy)]
pub struct Drafts(RwSignal<Vec<Draft>>);

impl Drafts {
    /// None.
    pub fn new() -> Drafts {
        Drafts(RwSignal::new(Vec::new()))
    }

    /// Forgets all of them: another worksheet lies open.
    pub fn clear(self) {
        self.0.set(Vec::new());
    }

    /// What an entry holds that is not in force.
    pub fn refusal(self, entry: &str) -> Option<Refusal> {
        self.0.with(|drafts| {
            drafts.iter().find_map(|draft| match &draft.text {
                Typed::Refused(refusal) if draft.entry == entry => Some(refusal.clone()),
                _ => None,
            })
        })
    }

    fn take(self, target: Target) -> Option<Typed> {
        self.0.try_update(|drafts| {
            let at = drafts.iter().position(|draft| draft.target == target)?;
            Some(drafts.remove(at).text)
        })?
    }

    fn put(self, entry: &str, target: Target, text: Typed) {
        let entry = entry.to_string();
        self.0.update(|drafts| {
            drafts.push(Draft {
                target,
                entry,
                text,
            });
        });
    }
}

impl AppState {
    /// A valid text was typed: it is in force at once.
    pub fn accept(self, entry: &str, target: Target, value: Value) {
        let before = match self.drafts.take(target) {
            Some(Typed::InForce { before }) => before,
            _ => self.with_rows(|sheet, rows| target.standing(sheet, rows)),
        };
        self.drafts.put(entry, target, Typed::InForce { before });
        self.edit_rows(|sheet, rows| target.set(sheet, rows, value));
    }

    /// A text was typed that is not valid: what stood before the typing began
    /// stands again.
    pub fn refuse(self, entry: &str, target: Target, text: String, why: InputError) {
        let before = self.drafts.take(target);
        let refusal = Typed::Refused(Refusal { text, why });
        self.drafts.put(entry, target, refusal);
        if let Some(Typed::InForce { before }) = before {
            self.edit_rows(|sheet, rows| target.put_back(sheet, rows, before));
        }
    }

    /// The entry was left, or its value set otherwise: what is in force is what
    /// the next typing goes back to. A text that was refused stays refused.
    pub fn settle(self, target: Target) {
        self.drafts.0.update(|drafts| {
            drafts
                .retain(|draft| draft.target != target || matches!(draft.text, Typed::Refused(_)));
        });
    }

    /// The value was set by other means than typing; what is half typed is void.
    pub fn void(self, target: Target) {
        self.drafts.take(target);
    }

    /// Forgets what is half typed in rows that are no longer there.
    pub fn void_rows(self, gone: impl Fn(Target) -> bool) {
        self.drafts
            .0
            .update(|drafts| drafts.retain(|draft| !gone(draft.target)));
    }

    /// Everything typed that the answer does not include.
    pub fn left_out(self) -> Vec<LeftOut> {
        let drafts = self.drafts.0.get();
        self.sheet.track();
        self.with_rows(|sheet, rows| {
            drafts
                .into_iter()
                .filter(|draft| draft.target.matters(sheet))
                .filter_map(|draft| match draft.text {
                    Typed::InForce { .. } => None,
                    Typed::Refused(refusal) => Some(LeftOut {
                        label: draft.target.label(sheet, rows),
                        entry: draft.entry,
                        text: refusal.text,
                    }),
                })
                .collect()
        })
    }
}
