//! The draft of a sea trial as the browser keeps it.

use ampwright_core::decision::calibration::entry::Entry;
use ampwright_core::decision::calibration::{Log, read};
use serde_json::{Value, json};

use crate::browser::storage::Storage;

/// A trial stands under this and the number of its boat.
const TRIAL: &str = "ampwright.trial.";

/// All that is kept of a trial.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Draft {
    /// The readings.
    pub log: Log,
    /// What is being typed.
    pub entry: Entry,
    /// The place of the reading that is being corrected in the entry.
    pub correcting: Option<usize>,
    /// What was being typed when the correction began.
    pub aside: Entry,
    /// The log as it was pasted.
    pub pasted: String,
    /// When the engine started, in milliseconds since 1970.
    pub started_ms: Option<f64>,
    /// Whether the clock runs.
    pub runs: bool,
}

impl Draft {
    /// Whether there is nothing in it.
    pub fn is_blank(&self) -> bool {
        *self == Draft::default()
    }

    /// All of it as a text.
    pub fn to_text(&self) -> String {
        self.to_json().to_string()
    }

    /// What a text tells; a blank one where it tells nothing.
    pub fn of_text(text: &str) -> Draft {
        Draft::of_json(&serde_json::from_str(text).unwrap_or_default())
    }

    /// Puts the readings of an earlier state back, and its clock where there is
    /// none by now. What is half typed stays.
    pub fn put_back(&mut self, before: Draft) {
        self.log = before.log;
        if self.started_ms.is_none() {
            self.started_ms = before.started_ms;
            self.runs = before.runs;
        }
    }

    fn to_json(&self) -> Value {
        json!({
            "log": self.log.to_text(),
            "entry": texts(&self.entry),
            "correcting": self.correcting,
            "aside": texts(&self.aside),
            "pasted": self.pasted,
            "started": self.started_ms,
            "runs": self.runs,
        })
    }

    fn of_json(kept: &Value) -> Draft {
        let text = |name: &str| kept[name].as_str().unwrap_or_default();
        let log = readings(text("log"));
        let count = log.rows.len();
        let correcting = kept["correcting"].as_u64();
        let started_ms = kept["started"].as_f64();
        Draft {
            log,
            entry: entry(&kept["entry"]),
            correcting: correcting
                .and_then(|at| usize::try_from(at).ok())
                .filter(|at| *at < count),
            aside: entry(&kept["aside"]),
            pasted: text("pasted").to_string(),
            started_ms,
            runs: started_ms.is_some() && kept["runs"] == true,
        }
    }
}

/// Readings from the text they are kept as.
pub fn readings(text: &str) -> Log {
    let mut log = read(text);
    log.remarks.clear();
    log
}

/// The minute and the figures.
fn texts(entry: &Entry) -> Vec<&str> {
    let minute = [entry.minute.as_str()];
    let figures = entry.figures.iter().map(String::as_str);
    minute.into_iter().chain(figures).collect()
}

fn entry(kept: &Value) -> Entry {
    let text = |at: usize| kept[at].as_str().unwrap_or_default().to_string();
    Entry {
        minute: text(0),
        figures: std::array::from_fn(|at| text(at + 1)),
    }
}

/// The name under which a boat's trial stands.
pub fn name(number: u32) -> String {
    format!("{TRIAL}{number}")
}

/// The trial of a boat.
pub fn recall(number: u32, storage: &Storage) -> Option<Draft> {
    let kept = storage.get(&name(number))?;
    Some(Draft::of_text(&kept))
}

/// Keeps the trial of a boat; one with nothing in it takes no room.
pub fn keep(number: u32, draft: &Draft) {
    let Ok(storage) = Storage::open() else { return };
    if draft.is_blank() {
        storage.remove(&name(number));
    } else {
        // Where there is no room the page says so for the boat itself.
        let _ = storage.set(&name(number), &draft.to_text());
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use ampwright_core::decision::calibration::SAMPLE;

    #[test]
    fn a_draft_is_kept_whole() {
        let mut draft = Draft {
            log: readings(SAMPLE),
            pasted: "0;1;2".to_string(),
            started_ms: Some(1.7e12),
            runs: true,
            correcting: Some(3),
            ..Draft::default()
        };
        // Lines count from the kept text.
        draft.log = readings(&draft.log.to_text());
        draft.entry.minute = "12.5".to_string();
        draft.entry.figures[1] = "95,".to_string();
        let again = Draft::of_text(&draft.to_text());
        assert_eq!(again, draft);
        assert!(!again.is_blank());
    }

    #[test]
    fn what_somebody_else_wrote_there_is_a_blank_or_half_a_draft() {
        for kept in [
            "",
            "null",
            "3",
            "[]",
            "{\"log\":3}",
            "{\"runs\":true,\"correcting\":7}",
        ] {
            let draft = Draft::of_text(kept);
            assert!(draft.is_blank(), "{kept}: {draft:?}");
        }
    }

    #[test]
    fn what_is_put_back_leaves_what_is_half_typed_and_a_clock_that_runs() {
        let before = Draft {
            log: readings(SAMPLE),
            started_ms: Some(1.0),
            runs: true,
            ..Draft::default()
        };
        let mut draft = Draft::default();
        draft.entry.minute = "7".to_string();
        draft.put_back(before.clone());
        assert_eq!(draft.log, before.log);
        assert_eq!((draft.started_ms, draft.runs), (Some(1.0), true));
        assert_eq!(draft.entry.minute, "7");
        draft.started_ms = Some(2.0);
        draft.put_back(before);
        assert_eq!(draft.started_ms, Some(2.0));
    }
}
