//! What a month takes from the bank is put back by what charges it, so that a
//! month counts parts of runs. Uses the walk and the ledger.

use crate::analysis::year::ledger::{EnergyLedger, MainsAccount};
use crate::analysis::year::rule::Source;
use crate::analysis::year::walk::YearWalk;
use crate::physics::charging::{lost_ah, to_give_ah};

/// A run whose mean current stands for a month without any \[h\].
const USUAL_RUN_H: f64 = 2.0;

/// Lets what charges by the rule put back what the weeks have taken from the
/// bank \[A·h\], or leave out what they have gained, at its mean current of the
/// weeks and in no more than the hours that the rule leaves; gives what the bank
/// gains by it \[A·h\]. So a month counts parts of runs, and does not depend on
/// whether one has just ended.
pub fn put_back(ledger: &mut EnergyLedger, walker: &YearWalk, lacks_ah: f64, open_h: f64) -> f64 {
    let wanted_ah = to_give_ah(lacks_ah, walker.kept);
    let given_ah = match walker.orders.source {
        Source::Engine => by_engine(ledger, walker, wanted_ah, open_h),
        Source::Shore => by_mains(ledger.shore(), wanted_ah, open_h),
        Source::Generator => by_mains(ledger.generator(), wanted_ah, open_h),
        Source::Nothing => 0.0,
    };
    let lost_ah = ledger.balance.lost_ah + lost_ah(given_ah, walker.kept);
    // Rounding takes no more than there was.
    ledger.balance.lost_ah = lost_ah.max(0.0);
    given_ah * walker.kept
}

/// What the engine gives of it \[A·h\], with its time and its shafts' energy.
fn by_engine(ledger: &mut EnergyLedger, walker: &YearWalk, wanted_ah: f64, open_h: f64) -> f64 {
    let (engine, start) = (walker.engine(), walker.orders.start);
    let charging_h = ledger.engine_h - ledger.motoring_h;
    let (mean_a, kwh_ah) = if charging_h > 0.0 && ledger.ruled_ah > 0.0 {
        let kwh_ah = ledger.shaft_kwh / ledger.balance.engine_ah;
        (ledger.ruled_ah / charging_h, kwh_ah)
    } else {
        let usual_a = engine.mean_a(0.0, USUAL_RUN_H, start);
        (usual_a, engine.shaft_kwh_ah(start))
    };
    if mean_a <= 0.0 {
        return 0.0;
    }
    let most_ah = (open_h - charging_h).max(0.0) * mean_a;
    let given_ah = wanted_ah.clamp(-ledger.ruled_ah, most_ah);
    ledger.ruled_ah += given_ah;
    ledger.balance.engine_ah += given_ah;
    ledger.engine_h += given_ah / mean_a;
    ledger.shaft_kwh += given_ah * kwh_ah;
    given_ah
}

/// What shore power or the generator gives of it \[A·h\], with its time and its
/// energy; nothing where it has given nothing in the weeks.
fn by_mains(account: MainsAccount, wanted_ah: f64, open_h: f64) -> f64 {
    let (before_ah, hours) = (*account.given_ah, *account.hours);
    if before_ah <= 0.0 || hours <= 0.0 {
        return 0.0;
    }
    let most_ah = before_ah * (open_h / hours - 1.0).max(0.0);
    let given_ah = wanted_ah.clamp(-before_ah, most_ah);
    let more = given_ah / before_ah;
    *account.given_ah += given_ah;
    *account.hours += more * hours;
    *account.kwh += more * *account.kwh;
    given_ah
}
