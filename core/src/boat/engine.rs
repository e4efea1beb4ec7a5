//! The engine.

use crate::boat::Inputs;
use crate::boat::section;
use crate::boat::{choose, number, optional};
use crate::physics::torque;
use crate::physics::torque::{available_kw, speed_share, torque_share};
use crate::schema::{choice, effects};
use crate::units::{
    CELSIUS, KILOGRAM_PER_LITRE, KILOJOULE_PER_KELVIN, KILOWATT, LITRE_SWEPT,
    MEGAJOULE_PER_KILOGRAM, MILLIMETRE, MINUTE, PERCENT, RPM, WATT_PER_KELVIN,
};

choice! {
    /// Where the engine draws its air.
    Breathing {
        Space = "space", "From the engine space";
        Outside = "outside", "Through a duct from outside";
    }
}

choice! {
    /// How fuel is injected; older small diesels have a chamber before the cylinder.
    Injection {
        Direct = "direct", "Direct";
        Chamber = "chamber", "Pre-chamber or swirl chamber";
    }
}

impl Injection {
    /// Where its torque curve would begin at a standstill, for [`torque_share()`](torque::torque_share()).
    pub(crate) fn torque_foot(self) -> f64 {
        match self {
            Injection::Direct => torque::DIRECT,
            Injection::Chamber => torque::CHAMBER,
        }
    }
}

section! {
    /// The engine.
    Engine {
        rpm: f64 = number("Engine speed while charging", RPM, 400.0, 6000.0, 1500.0).measured().spread_pct(10.0)
            .help("On the rev counter. This and the pulley ratio decide the alternator's speed.");
        displacement_l: f64 = number("Displacement", LITRE_SWEPT, 0.1, 30.0, 1.5).nameplate().spread_pct(25.0)
            .help("In the engine's papers. Sets the air it draws and the fuel it burns before it does any work.");
        top_rpm: f64 = number("Highest engine speed", RPM, 800.0, 8000.0, 3000.0).nameplate().advanced()
            .help("At full throttle. Tells whether the alternator is ever overspeeded.");
        rated_kw: Option<f64> = optional("Rated power", KILOWATT, 1.0, 1000.0, "14 kW a litre at 3000 rpm", |w| Some(usual_rated_kw(&w.inputs))).nameplate()
            .help("At its highest speed, in its papers; 1 hp is 0.75 kW. Tells how much of it the alternator takes.");
        stroke_mm: f64 = number("Stroke", MILLIMETRE, 30.0, 300.0, 84.0).nameplate().advanced()
            .help("In the engine's papers.");
        injection: Injection = choose("Injection", Injection::OPTIONS, 0).nameplate().advanced()
            .help("Most small marine diesels before about 2005 have a pre-chamber or swirl chamber.");
        indicated_efficiency_pct: f64 = number("Indicated efficiency", PERCENT, 20.0, 60.0, 42.0).advanced()
            .help("Share of the fuel's energy that becomes work on the pistons: 38 to 45 %.");
        belt_efficiency_pct: f64 = number("Belt efficiency", PERCENT, 70.0, 100.0, 95.0).advanced()
            .help("93 to 96 % for a V-belt, 96 to 98 % for a multi-rib belt.");
        fuel_mj_kg: f64 = number("Fuel heating value", MEGAJOULE_PER_KILOGRAM, 35.0, 50.0, 42.7).advanced()
            .help("42.5 to 43.0 for diesel.");
        fuel_kg_l: f64 = number("Fuel density", KILOGRAM_PER_LITRE, 0.7, 1.0, 0.84).advanced()
            .help("0.820 to 0.845 for diesel by EN 590.");
        breathing: Breathing = choose("Engine air intake", Breathing::OPTIONS, 0).advanced()
            .help("An engine that breathes from its own space pulls cool air through it.");
        filling_pct: f64 = number("Volumetric efficiency", PERCENT, 40.0, 250.0, 85.0).advanced()
            .help("Air drawn against swept volume: 85 % without a turbocharger.");
        running_c: f64 = number("Engine temperature", CELSIUS, 30.0, 130.0, 80.0).measured().advanced().spread_by(5.0)
            .help("Of the block when warm; the thermostat's figure.");
        warm_up_min: f64 = number("Warms up in", MINUTE, 1.0, 120.0, 15.0).advanced().spread(10.0, 20.0)
            .help("Time to cover two thirds of the way: 10 to 20 minutes.");
        heat_kj_k: Option<f64> = optional("Heat capacity of the block", KILOJOULE_PER_KELVIN, 5.0, 2000.0, "65 kJ/K a litre", |w| Some(usual_heat_kj_k(&w.inputs))).advanced()
            .help("About half a kilojoule for each kilogram. Sets how long it warms the space after stopping.");
        surface_w_k: Option<f64> = optional("Heat to the space", WATT_PER_KELVIN, 0.0, 300.0, "4.5 W/K and 9 more for each litre", |w| Some(usual_surface_w_k(&w.inputs))).advanced().spread_pct(45.0)
            .help("For each degree between block and air, exhaust lagged; 5 to 10 more with a bare riser. The usual figure lets 4 to 8 % of the fuel's heat into the space, whatever the engine's size.");
    }
}

