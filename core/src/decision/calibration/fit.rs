//! What a log tells: the figures that fit its readings best.

use crate::decision::calibration::anchor::cooling_span;
use crate::decision::calibration::columns::Column;
use crate::decision::calibration::guess::Guess;
use crate::decision::calibration::learn::{
    CAPACITY, COOLING, COUPLING, FIGURES, RECIRCULATION, START, WALLS, learn, square_k,
};
use crate::decision::calibration::model::Trial;
use crate::decision::calibration::refusal::Refusal;
use crate::numerics::least_squares::{Least, Residuals, Search, least, slopes};
use crate::physics::thermal::Temperatures;

/// Spread of each before the trial: logarithm of the factor on cooling (an
/// anchor between 105 and 165 °C), of that on capacity (a third either way),
/// β, logarithm of the factor on the walls, kelvin, logarithm of the factor on
/// the heat from winding to case (2 to 10 W/K). Own reasoning.
const SPREAD: [f64; FIGURES] = [0.3, 0.3, 0.08, 0.5, 2.0, 0.4];
/// Ranges outside of which nothing is believed: factors on cooling and
/// capacity, β, factor on the walls.
const COOLING_SPAN: (f64, f64) = (0.3, 3.0);
const CAPACITY_SPAN: (f64, f64) = (0.5, 2.0);
const RECIRCULATION_SPAN: (f64, f64) = (0.0, 0.5);
const WALLS_SPAN: (f64, f64) = (0.25, 4.0);
const COUPLING_SPAN: (f64, f64) = (0.2, 5.0);
/// Farthest the first reading may be off \[K\].
const START_K: f64 = 10.0;

/// What meters and thermometers are off by as a whole, which no scatter shows,
/// as a part of cooling and capacity: 2 % of the amps and 2 K at the case.
const METERS: f64 = 0.04;
/// A model that misses the readings by more has not understood them \[K\].
const MOST_RESIDUAL_K: f64 = 10.0;

/// What a log tells.
#[derive(Debug, Clone)]
pub(super) struct Solution {
    pub guess: Guess,
    /// Which figures were fitted.
    pub told: [bool; FIGURES],
    /// Standard deviation of each: of the logarithm for factors.
    pub deviation: [f64; FIGURES],
    /// Temperatures at the rows.
    pub run: Vec<Temperatures>,
    /// Root mean square of what is left \[K\].
    pub residual_k: f64,
}

/// Figures from their scaled parameters; all nought is the worksheet.
fn guess(trial: &Trial, at: &[f64]) -> Guess {
    let moved = |figure: usize| SPREAD[figure] * at[figure];
    let mut guess = Guess::of(&trial.inputs);
    guess.cooling *= moved(COOLING).exp();
    guess.capacity *= moved(CAPACITY).exp();
    guess.recirculation += moved(RECIRCULATION);
    guess.walls *= moved(WALLS).exp();
    guess.start_k += moved(START);
    guess.coupling *= moved(COUPLING).exp();
    guess
}

fn bounds(trial: &Trial) -> [(f64, f64); FIGURES] {
    let inputs = &trial.inputs;
    let factor = |span: (f64, f64), now: f64, figure: usize| {
        let scaled = |value: f64| (value / now).ln() / SPREAD[figure];
        (scaled(span.0), scaled(span.1))
    };
    let (worst, best) = cooling_span(inputs, &trial.alternator);
    let cooling = (
        worst.max(COOLING_SPAN.0 * trial.alternator.cooling),
        best.min(COOLING_SPAN.1 * trial.alternator.cooling),
    );
    let beta =
        |share: f64| (share - inputs.space.recirculation_pct / 100.0) / SPREAD[RECIRCULATION];
    [
        factor(cooling, trial.alternator.cooling, COOLING),
        factor(CAPACITY_SPAN, inputs.alt.heat_capacity_factor, CAPACITY),
        (beta(RECIRCULATION_SPAN.0), beta(RECIRCULATION_SPAN.1)),
        factor(WALLS_SPAN, 1.0, WALLS),
        (-START_K / SPREAD[START], START_K / SPREAD[START]),
        factor(COUPLING_SPAN, 1.0, COUPLING),
    ]
}

