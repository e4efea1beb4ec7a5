//! What the legs of the day do that the charging run alone does not.

use serde::Serialize;

use crate::analysis::{
    Analyses, LegLimit, NEAR_K, Part, PartLimit, leg_limits, nearest, part_limits,
};
use crate::boat::{WhichAlternator, Worksheet};
use crate::findings::heat::{HeatRemedy, remedy};
use crate::findings::{Code, Finding, Severity, add};
use crate::simulation::management::OpeningCause;

/// A part this far beyond its limit is in danger \[K\]. Own reasoning, as for the
/// charging run.
const FAR_BEYOND_K: f64 = 10.0;
/// A leg this little hotter than the charging run is not told again \[K\].
const HARDLY_K: f64 = 1.0;
/// Less than this that an empty bank could not give is none \[A·h\].
const SHORT_AH: f64 = 0.5;

/// Which leg of the day.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LegName {
    /// Its number, from 1.
    pub number: usize,
    /// What it is called; empty where it has no name.
    pub name: String,
}

/// A part of an alternator in the leg in which it gets hottest.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct HotLeg {
    /// Which leg.
    pub leg: LegName,
    /// Which alternator's.
    pub alternator: WhichAlternator,
    /// Which part.
    pub part: Part,
    /// As warm as it is when the leg begins \[°C\].
    pub start_c: f64,
    /// How hot it gets \[°C\].
    pub peak_c: f64,
    /// Whether that is the most it may be, as nobody has measured it.
    pub at_most: bool,
    /// What it withstands for long \[°C\].
    pub limit_c: f64,
    /// What to do; said once for each alternator, with its worst part.
    pub remedy: Option<HeatRemedy>,
}

/// Something is wrong with a leg of the day.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum LegFinding {
    /// A part passes its limit.
    #[serde(rename = "leg_too_hot")]
    TooHot(HotLeg),
    /// A part comes near its limit without passing it.
    #[serde(rename = "leg_near_limit")]
    NearLimit(HotLeg),
    /// The battery management system disconnects the bank.
    #[serde(rename = "leg_disconnects")]
    Disconnects {
        /// Which leg.
        leg: LegName,
        /// Why.
        cause: OpeningCause,
        /// When, after the leg began \[s\].
        after_s: f64,
        /// Whether an alternator loses its load by that.
        load_lost: bool,
    },
    /// The bank does not come to its target.
    #[serde(rename = "leg_target_not_reached")]
    TargetNotReached {
        /// Which leg.
        leg: LegName,
        /// The target \[%\].
        target_pct: f64,
        /// How far it comes \[%\].
        end_pct: f64,
        /// How long the engine runs for that \[min\].
        minutes: f64,
    },
    /// The bank runs empty in the pause before the leg.
    #[serde(rename = "leg_bank_emptied")]
    BankEmptied {
        /// Which leg.
        leg: LegName,
        /// The engine is off before it \[h\].
        pause_h: f64,
        /// What the bank could not give \[A·h\].
        short_ah: f64,
    },
    /// The engine turns faster than its highest speed.
    #[serde(rename = "leg_faster_than_top")]
    FasterThanTop {
        /// Which leg.
        leg: LegName,
        /// Speed in the leg \[rpm\].
        engine_rpm: f64,
        /// Highest speed \[rpm\].
        top_rpm: f64,
    },
}

impl LegFinding {
    pub(super) fn severity(&self) -> Severity {
        match self {
            LegFinding::TooHot(hot) if hot.peak_c > hot.limit_c + FAR_BEYOND_K && !hot.at_most => {
                Severity::Danger
            }
            LegFinding::Disconnects { .. } => Severity::Danger,
            _ => Severity::Fix,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            LegFinding::TooHot(_) => Code::LegTooHot,
            LegFinding::NearLimit(_) => Code::LegNearLimit,
            LegFinding::Disconnects { .. } => Code::LegDisconnects,
            LegFinding::TargetNotReached { .. } => Code::LegTargetNotReached,
            LegFinding::BankEmptied { .. } => Code::LegBankEmptied,
            LegFinding::FasterThanTop { .. } => Code::LegFasterThanTop,
        }
    }
}

