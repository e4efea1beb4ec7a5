//! What is said of a temperature sensor that reads too low or fails.

use crate::findings::SensorFinding;
use crate::text::{sensor, words};
use crate::units::Reader;
use crate::units::quantity::{celsius, kelvin};

pub(super) fn sentence(finding: &SensorFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match finding {
        SensorFinding::SensorReadsLow {
            alternator,
            low_k,
            set_point_c,
            part,
            part_c,
            at_most,
            limit_c,
        } => format!(
            "The {}'s sensor reads {} too low, so the regulator lets its place come to {} before it holds {}. The {} {} {}; {} is {}. Bolt the sensor to bare metal with a full-size lug, and hold a second thermometer to the same place in the first hot run.",
            words::alternator(*alternator),
            show(kelvin(*low_k)),
            show(celsius(set_point_c + low_k)),
            show(celsius(*set_point_c)),
            words::part(*part),
            if *at_most { "may reach" } else { "reaches" },
            show(celsius(*part_c)),
            show(celsius(*limit_c)),
            words::limit_of(*part)
        ),
        SensorFinding::SensorFailsHot { lost, half } => format!(
            "{} Set the regulator to stop charging when it misses its sensor{}.",
            sensor::without(lost, *half, reader),
            if *half {
                ", or give it a lower field cap"
            } else {
                ", or to go on at half field where it can, and secure the sensor's wire and screw"
            }
        ),
    }
}
