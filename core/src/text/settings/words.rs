//! Figures and parts as settings and commissioning steps say them.

use crate::analysis::Part;
use crate::guidance::settings::SettingValue;
use crate::units::Reader;
use crate::units::quantity::{Quantity, amperes};

/// A current that is a limit, never rounded up: whole from 10 A, in tenths below.
pub(in crate::text) fn limit(current: Quantity, reader: &Reader) -> String {
    let a = current.value;
    let (parts, decimals) = if a < 10.0 { (10.0, 1) } else { (1.0, 0) };
    let floored_a = (a * parts).floor() / parts;
    if a > 0.0 && floored_a <= 0.0 {
        return format!("less than {}", reader.show(amperes(0.1).to(1)));
    }
    reader.show(amperes(floored_a).to(decimals))
}

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
    most.map_or("none".to_string(), |most| limit(most, reader))
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

/// What a part of an alternator is called.
pub(in crate::text) const fn part(part: Part) -> &'static str {
    match part {
        Part::Winding => "winding",
        Part::Rectifier => "rectifier plate",
        Part::Case => "case",
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
    use crate::text::settings::words::{cell_step, limit};
    use crate::units::Reader;
    use crate::units::quantity::{amperes, celsius};

    #[test]
    fn a_limit_is_never_rounded_up() {
        let show = |a| limit(amperes(a), &Reader::METRIC);
        assert_eq!(
            [0.0, 0.04, 0.38, 9.97, 10.0, 99.9].map(show),
            ["0.0 A", "less than 0.1 A", "0.3 A", "9.9 A", "10 A", "99 A"]
        );
        let comma = Reader::METRIC.with_decimal_comma(true);
        assert_eq!(limit(amperes(9.97), &comma), "9,9 A");
    }

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
