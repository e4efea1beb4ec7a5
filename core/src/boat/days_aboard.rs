//! Usual ways to spend a year aboard, as days in each month.

use crate::boat::Key;
use crate::boat::{Aboard, Month, Rule, SectionId, SunBasis, Worksheet};
use crate::physics::climate::MONTH_DAYS;
use crate::schema::{FieldType, choice};

choice! {
    /// A usual way to spend a year aboard.
    YearAboard {
        AllYear = "all", "Live aboard all year";
        Weekends = "weekends", "Every weekend";
        SummerWeekends = "summer_weekends", "Weekends in summer";
        Season = "season", "A summer season";
        Evenly = "evenly", "Spread evenly";
    }
}

/// Months of a summer season: May to September north, November to March south.
const NORTH: [Month; 5] = [
    Month::May,
    Month::June,
    Month::July,
    Month::August,
    Month::September,
];
const SOUTH: [Month; 5] = [
    Month::November,
    Month::December,
    Month::January,
    Month::February,
    Month::March,
];
/// Days aboard of a week that is lived ashore.
const WEEKEND: f64 = 2.0 / 7.0;

impl Worksheet {
    /// Fills in the days aboard of every month, whole ones, and how they come;
    /// spread evenly they are left empty.
    pub fn live_aboard(&mut self, how: YearAboard) {
        let sun = &self.inputs.sun;
        let south = sun.basis == SunBasis::Place && sun.latitude_deg < 0.0;
        let summer = if south { SOUTH } else { NORTH };
        let mut owed = 0.0;
        for (month, length) in Month::ALL.iter().zip(MONTH_DAYS) {
            // What rounding leaves over goes to the next month.
            let mut part = |whole: f64| {
                let days = (length * whole + owed).round().min(length);
                owed += length * whole - days;
                days
            };
            let mut in_summer = |whole: f64| match summer.contains(month) {
                true => part(whole),
                false => 0.0,
            };
            self.months.row_mut(*month).days = match how {
                YearAboard::AllYear => Some(part(1.0)),
                YearAboard::Weekends => Some(part(WEEKEND)),
                YearAboard::SummerWeekends => Some(in_summer(WEEKEND)),
                YearAboard::Season => Some(in_summer(1.0)),
                YearAboard::Evenly => None,
            };
        }
        let come = match how {
            YearAboard::Weekends | YearAboard::SummerWeekends => Aboard::Weekends,
            YearAboard::AllYear | YearAboard::Season | YearAboard::Evenly => Aboard::Stretch,
        };
        let key = Key::at(SectionId::rule, Rule::aboard);
        // An option of the input's own.
        let _ = self.state(key, come.to_value());
    }
}

#[cfg(test)]
mod tests {
    use crate::boat::{Aboard, SunBasis, Worksheet, YearAboard};

    #[test]
    fn a_summer_season_is_where_the_boat_is() {
        let mut sheet = Worksheet::default();
        sheet.live_aboard(YearAboard::Season);
        assert_eq!(sheet.days_aboard(), 153.0);
        assert_eq!(sheet.month_figures()[6].days, 31.0);
        sheet.inputs.sun.basis = SunBasis::Place;
        sheet.inputs.sun.latitude_deg = -35.0;
        sheet.live_aboard(YearAboard::SummerWeekends);
        assert_eq!(sheet.inputs.rule.aboard, Aboard::Weekends);
        assert_eq!(sheet.month_figures()[6].days, 0.0);
        // 151 days and two of seven: 43.1.
        assert_eq!(sheet.days_aboard(), 43.0);
        sheet.live_aboard(YearAboard::AllYear);
        assert_eq!(sheet.days_aboard(), 365.0);
        sheet.live_aboard(YearAboard::Evenly);
        assert!((sheet.days_aboard() - 180.0).abs() < 1e-9);
        assert_eq!(sheet.months.said().count(), 0);
    }
}
