//! Loads that run only while engine or generator do: each waits for them with its
//! hours of the day, and with those of the days before on which they did not run
//! long enough. Uses nothing else of the year.

use crate::boat::{When, Worksheet, engine_loads};

/// What has waited longer is drawn from the bank without the engine \[d\]: nobody
/// goes without water for longer. Own reasoning.
const LONGEST_WAIT_DAYS: f64 = 7.0;

/// What a day is, for what may run on it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DayKind {
    /// At anchor.
    Anchor,
    /// Under way.
    UnderWay,
}

/// One of them.
#[derive(Debug, Clone, Copy, PartialEq)]
struct WaitingLoad {
    amperes: f64,
    /// How long it runs a day \[h\].
    hours_day: f64,
    when: When,
    /// How long it would still run \[h\].
    waiting_h: f64,
}

impl WaitingLoad {
    const fn runs_on(&self, day: DayKind) -> bool {
        match self.when {
            When::Always => true,
            When::Anchor => matches!(day, DayKind::Anchor),
            When::UnderWay => matches!(day, DayKind::UnderWay),
        }
    }

    /// Part of a time for which it runs, 0 to 1.
    fn part(&self, span_h: f64) -> f64 {
        if span_h > 0.0 {
            (self.waiting_h / span_h).min(1.0)
        } else {
            0.0
        }
    }
}

/// All of a boat, and how long each still waits.
#[derive(Debug, Clone, PartialEq)]
pub struct EngineLoads {
    loads: Vec<WaitingLoad>,
    today: DayKind,
    /// What has waited too long is drawn over today \[A\].
    overdue_a: f64,
}

impl EngineLoads {
    /// Those of a boat in a month that uses a part of the usual, 0 to 1 and more.
    pub fn of(sheet: &Worksheet, used: f64) -> EngineLoads {
        let loads = engine_loads(sheet).into_iter().map(|load| WaitingLoad {
            amperes: load.amperes,
            hours_day: used * load.hours,
            when: load.when,
            waiting_h: 0.0,
        });
        EngineLoads {
            loads: loads.collect(),
            today: DayKind::Anchor,
            overdue_a: 0.0,
        }
    }

    /// Begins a day aboard.
    pub fn begin_day(&mut self, day: DayKind) {
        self.today = day;
        self.overdue_a = 0.0;
        for load in self.loads.iter_mut().filter(|load| load.runs_on(day)) {
            let wants_h = load.waiting_h + load.hours_day;
            load.waiting_h = wants_h.min(LONGEST_WAIT_DAYS * load.hours_day);
            self.overdue_a += load.amperes * (wants_h - load.waiting_h) / 24.0;
        }
    }

    /// What still waits \[A·h\].
    pub fn waiting_ah(&self) -> f64 {
        let each = self.loads.iter().map(|load| load.amperes * load.waiting_h);
        each.fold(0.0, |sum, ah| sum + ah)
    }

    /// What is drawn today though the engine has not run \[A\].
    pub const fn overdue_a(&self) -> f64 {
        self.overdue_a
    }

    /// What they draw on average over the next hours of engine or generator \[A\].
    pub fn drawn_a(&self, span_h: f64) -> f64 {
        let drawn = self.running().map(|load| load.amperes * load.part(span_h));
        drawn.fold(0.0, |sum, amperes| sum + amperes)
    }

    /// They have run for a time \[h\], at what they draw on average over `span_h` \[h\].
    pub fn ran(&mut self, hours: f64, span_h: f64) {
        let today = self.today;
        for load in self.loads.iter_mut().filter(|load| load.runs_on(today)) {
            load.waiting_h = (load.waiting_h - hours * load.part(span_h)).max(0.0);
        }
    }

    fn running(&self) -> impl Iterator<Item = &WaitingLoad> {
        self.loads.iter().filter(|load| load.runs_on(self.today))
    }
}
