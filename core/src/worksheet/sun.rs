//! What the panels put back.

use crate::fields::units::{HOUR, PERCENT, WATT};
use crate::fields::{number, section};

section! {
    /// Solar panels.
    Sun {
        panel_w: f64 = number("Panels", WATT, 0.0, 20_000.0, 0.0).nameplate().spread_pct(20.0)
            .help("Added up from the labels on their backs. 0 if there are none.");
        full_hours: f64 = number("Sun hours a day", HOUR, 0.0, 12.0, 4.5).spread_pct(30.0)
            .help("Hours of full sun that would give the same energy: about 5 to 6 in the tropics, 5 in a Mediterranean summer, 1 in a northern winter.")
            .when(|i| i.sun.panel_w > 0.0);
        yield_pct: f64 = number("Yield of the label", PERCENT, 5.0, 100.0, 75.0).spread(60.0, 85.0)
            .help("After heat, rig shadow, wiring and controller: 60 to 85 %. Flat panels under a boom sit at the low end.")
            .when(|i| i.sun.panel_w > 0.0);
    }
}
