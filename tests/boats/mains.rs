//! Boats that are charged from the mains, at the dock or by a generator: what the
//! answer names, frost, and an engine that is not run for charging.
//!
//! Acid of one fifth charge, 1.149 kg/L, is ice at −15 °C (US Army TM 5-1185); a frozen
//! battery must not be charged, whatever charges it, and lithium not below 0 °C (common
//! practice, no source).

use ampwright_core::analysis::engine_day::DayTrouble;
use ampwright_core::boat::Month;
use ampwright_core::text;
use ampwright_core::units::Reader;

use crate::boat::Boat;
use crate::says::Says;

fn on_generator(name: &'static str) -> Boat {
    Boat::new(name)
        .choose("shore_rest", "generator")
        .set("genset_kw", 4.0)
        .set("genset_charger_a", 80.0)
}

/// Low and in hard frost: ice at one fifth, and not at four.
fn frozen(name: &'static str, rest: &str, start_pct: f64) -> Boat {
    Boat::new(name)
        .choose("shore_rest", rest)
        .choose("bank_chemistry", "flooded")
        .set("bank_temperature_c", -18.0)
        .set("space_outside_c", -18.0)
        .set("bank_window_low_pct", 10.0)
        .set("rule_start_pct", start_pct)
        .set("run_to_pct", start_pct + 15.0)
        .set("bank_capacity_ah", 200.0)
        .set("daily_use_ah", 30.0)
        .set("rule_under_way_days_week", 0.0)
}

fn year_says(says: &Says) -> String {
    text::year::sentences(says.year(), &Reader::METRIC).join(" ")
}

#[test]
fn the_answer_names_the_generator_and_its_hours() {
    // 120 A·h at 80 A: 1.5 h.
    on_generator("the answer of a generator's boat").check(|says| {
        let answer = text::answer(&says.report, &Reader::METRIC);
        says.holds(answer.runs == "Generator", || answer.runs.to_string());
        says.holds(answer.time.starts_with("1 h 3"), || answer.time.clone());
        let need_ah = text::put_back_ah(&says.report.analyses);
        says.between("A·h put back", need_ah, 119.9, 120.1);
    });
    Boat::new("the answer of an engine's boat").check(|says| {
        let answer = text::answer(&says.report, &Reader::METRIC);
        says.holds(answer.runs == "Engine", || answer.runs.to_string());
    });
}

#[test]
fn an_engine_that_never_runs_gets_nothing_hot() {
    let hot = |name| {
        on_generator(name)
            .choose("reg_kind", "internal")
            .set("alt_rated_a", 160.0)
            .set("space_outside_c", 40.0)
            .set("bank_capacity_ah", 800.0)
    };
    hot("never motors")
        .set("rule_motoring_h", 0.0)
        .check(|says| {
            for code in [
                "winding_too_hot",
                "nothing_watches_heat",
                "hot_when_motoring",
            ] {
                says.must_not_find(code);
            }
            says.must_not_find("target_not_reached");
        });
    hot("motors on Sundays").check(|says| {
        says.must_find("nothing_watches_heat");
        says.note("hot_when_motoring");
        says.finding_says("hot_when_motoring", &["whenever you motor"]);
    });
    // Where the engine charges it goes without saying.
    hot("charges with the engine")
        .choose("shore_rest", "engine")
        .check(|says| says.must_not_find("hot_when_motoring"));
}

#[test]
fn frozen_lead_is_not_charged_from_the_mains() {
    frozen("flooded, frozen at the dock", "shore", 20.0).check(|says| {
        says.danger("lead_frozen");
        says.finding_says("lead_frozen", &["come to the dock", "sun or mains"]);
        let year = says.year();
        says.between(
            "kW·h of the dock into the ice",
            year.sums.shore_kwh,
            0.0,
            1.0e6,
        );
        for month in &year.months {
            says.holds(month.mains_trouble == Some(DayTrouble::BankFrozen), || {
                format!("{:?}", month.mains_trouble)
            });
            // The house alone is fed: nothing goes into the bank.
            says.between("A·h lost in charging", month.balance.lost_ah, 0.0, 1e-6);
        }
        let said = year_says(says);
        says.holds(said.contains("must not be charged then"), || said.clone());
    });
    // 30 A·h of 200 a day: a run to 35 % begins at 20.
    frozen("flooded, frozen under a generator", "generator", 20.0).check(|says| {
        says.danger("lead_frozen");
        says.finding_says("lead_frozen", &["when the generator starts"]);
        says.must_not_find("generator_not_enough");
        let generator = says.report.analyses.generator.expect("a generator");
        says.holds(generator.hours.is_none(), || "it charges ice".to_string());
        let answer = text::answer(&says.report, &Reader::METRIC);
        says.holds(answer.time == "bank frozen", || answer.time.clone());
    });
}

