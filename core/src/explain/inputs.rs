//! The inputs that formulas use, each section's beside each other.

use crate::boat::{
    Alternator, Bank, Cable, Cost, Daily, Engine, Guard, Key, Regulator, Run, SectionId, Space,
    Sun, Way,
};

macro_rules! keys {
    ($($module:ident, $section:ident, $type:ident { $($name:ident = $field:ident;)+ })+) => {
        $(
            #[doc = concat!("Inputs of the section `", stringify!($section), "`.")]
            pub(super) mod $module {
                use super::{$type, Key, SectionId};
                $(pub(in crate::explain) const $name: Key = Key::at(SectionId::$section, $type::$field);)+
            }
        )+
    };
}

keys! {
    daily, daily, Daily {
        USE_AH = use_ah;
        SAVED_PCT = saved_pct;
        NIGHT_SHARE_PCT = night_share_pct;
    }
    sun, sun, Sun {
        PANEL_W = panel_w;
        FULL_HOURS = full_hours;
        CLEARNESS = clearness;
        YIELD_PCT = yield_pct;
        NOCT_C = noct_c;
        HEAT_LOSS_PCT_K = heat_loss_pct_k;
        LATITUDE_DEG = latitude_deg;
        MONTH = month;
    }
    bank, bank, Bank {
        CAPACITY_AH = capacity_ah;
        WINDOW_LOW_PCT = window_low_pct;
        WINDOW_HIGH_PCT = window_high_pct;
        CHARGE_V = charge_v;
        CHARGE_LIMIT_A = charge_limit_a;
        RESISTANCE_OHM_AH = resistance_ohm_ah;
        HARNESS_MOHM = harness_mohm;
        CHARGE_EFFICIENCY_PCT = charge_efficiency_pct;
        TEMPERATURE_C = temperature_c;
        COLDEST_CHARGE_C = coldest_charge_c;
        CHEMISTRY = chemistry;
        NOMINAL_V = nominal_v;
        COMPENSATION_MV = compensation_mv;
    }
    charger, way, Way {
        CONVERTER_A = converter_a;
        CONVERTER_EFFICIENCY_PCT = converter_efficiency_pct;
        START_V = start_v;
        SERVICES_A = services_a;
    }
    alternator, alt, Alternator {
        RATED_A = rated_a;
        RATED_RPM = rated_rpm;
        SECOND_A = second_a;
        SECOND_RPM = second_rpm;
        ZERO_RPM = zero_rpm;
        PULLEY_RATIO = pulley_ratio;
        EFFICIENCY_PCT = efficiency_pct;
        TEST_V = test_v;
        PLATE_ROTOR_C = plate_rotor_c;
        FIELD_W = field_w;
        DIODE_V = diode_v;
        IRON_SHARE_PCT = iron_share_pct;
        FAN_SHARE_PCT = fan_share_pct;
        FAN_EXPONENT = fan_exponent;
        FIELD_EXPONENT = field_exponent;
        SPEED_EXPONENT = speed_exponent;
        ROTOR_RISE_K = rotor_rise_k;
        ANCHOR_RPM = anchor_rpm;
        COOLING_EXPONENT = cooling_exponent;
        CURVE = curve;
        PLATE = plate;
        ANCHOR_WINDING_C = anchor_winding_c;
        ANCHOR_AIR_C = anchor_air_c;
    }
    regulator, reg, Regulator {
        SET_POINT_C = set_point_c;
        FOLD_BAND_K = fold_band_k;
        RAMP_MIN = ramp_min;
        LOW_SPEED_PCT = low_speed_pct;
        FIELD_CAP_PCT = field_cap_pct;
        CURRENT_CAP_A = current_cap_a;
        KIND = kind;
        FIXED_V = fixed_v;
        DROP_MV_K = drop_mv_k;
        SENSOR = sensor;
    }
    engine, eng, Engine {
        RPM = rpm;
        DISPLACEMENT_L = displacement_l;
        TOP_RPM = top_rpm;
        RATED_KW = rated_kw;
        STROKE_MM = stroke_mm;
        INDICATED_EFFICIENCY_PCT = indicated_efficiency_pct;
        BELT_EFFICIENCY_PCT = belt_efficiency_pct;
        FUEL_MJ_KG = fuel_mj_kg;
        FUEL_KG_L = fuel_kg_l;
        FILLING_PCT = filling_pct;
        RUNNING_C = running_c;
        WARM_UP_MIN = warm_up_min;
        SURFACE_W_K = surface_w_k;
        BREATHING = breathing;
        INJECTION = injection;
    }
    space, space, Space {
        HOT_C = hot_c;
        OUTSIDE_C = outside_c;
        BLOWER_M3H = blower_m3h;
        BLOWER_INSTALLED_PCT = blower_installed_pct;
        LEAK_M3H = leak_m3h;
        WALL_W_K = wall_w_k;
        CABIN_C = cabin_c;
        AIR_KG_M3 = air_kg_m3;
        COLD_AIR_PCT = cold_air_pct;
        RECIRCULATION_PCT = recirculation_pct;
        BLOWER_AFTER = blower_after;
    }
    run, run, Run {
        FROM_PCT = from_pct;
        TO_PCT = to_pct;
        HOUSE_LOAD_A = house_load_a;
    }
    second, alt2, Alternator {
        RATED_A = rated_a;
        RATED_RPM = rated_rpm;
        CURVE = curve;
        ZERO_RPM = zero_rpm;
        PULLEY_RATIO = pulley_ratio;
    }
    cable, cable, Cable {
        DROP_PCT = drop_pct;
        CHARGE_DROP_V = charge_drop_v;
        BUS_PEAK_A = bus_peak_a;
        INVERTER_W = inverter_w;
    }
    inverter, daily, Daily {
        EFFICIENCY_PCT = inverter_efficiency_pct;
    }
    guard, guard, Guard {
        DECAY_S = decay_s;
    }
    cost, cost, Cost {
        FUEL_L = fuel_l;
        SERVICE = service;
        SERVICE_H = service_h;
        OVERHAUL = overhaul;
        OVERHAUL_H = overhaul_h;
        BANK = bank;
        CYCLES = cycles;
        SHORE_KWH = shore_kwh;
        INTEREST_PCT = interest_pct;
        YEARS = years;
    }
}
