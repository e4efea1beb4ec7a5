//! The day as legs: the engine's runs one after another, each with its speed,
//! its time and what it is for. Without any the day has the one charging run.

use crate::boat::{Worksheet, choose, number, optional, section};
use crate::schema::choice;
use crate::units::{AMPERE, HOUR, MINUTE, RPM};

choice! {
    /// What the engine is run for.
    Purpose {
        Charging = "charging", "for charging";
        Anyway = "anyway", "to motor";
        Manoeuvring = "manoeuvring", "to manoeuvre";
    }
}

impl Purpose {
    /// Whether the engine would run without anything to charge.
    pub fn is_anyway(self) -> bool {
        self != Purpose::Charging
    }
}

section! {
    /// The figures of one leg.
    LegRow {
        rpm: f64 = number("Engine speed", RPM, 400.0, 6000.0, 1500.0).measured()
            .help("On the rev counter during this leg.");
        minutes: Option<f64> = optional("Time", MINUTE, 1.0, 1440.0, "until the bank is charged to the target", |_| None)
            .help("How long the engine runs. Empty: until the bank has reached “Charge to”.");
        purpose: Purpose = choose("The engine runs", Purpose::OPTIONS, 0)
            .help("For charging alone, or to motor: then only the alternator's part of the fuel is counted, and the loads are those under way. To manoeuvre is to motor with the field held back as far as the regulator does so while manoeuvring.");
        pause_h: f64 = number("Engine off before it", HOUR, 0.0, 72.0, 0.0)
            .help("The alternator cools and the boat draws from the bank. 0 where the engine runs on from the leg before. Not counted for the first leg: it starts cold, with the bank at “Charge from”.");
        extra_a: f64 = number("Extra load during it", AMPERE, 0.0, 1000.0, 0.0)
            .help("Drawn from the bank on top of the house load: cooking, a watermaker, a windlass.");
    }
}

/// One leg of the day.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Leg {
    /// What it is called.
    pub name: String,
    /// Its figures.
    pub row: LegRow,
}

/// A day to start from: out of harbour, motoring, and an hour's pause before the
/// rest is charged at anchor, each at speeds of this engine. Common practice, no
/// source.
pub fn usual_legs(sheet: &Worksheet) -> Vec<Leg> {
    let rpm = sheet.inputs.eng.rpm;
    let cruising_rpm = (0.75 * sheet.inputs.eng.top_rpm / 100.0).round() * 100.0;
    let leg = |name: &str, row: LegRow| Leg {
        name: name.to_string(),
        row,
    };
    let motoring = |minutes: f64, pause_h: f64| LegRow {
        rpm: cruising_rpm.clamp(400.0, 6000.0),
        minutes: Some(minutes),
        purpose: Purpose::Anyway,
        pause_h,
        extra_a: 0.0,
    };
    vec![
        leg("Out of harbour", motoring(20.0, 0.0)),
        leg("Into the anchorage", motoring(40.0, 5.0)),
        leg(
            "Charging at anchor",
            LegRow {
                rpm,
                pause_h: 1.0,
                ..LegRow::default()
            },
        ),
    ]
}
