//! How certain the answer is: what engine time and hot amps become when every
//! figure moves within what it may be, and which one reading would narrow them
//! most.
//!
//! `spread` says how far each input may move, `possible` makes a boat of such
//! figures and of formulas that are wrong by as much as they were on machines
//! measured openly, `draw` spaces the runs evenly, `tell` reads ranges and shares
//! off the answers. `choice` says what a reading would decide: `way` is one of several
//! arrangements, `between` prefers one of them, `settings` has the settings that hang on what is not known.
//! The sentences stand in `text::uncertainty` and `text::decisions`.

mod between;
mod choice;
mod draw;
mod possible;
mod settings;
mod spread;
mod tell;
mod way;

use serde::Serialize;

use crate::boat::{Key, Worksheet};
use draw::{Column, RUNS};

pub use choice::{ArrangementChoice, Choice, Decisions};
pub use possible::{Answers, PossibleBoat, PossibleBoats};
pub use settings::{Deciding, SettingChoice};
pub use way::NamedArrangement;

/// The calculation of how certain the answer is, done a few runs at a time.
pub struct Uncertainty {
    boats: PossibleBoats,
    /// Of all that is drawn, in its order.
    columns: Vec<Column>,
    stands: Answers,
    found: Vec<Answers>,
}

impl Uncertainty {
    /// How many runs make the whole.
    pub const RUNS: usize = RUNS;

    /// Begins one.
    pub fn new(sheet: &Worksheet) -> Uncertainty {
        let boats = PossibleBoats::of(sheet);
        Uncertainty {
            columns: boats.names().map(|name| Column::of(&name)).collect(),
            stands: boats.as_it_stands().answers(),
            found: Vec::with_capacity(RUNS),
            boats,
        }
    }

    /// Does so many more runs, or as many as are left.
    pub fn step(&mut self, runs: usize) {
        for run in self.found.len()..self.found.len().saturating_add(runs).min(RUNS) {
            let share_of = |at: usize| self.columns.get(at).map_or(0.5, |one| one.share(run));
            self.found.push(self.boats.draw(share_of).answers());
        }
    }

    /// How many runs are done.
    pub fn runs(&self) -> usize {
        self.found.len()
    }

    /// Whether all are.
    pub fn done(&self) -> bool {
        self.found.len() >= RUNS
    }

    /// What the runs so far say.
    pub fn certainty(&self) -> Certainty {
        Certainty {
            runs: self.runs(),
            engine_h: self.range(UncertainAnswer::EngineTime, |answers| answers.engine_h),
            hot_a: self.range(UncertainAnswer::HotCurrent, |answers| answers.hot_a),
        }
    }

    fn range(&self, answer: UncertainAnswer, of: fn(&Answers) -> f64) -> Range {
        let found: Vec<f64> = self.found.iter().map(of).collect();
        let capped = tell::within_a_day(&found);
        let sorted = tell::sorted(&found);
        let [low, middle, high] = [0.1, 0.5, 0.9].map(|share| tell::quantile(&sorted, share));
        let stands = of(&self.stands);
        let never = found.iter().filter(|figure| figure.is_infinite()).count();
        let never_pct = 100.0 * never as f64 / found.len().max(1) as f64;
        // The formula is nothing that could be measured.
        let factors = self.boats.factors();
        let columns = self.columns.iter().take(factors.len());
        let strata: Vec<&[u16]> = columns.map(Column::strata).collect();
        let readings = tell::rank(&strata, &capped).into_iter().filter_map(|rank| {
            let factor = factors.get(rank.at)?;
            Some(Reading {
                key: factor.key,
                what: factor.label(),
                section: factor.key.section.title(),
                how: factor.key.spec().help,
                share_pct: 100.0 * rank.share,
                width: rank.width,
            })
        });
        Range {
            answer,
            stands: finite(stands),
            low: finite(low),
            middle: finite(middle),
            high: finite(high),
            width: tell::width(&capped),
            never_pct,
            readings: readings.collect(),
        }
    }
}

fn finite(number: f64) -> Option<f64> {
    number.is_finite().then_some(number)
}

/// How certain the answers are.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Certainty {
    /// From so many runs.
    pub runs: usize,
    /// Engine time a day \[h\].
    pub engine_h: Range,
    /// What the alternator holds, hot \[A\].
    pub hot_a: Range,
}

/// An answer that is given as a range.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum UncertainAnswer {
    /// Engine time a day \[h\].
    EngineTime,
    /// What the alternator gives hot \[A\].
    HotCurrent,
}

/// Where an answer lies; `null` in JSON means "never".
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Range {
    /// Which answer.
    pub answer: UncertainAnswer,
    /// At the figures as they stand: each of them is the likeliest of its
    /// spread, so all of them together are the likeliest boat. Not the peak of
    /// the answer's own distribution, which so many runs place badly.
    pub stands: Option<f64>,
    /// One run in ten gives less.
    pub low: Option<f64>,
    /// Half of them give less.
    pub middle: Option<f64>,
    /// One in ten gives more.
    pub high: Option<f64>,
    /// From low to high, never taken as a day.
    pub width: f64,
    /// Runs in which no day is long enough \[%\].
    pub never_pct: f64,
    /// The readings that would narrow it most, best first.
    pub readings: Vec<Reading>,
}

/// A reading worth taking.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Reading {
    /// The input.
    pub key: Key,
    /// What it is called.
    pub what: &'static str,
    /// The section it stands in.
    pub section: &'static str,
    /// How to take it.
    pub how: &'static str,
    /// Part of the answer's variance that comes from it alone \[%\].
    pub share_pct: f64,
    /// Expected width of the range once it is known.
    pub width: f64,
}

#[cfg(test)]
mod tests {
    use crate::boat::demo;
    use crate::decision::uncertainty::Uncertainty;

    #[test]
    fn in_pieces_as_in_one() {
        let mut whole = Uncertainty::new(&demo());
        whole.step(usize::MAX);
        let mut pieces = Uncertainty::new(&demo());
        while !pieces.done() {
            pieces.step(7);
        }
        assert_eq!(pieces.runs(), Uncertainty::RUNS);
        assert_eq!(pieces.certainty(), whole.certainty());
    }
}
