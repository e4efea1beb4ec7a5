//! All that the program says about one boat, worked out once. Tests take it
//! from here, so that a part of the program that gets another name is followed
//! in one place.

use std::cell::OnceCell;

use ampwright_core::analysis::cable::Cables;
use ampwright_core::analysis::load_dump::LoadDump;
use ampwright_core::analysis::year;
use ampwright_core::analysis::year::Year;
use ampwright_core::boat::Key;
use ampwright_core::decision::arrangements;
use ampwright_core::decision::arrangements::{Comparison, Role};
use ampwright_core::decision::goal_search::{Found, Search};
use ampwright_core::findings::{Code, Finding, Severity};
use ampwright_core::guidance::settings;
use ampwright_core::guidance::settings::{GroupCode, Setting, SettingCode, Settings};
use ampwright_core::units::Reader;
use ampwright_core::{Report, Worksheet, report, text};
use serde::Serialize;

/// How bad a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Weight {
    /// Do not run it like this.
    Danger,
    /// Put it right.
    Fix,
    /// Know about it.
    Note,
}

/// What the search may change of what drives the bank.
const DRIVES: &[&str] = &[
    "goal_pulley",
    "goal_set_point",
    "goal_converter",
    "goal_straight",
    "goal_machine",
    "goal_second",
];
/// What it may change of what surrounds it.
const SURROUNDS: &[&str] = &[
    "goal_blower",
    "goal_duct",
    "goal_panels",
    "goal_bank",
    "goal_loads",
];

/// All that the program says about one boat.
pub struct Answers {
    pub sheet: Worksheet,
    pub report: Report,
    year: OnceCell<Year>,
    settings: OnceCell<Settings>,
    comparison: OnceCell<Comparison>,
    found: OnceCell<Vec<Found>>,
}

impl Answers {
    pub fn of(sheet: Worksheet) -> Answers {
        Answers {
            report: report(&sheet),
            sheet,
            year: OnceCell::new(),
            settings: OnceCell::new(),
            comparison: OnceCell::new(),
            found: OnceCell::new(),
        }
    }

    pub fn year(&self) -> &Year {
        self.year.get_or_init(|| year(&self.sheet))
    }

    pub fn settings(&self) -> &Settings {
        self.settings
            .get_or_init(|| settings(&self.sheet, &self.report))
    }

    pub fn disconnect(&self) -> &LoadDump {
        &self.report.analyses.load_dump
    }

    pub fn wiring(&self) -> &Cables {
        &self.report.analyses.cables
    }

    /// The arrangements beside each other, this boat first.
    pub fn comparison(&self) -> &Comparison {
        self.comparison
            .get_or_init(|| arrangements::compare(&self.sheet))
    }

    /// The boats that the arrangements propose, each with its name.
    pub fn proposed(&self) -> Vec<(String, Worksheet)> {
        let outcomes = self.comparison().outcomes.iter();
        let meant = outcomes.filter(|one| matches!(one.role, Role::Proposed | Role::Own));
        meant
            .map(|one| {
                (
                    text::arrangements::name(one).to_string(),
                    one.arrangement.on(&self.sheet),
                )
            })
            .collect()
    }

    /// What two searches for the cheapest way found, gone through to their end:
    /// what drives the bank may change in one, what surrounds it in the other.
    /// Together they try every change at a tenth of the time of one search.
    pub fn found(&self) -> &[Found] {
        self.found.get_or_init(|| {
            let all = DRIVES.iter().chain(SURROUNDS);
            let stays = |open: &[&str]| {
                let mut sheet = self.sheet.clone();
                for name in all.clone().filter(|name| !open.contains(name)) {
                    let key = Key::named(name).unwrap_or_else(|| panic!("no input “{name}”"));
                    let no = key.spec().read("no").expect("a goal takes no");
                    sheet.state(key, no).expect("a goal takes no");
                }
                sheet
            };
            vec![search(&stays(DRIVES)), search(&stays(SURROUNDS))]
        })
    }

