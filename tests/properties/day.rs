//! The day closes: what goes in comes out, what asks more takes longer, and a
//! bank that holds no day gets several runs.

use ampwright_core::analysis::energy::energy;
use ampwright_core::analysis::engine_day::{
    DailyRun, DailyRuns, DayNeed, DayTrouble, MOST_RUNS, daily_run, daily_trace,
};
use ampwright_core::analysis::year;
use ampwright_core::boat::house_load_a;
use ampwright_core::boat::{Aboard, Basis, Inputs, Key, RegulatorKind, SecondRole};
use ampwright_core::findings::Severity;
use ampwright_core::report::Report;
use ampwright_core::schema::{FieldType, Value};
use ampwright_core::simulation::plant::Plant;
use ampwright_core::simulation::run::{Fineness, charge};
use ampwright_core::text::words::{day_trouble, why_not_charged};
use ampwright_core::text::year::sentences;
use ampwright_core::text::{answer, sentence};
use ampwright_core::units::Reader;
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;

use crate::draw::{Drawn, any_sheet, normal_boat};
use crate::regulated::regulated;

/// A worksheet with some inputs set: numbers, or options by name.
fn boat(said: &[(&str, &str)]) -> Worksheet {
    let mut sheet = regulated();
    for (name, text) in said {
        set(&mut sheet, name, text);
    }
    sheet
}

fn set(sheet: &mut Worksheet, name: &str, text: &str) {
    let key = Key::named(name).expect("a key");
    let value = key.spec().read(text).expect("can be read");
    sheet.state(key, value).expect("within its range");
}

fn put(sheet: &mut Worksheet, name: &str, number: f64) {
    let key = Key::named(name).expect("a key");
    sheet
        .state(key, Value::Number(number))
        .expect("within its range");
}

fn plant_and_need(sheet: &Worksheet) -> (Plant, DayNeed) {
    let plant = Plant::new(&sheet.inputs, house_load_a(sheet));
    (plant, DayNeed::of(&sheet.inputs, &energy(sheet)))
}

fn runs(sheet: &Worksheet) -> Option<DailyRuns> {
    let (plant, need) = plant_and_need(sheet);
    match daily_run(&plant, &need) {
        DailyRun::Runs(runs) => Some(runs),
        _ => None,
    }
}

fn finding(report: &Report, key: &str) -> Option<String> {
    let found = report
        .findings
        .iter()
        .find(|finding| finding.code() == crate::code(key));
    found.map(crate::said)
}

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
    let (spare_ah, engine_ah) = (day.sun_stored_ah / kept, gained_ah / kept + carried_ah);
    let came_in_ah = day.sun_direct_ah + spare_ah + engine_ah;
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

/// A boat of one steady regulator, its bank and use drawn wide.
fn drawn_day() -> impl Strategy<Value = Drawn> {
    let bank = (40.0..900.0f64, 0..4usize, 60.0..98.0f64);
    let day = (30.0..350.0f64, 0.0..500.0f64, any::<bool>());
    (normal_boat(), bank, day).prop_map(
        |(drawn, (capacity_ah, chemistry, to_pct), (use_ah, panel_w, linked))| {
            let mut sheet = drawn.0;
            sheet.inputs.daily.basis = Basis::Figure;
            sheet.inputs.reg.sensor_lag_s = 0.0;
            // Every month is like the day.
            sheet.inputs.rule.aboard = Aboard::Stretch;
            put(&mut sheet, "bank_capacity_ah", capacity_ah);
            put(&mut sheet, "run_to_pct", to_pct);
            put(&mut sheet, "daily_use_ah", use_ah);
            put(&mut sheet, "sun_panel_w", panel_w);
            let chemistry = ["lfp", "agm", "gel", "flooded"][chemistry];
            set(&mut sheet, "bank_chemistry", chemistry);
            if linked {
                set(&mut sheet, "reg_kind", "external");
                set(&mut sheet, "reg_link", "limits");
            }
            Drawn(sheet)
        },
    )
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
            prop_assert!(day.rest_ah + 1e-9 >= day.anchor.use_ah - day.sun_ah);
            prop_assert!(day.rest_ah <= day.anchor.use_ah + 1e-9);
        }
    }

    /// A trouble and a time exclude each other, and the answer says which.
    #[test]
    fn a_day_without_an_answer_says_why(drawn in any_sheet()) {
        let report = report(&drawn.0);
        let day = report.analyses.day;
        prop_assert_eq!(day.trouble.is_some(), day.engine_hours.is_none());
        prop_assert_eq!(day.runs > 0, day.run_hours.is_some());
        prop_assert_eq!(day.runs > 0, day.engine_hours.is_some_and(|hours| hours > 0.0));
        let said = sentence(&drawn.0, &report, &Reader::METRIC);
        if let Some(trouble) = day.trouble {
            prop_assert_eq!(answer(&report, &Reader::METRIC).engine_time, day_trouble(trouble));
            prop_assert!(said.contains(why_not_charged(trouble)), "{}", said);
            // Whatever keeps the bank from its charge is a danger of its own.
            prop_assert!(report.findings.iter().any(|found| found.severity() == Severity::Danger));
        }
    }
}

