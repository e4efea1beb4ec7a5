//! Figures as settings and commissioning steps say them.

use crate::analysis::Part;
use crate::guidance::settings::SettingValue;
use crate::text::words::at_most;
use crate::units::Reader;
use crate::units::quantity::Quantity;

/// Where cells are on the table of charge currents: "5 to 10 °C", "below 0 °C".
pub(in crate::text) fn cell_range(
    from: Option<Quantity>,
    to: Option<Quantity>,
    reader: &Reader,
) -> String {
    match (from, to) {
        (None, Some(to)) => format!("below {}", reader.show(to)),
        (Some(from), None) => format!("above {}", reader.show(from)),
        (Some(from), Some(to)) => reader.range(from, to),
        (None, None) => "at any temperature".to_string(),
    }
}

/// The most current of a step of that table.
pub(in crate::text) fn cell_limit(most: Option<Quantity>, reader: &Reader) -> String {
    most.map_or("none".to_string(), |most| at_most(most, reader))
}

/// A step of that table in one: "5 to 10 °C 80 A". Nothing for another value.
pub(in crate::text) fn cell_step(step: &SettingValue, reader: &Reader) -> String {
    match *step {
        SettingValue::CellStep { from, to, most } => format!(
            "{} {}",
            cell_range(from, to, reader),
            cell_limit(most, reader)
        ),
        _ => String::new(),
    }
}

/// Where a sensor sits.
pub(in crate::text) const fn sensor_on(part: Part) -> &'static str {
    match part {
        Part::Winding => "on the stator winding",
        Part::Rectifier => "on the rectifier plate",
        Part::Case => "on the case",
    }
}

/// A rate of charging: "0.50 A for each A·h".
pub(super) fn rate(rate: Quantity, reader: &Reader) -> String {
    format!("{} A for each A·h", reader.number(rate))
}

#[cfg(test)]
mod tests {
    use crate::guidance::settings::SettingValue;
    use crate::text::settings::words::cell_step;
    use crate::units::Reader;
    use crate::units::quantity::{amperes, celsius};

    #[test]
    fn a_step_of_the_table_in_the_readers_degrees() {
        let step = SettingValue::CellStep {
            from: Some(celsius(5.0)),
            to: Some(celsius(10.0)),
            most: Some(amperes(80.0)),
        };
        assert_eq!(cell_step(&step, &Reader::METRIC), "5 to 10 °C 80 A");
        assert_eq!(cell_step(&step, &Reader::US), "41 to 50 °F 80 A");
        let frost = SettingValue::CellStep {
            from: None,
            to: Some(celsius(0.0)),
            most: None,
        };
        assert_eq!(cell_step(&frost, &Reader::METRIC), "below 0 °C none");
    }
}
