//! The steps on the way to a moment's currents and losses, each at the moments
//! that have them.

use super::flow::own_amperes;
use super::machine::{INFINITE_A, PHASE_20C_OHM, RATED_LOSS_W, ZERO_RPM};
use super::terms::told;
use crate::charge::Limit;
use crate::charge::plant::Output;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::inputs::{alternator, bank, regulator};
use crate::explain::instant::{Instant, Part, When};
use crate::explain::term::Term;
use crate::physics::battery::{Cells, LeadKind, lfp_cold_factor};
use crate::physics::charging::{bank_ohm, held_a, lead_ohm, lithium_ohm, ohm};
use crate::physics::heat_balance::rotor_c;
use crate::physics::losses::{
    copper_20c_w, copper_w, diode_w, fan_w, field_20c_w, field_w, iron_w, total_w,
};
use crate::physics::output::{flux_square, full_field_a, relative_field, voltage_behind};
use crate::physics::regulator::{allowed_a, folded, soft_start};
use crate::physics::sources::{CELLS, COMMON_PRACTICE, LOSSES, OWN_REASONING};
use crate::worksheet::SensorPlace;

/// A step, by its place in each moment's list.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Step {
    CanA,
    FullA,
    FieldX,
    Allowed,
    VoltA,
    BankOhm,
    FluxSquare,
    CopperW,
    DiodeW,
    FieldW,
    IronW,
    FanW,
    LossesW,
}

/// The steps of one moment; `$at` is its part of their names.
macro_rules! steps {
    ($at:literal, $when:expr) => {{
        const fn of(figure: Figure) -> Figure {
            figure.at($when)
        }
        [
            of(Figure::new(
                concat!("inner.", $at, ".can_a"),
                "What the alternator may give then",
                "A",
                0,
                can_a,
            )
            .source(OWN_REASONING)),
            of(Figure::new(
                concat!("inner.", $at, ".full_a"),
                "Full field then",
                "A",
                0,
                full_a,
            )),
            of(Figure::new(
                concat!("inner.", $at, ".field_x"),
                "Field then, over that of the rating",
                "",
                3,
                field_x,
            )),
            of(Figure::new(
                concat!("inner.", $at, ".allowed"),
                "How far the field may be up then",
                "",
                3,
                allowed,
            )
            .source(COMMON_PRACTICE)
            .is(allowed_share)),
            of(Figure::new(
                concat!("inner.", $at, ".volt_a"),
                "What the held voltage lets flow to bank and house then",
                "A",
                0,
                volt_a,
            )),
            of(Figure::new(
                concat!("inner.", $at, ".bank_ohm"),
                "What the bank resists then",
                "Ω",
                5,
                bank_ohm_of,
            )
            .source(CELLS)
            .is(|s| s.settled(s.boat.plant.bank.resistance_ohm(s.soc)))),
            of(Figure::new(
                concat!("inner.", $at, ".flux_square"),
                "Square of the flux over that of the rating",
                "",
                3,
                flux,
            )),
            of(Figure::new(
                concat!("inner.", $at, ".copper_w"),
                "Winding loss",
                "W",
                0,
                copper,
            )
            .is(|s| s.settled(s.losses.copper_w))),
            of(Figure::new(
                concat!("inner.", $at, ".diode_w"),
                "Diode loss",
                "W",
                0,
                diodes,
            )
            .is(|s| s.settled(s.losses.diode_w))),
            of(Figure::new(
                concat!("inner.", $at, ".field_w"),
                "Field loss",
                "W",
                0,
                field,
            )
            .is(|s| s.settled(s.losses.field_w))),
            of(
                Figure::new(concat!("inner.", $at, ".iron_w"), "Iron loss", "W", 0, iron)
                    .is(|s| s.settled(s.losses.iron_w)),
            ),
            of(Figure::new(
                concat!("inner.", $at, ".fan_w"),
                "Fan and bearing loss",
                "W",
                0,
                fan,
            )
            .is(|s| s.settled(s.losses.fan_w))),
            of(Figure::new(
                concat!("inner.", $at, ".losses_w"),
                "Lost in the alternator",
                "W",
                0,
                lost,
            )
            .source(LOSSES)
            .is(|s| s.settled(s.losses.total_w()))),
        ]
    }};
}

static HOT: [Figure; 13] = steps!("hot", When::Hot);
static START: [Figure; 13] = steps!("start", When::Start);
static MIDDLE: [Figure; 13] = steps!("mid", When::Middle);
static HARDEST: [Figure; 13] = steps!("hardest", When::Hardest);
static MOMENT: [Figure; 13] = steps!("moment", When::Moment);

/// Every step of every moment.
pub(super) fn all() -> impl Iterator<Item = &'static Figure> {
    [&HOT, &START, &MIDDLE, &HARDEST, &MOMENT]
        .into_iter()
        .flatten()
}

