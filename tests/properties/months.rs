//! The year by months: one year for everybody, months that add up, and the table
//! on its way through link and file.

use ampwright_core::Worksheet;
use ampwright_core::analysis::year;
use ampwright_core::analysis::year::{Year, year_sums};
use ampwright_core::boat::{Key, Month, MonthRow, Months, demo};
use ampwright_core::decision::arrangements::compare;
use ampwright_core::exchange::{open_link, read_json, to_json, to_link};
use ampwright_core::physics::climate::MONTH_DAYS;
use proptest::prelude::*;

use crate::draw::{any_sheet, normal_boat, with_months};

fn boat(link: &str) -> Worksheet {
    let opened = open_link(&format!("v=2&{link}&end")).expect("a link");
    assert_eq!(opened.remarks, []);
    opened.sheet
}

/// Ampere-hours of all months that came from nowhere, and how many were moved.
fn left_over(year: &Year) -> (f64, f64) {
    let mut left_ah = 0.0;
    let mut moved_ah = 0.0;
    for month in &year.months {
        let b = month.balance;
        let free_ah = b.sun_ah - b.wasted_ah + b.other_ah - b.other_wasted_ah;
        let given_ah = free_ah + b.engine_ah + b.generator_ah + b.shore_ah;
        left_ah += given_ah - (b.use_ah - b.short_ah) - b.lost_ah - b.change_ah;
        moved_ah += free_ah + b.engine_ah + b.generator_ah + b.shore_ah + b.use_ah;
    }
    (left_ah, moved_ah)
}

proptest! {
    #![proptest_config(crate::cases(100))]

    /// What goes in over the year comes out, to a millionth.
    #[test]
    fn the_year_closes(drawn in with_months(any_sheet())) {
        let year = year(&drawn.0);
        let (left_ah, moved_ah) = left_over(&year);
        prop_assert!(left_ah.abs() <= 1e-6 * moved_ah.max(1.0), "{left_ah} of {moved_ah}");
        let sums = year.sums;
        let of_months: f64 = year.months.iter().map(|m| m.charging_h).sum();
        prop_assert!((sums.charging_h - of_months).abs() <= 1e-9 * (1.0 + of_months));
        prop_assert!((sums.days_aboard - drawn.0.days_aboard()).abs() < 1e-9);
        prop_assert_eq!(year_sums(&drawn.0), sums);
    }

    /// A month without days aboard costs nothing.
    #[test]
    fn a_month_ashore_costs_nothing(drawn in with_months(normal_boat()), at in 0..12usize) {
        let mut sheet = drawn.0;
        sheet.months.row_mut(Month::ALL[at]).days = Some(0.0);
        let year = year(&sheet);
        let month = &year.months[at];
        let taken = [month.charging_h, month.motoring_h, month.fuel_l, month.shore_kwh];
        prop_assert_eq!(taken, [0.0; 4]);
        prop_assert_eq!(month.balance.use_ah, 0.0);
    }
}

proptest! {
    #![proptest_config(crate::cases(25))]

    /// Every arrangement's hours, fuel and shore power of a year are those that
    /// the year of the boat so set up tells, to the last digit.
    #[test]
    fn arrangements_have_the_year_of_the_year(drawn in with_months(normal_boat())) {
        let sheet = drawn.0;
        for outcome in compare(&sheet).outcomes {
            let year = year(&outcome.arrangement.on(&sheet));
            prop_assert_eq!(outcome.sums, year.sums);
            let covered = |figure: f64| year.sums.covered.then_some(figure);
            prop_assert_eq!(outcome.hours_year, covered(year.sums.charging_h));
            prop_assert_eq!(outcome.fuel_year_l, covered(year.sums.fuel_l));
        }
    }

    /// Twelve equal months are twelve times one of them.
    #[test]
    fn equal_months_add_up(drawn in normal_boat(), days in 1.0..28.0f64) {
        let mut sheet = drawn.0;
        sheet.months = Months::default();
        sheet.inputs.rule.aboard = ampwright_core::boat::Aboard::Stretch;
        for month in Month::ALL {
            let row = sheet.months.row_mut(*month);
            *row = MonthRow {
                air_c: Some(24.0),
                bank_c: Some(22.0),
                sun_h: Some(3.0),
                use_pct: Some(90.0),
                days: Some(days),
                ..MonthRow::default()
            };
        }
        // Else the hours of daylight differ.
        sheet.inputs.sun.basis = ampwright_core::boat::SunBasis::Hours;
        let year = year(&sheet);
        let (one, all) = (&year.months[0], &year.sums);
        for (all, one) in [
            (all.charging_h, one.charging_h),
            (all.motoring_h, one.motoring_h),
            (all.fuel_l, one.fuel_l),
            (all.shore_kwh, one.shore_kwh),
            (all.use_ah, one.balance.use_ah),
        ] {
            prop_assert!((all - 12.0 * one).abs() <= 1e-9 * all, "{all} is not 12 × {one}");
        }
        prop_assert!(!year.months_differ);
    }
}

/// Half the days aboard take half of everything.
#[test]
fn a_year_goes_with_its_days() {
    let (all, half) = (boat("cost_days=365.25"), boat("cost_days=182.625"));
    let (all, half) = (year_sums(&all), year_sums(&half));
    for (all, half) in [
        (all.charging_h, half.charging_h),
        (all.fuel_l, half.fuel_l),
        (all.use_ah, half.use_ah),
    ] {
        assert!((all - 2.0 * half).abs() < 1e-9 * all);
    }
    // 120 A·h a day.
    assert!((all.use_ah - 365.25 * 120.0).abs() < 1e-6);
}

