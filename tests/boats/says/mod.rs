//! One-line checks of an answer. What fails is collected, so that one boat
//! shows everything that is wrong about it at once.
//!
//! `answer`, `findings`, `verdict` and `sheet` hold the checks of each part.

mod answer;
mod findings;
mod sheet;
mod verdict;

use std::cell::RefCell;
use std::ops::Deref;
use std::panic::Location;

use crate::answers::Answers;

pub use sheet::setting_said;

/// The program's answer about one boat, and what is wrong with it.
pub struct Says {
    answers: Answers,
    wrong: RefCell<Vec<String>>,
}

impl Deref for Says {
    type Target = Answers;

    fn deref(&self) -> &Answers {
        &self.answers
    }
}

impl Says {
    pub fn of(answers: Answers) -> Says {
        Says {
            answers,
            wrong: RefCell::default(),
        }
    }

    /// Notes something wrong unless it holds.
    #[track_caller]
    pub fn holds(&self, holds: bool, what: impl FnOnce() -> String) {
        if !holds {
            let at = Location::caller();
            let (file, line) = (at.file(), at.line());
            let file = file.rsplit(['/', '\\']).next().unwrap_or(file);
            let what = what();
            self.wrong
                .borrow_mut()
                .push(format!("{file}:{line}: {what}"));
        }
    }

    /// Fails if anything was noted.
    pub fn finish(&self, name: &str) {
        let wrong = self.wrong.borrow();
        assert!(
            wrong.is_empty(),
            "\n{name}: {} wrong\n  - {}\n  verdict: {}\n  findings:\n{}\n",
            wrong.len(),
            wrong.join("\n  - "),
            self.verdict(),
            self.told()
        );
    }

    #[track_caller]
    pub fn between(&self, what: &str, figure: f64, low: f64, high: f64) {
        self.holds((low..=high).contains(&figure), || {
            format!("{what} is {figure:.2}, not {low} to {high}")
        });
    }

    #[track_caller]
    pub fn some_between(&self, what: &str, figure: Option<f64>, low: f64, high: f64) {
        match figure {
            Some(figure) => self.between(what, figure, low, high),
            None => self.holds(false, || format!("there is no {what}, not {low} to {high}")),
        }
    }
}
