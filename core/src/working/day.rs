//! The day: what is used, what the sun gives, what is left to the engine.

use crate::analysis::solar_day::solar_day;
use crate::boat::{Basis, SunBasis};
use crate::physics::solar::FULL_SUN_MJ;
use crate::working::table::table;

table! { DAY |_s, own, _b, r, p, i|
    "energy.anchor.use_ah" "Used|A·h|0|S|{listed?E_day/V}{!listed?Q_day:in{saves?*(1-f_saved)}}|{listed?{list}}{!listed?{saves?Less what lighter loads save.}{!saves?{asgiven}}}" => r.analyses.energy.anchor.use_ah;
    "energy.anchor.use_wh" "… as energy|W·h|0|S|{listed?{rows}}{!listed?Q_day*V}|{listed?{list}}" => r.analyses.energy.anchor.use_wh;
    "energy.anchor.night_share_pct" "… of that at night|%|0|S|{listed?{uses?100*({nights})/E_day}}{!listed?100*f_night}|{listed?{uses?{list}}{!uses?Nothing is used.}}{!listed?{asgiven}}" => r.analyses.energy.anchor.night_share_pct;
    "energy.bank_v" "Bank at rest, half full|V|2|T|N*V_block|Watt-hours and ampere-hours are turned into each other with it.|bank_chemistry bank_nominal_v" => r.analyses.energy.bank_v;
    "energy.sun_wh" "Energy from the sun|W·h|0|U|P_sun*h_sun{!place?:in}*η_sun{place?*k_heat}|{place?Reckoned hour by hour: cells in the sun warm up and lose a little for each degree above 25 °C.|sun_noct_c sun_heat_loss_pct_k space_outside_c}" => r.analyses.energy.sun_wh;
    "inner.sun_full_hours" "Hours of full sun|h|2|U|{place?K*H₀/3.6}|{place?An hour of full sun is 3.6 MJ on a square metre.|sun_latitude_deg sun_month}{!place?{asgiven}}" => solar_day(i, i.sun.month).full_hours;
    "energy.sun_ah" "From the sun|A·h|0|S|E_sun/V" => r.analyses.energy.sun_ah;
    "energy.engine_ah" "Left to the engine|A·h|0|S|{charges?max(0;Q_day-Q_direct-Q_stored)}|{charges?What the sun leaves, hour by hour: what the loads take at once counts in full, what goes through the bank counts less its charge efficiency.|bank_charge_efficiency_pct}{!charges?The engine is not run for charging: shore power puts back what the sun leaves.}" => r.analyses.energy.engine_ah;
    "energy.usable_ah" "Usable from the bank|A·h|0|S|max(0;s_high-s_low)*C{peukert?*min(1;(20*Q_day/24/C)^(1-p))}|{peukert?Lead gives less to a draw harder than that of its 20-hour rating (W. Peukert, 1897, from memory).}" => r.analyses.energy.usable_ah;
    "energy.autonomy_days" "Without the engine|days|1|S|{val?Q_usable/(Q_day-Q_direct-Q_stored)}|{none?The sun covers the use: there is no end.}{!none?From full to the end of the window.}" => maybe(r.analyses.energy.autonomy_days);
    "day.need_ah" "To put back|A·h|0|S|Q|What is left to the engine has to be put back." => r.analyses.day.need_ah;
    "day.engine_hours" "Engine|h|2|S|{runs?Q:need/(η_bank*I_mean:day+I_house)}|{runs?{daily}}{!runs?{norun}}" => maybe(r.analyses.day.engine_hours);
    "day.fuel_l" "Fuel for it|L|1|F|{runs?B₀*t:day+b_E*W_shaft:day}|{runs?{fuel}}{!runs?{norun}}" => maybe(r.analyses.day.fuel_l);
    "day.marginal_fuel_l" "… while motoring anyway|L|1|F|{runs?b_E*W_shaft:day}|{runs?{shaft}}{!runs?{norun}}" => maybe(r.analyses.day.marginal_fuel_l);

    "E_day" "||energy.anchor.use_wh";
    "Q_day" "||energy.anchor.use_ah";
    "V" "||energy.bank_v";
    "N" "12 V blocks in series" => p.bank.blocks;
    "V_block" "One 12 V block at rest, half full, from the table|V" => r.analyses.energy.bank_v / p.bank.blocks;
    "h_sun" "||inner.sun_full_hours";
    "k_heat" "What heat leaves of it, the mean over the day's sun" => over(r.analyses.energy.sun_wh, i.sun.panel_w * solar_day(i, i.sun.month).full_hours * i.sun.yield_pct / 100.0);
    "H₀" "Sun on a level square metre outside the air, on the month's mean day|MJ/m²" => solar_day(i, i.sun.month).full_hours * FULL_SUN_MJ / i.sun.clearness;
    "E_sun" "||energy.sun_wh";
    "Q_direct" "Of the sun, taken by the loads at once, hour by hour|A·h" => r.analyses.energy.sun_direct_ah;
    "Q_stored" "Of the sun, kept by the bank for the other hours, its charge efficiency taken off|A·h" => r.analyses.energy.sun_stored_ah;
    "p" "Peukert's exponent" => i.bank.chemistry.lead().map_or(f64::NAN, |lead| lead.peukert);
    "Q_usable" "||energy.usable_ah";
    "Q" "||energy.engine_ah";
    "Q:need" "||day.need_ah";
    "t:day" "||day.engine_hours";
    "I_mean:day" "Mean current into the bank, of this run|A" => maybe(r.analyses.day.mean_bank_a);
    "W_shaft:day" "Energy the alternators' shafts took, added up along the run|kW·h" => maybe(r.analyses.day.shaft_kwh);

    "listed" "" => i.daily.basis == Basis::Listed;
    "saves" "" => i.daily.saved_pct > 0.0;
    "uses" "" => r.analyses.energy.anchor.use_wh > 0.0;
    "place" "" => i.sun.basis == SunBasis::Place;
    "charges" "" => i.engine_charges();
    "peukert" "" => i.bank.chemistry.lead().is_some() && r.analyses.energy.anchor.use_ah > 0.0;
    "runs" "" => maybe(r.analyses.day.engine_hours) > 0.0;
    "endless" "" => r.analyses.day.engine_hours.is_none();
    "val" "" => own.value > 0.0;
    "none" "" => own.value.is_nan();

    "list" "Added up from the list of loads.";
    "asgiven" "As you gave it.";
    "norun" "{endless?{trouble}}{!endless?The sun covers the use, or shore power does; the engine need not run.}";
    "stepped" "There is no closed formula: the run is stepped through time, as current and heat change. The mean current is the run's own, so this line ties time and current together and does not replace the stepping.";
    "daily" "{stepped} Each run ends at the charge target and begins where the rest of the day left the bank.";
    "fuel" "What turns the engine, and what the alternator asks on top.";
    "shaft" "Energy at the shaft is added up along the run.";

    "@O" "Own reasoning.";
    "@S" "Arithmetic.";
    "@U" "J. A. Duffie, W. A. Beckman, Solar Engineering of Thermal Processes, from memory.";
    "@F" "Willans line; friction from J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, section 13.6, from memory.";
    "@T" "Tables of typical cells, from memory; lead's appetite is common practice.";
}

/// No figure is "not a number".
pub(super) fn maybe(figure: Option<f64>) -> f64 {
    figure.unwrap_or(f64::NAN)
}

/// What is left of a figure after another; all where there is nothing.
fn over(whole: f64, part: f64) -> f64 {
    if part > 0.0 { whole / part } else { 1.0 }
}
