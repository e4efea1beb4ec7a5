//! One alternator of the boat, with all that belongs to it: what it is, its
//! belt, the regulator it follows, and where its cable leads. What is asked of
//! an alternator is asked of it here, whichever of the engine's it is.

use serde::Serialize;

use crate::boat::{
    Alternator, Belt, Inputs, Key, Regulator, RegulatorKind, SecondRole, SectionId, WayKind,
};

/// Which of the engine's alternators.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum WhichAlternator {
    /// The one that every boat has.
    First,
    /// Another one on the same engine.
    Second,
}

impl WhichAlternator {
    /// All that a worksheet can describe, in order.
    pub const ALL: [WhichAlternator; 2] = [WhichAlternator::First, WhichAlternator::Second];

    /// Its place in every list of a boat's alternators, from 0.
    pub const fn index(self) -> usize {
        match self {
            WhichAlternator::First => 0,
            WhichAlternator::Second => 1,
        }
    }

    /// The section of the worksheet that describes the alternator.
    const fn alternator_section(self) -> SectionId {
        match self {
            WhichAlternator::First => SectionId::alt,
            WhichAlternator::Second => SectionId::alt2,
        }
    }

    /// The section that describes its belt.
    const fn belt_section(self) -> SectionId {
        match self {
            WhichAlternator::First => SectionId::belt,
            WhichAlternator::Second => SectionId::belt2,
        }
    }

    /// Names an input of the alternator by its place, such as `Alternator::rated_a`.
    pub(crate) const fn key(self, place: u8) -> Key {
        Key::at(self.alternator_section(), place)
    }

    /// Names an input of its belt by its place, such as `Belt::kind`.
    pub(crate) const fn belt_key(self, place: u8) -> Key {
        Key::at(self.belt_section(), place)
    }
}

impl SectionId {
    /// The alternator that the section is about; none where it is about the boat.
    pub const fn alternator(self) -> Option<WhichAlternator> {
        match self {
            SectionId::alt | SectionId::belt => Some(WhichAlternator::First),
            SectionId::alt2 | SectionId::belt2 => Some(WhichAlternator::Second),
            _ => None,
        }
    }
}

/// Where an alternator's cable leads, and what it charges from there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Connection {
    /// To the house bank.
    HouseBank,
    /// To the start battery, and from there through the DC-DC charger to the
    /// house bank.
    ThroughCharger,
    /// To the start battery, which it keeps charged and no more.
    StartBattery,
}

impl Connection {
    /// Whether it charges the house bank, directly or through the DC-DC charger.
    pub const fn charges_house(self) -> bool {
        matches!(self, Connection::HouseBank | Connection::ThroughCharger)
    }

    /// Whether its cable leads to the house bank.
    pub const fn on_house(self) -> bool {
        matches!(self, Connection::HouseBank)
    }
}

/// One alternator of a boat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InstalledAlternator<'a> {
    /// Which one.
    pub which: WhichAlternator,
    /// What it is.
    pub alternator: &'a Alternator,
    /// What turns it.
    pub belt: &'a Belt,
    /// Where its cable leads.
    pub connection: Connection,
    /// The boat it is on.
    pub boat: &'a Inputs,
}

impl InstalledAlternator<'_> {
    /// The regulator it follows: the alternators of a boat have the same.
    pub fn regulator(&self) -> &Regulator {
        &self.boat.reg
    }

    /// How many 12 V blocks the battery has that its cable leads to: the house
    /// bank or the start battery.
    pub fn battery_blocks(&self) -> f64 {
        if self.connection.on_house() {
            self.boat.bank.nominal_v.blocks()
        } else {
            self.boat.start_blocks()
        }
    }

    /// Whether it is of the voltage of the battery its cable leads to. One that
    /// is not charges nothing, or the battery far too high: it must not be
    /// connected.
    pub fn fits(&self) -> bool {
        self.blocks() == self.battery_blocks()
    }

    /// Whether its built-in regulator decides the voltage of the house bank.
    pub fn built_in_on_house(&self) -> bool {
        self.regulator().kind == RegulatorKind::Internal && self.connection.on_house()
    }

    /// Names an input of it by its place, such as `Alternator::rated_a`.
    pub(crate) const fn key(&self, place: u8) -> Key {
        self.which.key(place)
    }
}

impl Inputs {
    /// Every alternator on the engine, the first one first.
    pub fn alternators(&self) -> impl Iterator<Item = InstalledAlternator<'_>> + Clone {
        WhichAlternator::ALL
            .into_iter()
            .filter_map(|which| self.alternator(which))
    }

    /// The alternator that every boat has.
    pub fn first_alternator(&self) -> InstalledAlternator<'_> {
        self.as_described(WhichAlternator::First)
    }

    /// One of the alternators; none where the boat has no such one.
    pub fn alternator(&self, which: WhichAlternator) -> Option<InstalledAlternator<'_>> {
        let there = match which {
            WhichAlternator::First => true,
            WhichAlternator::Second => self.two.role != SecondRole::None,
        };
        there.then(|| self.as_described(which))
    }

    /// An alternator as the worksheet describes it, also where the boat has no
    /// such one: it would lie on the house bank then.
    pub(crate) fn as_described(&self, which: WhichAlternator) -> InstalledAlternator<'_> {
        let (alternator, belt, connection) = match which {
            WhichAlternator::First => (
                &self.alt,
                &self.belt,
                match self.way.kind {
                    WayKind::Direct => Connection::HouseBank,
                    WayKind::Converter => Connection::ThroughCharger,
                },
            ),
            WhichAlternator::Second => (
                &self.alt2,
                &self.belt2,
                match self.two.role {
                    SecondRole::None | SecondRole::House => Connection::HouseBank,
                    SecondRole::Start => Connection::StartBattery,
                },
            ),
        };
        InstalledAlternator {
            which,
            alternator,
            belt,
            connection,
            boat: self,
        }
    }

    /// What one of the alternators is, to change it.
    pub(crate) fn alternator_mut(&mut self, which: WhichAlternator) -> &mut Alternator {
        match which {
            WhichAlternator::First => &mut self.alt,
            WhichAlternator::Second => &mut self.alt2,
        }
    }
}
