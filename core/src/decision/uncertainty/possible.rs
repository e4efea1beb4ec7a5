//! A boat as it may be: every figure moved within what it may be, and the
//! formulas wrong by as much as they may be.

use crate::analysis::energy::energy;
use crate::analysis::engine_day::{DailyRun, DayNeed, daily_run};
use crate::boat::Worksheet;
use crate::decision::uncertainty::spread::{self, Factor, triangle};
use crate::physics::output::formula_error;
use crate::simulation::alternators::Alternators;
use crate::simulation::plant::Plant;
use crate::simulation::steady_state::settled;

/// What draws the error of the output curve's formula is called.
pub const OUTPUT_FORMULA: &str = "formula_output";

/// A boat as it may be.
#[derive(Debug, Clone)]
pub struct PossibleBoat {
    /// Its figures.
    pub sheet: Worksheet,
    /// How far the output curve's formula is wrong, as a part of how far it may be,
    /// −1 to 1.
    pub output_off: f64,
}

/// The answers of one boat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Answers {
    /// Engine time a day \[h\]; infinite when no day is long enough.
    pub engine_h: f64,
    /// What the alternator holds, hot \[A\].
    pub hot_a: f64,
}

/// The boats that a worksheet may stand for.
pub struct PossibleBoats {
    sheet: Worksheet,
    factors: Vec<Factor>,
}

impl PossibleBoats {
    /// Those of a worksheet.
    pub fn of(sheet: &Worksheet) -> PossibleBoats {
        PossibleBoats {
            sheet: sheet.clone(),
            factors: spread::factors(sheet),
        }
    }

    /// What may be another than it says, in the order in which it is drawn.
    pub(super) fn factors(&self) -> &[Factor] {
        &self.factors
    }

    /// The names of all that is drawn, in that order: inputs, and in the end the
    /// formula of the output curve.
    pub(super) fn names(&self) -> impl Iterator<Item = String> {
        let inputs = self.factors.iter().map(|factor| factor.key.name());
        inputs.chain([OUTPUT_FORMULA.to_string()])
    }

    /// The boat as the worksheet says, its formulas right.
    pub fn as_it_stands(&self) -> PossibleBoat {
        PossibleBoat {
            sheet: self.sheet.clone(),
            output_off: 0.0,
        }
    }

    /// One of them. `share_of` says for each of the figures that are drawn, by its
    /// place and in that order, what part of all cases lies below the one drawn, 0
    /// to 1.
    pub fn draw(&self, mut share_of: impl FnMut(usize) -> f64) -> PossibleBoat {
        let mut boat = self.as_it_stands();
        for (at, factor) in self.factors.iter().enumerate() {
            factor.apply(&self.sheet, &mut boat.sheet, share_of(at));
        }
        boat.output_off = triangle(share_of(self.factors.len()), 1.0, 1.0);
        boat
    }
}

impl PossibleBoat {
    /// Its alternators: those of its figures, giving as much more or less as the
    /// formula of the output curve is wrong by at the speed they turn.
    pub fn alternators(&self) -> Alternators {
        let inputs = &self.sheet.inputs;
        let mut alternators = Alternators::of(inputs);
        for (alternator, installed) in alternators.list.iter_mut().zip(inputs.alternators()) {
            let shaft_rpm = installed.shaft_rpm(inputs.eng.rpm);
            let error = formula_error(shaft_rpm, alternator.curve.zero_rpm);
            alternator.curve.infinite_a *= 1.0 + self.output_off * error;
        }
        alternators
    }

    /// It as prepared numbers.
    pub fn plant(&self) -> Plant {
        self.alternators().plant_of(&self.sheet)
    }

    /// Its answers.
    pub fn answers(&self) -> Answers {
        let run = &self.sheet.inputs.run;
        let half_way = 0.5 * (run.from_pct / 100.0 + run.to_pct / 100.0);
        let plant = self.plant();
        Answers {
            engine_h: self.engine_h(&plant),
            hot_a: plant.charging_a(&settled(&plant, half_way).flow),
        }
    }

    /// Its engine time a day \[h\], infinite when no day is long enough; `plant` is
    /// its own.
    pub(super) fn engine_h(&self, plant: &Plant) -> f64 {
        let need = DayNeed::of(&self.sheet.inputs, &energy(&self.sheet));
        match daily_run(plant, &need) {
            DailyRun::SunCovers => 0.0,
            DailyRun::Runs(runs) => runs.hours(),
            DailyRun::Trouble(_) => f64::INFINITY,
        }
    }
}
