//! The worksheet: everything the user can say about the boat. One file a
//! section; the order here is the order on screen and on paper.

mod alternator;
mod arrangement;
mod bank;
mod battery_link;
mod before;
mod belt;
mod cable;
mod cost;
mod daily;
mod daily_use;
mod days_aboard;
mod demo;
mod done;
mod engine;
mod goal;
mod guard;
mod input;
mod installed;
mod known;
mod ladder;
mod loads;
mod months;
mod packs;
mod price;
mod questions;
pub mod reading;
mod regulator;
mod rule;
mod run;
mod second;
mod section;
mod shore;
mod space;
mod sun;
mod way;

use crate::schema::{Confidence, InputError, Kind, Value};

use serde::{Serialize, Serializer};

pub use crate::key;
pub use alternator::{Alternator, AlternatorVolts, Curve, InsulationClass, Plate};
pub use arrangement::Arrangement;
pub(crate) use bank::usual_charge_v;
pub use bank::{Bank, Chemistry, NominalVolts};
pub use battery_link::{LinkLoss, NoLink, RegulatorLink};
pub use before::{Before, OldBattery, OldConnection};
pub use belt::{Belt, BeltKind};
pub use cable::{Cable, Copper, Flag, Insulation, Place as CablePlace};
pub use cost::{Cost, Currency};
pub use daily::{Basis, Daily};
pub use daily_use::{DayUse, RowUse, house_load_a, inverter_wh, mean_draw_a};
pub(crate) use daily_use::{half_full_v, load_rows, saved, total};
pub use days_aboard::YearAboard;
pub use demo::demo;
#[cfg(test)]
pub(crate) use done::COMMISSIONING_STEPS;
pub use engine::{Breathing, Engine, Injection};
pub use goal::{Goal, GoalKind, May};
pub use guard::{ClampKind, Guard, Said};
pub use input::{Condition, EmptyMeans, Input};
pub(crate) use input::{choose, number, optional, optional_of_alternator};
pub use installed::{Connection, InstalledAlternator, WhichAlternator};
pub use known::Known;
pub use ladder::{ChargeStep, TooColdOrHot};
pub use loads::{Current, Load, LoadRow, When, typical_loads};
pub use months::{MONTHS, MonthFigures, MonthRow, Months};
pub use packs::{MOST_PACKS, PackManagement, Packs};
pub use price::Price;
pub use questions::{QUESTIONS, Question, is_asked};
pub use regulator::{Regulator, RegulatorKind, SensorPlace};
pub use rule::{Aboard, Rule};
pub use run::Run;
pub use second::{Second, SecondRole};
pub use section::{Field, Section};
pub(crate) use section::{section, sections};
pub use shore::{Rest, Shore};
pub use space::{AfterStop, AirBasis, Space};
pub use sun::{Month, Sun, SunBasis};
pub use way::{StartKept, Way, WayKind};

/// Names one input: its section and its place there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Key {
    /// The section it stands in.
    pub section: SectionId,
    field: u8,
}

/// As its name.
impl Serialize for Key {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(&self.name())
    }
}

impl Key {
    /// Every input, in worksheet order.
    pub fn all() -> impl Iterator<Item = Key> {
        SectionId::ALL.iter().flat_map(|section| section.keys())
    }

    /// The input at a place of its section, such as `Alternator::rated_a`. Ask
    /// [`key!`](crate::key) instead, which takes no place of another section.
    #[doc(hidden)]
    pub const fn at(section: SectionId, place: u8) -> Key {
        Key {
            section,
            field: place,
        }
    }

    /// The input of that name, as [`Key::name`] writes it.
    pub fn named(name: &str) -> Option<Key> {
        SectionId::ALL.iter().find_map(|section| {
            let short = name.strip_prefix(section.prefix())?.strip_prefix('_')?;
            section.keys().find(|key| key.short() == short)
        })
    }

    /// Whether it matters for these inputs; one of an alternator that is not
    /// there does not.
    pub fn applies(self, inputs: &Inputs) -> bool {
        let alternator = match self.section.alternator() {
            None => None,
            Some(which) => match inputs.alternator(which) {
                None => return false,
                there => there,
            },
        };
        match self.condition() {
            Condition::Boat(holds) => holds(inputs),
            Condition::Alternator(holds) => alternator.as_ref().is_some_and(holds),
        }
    }

    /// Its name in links, files and reports: `bank_capacity_ah`.
    pub fn name(self) -> String {
        format!("{}_{}", self.section.prefix(), self.short())
    }
}

impl SectionId {
    /// Its inputs, in order.
    pub fn keys(self) -> impl Iterator<Item = Key> {
        (0..self.count()).map(move |field| Key {
            section: self,
            field: field as u8,
        })
    }
}

