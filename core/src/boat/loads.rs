//! The list of loads.

use crate::boat::{Section, section};
use crate::boat::{choose, number};
use crate::schema::choice;
use crate::units::{HOUR, NONE, PERCENT, PIECE};

choice! {
    /// What the draw is given in.
    Current {
        DcWatts = "dcw", "W, from the bank";
        DcAmperes = "dca", "A, from the bank";
        AcWatts = "acw", "W, mains";
    }
}

choice! {
    /// When a load runs.
    When {
        Always = "both", "at anchor and under way";
        Anchor = "anchor", "at anchor";
        UnderWay = "underway", "under way";
    }
}

choice! {
    /// When a load draws its ampere-hours.
    Drawn {
        OverDay = "day", "over the day";
        WithEngine = "engine", "while the engine runs";
    }
}

section! {
    /// The figures of one load.
    LoadRow {
        draw: f64 = number("Draw", NONE, 0.0, 20_000.0, 10.0).nameplate()
            .help("Of one of them while it runs; on its label or in its papers.");
        kind: Current = choose("Draw is in", Current::OPTIONS, 0)
            .help("Watts or amperes from the bank, or watts of a mains appliance on the inverter.");
        count: f64 = number("How many", PIECE, 0.0, 200.0, 1.0)
            .help("That run at the same time.");
        hours: f64 = number("Hours a day", HOUR, 0.0, 24.0, 4.0)
            .help("Switched on; 24 for one that cycles, with its share below.");
        duty_pct: f64 = number("Duty cycle", PERCENT, 0.0, 100.0, 100.0)
            .help("Share of those hours it really draws current: a refrigerator 30 to 60 %.");
        when: When = choose("When", When::OPTIONS, 0)
            .help("At anchor, under way, or both.");
        night_pct: f64 = number("Used at night", PERCENT, 0.0, 100.0, 50.0)
            .help("Share of it used while no sun reaches the panels.");
        drawn: Drawn = choose("Drawn", Drawn::OPTIONS, 0)
            .help("Cooking or a watermaker may run only while the engine does: from its start, for the hours above, on top of the house load. What the run is too short for is drawn afterwards; through the year it waits up to a week for the next run, of a generator too.");
    }
}

/// One row of the list.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Load {
    /// What it is.
    pub name: String,
    /// Its figures.
    pub row: LoadRow,
}

impl LoadRow {
    /// Position of a column by name.
    pub fn column(name: &str) -> Option<usize> {
        Self::FIELDS.iter().position(|field| field.name == name)
    }
}

fn typical(
    name: &str,
    draw: f64,
    kind: Current,
    hours: f64,
    duty_pct: f64,
    when: When,
    night_pct: f64,
) -> Load {
    Load {
        name: name.to_string(),
        row: LoadRow {
            draw,
            kind,
            count: 1.0,
            hours,
            duty_pct,
            when,
            night_pct,
            drawn: Drawn::OverDay,
        },
    }
}

/// A list to start from: what most cruising boats carry (common practice, no source).
pub fn typical_loads() -> Vec<Load> {
    use Current::{AcWatts, DcWatts};
    use When::{Always, Anchor, UnderWay};
    vec![
        typical("Refrigerator", 45.0, DcWatts, 24.0, 45.0, Always, 45.0),
        typical("Cabin lights", 15.0, DcWatts, 5.0, 100.0, Always, 90.0),
        typical("Anchor light", 3.0, DcWatts, 11.0, 100.0, Anchor, 100.0),
        typical(
            "Navigation lights",
            6.0,
            DcWatts,
            10.0,
            100.0,
            UnderWay,
            100.0,
        ),
        typical("Autopilot", 50.0, DcWatts, 20.0, 60.0, UnderWay, 45.0),
        typical(
            "Plotter and instruments",
            25.0,
            DcWatts,
            24.0,
            100.0,
            UnderWay,
            45.0,
        ),
        typical(
            "Radio and receiver",
            8.0,
            DcWatts,
            12.0,
            100.0,
            Always,
            40.0,
        ),
        typical("Fresh-water pump", 60.0, DcWatts, 0.3, 100.0, Always, 20.0),
        typical(
            "Phones and computers",
            50.0,
            DcWatts,
            4.0,
            100.0,
            Always,
            30.0,
        ),
        typical(
            "Mains kettle or tools",
            1000.0,
            AcWatts,
            0.2,
            100.0,
            Always,
            20.0,
        ),
    ]
}