/// What the alternator loses when all has settled.
pub(super) static HOT_LOSSES: &Figure = &HOT[Step::LossesW as usize];

/// A step of a moment, and whether that moment has a list of its own.
pub(super) fn figure(when: When, step: Step) -> (&'static Figure, bool) {
    let (list, own) = match when {
        When::Hot => (&HOT, true),
        When::Start => (&START, true),
        When::Middle => (&MIDDLE, true),
        When::Hardest => (&HARDEST, true),
        When::Moment => (&MOMENT, true),
        _ => (&START, false),
    };
    let [first, ..] = list;
    (list.get(step as usize).unwrap_or(first), own)
}

fn can_a(s: &Instant) -> Explanation {
    let given = [s.step(Step::Allowed), s.step(Step::FullA)];
    let mut all = vec![Term::of(allowed_a::FORMULA, given)];
    if s.boat.plant.main.cap_a.is_finite() {
        all.push(s.input(regulator::CURRENT_CAP_A).symbol("I_cap"));
    }
    Explanation::of(Term::Least(all))
        .note("What full field gives, as far as the regulator lets it.")
}

/// Voltage behind the diodes over that of the rating.
fn behind(s: &Instant) -> Term {
    let given = [
        s.own_volts(),
        s.input(alternator::DIODE_V),
        s.input(alternator::TEST_V),
    ];
    Term::of(voltage_behind::FORMULA, given)
}

fn full_a(s: &Instant) -> Explanation {
    let given = [
        s.figure(&INFINITE_A),
        s.step(Step::FieldX),
        s.input(alternator::FIELD_EXPONENT),
        s.figure(&ZERO_RPM),
        s.shaft_rpm(),
        behind(s),
        s.input(alternator::SPEED_EXPONENT),
    ];
    Explanation::of(Term::of(full_field_a::FORMULA, given))
        .note("Full field at that voltage, the rotor as warm as it is then.")
}

fn rotor(s: &Instant) -> Term {
    let given = [s.temperature(Part::Case), s.input(alternator::ROTOR_RISE_K)];
    Term::of(rotor_c::FORMULA, given)
}

fn field_x(s: &Instant) -> Explanation {
    let given = [
        s.own_volts(),
        s.input(alternator::TEST_V),
        s.input(alternator::PLATE_ROTOR_C),
        rotor(s),
    ];
    Explanation::of(Term::of(relative_field::FORMULA, given)).note(
        "A warm rotor resists more and takes less field; 0.00393 for each kelvin is copper's.",
    )
}

/// How far the field may be up, and why.
fn allowed_by(s: &Instant) -> (f64, Limit) {
    let [main, _] = &s.states;
    s.boat.plant.main.allowed(s.seconds, main.sensed_c)
}

fn allowed_share(s: &Instant) -> Option<f64> {
    s.settled(allowed_by(s).0)
}

