//! What a lithium bank's management system does about the current: it opens
//! its contactor when the cells are asked to take more than they may.

use crate::boat::TooColdOrHot;
use serde::Serialize;

use crate::physics::battery::{Bank, Cells, LFP_MOST_V};
use crate::simulation::plant::Flow;
use crate::simulation::trace::Trace;

/// Cells in a 12 V block.
pub const BLOCK_CELLS: f64 = 4.0;

/// How long too much current flows before the contactor opens \[s\]: 5 to 10 s,
/// common practice, no source.
const OVER_CURRENT_S: f64 = 5.0;

/// How long too many volts stand before it opens \[s\]: 2 to 5 s, common
/// practice, no source.
const OVER_VOLTAGE_S: f64 = 2.0;

/// How long current flows into cells too cold or too hot before it opens
/// \[s\]: at once to 10 s, common practice, no source.
const TEMPERATURE_S: f64 = 2.0;

/// Part of the limit by which a current may lie above it and still count as
/// held at it, and the least of that \[A\]: how well a shunt and a regulator
/// keep a figure. Own reasoning.
const CURRENT_PART: f64 = 0.02;
const CURRENT_LEAST_A: f64 = 0.5;

/// How far a cell may lie above its limit and still count as held at it \[V\].
/// Own reasoning.
const CELL_TOLERANCE_V: f64 = 0.005;

/// Part of a bank's limit that a setting stays below it: what a regulator
/// overshoots by. Own reasoning.
const SETTING_PART: f64 = 0.95;

/// What to set, whatever it is set in, to stay within a bank's limit \[A\].
pub fn setting_within_a(limit_a: f64) -> f64 {
    SETTING_PART * limit_a
}

/// Why the contactor opens.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum OpeningCause {
    /// More current than the bank may take.
    OverCurrent,
    /// More volts than its cells may reach.
    OverVoltage,
    /// The cells are too cold to be charged.
    Cold,
    /// The cells are too hot to be charged.
    Hot,
}

impl OpeningCause {
    /// Every cause, in the order they are looked for.
    const ALL: [OpeningCause; 4] = [
        OpeningCause::Cold,
        OpeningCause::Hot,
        OpeningCause::OverCurrent,
        OpeningCause::OverVoltage,
    ];

    /// How long it lasts before the contactor opens \[s\].
    const fn delay_s(self) -> f64 {
        match self {
            OpeningCause::OverCurrent => OVER_CURRENT_S,
            OpeningCause::OverVoltage => OVER_VOLTAGE_S,
            OpeningCause::Cold | OpeningCause::Hot => TEMPERATURE_S,
        }
    }
}

impl From<TooColdOrHot> for OpeningCause {
    fn from(cause: TooColdOrHot) -> OpeningCause {
        match cause {
            TooColdOrHot::Cold => OpeningCause::Cold,
            TooColdOrHot::Hot => OpeningCause::Hot,
        }
    }
}

/// What the management system of a lithium bank lets pass.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Management {
    /// Most current into the bank \[A\].
    pub most_a: f64,
    /// Most volts of all its cells together \[V\].
    pub most_v: f64,
    /// Whether the cells are too cold or too hot to be charged at all, and which.
    pub barred: Option<OpeningCause>,
    /// Resistance between the cells and where the regulator measures \[Ω\].
    pub harness_ohm: f64,
}

/// The moment the contactor opens.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Opening {
    /// Why.
    pub cause: OpeningCause,
    /// Time after the start of the run \[s\].
    pub after_s: f64,
    /// What the alternators that charge the house bank give then \[A\].
    pub alternator_a: f64,
    /// What flows into the bank then \[A\].
    pub bank_a: f64,
    /// Voltage at the bank then \[V\].
    pub volts: f64,
}

impl Management {
    /// The one of a bank that may take so much current \[A\] at its temperature;
    /// none for lead, which has no contactor.
    pub fn new(bank: &Bank, most_a: f64, barred: Option<OpeningCause>) -> Option<Management> {
        match bank.cells {
            Cells::Lead(_) => None,
            Cells::Lfp(_) => Some(Management {
                most_a,
                most_v: LFP_MOST_V * BLOCK_CELLS * bank.blocks,
                barred,
                harness_ohm: bank.harness_ohm,
            }),
        }
    }

    /// Whether a cause is there at a moment.
    fn sees(&self, cause: OpeningCause, flow: &Flow) -> bool {
        let tolerance_a = (CURRENT_PART * self.most_a).max(CURRENT_LEAST_A);
        match cause {
            OpeningCause::OverCurrent => {
                self.barred.is_none() && flow.bank_a > self.most_a + tolerance_a
            }
            OpeningCause::OverVoltage => {
                let cells_v = flow.bank_v - flow.bank_a * self.harness_ohm;
                let tolerance_v = self.most_v * CELL_TOLERANCE_V / LFP_MOST_V;
                flow.bank_a > 0.0 && cells_v > self.most_v + tolerance_v
            }
            OpeningCause::Cold | OpeningCause::Hot => {
                self.barred == Some(cause) && flow.bank_a > CURRENT_LEAST_A
            }
        }
    }
}

