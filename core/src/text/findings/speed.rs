//! What is said of speeds.

use crate::findings::SpeedFinding;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::rpm;

pub(super) fn sentence(finding: &SpeedFinding, reader: &Reader) -> String {
    let show = |speed| reader.show(rpm(speed));
    match *finding {
        SpeedFinding::Overspeed {
            alternator,
            engine_rpm,
            shaft_rpm,
            highest_rpm,
            engine_limit_rpm,
        } => format!(
            "With the engine at {} the {} turns at {}, above the {} it may. Fit a larger alternator pulley, or keep the engine below {}.",
            show(engine_rpm),
            words::alternator(alternator),
            show(shaft_rpm),
            show(highest_rpm),
            show(engine_limit_rpm)
        ),
        SpeedFinding::FasterThanTop {
            engine_rpm,
            top_rpm,
        } => format!(
            "The engine is to charge at {}, and its highest speed is {}: correct the wrong one.",
            show(engine_rpm),
            show(top_rpm)
        ),
        SpeedFinding::OneTooSlow {
            alternator,
            shaft_rpm,
        } => format!(
            "At {} the {} gives nothing. Run the engine faster, or fit the alternator a smaller pulley.",
            show(shaft_rpm),
            words::alternator(alternator)
        ),
        SpeedFinding::TooSlow {
            shaft_rpm,
            cut_in_rpm,
        } => format!(
            "At {} the alternator gives nothing; it starts to charge at {}. Run the engine faster, or fit the alternator a smaller pulley.",
            show(shaft_rpm),
            show(cut_in_rpm)
        ),
        SpeedFinding::LowOnTheCurve {
            alternator,
            shaft_rpm,
        } => format!(
            "At {} the {} works on the steep part of its output curve: this estimate can be a quarter too high there, and its fan is slow. A little more engine speed gives much more current.",
            show(shaft_rpm),
            words::alternator(alternator)
        ),
    }
}
