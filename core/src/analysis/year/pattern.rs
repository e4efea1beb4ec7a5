//! How the days aboard of a month come: one after the other, or a few in each
//! week with the boat lying alone in between.

use crate::boat::Aboard;

/// Days of a week.
const WEEK: u32 = 7;

/// Which days of some weeks are aboard.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayPattern {
    /// Days aboard a week, at least one in four weeks and at most seven.
    days_week: f64,
    /// Days that are walked before they count.
    pub settling: u32,
    /// Days that count.
    pub counted: u32,
}

impl DayPattern {
    /// Of a month of that many days with so many aboard, the boat under way on
    /// some of seven.
    ///
    /// Days one after the other are settled after a week, and a fortnight then
    /// stands for them: within a thousandth of forty weeks. Days under way that
    /// do not come out even in a fortnight, and weekends, on which a bank is
    /// emptied more slowly, take eight weeks.
    pub fn of(aboard: Aboard, days: f64, month_days: f64, under_way_days_week: f64) -> DayPattern {
        let week = f64::from(WEEK);
        let uneven = (2.0 * under_way_days_week).fract() > 1e-9;
        let (days_week, settling) = match aboard {
            Aboard::Stretch => (week, WEEK),
            Aboard::Weekends => ((week * days / month_days).clamp(0.25, week), 4 * WEEK),
        };
        DayPattern {
            days_week,
            settling,
            counted: match aboard {
                Aboard::Stretch if !uneven => 2 * WEEK,
                _ => 8 * WEEK,
            },
        }
    }

    /// Days aboard until the beginning of a week, whole ones.
    fn until(self, week: u32) -> u32 {
        (f64::from(week) * self.days_week + 1e-9).floor() as u32
    }

    /// How many days aboard there were before a day, if that one is aboard too;
    /// they stand at the end of each week.
    pub fn day_aboard(self, day: u32) -> Option<u32> {
        let (before, after) = (self.until(day / WEEK), self.until(day / WEEK + 1));
        let ashore = WEEK - (after - before).min(WEEK);
        (day % WEEK)
            .checked_sub(ashore)
            .map(|weekday| before + weekday)
    }
}

#[cfg(test)]
mod tests {
    use crate::analysis::year::pattern::DayPattern;
    use crate::boat::Aboard;

    #[test]
    fn weekends_stand_at_the_end_of_the_week() {
        let aboard = |pattern: DayPattern| -> Vec<u32> {
            (0..28)
                .filter(|day| pattern.day_aboard(*day).is_some())
                .collect()
        };
        let weekends = DayPattern::of(Aboard::Weekends, 8.0, 28.0, 1.0);
        assert_eq!(aboard(weekends), [5, 6, 12, 13, 19, 20, 26, 27]);
        assert_eq!(weekends.day_aboard(27), Some(7));
        let once = DayPattern::of(Aboard::Weekends, 0.1, 31.0, 1.0);
        assert_eq!(aboard(once), [27]);
        let all = DayPattern::of(Aboard::Weekends, 31.0, 31.0, 1.0);
        assert_eq!(aboard(all).len(), 28);
        assert_eq!(
            aboard(DayPattern::of(Aboard::Stretch, 3.0, 31.0, 1.0)).len(),
            28
        );
    }
}