    /// The answer in sentences, as somebody hears it who sees nothing else.
    pub fn verdict(&self) -> String {
        let answer = text::answer(&self.report, &Reader::METRIC);
        format!(
            "{} [{} | {} | {}]",
            text::sentence(&self.sheet, &self.report, &Reader::METRIC),
            answer.time,
            answer.hot_amps,
            answer.limit
        )
    }

    /// One setting of the settings sheet.
    pub fn setting(&self, group: GroupCode, code: SettingCode) -> Option<&Setting> {
        self.settings().setting(group, code)
    }

    /// The number an input stands for.
    #[track_caller]
    pub fn figure(&self, name: &str) -> f64 {
        let key = Key::named(name).unwrap_or_else(|| panic!("no input “{name}”"));
        let figure = self.sheet.figure(key);
        figure.unwrap_or_else(|| panic!("“{name}” stands for no number"))
    }

    /// Whether an input is as it comes.
    pub fn at_default(&self, name: &str) -> bool {
        Key::named(name).is_none_or(|key| self.sheet.inputs.get(key) == key.spec().default())
    }

    /// The option chosen, by its key.
    #[track_caller]
    pub fn chosen(&self, name: &str) -> String {
        let key = Key::named(name).unwrap_or_else(|| panic!("no input “{name}”"));
        key.spec().write(self.sheet.inputs.get(key))
    }

    pub fn lithium(&self) -> bool {
        self.chosen("bank_chemistry") == "lfp"
    }

    /// 12 V blocks in series.
    pub fn blocks(&self) -> f64 {
        self.sheet.inputs.bank.nominal_v.blocks()
    }

    /// Cells in series.
    pub fn cells(&self) -> f64 {
        let a_block = if self.lithium() { 4.0 } else { 6.0 };
        a_block * self.blocks()
    }

    pub fn direct(&self) -> bool {
        self.chosen("way_kind") == "direct"
    }

    /// Whether findings with this code are there, and their weights.
    pub fn weights(&self, code: &str) -> Vec<Weight> {
        let findings = self.report.findings.iter();
        let same = findings.filter(|finding| finding.code() == named(code));
        same.map(weight).collect()
    }

    pub fn has(&self, code: &str) -> bool {
        !self.weights(code).is_empty()
    }

    /// Codes of the findings of one weight.
    pub fn codes(&self, wanted: Weight) -> Vec<&'static str> {
        let findings = self.report.findings.iter();
        let same = findings.filter(|finding| weight(finding) == wanted);
        same.map(|finding| finding.code().name()).collect()
    }

    /// All findings, for the eye.
    pub fn told(&self) -> String {
        let findings = self.report.findings.iter();
        let lines = findings.map(|f| format!("    {:?} {}: {}", weight(f), f.code(), said(f)));
        lines.collect::<Vec<_>>().join("\n")
    }
}

/// A search gone through to its end.
pub fn search(sheet: &Worksheet) -> Found {
    let mut search = Search::new(sheet);
    while !search.done() {
        search.step(500);
    }
    search.found()
}

/// How bad a finding is.
pub fn weight(finding: &Finding) -> Weight {
    match finding.severity() {
        Severity::Danger => Weight::Danger,
        Severity::Fix => Weight::Fix,
        Severity::Note => Weight::Note,
    }
}

/// The code of a finding, which must be one.
#[track_caller]
fn named(code: &str) -> Code {
    Code::named(code).unwrap_or_else(|| panic!("no finding is named {code}"))
}

/// The sentence of a finding.
pub fn said(finding: &Finding) -> String {
    text::findings::sentence(finding, &Reader::METRIC)
}

/// The word an enum has in JSON.
pub fn word(value: &impl Serialize) -> String {
    let json = serde_json::to_value(value).expect("it is JSON");
    json.as_str().unwrap_or_default().to_string()
}
