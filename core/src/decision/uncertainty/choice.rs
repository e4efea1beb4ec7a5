//! What a reading would decide: which arrangement to choose, and how to set what
//! is aboard.
//!
//! The arrangements are weighed in the same possible boats by what a year costs. It
//! is worked out for the worksheet; in another boat fuel and wear of the engine go
//! with its time a day (own reasoning: a year of each possible boat would take ten
//! times as long).

use serde::Serialize;

use crate::boat::{Key, SecondRole, SectionId, Worksheet, key};
use crate::decision::arrangements::{Kind, Outcome, hold_current, safe_ones};
use crate::decision::uncertainty::between::prefer;
use crate::decision::uncertainty::draw::Column;
use crate::decision::uncertainty::possible::{PossibleBoat, PossibleBoats};
use crate::decision::uncertainty::settings::{AloneHot, SettingChoice, in_question};
use crate::schema::Confidence;

/// How many possible boats are asked.
const RUNS: usize = 128;

/// The calculation of what readings would decide, done a piece at a time.
pub struct Choice {
    sheet: Worksheet,
    possible: Drawn,
    /// Arrangements that are still to be worked out; none once all are.
    waiting: Option<Waiting>,
    ways: Vec<Way>,
    hot: Vec<AloneHot>,
}

type Waiting = Box<dyn Iterator<Item = Option<Outcome>>>;

/// The boats that a worksheet may stand for, and which of them are drawn.
struct Drawn {
    boats: PossibleBoats,
    columns: Vec<Column>,
}

/// An arrangement among which one would choose.
struct Way {
    named: NamedArrangement,
    possible: Drawn,
    /// A year's cost, but for what goes with the engine's time.
    fixed: f64,
    /// What goes with it, for each hour a day.
    each_h: f64,
    costs: Vec<f64>,
}

/// An arrangement by its kind; `name` is empty unless it is one of the user's own.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct NamedArrangement {
    /// Which of the usual ways it is.
    pub kind: Kind,
    /// The name it was given.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub own_name: String,
}

/// Which arrangement costs least a year, and what would change that.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ArrangementChoice {
    /// The one that costs least most often.
    pub best: NamedArrangement,
    /// In so many cases it does \[%\].
    pub best_pct: f64,
    /// The one that does most often in the other cases.
    pub rival: Option<NamedArrangement>,
    /// The reading that decides between the two; none where none would.
    pub reading: Option<Deciding>,
}

/// A reading that decides something.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Deciding {
    /// The input.
    pub key: Key,
    /// What it is called.
    pub what: &'static str,
    /// The section it stands in.
    pub section: &'static str,
}

/// What readings would decide.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Decisions {
    /// Which arrangement; none where only one does no harm or none covers the year.
    pub arrangement: Option<ArrangementChoice>,
    /// Settings that hang on what is not known.
    pub settings: Vec<SettingChoice>,
}

