//! The charging run: times, means, fuel, the hottest of each, flooded lead beside it.

use crate::analysis::{bank_volts, flooded};
use crate::physics::battery::Bank;
use crate::simulation::moment::Output;
use crate::working::day::maybe;
use crate::working::scene::{Boat, of};
use crate::working::table::{Own, table};

table! { RUN |s, own, b, r, p, i|
    "run.minutes_to_target" "To the target|min|0|S|{val?60*C*(s_to-s_from)/(η_bank*I_mean)}|{reach}" => maybe(r.analyses.run.minutes_to_target);
    "run.minutes_to_80" "To 80 %|min|0|S|{val?60*C*(0.8-s_from)/(η_bank*I_mean)}|{reach}" => maybe(r.analyses.run.minutes_to_80);
    "run.minutes_to_90" "To 90 %|min|0|S|{val?60*C*(0.9-s_from)/(η_bank*I_mean)}|{reach}" => maybe(r.analyses.run.minutes_to_90);
    "run.minutes_to_100" "To 100 %|min|0|S|{val?60*C*(1-s_from)/(η_bank*I_mean)}|{reach}" => maybe(r.analyses.run.minutes_to_100);
    "run.start_a" "Alternator, at the start|A|0|Ostart|{held}|{heldby}" => r.analyses.run.start_a;
    "run.mid_a" "… half-way|A|0|Omid|{held}|{heldby}" => r.analyses.run.mid_a;
    "run.mid_efficiency_pct" "… its efficiency then|%|0|Lmid|{flows?100*{second?(}{out}{second?)}/({taken})}|{flows?What comes out, of what goes in.}{!flows?The alternator gives nothing then.}" => r.analyses.run.mid_efficiency_pct;
    "run.mean_bank_a" "Into the bank, mean|A|0|S|{lasts?60*C*(s_end-s_from)/(η_bank*t:run)}|{lasts?The charge that was gained, by the time it took; the run is stepped through time.}{!lasts?There is no run: what flows at the start.}" => r.analyses.run.mean_bank_a;
    "run.bank_energy_pct" "Energy kept of what went in|%|0|T|{gains?100*η_bank*V_rest:mean/V:mean}|{gains?Both means count each moment by the charge that went in.}{!gains?Nothing went into the bank.}" => r.analyses.run.bank_energy_pct;
    "run.house_load_a" "House load meanwhile|A|1|S|{typed?I_house:in}{!typed?Q_day/24}|{typed?{asgiven}}{!typed?The day's mean draw.}" => p.load_a;
    "run.peak_shaft_w" "Most power at its shaft|W|0|Lhardest|{taken}|The highest of the run's moments, after {clock}." => r.analyses.run.peak_shaft_w;
    "run.fuel_l" "Fuel, run for charging|L|1|F|B₀*t:run/60+b_E*W_shaft|{fuel}" => r.analyses.run.fuel_l;
    "run.marginal_fuel_l" "… while motoring anyway|L|1|F|b_E*W_shaft|{shaft}" => r.analyses.run.marginal_fuel_l;
    "inner.bank_limit_a" "What bank and house may take|A|0|G|{derated?min(I_lim;I_step)}{!derated?I_lim}+{drawn}|What the bank may take, and what the house draws meanwhile.|bank_temperature_c bank_coldest_charge_c" => p.bank_limit_a + p.taken_a();
    "run.peak.winding_c" "Winding|°C|0|Hpeak|{winding}|{balance}" => of(&r.analyses.run.peak, own.id);
    "run.peak.rectifier_c" "Rectifier plate|°C|0|Hpeak|{plate}|{balance}" => of(&r.analyses.run.peak, own.id);
    "run.peak.case_c" "Case|°C|0|Hpeak|{case}|{balance}" => of(&r.analyses.run.peak, own.id);
    "run.peak.air_c" "Air of the space|°C|0|Apeak|{air}" => of(&r.analyses.run.peak, own.id);
    "run.second_peak.winding_c" "Second machine, winding|°C|0|Hsecond_peak|{winding}|{balance}" => second(b, own);
    "run.second_peak.rectifier_c" "… rectifier plate|°C|0|Hsecond_peak|{plate}|{balance}" => second(b, own);
    "run.second_peak.case_c" "… case|°C|0|Hsecond_peak|{case}|{balance}" => second(b, own);
    "run.air_settles_min" "The air settles after|min|0|O||There is no closed formula: of the run's moments, the first at which the air has covered 95 % of its rise; none when it is still rising at the end.|run.peak.air_c" => maybe(r.analyses.run.air_settles_min);
    "run.soak.peak.rectifier_c" "After stopping: rectifier|°C|0|Hsoak|{plate}|{balance}" => of(&r.analyses.run.soak.peak, own.id);
    "run.soak.peak.air_c" "… air of the space|°C|0|Asoak|{air}|space_blower_after" => of(&r.analyses.run.soak.peak, own.id);
    "run.soak.air_peak_min" "… after|min|0|O||There is no closed formula: the hour after the engine stops is stepped through time, and this is when its air is hottest." => r.analyses.run.soak.air_peak_min;
    "lead.engine_hours" "Engine a day, flooded lead|h|2|S|{val?Q:lead/(η_lead*I_mean:lead+I_house:lead)}|{val?{daily}}{none?No daily engine run puts back into lead what the boat uses.}{!val?{!none?The sun covers the use, or shore power does; the engine need not run.}}" => maybe(r.analyses.lead.and_then(|lead| lead.engine_hours));
    "lead.minutes_to_target" "To the target, flooded lead|min|0|S|{val?60*C*(s_to-s_from)/(η_lead*I_mean)}|{reach}" => maybe(r.analyses.lead.and_then(|lead| lead.minutes_to_target));
    "run.mid_bank_a" "Half-way, into this bank|A|0|Smid|{into}|{less}" => r.analyses.run.mid_bank_a;
    "lead.mid_bank_a" "… into flooded lead|A|0|T|(V:lead-V_rest:lead)/R:lead|A lead bank resists the more, the fuller it is: that is its falling appetite." => mid(b).amperes;

    "I_mean" "Mean current into the bank, of this run to there|A" => mean(b, own);
    "η_lead" "Charge returned, the usual for flooded lead|%" => 100.0 * old(b).charge_efficiency;
    "I_mean:lead" "Mean current into the lead bank, of this run|A" => maybe(r.analyses.lead.and_then(|lead| lead.day_mean_bank_a));
    "Q:lead" "To put back into the lead bank a day|A·h" => maybe(r.analyses.lead.map(|lead| lead.need_ah));
    "I_house:lead" "House load meanwhile, at the lead bank's voltage|A" => maybe(r.analyses.lead.map(|lead| lead.house_load_a));
    "V:lead" "At the lead bank then|V" => mid(b).volts;
    "V_rest:lead" "At rest at that state of charge, from the table|V" => old(b).rest_v(mid_charge(b));
    "R:lead" "What such a bank resists, so full|Ω" => resists(&old(b), mid_charge(b), mid(b));
    "s_end" "State of charge at its end|%" => 100.0 * b.trace.charge_at(r.analyses.run.minutes * 60.0);
    "t:run" "Time of the run|min" => r.analyses.run.minutes;
    "V_rest:mean" "At rest, the mean of the run's moments|V" => maybe(volts(b).map(|(rest_v, _)| rest_v));
    "V:mean" "At the bank, the mean of the run's moments|V" => maybe(volts(b).map(|(_, volts)| volts));
    "W_shaft" "Energy the alternators' shafts took, added up along the run|kW·h" => r.analyses.run.shaft_kwh;
    "I_house" "||run.house_load_a";
    "I_step" "Most at this cell temperature, from the ladder or the maker's sheet|A" => maybe(i.ladder_a());

    "flows" "" => s.moment.given_w() > 0.0;
    "lasts" "" => r.analyses.run.minutes > 0.0;
    "gains" "" => volts(b).is_some();
    "typed" "" => i.run.house_load_a.is_some();
    "derated" "" => i.ladder_a().is_some();
    "opens" "" => own.id.starts_with("run.minutes") && own.value.is_nan() && r.analyses.run.opening.is_some();
    "back" "" => p.back_a > 0.0;

    "reach" "{val?{stepped}}{opens?Not reached: the battery management system opens first.}{!opens?{none?Not reached: the run is stepped through time until it gives up.}{!val?{!none?The run begins there or above.}}}";
    "drawn" "I_house{back?+I_serv*V_start/(η_conv*V)}";

    "@G" "Common practice, no source.";
}

