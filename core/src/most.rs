//! The most each alternator gives and takes: cold, with the bank low, at the
//! charging speed and with the engine at its highest. Belts and what happens
//! when the battery goes are reckoned for these.

use crate::charge::plant::{MachineState, Moment, Output, Plant};
use crate::charge::unit::Unit;
use crate::energy::house_load_a;
use crate::physics::losses::Losses;
use crate::report::Report;
use crate::worksheet::{Inputs, SecondRole, WayKind, Worksheet};

/// One machine at one engine speed.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Most {
    pub(crate) engine_rpm: f64,
    pub(crate) shaft_rpm: f64,
    pub(crate) amperes: f64,
    pub(crate) volts: f64,
    pub(crate) shaft_w: f64,
    /// Flux over that of the rating.
    pub(crate) flux: f64,
}

/// One machine at both speeds, and when its bank goes.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Machine {
    /// Whether it is the second one.
    pub(crate) second: bool,
    /// The worksheet as this machine sees it.
    pub(crate) seen: Inputs,
    /// Speed its output curve begins at \[rpm\].
    pub(crate) zero_rpm: f64,
    /// In the run: its peak there.
    pub(crate) charging: Most,
    /// With the engine at its highest.
    pub(crate) top: Most,
    /// When the bank's management system opens in the run; none where it does
    /// not, and for an alternator that does not lie on that bank.
    pub(crate) opening: Option<Most>,
}

impl Machine {
    /// What to call it.
    pub(crate) fn name(&self) -> &'static str {
        called(self.second)
    }
}

/// What a machine is called: the first or the second one.
pub(crate) const fn called(second: bool) -> &'static str {
    if second {
        "second alternator"
    } else {
        "alternator"
    }
}

/// Long after any slow start \[s\].
const LATE_S: f64 = 1e9;

/// Every alternator of the boat.
pub(crate) fn machines(sheet: &Worksheet, report: &Report) -> Vec<Machine> {
    let inputs = &sheet.inputs;
    let load_a = house_load_a(sheet);
    let plant = Plant::new(inputs, load_a);
    let fast = Plant::at_engine_rpm(inputs, load_a, inputs.eng.top_rpm);
    let from = inputs.run.from_pct / 100.0;
    let (here, top) = (cold(&plant, from), cold(&fast, from));
    // What the run really came to: a slow start spares the belt.
    let ran_a = report.run.series.iter().map(|m| m.alternator_a);
    let ran_a = ran_a.fold(0.0, f64::max);
    let part_w = part(report.run.peak_shaft_w, here.shaft_w());
    let part_a = part(ran_a, plant.charging_a(&here.flow));
    // What flows when the management system opens, shared as in the run.
    let opening_a = report.run.opening.map(|opening| opening.alternator_a);
    let opening = |charging: &Most, unit: &Unit| {
        let part_a = part(opening_a?, plant.charging_a(&here.flow));
        Some((*charging).scaled(unit, part_a, part_a))
    };
    let both = inputs.two.role == SecondRole::House;
    let rpm = (inputs.eng.rpm, inputs.eng.top_rpm);
    let first = most(&plant.main, rpm.0, &here.flow.main, &here.losses);
    let mut machines = vec![Machine {
        second: false,
        seen: *inputs,
        zero_rpm: plant.main.curve.zero_rpm,
        charging: first.scaled(&plant.main, part_a, part_w),
        top: most(&fast.main, rpm.1, &top.flow.main, &top.losses),
        opening: opening(&first, &plant.main).filter(|_| inputs.way.kind == WayKind::Direct),
    }];
    if let (Some(seen), Some(second), Some(quick)) = (inputs.as_second(), plant.second, fast.second)
    {
        let part_a = if both { part_a } else { 1.0 };
        let unit = &second.unit;
        let own = most(unit, rpm.0, &here.flow.second, &here.second_losses);
        machines.push(Machine {
            second: true,
            seen,
            zero_rpm: unit.curve.zero_rpm,
            charging: own.scaled(unit, part_a, part_w),
            top: most(&quick.unit, rpm.1, &top.flow.second, &top.second_losses),
            opening: opening(&own, unit).filter(|_| both),
        });
    }
    machines
}

/// Part of a figure; the whole of one that is nothing.
fn part(of: f64, whole: f64) -> f64 {
    if whole > 0.0 { of / whole } else { 1.0 }
}

/// Everything cold and the field let up.
fn cold(plant: &Plant, charge: f64) -> Moment {
    let resting = MachineState::resting(plant.start_c);
    plant.moment(LATE_S, charge, &resting, &resting)
}

fn most(unit: &Unit, engine_rpm: f64, output: &Output, losses: &Losses) -> Most {
    Most {
        engine_rpm,
        shaft_rpm: unit.shaft_rpm,
        amperes: output.amperes,
        volts: output.volts,
        shaft_w: output.amperes * output.volts + losses.total_w(),
        flux: 0.0,
    }
    .scaled(unit, 1.0, 1.0)
}

impl Most {
    /// With other current and power, and the flux that goes with them.
    fn scaled(mut self, unit: &Unit, amperes: f64, watts: f64) -> Most {
        // Nothing is never minus nought.
        self.amperes = (self.amperes * amperes).max(0.0) + 0.0;
        self.shaft_w *= watts;
        self.flux = unit.curve_here.flux_square(self.amperes, self.volts).sqrt();
        self
    }
}
