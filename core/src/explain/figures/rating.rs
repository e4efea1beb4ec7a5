//! What the alternator's rating and its anchor say: losses and cooling.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::to_body::WINDING_BODY;
use crate::explain::term::Term;
use crate::physics::loss_terms::{phase_20c_ohm, rated_copper_w, rated_loss_w, rest_of_rated_w};
use crate::physics::sources::THERMAL_NETWORK;

pub(super) const FIGURES: &[&Figure] = &[&COOLING_FACTOR, &PHASE_20C_OHM, &RATED_LOSS_W];

pub(super) static COOLING_FACTOR: Figure = Figure::new(
    "alternators.0.cooling_factor",
    "Cooling factor that meets the anchor",
    "",
    3,
    |_| {
        Explanation::none("There is no closed formula: it is searched for until the winding settles at the temperature of the anchor, at full field, at the anchor's speed and in its air; or the case at its current, where both are known.")
            .inputs(&[
                key!(alt.anchor_winding_c),
                key!(alt.anchor_case_c),
                key!(alt.anchor_case_a),
                key!(alt.anchor_rpm),
                key!(alt.anchor_air_c),
                key!(alt.coupling_w_k),
                key!(alt.efficiency_pct),
            ])
            .figures(&[&WINDING_BODY, &PHASE_20C_OHM])
    },
)
.source(THERMAL_NETWORK)
.is(|s| Some(s.report().analyses.alternators[0].cooling_factor));

pub(super) static PHASE_20C_OHM: Figure = Figure::new(
    "alternators.0.phase_20c_ohm",
    "Resistance of one phase at 20 °C",
    "Ω",
    5,
    |s| {
        let loss = s.figure(&RATED_LOSS_W);
        let given = [
            loss.clone(),
            s.input(key!(alt.iron_share_pct)),
            s.input(key!(alt.fan_share_pct)),
            s.input(key!(alt.diode_v)),
            s.input(key!(alt.rated_a)),
            s.input(key!(alt.field_w)),
        ];
        let rest = Term::of(rest_of_rated_w::FORMULA, given);
        let copper = Term::of(rated_copper_w::FORMULA, [rest, loss]);
        let given = [copper, s.input(key!(alt.rated_a))];
        Explanation::of(Term::of(phase_20c_ohm::FORMULA, given))
            .note("What iron, fan, diodes and field leave of the rated loss is the winding's, at 110 °C; a twentieth of it where they leave less.")
    },
)
.is(|s| Some(s.report().analyses.alternators[0].phase_20c_ohm));

pub(super) static RATED_LOSS_W: Figure =
    Figure::new("inner.rated_loss_w", "Loss at the rating", "W", 0, |s| {
        let given = [
            s.input(key!(alt.test_v)),
            s.input(key!(alt.rated_a)),
            s.input(key!(alt.efficiency_pct)),
        ];
        Explanation::of(Term::of(rated_loss_w::FORMULA, given))
            .note("What goes in at the rating and does not come out.")
    });
