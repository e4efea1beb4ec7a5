//! What the alternators ask of the engine, and its fuel.

use crate::simulation::engine_fuel::chamber_kpa;
use crate::working::table::table;

table! { ENGINE |_s, _own, _b, r, p, i|
    "engine.available_kw" "It has, at this speed|kW|1|S|P_E*min(1;n_E/n_top)*k_T|Power follows speed and torque." => r.analyses.engine.available_kw;
    "engine.peak_kw" "The belts take at most|kW|2|S|P_shaft/1000/η_belt" => r.analyses.engine.peak_kw;
    "engine.peak_share_pct" "… of what it has|%|0|S|100*P_belt/P_has" => r.analyses.engine.peak_share_pct;
    "engine.mean_share_pct" "… mean of the run|%|0|S|100*{lasts?60*W_shaft/t:run/η_belt}{!lasts?P_belt}/P_has" => r.analyses.engine.mean_share_pct;
    "engine.idle_l_h" "To turn itself|L/h|2|F|P_friction*{willans}|The foot of the Willans line: fuel that goes into friction alone." => p.fuel.idle_l_h;
    "engine.marginal_l_kwh" "For a kW·h at the shaft|L|2|F|{willans}/η_belt|The slope of the Willans line, through the belt; 3.6 MJ is one kilowatt-hour." => r.analyses.engine.marginal_l_kwh;
    "inner.torque_share" "Torque it has, over that at its highest speed||2|P|min(1;k_0+(2-k_0)*min(1;n_E/n_top)-min(1;n_E/n_top)^2)|Less as it comes near idle. What most have above the rated torque half-way is not counted on.|eng_injection";
    "inner.friction_kpa" "Friction, as pressure on the pistons|kPa|1|F|C₁+48*n_E/1000+0.4*(2*S/1000*n_E/60)^2|The bracket is the mean speed of the piston in m/s.|eng_injection";
    "inner.friction_kw" "Friction|kW|2|F|p:kPa*V_E*n_E/120000|Every cylinder works every second turn.";

    "P_shaft" "||run.peak_shaft_w";
    "P_belt" "||engine.peak_kw";
    "P_has" "||engine.available_kw";
    "P_friction" "||inner.friction_kw";
    "p:kPa" "||inner.friction_kpa";
    "B₀" "||engine.idle_l_h";
    "b_E" "||engine.marginal_l_kwh";
    "k_T" "||inner.torque_share";
    "k_0" "Where its torque curve would begin at a standstill, by the way of injection" => i.eng.injection.torque_foot();
    "C₁" "Friction at a standstill, by the way of injection|kPa" => chamber_kpa(i.eng.injection);
    "willans" "3.6/(η_i*H*ρ_fuel)";
    "@P" "Relation of Leiderman and Khlystov for the power of an engine at full load; coefficients from memory.";
}