impl Trace {
    /// When the bank's management system opens first, until a time \[s\]; none
    /// when it does not, and for lead. The run itself goes on as if the
    /// contactor had stayed closed.
    pub fn opening(&self, until_s: f64) -> Option<Opening> {
        let management = self.plant.management?;
        let sees = |cause: OpeningCause, seconds: f64| management.sees(cause, &self.flow(seconds));
        let last_s = until_s.min(self.last_s());
        let looked: Vec<(f64, Flow)> = self
            .looked_at(last_s)
            .into_iter()
            .map(|seconds| (seconds, self.flow(seconds)))
            .collect();
        let mut first: Option<(f64, OpeningCause)> = None;
        for cause in OpeningCause::ALL {
            let seen: Vec<(f64, bool)> = looked
                .iter()
                .map(|(seconds, flow)| (*seconds, management.sees(cause, flow)))
                .collect();
            let found = lasts(&seen, cause.delay_s(), |seconds| sees(cause, seconds));
            if let Some(seconds) = found
                && first.is_none_or(|(earlier, _)| seconds < earlier)
            {
                first = Some((seconds, cause));
            }
        }
        let (after_s, cause) = first?;
        let flow = self.flow(after_s);
        Some(Opening {
            cause,
            after_s,
            alternator_a: self.plant.charging_a(&flow),
            bank_a: flow.bank_a,
            volts: flow.bank_v,
        })
    }

    /// Times to look at until one \[s\]: the steps, and some inside each.
    fn looked_at(&self, last_s: f64) -> Vec<f64> {
        const INSIDE: u32 = 2;
        let mut times = vec![0.0];
        for pair in self.points.windows(2) {
            let [a, b] = pair else { break };
            if a.seconds >= last_s {
                break;
            }
            let end_s = b.seconds.min(last_s);
            times.extend(
                (1..=INSIDE).map(|part| {
                    a.seconds + (end_s - a.seconds) * f64::from(part) / f64::from(INSIDE)
                }),
            );
        }
        times
    }
}

/// When something has been there for a delay \[s\] without a break: `seen` are
/// the times looked at and whether it was there, and what lies between two that
/// differ is halved.
fn lasts(seen: &[(f64, bool)], delay_s: f64, there: impl Fn(f64) -> bool) -> Option<f64> {
    /// How near a turn is found \[s\].
    const NEAR_S: f64 = 0.05;
    let turn = |mut before_s: f64, mut after_s: f64, was: bool| {
        while after_s - before_s > NEAR_S {
            let middle_s = 0.5 * (before_s + after_s);
            if there(middle_s) == was {
                before_s = middle_s;
            } else {
                after_s = middle_s;
            }
        }
        after_s
    };
    let (first_s, at_once) = *seen.first()?;
    let mut since_s = at_once.then_some(first_s);
    for pair in seen.windows(2) {
        let [(before_s, was), (now_s, is)] = *pair else {
            break;
        };
        let turn_s = if was == is {
            now_s
        } else {
            turn(before_s, now_s, was)
        };
        match since_s {
            Some(since) if turn_s - since >= delay_s => return Some(since + delay_s),
            _ if is && !was => since_s = Some(turn_s),
            _ if !is => since_s = None,
            _ => {}
        }
    }
    // What has begun within the last stretch may last.
    let (last_s, _) = *seen.last()?;
    since_s
        .filter(|since| last_s - since >= delay_s)
        .map(|since| since + delay_s)
}

#[cfg(test)]
mod tests {
    use crate::simulation::management::lasts;

    #[test]
    fn it_has_to_last() {
        let lasting = |end_s: f64, delay_s: f64, there: fn(f64) -> bool| {
            let times = [0.0, 2.0, 4.0, end_s];
            lasts(&times.map(|s| (s, there(s))), delay_s, there)
        };
        assert_eq!(lasting(20.0, 5.0, |_| true), Some(5.0));
        assert_eq!(lasting(20.0, 5.0, |_| false), None);
        // Over again before the delay has gone by.
        assert_eq!(lasting(20.0, 5.0, |s| s < 3.0), None);
        assert_eq!(lasting(4.5, 5.0, |_| true), None);
        let late = lasting(20.0, 5.0, |s| s >= 10.0).expect("it lasts");
        assert!((late - 15.0).abs() < 0.1, "{late}");
    }
}
