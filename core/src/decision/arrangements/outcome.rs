//! What comes of an arrangement.

use serde::Serialize;

use crate::analysis::engine_day::DayTrouble;
use crate::analysis::year::{YearSums, year_sums};
use crate::boat::{Arrangement, Key, RegulatorLink, SectionId, Worksheet};
use crate::decision::arrangements::disconnect::{Disconnect, disconnect};
use crate::decision::arrangements::harm::harm;
use crate::decision::arrangements::hottest::Hottest;
use crate::decision::arrangements::kind::Kind;
use crate::decision::arrangements::parts::{Part, parts};
use crate::decision::arrangements::year_cost::{YearCost, engine_kwh, paid_back_years, year_cost};
use crate::decision::arrangements::{Role, WorkedOut};
use crate::findings::{Finding, Severity, Verdict};
use crate::physics::money::each_kwh;
use crate::schema::Value;
use crate::simulation::Limit;

/// What comes of an arrangement.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Outcome {
    /// What it is in the comparison.
    pub role: Role,
    /// Which of the usual ways to charge it is.
    pub kind: Kind,
    /// The arrangement itself, to set a boat up like it; named only where it is
    /// one of the user's own.
    #[serde(skip)]
    pub arrangement: Arrangement,
    /// What speaks against it: each Danger, and what overheats, overloads or
    /// wears out a part. Only the worksheet as it stands and the user's own
    /// arrangements ever have any.
    pub harm: Vec<Finding>,
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
    /// Current of the alternators that charge the house, at the start \[A\].
    pub start_a: f64,
    /// Current of the alternators that charge the house, once all is hot \[A\].
    pub hot_a: f64,
    /// What holds it there.
    pub limit: Limit,
    /// The part that comes closest to its limit in the run.
    pub hottest: Hottest,
    /// Fuel of the same year: of the runs for charging, what the alternators ask
    /// while motoring, and a generator's \[L\].
    pub fuel_year_l: Option<f64>,
    /// Time of a generator a day \[h\]; none where none charges the bank, or no run
    /// of it is long enough.
    pub generator_h_day: Option<f64>,
    /// Time of a generator in the year's days aboard \[h\]; none where the year is
    /// not covered, or none charges the bank.
    pub generator_h_year: Option<f64>,
    /// From the low end of the usable window to the high one at the dock \[h\]; none
    /// where the bank is not charged there, or never gets there.
    pub dock_fill_h: Option<f64>,
    /// What the year by months comes to: the same as the year's own.
    pub sums: YearSums,
    /// Most that the belts take of the engine \[kW\].
    pub belt_kw: f64,
    /// Most that the belts take, of what the engine has at that speed \[%\]; more
    /// than 100 where it cannot turn them.
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
    /// Years that the bank lasts, by cycles or by the calendar, whichever ends first.
    pub bank_years: Option<f64>,
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

impl Outcome {
    /// Inputs that differ from the worksheet, with their values, but for an
    /// alternator that only moved to the second place.
    pub fn changed(&self) -> impl Iterator<Item = (Key, Value)> {
        let changes = self.arrangement.changes.iter().copied();
        changes.filter(|(key, _)| key.section != SectionId::alt2)
    }

    /// What comes of an arrangement; `today` is the worksheet as it stands.
    pub(super) fn of(sheet: &Worksheet, one: &WorkedOut, today: Option<&Outcome>) -> Outcome {
        let WorkedOut {
            role,
            kind,
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
            kind: *kind,
            arrangement: arrangement.clone(),
            harm: harm(report),
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
            generator_h_day: report
                .analyses
                .generator
                .and_then(|generator| generator.hours),
            generator_h_year: of_year(sums.generator_h).filter(|_| inputs.generator_charges()),
            dock_fill_h: report
                .analyses
                .shore
                .fill_h
                .filter(|_| inputs.dock_charges()),
            sums,
            belt_kw: report.analyses.engine.peak_kw,
            engine_share_pct: report.analyses.engine.peak_share_pct,
            bought,
            engine_kwh: engine_kwh(with, report),
            used_kwh: year
                .filter(|_| sums.use_wh > 0.0)
                .map(|year| each_kwh(year.total, sums.use_wh)),
            payback_years: today.and_then(|today| paid_back_years(bought, &today.year?, &year?)),
            bank_years: year.map(|year| year.bank_years),
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
