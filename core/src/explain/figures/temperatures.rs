//! Temperatures: settled, at their highest in the run and after it, and at a
//! minute of it. Each shows the balance it meets.

use crate::analysis::PartTemperatures;
use crate::boat::WhichAlternator;
use crate::explain::boat::Boat;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::balance::balanced;
use crate::explain::instant::{Instant, Part, When};
use crate::physics::sources::{HEAT_OF_AIR, OWN_REASONING};

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
    "alternators.0.hot.winding_c",
    "… winding",
    "Hot, winding",
    When::Hot,
    Part::Winding,
);
pub(super) static HOT_RECTIFIER: Figure = temperature(
    "alternators.0.hot.rectifier_c",
    "… rectifier plate",
    "Hot, rectifier plate",
    When::Hot,
    Part::Rectifier,
);
pub(super) static HOT_CASE: Figure = temperature(
    "alternators.0.hot.case_c",
    "… case",
    "Hot, case",
    When::Hot,
    Part::Case,
);
pub(super) static HOT_AIR: Figure = temperature(
    "alternators.0.hot.air_c",
    "… air of the space",
    "Hot, air of the engine space",
    When::Hot,
    Part::Air,
);
static PEAK_WINDING: Figure = temperature(
    "run.alternators.0.peak.winding_c",
    "Winding",
    "Winding",
    When::Peak(WhichAlternator::First),
    Part::Winding,
);
static PEAK_RECTIFIER: Figure = temperature(
    "run.alternators.0.peak.rectifier_c",
    "Rectifier plate",
    "Rectifier plate",
    When::Peak(WhichAlternator::First),
    Part::Rectifier,
);
static PEAK_CASE: Figure = temperature(
    "run.alternators.0.peak.case_c",
    "Case",
    "Case",
    When::Peak(WhichAlternator::First),
    Part::Case,
);
static PEAK_AIR: Figure = temperature(
    "run.peak_air_c",
    "Air of the space",
    "Air of the space",
    When::Peak(WhichAlternator::First),
    Part::Air,
);

fn has_second(boat: &Boat) -> bool {
    boat.others().next().is_some()
}

static SECOND_WINDING: Figure = temperature(
    "run.alternators.1.peak.winding_c",
    "Second alternator, winding",
    "Second alternator, winding",
    When::Peak(WhichAlternator::Second),
    Part::Winding,
)
.only(has_second);
static SECOND_RECTIFIER: Figure = temperature(
    "run.alternators.1.peak.rectifier_c",
    "… rectifier plate",
    "Second alternator, rectifier plate",
    When::Peak(WhichAlternator::Second),
    Part::Rectifier,
)
.only(has_second);
static SECOND_CASE: Figure = temperature(
    "run.alternators.1.peak.case_c",
    "… case",
    "Second alternator, case",
    When::Peak(WhichAlternator::Second),
    Part::Case,
)
.only(has_second);
static SOAK_RECTIFIER: Figure = temperature(
    "run.alternators.0.soak_peak.rectifier_c",
    "After stopping: rectifier",
    "After stopping: rectifier",
    When::Soak,
    Part::Rectifier,
);
static SOAK_AIR: Figure = temperature(
    "run.soak.air_peak_c",
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
.is(|s| s.report().analyses.run.air_settles_min);

static SOAK_AIR_PEAK_MIN: Figure =
    Figure::new("run.soak.air_peak_min", "… after", "min", 0, |_| {
        Explanation::none("There is no closed formula: the hour after the engine stops is stepped through time, and this is when its air is hottest.")
    })
    .named("After stopping: the air is hottest after")
    .source(OWN_REASONING)
    .is(|s| Some(s.report().analyses.run.soak.air_peak_min));

fn reported(s: &Instant) -> Option<f64> {
    let run = &s.report().analyses.run;
    let at = s.alternator.index();
    let temps: Option<PartTemperatures> = match (s.when, s.part) {
        (When::Soak, Part::Air) => return Some(run.soak.air_peak_c),
        (When::Hot, _) => s.report().analyses.alternators.get(at)?.hot,
        (When::Peak(_), _) => run.alternators.get(at).map(|one| one.peak),
        (When::Soak, _) => run.alternators.get(at).map(|one| one.soak_peak),
        _ => return Some(s.part.of(&s.t)),
    };
    temps.map(|temps| s.part.reported(&temps))
}
