//! When the bank's management system opens its contactor in a run.

use serde::Serialize;

use crate::simulation::management::OpeningCause;
use crate::simulation::moment::Flow;
use crate::simulation::trace::Trace;

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
    pub(super) fn looked_at(&self, last_s: f64) -> Vec<f64> {
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
    use crate::simulation::opening::lasts;

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