#[test]
fn a_small_bank_gets_several_runs() {
    // 25 A of the 50 A·h bank's limit, held by the data link.
    let sheet = boat(&[("bank_capacity_ah", "50"), ("reg_link", "limits")]);
    let report = report(&sheet);
    let day = report.analyses.day;
    assert_eq!((day.runs, day.trouble), (3, None));
    // Each begins at or above the lowest wanted, 10 %; two would not.
    assert!(day.from_pct.is_some_and(|pct| pct >= 10.0));
    let each = day.run_hours.expect("a run");
    assert!((day.engine_hours.expect("hours") - 3.0 * each).abs() < 1e-9);
    let said = sentence(&sheet, &report, &Reader::METRIC);
    assert!(said.contains("in 3 runs of"), "{said}");
    assert!(finding(&report, "several_runs_a_day").is_some_and(|text| text.contains("3 times")));
    assert_eq!(finding(&report, "day_below_window"), None);
}

/// Two runs of a bank of 60 A·h would begin below its 10 %, three do not; and no
/// more runs than needed.
#[test]
fn no_more_runs_than_the_window_asks_for() {
    for capacity_ah in [30.0, 45.0, 60.0, 80.0, 95.0, 110.0] {
        let mut sheet = boat(&[("reg_link", "limits")]);
        put(&mut sheet, "bank_capacity_ah", capacity_ah);
        let (plant, need) = plant_and_need(&sheet);
        let found = daily_trace(&plant, &need).expect("a daily run");
        assert!(found.runs > 1, "{capacity_ah} A·h");
        assert!(found.run.from >= need.low - 1e-4, "{capacity_ah} A·h");
        // One run fewer takes more at once: from the lowest wanted it covers
        // too little of a day.
        let fewer = f64::from(found.runs - 1);
        let trace = charge(&plant, need.low, need.to, 86_400.0, &Fineness::USUAL);
        let seconds = trace.reaches(need.to).expect("reached");
        let covers_ah = (need.to - need.low) * capacity_ah + plant.load_a * seconds / 3600.0;
        assert!(fewer * covers_ah < need.need_ah, "{capacity_ah} A·h");
    }
}

#[test]
fn a_bank_far_too_small_says_so() {
    let sheet = boat(&[
        ("bank_capacity_ah", "10"),
        ("daily_use_ah", "400"),
        ("reg_link", "limits"),
        ("run_house_load_a", "2"),
    ]);
    let report = report(&sheet);
    assert_eq!(report.analyses.day.trouble, Some(DayTrouble::BankTooSmall));
    assert!(finding(&report, "bank_too_small").is_some());
}

#[test]
fn below_the_lowest_wanted_is_said() {
    // 200 A·h of lead and 120 A·h a day: it begins near 40 %, 50 % are wanted.
    let lead = boat(&[("bank_chemistry", "flooded"), ("bank_capacity_ah", "200")]);
    let low = report(&lead);
    let text = finding(&low, "day_below_window").expect("a finding");
    assert!(
        text.contains("the 50 % you want") && text.contains("twice a day"),
        "{text}"
    );
    let ample = boat(&[("bank_chemistry", "flooded"), ("bank_capacity_ah", "400")]);
    assert_eq!(finding(&report(&ample), "day_below_window"), None);
    // At the very edge nothing is said.
    let from_pct = low.analyses.day.from_pct.expect("a run");
    for (low_pct, said) in [(from_pct - 0.1, false), (from_pct + 1.0, true)] {
        let mut edge = lead.clone();
        put(&mut edge, "bank_window_low_pct", low_pct);
        assert_eq!(finding(&report(&edge), "day_below_window").is_some(), said);
    }
}

