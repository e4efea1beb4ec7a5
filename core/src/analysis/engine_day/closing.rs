//! The run with which a day closes: as much goes into the bank as the rest of
//! the day takes out.

use crate::numerics::bracketed_root;
use crate::physics::battery::Cells;
use crate::simulation::plant::Plant;
use crate::simulation::run::{Fineness, Trace, charge};
use crate::simulation::steady_state::{LATE_S, settled};

/// A run from where the rest of the day left the bank to the target.
#[derive(Debug, Clone)]
pub struct ClosedRun {
    /// The run, step by step. It goes on a little beyond its end.
    pub trace: Trace,
    /// How long it takes \[s\].
    pub seconds: f64,
    /// State of charge it begins at, 0 to 1.
    pub from: f64,
}

/// How far beyond its target a run is traced, so that one that begins a little
/// too high still closes its day \[state of charge\].
const BEYOND: f64 = 0.005;
/// How near its target a run must end \[state of charge\].
const NEAR: f64 = 1e-5;
/// How well its time must be known \[part of it\].
const TIMED: f64 = 2e-7;
/// More trials than any boat needs.
const TRIALS: usize = 30;
/// Trials of which none gets to its end, after which no run does.
const FAILURES: usize = 5;

/// The closing run of a share of the day, or none when it takes longer than
/// `most_s` \[s\].
///
/// The bank lacks `need_ah` when no engine runs. While it runs for a time h it
/// carries the house load I_L, and the bank falls by D(h) = need − I_L·h. So the
/// run begins at from(h) = to − D(h)/C, and must take just h. A later beginning
/// is a higher one: the time the run then takes grows less than h itself, so
/// that there is one root. Own reasoning.
pub fn closed_run(plant: &Plant, need_ah: f64, to: f64, most_s: f64) -> Option<ClosedRun> {
    let day = Share {
        plant,
        need_ah,
        to,
        most_s,
    };
    let (mut low_s, mut high_s) = (day.lowest_s()?, most_s);
    // Where the engine carries all of the use the run begins at its target and
    // takes no time.
    let mut high_is_too_long = day.carried_s() < most_s;
    if high_is_too_long {
        high_s = day.carried_s();
    }
    let mut guess_s = day.guess_s();
    let mut last: Option<(f64, f64)> = None;
    let mut failures = 0;
    for _ in 0..TRIALS {
        if !(guess_s > low_s && guess_s < high_s) {
            guess_s = if high_is_too_long || guess_s <= low_s {
                0.5 * (low_s + high_s)
            } else {
                high_s
            };
        }
        let from = day.from(guess_s);
        let trace = day.trace(from);
        let Some(takes_s) = day.takes_s(&trace, from) else {
            failures += 1;
            if guess_s >= high_s || failures > FAILURES {
                return None;
            }
            (low_s, guess_s, last) = (guess_s, high_s, None);
            continue;
        };
        let off_s = takes_s - guess_s;
        // How much longer a run takes for each second by which it was guessed
        // longer: always less than one.
        let slope = last.map(|(then_s, took_s)| (takes_s - took_s) / (guess_s - then_s));
        let step_s = off_s / (1.0 - slope.unwrap_or(0.0).min(0.999));
        let near = day.ends_off(off_s) <= NEAR && (step_s - off_s).abs() <= TIMED * takes_s;
        // Steps through time come out a little otherwise from one beginning to the
        // next: where the time jumps over the root, between these two it is known.
        let between = high_is_too_long && high_s - low_s <= TIMED * takes_s;
        if near && slope.is_some() || off_s.abs() <= TIMED * takes_s || between {
            return Some(ClosedRun {
                trace,
                seconds: takes_s,
                from,
            });
        }
        if off_s > 0.0 {
            if guess_s >= most_s {
                return None;
            }
            low_s = guess_s;
        } else {
            (high_s, high_is_too_long) = (guess_s, true);
        }
        last = Some((guess_s, takes_s));
        guess_s += step_s;
    }
    None
}

