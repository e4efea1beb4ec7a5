//! What holds the current down in which part of a run.

use crate::simulation::Limit;
use crate::simulation::trace::Trace;

/// A stretch of a run with one limit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stretch {
    /// From \[s\].
    pub from_s: f64,
    /// To \[s\].
    pub to_s: f64,
    /// What holds the current down.
    pub limit: Limit,
}

impl Trace {
    /// What limits when, until a time \[s\].
    pub fn stretches(&self, until_s: f64) -> Vec<Stretch> {
        let limit = |seconds: f64| self.flow(seconds).limit;
        let mut stretches: Vec<Stretch> = Vec::new();
        let mut begin = (0.0, limit(0.0));
        for point in &self.points {
            let to_s = point.seconds.min(until_s);
            if to_s <= begin.0 {
                continue;
            }
            let here = limit(to_s);
            let turn_s = if here == begin.1 {
                to_s
            } else {
                // Halve until the change is found to a tenth of a second.
                let (mut before, mut after) = (begin.0, to_s);
                while after - before > 0.1 {
                    let middle = 0.5 * (before + after);
                    if limit(middle) == begin.1 {
                        before = middle;
                    } else {
                        after = middle;
                    }
                }
                after
            };
            push(&mut stretches, begin.0, turn_s, begin.1);
            push(&mut stretches, turn_s, to_s, here);
            begin = (to_s, here);
        }
        stretches
    }
}

fn push(stretches: &mut Vec<Stretch>, from_s: f64, to_s: f64, limit: Limit) {
    if to_s <= from_s {
        return;
    }
    match stretches.last_mut() {
        Some(last) if last.limit == limit => last.to_s = to_s,
        _ => stretches.push(Stretch {
            from_s,
            to_s,
            limit,
        }),
    }
}
