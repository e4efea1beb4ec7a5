//! This boat's figures in a step.

use crate::guidance::commissioning::StepFigure;
use crate::text::settings::words::{cell_step, sensor_on};
use crate::text::words::at_most;
use crate::units::Reader;

pub(super) fn sentence(figure: &StepFigure, reader: &Reader) -> String {
    let show = |quantity: &_| reader.show(*quantity);
    match figure {
        StepFigure::BeltPower { power } => {
            format!("The alternator will take up to {} from them.", show(power))
        }
        StepFigure::Sensor { on, air, within } => format!(
            "It belongs {}; {} on a day like the one you entered, within {}.",
            sensor_on(*on),
            show(air),
            show(within)
        ),
        StepFigure::AtRest { voltage, soc } => {
            format!("About {} at {} and at rest.", show(voltage), show(soc))
        }
        StepFigure::Speeds { engine, shaft } => format!(
            "{} of the engine, {} of the alternator.",
            show(engine),
            show(shaft)
        ),
        StepFigure::FirstCurrent {
            current,
            never_above,
        } => format!(
            "Expect up to about {}; never above {} at the bank.",
            show(current),
            show(never_above)
        ),
        StepFigure::VoltageDrop { most } => format!(
            "Both together no more than {}; more is a bad joint or a thin lead.",
            show(most)
        ),
        StepFigure::HouseLoad { current } => format!("The house draws about {}.", show(current)),
        StepFigure::SentLimits {
            current,
            voltage: Some(voltage),
        } => format!(
            "About {} and {} with the cells as entered.",
            show(current),
            show(voltage)
        ),
        StepFigure::SentLimits {
            current,
            voltage: None,
        } => format!("About {} with the cells as entered.", show(current)),
        StepFigure::PackShares { least, most, limit } => format!(
            "Each takes {} to {} of the whole, and none more than {}; more apart means a bad joint or leads of different length.",
            show(least),
            show(most),
            at_most(*limit, reader)
        ),
        StepFigure::OnLinkLoss { stops: true, .. } => {
            "It must stop charging; if it goes on, change the setting or fit a cap.".to_string()
        }
        StepFigure::OnLinkLoss {
            stops: false,
            voltage,
            current,
        } => format!(
            "It may go on, with no more than {} and {}.",
            show(voltage),
            at_most(*current, reader)
        ),
        StepFigure::HeldAtMost { voltage } => {
            format!("No more than {} at the packs.", show(voltage))
        }
        StepFigure::DcDcCharger { from, most } => format!(
            "On from {} up; its output no more than {}.",
            show(from),
            at_most(*most, reader)
        ),
        StepFigure::StartBattery { voltage } => format!("{} by your figures.", show(voltage)),
        StepFigure::ShoreCharger { current, voltage } => format!(
            "No more than {} and {}.",
            at_most(*current, reader),
            show(voltage)
        ),
        StepFigure::BeginAt {
            soc,
            fills_sooner: false,
        } => format!("Begin at {} or lower.", show(soc)),
        StepFigure::BeginAt {
            soc,
            fills_sooner: true,
        } => format!(
            "It fills sooner: begin at {} and switch on what the house has.",
            show(soc)
        ),
        StepFigure::EngineSpeed { engine } => format!("{} of the engine.", show(engine)),
        StepFigure::LugAboveCable { most } => {
            format!("Each no more than {} above its own cable.", show(most))
        }
        StepFigure::PlateAfterStop { plate } => format!(
            "The plate is expected to reach {} after stopping.",
            show(plate)
        ),
        StepFigure::SmallCurrent { below } => {
            format!("Below a tenth of the rating, {}.", at_most(*below, reader))
        }
        StepFigure::HighVoltage {
            warning,
            charging_off,
            contactor,
        } => format!(
            "Warning {}, charging off {}, contactor {}, unless the maker says otherwise.",
            show(warning),
            show(charging_off),
            show(contactor)
        ),
        StepFigure::ByTemperature { steps } => {
            let steps: Vec<String> = steps.iter().map(|step| cell_step(step, reader)).collect();
            format!("Most charge current: {}.", steps.join(", "))
        }
        StepFigure::LowVoltage {
            warning,
            loads_off,
            off,
        } => format!(
            "Warning {}, loads off {}, last step {}.",
            show(warning),
            show(loads_off),
            show(off)
        ),
        StepFigure::HoldsHot { hot } => format!(
            "Within a tenth of then; {} is what it should hold hot.",
            show(hot)
        ),
        StepFigure::CellSpread { most } => format!("{} at most.", show(most)),
        StepFigure::DensitySpread { most } => {
            format!("Densities differ by no more than {}.", show(most))
        }
        StepFigure::Full { below, at } => {
            format!("Below {} at {}.", at_most(*below, reader), show(at))
        }
        StepFigure::EqualiseFrom { difference } => {
            format!("Only if densities differ by {} or more.", show(difference))
        }
    }
}
