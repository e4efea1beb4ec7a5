//! Steps on the way to a moment's losses.

use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::field::rotor;
use crate::explain::figures::flow::own_amperes;
use crate::explain::figures::rating::{PHASE_20C_OHM, RATED_LOSS_W};
use crate::explain::figures::step::Step;
use crate::explain::instant::{Instant, Part};
use crate::explain::term::Term;
use crate::physics::loss_terms as losses;
use crate::physics::sources::LOSSES;

/// Winding loss.
pub(super) const fn copper_w(id: &'static str) -> Figure {
    Figure::new(id, "Winding loss", "W", 0, explain_copper).is(|s| s.settled(s.losses.copper_w))
}

fn explain_copper(s: &Instant) -> Explanation {
    let at_20c = [s.figure(&PHASE_20C_OHM), own_amperes(s)];
    let given = [
        Term::of(losses::copper_20c_w::FORMULA, at_20c),
        s.temperature(Part::Winding),
    ];
    Explanation::of(Term::of(losses::copper_w::FORMULA, given))
}

/// Diode loss.
pub(super) const fn diode_w(id: &'static str) -> Figure {
    Figure::new(id, "Diode loss", "W", 0, explain_diodes).is(|s| s.settled(s.losses.diode_w))
}

fn explain_diodes(s: &Instant) -> Explanation {
    let given = [s.input(key!(alt.diode_v)), own_amperes(s)];
    Explanation::of(Term::of(losses::diode_w::FORMULA, given))
        .note("Two diodes are always in the way.")
}

/// Field loss.
pub(super) const fn field_w(id: &'static str) -> Figure {
    Figure::new(id, "Field loss", "W", 0, explain_field).is(|s| s.settled(s.losses.field_w))
}

fn explain_field(s: &Instant) -> Explanation {
    let at_20c = [
        s.input(key!(alt.field_w)),
        s.input(key!(alt.plate_rotor_c)),
        s.step(Step::FluxSquare),
        s.input(key!(alt.field_exponent)),
    ];
    let given = [Term::of(losses::field_20c_w::FORMULA, at_20c), rotor(s)];
    Explanation::of(Term::of(losses::field_w::FORMULA, given))
        .note("The field follows the flux backwards through saturation.")
}

/// Iron loss.
pub(super) const fn iron_w(id: &'static str) -> Figure {
    Figure::new(id, "Iron loss", "W", 0, explain_iron).is(|s| s.settled(s.losses.iron_w))
}

fn explain_iron(s: &Instant) -> Explanation {
    let given = [
        s.input(key!(alt.iron_share_pct)),
        s.figure(&RATED_LOSS_W),
        s.shaft_rpm(),
        s.step(Step::FluxSquare),
    ];
    Explanation::of(Term::of(losses::iron_w::FORMULA, given))
}

/// Fan and bearing loss.
pub(super) const fn fan_w(id: &'static str) -> Figure {
    Figure::new(id, "Fan and bearing loss", "W", 0, explain_fan).is(|s| s.settled(s.losses.fan_w))
}

fn explain_fan(s: &Instant) -> Explanation {
    let given = [
        s.input(key!(alt.fan_share_pct)),
        s.figure(&RATED_LOSS_W),
        s.shaft_rpm(),
        s.input(key!(alt.fan_exponent)),
    ];
    Explanation::of(Term::of(losses::fan_w::FORMULA, given))
}

/// Lost in the alternator.
pub(super) const fn losses_w(id: &'static str) -> Figure {
    Figure::new(id, "Lost in the alternator", "W", 0, explain_lost)
        .source(LOSSES)
        .is(|s| s.settled(s.losses.total_w()))
}

fn explain_lost(s: &Instant) -> Explanation {
    let given = [
        s.step(Step::CopperW),
        s.step(Step::DiodeW),
        s.step(Step::FieldW),
        s.step(Step::IronW),
        s.step(Step::FanW),
    ];
    Explanation::of(Term::of(losses::total_w::FORMULA, given))
        .note("Heat that comes about in the alternator.")
}
