//! What may be changed, and by how much.

use serde::Serialize;

use crate::boat::{AirBasis, Goal, Inputs, May, RegulatorKind, SecondRole, SensorPlace, WayKind};
use crate::decision::arrangements::{
    Stated, add_second, as_engines_come, can_charge_start, cap_wanted_a, direct, hold_current,
    larger_a, larger_chargers_a, put_on_generator, regulate, replace, second_a, set_mains_charger,
    usual_chargers_a,
};
use crate::units::QuantityKind;

/// How many kinds of change there are.
pub(super) const COUNT: usize = 15;

/// A kind of change.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Change {
    /// A stronger blower, by so much more air \[m³/h\].
    Blower,
    /// A cool-air duct to the alternator.
    Duct,
    /// A higher temperature limit at the regulator \[°C\].
    TemperatureLimit,
    /// A current cap at the regulator \[A\].
    CurrentCap,
    /// A DC-DC charger of another size \[A\].
    Charger,
    /// The alternator led to the house bank, with an external regulator.
    Direct,
    /// An external regulator with a temperature sensor.
    Regulator,
    /// A larger alternator in place of the one there is \[A\].
    LargerAlternator,
    /// A second alternator for the bank \[A\].
    SecondAlternator,
    /// A smaller pulley on the alternator, by how much the ratio rises.
    Pulley,
    /// More solar panels, by their power \[W\].
    Panels,
    /// A bank of another size \[A·h\].
    Bank,
    /// Lighter loads, by their share of the day's use \[%\].
    LighterLoads,
    /// A generator in place of the engine, by its mains charger \[A\].
    Generator,
    /// A larger mains charger on the generator \[A\].
    MainsCharger,
}

impl Change {
    /// What its amounts are of; none where there is only one way to do it.
    pub(super) const fn amounts_of(self) -> Option<QuantityKind> {
        match self {
            Change::Blower => Some(QuantityKind::AirFlow),
            Change::TemperatureLimit => Some(QuantityKind::Temperature),
            Change::CurrentCap
            | Change::Charger
            | Change::LargerAlternator
            | Change::Generator
            | Change::MainsCharger
            | Change::SecondAlternator => Some(QuantityKind::Current),
            Change::Pulley => Some(QuantityKind::Count),
            Change::Panels => Some(QuantityKind::Power),
            Change::Bank => Some(QuantityKind::Charge),
            Change::LighterLoads => Some(QuantityKind::Percent),
            Change::Duct | Change::Direct | Change::Regulator => None,
        }
    }
}

/// One kind of change.
pub(super) struct Lever {
    /// What it is.
    pub change: Change,
    /// Whether the user lets it be changed.
    pub open: fn(&Goal) -> May,
    /// The amounts that make sense on these inputs.
    pub amounts: fn(&Inputs) -> Vec<f64>,
    /// Makes the change.
    pub apply: fn(&mut Inputs, f64, Stated),
}

/// Where a lever stands in [`LEVERS`].
pub(super) const CAP: usize = 3;
pub(super) const CHARGER: usize = 4;
pub(super) const DIRECT: usize = 5;
pub(super) const REGULATOR: usize = 6;
pub(super) const LARGER: usize = 7;
pub(super) const SECOND: usize = 8;
pub(super) const PULLEY: usize = 9;
pub(super) const GENERATOR: usize = 13;

