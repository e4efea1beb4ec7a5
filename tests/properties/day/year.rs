//! The year runs the engine as the day says, and has the day's troubles.

use ampwright_core::analysis::energy::energy;
use ampwright_core::analysis::engine_day::{DailyRun, DayTrouble, daily_run};
use ampwright_core::analysis::year;
use ampwright_core::boat::{RegulatorKind, SecondRole, SunBasis};
use ampwright_core::schema::{FieldType, Value};
use ampwright_core::simulation::Limit;
use ampwright_core::text::year::sentences;
use ampwright_core::units::Reader;
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;

use crate::day::boats::{boat, drawn_day, plant_and_need, put, runs};
use crate::draw::Drawn;

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
    sheet.inputs.sun.basis = SunBasis::Hours;
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
    // Where the bank decides what flows, sun in its limit leaves the engine less.
    let bank_decides = lead || report(&roomy).analyses.output.hot_limit == Limit::BankLimit;
    let more = if bank_decides && energy(&roomy).sun_ah > 0.0 {
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
            // A cooler month may have what the month asked for has not.
            let alike = year.months.iter().filter(|month| month.trouble == Some(trouble));
            let charging_h: f64 = alike.map(|m| m.engine_h_week - m.motoring_h_week).sum();
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
