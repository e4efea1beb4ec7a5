//! The energy budget of a day.

pub mod hours;

use serde::Serialize;

use crate::formula::formula;
use crate::physics::sources;
use hours::{DayHours, SolarStorage};

use crate::physics::charging::{
    autonomy_days, charge_ah, energy_wh, mean_draw_a as mean_a, part_wh, rest_ah, saved_ah,
    usable_ah,
};
use crate::physics::drive::percent;
use crate::sky::sky;
use crate::worksheet::{Basis, Current, When, Worksheet};

/// A day's energy, in and out.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Energy {
    /// Voltage that watt-hours and ampere-hours are converted with: the bank
    /// at rest, half full \[V\].
    pub bank_v: f64,
    /// At anchor.
    pub anchor: DayUse,
    /// Under way.
    pub under_way: DayUse,
    /// From the panels \[W·h\].
    pub sun_wh: f64,
    /// From the panels \[A·h\].
    pub sun_ah: f64,
    /// Of that, what the loads take at once on a day at anchor \[A·h\].
    pub sun_direct_ah: f64,
    /// Of that, what the bank keeps for the hours without enough sun, its charge
    /// efficiency taken off \[A·h\].
    pub sun_stored_ah: f64,
    /// What the sun leaves to be put back on a day at anchor \[A·h\].
    pub rest_ah: f64,
    /// What the engine has to put back of it \[A·h\]: all, or nothing where
    /// shore power does.
    pub engine_ah: f64,
    /// Ampere-hours between the two ends of the usable window at the day's mean
    /// draw \[A·h\].
    pub usable_ah: f64,
    /// Days at anchor from full to the end of the window without the engine;
    /// none when the sun covers the use. Sun that goes through the bank counts
    /// less its charge efficiency.
    pub autonomy_days: Option<f64>,
    /// Each row of the list, and the inverter's idle draw.
    pub rows: Vec<RowUse>,
}

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

/// Adds up a day.
pub fn energy(sheet: &Worksheet) -> Energy {
    let inputs = &sheet.inputs;
    let bank_v = bank_v(sheet);
    let rows = match inputs.daily.basis {
        Basis::Figure => Vec::new(),
        Basis::Listed => rows(sheet, bank_v),
    };
    let (anchor, under_way) = match inputs.daily.basis {
        Basis::Figure => {
            let use_ah = saved_ah(inputs.daily.use_ah, saved(sheet));
            let day = DayUse {
                use_wh: energy_wh(use_ah, bank_v),
                use_ah,
                night_share_pct: inputs.daily.night_share_pct,
            };
            (day, day)
        }
        Basis::Listed => (
            total(&rows, bank_v, |row| row.anchor_wh),
            total(&rows, bank_v, |row| row.under_way_wh),
        ),
    };
    let solar_day = sky(inputs, inputs.sun.month);
    let sun_wh = solar_day.day_wh();
    let sun = DayHours::new(&anchor, &solar_day, bank_v).split(&SolarStorage::of(inputs));
    let usable_ah = usable_ah(
        inputs.window_high_pct() / 100.0,
        inputs.window_low_pct() / 100.0,
        inputs.bank.capacity_ah,
        inputs.given_share(mean_a(anchor.use_ah)),
    );
    let rest_ah = rest_ah(anchor.use_ah, sun.direct_ah, sun.stored_ah);
    Energy {
        bank_v,
        anchor,
        under_way,
        sun_wh,
        sun_ah: charge_ah(sun_wh, bank_v),
        sun_direct_ah: sun.direct_ah,
        sun_stored_ah: sun.stored_ah,
        rest_ah,
        engine_ah: if inputs.engine_charges() {
            rest_ah
        } else {
            0.0
        },
        usable_ah,
        autonomy_days: (rest_ah > 0.0).then(|| autonomy_days(usable_ah, rest_ah)),
        rows,
    }
}

/// Energy from panels \[W·h\]: label power \[W\] times hours of full sun times
/// yield (0 to 1); J. A. Duffie, W. A. Beckman, "Solar Engineering of Thermal
/// Processes" (from memory), for the idea of full-sun hours.
#[formula(symbol = "E_sun", unit = "W·h", source = sources::SOLAR)]
pub fn sun_wh(
    #[symbol("P_sun")] panel_w: f64,
    #[symbol("h_sun")] full_hours: f64,
    #[symbol("η_sun")] yield_share: f64,
) -> f64 {
    panel_w * full_hours * yield_share
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
            let bank_v = bank_v(sheet);
            mean_a(total(&rows(sheet, bank_v), bank_v, |row| row.anchor_wh).use_ah)
        }
    }
}

/// What the boat draws while charging \[A\].
pub fn house_load_a(sheet: &Worksheet) -> f64 {
    sheet
        .inputs
        .run
        .house_load_a
        .unwrap_or_else(|| mean_draw_a(sheet))
}

/// What lighter loads save of the use, 0 to 1.
fn saved(sheet: &Worksheet) -> f64 {
    sheet.inputs.daily.saved_pct / 100.0
}

/// The bank's voltage at rest, half full \[V\].
fn bank_v(sheet: &Worksheet) -> f64 {
    sheet.inputs.house_bank().rest_v(0.5)
}

fn rows(sheet: &Worksheet, bank_v: f64) -> Vec<RowUse> {
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

fn total(rows: &[RowUse], bank_v: f64, wh: impl Fn(&RowUse) -> f64) -> DayUse {
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
