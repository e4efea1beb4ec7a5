//! What the loads of a day draw from the bank.

use serde::Serialize;

use crate::boat::{Basis, Current, Drawn, Load, When, Worksheet};
use crate::physics::charging::{charge_ah, mean_draw_a as mean_a, part_wh, saved_ah};
use crate::physics::drive::percent;

/// Use of one day.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct DayUse {
    /// \[W·h\]
    pub use_wh: f64,
    /// \[A·h\]
    pub use_ah: f64,
    /// Part of it at night \[%\].
    pub night_share_pct: f64,
}

/// Use of one load.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RowUse {
    /// Its name.
    pub name: String,
    /// From the bank on a day at anchor \[W·h\].
    pub anchor_wh: f64,
    /// From the bank on a day under way \[W·h\].
    pub under_way_wh: f64,
    /// Part of it at night \[%\].
    pub night_share_pct: f64,
}

/// Mains energy \[W·h\] and idle hours of an inverter as energy from the bank
/// \[W·h\]: E/η + P_idle·t.
pub fn inverter_wh(mains_wh: f64, efficiency: f64, idle_w: f64, on_h: f64) -> f64 {
    mains_wh / efficiency + idle_w * on_h
}

/// What the boat draws on average at anchor \[A\].
pub fn mean_draw_a(sheet: &Worksheet) -> f64 {
    match sheet.inputs.daily.basis {
        Basis::Figure => mean_a(saved_ah(sheet.inputs.daily.use_ah, saved(sheet))),
        Basis::Listed => {
            let bank_v = half_full_v(sheet);
            mean_a(total(&load_rows(sheet, bank_v), bank_v, |row| row.anchor_wh).use_ah)
        }
    }
}

/// What the boat draws while charging \[A\], without the loads that run only
/// while the engine does; see [`engine_loads`].
pub fn house_load_a(sheet: &Worksheet) -> f64 {
    sheet
        .inputs
        .run
        .house_load_a
        .unwrap_or_else(|| steady_draw_a(sheet))
}

/// What the boat draws on average at anchor, engine or not \[A\]: the mean draw
/// without the loads that run only while the engine does.
pub fn steady_draw_a(sheet: &Worksheet) -> f64 {
    steady_a(sheet, |row| row.anchor_wh).unwrap_or_else(|| mean_draw_a(sheet))
}

/// What the boat draws while it motors \[A\]: the list's mean under way, without
/// the loads that run only while the engine does. One figure for the day, or a
/// stated house load, holds under way too.
pub fn under_way_load_a(sheet: &Worksheet) -> f64 {
    let listed = sheet.inputs.daily.basis == Basis::Listed;
    if sheet.inputs.run.house_load_a.is_some() || !listed {
        return house_load_a(sheet);
    }
    steady_a(sheet, |row| row.under_way_wh).unwrap_or_else(|| {
        let bank_v = half_full_v(sheet);
        mean_a(total(&load_rows(sheet, bank_v), bank_v, |row| row.under_way_wh).use_ah)
    })
}

/// What a day at anchor and one under way use without the loads that run only
/// while the engine does; none where there are none of those.
pub fn steady_use(sheet: &Worksheet) -> Option<(DayUse, DayUse)> {
    let rows = steady_rows(sheet)?;
    let bank_v = half_full_v(sheet);
    Some((
        total(&rows, bank_v, |row| row.anchor_wh),
        total(&rows, bank_v, |row| row.under_way_wh),
    ))
}

/// The mean of the rows that draw over the day \[A\]; none where all of them do.
fn steady_a(sheet: &Worksheet, wh: fn(&RowUse) -> f64) -> Option<f64> {
    let rows = steady_rows(sheet)?;
    Some(mean_a(total(&rows, half_full_v(sheet), wh).use_ah))
}

/// The rows that draw over the day; none where all of them do.
fn steady_rows(sheet: &Worksheet) -> Option<Vec<RowUse>> {
    if engine_loads(sheet).is_empty() {
        return None;
    }
    let steady = |at: usize| !sheet.loads.get(at).is_some_and(runs_with_engine);
    let rows = load_rows(sheet, half_full_v(sheet)).into_iter().enumerate();
    let rows = rows.filter(|(at, _)| steady(*at));
    Some(rows.map(|(_, row)| row).collect())
}

