//! What is said of heat.

use crate::analysis::{NEAR_K, Part};
use crate::boat::WhichAlternator;
use crate::findings::heat::{ROOM_C, SET_POINT_ROOM_K};
use crate::findings::{HeatFinding, HeatRemedy, PartTooHot, Settled, Severity};
use crate::text::verdict::near;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{amperes, celsius, kelvin, minutes, percent};

/// How far below the case's limit its temperature limit is usually set \[K\];
/// common practice, no source.
const USUAL_ROOM_K: f64 = 20.0;

pub(super) fn sentence(finding: &HeatFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match finding {
        HeatFinding::NothingWatchesHeat {
            alternator,
            lithium,
            settled,
            limit_c,
            ..
        } => {
            let takes = if *lithium {
                " A lithium bank takes all it gives for most of the run."
            } else {
                ""
            };
            let does = if finding.severity() == Severity::Note {
                "That leaves enough for a hot day; look again when bank, engine speed or loads change."
            } else {
                "Put an external regulator with a temperature sensor, or a DC-DC charger, between the two."
            };
            format!(
                "Nothing limits the temperature of the {}.{takes} {} {does}",
                words::alternator(*alternator),
                settles(settled.as_ref(), *limit_c, reader)
            )
        }
        HeatFinding::WindingTooHot(too_hot) => part_too_hot(Part::Winding, too_hot, reader),
        HeatFinding::RectifierTooHot(too_hot) => part_too_hot(Part::Rectifier, too_hot, reader),
        HeatFinding::CaseTooHot(too_hot) => part_too_hot(Part::Case, too_hot, reader),
        HeatFinding::NearLimit {
            alternator,
            part,
            hottest_c,
            at_most,
            limit_c,
            remedy,
        } => {
            let [hottest, limit] = near(*hottest_c, *limit_c, reader);
            format!(
                "The {}'s {} {} to {hottest}; {limit} is {}. Less than {} is left, which a warmer day or a dusty fan uses up.{} {}",
                words::alternator(*alternator),
                words::part(*part),
                words::may(*at_most, "gets", "get"),
                words::limit_of(*part),
                show(kelvin(NEAR_K)),
                words::only_case_known(*at_most),
                to_do(*remedy)
            )
        }
        HeatFinding::CaseSensorLags {
            alternator,
            winding_c,
            limit_c,
            set_point_c,
        } => format!(
            "The {}'s winding reaches {} before the temperature sensor on its case has felt the {} that the regulator holds; the winding's limit is {}. Put the sensor on the stator, set a lower temperature limit, or use a soft start.",
            words::alternator(*alternator),
            show(celsius(*winding_c)),
            show(celsius(*set_point_c)),
            show(celsius(*limit_c))
        ),
        HeatFinding::SetPointHigh {
            alternator,
            set_point_c,
            limit_c,
        } if set_point_c >= limit_c => format!(
            "The regulator holds a temperature limit of {}, and the {}'s case withstands {}. Set it lower; about {} below what the case withstands is common practice.",
            show(celsius(*set_point_c)),
            words::alternator(*alternator),
            show(celsius(*limit_c)),
            show(kelvin(USUAL_ROOM_K))
        ),
        HeatFinding::SetPointHigh {
            alternator,
            set_point_c,
            limit_c,
        } => format!(
            "A temperature limit of {} in the regulator leaves less than {} to the {} that the {}'s case withstands; about {} is common practice. Set it lower.",
            show(celsius(*set_point_c)),
            show(kelvin(SET_POINT_ROOM_K)),
            show(celsius(*limit_c)),
            words::alternator(*alternator),
            show(kelvin(USUAL_ROOM_K))
        ),
        HeatFinding::SoakRectifier {
            alternator,
            rectifier_c,
            limit_c,
        } => format!(
            "After you stop the engine and the fan stands still, the rectifier plate{} climbs to {}; {} is {}. Let the engine idle for a few minutes without charging first, and leave the blower on.",
            match alternator {
                WhichAlternator::First => String::new(),
                WhichAlternator::Second => format!(" of the {}", words::alternator(*alternator)),
            },
            show(celsius(*rectifier_c)),
            show(celsius(*limit_c)),
            words::limit_of(Part::Rectifier)
        ),
        HeatFinding::HotWhenMotoring { from_pct, to_pct } => format!(
            "You do not run the engine for charging, but whenever you motor its alternator charges the bank all the same. What is said of its heat is of such a run, with the bank from {} to {}.",
            show(percent(*from_pct)),
            show(percent(*to_pct))
        ),
        HeatFinding::SoakAir {
            air_c,
            after_min,
            rise_k,
        } => format!(
            "After you stop the engine, it heats its space to {} within {}, {} more than while it ran. Most equipment is made for {}: leave the blower running for half an hour, or move what is sensitive elsewhere.",
            show(celsius(*air_c)),
            show(minutes(*after_min)),
            show(kelvin(*rise_k)),
            show(celsius(ROOM_C))
        ),
    }
}

/// Where an alternator that nothing limits ends up.
fn settles(settled: Option<&Settled>, limit_c: f64, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let Some(settled) = settled else {
        return "It never settles: each degree makes more heat than it carries away.".to_string();
    };
    let (winding, gives) = (celsius(settled.winding_c), amperes(settled.hot_a));
    if settled.winding_c > limit_c {
        format!(
            "Its winding settles at {}, above the {} of its insulation class, giving {}.",
            show(winding),
            show(celsius(limit_c)),
            show(gives)
        )
    } else {
        format!(
            "Its winding settles at {} and its case at {}, giving {}.",
            show(winding),
            show(celsius(settled.case_c)),
            show(gives)
        )
    }
}

fn part_too_hot(part: Part, too_hot: &PartTooHot, reader: &Reader) -> String {
    let in_this_run = too_hot.in_this_run();
    let reached_c = if in_this_run {
        too_hot.peak_c
    } else {
        too_hot.hottest_c
    };
    let [reached, limit] = near(reached_c, too_hot.limit_c, reader);
    let reaches = if too_hot.after_disconnect {
        format!(
            "would reach {reached} in this run if the battery management system did not disconnect the bank first"
        )
    } else if in_this_run {
        let reaches = words::may(too_hot.at_most, "reaches", "reach");
        format!("{reaches} {reached} in this run")
    } else {
        let settles = words::may(too_hot.at_most, "would settle", "settle");
        format!("{settles} at {reached} in a longer run")
    };
    let remedy = match too_hot.remedy {
        Some(remedy) => format!(" {}", to_do(remedy)),
        None => String::new(),
    };
    format!(
        "The {}'s {} {reaches}; {limit} is {}.{}{remedy}",
        words::alternator(too_hot.alternator),
        words::part(part),
        words::limit_of(part),
        words::only_case_known(too_hot.at_most)
    )
}

/// What to do about the heat of an alternator.
pub(super) const fn to_do(remedy: HeatRemedy) -> &'static str {
    match remedy {
        HeatRemedy::CoolerAirOrLessLoad => "Bring it more and cooler air, or take load off it.",
        HeatRemedy::SetRegulator => {
            "Lower the temperature limit or the current cap of its regulator, or bring the alternator more and cooler air."
        }
        HeatRemedy::SetCharger => {
            "Set the DC-DC charger's output lower, or bring the alternator more and cooler air."
        }
        HeatRemedy::FitCurrentLimit => {
            "Bring the alternator more and cooler air, or limit its current: with a DC-DC charger, or an external regulator with a temperature sensor."
        }
    }
}
