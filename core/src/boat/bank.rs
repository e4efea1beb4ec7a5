//! The house bank.

use crate::boat::Inputs;
use crate::boat::section;
use crate::boat::{choose, number, optional};
use crate::physics::battery::{AGM, COMPENSATION_MV, FLOODED, GEL, LeadKind, compensated_v};
use crate::schema::{choice, effects};
use crate::units::{
    AMPERE, AMPERE_HOUR, CELSIUS, MILLIOHM, MILLIVOLT_PER_CELL_KELVIN, OHM_AMPERE_HOUR, PERCENT,
    VOLT, YEAR,
};

choice! {
    /// Battery chemistry.
    Chemistry {
        Lfp = "lfp", "Lithium iron phosphate (LFP)";
        Agm = "agm", "Lead, AGM";
        Gel = "gel", "Lead, gel";
        Flooded = "flooded", "Lead, flooded";
    }
}

impl Chemistry {
    /// The kind of lead battery it is; none for lithium.
    pub fn lead(self) -> Option<LeadKind> {
        match self {
            Chemistry::Lfp => None,
            Chemistry::Agm => Some(AGM),
            Chemistry::Gel => Some(GEL),
            Chemistry::Flooded => Some(FLOODED),
        }
    }
}

choice! {
    /// System voltage.
    NominalVolts {
        V12 = "12", "12 V";
        V24 = "24", "24 V";
        V48 = "48", "48 V";
    }
}

impl NominalVolts {
    /// How many 12 V blocks that is.
    pub fn blocks(self) -> f64 {
        match self {
            NominalVolts::V12 => 1.0,
            NominalVolts::V24 => 2.0,
            NominalVolts::V48 => 4.0,
        }
    }
}

