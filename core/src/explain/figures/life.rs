//! How long the first alternator's parts last at the temperatures where it settles.

use crate::boat::WhichAlternator;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::temperatures::{HOT_CASE, HOT_WINDING};
use crate::explain::term::{Term, described};
use crate::physics::life::{grease_h, insulation_h, told_life_h};
use crate::physics::sources::INSULATION_LIFE;

pub(super) const FIGURES: &[&Figure] = &[&WINDING_AT_MOST, &INSULATION_H, &GREASE_H];

const HOURS_ONLY: &str =
    "Hours at that temperature. How often it gets hot and cold, dirt and vibration are not in it.";

pub(super) static WINDING_AT_MOST: Figure = Figure::new(
    "alternators.0.hot.winding_may_be_c",
    "… winding at most",
    "°C",
    0,
    |_| {
        Explanation::none("There is no closed formula: only the case was measured, and this is the winding of an alternator with as hot a case whose winding follows it as loosely as any does.")
            .figures(&[&HOT_WINDING, &HOT_CASE])
    },
)
.named("Hot, winding at most")
.only(|boat| {
    let first = boat.sheet.inputs.alternator(WhichAlternator::First);
    first.is_some_and(|first| first.winding_unknown())
})
.is(|s| s.report().analyses.alternators[0].hot?.winding_may_be_c);

static INSULATION_H: Figure = Figure::new(
    "alternators.0.insulation_h",
    "… insulation lasts",
    "h",
    0,
    |s| {
        let Some(hot) = s.report().analyses.alternators[0].hot else {
            return Explanation::none("It never settles.");
        };
        let class_c = s.inputs().alt.class.limit_c();
        let winding_c = hot.winding_at_most_c();
        let given = [
            described("Insulation class", "°C", class_c),
            described("Winding, hot", "°C", winding_c),
        ];
        let life = Term::of(insulation_h::FORMULA, given);
        Explanation::of(Term::of(told_life_h::FORMULA, [life])).note(HOURS_ONLY)
    },
)
.named("Hot, insulation lasts")
.source(INSULATION_LIFE)
.is(|s| s.report().analyses.alternators[0].insulation_h);

static GREASE_H: Figure = Figure::new(
    "alternators.0.grease_h",
    "… bearing grease lasts",
    "h",
    0,
    |s| {
        let Some(hot) = s.report().analyses.alternators[0].hot else {
            return Explanation::none("It never settles.");
        };
        let given = [described("Case, hot", "°C", hot.case_c)];
        Explanation::of(Term::of(grease_h::FORMULA, given)).note(HOURS_ONLY)
    },
)
.named("Hot, bearing grease lasts")
.is(|s| s.report().analyses.alternators[0].grease_h);
