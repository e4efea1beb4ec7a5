//! The alternator.

use crate::boat::section;
use crate::boat::usual_alternator::{
    LEAST_ANCHOR_C, LEAST_COUPLING_W_K, MOST_ANCHOR_C, USUAL_COUPLING_W_K, usual_field_w,
    usual_mass_kg, usual_plate_rotor_c, usual_test_v,
};
use crate::boat::{choose, number, optional_of_alternator};
use crate::schema::{choice, effects};
use crate::units::{
    AMPERE, CELSIUS, KELVIN, KILOGRAM, NONE, PERCENT, RPM, VOLT, WATT, WATT_PER_KELVIN,
};

choice! {
    /// What the output curve is drawn from.
    Curve {
        Rating = "rating", "The rating alone";
        Points = "points", "The rating and a second point";
    }
}

choice! {
    /// What the nameplate current means.
    Plate {
        Cold = "cold", "A cold alternator, or the plate does not say";
        Warm = "warm", "Warmed up (rated by ISO 8854)";
    }
}

choice! {
    /// Insulation class of the windings.
    InsulationClass {
        B = "b", "B (130 °C)";
        F = "f", "F (155 °C)";
        H = "h", "H (180 °C)";
        N = "n", "N (200 °C)";
    }
}

choice! {
    /// Whether the maker also rates the alternator in air as hot as an engine room's.
    HotRating {
        None = "none", "No, or the papers do not say";
        At93 = "93", "Yes: a current in air of 93 °C is published";
    }
}

choice! {
    /// System voltage an alternator is built for.
    AlternatorVolts {
        Same = "same", "That of the battery it charges";
        V12 = "12", "12 V";
        V24 = "24", "24 V";
        V48 = "48", "48 V";
    }
}

impl AlternatorVolts {
    /// How many 12 V blocks that is; none where it is that of its battery.
    pub(super) fn blocks(self) -> Option<f64> {
        match self {
            AlternatorVolts::Same => None,
            AlternatorVolts::V12 => Some(1.0),
            AlternatorVolts::V24 => Some(2.0),
            AlternatorVolts::V48 => Some(4.0),
        }
    }

    /// The option for so many 12 V blocks; none where there is no such one.
    pub(crate) fn of_blocks(blocks: f64) -> Option<AlternatorVolts> {
        AlternatorVolts::ALL
            .iter()
            .copied()
            .find(|volts| volts.blocks() == Some(blocks))
    }
}

impl InsulationClass {
    /// Hot-spot limit \[°C\] by IEC 60085, Electrical insulation: thermal evaluation and designation.
    pub fn limit_c(self) -> f64 {
        match self {
            InsulationClass::B => 130.0,
            InsulationClass::F => 155.0,
            InsulationClass::H => 180.0,
            InsulationClass::N => 200.0,
        }
    }
}

