//! What goes in over a day comes out; more use takes longer, and sun helps.

use ampwright_core::Worksheet;
use ampwright_core::analysis::energy::energy;
use ampwright_core::analysis::engine_day::{MOST_RUNS, daily_trace};
use ampwright_core::boat::{Inputs, Rest};
use ampwright_core::report;
use ampwright_core::simulation::mains_charger::MainsCharger;
use ampwright_core::simulation::run::{Fineness, charge};
use proptest::prelude::*;

use crate::day::boats::{boat, drawn_day, plant_and_need, put, runs};
use crate::draw::{Drawn, any_sheet};

/// What went in over 24 hours came out, to a millionth: sun and engine feed
/// loads and bank, the bank keeps its charge efficiency of what goes through it,
/// and holds at the end what it held at the beginning.
fn closes(sheet: &Worksheet) -> Result<(), TestCaseError> {
    let (plant, need) = plant_and_need(sheet);
    if need.need_ah <= 0.0 {
        return Ok(());
    }
    let Ok(daily) = daily_trace(&plant, &need) else {
        return Ok(());
    };
    let (times, seconds) = (f64::from(daily.runs), daily.run.seconds);
    prop_assert!(times >= 1.0 && daily.runs <= MOST_RUNS);
    prop_assert!(times * seconds <= 24.0 * 3600.0 * (1.0 + 1e-9));
    let kept = plant.bank.charge_efficiency;
    let day = energy(sheet);
    let gained_ah =
        (daily.run.trace.soc_at(seconds) - daily.run.from) * plant.bank.capacity_ah * times;
    let carried_ah = plant.load_a * seconds / 3600.0 * times;
    let (spare_ah, engine_ah) = (
        (day.sun_stored_ah + day.other_stored_ah) / kept,
        gained_ah / kept + carried_ah,
    );
    let direct_ah = day.sun_direct_ah + day.other_direct_ah;
    let came_in_ah = direct_ah + spare_ah + engine_ah;
    let lost_ah = (1.0 - kept) * (spare_ah + gained_ah / kept);
    let used_ah = day.anchor.use_ah;
    prop_assert!(
        (came_in_ah - lost_ah - used_ah).abs() <= 1e-6 * used_ah,
        "in {came_in_ah} less {lost_ah} lost, {used_ah} used"
    );
    // The same run, stepped anew from where it begins, ends at its target.
    let until_s = seconds * 1.001 + 1.0;
    let again = charge(&plant, daily.run.from, 1.0, until_s, &Fineness::USUAL);
    let ends = again.soc_at(seconds);
    prop_assert!(
        (ends - need.to).abs() < 3e-5,
        "ends at {ends}, not {}",
        need.to
    );
    prop_assert!(daily.run.from >= -1e-6 && daily.run.from < need.to);
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(300))]

    #[test]
    fn the_day_of_a_drawn_boat_closes(Drawn(sheet) in drawn_day()) {
        closes(&sheet)?;
    }

    #[test]
    fn the_day_of_an_odd_boat_closes(drawn in any_sheet()) {
        let mut sheet = drawn.0;
        // What hunts about a limit is stepped otherwise each time.
        sheet.inputs.reg.sensor_lag_s = 0.0;
        sheet.inputs.run.to_pct = sheet.inputs.run.to_pct.min(98.0);
        closes(&sheet)?;
    }

    /// More use, or a higher target, never takes less engine, as long as the
    /// day has as many runs; nor does a bank that keeps less.
    #[test]
    fn what_asks_more_takes_longer(Drawn(sheet) in drawn_day(), more in 1.0..1.3f64) {
        let Some(before) = runs(&sheet) else { return Ok(()) };
        let mut hungrier = sheet.clone();
        put(&mut hungrier, "daily_use_ah", (sheet.inputs.daily.use_ah * more).min(3000.0));
        let mut wasteful = sheet.clone();
        let kept_pct = 100.0 * sheet.inputs.house_bank().charge_efficiency;
        put(&mut wasteful, "bank_charge_efficiency_pct", (kept_pct / more).max(50.0));
        for other in [hungrier, wasteful] {
            if let Some(after) = runs(&other)
                && after.runs == before.runs
            {
                let (least_h, hours) = (before.hours(), after.hours());
                prop_assert!(hours >= least_h * 0.999, "{least_h} h became {hours}");
            }
        }
    }

    /// The generator's runs, filled anew from where they begin, take the time told,
    /// and what they and the loads take together is the day's need.
    #[test]
    fn a_generators_day_closes(Drawn(sheet) in drawn_day()) {
        let mut sheet = sheet;
        sheet.inputs.shore.rest = Rest::Generator;
        let inputs = &sheet.inputs;
        let analyses = report(&sheet).analyses;
        let Some(generator) = analyses.generator else { return Ok(()) };
        let (Some(hours), Some(from_pct)) = (generator.hours, generator.from_pct) else {
            return Ok(());
        };
        let each_h = hours / f64::from(generator.runs);
        let charger = MainsCharger::on_generator(inputs);
        let (from, to) = (from_pct / 100.0, inputs.run.to_pct / 100.0);
        let fill = charger.fill(from.max(0.0), to, generator.house_load_a);
        let fill = fill.expect("it fills");
        prop_assert!((fill.hours - each_h).abs() <= 1e-6 * (1.0 + each_h));
        let bank = inputs.house_bank();
        let gained_ah = (to - from) * bank.capacity_ah;
        let closed_ah = f64::from(generator.runs) * (gained_ah + generator.house_load_a * each_h);
        prop_assert!((closed_ah - generator.day_ah).abs() <= 1e-6 * generator.day_ah);
    }

    /// More sun never leaves more to the engine, and never gives the bank more
    /// than it brings.
    #[test]
    fn sun_helps(Drawn(sheet) in drawn_day(), more_w in 0.0..500.0f64) {
        let mut sunnier = sheet.clone();
        put(&mut sunnier, "sun_panel_w", sheet.inputs.sun.panel_w + more_w);
        let (before, after) = (energy(&sheet), energy(&sunnier));
        prop_assert!(after.rest_ah <= before.rest_ah + 1e-9);
        for day in [before, after] {
            prop_assert!(day.sun_direct_ah + day.sun_stored_ah <= day.sun_ah + 1e-9);
            prop_assert!(day.other_direct_ah + day.other_stored_ah <= day.other_ah + 1e-9);
            prop_assert!(day.rest_ah + 1e-9 >= day.anchor.use_ah - day.sun_ah - day.other_ah);
            prop_assert!(day.rest_ah <= day.anchor.use_ah + 1e-9);
        }
    }
}

