//! Whether the alternator survives, in one answer.

use crate::analysis::Analyses;
use serde::Serialize;

use crate::analysis::{NEAR_K, Part, PartLimit, first_passed, leg_limits, nearest, part_limits};
use crate::boat::{Inputs, WhichAlternator};
use crate::simulation::Limit;
use crate::simulation::management::OpeningCause;

/// Whether the alternator survives. Temperatures are in °C.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", content = "quantities", rename_all = "snake_case")]
pub enum Verdict {
    /// The engine is not run for charging.
    NotRun,
    /// The bank gets nothing in this run.
    NotCharged,
    /// The bank's electrolyte is frozen where the run begins: it takes no charge.
    BankFrozen,
    /// An alternator is of another voltage than the battery its cable leads to.
    WrongVoltage {
        /// Which alternator.
        alternator: WhichAlternator,
    },
    /// The battery management system disconnects the bank in this run.
    BatteryDisconnects {
        /// Why.
        cause: OpeningCause,
        /// When, after the start \[s\].
        after_s: f64,
        /// Whether an alternator loses its load by that.
        load_lost: bool,
        /// Whether the field is off before anything opens.
        field_off_first: bool,
    },
    /// A part passes its limit.
    Overheats {
        /// Which alternator.
        alternator: WhichAlternator,
        /// The part that passes its limit first.
        part: Part,
        /// When it does, in the run; none when only a longer run would \[min\].
        after_min: Option<f64>,
        /// How hot it gets.
        celsius: f64,
        /// Whether that is the most it may be, as nobody has measured it.
        at_most: bool,
        /// What it withstands for long.
        limit_c: f64,
    },
    /// The battery management system disconnects the bank in a leg of the day.
    DisconnectsInLeg {
        /// The leg's number, from 1.
        leg: usize,
        /// Why.
        cause: OpeningCause,
        /// When, after the leg began \[s\].
        after_s: f64,
        /// Whether an alternator loses its load by that.
        load_lost: bool,
    },
    /// A part passes its limit in a leg of the day, and not in the charging run.
    OverheatsInLeg {
        /// The leg's number, from 1: the one in which it gets hottest.
        leg: usize,
        /// Which alternator.
        alternator: WhichAlternator,
        /// Which part.
        part: Part,
        /// How hot it gets.
        celsius: f64,
        /// Whether that is the most it may be, as nobody has measured it.
        at_most: bool,
        /// What it withstands for long.
        limit_c: f64,
    },
    /// Each degree makes more loss than it carries away.
    NeverSettles,
    /// The rectifier passes its limit after the engine has stopped.
    HotAfterStop {
        /// Which alternator's.
        alternator: WhichAlternator,
        /// How hot it gets.
        celsius: f64,
        /// What it withstands for long.
        limit_c: f64,
    },
    /// A part comes within 5 K of its limit.
    RunsHot {
        /// Which alternator.
        alternator: WhichAlternator,
        /// The part that comes nearest.
        part: Part,
        /// How hot it gets.
        celsius: f64,
        /// Whether that is the most it may be, as nobody has measured it.
        at_most: bool,
        /// What it withstands for long.
        limit_c: f64,
    },
    /// The regulator holds the temperature.
    HeldByRegulator,
    /// All parts stay within their limits of themselves.
    Survives,
}

