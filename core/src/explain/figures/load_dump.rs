//! When a battery disconnects under load: the spike of each alternator and what a
//! surge suppressor takes of it. A figure's place is its alternator, plus two with
//! the engine at its highest.

use crate::analysis::load_dump::spike::LEAD_BLOCK_OHM;
use crate::analysis::load_dump::{Dump, DumpReport};
use crate::boat::{InstalledAlternator, WhichAlternator, key};
use crate::explain::boat::Boat;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described, maybe};
use crate::physics::dump::{clamp_j, internal_ohm, lead_left_v, peak_v};

/// How many alternators there may be.
const ALTERNATORS: usize = WhichAlternator::ALL.len();

fn is_there(boat: &Boat, place: usize) -> bool {
    boat.report.analyses.load_dump.alternators.len() > place % ALTERNATORS
}

fn has_standard(boat: &Boat, place: usize) -> bool {
    let dump = boat
        .report
        .analyses
        .load_dump
        .alternators
        .get(place % ALTERNATORS);
    dump.is_some_and(|dump| dump.standard_low_v.is_some())
}

/// The alternator that is looked at.
fn report<'a>(s: &Instant<'a>) -> Option<&'a DumpReport> {
    s.report()
        .analyses
        .load_dump
        .alternators
        .get(s.place % ALTERNATORS)
}

/// Its spike at the engine speed that is looked at.
fn spike<'a>(s: &Instant<'a>) -> Option<&'a Dump> {
    let dump = report(s)?;
    Some(if s.place < ALTERNATORS {
        &dump.charging
    } else {
        &dump.top
    })
}

/// The alternator itself.
fn installed<'a>(s: &Instant<'a>) -> InstalledAlternator<'a> {
    s.boat.installed(s.place % ALTERNATORS)
}

fn of(s: &Instant, figures: &'static [Figure; 2 * ALTERNATORS]) -> Term {
    let [first, ..] = figures;
    s.figure(figures.get(s.place).unwrap_or(first))
}

/// A figure of each alternator at both engine speeds.
macro_rules! each_spike {
    ($($figure:tt)*) => {
        at_each_place!(
            [
                0 "load_dump.alternators.0.charging." "Load dump while charging: ",
                1 "load_dump.alternators.1.charging." "Second alternator's load dump while charging: ",
                2 "load_dump.alternators.0.top." "Load dump at the highest engine speed: ",
                3 "load_dump.alternators.1.top." "Second alternator's load dump at the highest engine speed: ",
            ] of Dump, spike;
            $($figure)*
        )
    };
}

static INTERNAL_OHM: [Figure; 4] = each_spike!(
    "internal_ohm",
    "internal resistance",
    "Ω",
    2,
    resistance,
    |dump| dump.internal_ohm,
    is_there
);
static PEAK_V: [Figure; 4] = each_spike!(
    "peak_v",
    "peak without protection",
    "V",
    0,
    peak,
    |dump| dump.peak_v,
    is_there
);
static CLAMP_J: [Figure; 4] = each_spike!(
    "clamp_j",
    "a surge suppressor takes",
    "J",
    0,
    of_our_peak,
    |dump| dump.clamp_j,
    is_there
);
static STANDARD_LOW_J: [Figure; 4] = each_spike!(
    "standard_low_j",
    "a surge suppressor takes of the standard's lowest peak",
    "J",
    0,
    of_lowest,
    |dump| dump.standard_low_j,
    has_standard
);
static STANDARD_HIGH_J: [Figure; 4] = each_spike!(
    "standard_high_j",
    "a surge suppressor takes of the standard's highest peak",
    "J",
    0,
    of_highest,
    |dump| dump.standard_high_j,
    has_standard
);

