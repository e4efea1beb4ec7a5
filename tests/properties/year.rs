//! The year aboard: it adds up, it is finite, and what helps helps.

use ampwright_core::Worksheet;
use ampwright_core::analysis::year;
use ampwright_core::analysis::year::Year;
use ampwright_core::analysis::year::{Balance, MonthReport};
use ampwright_core::boat::{
    Basis, Chemistry, Key, NominalVolts, RegulatorKind, Rest, SunBasis, WayKind,
};
use ampwright_core::schema::{FieldType, Value};
use ampwright_core::text::year::{sentences, settled_day};
use ampwright_core::units::Reader;
use proptest::prelude::*;
use serde_json::Value as Json;

use crate::draw::{any_sheet, normal_boat, with_months};

fn with(sheet: &Worksheet, name: &str, value: Value) -> Worksheet {
    let mut sheet = sheet.clone();
    let key = Key::named(name).expect("a key");
    sheet.state(key, value).expect("within its range");
    sheet
}

/// JSON holds no number that is not finite, it writes `null`.
fn no_null(path: &str, json: &Json) -> Result<(), TestCaseError> {
    match json {
        Json::Null => prop_assert!(
            [
                ".months.day.repeats_days",
                ".trouble",
                ".months.trouble",
                ".months.mains_trouble"
            ]
            .contains(&path),
            "{path}"
        ),
        Json::Array(rows) => rows.iter().try_for_each(|row| no_null(path, row))?,
        Json::Object(parts) => parts
            .iter()
            .try_for_each(|(name, part)| no_null(&format!("{path}.{name}"), part))?,
        Json::Bool(_) | Json::Number(_) | Json::String(_) => {}
    }
    Ok(())
}

/// Nothing comes from nowhere: to 1e-9 of what was moved and of what the bank
/// holds, the numbers the sums were made of.
fn adds_up(sheet: &Worksheet, month: &MonthReport) -> Result<(), TestCaseError> {
    let Balance {
        sun_ah,
        wasted_ah,
        other_ah,
        other_wasted_ah,
        engine_ah,
        generator_ah,
        shore_ah,
        use_ah,
        short_ah,
        lost_ah,
        change_ah,
    } = month.balance;
    let free_ah = sun_ah - wasted_ah + other_ah - other_wasted_ah;
    let given_ah = free_ah + engine_ah + generator_ah + shore_ah;
    let left_ah = given_ah - (use_ah - short_ah) - lost_ah - change_ah;
    let moved_ah = sun_ah + other_ah + engine_ah + generator_ah + shore_ah + use_ah;
    let size_ah = moved_ah + sheet.inputs.bank.capacity_ah;
    prop_assert!(left_ah.abs() <= 1e-9 * size_ah, "{left_ah} of {size_ah}");
    let parts = [
        sun_ah,
        wasted_ah,
        other_ah,
        other_wasted_ah,
        engine_ah,
        generator_ah,
        shore_ah,
        use_ah,
        short_ah,
        lost_ah,
    ];
    prop_assert!(parts.iter().all(|ah| *ah >= 0.0), "{parts:?}");
    prop_assert!(other_wasted_ah <= other_ah * (1.0 + 1e-9));
    prop_assert!(wasted_ah <= sun_ah * (1.0 + 1e-9) && short_ah <= use_ah * (1.0 + 1e-9));
    Ok(())
}

