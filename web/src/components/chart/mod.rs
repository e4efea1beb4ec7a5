//! What the drawings of the page are built of: SVG, in units of their own, as
//! wide as the page lets them be.

mod axis;
mod cursor;
mod grid;
mod legend;
mod line;
mod marks;
mod path;
pub mod scale;
#[cfg(test)]
pub mod tests;

pub use axis::Axis;
pub use cursor::{Cursor, LabelBox};
pub use grid::{AxisTicks, Field, Grid, TimeTicks};
pub use legend::Legend;
pub use line::{ChartLine, LineStyle};
pub use marks::{Block, LEVEL_ABOVE, LevelMark, Stroke, Words};
pub use path::{path, tenths};
pub use scale::Scale;

/// Width of a drawing, in its own units.
pub const WIDTH: f64 = 360.0;
/// Where fields begin across.
pub const LEFT: f64 = 34.0;
/// Where fields end across.
pub const RIGHT: f64 = 352.0;
