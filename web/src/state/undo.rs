//! Steps that can be taken back: the last twenty, on this device, also after a
//! reload. A step holds the boat as it was before, or its sea trial.

use ampwright_core::exchange::to_json;
use leptos::prelude::*;
use serde_json::{Value, json};

use crate::browser::storage;
use crate::state::AppState;
use crate::state::saved_boats::{KeptTexts, read};

const KEPT: &str = "ampwright.undo";
/// How many steps can be taken back.
const STEPS: usize = 20;
/// How many letters they may take together: logs can be long.
const LETTERS: usize = 400_000;

/// What was done to a boat.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Done {
    /// Something of it was changed.
    Changed,
    /// It is no longer kept.
    Deleted,
    /// It could not be kept, and another one was opened.
    Unkept,
    /// Readings of its sea trial were changed; the step holds those.
    Readings,
}

impl Done {
    /// Each with its name in the storage.
    const NAMED: [(Done, &str); 4] = [
        (Done::Changed, "changed"),
        (Done::Deleted, "deleted"),
        (Done::Unkept, "unkept"),
        (Done::Readings, "readings"),
    ];
}

/// A step that can be taken back.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct UndoStep {
    /// What it was, as it stands on the page.
    pub says: String,
    /// What it did to the boat.
    pub done: Done,
    /// Under which number the boat was kept; none if it was not.
    number: Option<u32>,
    /// The boat before, or its sea trial, as a text.
    before: String,
}

impl UndoStep {
    fn to_json(&self) -> Value {
        let named = Done::NAMED.iter().find(|(done, _)| *done == self.done);
        let done = named.map_or("", |(_, name)| name);
        json!([self.says, done, self.number, self.before])
    }

    fn read(json: &Value) -> Option<UndoStep> {
        let text = |at: usize| json.get(at)?.as_str();
        let name = text(1)?;
        let (done, _) = Done::NAMED.iter().find(|(_, named)| *named == name)?;
        let number = json.get(2)?.as_u64();
        Some(UndoStep {
            says: text(0)?.to_string(),
            done: done.clone(),
            number: number.and_then(|number| u32::try_from(number).ok()),
            before: text(3)?.to_string(),
        })
    }
}

/// The steps, and what one of them puts back.
#[derive(Clone, Copy)]
pub struct Undo {
    /// The last one at the end.
    steps: RwSignal<Vec<UndoStep>>,
    /// A sea trial as it was, for the open boat's to become again.
    trial: RwSignal<Option<String>>,
}

impl Undo {
    /// None yet.
    pub fn new() -> Undo {
        Undo {
            steps: RwSignal::new(Vec::new()),
            trial: RwSignal::new(None),
        }
    }

    /// Those that were remembered. Runs in the browser only.
    pub fn restore(self) {
        let kept = storage::recall(KEPT).unwrap_or_default();
        let kept: Value = serde_json::from_str(&kept).unwrap_or_default();
        let steps = kept.as_array().into_iter().flatten();
        self.steps.set(steps.filter_map(UndoStep::read).collect());
    }

    /// What the next undo takes back.
    pub fn says(self) -> Option<String> {
        self.steps.read().last().map(|step| step.says.clone())
    }

    /// Boats that were never kept and can be brought back, as texts.
    pub fn unkept(self) -> Vec<String> {
        let steps = self.steps.read_untracked();
        let unkept = steps.iter().filter(|step| step.done == Done::Unkept);
        unkept.map(|step| step.before.clone()).collect()
    }

    /// The sea trial that is to be put back, followed; it is told once.
    pub fn trial_to_put_back(self) -> Option<String> {
        self.trial.track();
        self.trial.try_update_untracked(Option::take).flatten()
    }

    fn put(self, step: UndoStep) {
        self.steps.update(|steps| {
            steps.push(step);
            let letters =
                |steps: &[UndoStep]| -> usize { steps.iter().map(|step| step.before.len()).sum() };
            while steps.len() > STEPS || steps.len() > 1 && letters(steps) > LETTERS {
                steps.remove(0);
            }
        });
        self.remember();
    }

    fn take(self) -> Option<UndoStep> {
        let step = self.steps.try_update(Vec::pop).flatten();
        self.remember();
        step
    }

    /// Keeps them over a reload.
    fn remember(self) {
        let steps = self.steps.read_untracked();
        let steps: Vec<Value> = steps.iter().map(UndoStep::to_json).collect();
        storage::remember(KEPT, &Value::from(steps).to_string());
    }
}

impl AppState {
    /// The open boat is about to be changed in a way that can be taken back.
    pub fn can_undo(self, says: impl Into<String>) {
        self.save_waiting();
        self.undo.put(UndoStep {
            says: says.into(),
            done: Done::Changed,
            number: self.saved.number.get_untracked(),
            before: self.sheet.with_untracked(to_json).to_string(),
        });
    }

    /// The sea trial of the open boat is about to be changed.
    pub fn can_undo_readings(self, says: String, before: String) {
        self.undo.put(UndoStep {
            says,
            done: Done::Readings,
            number: self.saved.number.get_untracked(),
            before,
        });
    }

    /// A boat is no longer kept, or never could be.
    pub fn can_bring_back(self, says: String, done: Done, number: Option<u32>, before: String) {
        self.undo.put(UndoStep {
            says,
            done,
            number,
            before,
        });
    }

    /// Takes the last step back.
    pub fn take_back(self) {
        self.save_waiting();
        let Some(step) = self.undo.take() else { return };
        match step.done {
            Done::Changed => self.change_back(&step),
            Done::Deleted | Done::Unkept => self.bring_back(step),
            Done::Readings => self.readings_back(step),
        }
    }

    /// The boat as it was before it was changed, in its place.
    fn change_back(self, step: &UndoStep) {
        let Ok((sheet, _)) = read(&step.before) else {
            return;
        };
        let kept = KeptTexts::open().ok();
        let is_kept = |number: u32| {
            kept.as_ref()
                .is_some_and(|kept| kept.text(number).is_some())
        };
        let open = self.saved.number.get_untracked();
        let number = match step.number {
            // A step of a boat that was not kept yet is of the one that is now.
            None => open,
            number => number.filter(|number| is_kept(*number)),
        };
        if number == open {
            self.replace(sheet);
        } else {
            self.open(sheet, number, None);
        }
        self.save_soon();
    }

    /// The readings of a boat's sea trial as they were before.
    fn readings_back(self, step: UndoStep) {
        let open = self.saved.number.get_untracked();
        if let Some(number) = step.number.filter(|number| Some(*number) != open) {
            self.open_saved(number);
            // It is no longer kept.
            if self.saved.number.get_untracked() != Some(number) {
                return;
            }
        }
        self.undo.trial.set(Some(step.before));
    }

    /// A boat that was deleted, under its number if that is free.
    fn bring_back(self, step: UndoStep) {
        let text = &step.before;
        let kept = KeptTexts::open().and_then(|kept| {
            let was = step.number.filter(|number| kept.text(*number).is_none());
            let number = was.unwrap_or_else(|| kept.next_number());
            kept.keep(number, text)?;
            self.saved.journalise(&kept, number, text);
            Ok(number)
        });
        match (kept, read(text)) {
            (Ok(number), _) => self.open_saved(number),
            // There is no room yet: it lies open, and the page says so.
            (Err(_), Ok((sheet, _))) => {
                self.open(sheet, None, None);
                self.save_soon();
            }
            (Err(_), Err(_)) => self.undo.put(step),
        }
        self.saved.refresh_list();
    }
}
