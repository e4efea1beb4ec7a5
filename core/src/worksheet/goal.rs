//! The goal a cheapest way is looked for, and what may be changed for it.

use super::{SecondRole, WayKind};
use crate::fields::units::{HOUR, LITRE, MONEY};
use crate::fields::{choice, choose, effects, number, section};

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

section! {
    /// The goal, and what may be changed.
    Goal {
        kind: GoalKind = choose("The goal", GoalKind::OPTIONS, 0)
            .help("What you are after; the purchases that get there for the least money are looked for.");
        hours: f64 = number("Engine a day", HOUR, 0.0, 24.0, 1.0)
            .decided()
            .help("For charging, on a day like this worksheet's.")
            .when(|i| i.goal.kind == GoalKind::Hours);
        fuel_l: f64 = number("Fuel a year", LITRE, 0.0, 1.0e5, 100.0)
            .decided()
            .help("For charging, on all days aboard.")
            .when(|i| i.goal.kind == GoalKind::Fuel);
        budget: f64 = number("Money", MONEY, 0.0, 1.0e8, 1000.0)
            .decided()
            .help("By the price list of this worksheet.")
            .when(|i| i.goal.kind == GoalKind::Budget);
        blower: May = choose("Blower", May::OPTIONS, 0).help("200 or 400 m³/h more.");
        duct: May = choose("Cold-air hose to the machine", May::OPTIONS, 0)
            .help("Half of the machine's air straight from outside.");
        pulley: May = choose("Pulley", May::OPTIONS, 0)
            .help("A ratio higher by 0.4 or 0.8, if the machine bears its speed.");
        set_point: May = choose("Temperature set-point", May::OPTIONS, 0)
            .help("Up to 10 K higher, never closer than 10 K to the limit of what the sensor sits on.");
        converter: May = choose("Converter's size", May::OPTIONS, 0)
            .help("Half as much again, twice or three times as much.")
            .when(|i| i.way.kind == WayKind::Converter);
        straight: May = choose("Straight to the bank", May::OPTIONS, 0)
            .help("With an external regulator; the converter turned round.")
            .when(|i| i.way.kind == WayKind::Converter);
        machine: May = choose("A larger machine in its place", May::OPTIONS, 0)
            .help("Of 150, 180 or 250 A.");
        second: May = choose("A second machine for the bank", May::OPTIONS, 0)
            .help("Of 150, 180 or 250 A; the one there keeps the start battery.")
            .when(|i| i.two.role == SecondRole::None);
        panels: May = choose("Panels", May::OPTIONS, 0).help("200, 400 or 600 W more.");
        bank: May = choose("Bank's size", May::OPTIONS, 0)
            .help("Half as much again, or twice as much.");
        loads: May = choose("Lighter loads", May::OPTIONS, 0)
            .help("10 or 20 % off the day's use.");
    }
}

effects! {
    Goal: no effect
}
