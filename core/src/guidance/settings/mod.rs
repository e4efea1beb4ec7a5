//! What to set in every device of the arrangement, in neutral trade terms,
//! each with its reason and with who has the last word on it. Not part of the
//! report: it is asked for by itself.
//!
//! `figures` has the numbers, with `steps` (low and high voltage), `cap` (an
//! alternator's current); `bank`, `temperature` (lithium by temperature),
//! `machine` and `between` say them for the house bank, the regulators, and what
//! stands between house and start battery. They hold for a season, not for one
//! cold morning. The link and the date belong to the page that shows or prints it.

mod bank;
mod between;
mod built_in;
mod cap;
mod external;
mod figures;
mod machine;
mod management;
mod steps;
mod temperature;
#[cfg(test)]
mod tests;

use crate::units::down;
use std::borrow::Cow;

use serde::Serialize;

use crate::boat::{Inputs, RegulatorKind, WayKind, Worksheet};
use crate::report::Report;

pub(crate) use figures::{Figures, set_point};
pub(crate) use temperature::stretch_words;

/// What to set, device by device.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Settings {
    /// Those that the arrangement has, in the order to set them.
    pub groups: Vec<Group>,
}

/// The settings of one device.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Group {
    /// Its name, the same for ever.
    pub key: &'static str,
    /// Its heading.
    pub title: &'static str,
    /// Its settings.
    pub lines: Vec<Line>,
}

/// One setting.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Line {
    /// Its name within the group, the same for ever.
    pub key: &'static str,
    /// What it is called in the trade.
    pub what: Cow<'static, str>,
    /// What to set, with its unit.
    pub value: String,
    /// The number in it, where one stands for the whole; in the unit named
    /// there.
    pub number: Option<f64>,
    /// Why, in a sentence.
    pub why: String,
    /// Who says so.
    pub from: Source,
}

/// Who has the last word on a setting.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Source {
    /// The worksheet's input of this name.
    Worksheet(&'static str),
    /// Calculated from the worksheet.
    Calculated,
    /// The battery maker's sheet: what stands here, if anything, only serves
    /// until it is at hand.
    BatteryMaker,
    /// Common practice, no source.
    CommonPractice,
}

impl Source {
    /// In a few words.
    pub const fn words(self) -> &'static str {
        match self {
            Source::Worksheet(_) => "your figure",
            Source::Calculated => "calculated",
            Source::BatteryMaker => "ask the battery maker",
            Source::CommonPractice => "common practice",
        }
    }
}

/// What the groups are made from.
#[derive(Clone, Copy)]
struct Case<'a> {
    inputs: &'a Inputs,
    report: &'a Report,
    figures: &'a Figures,
    /// Peak house load \[A\].
    peak_house_a: f64,
}

/// Works out what to set.
pub fn settings(sheet: &Worksheet, report: &Report) -> Settings {
    let inputs = &sheet.inputs;
    let figures = &Figures::of(sheet);
    let case = Case {
        inputs,
        report,
        figures,
        peak_house_a: sheet.bus_peak_a(),
    };
    let mut groups = vec![bank::charge(case)];
    if figures.lithium {
        groups.push(temperature::by_temperature(case));
    }
    if inputs.engine_charges() {
        groups.push(match inputs.reg.kind {
            RegulatorKind::External => external::regulator(case),
            RegulatorKind::Internal => built_in::built_in(case),
        });
        groups.extend(built_in::second(case));
        if inputs.way.kind == WayKind::Converter {
            groups.push(between::converter(case));
        } else if inputs.feeds_start_back() {
            groups.push(between::turned_round(case));
        }
    }
    groups.push(if figures.lithium {
        management::management(case)
    } else {
        management::low_volts(case)
    });
    if inputs.shore.charger_a > 0.0 {
        groups.push(bank::shore_charger(case));
    }
    groups.push(between::start_battery(case));
    Settings { groups }
}

impl Line {
    /// A setting without a number of its own.
    fn new(
        key: &'static str,
        what: impl Into<Cow<'static, str>>,
        value: String,
        why: String,
    ) -> Line {
        Line {
            key,
            what: what.into(),
            value,
            number: None,
            why,
            from: Source::CommonPractice,
        }
    }

    /// With its number.
    fn at(self, number: f64) -> Line {
        Line {
            number: Some(number),
            ..self
        }
    }

    /// With its current \[A\] as [`amperes`] writes it; less than that can write
    /// is no number.
    fn amps(self, a: f64) -> Line {
        Line {
            number: Some(down(a)).filter(|a| *a > 0.0),
            ..self
        }
    }

    /// With who says so.
    fn from(self, from: Source) -> Line {
        Line { from, ..self }
    }
}
