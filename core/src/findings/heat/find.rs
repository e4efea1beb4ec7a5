//! Finds what gets too hot.

use crate::analysis::{AlternatorReport, AlternatorRun, Analyses, RunReport};
use crate::analysis::{NEAR_K, Part, PartLimit, first_passed, nearest, part_limits};
use crate::boat::{
    Chemistry, Connection, Inputs, InstalledAlternator, RegulatorKind, SensorPlace,
    WhichAlternator, Worksheet,
};
use crate::findings::heat::{
    HeatFinding, HeatRemedy, PartTooHot, ROOM_C, SET_POINT_ROOM_K, Settled,
};
use crate::findings::verdict::hot_after_stop;
use crate::findings::{Finding, Severity, add};
use crate::simulation::Limit;

/// A sensor on the case matters from this much below the winding's limit
/// \[K\]. Own reasoning.
const LAG_MATTERS_K: f64 = 12.0;

/// Whether anything gets too hot.
pub(crate) fn heat_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let limits = part_limits(inputs, report);
    for (installed, alternator) in inputs.alternators().zip(&report.alternators) {
        if installed.built_in_on_house() {
            unwatched(&installed, alternator, &limits, found);
        }
    }
    for limit in limits.iter().filter(|limit| limit.margin_k() < 0.0) {
        // What to do is said once for each alternator, with what is worst.
        let own = limits
            .iter()
            .copied()
            .filter(|one| one.alternator == limit.alternator);
        let worst = nearest(&own.collect::<Vec<_>>());
        too_hot(inputs, report, limit, worst == Some(*limit), found);
    }
    near_limit(inputs, &limits, found);
    after_stop(inputs, report, found);
    for (installed, run) in inputs.alternators().zip(&report.run.alternators) {
        if watched_by_case_sensor(&installed) {
            case_sensor(&installed, run, report, found);
        }
    }
}

/// What to do about the heat of an alternator.
pub(in crate::findings) fn remedy(inputs: &Inputs, limit: &PartLimit) -> HeatRemedy {
    let connection = inputs.alternator(limit.alternator).map(|a| a.connection);
    match (inputs.reg.kind, connection) {
        (RegulatorKind::External, _) => HeatRemedy::SetRegulator,
        (RegulatorKind::Internal, Some(Connection::HouseBank)) => HeatRemedy::FitCurrentLimit,
        (RegulatorKind::Internal, Some(Connection::ThroughCharger)) => HeatRemedy::SetCharger,
        (RegulatorKind::Internal, Some(Connection::StartBattery) | None) => {
            HeatRemedy::CoolerAirOrLessLoad
        }
    }
}

/// An alternator on the house bank whose regulator does not limit its temperature.
fn unwatched(
    installed: &InstalledAlternator,
    alternator: &AlternatorReport,
    limits: &[PartLimit],
    found: &mut Vec<Finding>,
) {
    let own = limits
        .iter()
        .copied()
        .filter(|limit| limit.alternator == installed.which);
    let nearest = nearest(&own.collect::<Vec<_>>());
    add(
        found,
        HeatFinding::NothingWatchesHeat {
            alternator: installed.which,
            lithium: installed.boat.bank.chemistry == Chemistry::Lfp,
            settled: alternator.hot.map(|hot| Settled {
                winding_c: hot.winding_c,
                case_c: hot.case_c,
                hot_a: alternator.hot_a,
            }),
            limit_c: Part::Winding.limit_c(installed.alternator),
            margin_k: nearest.map_or(0.0, |limit| limit.margin_k()),
        },
    );
}

/// A part that passes its limit in the run, or would in a longer one.
fn too_hot(
    inputs: &Inputs,
    report: &Analyses,
    limit: &PartLimit,
    worst: bool,
    found: &mut Vec<Finding>,
) {
    let disconnected_first = |after_s| first_passed(&[*limit], &report.trace, after_s).is_none();
    let opening = report.run.opening.as_ref();
    let part = PartTooHot {
        alternator: limit.alternator,
        peak_c: limit.peak_c,
        hottest_c: limit.hottest_c(),
        at_most: limit.at_most,
        limit_c: limit.limit_c,
        after_disconnect: limit.passed()
            && opening.is_some_and(|opening| disconnected_first(opening.after_s)),
        remedy: (worst && !is_told(found, limit.alternator)).then(|| remedy(inputs, limit)),
    };
    add(
        found,
        match limit.part {
            Part::Winding => HeatFinding::WindingTooHot(part),
            Part::Rectifier => HeatFinding::RectifierTooHot(part),
            Part::Case => HeatFinding::CaseTooHot(part),
        },
    );
}

