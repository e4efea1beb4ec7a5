//! What formulas are given, as it is at an instant.

use crate::boat::{Inputs, Key, key};
use crate::explain::figure::Figure;
use crate::explain::figures::bank::BANK_V;
use crate::explain::figures::curve::SHAFT_RPM;
use crate::explain::figures::heat;
use crate::explain::figures::run::HOUSE_LOAD_A;
use crate::explain::figures::step::Step;
use crate::explain::figures::steps;
use crate::explain::figures::temperatures;
use crate::explain::figures::to_body;
use crate::explain::instant::{Instant, Part, When};
use crate::explain::term::{Term, described};
use crate::explain::used::Used;
use crate::physics::ageing::{aged_ah, aged_ohm_ah};
use crate::physics::charging::charger_input_a;
use crate::report::Report;

impl<'a> Instant<'a> {
    /// The report that is explained.
    pub(super) fn report(&self) -> &'a Report {
        self.boat.report
    }

    /// The boat's inputs.
    pub(super) fn inputs(&self) -> &Inputs {
        self.boat.inputs()
    }

    /// An input.
    pub(super) fn input(&self, key: Key) -> Term {
        Term::Figure(Used::input(self.boat.sheet, key))
    }

    /// The bank's capacity at its age.
    pub(super) fn bank_ah(&self) -> Term {
        let new = self.input(key!(bank.capacity_ah));
        let age = self.input(key!(bank.age_years));
        match self.inputs().bank.age_years > 0.0 {
            true => Term::of(
                aged_ah::FORMULA,
                [new, self.input(key!(bank.fade_pct)), age],
            ),
            false => new,
        }
    }

    /// What its lithium cells resist at their age.
    pub(super) fn cell_ohm_ah(&self) -> Term {
        let new = self.input(key!(bank.resistance_ohm_ah));
        let age = self.input(key!(bank.age_years));
        match self.inputs().bank.age_years > 0.0 {
            true => Term::of(
                aged_ohm_ah::FORMULA,
                [new, self.input(key!(bank.rise_pct)), age],
            ),
            false => new,
        }
    }

    /// Another figure that is explained.
    pub(super) fn figure(&self, figure: &'static Figure) -> Term {
        Term::Figure(figure.used(self))
    }

    /// A figure that is explained where it is the first alternator's; only described
    /// in words of another.
    fn of_first(&self, figure: &'static Figure) -> Term {
        let mut used = figure.used_here(self);
        used.working = used.working.filter(|_| self.is_first());
        Term::Figure(used)
    }

    /// A step on the way to this moment's currents and losses.
    pub(super) fn step(&self, step: Step) -> Term {
        let (figure, own) = steps::figure(self.when, step);
        let mut used = figure.used_here(self);
        used.working = used.working.filter(|_| own && self.is_first());
        Term::Figure(used)
    }

    /// A temperature of the alternator that is looked at, or of the air.
    pub(super) fn temperature(&self, part: Part) -> Term {
        let (name, settled, now) = match part {
            Part::Winding => (
                "Winding",
                &temperatures::HOT_WINDING,
                &temperatures::WINDING,
            ),
            Part::Case => ("Body", &temperatures::HOT_CASE, &temperatures::CASE),
            Part::Rectifier => (
                "Rectifier plate",
                &temperatures::HOT_RECTIFIER,
                &temperatures::RECTIFIER,
            ),
            Part::Air => (
                "Air of the space",
                &temperatures::HOT_AIR,
                &temperatures::AIR,
            ),
        };
        let figure = match self.when {
            When::Hot => Some(settled),
            When::Moment => Some(now),
            _ => None,
        };
        let mut used = Used::described(name, "°C", part.of(&self.t));
        used.working = figure.map(|figure| figure.id).filter(|_| self.is_first());
        Term::Figure(used)
    }

    /// Air that the alternator draws in.
    pub(super) fn inlet(&self) -> Term {
        let mut used = Used::described("Air it draws in", "°C", self.network.inlet_c(&self.t));
        let explained = self.when == When::Hot && self.is_first();
        used.working = explained.then_some(heat::HOT_INLET.id);
        Term::Figure(used)
    }

    /// Winding to air.
    pub(super) fn winding_air(&self) -> Term {
        self.of_first(&heat::WINDING_AIR)
    }

    /// Body to air.
    pub(super) fn body_air(&self) -> Term {
        self.of_first(&heat::BODY_AIR)
    }

    /// Rectifier to air.
    pub(super) fn rectifier_air(&self) -> Term {
        self.of_first(&heat::RECTIFIER_AIR)
    }

    /// Winding to body.
    pub(super) fn winding_body(&self) -> Term {
        self.of_first(&to_body::WINDING_BODY)
    }

    /// Rectifier to body.
    pub(super) fn rectifier_body(&self) -> Term {
        self.of_first(&to_body::RECTIFIER_BODY)
    }

    /// The shaft speed of the alternator that is looked at.
    pub(super) fn shaft_rpm(&self) -> Term {
        self.figure(&SHAFT_RPM)
    }

    /// Heat that goes into warming the part that is looked at.
    pub(super) fn stored(&self) -> Term {
        let stored_w = self.stored_w();
        if stored_w > 0.0 {
            described("Heat that goes into warming it further then", "W", stored_w)
        } else if stored_w < 0.0 {
            let given = described("Heat it gives up by cooling then", "W", -stored_w);
            Term::Number(0.0).less(given.symbol("P_stored"))
        } else {
            Term::Number(0.0)
        }
    }

    /// What the house draws, and what the start battery takes through a DC-DC
    /// charger from the house bank.
    pub(super) fn drawn(&self) -> Term {
        let mut all = vec![self.figure(&HOUSE_LOAD_A).symbol("I_house")];
        let switched_a = self.boat.plant.engine_load_a(self.seconds);
        if switched_a > 0.0 {
            let name = "Loads that run only with the engine, then";
            all.push(described(name, "A", switched_a).symbol("I_switched"));
        }
        if self.boat.plant.back_a > 0.0 {
            all.push(Term::of(
                charger_input_a::FORMULA,
                [
                    self.input(key!(way.services_a)).symbol("I_serv"),
                    self.input(key!(way.start_v)).symbol("V_start"),
                    self.input(key!(way.converter_efficiency_pct)),
                    self.figure(&BANK_V).symbol("V"),
                ],
            ));
        }
        Term::Sum(all)
    }

    /// The voltage at the first alternator.
    pub(super) fn own_volts(&self) -> Term {
        let volts = self.moment.flow.outputs[0].volts;
        if volts == self.inputs().way.start_v {
            self.input(key!(way.start_v)).symbol("V_start")
        } else {
            described("Voltage at the alternator then", "V", volts).symbol("V")
        }
    }
}
