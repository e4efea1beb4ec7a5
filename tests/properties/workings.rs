//! Every figure explains itself: its numbers, put through somebody else's
//! calculator, give it back, and what it used is the worksheet's own.

use ampwright_core::Worksheet;
use ampwright_core::boat::{Key, demo};
use ampwright_core::decision::arrangements::compare;
use ampwright_core::explain::{
    MathNode, Working, arrangement_ids, arrangement_working, arrangement_workings, ids, working,
    workings, workings_at,
};
use ampwright_core::report;
use ampwright_core::schema::Value;
use proptest::prelude::*;
use serde_json::Value as Json;

use crate::draw::{Drawn, any_sheet, normal_boat};

/// The results that the page shows, its answer strip and its tables.
const SHOWN: &[&str] = &[
    "energy.anchor.use_ah",
    "energy.anchor.use_wh",
    "energy.anchor.night_share_pct",
    "energy.sun_ah",
    "energy.engine_ah",
    "energy.autonomy_days",
    "day.need_ah",
    "day.engine_hours",
    "day.fuel_l",
    "day.marginal_fuel_l",
    "alternators.0.shaft_rpm",
    "output.full_cold_a",
    "output.hot_a",
    "alternators.0.hot.winding_c",
    "alternators.0.hot.rectifier_c",
    "alternators.0.hot.case_c",
    "alternators.0.hot.air_c",
    "output.space_air_m3h",
    "run.minutes_to_target",
    "run.minutes_to_80",
    "run.minutes_to_90",
    "run.minutes_to_100",
    "run.start_a",
    "run.mid_a",
    "run.mean_bank_a",
    "run.bank_energy_pct",
    "run.house_load_a",
    "run.peak_shaft_w",
    "run.fuel_l",
    "run.marginal_fuel_l",
    "run.alternators.0.peak.winding_c",
    "run.alternators.0.peak.rectifier_c",
    "run.alternators.0.peak.case_c",
    "run.peak_air_c",
    "run.alternators.1.peak.winding_c",
    "run.alternators.1.peak.rectifier_c",
    "run.alternators.1.peak.case_c",
    "run.air_settles_min",
    "run.alternators.0.soak_peak.rectifier_c",
    "run.soak.air_peak_c",
    "run.soak.air_peak_min",
    "engine.available_kw",
    "engine.peak_kw",
    "engine.peak_share_pct",
    "engine.mean_share_pct",
    "engine.idle_l_h",
    "engine.marginal_l_kwh",
    "lead.engine_hours",
    "lead.minutes_to_target",
    "lead.mid_bank_a",
    "run.mid_bank_a",
    "belts.0.engine_pulley_mm",
    "belts.0.wrap_deg",
    "belts.0.charging.belt_m_s",
    "belts.0.charging.shaft_nm",
    "belts.0.top.engine_w",
    "belts.0.top.rule_w",
    "load_dump.alternators.0.charging.internal_ohm",
    "load_dump.alternators.0.top.peak_v",
    "load_dump.alternators.0.charging.clamp_j",
    "load_dump.alternators.0.lead_left_v",
    "cables.short_circuit_a",
    "cables.runs.0.carries_a",
    "cables.runs.0.allowed_v",
    "cables.runs.0.metric.ampacity_a",
    "cables.runs.0.metric.drop_v",
    "cables.runs.0.gauge.copper_c",
    "cables.runs.0.gauge.fuse_least_a",
    "cables.runs.0.gauge.fuse_most_a",
];