static LEAD_LEFT_V: [Figure; ALTERNATORS] = [
    Figure::new(
        "load_dump.alternators.0.lead_left_v",
        LEAD_LEFT,
        "V",
        1,
        with_lead,
    )
    .is(|s| Some(report(s)?.lead_left_v))
    .nth(0, is_there),
    Figure::new(
        "load_dump.alternators.1.lead_left_v",
        LEAD_LEFT,
        "V",
        1,
        with_lead,
    )
    .named("Second alternator: a lead battery left on it lets the voltage rise to")
    .is(|s| Some(report(s)?.lead_left_v))
    .nth(1, is_there),
];
const LEAD_LEFT: &str = "A lead battery left on the alternator lets the voltage rise to";

/// Every figure of every alternator.
pub(super) fn all() -> impl Iterator<Item = &'static Figure> {
    [
        &INTERNAL_OHM,
        &PEAK_V,
        &CLAMP_J,
        &STANDARD_LOW_J,
        &STANDARD_HIGH_J,
    ]
    .into_iter()
    .flatten()
    .chain(&LEAD_LEFT_V)
}

fn test_v(s: &Instant) -> Term {
    maybe(
        "Voltage that its output is rated at",
        "V",
        report(s).map(|dump| dump.test_v),
    )
}

fn shaft_rpm(s: &Instant) -> Term {
    maybe(
        "Speed of its shaft then",
        "rpm",
        spike(s).map(|dump| dump.shaft_rpm),
    )
}

fn before_v(s: &Instant) -> Term {
    maybe("Voltage before", "V", spike(s).map(|dump| dump.volts)).symbol("U")
}

fn resistance(s: &Instant) -> Explanation {
    let rated = described("Its rated current", "A", installed(s).alternator.rated_a);
    Explanation::of(Term::of(
        internal_ohm::FORMULA,
        [test_v(s), shaft_rpm(s), rated],
    ))
}

fn peak(s: &Instant) -> Explanation {
    if spike(s).is_none_or(|dump| dump.amperes <= 0.0) {
        return Explanation::of(before_v(s)).note("Nothing flows, so nothing is cut off.");
    }
    let given = [
        test_v(s),
        described(
            "Voltage drop of a diode",
            "V",
            installed(s).alternator.diode_v,
        ),
        shaft_rpm(s),
        maybe(
            "Cut-in speed of its fitted curve",
            "rpm",
            report(s).map(|dump| dump.cut_in_rpm),
        ),
        maybe(
            "Flux, over that of the rating",
            "",
            spike(s).map(|dump| dump.flux),
        ),
        before_v(s),
    ];
    Explanation::of(Term::of(peak_v::FORMULA, given))
        .note("The voltage behind the alternator's reactance stays when the current stops. Iron that saturates keeps the true peak lower: an order of magnitude only.")
}

fn taken(s: &Instant, peak: Term) -> Explanation {
    let given = [
        maybe(
            "Voltage that the surge suppressor lets through",
            "V",
            report(s).map(|dump| dump.clamp_v),
        ),
        peak.symbol("U_peak"),
        before_v(s),
        of(s, &INTERNAL_OHM),
        s.input(key!(guard.decay_s)),
    ];
    Explanation::of(Term::of(clamp_j::FORMULA, given)).note(
        "What it takes while the spike dies away; nothing where the spike stays below its voltage.",
    )
}

fn of_our_peak(s: &Instant) -> Explanation {
    taken(s, of(s, &PEAK_V))
}

fn of_lowest(s: &Instant) -> Explanation {
    let low_v = report(s).and_then(|dump| dump.standard_low_v);
    taken(s, maybe("Lowest peak of the standard's test", "V", low_v))
}

fn of_highest(s: &Instant) -> Explanation {
    let high_v = report(s).and_then(|dump| dump.standard_high_v);
    taken(s, maybe("Highest peak of the standard's test", "V", high_v))
}

fn with_lead(s: &Instant) -> Explanation {
    let given = [
        before_v(s),
        maybe(
            "Current that it goes on taking",
            "A",
            spike(s).map(|dump| dump.amperes),
        ),
        described(
            "Resistance of each 12 V block with its leads, own reasoning",
            "Ω",
            LEAD_BLOCK_OHM,
        ),
        described("12 V blocks of its system", "", installed(s).blocks()),
    ];
    Explanation::of(Term::of(lead_left_v::FORMULA, given))
}
