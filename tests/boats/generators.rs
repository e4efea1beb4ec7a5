//! Generators with a mains charger.
//!
//! A mains charger holds its amperes on lithium nearly to the end, so that its
//! hours are ampere-hours over amperes: it carries the house load meanwhile. What
//! it takes is amperes times some 13.6 V for each 12 V block, over 88 %. A small
//! diesel generator burns about 0.33 L for each kW·h at full output, a quarter of
//! that whatever it gives (common practice, no source).

use ampwright_core::analysis::generator::GeneratorReport;
use ampwright_core::analysis::year;
use ampwright_core::decision::arrangements::{Kind, Outcome, Purchase};
use ampwright_core::guidance::settings::{GroupCode, SettingCode};

use crate::boat::Boat;
use crate::says::Says;

fn generator(says: &Says) -> GeneratorReport {
    says.report.analyses.generator.expect("a generator charges")
}

/// A boat that a generator charges, with so many kilowatts and amperes.
fn on_generator(name: &'static str, kw: f64, charger_a: f64) -> Boat {
    Boat::new(name)
        .choose("shore_rest", "generator")
        .set("genset_kw", kw)
        .set("genset_charger_a", charger_a)
}

/// An arrangement of the comparison; it is that of the year's section to the hour.
fn arrangement(says: &Says, kind: Kind) -> Option<&Outcome> {
    let outcomes = &says.comparison().outcomes;
    let outcome = outcomes.iter().find(|outcome| outcome.kind == kind)?;
    let year = year(&outcome.arrangement.on(&says.sheet));
    says.holds(outcome.sums == year.sums, || {
        format!("{kind:?}: {:?} in place of {:?}", outcome.sums, year.sums)
    });
    Some(outcome)
}

#[test]
fn lithium_charged_by_a_generator() {
    // 120 A·h at 80 A: 1.5 h. 80 × 13.6 / 0.88 = 1.24 kW of 4: 31 %. A full load
    // burns 4 × 0.327 = 1.31 L/h, 31 % of it 1.31 × (0.25 + 0.75 × 0.31) = 0.63:
    // 0.95 L a day.
    on_generator("4 kW, 80 A", 4.0, 80.0)
        .set("rule_under_way_days_week", 0.0)
        .check(|says| {
            says.no_engine();
            let generator = generator(says);
            says.some_between("h of generator", generator.hours, 1.48, 1.6);
            says.some_between("load, %", generator.load_pct, 29.0, 33.0);
            says.some_between("L a day", generator.fuel_l, 0.88, 1.05);
            says.verdict_contains(&["generator must run"]);
            says.no_danger();
            says.must_not_find("generator_too_small");
            // The same day in, day out: 180 days of 1.5 h.
            let year = says.year();
            says.between("h a year", year.sums.generator_h, 255.0, 300.0);
            says.between("L a year", year.sums.generator_fuel_l, 155.0, 195.0);
            says.holds(year.sums.fuel_l == year.sums.generator_fuel_l, || {
                "the engine burns too".to_string()
            });
        });
}

#[test]
fn a_generator_at_24_v() {
    // 100 A·h at 100 A: 1.0 h; 100 × 27.2 / 0.88 = 3.1 kW of 6: 52 %.
    on_generator("24 V, 6 kW", 6.0, 100.0)
        .choose("bank_nominal_v", "24")
        .set("daily_use_ah", 100.0)
        .check(|says| {
            let generator = generator(says);
            says.some_between("h of generator", generator.hours, 0.98, 1.1);
            says.some_between("load, %", generator.load_pct, 48.0, 55.0);
            says.must_not_find("generator_low_load");
            says.setting_between(GroupCode::ShoreCharger, SettingCode::Current, 99.0, 100.5);
        });
}

#[test]
fn a_generator_too_small_for_its_charger() {
    // 100 A × 14 V / 0.88 are 1.59 kW, and it gives 1: 63 A, 120 / 63 = 1.9 h.
    on_generator("1 kW under 100 A", 1.0, 100.0).check(|says| {
        says.fix("generator_too_small");
        says.some_between("h of generator", generator(says).hours, 1.85, 2.1);
    });
}

#[test]
fn a_quiet_anchorage_allows_an_hour() {
    // 30 A put back 120 A·h in 4 h; in one only 30: the bank runs empty.
    on_generator("one hour a day", 3.0, 30.0)
        .set("genset_hours_day", 1.0)
        .set("rule_under_way_days_week", 0.0)
        .check(|says| {
            says.fix("generator_too_long");
            says.some_between("h of generator", generator(says).hours, 3.95, 4.2);
            let year = says.year();
            says.holds(!year.sums.covered, || "the year is covered".to_string());
            let days = year.sums.days_aboard;
            let most_h = 1.0 + 1e-6;
            says.between("h a day", year.sums.generator_h / days, 0.9, most_h);
        });
}