/// Whether a Danger that stands before it says what to do about an alternator.
fn is_told(found: &[Finding], which: WhichAlternator) -> bool {
    found.iter().any(|finding| {
        let Finding::Heat(HeatFinding::NothingWatchesHeat { alternator, .. }) = finding else {
            return false;
        };
        *alternator == which && finding.severity() == Severity::Danger
    })
}

/// The part that comes nearest to its limit without passing it.
fn near_limit(inputs: &Inputs, limits: &[PartLimit], found: &mut Vec<Finding>) {
    let Some(limit) = nearest(limits).filter(|limit| (0.0..NEAR_K).contains(&limit.margin_k()))
    else {
        return;
    };
    // The finding of the regulator's temperature limit says so itself.
    let installed = inputs.alternator(limit.alternator);
    if limit.part == Part::Case && installed.is_some_and(|one| set_point_high(&one)) {
        return;
    }
    add(
        found,
        HeatFinding::NearLimit {
            alternator: limit.alternator,
            part: limit.part,
            hottest_c: limit.hottest_c(),
            at_most: limit.at_most,
            limit_c: limit.limit_c,
            remedy: remedy(inputs, &limit),
        },
    );
}

/// Whether the regulator limits the temperature of its case.
fn watched_by_case_sensor(installed: &InstalledAlternator) -> bool {
    let regulator = installed.regulator();
    regulator.kind == RegulatorKind::External && regulator.sensor == SensorPlace::Case
}

/// Whether the regulator's temperature limit for the case leaves it next to
/// nothing.
fn set_point_high(installed: &InstalledAlternator) -> bool {
    let highest_c = installed.alternator.case_limit_c - SET_POINT_ROOM_K;
    watched_by_case_sensor(installed) && installed.regulator().set_point_c > highest_c
}

/// Whether the regulator held its temperature in the run. What limits the run is
/// what limits the first alternator; another one's case tells of itself.
fn temperature_held(
    installed: &InstalledAlternator,
    run: &AlternatorRun,
    report: &RunReport,
) -> bool {
    let regulator = installed.regulator();
    match installed.which {
        WhichAlternator::First => {
            let mut shares = report.limit_shares.iter();
            shares.any(|share| share.limit == Limit::Temperature)
        }
        WhichAlternator::Second => run.peak.case_c > regulator.set_point_c - regulator.fold_band_k,
    }
}

/// What a sensor on the case does not see, and how high it is set.
fn case_sensor(
    installed: &InstalledAlternator,
    run: &AlternatorRun,
    report: &Analyses,
    found: &mut Vec<Finding>,
) {
    let alternator = installed.which;
    let set_point_c = installed.regulator().set_point_c;
    let winding_c = run.peak.winding_c;
    let limit_c = Part::Winding.limit_c(installed.alternator);
    let held = temperature_held(installed, run, &report.run);
    // What a sensor reads too low is no lag; it has a finding of its own.
    let held_c = set_point_c + installed.regulator().sensor_low_k;
    if held && winding_c > held_c + 15.0 && winding_c > limit_c - LAG_MATTERS_K {
        add(
            found,
            HeatFinding::CaseSensorLags {
                alternator,
                winding_c,
                limit_c,
                set_point_c,
            },
        );
    }
    if set_point_high(installed) {
        add(
            found,
            HeatFinding::SetPointHigh {
                alternator,
                set_point_c,
                limit_c: installed.alternator.case_limit_c,
            },
        );
    }
}

/// The hour after stopping.
fn after_stop(inputs: &Inputs, report: &Analyses, found: &mut Vec<Finding>) {
    let (ran_c, soak) = (report.run.peak_air_c, &report.run.soak);
    if let Some(hot) = hot_after_stop(inputs, report) {
        add(
            found,
            HeatFinding::SoakRectifier {
                alternator: hot.alternator,
                rectifier_c: hot.celsius,
                limit_c: hot.limit_c,
            },
        );
    } else if soak.air_peak_c > ran_c + 10.0 && soak.air_peak_c > ROOM_C {
        add(
            found,
            HeatFinding::SoakAir {
                air_c: soak.air_peak_c,
                after_min: soak.air_peak_min,
                rise_k: soak.air_peak_c - ran_c,
            },
        );
    }
}
