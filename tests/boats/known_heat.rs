//! Boats of which more is known than a plate: a case that was read, a winding that
//! was, a rating in hot air.

use crate::boat::Boat;

/// 100 A direct with an external regulator, its case read at 104 °C while it gave
/// 60 A in air of 55 °C.
fn case_read(name: &'static str) -> Boat {
    Boat::new(name)
        .set("alt_anchor_case_c", 104.0)
        .set("alt_anchor_case_a", 60.0)
        .set("alt_anchor_air_c", 55.0)
        .set("alt_anchor_rpm", 3300.0)
}

#[test]
fn a_case_that_was_read_says_what_it_holds() {
    // It is held at about the same temperature in about the same air: 55 to 65 A.
    case_read("100 A, case read at 60 A").check(|says| says.hot_amps_between(54.0, 66.0));
}

#[test]
fn the_winding_of_a_read_case_only_may_be_hot() {
    // 15 to 60 K above the case at full load: as loose as any, it passes 155 °C in
    // the first minutes. That nobody knows it is to be put right, and no Danger.
    case_read("100 A, case read, winding unknown").check(|says| {
        says.fix("winding_too_hot");
        says.finding_says(
            "winding_too_hot",
            &["may reach", "Only its case was measured"],
        );
        says.verdict_contains(&["may overheat"]);
        says.no_danger();
    });
}

#[test]
fn a_winding_that_was_read_too_is_known() {
    // A thermometer in the slots: 6 W/K, some 30 K above the case at full load.
    case_read("100 A, case and winding read")
        .set("alt_coupling_w_k", 6.0)
        .check(|says| {
            says.must_not_find("winding_too_hot");
            says.verdict_lacks("may");
            says.survives();
        });
}

#[test]
fn a_rating_in_hot_air_means_better_cooling() {
    // Held in air of 93 °C as well: no worse than without, and well below all of it.
    let plain = Boat::new("90 A").set("alt_rated_a", 90.0);
    let mut plain_a = 0.0;
    plain.check(|says| plain_a = says.report.analyses.output.hot_a);
    Boat::new("90 A, rated at 93 °C too")
        .set("alt_rated_a", 90.0)
        .choose("alt_hot_rating", "93")
        .check(|says| says.hot_amps_between(plain_a, 75.0));
}

#[test]
fn a_read_case_at_24_v_in_frost() {
    Boat::new("24 V, 80 A, case read in cold air")
        .choose("bank_nominal_v", "24")
        .choose("alt_nominal_v", "24")
        .set("bank_capacity_ah", 200.0)
        .set("alt_rated_a", 80.0)
        .set("space_outside_c", -5.0)
        .set("bank_temperature_c", 12.0)
        .set("alt_anchor_case_c", 70.0)
        .set("alt_anchor_case_a", 60.0)
        .set("alt_anchor_air_c", 20.0)
        .check(|says| {
            // 2.2 kW in cold air: the case has 35 K to spare at 60 A, and gives what it
            // can with a warm rotor, 75 to 85 % of 73 A.
            says.hot_amps_between(54.0, 63.0);
            says.no_danger();
        });
}

#[test]
fn old_lead_takes_less() {
    // Two thirds of what a healthy bank takes: its tail is half as long again.
    let lead = |name, acceptance| {
        Boat::new(name)
            .choose("bank_chemistry", "flooded")
            .set("bank_acceptance_pct", acceptance)
    };
    let mut healthy_h = 0.0;
    lead("flooded, healthy", 100.0)
        .check(|says| healthy_h = says.report.analyses.day.engine_hours.unwrap_or(24.0));
    lead("flooded, sulphated", 66.0)
        .check(|says| says.hours_between(1.15 * healthy_h, 1.6 * healthy_h));
}
