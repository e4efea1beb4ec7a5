//! How hot each part of each alternator gets, against what it withstands. One
//! rule for findings, verdict and comparisons.

use serde::Serialize;

use crate::analysis::temperatures::PartTemperatures;
use crate::analysis::{AlternatorReport, AlternatorRun, Analyses};
use crate::boat::{Alternator, Inputs, InstalledAlternator, WhichAlternator};
use crate::physics::thermal::Temperatures;
use crate::simulation::run::Trace;

/// Within so much of its limit a part runs hot \[K\]: own reasoning. Readings
/// on board, a warmer day and a dusty fan each take about as much.
pub const NEAR_K: f64 = 5.0;

/// A part of an alternator that has a limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Part {
    /// Stator winding: its insulation.
    Winding,
    /// Rectifier plate: the diodes pressed into it.
    Rectifier,
    /// Case: the grease of the bearings in it.
    Case,
}

impl Part {
    /// All of them.
    pub const ALL: [Part; 3] = [Part::Winding, Part::Rectifier, Part::Case];

    /// What it withstands for long in an alternator \[°C\].
    pub fn limit_c(self, alternator: &Alternator) -> f64 {
        match self {
            Part::Winding => alternator.class.limit_c(),
            Part::Rectifier => alternator.rectifier_limit_c,
            Part::Case => alternator.case_limit_c,
        }
    }

    pub(super) fn of(self, t: &PartTemperatures) -> f64 {
        match self {
            Part::Winding => t.winding_at_most_c(),
            Part::Rectifier => t.rectifier_c,
            Part::Case => t.case_c,
        }
    }

    /// Its temperature in one of a run's alternators, at the most that it may be.
    fn node_c(self, trace: &Trace, alternator: usize, t: &Temperatures) -> f64 {
        let here = trace.plant().alternators.get(alternator);
        match self {
            Part::Winding => here
                .and_then(|here| here.winding_may_be_c(t))
                .unwrap_or(t.winding_c),
            Part::Rectifier => t.rectifier_c,
            Part::Case => t.body_c,
        }
    }
}

/// A part of one alternator and its limit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PartLimit {
    /// Which alternator's.
    pub alternator: WhichAlternator,
    /// Which part.
    pub part: Part,
    /// Its highest in the run \[°C\].
    pub peak_c: f64,
    /// Where it settles when charging goes on and on \[°C\]; none when it never
    /// settles.
    pub settled_c: Option<f64>,
    /// What it withstands for long \[°C\].
    pub limit_c: f64,
    /// Whether its temperature is the most that it may be, as nobody has measured
    /// it.
    pub at_most: bool,
}

impl PartLimit {
    /// The higher of the run's peak and where it settles \[°C\].
    pub fn hottest_c(&self) -> f64 {
        self.settled_c.map_or(self.peak_c, |c| c.max(self.peak_c))
    }

    /// How far below its limit it stays \[K\]; negative beyond it.
    pub fn margin_k(&self) -> f64 {
        self.limit_c - self.hottest_c()
    }

    /// Whether it passes its limit in the run.
    pub fn passed(&self) -> bool {
        self.peak_c > self.limit_c
    }
}

/// Every part of every alternator of a boat.
pub fn part_limits(inputs: &Inputs, report: &Analyses) -> Vec<PartLimit> {
    let each = report.alternators.iter().zip(&report.run.alternators);
    let limits = |(installed, (alternator, run)): (
        InstalledAlternator,
        (&AlternatorReport, &AlternatorRun),
    )| {
        Part::ALL.map(|part| PartLimit {
            alternator: installed.which,
            part,
            peak_c: part.of(&run.peak),
            settled_c: alternator.hot.as_ref().map(|hot| part.of(hot)),
            limit_c: part.limit_c(installed.alternator),
            at_most: part == Part::Winding && installed.winding_unknown(),
        })
    };
    inputs.alternators().zip(each).flat_map(limits).collect()
}

/// A part of one alternator in the leg of the day in which it gets hottest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LegLimit {
    /// The leg's place, from 0.
    pub leg: usize,
    /// As warm as the part is when that leg begins \[°C\].
    pub start_c: f64,
    /// The part and its limit; where it settles is not asked.
    pub limit: PartLimit,
}

/// Every part of every alternator of a boat in the legs of its day; nothing
/// without any.
pub fn leg_limits(inputs: &Inputs, report: &Analyses) -> Vec<LegLimit> {
    let legs = report.legs.iter().flat_map(|legs| &legs.legs);
    let hottest = |installed: InstalledAlternator, part: Part| {
        let each = legs.clone().enumerate().filter_map(|(leg, done)| {
            let alternator = done.alternators.get(installed.which.index())?;
            Some(LegLimit {
                leg,
                start_c: part.of(&alternator.start),
                limit: PartLimit {
                    alternator: installed.which,
                    part,
                    peak_c: part.of(&alternator.peak),
                    settled_c: None,
                    limit_c: part.limit_c(installed.alternator),
                    at_most: part == Part::Winding && installed.winding_unknown(),
                },
            })
        });
        each.reduce(|one, other| match other.limit.peak_c > one.limit.peak_c {
            true => other,
            false => one,
        })
    };
    inputs
        .alternators()
        .flat_map(|installed| Part::ALL.map(|part| hottest(installed, part)))
        .flatten()
        .collect()
}

/// The part that comes nearest to its limit, or passes it most.
pub fn nearest(limits: &[PartLimit]) -> Option<PartLimit> {
    let nearer = |a: PartLimit, b: PartLimit| if b.margin_k() < a.margin_k() { b } else { a };
    limits.iter().copied().reduce(nearer)
}

/// The part that passes its limit first in a run until a time \[s\], and when \[s\].
pub(crate) fn first_passed(
    limits: &[PartLimit],
    trace: &Trace,
    until_s: f64,
) -> Option<(PartLimit, f64)> {
    let mut first: Option<(PartLimit, f64)> = None;
    for limit in limits.iter().filter(|limit| limit.passed()) {
        let alternator = limit.alternator.index();
        let node = |t: &Temperatures| limit.part.node_c(trace, alternator, t);
        let at_s = trace.passes(until_s, alternator, node, limit.limit_c);
        if let Some(at_s) = at_s
            && first.is_none_or(|(_, earlier_s)| at_s < earlier_s)
        {
            first = Some((*limit, at_s));
        }
    }
    first
}