section! {
    /// The alternator.
    Alternator {
        rated_a: f64 = number("Rated current", AMPERE, 10.0, 1000.0, 100.0).nameplate().spread_pct(25.0)
            .help("On the plate. Where it shows two currents, take the larger.");
        rated_rpm: f64 = number("Shaft speed of the rating", RPM, 3000.0, 20_000.0, 6000.0).nameplate().advanced()
            .help("The alternator's own speed at which the rated current was read: 6000 unless the plate says otherwise.");
        plate: Plate = choose("Rating is for", Plate::OPTIONS, 0).nameplate().spread_either()
            .help("A plate like “50/100 A 14 V”, or one that names ISO 8854, is for a warmed-up alternator: it gives about a fifth more hot than one with the same figure for cold. If in doubt, leave it cold.");
        curve: Curve = choose("Output curve from", Curve::OPTIONS, 0)
            .help("A second point from the maker's curve, or amps you read at a known speed with a flat bank, makes low speeds much surer.");
        second_a: f64 = number("Second point, output", AMPERE, 1.0, 1000.0, 60.0).nameplate().spread_pct(15.0)
            .help("Output at the lower speed, best one between 1800 and 2500 rpm of the shaft.")
            .when_of_alternator(|a| a.alternator.curve == Curve::Points);
        second_rpm: f64 = number("Second point, shaft speed", RPM, 1000.0, 15_000.0, 1800.0).nameplate()
            .help("The alternator's own speed there: engine speed times the pulley ratio.")
            .when_of_alternator(|a| a.alternator.curve == Curve::Points);
        zero_rpm: f64 = number("Cut-in speed of the fitted curve", RPM, 300.0, 2900.0, 1550.0).advanced().spread(1100.0, 1850.0)
            .help("Shaft speed at which the fitted output curve leaves zero: 1100 to 1850 for 12 V alternators. A little above the true cut-in speed.")
            .when_of_alternator(|a| a.alternator.curve == Curve::Rating);
        pulley_ratio: f64 = number("Pulley ratio", NONE, 0.5, 6.0, 2.2).measured().spread(2.0, 3.0)
            .help("Engine pulley diameter divided by alternator pulley diameter, both at the belt's middle line: write 150/65. 2.0 to 3.0 on small diesels.");
        max_rpm: f64 = number("Highest shaft speed", RPM, 3000.0, 25_000.0, 15_000.0).nameplate().advanced()
            .help("The maker's limit: 12 000 to 18 000 for small alternators, 8000 to 10 000 for large ones.");
        class: InsulationClass = choose("Insulation class", InsulationClass::OPTIONS, 1).nameplate()
            .help("Of the windings: F unless the maker says H.");
        rectifier_limit_c: f64 = number("Rectifier plate limit", CELSIUS, 80.0, 200.0, 135.0).advanced()
            .help("Where the diodes are pressed in: keep below 130 to 140 °C (common practice).");
        case_limit_c: f64 = number("Case and bearing limit", CELSIUS, 80.0, 180.0, 120.0).advanced()
            .help("Bearing grease ages fast above 120 to 130 °C (common practice).");
        efficiency_pct: f64 = number("Efficiency at the rating", PERCENT, 35.0, 85.0, 57.0).advanced().spread(53.0, 62.0)
            .help("At full load and rated speed: 53 to 62 % for a usual small alternator, 60 to 65 % for a large or high-efficiency one. Not the better figure printed for half load.");
        mass_kg: Option<f64> = optional_of_alternator("Mass", KILOGRAM, 1.0, 80.0, "6 kg at 100 A and 14 V, 9.5 kg at 180 A", |a| Some(usual_mass_kg(a))).nameplate().spread_pct(30.0)
            .help("Sets how long the alternator takes to get hot, and nothing else.");
        test_v: Option<f64> = optional_of_alternator("Voltage of the rating", VOLT, 12.0, 70.0, "14 V for each 12 V of its own voltage", |a| Some(usual_test_v(a))).nameplate().advanced()
            .help("The voltage the rating was taken at.");
        plate_rotor_c: Option<f64> = optional_of_alternator("Rotor temperature of the rating", CELSIUS, 0.0, 160.0, "25 °C cold, 100 °C warmed up", |a| Some(usual_plate_rotor_c(a))).advanced()
            .help("How warm the rotor was when the rated current was read.");
        field_w: Option<f64> = optional_of_alternator("Field power", WATT, 1.0, 1000.0, "0.4 W for each rated ampere at 14 V", |a| Some(usual_field_w(a))).nameplate().advanced().spread_pct(40.0)
            .help("Volts times amps of the field at full output: 40 to 100 W.");
        diode_v: f64 = number("Drop of one diode", VOLT, 0.02, 1.5, 0.9).advanced().spread(0.85, 1.0)
            .help("0.85 to 1.0 V for silicon, 0.1 to 0.2 V for a rectifier made of transistors.");
        iron_share_pct: f64 = number("Iron loss share", PERCENT, 1.0, 40.0, 15.0).advanced().spread(10.0, 25.0)
            .help("Part of the rated loss that heats the stator iron: 10 to 25 %.");
        fan_share_pct: f64 = number("Fan and bearing share", PERCENT, 1.0, 30.0, 7.0).advanced().spread(4.5, 11.0)
            .help("Part of the rated loss that goes into fan and bearings: 4.5 to 11 %.");
        fan_exponent: f64 = number("Fan loss exponent", NONE, 1.0, 3.0, 1.4).advanced()
            .help("How fan and bearing loss grow with speed; 1.33 was measured between 2000 and 8000 rpm.");
        field_exponent: f64 = number("Hot rotor, output exponent", NONE, 0.3, 1.2, 0.75).advanced().spread(0.6, 0.85)
            .help("How strongly output follows a field weakened by heat: 0.6 to 0.85.");
        speed_exponent: f64 = number("Hot rotor, speed exponent", NONE, 0.0, 0.5, 0.17).advanced().spread(0.05, 0.3)
            .help("How strongly the curve's beginning moves up with a weakened field: 0.05 to 0.3.");
        rotor_rise_k: f64 = number("Rotor above case", KELVIN, 0.0, 60.0, 10.0).advanced().spread(5.0, 30.0)
            .help("How much hotter the rotor runs than the case: 5 to 30 K. Volts and amps of its field tell (“Sea trial”).");
        coupling_w_k: Option<f64> = optional_of_alternator("Heat from winding to case", WATT_PER_KELVIN, 0.5, 30.0, "4 W/K", |_| Some(USUAL_COUPLING_W_K)).advanced().spread(LEAST_COUPLING_W_K, 10.0)
            .help("How closely the winding follows the case, for an alternator of 100 A at 14 V; others by their size: 2 to 10 W/K. With 2 the winding runs some 60 K hotter than the case, with 10 some 15 K. Only a thermometer in the winding tells, or its resistance right after stopping (“Sea trial”).");
        case_air_pct: f64 = number("Case to air, against winding to air", PERCENT, 20.0, 500.0, 150.0).advanced().spread(100.0, 200.0)
            .help("How much heat leaves by the case, compared with what leaves straight from the winding: 100 to 200 %.");
        rectifier_air_pct: f64 = number("Rectifier to air, against winding to air", PERCENT, 20.0, 500.0, 105.0).advanced().spread(70.0, 140.0)
            .help("The same for the rectifier plate: 70 to 140 %.");
        still_air_pct: f64 = number("Cooling without the fan", PERCENT, 0.0, 80.0, 20.0).advanced().spread(15.0, 40.0)
            .help("Part of the cooling at the bench's speed that does not come from the fan: 15 to 40 %.");
        hot_rating: HotRating = choose("Rated in hot air as well", HotRating::OPTIONS, 0).nameplate().advanced()
            .help("Heavy-duty alternators are also rated in air of 93 °C. One that truly holds its full field there is cooled well: its winding reaches 120 to 145 °C on the bench instead of 105 to 165 °C.")
            .when_of_alternator(|a| !a.known_by_case());
        anchor_winding_c: Option<f64> = optional_of_alternator("Winding at full field on the bench", CELSIUS, 80.0, 260.0, "135 °C at 100 A and 14 V, 120 °C at 200 A and more; 122 to 132 °C with a rating in hot air", |a| Some(a.usual_anchor_c())).advanced().spread(LEAST_ANCHOR_C, MOST_ANCHOR_C)
            .help("How hot the winding gets at full output at the speed and air temperature below: 105 to 165 °C. Nobody has published it for small alternators, and this one figure sets the cooling. A run with a thermometer on the case replaces it: see the two entries below.")
            .when_of_alternator(|a| !a.known_by_case());
        anchor_case_c: Option<f64> = optional_of_alternator("Case at a known current", CELSIUS, 0.0, 250.0, "not known", |_| None).measured().advanced().spread_by(5.0)
            .help("Where the case settled aboard at the current below, after half an hour at a steady speed. With both, the case sets the cooling, not the winding. A sea trial fills this in.");
        anchor_case_a: Option<f64> = optional_of_alternator("Current at that case temperature", AMPERE, 1.0, 1000.0, "not known", |_| None).measured().advanced().spread_pct(5.0)
            .help("What the alternator gave then.");
        anchor_rpm: f64 = number("Cooling known at shaft speed", RPM, 1500.0, 12_000.0, 3000.0).advanced()
            .help("The alternator's own speed at which its winding or its case was that hot.");
        anchor_air_c: f64 = number("Cooling known in air of", CELSIUS, -10.0, 80.0, 25.0).advanced()
            .help("Temperature of the air the alternator drew in.");
        cooling_exponent: f64 = number("Cooling exponent", NONE, 0.0, 1.0, 0.65).advanced().spread(0.5, 0.8)
            .help("How the fan's cooling grows with shaft speed: 0.5 to 0.8.");
        heat_capacity_factor: f64 = number("Heat capacity factor", NONE, 0.3, 3.0, 1.0).advanced()
            .help("Heat it takes to warm the alternator, compared with what its mass gives. Leave it at 1 until a sea trial shows otherwise: it changes the first quarter of an hour, not the hot current.");
        nominal_v: AlternatorVolts = choose("Alternator's voltage", AlternatorVolts::OPTIONS, 0).nameplate()
            .help("On its plate: 14 V means a 12 V alternator, 28 V one of 24 V, 56 V one of 48 V. It must be that of the battery its cable leads to.");
    }
}

