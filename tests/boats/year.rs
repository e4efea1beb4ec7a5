//! The year by months: where and when a boat is lived aboard decides what its
//! engine runs in a year.

use ampwright_core::boat::{Drawn, Month, When};

use crate::boat::Boat;

impl Boat {
    /// Days aboard in each month, January first.
    fn days(mut self, days: [f64; 12]) -> Boat {
        for (month, days) in Month::ALL.iter().zip(days) {
            self.sheet_mut().months.row_mut(*month).days = Some(days);
        }
        self
    }

    fn at_latitude(self, latitude_deg: f64, month: &str) -> Boat {
        self.choose("sun_basis", "place")
            .set("sun_latitude_deg", latitude_deg)
            .choose("sun_month", month)
    }
}

#[test]
fn liveaboard_in_the_tropics() {
    // 12° north, trade-wind sky: 5.3 to 6.5 h of sun each month. 500 W × 70 % of
    // 6 h are 2100 W·h or 160 A·h, less the heat of the cells some 140: the 120
    // used and a little over. The engine runs a few hours in a year, in the
    // darkest month if at all, and 12° has no winter: months are alike.
    Boat::new("liveaboard at 12°")
        .set("sun_panel_w", 500.0)
        .set("sun_clearness", 0.65)
        .set("sun_yield_pct", 70.0)
        .at_latitude(12.0, "3")
        .set("cost_days", 365.0)
        .set("rule_under_way_days_week", 0.0)
        .check(|says| {
            let year = says.year();
            says.between("days aboard", year.sums.days_aboard, 364.9, 365.1);
            says.between("engine h for charging", year.sums.charging_h, 0.0, 60.0);
            says.year_never_short();
            let air = |at: usize| year.months[at].air_c;
            says.between("season at 12°, K", air(7) - air(1), 0.5, 6.0);
        });
}

#[test]
fn weekends_in_the_baltic() {
    // Two days a week from May to September at 58°: 2 × 80 A·h, and five days
    // alone in which 100 W × 75 % × some 4 h are 23 A·h a day, 115 to the next
    // weekend. The engine has 45 A·h a weekend left at most, of which an hour's
    // motoring brings nearly all: hardly any hours for charging alone.
    let boat = |name, aboard: &str| {
        Boat::new(name)
            .set("sun_panel_w", 100.0)
            .at_latitude(58.0, "7")
            .set("space_outside_c", 18.0)
            .set("daily_use_ah", 80.0)
            .choose("rule_aboard", aboard)
            .days([0.0, 0.0, 0.0, 0.0, 9.0, 9.0, 9.0, 9.0, 8.0, 0.0, 0.0, 0.0])
    };
    let stretch = boat("a stretch in the Baltic", "stretch").answers();
    boat("weekends in the Baltic", "weekends").check(|says| {
        let (weekends, stretch) = (says.year().sums, stretch.year().sums);
        says.between("days aboard", weekends.days_aboard, 44.0, 44.0);
        says.between("use", weekends.use_ah, 44.0 * 80.0 - 1.0, 44.0 * 80.0 + 1.0);
        says.between("engine h on weekends", weekends.charging_h, 0.0, 12.0);
        says.holds(weekends.charging_h < 0.7 * stretch.charging_h, || {
            format!(
                "weekends {:.1} h, in a stretch {:.1} h",
                weekends.charging_h, stretch.charging_h
            )
        });
        let winter = &says.year().months[0];
        says.holds(
            winter.charging_h == 0.0 && winter.balance.use_ah == 0.0,
            || "a boat ashore uses something".to_string(),
        );
    });
}

#[test]
fn winter_aboard_without_sun() {
    // 60° from November to February: 300 W give 300 × 75 % × 0.4 h or some 100
    // W·h, less than 10 A·h of 120. The engine does it all: 110 A·h at 38 to 75 A
    // hot, 5 of which the boat takes: 1.6 to 3.4 h a day.
    Boat::new("winter aboard at 60°")
        .set("sun_panel_w", 300.0)
        .at_latitude(60.0, "12")
        .set("space_outside_c", 2.0)
        .set("bank_temperature_c", 15.0)
        .set("rule_under_way_days_week", 0.0)
        .days([
            31.0, 28.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 30.0, 31.0,
        ])
        .check(|says| {
            let sums = says.year().sums;
            says.between("h a day", sums.charging_h / sums.days_aboard, 1.4, 3.4);
            says.year_never_short();
            let december = &says.year().months[11];
            says.between("sun, A·h a day", december.sun_ah_day, 0.0, 14.0);
        });
}

#[test]
fn southern_summer() {
    // 37° south: December is the best month and June the worst, and it is colder
    // in July than in January.
    Boat::new("a year at 37° south")
        .set("sun_panel_w", 300.0)
        .at_latitude(-37.0, "1")
        .set("space_outside_c", 22.0)
        .set("cost_days", 365.0)
        .check(|says| {
            let months = &says.year().months;
            let h = |at: usize| months[at].charging_h / months[at].days_aboard;
            says.holds(h(5) > 1.3 * h(11), || {
                format!("June {:.2} h a day, December {:.2}", h(5), h(11))
            });
            says.between(
                "July below January, K",
                months[0].air_c - months[6].air_c,
                4.0,
                12.0,
            );
            // By hand of the almanac: 37° have 4.1 of 11.8 kW·h/m² × 0.55 in June.
            says.between("sun hours in June", months[5].full_hours, 2.0, 2.7);
        });
}

