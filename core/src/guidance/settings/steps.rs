//! Voltages at which the house bank is guarded: a lithium bank's management
//! system above and below, a lead bank's alarm and switch below.

use crate::boat::Worksheet;
use crate::boat::house_load_a;
use crate::physics::battery::LFP_MOST_V;

/// Volts below a lithium cell's most at which it warns, has the charging cut
/// and opens: 3.59, 3.62 and 3.65 V, whatever it is charged to. Own reasoning:
/// the first is 40 mV clear of the usual charge voltage and a regulator's
/// ripple, and the steps are a tenth of a volt apart in 12 V.
const BELOW_MOST_V: [f64; 3] = [0.06, 0.03, 0.0];
/// Volts a cell at which a lithium bank warns, drops loads and opens; common practice.
const LITHIUM_LOW_V: [f64; 3] = [3.10, 3.00, 2.80];

/// A 12 V lead block at the end of a 20-hour discharge \[V\]: 1.75 V a cell,
/// common practice; no step lies lower.
const LEAD_EMPTY_V: f64 = 10.5;
/// Least distance between a lead bank's steps for each 12 V block \[V\]: from
/// warning to loads off, and from there to everything off. Own reasoning.
const LEAD_APART_V: [f64; 2] = [0.3, 0.5];

/// Warning, charging off, contactor of a lithium bank of so many cells \[V\].
pub(super) fn high_v(cells: f64) -> [f64; 3] {
    BELOW_MOST_V.map(|below| (LFP_MOST_V - below) * cells)
}

/// Warning, loads off, contactor of a lithium bank of so many cells \[V\].
pub(super) fn lithium_low_v(cells: f64) -> [f64; 3] {
    LITHIUM_LOW_V.map(|v| v * cells)
}

/// Warning, loads off, all off of a lead bank \[V\], under load: where it rests
/// at the least charge wanted, less what its resistance takes at the usual
/// draw for the warning and at the peak for the loads, so that a pump does not
/// trip them.
pub(super) fn lead_low_v(sheet: &Worksheet) -> [f64; 3] {
    let inputs = &sheet.inputs;
    let blocks = inputs.bank.nominal_v.blocks();
    let bank = inputs.house_bank();
    let rest_v = bank.rest_v(inputs.window_low_pct() / 100.0);
    let under = |load_a: f64| rest_v - load_a * bank.giving_ohm();
    let [to_shed_v, to_off_v] = LEAD_APART_V.map(|apart| apart * blocks);
    let empty_v = LEAD_EMPTY_V * blocks;
    let warn_v = under(house_load_a(sheet)).max(empty_v + to_off_v + to_shed_v);
    let shed_v = under(sheet.bus_peak_a())
        .min(warn_v - to_shed_v)
        .max(empty_v + to_off_v);
    let off_v = (shed_v - to_off_v).max(empty_v);
    // Set to a tenth of a volt.
    [warn_v, shed_v, off_v].map(|v| (10.0 * v + 1e-6).floor() / 10.0)
}