section! {
    /// The house bank.
    Bank {
        chemistry: Chemistry = choose("Chemistry", Chemistry::OPTIONS, 0).nameplate()
            .help("Printed on the case.");
        nominal_v: NominalVolts = choose("System voltage", NominalVolts::OPTIONS, 0).nameplate()
            .help("Of the house bank. 12 V on most boats under 15 m.");
        capacity_ah: f64 = number("Capacity", AMPERE_HOUR, 10.0, 5000.0, 400.0).nameplate().spread_pct(25.0)
            .help("On the label. Several in parallel add up: write 2 x 200. Joined in series the ampere-hours stay those of one.");
        window_low_pct: Option<f64> = optional("Lowest state of charge", PERCENT, 0.0, 90.0, "10 % lithium, 50 % lead", |w| Some(usual_window_low_pct(&w.inputs)))
            .decided()
            .help("How far you let the bank fall. Lead that is emptied deeper ages fast.");
        window_high_pct: Option<f64> = optional("Daily charge target", PERCENT, 10.0, 100.0, "90 %", |_| Some(USUAL_WINDOW_HIGH_PCT))
            .decided()
            .help("Where a daily charge ends. LFP lasts longer when it is not kept at 100 %; the last tenth of a lead bank takes hours of engine.");
        charge_v: Option<f64> = optional("Charge voltage", VOLT, 10.0, 70.0, "the usual for the chemistry", |w| Some(usual_charge_v(&w.inputs))).nameplate()
            .help("The battery maker's figure at 25 °C, measured at the battery. In 12 V: LFP 13.8 to 14.2, AGM 14.2 to 14.6, gel 14.1 to 14.2, flooded 14.4 to 14.8.");
        charge_limit_a: Option<f64> = optional("Charge current limit", AMPERE, 1.0, 10_000.0, "for each A·h: 0.5 A lithium, 0.2 flooded, 0.25 gel, 0.35 AGM", |w| Some(w.inputs.usual_charge_limit_a())).nameplate().spread_pct(40.0)
            .help("The lowest of the cell maker's figure and the battery management system's label; 0.2 to 0.5 A for each A·h is usual. Batteries in parallel add up.");
        temperature_c: f64 = number("Battery temperature", CELSIUS, -30.0, 70.0, 25.0).measured().spread_by(5.0)
            .help("Of the cells while charging. Lithium takes little below 10 °C and must get nothing below 0 °C; lead wants more volts when cold.");
        resistance_ohm_ah: f64 = number("Cell resistance", OHM_AMPERE_HOUR, 0.05, 10.0, 0.8).advanced().spread(0.3, 1.2)
            .help("Of a 12 V block at 25 °C, times its ampere-hours: 0.3 to 1.2 for LFP. To measure: step the current by 50 A, divide the change in volts at the posts by 50, multiply by the capacity.")
            .when(|i| i.bank.chemistry == Chemistry::Lfp);
        harness_mohm: f64 = number("Switch, fuse and cable", MILLIOHM, 0.0, 100.0, 1.5).advanced().spread(1.0, 3.0)
            .help("Resistance between the cells and where the regulator measures: 1 to 3 mΩ with the management system's own switch.");
        charge_efficiency_pct: Option<f64> = optional("Charge efficiency", PERCENT, 50.0, 100.0, "the usual for the chemistry", |w| Some(usual_charge_efficiency_pct(&w.inputs))).advanced().spread_by(5.0)
            .help("Ampere-hours that come out for those that went in: at least 99.5 % for LFP, 85 to 95 % for lead.");
        acceptance_pct: f64 = number("Charge acceptance, against the usual", PERCENT, 30.0, 200.0, 100.0).advanced().spread(65.0, 140.0)
            .help("How readily the bank takes charge, compared with a healthy one of its kind: an old or sulphated one takes less, a new one with thin plates more. 65 to 140 %.")
            .when(|i| i.bank.chemistry.lead().is_some());
        compensation_mv: Option<f64> = optional("Temperature compensation", MILLIVOLT_PER_CELL_KELVIN, -10.0, 0.0, "−4 for lead, none for lithium", |w| Some(usual_compensation_mv(&w.inputs))).nameplate().advanced()
            .help("How the charger lowers its voltage for a warm lead battery: −3 to −5 mV for each cell and degree. A lithium bank must get none.");
        coldest_charge_c: Option<f64> = optional("Lowest charging temperature", CELSIUS, -30.0, 20.0, "0 °C", |_| Some(0.0)).nameplate().advanced()
            .help("Of the cells, from the battery maker's sheet: lithium must get nothing below it.")
            .when(lithium);
        limit_to_5c_a: Option<f64> = optional("Most current up to 5 °C", AMPERE, 0.0, 10_000.0, "0.1 A for each A·h", |w| Some(w.inputs.bank.capacity_ah * 0.1)).nameplate().advanced()
            .help("From the lowest charging temperature on; from the battery maker's sheet.")
            .when(lithium);
        limit_to_10c_a: Option<f64> = optional("Most current from 5 to 10 °C", AMPERE, 0.0, 10_000.0, "0.2 A for each A·h", |w| Some(w.inputs.bank.capacity_ah * 0.2)).nameplate().advanced()
            .help("From the battery maker's sheet.")
            .when(lithium);
        limit_over_50c_a: Option<f64> = optional("Most current from 50 to 60 °C", AMPERE, 0.0, 10_000.0, "0.1 A for each A·h", |w| Some(w.inputs.bank.capacity_ah * 0.1)).nameplate().advanced()
            .help("From the battery maker's sheet; nothing above 60 °C.")
            .when(lithium);
        age_years: f64 = number("Bank's age", YEAR, 0.0, 30.0, 0.0).nameplate().advanced()
            .help("Years since it was new; its capacity above is that when new. Put in 5 or 10 to see what is left of the answer then.");
        fade_pct: Option<f64> = optional("Capacity lost a year", PERCENT, 0.0, 15.0, "2 % lithium, 5 % lead", |w| Some(w.inputs.fade_pct())).spread_pct(50.0).advanced()
            .help("Of that when new, by years and use together: 1 to 3 % for lithium iron phosphate at 25 °C, twice that in the tropics; 3 to 8 % for lead (common practice).")
            .when(aged);
        rise_pct: f64 = number("Resistance gained a year", PERCENT, 0.0, 50.0, 5.0).spread(2.0, 10.0).advanced()
            .help("Of that when new: 2 to 10 %, so that it has about doubled when the bank is worn out (common practice).")
            .when(|i| lithium(i) && aged(i));
    }
}

effects! {
    Bank {
        capacity_ah: Up, Down;
        window_low_pct: Level, Level;
        window_high_pct: Level, Level;
        charge_v: Up, Down;
        charge_limit_a: Up, Down;
        temperature_c: Depends("cold lithium takes less, and warm lead is charged at fewer volts"), Depends("as the current");
        resistance_ohm_ah: Down, Up;
        harness_mohm: Down, Up;
        charge_efficiency_pct: Level, Down;
        acceptance_pct: Up, Down;
        coldest_charge_c: Depends("only cold cells ask for it"), Depends("as the current");
        limit_to_5c_a: Depends("only cold cells ask for it"), Depends("as the current");
        limit_to_10c_a: Depends("only cold cells ask for it"), Depends("as the current");
        limit_over_50c_a: Depends("only hot cells ask for it"), Depends("as the current");
        age_years: Down, Depends("with less capacity each run begins lower, with more resistance it takes longer");
        fade_pct: Down, Depends("as the age");
        rise_pct: Down, Up;
        compensation_mv: Depends("a warm bank gets more volts by less compensation, a cold one fewer"), Depends("as the current");
    }
}

