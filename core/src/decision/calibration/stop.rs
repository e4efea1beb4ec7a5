//! When to stop a sea trial: the temperatures and volts at which the alternator,
//! the battery or whoever stands beside them comes to harm. All of them follow
//! from limits that the boat's model holds.

use crate::Report;
use crate::analysis::{AlternatorMoment, NEAR_K, Part};
use crate::boat::{Chemistry, Inputs, RegulatorKind, SensorPlace};
use crate::decision::calibration::columns::Column;
use crate::decision::calibration::log::Row;
use crate::physics::battery::{LFP_BLOCK_CELLS, LFP_MOST_V};

/// A 12 V lead battery is not taken beyond this by any regulator that works
/// \[V\]: common practice, no source.
const LEAD_STOP_V: f64 = 15.0;
/// Most that a cable is believed to take between alternator and bank, for each
/// 12 V block \[V\]: own reasoning.
const MOST_DROP_V: f64 = 1.0;
/// How far from where the case would be stopped the differences between parts
/// still count \[K\]: own reasoning, a minute of a fast rise either way.
const NEAR_STOP_K: f64 = 8.0;
/// No case is told to be stopped below this \[°C\]: what hurts a hand hurts no
/// alternator. Own reasoning; a boat that gets there has a Danger of its own.
const LEAST_STOP_C: f64 = 60.0;

/// How a sailor takes the load off the alternator.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StopWay {
    /// The regulator can be switched off: the field goes, the engine may turn on.
    CutField,
    /// Its regulator is built in: only a standing engine stops it.
    StopEngine,
}

/// Readings at which to stop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StopLimits {
    /// The case \[°C\].
    pub case_c: f64,
    /// The part that decides it: the case itself, or one that is hotter inside.
    pub decided_by: Part,
    /// What that part withstands for long \[°C\].
    pub part_limit_c: f64,
    /// The winding, where it is read \[°C\].
    pub winding_c: f64,
    /// The rectifier plate, where it is read \[°C\].
    pub rectifier_c: f64,
    /// Volts at the alternator \[V\].
    pub volts: f64,
    /// Whether at those volts a battery management system disconnects the bank.
    pub disconnects: bool,
    /// Temperature of the case that the regulator holds \[°C\]; none where it
    /// holds none, or measures elsewhere.
    pub holds_c: Option<f64>,
    /// How the load comes off.
    pub way: StopWay,
}

/// A reading at which to stop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum StopCause {
    /// A part is too hot.
    Hot {
        /// Which.
        part: Part,
        /// As read \[°C\].
        read_c: f64,
        /// Where to stop \[°C\].
        stop_c: f64,
    },
    /// The volts are too high.
    Volts {
        /// As read \[V\].
        read_v: f64,
        /// Where to stop \[V\].
        stop_v: f64,
    },
}

impl StopLimits {
    /// Those of a boat's first alternator.
    pub fn of(inputs: &Inputs, report: &Report) -> StopLimits {
        let (decided_by, case_c) = case_stop(inputs, report);
        let external = inputs.reg.kind == RegulatorKind::External;
        let on_case = external && inputs.reg.sensor == SensorPlace::Case;
        let (volts, disconnects) = volts_stop(inputs, report);
        StopLimits {
            case_c,
            decided_by,
            part_limit_c: decided_by.limit_c(&inputs.alt),
            winding_c: Part::Winding.limit_c(&inputs.alt),
            rectifier_c: Part::Rectifier.limit_c(&inputs.alt),
            volts,
            disconnects,
            holds_c: on_case.then_some(inputs.reg.set_point_c),
            way: match external {
                true => StopWay::CutField,
                false => StopWay::StopEngine,
            },
        }
    }

