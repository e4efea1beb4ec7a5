//! A generator with a mains charger, and larger mains chargers.

use crate::boat::{Inputs, Rest};

/// Usual sizes of mains chargers for a bank of 12 V \[A\], the largest first; at
/// 24 V half, at 48 V a quarter of them: common practice, no source.
const SIZES_A: [f64; 6] = [150.0, 120.0, 100.0, 80.0, 60.0, 40.0];
/// So many sizes are tried.
const TRIED: usize = 3;
/// A larger charger gives at least so many times as much.
const LARGER: f64 = 1.2;

/// Usual sizes of mains chargers that the bank may take, the largest first \[A\].
pub(crate) fn usual_chargers_a(inputs: &Inputs) -> Vec<f64> {
    let limit_a = inputs.setting_limit_a();
    let blocks = inputs.bank.nominal_v.blocks();
    let sizes = SIZES_A.iter().map(|size_a| size_a / blocks);
    sizes
        .filter(|size_a| *size_a <= limit_a)
        .take(TRIED)
        .collect()
}

/// Those of them that are clearly larger than the one that charges the bank now;
/// none where no mains charger does.
pub(crate) fn larger_chargers_a(inputs: &Inputs) -> Vec<f64> {
    let now_a = match inputs.shore.rest {
        Rest::Engine => return Vec::new(),
        Rest::Shore => inputs.shore.charger_a,
        Rest::Generator => inputs.generator_charger_a(),
    };
    let mut sizes = usual_chargers_a(inputs);
    // On a generator that somebody has stated no larger one than it drives.
    let drives = |size_a: &f64| {
        inputs
            .genset
            .kw
            .is_none_or(|kw| inputs.mains_charger_kw(*size_a) <= kw)
            || !inputs.generator_charges()
    };
    sizes.retain(|size_a| *size_a >= LARGER * now_a && drives(size_a));
    sizes
}

/// A generator charges the bank, through a mains charger of so many amperes.
pub(crate) fn put_on_generator(with: &mut Inputs, charger_a: f64) {
    with.shore.rest = Rest::Generator;
    set_mains_charger(with, charger_a);
}

/// A mains charger of so many amperes, on the mains that charge the bank.
pub(crate) fn set_mains_charger(with: &mut Inputs, charger_a: f64) {
    if with.generator_charges() {
        with.genset.charger_a = Some(charger_a);
    } else {
        with.shore.charger_a = charger_a;
    }
}
