//! What a size of cable bears and loses on its run, and the fuse that suits it. Uses
//! the figures of the run.

use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::cable::looked_at::{
    OfChoices, air, choice, length, of_choice, of_run, run,
};
use crate::explain::figures::cable::run::{ALLOWED_V, CARRIES_A};
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described, maybe};
use crate::physics::ampacity::{air_factor, ampacity_a, engine_share, note_1};
use crate::physics::cable::{copper_c, drop_v, each_a, load_share, spare_pct};
use crate::physics::fuse::{STRICT_V, least_rating_a, most_rating_a};

pub(super) static AMPACITY_A: OfChoices =
    each_choice!("ampacity_a", "ampacity", "A", 0, ampacity, |choice| choice
        .ampacity_a);
pub(super) static SPARE_PCT: OfChoices =
    each_choice!("spare_pct", "ampacity to spare", "%", 0, spare, |choice| {
        choice.spare_pct
    });
pub(super) static COPPER_C: OfChoices =
    each_choice!("copper_c", "copper gets", "°C", 0, copper, |choice| choice
        .copper_c);
pub(super) static DROP_V: OfChoices =
    each_choice!("drop_v", "voltage drop", "V", 2, drop_along, |choice| {
        choice.drop_v
    });
pub(super) static SPARE_V: OfChoices = each_choice!(
    "spare_v",
    "voltage drop to spare",
    "V",
    2,
    spare_drop,
    |choice| choice.spare_v
);
pub(super) static FUSE_LEAST_A: OfChoices = each_choice!(
    "fuse_least_a",
    "least rating of its fuse",
    "A",
    0,
    fuse_least,
    |choice| choice.fuse_least_a
);
pub(super) static FUSE_MOST_A: OfChoices = each_choice!(
    "fuse_most_a",
    "largest rating of its fuse",
    "A",
    0,
    fuse_most,
    |choice| choice.fuse_most_a
);

pub(super) fn rated(s: &Instant) -> Term {
    let rated_c = s.report().analyses.cables.insulation_c;
    described("What its insulation is rated for", "°C", rated_c)
}

/// What each cable carries.
pub(super) fn each(s: &Instant) -> Term {
    let cables = choice(s).map(|choice| f64::from(choice.cables));
    if cables == Some(1.0) {
        return of_run(s, &CARRIES_A).symbol("I");
    }
    let given = [
        of_run(s, &CARRIES_A),
        maybe("Cables side by side", "", cables),
    ];
    Term::of(each_a::FORMULA, given)
}

pub(super) fn ampacity(s: &Instant) -> Explanation {
    let in_engine_space = run(s).is_some_and(|run| run.engine_space);
    let factor = if in_engine_space {
        let note = note_1(s.report().analyses.cables.insulation_c);
        let note = described(
            "Share that note 1 of the table leaves in engine spaces",
            "",
            note,
        );
        Term::of(engine_share::FORMULA, [rated(s), air(s), note])
    } else {
        Term::of(air_factor::FORMULA, [rated(s), air(s)])
    };
    let table_a = choice(s).map(|choice| choice.table_a);
    let table = maybe("What the table gives it in air of 30 °C", "A", table_a);
    Explanation::of(Term::of(ampacity_a::FORMULA, [factor, table]))
}

pub(super) fn spare(s: &Instant) -> Explanation {
    let given = [of_choice(s, &AMPACITY_A), each(s)];
    Explanation::of(Term::of(spare_pct::FORMULA, given))
}

pub(super) fn copper(s: &Instant) -> Explanation {
    let share = Term::of(load_share::FORMULA, [each(s), of_choice(s, &AMPACITY_A)]);
    Explanation::of(Term::of(copper_c::FORMULA, [air(s), rated(s), share]))
}

pub(super) fn drop_along(s: &Instant) -> Explanation {
    let ohm_km = choice(s).map(|choice| choice.ohm_km);
    let given = [
        length(s),
        each(s),
        maybe("Resistance of one cable at 20 °C", "Ω/km", ohm_km),
        of_choice(s, &COPPER_C),
    ];
    Explanation::of(Term::of(drop_v::FORMULA, given)).note("Out and back.")
}

pub(super) fn spare_drop(s: &Instant) -> Explanation {
    let allowed = of_run(s, &ALLOWED_V).symbol("U_allowed");
    Explanation::of(allowed.less(of_choice(s, &DROP_V).symbol("U_drop")))
}

pub(super) fn fuse_least(s: &Instant) -> Explanation {
    Explanation::of(Term::of(least_rating_a::FORMULA, [each(s)]))
        .note("A quarter above the current, so that it does not age and open by itself.")
}

pub(super) fn fuse_most(s: &Instant) -> Explanation {
    if run(s).is_some_and(|run| run.fuse_v >= STRICT_V) {
        return Explanation::none(
            "From 50 V on no more than the cable's ampacity, or the next rating sold above it.",
        )
        .figures(&[]);
    }
    Explanation::of(Term::of(
        most_rating_a::FORMULA,
        [of_choice(s, &AMPACITY_A)],
    ))
}
