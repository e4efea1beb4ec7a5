//! What is said of readings of a real charging run and of the fit to them.

use crate::decision::calibration::{
    FitRemark, FittedFigure, LineError, LogRemark, OutputUntold, Refusal,
};

/// How to take the readings, a step each.
pub const HOW_TO: [&str; 5] = [
    "Start with a cold engine and a bank low enough to take all the alternator gives. Press “Engine started” as it starts, switch the charging on, and hold the engine at one speed for at least 30 minutes, better 45.",
    "Take a reading every minute at first, then every two or three. The first figure you type stamps it with the time; type what you read, leave empty what you cannot read, and press “Add reading”.",
    "Amps: the alternator's own, by a clamp on its output cable. A battery monitor shows less, because the boat draws meanwhile. Air: a hand's breadth from where the alternator draws it in. Volts: at the alternator's output.",
    "Case: stick black tape on the rear of the case before the start and always aim a thermometer gun at it. It reads tape and paint right (emissivity 0.95) and bare aluminium far too cold (0.2 to 0.4). Common practice.",
    "Keep hands, sleeves and leads off belts and hot metal.",
];

/// What a figure is that a log gave.
pub fn fitted(what: FittedFigure) -> &'static str {
    match what {
        FittedFigure::Cooling => "Cooling, as a multiple of yours",
        FittedFigure::Input(key) => key.spec().label,
    }
}

/// Why nothing can be learnt from a log, and what to do.
pub fn refusal(refusal: &Refusal) -> String {
    match refusal {
        Refusal::FewReadings { count: 1, least } => format!(
            "One reading was understood; at least {least} are needed, best one a minute for half an hour."
        ),
        Refusal::FewReadings { count, least } => format!(
            "{count} readings were understood; at least {least} are needed, best one a minute for half an hour."
        ),
        Refusal::TimesFall {
            minute, before, ..
        } => format!(
            "The times have to rise: the reading of minute {minute:.1} stands after that of minute {before:.1}. Correct the wrong one."
        ),
        Refusal::TooShort { minutes, least } => format!(
            "The readings span {minutes:.1} min; at least {least} min are needed, best half an hour."
        ),
        Refusal::NoCase => "The temperature of the case is missing: it is what the model is fitted to. A thermometer gun on black tape will do.".to_string(),
        Refusal::NoAmps => {
            "The alternator's amps are missing: they are what heats it.".to_string()
        }
        Refusal::NoCurrent => "All amps are zero: an alternator that gives no current does not warm up, so there is nothing to learn from it.".to_string(),
        Refusal::WrongSpeed { rpm, shaft } => {
            let of = match shaft {
                true => "an alternator",
                false => "an engine that charges",
            };
            format!(
                "{rpm:.0} rpm is not the speed of {of}. Speeds are the engine's, unless the heading says alternator rpm."
            )
        }
        Refusal::SpeedWanders {
            deviation_rpm,
            mean_rpm,
            most,
        } => format!(
            "The speed wandered by {deviation_rpm:.0} rpm around {mean_rpm:.0}, more than {:.0} %: the fan's cooling went with it. Hold the engine steady and log again.",
            100.0 * most
        ),
        Refusal::NoHeat => "The case neither warmed up nor stood above the air: there is no heat to learn from.".to_string(),
        Refusal::Cooling { better } => {
            let cooled = if *better { "better" } else { "worse" };
            format!(
                "The log asks for a cooling outside anything plausible, far {cooled} than the worksheet's. Check the amps, the case thermometer, and the alternator's rated current and mass."
            )
        }
        Refusal::HeatCapacity { slow } => {
            let warms = if *slow { "slowly" } else { "fast" };
            format!(
                "The log asks for a heat capacity outside anything plausible: the case warms far too {warms} for the worksheet's mass. Check the mass, the times, and that the first reading was taken as the current began."
            )
        }
        Refusal::Misses { residual_k } => format!(
            "The model cannot follow these readings: it misses them by {residual_k:.0} K. Was the thermometer always aimed at the same spot, and did the current stay as logged between the readings?"
        ),
        Refusal::Untold => "These readings tell neither how well the alternator is cooled nor how much heat it holds: they are too few or scatter too much. Log half an hour from a cold start at a steady speed, with the air near the alternator.".to_string(),
    }
}

/// A sentence for each.
pub fn log_remarks(remarks: &[LogRemark]) -> Vec<String> {
    remarks.iter().map(log_remark).collect()
}

