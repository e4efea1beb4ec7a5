//! The draft of a sea trial as the browser keeps it.

use ampwright_core::decision::calibration::entry::Entry;
use ampwright_core::decision::calibration::{Log, read};
use serde_json::{Value, json};

use crate::browser::storage::Storage;

/// A trial stands under this and the number of its boat.
const TRIAL: &str = "ampwright.trial.";
/// Most steps back, and most letters they may take together.
const MOST_STEPS: usize = 20;
const MOST_LETTERS: usize = 200_000;

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
    /// The readings before each of the last changes, the latest at the end.
    pub before: Vec<String>,
}

impl Draft {
    /// Whether there is nothing in it.
    pub fn is_blank(&self) -> bool {
        *self == Draft::default()
    }

    /// Remembers the readings as they are, to come back to.
    pub fn remember(&mut self) {
        self.before.push(self.log.to_text());
        let letters = |before: &[String]| before.iter().map(String::len).sum::<usize>();
        while self.before.len() > MOST_STEPS || letters(&self.before) > MOST_LETTERS {
            self.before.remove(0);
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
            "before": self.before,
        })
    }

    fn of_json(kept: &Value) -> Draft {
        let text = |name: &str| kept[name].as_str().unwrap_or_default();
        let log = readings(text("log"));
        let count = log.rows.len();
        let before = kept["before"].as_array();
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
            before: before.map_or(Vec::new(), |before| {
                let texts = before.iter().filter_map(Value::as_str);
                texts.map(str::to_string).collect()
            }),
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
    Some(Draft::of_json(&serde_json::from_str(&kept).ok()?))
}

/// Keeps the trial of a boat; one with nothing in it takes no room.
pub fn keep(number: u32, draft: &Draft) {
    let Ok(storage) = Storage::open() else { return };
    if draft.is_blank() {
        storage.remove(&name(number));
    } else {
        // Where there is no room the page says so for the boat itself.
        let _ = storage.set(&name(number), &draft.to_json().to_string());
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
        draft.remember();
        let kept = draft.to_json().to_string();
        let again = Draft::of_json(&serde_json::from_str(&kept).unwrap());
        assert_eq!(again, draft);
        assert!(!again.is_blank());
    }

    #[test]
    fn what_somebody_else_wrote_there_is_a_blank_or_half_a_draft() {
        for kept in [
            "null",
            "3",
            "[]",
            "{\"log\":3}",
            "{\"runs\":true,\"correcting\":7}",
        ] {
            let draft = Draft::of_json(&serde_json::from_str(kept).unwrap());
            assert!(draft.is_blank(), "{kept}: {draft:?}");
        }
    }

    #[test]
    fn steps_back_have_an_end() {
        let mut draft = Draft {
            log: readings(SAMPLE),
            ..Draft::default()
        };
        for _ in 0..50 {
            draft.remember();
        }
        assert_eq!(draft.before.len(), MOST_STEPS);
    }
}
