//! What is over or near its limit is found, what is not is not, and the
//! verdict says the same.

use ampwright_core::analysis::PartTemperatures;
use ampwright_core::boat::{Alternator, Regulators, WhichAlternator};
use ampwright_core::guidance::settings::{AlternatorReason, GroupCode, SettingCode, SettingReason};

use crate::answers::Weight;
use crate::answers::said;
use crate::says::Says;

/// Findings about a part that is too hot.
const TOO_HOT: [&str; 3] = ["winding_too_hot", "rectifier_too_hot", "case_too_hot"];
/// Findings that a part within 5 K of its limit may have.
const NEAR: &[&str] = &[
    "near_limit",
    "set_point_high",
    "nothing_watches_heat",
    "winding_too_hot",
    "rectifier_too_hot",
    "case_too_hot",
];

pub fn check(says: &Says) {
    let inputs = &says.sheet.inputs;
    let run = &says.report.analyses.run;
    let mut worst = [f64::NEG_INFINITY; 3];
    for (installed, run) in inputs.alternators().zip(&run.alternators) {
        let over_k = over_k(&run.peak, installed.alternator);
        for (worst, over) in worst.iter_mut().zip(over_k) {
            *worst = worst.max(over);
        }
    }
    for (code, over) in TOO_HOT.into_iter().zip(worst) {
        if over > 0.5 {
            says.must_find(code);
        }
        if over < -0.5 {
            says.must_not_find(code);
        }
    }
    near(says, worst);
    let cool = worst.into_iter().all(|over| over < -30.0);
    let noted = says.weights("nothing_watches_heat");
    let to_do = noted.iter().any(|weight| *weight != Weight::Note);
    says.holds(!cool || !to_do, || {
        format!("nothing comes within 30 K of its limit ({worst:.0?} K), and it is to be watched")
    });
    advice(says);
    output_curve(says);
    if says
        .codes(Weight::Danger)
        .iter()
        .any(|code| TOO_HOT.contains(code))
    {
        says.holds(!says.said_to_survive(), || {
            "the verdict says it survives, a finding that it cooks".to_string()
        });
    }
    // A load dump kills diodes: an alternator that loses its battery is not safe.
    let machines = &says.disconnect().alternators;
    let loses = machines
        .iter()
        .any(|machine| machine.bank_left_v().is_some());
    says.holds(
        !(loses && says.has("management_opens") && says.said_to_survive()),
        || "the verdict says it survives, and its battery is disconnected under load".to_string(),
    );
    if says.verdict().to_lowercase().contains("overheats") {
        let hot = TOO_HOT
            .iter()
            .chain(&["nothing_watches_heat"])
            .any(|code| says.has(code));
        says.holds(hot, || {
            "the verdict says it overheats, and no finding does".to_string()
        });
    }
    // A load dump cuts off what flows.
    let flows_a = run
        .series
        .iter()
        .map(|m| m.alternator_a)
        .fold(0.0, f64::max);
    let cut_a: f64 = says
        .disconnect()
        .alternators
        .iter()
        .filter(|machine| machine.alternator == WhichAlternator::First || inputs.on_both())
        .map(|machine| machine.charging.amperes)
        .sum();
    let off_a = 0.03 * flows_a + 0.5;
    if inputs.regulators() == Regulators::Together {
        says.holds((cut_a - flows_a).abs() < off_a, || {
            format!("{flows_a:.1} A flow, a load dump cuts off {cut_a:.1}")
        });
        return;
    }
    // Two that take turns are each at their highest at another time.
    says.holds(cut_a > flows_a - off_a, || {
        format!("{flows_a:.1} A flow, load dumps cut off {cut_a:.1} in all")
    });
    for (at, machine) in says.disconnect().alternators.iter().enumerate() {
        let own_a = run.series.iter().map(|m| m.alternators[at].amperes);
        let own_a = own_a.fold(0.0, f64::max);
        let cold_a = says.report.analyses.alternators[at].full_cold_a;
        let cut_a = machine.charging.amperes;
        // The table looks every few minutes; the highest may lie between.
        let within = cut_a > 0.97 * own_a - 0.5 && cut_a < 1.03 * cold_a + 0.5;
        says.holds(within, || {
            format!("{own_a:.1} A flow from one of two, a load dump cuts off {cut_a:.1}")
        });
    }
}

/// Advice that can be followed: a built-in regulator has no set-point, and what
/// is over its limit is spared by nothing.
fn advice(says: &Says) {
    let built_in = says.chosen("reg_kind") == "internal";
    for finding in &says.report.findings {
        let said = said(finding);
        let lower =
            said.contains("ower the set-point") || said.contains("ower the temperature limit");
        says.holds(!(built_in && lower), || {
            format!("a built-in regulator has no set-point to lower: {}", said)
        });
    }
    // A limit that lies low enough is no comfort while a part is too hot.
    let (run, alternator) = (&says.report.analyses.run, &says.sheet.inputs.alt);
    let over = over_k(&run.alternators[0].peak, alternator)
        .into_iter()
        .any(|k| k > 0.5);
    let limit = says.setting(GroupCode::Regulator, SettingCode::SetPoint);
    let comfort = limit.filter(|limit| {
        let SettingReason::Alternator(reason) = limit.reason else {
            return true;
        };
        !matches!(reason, AlternatorReason::PartTooHot { .. })
    });
    says.holds(!(over && comfort.is_some()), || {
        format!("a part is too hot, and the limit's reason is {limit:?}")
    });
}

/// A part that settles within 5 K of its limit, and comes there in the run,
/// is found.
fn near(says: &Says, peak_over_k: [f64; 3]) {
    let inputs = &says.sheet.inputs;
    let reports = &says.report.analyses.alternators;
    let mut settled = [f64::NEG_INFINITY; 3];
    for (installed, report) in inputs.alternators().zip(reports) {
        let Some(hot) = report.hot else { continue };
        let over_k = over_k(&hot, installed.alternator);
        for (settled, over) in settled.iter_mut().zip(over_k) {
            *settled = settled.max(over);
        }
    }
    let both = settled.into_iter().zip(peak_over_k);
    let nearest = both
        .map(|(a, b)| a.min(b))
        .fold(f64::NEG_INFINITY, f64::max);
    if nearest > -4.5 {
        says.must_find_one_of(NEAR);
    }
}

/// How far winding, rectifier and case are over their limits \[K\].
fn over_k(peak: &PartTemperatures, machine: &Alternator) -> [f64; 3] {
    [
        peak.winding_at_most_c() - machine.class.limit_c(),
        peak.rectifier_c - machine.rectifier_limit_c,
        peak.case_c - machine.case_limit_c,
    ]
}

trait OnBoth {
    fn on_both(&self) -> bool;
}

impl OnBoth for ampwright_core::Inputs {
    /// Whether both alternators charge the house bank.
    fn on_both(&self) -> bool {
        self.two.role == ampwright_core::boat::SecondRole::House
    }
}

/// At no speed does a hot alternator give more than a cold one.
fn output_curve(says: &Says) {
    for point in says.report.analyses.output.by_engine_rpm.iter() {
        let (hot_a, cold_a) = (point.hot_a, point.cold_a);
        says.holds(hot_a <= cold_a + 1e-6, || {
            let rpm = point.engine_rpm;
            format!("at {rpm} rpm it gives {hot_a:.1} A hot and {cold_a:.1} A cold")
        });
    }
}
