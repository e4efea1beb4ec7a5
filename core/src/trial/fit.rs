//! Which figures of the model a log can tell, and what it tells.
//!
//! Every figure that could be corrected has a spread in which it is believed
//! to lie before the trial. The slopes of the residuals against the figures,
//! in units of those spreads, give the spread that is left after it. A figure
//! whose spread the log halves at least is fitted; the others stay as they
//! are, and what is not known of them widens the spread of those that are.
//! (Own reasoning on the usual normal equations of least squares.)

use super::least_squares::{Least, Search, least, normal, slopes};
use super::model::{Guess, Trial};
use super::columns::Column;
use super::refuse::spread;
use super::result::cooling_span;
use crate::fields::Complaint;
use crate::physics::linear::Factors;
use crate::physics::thermal::Temperatures;

/// How many figures could be corrected.
pub(super) const FIGURES: usize = 5;
/// Their places: cooling, heat capacity, own warm air, walls, start.
pub(super) const COOLING: usize = 0;
pub(super) const CAPACITY: usize = 1;
pub(super) const RECIRCULATION: usize = 2;
pub(super) const WALLS: usize = 3;
const START: usize = 4;

/// Spread of each before the trial: logarithm of the factor on cooling (an
/// anchor between 130 and 180 °C), of that on capacity (a third either way),
/// β, logarithm of the factor on the walls, kelvin. Own reasoning.
const SPREAD: [f64; FIGURES] = [0.3, 0.3, 0.08, 0.5, 2.0];
/// A figure is told if no more than this part of its spread is left.
const TOLD: f64 = 0.5;

/// Ranges outside of which nothing is believed: factors on cooling and
/// capacity, β, factor on the walls.
const COOLING_SPAN: (f64, f64) = (0.3, 3.0);
const CAPACITY_SPAN: (f64, f64) = (0.5, 2.0);
const RECIRCULATION_SPAN: (f64, f64) = (0.0, 0.5);
const WALLS_SPAN: (f64, f64) = (0.25, 4.0);
/// Farthest the first reading may be off \[K\].
const START_K: f64 = 10.0;

/// What meters and thermometers are off by as a whole, which no scatter shows,
/// as a part of cooling and capacity: 2 % of the amps and 2 K at the case.
const METERS: f64 = 0.04;
/// Thermometers on a boat are not believed closer \[K\].
const LEAST_RESIDUAL_K: f64 = 0.5;
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

type Scaled = [f64; FIGURES];

/// Figures from their scaled parameters; all nought is the worksheet.
fn guess(trial: &Trial, at: &Scaled) -> Guess {
    let inputs = &trial.inputs;
    let moved = |figure: usize| SPREAD[figure] * at[figure];
    Guess {
        cooling: moved(COOLING).exp(),
        capacity: inputs.alt.heat_capacity_factor * moved(CAPACITY).exp(),
        recirculation: inputs.space.recirculation_pct / 100.0 + moved(RECIRCULATION),
        walls: moved(WALLS).exp(),
        start_k: moved(START),
    }
}

