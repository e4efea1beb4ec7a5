//! One run, before a cable is chosen for it.

use crate::analysis::cable::{Carries, RunCode, RunEnd, RunNote};

/// Nothing is calculated for less than this \[A\].
pub(super) const LEAST_A: f64 = 1.0;

/// One run, before a cable is chosen.
pub(super) struct Lead {
    pub code: RunCode,
    pub from: RunEnd,
    pub to: RunEnd,
    pub amperes: f64,
    pub carries: Carries,
    pub length_m: f64,
    pub engine_space: bool,
    pub allowed_v: f64,
    /// 12 V blocks of the system it belongs to.
    pub blocks: f64,
    /// Highest voltage it works at.
    pub volts: f64,
    /// Whether the house bank feeds a short in it; the start battery otherwise.
    pub on_house: bool,
    pub from_alternator: bool,
    pub notes: Vec<RunNote>,
}
