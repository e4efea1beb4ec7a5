//! What happens when the regulator's temperature sensor fails.

use crate::analysis::sensor_loss::{SensorLossReport, SensorLost};
use crate::boat::SensorFailure;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{celsius, minutes};

/// What happens without the sensor, a sentence or two for each alternator.
pub fn sentences(loss: &SensorLossReport, reader: &Reader) -> Vec<String> {
    match loss.regulator {
        SensorFailure::Stops => {
            vec!["If its temperature sensor fails, the regulator stops charging. Nothing gets too hot; you notice it by the missing current.".to_string()]
        }
        SensorFailure::Unsaid => {
            let mut said = vec![
                "What the regulator does when its temperature sensor fails is not known; look it up in its manual.".to_string(),
            ];
            let each = loss.alternators.iter();
            said.extend(
                each.map(|lost| format!("If it goes on: {}", reaches(lost, false, reader))),
            );
            said
        }
        SensorFailure::Half | SensorFailure::Full => {
            let half = loss.regulator == SensorFailure::Half;
            let each = loss.alternators.iter();
            each.map(|lost| without(lost, half, reader)).collect()
        }
    }
}

/// What an alternator comes to without its sensor.
pub(super) fn without(lost: &SensorLost, half: bool, reader: &Reader) -> String {
    format!(
        "If the {}'s temperature sensor fails or falls off, the regulator goes on: {}",
        words::alternator(lost.alternator),
        reaches(lost, half, reader)
    )
}

/// "at full field the winding reaches 214 °C in this run; 180 °C is …".
fn reaches(lost: &SensorLost, half: bool, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let part = format!(
        "at {} field the {}'s {} {} {} in this run; {} is {}",
        if half { "half" } else { "full" },
        words::alternator(lost.alternator),
        words::part(lost.part),
        if lost.at_most { "may reach" } else { "reaches" },
        show(celsius(lost.part_c)),
        show(celsius(lost.limit_c)),
        words::limit_of(lost.part)
    );
    match lost.passes_min {
        Some(passes_min) => format!(
            "{part}. The first part is past its limit after {}.",
            show(minutes(passes_min))
        ),
        None => format!("{part}, and every part stays within its own."),
    }
}