/// A need of next to nothing takes next to no time; none takes none.
#[test]
fn sun_that_nearly_covers_leaves_next_to_nothing() {
    for chemistry in ["lfp", "flooded"] {
        let mut sheet = boat(&[("bank_chemistry", chemistry)]);
        let (mut low_w, mut high_w) = (0.0, 2000.0);
        for _ in 0..60 {
            let middle_w = 0.5 * (low_w + high_w);
            put(&mut sheet, "sun_panel_w", middle_w);
            if energy(&sheet).rest_ah > 0.0 {
                low_w = middle_w;
            } else {
                high_w = middle_w;
            }
        }
        put(&mut sheet, "sun_panel_w", low_w);
        let nearly = report(&sheet).analyses.day;
        assert!(nearly.need_ah > 0.0 && nearly.need_ah < 1e-6, "{chemistry}");
        let hours = nearly.engine_hours.expect("a time");
        assert!(
            hours < 1e-6,
            "{chemistry}: {hours} h for {} A·h",
            nearly.need_ah
        );
        put(&mut sheet, "sun_panel_w", high_w);
        assert_eq!(
            report(&sheet).analyses.day.engine_hours,
            Some(0.0),
            "{chemistry}"
        );
    }
}

/// The window that sun can fill: a tiny bank wastes the rest of it.
#[test]
fn a_tiny_bank_stores_no_more_sun_than_it_holds() {
    let mut sheet = boat(&[("bank_capacity_ah", "20"), ("sun_panel_w", "2000")]);
    put(&mut sheet, "bank_charge_limit_a", 1000.0);
    let day = energy(&sheet);
    let inputs: &Inputs = &sheet.inputs;
    let window = (inputs.window_high_pct() - inputs.window_low_pct()) / 100.0;
    assert!((day.sun_stored_ah - window * 20.0).abs() < 1e-9);
    assert!(day.rest_ah > 0.0);
}