#[test]
fn a_bank_that_cannot_be_charged_says_so() {
    let low_v = boat(&[("bank_charge_v", "13.2")]);
    let cold = boat(&[("bank_temperature_c", "-5"), ("reg_link", "limits")]);
    for sheet in [&low_v, &cold] {
        let report = report(sheet);
        assert_eq!(
            report.analyses.day.trouble,
            Some(DayTrouble::CannotBeCharged)
        );
        assert_eq!(
            answer(&report, &Reader::METRIC).engine_time,
            "cannot be charged"
        );
        assert!(
            sentence(sheet, &report, &Reader::METRIC).contains("The engine cannot charge the bank")
        );
        let said = report.findings.iter().find(|found| {
            found.severity() == Severity::Danger && crate::said(found).contains("charge")
        });
        assert!(said.is_some());
    }
    let text = report(&low_v);
    let text = finding(&text, "cannot_be_charged").expect("a finding");
    // It rests at 13.2 V when 60 % full.
    assert!(
        text.contains("about 60 %") && text.contains("14.2 V is usual"),
        "{text}"
    );
}

#[test]
fn a_bank_that_disconnects_has_no_daily_run() {
    for said in [
        [("bank_charge_limit_a", "20"), ("reg_kind", "internal")],
        [("bank_temperature_c", "-5"), ("reg_kind", "internal")],
    ] {
        let report = report(&boat(&said));
        assert_eq!(
            report.analyses.day.trouble,
            Some(DayTrouble::ManagementOpens),
            "{said:?}"
        );
        assert!(finding(&report, "management_opens").is_some(), "{said:?}");
    }
}

#[test]
fn an_alternator_of_another_voltage_charges_nothing() {
    let sheet = boat(&[("bank_nominal_v", "48"), ("alt_nominal_v", "12")]);
    let day = report(&sheet).analyses.day;
    assert_eq!(day.trouble, Some(DayTrouble::WrongVoltage));
    assert_eq!(year(&sheet).trouble, Some(DayTrouble::WrongVoltage));
}

/// More house load than the hot alternator gives: the bank would be emptied.
#[test]
fn a_load_beyond_the_alternator_leaves_nothing() {
    for said in [("run_house_load_a", "60"), ("daily_use_ah", "2000")] {
        let sheet = boat(&[said]);
        let found = report(&sheet).analyses.day.trouble;
        assert_eq!(found, Some(DayTrouble::NothingLeft), "{said:?}");
        assert_eq!(year(&sheet).trouble, found, "{said:?}");
    }
}

