//! Temperatures: settled, at their highest in the run and after it, and at a
//! minute of it. Each shows the balance it meets.

use super::heat::HOT_CARRIED_W;
use super::machine::AIR_W_K;
use super::steps::Step;
use super::terms::told;
use crate::explain::boat::Boat;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::inputs::{engine, space};
use crate::explain::instant::{Instant, Part, When};
use crate::explain::term::Term;
use crate::physics::heat_balance::{
    body_c, body_heat_w, rectifier_c, space_air_c, warming_c, winding_c,
};
use crate::physics::sources::{HEAT_OF_AIR, OWN_REASONING};
use crate::report::{Temps, clock};

pub(super) const SETTLED: &[&Figure] = &[&HOT_WINDING, &HOT_RECTIFIER, &HOT_CASE, &HOT_AIR];

pub(super) const OF_THE_RUN: &[&Figure] = &[
    &PEAK_WINDING,
    &PEAK_RECTIFIER,
    &PEAK_CASE,
    &PEAK_AIR,
    &SECOND_WINDING,
    &SECOND_RECTIFIER,
    &SECOND_CASE,
    &AIR_SETTLES_MIN,
    &SOAK_RECTIFIER,
    &SOAK_AIR,
    &SOAK_AIR_PEAK_MIN,
];

pub(super) const OF_A_MINUTE: &[&Figure] = &[&WINDING, &RECTIFIER, &CASE, &AIR];

/// A temperature by its moment and part.
const fn temperature(
    id: &'static str,
    what: &'static str,
    name: &'static str,
    when: When,
    part: Part,
) -> Figure {
    let figure = Figure::new(id, what, "°C", 0, balanced)
        .named(name)
        .at(when)
        .of(part)
        .is(reported);
    match part {
        Part::Air => figure.source(HEAT_OF_AIR),
        _ => figure,
    }
}

pub(super) static HOT_WINDING: Figure = temperature(
    "machine.hot.winding_c",
    "… winding",
    "Held, hot, winding",
    When::Hot,
    Part::Winding,
);
pub(super) static HOT_RECTIFIER: Figure = temperature(
    "machine.hot.rectifier_c",
    "… rectifier plate",
    "Held, hot, rectifier plate",
    When::Hot,
    Part::Rectifier,
);
pub(super) static HOT_CASE: Figure = temperature(
    "machine.hot.case_c",
    "… case",
    "Held, hot, case",
    When::Hot,
    Part::Case,
);
pub(super) static HOT_AIR: Figure = temperature(
    "machine.hot.air_c",
    "… air of the space",
    "Held, hot, air of the space",
    When::Hot,
    Part::Air,
);
static PEAK_WINDING: Figure = temperature(
    "run.peak.winding_c",
    "Winding",
    "Winding",
    When::Peak,
    Part::Winding,
);
static PEAK_RECTIFIER: Figure = temperature(
    "run.peak.rectifier_c",
    "Rectifier plate",
    "Rectifier plate",
    When::Peak,
    Part::Rectifier,
);
static PEAK_CASE: Figure = temperature("run.peak.case_c", "Case", "Case", When::Peak, Part::Case);
static PEAK_AIR: Figure = temperature(
    "run.peak.air_c",
    "Air of the space",
    "Air of the space",
    When::Peak,
    Part::Air,
);

fn has_second(boat: &Boat) -> bool {
    boat.report.run.second_peak.is_some()
}

static SECOND_WINDING: Figure = temperature(
    "run.second_peak.winding_c",
    "Second alternator, winding",
    "Second alternator, winding",
    When::SecondPeak,
    Part::Winding,
)
.only(has_second);
static SECOND_RECTIFIER: Figure = temperature(
    "run.second_peak.rectifier_c",
    "… rectifier plate",
    "Second alternator, rectifier plate",
    When::SecondPeak,
    Part::Rectifier,
)
.only(has_second);
static SECOND_CASE: Figure = temperature(
    "run.second_peak.case_c",
    "… case",
    "Second alternator, case",
    When::SecondPeak,
    Part::Case,
)
.only(has_second);
static SOAK_RECTIFIER: Figure = temperature(
    "run.soak.peak.rectifier_c",
    "After stopping: rectifier",
    "After stopping: rectifier",
    When::Soak,
    Part::Rectifier,
);
static SOAK_AIR: Figure = temperature(
    "run.soak.peak.air_c",
    "… air of the space",
    "After stopping: air of the space",
    When::Soak,
    Part::Air,
);
pub(super) static WINDING: Figure = temperature(
    "moment.winding_c",
    "Winding",
    "Winding",
    When::Moment,
    Part::Winding,
);
pub(super) static RECTIFIER: Figure = temperature(
    "moment.rectifier_c",
    "Rectifier plate",
    "Rectifier plate",
    When::Moment,
    Part::Rectifier,
);
pub(super) static CASE: Figure =
    temperature("moment.case_c", "Case", "Case", When::Moment, Part::Case);
pub(super) static AIR: Figure = temperature(
    "moment.air_c",
    "Air of the space",
    "Air of the space",
    When::Moment,
    Part::Air,
);

static AIR_SETTLES_MIN: Figure = Figure::new(
    "run.air_settles_min",
    "The air settles after",
    "min",
    0,
    |_| {
        Explanation::none("There is no closed formula: of the run's moments, the first at which the air has covered 95 % of its rise; none when it is still rising at the end.")
            .figures(&[&PEAK_AIR])
    },
)
.source(OWN_REASONING)
.is(|s| s.report().run.air_settles_min);

