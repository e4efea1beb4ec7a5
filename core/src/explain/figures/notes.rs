//! Sentences that several figures share.

pub(super) const LISTED: &str = "Added up from the list of loads.";
pub(super) const AS_GIVEN: &str = "As you gave it.";
pub(super) const SUN_COVERS: &str =
    "Solar, another source, shore power or a generator covers the use; the engine need not run.";
pub(super) const STEPPED: &str = "There is no closed formula: the run is stepped through time, as current and heat change. The mean current is the run's own, so this line ties time and current together and does not replace the stepping.";
pub(super) const DAILY: &str =
    " Each run ends at the charge target and begins where the rest of the day left the bank.";
pub(super) const FUEL: &str = "What turns the engine, and what the alternator asks on top.";
pub(super) const SHAFT: &str = "Energy at the shaft is added up along the run.";
pub(super) const DRAWN: &str =
    "Less what the house draws meanwhile, and the start battery where the house bank keeps it.";
