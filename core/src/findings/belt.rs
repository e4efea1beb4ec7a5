//! What belts carry and what they pull at.

use serde::Serialize;

use crate::analysis::Analyses;
use crate::analysis::belt::{BeltReport, USUAL_SIDE_N};
use crate::boat::{Belt, BeltKind, InstalledAlternator, Key, WhichAlternator, Worksheet};
use crate::findings::{Code, Finding, Severity, add};

/// Pulleys and a ratio that differ by more than this share disagree; own reasoning.
const RATIO_DISAGREES: f64 = 0.05;

/// A belt is too weak, does not fit or pulls too hard.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum BeltFinding {
    /// A belt is not entered, and the one most engines have would not do.
    BeltNotSaid {
        /// Which alternator it turns.
        alternator: WhichAlternator,
        /// Most power at the shaft \[W\].
        shaft_w: f64,
        /// Current that goes with it \[A\].
        alternator_a: f64,
        /// Smallest V-belts that carry it; none where none listed does.
        v_belts: Option<BeltKind>,
        /// Smallest multi-rib belt that carries it.
        ribs: Option<BeltKind>,
    },
    /// A belt has to carry more than it can.
    BeltTooSmall {
        /// Which alternator it turns.
        alternator: WhichAlternator,
        /// Which belt it is.
        belt: BeltKind,
        /// Share of what it carries that is used \[%\].
        used_pct: f64,
        /// Most power at the shaft \[W\].
        shaft_w: f64,
        /// Current that goes with it \[A\].
        alternator_a: f64,
        /// Smallest V-belts that carry it; none where none listed does.
        v_belts: Option<BeltKind>,
        /// Smallest multi-rib belt that carries it.
        ribs: Option<BeltKind>,
    },
    /// The pulleys do not fit side by side.
    PulleysOverlap {
        /// Which alternator's.
        alternator: WhichAlternator,
        /// Alternator pulley \[mm\].
        pulley_mm: f64,
        /// Engine pulley \[mm\].
        engine_pulley_mm: f64,
        /// Centre distance \[mm\].
        centres_mm: f64,
    },
    /// Pulleys and pulley ratio disagree.
    RatioDisagrees {
        /// Which alternator's.
        alternator: WhichAlternator,
        /// Alternator pulley \[mm\].
        pulley_mm: f64,
        /// Engine pulley \[mm\].
        engine_pulley_mm: f64,
        /// The ratio they make.
        made_ratio: f64,
        /// The ratio entered.
        entered_ratio: f64,
    },
    /// The belt lies round little of the smaller pulley.
    BeltWrapSmall {
        /// Which alternator it turns.
        alternator: WhichAlternator,
        /// Wrap on the smaller pulley \[°\].
        wrap_deg: f64,
    },
    /// A pulley bends the belt too sharply.
    BeltPulleySmall {
        /// Which belt it is.
        belt: BeltKind,
        /// The smaller pulley \[mm\].
        pulley_mm: f64,
    },
    /// One belt turns the water pump and a large alternator.
    BeltSharedPump {
        /// Most the alternator gives \[A\].
        alternator_a: f64,
        /// What one belt for both is good for \[A\].
        shared_a: f64,
    },
    /// The belts pull the crankshaft's end sideways.
    CrankSideLoad {
        /// Whether it is two belts together.
        both: bool,
        /// With so much \[N\].
        side_n: f64,
    },
}

impl BeltFinding {
    pub(super) const fn severity(&self) -> Severity {
        match self {
            BeltFinding::BeltTooSmall { .. }
            | BeltFinding::PulleysOverlap { .. }
            | BeltFinding::RatioDisagrees { .. }
            | BeltFinding::BeltSharedPump { .. } => Severity::Fix,
            BeltFinding::BeltNotSaid { .. }
            | BeltFinding::BeltWrapSmall { .. }
            | BeltFinding::BeltPulleySmall { .. }
            | BeltFinding::CrankSideLoad { .. } => Severity::Note,
        }
    }

