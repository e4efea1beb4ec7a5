//! Loads that draw for a time from the start of a run.

use crate::boat::{EngineLoad, When, Worksheet, engine_loads};

/// A load that draws from the start of a run until a time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SwitchedLoad {
    /// What it draws from the bank \[A\].
    pub amperes: f64,
    /// When it is switched off, after the start \[s\].
    pub until_s: f64,
}

impl SwitchedLoad {
    /// What it has drawn until a time \[A·h\].
    pub(super) fn drawn_ah(&self, seconds: f64) -> f64 {
        self.amperes * self.until_s.min(seconds) / 3600.0
    }
}

impl From<&EngineLoad> for SwitchedLoad {
    fn from(load: &EngineLoad) -> SwitchedLoad {
        SwitchedLoad {
            amperes: load.amperes,
            until_s: 3600.0 * load.hours,
        }
    }
}

/// The loads of a worksheet that run with the engine at anchor.
pub fn anchor_loads(sheet: &Worksheet) -> Vec<SwitchedLoad> {
    let all = engine_loads(sheet);
    let at_anchor = all.iter().filter(|load| load.when != When::UnderWay);
    at_anchor.map(SwitchedLoad::from).collect()
}
