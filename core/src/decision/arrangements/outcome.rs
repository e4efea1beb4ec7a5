//! What comes of an arrangement.

use serde::Serialize;

use crate::analysis;
use crate::analysis::PartTemperatures;
use crate::analysis::engine_day::DayTrouble;
use crate::analysis::load_dump::{DumpReport, Exposure};
use crate::analysis::year::{YearSums, year_sums};
use crate::boat::{Alternator, Arrangement, Key, RegulatorLink, SectionId, Worksheet};
use crate::decision::arrangements::harm::harm;
use crate::decision::arrangements::parts::{Part, parts};
use crate::decision::arrangements::year_cost::{YearCost, engine_kwh, paid_back_years, year_cost};
use crate::decision::arrangements::{Role, WorkedOut};
use crate::findings::{Finding, Severity, Verdict};
use crate::physics::money::each_kwh;
use crate::report::Report;
use crate::schema::Value;
use crate::simulation::Limit;

/// What comes of an arrangement.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Outcome {
    /// What it is in the comparison.
    pub role: Role,
    /// Its name.
    pub name: String,
    /// The arrangement itself, to set a boat up like it.
    #[serde(skip)]
    pub arrangement: Arrangement,
    /// What speaks against it: each Danger, and what overheats, overloads or
    /// wears out a part. Only the worksheet as it stands and the user's own
    /// arrangements ever have any.
    pub harm: Vec<Finding>,
    /// Inputs that differ from the worksheet, each as "label: value unit".
    pub changes: Vec<String>,
    /// Engine time a day \[h\]; none when no run is long enough.
    pub hours_day: Option<f64>,
    /// In how many equal runs a day; 0 without any.
    pub runs: u32,
    /// Why no engine run puts back what is used; none when one does.
    pub trouble: Option<DayTrouble>,
    /// Whether the alternator survives.
    pub verdict: Verdict,
    /// Engine time for charging in the year's days aboard, motoring not counted
    /// \[h\]; none when the year is not covered.
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
    /// Fuel of the same year: of the runs for charging, and what the alternators
    /// ask while motoring \[L\].
    pub fuel_year_l: Option<f64>,
    /// What the year by months comes to: the same as the year's own.
    pub sums: YearSums,
    /// Most that the belts take of the engine \[kW\].
    pub belt_kw: f64,
    /// The same of what the engine has at that speed \[%\].
    pub engine_share_pct: f64,
    /// What is to be bought.
    pub parts: Vec<Part>,
    /// Its price.
    pub bought: f64,
    /// What a year costs; none when the year is not covered.
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
    /// What happens when the bank disconnects under load.
    pub disconnect: Disconnect,
    /// What the battery tells the regulator.
    pub link: RegulatorLink,
    /// When the management system stops the charge in the run \[s\]; none where it
    /// does not.
    pub opens_s: Option<f64>,
    /// Whether the field is off before it opens anything.
    pub field_off_first: bool,
    /// Whether that leaves more volts than the electronics withstand.
    pub exposed: bool,
    /// Findings that mean danger.
    pub dangers: usize,
    /// Findings that are to be fixed.
    pub fixes: usize,
}

/// What happens when the bank disconnects under load.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum Disconnect {
    /// Nothing: a battery stays on the alternator.
    BatteryStays,
    /// Nothing: no alternator charges, or none that may be connected.
    NothingCharges,
    /// The electronics withstand what is left.
    Withstood {
        /// Voltage left for a moment \[V\].
        left_v: f64,
        /// What the electronics withstand \[V\].
        withstand_v: f64,
    },
    /// The protection that is entered leaves too much.
    TooMuchLeft {
        /// Voltage left for a moment \[V\].
        left_v: f64,
        /// What the electronics withstand \[V\].
        withstand_v: f64,
    },
    /// No protection is entered, and there would be too much.
    NoProtection {
        /// Voltage for a moment \[V\].
        left_v: f64,
    },
}

impl Disconnect {
    /// Whether it leaves more volts than the electronics withstand.
    pub const fn exposes(&self) -> bool {
        matches!(
            self,
            Disconnect::TooMuchLeft { .. } | Disconnect::NoProtection { .. }
        )
    }
}

/// The part that comes closest to its limit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Hottest {
    /// Which.
    pub part: analysis::Part,
    /// How hot it gets \[°C\].
    pub celsius: f64,
    /// What it bears \[°C\].
    pub limit_c: f64,
}

impl Hottest {
    /// How far from its limit \[K\]; negative beyond it.
    pub fn margin_k(&self) -> f64 {
        self.limit_c - self.celsius
    }