/// The same text in the calculator's signs. Its least and greatest of two
/// stand between them: `min(a, b, c)` is `((a)min(b)min(c))` there, and “57 %”,
/// which is 57 hundredths and holds together, is `(57*0.01)`.
fn plain(figures: &str) -> String {
    let mut plain = String::new();
    // What each bracket that is open belongs to.
    let mut open: Vec<&str> = Vec::new();
    for sign in figures.replace("²", "^2").replace(" %", "%").chars() {
        match sign {
            '·' => plain.push('*'),
            '−' => plain.push('-'),
            '√' => plain.push_str("sqrt"),
            '%' => {
                let start = plain
                    .rfind(|c: char| !c.is_ascii_digit() && c != '.')
                    .map_or(0, |at| at + 1);
                plain.insert(start, '(');
                plain.push_str("*0.01)");
            }
            '(' => {
                let owner = ["min", "max"]
                    .into_iter()
                    .find(|name| plain.ends_with(name));
                if let Some(name) = owner {
                    plain.truncate(plain.len() - name.len());
                    plain.push('(');
                }
                open.push(owner.unwrap_or_default());
                plain.push('(');
            }
            ',' => {
                let owner = open.last().copied().unwrap_or_default();
                plain.push_str(&format!("){owner}("));
            }
            ')' => {
                let owner = open.pop().unwrap_or_default();
                plain.push_str(if owner.is_empty() { ")" } else { "))" });
            }
            other => plain.push(other),
        }
    }
    plain
}

/// What the numbers come to.
fn come_to(figures: &str) -> Result<f64, TestCaseError> {
    let text = plain(figures);
    exmex::eval_str::<f64>(&text)
        .map_err(|fault| TestCaseError::fail(format!("“{figures}” as “{text}”: {fault}")))
}

/// What stands in the report under a dotted name, in which a number is a place
/// in a list; none outside of it.
fn found<'a>(json: &'a Json, id: &str) -> Option<&'a Json> {
    id.split('.').try_fold(json, |json, part| match json {
        Json::Null => Some(json),
        Json::Object(parts) => parts.get(part),
        Json::Array(rows) => rows.get(part.parse::<usize>().ok()?),
        _ => None,
    })
}

fn agrees(json: &Json, working: &Working) -> Result<(), TestCaseError> {
    let half = 0.5 * 10f64.powi(-(working.decimals as i32));
    let id = working.id;
    if !id.starts_with("inner.") && !id.starts_with("moment.") {
        let reported = found(json, id.trim_start_matches("arrangement."));
        prop_assert!(reported.is_some(), "{id} is not in the report");
        prop_assert_eq!(reported.and_then(Json::as_f64), working.value, "{}", id);
    }
    if working.figures.is_empty() {
        prop_assert!(
            !working.note.is_empty(),
            "{id} has neither formula nor note"
        );
        return Ok(());
    }
    let value = working.value.unwrap_or(f64::NAN);
    let given = come_to(&working.figures)?;
    prop_assert!(
        (given - value).abs() <= half + 1e-9 * value.abs(),
        "{id} is {value}, but {} = {} gives {given}",
        working.symbols,
        working.figures
    );
    Ok(())
}

/// The words of a formula as it is printed: symbols, numbers and functions.
fn words(formula: &str) -> impl Iterator<Item = &str> {
    formula
        .split([' ', '(', ')', '/', '^', '²', '·', '√', '+', '−'])
        .map(|word| word.trim_end_matches(','))
        .filter(|word| !word.is_empty() && *word != "%")
}

/// Every symbol of a formula is told what it is, once.
fn symbols_are_told(working: &Working) -> Result<(), TestCaseError> {
    let known = |word: &str| {
        working
            .uses
            .iter()
            .filter(|used| used.symbol == word)
            .count()
    };
    for word in words(&working.symbols) {
        let number = word.parse::<f64>().is_ok();
        let function = ["min", "max", "exp", "ln", "sin", "cos", "asin", "abs"].contains(&word);
        prop_assert!(
            number || function || known(word) == 1,
            "{}: {word} in {} is told {} times",
            working.id,
            working.symbols,
            known(word)
        );
    }
    for used in working.uses.iter().filter(|used| !used.symbol.is_empty()) {
        let there = words(&working.symbols).any(|word| word == used.symbol);
        prop_assert!(there, "{}: {} is nowhere", working.id, used.symbol);
    }
    Ok(())
}

