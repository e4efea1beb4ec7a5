//! An arrangement among which one would choose, and what a year of it costs in each of
//! the boats that a worksheet may stand for.
//!
//! The year is worked out for the worksheet; in another boat fuel and wear of the
//! engine go with its time a day (own reasoning: a year of each possible boat would
//! take ten times as long).

use serde::Serialize;

use crate::boat::{SecondRole, SectionId, Worksheet, key};
use crate::decision::arrangements::{Kind, Outcome, hold_current};
use crate::decision::uncertainty::draw::Column;
use crate::decision::uncertainty::possible::{PossibleBoat, PossibleBoats};
use crate::schema::Confidence;

/// The boats that a worksheet may stand for, and which of them are drawn.
pub struct Drawn {
    pub boats: PossibleBoats,
    pub columns: Vec<Column>,
}

/// An arrangement among which one would choose.
pub struct Way {
    pub named: NamedArrangement,
    possible: Drawn,
    /// A year's cost, but for what goes with the engine's time.
    fixed: f64,
    /// What goes with it, for each hour a day.
    each_h: f64,
    /// That of each boat drawn so far; endless where no engine time is enough.
    pub costs: Vec<f64>,
}

/// An arrangement by its kind; `own_name` is empty unless it is one of the user's own.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct NamedArrangement {
    /// Which of the usual ways it is.
    pub kind: Kind,
    /// The name it was given.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub own_name: String,
}

impl Drawn {
    /// Those of a worksheet.
    pub fn of(sheet: &Worksheet) -> Drawn {
        Drawn::named(sheet, |name| name)
    }

    /// The boats of a worksheet, each figure drawn as the one of another name.
    fn named(sheet: &Worksheet, drawn_as: impl Fn(String) -> String) -> Drawn {
        let boats = PossibleBoats::of(sheet);
        let names = boats.names().map(drawn_as);
        let columns = names.map(|name| Column::of(&name)).collect();
        Drawn { boats, columns }
    }

    /// Those of a worksheet set up in another way. Where that puts another
    /// alternator in the first place, nothing read of the one that is there is known
    /// of it, and it is drawn by itself; one that moved to the second place stays
    /// what it is.
    fn set_up(sheet: &Worksheet, mut with: Worksheet) -> Drawn {
        if with.inputs.alt.rated_a == sheet.inputs.alt.rated_a {
            return Drawn::of(&with);
        }
        let moved = sheet.inputs.two.role == SecondRole::None;
        for (first, second) in SectionId::alt.keys().zip(SectionId::alt2.keys()) {
            if moved {
                with.know(second, sheet.knowledge(first));
            }
            with.know(first, Confidence::Guess);
        }
        with.know(key!(alt.rated_a), Confidence::Nameplate);
        Drawn::named(&with, |name| match name.strip_prefix("alt2_") {
            Some(moved_one) if moved => format!("alt_{moved_one}"),
            None if name.starts_with("alt_") => format!("other_{name}"),
            _ => name,
        })
    }

    /// The one of a run.
    pub fn draw(&self, run: usize) -> PossibleBoat {
        let share_of = |at: usize| self.columns.get(at).map_or(0.5, |one| one.share(run));
        self.boats.draw(share_of)
    }
}

impl Way {
    /// None where the year is not covered, or it is no way in which the engine
    /// charges with the panels there are.
    pub fn of(sheet: &Worksheet, outcome: Outcome) -> Option<Way> {
        let (year, with) = (outcome.year?, outcome.arrangement.on(sheet));
        if !with.inputs.engine_charges() || with.inputs.sun != sheet.inputs.sun {
            return None;
        }
        let of_engine = year.fuel + year.engine;
        // Where a day asks no engine its time says nothing of the year.
        let each_h = outcome
            .hours_day
            .filter(|hours| *hours > 0.0)
            .map(|hours| of_engine / hours);
        Some(Way {
            fixed: year.total - each_h.map_or(0.0, |_| of_engine),
            each_h: each_h.unwrap_or(0.0),
            possible: Drawn::set_up(sheet, with),
            named: NamedArrangement {
                kind: outcome.kind,
                own_name: outcome.arrangement.name,
            },
            costs: Vec::new(),
        })
    }

    /// What a year costs in the boat of a run.
    pub fn cost(&self, run: usize) -> f64 {
        if self.each_h == 0.0 {
            return self.fixed;
        }
        let mut boat = self.possible.draw(run);
        // Who knows what the bank may take sets the regulator's cap by it.
        hold_current(&mut boat.sheet.inputs);
        let hours = boat.engine_h(&boat.plant());
        self.fixed + self.each_h * hours
    }
}