/// A temperature of the second machine.
fn second(boat: &Boat, own: &Own) -> f64 {
    let peak = boat.report.analyses.run.second_peak;
    maybe(peak.map(|peak| of(&peak, own.id)))
}

/// Mean current into the bank on the way to a state of charge, which stands at
/// the end of the working's name or is the target \[A\].
fn mean(boat: &Boat, own: &Own) -> f64 {
    let run = &boat.sheet.inputs.run;
    let to_pct = own.id.get(15..).and_then(|pct| pct.parse().ok());
    let gained = (to_pct.unwrap_or(run.to_pct) - run.from_pct) / 100.0;
    let bank = if own.id.starts_with("lead") {
        old(boat)
    } else {
        boat.plant.bank
    };
    60.0 * bank.capacity_ah * gained / bank.charge_efficiency / own.value
}

/// Flooded lead of the same ampere-hours.
#[inline(never)]
fn old(boat: &Boat) -> Bank {
    flooded(&boat.sheet.inputs).house_bank()
}

fn mid_charge(boat: &Boat) -> f64 {
    maybe(
        boat.report
            .analyses
            .lead
            .map(|lead| lead.mid_charge_pct / 100.0),
    )
}

fn mid(boat: &Boat) -> Output {
    let lead = boat.report.analyses.lead;
    lead.map_or(Output::default(), |lead| Output {
        amperes: lead.mid_bank_a,
        volts: lead.mid_bank_v,
    })
}

fn volts(boat: &Boat) -> Option<(f64, f64)> {
    bank_volts(&boat.plant, &boat.report.analyses.run.series)
}

/// What a bank resists at a current and voltage \[Ω\]: giving, it resists less.
#[inline(never)]
pub(super) fn resists(bank: &Bank, charge: f64, at: Output) -> f64 {
    if at.amperes >= 0.0 {
        bank.resistance_ohm(charge)
    } else {
        (at.volts - bank.rest_v(charge)) / at.amperes
    }
}
