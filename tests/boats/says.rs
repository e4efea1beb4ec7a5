//! One-line checks of an answer. What fails is collected, so that one boat
//! shows everything that is wrong about it at once.

use std::cell::RefCell;
use std::ops::Deref;
use std::panic::Location;

use ampwright_core::guidance::settings::{GroupCode, Setting, SettingCode};
use ampwright_core::text::settings as text;
use ampwright_core::units::Reader;

use crate::answers::{Answers, Weight, said, word};

/// The program's answer about one boat, and what is wrong with it.
pub struct Says {
    answers: Answers,
    wrong: RefCell<Vec<String>>,
}

impl Deref for Says {
    type Target = Answers;

    fn deref(&self) -> &Answers {
        &self.answers
    }
}

impl Says {
    pub fn of(answers: Answers) -> Says {
        Says {
            answers,
            wrong: RefCell::default(),
        }
    }

    /// Notes something wrong unless it holds.
    #[track_caller]
    pub fn holds(&self, holds: bool, what: impl FnOnce() -> String) {
        if !holds {
            let at = Location::caller();
            let (file, line) = (at.file(), at.line());
            let file = file.rsplit(['/', '\\']).next().unwrap_or(file);
            let what = what();
            self.wrong
                .borrow_mut()
                .push(format!("{file}:{line}: {what}"));
        }
    }

    /// Fails if anything was noted.
    pub fn finish(&self, name: &str) {
        let wrong = self.wrong.borrow();
        assert!(
            wrong.is_empty(),
            "\n{name}: {} wrong\n  - {}\n  verdict: {}\n  findings:\n{}\n",
            wrong.len(),
            wrong.join("\n  - "),
            self.verdict(),
            self.told()
        );
    }

    #[track_caller]
    pub fn between(&self, what: &str, figure: f64, low: f64, high: f64) {
        self.holds((low..=high).contains(&figure), || {
            format!("{what} is {figure:.2}, not {low} to {high}")
        });
    }

    #[track_caller]
    pub fn some_between(&self, what: &str, figure: Option<f64>, low: f64, high: f64) {
        match figure {
            Some(figure) => self.between(what, figure, low, high),
            None => self.holds(false, || format!("there is no {what}, not {low} to {high}")),
        }
    }

    // ------------------------------------------------------------ the answer

    /// Engine hours a day.
    #[track_caller]
    pub fn hours_between(&self, low: f64, high: f64) {
        self.some_between(
            "engine h/day",
            self.report.analyses.day.engine_hours,
            low,
            high,
        );
    }

    /// The engine need not run.
    #[track_caller]
    pub fn no_engine(&self) {
        self.some_between(
            "engine h/day",
            self.report.analyses.day.engine_hours,
            0.0,
            0.0,
        );
    }

    /// No engine run fills this bank, and the answer says so.
    #[track_caller]
    pub fn cannot_charge(&self) {
        let hours = self.report.analyses.day.engine_hours;
        self.holds(hours.is_none(), || format!("{hours:?} h/day, not “cannot”"));
    }

    /// What the alternators hold once everything is hot.
    #[track_caller]
    pub fn hot_amps_between(&self, low: f64, high: f64) {
        self.between("hot A", self.report.analyses.output.hot_a, low, high);
    }

    /// Their output at charging speed when cold.
    #[track_caller]
    pub fn cold_amps_between(&self, low: f64, high: f64) {
        self.between("cold A", self.report.analyses.output.full_cold_a, low, high);
    }

    /// Hot output of the cold output.
    #[track_caller]
    pub fn hot_share_between(&self, low_pct: f64, high_pct: f64) {
        let output = &self.report.analyses.output;
        let share_pct = 100.0 * output.hot_a / output.full_cold_a;
        self.between("hot output, % of cold,", share_pct, low_pct, high_pct);
    }

    /// What holds the hot current.
    #[track_caller]
    pub fn limited_by(&self, limits: &[&str]) {
        let limit = word(&self.report.analyses.output.hot_limit);
        self.holds(limits.contains(&limit.as_str()), || {
            format!("limited by {limit}, not {limits:?}")
        });
    }

    /// The most that flows into the bank in the run.
    #[track_caller]
    pub fn peak_bank_amps_between(&self, low: f64, high: f64) {
        let series = self.report.analyses.run.series.iter();
        let peak = series.map(|m| m.bank_a).fold(f64::NEG_INFINITY, f64::max);
        self.between("peak A into the bank", peak, low, high);
    }