effects! {
    Engine {
        rpm: Up, Down;
        displacement_l: Depends("a bigger engine gives its space more heat and draws more air through it"), Depends("as the current");
        top_rpm: Level, Level;
        rated_kw: Level, Level;
        stroke_mm: Level, Level;
        indicated_efficiency_pct: Level, Level;
        belt_efficiency_pct: Level, Level;
        fuel_mj_kg: Level, Level;
        fuel_kg_l: Level, Level;
        filling_pct: Up, Down;
        running_c: Down, Up;
        warm_up_min: Level, Down;
        heat_kj_k: Level, Level;
        surface_w_k: Down, Up;
    }
}

/// 14 kW for each litre at 3000 rpm, torque kept: common practice for small diesels.
fn usual_rated_kw(inputs: &Inputs) -> f64 {
    14.0 * inputs.eng.displacement_l * inputs.eng.top_rpm / 3000.0
}

/// 130 kg for each litre at 0.5 kJ/(kg·K): own reasoning.
fn usual_heat_kj_k(inputs: &Inputs) -> f64 {
    65.0 * inputs.eng.displacement_l
}

/// 18 W/K for 1.5 L, and as much more or less with the engine's size as keeps
/// what the block gives the space between 4 and 8 % of the fuel's heat from
/// 0.3 to 10 L: MIL-HDBK-1003/11, 1987, section 15.6.2.1, allows up to 7 % for
/// diesel engines; the straight line is own reasoning.
fn usual_surface_w_k(inputs: &Inputs) -> f64 {
    4.5 + 9.0 * inputs.eng.displacement_l
}

impl Inputs {
    /// Power of the engine at its highest speed \[kW\].
    pub fn rated_kw(&self) -> f64 {
        self.eng.rated_kw.unwrap_or_else(|| usual_rated_kw(self))
    }

    /// Power it has at the charging speed \[kW\]: less torque than at its
    /// highest speed as it comes near idle, see [`torque_share()`].
    pub fn available_kw(&self) -> f64 {
        let share = speed_share(self.eng.rpm, self.eng.top_rpm);
        let torque = torque_share(share, self.eng.injection.torque_foot());
        available_kw(self.rated_kw(), share, torque)
    }

    /// Heat the block gives the space for each kelvin between them \[W/K\].
    pub fn engine_surface_w_k(&self) -> f64 {
        self.eng
            .surface_w_k
            .unwrap_or_else(|| usual_surface_w_k(self))
    }

    /// Heat the engine block holds \[kJ/K\].
    pub fn engine_heat_kj_k(&self) -> f64 {
        self.eng.heat_kj_k.unwrap_or_else(|| usual_heat_kj_k(self))
    }
}