/// A load that runs only while the engine does.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct EngineLoad {
    /// Its name.
    pub name: String,
    /// What it draws from the bank while it runs, its duty cycle taken as a mean \[A\].
    pub amperes: f64,
    /// How long it runs in a day \[h\].
    pub hours: f64,
    /// Whether at anchor, under way or both.
    #[serde(skip)]
    pub when: When,
}

/// What runs all day long runs with the engine as it does without \[h\].
const ALL_DAY_H: f64 = 24.0;

fn runs_with_engine(load: &Load) -> bool {
    let row = &load.row;
    row.drawn == Drawn::WithEngine && row.hours > 0.0 && row.hours < ALL_DAY_H
}

/// The loads of the list that run only while the engine does, whatever it is run
/// for; none where the day's use is one figure.
pub fn engine_loads(sheet: &Worksheet) -> Vec<EngineLoad> {
    if sheet.inputs.daily.basis != Basis::Listed || !sheet.loads.iter().any(runs_with_engine) {
        return Vec::new();
    }
    let bank_v = half_full_v(sheet);
    let rows = load_rows(sheet, bank_v);
    let each = sheet.loads.iter().zip(&rows);
    each.filter(|(load, _)| runs_with_engine(load))
        .map(|(load, used)| EngineLoad {
            name: load.name.clone(),
            amperes: charge_ah(used.anchor_wh.max(used.under_way_wh), bank_v) / load.row.hours,
            hours: load.row.hours,
            when: load.row.when,
        })
        .collect()
}

/// What lighter loads save of the use, 0 to 1.
pub(crate) fn saved(sheet: &Worksheet) -> f64 {
    sheet.inputs.daily.saved_pct / 100.0
}

/// The bank's voltage at rest, half full \[V\].
pub(crate) fn half_full_v(sheet: &Worksheet) -> f64 {
    sheet.inputs.house_bank().rest_v(0.5)
}

pub(crate) fn load_rows(sheet: &Worksheet, bank_v: f64) -> Vec<RowUse> {
    let daily = &sheet.inputs.daily;
    let efficiency = daily.inverter_efficiency_pct / 100.0;
    let kept = 1.0 - saved(sheet);
    let mut mains = false;
    let mut rows: Vec<RowUse> = sheet
        .loads
        .iter()
        .map(|load| {
            let row = &load.row;
            let hours = row.count * row.hours * row.duty_pct / 100.0;
            let wh = match row.kind {
                Current::DcWatts => row.draw * hours,
                Current::DcAmperes => row.draw * bank_v * hours,
                Current::AcWatts => {
                    mains |= row.draw * hours > 0.0;
                    inverter_wh(row.draw * hours, efficiency, 0.0, 0.0)
                }
            };
            let wh = wh * kept;
            RowUse {
                name: load.name.clone(),
                anchor_wh: if row.when == When::UnderWay { 0.0 } else { wh },
                under_way_wh: if row.when == When::Anchor { 0.0 } else { wh },
                night_share_pct: row.night_pct,
            }
        })
        .collect();
    if mains {
        let idle_wh =
            kept * inverter_wh(0.0, efficiency, daily.inverter_idle_w, daily.inverter_on_h);
        rows.push(RowUse {
            name: "Inverter, idle".to_string(),
            anchor_wh: idle_wh,
            under_way_wh: idle_wh,
            night_share_pct: daily.night_share_pct,
        });
    }
    rows
}

pub(crate) fn total(rows: &[RowUse], bank_v: f64, wh: impl Fn(&RowUse) -> f64) -> DayUse {
    // Begun at +0: the sum of nothing is −0 otherwise.
    let sum = |part: &dyn Fn(&RowUse) -> f64| rows.iter().map(part).fold(0.0, |a, b| a + b);
    let use_wh = sum(&wh);
    let night_wh = sum(&|row| part_wh(wh(row), row.night_share_pct / 100.0));
    DayUse {
        use_wh,
        use_ah: charge_ah(use_wh, bank_v),
        night_share_pct: if use_wh > 0.0 {
            percent(night_wh, use_wh)
        } else {
            0.0
        },
    }
}
