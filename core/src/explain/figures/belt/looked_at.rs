//! The belt that a figure is of, and what is given of it: by its place, which is its
//! alternator, plus two with the engine at its highest.

use crate::analysis::belt::{BeltLoad, BeltReport};
use crate::boat::{Belt, InstalledAlternator, WhichAlternator};
use crate::explain::boat::Boat;
use crate::explain::figure::Figure;
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::belt::BeltType;

/// How many alternators have belts of their own.
pub(super) const ALTERNATORS: usize = WhichAlternator::ALL.len();

/// A figure of each belt.
pub(super) type OfBelts = [Figure; ALTERNATORS];
/// A figure of each belt at both engine speeds.
pub(super) type AtSpeeds = [Figure; 2 * ALTERNATORS];

pub(super) fn is_there(boat: &Boat, place: usize) -> bool {
    boat.report.analyses.belts.len() > place % ALTERNATORS
}

pub(super) fn is_entered(boat: &Boat, place: usize) -> bool {
    let belt = boat.report.analyses.belts.get(place % ALTERNATORS);
    belt.is_some_and(|belt| belt.belt.is_some())
}

/// The belt that is looked at.
pub(super) fn report<'a>(s: &Instant<'a>) -> Option<&'a BeltReport> {
    s.report().analyses.belts.get(s.place % ALTERNATORS)
}

/// What it does at the engine speed that is looked at.
pub(super) fn load<'a>(s: &Instant<'a>) -> Option<&'a BeltLoad> {
    let belt = report(s)?;
    Some(if s.place < ALTERNATORS {
        &belt.charging
    } else {
        &belt.top
    })
}

/// The alternator that it turns.
pub(super) fn installed<'a>(s: &Instant<'a>) -> InstalledAlternator<'a> {
    s.boat.installed(s.place % ALTERNATORS)
}

/// What the tables say of its kind of belt.
pub(super) fn table(s: &Instant) -> Option<BeltType> {
    installed(s).belt.kind.table()
}

/// An input of the belt by its place, such as `Belt::pulley_mm`.
pub(super) fn input(s: &Instant, place: u8) -> Term {
    s.input(installed(s).which.belt_key(place))
}

pub(super) fn of_belt(s: &Instant, figures: &'static OfBelts) -> Term {
    let [first, ..] = figures;
    s.figure(figures.get(s.place % ALTERNATORS).unwrap_or(first))
}

pub(super) fn at_speed(s: &Instant, figures: &'static AtSpeeds) -> Term {
    let [first, ..] = figures;
    s.figure(figures.get(s.place).unwrap_or(first))
}

/// Power at the alternator's shaft then.
pub(super) fn shaft_w(s: &Instant) -> Term {
    let shaft_w = load(s).map_or(f64::NAN, |load| load.shaft_w);
    described("Power at the alternator's shaft then", "W", shaft_w).symbol("P")
}

pub(super) fn amperes(s: &Instant) -> Term {
    let amperes = load(s).map_or(f64::NAN, |load| load.amperes);
    described("What the alternator gives then", "A", amperes)
}

pub(super) fn shaft_rpm(s: &Instant) -> Term {
    let rpm = load(s).map_or(f64::NAN, |load| load.shaft_rpm);
    described("Speed of the alternator's shaft then", "rpm", rpm)
}

pub(super) fn blocks(s: &Instant) -> Term {
    described("12 V blocks of its system", "", installed(s).blocks())
}

pub(super) fn pulley(s: &Instant) -> Term {
    input(s, Belt::pulley_mm)
}
