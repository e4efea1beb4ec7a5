//! The charging run.

use serde::Serialize;

use crate::analysis::temperatures::PartTemperatures;
use crate::boat::EngineLoad;
use crate::physics::charging::{kept_energy_pct, mean_bank_a};
use crate::physics::drive::percent;
use crate::physics::fuel::{marginal_l, run_l};
use crate::simulation::Limit;
use crate::simulation::heat_soak::soak;
use crate::simulation::opening::Opening;
use crate::simulation::per_alternator::PerAlternator;
use crate::simulation::plant::Plant;
use crate::simulation::run::{PeakLoad, Sample, Trace};

/// The charging run, from `run_from_pct` to `run_to_pct`.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RunReport {
    /// What the boat drew meanwhile, without its engine loads \[A\].
    pub house_load_a: f64,
    /// What ran only with the engine, on top of that.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub engine_loads: Vec<EngineLoad>,
    /// Current of the alternators that charge the house bank, at the start \[A\].
    pub start_a: f64,
    /// The same half-way through the time \[A\].
    pub mid_a: f64,
    /// Current into the bank half-way through the time \[A\].
    pub mid_bank_a: f64,
    /// Mean current into the bank \[A\].
    pub mean_bank_a: f64,
    /// Whether the electrolyte of a lead bank is frozen where the run begins: it
    /// takes no charge.
    pub bank_frozen: bool,
    /// When the bank's management system opens; none when it does not. All else
    /// here goes on as if the bank had stayed connected.
    pub opening: Option<Opening>,
    /// Time to the target \[min\]; none where the management system opens first.
    pub minutes_to_target: Option<f64>,
    /// Time to 80 % \[min\]; none where the management system opens first.
    pub minutes_to_80: Option<f64>,
    /// Time to 90 % \[min\]; none where the management system opens first.
    pub minutes_to_90: Option<f64>,
    /// Time to 100 % \[min\]; none where the management system opens first.
    pub minutes_to_100: Option<f64>,
    /// How long the run below is: to the target, or to giving up \[min\].
    pub minutes: f64,
    /// State of charge at its end \[%\].
    pub end_charge_pct: f64,
    /// Each alternator in the run, the first one first; there is always one.
    pub alternators: Vec<AlternatorRun>,
    /// Hottest air of the engine space \[°C\].
    pub peak_air_c: f64,
    /// The hour after the engine stops.
    pub soak: SoakReport,
    /// When the air of the space has covered 95 % of its rise \[min\]; none when
    /// the run is too short for that.
    pub air_settles_min: Option<f64>,
    /// Most power at the alternators' shafts \[W\].
    pub peak_shaft_w: f64,
    /// When that is \[min\].
    pub peak_shaft_min: f64,
    /// Alternator efficiency half-way \[%\].
    pub mid_efficiency_pct: f64,
    /// Energy their shafts took \[kWh\].
    pub shaft_kwh: f64,
    /// Ampere-hours the alternators gave \[A·h\].
    pub alternator_ah: f64,
    /// Energy the bank keeps of what went in: its rest voltage times the charge
    /// returned, over the voltage it was charged at \[%\].
    pub bank_energy_pct: f64,
    /// All fuel of the run, engine run for charging alone \[L\].
    pub fuel_l: f64,
    /// The alternator's part of the fuel \[L\], all there is to count while motoring anyway.
    pub marginal_fuel_l: f64,
    /// What limits when, in order.
    pub stretches: Vec<StretchReport>,
    /// Part of the time each limit holds \[%\], largest first.
    pub limit_shares: Vec<LimitShare>,
    /// The run, moment by moment.
    pub series: Vec<Moment>,
}

/// One alternator in the run and in the hour after it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct AlternatorRun {
    /// Hottest of each of its parts.
    pub peak: PartTemperatures,
    /// Hottest of each of its parts in the hour after the engine stops.
    pub soak_peak: PartTemperatures,
    /// Most that it gives and takes.
    pub peak_load: PeakLoad,
}

/// A stretch of the run with one limit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct StretchReport {
    /// \[min\]
    pub from_min: f64,
    /// \[min\]
    pub to_min: f64,
    /// What holds the current down.
    pub limit: Limit,
}

impl RunReport {
    /// Most that the alternators which charge the house bank give in the run
    /// \[A\]: with a soft start well above what flows at its beginning.
    pub fn most_a(&self) -> f64 {
        let given = self.series.iter().map(|moment| moment.alternator_a);
        given.fold(self.start_a.max(0.0), f64::max)
    }
}

/// How much of the run one limit holds.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct LimitShare {
    /// The limit.
    pub limit: Limit,
    /// Part of the time \[%\].
    pub share_pct: f64,
}

/// One moment of the run.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Moment {
    /// \[min\]
    pub minute: f64,
    /// \[%\]
    pub charge_pct: f64,
    /// Alternators that charge the house bank \[A\]
    pub alternator_a: f64,
    /// Into the bank \[A\]
    pub bank_a: f64,
    /// At the bank \[V\]
    pub bank_v: f64,
    /// Air of the engine space \[°C\]
    pub air_c: f64,
    /// Each alternator, the first one first; there is always one.
    pub alternators: PerAlternator<AlternatorMoment>,
    /// At the alternators' shafts \[W\]
    pub shaft_w: f64,
    /// What holds the current down.
    pub limit: Limit,
}

/// One alternator at a moment of the run.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct AlternatorMoment {
    /// What it gives \[A\]
    pub amperes: f64,
    /// At its terminals \[V\]
    pub volts: f64,
    /// \[°C\]
    pub winding_c: f64,
    /// \[°C\]
    pub case_c: f64,
    /// \[°C\]
    pub rectifier_c: f64,
}

/// The air in the hour after the engine stops.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct SoakReport {
    /// Hottest it gets \[°C\].
    pub air_peak_c: f64,
    /// When the air is hottest \[min\] after stopping.
    pub air_peak_min: f64,
}

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
