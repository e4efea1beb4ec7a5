//! What the panels put back.

use crate::boat::Inputs;
use crate::boat::section;
use crate::boat::{choose, number};
use crate::schema::{choice, effects};
use crate::units::{CELSIUS, HOUR, LATITUDE, NONE, PERCENT, PERCENT_PER_KELVIN, WATT};

choice! {
    /// Where the day's sun comes from.
    SunBasis {
        Hours = "hours", "The same every day: I give peak sun hours";
        Place = "place", "From latitude, month and sky";
    }
}

choice! {
    /// A month.
    Month {
        January = "1", "January";
        February = "2", "February";
        March = "3", "March";
        April = "4", "April";
        May = "5", "May";
        June = "6", "June";
        July = "7", "July";
        August = "8", "August";
        September = "9", "September";
        October = "10", "October";
        November = "11", "November";
        December = "12", "December";
    }
}

section! {
    /// Solar panels.
    Sun {
        panel_w: f64 = number("Panels", WATT, 0.0, 20_000.0, 0.0).nameplate().spread_pct(20.0)
            .help("Added up from the labels on their backs. 0 if there are none.");
        basis: SunBasis = choose("Solar input and season", SunBasis::OPTIONS, 0)
            .help("One figure for every day, or calculated for where you are. Only that tells summer from winter; without panels it still moves air, water and bank through the year.");
        full_hours: f64 = number("Peak sun hours a day", HOUR, 0.0, 12.0, 4.5).spread_pct(30.0)
            .help("Hours of full sun that would give the same energy: about 5 to 6 in the tropics, 5 in a Mediterranean summer, 1 in a northern winter.")
            .when(|i| i.sun.panel_w > 0.0 && i.sun.basis == SunBasis::Hours);
        latitude_deg: f64 = number("Latitude", LATITUDE, -70.0, 70.0, 36.0)
            .help("As on the chart, such as 36 N or 18 S. 36 N is the southern edge of the Mediterranean, 18 N the Leeward Islands.")
            .when(has_season);
        month: Month = choose("Month", Month::OPTIONS, 5)
            .help("The month that the day's answer is for, taken at its middle. The whole year stands under the results.")
            .when(has_season);
        clearness: f64 = number("Sky (clearness index)", NONE, 0.1, 0.8, 0.55).spread(0.45, 0.65)
            .help("Part of the sunshine above the air that gets through it, over weeks: 0.45 cloudy, 0.55 temperate, 0.65 trade wind.")
            .when(by_place);
        yield_pct: f64 = number("Share of rated output", PERCENT, 5.0, 100.0, 75.0).spread(60.0, 85.0)
            .help("After heat, rig shadow, wiring and controller: 60 to 85 %. Flat panels under a boom sit at the low end. Calculated from latitude, heat is taken off separately: 65 to 95 % then.")
            .when(|i| i.sun.panel_w > 0.0);
        noct_c: f64 = number("Nominal operating cell temperature", CELSIUS, 30.0, 80.0, 45.0).nameplate().spread(42.0, 60.0).advanced()
            .help("NOCT in the panel's data sheet: how warm its cells get at 800 W/m² in air of 20 °C. 42 to 48; glued to a deck 60 and more. The air is that given as outside air.")
            .when(by_place);
        heat_loss_pct_k: f64 = number("Temperature coefficient", PERCENT_PER_KELVIN, 0.0, 1.0, 0.4).nameplate().spread(0.3, 0.45).advanced()
            .help("Temperature coefficient of power in the data sheet, without its minus sign: 0.3 to 0.45 for each degree above 25 °C.")
            .when(by_place);
    }
}

effects! {
    Sun {
        panel_w: Level, Down;
        full_hours: Level, Down;
        latitude_deg: Level, Depends("by the season");
        clearness: Level, Down;
        yield_pct: Level, Down;
        noct_c: Level, Up;
        heat_loss_pct_k: Level, Depends("cells colder than 25 °C give more");
    }
}

/// Whether the months differ, with panels or without.
fn has_season(inputs: &Inputs) -> bool {
    inputs.sun.basis == SunBasis::Place
}

fn by_place(inputs: &Inputs) -> bool {
    inputs.sun.panel_w > 0.0 && has_season(inputs)
}