effects! {
    Alternator {
        rated_a: Up, Down;
        rated_rpm: Down, Up;
        second_a: Up, Down;
        second_rpm: Down, Up;
        zero_rpm: Down, Up;
        pulley_ratio: Up, Down;
        max_rpm: Level, Level;
        rectifier_limit_c: Level, Level;
        case_limit_c: Level, Level;
        efficiency_pct: Up, Down;
        mass_kg: Level, Down;
        test_v: Depends("more volts of the rating mean more watts, but less field at the bank's volts"), Depends("as the current");
        plate_rotor_c: Up, Down;
        // The rated loss is fixed, and only what the winding has of it falls with
        // the square of the current: what another part has more weighs more, hot.
        field_w: Down, Up;
        diode_v: Down, Up;
        iron_share_pct: Down, Up;
        fan_share_pct: Down, Up;
        fan_exponent: Depends("the fan's loss is known at 6000 rpm: slower it is less by a larger exponent, faster more"), Depends("as the current");
        field_exponent: Down, Up;
        speed_exponent: Down, Up;
        rotor_rise_k: Down, Up;
        anchor_winding_c: Down, Up;
        anchor_rpm: Depends("a winding as hot at more speed, and so at more current, is better cooled; a case as hot at the same current with a quicker fan is worse cooled"), Depends("as the current");
        anchor_air_c: Up, Down;
        anchor_case_c: Down, Up;
        anchor_case_a: Up, Down;
        // What the bench says stays as it is: another division of the same heat
        // cools the part with the sensor better and others worse.
        coupling_w_k: Depends("the winding on the bench, or the case at its current, stays as hot as it was"), Depends("as the current");
        case_air_pct: Depends("the winding on the bench, or the case at its current, stays as hot as it was"), Depends("as the current");
        rectifier_air_pct: Depends("the winding on the bench, or the case at its current, stays as hot as it was"), Depends("as the current");
        still_air_pct: Depends("up where it turns slower than on the bench, down where faster"), Depends("as the current");
        cooling_exponent: Depends("up where it turns faster than on the bench, down where slower"), Depends("as the current");
        heat_capacity_factor: Level, Down;
    }
}
