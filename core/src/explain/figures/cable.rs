//! Cables and fuses: what each run carries and may lose, what its sizes bear. A
//! figure's place is its run, plus the number of runs for the gauge sizes.

use crate::analysis::cable::{CableChoice, CableRun, Carries, RunCode, cells_ohm};
use crate::boat::key;
use crate::explain::boat::Boat;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::terms::{maybe, told};
use crate::explain::instant::Instant;
use crate::explain::term::Term;
use crate::physics::ampacity::{air_factor, ampacity_a, engine_share, note_1};
use crate::physics::cable::{
    allowed_v, circular_mils, copper_c, drop_v, each_a, inverter_a, load_share, spare_pct,
};
use crate::physics::charging::charger_input_a;
use crate::physics::drive::percent;
use crate::physics::fuse::{STRICT_V, least_rating_a, most_rating_a, short_circuit_a};

/// The most runs a boat has.
const RUNS: usize = 6;

fn run_at<'a>(boat: &Boat<'a>, place: usize) -> Option<&'a CableRun> {
    boat.report.analyses.cables.runs.get(place % RUNS)
}

fn choice_at<'a>(boat: &Boat<'a>, place: usize) -> Option<&'a CableChoice> {
    let run = run_at(boat, place)?;
    if place < RUNS {
        run.metric.as_ref()
    } else {
        run.gauge.as_ref()
    }
}

fn is_there(boat: &Boat, place: usize) -> bool {
    run_at(boat, place).is_some()
}

fn is_chosen(boat: &Boat, place: usize) -> bool {
    choice_at(boat, place).is_some()
}

fn run<'a>(s: &Instant<'a>) -> Option<&'a CableRun> {
    run_at(s.boat, s.place)
}

fn choice<'a>(s: &Instant<'a>) -> Option<&'a CableChoice> {
    choice_at(s.boat, s.place)
}

/// A figure of each run.
macro_rules! each_run {
    ($($figure:tt)*) => {
        at_each_place!(
            [
                0 "cables.runs.0." "Cable run 0: ",
                1 "cables.runs.1." "Cable run 1: ",
                2 "cables.runs.2." "Cable run 2: ",
                3 "cables.runs.3." "Cable run 3: ",
                4 "cables.runs.4." "Cable run 4: ",
                5 "cables.runs.5." "Cable run 5: ",
            ] of CableRun, run;
            $($figure)*, is_there
        )
    };
}

/// A figure of each run's metric and gauge size.
macro_rules! each_choice {
    ($($figure:tt)*) => {
        at_each_place!(
            [
                0 "cables.runs.0.metric." "Cable: ",
                1 "cables.runs.1.metric." "Cable: ",
                2 "cables.runs.2.metric." "Cable: ",
                3 "cables.runs.3.metric." "Cable: ",
                4 "cables.runs.4.metric." "Cable: ",
                5 "cables.runs.5.metric." "Cable: ",
                6 "cables.runs.0.gauge." "Cable: ",
                7 "cables.runs.1.gauge." "Cable: ",
                8 "cables.runs.2.gauge." "Cable: ",
                9 "cables.runs.3.gauge." "Cable: ",
                10 "cables.runs.4.gauge." "Cable: ",
                11 "cables.runs.5.gauge." "Cable: ",
            ] of CableChoice, choice;
            $($figure)*, is_chosen
        )
    };
}

type OfRuns = [Figure; RUNS];
type OfChoices = [Figure; 2 * RUNS];

static CARRIES_A: OfRuns = each_run!("carries_a", "must carry", "A", 0, carries, |run| run
    .carries_a);
static ALLOWED_V: OfRuns = each_run!(
    "allowed_v",
    "allowed voltage drop",
    "V",
    2,
    allowed,
    |run| run.allowed_v
);
static ALLOWED_PCT: OfRuns = each_run!(
    "allowed_pct",
    "allowed voltage drop, of the nominal voltage",
    "%",
    1,
    allowed_share,
    |run| run.allowed_pct
);
static CIRCULAR_MILS: OfRuns = each_run!(
    "circular_mils_from_memory",
    "circular mils",
    "",
    0,
    mils,
    |run| run.circular_mils_from_memory
);

static AMPACITY_A: OfChoices =
    each_choice!("ampacity_a", "ampacity", "A", 0, ampacity, |choice| choice
        .ampacity_a);
static SPARE_PCT: OfChoices =
    each_choice!("spare_pct", "ampacity to spare", "%", 0, spare, |choice| {
        choice.spare_pct
    });
