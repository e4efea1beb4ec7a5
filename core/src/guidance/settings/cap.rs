//! The current cap of an alternator: what it holds hot and a margin.

use crate::boat::{Alternator, Inputs, RegulatorKind};
use crate::physics::regulator::hot_cap_a;
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
    /// The worksheet's part of what it holds hot.
    OfHot,
    /// What it holds hot, and the margin.
    Hot,
    /// Its rating, where that is less or where it never settles.
    Rating,
    /// Its share of what the bank may take.
    Bank,
}

/// The worksheet's caps; none without one, or where nothing could hold it: that in
/// amperes, and that of what the alternator holds hot \[A\].
fn stated_cap_a(inputs: &Inputs, hot_a: f64) -> Option<(f64, Decided)> {
    let reg = &inputs.reg;
    if reg.kind != RegulatorKind::External {
        return None;
    }
    let stated = reg.current_cap_a.map(|cap_a| (cap_a, Decided::Stated));
    let of_hot = reg.hot_cap_pct.filter(|_| hot_a >= 1.0);
    let of_hot = of_hot.map(|pct| (hot_cap_a(pct / 100.0, hot_a), Decided::OfHot));
    let both = stated.into_iter().chain(of_hot);
    both.reduce(|one, other| if other.0 < one.0 { other } else { one })
}

/// What an alternator may send by itself \[A\], and why: the worksheet's cap,
/// else what it holds hot and a margin; never more than its rating. A built-in
/// regulator knows no cap: its rating.
pub(super) fn own_a(inputs: &Inputs, alternator: &Alternator, hot_a: f64) -> (f64, Decided) {
    let (wanted_a, decided) = match stated_cap_a(inputs, hot_a) {
        Some(stated) => stated,
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
