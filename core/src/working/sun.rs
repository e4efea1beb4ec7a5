//! What the sun gives.

use super::Made;
use super::boat::{At, Boat, given, made, told};
use super::day::bank_v;
use super::expr::num;
use crate::physics::solar::{FULL_SUN_MJ, MIDDLE_DAYS, SunPlace, cell_c, heat_factor, hour_shares};
use crate::sky::sky;
use crate::worksheet::SunBasis;

/// Where the sun stands on the mean day of the worksheet's month.
fn place(boat: &Boat) -> SunPlace {
    let month = boat.inputs().sun.month as usize;
    SunPlace::on(MIDDLE_DAYS.get(month).copied().unwrap_or(1.0))
}

fn hours(boat: &Boat) -> f64 {
    sky(boat.inputs(), boat.inputs().sun.month).full_hours
}

/// What heat leaves of the panels' power, the mean over the day's sun, 0 to 1.
fn heat_share(boat: &Boat) -> f64 {
    let sun = &boat.inputs().sun;
    let full_hours = hours(boat);
    hour_shares(place(boat).sunset_rad(sun.latitude_deg))
        .map(|share| {
            let w_m2 = 1000.0 * full_hours * share;
            let cells_c = cell_c(boat.inputs().space.outside_c, w_m2, sun.noct_c);
            share * heat_factor(cells_c, sun.heat_loss_pct_k / 100.0)
        })
        .fold(0.0, |sum, share| sum + share)
}

pub(super) fn sun_wh(boat: &Boat, _: At) -> Option<Made> {
    let value = boat.report.energy.sun_wh;
    let (panels, share) = (boat.input("sun_panel_w"), boat.input("sun_yield_pct"));
    Some(match boat.inputs().sun.basis {
        SunBasis::Hours => made(value, panels * boat.input("sun_full_hours") * share, ""),
        SunBasis::Place => {
            let full = boat.worked("h_sun", At::Never, "inner.sun_full_hours", hours(boat));
            let name = "What heat leaves of it, the mean over the day's sun";
            let heat = given("k_heat", name, heat_share(boat), "");
            let mut made = made(
                value,
                panels * full * share * heat,
                "Reckoned hour by hour: cells in the sun warm up and lose a little for each degree above 25 °C.",
            );
            made.also = &["sun_noct_c", "sun_heat_loss_pct_k", "space_outside_c"];
            made
        }
    })
}

pub(super) fn full_hours(boat: &Boat, _: At) -> Option<Made> {
    let sun = &boat.inputs().sun;
    if sun.basis == SunBasis::Hours {
        return Some(told(Some(sun.full_hours), "As you gave them."));
    }
    let name = "Sun on a level square metre outside the air, on the month's mean day";
    let outside_mj = place(boat).outside_air_mj(sun.latitude_deg);
    let outside = given("H₀", name, outside_mj, "MJ/m²");
    let mut made = made(
        hours(boat),
        boat.input("sun_clearness") * outside / num(FULL_SUN_MJ),
        "An hour of full sun is 3.6 MJ on a square metre.",
    );
    made.also = &["sun_latitude_deg", "sun_month"];
    Some(made)
}

pub(super) fn sun_ah(boat: &Boat, _: At) -> Option<Made> {
    let energy = &boat.report.energy;
    let wh = boat.worked("E_sun", At::Never, "energy.sun_wh", energy.sun_wh);
    Some(made(energy.sun_ah, wh / bank_v(boat), ""))
}
