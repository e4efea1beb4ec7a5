//! What a log tells, as figures for the worksheet and remarks for its owner.

use crate::boat::{AirBasis, Curve, Inputs, Key, Worksheet, key};
use crate::decision::calibration::columns::Column;
use crate::decision::calibration::fit::Solution;
use crate::decision::calibration::fit_remark;
use crate::decision::calibration::fit_remark::FitRemark;
use crate::decision::calibration::late_air::{late_air, still_to_rise_k};
use crate::decision::calibration::learn::{CAPACITY, COOLING, COUPLING, RECIRCULATION, WALLS};
use crate::decision::calibration::model::Trial;
use crate::decision::calibration::output::Output;
use crate::decision::calibration::settling::rounded;
use crate::numerics::mean_and_deviation;
use crate::schema::{Confidence, FieldType, Value};
use crate::units::{NONE, UnitOfMeasure};

/// A figure a log gave.
#[derive(Debug, Clone, PartialEq)]
pub struct Fitted {
    /// What it is.
    pub what: FittedFigure,
    /// Its unit.
    pub unit: &'static UnitOfMeasure,
    /// Decimals worth showing.
    pub decimals: usize,
    /// What the worksheet had; none if it did without.
    pub was: Option<f64>,
    /// What the log says.
    pub value: f64,
    /// Standard deviation.
    pub deviation: f64,
    /// Range that holds it in about nineteen cases of twenty.
    pub range: (f64, f64),
}

/// What a log gives a figure for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FittedFigure {
    /// The cooling, as a multiple of the worksheet's.
    Cooling,
    /// An input.
    Input(Key),
}

/// A reading of the case thermometer against the model.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Compared {
    /// Time as logged \[min\].
    pub minute: f64,
    /// Case as logged \[°C\].
    pub measured_c: f64,
    /// Case as modelled \[°C\].
    pub modelled_c: f64,
}

/// What a log told about a boat.
#[derive(Debug, Clone, PartialEq)]
pub struct Fit {
    /// The figures it gave.
    pub figures: Vec<Fitted>,
    /// How far the model misses the thermometers, root mean square \[K\].
    pub residual_k: f64,
    /// The case, reading by reading.
    pub series: Vec<Compared>,
    /// What it could not tell, and what to know of what it told.
    pub remarks: Vec<FitRemark>,
    changes: Vec<(Key, Value)>,
}

/// Puts a log's figures into a worksheet and marks them measured.
pub fn apply(sheet: &mut Worksheet, fit: &Fit) {
    for (key, value) in &fit.changes {
        if sheet.state(*key, *value).is_ok() {
            sheet.known.insert(*key, Confidence::Measured);
        }
    }
}

impl Fit {
    /// An input that takes a number.
    fn figure(
        &mut self,
        key: Key,
        decimals: usize,
        was: Option<f64>,
        value: f64,
        deviation: f64,
        range: (f64, f64),
    ) {
        let spec = key.spec();
        let (low, high) = spec.range().unwrap_or((f64::MIN, f64::MAX));
        let inside = |number: f64| rounded(number.max(low).min(high), decimals);
        self.figures.push(Fitted {
            what: FittedFigure::Input(key),
            unit: spec.unit().unwrap_or(NONE),
            decimals,
            was,
            value: inside(value),
            deviation,
            range: (inside(range.0), inside(range.1)),
        });
        self.changes.push((key, Value::Number(inside(value))));
    }

    /// One whose logarithm has this standard deviation.
    fn factor(&mut self, key: Key, decimals: usize, was: f64, value: f64, log: f64) {
        let range = (value * (-2.0 * log).exp(), value * (2.0 * log).exp());
        self.figure(key, decimals, Some(was), value, value * log, range);
    }

    /// One with a standard deviation.
    fn plain(&mut self, key: Key, decimals: usize, was: Option<f64>, value: f64, deviation: f64) {
        let range = (value - 2.0 * deviation, value + 2.0 * deviation);
        self.figure(key, decimals, was, value, deviation, range);
    }
}

