//! The charging run in words: what limited the current, and what else ran.

use crate::analysis::{LimitShare, RunReport};
use crate::boat::EngineLoad;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{amperes, minutes, percent, seconds};

/// What limited the current, for which share of the time, what ran with the engine
/// and when the battery management system ends the charging: "Limited by alternator
/// temperature 78 %, alternator output 22 % of the time."
pub fn limited_by(run: &RunReport, reader: &Reader) -> String {
    let limited = match &run.limit_shares[..] {
        [] => return "There is nothing to charge.".to_string(),
        [all] => format!("Limited by {} all the time.", words::limited_by(all.limit)),
        several => {
            let share = |share: &LimitShare| {
                let share_pct = reader.show(percent(share.share_pct));
                format!("{} {share_pct}", words::limited_by(share.limit))
            };
            let shares: Vec<String> = several.iter().map(share).collect();
            format!("Limited by {} of the time.", shares.join(", "))
        }
    };
    let disconnects = run.opening.map_or(String::new(), |opening| {
        let after = reader.show(seconds(opening.after_s));
        format!(
            " After {after} the battery management system stops the charging; from there on the chart shows what would flow if it did not."
        )
    });
    let drawn = engine_loads(run, reader).map_or(String::new(), |drawn| format!(" {drawn}"));
    format!("{limited}{drawn}{disconnects}")
}

/// What runs only with the engine, in the charging run; none where nothing does.
pub fn engine_loads(run: &RunReport, reader: &Reader) -> Option<String> {
    let draws = |load: &EngineLoad| {
        format!(
            "{} draws {} for {}",
            load.name.trim(),
            reader.show(amperes(load.amperes)),
            reader.show(minutes(60.0 * load.hours))
        )
    };
    let each: Vec<String> = run.engine_loads.iter().map(draws).collect();
    (!each.is_empty()).then(|| {
        format!(
            "From the start of the run, beside {} of house load: {}.",
            reader.show(amperes(run.house_load_a).to(1)),
            each.join(", ")
        )
    })
}
