//! What the sun gives.

use crate::boat::{SunBasis, key};
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::bank::BANK_V;
use crate::explain::figures::notes::AS_GIVEN;
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described, maybe};
use crate::physics::charging::charge_ah;
use crate::physics::solar::sun_wh;
use crate::physics::solar::{full_sun_hours, warm_yield};
use crate::physics::sources::SOLAR;

fn by_place(s: &Instant) -> bool {
    s.inputs().sun.basis == SunBasis::Place
}

pub(super) static SUN_WH: Figure = Figure::new(
    "energy.sun_wh",
    "Solar energy",
    "W·h",
    0,
    |s| {
        let (panels, yielded) = (s.input(key!(sun.panel_w)), s.input(key!(sun.yield_pct)));
        if !by_place(s) {
            let given = [panels, s.input(key!(sun.full_hours)), yielded];
            return Explanation::of(Term::of(sun_wh::FORMULA, given));
        }
        let sunny = &s.inputs().sun;
        let cool_wh = sun_wh(sunny.panel_w, s.boat.solar_day().full_hours, sunny.yield_pct / 100.0);
        let heat = if cool_wh > 0.0 {
            s.report().analyses.energy.sun_wh / cool_wh
        } else {
            1.0
        };
        let heat = described("What heat leaves of it, the mean over the day's sun", "", heat);
        let warm = Term::of(warm_yield::FORMULA, [yielded, heat]);
        let given = [panels, s.figure(&SUN_FULL_HOURS), warm];
        Explanation::of(Term::of(sun_wh::FORMULA, given))
            .note("Calculated hour by hour: cells in the sun warm up and lose a little for each degree above 25 °C.")
            .inputs(&[key!(sun.noct_c), key!(sun.heat_loss_pct_k), key!(space.outside_c)])
    },
)
.is(|s| Some(s.report().analyses.energy.sun_wh));

pub(super) static SUN_FULL_HOURS: Figure =
    Figure::new("inner.sun_full_hours", "Hours of full sun", "h", 2, |s| {
        if !by_place(s) {
            return Explanation::of(s.input(key!(sun.full_hours)).symbol("h_given")).note(AS_GIVEN);
        }
        let outside = maybe(
            "Sun on a level square metre outside the air, on the month's mean day",
            "MJ/m²",
            s.boat.solar_day().outside_air_mj,
        );
        let given = [s.input(key!(sun.clearness)), outside];
        Explanation::of(Term::of(full_sun_hours::FORMULA, given))
            .note("An hour of full sun is 3.6 MJ on a square metre.")
            .inputs(&[key!(sun.latitude_deg), key!(sun.month)])
    })
    .source(SOLAR)
    .is(|s| Some(s.boat.solar_day().full_hours));

pub(super) static SUN_AH: Figure = Figure::new("energy.sun_ah", "From solar", "A·h", 0, |s| {
    let given = [s.figure(&SUN_WH).symbol("E_sun"), s.figure(&BANK_V)];
    Explanation::of(Term::of(charge_ah::FORMULA, given))
})
.is(|s| Some(s.report().analyses.energy.sun_ah));