#[test]
fn summer_cruise_only() {
    // Thirty days in July and nothing else: an hour costs the same, a year a
    // twelfth of a whole one, and what is bought for it hardly pays.
    let boat = |name, july: f64, others: f64| {
        let mut days = [others; 12];
        days[6] = july;
        Boat::new(name)
            .set("rule_under_way_days_week", 0.0)
            .days(days)
    };
    let whole = boat("all year", 31.0, 30.0).answers();
    boat("July only", 30.0, 0.0).check(|says| {
        let (july, all) = (says.year().sums, whole.year().sums);
        says.between("use", july.use_ah, 3599.0, 3601.0);
        let share = july.charging_h / all.charging_h;
        says.between(
            "share of the year",
            share,
            30.0 / 361.0 - 1e-6,
            30.0 / 361.0 + 1e-6,
        );
        let pays = |answers: &crate::answers::Answers| {
            answers
                .comparison()
                .outcomes
                .iter()
                .filter_map(|o| o.payback_years)
                .fold(0.0, f64::max)
        };
        says.holds(pays(&whole) < 50.0, || "never pays back".to_string());
        for (one, other) in says
            .comparison()
            .outcomes
            .iter()
            .zip(&whole.comparison().outcomes)
        {
            let (Some(one), Some(other)) = (one.payback_years, other.payback_years) else {
                continue;
            };
            says.holds(one >= 10.0 * other, || {
                format!("{one} years, all year {other}")
            });
        }
    });
}

#[test]
fn a_bank_ten_years_on() {
    // 2 % a year: 320 of 400 A·h are left, 80 % of them usable: 256, and at 120 a
    // day 2.13 days. The day's use is the same: so is about the engine time.
    let new = Boat::new("new").answers();
    Boat::new("ten years old")
        .set("bank_age_years", 10.0)
        .check(|says| {
            let energy = &says.report.analyses.energy;
            says.between("A·h left", energy.bank_ah, 319.9, 320.1);
            says.autonomy_between(2.1, 2.16);
            let (then, now) = (
                says.report.analyses.day.engine_hours.unwrap_or(0.0),
                new.report.analyses.day.engine_hours.unwrap_or(0.0),
            );
            says.between("engine time over that of a new one", then / now, 0.95, 1.1);
        });
}

#[test]
fn no_bank_lasts_for_ever() {
    // 180 days × 120 A·h are 54 full cycles of 400 A·h: 3000 last 55 years, and 15
    // years of the calendar end first. Lead's 500 cycles last 9.3, its 6 years less.
    Boat::new("a lithium bank's life").check(|says| {
        let lasts = says.comparison().outcomes[0].bank_years;
        says.some_between("years", lasts, 15.0, 15.0);
    });
    Boat::new("hard use all the year")
        .set("cost_days", 365.0)
        .set("daily_use_ah", 250.0)
        .set("cost_cycles", 2000.0)
        .check(|says| {
            // 228 cycles a year, and a few more under way: 2000 last 8.8.
            let lasts = says.comparison().outcomes[0].bank_years;
            says.some_between("years", lasts, 8.3, 8.9);
        });
    Boat::new("flooded lead's life")
        .choose("bank_chemistry", "flooded")
        .check(|says| {
            let lasts = says.comparison().outcomes[0].bank_years;
            says.some_between("years", lasts, 6.0, 6.0);
        });
}

#[test]
fn a_watermaker_waits_for_the_engine_through_the_year() {
    // 40 A·h of watermaker in an hour, on top of 60 through the day: in an hour
    // without the engine the boat draws 60 W·h and not a watt of watermaker.
    let mut boat = Boat::new("watermaker on the engine")
        .load_w("refrigerator", 33.0, 24.0)
        .load_w("watermaker", 530.0, 1.0)
        .set("rule_under_way_days_week", 0.0);
    let watermaker = &mut boat.sheet_mut().loads[1].row;
    watermaker.drawn = Drawn::WithEngine;
    watermaker.when = When::Always;
    boat.check(|says| {
        let month = &says.year().months[5];
        let idle = month.day.hours.iter().filter(|hour| hour.engine_min == 0.0);
        let most_w = idle.map(|hour| hour.use_w).fold(0.0, f64::max);
        says.between("W without the engine", most_w, 30.0, 40.0);
        let busiest_w = month.day.hours.iter().map(|hour| hour.use_w);
        says.between("W with it", busiest_w.fold(0.0, f64::max), 200.0, 570.0);
        // (33 × 24 + 530) / 13.16 = 100.5 A·h a day all the same.
        says.between("A·h a day", month.use_ah_day, 97.0, 104.0);
    });
}