/// Modelled less measured \[K\]: all of the case, then winding and rectifier
/// where they were logged.
fn residuals(trial: &Trial, run: &[Temperatures]) -> Vec<f64> {
    let of = |column: Column, get: fn(&Temperatures) -> f64| {
        trial
            .rows
            .iter()
            .zip(run)
            .filter_map(move |(row, t)| Some(get(t) - row.get(column)?))
    };
    of(Column::Case, |t| t.body_c)
        .chain(of(Column::Winding, |t| t.winding_c))
        .chain(of(Column::Rectifier, |t| t.rectifier_c))
        .collect()
}

/// Finds what a log tells.
pub(super) fn solve(trial: &Trial) -> Result<Solution, Refusal> {
    /// Rounds of fitting and asking again what can be told.
    const ROUNDS: usize = 4;
    let bounds = bounds(trial);
    let misses = |at: &[f64]| residuals(trial, &trial.run(&guess(trial, at)));
    let winding = trial.logged(Column::Winding);
    let mut possible = [true, true, true, trial.models_air(), true, winding];
    let mut told = [true, true, false, false, true, winding];
    let start = start(&misses, &bounds);
    let mut round = 0;
    let (least, deviation) = loop {
        let search = Search {
            // What is not told stays as it was.
            start: (0..FIGURES)
                .map(|figure| if told[figure] { start[figure] } else { 0.0 })
                .collect(),
            bounds: bounds.to_vec(),
            free: told.to_vec(),
        };
        let least = least(&misses, &search);
        if round == 0 && residual_k(&least) > MOST_RESIDUAL_K {
            return Err(refusal(&least, &bounds, &told));
        }
        // A side figure that runs away was not told after all.
        for figure in [RECIRCULATION, WALLS, COUPLING] {
            possible[figure] &= !(told[figure] && at_end(&least, &bounds, figure));
        }
        let steep = slopes(&misses, &least.at, &least.residuals, &bounds, &possible);
        let (next, deviation) = learn(
            &steep,
            square_k(trial.rows.len(), &least.residuals),
            &possible,
        );
        round += 1;
        if next == told || round == ROUNDS {
            break (least, deviation);
        }
        told = next;
    };
    let ended = |figure: usize| told[figure] && at_end(&least, &bounds, figure);
    if ended(COOLING) || ended(CAPACITY) || residual_k(&least) > MOST_RESIDUAL_K {
        return Err(refusal(&least, &bounds, &told));
    }
    let guess = guess(trial, &least.at);
    Ok(Solution {
        guess,
        told,
        deviation: std::array::from_fn(|figure| {
            (SPREAD[figure] * deviation[figure]).hypot(match figure {
                COOLING | CAPACITY => METERS,
                _ => 0.0,
            })
        }),
        run: trial.run(&guess),
        residual_k: residual_k(&least),
    })
}

/// Where to begin: at the cooling that misses the readings least. Told worse cooling
/// than it has, the alternator of the model may run away, and nothing then says
/// which way is better.
fn start(misses: Residuals, bounds: &[(f64, f64); FIGURES]) -> Vec<f64> {
    let with = |cooling: f64| {
        let mut at = vec![0.0; FIGURES];
        at[COOLING] = cooling;
        at
    };
    let (worst, best) = bounds[COOLING];
    let square = |at: &[f64]| misses(at).iter().map(|miss| miss * miss).sum::<f64>();
    let tried =
        [0.0, 1.0, 2.0, 3.0, -1.0, -2.0].map(|cooling: f64| with(cooling.max(worst).min(best)));
    let least = tried
        .into_iter()
        .min_by(|one, other| square(one).total_cmp(&square(other)));
    least.unwrap_or_else(|| with(0.0))
}

fn at_end(least: &Least, bounds: &[(f64, f64); FIGURES], figure: usize) -> bool {
    let ((low, high), at) = (bounds[figure], least.at[figure]);
    at <= low + 1e-6 || at >= high - 1e-6
}

fn residual_k(least: &Least) -> f64 {
    let squares: f64 = least.residuals.iter().map(|r| r * r).sum();
    (squares / least.residuals.len().max(1) as f64).sqrt()
}

/// Why a fit is not believed.
fn refusal(least: &Least, bounds: &[(f64, f64); FIGURES], told: &[bool; FIGURES]) -> Refusal {
    let residual_k = residual_k(least);
    if told[COOLING] && at_end(least, bounds, COOLING) {
        Refusal::Cooling {
            better: least.at[COOLING] > 0.0,
        }
    } else if residual_k > MOST_RESIDUAL_K {
        Refusal::Misses { residual_k }
    } else {
        Refusal::HeatCapacity {
            slow: least.at[CAPACITY] > 0.0,
        }
    }
}
