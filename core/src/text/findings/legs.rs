//! What is said of a leg of the day.

use crate::findings::LegFinding;
use crate::findings::legs::{HotLeg, LegName};
use crate::text::findings::heat::to_do;
use crate::text::legs::called;
use crate::text::verdict::disconnects_because;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{ampere_hours, celsius, minutes, percent, rpm, seconds};

/// A part that is this much warmer than the air when a leg begins is warm from
/// the leg before \[°C\]. Own reasoning.
const WARM_C: f64 = 60.0;

pub(super) fn sentence(finding: &LegFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match finding {
        LegFinding::TooHot(hot) => {
            let reaches = words::may(hot.at_most, "reaches", "reach");
            hot_leg(hot, &reaches, "", reader)
        }
        LegFinding::NearLimit(hot) => {
            let little = " A warmer day or a dusty fan uses up what is left.";
            let gets = words::may(hot.at_most, "gets to", "get to");
            hot_leg(hot, &gets, little, reader)
        }
        LegFinding::Disconnects {
            leg,
            cause,
            after_s,
            load_lost,
        } => format!(
            "In {} the battery management system disconnects the bank after {}: {}. {}",
            named(leg),
            show(seconds(*after_s)),
            disconnects_because(*cause),
            match load_lost {
                true =>
                    "The alternator then loses its load, and its voltage jumps: set it so that this never happens at any engine speed.",
                false => "Charging stops there: set the chargers so that this never happens.",
            }
        ),
        LegFinding::TargetNotReached {
            leg,
            target_pct,
            end_pct,
            minutes: time,
        } => format!(
            "In {} the bank does not reach {}: it is at {} after {}. Run the engine faster, stop at a lower state of charge, or enter a time for this leg.",
            named(leg),
            show(percent(*target_pct)),
            show(percent(*end_pct)),
            show(minutes(*time))
        ),
        LegFinding::BankEmptied {
            leg,
            pause_h,
            short_ah,
        } => format!(
            "In the {} before {} the bank runs empty: {} are missing. Run the engine earlier, or for longer before the pause.",
            show(minutes(60.0 * pause_h)),
            named(leg),
            show(ampere_hours(*short_ah))
        ),
        LegFinding::FasterThanTop {
            leg,
            engine_rpm,
            top_rpm,
        } => format!(
            "In {} the engine is to turn at {}, and its highest speed is {}: correct the wrong one.",
            named(leg),
            show(rpm(*engine_rpm)),
            show(rpm(*top_rpm))
        ),
    }
}

/// How hot a part gets, what it withstands, and what to do.
fn hot_leg(hot: &HotLeg, gets: &str, follows: &str, reader: &Reader) -> String {
    format!(
        "In {} the {}'s {} {gets} {}; {} is {}.{}{follows}{}",
        named(&hot.leg),
        words::alternator(hot.alternator),
        words::part(hot.part),
        reached(hot, reader),
        reader.show(celsius(hot.limit_c)),
        words::limit_of(hot.part),
        warm(hot, reader),
        remedy(hot)
    )
}

fn named(leg: &LegName) -> String {
    called(leg.number, &leg.name)
}

/// How hot a part gets, with a tenth where whole degrees would say that it is at
/// its limit.
fn reached(hot: &HotLeg, reader: &Reader) -> String {
    let whole = |celsius_c| reader.number(celsius(celsius_c));
    let decimals = usize::from(whole(hot.peak_c) == whole(hot.limit_c));
    reader.show(celsius(hot.peak_c).to(decimals))
}

/// What to do.
fn remedy(hot: &HotLeg) -> String {
    hot.remedy
        .map_or(String::new(), |remedy| format!(" {}", to_do(remedy)))
}

/// That it was warm from the leg before.
fn warm(hot: &HotLeg, reader: &Reader) -> String {
    if hot.start_c < WARM_C {
        return String::new();
    }
    format!(
        " It begins this leg at {}, still warm from the one before.",
        reader.show(celsius(hot.start_c))
    )
}