    /// What a reading says against going on, the most pressing first.
    pub fn reached(&self, row: &Row) -> Vec<StopCause> {
        let volts = row
            .get(Column::Volts)
            .filter(|read_v| *read_v >= self.volts);
        let volts = volts.map(|read_v| StopCause::Volts {
            read_v,
            stop_v: self.volts,
        });
        let hot = |(part, column, stop_c): (Part, Column, f64)| {
            let read_c = row.get(column).filter(|read_c| *read_c >= stop_c)?;
            Some(StopCause::Hot {
                part,
                read_c,
                stop_c,
            })
        };
        let parts = [
            (Part::Case, Column::Case, self.case_c),
            (Part::Winding, Column::Winding, self.winding_c),
            (Part::Rectifier, Column::Rectifier, self.rectifier_c),
        ];
        volts
            .into_iter()
            .chain(parts.into_iter().filter_map(hot))
            .collect()
    }

    /// The level the case comes to next: where the regulator begins to hold it,
    /// or where to stop \[°C\].
    pub fn next_c(&self, case_c: f64) -> f64 {
        match self.holds_c {
            Some(holds_c) if case_c < holds_c && holds_c < self.case_c => holds_c,
            _ => self.case_c,
        }
    }

    /// Whether the case is hotter than its regulator should let it get \[°C\].
    pub fn is_not_held(&self, case_c: f64) -> bool {
        self.holds_c
            .is_some_and(|holds_c| case_c > holds_c + NEAR_K)
    }
}

/// Where to stop by the case thermometer, and the part that decides: the case's
/// own limit, or where by the calculation a part inside is at its limit then.
fn case_stop(inputs: &Inputs, report: &Report) -> (Part, f64) {
    let moments = || {
        let series = report.analyses.run.series.iter();
        series.filter_map(|moment| moment.alternators.first())
    };
    let hottest_c = moments().map(|at| at.case_c).fold(f64::MIN, f64::max);
    let around_c = hottest_c.min(inputs.alt.case_limit_c);
    let above_case_k = |of: fn(&AlternatorMoment) -> f64| {
        let hot = moments().filter(|at| (at.case_c - around_c).abs() <= NEAR_STOP_K);
        hot.map(|at| of(at) - at.case_c).fold(0.0, f64::max)
    };
    let stops = [
        (Part::Case, 0.0),
        (Part::Winding, above_case_k(|at| at.winding_c)),
        (Part::Rectifier, above_case_k(|at| at.rectifier_c)),
    ];
    let lower = |one: (Part, f64), other: (Part, f64)| if other.1 < one.1 { other } else { one };
    stops
        .map(|(part, above_k)| {
            let stop_c = (part.limit_c(&inputs.alt) - above_k).floor();
            (part, stop_c.max(LEAST_STOP_C))
        })
        .into_iter()
        .reduce(lower)
        .unwrap_or((Part::Case, inputs.alt.case_limit_c))
}

/// Where to stop by the volts at the alternator, and whether a management
/// system disconnects the bank there: what the battery on its cable withstands,
/// and what the cable takes by the calculation.
fn volts_stop(inputs: &Inputs, report: &Report) -> (f64, bool) {
    let installed = inputs.first_alternator();
    let blocks = installed.battery_blocks();
    if !installed.connection.on_house() {
        return (LEAD_STOP_V * blocks, false);
    }
    let drops = report.analyses.run.series.iter().filter_map(|moment| {
        let volts = moment.alternators.first()?.volts;
        Some(volts - moment.bank_v)
    });
    let drop_v = drops.fold(0.0, f64::max).min(MOST_DROP_V * blocks);
    let lithium = inputs.bank.chemistry == Chemistry::Lfp;
    let battery_v = match lithium {
        true => LFP_MOST_V * LFP_BLOCK_CELLS * blocks,
        // A cold lead bank is charged at more volts.
        false => LEAD_STOP_V * blocks + inputs.lead_shift_v().max(0.0),
    };
    ((10.0 * (battery_v + drop_v)).round() / 10.0, lithium)
}

#[cfg(test)]
#[path = "stop_tests.rs"]
mod tests;
