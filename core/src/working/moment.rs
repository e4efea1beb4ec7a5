//! What flows at a moment, and what is lost: the steps on the way.

use crate::boat::{SensorPlace, WayKind};
use crate::physics::battery::{Cells, lfp_cold_factor};
use crate::simulation::Limit;
use crate::simulation::moment::Output;
use crate::working::run::resists;
use crate::working::scene::Scene;
use crate::working::table::table;

table! { MOMENT |s, own, b, _r, p, i|
    ".can_a" "What the alternator may give then|A|0|O|{cap?min(}u*I_full{cap?;I_cap)}|What full field gives, as far as the regulator lets it.";
    ".full_a" "Full field then|A|0|C|I∞*x^s*√({!val?max(0;}1-(n₀/n*{behind}/x^s₀)^2{!val?)})|Full field at that voltage, the rotor as warm as it is then.";
    ".field_x" "Field then, over that of the rating||3|K|{at}/V_N*{copper}T_N-20))/{copper}T_b+ΔT_rotor-20))|A warm rotor resists more and takes less field; 0.00393 for each kelvin is copper's.";
    ".allowed" "How far the field may be up then||3|G|{fold?{!val?max(0;}(T_set+b/2-T_sensor{hot?{place_w?:w}{place_r?:r}{place_c?:c}})/b{!val?)}}{ramp?t/t_ramp}{slow?u_low}{free?1}{unfit?0}|{fold?The regulator folds back across its band around the set-point (common practice).}{ramp?The regulator lets the field up slowly.}{slow?The shaft turns slower than the low-speed cap begins at.}{free?Nothing holds the field back.}{unfit?The alternator is of another voltage than its battery and must not be connected.}|reg_kind reg_sensor" => p.main.allowed(s.seconds, s.machines[0].sensed_c).0;
    ".volt_a" "What the held voltage lets flow to bank and house then|A|0|O|{!val?max(0;}(V_held-V_rest)/R+{drawn}{!val?)}|More would lift the bank above the voltage that is held.|bank_charge_v reg_fixed_v reg_drop_mv_k bank_compensation_mv bank_temperature_c";
    ".bank_ohm" "What the bank resists then|Ω|5|T|{cells?r_C*N/C*k_cold}{!cells?max(0.01;V_abs-V_rest)/I_takes}+R_cable/1000|{cells?Cells, and the way to where the regulator measures.}{!cells?A lead bank's is such that it takes what it accepts at its absorption voltage.}|bank_chemistry bank_temperature_c" => p.bank.resistance_ohm(s.charge);
    ".flux_square" "Square of the flux over that of the rating||3|C|(I/I∞)^2+min(1;(n₀/n*{behind})^2)|What current and voltage ask of the iron, against the rating.";
    ".copper_w" "Winding loss|W|0|L|k_Cu*R_phase*I^2*{copper}T_w-20))" => s.losses.copper_w;
    ".diode_w" "Diode loss|W|0|L|2*V_d*I|Two diodes are always in the way." => s.losses.diode_w;
    ".field_w" "Field loss|W|0|L|P_field,N*Φ^(1/s)*{copper}T_b+ΔT_rotor-20))/{copper}T_N-20))|The field follows the flux backwards through saturation." => s.losses.field_w;
    ".iron_w" "Iron loss|W|0|L|f_Fe*P_N*(n/6000)^1.5*Φ" => s.losses.iron_w;
    ".fan_w" "Fan and bearing loss|W|0|L|f_fan*P_N*(n/6000)^k_fan:exp" => s.losses.fan_w;
    ".losses_w" "Lost in the alternator|W|0|L|P_Cu+P_d+P_field+P_Fe+P_fan|Heat that comes about in the alternator." => s.losses.total_w();
    "moment.alternator_a" "Alternator|A|0|Omoment|{held}|{heldby}" => p.charging_a(&s.moment.flow);
    "moment.bank_a" "Into the bank|A|0|Smoment|{into}|{less}" => s.moment.flow.bank_a;
    "moment.bank_v" "At the bank|V|2|Tmoment|V_rest+I_bank:now*R:then" => s.moment.flow.bank_v;
    "moment.charge_pct" "Charge|%|0|Smoment|100*(s_from+Q_gained/C)|The run is stepped through time." => 100.0 * s.charge;
    "moment.winding_c" "Winding|°C|0|Hmoment|{winding}|{balance}" => s.t.winding_c;
    "moment.rectifier_c" "Rectifier plate|°C|0|Hmoment|{plate}|{balance}" => s.t.rectifier_c;
    "moment.case_c" "Case|°C|0|Hmoment|{case}|{balance}" => s.t.body_c;
    "moment.air_c" "Air of the space|°C|0|Amoment|{air}" => s.t.air_c;
    "moment.shaft_w" "At its shaft|W|0|Lmoment|{taken}|What comes out and what is lost." => s.moment.shaft_w();

    "u" "||.allowed";
    "I_full" "||.full_a";
    "x" "||.field_x";
    "V:at" "Voltage at the alternator then|V" => s.moment.flow.main.volts;
    "T_sensor" "What the sensor feels then|°C" => s.machines[0].sensed_c;
    "T_sensor:w" "What the sensor feels then||machine.hot.winding_c" => s.machines[0].sensed_c;
    "T_sensor:r" "What the sensor feels then||machine.hot.rectifier_c" => s.machines[0].sensed_c;
    "T_sensor:c" "What the sensor feels then||machine.hot.case_c" => s.machines[0].sensed_c;
    "V_held" "Voltage that is held at the bank then, the temperatures considered|V" => p.held_at(&s.machines[0].t, &s.machines[1].t);
    "V_rest" "At rest at that state of charge, from the table|V" => p.bank.rest_v(s.charge);
    "R" "||.bank_ohm";
    "k_cold" "How much more it resists at this temperature, from the table" => lfp_cold_factor(i.bank.temperature_c);
    "V_abs" "Absorption voltage of its kind at this temperature|V" => absorption(s).volts;
    "I_takes" "What such a bank takes at that voltage, so full|A" => absorption(s).amperes;
    "I" "The alternator's own current then|A" => s.moment.flow.main.amperes;
    "I:mid" "From the alternators then||run.mid_a";
    "I:now" "From the alternators then||moment.alternator_a";
    "R_phase" "||machine.phase_20c_ohm";
    "Φ" "||.flux_square";
    "P_Cu" "||.copper_w";
    "P_d" "||.diode_w";
    "P_field" "||.field_w";
    "P_Fe" "||.iron_w";
    "P_fan" "||.fan_w";
    "P_loss" "||.losses_w";
    "I′" "The second alternator's current then|A" => s.moment.flow.second.amperes;
    "V′" "At the second alternator then|V" => s.moment.flow.second.volts;
    "P_loss′" "Lost in the second alternator then|W" => s.moment.second_losses.total_w();
    "I_can" "||.can_a";
    "I_can′" "What the second alternator may give then|A" => second_can(s);
    "I_bank" "||inner.bank_limit_a";
    "I_bank:now" "||moment.bank_a";
    "R:then" "What the bank resists then|Ω" => resists(&p.bank, s.charge, Output { amperes: s.moment.flow.bank_a, volts: s.moment.flow.bank_v });
    "Q_gained" "Charge gained until then, added up along the run|A·h" => (s.charge - i.run.from_pct / 100.0) * p.bank.capacity_ah;
    "I_volt" "||.volt_a";
    "I_part" "The converter's part then, of what flows to house and bank|A" => s.moment.flow.bank_a + p.taken_a() - s.moment.flow.second.amperes;
    "I_conv:out" "From the converter, locked out|A" => 0.0;
    "V_bank" "At the bank then|V" => s.moment.flow.bank_v;

    "linked" "" => p.linked;
    "cap" "" => p.main.cap_a.is_finite();
    "fromstart" "" => s.moment.flow.main.volts == i.way.start_v;
    "fold" "" => limit(s) == Limit::Temperature;
    "ramp" "" => limit(s) == Limit::Ramp;
    "slow" "" => limit(s) == Limit::LowSpeed;
    "free" "" => limit(s) == Limit::Machine;
    "unfit" "" => limit(s) == Limit::WrongVoltage;
    "place_w" "" => i.reg.sensor == SensorPlace::Winding;
    "place_r" "" => i.reg.sensor == SensorPlace::Rectifier;
    "place_c" "" => i.reg.sensor == SensorPlace::Case;
    "cells" "" => matches!(p.bank.cells, Cells::Lfp(_));
    "direct" "" => i.way.kind == WayKind::Direct;
    "works" "" => p.converter_works();
    "serves" "" => p.main_services_a() > 0.0;
    "now" "" => s.at == "moment";

    "at" "{fromstart?V_start}{!fromstart?V:at}";
    "behind" "({at}+2*V_d)/(V_N+2*V_d)";
    "out" "I*V:at{second?+I′*V′}";
    "taken" "{out}+P_loss{second?+P_loss′}";
    "held" "{direct?min(I_can{two?+I_can′}{linked?;I_bank};I_volt)}{!direct?min(I_can;{two?I_part}{!two?min(I_conv{!works?:out}{linked?;I_bank};I_volt)}*V_bank/(η_conv*V_start){serves?+I_serv}){two?+I′}}";
    "heldby" "The least of what may flow. Held by {limit}.";
    "into" "{direct?I{now?:now}{!now?:mid}}{!direct?{serves?max(0;I-I_serv)}{!serves?I}*η_conv*V_start/V_bank{two?+I′}}-{back?(}{drawn}{back?)}";
    "less" "Less what the house draws meanwhile, and the start battery where the house bank keeps it.";

    "@K" "IEC 60028:1925, from memory.";
}

/// What lets the field up as far as it is.
fn limit(s: &Scene) -> Limit {
    let main = &s.boat.plant.main;
    main.allowed(s.seconds, s.machines[0].sensed_c).1
}

/// A lead bank's absorption voltage, and what it takes at that.
fn absorption(s: &Scene) -> Output {
    let bank = &s.boat.plant.bank;
    let Cells::Lead(kind) = &bank.cells else {
        return Output::default();
    };
    let accepted_a = kind.acceptance_a(bank.capacity_ah, s.charge);
    Output {
        amperes: accepted_a.max(1e-4 * bank.capacity_ah),
        volts: bank.blocks * kind.absorption_v + bank.compensation_v,
    }
}

/// What the second alternator may give at the bank's voltage \[A\].
fn second_can(s: &Scene) -> f64 {
    let (unit, state) = (s.boat.unit(1), &s.machines[1]);
    let (allowed, _) = unit.allowed(s.seconds, state.sensed_c);
    let rotor_c = unit.machine.rotor_c(state.t.body_c);
    let per_v = unit.curve_here.field_per_v(rotor_c);
    let (full_a, _) = unit.curve_here.full_field(s.moment.flow.bank_v, per_v);
    (allowed * full_a).min(unit.cap_a)
}
