//! What a log could not tell, and what would; how to take one.

use crate::decision::calibration::fit::Solution;
use crate::decision::calibration::learn::{CAPACITY, COOLING, RECIRCULATION, WALLS};
use crate::decision::calibration::model::Trial;
use crate::decision::calibration::output::Output;
use crate::decision::calibration::result::late_air;

/// How to take the readings, a sentence each.
pub const HOW_TO: [&str; 4] = [
    "Begin with a cold engine and a bank low enough to take all the machine gives. Hold the engine at one speed for at least 30 minutes, better 45.",
    "Once a minute at first, then every two or three, write down: minute, the alternator's own amps, case °C, air °C a hand's breadth from where it draws its air, rpm, volts. What you cannot read, leave empty.",
    "Stick black tape on the rear of the case and always aim a thermometer gun at it: it reads tape and paint right (emissivity 0.95) and bare aluminium far too cold (0.2 to 0.4). Common practice.",
    "Keep hands, sleeves and leads off belts and hot metal.",
];

/// A model that misses by more is worth a word \[K\].
const LARGE_RESIDUAL_K: f64 = 3.0;

/// Adds what there is to say.
pub(super) fn remarks(
    remarks: &mut Vec<String>,
    trial: &Trial,
    solution: &Solution,
    output: &Output,
) {
    let mut say = |words: &str| remarks.push(words.to_string());
    let told = &solution.told;
    if !told[COOLING] {
        say(
            "How well the machine is cooled cannot be told: the case was still warming in step with the current when the log ended. Go on for 30 minutes at a steady current.",
        );
    }
    if !told[CAPACITY] {
        say(
            "The heat it takes to warm the machine cannot be told: the log holds too little of the rise. Begin with the first minute after a cold start. The hot current does not depend on it.",
        );
    }
    if !told[RECIRCULATION] {
        say(
            "Own warm air drawn in again looks just like worse cooling from outside: it stays as it is, and the cooling found goes with it. A second thermometer right in the inlet tells: (inlet − air) ÷ (case − air).",
        );
    }
    if trial.has_air() {
        match late_air(trial) {
            Some(_) => say(
                "The hot air near the machine is that of this day's weather: on a hotter day add the difference.",
            ),
            None => say(
                "The air near the machine may still have been warming when the log ended: it was used for the fit and is not taken over. It takes 25 minutes.",
            ),
        }
    } else if trial.models_air() && !told[WALLS] {
        say(
            "Without the air near the machine in the log, its temperature is reckoned from the engine space on the worksheet, which makes the cooling found less sure. Log the air.",
        );
    }
    if trial.begins_warm {
        say("The log begins with a warm machine. How hot winding and air were then is reckoned.");
    }
    match output {
        Output::Untold(words) => say(words),
        Output::Agrees => say(
            "At full field the machine gave what the worksheet's output curve says, within 4 %.",
        ),
        Output::Point { .. } => say(
            "At full field the machine gave another current than the worksheet's output curve says. The second point is what it would give cold at the speed of the log; the losses were reckoned again with it.",
        ),
        Output::Wrong(words) => say(words),
    }
    if solution.residual_k > LARGE_RESIDUAL_K {
        say(&format!(
            "The model misses the thermometer by {:.1} K on average: treat the figures as a hint. Always aim at the same black tape.",
            solution.residual_k
        ));
    }
}
