//! Every working there is, in the order of the page: its name in the report,
//! what the page calls it, unit, decimals, source, and who makes it.

use super::Made;
use super::boat::{At, Boat, Part};
use super::{
    air, bank, cooling, curve, day, engine, held, lead, losses, may, run, soak, sun, temps,
};

/// One working.
pub(super) struct Line {
    pub(super) id: &'static str,
    pub(super) what: &'static str,
    pub(super) unit: &'static str,
    pub(super) decimals: usize,
    pub(super) source: &'static str,
    pub(super) at: At,
    pub(super) make: Make,
}

/// What makes a working.
pub(super) type Make = fn(&Boat, At) -> Option<Made>;

/// What something is, its unit, decimals and source.
type Shown = (&'static str, &'static str, usize, &'static str);

const fn line(id: &'static str, shown: Shown, at: At, make: Make) -> Line {
    let (what, unit, decimals, source) = shown;
    Line {
        id,
        what,
        unit,
        decimals,
        source,
        at,
        make,
    }
}

const OWN: &str = "Own reasoning.";
const SUM: &str = "Arithmetic.";
const SUN: &str =
    "J. A. Duffie, W. A. Beckman, Solar Engineering of Thermal Processes, from memory.";
const CURVE: &str = "V. Caliskan, D. J. Perreault, T. M. Jahns, J. G. Kassakian, Analysis of three-phase rectifiers with constant-voltage loads, IEEE Trans. Circuits and Systems I 50(9), 2003, from memory; how heat weakens it is own reasoning.";
const COPPER: &str =
    "IEC 60028:1925, International standard of resistance for copper, from memory.";
const LOSSES: &str = "Loss by loss after M. Örn, Towards better alternator efficiency, MSc thesis, Linköping University, 2014; the split from memory.";
const HEAT: &str = "A network after S. C. Tang, T. A. Keim, D. J. Perreault, Thermal modeling of Lundell alternators, IEEE Trans. Energy Conversion 20(1), 2005; shares from memory, scaled by one temperature.";
const FAN: &str =
    "F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, from memory.";
const AIR: &str = "Heat balance; specific heat of air from memory.";
const FUEL: &str = "Willans line; friction from J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, section 13.6, from memory.";
const POWER: &str = "Common practice: torque taken as level.";
const CELLS: &str = "Tables of typical cells, from memory; lead's appetite is common practice.";
const FOLD: &str = "Common practice, no source.";

/// Tables of lines: name, what it shows, moment, maker.
macro_rules! lines {
    ($table:ident $($id:expr, $shown:expr, $at:expr, $make:path;)+) => {
        static $table: &[Line] = &[$(line($id, $shown, $at, $make),)+];
    };
}

/// The steps on the way to a moment's currents, and to its losses.
macro_rules! steps {
    ($table:ident $moment:literal $at:expr) => {
        lines! { $table
            concat!("inner.", $moment, ".can_a"), CAN, $at, may::can_a;
            concat!("inner.", $moment, ".full_a"), FULL, $at, curve::full_a;
            concat!("inner.", $moment, ".field_x"), FIELD, $at, curve::field_x;
            concat!("inner.", $moment, ".allowed"), ALLOWED, $at, may::allowed;
            concat!("inner.", $moment, ".volt_a"), VOLT, $at, may::volt_a;
            concat!("inner.", $moment, ".bank_ohm"), OHM, $at, bank::bank_ohm;
            concat!("inner.", $moment, ".flux_square"), FLUX, $at, losses::flux_square;
            concat!("inner.", $moment, ".copper_w"), ("Winding loss", "W", 0, LOSSES), $at, losses::copper_w;
            concat!("inner.", $moment, ".diode_w"), ("Diode loss", "W", 0, LOSSES), $at, losses::diode_w;
            concat!("inner.", $moment, ".field_w"), ("Field loss", "W", 0, LOSSES), $at, losses::field_w;
            concat!("inner.", $moment, ".iron_w"), ("Iron loss", "W", 0, LOSSES), $at, losses::iron_w;
            concat!("inner.", $moment, ".fan_w"), ("Fan and bearing loss", "W", 0, LOSSES), $at, losses::fan_w;
            concat!("inner.", $moment, ".losses_w"), ("Lost in the alternator", "W", 0, LOSSES), $at, losses::losses_w;
        }
    };
}

const CAN: Shown = ("What the alternator may give then", "A", 0, OWN);
const FULL: Shown = ("Full field then", "A", 0, CURVE);
const FIELD: Shown = ("Field then, over that of the rating", "", 3, COPPER);
const ALLOWED: Shown = ("How far the field may be up then", "", 3, FOLD);
const VOLT: Shown = (
    "What the held voltage lets flow to bank and house then",
    "A",
    0,
    OWN,
);
const OHM: Shown = ("What the bank resists then", "Ω", 5, CELLS);
const FLUX: Shown = ("Square of the flux over that of the rating", "", 3, CURVE);
const WINDING: Shown = ("Winding", "°C", 0, HEAT);
const PLATE: Shown = ("Rectifier plate", "°C", 0, HEAT);
const CASE: Shown = ("Case", "°C", 0, HEAT);

lines! { DAY
    "energy.anchor.use_ah", ("Used", "A·h", 0, SUM), At::Never, day::use_ah;
    "energy.anchor.use_wh", ("… as energy", "W·h", 0, SUM), At::Never, day::use_wh;
    "energy.anchor.night_share_pct", ("… of that at night", "%", 0, SUM), At::Never, day::night_share;
    "energy.bank_v", ("Bank at rest, half full", "V", 2, CELLS), At::Never, day::rest_v;
    "energy.sun_wh", ("Energy from the sun", "W·h", 0, SUN), At::Never, sun::sun_wh;
    "inner.sun_full_hours", ("Hours of full sun", "h", 2, SUN), At::Never, sun::full_hours;
    "energy.sun_ah", ("From the sun", "A·h", 0, SUM), At::Never, sun::sun_ah;
    "energy.engine_ah", ("Left to the engine", "A·h", 0, SUM), At::Never, day::engine_ah;
    "energy.usable_ah", ("Usable from the bank", "A·h", 0, SUM), At::Never, day::usable_ah;
    "energy.autonomy_days", ("Without the engine", "days", 1, SUM), At::Never, day::autonomy;
    "day.need_ah", ("To put back", "A·h", 0, SUM), At::Never, day::need;
    "day.engine_hours", ("Engine", "h", 2, SUM), At::Never, day::engine_hours;
    "day.fuel_l", ("Fuel for it", "L", 1, FUEL), At::Never, day::fuel;
    "day.marginal_fuel_l", ("… while motoring anyway", "L", 1, FUEL), At::Never, day::marginal_fuel;
}

lines! { MACHINE
    "machine.shaft_rpm", ("Its own speed", "rpm", 0, SUM), At::Never, curve::shaft_rpm;
    "machine.infinite_a", ("Output at endless speed", "A", 1, CURVE), At::Never, curve::infinite_a;
    "machine.zero_rpm", ("Curve begins at", "rpm", 0, CURVE), At::Never, curve::zero_rpm;
    "machine.full_cold_a", ("Full field, as rated", "A", 0, CURVE), At::Never, curve::full_cold;
    "machine.hot_a", ("Held, hot", "A", 0, OWN), At::Hot, held::hot_a;
    "machine.hot.winding_c", ("… winding", "°C", 0, HEAT), At::Hot, temps::hot_winding;
    "machine.hot.rectifier_c", ("… rectifier plate", "°C", 0, HEAT), At::Hot, temps::hot_rectifier;
    "machine.hot.case_c", ("… case", "°C", 0, HEAT), At::Hot, temps::hot_case;
    "machine.hot.air_c", ("… air of the space", "°C", 0, AIR), At::Hot, temps::hot_air;
    "machine.space_air_m3h", ("Air through the space", "m³/h", 0, OWN), At::Never, air::space_air;
    "inner.air_w_k", ("Carried off by air for each kelvin", "W/K", 2, AIR), At::Never, air::air_w_k;
    "machine.cooling_factor", ("Cooling factor that meets the anchor", "", 3, HEAT), At::Never, cooling::cooling;
    "inner.fan_factor", ("Cooling by the fan at this speed", "", 3, FAN), At::Never, cooling::fan;
    "inner.winding_air_w_k", ("Winding to air", "W/K", 2, HEAT), At::Never, cooling::winding_air;
    "inner.body_air_w_k", ("Body to air", "W/K", 2, HEAT), At::Never, cooling::body_air;
    "inner.rectifier_air_w_k", ("Rectifier to air", "W/K", 2, HEAT), At::Never, cooling::rectifier_air;
    "inner.winding_body_w_k", ("Winding to body", "W/K", 2, HEAT), At::Never, cooling::winding_body;
    "inner.rectifier_body_w_k", ("Rectifier to body", "W/K", 2, HEAT), At::Never, cooling::rectifier_body;
    "inner.hot.inlet_c", ("Air it draws in, hot", "°C", 1, HEAT), At::Hot, temps::inlet;
}

lines! { RUN
    "run.minutes_to_target", ("To the target", "min", 0, SUM), At::Never, run::to_target;
    "run.minutes_to_80", ("To 80 %", "min", 0, SUM), At::Never, run::to_80;
    "run.minutes_to_90", ("To 90 %", "min", 0, SUM), At::Never, run::to_90;
    "run.minutes_to_100", ("To 100 %", "min", 0, SUM), At::Never, run::to_100;
    "run.start_a", ("Alternator, at the start", "A", 0, OWN), At::Start, held::start_a;
    "run.mid_a", ("… half-way", "A", 0, OWN), At::Mid, held::mid_a;
    "run.mid_efficiency_pct", ("… its efficiency then", "%", 0, LOSSES), At::Mid, losses::efficiency;
    "run.mean_bank_a", ("Into the bank, mean", "A", 0, SUM), At::Never, run::mean_bank_a;
    "run.bank_energy_pct", ("Energy kept of what went in", "%", 0, CELLS), At::Never, bank::energy_kept;
    "run.house_load_a", ("House load meanwhile", "A", 1, SUM), At::Never, held::house_load;
    "run.peak_shaft_w", ("Most power at its shaft", "W", 0, LOSSES), At::Hardest, losses::peak_shaft_w;
    "run.fuel_l", ("Fuel, run for charging", "L", 1, FUEL), At::Never, run::fuel;
    "run.marginal_fuel_l", ("… while motoring anyway", "L", 1, FUEL), At::Never, run::marginal_fuel;
    "inner.bank_limit_a", ("What bank and house may take", "A", 0, FOLD), At::Never, may::limit_a;
    "inner.rated_loss_w", ("Loss at the rating", "W", 0, LOSSES), At::Never, losses::rated_loss;
}

lines! { HOTTEST
    "run.peak.winding_c", WINDING, At::Peak(0, Part::Winding), temps::peak;
    "run.peak.rectifier_c", PLATE, At::Peak(0, Part::Rectifier), temps::peak;
    "run.peak.case_c", CASE, At::Peak(0, Part::Case), temps::peak;
    "run.peak.air_c", ("Air of the space", "°C", 0, AIR), At::Peak(0, Part::Air), temps::peak;
    "run.second_peak.winding_c", ("Second machine, winding", "°C", 0, HEAT), At::Peak(1, Part::Winding), temps::peak;
    "run.second_peak.rectifier_c", ("… rectifier plate", "°C", 0, HEAT), At::Peak(1, Part::Rectifier), temps::peak;
    "run.second_peak.case_c", ("… case", "°C", 0, HEAT), At::Peak(1, Part::Case), temps::peak;
    "run.air_settles_min", ("The air settles after", "min", 0, OWN), At::Never, soak::air_settles;
    "run.soak.peak.rectifier_c", ("After stopping: rectifier", "°C", 0, HEAT), At::Never, soak::soak_rectifier;
    "run.soak.peak.air_c", ("… air of the space", "°C", 0, AIR), At::Never, soak::soak_air;
    "run.soak.air_peak_min", ("… after", "min", 0, OWN), At::Never, soak::soak_minutes;
}

lines! { ENGINE
    "engine.available_kw", ("It has, at this speed", "kW", 1, POWER), At::Never, engine::available_kw;
    "engine.peak_kw", ("The belts take at most", "kW", 2, SUM), At::Never, engine::peak_kw;
    "engine.peak_share_pct", ("… of what it has", "%", 0, SUM), At::Never, engine::peak_share;
    "engine.mean_share_pct", ("… mean of the run", "%", 0, SUM), At::Never, engine::mean_share;
    "engine.idle_l_h", ("To turn itself", "L/h", 2, FUEL), At::Never, engine::idle_l_h;
    "engine.marginal_l_kwh", ("For a kW·h at the shaft", "L", 2, FUEL), At::Never, engine::marginal_l_kwh;
    "inner.friction_kpa", ("Friction, as pressure on the pistons", "kPa", 1, FUEL), At::Never, engine::friction_pressure;
    "inner.friction_kw", ("Friction", "kW", 2, FUEL), At::Never, engine::friction_power;
}

lines! { LEAD
    "lead.engine_hours", ("Engine a day, flooded lead", "h", 2, SUM), At::Never, lead::engine_hours;
    "lead.minutes_to_target", ("To the target, flooded lead", "min", 0, SUM), At::Never, lead::to_target;
    "run.mid_bank_a", ("Half-way, into this bank", "A", 0, SUM), At::Mid, held::mid_bank_a;
    "lead.mid_bank_a", ("… into flooded lead", "A", 0, CELLS), At::Never, lead::mid_a;
}

lines! { HOT_HEAT
    "inner.hot.carried_w", ("Heat the alternator gives the air", "W", 0, HEAT), At::Hot, temps::carried;
    "machine.phase_20c_ohm", ("Resistance of one phase at 20 °C", "Ω", 5, LOSSES), At::Never, losses::phase_ohm;
}

steps! { HOT "hot" At::Hot }
steps! { START "start" At::Start }
steps! { MID "mid" At::Mid }
steps! { HARDEST "hardest" At::Hardest }
steps! { THEN "moment" At::Minute }

lines! { MOMENT
    "moment.alternator_a", ("Alternator", "A", 0, OWN), At::Minute, held::moment_a;
    "moment.bank_a", ("Into the bank", "A", 0, SUM), At::Minute, held::moment_bank_a;
    "moment.bank_v", ("At the bank", "V", 2, CELLS), At::Minute, bank::moment_v;
    "moment.charge_pct", ("Charge", "%", 0, SUM), At::Minute, run::charge;
    "moment.winding_c", WINDING, At::Minute, temps::minute_winding;
    "moment.rectifier_c", PLATE, At::Minute, temps::minute_rectifier;
    "moment.case_c", CASE, At::Minute, temps::minute_case;
    "moment.air_c", ("Air of the space", "°C", 0, AIR), At::Minute, temps::minute_air;
    "moment.shaft_w", ("At its shaft", "W", 0, LOSSES), At::Minute, losses::shaft_w;
}

/// Every working of a report, and behind them what the chart shows at a minute.
static GROUPS: [&[Line]; 13] = [
    DAY, MACHINE, RUN, HOTTEST, ENGINE, LEAD, HOT, HOT_HEAT, START, MID, HARDEST, MOMENT, THEN,
];
const REPORT: usize = 11;

/// Every working of a report.
pub(super) fn all() -> impl Iterator<Item = &'static Line> {
    GROUPS.into_iter().take(REPORT).flatten()
}

/// What the chart shows at a minute.
pub(super) fn moment() -> impl Iterator<Item = &'static Line> {
    GROUPS.into_iter().skip(REPORT).flatten()
}

/// The first of all of them that is wanted.
pub(super) fn find(wanted: &mut dyn FnMut(&Line) -> bool) -> Option<&'static Line> {
    for group in GROUPS {
        for line in group {
            if wanted(line) {
                return Some(line);
            }
        }
    }
    None
}

/// The one of that name.
pub(super) fn named(id: &str) -> Option<&'static Line> {
    find(&mut |line| line.id == id)
}

impl Line {
    /// What it is, in a line that stands alone: one that goes on from the one
    /// above is put together.
    pub(super) fn name(&self) -> String {
        let Some(rest) = self.what.strip_prefix('…') else {
            return self.what.to_string();
        };
        let mut above = "";
        find(&mut |line| {
            if !line.what.starts_with('…') {
                above = line.what;
            }
            line.id == self.id
        });
        let first = above.split(": ").next().unwrap_or(above);
        [first, ",", rest].concat()
    }
}
