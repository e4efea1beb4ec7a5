//! What may be changed, and by how much.

use crate::arrange::{add_second, put_large, straight};
use crate::worksheet::{
    AirBasis, Goal, Inputs, May, RegulatorKind, SecondRole, SensorPlace, WayKind,
};

/// How many kinds of change there are.
pub(super) const COUNT: usize = 11;

/// One kind of change.
pub(super) struct Lever {
    /// What it is, with `#` where the amount stands.
    pub says: &'static str,
    /// Whether the user lets it be changed.
    pub open: fn(&Goal) -> May,
    /// The amounts that make sense on these inputs.
    pub amounts: fn(&Inputs) -> Vec<f64>,
    /// Makes the change.
    pub apply: fn(&mut Inputs, f64),
}

/// Where a lever stands in [`LEVERS`].
pub(super) const CONVERTER: usize = 4;
pub(super) const STRAIGHT: usize = 5;
pub(super) const MACHINE: usize = 6;
pub(super) const SECOND: usize = 7;

/// Sizes of machines that are tried \[A\]: usual ones.
const MACHINES_A: [f64; 3] = [150.0, 180.0, 250.0];

/// Every kind of change, in the order they are made: a machine before the
/// pulley that goes on it.
pub(super) static LEVERS: [Lever; COUNT] = [
    Lever {
        says: "a blower of # m³/h more",
        open: |goal| goal.blower,
        amounts: |i| {
            some(
                i.space.basis == AirBasis::Modelled && i.space.blower_m3h <= 2600.0,
                &[200.0, 400.0],
            )
        },
        apply: |i, m3h| i.space.blower_m3h += m3h,
    },
    Lever {
        says: "a cold-air hose to the machine",
        open: |goal| goal.duct,
        amounts: |i| some(i.space.cold_air_pct < 40.0, &[50.0]),
        apply: |i, percent| i.space.cold_air_pct = percent,
    },
    Lever {
        says: "a pulley ratio higher by #",
        open: |goal| goal.pulley,
        amounts: |_| vec![0.4, 0.8],
        apply: |i, more| {
            // Rounded, as 2.2 + 0.4 is a little more than 2.6.
            i.alt.pulley_ratio = (100.0 * (i.alt.pulley_ratio + more)).round() / 100.0;
        },
    },
    Lever {
        says: "a set-point of # °C",
        open: |goal| goal.set_point,
        amounts: |i| {
            let limit_c = match i.reg.sensor {
                SensorPlace::Case => i.alt.case_limit_c,
                SensorPlace::Winding => i.alt.class.limit_c(),
                SensorPlace::Rectifier => i.alt.rectifier_limit_c,
            };
            let higher_c = (i.reg.set_point_c + 10.0).min(limit_c - 10.0);
            let external = i.reg.kind == RegulatorKind::External;
            some(external && higher_c >= i.reg.set_point_c + 1.0, &[higher_c])
        },
        apply: |i, celsius| i.reg.set_point_c = celsius,
    },
    Lever {
        says: "a converter of # A",
        open: |goal| goal.converter,
        amounts: |i| {
            let now_a = i.way.converter_a;
            let converter = i.way.kind == WayKind::Converter && now_a <= 300.0;
            some(
                converter,
                &[1.5, 2.0, 3.0].map(|times| round(times * now_a, 5.0)),
            )
        },
        apply: |i, amperes| i.way.converter_a = amperes,
    },
    Lever {
        says: "an external regulator and a lead straight to the bank",
        open: |goal| goal.straight,
        amounts: |i| some(i.way.kind == WayKind::Converter, &[1.0]),
        apply: |i, _| straight(i),
    },
    Lever {
        says: "a machine of # A in its place",
        open: |goal| goal.machine,
        amounts: larger,
        apply: put_large,
    },
    Lever {
        says: "a second machine of # A for the bank",
        open: |goal| goal.second,
        amounts: |i| {
            if i.two.role == SecondRole::None {
                MACHINES_A.to_vec()
            } else {
                Vec::new()
            }
        },
        apply: add_second,
    },
    Lever {
        says: "# W more of panels",
        open: |goal| goal.panels,
        amounts: |i| some(i.sun.panel_w <= 19_000.0, &[200.0, 400.0, 600.0]),
        apply: |i, watts| i.sun.panel_w += watts,
    },
    Lever {
        says: "a bank of # A·h",
        open: |goal| goal.bank,
        amounts: |i| {
            let now_ah = i.bank.capacity_ah;
            some(
                now_ah <= 2000.0,
                &[1.5, 2.0].map(|times| round(times * now_ah, 10.0)),
            )
        },
        apply: |i, ah| i.bank.capacity_ah = ah,
    },
    Lever {
        says: "loads lighter by # %",
        open: |goal| goal.loads,
        amounts: |i| some(i.daily.saved_pct == 0.0, &[10.0, 20.0]),
        apply: |i, percent| i.daily.saved_pct = percent,
    },
];

fn some(any: bool, amounts: &[f64]) -> Vec<f64> {
    if any { amounts.to_vec() } else { Vec::new() }
}

fn round(figure: f64, to: f64) -> f64 {
    (figure / to).round() * to
}

fn larger(inputs: &Inputs) -> Vec<f64> {
    let mut amounts = MACHINES_A.to_vec();
    amounts.retain(|rated_a| *rated_a > 1.1 * inputs.alt.rated_a);
    amounts
}