/// What is wrong with the legs of the day, if any are listed. What the charging
/// run has in the same measure is told of that run.
pub(super) fn leg_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    hot_legs(sheet, report, found);
    let Some(legs) = &report.legs else { return };
    let inputs = &sheet.inputs;
    for (at, leg) in legs.legs.iter().enumerate() {
        let named = || LegName {
            number: at + 1,
            name: leg.name.clone(),
        };
        if let Some(opening) = leg.opening
            && report
                .run
                .opening
                .is_none_or(|run| run.cause != opening.cause)
        {
            let disconnects = LegFinding::Disconnects {
                leg: named(),
                cause: opening.cause,
                after_s: opening.after_s,
                load_lost: inputs.on_house(),
            };
            add(found, disconnects);
        }
        let fails = leg.reaches_target == Some(false) && leg.opening.is_none();
        if fails && report.run.minutes_to_target.is_some() {
            let not_reached = LegFinding::TargetNotReached {
                leg: named(),
                target_pct: inputs.run.to_pct,
                end_pct: leg.to_pct.max(0.0),
                minutes: leg.minutes,
            };
            add(found, not_reached);
        }
        if leg.short_ah > SHORT_AH {
            let emptied = LegFinding::BankEmptied {
                leg: named(),
                pause_h: leg.pause_h,
                short_ah: leg.short_ah,
            };
            add(found, emptied);
        }
        if leg.rpm > inputs.eng.top_rpm {
            let fast = LegFinding::FasterThanTop {
                leg: named(),
                engine_rpm: leg.rpm,
                top_rpm: inputs.eng.top_rpm,
            };
            add(found, fast);
        }
    }
}

/// Parts that pass a limit in a leg, or come near one.
fn hot_legs(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let run = part_limits(inputs, report);
    let legs = leg_limits(inputs, report);
    let is_worst = |hottest: &LegLimit| {
        let own = legs
            .iter()
            .filter(|one| one.limit.alternator == hottest.limit.alternator);
        let own: Vec<PartLimit> = own.map(|one| one.limit).collect();
        nearest(&own) == Some(hottest.limit)
    };
    let hot = |hottest: &LegLimit| HotLeg {
        leg: LegName {
            number: hottest.leg + 1,
            name: sheet
                .legs
                .get(hottest.leg)
                .map_or(String::new(), |leg| leg.name.clone()),
        },
        alternator: hottest.limit.alternator,
        part: hottest.limit.part,
        start_c: hottest.start_c,
        peak_c: hottest.limit.peak_c,
        at_most: hottest.limit.at_most,
        limit_c: hottest.limit.limit_c,
        remedy: is_worst(hottest).then(|| remedy(inputs, &hottest.limit)),
    };
    for hottest in legs.iter().filter(|one| one.limit.passed()) {
        let limit = &hottest.limit;
        let told = run.iter().any(|of_run| {
            (of_run.alternator, of_run.part) == (limit.alternator, limit.part)
                && of_run.passed()
                && limit.peak_c < of_run.peak_c + HARDLY_K
        });
        if !told {
            add(found, LegFinding::TooHot(hot(hottest)));
        }
    }
    let margin_k = |limits: &[_]| nearest(limits).map_or(f64::INFINITY, |one| one.margin_k());
    let nearest_leg = legs
        .iter()
        .min_by(|one, other| one.limit.margin_k().total_cmp(&other.limit.margin_k()));
    if let Some(hottest) = nearest_leg
        && (0.0..NEAR_K).contains(&hottest.limit.margin_k())
        && margin_k(&run) >= NEAR_K
    {
        add(found, LegFinding::NearLimit(hot(hottest)));
    }
}
