//! Settings that hang on what is not known: the current cap, the temperature limit
//! the regulator holds, and what a DC-DC charger may give.

use serde::Serialize;

use crate::boat::{Inputs, Key, RegulatorKind, WayKind, house_load_a};
use crate::decision::uncertainty::possible::PossibleBoat;
use crate::decision::uncertainty::tell::{quantile, rank, sorted};
use crate::simulation::alone::{fed_charger_a, settled_alone, unbound};

/// A setting is in question where it is wrong in more cases than this, and right in
/// more than this \[%\].
const IN_QUESTION_PCT: f64 = 5.0;

/// A reading that decides something.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Deciding {
    /// The input.
    pub key: Key,
    /// What it is called.
    pub what: &'static str,
    /// The section it stands in.
    pub section: &'static str,
}

/// The first alternator where only its own heat and regulator keep it back.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AloneHot {
    /// What it holds \[A\]; 0 where it never settles.
    amperes: f64,
    /// Its winding above the limit of its insulation \[K\].
    winding_over_k: f64,
    /// What a DC-DC charger gets from it \[A\].
    charger_a: f64,
}

/// A setting that hangs on what is not known.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "setting", rename_all = "snake_case")]
pub enum SettingChoice {
    /// The current cap follows what the alternator holds hot.
    CurrentCap {
        /// In one case of ten it holds less \[A\].
        low_a: f64,
        /// In one of ten more \[A\].
        high_a: f64,
        /// The reading that narrows it most.
        reading: Option<Deciding>,
    },
    /// At the temperature limit that the regulator holds the winding may be too hot.
    TemperatureLimit {
        /// That limit \[°C\].
        set_point_c: f64,
        /// In so many cases it is \[%\].
        too_hot_pct: f64,
        /// The reading that tells it best.
        reading: Option<Deciding>,
    },
    /// The alternator, hot, may not feed what the DC-DC charger is rated at.
    ChargerOutput {
        /// Its rating \[A\].
        rated_a: f64,
        /// In so many cases it is fed \[%\].
        fed_pct: f64,
        /// The reading that tells it best.
        reading: Option<Deciding>,
    },
}

impl AloneHot {
    /// That of a boat.
    pub(super) fn of(boat: &PossibleBoat) -> AloneHot {
        let mut open = boat.clone();
        open.sheet.inputs = unbound(&boat.sheet.inputs);
        let (inputs, load_a) = (&open.sheet.inputs, house_load_a(&open.sheet));
        let hot = settled_alone(open.alternators().plant(inputs, load_a), inputs);
        let first = hot.flow.outputs.first().filter(|_| hot.stable);
        let amperes = first.map_or(0.0, |output| output.amperes);
        let winding_c = hot.temperatures.first().map_or(0.0, |t| t.winding_c);
        AloneHot {
            amperes,
            winding_over_k: winding_c - inputs.alt.class.limit_c(),
            charger_a: fed_charger_a(inputs, amperes, inputs.charge_v()).unwrap_or(0.0),
        }
    }
}

/// The settings of a boat that hang on what is not known.
pub(super) fn in_question(
    inputs: &Inputs,
    hot: &[AloneHot],
    strata: &[&[u16]],
    reading: impl Fn(usize) -> Option<Deciding>,
) -> Vec<SettingChoice> {
    if hot.is_empty() || !inputs.engine_charges() {
        return Vec::new();
    }
    let all = |of: fn(&AloneHot) -> f64| hot.iter().map(of).collect::<Vec<f64>>();
    let told_by = |figures: &[f64]| reading(rank(strata, figures).first()?.at);
    let part_pct = |is: &dyn Fn(&AloneHot) -> bool| {
        100.0 * hot.iter().filter(|one| is(one)).count() as f64 / hot.len() as f64
    };
    let is_open = |pct: &f64| (IN_QUESTION_PCT..=100.0 - IN_QUESTION_PCT).contains(pct);
    let external = inputs.reg.kind == RegulatorKind::External;
    let direct = inputs.way.kind == WayKind::Direct;
    let amperes = all(|one| one.amperes);
    let in_order = sorted(&amperes);
    let cap = (external && direct && inputs.reg.current_cap_a.is_none()).then(|| {
        SettingChoice::CurrentCap {
            low_a: quantile(&in_order, 0.1),
            high_a: quantile(&in_order, 0.9),
            reading: told_by(&amperes),
        }
    });
    let too_hot_pct = part_pct(&|one| one.winding_over_k > 0.0);
    let temperature = Some(too_hot_pct).filter(|pct| external && is_open(pct));
    let temperature = temperature.map(|too_hot_pct| SettingChoice::TemperatureLimit {
        set_point_c: inputs.reg.set_point_c,
        too_hot_pct,
        reading: told_by(&all(|one| one.winding_over_k)),
    });
    let rated_a = inputs.charger_a();
    let fed_pct = part_pct(&|one| one.charger_a >= rated_a);
    let charger = Some(fed_pct).filter(|pct| !direct && is_open(pct));
    let charger = charger.map(|fed_pct| SettingChoice::ChargerOutput {
        rated_a,
        fed_pct,
        reading: told_by(&all(|one| one.charger_a)),
    });
    [cap, temperature, charger].into_iter().flatten().collect()
}
