//! The price list: what the parts of another arrangement would cost.

use crate::boat::number;
use crate::boat::section;
use crate::schema::effects;
use crate::units::{
    MONEY, MONEY_PER_AMPERE, MONEY_PER_AMPERE_HOUR, MONEY_PER_KILOWATT, MONEY_PER_KILOWATT_HOUR,
    MONEY_PER_WATT,
};

section! {
    /// The price list. Its figures are round ones of our own.
    Price {
        converter_a: f64 = number("DC-DC charger", MONEY_PER_AMPERE, 0.0, 1.0e5, 9.0)
            .help("For each ampere of its output at 12 V; at 24 V twice, at 48 V four times as much.");
        regulator: f64 = number("External regulator with sensors", MONEY, 0.0, 1.0e6, 380.0)
            .help("Harness included.");
        machine_a: f64 = number("Alternator", MONEY_PER_AMPERE, 0.0, 1.0e5, 5.0)
            .help("For each ampere of its rating at 12 V; at 24 V twice, at 48 V four times as much.");
        fitting: f64 = number("Bracket, pulleys and belt", MONEY, 0.0, 1.0e6, 400.0)
            .help("For an alternator that was not there before.");
        pulley: f64 = number("Another pulley", MONEY, 0.0, 1.0e6, 90.0)
            .help("With its belt.");
        cable: f64 = number("Cable and fuses of a charge lead", MONEY, 0.0, 1.0e6, 220.0)
            .help("For each new alternator, and for one that is led to the house bank instead.");
        guard: f64 = number("Protection against a load dump", MONEY, 0.0, 1.0e6, 90.0)
            .help("A surge suppressor, and the wire that lets the charge-disable signal of the battery management system cut the field.");
        blower_m3h: f64 = number("Blower, each 100 m³/h", MONEY, 0.0, 1.0e5, 45.0)
            .help("With its duct and grille.");
        duct: f64 = number("Cool-air duct to the alternator", MONEY, 0.0, 1.0e6, 70.0)
            .help("From outside to its rear.");
        panel_w: f64 = number("Panels", MONEY_PER_WATT, 0.0, 1.0e4, 2.0)
            .help("Fitted, with controller and cable.");
        bank_kwh: f64 = number("House bank", MONEY_PER_KILOWATT_HOUR, 0.0, 1.0e6, 350.0)
            .help("Lithium iron phosphate, fitted; lead is counted at half of that.");
        saved_ah: f64 = number("Lighter loads", MONEY_PER_AMPERE_HOUR, 0.0, 1.0e5, 15.0)
            .help("For each ampere-hour a day they save at 12 V, at 24 V twice, at 48 V four times as much: insulation, lamps, a better refrigerator.");
        other: f64 = number("Other parts and labour", MONEY, 0.0, 1.0e8, 0.0)
            .help("On top of the list; each arrangement can have its own.");
        link: f64 = number("Data link from battery to regulator", MONEY, 0.0, 1.0e6, 60.0)
            .help("Cable, terminators and what a regulator needs to listen to the battery; more where a gateway must translate.");
        generator_kw: f64 = number("Generator", MONEY_PER_KILOWATT, 0.0, 1.0e6, 2000.0)
            .help("For each kilowatt of a diesel one, fitted, with exhaust and cooling water.");
        mains_charger_a: f64 = number("Mains charger", MONEY_PER_AMPERE, 0.0, 1.0e5, 10.0)
            .help("For each ampere more than the one aboard at 12 V; at 24 V twice, at 48 V four times as much.");
    }
}

effects! {
    Price: no effect
}
