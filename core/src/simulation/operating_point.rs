//! What meets at the bank's terminals: sources whose current falls or rises
//! with the voltage, and a bank whose voltage rises with the current.

use crate::numerics::bracketed_root;
use crate::physics::battery::Bank;
use crate::physics::charging::terminal_v;
use crate::physics::regulator::{allowed_a, held_part};
use crate::simulation::Limit;
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::moment::ThermalState;
use crate::simulation::plant::Plant;
use crate::simulation::trace::Sample;

/// An alternator at one moment: what its regulator allows and how warm its rotor is.
pub(super) struct AlternatorState<'a> {
    pub(super) alternator: &'a AlternatorAtSpeed,
    pub(super) allowed: f64,
    pub(super) limit: Limit,
    /// What its sensor reads \[°C\].
    pub(super) sensed_c: f64,
    field_per_v: f64,
}

/// A source of current for the house at a trial voltage.
#[derive(Clone, Copy)]
pub(super) struct SourceCurve {
    pub(super) amperes: f64,
    pub(super) slope: f64,
    pub(super) limit: Limit,
}

impl SourceCurve {
    /// The same of a regulator on its own that takes the field back across a band
    /// below what it holds \[V\].
    #[inline]
    pub(super) fn held(self, held_v: f64, bank_v: f64, band_v: f64) -> SourceCurve {
        let part = held_part(held_v, bank_v, band_v);
        if part >= 1.0 {
            return self;
        }
        let falls = if part > 0.0 {
            self.amperes / band_v
        } else {
            0.0
        };
        SourceCurve {
            amperes: part * self.amperes,
            slope: part * self.slope - falls,
            limit: Limit::ChargeVoltage,
        }
    }
}

/// The bank's terminals at one state of charge.
#[derive(Clone, Copy)]
pub(super) struct Terminals {
    pub(super) rest_v: f64,
    pub(super) ohm: f64,
    /// Giving, a bank resists no more than this.
    giving_ohm: f64,
}

impl Terminals {
    pub(super) fn new(bank: &Bank, soc: f64) -> Terminals {
        let ohm = bank.resistance_ohm(soc);
        Terminals {
            rest_v: bank.rest_v(soc),
            ohm,
            giving_ohm: ohm.min(bank.giving_ohm()),
        }
    }

    /// A bank drawn below this part of its rest voltage has collapsed; what it
    /// does there is not told apart.
    const COLLAPSED: f64 = 0.7;

    pub(super) fn volts(&self, bank_a: f64) -> f64 {
        let ohm = if bank_a >= 0.0 {
            self.ohm
        } else {
            self.giving_ohm
        };
        terminal_v(self.rest_v, bank_a, ohm).max(Self::COLLAPSED * self.rest_v)
    }

    pub(super) fn slope(&self, bank_a: f64) -> f64 {
        if bank_a >= 0.0 {
            self.ohm
        } else if self.rest_v + bank_a * self.giving_ohm > Self::COLLAPSED * self.rest_v {
            self.giving_ohm
        } else {
            0.0
        }
    }
}

impl<'a> AlternatorState<'a> {
    pub(super) fn new(
        alternator: &'a AlternatorAtSpeed,
        seconds: f64,
        state: &ThermalState,
    ) -> AlternatorState<'a> {
        let (allowed, limit) = alternator.allowed(seconds, state.sensed_c);
        AlternatorState {
            alternator,
            allowed,
            limit,
            sensed_c: state.sensed_c,
            field_per_v: alternator
                .curve_here
                .field_per_v(alternator.network.rotor_c(state.t.body_c)),
        }
    }

    /// What it would give at full field straight on a battery at a voltage \[A\].
    pub(super) fn full_a(&self, volts: f64) -> f64 {
        let curve = &self.alternator.curve_here;
        curve.full_field(volts, self.field_per_v).0
    }

    /// Straight on a battery at a voltage.
    #[inline]
    pub(super) fn on(&self, volts: f64) -> SourceCurve {
        let (full_a, slope) = self
            .alternator
            .curve_here
            .full_field(volts, self.field_per_v);
        let given_a = allowed_a(self.allowed, full_a);
        if self.alternator.cap_a < given_a {
            SourceCurve {
                amperes: self.alternator.cap_a,
                slope: 0.0,
                limit: Limit::CurrentCap,
            }
        } else {
            SourceCurve {
                amperes: given_a,
                slope: self.allowed * slope,
                limit: self.limit,
            }
        }
    }
}

impl Plant {
    /// What an alternator could give at a moment of a run at the voltage it works
    /// at, did nothing but its own heat and regulator hold it back \[A\], and what
    /// does.
    pub(crate) fn able_a(&self, alternator: usize, sample: &Sample) -> (f64, Limit) {
        let here = &self.alternators[alternator];
        let seconds = self.turning_s + sample.seconds;
        let state = AlternatorState::new(here, seconds, &sample.thermal[alternator]);
        let able = state.on(sample.moment.flow.outputs[alternator].volts);
        (able.amperes, able.limit)
    }
}

/// What sources give on a voltage that rises with their current \[A\], or
/// `most_a` if they could give that much: Newton's rule, which needs one or
/// two steps on any usual bank, and a bracketed root where it fails. `given`
/// is their current, and its slope, at a trial current.
pub(super) fn solve_operating_point(
    most_a: f64,
    guess_a: f64,
    given: impl Fn(f64) -> (f64, f64),
) -> f64 {
    const STEPS: usize = 6;
    let mut amperes = most_a.min(guess_a);
    for _ in 0..STEPS {
        let (now, slope) = given(amperes);
        let step = (now - amperes) / (1.0 - slope);
        if slope.abs() > 0.5 || !step.is_finite() {
            break;
        }
        // The error left is about the slope times the step's square over the
        // current: the curve bends over volts, and volts hardly move.
        let bend = slope.abs() * step * step / (1.0 + amperes.abs() + step.abs());
        // A flat stretch does not say where it ends: look there first.
        let flat = slope == 0.0 && step.abs() > 1e-9 * (1.0 + amperes.abs());
        if !flat && bend <= 1e-6 * (1.0 + amperes.abs()) {
            return amperes + step;
        }
        if amperes >= most_a && step >= 0.0 {
            return most_a;
        }
        amperes = (amperes + step).min(most_a);
    }
    bracketed_root(|amperes| given(amperes).0 - amperes, 0.0, most_a, 1e-10)
}
