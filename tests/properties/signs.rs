//! Every number moves the main answers the way its section says.

use std::collections::BTreeMap;

use crate::regulated;
use ampwright_core::boat::{Basis, Current, Key, demo};
use ampwright_core::schema::{Direction, Effect, Kind, Value};
use ampwright_core::units::CELSIUS;
use ampwright_core::{Worksheet, report};

/// Boats that move by every rule there is: link, and what it is for.
const BOATS: [&str; 24] = [
    "v=2&end",
    "v=2&reg_kind=internal&end",
    "v=2&reg_kind=internal&way_kind=converter&way_converter_a=40&end",
    "v=2&reg_kind=internal&way_kind=converter&way_converter_a=40&alt_rated_a=60&way_start_v=13.2&end",
    "v=2&bank_nominal_v=24&alt_rated_a=60&bank_capacity_ah=200&end",
    "v=2&bank_chemistry=flooded&bank_temperature_c=35&sun_panel_w=150&end",
    "v=2&bank_chemistry=agm&reg_kind=internal&bank_capacity_ah=200&end",
    "v=2&two_role=house&bank_capacity_ah=600&alt2_rated_a=70&end",
    "v=2&two_role=start&bank_capacity_ah=600&end",
    "v=2&space_outside_c=-5&bank_temperature_c=5&reg_link=limits&eng_rpm=1300&space_blower_m3h=200&end",
    "v=2&alt_curve=points&alt2_curve=points&two_role=house&bank_capacity_ah=800&end",
    "v=2&space_basis=measured&reg_sensor=winding&reg_set_point_c=135&sun_panel_w=200&sun_basis=place&end",
    // Held by the bank's limit, the cap and the low-speed cap.
    "v=2&bank_capacity_ah=150&bank_charge_limit_a=30&reg_link=limits&daily_use_ah=60&end",
    "v=2&reg_current_cap_a=35&sun_panel_w=200&space_wanted_a=60&end",
    "v=2&reg_low_speed_rpm=3600&reg_low_speed_pct=40&end",
    "v=2&way_start_kept=house&daily_use_ah=80&end",
    "v=2&reg_ramp_min=20&reg_sensor_lag_s=30&daily_use_ah=60&end",
    "v=2&two_role=house&alt_rated_a=50&alt2_rated_a=160&bank_capacity_ah=800&end",
    // Their cases were read.
    "v=2&two_role=house&bank_capacity_ah=800&alt_anchor_case_c=95&alt_anchor_case_a=55&alt2_anchor_case_c=100&alt2_anchor_case_a=60&end",
    // What is slow counts in short runs.
    "v=2&eng_warm_up_min=40&space_heat_capacity_kj_k=200&space_leak_m3h=100&daily_use_ah=60&end",
    // A held voltage makes the current follow the loads.
    "v=2&bank_chemistry=flooded&reg_kind=internal&daily_basis=listed&daily_inverter_idle_w=100&daily_inverter_on_h=15&daily_saved_pct=30&end",
    // Banks of some age.
    "v=2&bank_age_years=8&bank_capacity_ah=200&reg_kind=internal&end",
    "v=2&bank_chemistry=flooded&bank_age_years=4&reg_kind=internal&end",
    // Held back for manoeuvring.
    "v=2&reg_manoeuvre_field_pct=30&reg_manoeuvre_min=20&daily_use_ah=60&end",
];

fn boats() -> Vec<Worksheet> {
    let opened = BOATS.iter().map(|link| {
        let mut sheet = regulated::opened(link);
        if sheet.inputs.daily.basis == Basis::Listed {
            sheet.loads = demo().loads;
            for load in &mut sheet.loads {
                load.row.kind = Current::AcWatts;
            }
        }
        sheet
    });
    opened.chain([demo()]).collect()
}

#[derive(Clone, Copy, Debug)]
struct Answers {
    hot_a: f64,
    hours: f64,
}

fn answers(sheet: &Worksheet) -> Answers {
    let report = report(sheet);
    Answers {
        hot_a: report.analyses.output.hot_a,
        hours: report.analyses.day.engine_hours.unwrap_or(f64::INFINITY),
    }
}

