//! The engine space.

use crate::boat::Inputs;
use crate::boat::section;
use crate::boat::{choose, number, optional};
use crate::schema::{choice, effects};
use crate::units::{
    AMPERE, CELSIUS, CUBIC_METRE_PER_HOUR, KILOGRAM_PER_CUBIC_METRE, KILOJOULE_PER_KELVIN, MINUTE,
    PERCENT, WATT_PER_KELVIN,
};

choice! {
    /// Where the air temperature comes from.
    AirBasis {
        Modelled = "modelled", "Worked out from engine, blower and walls";
        Measured = "measured", "I have measured it";
    }
}

choice! {
    /// The blower once the engine has stopped.
    AfterStop {
        Off = "off", "Stops with the engine";
        On = "on", "Left running";
        Timed = "timed", "Runs on for a time";
    }
}

section! {
    /// The engine space.
    Space {
        basis: AirBasis = choose("Air temperature there", AirBasis::OPTIONS, 0)
            .help("A thermometer near the alternator after 40 minutes is better than any estimate.");
        hot_c: f64 = number("Hot, near the alternator", CELSIUS, 0.0, 95.0, 55.0).measured().spread_by(10.0)
            .help("Air a hand's breadth from the alternator's rear, after 40 minutes of charging. Outside plus 25 to 30 K without a blower, plus 15 K with one (common practice).")
            .when(|i| i.space.basis == AirBasis::Measured);
        outside_c: f64 = number("Outside air", CELSIUS, -20.0, 50.0, 28.0).measured().spread_by(5.0)
            .help("On a usual charging day where you sail.");
        blower_m3h: f64 = number("Blower", CUBIC_METRE_PER_HOUR, 0.0, 3000.0, 0.0).nameplate().spread_pct(20.0)
            .help("As printed on it, in free air; 0 without one or when it stays off.")
            .when(modelled);
        blower_installed_pct: f64 = number("Blower, installed", PERCENT, 5.0, 100.0, 50.0).advanced().spread(35.0, 60.0)
            .help("What is left of the printed flow behind ducts and grilles: 35 to 60 %.")
            .when(modelled);
        leak_m3h: Option<f64> = optional("Air through gaps", CUBIC_METRE_PER_HOUR, 0.0, 500.0, "13.5 m³/h and 1 more for each litre of the engine", |w| Some(usual_leak_m3h(&w.inputs))).advanced().spread_pct(50.0)
            .help("Through vents and gaps with nothing running: 10 to 30 for engines of 1 to 3 litres.")
            .when(modelled);
        wall_w_k: Option<f64> = optional("Heat through the walls", WATT_PER_KELVIN, 0.0, 200.0, "10.5 W/K and 1 more for each litre of the engine", |w| Some(usual_wall_w_k(&w.inputs))).advanced().spread_pct(50.0)
            .help("8 to 12 for a foam-lined box round 1 to 3 litres, up to 25 where it is open to the bilge.")
            .when(modelled);
        cabin_c: Option<f64> = optional("Air beyond the walls", CELSIUS, -20.0, 60.0, "as outside", |w| Some(w.inputs.space.outside_c)).measured().advanced().spread_by(5.0)
            .help("Temperature of cabin and bilge around the box.")
            .when(modelled);
        heat_capacity_kj_k: Option<f64> = optional("Heat capacity of lining and air", KILOJOULE_PER_KELVIN, 1.0, 500.0, "15 kJ/K and 10 more for each litre of the engine", |w| Some(usual_heat_capacity_kj_k(&w.inputs))).advanced().spread_pct(50.0)
            .help("Most of it in the lining: 15 to 60 for engines of 1 to 3 litres. Sets how fast the space warms.")
            .when(modelled);
        air_kg_m3: f64 = number("Air density", KILOGRAM_PER_CUBIC_METRE, 0.5, 1.5, 1.16).advanced()
            .help("1.16 at 31 °C at sea level; a tenth less for each 1000 m of height.")
            .when(modelled);
        start_c: Option<f64> = optional("Temperature at the start", CELSIUS, -20.0, 90.0, "as outside", |w| Some(w.inputs.space.outside_c)).measured().advanced()
            .help("Of space, engine and alternator when charging begins; higher after a sail under engine.");
        cold_air_pct: f64 = number("Cool-air duct to the alternator", PERCENT, 0.0, 100.0, 0.0).spread_pct(40.0)
            .help("Share of the alternator's cooling air that a duct brings from outside; 0 without one, 30 to 70 % for a duct that ends at its rear. Worth 10 to 20 K there (common practice).");
        blower_after: AfterStop = choose("Blower after stopping", AfterStop::OPTIONS, 0).advanced()
            .help("Whether it is left running when the engine stops. The engine goes on heating the space for half an hour.")
            .when(|i| modelled(i) && i.space.blower_m3h > 0.0);
        blower_run_on_min: f64 = number("Blower runs on for", MINUTE, 1.0, 240.0, 20.0).advanced()
            .decided()
            .help("After the engine has stopped, by a timer or by hand. Stopped too early, the air warms up again: the block is still hot.")
            .when(|i| modelled(i) && i.space.blower_m3h > 0.0 && i.space.blower_after == AfterStop::Timed);
        wanted_a: Option<f64> = optional("Hot current you would like", AMPERE, 1.0, 1000.0, "not asked", |_| None).advanced()
            .decided()
            .help("The results then say how large a blower that takes.")
            .when(modelled);
        recirculation_pct: f64 = number("Recirculated air", PERCENT, 0.0, 60.0, 15.0).advanced().spread(5.0, 35.0)
            .help("The alternator's own warm air that it draws in again: 5 to 15 % of the way from air to case temperature with free space around it, 15 to 35 % when boxed in or behind the engine.");
    }
}