proptest! {
    #![proptest_config(crate::cases(100))]

    /// No week has more than 168 hours, no day more than 24, whatever runs.
    #[test]
    fn nothing_runs_longer_than_there_is_time(drawn in with_months(any_sheet())) {
        let report = ampwright_core::report(&drawn.0);
        let analyses = &report.analyses;
        let day_h = [
            analyses.day.engine_hours,
            analyses.generator.and_then(|generator| generator.hours),
        ];
        for hours in day_h.into_iter().flatten() {
            prop_assert!((0.0..=24.0 + 1e-6).contains(&hours), "{hours} h a day");
        }
        for month in &year(&drawn.0).months {
            let week_h = [month.engine_h_week, month.motoring_h_week, month.generator_h_week, month.shore_h_week];
            for hours in week_h {
                prop_assert!((0.0..=168.0 + 1e-6).contains(&hours), "{hours} h a week");
            }
            let most_h = 24.0 * month.days_aboard + 1e-6;
            prop_assert!(month.charging_h + month.motoring_h <= most_h);
            prop_assert!(month.generator_h <= most_h);
            prop_assert!(month.day.engine_h <= 24.0 + 1e-6);
        }
    }
}

/// Motoring round the clock on every day leaves no hour to charge in besides.
#[test]
fn who_motors_all_day_does_not_charge_besides() {
    let months = &year(&boat(
        "rule_under_way_days_week=7&rule_motoring_h=24&rule_aboard=weekends&bank_capacity_ah=50&daily_use_ah=400",
    ))
    .months;
    for month in months {
        assert!(
            month.engine_h_week <= 168.0 + 1e-6,
            "{}",
            month.engine_h_week
        );
        assert!(month.charging_h < 1e-6, "{}", month.charging_h);
    }
}

/// What months that say nothing share is what the others leave.
#[test]
fn days_that_are_not_said_share_the_rest() {
    let figures = boat("cost_days=100&year=7~~~~~~31&year=8~~~~~~31").month_figures();
    let days: f64 = figures.iter().map(|month| month.days).sum();
    assert!((days - 100.0).abs() < 1e-9);
    assert_eq!(figures[6].days, 31.0);
    let share = 38.0 / (365.25 - 62.0);
    assert!((figures[0].days - share * MONTH_DAYS[0]).abs() < 1e-9);
    // More said than aboard: the others are left with none.
    let more = boat("cost_days=40&year=7~~~~~~31&year=8~~~~~~31");
    assert_eq!(
        (more.month_figures()[0].days, more.days_aboard()),
        (0.0, 62.0)
    );
}

/// The worksheet's own month is as the worksheet says, whatever the season.
#[test]
fn the_worksheets_month_is_its_own() {
    let sheet = demo();
    let here = sheet.inputs.sun.month as usize;
    let figures = sheet.month_figures();
    assert!((figures[here].air_c - sheet.inputs.space.outside_c).abs() < 1e-12);
    assert!((figures[here].bank_c - sheet.inputs.bank.temperature_c).abs() < 1e-12);
    assert!(figures[1].air_c < figures[7].air_c - 8.0);
    // Without a place all months are alike, and as the worksheet.
    let alike = Worksheet::default();
    let figures = alike.month_figures();
    for month in &figures {
        assert_eq!(month.air_c, alike.inputs.space.outside_c);
        assert_eq!(month.bank_c, alike.inputs.bank.temperature_c);
        assert_eq!((month.sun_h, month.use_pct), (4.5, 100.0));
    }
    assert!(!year(&alike).months_differ);
}

/// A bank that lies in colder water is colder by half of the difference.
#[test]
fn the_bank_follows_the_water_by_half() {
    let figures = boat("space_outside=20&bank_temperature=18&year=1~~4").month_figures();
    assert_eq!((figures[0].bank_c, figures[1].bank_c), (10.0, 18.0));
}

/// A link of version 2 with months, as it was sent, and the same as a file.
const LINK: &str =
    "v=2&name=Winter&cost_days=300&year=1~4~3~12~0.8~130~31&year=7~~~~~~0&year=12~~~~~150&end";
const FILE: &str = r#"{"type":"ampwright-worksheet","version":2,"name":"Winter","inputs":{"cost_days":300},"year":{"months":[{"month":1,"air_c":4,"water_c":3,"bank_c":12,"sun_h":0.8,"use_pct":130,"days":31},{"month":7,"days":0},{"month":12,"use_pct":150}]}}"#;

#[test]
fn a_link_with_months_means_what_it_meant() {
    let opened = open_link(LINK).expect("a link");
    assert_eq!((opened.whole, opened.remarks), (true, vec![]));
    let sheet = opened.sheet;
    assert_eq!(to_link(&sheet), LINK);
    let reading = read_json(FILE).expect("a file");
    assert_eq!(reading.remarks, []);
    assert_eq!(reading.sheet, sheet);
    let again = read_json(&to_json(&sheet).to_string()).expect("ours");
    assert_eq!(again.sheet, sheet);
    let row = |month| sheet.months.row(month);
    let january = row(Month::January);
    assert_eq!((january.air_c, january.water_c), (Some(4.0), Some(3.0)));
    assert_eq!((january.bank_c, january.sun_h), (Some(12.0), Some(0.8)));
    assert_eq!((january.use_pct, january.days), (Some(130.0), Some(31.0)));
    assert_eq!(row(Month::July).days, Some(0.0));
    assert_eq!(row(Month::December).use_pct, Some(150.0));
    assert_eq!(sheet.months.said().count(), 3);
    // The month of the day keeps its short name.
    let month = Key::named("sun_month").expect("a key");
    let named = boat("sun_latitude=40&month=3");
    assert_eq!(
        named.inputs.get(month),
        month.spec().read("3").expect("March")
    );
}
