//! Checks of the findings: which there are, how heavy, in what words.

use crate::answers::{Weight, said};
use crate::says::Says;

impl Says {
    #[track_caller]
    pub fn must_find(&self, code: &str) {
        self.holds(self.has(code), || format!("{code} is not found"));
    }

    #[track_caller]
    pub fn must_find_one_of(&self, codes: &[&str]) {
        let any = codes.iter().any(|code| self.has(code));
        self.holds(any, || format!("none of {codes:?} is found"));
    }

    #[track_caller]
    pub fn must_not_find(&self, code: &str) {
        self.holds(!self.has(code), || format!("{code} is found"));
    }

    #[track_caller]
    pub fn danger(&self, code: &str) {
        self.weighs(code, &[Weight::Danger]);
    }

    #[track_caller]
    pub fn fix(&self, code: &str) {
        self.weighs(code, &[Weight::Fix]);
    }

    #[track_caller]
    pub fn fix_or_danger(&self, code: &str) {
        self.weighs(code, &[Weight::Fix, Weight::Danger]);
    }

    #[track_caller]
    pub fn note(&self, code: &str) {
        self.weighs(code, &[Weight::Note]);
    }

    #[track_caller]
    fn weighs(&self, code: &str, wanted: &[Weight]) {
        let weights = self.weights(code);
        self.holds(weights.iter().any(|w| wanted.contains(w)), || {
            format!("{code} is {weights:?}, not one of {wanted:?}")
        });
    }

    #[track_caller]
    pub fn no_danger(&self) {
        let codes = self.codes(Weight::Danger);
        self.holds(codes.is_empty(), || {
            format!("Danger without cause: {codes:?}")
        });
    }

    #[track_caller]
    pub fn no_fix(&self) {
        let codes = self.codes(Weight::Fix);
        self.holds(codes.is_empty(), || format!("Fix without cause: {codes:?}"));
    }

    /// No more than so many notes: a list nobody reads is no warning.
    #[track_caller]
    pub fn notes_at_most(&self, most: usize) {
        let codes = self.codes(Weight::Note);
        self.holds(codes.len() <= most, || format!("too many notes: {codes:?}"));
    }

    /// The finding is the first one told.
    #[track_caller]
    pub fn first_is(&self, code: &str) {
        let first = self
            .report
            .findings
            .first()
            .map(|finding| finding.code().name());
        self.holds(first == Some(code), || {
            format!("{first:?} comes before {code}")
        });
    }

    /// The finding's sentence has all of these words.
    #[track_caller]
    pub fn finding_says(&self, code: &str, words: &[&str]) {
        let findings = self.report.findings.iter();
        let texts: Vec<String> = findings
            .filter(|finding| finding.code().name() == code)
            .map(said)
            .collect();
        let all = |text: &String| words.iter().all(|word| text.contains(word));
        self.holds(texts.iter().any(all), || {
            format!("{code} does not say {words:?}: {texts:?}")
        });
    }
}
