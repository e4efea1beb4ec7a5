//! Belts: R. G. Budynas, J. K. Nisbett, "Shigley's Mechanical Engineering
//! Design", chapter on flexible elements (from memory): the table of the
//! angle-of-contact factor K₁ with the wraps beside it, and 0.5123, the
//! friction of V-belts with the wedge in it, which several open tables repeat.

use std::f64::consts::PI;

use ampwright_core::physics::belt::{grip, wrap_factor, wrap_rad};

use crate::near;

/// (D − d)/C, wrap \[°\], K₁ of V-belts. The row 0.20 is left out: its 166.5°
/// does not follow from the table's own formula, which gives 168.5°.
const SHIGLEY: &[(f64, f64, f64)] = &[
    (0.00, 180.0, 1.00),
    (0.10, 174.3, 0.99),
    (0.30, 162.7, 0.96),
    (0.40, 156.9, 0.94),
    (0.50, 151.0, 0.93),
    (0.60, 145.1, 0.91),
    (0.70, 139.0, 0.89),
    (0.80, 132.8, 0.87),
    (0.90, 126.5, 0.85),
    (1.00, 120.0, 0.82),
    (1.10, 113.3, 0.80),
    (1.20, 106.3, 0.77),
    (1.30, 98.9, 0.74),
    (1.40, 91.1, 0.70),
];

#[test]
fn wrap_of_two_pulleys() {
    for (part, wrap_deg, _) in SHIGLEY {
        let ours = wrap_rad(100.0 + 300.0 * part, 100.0, 300.0).to_degrees();
        near("wrap", ours, *wrap_deg, 0.1);
    }
}

#[test]
fn less_wrap_carries_less() {
    // Printed to two places.
    for (_, wrap_deg, factor) in SHIGLEY {
        near("K₁", wrap_factor(*wrap_deg), *factor, 0.0101);
    }
}

#[test]
fn friction_with_the_wedge_in_it() {
    // exp(0.5123·π) is about 5: half a turn. A groove of 180° is no groove.
    near("half a turn", grip(0.5123, 180.0, PI), 5.0, 0.01);
    // The same from a friction of 0.1583 in a groove of 36°: 0.5123·sin 18°.
    near("36°", grip(0.1583, 36.0, PI), 5.0, 0.01);
}
