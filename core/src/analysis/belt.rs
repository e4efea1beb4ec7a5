//! Belt and shaft: what each alternator takes, what its belt carries, and what
//! it pulls at.

use serde::Serialize;

use crate::analysis::peak_loads::{AlternatorPeaks, LoadAtSpeed};
use crate::boat::{BeltKind, InstalledAlternator, Said, WhichAlternator};
use crate::physics::belt::{
    self, BeltType, carries_w, engine_w, grip, own_pull_n, radians, rule_w, side_n, speed_m_s,
    torque_nm, transmits_n, used_pct,
};

/// Pull on the crankshaft's end up to which nobody asks \[N\]: about what one
/// 13 mm V-belt gives at all the pull it may have, which is what engines leave
/// the factory with. Own reasoning; the engine's papers come first.
pub const USUAL_SIDE_N: f64 = 600.0;

/// Current that one belt for alternator and water pump is good for in a 12 V
/// system \[A\]: what the trade trusts one 10 mm V-belt with. Common practice.
pub const SHARED_WITH_PUMP_A: f64 = 80.0;

/// One alternator's belt.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct BeltReport {
    /// Which alternator it turns.
    pub alternator: WhichAlternator,
    /// Which belt it is; none as long as it is not entered.
    pub belt: Option<BeltKind>,
    /// Engine pulley \[mm\].
    pub engine_pulley_mm: f64,
    /// Wrap on the smaller pulley \[°\].
    pub wrap_deg: f64,
    /// Most pull of its tight side \[N\].
    pub tight_n: Option<f64>,
    /// Tight over slack pull at which it slips.
    pub slips_at_ratio: Option<f64>,
    /// Current the trade trusts it with in this system and with this wrap, wary \[A\].
    pub rule_low_a: Option<f64>,
    /// Current the trade trusts it with in this system and with this wrap, bold \[A\].
    pub rule_high_a: Option<f64>,
    /// In the run, at its peak.
    pub charging: BeltLoad,
    /// Cold, with the engine at its highest speed.
    pub top: BeltLoad,
    /// Smallest V-belts that carry both; none when none does.
    pub asks_v: Option<BeltKind>,
    /// Smallest multi-rib belt that carries both; none when none does.
    pub asks_ribs: Option<BeltKind>,
    /// The worst of the shares below \[%\].
    pub worst_pct: Option<f64>,
    /// Larger pull on the crankshaft of the two \[N\].
    pub side_n: Option<f64>,
    /// Whether the smaller pulley is smaller than the belt bears for long.
    pub pulley_too_small: bool,
    /// Whether it lies round the smaller pulley less than the trade wants.
    pub wrap_too_small: bool,
    /// Whether pulleys of that size do not fit side by side.
    pub pulleys_overlap: bool,
    /// Where it turns the water pump too, what one belt for both is good for
    /// \[A\]: [`SHARED_WITH_PUMP_A`] in this system; none where it does not.
    pub shared_with_pump_a: Option<f64>,
}

/// A belt at one engine speed.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct BeltLoad {
    /// Engine speed \[rpm\].
    pub engine_rpm: f64,
    /// The alternator's own \[rpm\].
    pub shaft_rpm: f64,
    /// What it gives \[A\].
    pub amperes: f64,
    /// What its shaft takes \[W\].
    pub shaft_w: f64,
    /// What the engine gives for it, belt losses included \[W\].
    pub engine_w: f64,
    /// What the engine gives for it by the rule of the trade, a horsepower for each 25 A
    /// at 12 V \[W\].
    pub rule_w: f64,
    /// Torque at its shaft \[N·m\].
    pub shaft_nm: f64,
    /// \[m/s\]
    pub belt_m_s: f64,
    /// Most the belt carries before it slips \[W\].
    pub carries_w: Option<f64>,
    /// How much of that is used \[%\].
    pub formula_pct: Option<f64>,
    /// How much of the bold figure of the rule of the trade is used \[%\].
    pub rule_pct: Option<f64>,
    /// Pull on the crankshaft with the belt as tight as usual \[N\].
    pub side_n: Option<f64>,
}

/// Every alternator's belt, the first one's first.
pub(crate) fn belts(peaks: &[AlternatorPeaks]) -> Vec<BeltReport> {
    peaks.iter().map(belt).collect()
}

