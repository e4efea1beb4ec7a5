//! The alternator: its curve, what it sheds its heat through, and its engine space.

use super::day::maybe;
use super::scene::{Scene, of};
use super::table::table;
use crate::physics::air::SPECIFIC_HEAT;
use crate::physics::losses::COPPER_FACTOR;
use crate::worksheet::{Breathing, Curve};

table! { MACHINE |s, own, b, r, p, i|
    "machine.shaft_rpm" "Its own speed|rpm|0|S|i*n_E" => r.machine.shaft_rpm;
    "machine.infinite_a" "Output at endless speed|A|1|C|{points?√(I_N^2-{slope}/n_N^2)}{!points?I_N/√(1-(n₀/n_N)^2)}|{points?Through both points: I² is linear in 1/n².}{!points?Through the rating.}|alt_curve" => r.machine.infinite_a;
    "machine.zero_rpm" "Curve begins at|rpm|0|C|{points?√(0-{slope})/I∞}{!points?min(n_begin;0.95*n_N)}|{points?Where the curve through both points comes to nothing.}{!points?As given, and below the speed of the rating.}" => r.machine.zero_rpm;
    "machine.full_cold_a" "Full field, as rated|A|0|C|I∞*√({!gives?max(0;}1-(n₀/n)^2{!gives?)}){two?+I∞′*√({!gives2?max(0;}1-(n₀′/n′)^2{!gives2?)})}|At the voltage and rotor temperature of the rating.|{two?alt2_rated_a alt2_rated_rpm alt2_curve alt2_zero_rpm alt2_pulley_ratio}" => r.machine.full_cold_a;
    "machine.hot_a" "Held, hot|A|0|Ohot|{held}|{heldby} Its losses at this current, and the heat its air carries away, are the two sides of the balance that finds it.|inner.hot.losses_w inner.hot.carried_w" => r.machine.hot_a;
    "machine.hot.winding_c" "… winding|°C|0|Hhot|{winding}|{balance}" => hot(s, own.id);
    "machine.hot.rectifier_c" "… rectifier plate|°C|0|Hhot|{plate}|{balance}" => hot(s, own.id);
    "machine.hot.case_c" "… case|°C|0|Hhot|{case}|{balance}" => hot(s, own.id);
    "machine.hot.air_c" "… air of the space|°C|0|Ahot|{air}" => hot(s, own.id);
    "machine.space_air_m3h" "Air through the space|m³/h|0|O|{breathes?V_E/1000*n_E/2*60*λ+}q_blower*k_blower+q_gaps|What the engine breathes every second turn, the blower as installed, and the gaps.|eng_breathing" => r.machine.space_air_m3h;
    "inner.air_w_k" "Carried off by air for each kelvin|W/K|2|A|q/3600*ρ_air*c" => p.space.flow_w_k;
    "machine.cooling_factor" "Cooling factor that meets the anchor||3|H||There is no closed formula: it is searched for until the winding settles at the temperature of the anchor, at full field, at the anchor's speed and in its air.|alt_anchor_winding_c alt_anchor_rpm alt_anchor_air_c alt_efficiency_pct alt_mass_kg inner.winding_body_w_k machine.phase_20c_ohm" => r.machine.cooling_factor;
    "inner.fan_factor" "Cooling by the fan at this speed||3|N|0.15+0.85*(n/n_anchor)^k_cool|Part of the cooling does not come from the fan." => p.main.fan;
    "inner.winding_air_w_k" "Winding to air|W/K|2|H|3{toair}" => p.main.machine.winding_air;
    "inner.body_air_w_k" "Body to air|W/K|2|H|4.5{toair}" => p.main.machine.body_air;
    "inner.rectifier_air_w_k" "Rectifier to air|W/K|2|H|3.2{toair}" => p.main.machine.rectifier_air;
    "inner.winding_body_w_k" "Winding to body|W/K|2|H|6{tobody}" => p.main.machine.winding_body;
    "inner.rectifier_body_w_k" "Rectifier to body|W/K|2|H|0.8{tobody}" => p.main.machine.rectifier_body;
    "inner.hot.inlet_c" "Air it draws in, hot|°C|1|Hhot|T_air+β*(T_b-T_air){hose?+k_hose*(T_out-(T_air+β*(T_b-T_air)))}|Some of its own warm air is drawn in again; a hose brings air from outside." => s.machine.inlet_c(&s.t);
    "inner.hot.carried_w" "Heat the alternator gives the air|W|0|Hhot|G_w*(T_w-T_in)+G_b*(T_b-T_in)+G_r*(T_r-T_in)+0.7*P_fan|Settled, this is what the alternator loses: heat in is heat carried away. Most of the fan's own loss leaves as warm air." => s.heat_w[0];
    "machine.phase_20c_ohm" "Resistance of one phase at 20 °C|Ω|5|L|{!plausible?max(0.05*P_N;}{plausible?(}P_N-P_N*f_Fe-P_N*f_fan-2*V_d*I_N-P_field,N)/(k_Cu*I_N^2*{copper}110-20)))|What iron, fan, diodes and field leave of the rated loss is the winding's, at 110 °C." => r.machine.phase_20c_ohm;
    "inner.rated_loss_w" "Loss at the rating|W|0|L|V_N*I_N*(1/η_N-1)|What goes in at the rating and does not come out.";

    "n" "||machine.shaft_rpm";
    "I∞" "||machine.infinite_a";
    "n₀" "||machine.zero_rpm";
    "n′" "Second alternator: its own speed|rpm" => b.unit(1).shaft_rpm;
    "I∞′" "Second alternator: output at endless speed|A" => b.unit(1).curve.infinite_a;
    "n₀′" "Second alternator: curve begins at|rpm" => b.unit(1).curve.zero_rpm;
    "q" "||machine.space_air_m3h";
    "c" "Specific heat of air|J/(kg·K)" => SPECIFIC_HEAT;
    "g" "||machine.cooling_factor";
    "k_fan" "||inner.fan_factor";
    "P_N" "||inner.rated_loss_w";
    "k_Cu" "π²/6: three phases behind a bridge" => COPPER_FACTOR;
    "G_w" "||inner.winding_air_w_k" => s.machine.winding_air;
    "G_b" "||inner.body_air_w_k" => s.machine.body_air;
    "G_r" "||inner.rectifier_air_w_k" => s.machine.rectifier_air;
    "G_wb" "||inner.winding_body_w_k" => s.machine.winding_body;
    "G_rb" "||inner.rectifier_body_w_k" => s.machine.rectifier_body;
    "T_w" "Winding||machine.hot.winding_c" => s.t.winding_c;
    "T_b" "Body||machine.hot.case_c" => s.t.body_c;
    "T_r" "Rectifier plate||machine.hot.rectifier_c" => s.t.rectifier_c;
    "T_air" "Air of the space||machine.hot.air_c" => s.t.air_c;
    "T_in" "Air it draws in||inner.hot.inlet_c" => s.machine.inlet_c(&s.t);
    "P_alt" "||inner.hot.carried_w" => s.heat_w[0];
    "P_alt′" "Heat the second alternator gives the air then|W" => s.heat_w[1];
    "T_E" "Engine then|°C" => s.engine_c;
    "G_air" "||inner.air_w_k";
    "G_air:after" "Carried off by air for each kelvin, the engine stopped|W/K" => p.space.after_w_k;
    "T_start" "At the start|°C" => p.space.start_c;
    "t" "Time since the start|min" => s.seconds / 60.0;
    "e" "Base of the natural logarithm" => std::f64::consts::E;
    "P_stored" "Heat that goes into warming it further then|W" => s.stored_w;
    "P_stored:cool" "Heat it gives up by cooling then|W" => -s.stored_w;

    "points" "" => i.alt.curve == Curve::Points && p.main.curve_fits;
    "gives" "" => p.main.as_rated_a() > 0.0;
    "gives2" "" => b.unit(1).as_rated_a() > 0.0;
    "two" "" => p.second.is_some_and(|second| second.feeds_house);
    "second" "" => p.second.is_some();
    "breathes" "" => i.eng.breathing == Breathing::Space;
    "hose" "" => p.main.machine.hose > 0.0;
    "plausible" "" => p.main.losses.plausible;
    "warms" "" => s.stored_w > 0.0;
    "cools" "" => s.stored_w < 0.0;
    "turning" "" => s.turning;
    "hot" "" => s.at == "hot";
    "soak" "" => s.at == "soak";
    "peak" "" => s.at.ends_with("peak");
    "measured" "" => s.turning && p.space.measured_hot_c.is_some();
    "airless" "" => s.air_w_k <= 0.0;

    "slope" "(I_2^2-I_N^2)/(1/n_2^2-1/n_N^2)";
    "copper" "(1+0.00393*(";
    "tobody" "*m/6|The first figure is that of a 6 kg machine in W/K: own reasoning.";
    "toair" "*m/6*g*k_fan|The first figure is that of a 6 kg machine in W/K: own reasoning.";
    "winding" "(P_Cu+G_wb*T_b+G_w*T_in{stored})/(G_wb+G_w)";
    "plate" "({turning?P_d+}G_rb*T_b+G_r*T_in{stored})/(G_rb+G_r)";
    "case" "(P_Fe+P_field+0.3*P_fan+G_wb*T_w+G_rb*T_r+G_b*T_in{stored})/(G_wb+G_rb+G_b)";
    "stored" "{warms?-P_stored}{cools?+P_stored:cool}";
    "air" "{measured?T_hot{!hot?+(T_start-T_hot)*e^(0-t/τ)}|You measured it hot{!hot?; it comes up as the engine warms}.}{!measured?{airless?|Nothing carries heat to this air or away from it.}{!airless?{space}|{balance}}}";
    "space" "(P_alt{second?+P_alt′}+G_E*T_E{hot?:in}+G_air{soak?:after}*T_out+G_wall*T_cabin{stored})/(G_E+G_air{soak?:after}+G_wall)";
    "balance" "{hot?Settled: heat in is heat out.}{!hot?{peak?The highest of the run's moments, after {clock}. }{soak?The hour after the engine stops is stepped through time: no fan turns, nothing is lost in the alternator, and the block goes on heating the space. This is the balance when it is hottest.}{!soak?The run is stepped through time; at any moment of it heat in is heat carried away and heat stored.}}";
    "unsettled" "Nothing settles: more heat always means more loss, so that nothing is held on and on.";

    "@C" "V. Caliskan, D. J. Perreault, T. M. Jahns, J. G. Kassakian, Analysis of three-phase rectifiers with constant-voltage loads, IEEE Trans. Circuits and Systems I 50(9), 2003, from memory; how heat weakens it is own reasoning.";
    "@L" "Loss by loss after M. Örn, Towards better alternator efficiency, MSc thesis, Linköping University, 2014; the split from memory.";
    "@H" "A network after S. C. Tang, T. A. Keim, D. J. Perreault, Thermal modeling of Lundell alternators, IEEE Trans. Energy Conversion 20(1), 2005; shares from memory, scaled by one temperature.";
    "@N" "F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, from memory.";
    "@A" "Heat balance; specific heat of air from memory.";
}

/// A temperature of the alternator once all has settled.
fn hot(s: &Scene, id: &str) -> f64 {
    maybe(s.boat.report.machine.hot.map(|t| of(&t, id)))
}
