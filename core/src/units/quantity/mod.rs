//! A figure that is shown: its value, what it is of, and how finely it is told.
//!
//! `kind` is what it is of, `figure` the figure, `usual` writes the usual ones. Uses
//! the units.

mod figure;
mod kind;
mod usual;

pub use figure::{Decimals, Quantity};
pub use kind::QuantityKind;
pub use usual::{
    ampere_hours, amperes, celsius, count, kelvin, kiloamperes_of, kilowatts_of, millimetres,
    minutes, money, percent, rpm, seconds, volts,
};

#[cfg(test)]
mod tests {
    use crate::units::quantity::{celsius, seconds, volts};
    use crate::units::{QuantityKind, Reader};

    #[test]
    fn json_has_value_and_unit() {
        let json = serde_json::to_value(celsius(-4.5)).unwrap();
        assert_eq!(json, serde_json::json!({"value": -4.5, "unit": "°C"}));
    }

    #[test]
    fn a_voltage_has_a_hundredth_only_where_it_is_one() {
        let show = |v| Reader::METRIC.show(volts(v));
        let shown = [14.0, 14.2, 14.25, 14.201].map(show);
        assert_eq!(shown, ["14.0 V", "14.2 V", "14.25 V", "14.2 V"]);
    }

    #[test]
    fn seconds_become_a_clock() {
        assert_eq!(seconds(40.0).kind, QuantityKind::Seconds);
        assert_eq!(Reader::METRIC.show(seconds(89.0)), "89 s");
        assert_eq!(Reader::METRIC.show(seconds(7500.0)), "2 h 05 min");
    }
}