static COPPER_C: OfChoices =
    each_choice!("copper_c", "copper gets", "°C", 0, copper, |choice| choice
        .copper_c);
static DROP_V: OfChoices = each_choice!("drop_v", "voltage drop", "V", 2, drop_along, |choice| {
    choice.drop_v
});
static SPARE_V: OfChoices = each_choice!(
    "spare_v",
    "voltage drop to spare",
    "V",
    2,
    spare_drop,
    |choice| choice.spare_v
);
static FUSE_LEAST_A: OfChoices = each_choice!(
    "fuse_least_a",
    "least rating of its fuse",
    "A",
    0,
    fuse_least,
    |choice| choice.fuse_least_a
);
static FUSE_MOST_A: OfChoices = each_choice!(
    "fuse_most_a",
    "largest rating of its fuse",
    "A",
    0,
    fuse_most,
    |choice| choice.fuse_most_a
);

static SHORT_CIRCUIT_A: Figure = Figure::new(
    "cables.short_circuit_a",
    "A short circuit at the house bank draws",
    "A",
    0,
    |s| {
        let given = [
            told(
                "Voltage of the full bank at rest",
                "V",
                s.inputs().house_bank().rest_v(1.0),
            ),
            told(
                "What its cells resist a short circuit with",
                "Ω",
                cells_ohm(s.inputs()),
            ),
            Term::Number(0.0),
        ];
        Explanation::of(Term::of(short_circuit_a::FORMULA, given))
            .note("Right at the posts, its cells warm and full: nothing but their own resistance.")
    },
)
.is(|s| Some(s.report().analyses.cables.short_circuit_a));

/// Every figure of every run.
pub(super) fn all() -> impl Iterator<Item = &'static Figure> {
    let of_runs = [&CARRIES_A, &ALLOWED_V, &ALLOWED_PCT, &CIRCULAR_MILS];
    let of_choices = [
        &AMPACITY_A,
        &SPARE_PCT,
        &COPPER_C,
        &DROP_V,
        &SPARE_V,
        &FUSE_LEAST_A,
        &FUSE_MOST_A,
    ];
    std::iter::once(&SHORT_CIRCUIT_A)
        .chain(of_runs.into_iter().flatten())
        .chain(of_choices.into_iter().flatten())
}

fn of_run(s: &Instant, figures: &'static OfRuns) -> Term {
    let [first, ..] = figures;
    s.figure(figures.get(s.place % RUNS).unwrap_or(first))
}

fn of_choice(s: &Instant, figures: &'static OfChoices) -> Term {
    let [first, ..] = figures;
    s.figure(figures.get(s.place).unwrap_or(first))
}

fn carries(s: &Instant) -> Explanation {
    let Some(run) = run(s) else {
        return Explanation::default();
    };
    match run.carries {
        Carries::ColdFullField { .. } => Explanation::none(
            "What the alternator gives cold and at full field with the engine at its highest; nothing holds it back that could not fail.",
        ),
        Carries::Rating => Explanation::none(
            "The alternator's rating: at this speed it is too slow to give anything.",
        ),
        Carries::PeakHouseLoad => Explanation::none("The peak house load that is entered.")
            .inputs(&[key!(cable.bus_peak_a)]),
        Carries::AssumedPeakHouseLoad => {
            Explanation::none("All direct-current loads of the list at once, at least 50 A.")
        }
        Carries::ChargerInput { house_v, .. } => {
            let given = [
                s.input(key!(way.converter_a)),
                told("Voltage it gives at", "V", house_v),
                s.input(key!(way.converter_efficiency_pct)),
                s.input(key!(way.start_v)),
            ];
            Explanation::of(Term::of(charger_input_a::FORMULA, given))
        }
        Carries::ChargerOutput => Explanation::of(s.input(key!(way.converter_a)).symbol("I_out")),
        Carries::InverterInput { low_v, .. } => {
            let given = [
                s.input(key!(cable.inverter_w)),
                s.input(key!(daily.inverter_efficiency_pct)),
                told(
                    "Voltage of a low bank, at which an inverter soon stops",
                    "V",
                    low_v,
                ),
            ];
            if run.carries_a <= 1.0 {
                return Explanation::none("Nothing is calculated for less than 1 A.");
            }
            Explanation::of(Term::of(inverter_a::FORMULA, given))
        }
    }
}