/// What of a log was left out, and why.
pub fn log_remark(remark: &LogRemark) -> String {
    match remark {
        LogRemark::Line { line, why } => format!("Line {line} was left out: {}.", line_error(why)),
        LogRemark::MoreLines { count } => format!("{count} more lines were left out."),
        LogRemark::TooManyRows { line, most } => format!(
            "Only the first {most} rows were read; line {line} and what follows was left out."
        ),
        LogRemark::Column { heading } => format!(
            "The column “{heading}” was left out: it is not one of minute, amps, case, air, rpm, volts, winding, rectifier, or it stands twice."
        ),
        LogRemark::MoreColumns { count } => format!("{count} more columns were left out."),
        LogRemark::NoTimeColumn => {
            "No heading says minute or time, so no line can be read.".to_string()
        }
    }
}

fn line_error(error: &LineError) -> String {
    match error {
        LineError::NoTime => "it says no time".to_string(),
        LineError::NotATime { typed } => format!("“{typed}” is not a time"),
        LineError::NotANumber { typed } => format!("“{typed}” is not a number"),
        LineError::OutOfRange { column, typed } => {
            let ((low, high), unit) = (column.range(), column.unit());
            format!(
                "{} of “{typed}” is outside {low} to {high} {unit}",
                column.name()
            )
        }
        LineError::OnlyATime => "it holds a time and nothing else".to_string(),
    }
}

/// A sentence, or two, for each.
pub fn fit_remarks(remarks: &[FitRemark]) -> Vec<String> {
    remarks.iter().map(fit_remark).collect()
}

/// What a log could not tell and what would, or what to know of what it told.
pub fn fit_remark(remark: &FitRemark) -> String {
    let words = match remark {
        FitRemark::CoolingUntold => {
            "How well the alternator is cooled cannot be told: the case was still warming in step with the current when the log ended. Go on for 30 minutes at a steady current."
        }
        FitRemark::CapacityUntold => {
            "The heat it takes to warm the alternator cannot be told: the log holds too little of the rise. Begin with the first minute after a cold start. The hot current does not depend on it."
        }
        FitRemark::RecirculationUntold => {
            "Recirculated air looks just like worse cooling from outside: its share stays as it is, and the cooling found goes with it. A second thermometer right in the inlet tells: (inlet − air) ÷ (case − air)."
        }
        FitRemark::WindingUntold => {
            "These readings tell nothing of the winding: how much hotter than the case it runs stays a guess, 15 to 60 K at full load. Findings take the upper end until a thermometer in the winding, or its resistance right after stopping, says more."
        }
        FitRemark::AirOfTheDay => {
            "The hot air near the alternator is that of this day's weather: on a hotter day add the difference."
        }
        FitRemark::AirStillWarming => {
            "The air near the alternator may still have been warming when the log ended: it was used for the fit and is not taken over. It takes 25 minutes."
        }
        FitRemark::AirCalculated => {
            "The log has no air near the alternator. It was calculated from the engine space on the worksheet, which makes the cooling found less certain. Log the air."
        }
        FitRemark::BeganWarm => {
            "The log begins with a warm alternator. How hot winding and air were then is calculated."
        }
        FitRemark::OutputUntold { why } => output_untold(*why),
        FitRemark::OutputAgrees => {
            "At full field the alternator gave what the worksheet's output curve says, within 4 %."
        }
        FitRemark::OutputCorrected => {
            "At full field the alternator gave another current than the worksheet's output curve says. The second point is what it would give cold at the speed of the log; the losses were calculated again with it."
        }
        FitRemark::RatedWarm => {
            "The amps are those of an alternator whose rating is for a warmed-up one: “Rating is for” becomes that. Look at its plate or papers."
        }
        FitRemark::OutputWrong { share } => {
            return format!(
                "At full field the alternator gave {:.0} % of what the worksheet's output curve says, and no curve through its rating explains that. Look at the rated current, how it was taken, and the pulley ratio.",
                100.0 * share
            );
        }
        FitRemark::Misses { residual_k } => {
            return format!(
                "The model misses the thermometer by {residual_k:.1} K on average: treat the figures as a hint. Always aim at the same black tape."
            );
        }
    };
    words.to_string()
}

fn output_untold(why: OutputUntold) -> &'static str {
    match why {
        OutputUntold::NotAlone => {
            "Whether the alternator gives what its output curve says stays open: it is not alone on the house bank."
        }
        OutputUntold::NoVolts => {
            "Whether the alternator gives what its output curve says stays open: that takes the volts as well, in the first minutes on a low bank, before heat or the charge voltage hold it back."
        }
        OutputUntold::HeldBack => {
            "Whether the alternator gives what its output curve says stays open: in this log heat, a cap, the charge voltage or the bank's charge limit may have been what limited it."
        }
    }
}