/// 10 A from a DC-DC charger, of which lead keeps 8.7: 240 A·h in 24 h of engine
/// with nothing drawn meanwhile would be 27.6 h.
#[test]
fn charging_too_slowly_is_not_never() {
    let sheet = boat(&[
        ("bank_chemistry", "flooded"),
        ("way_kind", "converter"),
        ("way_converter_a", "10"),
        ("run_house_load_a", "0"),
        ("daily_use_ah", "240"),
    ]);
    let report = report(&sheet);
    assert_eq!(report.analyses.day.trouble, Some(DayTrouble::TooSlow));
    assert!(
        finding(&report, "day_not_covered").is_some_and(|text| text.contains("Charging works"))
    );
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

/// A rule that runs the engine as the day does: from where the daily run begins
/// to where it ends, at any hour, always at anchor.
fn as_the_day(sheet: &Worksheet, from_pct: f64) -> Worksheet {
    let mut same = sheet.clone();
    let to_pct = sheet.inputs.run.to_pct;
    let high_pct = sheet.inputs.window_high_pct().max(to_pct);
    for (name, number) in [
        ("rule_start_pct", from_pct),
        ("rule_stop_pct", to_pct),
        ("rule_quiet_from_h", 0.0),
        ("rule_quiet_to_h", 0.0),
        ("rule_under_way_days_week", 0.0),
        ("rule_motoring_h", 0.0),
        ("bank_window_high_pct", high_pct),
    ] {
        put(&mut same, name, number);
    }
    same
}

/// The year interpolates in a table, and cuts a run into pieces of minutes. Where
/// an engine runs while the sun shines, the sun goes through the bank in the
/// year, which lead pays for, and takes a part of what the bank accepts; the day
/// takes all of it as given beside the engine, and so is never the longer one.
fn agrees(sheet: &Worksheet) -> Result<(), TestCaseError> {
    const PIECE_H: f64 = 0.01;
    let mut sheet = sheet.clone();
    sheet.inputs.sun.basis = ampwright_core::boat::SunBasis::Hours;
    sheet.inputs.run.house_load_a = None;
    // With room for the sun above the target.
    let mut roomy = sheet.clone();
    put(&mut roomy, "bank_window_high_pct", 100.0);
    let Some(found) = runs(&roomy) else {
        return Ok(());
    };
    // The engine's rule leaves the sun no more room than there is above its
    // target; the day takes it as left.
    let room_ah = (1.0 - roomy.inputs.run.to_pct / 100.0) * roomy.inputs.bank.capacity_ah;
    if energy(&roomy).sun_stored_ah > room_ah || found.from < 0.02 {
        return Ok(());
    }
    let year = year(&as_the_day(&roomy, 100.0 * found.from));
    prop_assert_eq!(year.trouble, None);
    let hours = year.sums.charging_h / year.sums.days_aboard;
    let most_h = found.hours();
    let lead = roomy.inputs.bank.chemistry.lead().is_some();
    let less = match roomy.inputs.reg.kind {
        _ if lead => 0.07,
        RegulatorKind::Internal => 0.05,
        RegulatorKind::External => 0.025,
    };
    let more = if lead && energy(&roomy).sun_ah > 0.0 {
        0.25
    } else {
        less
    };
    prop_assert!(
        hours >= (1.0 - less) * most_h - PIECE_H && hours <= (1.0 + more) * most_h + PIECE_H,
        "the day says {most_h} h, the year {hours}"
    );
    Ok(())
}

/// A boat whose bank gets its engine from the year as from the day.
fn steady_year_boat() -> impl Strategy<Value = Drawn> {
    drawn_day().prop_map(|mut drawn| {
        drawn.0.inputs.two.role = SecondRole::None;
        drawn
    })
}

proptest! {
    #![proptest_config(crate::cases(200))]

    #[test]
    fn the_year_runs_the_engine_as_the_day_says(Drawn(sheet) in steady_year_boat()) {
        agrees(&sheet)?;
        let mut dark = sheet;
        put(&mut dark, "sun_panel_w", 0.0);
        agrees(&dark)?;
    }

    /// What the day calls impossible the year does not do by the hour.
    #[test]
    fn day_and_year_have_the_same_trouble(Drawn(sheet) in drawn_day()) {
        let mut same = sheet.clone();
        same.inputs.shore.rest = FieldType::from_value(Value::Choice(0));
        put(&mut same, "rule_stop_pct", sheet.inputs.run.to_pct);
        put(&mut same, "bank_window_high_pct", 100.0);
        let (plant, need) = plant_and_need(&same);
        let DailyRun::Trouble(trouble) = daily_run(&plant, &need) else { return Ok(()) };
        if matches!(trouble, DayTrouble::CannotBeCharged | DayTrouble::WrongVoltage | DayTrouble::NothingLeft) {
            let year = year(&same);
            prop_assert_eq!(year.trouble, Some(trouble));
            let charging_h: f64 = year.months.iter().map(|m| m.engine_h_week - m.motoring_h_week).sum();
            prop_assert!(charging_h.abs() < 1e-9);
        }
    }
}

#[test]
fn a_blocked_bank_gets_nothing_from_the_engine_in_the_year() {
    for said in [
        [("bank_charge_v", "13.2"), ("reg_kind", "external")],
        [("bank_temperature_c", "-5"), ("reg_kind", "internal")],
    ] {
        let year = year(&boat(&said));
        assert!(year.trouble.is_some(), "{said:?}");
        for month in &year.months {
            assert_eq!(month.engine_ah_day, 0.0, "{said:?}");
            assert_eq!(month.engine_h_week, month.motoring_h_week, "{said:?}");
        }
        let words = sentences(&year, &Reader::METRIC).join(" ");
        assert!(words.contains("cannot charge the bank"), "{words}");
    }
}

/// At the dock: 120 A·h a day and 30 A of charger. Never empty, no engine but for
/// motoring, and what the shore gives is what the bank and boat took.
#[test]
fn shore_power_carries_the_year() {
    for chemistry in ["lfp", "flooded"] {
        let sheet = boat(&[("shore_rest", "shore"), ("bank_chemistry", chemistry)]);
        let year = year(&sheet);
        assert!(year.at_dock);
        let kept = sheet.inputs.house_bank().charge_efficiency;
        for month in &year.months {
            assert_eq!(
                (month.short_ah_day, month.days_below),
                (0.0, 0),
                "{chemistry}"
            );
            assert!((month.engine_h_week - month.motoring_h_week).abs() < 1e-9);
            let balance = month.balance;
            assert!((month.shore_ah_day * month.days_aboard - balance.shore_ah).abs() < 1e-9);
            // At the dock the charger carries loads, and fills the bank with the rest.
            let wanted_ah = balance.use_ah + balance.change_ah + balance.lost_ah;
            let given_ah = balance.shore_ah + balance.engine_ah;
            assert!((given_ah - wanted_ah).abs() < 1e-6, "{chemistry}");
            // 88 % of the dock's energy, at 13 to 14.6 V.
            let volts = 0.88 * 1000.0 * month.shore_kwh / balance.shore_ah;
            assert!((12.5..14.6).contains(&volts), "{chemistry}: {volts} V");
        }
        let use_ah: f64 = year.months.iter().map(|month| month.balance.use_ah).sum();
        let shore_ah: f64 = year.months.iter().map(|month| month.balance.shore_ah).sum();
        assert!(shore_ah > 0.7 * use_ah && shore_ah < use_ah / kept);
        let words = sentences(&year, &Reader::METRIC).join(" ");
        assert!(words.contains("charged at the dock"), "{words}");
    }
}

/// A dock without a charger, or one too small, lets the bank run empty, and the
/// year says so.
#[test]
fn no_shore_charger_leaves_the_bank_empty() {
    for amps in ["0", "3"] {
        let year = year(&boat(&[("shore_rest", "shore"), ("shore_charger_a", amps)]));
        assert!(year.months.iter().all(|month| month.short_ah_day > 0.0));
        let words = sentences(&year, &Reader::METRIC).join(" ");
        assert!(words.contains("shore charger is too small"), "{words}");
    }
}

#[test]
fn the_start_rule_suits_the_chemistry() {
    let start = |said: &[(&str, &str)]| boat(said).inputs.rule_start_pct();
    assert_eq!(start(&[]), 30.0);
    assert_eq!(start(&[("bank_chemistry", "agm")]), 55.0);
    assert_eq!(start(&[("bank_window_low_pct", "40")]), 45.0);
    assert_eq!(
        start(&[("bank_chemistry", "gel"), ("rule_start_pct", "30")]),
        30.0
    );
    // A bank whose engine is started at the very lowest wanted, at any hour, does
    // not count as below it.
    for chemistry in ["lfp", "flooded"] {
        let mut sheet = boat(&[("bank_chemistry", chemistry), ("rule_start_pct", "50")]);
        for (name, number) in [
            ("bank_window_low_pct", 50.0),
            ("rule_quiet_from_h", 0.0),
            ("rule_quiet_to_h", 0.0),
        ] {
            put(&mut sheet, name, number);
        }
        let year = year(&sheet);
        assert!(year.months.iter().all(|month| month.days_below == 0));
        let lowest = year.months.iter().map(|month| month.lowest_pct);
        assert!(lowest.fold(100.0, f64::min) < 50.5, "{chemistry}");
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
