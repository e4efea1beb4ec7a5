//! Air and sea by latitude, against monthly means of coasts, all from memory:
//! no source is claimed for them. They say how far off the law may be that
//! stands in for a month nobody has filled in.

use ampwright_core::physics::climate::{MONTH_DAYS, air_season_k, sea_c};

use crate::near;

const FEBRUARY: usize = 1;
const AUGUST: usize = 7;

/// Latitude, air in February and August, sea in February and August.
const COASTS: [(&str, [f64; 5]); 12] = [
    ("Singapore", [1.0, 27.1, 28.1, 28.0, 29.5]),
    ("Antigua", [17.0, 25.2, 28.4, 26.3, 28.7]),
    ("Las Palmas", [28.0, 18.2, 24.4, 18.7, 22.5]),
    ("Gibraltar", [36.0, 13.9, 24.2, 15.5, 21.5]),
    ("Malta", [36.0, 12.4, 27.3, 15.5, 26.0]),
    ("Nice", [43.7, 9.8, 24.4, 13.3, 24.0]),
    ("Brest", [48.4, 7.0, 17.2, 10.5, 16.5]),
    ("Kiel", [54.3, 2.0, 18.0, 3.0, 18.0]),
    ("Stockholm", [59.3, -1.5, 17.5, 1.0, 17.0]),
    ("Sydney", [-33.9, 23.4, 13.6, 23.0, 19.0]),
    ("Auckland", [-36.8, 20.2, 11.3, 20.5, 14.5]),
    ("Hobart", [-42.9, 17.2, 9.3, 17.0, 12.0]),
];

#[test]
fn seasons_of_twelve_coasts() {
    for (place, [latitude, air_feb, air_aug, sea_feb, sea_aug]) in COASTS {
        let season = 0.5 * (air_season_k(latitude, AUGUST) - air_season_k(latitude, FEBRUARY));
        near(place, season, 0.5 * (air_aug - air_feb), 3.0);
        near(place, sea_c(latitude, FEBRUARY), sea_feb, 4.0);
        near(place, sea_c(latitude, AUGUST), sea_aug, 4.0);
    }
}

#[test]
fn the_south_is_half_a_year_later() {
    for month in 0..12 {
        let later = (month + 6) % 12;
        let (north, south) = (air_season_k(40.0, month), air_season_k(-40.0, later));
        assert!(north * south >= 0.0, "{north} {south}");
        near("equator", air_season_k(0.0, month), 0.0, 1e-12);
    }
    near("a year", MONTH_DAYS.iter().sum(), 365.25, 1e-9);
    assert!(sea_c(85.0, 2) >= -1.8);
}