fn belt(peaks: &AlternatorPeaks) -> BeltReport {
    let installed = &peaks.installed;
    let table = installed.belt.kind.table();
    let (alternator_mm, engine_mm) = (installed.belt.pulley_mm, installed.engine_pulley_mm());
    let wrap_deg = installed.belt_wrap_deg();
    let tight_n = installed.belt_tight_n();
    // The table's belt with what this one is said to bear.
    let fitted = table.map(|table| BeltType {
        tight_n: tight_n.unwrap_or(table.tight_n),
        ..table
    });
    let charging = load(installed, fitted.as_ref(), &peaks.charging);
    let top = load(installed, fitted.as_ref(), &peaks.top);
    let rule = fitted.map(|fitted| rule_a(installed, &fitted));
    let worst_pct = [&charging, &top]
        .iter()
        .flat_map(|load| [load.formula_pct, load.rule_pct])
        .flatten()
        .reduce(f64::max);
    BeltReport {
        alternator: installed.which,
        belt: table.map(|_| installed.belt.kind),
        engine_pulley_mm: engine_mm,
        wrap_deg,
        tight_n,
        slips_at_ratio: fitted.map(|fitted| ratio(installed, &fitted)),
        rule_low_a: rule.map(|rule| rule.0),
        rule_high_a: rule.map(|rule| rule.1),
        asks_v: asked(installed, &BeltKind::V, &peaks.charging, &peaks.top),
        asks_ribs: asked(installed, &BeltKind::RIBS, &peaks.charging, &peaks.top),
        worst_pct,
        side_n: charging
            .side_n
            .into_iter()
            .chain(top.side_n)
            .reduce(f64::max),
        pulley_too_small: table
            .is_some_and(|table| alternator_mm.min(engine_mm) < table.least_pulley_mm),
        wrap_too_small: table.is_some_and(|table| wrap_deg < table.least_wrap_deg),
        pulleys_overlap: table.is_some()
            && 0.5 * (alternator_mm + engine_mm) >= installed.belt.centres_mm,
        shared_with_pump_a: (installed.belt.pump == Said::Yes)
            .then(|| shared_with_pump_a(installed)),
        charging,
        top,
    }
}

/// What one belt for alternator and water pump is good for in this system \[A\].
fn shared_with_pump_a(installed: &InstalledAlternator) -> f64 {
    SHARED_WITH_PUMP_A / installed.blocks()
}

/// Tight over slack pull at which a belt slips here.
fn ratio(installed: &InstalledAlternator, belt: &BeltType) -> f64 {
    let wrap = radians(installed.belt_wrap_deg());
    grip(installed.belt.friction, belt.groove_deg, wrap)
}

/// What the trade trusts a belt with in this system: less current the higher
/// its voltage, less the less it is wrapped \[A\].
fn rule_a(installed: &InstalledAlternator, kind: &BeltType) -> (f64, f64) {
    let here = |rule_12v_a| belt::rule_a(rule_12v_a, installed.belt_wrap_deg(), installed.blocks());
    (here(kind.rule_a.0), here(kind.rule_a.1))
}

/// The most current that the trade trusts this alternator's belt with \[A\], less
/// where the belt turns the water pump too; none as long as no belt is named.
pub(crate) fn trusted_a(installed: &InstalledAlternator) -> Option<f64> {
    let (_, most_a) = rule_a(installed, &installed.belt.kind.table()?);
    Some(match installed.belt.pump {
        Said::Yes => most_a.min(shared_with_pump_a(installed)),
        Said::No | Said::Unsaid => most_a,
    })
}

/// What a belt carries at a shaft speed \[W\].
fn carried_w(installed: &InstalledAlternator, belt: &BeltType, shaft_rpm: f64) -> f64 {
    let m_s = speed_m_s(installed.belt.pulley_mm, shaft_rpm);
    carries_w(
        belt.tight_n,
        own_pull_n(belt.kg_m, m_s),
        ratio(installed, belt),
        m_s,
    )
}

/// The first of a family, smallest first, that carries both loads by the
/// formula and by the rule.
fn asked(
    installed: &InstalledAlternator,
    family: &[BeltKind],
    one: &LoadAtSpeed,
    other: &LoadAtSpeed,
) -> Option<BeltKind> {
    let carries = |kind: &&BeltKind| {
        kind.table().is_some_and(|belt| {
            [one, other].iter().all(|most| {
                most.amperes <= rule_a(installed, &belt).1
                    && most.shaft_w <= carried_w(installed, &belt, most.shaft_rpm)
            })
        })
    };
    family.iter().find(carries).copied()
}

fn load(installed: &InstalledAlternator, belt: Option<&BeltType>, most: &LoadAtSpeed) -> BeltLoad {
    let m_s = speed_m_s(installed.belt.pulley_mm, most.shaft_rpm);
    let wrap = radians(installed.belt_wrap_deg());
    let carried = belt.map(|belt| carried_w(installed, belt, most.shaft_rpm));
    BeltLoad {
        engine_rpm: most.engine_rpm,
        shaft_rpm: most.shaft_rpm,
        amperes: most.amperes,
        shaft_w: most.shaft_w,
        engine_w: engine_w(most.shaft_w, installed.boat.eng.belt_efficiency_pct / 100.0),
        rule_w: rule_w(most.amperes, installed.blocks()),
        shaft_nm: torque_nm(most.shaft_w, most.shaft_rpm),
        belt_m_s: m_s,
        carries_w: carried,
        // A belt that carries nothing is used many times over.
        formula_pct: carried.map(|carried| used_pct(most.shaft_w, carried)),
        rule_pct: belt.map(|belt| used_pct(most.amperes, rule_a(installed, belt).1)),
        side_n: belt.map(|belt| {
            let ratio = ratio(installed, belt).min(belt.usual_ratio);
            side_n(transmits_n(most.shaft_w, m_s), ratio, wrap)
        }),
    }
}