    /// Minutes from “charge from” to “charge to”.
    #[track_caller]
    pub fn minutes_between(&self, low: f64, high: f64) {
        let minutes = self.report.analyses.run.minutes_to_target;
        self.some_between("min to target", minutes, low, high);
    }

    /// The hottest its air gets in the run.
    #[track_caller]
    pub fn space_between(&self, low_c: f64, high_c: f64) {
        self.between(
            "engine space °C",
            self.report.analyses.run.peak_air_c,
            low_c,
            high_c,
        );
    }

    /// The hottest the winding gets in the run.
    #[track_caller]
    pub fn winding_between(&self, low_c: f64, high_c: f64) {
        self.between(
            "winding °C",
            self.report.analyses.run.alternators[0].peak.winding_c,
            low_c,
            high_c,
        );
    }

    /// Peak of a load dump with nothing against it, of the first alternator, at
    /// the worse of charging speed and highest speed.
    #[track_caller]
    pub fn peak_dump_between(&self, low_v: f64, high_v: f64) {
        let machines = &self.disconnect().alternators;
        let peak = machines.first().map(|machine| machine.peak_v());
        self.some_between("load dump V", peak, low_v, high_v);
    }

    /// The current that a load dump cuts off, of the first alternator.
    #[track_caller]
    pub fn dump_amps_between(&self, low_a: f64, high_a: f64) {
        let machines = &self.disconnect().alternators;
        let amperes = machines.first().map(|m| m.charging.amperes);
        self.some_between("load dump A", amperes, low_a, high_a);
    }

    #[track_caller]
    pub fn short_circuit_ka_between(&self, low: f64, high: f64) {
        let kilo = self.wiring().short_circuit_a / 1000.0;
        self.between("short circuit kA", kilo, low, high);
    }

    /// Days from full to the end of the window without the engine.
    #[track_caller]
    pub fn autonomy_between(&self, low: f64, high: f64) {
        let days = self.report.analyses.energy.autonomy_days;
        self.some_between("days of autonomy", days, low, high);
    }

    /// Share of the engine's power at that speed.
    #[track_caller]
    pub fn engine_share_between(&self, low_pct: f64, high_pct: f64) {
        let share = self.report.analyses.engine.peak_share_pct;
        self.between("share of the engine %", share, low_pct, high_pct);
    }

    /// Power at the belt.
    #[track_caller]
    pub fn belt_kw_between(&self, low: f64, high: f64) {
        self.between("belt kW", self.report.analyses.engine.peak_kw, low, high);
    }

    /// Litres a day, the engine run for charging alone.
    #[track_caller]
    pub fn litres_between(&self, low: f64, high: f64) {
        self.some_between("L/day", self.report.analyses.day.fuel_l, low, high);
    }

    /// Engine hours of the year, motoring included.
    #[track_caller]
    pub fn year_hours_between(&self, low: f64, high: f64) {
        let sums = self.year().sums;
        self.between(
            "engine h/year",
            sums.charging_h + sums.motoring_h,
            low,
            high,
        );
    }

    /// The boat goes short of nothing in any month.
    #[track_caller]
    pub fn year_never_short(&self) {
        let short = self.year().months.iter().map(|m| m.short_ah_day);
        let short = short.fold(0.0, f64::max);
        self.holds(short < 0.5, || {
            format!("the year is {short:.1} A·h/day short")
        });
    }

    // ---------------------------------------------------------- the findings

    #[track_caller]
    pub fn must_find(&self, code: &str) {
        self.holds(self.has(code), || format!("{code} is not found"));
    }

    #[track_caller]
    pub fn must_find_one_of(&self, codes: &[&str]) {
        let any = codes.iter().any(|code| self.has(code));
        self.holds(any, || format!("none of {codes:?} is found"));
    }

    #[track_caller]
    pub fn must_not_find(&self, code: &str) {
        self.holds(!self.has(code), || format!("{code} is found"));
    }

    #[track_caller]
    pub fn danger(&self, code: &str) {
        self.weighs(code, &[Weight::Danger]);
    }

    #[track_caller]
    pub fn fix(&self, code: &str) {
        self.weighs(code, &[Weight::Fix]);
    }

    #[track_caller]
    pub fn fix_or_danger(&self, code: &str) {
        self.weighs(code, &[Weight::Fix, Weight::Danger]);
    }

