//! What is asked once because the answer would tell more: not a warning, and
//! nothing to put right.

use serde::Serialize;

use crate::analysis::Analyses;
use crate::analysis::belt::BeltReport;
use crate::boat::{Belt, BeltKind, Key, WhichAlternator};
use crate::findings::Finding;

/// A question that nobody has answered yet.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum OpenQuestion {
    /// Which belt turns an alternator.
    Belt {
        /// Which alternator it turns.
        alternator: WhichAlternator,
        /// Most power the shaft takes, at the charging speed or the engine's highest \[W\].
        shaft_w: f64,
        /// Current that goes with it \[A\].
        amperes: f64,
        /// Smallest V-belts that carry it; none where none listed does.
        v_belts: Option<BeltKind>,
        /// Smallest multi-rib belt that carries it.
        ribs: Option<BeltKind>,
    },
}

impl OpenQuestion {
    /// Its name, the same for ever.
    pub const fn code(&self) -> &'static str {
        match self {
            OpenQuestion::Belt { .. } => "belt",
        }
    }

    /// The input that answers it.
    pub const fn input(&self) -> Key {
        match self {
            OpenQuestion::Belt { alternator, .. } => alternator.belt_key(Belt::kind),
        }
    }
}

/// The question about a belt that is not said; none once it is.
fn about_belt(belt: &BeltReport) -> Option<OpenQuestion> {
    if belt.belt.is_some() {
        return None;
    }
    let (now, top) = (&belt.charging, &belt.top);
    Some(OpenQuestion::Belt {
        alternator: belt.alternator,
        shaft_w: now.shaft_w.max(top.shaft_w),
        amperes: now.amperes.max(top.amperes),
        v_belts: belt.asks_v,
        ribs: belt.asks_ribs,
    })
}

/// Everything still to be asked. What a finding asks for already is not asked
/// twice.
pub(crate) fn open_questions(report: &Analyses, found: &[Finding]) -> Vec<OpenQuestion> {
    let asked: Vec<Key> = found.iter().filter_map(Finding::asks_for).collect();
    let questions = report.belts.iter().filter_map(about_belt);
    questions
        .filter(|question| !asked.contains(&question.input()))
        .collect()
}
