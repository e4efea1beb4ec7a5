//! What comes of an arrangement.

use serde::Serialize;

use super::parts::{Part, parts};
use crate::belt::belts;
use crate::charge::Limit;
use crate::disconnect::{Exposure, disconnect};
use crate::fields::Value;
use crate::physics::money::{capital_recovery, payback_years, wear_per_hour};
use crate::report::{Report, Severity, Temps, report_without_lead};
use crate::worksheet::{Alternator, Arrangement, Key, SectionId, Worksheet};

/// What comes of an arrangement.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Outcome {
    /// Its name.
    pub name: String,
    /// Inputs that differ from the worksheet, each as "label: value unit".
    pub changes: Vec<String>,
    /// Engine time a day \[h\]; none when no run is long enough.
    pub hours_day: Option<f64>,
    /// Engine time a year \[h\].
    pub hours_year: Option<f64>,
    /// From the worksheet's start to its target \[min\].
    pub minutes_to_target: Option<f64>,
    /// Current of the machines that charge the house, at the start \[A\].
    pub start_a: f64,
    /// The same once all is hot \[A\].
    pub hot_a: f64,
    /// What holds it there.
    pub limit: Limit,
    /// The part that comes closest to its limit in the run.
    pub hottest: Hottest,
    /// Fuel a year, the engine run for charging alone \[L\].
    pub fuel_year_l: Option<f64>,
    /// Most that the belts take of the engine \[kW\].
    pub belt_kw: f64,
    /// The same of what the engine has at that speed \[%\].
    pub engine_share_pct: f64,
    /// What is to be bought.
    pub parts: Vec<Part>,
    /// Its price.
    pub bought: f64,
    /// What a year costs; none when the day is not covered.
    pub year: Option<YearCost>,
    /// What a kilowatt-hour into the bank costs in fuel and engine \[/kWh\];
    /// none without engine.
    pub engine_kwh: Option<f64>,
    /// A year's cost for each kilowatt-hour used aboard \[/kWh\].
    pub used_kwh: Option<f64>,
    /// Years until the purchase has paid for itself against the worksheet as
    /// it stands; none when it never does.
    pub payback_years: Option<f64>,
    /// The hardest worked belt, of what it carries \[%\]; none as long as no
    /// belt is named.
    pub belt_pct: Option<f64>,
    /// What happens when the bank disconnects, in a few words.
    pub disconnect: String,
    /// Whether that leaves more volts than the electronics bear.
    pub exposed: bool,
    /// Findings that say stop, and mend.
    pub stop: usize,
    /// Findings that say mend.
    pub mend: usize,
}

/// The part that comes closest to its limit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Hottest {
    /// Which.
    pub part: &'static str,
    /// How hot it gets \[°C\].
    pub celsius: f64,
    /// What it bears \[°C\].
    pub limit_c: f64,
}

/// What a year costs.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct YearCost {
    /// Fuel.
    pub fuel: f64,
    /// Service and overhaul of the engine.
    pub engine: f64,
    /// Shore power.
    pub shore: f64,
    /// What the bank loses of its life.
    pub bank: f64,
    /// The purchase, spread over its years.
    pub capital: f64,
    /// All of it.
    pub total: f64,
}

impl YearCost {
    /// What a year costs once everything is bought.
    pub fn running(&self) -> f64 {
        self.total - self.capital
    }
}

impl Hottest {
    /// How far from its limit \[K\]; negative beyond it.
    pub fn margin_k(&self) -> f64 {
        self.limit_c - self.celsius
    }

    /// The part of one machine that comes closest to its limit.
    fn of(temps: &Temps, machine: &Alternator) -> Hottest {
        let parts = [
            ("winding", temps.winding_c, machine.class.limit_c()),
            ("rectifier", temps.rectifier_c, machine.rectifier_limit_c),
            ("case", temps.case_c, machine.case_limit_c),
        ]
        .map(|(part, celsius, limit_c)| Hottest {
            part,
            celsius,
            limit_c,
        });
        let [winding, rest @ ..] = parts;
        rest.into_iter().fold(winding, Hottest::worse)
    }

    fn worse(self, other: Hottest) -> Hottest {
        if other.margin_k() < self.margin_k() {
            other
        } else {
            self
        }
    }
}

