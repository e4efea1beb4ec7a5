//! Where the formulas are from, each in a line as the page prints it.

use crate::formula::Source;

/// Thought out for this model.
pub const OWN_REASONING: Source = Source("Own reasoning.");
/// Follows from what the words mean.
pub const ARITHMETIC: Source = Source("Arithmetic.");
/// What the trade does; nobody in particular says so.
pub const COMMON_PRACTICE: Source = Source("Common practice, no source.");
/// Full-field output.
pub const OUTPUT_CURVE: Source = Source(
    "V. Caliskan, D. J. Perreault, T. M. Jahns, J. G. Kassakian, IEEE Trans. Circuits and Systems I 50(9), 2003, from memory; how heat weakens it is own reasoning.",
);
/// Copper's resistance.
pub const COPPER: Source = Source("IEC 60028:1925, from memory.");
/// A winding's temperature by its resistance.
pub const WINDING_BY_RESISTANCE: Source =
    Source("IEC 60034-1, temperature rise by the resistance method, from memory.");
/// The alternator's losses.
pub const LOSSES: Source = Source(
    "Loss by loss after M. Örn, MSc thesis, Linköping University, 2014; the split from memory.",
);
/// Its thermal network.
pub const THERMAL_NETWORK: Source = Source(
    "A network after S. C. Tang, T. A. Keim, D. J. Perreault, IEEE Trans. Energy Conversion 20(1), 2005; shares from memory, scaled by one temperature.",
);
/// Heat transfer by a fan.
pub const END_WINDINGS: Source = Source(
    "Of the form of G. Kylander, Temperature prediction of electrical machines, thesis, Chalmers, 1995, as coded by others; small fan-cooled motors.",
);
/// How insulation ages.
pub const INSULATION_LIFE: Source = Source(
    "Temperature index at 20 000 h of IEC 60172 and IEC 60085, half for each 10 K, as summarised.",
);
/// How grease ages.
pub const GREASE_LIFE: Source = Source(
    "The trade's 15 K rule for lithium grease in rolling bearings above 70 °C; its 20 000 h from memory.",
);
/// Air that carries heat.
pub const HEAT_OF_AIR: Source = Source("Heat balance; specific heat of air from memory.");
/// Panels.
pub const SOLAR: Source =
    Source("J. A. Duffie, W. A. Beckman, Solar Engineering of Thermal Processes, from memory.");
/// What an engine burns.
pub const FUEL: Source = Source(
    "Willans line; friction from J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, section 13.6, from memory.",
);
/// What years do to a bank.
pub const AGEING: Source = Source("Common practice, no source: straight over the years.");
/// What a generator burns.
pub const GENERATOR: Source = Source(
    "O. Skarstein, K. Uhlen, Wind Engineering 13(2), 1989, from memory: a straight line from idle to full output.",
);
/// What an engine can do below its rated speed.
pub const TORQUE: Source = Source(
    "Relation of Leiderman and Khlystov for the power of an engine at full load; coefficients from memory.",
);
/// What cells do.
pub const CELLS: Source = Source(
    "Tables of typical cells, from memory; the falling charge acceptance of lead is common practice.",
);
/// What a belt grips with, and how far it lies round a pulley.
pub const BELTS: Source = Source(
    "Belt friction after Euler and Eytelwein, in a groove; open belt and angle-of-contact factor from J. E. Shigley, Mechanical Engineering Design, from memory.",
);
/// The balance of forces.
pub const STATICS: Source = Source("Statics.");
/// Ohm's law.
pub const OHM: Source = Source("Ohm's law.");
/// What a fuse may be for its cable.
pub const FUSES: Source = Source("33 CFR 183.455; a quarter above the current is common practice.");
/// What a cable may carry.
pub const AMPACITY: Source =
    Source("33 CFR 183.425, table 5; less in hotter air is own reasoning.");
/// Circular mils.
pub const CIRCULAR_MILS: Source = Source("ABYC E-11, from memory. Shown for comparison only.");
/// The pulse of a load dump.
pub const LOAD_DUMP: Source = Source("ISO 16750-2, load dump.");
/// Money over time.
pub const ECONOMY: Source = Source("L. Blank, A. Tarquin, Engineering Economy, from memory.");