fn within(sheet: &Worksheet, bank_v: f64, month: &MonthReport) -> Result<(), TestCaseError> {
    let day = &month.day;
    let charges = day.hours.iter().map(|hour| hour.charge_pct);
    for pct in charges.chain([
        day.end_charge_pct,
        month.lowest_pct,
        month.wasted_pct,
        month.sun_share_pct,
    ]) {
        prop_assert!((0.0..=100.0).contains(&pct), "{pct} %");
    }
    prop_assert!((0.0..=168.000_1).contains(&month.engine_h_week));
    prop_assert!(month.motoring_h_week <= month.engine_h_week + 1e-9);
    prop_assert!(month.days_below <= 31);
    prop_assert!((0.0..=168.000_1).contains(&month.shore_h_week));
    prop_assert!(month.shore_kwh >= 0.0);
    if month.days_aboard == 0.0 {
        return Ok(());
    }
    prop_assert_eq!(day.hours.len(), 24);
    // The hours of a day hold the day's sun, and its use where that is one figure.
    let sun_wh: f64 = day.hours.iter().map(|hour| hour.sun_w).sum();
    prop_assert!((sun_wh - month.sun_wh_day).abs() <= 1e-9 * (1.0 + sun_wh));
    if sheet.inputs.daily.basis == Basis::Figure {
        let use_ah = day.hours.iter().map(|hour| hour.use_w).sum::<f64>() / bank_v;
        prop_assert!((use_ah - month.use_ah_day).abs() <= 1e-9 * use_ah);
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(300))]

    #[test]
    fn every_worksheet_has_a_finite_year_that_adds_up(drawn in with_months(any_sheet())) {
        let year = year(&drawn.0);
        no_null("", &serde_json::to_value(&year).expect("a year is JSON"))?;
        prop_assert_eq!(year.months.len(), 12);
        let days = year.months.iter().map(|month| settled_day(month, &Reader::METRIC));
        for words in sentences(&year, &Reader::METRIC).into_iter().chain(days) {
            let odd = ["NaN", "inf ", "-0 ", "-0.", "  "].iter().any(|odd| words.contains(odd));
            prop_assert!(!odd && words.ends_with('.'), "{words}");
        }
        for month in &year.months {
            adds_up(&drawn.0, month)?;
            within(&drawn.0, year.bank_v, month)?;
        }
    }

    #[test]
    fn the_same_worksheet_has_the_same_year(drawn in normal_boat()) {
        prop_assert_eq!(year(&drawn.0), year(&drawn.0));
    }

    /// South of the line the year stands on its head.
    #[test]
    fn half_a_year_later_in_the_south(drawn in normal_boat(), latitude in 5.0..60.0f64) {
        let there = |latitude: f64| {
            let sheet = sunny(&drawn.0, 300.0, latitude);
            year(&sheet).months.iter().map(|month| month.sun_wh_day).collect::<Vec<f64>>()
        };
        let (north, south) = (there(latitude), there(-latitude));
        prop_assert!(north[5] > north[11] && south[5] < south[11]);
    }
}

/// A boat with panels whose sun is reckoned, that gives a day's use as a figure.
fn sunny(sheet: &Worksheet, panel_w: f64, latitude_deg: f64) -> Worksheet {
    let place = with(sheet, "sun_basis", SunBasis::Place.to_value());
    let figure = with(&place, "daily_basis", Basis::Figure.to_value());
    let there = with(&figure, "sun_latitude_deg", Value::Number(latitude_deg));
    with(&there, "sun_panel_w", Value::Number(panel_w))
}

/// One thing that helps: more panels, a clearer sky, less use.
#[derive(Debug, Clone, Copy)]
enum Help {
    Panels(f64),
    Clearness(f64),
    LessUse(f64),
}

fn help() -> impl Strategy<Value = Help> {
    prop_oneof![
        (1.0..3.0f64).prop_map(Help::Panels),
        (1.0..1.05f64).prop_map(Help::Panels),
        (1.0..1.4f64).prop_map(Help::Clearness),
        (1.0..1.5f64).prop_map(Help::LessUse),
        (1.0..1.05f64).prop_map(Help::LessUse),
    ]
}

fn helped(sheet: &Worksheet, help: Help) -> Worksheet {
    let (sun, daily) = (&sheet.inputs.sun, &sheet.inputs.daily);
    let (name, value) = match help {
        Help::Panels(factor) => ("sun_panel_w", sun.panel_w * factor),
        Help::Clearness(factor) => ("sun_clearness", (sun.clearness * factor).min(0.8)),
        Help::LessUse(factor) => ("daily_use_ah", daily.use_ah / factor),
    };
    with(sheet, name, Value::Number(value))
}

/// Part of what goes into the bank that it keeps.
fn kept(sheet: &Worksheet) -> f64 {
    let key = Key::named("bank_charge_efficiency_pct").expect("a key");
    sheet.figure(key).expect("a figure") / 100.0
}

