//! How hot the alternator gets over the legs of a day.

use ampwright_core::boat::{Drawn, Purpose};

use crate::boat::Boat;
use crate::legs::{a_days_sail, day, leg, winding_c, with};

#[test]
fn built_in_regulator_motoring_hard() {
    // Nothing limits it: at 3000 engine rpm it turns faster, gives more, and is
    // cooled better. The trade's advice holds for any leg: something must limit it.
    let legs = vec![
        leg("Motoring", 3000.0, Some(120.0), Purpose::Anyway, 0.0),
        leg("Charging", 1200.0, Some(60.0), Purpose::Charging, 0.1),
    ];
    let boat = Boat::new("built-in regulator, two hours at 3000 rpm")
        .choose("reg_kind", "internal")
        .set("space_outside_c", 32.0);
    with(boat, legs).check(|says| {
        says.fix_or_danger("nothing_watches_heat");
        says.danger("case_too_hot");
        let day = day(says);
        // The slow leg begins warm: well above half of what the fast one came to.
        let begins_c = day.legs[1].alternators[0].start.winding_c;
        says.between(
            "winding at the restart",
            begins_c,
            80.0,
            winding_c(&day.legs[0]),
        );
        says.between("L motoring", day.legs[0].fuel_l, 0.2, 1.5);
    });
}

#[test]
fn restart_after_a_short_stop_is_hotter() {
    // Nothing limits this alternator but its own heat. Ten minutes' stop for the
    // anchor: no fan turns, the block heats the space, and the winding begins the
    // next leg at 70 to 130 °C; it then gets as hot in minutes as it got in the
    // whole first run, and it is hotter than from cold after the same time.
    let run = |pause_h: f64| {
        let legs = vec![
            leg("In", 2200.0, Some(30.0), Purpose::Anyway, 0.0),
            leg("On", 2200.0, Some(10.0), Purpose::Anyway, pause_h),
        ];
        let boat = Boat::new("a stop between two legs")
            .choose("reg_kind", "internal")
            .set("space_outside_c", 35.0);
        with(boat, legs).answers()
    };
    let peak = |pause_h: f64| {
        let answers = run(pause_h);
        let day = answers.report.analyses.legs.expect("legs");
        (
            day.legs[1].alternators[0].start.winding_c,
            winding_c(&day.legs[1]),
        )
    };
    let (warm_c, hot_c) = peak(1.0 / 6.0);
    let (cold_c, cool_c) = peak(24.0);
    assert!((70.0..140.0).contains(&warm_c), "{warm_c}");
    assert!((33.0..45.0).contains(&cold_c), "{cold_c}");
    assert!(
        hot_c > cool_c + 5.0,
        "{hot_c} after a short stop, {cool_c} after a day"
    );
}

#[test]
fn a_fast_leg_passes_a_limit_that_the_run_keeps() {
    // At 1000 rpm a large alternator on a small pulley gives little; at 3000 rpm it
    // gives all it has, and nothing limits it: the leg tells what the run does not.
    let boat = Boat::new("slow charging, fast motoring")
        .choose("reg_kind", "internal")
        .set("eng_rpm", 800.0)
        .set("alt_rated_a", 160.0)
        .set("alt_mass_kg", 6.0)
        .set("bank_capacity_ah", 800.0)
        .set("space_outside_c", 38.0);
    let legs = vec![leg("Motoring", 2600.0, Some(90.0), Purpose::Anyway, 0.0)];
    with(boat, legs).check(|says| {
        let run = says.report.analyses.run.alternators[0].peak.winding_c;
        let leg_c = winding_c(&day(says).legs[0]);
        says.holds(leg_c > run + 5.0, || {
            format!("{leg_c:.0} in the leg, {run:.0} in the run")
        });
        says.fix_or_danger("leg_too_hot");
    });
}

#[test]
fn tropics_with_cooking_and_a_watermaker() {
    // A watermaker of 20 A for an hour while the engine runs, beside 5 A: in the
    // first hour the bank gets 20 A less than the alternator gives beyond the house.
    let mut boat = Boat::new("tropics, watermaker with the engine")
        .set("space_outside_c", 34.0)
        .set("bank_temperature_c", 33.0)
        .load_w("Everything else", 66.0, 24.0)
        .load_w("Watermaker", 264.0, 1.0);
    boat.sheet_mut().loads[1].row.drawn = Drawn::WithEngine;
    with(boat, a_days_sail()).check(|says| {
        let run = &says.report.analyses.run;
        let load_a = run.engine_loads.first().map(|load| load.amperes);
        says.some_between("A of the watermaker", load_a, 19.0, 21.0);
        says.between("house A", run.house_load_a, 4.7, 5.3);
        let ten = run.series.iter().find(|moment| moment.minute == 10.0);
        let drawn_a = ten.map(|moment| moment.alternator_a - moment.bank_a);
        says.some_between("A drawn in the run", drawn_a, 24.0, 26.0);
        // An hour of it over the legs: 20 and 40 minutes of motoring.
        let day = day(says);
        let [out, home, anchor] = [0, 1, 2].map(|at| &day.legs[at]);
        says.between("A·h for the house, out", out.house_ah, 8.0, 8.7);
        says.between("A·h for the house, home", home.house_ah, 16.0, 17.4);
        let mean_a = anchor.house_ah / (anchor.minutes / 60.0);
        says.between("A for the house at anchor", mean_a, 4.7, 5.3);
    });
}

#[test]
fn frost_keeps_the_alternator_cool() {
    // −10 °C outside, the bank kept at 5 °C: a cold alternator gives more for longer.
    let cold = Boat::new("frost, a day's sail")
        .set("space_outside_c", -10.0)
        .set("bank_temperature_c", 12.0);
    let warm = with(Boat::new("a mild day"), a_days_sail()).answers();
    let mild_ah = warm.report.analyses.legs.expect("legs").legs[1].bank_ah;
    with(cold, a_days_sail()).check(|says| {
        let day = day(says);
        says.holds(day.legs[1].bank_ah > mild_ah, || {
            "no more than on a mild day".to_string()
        });
        says.between(
            "start",
            day.legs[0].alternators[0].start.winding_c,
            -10.1,
            -9.9,
        );
        says.must_not_find("leg_too_hot");
        says.survives();
    });
}