/// Everything a solution says. `before` is the worksheet it started from.
pub(super) fn build(trial: &Trial, solution: &Solution, output: &Output, before: &Inputs) -> Fit {
    let inputs = &trial.inputs;
    let (guess, told, deviation) = (&solution.guess, &solution.told, &solution.deviation);
    let mut fit = Fit {
        figures: Vec::new(),
        residual_k: solution.residual_k,
        series: series(trial, solution),
        remarks: fit_remark::remarks(trial, solution, output),
        changes: Vec::new(),
    };
    if told[COOLING] {
        cooling(&mut fit, trial, solution);
    }
    if told[COUPLING] {
        let was = inputs.first_alternator().coupling_w_k();
        let found = was * guess.coupling;
        fit.factor(key!(alt.coupling_w_k), 2, was, found, deviation[COUPLING]);
    }
    if told[CAPACITY] {
        let was = inputs.alt.heat_capacity_factor;
        fit.factor(
            key!(alt.heat_capacity_factor),
            2,
            was,
            guess.capacity,
            deviation[CAPACITY],
        );
    }
    if told[RECIRCULATION] {
        let was = Some(inputs.space.recirculation_pct);
        fit.plain(
            key!(space.recirculation_pct),
            0,
            was,
            100.0 * guess.recirculation,
            100.0 * deviation[RECIRCULATION],
        );
    }
    if told[WALLS] {
        let was = inputs.space_wall_w_k();
        fit.factor(
            key!(space.wall_w_k),
            1,
            was,
            was * guess.walls,
            deviation[WALLS],
        );
    }
    hot_air(&mut fit, trial);
    if let Output::Point {
        shaft_rpm,
        amperes,
        deviation_a,
    } = output
    {
        let was = (before.alt.curve == Curve::Points).then_some(before.alt.second_a);
        fit.plain(key!(alt.second_a), 0, was, *amperes, *deviation_a);
        fit.changes
            .push((key!(alt.second_rpm), Value::Number(*shaft_rpm)));
        fit.changes
            .push((key!(alt.curve), Curve::Points.to_value()));
    }
    fit
}

fn series(trial: &Trial, solution: &Solution) -> Vec<Compared> {
    let compared = trial.rows.iter().zip(&solution.run).filter_map(|(row, t)| {
        Some(Compared {
            minute: row.minute,
            measured_c: row.get(Column::Case)?,
            modelled_c: t.body_c,
        })
    });
    compared.collect()
}

/// The cooling, told as where the case settles at the current of the log.
fn cooling(fit: &mut Fit, trial: &Trial, solution: &Solution) {
    let (guess, log) = (&solution.guess, solution.deviation[COOLING]);
    let beyond = |deviations: f64| (deviations * log).exp();
    let anchor = trial.settling(&solution.run);
    let case_c = |factor: f64| trial.settled_case_c(guess, &anchor, factor);
    let Some(settled_c) = case_c(1.0) else { return };
    let [low_c, coolest_c, hottest_c] =
        [1.0, 2.0, -2.0].map(|deviations| case_c(beyond(deviations)).unwrap_or(settled_c));
    fit.figures.push(Fitted {
        what: FittedFigure::Cooling,
        unit: NONE,
        decimals: 2,
        was: Some(1.0),
        value: rounded(guess.cooling, 2),
        deviation: guess.cooling * log,
        range: (
            rounded(guess.cooling * beyond(-2.0), 2),
            rounded(guess.cooling * beyond(2.0), 2),
        ),
    });
    fit.figure(
        key!(alt.anchor_case_c),
        1,
        trial.inputs.alt.anchor_case_c,
        settled_c,
        settled_c - low_c,
        (coolest_c, hottest_c),
    );
    for (key, number) in [
        (key!(alt.anchor_case_a), anchor.amperes),
        (key!(alt.anchor_rpm), anchor.shaft_rpm),
        (key!(alt.anchor_air_c), anchor.air_c),
    ] {
        fit.changes.push((key, Value::Number(number)));
    }
}

/// Air near the alternator where it comes to, from a log that is long enough.
fn hot_air(fit: &mut Fit, trial: &Trial) {
    let Some(late) = late_air(trial) else { return };
    let Some((mean, deviation)) = mean_and_deviation(late.iter().copied()) else {
        return;
    };
    let hot_c = mean + still_to_rise_k(trial, mean);
    let space = &trial.inputs.space;
    let was = (space.basis == AirBasis::Measured).then_some(space.hot_c);
    fit.plain(key!(space.hot_c), 1, was, hot_c, deviation.max(1.0));
    fit.changes
        .push((key!(space.basis), AirBasis::Measured.to_value()));
}
