//! What a generator with a mains charger puts back in a day.

use serde::Serialize;

use crate::analysis::energy::Energy;
use crate::analysis::engine_day::{DayNeed, DayTrouble, MOST_RUNS};
use crate::boat::{Inputs, Worksheet, mean_draw_a};
use crate::numerics::bracketed_root;
use crate::physics::generator::{FOOT, burnt_l, load_share, part_load_l_h};
use crate::simulation::mains_charger::{Fill, MainsCharger};

/// What a generator puts back in a day.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct GeneratorReport {
    /// What it gives for hours on end \[kW\].
    pub rated_kw: f64,
    /// Most that its charger gives, bank and loads together \[A\].
    pub charger_a: f64,
    /// What the charger would take for all its amperes \[kW\].
    pub charger_kw: f64,
    /// What it has to put back for a day at anchor \[A·h\].
    pub day_ah: f64,
    /// Its time a day \[h\]; 0 where the other sources cover the use, none where no
    /// run puts it back.
    pub hours: Option<f64>,
    /// Why no run puts it back; none where one does.
    pub trouble: Option<DayTrouble>,
    /// State of charge at which it would begin and finds the bank frozen, so that it
    /// charges nothing; none where it does not \[%\].
    pub frozen_pct: Option<f64>,
    /// In how many equal runs.
    pub runs: u32,
    /// State of charge at which each begins \[%\].
    pub from_pct: Option<f64>,
    /// What the boat draws meanwhile \[A\].
    pub house_load_a: f64,
    /// Mean current into the bank \[A\]; none where it does not run.
    pub mean_bank_a: Option<f64>,
    /// What its charger takes in the day \[kW·h\].
    pub mains_kwh: Option<f64>,
    /// Mean load of what it can give \[%\]; none where it does not run.
    pub load_pct: Option<f64>,
    /// Fuel a day \[L\].
    pub fuel_l: Option<f64>,
    /// How long it may run a day \[h\].
    pub allowed_h: f64,
}

/// The equal runs of a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GeneratorDay {
    /// How many.
    pub runs: u32,
    /// Time of all \[h\].
    pub hours: f64,
    /// State of charge each begins at, 0 to 1.
    pub from: f64,
    /// What the charger takes in all \[kW·h\].
    pub mains_kwh: f64,
    /// Mean part of what the generator can give, 0 to 1.
    pub load: f64,
    /// Fuel of all \[L\].
    pub fuel_l: f64,
}

/// The report of a boat that a generator charges; none of another.
pub(super) fn generator_report(sheet: &Worksheet, energy: &Energy) -> Option<GeneratorReport> {
    let inputs = &sheet.inputs;
    if !inputs.generator_charges() {
        return None;
    }
    let load_a = inputs
        .run
        .house_load_a
        .unwrap_or_else(|| mean_draw_a(sheet));
    let day_ah = energy.rest_ah;
    let day = generator_day(inputs, day_ah, load_a);
    let runs = day.filter(|day| day.runs > 0);
    let charger_a = inputs.generator_charger_a();
    let frozen = frozen_from(inputs, day_ah, load_a);
    Some(GeneratorReport {
        rated_kw: inputs.generator_kw(),
        charger_a: MainsCharger::on_generator(inputs).most_a(),
        charger_kw: inputs.mains_charger_kw(charger_a),
        day_ah,
        hours: day.map(|day| day.hours),
        trouble: day.is_none().then(|| match frozen {
            Some(_) => DayTrouble::BankFrozen,
            None if inputs.charge_barred().is_some() => DayTrouble::CannotBeCharged,
            None => DayTrouble::TooSlow,
        }),
        frozen_pct: frozen.map(|soc| 100.0 * soc),
        runs: day.map_or(0, |day| day.runs),
        from_pct: runs.map(|day| 100.0 * day.from),
        house_load_a: load_a,
        mean_bank_a: runs.map(|day| {
            let kept = inputs.house_bank().charge_efficiency;
            (day_ah / day.hours - load_a) / kept
        }),
        mains_kwh: day.map(|day| day.mains_kwh),
        load_pct: runs.map(|day| 100.0 * day.load),
        fuel_l: day.map(|day| day.fuel_l),
        allowed_h: inputs.genset.hours_day,
    })
}

/// The runs with which a day closes that lacks so many ampere-hours without
/// them, the boat drawing `load_a` \[A\] meanwhile: each ends at the target and
/// begins where the rest of the day left the bank, as the engine's do. None where
/// no runs close it, or the bank is frozen where one would begin.
pub fn generator_day(inputs: &Inputs, need_ah: f64, load_a: f64) -> Option<GeneratorDay> {
    let bank = inputs.house_bank();
    let thawed = thawed_day(inputs, need_ah, load_a);
    thawed.filter(|day| day.runs == 0 || !bank.is_frozen(day.from))
}

/// The state of charge, 0 to 1, at which the generator would begin and finds the
/// bank frozen; none where it never does.
fn frozen_from(inputs: &Inputs, need_ah: f64, load_a: f64) -> Option<f64> {
    let bank = inputs.house_bank();
    let day = thawed_day(inputs, need_ah, load_a).filter(|day| day.runs > 0)?;
    Some(day.from).filter(|soc| bank.is_frozen(*soc))
}

/// The runs of a bank of which nothing is frozen.
fn thawed_day(inputs: &Inputs, need_ah: f64, load_a: f64) -> Option<GeneratorDay> {
    let none = GeneratorDay {
        runs: 0,
        hours: 0.0,
        from: 0.0,
        mains_kwh: 0.0,
        load: 0.0,
        fuel_l: 0.0,
    };
    if need_ah <= 0.0 {
        return Some(none);
    }
    let day = DayNeed::new(inputs, need_ah);
    let charger = MainsCharger::on_generator(inputs).thawed();
    let bank = inputs.house_bank();
    let runs = runs_a_day(&day, bank.capacity_ah)?;
    let share_ah = need_ah / f64::from(runs);
    let from = |hours: f64| day.to - (share_ah - load_a * hours) / bank.capacity_ah;
    let fill = |hours: f64| charger.fill(from(hours).max(0.0), day.to, load_a);
    // Once it has carried all of the use there is nothing to put back.
    let most_h = (share_ah / load_a.max(1e-9)).min(24.0 / f64::from(runs));
    fill(most_h)?;
    let off_h = |hours: f64| fill(hours).map_or(f64::MAX, |fill| fill.hours) - hours;
    if off_h(most_h) > 0.0 {
        return None;
    }
    let hours = bracketed_root(off_h, 0.0, most_h, 1e-9);
    let Fill { mains_kwh, .. } = fill(hours)?;
    let (hours, mains_kwh) = (f64::from(runs) * hours, f64::from(runs) * mains_kwh);
    let load = load_share(mains_kwh, hours, inputs.generator_kw());
    let l_h = part_load_l_h(inputs.generator_full_l_h(), FOOT, load);
    Some(GeneratorDay {
        runs,
        hours,
        from: from(hours / f64::from(runs)),
        mains_kwh,
        load,
        fuel_l: burnt_l(l_h, hours),
    })
}

/// The fewest equal runs with which the bank stays at or above the lowest state
/// of charge wanted; where no number of runs does that, with which it is not
/// emptied.
fn runs_a_day(day: &DayNeed, capacity_ah: f64) -> Option<u32> {
    let within = |low: f64| {
        let holds_ah = (day.to - low) * capacity_ah;
        (1..=MOST_RUNS).find(|runs| day.need_ah <= f64::from(*runs) * holds_ah + 1e-9)
    };
    within(day.low).or_else(|| within(0.0))
}