    #[track_caller]
    pub fn note(&self, code: &str) {
        self.weighs(code, &[Weight::Note]);
    }

    #[track_caller]
    fn weighs(&self, code: &str, wanted: &[Weight]) {
        let weights = self.weights(code);
        self.holds(weights.iter().any(|w| wanted.contains(w)), || {
            format!("{code} is {weights:?}, not one of {wanted:?}")
        });
    }

    #[track_caller]
    pub fn no_danger(&self) {
        let codes = self.codes(Weight::Danger);
        self.holds(codes.is_empty(), || {
            format!("Danger without cause: {codes:?}")
        });
    }

    #[track_caller]
    pub fn no_fix(&self) {
        let codes = self.codes(Weight::Fix);
        self.holds(codes.is_empty(), || format!("Fix without cause: {codes:?}"));
    }

    /// No more than so many notes: a list nobody reads is no warning.
    #[track_caller]
    pub fn notes_at_most(&self, most: usize) {
        let codes = self.codes(Weight::Note);
        self.holds(codes.len() <= most, || format!("too many notes: {codes:?}"));
    }

    /// The finding is the first one told.
    #[track_caller]
    pub fn first_is(&self, code: &str) {
        let first = self
            .report
            .findings
            .first()
            .map(|finding| finding.code().name());
        self.holds(first == Some(code), || {
            format!("{first:?} comes before {code}")
        });
    }

    /// The finding's sentence has all of these words.
    #[track_caller]
    pub fn finding_says(&self, code: &str, words: &[&str]) {
        let findings = self.report.findings.iter();
        let texts: Vec<String> = findings
            .filter(|finding| finding.code().name() == code)
            .map(said)
            .collect();
        let all = |text: &String| words.iter().all(|word| text.contains(word));
        self.holds(texts.iter().any(all), || {
            format!("{code} does not say {words:?}: {texts:?}")
        });
    }

    // ----------------------------------------------------------- the verdict

    /// One of these words, in any case, stands in the answer.
    #[track_caller]
    pub fn verdict_contains(&self, words: &[&str]) {
        let verdict = self.verdict().to_lowercase();
        self.holds(words.iter().any(|word| verdict.contains(word)), || {
            format!("none of {words:?} in the verdict")
        });
    }

    #[track_caller]
    pub fn verdict_lacks(&self, word: &str) {
        let verdict = self.verdict().to_lowercase();
        self.holds(!verdict.contains(word), || {
            format!("“{word}” in the verdict")
        });
    }

    /// The answer says that the alternator survives.
    #[track_caller]
    pub fn survives(&self) {
        self.holds(self.said_to_survive(), || {
            "the verdict does not say that the alternator survives".to_string()
        });
        self.verdict_lacks("overheats");
    }

    /// The answer says that the alternator overheats.
    #[track_caller]
    pub fn overheats(&self) {
        self.verdict_contains(&["overheats"]);
    }

    pub fn said_to_survive(&self) -> bool {
        let verdict = self.verdict().to_lowercase();
        ["survives", "within its limits"]
            .iter()
            .any(|word| verdict.contains(word))
    }

    // ---------------------------------------------------- the settings sheet

    #[track_caller]
    pub fn setting_between(&self, group: GroupCode, code: SettingCode, low: f64, high: f64) {
        let number = self.setting(group, code).and_then(Setting::number);
        let what = format!("setting {}.{}", group.name(), code.name());
        self.some_between(&what, number, low, high);
    }

    /// A line of the sheet, value or reason, has one of these words.
    #[track_caller]
    pub fn setting_says(&self, group: GroupCode, code: SettingCode, words: &[&str]) {
        let said = self.setting(group, code).map(setting_said);
        let any = |text: &String| words.iter().any(|word| text.contains(word));
        self.holds(said.as_ref().is_some_and(any), || {
            let (group, code) = (group.name(), code.name());
            format!("{group}.{code} says none of {words:?}: {said:?}")
        });
    }

    /// No group of that name is on the sheet.
    #[track_caller]
    pub fn no_group(&self, group: GroupCode) {
        let any = self.settings().group(group).is_some();
        self.holds(!any, || format!("there are settings of {}", group.name()));
    }
}

/// A setting in words: its value and its reason.
pub fn setting_said(setting: &Setting) -> String {
    let reader = &Reader::METRIC;
    format!(
        "{}: {}",
        text::value(setting, reader),
        text::reason(&setting.reason, reader)
    )
}