    /// The input that it asks for.
    pub(super) const fn asks_for(&self) -> Option<Key> {
        match self {
            BeltFinding::BeltNotSaid { alternator, .. } => Some(alternator.belt_key(Belt::kind)),
            _ => None,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            BeltFinding::BeltNotSaid { .. } => Code::BeltNotSaid,
            BeltFinding::BeltTooSmall { .. } => Code::BeltTooSmall,
            BeltFinding::PulleysOverlap { .. } => Code::PulleysOverlap,
            BeltFinding::RatioDisagrees { .. } => Code::RatioDisagrees,
            BeltFinding::BeltWrapSmall { .. } => Code::BeltWrapSmall,
            BeltFinding::BeltPulleySmall { .. } => Code::BeltPulleySmall,
            BeltFinding::BeltSharedPump { .. } => Code::BeltSharedPump,
            BeltFinding::CrankSideLoad { .. } => Code::CrankSideLoad,
        }
    }
}

/// What belts carry and what they pull at.
pub(super) fn belt_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let belts = &report.belts;
    // Said once, of the first that is not entered.
    let not_entered = |belt: &&BeltReport| belt.belt.is_none() && !carried_by_one(belt);
    if let Some(belt) = belts.iter().find(not_entered) {
        add(
            found,
            BeltFinding::BeltNotSaid {
                alternator: belt.alternator,
                shaft_w: shaft_w(belt),
                alternator_a: alternator_a(belt),
                v_belts: belt.asks_v,
                ribs: belt.asks_ribs,
            },
        );
    }
    for (installed, belt) in sheet.inputs.alternators().zip(belts) {
        of_one(&installed, belt, found);
    }
    let side_n: f64 = belts.iter().filter_map(|belt| belt.side_n).sum();
    if side_n > USUAL_SIDE_N {
        let both = belts.len() > 1;
        add(found, BeltFinding::CrankSideLoad { both, side_n });
    }
}

/// Whether one V-belt of the size most engines have carries it: then which belt
/// it is stays a question and is no finding.
fn carried_by_one(belt: &BeltReport) -> bool {
    [BeltKind::V10, BeltKind::V13]
        .iter()
        .any(|kind| belt.asks_v == Some(*kind))
}

/// Most power at the shaft, at either speed \[W\].
fn shaft_w(belt: &BeltReport) -> f64 {
    belt.charging.shaft_w.max(belt.top.shaft_w)
}

/// Most the alternator gives, at either speed \[A\].
fn alternator_a(belt: &BeltReport) -> f64 {
    belt.charging.amperes.max(belt.top.amperes)
}

/// What there is to say of one belt that is entered.
fn of_one(installed: &InstalledAlternator, report: &BeltReport, found: &mut Vec<Finding>) {
    let (Some(_), Some(worst_pct)) = (report.belt, report.worst_pct) else {
        return;
    };
    let belt = installed.belt.kind;
    let alternator = report.alternator;
    let (pulley_mm, engine_pulley_mm) = (installed.belt.pulley_mm, report.engine_pulley_mm);
    let alternator_a = alternator_a(report);
    if worst_pct > 100.0 {
        add(
            found,
            BeltFinding::BeltTooSmall {
                alternator,
                belt,
                used_pct: worst_pct,
                shaft_w: shaft_w(report),
                alternator_a,
                v_belts: report.asks_v,
                ribs: report.asks_ribs,
            },
        );
    }
    if report.pulleys_overlap {
        add(
            found,
            BeltFinding::PulleysOverlap {
                alternator,
                pulley_mm,
                engine_pulley_mm,
                centres_mm: installed.belt.centres_mm,
            },
        );
    }
    let (made_ratio, entered_ratio) = (
        engine_pulley_mm / pulley_mm,
        installed.alternator.pulley_ratio,
    );
    if (made_ratio / entered_ratio - 1.0).abs() > RATIO_DISAGREES {
        add(
            found,
            BeltFinding::RatioDisagrees {
                alternator,
                pulley_mm,
                engine_pulley_mm,
                made_ratio,
                entered_ratio,
            },
        );
    }
    if report.wrap_too_small {
        let wrap_deg = report.wrap_deg;
        add(
            found,
            BeltFinding::BeltWrapSmall {
                alternator,
                wrap_deg,
            },
        );
    }
    if report.pulley_too_small {
        let pulley_mm = pulley_mm.min(engine_pulley_mm);
        add(found, BeltFinding::BeltPulleySmall { belt, pulley_mm });
    }
    if let Some(shared_a) = report.shared_with_pump_a
        && alternator_a > shared_a
    {
        add(
            found,
            BeltFinding::BeltSharedPump {
                alternator_a,
                shared_a,
            },
        );
    }
}
