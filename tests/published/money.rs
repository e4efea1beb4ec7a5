//! Money over time. The loan is the worked example in the documentation of
//! `pmt`, numpy-financial (a general-purpose library); the factor at 5 % over
//! ten years that of the interest tables of any textbook of engineering
//! economy (from memory). What follows is arithmetic by hand.

use ampwright_core::physics::money::{capital_recovery, payback_years, wear_per_hour};

use crate::near;

#[test]
fn a_loan_of_fifteen_years() {
    // 200 000 at 7.5 % a year, paid monthly: 1854.0247200054619 a month.
    let month = 200_000.0 * capital_recovery(0.075 / 12.0, 12.0 * 15.0);
    near("month", month, 1_854.024_720_005_461_9, 1e-6);
}

#[test]
fn five_per_cent_over_ten_years() {
    let factor = capital_recovery(0.05, 10.0);
    near("A/P, 5 %, 10", factor, 0.1295, 0.00005);
    near("5000 spread", 5000.0 * factor, 647.52, 0.01);
}

#[test]
fn without_interest_it_is_shared_evenly() {
    near("1/n", capital_recovery(0.0, 8.0), 0.125, 1e-12);
    // Next to no interest is next to nothing more.
    near("almost", capital_recovery(1e-7, 8.0), 0.125, 1e-6);
}

#[test]
fn an_engine_hour() {
    // By hand: 1.5 L at 1.8 is 2.700; 150/150 + 8000/6000 is 2.333.
    let hour = 1.5 * 1.8 + wear_per_hour(150.0, 150.0, 8000.0, 6000.0);
    near("hour", hour, 5.033, 0.001);
    // 100 A at 13.8 V put 1.38 kWh into the bank in it.
    near("kWh", hour / 1.38, 3.647, 0.001);
}

#[test]
fn payback() {
    // By hand: 5000 that save 1200 a year.
    near(
        "years",
        payback_years(5000.0, 1200.0).unwrap(),
        4.1667,
        1e-4,
    );
    assert_eq!(payback_years(5000.0, 0.0), None);
    assert_eq!(payback_years(5000.0, -3.0), None);
    assert_eq!(payback_years(0.0, -3.0), Some(0.0));
}