/// Whether each tag of a text is closed by its own, and nothing is left open.
fn is_well_formed(markup: &str) -> bool {
    let mut open: Vec<&str> = Vec::new();
    for piece in markup.split('<').skip(1) {
        let Some((tag, text)) = piece.split_once('>') else {
            return false;
        };
        if text.contains(['>', '&']) {
            return false;
        }
        match tag.strip_prefix('/') {
            Some(closed) if open.pop() != Some(closed) => return false,
            Some(_) => {}
            None => open.extend(tag.split(' ').next()),
        }
    }
    open.is_empty()
}

/// The MathML is well-formed and holds the numbers of the text, in order.
fn mathml_says_the_same(working: &Working) -> Result<(), TestCaseError> {
    let both = [
        (&working.symbols, &working.mathml.symbols),
        (&working.figures, &working.mathml.figures),
    ];
    for (text, formula) in both {
        prop_assert_eq!(text.is_empty(), formula.is_none(), "{}", working.id);
        let mathml = formula.as_ref().map(MathNode::markup).unwrap_or_default();
        prop_assert!(is_well_formed(&mathml), "{}: {mathml}", working.id);
        let set: Vec<&str> = mathml
            .split("<mn>")
            .skip(1)
            .filter_map(|rest| rest.split('<').next())
            .collect();
        let spaced = text.replace('²', " 2 ");
        let written: Vec<&str> = words(&spaced)
            .filter(|word| word.parse::<f64>().is_ok())
            .collect();
        prop_assert_eq!(set, written, "{}: {} {}", working.id, text, mathml);
    }
    Ok(())
}

/// Inputs are the worksheet's own; other workings are what they say.
fn used_is_own(sheet: &Worksheet, all: &[Working], working: &Working) -> Result<(), TestCaseError> {
    for used in &working.uses {
        prop_assert!(!used.name.is_empty(), "{}: {used:?}", working.id);
        prop_assert_ne!(&used.symbol, "?", "{}: {:?}", working.id, used);
        if let Some(name) = &used.key {
            let key = Key::named(name).expect("a key");
            let known = key.spec().is_fact().then(|| sheet.knowledge(key));
            prop_assert_eq!(used.known, known, "{}", name);
            prop_assert_eq!(used.value, sheet.figure(key), "{}", name);
            prop_assert_eq!(
                used.says.is_empty(),
                matches!(sheet.inputs.get(key), Value::Number(_)),
                "{}",
                name
            );
        } else {
            prop_assert_eq!(used.known, None);
        }
        if let Some(id) = used.working {
            let other = all.iter().find(|other| other.id == id);
            prop_assert!(other.is_some(), "{}: no working {id}", working.id);
            // Minutes and seconds may round the moment's last digit.
            let same = match (other.and_then(|other| other.value), used.value) {
                (Some(one), Some(two)) => (one - two).abs() <= 1e-9 * one.abs(),
                (one, two) => one == two,
            };
            prop_assert!(same, "{} uses {id} as {:?}", working.id, used.value);
        }
    }
    Ok(())
}

fn all_hold(sheet: &Worksheet) -> Result<(), TestCaseError> {
    let report = report(sheet);
    let json = serde_json::to_value(&report).expect("a report is JSON");
    let all = workings(sheet, &report);
    for working in &all {
        agrees(&json, working)?;
        used_is_own(sheet, &all, working)?;
        symbols_are_told(working)?;
        mathml_says_the_same(working)?;
    }
    for share in [0.0, 0.1, 0.6, 1.0] {
        let there = workings_at(sheet, &report, share * report.analyses.run.minutes);
        let both: Vec<Working> = there.iter().chain(&all).cloned().collect();
        for working in &there {
            agrees(&json, working)?;
            used_is_own(sheet, &both, working)?;
            symbols_are_told(working)?;
            mathml_says_the_same(working)?;
        }
    }
    Ok(())
}