/// Ampere-hours engine, generator and shore power had to give, the bank put back to where
/// it began.
fn engine_ah(year: &Year, kept: f64) -> f64 {
    let month_ah = |month: &MonthReport| {
        let balance = month.balance;
        balance.engine_ah + balance.generator_ah + balance.shore_ah - balance.change_ah / kept
    };
    year.months.iter().map(month_ah).sum()
}

/// The same as hours.
fn engine_h(year: &Year, kept: f64) -> f64 {
    let hours = year.sums.charging_h + year.sums.motoring_h;
    let given_ah: f64 = year.months.iter().map(|m| m.balance.engine_ah).sum();
    if given_ah > 0.0 {
        hours * engine_ah(year, kept) / given_ah
    } else {
        hours
    }
}

/// What the boat used \[A·h\].
fn used_ah(year: &Year) -> f64 {
    year.months.iter().map(|month| month.balance.use_ah).sum()
}

/// The figures are not quite in order of the help: what helps moves the runs to
/// other hours, before or after the sun, and the bank then has a little more or
/// less room for it. The engine gives what the boat uses less the sun it could
/// take, so this is a part of the use: half a per cent of that is allowed.
const OF_THE_USE: f64 = 0.005;
/// What the steady alternator below gives \[A\], little enough for any heat.
const STEADY_A: f64 = 20.0;

proptest! {
    #![proptest_config(crate::cases(300))]

    #[test]
    fn help_never_asks_more_of_the_engine(
        drawn in normal_boat(),
        panel_w in 0.0..1500.0f64,
        latitude in -60.0..60.0f64,
        use_ah in 40.0..300.0f64,
        help in help(),
    ) {
        let sheet = sunny(&drawn.0, panel_w, latitude);
        let sheet = with(&sheet, "daily_use_ah", Value::Number(use_ah));
        let kept = kept(&sheet);
        let (before, after) = (year(&sheet), year(&helped(&sheet, help)));
        // An engine that gives nothing is asked for nothing, however flat the bank.
        prop_assume!(before.trouble.is_none() && after.trouble.is_none());
        let (most_ah, ah) = (engine_ah(&before, kept), engine_ah(&after, kept));
        let slack_ah = OF_THE_USE * used_ah(&before);
        prop_assert!(
            ah <= most_ah + slack_ah,
            "{most_ah} A·h became {ah}, allowed {slack_ah} more"
        );
    }

    /// Its hours follow where the alternator gives the same hot or cold. One
    /// that sags with heat needs fewer hours for many short runs than for few
    /// long ones, and less use can make long ones of short ones.
    #[test]
    fn help_never_runs_a_steady_engine_longer(
        drawn in normal_boat(),
        panel_w in 0.0..1500.0f64,
        latitude in -60.0..60.0f64,
        use_ah in 40.0..300.0f64,
        help in help(),
    ) {
        let sheet = sunny(&drawn.0, panel_w, latitude);
        let sheet = with(&sheet, "daily_use_ah", Value::Number(use_ah));
        let steady = [
            ("reg_kind", RegulatorKind::External.to_value()),
            ("reg_current_cap_a", Value::Number(STEADY_A)),
            ("way_kind", WayKind::Direct.to_value()),
            ("shore_rest", Rest::Engine.to_value()),
            ("bank_nominal_v", NominalVolts::V12.to_value()),
            ("bank_chemistry", Chemistry::Lfp.to_value()),
        ];
        let sheet = steady
            .into_iter()
            .fold(sheet, |sheet, (name, value)| with(&sheet, name, value));
        let inputs = &sheet.inputs;
        let kept = kept(&sheet);
        // Motoring runs into a full bank at times: then hours are no measure of
        // ampere-hours, and the year may hold one run more or less.
        let run_pct = (inputs.rule.stop_pct - inputs.rule_start_pct()).max(0.0);
        let run_h = run_pct / 100.0 * inputs.bank.capacity_ah / STEADY_A;
        let (before, after) = (year(&sheet), year(&helped(&sheet, help)));
        let (most_h, h) = (engine_h(&before, kept), engine_h(&after, kept));
        let slack_h = OF_THE_USE * used_ah(&before) / STEADY_A + run_h;
        prop_assert!(
            h <= most_h + slack_h,
            "{most_h} h became {h}, allowed {slack_h} more"
        );
    }
}
