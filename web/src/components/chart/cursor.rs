//! The upright line where a drawing is read off. It stays within the fields and
//! stops short of every label.

use std::fmt::Write;

use leptos::prelude::*;

use super::path::tenths;

/// Width of a letter of a label, on the wide side.
const LETTER: f64 = 5.2;
/// From the foot of a letter to the top of a capital, and below it.
const ABOVE: f64 = 9.5;
const BELOW: f64 = 3.0;

/// Where a label stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LabelBox {
    across: (f64, f64),
    down: (f64, f64),
}

impl LabelBox {
    /// The room that words take which are written at a point, anchored there by
    /// their "start" or their "end".
    pub fn of((x, y): (f64, f64), anchor: &str, words: &str) -> LabelBox {
        let width = LETTER * words.chars().count() as f64;
        let across = match anchor {
            "end" => (x - width, x + 1.0),
            _ => (x - 1.0, x + width),
        };
        LabelBox {
            across,
            down: (y - ABOVE, y + BELOW),
        }
    }

    fn covers(&self, x: f64) -> bool {
        (self.across.0..=self.across.1).contains(&x)
    }
}

/// The line at a place across.
#[component]
pub fn Cursor(
    x: Memo<Option<f64>>,
    /// Top and bottom of each field, from above.
    fields: Vec<(f64, f64)>,
    /// The labels that stand in them.
    #[prop(optional)]
    labels: Option<Memo<Vec<LabelBox>>>,
) -> impl IntoView {
    let d = Signal::derive(move || {
        let x = x.get()?;
        let labels = labels.map(|labels| labels.get()).unwrap_or_default();
        Some(line(x, &fields, &labels))
    });
    view! { <path class="cursor" d=d /> }
}

/// Pieces of the line: each field, without what labels cover.
fn line(x: f64, fields: &[(f64, f64)], labels: &[LabelBox]) -> String {
    let mut pieces = fields.to_vec();
    for label in labels.iter().filter(|label| label.covers(x)) {
        let (from, to) = label.down;
        let rest = |(top, bottom): (f64, f64)| [(top, bottom.min(from)), (top.max(to), bottom)];
        pieces = pieces.into_iter().flat_map(rest).collect();
        pieces.retain(|(top, bottom)| bottom > top);
    }
    let mut d = String::new();
    for (top, bottom) in pieces {
        // Writing to a String cannot fail.
        let _ = write!(d, "M{} {}V{}", tenths(x), tenths(top), tenths(bottom));
    }
    d
}

#[cfg(test)]
mod tests {
    use super::{LabelBox, line};

    #[test]
    fn it_stops_short_of_labels_and_between_fields() {
        let fields = [(10.0, 100.0), (130.0, 200.0)];
        assert_eq!(
            line(50.0, &fields, &[]),
            "M50.0 10.0V100.0M50.0 130.0V200.0"
        );
        let label = LabelBox::of((40.0, 60.0), "start", "winding");
        assert_eq!(
            line(50.0, &fields, &[label]),
            "M50.0 10.0V50.5M50.0 63.0V100.0M50.0 130.0V200.0"
        );
        // Beside the words it goes on.
        assert_eq!(line(90.0, &fields, &[label]), line(90.0, &fields, &[]));
        // A label at the end of a field takes the end away.
        let label = LabelBox::of((52.0, 100.0), "end", "stop");
        assert!(line(50.0, &fields, &[label]).starts_with("M50.0 10.0V90.5M50.0 130.0"));
    }
}
