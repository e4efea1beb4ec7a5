//! The charging run, read off what was stepped through.

use crate::analysis::run_report::{
    AlternatorMoment, AlternatorRun, LimitShare, Moment, RunReport, SoakReport, StretchReport,
};
use crate::analysis::temperatures::PartTemperatures;
use crate::physics::charging::{kept_energy_pct, mean_bank_a};
use crate::physics::drive::percent;
use crate::physics::fuel::{marginal_l, run_l};
use crate::simulation::Limit;
use crate::simulation::heat_soak::soak;
use crate::simulation::plant::Plant;
use crate::simulation::run::{Sample, Trace};

/// A run from one state of charge to another, 0 to 1.
pub(super) fn run_report(plant: &Plant, trace: &Trace, from: f64, to: f64) -> RunReport {
    let end_s = trace.reaches(to).unwrap_or(trace.last_s());
    timed_report(plant, trace, from, to, end_s)
}

/// A run that ends at a time \[s\] after its start, whether or not it has come to
/// its target.
pub(super) fn timed_report(
    plant: &Plant,
    trace: &Trace,
    from: f64,
    to: f64,
    end_s: f64,
) -> RunReport {
    let opening = trace.opening(trace.last_s());
    let closed = |seconds: &f64| opening.is_none_or(|opening| opening.after_s > *seconds);
    let minutes = |soc: f64| {
        trace
            .reaches(soc)
            .filter(closed)
            .map(|seconds| seconds / 60.0)
    };
    let hours = end_s / 3600.0;
    let (start, mid) = (trace.sample(0.0), trace.sample(0.5 * end_s));
    let stretches: Vec<StretchReport> = trace
        .stretches(end_s)
        .into_iter()
        .map(|stretch| StretchReport {
            from_min: stretch.from_s / 60.0,
            to_min: stretch.to_s / 60.0,
            limit: stretch.limit,
        })
        .collect();
    let series: Vec<Moment> = series_minutes(end_s / 60.0)
        .into_iter()
        .map(|minute| moment(plant, trace.sample(minute * 60.0)))
        .collect();
    let shaft_kwh = trace.shaft_kwh(end_s);
    let marginal_fuel_l = marginal_l(plant.marginal_l_kwh(), shaft_kwh);
    let given_w = mid.moment.given_w();
    let hottest = trace.hottest(end_s);
    let peaks = trace.peaks(end_s);
    let soak = soak(plant, trace, end_s);
    RunReport {
        house_load_a: plant.load_a,
        engine_loads: Vec::new(),
        start_a: plant.charging_a(&start.moment.flow),
        mid_a: plant.charging_a(&mid.moment.flow),
        mid_bank_a: mid.moment.flow.bank_a,
        mean_bank_a: if hours > 0.0 {
            mean_bank_a(
                plant.bank.capacity_ah,
                trace.soc_at(end_s),
                from,
                plant.bank.charge_efficiency,
                end_s / 60.0,
            )
        } else {
            start.moment.flow.bank_a
        },
        bank_frozen: plant.bank.is_frozen(from),
        opening: opening.filter(|opening| opening.after_s <= end_s),
        minutes_to_target: minutes(to),
        minutes_to_80: minutes(0.8),
        minutes_to_90: minutes(0.9),
        minutes_to_100: minutes(1.0),
        minutes: end_s / 60.0,
        end_charge_pct: 100.0 * trace.soc_at(end_s).max(0.0),
        peak_air_c: hottest.first().map_or(plant.start_c, |t| t.air_c),
        alternators: hottest
            .iter()
            .zip(&soak.hottest)
            .zip(&peaks.loads)
            .enumerate()
            .map(|(at, ((peak, soak_peak), peak_load))| AlternatorRun {
                peak: PartTemperatures {
                    winding_may_be_c: trace.winding_may_be_c(end_s, at),
                    ..(*peak).into()
                },
                soak_peak: (*soak_peak).into(),
                peak_load: *peak_load,
            })
            .collect(),
        soak: SoakReport {
            air_peak_c: soak.air_peak.air_c,
            air_peak_min: soak.air_peak_s / 60.0,
        },
        air_settles_min: air_settles_min(&series),
        peak_shaft_w: peaks.shaft_w,
        peak_shaft_min: peaks.shaft_s / 60.0,
        mid_efficiency_pct: if given_w > 0.0 {
            percent(given_w, mid.moment.shaft_w())
        } else {
            0.0
        },
        shaft_kwh,
        alternator_ah: trace.alternator_ah(end_s),
        bank_energy_pct: bank_energy_pct(plant, &series),
        fuel_l: run_l(plant.fuel.idle_l_h, hours, marginal_fuel_l),
        marginal_fuel_l,
        limit_shares: shares(&stretches),
        stretches,
        series,
    }
}

