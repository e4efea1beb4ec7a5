//! A month's days: sun and use by the hour, at anchor and under way, and which days
//! are aboard. Uses the hours, the pattern of days and the boat in that month.

use crate::analysis::energy::Energy;
use crate::analysis::energy::hours::{DayHours, UnderWay};
use crate::analysis::solar_day::{SolarDay, solar_day_of};
use crate::analysis::year::climate::in_month;
use crate::analysis::year::engine_loads::{DayKind, EngineLoads};
use crate::analysis::year::hour::{Hour, hours};
use crate::analysis::year::pattern::DayPattern;
use crate::analysis::year::rule::{EngineSchedule, hours_under_way};
use crate::boat::{DayUse, Month, MonthFigures, Worksheet, steady_use};
use crate::physics::climate::MONTH_DAYS;

/// The hours of a month.
#[derive(Debug, Clone)]
pub struct Weather {
    /// What the month is worked out with.
    pub figures: MonthFigures,
    /// Which month it is.
    pub month: Month,
    /// Its sun, the day through.
    pub sky: SolarDay,
    /// Which of its days are aboard.
    pub pattern: DayPattern,
    /// Voltage that watt-hours and ampere-hours are converted with \[V\].
    pub bank_v: f64,
    /// What runs with engine or generator alone; it is not in the hours.
    pub engine_loads: EngineLoads,
    /// The hours of a day at anchor, from midnight.
    pub anchor: Vec<Hour>,
    /// The hours of a day under way, from midnight.
    pub under_way: Vec<Hour>,
}

impl Weather {
    /// Of a month of the boat.
    pub fn new(
        sheet: &Worksheet,
        energy: &Energy,
        month: Month,
        figures: &MonthFigures,
    ) -> Weather {
        let inputs = in_month(&sheet.inputs, figures);
        let orders = EngineSchedule::of(&inputs);
        let sky = solar_day_of(&inputs, month, figures.sun_h);
        let bank_v = energy.bank_v;
        let used = figures.use_pct / 100.0;
        let (at_anchor, on_passage) =
            steady_use(sheet).unwrap_or((energy.anchor, energy.under_way));
        let hours = |day: &DayUse, way: UnderWay| {
            let day = DayHours::new(day, &sky, bank_v).scaled(used, 1.0);
            let day = day.with_other(inputs.other_at_anchor_a(), way);
            hours(&day, &orders)
        };
        let under_way = hours(&on_passage, hours_under_way(&inputs));
        let mut anchor = hours(&at_anchor, UnderWay::NEVER);
        anchor.iter_mut().for_each(|hour| hour.motoring_h = 0.0);
        let month_days = MONTH_DAYS[month as usize % MONTH_DAYS.len()];
        Weather {
            pattern: DayPattern::of(
                inputs.rule.aboard,
                figures.days,
                month_days,
                inputs.rule.under_way_days_week,
            ),
            engine_loads: EngineLoads::of(sheet, used),
            figures: *figures,
            month,
            sky,
            bank_v,
            anchor,
            under_way,
        }
    }

    /// The hours of one of its days, from midnight.
    pub fn hours(&self, day: DayKind) -> &[Hour] {
        match day {
            DayKind::Anchor => &self.anchor,
            DayKind::UnderWay => &self.under_way,
        }
    }

    /// Whether a day of it is like a day of another, and comes in the same weeks.
    pub fn alike(&self, other: &Weather) -> bool {
        self.pattern == other.pattern
            && self.figures.air_c == other.figures.air_c
            && self.figures.bank_c == other.figures.bank_c
            && self.engine_loads == other.engine_loads
            && self.anchor == other.anchor
            && self.under_way == other.under_way
    }
}
