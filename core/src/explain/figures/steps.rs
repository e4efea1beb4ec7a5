//! The steps on the way to a moment's currents and losses, each at the moments
//! that have them.

use crate::explain::figure::Figure;
use crate::explain::figures::step::Step;
use crate::explain::figures::{bank, field, losses};
use crate::explain::instant::When;

/// The steps of one moment; `$at` is its part of their names.
macro_rules! steps {
    ($at:literal, $when:expr) => {
        [
            field::can_a(concat!("inner.", $at, ".can_a")).at($when),
            field::full_a(concat!("inner.", $at, ".full_a")).at($when),
            field::field_x(concat!("inner.", $at, ".field_x")).at($when),
            field::allowed(concat!("inner.", $at, ".allowed")).at($when),
            bank::volt_a(concat!("inner.", $at, ".volt_a")).at($when),
            bank::bank_ohm(concat!("inner.", $at, ".bank_ohm")).at($when),
            field::flux_square(concat!("inner.", $at, ".flux_square")).at($when),
            losses::copper_w(concat!("inner.", $at, ".copper_w")).at($when),
            losses::diode_w(concat!("inner.", $at, ".diode_w")).at($when),
            losses::field_w(concat!("inner.", $at, ".field_w")).at($when),
            losses::iron_w(concat!("inner.", $at, ".iron_w")).at($when),
            losses::fan_w(concat!("inner.", $at, ".fan_w")).at($when),
            losses::losses_w(concat!("inner.", $at, ".losses_w")).at($when),
        ]
    };
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