#[test]
fn kept_full_it_is_charged_in_the_same_frost() {
    for rest in ["shore", "generator"] {
        frozen("flooded at −18 °C, kept above 70 %", rest, 75.0)
            .set("bank_window_low_pct", 70.0)
            .check(|says| {
                says.must_not_find("lead_frozen");
                let troubled = says.year().months.iter();
                let troubled = troubled.filter(|month| month.mains_trouble.is_some());
                says.holds(troubled.count() == 0, || "a month is frozen".to_string());
            });
    }
}

#[test]
fn lithium_below_nought_gets_nothing_at_the_dock() {
    Boat::new("lithium at −3 °C at the dock")
        .choose("shore_rest", "shore")
        .set("bank_temperature_c", -3.0)
        .set("sun_panel_w", 200.0)
        .check(|says| {
            let year = says.year();
            for month in &year.months {
                says.holds(
                    month.mains_trouble == Some(DayTrouble::CannotBeCharged),
                    || format!("{:?}", month.mains_trouble),
                );
                says.between("A·h lost in charging", month.balance.lost_ah, 0.0, 1e-6);
            }
            let said = year_says(says);
            says.holds(said.contains("too cold or too hot"), || said.clone());
        });
}

#[test]
fn a_windy_winter_and_a_calm_summer() {
    // 3 A are 72 A·h a day: 108 at one and a half times, 36 at half.
    let mut boat = Boat::new("wind by months")
        .set("other_wind_a", 3.0)
        .set("rule_under_way_days_week", 0.0);
    boat.sheet_mut().months.row_mut(Month::January).wind_pct = Some(150.0);
    boat.sheet_mut().months.row_mut(Month::July).wind_pct = Some(50.0);
    boat.check(|says| {
        let months = &says.year().months;
        says.between(
            "A·h of wind in January",
            months[0].other_ah_day,
            107.9,
            108.1,
        );
        says.between("A·h of wind in March", months[2].other_ah_day, 71.9, 72.1);
        says.between("A·h of wind in July", months[6].other_ah_day, 35.9, 36.1);
        // 12, 48 and 84 of 120 A·h are left to the engine.
        let engine = |at: usize| months[at].engine_h_week;
        let steps = engine(0) < engine(2) && engine(2) < engine(6);
        says.holds(steps, || {
            format!("{} {} {}", engine(0), engine(2), engine(6))
        });
        says.holds(says.year().months_differ, || "no month differs".to_string());
    });
}

#[test]
fn what_the_water_turns_knows_no_calms() {
    let mut boat = Boat::new("a towed generator in a calm month")
        .set("other_water_a", 6.0)
        .set("rule_under_way_days_week", 7.0);
    boat.sheet_mut().months.row_mut(Month::July).wind_pct = Some(10.0);
    boat.check(|says| {
        let months = &says.year().months;
        says.between("A·h in July", months[6].other_ah_day, 143.9, 144.1);
    });
}

#[test]
fn no_month_has_more_days_than_days() {
    let mut boat = Boat::new("31 days of February");
    boat.sheet_mut().months.row_mut(Month::February).days = Some(31.0);
    boat.check(|says| {
        says.note("month_too_long");
        says.finding_says("month_too_long", &["February", "31", "29"]);
        let february = &says.year().months[1];
        says.between("days", february.days_aboard, 29.0, 29.0);
    });
}

#[test]
fn a_dock_without_a_charger() {
    Boat::new("shore power, no charger")
        .choose("shore_rest", "shore")
        .set("shore_charger_a", 0.0)
        .check(|says| {
            says.danger("shore_not_enough");
            says.finding_says("shore_not_enough", &["120 A·h", "no mains charger"]);
            let said = year_says(says);
            says.holds(!said.contains("No month needs shore power"), || {
                said.clone()
            });
            says.holds(said.contains("every day aboard"), || said.clone());
        });
    // 3 A, and the boat draws 5.
    Boat::new("shore power, 3 A")
        .choose("shore_rest", "shore")
        .set("shore_charger_a", 3.0)
        .check(|says| says.danger("shore_not_enough"));
    Boat::new("shore power, 30 A")
        .choose("shore_rest", "shore")
        .check(|says| says.must_not_find("shore_not_enough"));
}

#[test]
fn no_generator_runs_for_cells_that_must_not_be_charged() {
    on_generator("generator, lithium at −5 °C")
        .set("bank_temperature_c", -5.0)
        .check(|says| {
            let year = says.year();
            says.between("h of generator a year", year.sums.generator_h, 0.0, 0.0);
            let answer = text::answer(&says.report, &Reader::METRIC);
            says.holds(answer.time == "cannot be charged", || answer.time.clone());
            let said = year_says(says);
            says.holds(!said.contains("charge the bank too"), || said.clone());
        });
}