/// A run's share of the day.
struct Share<'a> {
    plant: &'a Plant,
    need_ah: f64,
    to: f64,
    most_s: f64,
}

impl Share<'_> {
    /// What the bank falls by when the engine runs for a time \[A·h\].
    fn falls_ah(&self, seconds: f64) -> f64 {
        self.need_ah - self.plant.house_ah(seconds)
    }

    /// Where a run of that time begins.
    fn from(&self, seconds: f64) -> f64 {
        self.to - self.falls_ah(seconds) / self.plant.bank.capacity_ah
    }

    /// The time for which the bank must not fall below empty \[s\]; none when
    /// no time is long enough.
    fn lowest_s(&self) -> Option<f64> {
        let short_ah = self.need_ah - self.to * self.plant.bank.capacity_ah;
        if short_ah <= 0.0 {
            return Some(0.0);
        }
        let seconds = self.plant.draws_in_s(short_ah);
        (seconds < self.most_s).then_some(seconds)
    }

    /// The time after which the engine has carried all of the use \[s\].
    fn carried_s(&self) -> f64 {
        self.plant.draws_in_s(self.need_ah)
    }

    /// About the time it takes, from what flows cold and once hot \[s\].
    fn guess_s(&self) -> f64 {
        let plant = self.plant;
        let lowest = self.from(0.0).max(0.0);
        let cold_a = plant.flow(LATE_S, lowest, &plant.resting()).bank_a;
        let hot_a = settled(plant, self.to).flow.bank_a;
        let kept_a = 0.5 * (cold_a.max(0.0) + hot_a.max(0.0)) * plant.bank.charge_efficiency;
        3600.0 * self.need_ah / (kept_a + plant.load_a).max(1e-9)
    }

    /// A lead bank takes less and less, and is asked when it reaches its target.
    /// A lithium bank takes what comes, and is asked when it has put back what
    /// the rest of the day takes: that hardly depends on where it began. Both
    /// agree for the run that closes the day.
    fn asks_for_target(&self) -> bool {
        matches!(self.plant.bank.cells, Cells::Lead(_))
    }

    fn trace(&self, from: f64) -> Trace {
        let until = if self.asks_for_target() {
            self.to
        } else {
            (self.to + BEYOND).min(1.0)
        };
        charge(self.plant, from, until, self.most_s, &Fineness::USUAL)
    }

    /// How far from its target a run ends that took so much longer than guessed.
    fn ends_off(&self, off_s: f64) -> f64 {
        self.plant.load_a * off_s.abs() / 3600.0 / self.plant.bank.capacity_ah
    }

    /// How long a run takes \[s\]; none when that is too long.
    fn takes_s(&self, trace: &Trace, from: f64) -> Option<f64> {
        if self.asks_for_target() {
            trace.reaches(self.to)
        } else {
            self.closes_s(trace, from)
        }
    }

    /// When a run has put back what the rest of the day takes \[s\]; beyond its
    /// end it goes on as it ended. None when that is too late.
    fn closes_s(&self, trace: &Trace, from: f64) -> Option<f64> {
        let capacity_ah = self.plant.bank.capacity_ah;
        let missing_ah =
            |seconds: f64| self.falls_ah(seconds) - (trace.soc_at(seconds) - from) * capacity_ah;
        let last_s = trace.last_s();
        let left_ah = missing_ah(last_s);
        if left_ah <= 0.0 {
            let seconds = bracketed_root(missing_ah, 0.0, last_s, 1e-12);
            // A bank that is being emptied closes no day.
            return (seconds <= self.carried_s()).then_some(seconds);
        }
        if last_s >= self.most_s || trace.soc_at(last_s) < self.to {
            return None;
        }
        let gains_ah_s = (trace.soc_at(last_s) - from) * capacity_ah / last_s.max(1.0);
        let draws_a = self.plant.load_a + self.plant.engine_load_a(last_s);
        let seconds = last_s + left_ah / (gains_ah_s + draws_a / 3600.0);
        (seconds < self.most_s).then_some(seconds)
    }
}