fn lithium(inputs: &Inputs) -> bool {
    inputs.bank.chemistry == Chemistry::Lfp
}

fn aged(inputs: &Inputs) -> bool {
    inputs.bank.age_years > 0.0
}

const USUAL_WINDOW_HIGH_PCT: f64 = 90.0;

fn usual_window_low_pct(inputs: &Inputs) -> f64 {
    match inputs.bank.chemistry {
        Chemistry::Lfp => 10.0,
        _ => 50.0,
    }
}

/// Of a 12 V block of drop-in packs \[V\]: 3.45 V a cell, common practice, no
/// source. Such a pack opens without warning when one cell runs ahead.
const CLOSED_PACK_V: f64 = 13.8;

/// 3.55 V for each lithium cell in series, less for drop-in packs, or the
/// absorption voltage.
pub(crate) fn usual_charge_v(inputs: &Inputs) -> f64 {
    let lithium_v = if inputs.packs_closed() {
        CLOSED_PACK_V
    } else {
        14.2
    };
    let block_v = inputs
        .bank
        .chemistry
        .lead()
        .map_or(lithium_v, |lead| lead.absorption_v);
    block_v * inputs.bank.nominal_v.blocks()
}

/// 0.5 C for lithium; for lead what its kind usually allows. Common practice.
fn usual_rate_a(inputs: &Inputs) -> f64 {
    let rate = inputs
        .bank
        .chemistry
        .lead()
        .map_or(0.5, |lead| lead.usual_rate);
    rate * inputs.bank.capacity_ah
}

pub(super) fn usual_charge_efficiency_pct(inputs: &Inputs) -> f64 {
    inputs
        .bank
        .chemistry
        .lead()
        .map_or(99.5, |lead| 100.0 * lead.efficiency)
}

fn usual_compensation_mv(inputs: &Inputs) -> f64 {
    match inputs.bank.chemistry {
        Chemistry::Lfp => 0.0,
        _ => COMPENSATION_MV,
    }
}

impl Inputs {
    /// Lowest state of charge of daily use \[%\].
    pub fn window_low_pct(&self) -> f64 {
        self.bank
            .window_low_pct
            .unwrap_or_else(|| usual_window_low_pct(self))
    }

    /// Highest state of charge of daily use \[%\].
    pub fn window_high_pct(&self) -> f64 {
        self.bank.window_high_pct.unwrap_or(USUAL_WINDOW_HIGH_PCT)
    }

    /// Voltage the bank is charged to at 25 °C \[V\].
    pub fn charge_v(&self) -> f64 {
        self.bank.charge_v.unwrap_or_else(|| usual_charge_v(self))
    }

    /// What a bank of its capacity may usually take \[A\].
    pub(super) fn usual_rate_a(&self) -> f64 {
        usual_rate_a(self)
    }

    /// Most current the bank may take at its usual temperatures \[A\]: its own
    /// limit, whatever the weather. Several packs take less than the sum of their
    /// limits, as the one with the least resistance is at its limit first.
    pub fn own_charge_limit_a(&self) -> f64 {
        self.pack_limit_a() * self.pack_count() as f64 * self.packs_part()
    }

    /// How chargers follow the bank's temperature \[mV for each cell and kelvin\].
    pub fn compensation_mv(&self) -> f64 {
        self.bank
            .compensation_mv
            .unwrap_or_else(|| usual_compensation_mv(self))
    }

    /// Change of the charging voltages with the bank's temperature \[V\].
    pub fn compensation_v(&self) -> f64 {
        compensated_v(
            0.0,
            self.bank.nominal_v.blocks(),
            self.compensation_mv(),
            self.bank.temperature_c,
        )
    }

    /// How far the voltages a lead bank itself asks for and withstands lie from
    /// those at 25 °C \[V\], whatever its chargers do; 0 for lithium.
    pub fn lead_shift_v(&self) -> f64 {
        if self.bank.chemistry == Chemistry::Lfp {
            return 0.0;
        }
        compensated_v(
            0.0,
            self.bank.nominal_v.blocks(),
            COMPENSATION_MV,
            self.bank.temperature_c,
        )
    }
}