/// Where an input is put: a fifth below and above what it stands for, a few
/// degrees for temperatures, some hundredths of its range about nought.
fn places(sheet: &Worksheet, key: Key) -> Vec<f64> {
    let (low, high) = key.spec().range().expect("a number");
    // A cap that is not set begins where it may bind.
    let stands = sheet.figure(key).unwrap_or(low + 0.04 * (high - low));
    let reach = if key.spec().unit() == Some(CELSIUS) {
        6.0
    } else if stands == 0.0 {
        0.03 * (high - low)
    } else {
        0.2 * stands.abs()
    };
    let mut places: Vec<f64> = [stands - reach, stands, stands + reach]
        .iter()
        .map(|place| place.clamp(low, high))
        .collect();
    places.dedup();
    places
}

/// What counts as no difference: a little of the answer. A bank's volts move by
/// millivolts with nearly everything, and what an alternator gives follows
/// them; a second one warms the first one's air.
const SHARE: f64 = 0.003;

/// What counts as having moved at all \[A\] \[h\]: far above what a search for
/// a root leaves open.
const SEEN: f64 = 2e-4;

/// How an answer went from one place to a higher one: down, level or up.
fn went(before: f64, after: f64, least: f64) -> i8 {
    if before == after {
        return 0;
    }
    let off = SHARE * before.abs().min(after.abs()) + least;
    match after - before {
        rise if rise > off => 1,
        rise if rise < -off => -1,
        _ => 0,
    }
}

/// Whether that is as expected.
fn fits(direction: Direction, went: i8) -> bool {
    match direction {
        Direction::Up => went >= 0,
        Direction::Down => went <= 0,
        Direction::Level => went == 0,
        Direction::Depends(_) => true,
    }
}

fn expected(key: Key) -> Effect {
    key.effect()
        .unwrap_or_else(|| panic!("{} has no expected signs", key.name()))
}

/// Keys of all numbers.
fn numbers() -> impl Iterator<Item = Key> {
    Key::all().filter(|key| !matches!(key.spec().kind, Kind::Choice { .. }))
}

#[test]
fn every_number_has_its_signs() {
    let without: Vec<String> = numbers()
        .filter(|key| key.effect().is_none())
        .map(|key| key.name())
        .collect();
    assert!(without.is_empty(), "no expected signs: {without:?}");
}

#[test]
fn every_number_moves_the_answers_as_expected() {
    let boats: Vec<(Worksheet, Answers)> = boats()
        .into_iter()
        .map(|sheet| {
            let stands = answers(&sheet);
            (sheet, stands)
        })
        .collect();
    let mut wrong = Vec::new();
    // How often each answer went down and up.
    let mut seen: BTreeMap<String, [[u32; 2]; 2]> = BTreeMap::new();
    for key in numbers() {
        let effect = expected(key);
        let counts = seen.entry(key.name()).or_default();
        for (at, (sheet, stands)) in boats.iter().enumerate() {
            if !key.applies(&sheet.inputs) {
                continue;
            }
            let now = sheet.figure(key);
            let mut before: Option<(f64, Answers)> = None;
            for place in places(sheet, key) {
                let here = if now == Some(place) {
                    *stands
                } else {
                    let mut moved = sheet.clone();
                    moved.state(key, Value::Number(place)).expect("in range");
                    answers(&moved)
                };
                if let Some((lower, was)) = before {
                    let hot = went(was.hot_a, here.hot_a, 0.02);
                    let hours = went(was.hours, here.hours, 0.005);
                    let moves = [here.hot_a - was.hot_a, here.hours - was.hours];
                    for (count, moves) in counts.iter_mut().zip(moves) {
                        count[0] += u32::from(moves < -SEEN);
                        count[1] += u32::from(moves > SEEN);
                    }
                    if !fits(effect.hot_a, hot) || !fits(effect.hours, hours) {
                        wrong.push(format!(
                            "{} from {lower} to {place} on boat {at}: {was:?} became {here:?}, expected {effect:?}",
                            key.name()
                        ));
                    }
                }
                before = Some((place, here));
            }
        }
    }
    for (name, [hot, hours]) in &seen {
        println!("{name}: hot {hot:?}, hours {hours:?}");
    }
    // A sign that is never seen would be an idle word.
    for key in numbers() {
        let [hot, hours] = seen[&key.name()];
        let effect = expected(key);
        for (what, direction, [down, up]) in [
            ("hot current", effect.hot_a, hot),
            ("hours", effect.hours, hours),
        ] {
            let idle = match direction {
                Direction::Up => up == 0,
                Direction::Down => down == 0,
                Direction::Level | Direction::Depends(_) => false,
            };
            if idle {
                wrong.push(format!("{} never moves the {what}", key.name()));
            }
        }
    }
    assert!(
        wrong.is_empty(),
        "{} wrong:\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}
