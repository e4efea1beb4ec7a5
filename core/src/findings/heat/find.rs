//! Finds what gets too hot.

use crate::analysis::Analyses;
use crate::analysis::{NEAR_K, Part, PartLimit, first_passed, nearest, part_limits};
use crate::boat::{Chemistry, Connection, Inputs, RegulatorKind, SensorPlace, Worksheet};
use crate::findings::heat::{
    HeatFinding, HeatRemedy, PartTooHot, ROOM_C, SET_POINT_ROOM_K, Settled,
};
use crate::findings::verdict::hot_after_stop;
use crate::findings::{Finding, add};
use crate::simulation::Limit;

/// A sensor on the case matters from this much below the winding's limit
/// \[K\]. Own reasoning.
const LAG_MATTERS_K: f64 = 15.0;

/// Whether anything gets too hot.
pub(crate) fn heat_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    let limits = part_limits(inputs, report);
    if inputs.reg.kind == RegulatorKind::Internal && inputs.on_house() {
        unwatched(inputs, report, &limits, found);
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
    if inputs.reg.kind == RegulatorKind::External && inputs.reg.sensor == SensorPlace::Case {
        case_sensor(inputs, report, found);
    }
}

/// What to do about the heat of an alternator.
fn remedy(inputs: &Inputs, limit: &PartLimit) -> HeatRemedy {
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

/// An alternator straight on the house bank whose regulator does not limit its
/// temperature.
fn unwatched(inputs: &Inputs, report: &Analyses, limits: &[PartLimit], found: &mut Vec<Finding>) {
    let each = inputs.alternators().zip(&report.alternators);
    let mut on_house = each.filter(|(installed, _)| installed.connection.on_house());
    let Some((installed, alternator)) = on_house.next() else {
        return;
    };
    add(
        found,
        HeatFinding::NothingWatchesHeat {
            alternator: installed.which,
            lithium: inputs.bank.chemistry == Chemistry::Lfp,
            settled: alternator.hot.map(|hot| Settled {
                winding_c: hot.winding_c,
                case_c: hot.case_c,
                hot_a: alternator.hot_a,
            }),
            limit_c: Part::Winding.limit_c(installed.alternator),
            margin_k: nearest(limits).map_or(0.0, |limit| limit.margin_k()),
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
        limit_c: limit.limit_c,
        after_disconnect: limit.passed()
            && opening.is_some_and(|opening| disconnected_first(opening.after_s)),
        remedy: worst.then(|| remedy(inputs, limit)),
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

/// The part that comes nearest to its limit without passing it.
fn near_limit(inputs: &Inputs, limits: &[PartLimit], found: &mut Vec<Finding>) {
    let Some(limit) = nearest(limits).filter(|limit| (0.0..NEAR_K).contains(&limit.margin_k()))
    else {
        return;
    };
    // The finding of the regulator's temperature limit says so itself.
    if limit.part == Part::Case && set_point_high(inputs) {
        return;
    }
    add(
        found,
        HeatFinding::NearLimit {
            alternator: limit.alternator,
            part: limit.part,
            hottest_c: limit.hottest_c(),
            limit_c: limit.limit_c,
            remedy: remedy(inputs, &limit),
        },
    );
}

/// Whether the regulator's temperature limit for the case leaves it next to
/// nothing.
fn set_point_high(inputs: &Inputs) -> bool {
    inputs.reg.kind == RegulatorKind::External
        && inputs.reg.sensor == SensorPlace::Case
        && inputs.reg.set_point_c > inputs.alt.case_limit_c - SET_POINT_ROOM_K
}

/// What a sensor on the case does not see, and how high it is set.
fn case_sensor(inputs: &Inputs, report: &Analyses, found: &mut Vec<Finding>) {
    let set_point_c = inputs.reg.set_point_c;
    let winding_c = report.run.alternators[0].peak.winding_c;
    let shares = &report.run.limit_shares;
    let held = shares.iter().any(|s| s.limit == Limit::Temperature);
    let limit_c = inputs.alt.class.limit_c();
    if held && winding_c > set_point_c + 15.0 && winding_c > limit_c - LAG_MATTERS_K {
        add(
            found,
            HeatFinding::CaseSensorLags {
                winding_c,
                limit_c,
                set_point_c,
            },
        );
    }
    if set_point_high(inputs) {
        add(
            found,
            HeatFinding::SetPointHigh {
                set_point_c,
                limit_c: inputs.alt.case_limit_c,
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
