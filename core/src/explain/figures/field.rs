//! Steps on the way to a current: the field that the regulator lets up, and
//! what the alternator gives with it.

use crate::boat::{SensorPlace, key};
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::curve::{INFINITE_A, ZERO_RPM};
use crate::explain::figures::flow::own_amperes;
use crate::explain::figures::step::Step;
use crate::explain::instant::{Instant, Part, When};
use crate::explain::term::{Term, described};
use crate::physics::full_field::{
    flux_square as flux, full_field_a, relative_field, voltage_behind,
};
use crate::physics::heat_balance::rotor_c;
use crate::physics::regulator::{allowed_a, folded, soft_start};
use crate::physics::sources::{COMMON_PRACTICE, OWN_REASONING};
use crate::simulation::Limit;

/// What the alternator may give then.
pub(super) const fn can_a(id: &'static str) -> Figure {
    Figure::new(id, "What the alternator may give then", "A", 0, explain_can).source(OWN_REASONING)
}

fn explain_can(s: &Instant) -> Explanation {
    let given = [s.step(Step::Allowed), s.step(Step::FullA)];
    let mut all = vec![Term::of(allowed_a::FORMULA, given)];
    if s.boat.first().cap_a.is_finite() {
        all.push(s.input(key!(reg.current_cap_a)).symbol("I_cap"));
    }
    Explanation::of(Term::Least(all))
        .note("What full field gives, as far as the regulator lets it.")
}

/// Full field then.
pub(super) const fn full_a(id: &'static str) -> Figure {
    Figure::new(id, "Full field then", "A", 0, explain_full)
}

/// Voltage behind the diodes over that of the rating.
fn behind(s: &Instant) -> Term {
    let given = [
        s.own_volts(),
        s.input(key!(alt.diode_v)),
        s.input(key!(alt.test_v)),
    ];
    Term::of(voltage_behind::FORMULA, given)
}

fn explain_full(s: &Instant) -> Explanation {
    let given = [
        s.figure(&INFINITE_A),
        s.step(Step::FieldX),
        s.input(key!(alt.field_exponent)),
        s.figure(&ZERO_RPM),
        s.shaft_rpm(),
        behind(s),
        s.input(key!(alt.speed_exponent)),
    ];
    Explanation::of(Term::of(full_field_a::FORMULA, given))
        .note("Full field at that voltage, the rotor as warm as it is then.")
}

/// Temperature of the rotor.
pub(super) fn rotor(s: &Instant) -> Term {
    let given = [s.temperature(Part::Case), s.input(key!(alt.rotor_rise_k))];
    Term::of(rotor_c::FORMULA, given)
}

/// Field then, over that of the rating.
pub(super) const fn field_x(id: &'static str) -> Figure {
    Figure::new(
        id,
        "Field then, over that of the rating",
        "",
        3,
        explain_field_x,
    )
}

fn explain_field_x(s: &Instant) -> Explanation {
    let given = [
        s.own_volts(),
        s.input(key!(alt.test_v)),
        s.input(key!(alt.plate_rotor_c)),
        rotor(s),
    ];
    Explanation::of(Term::of(relative_field::FORMULA, given)).note(
        "A warm rotor resists more and takes less field; 0.00393 for each kelvin is copper's.",
    )
}

/// How far the field may be up then.
pub(super) const fn allowed(id: &'static str) -> Figure {
    Figure::new(
        id,
        "How far the field may be up then",
        "",
        3,
        explain_allowed,
    )
    .source(COMMON_PRACTICE)
    .is(|s| s.settled(allowed_by(s).0))
}

/// How far the field may be up, and why.
fn allowed_by(s: &Instant) -> (f64, Limit) {
    s.boat.first().allowed(s.seconds, s.states[0].sensed_c)
}

fn explain_allowed(s: &Instant) -> Explanation {
    let (term, note) = match allowed_by(s).1 {
        Limit::Temperature => {
            let given = [
                s.input(key!(reg.set_point_c)),
                s.input(key!(reg.fold_band_k)),
                sensed(s),
            ];
            let note = "The regulator lowers the field across its derating range around the temperature limit (common practice).";
            (Term::of(folded::FORMULA, given), note)
        }
        Limit::Ramp => {
            let given = [
                described("Time since the start", "min", s.seconds / 60.0),
                s.input(key!(reg.ramp_min)),
            ];
            let note = "The regulator lets the field up slowly.";
            (Term::of(soft_start::FORMULA, given), note)
        }
        Limit::LowSpeed => {
            let note = "The shaft turns slower than the low-speed cap begins at.";
            (s.input(key!(reg.low_speed_pct)).symbol("u_low"), note)
        }
        Limit::FieldCap => {
            let note = "The regulator never lets the field up any further.";
            (s.input(key!(reg.field_cap_pct)).symbol("u_cap"), note)
        }
        Limit::WrongVoltage => {
            let note =
                "The alternator is of another voltage than its battery and must not be connected.";
            (Term::Number(0.0), note)
        }
        _ => (Term::Number(1.0), "Nothing holds the field back."),
    };
    Explanation::of(term)
        .note(note)
        .inputs(&[key!(reg.kind), key!(reg.sensor)])
}

/// What the sensor feels; settled, it is the temperature of its place.
fn sensed(s: &Instant) -> Term {
    let name = "What the sensor feels then";
    if s.when != When::Hot {
        return described(name, "°C", s.states[0].sensed_c);
    }
    let place = match s.inputs().reg.sensor {
        SensorPlace::Winding => Part::Winding,
        SensorPlace::Rectifier => Part::Rectifier,
        SensorPlace::Case => Part::Case,
    };
    let felt = s.temperature(place).named(name);
    if s.inputs().reg.sensor_low_k > 0.0 {
        felt.less(s.input(key!(reg.sensor_low_k)))
    } else {
        felt
    }
}

/// Square of the flux over that of the rating.
pub(super) const fn flux_square(id: &'static str) -> Figure {
    Figure::new(
        id,
        "Square of the flux over that of the rating",
        "",
        3,
        explain_flux,
    )
}

fn explain_flux(s: &Instant) -> Explanation {
    let given = [
        own_amperes(s),
        s.figure(&INFINITE_A),
        s.figure(&ZERO_RPM),
        s.shaft_rpm(),
        behind(s),
    ];
    Explanation::of(Term::of(flux::FORMULA, given))
        .note("What current and voltage ask of the iron, against the rating.")
}