fn allowed(s: &Instant) -> Explanation {
    let (term, note) = match allowed_by(s).1 {
        Limit::Temperature => {
            let given = [
                s.input(regulator::SET_POINT_C),
                s.input(regulator::FOLD_BAND_K),
                sensed(s),
            ];
            let note =
                "The regulator folds back across its band around the set-point (common practice).";
            (Term::of(folded::FORMULA, given), note)
        }
        Limit::Ramp => {
            let given = [
                told("Time since the start", "min", s.seconds / 60.0),
                s.input(regulator::RAMP_MIN),
            ];
            let note = "The regulator lets the field up slowly.";
            (Term::of(soft_start::FORMULA, given), note)
        }
        Limit::LowSpeed => {
            let note = "The shaft turns slower than the low-speed cap begins at.";
            (s.input(regulator::LOW_SPEED_PCT).symbol("u_low"), note)
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
        .inputs(&[regulator::KIND, regulator::SENSOR])
}

/// What the sensor feels; settled, it is the temperature of its place.
fn sensed(s: &Instant) -> Term {
    let name = "What the sensor feels then";
    let [main, _] = &s.states;
    if s.when != When::Hot {
        return told(name, "°C", main.sensed_c);
    }
    let place = match s.inputs().reg.sensor {
        SensorPlace::Winding => Part::Winding,
        SensorPlace::Rectifier => Part::Rectifier,
        SensorPlace::Case => Part::Case,
    };
    s.temperature(place).named(name)
}

fn volt_a(s: &Instant) -> Explanation {
    let [main, second] = &s.states;
    let given = [
        told(
            "Voltage that is held at the bank then, the temperatures considered",
            "V",
            s.boat.plant.held_at(&main.t, &second.t),
        ),
        rest_v(s),
        s.step(Step::BankOhm),
        s.drawn(),
    ];
    Explanation::of(Term::of(held_a::FORMULA, given))
        .note("More would lift the bank above the voltage that is held.")
        .inputs(&[
            bank::CHARGE_V,
            regulator::FIXED_V,
            regulator::DROP_MV_K,
            bank::COMPENSATION_MV,
            bank::TEMPERATURE_C,
        ])
}

/// The bank at rest.
pub(super) fn rest_v(s: &Instant) -> Term {
    let volts = s.boat.plant.bank.rest_v(s.soc);
    told(
        "At rest at that state of charge, from the table",
        "V",
        volts,
    )
}

fn bank_ohm_of(s: &Instant) -> Explanation {
    let house = &s.boat.plant.bank;
    let (cells, note) = match &house.cells {
        Cells::Lfp(_) => {
            let cold = lfp_cold_factor(s.inputs().bank.temperature_c);
            let given = [
                s.input(bank::RESISTANCE_OHM_AH),
                told("12 V blocks in series", "", house.blocks),
                s.input(bank::CAPACITY_AH),
                told(
                    "How much more it resists at this temperature, from the table",
                    "",
                    cold,
                ),
            ];
            let note = "Cells, and the way to where the regulator measures.";
            (Term::of(lithium_ohm::FORMULA, given), note)
        }
        Cells::Lead(kind) => {
            let takes = absorption(s, kind);
            let given = [
                told(
                    "Absorption voltage of its kind at this temperature",
                    "V",
                    takes.volts,
                ),
                rest_v(s),
                told(
                    "What such a bank takes at that voltage, so full",
                    "A",
                    takes.amperes,
                ),
            ];
            let note =
                "A lead bank's is such that it takes what it accepts at its absorption voltage.";
            (Term::of(lead_ohm::FORMULA, given), note)
        }
    };
    let cable = Term::of(ohm::FORMULA, [s.input(bank::HARNESS_MOHM)]);
    Explanation::of(Term::of(bank_ohm::FORMULA, [cells, cable]))
        .note(note)
        .inputs(&[bank::CHEMISTRY, bank::TEMPERATURE_C])
}

/// A lead bank's absorption voltage, and what it takes at that.
fn absorption(s: &Instant, kind: &LeadKind) -> Output {
    let house = &s.boat.plant.bank;
    let accepted_a = kind.acceptance_a(house.capacity_ah, s.soc);
    Output {
        amperes: accepted_a.max(1e-4 * house.capacity_ah),
        volts: house.blocks * kind.absorption_v + house.compensation_v,
    }
}

fn flux(s: &Instant) -> Explanation {
    let given = [
        own_amperes(s),
        s.figure(&INFINITE_A),
        s.figure(&ZERO_RPM),
        s.shaft_rpm(),
        behind(s),
    ];
    Explanation::of(Term::of(flux_square::FORMULA, given))
        .note("What current and voltage ask of the iron, against the rating.")
}

fn copper(s: &Instant) -> Explanation {
    let at_20c = [s.figure(&PHASE_20C_OHM), own_amperes(s)];
    let given = [
        Term::of(copper_20c_w::FORMULA, at_20c),
        s.temperature(Part::Winding),
    ];
    Explanation::of(Term::of(copper_w::FORMULA, given))
}

fn diodes(s: &Instant) -> Explanation {
    let given = [s.input(alternator::DIODE_V), own_amperes(s)];
    Explanation::of(Term::of(diode_w::FORMULA, given)).note("Two diodes are always in the way.")
}

fn field(s: &Instant) -> Explanation {
    let at_20c = [
        s.input(alternator::FIELD_W),
        s.input(alternator::PLATE_ROTOR_C),
        s.step(Step::FluxSquare),
        s.input(alternator::FIELD_EXPONENT),
    ];
    let given = [Term::of(field_20c_w::FORMULA, at_20c), rotor(s)];
    Explanation::of(Term::of(field_w::FORMULA, given))
        .note("The field follows the flux backwards through saturation.")
}

fn iron(s: &Instant) -> Explanation {
    let given = [
        s.input(alternator::IRON_SHARE_PCT),
        s.figure(&RATED_LOSS_W),
        s.shaft_rpm(),
        s.step(Step::FluxSquare),
    ];
    Explanation::of(Term::of(iron_w::FORMULA, given))
}

fn fan(s: &Instant) -> Explanation {
    let given = [
        s.input(alternator::FAN_SHARE_PCT),
        s.figure(&RATED_LOSS_W),
        s.shaft_rpm(),
        s.input(alternator::FAN_EXPONENT),
    ];
    Explanation::of(Term::of(fan_w::FORMULA, given))
}

fn lost(s: &Instant) -> Explanation {
    let given = [
        s.step(Step::CopperW),
        s.step(Step::DiodeW),
        s.step(Step::FieldW),
        s.step(Step::IronW),
        s.step(Step::FanW),
    ];
    Explanation::of(Term::of(total_w::FORMULA, given))
        .note("Heat that comes about in the alternator.")
}
