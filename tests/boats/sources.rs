//! Wind and what the water turns.

use crate::boat::Boat;

#[test]
fn a_wind_generator_that_covers_the_day() {
    // 6 A are 144 A·h a day of 120: nothing is left, the engine stays off.
    Boat::new("6 A of wind")
        .set("other_wind_a", 6.0)
        .set("rule_under_way_days_week", 0.0)
        .check(|says| {
            says.no_engine();
            says.between(
                "A·h of wind",
                says.report.analyses.energy.other_ah,
                143.9,
                144.1,
            );
            says.year_hours_between(0.0, 0.5);
            says.year_never_short();
            says.verdict_contains(&["other sources cover"]);
        });
}

#[test]
fn a_wind_generator_beside_the_engine() {
    // 2 A never meet the 4.5 to 5.5 A in use: all 48 A·h go to the loads at once,
    // 72 of 120 are left, at 35 to 60 A 1.2 to 2.06 h.
    Boat::new("2 A of wind")
        .set("other_wind_a", 2.0)
        .check(|says| {
            let energy = &says.report.analyses.energy;
            says.between("A·h used at once", energy.other_direct_ah, 47.9, 48.1);
            says.between("A·h left", energy.rest_ah, 71.9, 72.1);
            says.hours_between(1.15, 2.15);
        });
}

#[test]
fn wind_by_night_and_sun_by_day_at_24_v() {
    // 4 A of wind are 96 A·h, 300 W × 4.5 h × 75 % at 26.3 V 38.5: 134 of 120, but
    // by day more than is used: what goes through the bank comes back nearly whole.
    Boat::new("24 V, wind and sun")
        .choose("bank_nominal_v", "24")
        .set("other_wind_a", 4.0)
        .set("sun_panel_w", 300.0)
        .set("rule_under_way_days_week", 0.0)
        .check(|says| {
            says.no_engine();
            says.verdict_contains(&["solar and other sources cover"]);
            let short = says.year().sums.covered;
            says.holds(short, || "the year goes short".to_string());
        });
}

#[test]
fn a_towed_generator_helps_only_under_way() {
    // 8 A through 24 h are 192 A·h of 120 on passage; at anchor it hangs still.
    let passage = |name, days: f64| {
        Boat::new(name)
            .set("other_water_a", 8.0)
            .set("rule_motoring_h", 0.0)
            .set("rule_under_way_days_week", days)
    };
    passage("on passage all week", 7.0).check(|says| {
        says.between(
            "A·h left at anchor",
            says.report.analyses.energy.rest_ah,
            119.9,
            120.1,
        );
        says.year_hours_between(0.0, 0.5);
        says.year_never_short();
    });
    // One day of seven: that day's use and some 70 A·h into the bank are spared.
    let anchored = Boat::new("no towed one").set("rule_motoring_h", 0.0);
    let without_h = anchored.answers().year().sums.charging_h;
    passage("on passage one day a week", 1.0).check(|says| {
        let share = says.year().sums.charging_h / without_h;
        says.between("part of the engine hours left", share, 0.72, 0.8);
    });
}

#[test]
fn a_coastal_day_of_six_hours_with_a_hydro_generator() {
    // 10 A for 6 of 24 hours: 60 A·h on each day under way, all of them taken.
    Boat::new("hydro generator along a coast")
        .set("other_water_a", 10.0)
        .set("other_way_h", 6.0)
        .set("rule_under_way_days_week", 7.0)
        .check(|says| {
            let month = &says.year().months[0];
            says.between("A·h a day", month.other_ah_day, 59.9, 60.1);
        });
}