/// The verdict on a run that was stepped through.
pub(crate) fn verdict(inputs: &Inputs, report: &Analyses) -> Verdict {
    let run = &report.run;
    if !inputs.engine_charges() {
        return Verdict::NotRun;
    }
    if let Some(wrong) = inputs.alternators().find(|installed| !installed.fits()) {
        return Verdict::WrongVoltage {
            alternator: wrong.which,
        };
    }
    if let Some(opening) = run.opening {
        return Verdict::BatteryDisconnects {
            cause: opening.cause,
            after_s: opening.after_s,
            load_lost: inputs.on_house() && !inputs.field_off_first(),
            field_off_first: inputs.field_off_first(),
        };
    }
    if let Some(disconnects) = disconnects_in_leg(inputs, report) {
        return disconnects;
    }
    if run.bank_frozen {
        return Verdict::BankFrozen;
    }
    if run.series.iter().all(|moment| moment.bank_a <= 0.0) {
        return Verdict::NotCharged;
    }
    let limits = part_limits(inputs, report);
    if let Some((limit, after_s)) = first_passed(&limits, &report.trace, 60.0 * run.minutes) {
        return overheats(&limit, Some(after_s / 60.0));
    }
    if let Some(overheats) = overheats_in_leg(inputs, report) {
        return overheats;
    }
    if !report.hot.stable {
        return Verdict::NeverSettles;
    }
    let nearest = nearest(&limits);
    if let Some(limit) = nearest.filter(|limit| limit.margin_k() < 0.0) {
        return overheats(&limit, None);
    }
    if let Some(hot) = hot_after_stop(inputs, report) {
        return Verdict::HotAfterStop {
            alternator: hot.alternator,
            celsius: hot.celsius,
            limit_c: hot.limit_c,
        };
    }
    if let Some(limit) = nearest.filter(|limit| limit.margin_k() < NEAR_K) {
        return Verdict::RunsHot {
            alternator: limit.alternator,
            part: limit.part,
            celsius: limit.hottest_c(),
            at_most: limit.at_most,
            limit_c: limit.limit_c,
        };
    }
    let held = report.output.hot_limit == Limit::Temperature
        || run
            .limit_shares
            .iter()
            .any(|s| s.limit == Limit::Temperature);
    if held {
        Verdict::HeldByRegulator
    } else {
        Verdict::Survives
    }
}

/// The first leg of the day in which the bank disconnects.
fn disconnects_in_leg(inputs: &Inputs, report: &Analyses) -> Option<Verdict> {
    let mut legs = report.legs.iter().flat_map(|legs| &legs.legs).enumerate();
    legs.find_map(|(at, leg)| {
        let opening = leg.opening?;
        Some(Verdict::DisconnectsInLeg {
            leg: at + 1,
            cause: opening.cause,
            after_s: opening.after_s,
            load_lost: inputs.on_house(),
        })
    })
}

/// The part that passes its limit most in a leg of the day.
fn overheats_in_leg(inputs: &Inputs, report: &Analyses) -> Option<Verdict> {
    let legs = leg_limits(inputs, report);
    let worst = legs
        .into_iter()
        .filter(|hottest| hottest.limit.passed())
        .min_by(|one, other| one.limit.margin_k().total_cmp(&other.limit.margin_k()))?;
    Some(Verdict::OverheatsInLeg {
        leg: worst.leg + 1,
        alternator: worst.limit.alternator,
        part: worst.limit.part,
        celsius: worst.limit.peak_c,
        at_most: worst.limit.at_most,
        limit_c: worst.limit.limit_c,
    })
}

fn overheats(limit: &PartLimit, after_min: Option<f64>) -> Verdict {
    Verdict::Overheats {
        alternator: limit.alternator,
        part: limit.part,
        after_min,
        celsius: limit.hottest_c(),
        at_most: limit.at_most,
        limit_c: limit.limit_c,
    }
}

/// A rectifier that passes its limit only after the engine has stopped.
pub(super) struct HotAfterStop {
    pub(super) alternator: WhichAlternator,
    /// How hot it gets \[°C\].
    pub(super) celsius: f64,
    /// What it withstands for long \[°C\].
    pub(super) limit_c: f64,
}

/// The first alternator whose rectifier passes its limit only after the engine
/// has stopped.
pub(super) fn hot_after_stop(inputs: &Inputs, report: &Analyses) -> Option<HotAfterStop> {
    let each = inputs.alternators().zip(&report.run.alternators);
    each.filter_map(|(installed, run)| {
        let (ran_c, celsius) = (run.peak.rectifier_c, run.soak_peak.rectifier_c);
        let limit_c = Part::Rectifier.limit_c(installed.alternator);
        (celsius > limit_c && celsius > ran_c + 2.0).then_some(HotAfterStop {
            alternator: installed.which,
            celsius,
            limit_c,
        })
    })
    .next()
}

impl Verdict {
    /// Whether the alternator takes no harm.
    pub fn survives(&self) -> bool {
        !matches!(
            self,
            Verdict::WrongVoltage { .. }
                | Verdict::BatteryDisconnects { .. }
                | Verdict::Overheats { .. }
                | Verdict::DisconnectsInLeg { .. }
                | Verdict::OverheatsInLeg { .. }
                | Verdict::NeverSettles
                | Verdict::HotAfterStop { .. }
        )
    }
}
