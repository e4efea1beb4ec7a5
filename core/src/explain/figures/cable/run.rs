//! What a run must carry and may lose, and the short circuit that its fuse must break.

use crate::analysis::cable::{CableRun, Carries, RunCode, cells_ohm};
use crate::boat::key;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::cable::looked_at::{OfRuns, length, of_run, run};
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described, maybe};
use crate::physics::cable::{allowed_v, circular_mils, inverter_a};
use crate::physics::charging::charger_input_a;
use crate::physics::drive::percent;
use crate::physics::fuse::short_circuit_a;

pub(super) static CARRIES_A: OfRuns =
    each_run!("carries_a", "must carry", "A", 0, carries, |run| run
        .carries_a);
pub(super) static ALLOWED_V: OfRuns = each_run!(
    "allowed_v",
    "allowed voltage drop",
    "V",
    2,
    allowed,
    |run| run.allowed_v
);
pub(super) static ALLOWED_PCT: OfRuns = each_run!(
    "allowed_pct",
    "allowed voltage drop, of the nominal voltage",
    "%",
    1,
    allowed_share,
    |run| run.allowed_pct
);
pub(super) static CIRCULAR_MILS: OfRuns = each_run!(
    "circular_mils_from_memory",
    "circular mils",
    "",
    0,
    mils,
    |run| run.circular_mils_from_memory
);

pub(in crate::explain::figures) static SHORT_CIRCUIT_A: Figure = Figure::new(
    "cables.short_circuit_a",
    "A short circuit at the house bank draws",
    "A",
    0,
    |s| {
        let given = [
            described(
                "Voltage of the full bank at rest",
                "V",
                s.inputs().house_bank().rest_v(1.0),
            ),
            described(
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

pub(super) fn carries(s: &Instant) -> Explanation {
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
                described("Voltage it gives at", "V", house_v),
                s.input(key!(way.converter_efficiency_pct)),
                s.input(key!(way.start_v)),
            ];
            Explanation::of(Term::of(charger_input_a::FORMULA, given))
        }
        Carries::ChargerOutput => Explanation::of(s.input(key!(way.converter_a)).symbol("I_out")),
        Carries::MotorFullLoad | Carries::InverterInput { .. } if run.carries_a <= 1.0 => {
            Explanation::none("Nothing is calculated for less than 1 A.")
        }
        Carries::MotorFullLoad => {
            let motor = match run.code {
                RunCode::Windlass => key!(cable.windlass_a),
                _ => key!(cable.thruster_a),
            };
            Explanation::of(s.input(motor).symbol("I_motor"))
        }
        Carries::InverterInput { low_v, .. } => {
            let given = [
                s.input(key!(cable.inverter_w)),
                s.input(key!(daily.inverter_efficiency_pct)),
                described(
                    "Voltage of a low bank, at which an inverter soon stops",
                    "V",
                    low_v,
                ),
            ];
            Explanation::of(Term::of(inverter_a::FORMULA, given))
        }
    }
}

pub(super) fn allowed(s: &Instant) -> Explanation {
    let Some(run) = run(s) else {
        return Explanation::default();
    };
    let blocks = described("12 V blocks of its system", "", blocks(run));
    match run.code {
        RunCode::Alternator | RunCode::SecondAlternator | RunCode::ChargerOut => {
            Explanation::none("In charging leads: what is entered, or 0.3 V for each 12 V.")
                .inputs(&[key!(cable.charge_drop_v)])
        }
        RunCode::Windlass | RunCode::Thruster => {
            let given = [s.input(key!(cable.motor_drop_pct)), blocks];
            Explanation::of(Term::of(allowed_v::FORMULA, given))
        }
        RunCode::ChargerIn | RunCode::Bus | RunCode::Inverter => {
            let given = [s.input(key!(cable.drop_pct)), blocks];
            Explanation::of(Term::of(allowed_v::FORMULA, given))
        }
    }
}

/// 12 V blocks of a run's system.
pub(super) fn blocks(run: &CableRun) -> f64 {
    (100.0 * run.allowed_v / run.allowed_pct / 12.0).round()
}

pub(super) fn allowed_share(s: &Instant) -> Explanation {
    let nominal_v = run(s).map(|run| 12.0 * blocks(run));
    let given = [
        of_run(s, &ALLOWED_V).symbol("U_allowed"),
        maybe("Nominal voltage of its system", "V", nominal_v).symbol("U_nom"),
    ];
    Explanation::of(Term::of(percent::FORMULA, given))
}

pub(super) fn mils(s: &Instant) -> Explanation {
    let given = [of_run(s, &CARRIES_A), length(s), of_run(s, &ALLOWED_V)];
    Explanation::of(Term::of(circular_mils::FORMULA, given))
}
