//! The current cap of an alternator: what it holds hot and a margin.

use crate::boat::{Alternator, Inputs, RegulatorKind};
use crate::simulation::alone::{settled_alone, unbound};
use crate::simulation::alternators::Alternators;
use crate::simulation::moment::Output;
use crate::simulation::per_alternator::PerAlternator;
use crate::units::down;

/// What a cap lies above what the alternator holds hot: 10 to 15 % is common
/// practice, so that the cap spares belt and winding while everything is cold
/// and holds nothing back later.
pub(super) const MARGIN: f64 = 1.15;

/// What decides a current cap.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Decided {
    /// The worksheet's own cap.
    Stated,
    /// What it holds hot, and the margin.
    Hot,
    /// Its rating, where that is less or where it never settles.
    Rating,
    /// Its share of what the bank may take.
    Bank,
}

/// What each alternator, the first one first, holds on and on at the charging
/// speed where nothing but its own heat and regulator keeps it back: neither
/// bank nor cap nor DC-DC charger \[A\]; 0 where it never settles.
pub(super) fn holds_hot_a(inputs: &Inputs, load_a: f64) -> PerAlternator<f64> {
    let open = unbound(inputs);
    let hot = settled_alone(&Alternators::of(&open), &open, load_a);
    let held_a = |output: &Output| {
        if hot.stable && output.amperes.is_finite() {
            output.amperes
        } else {
            0.0
        }
    };
    hot.flow.outputs.iter().map(held_a).collect()
}

/// The worksheet's cap; none without one, or where nothing could hold it \[A\].
fn stated_cap_a(inputs: &Inputs) -> Option<f64> {
    inputs
        .reg
        .current_cap_a
        .filter(|_| inputs.reg.kind == RegulatorKind::External)
}

/// What an alternator may send by itself \[A\], and why: the worksheet's cap,
/// else what it holds hot and a margin; never more than its rating. A built-in
/// regulator knows no cap: its rating.
pub(super) fn own_a(inputs: &Inputs, alternator: &Alternator, hot_a: f64) -> (f64, Decided) {
    let (wanted_a, decided) = match stated_cap_a(inputs) {
        Some(cap_a) => (cap_a, Decided::Stated),
        None if inputs.reg.kind == RegulatorKind::External && hot_a >= 1.0 => {
            (MARGIN * hot_a, Decided::Hot)
        }
        None => (alternator.rated_a, Decided::Rating),
    };
    if wanted_a < alternator.rated_a {
        (wanted_a, decided)
    } else {
        (alternator.rated_a, Decided::Rating)
    }
}

/// The current cap of an alternator \[A\], whole amperes from 10 A: the least of
/// what it may send by itself and its share of what the bank may take. `share`
/// is 1 and the bank's limit endless for one that charges the start battery.
pub(super) fn cap(
    inputs: &Inputs,
    alternator: &Alternator,
    hot_a: f64,
    share: f64,
    bank_limit_a: f64,
) -> (f64, Decided) {
    let (own_a, decided) = own_a(inputs, alternator, hot_a);
    let shared_a = (own_a * share).min(bank_limit_a);
    if shared_a < own_a {
        (down(shared_a), Decided::Bank)
    } else {
        (down(own_a), decided)
    }
}
