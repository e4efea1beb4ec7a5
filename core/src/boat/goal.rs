//! The goal a cheapest way is searched for, and what may be changed for it.

use crate::boat::{Inputs, Key, SectionId, section};
use crate::boat::{RegulatorKind, SecondRole, WayKind};
use crate::boat::{choose, number};
use crate::schema::{Kind, choice, effects};
use crate::units::{HOUR, LITRE, MONEY};

choice! {
    /// What the goal is about.
    GoalKind {
        Hours = "hours", "No more engine a day than";
        Fuel = "fuel", "No more fuel a year than";
        Budget = "budget", "The least engine for no more money than";
    }
}

choice! {
    /// Whether something may be changed.
    May {
        Change = "yes", "may change";
        Stay = "no", "stays as it is";
    }
}

impl Goal {
    /// Inputs that say what is wanted.
    pub fn wanted() -> impl Iterator<Item = Key> {
        SectionId::goal.keys().filter(|key| !is_lever(*key))
    }

    /// Inputs that each say whether something may be changed: a [`May`].
    pub fn levers() -> impl Iterator<Item = Key> {
        SectionId::goal.keys().filter(|key| is_lever(*key))
    }
}

fn is_lever(key: Key) -> bool {
    matches!(key.spec().kind, Kind::Choice { options, .. } if options == May::OPTIONS)
}

section! {
    /// The goal, and what may be changed.
    Goal {
        kind: GoalKind = choose("The goal", GoalKind::OPTIONS, 0)
            .help("What you are after. The search finds the purchases that get there for the least money, and never one that overheats or overloads a part.");
        hours: f64 = number("Engine a day", HOUR, 0.0, 24.0, 1.0)
            .decided()
            .help("For charging, on a day like this boat's; a generator's hours count too.")
            .when(|i| i.goal.kind == GoalKind::Hours);
        fuel_l: f64 = number("Fuel a year", LITRE, 0.0, 1.0e5, 100.0)
            .decided()
            .help("For charging, on all days aboard.")
            .when(|i| i.goal.kind == GoalKind::Fuel);
        budget: f64 = number("Money", MONEY, 0.0, 1.0e8, 1000.0)
            .decided()
            .help("By this boat's price list.")
            .when(|i| i.goal.kind == GoalKind::Budget);
        blower: May = choose("Blower", May::OPTIONS, 0).help("200 or 400 m³/h more.");
        duct: May = choose("Cool-air duct to the alternator", May::OPTIONS, 0)
            .help("Half of the alternator's air directly from outside.");
        pulley: May = choose("Smaller alternator pulley", May::OPTIONS, 0)
            .help("A ratio higher by 0.4 or 0.8, if the alternator takes that speed and the belt so small a pulley.");
        set_point: May = choose("Temperature limit the regulator holds", May::OPTIONS, 0)
            .help("Up to 10 K higher, never closer than 10 K to the limit of the part the sensor sits on.");
        converter: May = choose("Size of the DC-DC charger", May::OPTIONS, 0)
            .help("Up to three times as large, as far as the alternator gives that and the bank takes it; smaller where it is too large.")
            .when(|i| i.way.kind == WayKind::Converter);
        straight: May = choose("Direct: alternator to house bank", May::OPTIONS, 0)
            .help("With an external regulator, if the alternator is of the bank's voltage. The DC-DC charger then keeps the start battery.")
            .when(|i| i.way.kind == WayKind::Converter);
        machine: May = choose("A larger alternator in its place", May::OPTIONS, 0)
            .help("Of the next three usual sizes above it: 70, 100, 150, 180 or 250 A at 12 V, 35 to 150 A at 24 V, 20 to 90 A at 48 V.");
        second: May = choose("A second alternator for the bank", May::OPTIONS, 0)
            .help("Of the same sizes. The alternator you have then charges the start battery.")
            .when(|i| i.two.role == SecondRole::None);
        panels: May = choose("Solar panels", May::OPTIONS, 0).help("200, 400 or 600 W more.");
        bank: May = choose("Size of the house bank", May::OPTIONS, 0)
            .help("Half as much again, or twice as much.");
        loads: May = choose("Lighter loads", May::OPTIONS, 0)
            .help("10 or 20 % off the day's use.");
        regulator: May = choose("External regulator", May::OPTIONS, 0)
            .help("With a temperature sensor, in place of the built-in one, its current cap set to what bank and belt take.")
            .when(|i| i.way.kind == WayKind::Direct && i.reg.kind == RegulatorKind::Internal);
        cap: May = choose("Current cap at the regulator", May::OPTIONS, 0)
            .help("Lowered to what bank and belt take, where the alternator could give more.")
            .when(|i| i.way.kind == WayKind::Direct && i.reg.kind == RegulatorKind::External);
        generator: May = choose("A generator in place of the engine", May::OPTIONS, 1)
            .help("With a mains charger of a usual size up to what the bank takes. Its hours count as engine time, its fuel as fuel.")
            .when(|i| !i.generator_charges());
        mains_charger: May = choose("Size of the mains charger", May::OPTIONS, 0)
            .help("Larger ones on the generator, as far as generator and bank bear them.")
            .when(Inputs::generator_charges);
    }
}

effects! {
    Goal: no effect
}