impl Outcome {
    /// Works out an arrangement; `today` is the worksheet as it stands.
    pub fn of(sheet: &Worksheet, arrangement: &Arrangement, today: Option<&Outcome>) -> Outcome {
        let with = arrangement.on(sheet);
        let report = report_without_lead(&with);
        let inputs = &with.inputs;
        let parts = parts(sheet, &with);
        let bought: f64 = parts.iter().map(|part| part.price).fold(0.0, |a, b| a + b);
        let year = year_cost(&with, &report, bought);
        let hottest = Hottest::of(&report.run.peak, &inputs.alt);
        let hottest = report.run.second_peak.map_or(hottest, |second| {
            hottest.worse(Hottest::of(&second, &inputs.alt2))
        });
        let count = |severity| {
            let same = report.findings.iter().filter(|f| f.severity == severity);
            same.count()
        };
        let (exposed, words) = disconnecting(&with, &report);
        let days = inputs.cost.days;
        let used_kwh = report.energy.anchor.use_wh * days / 1000.0;
        Outcome {
            name: arrangement.name.clone(),
            changes: arrangement
                .changes
                .iter()
                // A machine that only moved to the second place is no change.
                .filter(|(key, _)| key.section != SectionId::alt2)
                .map(said)
                .collect(),
            hours_day: report.day.engine_hours,
            hours_year: report.day.engine_hours.map(|hours| hours * days),
            minutes_to_target: report.run.minutes_to_target,
            start_a: report.run.start_a,
            hot_a: report.machine.hot_a,
            limit: report.machine.hot_limit,
            hottest,
            fuel_year_l: report.day.fuel_l.map(|litres| litres * days),
            belt_kw: report.engine.peak_kw,
            engine_share_pct: report.engine.peak_share_pct,
            bought,
            engine_kwh: engine_kwh(&with, &report),
            used_kwh: year.map(|year| year.total / used_kwh.max(1e-9)),
            payback_years: today.and_then(|today| {
                let saved = today.year?.running() - year?.running();
                payback_years(bought, saved)
            }),
            year,
            parts,
            belt_pct: belts(&with, &report)
                .iter()
                .filter_map(|belt| belt.worst_pct)
                .reduce(f64::max),
            disconnect: words,
            exposed,
            stop: count(Severity::Stop),
            mend: count(Severity::Mend),
        }
    }
}

/// "Pulley ratio: 2.6", "Rated current: 180 A".
fn said((key, value): &(Key, Value)) -> String {
    let spec = key.spec();
    format!("{}: {}", spec.label, spec.shown(*value))
}

/// Whether the bank's going harms anything, and what happens in a few words.
fn disconnecting(with: &Worksheet, report: &Report) -> (bool, String) {
    let all = disconnect(with, report);
    let worst = all
        .machines
        .iter()
        .find(|machine| machine.exposure == Exposure::Bank);
    let (Some(worst), true) = (worst, with.inputs.engine_charges()) else {
        return (false, "nothing: a battery stays on the machine".into());
    };
    let left_v = worst.bank_left_v().unwrap_or(0.0);
    let exposed = worst.too_much(left_v);
    let words = if !exposed {
        format!("{left_v:.0} V for a moment, {:.0} V borne", worst.bear_v)
    } else if worst.defended() {
        format!("{left_v:.0} V left, only {:.0} V borne", worst.bear_v)
    } else {
        format!("up to {left_v:.0} V, nothing said to hold it down")
    };
    (exposed, words)
}

fn wear(sheet: &Worksheet) -> f64 {
    let cost = &sheet.inputs.cost;
    wear_per_hour(cost.service, cost.service_h, cost.overhaul, cost.overhaul_h)
}

fn year_cost(with: &Worksheet, report: &Report, bought: f64) -> Option<YearCost> {
    let inputs = &with.inputs;
    let cost = &inputs.cost;
    let (hours, fuel_l) = (report.day.engine_hours?, report.day.fuel_l?);
    let fuel = fuel_l * cost.days * cost.fuel_l;
    let engine = hours * cost.days * wear(with);
    let shore = report.shore.day_kwh * cost.days * cost.shore_kwh;
    let full_cycles = report.energy.anchor.use_ah * cost.days / inputs.bank.capacity_ah;
    let bank = inputs.bank_price() * full_cycles / inputs.bank_cycles();
    let capital = bought * capital_recovery(cost.interest_pct / 100.0, cost.years);
    Some(YearCost {
        fuel,
        engine,
        shore,
        bank,
        capital,
        total: fuel + engine + shore + bank + capital,
    })
}

/// Fuel and wear of the day's run for each kilowatt-hour that goes into bank
/// and boat meanwhile.
fn engine_kwh(with: &Worksheet, report: &Report) -> Option<f64> {
    let (hours, fuel_l) = (report.day.engine_hours?, report.day.fuel_l?);
    let kwh = report.energy.engine_ah * report.energy.bank_v / 1000.0;
    (hours > 0.0).then(|| (fuel_l * with.inputs.cost.fuel_l + hours * wear(with)) / kwh)
}
