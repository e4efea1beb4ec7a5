//! Headings of the tables that are taken along: CSV, and the sheet for readings
//! that is filled in by hand.

/// Of the charging run, moment by moment. A sea trial reads that table back.
pub const RUN: [&str; 14] = [
    "Minute (min)",
    "State of charge (%)",
    "Alternator current (A)",
    "Current into the bank (A)",
    "Voltage at the bank (V)",
    "Alternator voltage (V)",
    "Winding (°C)",
    "Case (°C)",
    "Rectifier (°C)",
    "Air (°C)",
    "Second alternator's winding (°C)",
    "Second alternator's case (°C)",
    "Power at the shafts (W)",
    "Limited by",
];

/// Of the legs of the day.
pub const LEGS: [&str; 17] = [
    "Leg",
    "Engine runs",
    "Engine (rpm)",
    "Engine off before it (h)",
    "Time (min)",
    "Alternator current at the start (A)",
    "Alternator current at the end (A)",
    "Into the bank (A·h)",
    "State of charge at the start (%)",
    "State of charge at the end (%)",
    "Winding at the start (°C)",
    "Winding at most (°C)",
    "Case at most (°C)",
    "Second alternator's winding at most (°C)",
    "Second alternator's case at most (°C)",
    "Fuel for charging (L)",
    "Limited by",
];

/// Of output against engine speed.
pub const OUTPUT: [&str; 3] = ["Engine (rpm)", "Cold output (A)", "Hot output (A)"];

/// Of the year's months.
pub const YEAR: [&str; 29] = [
    "Month",
    "Days aboard",
    "Air (°C)",
    "Bank (°C)",
    "Peak sun hours a day (h)",
    "Daylight (h)",
    "Solar a day (W·h)",
    "Solar a day (A·h)",
    "Solar lost, bank full, a day (A·h)",
    "Solar lost, bank full (%)",
    "Other sources a day (A·h)",
    "Other sources lost, bank full, a day (A·h)",
    "Use a day (A·h)",
    "Engine gives a day (A·h)",
    "Engine in seven days aboard (h)",
    "Of that motoring anyway (h)",
    "Engine for charging in the month (h)",
    "Motoring in the month (h)",
    "Fuel in the month (L)",
    "Generator gives a day (A·h)",
    "Generator in the month (h)",
    "Generator's fuel, a part of that (L)",
    "Shore power gives a day (A·h)",
    "Shore power in seven days aboard (h)",
    "Shore power used in the month (kW·h)",
    "Share from solar (%)",
    "Lowest state of charge (%)",
    "Days aboard below the lowest state of charge",
    "Use not covered, a day (A·h)",
];

/// Of the hours of a day in the year.
pub const DAY: [&str; 8] = [
    "Hour begins (h)",
    "State of charge (%)",
    "Solar (W)",
    "Other sources (W)",
    "Use (W)",
    "Engine runs (min)",
    "Generator runs (min)",
    "Shore power (min)",
];

/// Of the arrangements beside each other.
pub const ARRANGEMENTS: [&str; 21] = [
    "Arrangement",
    "Changes",
    "Engine a day (h)",
    "Engine a year (h)",
    "Generator a day (h)",
    "Generator a year (h)",
    "Time to the charge target (min)",
    "At the start (A)",
    "Hot (A)",
    "Limited by",
    "Hottest part",
    "Its temperature (°C)",
    "Its limit (°C)",
    "Fuel a year (L)",
    "Belt power, highest (kW)",
    "Share of engine power (%)",
    "Purchase (currency)",
    "Cost a year (currency)",
    "Payback (years)",
    "Dangers",
    "Fixes",
];

/// Of the sheet for the readings of the hot run, in the order in which a log
/// without headings is read.
pub const READINGS: [&str; 6] = [
    "minute",
    "alternator A",
    "case °C",
    "air °C",
    "rpm",
    "volts",
];