impl Drawn {
    fn of(sheet: &Worksheet) -> Drawn {
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

    fn draw(&self, run: usize) -> PossibleBoat {
        let share_of = |at: usize| self.columns.get(at).map_or(0.5, |one| one.share(run));
        self.boats.draw(share_of)
    }
}

impl Way {
    /// None where the year is not covered, or it is no way in which the engine
    /// charges with the panels there are.
    fn of(sheet: &Worksheet, outcome: Outcome) -> Option<Way> {
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
            costs: Vec::with_capacity(RUNS),
        })
    }

    fn cost(&self, run: usize) -> f64 {
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

impl Choice {
    /// Begins one.
    pub fn new(sheet: &Worksheet) -> Choice {
        Choice {
            sheet: sheet.clone(),
            possible: Drawn::of(sheet),
            waiting: Some(Box::new(safe_ones(sheet))),
            ways: Vec::new(),
            hot: Vec::with_capacity(RUNS),
        }
    }

    /// All of one, at once.
    pub fn of(sheet: &Worksheet) -> Choice {
        let mut choice = Choice::new(sheet);
        while !choice.done() {
            choice.step();
        }
        choice
    }

    /// Does one piece more: an arrangement, or a possible boat in each of them.
    pub fn step(&mut self) {
        if let Some(waiting) = &mut self.waiting {
            match waiting.next() {
                Some(next) => {
                    let way = next.and_then(|one| Way::of(&self.sheet, one));
                    self.ways.extend(way);
                }
                None => self.waiting = None,
            }
            return;
        }
        let run = self.hot.len();
        if run >= RUNS {
            return;
        }
        self.hot.push(AloneHot::of(&self.possible.draw(run)));
        if self.ways.len() > 1 {
            for way in &mut self.ways {
                let cost = way.cost(run);
                way.costs.push(cost);
            }
        }
    }

    /// Whether all is done.
    pub fn done(&self) -> bool {
        self.waiting.is_none() && self.hot.len() >= RUNS
    }

    /// What the readings would decide, by what is done so far.
    pub fn decisions(&self) -> Decisions {
        let factors = self.possible.boats.factors();
        let columns = self.possible.columns.iter().take(factors.len());
        let strata: Vec<&[u16]> = columns.map(Column::strata).collect();
        let reading = |at: usize| {
            let factor = factors.get(at)?;
            Some(Deciding {
                key: factor.key,
                what: factor.label(),
                section: factor.key.section.title(),
            })
        };
        Decisions {
            arrangement: self.arrangement(&strata, reading),
            settings: in_question(&self.sheet.inputs, &self.hot, &strata, reading),
        }
    }

    fn arrangement(
        &self,
        strata: &[&[u16]],
        reading: impl Fn(usize) -> Option<Deciding>,
    ) -> Option<ArrangementChoice> {
        let costs: Vec<Vec<f64>> = self.ways.iter().map(|way| way.costs.clone()).collect();
        let found = prefer(&costs, strata)?;
        let named = |at: usize| self.ways.get(at).map(|way| way.named.clone());
        Some(ArrangementChoice {
            best: named(found.best)?,
            best_pct: 100.0 * found.best_share,
            rival: found.rival.and_then(named),
            reading: found.reading.and_then(reading),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::{Choice, Decisions};
    use crate::boat::{Plate, Worksheet, key};
    use crate::decision::uncertainty::SettingChoice;
    use crate::exchange::open_link;
    use crate::schema::{Confidence, FieldType};

    fn decided(sheet: &Worksheet) -> Decisions {
        Choice::of(sheet).decisions()
    }

    /// What decides between two arrangements does: with it known, one of them is the
    /// best of one value and the other of another.
    #[test]
    fn the_deciding_reading_decides() {
        const BOAT: &str = "way_kind=direct&reg_kind=external&bank_capacity=600&bank_charge_limit=600&alt_rated=100&alt_class=h&cost_days=60";
        let sheet = open_link(&format!("v=2&{BOAT}&end")).expect("a link");
        assert!(sheet.remarks.is_empty(), "{:?}", sheet.remarks);
        let sheet = sheet.sheet;
        let choice = decided(&sheet).arrangement.expect("a choice");
        let rival = choice.rival.expect("a rival");
        let key = choice.reading.expect("a reading").key;
        assert_eq!(key, key!(alt.plate));
        let best = [Plate::Cold, Plate::Warm].map(|plate| {
            let mut known = sheet.clone();
            known.state(key, plate.to_value()).expect("an option");
            known.know(key, Confidence::Measured);
            decided(&known).arrangement.expect("a choice").best
        });
        assert!(
            best.contains(&choice.best) && best.contains(&rival),
            "{best:?}"
        );
    }

    #[test]
    fn a_boat_that_the_engine_does_not_charge_decides_nothing_of_it() {
        let sheet = open_link("v=2&shore_rest=shore&end").expect("a link").sheet;
        assert!(!sheet.inputs.engine_charges());
        assert_eq!(decided(&sheet).settings, []);
    }

    /// A cap that is stated is not in question.
    #[test]
    fn settings_that_are_stated_or_certain_are_not_in_question() {
        let caps = |link: &str| {
            let sheet = open_link(&format!("v=2&way_kind=direct&reg_kind=external{link}&end"));
            let settings = decided(&sheet.expect("a link").sheet).settings;
            let caps = settings.into_iter();
            caps.filter(|one| matches!(one, SettingChoice::CurrentCap { .. }))
                .count()
        };
        assert_eq!((caps(""), caps("&reg_current_cap=60")), (1, 0));
    }
}
