//! Checks of the verdict: whether the alternator is said to survive.

use crate::says::Says;

impl Says {
    /// One of these words, in any case, stands in the answer.
    #[track_caller]
    pub fn verdict_contains(&self, words: &[&str]) {
        let verdict = self.verdict().to_lowercase();
        self.holds(words.iter().any(|word| verdict.contains(word)), || {
            format!("none of {words:?} in the verdict")
        });
    }

    #[track_caller]
    pub fn verdict_lacks(&self, word: &str) {
        let verdict = self.verdict().to_lowercase();
        self.holds(!verdict.contains(word), || {
            format!("“{word}” in the verdict")
        });
    }

    /// The answer says that the alternator survives.
    #[track_caller]
    pub fn survives(&self) {
        self.holds(self.said_to_survive(), || {
            "the verdict does not say that the alternator survives".to_string()
        });
        self.verdict_lacks("overheats");
    }

    /// The answer says that the alternator overheats.
    #[track_caller]
    pub fn overheats(&self) {
        self.verdict_contains(&["overheats"]);
    }

    pub fn said_to_survive(&self) -> bool {
        let verdict = self.verdict().to_lowercase();
        ["survives", "within its limits"]
            .iter()
            .any(|word| verdict.contains(word))
    }
}
