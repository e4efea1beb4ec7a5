//! The verdict as one sentence.

use crate::findings::Verdict;
use crate::simulation::management::OpeningCause;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{celsius, minutes, seconds};

/// How hot a part gets, and its limit: to a tenth where whole degrees would say that
/// it is at its limit.
pub(super) fn near(hottest_c: f64, limit_c: f64, reader: &Reader) -> [String; 2] {
    let whole = |celsius_c| reader.number(celsius(celsius_c));
    let decimals = usize::from(whole(hottest_c) == whole(limit_c));
    [hottest_c, limit_c].map(|celsius_c| reader.show(celsius(celsius_c).to(decimals)))
}

/// The verdict as one sentence, with its figures as the reader wants them.
pub fn verdict(verdict: &Verdict, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *verdict {
        Verdict::NotRun => "The engine is not run for charging.".to_string(),
        Verdict::BankFrozen => {
            "The bank is frozen and takes no charge: thaw it before you start the engine."
                .to_string()
        }
        Verdict::NotCharged => "The alternator gives the bank nothing.".to_string(),
        Verdict::WrongVoltage { alternator } => format!(
            "The {} is of another voltage than its battery: do not connect it.",
            words::alternator(alternator)
        ),
        Verdict::BatteryDisconnects {
            cause,
            after_s,
            load_lost,
            field_off_first,
        } => {
            if field_off_first {
                return format!(
                    "The battery stops the alternator after {}: {}.",
                    show(seconds(after_s)),
                    disconnects_because(cause)
                );
            }
            let under_load = if load_lost { " under load" } else { "" };
            format!(
                "The battery disconnects{under_load} after {}: {}.",
                show(seconds(after_s)),
                disconnects_because(cause)
            )
        }
        Verdict::Overheats {
            alternator,
            part,
            after_min,
            celsius: hottest_c,
            at_most,
            limit_c,
        } => {
            let overheats = words::may(at_most, "overheats", "overheat");
            let (name, part) = (words::alternator(alternator), words::part(part));
            let limit = show(celsius(limit_c));
            match after_min {
                Some(after_min) => format!(
                    "The {name} {overheats} in {}: the {part} {} {limit}.",
                    show(minutes(after_min.max(1.0))),
                    words::may(at_most, "passes", "pass")
                ),
                None => format!(
                    "The {name} {overheats} in a longer run: the {part} {} at {}, above its limit of {limit}.",
                    words::may(at_most, "settles", "settle"),
                    show(celsius(hottest_c))
                ),
            }
        }
        Verdict::DisconnectsInLeg {
            leg,
            cause,
            after_s,
            load_lost,
        } => format!(
            "In leg {leg} of the day the battery disconnects{} after {}: {}.",
            if load_lost { " under load" } else { "" },
            show(seconds(after_s)),
            disconnects_because(cause)
        ),
        Verdict::OverheatsInLeg {
            leg,
            alternator,
            part,
            celsius: hottest_c,
            at_most,
            limit_c,
        } => format!(
            "The {} {} in leg {leg} of the day: the {} {} to {}, above its limit of {}.",
            words::alternator(alternator),
            words::may(at_most, "overheats", "overheat"),
            words::part(part),
            words::may(at_most, "gets", "get"),
            show(celsius(hottest_c)),
            show(celsius(limit_c))
        ),
        Verdict::NeverSettles => "The alternator overheats: each degree makes more heat than it carries away, so it never settles.".to_string(),
        Verdict::HotAfterStop {
            alternator,
            celsius: hottest_c,
            limit_c,
        } => format!(
            "The {} stays within its limits while it runs; after stopping, its rectifier plate climbs to {}, above its limit of {}.",
            words::alternator(alternator),
            show(celsius(hottest_c)),
            show(celsius(limit_c))
        ),
        Verdict::RunsHot {
            alternator,
            part,
            celsius: hottest_c,
            at_most,
            limit_c,
        } => {
            let [hottest, limit] = near(hottest_c, limit_c, reader);
            format!(
                "The {} {} hot: the {} {} to {hottest}, and its limit is {limit}.",
                words::alternator(alternator),
                words::may(at_most, "runs", "run"),
                words::part(part),
                words::may(at_most, "gets", "get"),
            )
        }
        Verdict::HeldByRegulator => "The regulator limits its temperature: it survives.".to_string(),
        Verdict::Survives => "The alternator stays within its limits.".to_string(),
    }
}

/// Why the battery disconnects.
pub(super) const fn disconnects_because(cause: OpeningCause) -> &'static str {
    match cause {
        OpeningCause::OverCurrent => "more current flows than it may take",
        OpeningCause::OverVoltage => "its cells are charged too high",
        OpeningCause::Cold => "its cells are too cold",
        OpeningCause::Hot => "its cells are too hot",
    }
}
