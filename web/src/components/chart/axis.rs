//! An axis of one kind of quantity, in the unit its reader wants.

use ampwright_core::units::quantity::count;
use ampwright_core::units::{Other, QuantityKind, Reader};

use super::scale::Scale;

/// An axis whose lines stand at round figures of the reader's unit. Figures
/// are handed to it in the unit of their kind.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Axis {
    /// In the reader's unit.
    scale: Scale,
    other: Option<Other>,
    reader: Reader,
    /// The symbol of the reader's unit.
    pub unit: &'static str,
}

/// A figure worth a line.
#[derive(Debug, Clone, PartialEq)]
pub struct Tick {
    /// Where it stands.
    pub place: f64,
    /// The figure, as the reader wants it.
    pub label: String,
}

impl Axis {
    /// An axis that holds `low` to `high`, drawn from place `from` to `to`.
    pub fn new(
        reader: &Reader,
        kind: QuantityKind,
        (low, high): (f64, f64),
        (from, to): (f64, f64),
    ) -> Axis {
        Axis::with(reader, kind, |told| {
            Scale::new(told(low), told(high), from, to)
        })
    }

    /// An axis whose ends are rounded out to whole steps of the reader's unit.
    pub fn rounded(
        reader: &Reader,
        kind: QuantityKind,
        (low, high): (f64, f64),
        (from, to): (f64, f64),
    ) -> Axis {
        Axis::with(reader, kind, |told| {
            Scale::rounded(told(low), told(high), from, to)
        })
    }

    fn with(
        reader: &Reader,
        kind: QuantityKind,
        scale: impl FnOnce(&dyn Fn(f64) -> f64) -> Scale,
    ) -> Axis {
        let other = reader.other(kind.unit());
        Axis {
            scale: scale(&|value| told(other, value)),
            other,
            reader: *reader,
            unit: reader.unit(kind),
        }
    }

    /// Place of a figure.
    pub fn place(&self, value: f64) -> f64 {
        self.scale.place(told(self.other, value))
    }

    /// Whether a figure lies on the axis.
    pub fn holds(&self, value: f64) -> bool {
        (self.scale.low..=self.scale.high).contains(&told(self.other, value))
    }

    /// Figures worth a line, about `wanted` of them.
    pub fn ticks(&self, wanted: f64) -> Vec<Tick> {
        let figures = self.scale.ticks(wanted);
        let decimals = match figures.as_slice() {
            [first, second, ..] => decimals(second - first),
            _ => 0,
        };
        figures
            .into_iter()
            .map(|figure| Tick {
                place: self.scale.place(figure),
                label: self.reader.number(count(figure).to(decimals)),
            })
            .collect()
    }
}

/// A figure in the reader's unit.
fn told(other: Option<Other>, value: f64) -> f64 {
    other.map_or(value, |other| value * other.scale + other.offset)
}

/// Decimals that tell apart figures a step from each other.
fn decimals(step: f64) -> usize {
    (-step.log10().floor()).clamp(0.0, 3.0) as usize
}

#[cfg(test)]
mod tests {
    use super::*;

    fn labels(axis: &Axis) -> Vec<String> {
        axis.ticks(4.0).into_iter().map(|tick| tick.label).collect()
    }

    #[test]
    fn lines_stand_at_round_figures_of_the_readers_unit() {
        let kind = QuantityKind::Temperature;
        let axis = |reader| Axis::rounded(reader, kind, (20.0, 95.0), (100.0, 0.0));
        let (celsius, fahrenheit) = (axis(&Reader::METRIC), axis(&Reader::US));
        assert_eq!(labels(&celsius), ["20", "40", "60", "80", "100"]);
        assert_eq!(labels(&fahrenheit), ["50", "100", "150", "200", "250"]);
        assert_eq!([celsius.unit, fahrenheit.unit], ["°C", "°F"]);
        // 10 °C is 50 °F.
        assert!((fahrenheit.place(10.0) - 100.0).abs() < 1e-9);
    }

    #[test]
    fn small_steps_have_decimals_behind_the_readers_sign() {
        let reader = Reader::METRIC.with_decimal_comma(true);
        let axis = Axis::rounded(&reader, QuantityKind::Hours, (0.0, 1.6), (100.0, 0.0));
        assert_eq!(labels(&axis), ["0,0", "0,5", "1,0", "1,5", "2,0"]);
    }
}