/// Every minute of the first half hour, when most happens, then every five,
/// and the end.
fn series_minutes(end_min: f64) -> Vec<f64> {
    let mut minutes: Vec<f64> = (0..=30)
        .chain((35..).step_by(5))
        .map(f64::from)
        .take_while(|minute| *minute < end_min)
        .collect();
    minutes.push(end_min);
    minutes
}

fn moment(plant: &Plant, sample: Sample) -> Moment {
    let flow = &sample.moment.flow;
    let each = flow.outputs.iter().zip(&sample.thermal);
    Moment {
        minute: sample.seconds / 60.0,
        charge_pct: 100.0 * sample.soc,
        alternator_a: plant.charging_a(flow),
        bank_a: flow.bank_a,
        bank_v: flow.bank_v,
        air_c: sample
            .thermal
            .first()
            .map_or(plant.start_c, |one| one.t.air_c),
        alternators: each
            .map(|(output, thermal)| AlternatorMoment {
                amperes: output.amperes,
                volts: output.volts,
                winding_c: thermal.t.winding_c,
                case_c: thermal.t.body_c,
                rectifier_c: thermal.t.rectifier_c,
            })
            .collect(),
        shaft_w: sample.moment.shaft_w(),
        limit: flow.limit,
    }
}

fn shares(stretches: &[StretchReport]) -> Vec<LimitShare> {
    let span = |stretch: &StretchReport| stretch.to_min - stretch.from_min;
    let total: f64 = stretches.iter().map(span).sum();
    let mut shares: Vec<LimitShare> = Limit::ALL
        .into_iter()
        .map(|limit| LimitShare {
            limit,
            share_pct: 100.0
                * stretches
                    .iter()
                    .filter(|stretch| stretch.limit == limit)
                    .map(span)
                    .sum::<f64>()
                / total.max(1e-9),
        })
        .filter(|share| share.share_pct > 0.0)
        .collect();
    shares.sort_by(|one, other| other.share_pct.total_cmp(&one.share_pct));
    shares
}

fn air_settles_min(series: &[Moment]) -> Option<f64> {
    let (first, last) = (series.first()?, series.last()?);
    let most_c = series.iter().map(|m| m.air_c).fold(first.air_c, f64::max);
    let settled_c = first.air_c + 0.95 * (most_c - first.air_c);
    // Still rising by more than a tenth of a degree in five minutes: not settled.
    let before = series
        .iter()
        .rev()
        .find(|m| m.minute <= last.minute - 5.0)?;
    let still = (last.air_c - before.air_c).abs() < 0.1;
    let reached = series.iter().find(|m| m.air_c >= settled_c)?;
    still.then_some(reached.minute)
}

fn bank_energy_pct(plant: &Plant, series: &[Moment]) -> f64 {
    bank_volts(plant, series).map_or(0.0, |(rest_v, charging_v)| {
        kept_energy_pct(plant.bank.charge_efficiency, rest_v, charging_v)
    })
}

/// Voltage at rest and while charging, the mean over what went in \[V\]; none
/// when nothing did.
pub(crate) fn bank_volts(plant: &Plant, series: &[Moment]) -> Option<(f64, f64)> {
    let (mut rest, mut charging, mut total) = (0.0, 0.0, 0.0);
    for pair in series.windows(2) {
        let [a, b] = pair else { continue };
        let charge = 0.5 * (a.bank_a + b.bank_a).max(0.0) * (b.minute - a.minute);
        let rest_v = |m: &Moment| plant.bank.rest_v(m.charge_pct / 100.0);
        rest += charge * (rest_v(a) + rest_v(b));
        charging += charge * (a.bank_v + b.bank_v);
        total += 2.0 * charge;
    }
    (charging > 0.0).then(|| (rest / total, charging / total))
}
