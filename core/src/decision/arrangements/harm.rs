//! What must not be proposed.

use crate::findings::{Code, Finding, HeatFinding, LegFinding, PartTooHot, Severity};
use crate::report::Report;

/// Findings that only say "Fix" and yet mean that a part is overheated,
/// overloaded or turned too fast, or that the arrangement does not work as
/// calculated. Such a boat is put right, not proposed.
const HARMFUL: [Code; 21] = [
    Code::BanksJoinedToLithium,
    Code::BeltSharedPump,
    Code::BeltTooSmall,
    Code::CaseTooHot,
    Code::ConverterStarves,
    Code::DayBelowWindow,
    Code::EngineOverloaded,
    Code::GeneratorTooLong,
    Code::GeneratorTooSmall,
    Code::LeadOverCurrent,
    Code::LegNearLimit,
    Code::LegTooHot,
    Code::LimitHeldByLoads,
    Code::ManagementOpens,
    Code::NearLimit,
    Code::Overspeed,
    Code::PacksFollow,
    Code::RectifierTooHot,
    Code::SecondTooSlow,
    Code::SoakRectifier,
    Code::WindingTooHot,
];

/// The findings that speak against a boat set up like this: every Danger, and
/// each of the others that means harm. Judged by itself, not against how bad
/// the boat is today.
pub(crate) fn harm(report: &Report) -> Vec<Finding> {
    let harmful = |finding: &&Finding| {
        finding.severity() == Severity::Danger
            || HARMFUL.contains(&finding.code()) && !only_may_be(finding)
            || unwatched_on_lithium(finding)
    };
    report.findings.iter().filter(harmful).cloned().collect()
}

/// Whether it says that nothing limits the temperature of an alternator on a
/// lithium bank, which asks all of it for hours.
fn unwatched_on_lithium(finding: &Finding) -> bool {
    let unwatched = matches!(
        finding,
        Finding::Heat(HeatFinding::NothingWatchesHeat { lithium: true, .. })
    );
    unwatched && finding.severity() != Severity::Note
}

/// Whether it says what may be because nobody has measured it: it is so on every
/// boat with this alternator, and no reason to propose another one.
fn only_may_be(finding: &Finding) -> bool {
    match finding {
        Finding::Heat(
            HeatFinding::WindingTooHot(PartTooHot { at_most, .. })
            | HeatFinding::NearLimit { at_most, .. },
        ) => *at_most,
        Finding::Leg(LegFinding::TooHot(hot) | LegFinding::NearLimit(hot)) => hot.at_most,
        _ => false,
    }
}