/// What is said of each arrangement: its figures are the outcome's own, and
/// follow from its boat.
fn arrangements_hold(sheet: &Worksheet) -> Result<(), TestCaseError> {
    let outcomes = compare(sheet).outcomes;
    let Some(today) = outcomes.first() else {
        return Ok(());
    };
    for outcome in &outcomes {
        let with = outcome.arrangement.on(sheet);
        let report = report(&with);
        let json = serde_json::to_value(outcome).expect("an outcome is JSON");
        let costs = arrangement_workings(&with, &report, outcome, today);
        let both: Vec<Working> = costs
            .iter()
            .cloned()
            .chain(workings(&with, &report))
            .collect();
        prop_assert_eq!(costs.len(), arrangement_ids().count());
        for working in &costs {
            let alone = arrangement_working(&with, &report, outcome, today, working.id);
            prop_assert_eq!(alone.as_ref(), Some(working));
            agrees(&json, working)?;
            used_is_own(&with, &both, working)?;
            symbols_are_told(working)?;
            mathml_says_the_same(working)?;
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::cases(8))]

    #[test]
    fn the_numbers_of_arrangements_give_their_costs(Drawn(sheet) in normal_boat()) {
        arrangements_hold(&sheet)?;
    }

    #[test]
    fn the_numbers_of_odd_boats_arrangements_too(Drawn(sheet) in any_sheet()) {
        arrangements_hold(&sheet)?;
    }
}

proptest! {
    #![proptest_config(crate::cases(60))]

    #[test]
    fn the_numbers_give_the_result(Drawn(sheet) in normal_boat()) {
        all_hold(&sheet)?;
    }

    #[test]
    fn the_numbers_give_the_result_of_odd_boats_too(Drawn(sheet) in any_sheet()) {
        all_hold(&sheet)?;
    }
}

#[test]
fn the_default_and_the_demo_hold() {
    for sheet in [Worksheet::default(), demo()] {
        if let Err(fault) = all_hold(&sheet).and_then(|()| arrangements_hold(&sheet)) {
            panic!("{fault}");
        }
    }
}

#[test]
fn every_shown_result_has_one_working() {
    let (sheet, all) = (demo(), ids().collect::<Vec<_>>());
    let report = report(&sheet);
    for id in SHOWN {
        assert_eq!(all.iter().filter(|other| *other == id).count(), 1, "{id}");
        let there = !id.starts_with("run.alternators.1");
        let made = working(&sheet, &report, id);
        assert_eq!(made.is_some(), there, "{id}");
        assert!(made.is_none_or(|made| made.id == *id));
    }
    assert_eq!(working(&sheet, &report, "machine"), None);
}

#[test]
fn what_is_not_well_formed_is_seen() {
    assert!(is_well_formed("<math display=\"block\"><mi>x</mi></math>"));
    for markup in [
        "<math><mi>x</math>",
        "<mi>x",
        "<mi>x</mi></math>",
        "<mi>&</mi>",
    ] {
        assert!(!is_well_formed(markup), "{markup}");
    }
}

#[test]
fn the_calculators_signs() {
    for (figures, value) in [
        ("10 − (−5) · 57 %", 12.85),
        ("2 · √(1 − (3/5)²)", 1.6),
        ("min(3, max(1, 2) + 4/8, 7)", 2.5),
        ("0.25^(1/0.5) · 16", 1.0),
        ("100 · 1/(50 % · 4)", 50.0),
        ("(−2)² − 1 − 1", 2.0),
        ("12/2/3 · 4", 8.0),
        ("6/(4/2) + exp(−0/4)", 4.0),
    ] {
        let given = come_to(figures).expect("an expression");
        assert!((given - value).abs() < 1e-12, "{figures} gives {given}");
    }
}