effects! {
    Space {
        hot_c: Down, Up;
        outside_c: Down, Up;
        blower_m3h: Up, Down;
        blower_installed_pct: Up, Down;
        leak_m3h: Up, Down;
        wall_w_k: Up, Down;
        cabin_c: Down, Up;
        heat_capacity_kj_k: Level, Down;
        air_kg_m3: Up, Down;
        start_c: Level, Up;
        cold_air_pct: Up, Down;
        blower_run_on_min: Level, Level;
        wanted_a: Level, Level;
        recirculation_pct: Down, Up;
    }
}

fn modelled(inputs: &Inputs) -> bool {
    inputs.space.basis == AirBasis::Modelled
}

// The space round a larger engine is larger, and so are its walls and gaps;
// that round a small one still leaves room for a hand, so that they grow less
// than the engine. 12 W/K, 15 m³/h and 30 kJ/K for 1.5 L; the straight lines
// are own reasoning, chosen so that an engine that draws more air through its
// space does not cool it.

fn usual_wall_w_k(inputs: &Inputs) -> f64 {
    10.5 + inputs.eng.displacement_l
}

fn usual_leak_m3h(inputs: &Inputs) -> f64 {
    13.5 + inputs.eng.displacement_l
}

fn usual_heat_capacity_kj_k(inputs: &Inputs) -> f64 {
    15.0 + 10.0 * inputs.eng.displacement_l
}

impl Inputs {
    /// Heat through the walls of the engine space for each kelvin \[W/K\].
    pub fn space_wall_w_k(&self) -> f64 {
        self.space.wall_w_k.unwrap_or_else(|| usual_wall_w_k(self))
    }

    /// Air through the gaps of the engine space \[m³/h\].
    pub fn space_leak_m3h(&self) -> f64 {
        self.space.leak_m3h.unwrap_or_else(|| usual_leak_m3h(self))
    }

    /// Heat that lining and air of the engine space hold \[kJ/K\].
    pub fn space_heat_capacity_kj_k(&self) -> f64 {
        self.space
            .heat_capacity_kj_k
            .unwrap_or_else(|| usual_heat_capacity_kj_k(self))
    }

    /// Temperature around the engine space \[°C\].
    pub fn cabin_c(&self) -> f64 {
        self.space.cabin_c.unwrap_or(self.space.outside_c)
    }

    /// Temperature of everything when charging begins \[°C\].
    pub fn start_c(&self) -> f64 {
        self.space.start_c.unwrap_or(self.space.outside_c)
    }
}
