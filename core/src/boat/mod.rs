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
mod generator;
mod goal;
mod guard;
mod house_bank;
mod input;
mod input_key;
mod installed;
mod known;
mod ladder;
mod legs;
mod loads;
mod months;
mod other_sources;
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
mod usual_alternator;
mod way;
mod worksheet;

use crate::schema::{InputError, Value};

pub use crate::key;
pub use alternator::{Alternator, AlternatorVolts, Curve, HotRating, InsulationClass, Plate};
pub use arrangement::Arrangement;
pub(crate) use bank::usual_charge_v;
pub use bank::{Bank, Chemistry, NominalVolts};
pub use battery_link::{LinkLoss, NoLink, RegulatorLink};
pub use before::{Before, OldBattery, OldConnection};
pub use belt::{Belt, BeltKind};
pub use cable::{Cable, Copper, Flag, Insulation, Place as CablePlace};
pub use cost::{Cost, Currency};
pub use daily::{Basis, Daily};
pub use daily_use::{
    DayUse, EngineLoad, RowUse, engine_loads, house_load_a, inverter_wh, mean_draw_a,
    steady_draw_a, steady_use, under_way_load_a,
};
pub(crate) use daily_use::{half_full_v, load_rows, saved, total};
pub use days_aboard::YearAboard;
pub use demo::demo;
#[cfg(test)]
pub(crate) use done::COMMISSIONING_STEPS;
pub use engine::{Breathing, Engine, Injection};
pub use generator::Generator;
pub use goal::{Goal, GoalKind, May};
pub use guard::{ClampKind, Guard, Said};
pub use input::{Condition, EmptyMeans, Input};
pub(crate) use input::{choose, number, optional, optional_of_alternator};
pub use input_key::Key;
pub use installed::{Connection, InstalledAlternator, WhichAlternator};
pub use known::Known;
pub use ladder::{ChargeStep, TooColdOrHot};
pub use legs::{Leg, LegRow, Purpose, usual_legs};
pub use loads::{Current, Drawn, Load, LoadRow, When, typical_loads};
pub use months::{MONTHS, MonthFigures, MonthRow, Months};
pub use other_sources::OtherSources;
pub use packs::{MOST_PACKS, PackManagement, Packs};
pub use price::Price;
pub use questions::{QUESTIONS, Question, is_asked};
pub use regulator::{CapAt, Regulator, RegulatorKind, SensorFailure, SensorPlace};
pub use rule::{Aboard, Rule};
pub use run::Run;
pub use second::{Regulators, Second, SecondRole};
pub use section::{Field, Section};
pub(crate) use section::{section, sections};
pub use shore::{Rest, Shore};
pub use space::{AfterStop, AirBasis, Space};
pub use sun::{Month, Sun, SunBasis};
pub use usual_alternator::CoolingAnchor;
pub(crate) use usual_alternator::{
    HOT_RATED_ANCHOR_SPAN_C, LEAST_COUPLING_W_K, USUAL_EFFICIENCY_PCT,
};
pub(crate) use way::USUAL_CHARGERS_A;
pub use way::{BanksJoined, StartKept, Way, WayKind};
pub use worksheet::Worksheet;

sections! {
    /// Every input of a boat but its list of loads.
    Inputs {
        daily: Daily, "The day's use", "What the boat draws from the house bank in a day.";
        sun: Sun, "Solar and season", "What the panels put back, and where and when you are.";
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
        guard: Guard, "Load dump", "What stands between the alternator and the electronics when its battery is suddenly gone.";
        shore: Shore, "Shore power", "What the dock gives.";
        other: OtherSources, "Other sources", "Wind, and what the water turns; they charge without an engine.";
        genset: Generator, "Generator", "A generator with a mains charger, to charge in place of the engine.";
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
