//! What happens when the bank disconnects under load, in a few words for the
//! comparison. Uses the load dump of the report.

use serde::Serialize;

use crate::analysis::load_dump::{DumpReport, Exposure};
use crate::boat::Worksheet;
use crate::report::Report;

/// What happens when the bank disconnects under load.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum Disconnect {
    /// Nothing: a battery stays on the alternator.
    BatteryStays,
    /// Nothing: no alternator charges, or none that may be connected.
    NothingCharges,
    /// The electronics withstand what is left.
    Withstood {
        /// Voltage left for a moment \[V\].
        left_v: f64,
        /// What the electronics withstand \[V\].
        withstand_v: f64,
    },
    /// The protection that is entered leaves too much.
    TooMuchLeft {
        /// Voltage left for a moment \[V\].
        left_v: f64,
        /// What the electronics withstand \[V\].
        withstand_v: f64,
    },
    /// No protection is entered, and there would be too much.
    NoProtection {
        /// Voltage for a moment \[V\].
        left_v: f64,
    },
}

impl Disconnect {
    /// Whether it leaves more volts than the electronics withstand.
    pub const fn exposes(&self) -> bool {
        matches!(
            self,
            Disconnect::TooMuchLeft { .. } | Disconnect::NoProtection { .. }
        )
    }
}

/// What happens when the bank disconnects under load, at the alternator where
/// that is worst.
pub(super) fn disconnect(with: &Worksheet, report: &Report) -> Disconnect {
    let all = &report.analyses.load_dump;
    let left_v = |dump: &DumpReport| dump.bank_left_v().unwrap_or(0.0);
    let mut installed = with.inputs.alternators();
    if !with.inputs.engine_charges() || !installed.any(|one| one.fits()) {
        return Disconnect::NothingCharges;
    }
    let worst = all
        .alternators
        .iter()
        .filter(|dump| dump.exposure == Exposure::Bank)
        .reduce(|one, other| {
            let rank = |dump: &DumpReport| (dump.too_much(left_v(dump)), left_v(dump));
            if rank(other) > rank(one) { other } else { one }
        });
    let Some(worst) = worst else {
        return Disconnect::BatteryStays;
    };
    let (left_v, withstand_v) = (left_v(worst), worst.bear_v);
    match (worst.too_much(left_v), worst.defended()) {
        (false, _) => Disconnect::Withstood {
            left_v,
            withstand_v,
        },
        (true, true) => Disconnect::TooMuchLeft {
            left_v,
            withstand_v,
        },
        (true, false) => Disconnect::NoProtection { left_v },
    }
}