static SOAK_AIR_PEAK_MIN: Figure =
    Figure::new("run.soak.air_peak_min", "… after", "min", 0, |_| {
        Explanation::none("There is no closed formula: the hour after the engine stops is stepped through time, and this is when its air is hottest.")
    })
    .named("After stopping: the air is hottest after")
    .source(OWN_REASONING)
    .is(|s| Some(s.report().run.soak.air_peak_min));

fn reported(s: &Instant) -> Option<f64> {
    let run = &s.report().run;
    let temps: Option<Temps> = match s.when {
        When::Hot => s.report().machine.hot,
        When::Peak => Some(run.peak),
        When::SecondPeak => run.second_peak,
        When::Soak => Some(run.soak.peak),
        _ => return Some(s.part.of(&s.t)),
    };
    temps.map(|temps| s.part.reported(&temps))
}

/// Why the balance holds.
fn balance(s: &Instant) -> String {
    const STEPPED: &str = "The run is stepped through time; at any moment of it heat in is heat carried away and heat stored.";
    match s.when {
        When::Hot => "Settled: heat in is heat out.".to_string(),
        When::Soak => "The hour after the engine stops is stepped through time: no fan turns, nothing is lost in the alternator, and the block goes on heating the space. This is the balance when it is hottest.".to_string(),
        When::Peak | When::SecondPeak => {
            let after = clock(s.seconds / 60.0);
            format!("The highest of the run's moments, after {after}. {STEPPED}")
        }
        _ => STEPPED.to_string(),
    }
}

fn balanced(s: &Instant) -> Explanation {
    let term = match s.part {
        Part::Air => return air(s),
        Part::Winding => {
            let given = [
                s.step(Step::CopperW),
                s.winding_body(),
                s.temperature(Part::Case),
                s.winding_air(),
                s.inlet(),
                s.stored(),
            ];
            Term::of(winding_c::FORMULA, given)
        }
        Part::Rectifier => {
            let diodes = if s.turning {
                s.step(Step::DiodeW)
            } else {
                Term::Number(0.0)
            };
            let given = [
                diodes,
                s.rectifier_body(),
                s.temperature(Part::Case),
                s.rectifier_air(),
                s.inlet(),
                s.stored(),
            ];
            Term::of(rectifier_c::FORMULA, given)
        }
        Part::Case => {
            let heat = [
                s.step(Step::IronW),
                s.step(Step::FieldW),
                s.step(Step::FanW),
            ];
            let given = [
                Term::of(body_heat_w::FORMULA, heat),
                s.winding_body(),
                s.temperature(Part::Winding),
                s.rectifier_body(),
                s.temperature(Part::Rectifier),
                s.body_air(),
                s.inlet(),
                s.stored(),
            ];
            Term::of(body_c::FORMULA, given)
        }
    };
    let term = if s.number == 1 {
        term.of_second()
    } else {
        term
    };
    Explanation::of(term).note(balance(s))
}

fn air(s: &Instant) -> Explanation {
    if s.turning && s.boat.plant.space.measured_hot_c.is_some() {
        return measured_air(s);
    }
    if s.air_w_k() <= 0.0 {
        return Explanation::none("Nothing carries heat to this air or away from it.");
    }
    let (engine_block, flow) = match s.when {
        When::Hot => (s.input(engine::RUNNING_C), s.figure(&AIR_W_K)),
        When::Soak => (
            told("Engine then", "°C", s.engine_c),
            told(
                "Carried off by air for each kelvin, the engine stopped",
                "W/K",
                s.boat.plant.space.after_w_k,
            ),
        ),
        _ => (told("Engine then", "°C", s.engine_c), s.figure(&AIR_W_K)),
    };
    let given = [
        alternators_heat(s),
        s.input(engine::SURFACE_W_K),
        engine_block,
        flow,
        s.input(space::OUTSIDE_C),
        s.input(space::WALL_W_K),
        s.input(space::CABIN_C),
        s.stored(),
    ];
    let explanation = Explanation::of(Term::of(space_air_c::FORMULA, given)).note(balance(s));
    if s.when == When::Soak {
        explanation.inputs(&[space::BLOWER_AFTER])
    } else {
        explanation
    }
}

fn measured_air(s: &Instant) -> Explanation {
    let hot = s.input(space::HOT_C).symbol("T_hot");
    if s.when == When::Hot {
        return Explanation::of(hot).note("You measured it hot.");
    }
    let given = [
        hot,
        told("At the start", "°C", s.boat.plant.space.start_c),
        told("Time since the start", "min", s.seconds / 60.0),
        s.input(engine::WARM_UP_MIN),
    ];
    Explanation::of(Term::of(warming_c::FORMULA, given))
        .note("You measured it hot; it comes up as the engine warms.")
}

/// Heat that all alternators give the air.
fn alternators_heat(s: &Instant) -> Term {
    let [main_w, second_w] = s.heat_w;
    let name = "Heat the alternator gives the air";
    let main = match s.when {
        When::Hot => s.figure(&HOT_CARRIED_W),
        _ => told(name, "W", main_w),
    };
    let mut all = vec![main.symbol("P_alt")];
    if s.boat.plant.second.is_some() {
        let second = told(
            "Heat the second alternator gives the air then",
            "W",
            second_w,
        );
        all.push(second.symbol("P_alt").of_second());
    }
    Term::Sum(all)
}