#[test]
fn a_generator_sleeps_at_night() {
    on_generator("quiet from 21 to 8", 4.0, 80.0).check(|says| {
        for month in &says.year().months {
            let nightly = month
                .day
                .hours
                .iter()
                .filter(|hour| hour.hour < 8 || hour.hour >= 21);
            let minutes: f64 = nightly.map(|hour| hour.generator_min).sum();
            says.holds(minutes == 0.0, || format!("{minutes} min at night"));
        }
    });
}

#[test]
fn flooded_lead_on_a_generator() {
    // Lead takes less and less: 400 A·h from 60 to 90 % want longer than the 1.7 h
    // of 80 A, and the generator idles along at low load.
    on_generator("flooded lead, 6 kW", 6.0, 80.0)
        .choose("bank_chemistry", "flooded")
        .check(|says| {
            says.some_between("h of generator", generator(says).hours, 1.8, 5.0);
            says.note("generator_low_load");
        });
}

#[test]
fn frozen_lithium_takes_nothing_from_a_generator_either() {
    on_generator("lithium at −5 °C", 4.0, 80.0)
        .set("bank_temperature_c", -5.0)
        .check(|says| {
            says.danger("management_opens");
            says.must_not_find("generator_not_enough");
            says.holds(generator(says).hours.is_none(), || "it charges".to_string());
        });
}

#[test]
fn a_generator_is_proposed_beside_the_alternator_in_the_tropics() {
    // The bank of 400 A·h takes 200 A: a charger of 150 A, 150 × 14 / 0.88 = 2.39 kW,
    // over 0.75 3.2, so 3.5 kW. 2000 for each, and 10 for each ampere above the 30
    // aboard: 7000 + 1200.
    Boat::new("35 °C")
        .set("space_outside_c", 35.0)
        .set("bank_temperature_c", 32.0)
        .check(|says| {
            let Some(outcome) = arrangement(says, Kind::Generator) else {
                says.holds(false, || "no generator is proposed".to_string());
                return;
            };
            says.between("bought", outcome.bought, 8190.0, 8210.0);
            let bought = |item| outcome.parts.iter().any(|part| part.item == item);
            says.holds(
                bought(Purchase::Generator) && bought(Purchase::MainsCharger),
                || format!("{:?}", outcome.parts),
            );
            // 120 A·h at 150 A.
            says.some_between("h of generator", outcome.generator_h_day, 0.78, 0.9);
            says.holds(outcome.hours_day == Some(0.0), || {
                "the engine runs".to_string()
            });
        });
}

#[test]
fn a_generator_at_48_v_of_its_own_size() {
    // 150 A at 12 V are 37.5 at 48 V, and as many watts: again 3.5 kW.
    Boat::new("48 V")
        .choose("bank_nominal_v", "48")
        .set("reg_current_cap_a", 50.0)
        .set("bank_capacity_ah", 150.0)
        .set("daily_use_ah", 40.0)
        .check(|says| {
            let outcome = arrangement(says, Kind::Generator);
            let hours = outcome.and_then(|outcome| outcome.generator_h_day);
            // 40 A·h at 37.5 A.
            says.some_between("h of generator", hours, 1.05, 1.2);
        });
}

#[test]
fn a_larger_charger_shortens_the_night_at_the_dock() {
    // 10 to 90 % of 400 A·h through 30 A, 5 of them for the house: 12.8 h; 150 A
    // need little more than a sixth of that.
    Boat::new("shore power, 30 A")
        .choose("shore_rest", "shore")
        .check(|says| {
            let outcome = arrangement(says, Kind::LargerMainsCharger);
            let fill_h = outcome.and_then(|outcome| outcome.dock_fill_h);
            says.some_between("h to fill", fill_h, 2.1, 2.8);
        });
}

#[test]
fn the_search_may_buy_a_generator() {
    // Half an hour of noise a day: no panels, no other alternator allowed. 120 A·h
    // in 0.5 h would be 240 A, so none of the sizes up to 150 A gets there; an hour
    // asks for 120 A.
    let mut boat = Boat::new("an hour a day at most").choose("goal_generator", "yes");
    for lever in ["blower", "duct", "pulley", "set_point", "machine", "second"] {
        boat = boat.choose(&format!("goal_{lever}"), "no");
    }
    for lever in ["panels", "bank", "loads", "cap", "straight", "converter"] {
        boat = boat.choose(&format!("goal_{lever}"), "no");
    }
    boat.set("goal_hours", 1.05).check(|says| {
        let plans = says.found().iter().flat_map(|found| &found.plans);
        let best = plans.filter(|plan| plan.meets).map(|plan| plan.hours_day);
        says.some_between("h a day", best.reduce(f64::min), 0.75, 1.05);
    });
}