sections! {
    /// Every input of a boat but its list of loads.
    Inputs {
        daily: Daily, "The day's use", "What the boat draws from the house bank in a day.";
        sun: Sun, "Solar", "What the panels put back.";
        bank: Bank, "House bank", "The batteries the engine has to fill.";
        packs: Packs, "Packs in parallel", "Lithium packs with a management system each, and what it gives out.";
        way: Way, "Charging arrangement", "How the alternator's current reaches the house bank.";
        alt: Alternator, "Alternator", "The alternator does the work and takes the heat.";
        reg: Regulator, "Regulator", "What limits the alternator, if anything does.";
        two: Second, "Second alternator", "Another alternator on the same engine.";
        alt2: Alternator, "Second alternator: its data", "The same figures for it.";
        eng: Engine, "Engine", "What turns it, heats its air and burns the fuel.";
        space: Space, "Engine space", "The air the alternator has to cool itself with.";
        run: Run, "Charging run", "From where to where the bank is charged.";
        rule: Rule, "Engine start/stop rule", "When the engine is started through the year; used only for the year.";
        cable: Cable, "Cable and fuse", "The runs that carry the current; used only to size cables and fuses.";
        belt: Belt, "Belt", "What turns the alternator, and what it pulls at.";
        belt2: Belt, "Second alternator: its belt", "The same figures for it.";
        guard: Guard, "When the bank disconnects", "What stands between the alternator and the electronics when its battery is suddenly gone.";
        shore: Shore, "Shore power", "What the dock gives.";
        cost: Cost, "Money", "What an hour of engine and a kilowatt-hour in the bank cost.";
        before: Before, "The boat today", "What is aboard before the change; used only for the comparison.";
        goal: Goal, "Cheapest way to a goal", "What you are after, and what may be changed for it.";
        price: Price, "Price list", "What the parts of another arrangement would cost; every figure is yours to change.";
    }
}

impl Inputs {
    /// Sets an input.
    ///
    /// # Errors
    /// Why the field does not take it; nothing is changed then.
    pub fn set(&mut self, key: Key, value: Value) -> Result<(), InputError> {
        let value = key.spec().accept(value)?;
        self.put(key, value);
        Ok(())
    }
}

/// A boat's worksheet.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Worksheet {
    /// What the user calls it.
    pub name: String,
    /// The figures.
    pub inputs: Inputs,
    /// Inputs somebody has vouched for, and how well they are known; all
    /// others are defaults, that is guesses.
    pub known: Known,
    /// The list of loads.
    pub loads: Vec<Load>,
    /// The year by months.
    pub months: Months,
    /// Arrangements of the user's own, to be compared with this one.
    pub arrangements: Vec<Arrangement>,
    /// Steps of the commissioning list that are done, in its order; see
    /// [`Worksheet::tick`]. No link carries them.
    pub done: Vec<String>,
}

impl Worksheet {
    /// Sets an input and marks it as known as well as it usually is.
    ///
    /// # Errors
    /// Why the field does not take it; nothing is changed then.
    pub fn state(&mut self, key: Key, value: Value) -> Result<(), InputError> {
        self.inputs.set(key, value)?;
        if self.known.get(key).is_none() {
            self.known.insert(key, key.spec().usual);
        }
        Ok(())
    }

    /// Puts an input back to its default, a guess.
    pub fn forget(&mut self, key: Key) {
        self.inputs.put(key, key.spec().default());
        self.known.remove(key);
    }

    /// The number an input stands for: the one given, or for an empty field
    /// the figure used instead. `None` for choices and for "none".
    pub fn figure(&self, key: Key) -> Option<f64> {
        match (self.inputs.get(key), key.spec().kind) {
            (Value::Number(number), _) => Some(number),
            (Value::Absent, Kind::Optional { .. }) => match key.empty_means() {
                EmptyMeans::Boat(stands_for) => stands_for(self),
                EmptyMeans::Alternator(stands_for) => {
                    let which = key.section.alternator()?;
                    stands_for(&self.inputs.as_described(which))
                }
            },
            _ => None,
        }
    }

    /// How well an input is known.
    pub fn knowledge(&self, key: Key) -> Confidence {
        self.known.get(key).unwrap_or(Confidence::Guess)
    }

    /// Says how well an input is known; a default that is called a guess is
    /// not said at all.
    pub fn know(&mut self, key: Key, knowledge: Confidence) {
        if knowledge == Confidence::Guess && self.inputs.get(key) == key.spec().default() {
            self.known.remove(key);
        } else {
            self.known.insert(key, knowledge);
        }
    }

    /// Marks what differs from an earlier state of the boat as proposed: who
    /// sent it has not looked aboard.
    pub fn mark_proposed(&mut self, before: &Worksheet) {
        for key in Key::all() {
            let differs = self.inputs.get(key) != before.inputs.get(key);
            if differs && self.is_said(key) && key.spec().is_fact() {
                self.know(key, Confidence::Proposed);
            }
        }
    }

    /// Whether a link or a file has to carry this input.
    pub fn is_said(&self, key: Key) -> bool {
        self.known.get(key).is_some() || self.inputs.get(key) != key.spec().default()
    }
}