fn allowed(s: &Instant) -> Explanation {
    let Some(run) = run(s) else {
        return Explanation::default();
    };
    let blocks = told("12 V blocks of its system", "", blocks(run));
    match run.code {
        RunCode::Alternator | RunCode::SecondAlternator | RunCode::ChargerOut => {
            Explanation::none("In charging leads: what is entered, or 0.3 V for each 12 V.")
                .inputs(&[key!(cable.charge_drop_v)])
        }
        RunCode::ChargerIn | RunCode::Bus | RunCode::Inverter => {
            let given = [s.input(key!(cable.drop_pct)), blocks];
            Explanation::of(Term::of(allowed_v::FORMULA, given))
        }
    }
}

/// 12 V blocks of a run's system.
fn blocks(run: &CableRun) -> f64 {
    (100.0 * run.allowed_v / run.allowed_pct / 12.0).round()
}

fn allowed_share(s: &Instant) -> Explanation {
    let nominal_v = run(s).map(|run| 12.0 * blocks(run));
    let given = [
        of_run(s, &ALLOWED_V).symbol("U_allowed"),
        maybe("Nominal voltage of its system", "V", nominal_v).symbol("U_nom"),
    ];
    Explanation::of(Term::of(percent::FORMULA, given))
}

fn length(s: &Instant) -> Term {
    maybe("Length one way", "m", run(s).map(|run| run.length_m))
}

fn mils(s: &Instant) -> Explanation {
    let given = [of_run(s, &CARRIES_A), length(s), of_run(s, &ALLOWED_V)];
    Explanation::of(Term::of(circular_mils::FORMULA, given))
}

fn air(s: &Instant) -> Term {
    maybe("Air along the cable", "°C", run(s).map(|run| run.air_c))
}

fn rated(s: &Instant) -> Term {
    let rated_c = s.report().analyses.cables.insulation_c;
    told("What its insulation is rated for", "°C", rated_c)
}

/// What each cable carries.
fn each(s: &Instant) -> Term {
    let cables = choice(s).map(|choice| f64::from(choice.cables));
    if cables == Some(1.0) {
        return of_run(s, &CARRIES_A).symbol("I");
    }
    let given = [
        of_run(s, &CARRIES_A),
        maybe("Cables side by side", "", cables),
    ];
    Term::of(each_a::FORMULA, given)
}

fn ampacity(s: &Instant) -> Explanation {
    let in_engine_space = run(s).is_some_and(|run| run.engine_space);
    let factor = if in_engine_space {
        let note = note_1(s.report().analyses.cables.insulation_c);
        let note = told(
            "Share that note 1 of the table leaves in engine spaces",
            "",
            note,
        );
        Term::of(engine_share::FORMULA, [rated(s), air(s), note])
    } else {
        Term::of(air_factor::FORMULA, [rated(s), air(s)])
    };
    let table_a = choice(s).map(|choice| choice.table_a);
    let table = maybe("What the table gives it in air of 30 °C", "A", table_a);
    Explanation::of(Term::of(ampacity_a::FORMULA, [factor, table]))
}

fn spare(s: &Instant) -> Explanation {
    let given = [of_choice(s, &AMPACITY_A), each(s)];
    Explanation::of(Term::of(spare_pct::FORMULA, given))
}

fn copper(s: &Instant) -> Explanation {
    let share = Term::of(load_share::FORMULA, [each(s), of_choice(s, &AMPACITY_A)]);
    Explanation::of(Term::of(copper_c::FORMULA, [air(s), rated(s), share]))
}

fn drop_along(s: &Instant) -> Explanation {
    let ohm_km = choice(s).map(|choice| choice.ohm_km);
    let given = [
        length(s),
        each(s),
        maybe("Resistance of one cable at 20 °C", "Ω/km", ohm_km),
        of_choice(s, &COPPER_C),
    ];
    Explanation::of(Term::of(drop_v::FORMULA, given)).note("Out and back.")
}

fn spare_drop(s: &Instant) -> Explanation {
    let allowed = of_run(s, &ALLOWED_V).symbol("U_allowed");
    Explanation::of(allowed.less(of_choice(s, &DROP_V).symbol("U_drop")))
}

fn fuse_least(s: &Instant) -> Explanation {
    Explanation::of(Term::of(least_rating_a::FORMULA, [each(s)]))
        .note("A quarter above the current, so that it does not age and open by itself.")
}

fn fuse_most(s: &Instant) -> Explanation {
    if run(s).is_some_and(|run| run.fuse_v >= STRICT_V) {
        return Explanation::none(
            "From 50 V on no more than the cable's ampacity, or the next rating sold above it.",
        )
        .figures(&[]);
    }
    Explanation::of(Term::of(
        most_rating_a::FORMULA,
        [of_choice(s, &AMPACITY_A)],
    ))
}