    /// That of one alternator.
    fn of(temps: &PartTemperatures, alternator: &Alternator) -> Hottest {
        let parts = [
            (analysis::Part::Winding, temps.winding_c),
            (analysis::Part::Rectifier, temps.rectifier_c),
            (analysis::Part::Case, temps.case_c),
        ]
        .map(|(part, celsius)| Hottest {
            part,
            celsius,
            limit_c: part.limit_c(alternator),
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
    /// Inputs that differ from the worksheet, with their values: those of
    /// [`Outcome::changes`].
    pub fn changed(&self) -> impl Iterator<Item = (Key, Value)> {
        changed(&self.arrangement).copied()
    }

    /// What comes of an arrangement; `today` is the worksheet as it stands.
    pub(super) fn of(sheet: &Worksheet, one: &WorkedOut, today: Option<&Outcome>) -> Outcome {
        let WorkedOut {
            role,
            arrangement,
            with,
            report,
        } = one;
        let inputs = &with.inputs;
        // What is aboard is not bought, and a mistake should not be.
        let parts = match role {
            Role::Before | Role::Warning => Vec::new(),
            Role::Worksheet | Role::Proposed | Role::Own => parts(sheet, with),
        };
        let bought: f64 = parts.iter().map(|part| part.price).fold(0.0, |a, b| a + b);
        let sums = year_sums(with);
        let of_year = |figure: f64| sums.covered.then_some(figure);
        let year = year_cost(with, &sums, bought);
        let each = inputs.alternators().zip(&report.analyses.run.alternators);
        let first = Hottest::of(&report.analyses.run.alternators[0].peak, &inputs.alt);
        let hottest = each
            .map(|(installed, run)| Hottest::of(&run.peak, installed.alternator))
            .fold(first, Hottest::worse);
        let count = |severity| {
            let same = report.findings.iter().filter(|f| f.severity() == severity);
            same.count()
        };
        let disconnect = disconnect(with, report);
        Outcome {
            role: *role,
            name: arrangement.name.clone(),
            arrangement: arrangement.clone(),
            harm: harm(report),
            changes: changed(arrangement).map(said).collect(),
            hours_day: report.analyses.day.engine_hours,
            runs: report.analyses.day.runs,
            trouble: report.analyses.day.trouble,
            verdict: report.verdict,
            hours_year: of_year(sums.charging_h),
            minutes_to_target: report.analyses.run.minutes_to_target,
            start_a: report.analyses.run.start_a,
            hot_a: report.analyses.output.hot_a,
            limit: report.analyses.output.hot_limit,
            hottest,
            fuel_year_l: of_year(sums.fuel_l),
            sums,
            belt_kw: report.analyses.engine.peak_kw,
            engine_share_pct: report.analyses.engine.peak_share_pct,
            bought,
            engine_kwh: engine_kwh(with, report),
            used_kwh: year
                .filter(|_| sums.use_wh > 0.0)
                .map(|year| each_kwh(year.total, sums.use_wh)),
            payback_years: today.and_then(|today| paid_back_years(bought, &today.year?, &year?)),
            year,
            parts,
            belt_pct: report
                .analyses
                .belts
                .iter()
                .filter_map(|belt| belt.worst_pct)
                .reduce(f64::max),
            disconnect,
            link: inputs.link(),
            opens_s: report.analyses.run.opening.map(|opening| opening.after_s),
            field_off_first: inputs.field_off_first(),
            exposed: disconnect.exposes(),
            dangers: count(Severity::Danger),
            fixes: count(Severity::Fix),
        }
    }
}

/// What an arrangement changes, but for an alternator that only moved to the
/// second place.
fn changed(arrangement: &Arrangement) -> impl Iterator<Item = &(Key, Value)> {
    let changes = arrangement.changes.iter();
    changes.filter(|(key, _)| key.section != SectionId::alt2)
}

/// "Pulley ratio: 2.6", "Rated current: 180 A".
fn said((key, value): &(Key, Value)) -> String {
    let spec = key.spec();
    format!("{}: {}", spec.label, spec.shown(*value))
}

/// What happens when the bank disconnects under load, at the alternator where
/// that is worst.
fn disconnect(with: &Worksheet, report: &Report) -> Disconnect {
    let all = &report.analyses.load_dump;
    let left_v = |dump: &DumpReport| dump.bank_left_v().unwrap_or(0.0);
    let mut installed = with.inputs.alternators();
    if !with.inputs.engine_charges() || !installed.any(|one| one.fits()) {
        return Disconnect::NothingCharges;
    }
    let worst = all
        .alternators
        .iter()
        .filter(|dump| dump.exposure == Exposure::Bank)
        .reduce(|one, other| {
            let rank = |dump: &DumpReport| (dump.too_much(left_v(dump)), left_v(dump));
            if rank(other) > rank(one) { other } else { one }
        });
    let Some(worst) = worst else {
        return Disconnect::BatteryStays;
    };
    let (left_v, withstand_v) = (left_v(worst), worst.bear_v);
    match (worst.too_much(left_v), worst.defended()) {
        (false, _) => Disconnect::Withstood {
            left_v,
            withstand_v,
        },
        (true, true) => Disconnect::TooMuchLeft {
            left_v,
            withstand_v,
        },
        (true, false) => Disconnect::NoProtection { left_v },
    }
}
