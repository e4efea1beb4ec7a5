//! The energy budget of a day.

pub mod hours;

use serde::Serialize;

use hours::{DayHours, SolarStorage, UnderWay};

use crate::analysis::solar_day::solar_day;
use crate::boat::{Basis, DayUse, RowUse, Worksheet, half_full_v, load_rows, saved, total};
use crate::physics::charging::{
    autonomy_days, charge_ah, day_ah, energy_wh, mean_draw_a as mean_a, rest_ah, saved_ah,
    usable_ah,
};

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
    /// From the other sources, wind or water, on a day at anchor \[A·h\].
    pub other_ah: f64,
    /// Of that, what the loads take at once \[A·h\].
    pub other_direct_ah: f64,
    /// Of that, what the bank keeps, its charge efficiency taken off \[A·h\].
    pub other_stored_ah: f64,
    /// What sun and other sources leave to be put back on a day at anchor \[A·h\].
    pub rest_ah: f64,
    /// What the engine has to put back of it \[A·h\]: all, or nothing where
    /// shore power or a generator does.
    pub engine_ah: f64,
    /// Capacity of the bank at its age \[A·h\].
    pub bank_ah: f64,
    /// Ampere-hours between the two ends of the usable window at the day's mean
    /// draw \[A·h\].
    pub usable_ah: f64,
    /// Days at anchor from full to the end of the window without the engine;
    /// none when sun and other sources cover the use. What goes through the bank counts
    /// less its charge efficiency.
    pub autonomy_days: Option<f64>,
    /// Each row of the list, and the inverter's idle draw.
    pub rows: Vec<RowUse>,
}

/// Adds up a day.
pub fn energy(sheet: &Worksheet) -> Energy {
    let inputs = &sheet.inputs;
    let bank_v = half_full_v(sheet);
    let rows = match inputs.daily.basis {
        Basis::Figure => Vec::new(),
        Basis::Listed => load_rows(sheet, bank_v),
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
    let solar_day = solar_day(inputs, inputs.sun.month);
    let sun_wh = solar_day.day_wh();
    let hours = DayHours::new(&anchor, &solar_day, bank_v)
        .with_other(inputs.other_at_anchor_a(), UnderWay::NEVER);
    let split = hours.split(&SolarStorage::of(inputs));
    let usable_ah = usable_ah(
        inputs.window_high_pct() / 100.0,
        inputs.window_low_pct() / 100.0,
        inputs.bank_ah(),
        inputs.given_share(mean_a(anchor.use_ah)),
    );
    let rest_ah = rest_ah(anchor.use_ah, split.direct_ah(), split.stored_ah());
    Energy {
        bank_v,
        anchor,
        under_way,
        sun_wh,
        sun_ah: charge_ah(sun_wh, bank_v),
        sun_direct_ah: split.sun.direct_ah,
        sun_stored_ah: split.sun.stored_ah,
        other_ah: day_ah(inputs.other_at_anchor_a()),
        other_direct_ah: split.other.direct_ah,
        other_stored_ah: split.other.stored_ah,
        rest_ah,
        engine_ah: if inputs.engine_charges() {
            rest_ah
        } else {
            0.0
        },
        bank_ah: inputs.bank_ah(),
        usable_ah,
        autonomy_days: (rest_ah > 0.0).then(|| autonomy_days(usable_ah, rest_ah)),
        rows,
    }
}