fn bounds(trial: &Trial) -> [(f64, f64); FIGURES] {
    let inputs = &trial.inputs;
    let factor = |span: (f64, f64), now: f64, figure: usize| {
        let scaled = |value: f64| (value / now).ln() / SPREAD[figure];
        (scaled(span.0), scaled(span.1))
    };
    let (worst, best) = cooling_span(inputs, &trial.unit);
    let cooling = (
        worst.max(COOLING_SPAN.0 * trial.unit.cooling),
        best.min(COOLING_SPAN.1 * trial.unit.cooling),
    );
    let beta = |share: f64| {
        (share - inputs.space.recirculation_pct / 100.0) / SPREAD[RECIRCULATION]
    };
    [
        factor(cooling, trial.unit.cooling, COOLING),
        factor(CAPACITY_SPAN, inputs.alt.heat_capacity_factor, CAPACITY),
        (beta(RECIRCULATION_SPAN.0), beta(RECIRCULATION_SPAN.1)),
        factor(WALLS_SPAN, 1.0, WALLS),
        (-START_K / SPREAD[START], START_K / SPREAD[START]),
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
pub(super) fn solve(trial: &Trial) -> Result<Solution, Complaint> {
    /// Rounds of fitting and asking again what can be told.
    const ROUNDS: usize = 4;
    let bounds = bounds(trial);
    let misses = |at: &Scaled| residuals(trial, &trial.run(&guess(trial, at)));
    let mut possible = [true, true, true, trial.models_air(), true];
    let start = [0.0; FIGURES];
    let here = misses(&start);
    let steep = slopes(&misses, &start, &here, &bounds, &possible);
    let (mut told, _) = learn(&steep, 1.0, &possible);
    let mut round = 0;
    let (least, deviation) = loop {
        let search = Search {
            start,
            bounds,
            free: told,
        };
        let least = least(&misses, &search);
        // A side figure that runs away was not told after all.
        for figure in [RECIRCULATION, WALLS] {
            possible[figure] &= !(told[figure] && at_end(&least, &bounds, figure));
        }
        let steep = slopes(&misses, &least.at, &least.residuals, &bounds, &possible);
        let (next, deviation) = learn(&steep, uncertainty_k(&least.residuals), &possible);
        round += 1;
        if next == told || round == ROUNDS {
            break (least, deviation);
        }
        told = next;
    };
    let count = least.residuals.len().max(1) as f64;
    let residual_k = (least.residuals.iter().map(|r| r * r).sum::<f64>() / count).sqrt();
    if told[COOLING] && at_end(&least, &bounds, COOLING) {
        let cooler = if least.at[COOLING] > 0.0 { "better" } else { "worse" };
        return Err(Complaint(format!(
            "The log asks for a cooling outside anything plausible, far {cooler} than the worksheet's. Check the amps, the case thermometer, and the alternator's rated current and mass."
        )));
    }
    if told[CAPACITY] && at_end(&least, &bounds, CAPACITY) {
        let heavier = if least.at[CAPACITY] > 0.0 { "slowly" } else { "fast" };
        return Err(Complaint(format!(
            "The log asks for a heat capacity outside anything plausible: the case warms far too {heavier} for the worksheet's mass. Check the mass, the times, and that the first reading was taken as the current began."
        )));
    }
    if residual_k > MOST_RESIDUAL_K {
        return Err(Complaint(format!(
            "The model cannot follow these readings: it misses them by {residual_k:.0} K. Was the thermometer always aimed at the same spot, and did the current stay as logged between the readings?"
        )));
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
        residual_k,
    })
}

fn at_end(least: &Least<FIGURES>, bounds: &[(f64, f64); FIGURES], figure: usize) -> bool {
    let ((low, high), at) = (bounds[figure], least.at[figure]);
    at <= low + 1e-6 || at >= high - 1e-6
}

/// Standard deviation of one reading \[K\], as if readings were independent.
///
/// Residuals that run in stretches instead of scattering count for fewer:
/// the square is multiplied by (1 + r)/(1 − r), r their correlation with the
/// next one (G. V. Bayley, J. M. Hammersley, "The effective number of
/// independent observations in an autocorrelated time series", Suppl. J.
/// Royal Statistical Society 8, 184–197, 1946; from memory).
fn uncertainty_k(residuals: &[f64]) -> f64 {
    let Some((mean, deviation)) = spread(residuals.iter().copied()) else {
        return 1.0;
    };
    let together: f64 = residuals
        .windows(2)
        .map(|pair| pair.iter().map(|r| r - mean).product::<f64>())
        .sum();
    let square = deviation * deviation * residuals.len() as f64;
    let alike = (together / square.max(1e-12)).clamp(0.0, 0.9);
    let of_all = (mean * mean + deviation * deviation).sqrt();
    of_all.max(LEAST_RESIDUAL_K) * ((1.0 + alike) / (1.0 - alike)).sqrt()
}

/// Which figures slopes can tell, with readings of such an uncertainty \[K\],
/// and what is left of each spread.
///
/// Own warm air hardly differs from worse cooling. Where it is not told, the
/// cooling is that which goes with the worksheet's share of it.
fn learn(
    slopes: &[[f64; FIGURES]],
    uncertainty_k: f64,
    possible: &[bool; FIGURES],
) -> ([bool; FIGURES], Scaled) {
    let matrix = normal(slopes);
    let mut asked = *possible;
    let mut left = left(&matrix, uncertainty_k, &asked);
    if left[RECIRCULATION] > TOLD {
        asked[RECIRCULATION] = false;
        left = self::left(&matrix, uncertainty_k, &asked);
    }
    let told = std::array::from_fn(|figure| {
        figure == START || asked[figure] && left[figure] <= TOLD
    });
    (told, left)
}

/// What is left of each spread: the normal equations with the spreads before.
fn left(
    matrix: &[[f64; FIGURES]; FIGURES],
    uncertainty_k: f64,
    asked: &[bool; FIGURES],
) -> Scaled {
    let weight = uncertainty_k.powi(-2);
    let rows = std::array::from_fn(|i| {
        std::array::from_fn(|j| {
            let both = asked[i] && asked[j];
            let own = if i == j { 1.0 } else { 0.0 };
            own + if both { weight * matrix[i][j] } else { 0.0 }
        })
    });
    let Some(factors) = Factors::of(rows) else {
        return [1.0; FIGURES];
    };
    std::array::from_fn(|figure| {
        let mut unit = [0.0; FIGURES];
        unit[figure] = 1.0;
        factors.solve(&unit)[figure].max(0.0).sqrt()
    })
}
