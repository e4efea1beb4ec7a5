//! What a reading would decide: which arrangement to choose, and how to set what
//! is aboard.
//!
//! The arrangements are weighed in the same possible boats by what a year costs.

use serde::Serialize;

use crate::boat::Worksheet;
use crate::decision::arrangements::{Outcome, safe_ones};
use crate::decision::uncertainty::between::prefer;
use crate::decision::uncertainty::draw::Column;
use crate::decision::uncertainty::settings::{AloneHot, Deciding, SettingChoice, in_question};
use crate::decision::uncertainty::way::{Drawn, NamedArrangement, Way};

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

/// What readings would decide.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Decisions {
    /// Which arrangement; none where only one does no harm or none covers the year.
    pub arrangement: Option<ArrangementChoice>,
    /// Settings that hang on what is not known.
    pub settings: Vec<SettingChoice>,
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