/// Every kind of change, in the order they are made: an alternator before the
/// pulley that goes on it.
pub(super) static LEVERS: [Lever; COUNT] = [
    Lever {
        change: Change::Blower,
        open: |goal| goal.blower,
        amounts: |i| {
            some(
                i.space.basis == AirBasis::Modelled && i.space.blower_m3h <= 2600.0,
                &[200.0, 400.0],
            )
        },
        apply: |i, m3h, _| i.space.blower_m3h += m3h,
    },
    Lever {
        change: Change::Duct,
        open: |goal| goal.duct,
        amounts: |i| some(i.space.cold_air_pct < 40.0, &[50.0]),
        apply: |i, percent, _| i.space.cold_air_pct = percent,
    },
    Lever {
        change: Change::TemperatureLimit,
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
        apply: |i, celsius, _| i.reg.set_point_c = celsius,
    },
    Lever {
        change: Change::CurrentCap,
        open: |goal| goal.cap,
        amounts: |i| cap_wanted_a(i).into_iter().collect(),
        apply: |i, _, _| hold_current(i),
    },
    Lever {
        change: Change::Charger,
        open: |goal| goal.converter,
        amounts: chargers_a,
        apply: |i, amperes, _| i.way.converter_a = Some(amperes),
    },
    Lever {
        change: Change::Direct,
        open: |goal| goal.straight,
        amounts: |i| {
            let of_bank = i.first_alternator().blocks() == i.bank.nominal_v.blocks();
            some(i.way.kind == WayKind::Converter && of_bank, &[1.0])
        },
        apply: |i, _, _| direct(i),
    },
    Lever {
        change: Change::Regulator,
        open: |goal| goal.regulator,
        amounts: |i| {
            let built_in = i.reg.kind == RegulatorKind::Internal;
            some(i.way.kind == WayKind::Direct && built_in, &[1.0])
        },
        apply: |i, _, _| regulate(i),
    },
    Lever {
        change: Change::LargerAlternator,
        open: |goal| goal.machine,
        amounts: larger_a,
        apply: |i, amperes, _| replace(i, amperes),
    },
    Lever {
        change: Change::SecondAlternator,
        open: |goal| goal.second,
        amounts: |i| {
            let room = i.two.role == SecondRole::None && can_charge_start(i);
            some(room, &second_a(&as_engines_come(i)))
        },
        apply: add_second,
    },
    Lever {
        change: Change::Pulley,
        open: |goal| goal.pulley,
        amounts: |i| some(i.alt.pulley_ratio + 0.8 <= MOST_RATIO, &[0.4, 0.8]),
        apply: |i, more, _| smaller_pulley(i, more),
    },
    Lever {
        change: Change::Panels,
        open: |goal| goal.panels,
        amounts: |i| some(i.sun.panel_w <= 19_000.0, &[200.0, 400.0, 600.0]),
        apply: |i, watts, _| i.sun.panel_w += watts,
    },
    Lever {
        change: Change::Bank,
        open: |goal| goal.bank,
        amounts: |i| {
            let now_ah = i.bank.capacity_ah;
            some(
                now_ah <= 2000.0,
                &[1.5, 2.0].map(|times| round(times * now_ah, 10.0)),
            )
        },
        apply: |i, ah, _| i.bank.capacity_ah = ah,
    },
    Lever {
        change: Change::LighterLoads,
        open: |goal| goal.loads,
        amounts: |i| some(i.daily.saved_pct == 0.0, &[10.0, 20.0]),
        apply: |i, percent, _| i.daily.saved_pct = percent,
    },
    Lever {
        change: Change::Generator,
        open: |goal| goal.generator,
        amounts: |i| some(!i.generator_charges(), &usual_chargers_a(i)),
        apply: |i, amperes, _| put_on_generator(i, amperes),
    },
    Lever {
        change: Change::MainsCharger,
        open: |goal| goal.mains_charger,
        amounts: |i| some(i.generator_charges(), &larger_chargers_a(i)),
        apply: |i, amperes, _| set_mains_charger(i, amperes),
    },
];

/// The highest pulley ratio that is fitted; its field takes no more.
const MOST_RATIO: f64 = 6.0;
/// The smallest pulley that can be said \[mm\]: that of its field.
const LEAST_PULLEY_MM: f64 = 30.0;
fn some(any: bool, amounts: &[f64]) -> Vec<f64> {
    if any { amounts.to_vec() } else { Vec::new() }
}

fn round(figure: f64, to: f64) -> f64 {
    (figure / to).round() * to
}

/// Other sizes of DC-DC charger: larger ones, as long as one takes no more
/// watts than the alternator's rating; smaller ones, or its output set lower,
/// where it takes more than half of that or the bank may not take its output.
fn chargers_a(i: &Inputs) -> Vec<f64> {
    if i.way.kind != WayKind::Converter {
        return Vec::new();
    }
    let now_a = i.charger_a();
    let (rated_w, limit_a) = (i.first_alternator().rated_w(), i.setting_limit_a());
    let too_large = !i.charger_suits(now_a, rated_w);
    let bears = |amperes: f64| i.charger_takes_w(amperes) <= rated_w && amperes <= limit_a;
    let smaller = [0.25, 0.5, 0.75]
        .map(|times| (times * now_a).floor())
        .into_iter()
        .filter(|amperes| too_large && *amperes >= 1.0);
    let larger = [1.5, 2.0, 3.0]
        .map(|times| round(times * now_a, 5.0))
        .into_iter()
        .filter(|amperes| *amperes > now_a && bears(*amperes) && *amperes <= 1000.0);
    smaller.chain(larger).collect()
}

/// Raises the pulley ratio by a smaller pulley on the alternator; the engine's
/// pulley stays.
fn smaller_pulley(i: &mut Inputs, more: f64) {
    let ratio = i.alt.pulley_ratio;
    // Rounded, as 2.2 + 0.4 is a little more than 2.6.
    i.alt.pulley_ratio = (100.0 * (ratio + more)).round() / 100.0;
    let pulley_mm = i.belt.pulley_mm * ratio / i.alt.pulley_ratio;
    i.belt.pulley_mm = ((10.0 * pulley_mm).round() / 10.0).max(LEAST_PULLEY_MM);
}
