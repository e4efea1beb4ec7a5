//! How the parts of an alternator share its heat: conductances and capacities of
//! one of 1520 W, and how they change with size. What differs from one make to
//! the next, and moves the answer, is no constant but an input: see
//! [`HeatPaths`](crate::physics::thermal_build::HeatPaths).

/// Conductance from the winding of an alternator of 1520 W (108 A at 14 V) to the
/// air before the cooling factor \[W/K\]: all others are given as multiples of it,
/// so that its own size does not matter.
pub(crate) const WINDING_AIR: f64 = 3.0;
/// Conductance from the rectifier plate of that alternator to its body \[W/K\].
pub(crate) const RECTIFIER_BODY: f64 = 0.8;
pub(crate) const SHARES_OF_W: f64 = 1520.0;
/// How they grow with the rated power. In machines of one design, surfaces (slot
/// walls, plates) grow with the square of a length and the power with its
/// power of 3.5, which makes 2/3.5. From memory; its use here is own reasoning.
pub(crate) const SHARES_EXPONENT: f64 = 0.57;

/// Heat capacities \[J/K for each kg\]: 14 % copper, 62 % steel, 19 %
/// aluminium, 5 % plate at 385, 450 and 900 J/(kg·K), handbook values from memory.
pub(crate) const WINDING_CAPACITY: f64 = 99.0;
pub(crate) const BODY_CAPACITY: f64 = 405.0;
pub(crate) const RECTIFIER_CAPACITY: f64 = 45.0;
/// Diodes and heat spreader, whatever the size \[J/K\].
pub(crate) const RECTIFIER_CAPACITY_FIXED: f64 = 40.0;

/// Part of the fan and bearing loss that warms the body; the rest leaves as warm air.
pub const FAN_HEAT_IN_BODY: f64 = 0.3;
/// That rest.
pub(crate) const FAN_HEAT_IN_AIR: f64 = 1.0 - FAN_HEAT_IN_BODY;
