//! Energy, charge, current and time: the arithmetic of a day and of a run.

use crate::formula::formula;
use crate::physics::sources;

/// Charge \[A·h\] of an energy \[W·h\] at a voltage \[V\].
#[formula(symbol = "Q", unit = "A·h", source = sources::ARITHMETIC)]
pub fn charge_ah(#[symbol("E")] energy_wh: f64, #[symbol("V")] volts: f64) -> f64 {
    energy_wh / volts
}

/// Energy \[W·h\] of a charge \[A·h\] at a voltage \[V\].
#[formula(symbol = "E", unit = "W·h", source = sources::ARITHMETIC)]
pub fn energy_wh(#[symbol("Q")] charge_ah: f64, #[symbol("V")] volts: f64) -> f64 {
    charge_ah * volts
}

/// What is left of a day's use \[A·h\] after lighter loads save a part, 0 to 1.
#[formula(symbol = "Q_day", unit = "A·h", source = sources::ARITHMETIC)]
pub fn saved_ah(#[symbol("Q_given")] given_ah: f64, #[symbol("f_saved")] saved: f64) -> f64 {
    given_ah * (1.0 - saved)
}

/// A part (0 to 1) of an energy \[W·h\].
#[formula(symbol = "E", unit = "W·h", source = sources::ARITHMETIC)]
pub fn part_wh(#[symbol("E")] energy_wh: f64, #[symbol("f")] part: f64) -> f64 {
    energy_wh * part
}

/// Voltage of blocks in series \[V\].
#[formula(symbol = "V", unit = "V", source = sources::CELLS)]
pub fn bank_v(#[symbol("N")] blocks: f64, #[symbol("V_block")] block_v: f64) -> f64 {
    blocks * block_v
}

/// What sun and other sources leave of a day's use \[A·h\], never less than 0.
#[formula(symbol = "Q_rest", unit = "A·h", source = sources::ARITHMETIC)]
pub fn rest_ah(
    #[symbol("Q_day")] use_ah: f64,
    #[symbol("Q_direct")] direct_ah: f64,
    #[symbol("Q_stored")] stored_ah: f64,
) -> f64 {
    (use_ah - direct_ah - stored_ah).max(0.0)
}

/// Mean current of a day's use \[A\].
#[formula(symbol = "I_house", unit = "A", source = sources::ARITHMETIC)]
pub fn mean_draw_a(#[symbol("Q_day")] use_ah: f64) -> f64 {
    use_ah / 24.0
}

/// Charge between two states of charge (0 to 1), of which a draw gets a part
/// (0 to 1) \[A·h\].
#[formula(symbol = "Q_usable", unit = "A·h", source = sources::ARITHMETIC)]
pub fn usable_ah(
    #[symbol("s_high")] high: f64,
    #[symbol("s_low")] low: f64,
    #[symbol("C")] capacity_ah: f64,
    #[symbol("k_P")] given: f64,
) -> f64 {
    (high - low).max(0.0) * capacity_ah * given
}

/// Part of its 20-hour capacity \[A·h\] that lead gives to a steady draw \[A\], by
/// Peukert's law; a gentler draw is not credited with more. W. Peukert,
/// Elektrotechnische Zeitschrift 20, 1897; from memory.
#[formula(symbol = "k_P", unit = "", source = sources::CELLS)]
pub fn peukert_share(
    #[symbol("I_house")] draw_a: f64,
    #[symbol("C")] capacity_ah: f64,
    #[symbol("p")] exponent: f64,
) -> f64 {
    (20.0 * draw_a / capacity_ah).powf(1.0 - exponent).min(1.0)
}

/// Charge that a mean current brings in a day \[A·h\].
#[formula(symbol = "Q_other", unit = "A·h", source = sources::ARITHMETIC)]
pub fn day_ah(#[symbol("I_other")] mean_a: f64) -> f64 {
    mean_a * 24.0
}

/// Days that a charge lasts \[d\].
#[formula(symbol = "t", unit = "days", source = sources::ARITHMETIC)]
pub fn autonomy_days(
    #[symbol("Q_usable")] usable_ah: f64,
    #[symbol("Q_rest")] rest_ah: f64,
) -> f64 {
    usable_ah / rest_ah
}

/// Engine time \[h\] that puts back a charge \[A·h\] at a mean current into the
/// bank \[A\], of which it keeps a part (0 to 1), while the house draws on.
#[formula(symbol = "t", unit = "h", source = sources::ARITHMETIC)]
pub fn engine_hours(
    #[symbol("Q")] need_ah: f64,
    #[symbol("η_bank")] efficiency: f64,
    #[symbol("I_mean")] mean_a: f64,
    #[symbol("I_house")] house_a: f64,
) -> f64 {
    need_ah / (efficiency * mean_a + house_a)
}

/// Time between two states of charge (0 to 1) at a mean current \[min\].
#[formula(symbol = "t", unit = "min", source = sources::ARITHMETIC)]
pub fn charging_minutes(
    #[symbol("C")] capacity_ah: f64,
    #[symbol("s_to")] to: f64,
    #[symbol("s_from")] from: f64,
    #[symbol("η_bank")] efficiency: f64,
    #[symbol("I_mean")] mean_a: f64,
) -> f64 {
    60.0 * capacity_ah * (to - from) / (efficiency * mean_a)
}

/// Mean current between two states of charge (0 to 1) in a time \[min\], \[A\].
#[formula(symbol = "I_mean", unit = "A", source = sources::ARITHMETIC)]
pub fn mean_bank_a(
    #[symbol("C")] capacity_ah: f64,
    #[symbol("s_end")] to: f64,
    #[symbol("s_from")] from: f64,
    #[symbol("η_bank")] efficiency: f64,
    #[symbol("t")] minutes: f64,
) -> f64 {
    60.0 * capacity_ah * (to - from) / (efficiency * minutes)
}

/// State of charge \[%\] from that at the start (0 to 1) and what was gained \[A·h\].
#[formula(symbol = "s", unit = "%", source = sources::ARITHMETIC)]
pub fn charge_pct(
    #[symbol("s_from")] from: f64,
    #[symbol("Q_gained")] gained_ah: f64,
    #[symbol("C")] capacity_ah: f64,
) -> f64 {
    100.0 * (from + gained_ah / capacity_ah)
}

/// Energy a bank keeps of what goes in \[%\]: charge kept (0 to 1), at the voltage
/// at rest over that of charging.
#[formula(symbol = "f", unit = "%", source = sources::CELLS)]
pub fn kept_energy_pct(
    #[symbol("η_bank")] efficiency: f64,
    #[symbol("V_rest")] rest_v: f64,
    #[symbol("V_charging")] charging_v: f64,
) -> f64 {
    100.0 * efficiency * rest_v / charging_v
}

/// Charge to be given to a bank \[A·h\] for it to hold so much more \[A·h\]; of what it
/// is given it keeps a part, above 0 to 1.
#[formula(symbol = "Q_given", unit = "A·h", source = sources::ARITHMETIC)]
pub fn to_give_ah(
    #[symbol("Q_gained")] gained_ah: f64,
    #[symbol("η_bank")] efficiency: f64,
) -> f64 {
    gained_ah / efficiency
}

/// Lost of a charge given to a bank \[A·h\], which keeps a part of it, 0 to 1.
#[formula(symbol = "Q_lost", unit = "A·h", source = sources::ARITHMETIC)]
pub fn lost_ah(#[symbol("Q_given")] given_ah: f64, #[symbol("η_bank")] efficiency: f64) -> f64 {
    given_ah * (1.0 - efficiency)
}

/// Time \[h\] in which an alternator that gives what heat lets it \[A\] warms as far
/// as one does in a time \[h\] that gives less \[A\]: copper's heat goes with the
/// square of the current. Own reasoning.
#[formula(symbol = "t_warm", unit = "h", source = sources::OWN_REASONING)]
pub fn warmed_h(
    #[symbol("t")] hours: f64,
    #[symbol("I")] given_a: f64,
    #[symbol("I_heat")] heat_lets_a: f64,
) -> f64 {
    hours * (given_a / heat_lets_a).powi(2)
}

/// Resistance of lithium cells \[Ω\] \[Ω·A·h\] \[A·h\], a cold bank's times a factor.
#[formula(symbol = "R_cells", unit = "Ω", source = sources::CELLS)]
pub fn lithium_ohm(
    #[symbol("r_C")] ohm_ah: f64,
    #[symbol("N")] blocks: f64,
    #[symbol("C")] capacity_ah: f64,
    #[symbol("k_cold")] cold: f64,
) -> f64 {
    ohm_ah * blocks / capacity_ah * cold
}

/// Resistance of lead cells \[Ω\]: such that they take what they accept \[A\] at
/// their absorption voltage \[V\].
#[formula(symbol = "R_cells", unit = "Ω", source = sources::CELLS)]
pub fn lead_ohm(
    #[symbol("V_abs")] absorption_v: f64,
    #[symbol("V_rest")] rest_v: f64,
    #[symbol("I_takes")] accepted_a: f64,
) -> f64 {
    (absorption_v - rest_v).max(0.01) / accepted_a
}

/// Milliohms in ohms.
#[formula(symbol = "R", unit = "Ω", source = sources::ARITHMETIC)]
pub fn ohm(#[symbol("R_cable")] milliohm: f64) -> f64 {
    milliohm / 1000.0
}

/// Resistance of a bank to where the regulator measures \[Ω\].
#[formula(symbol = "R", unit = "Ω", source = sources::CELLS)]
pub fn bank_ohm(#[symbol("R_cells")] cells_ohm: f64, #[symbol("R_cable")] cable_ohm: f64) -> f64 {
    cells_ohm + cable_ohm
}

/// Voltage at a bank's terminals \[V\] with a current into it \[A\].
#[formula(symbol = "V", unit = "V", source = sources::CELLS)]
pub fn terminal_v(
    #[symbol("V_rest")] rest_v: f64,
    #[symbol("I_bank")] bank_a: f64,
    #[symbol("R")] ohm: f64,
) -> f64 {
    rest_v + bank_a * ohm
}

/// Current into a bank that a voltage lets flow \[A\].
#[formula(symbol = "I_bank", unit = "A", source = sources::CELLS)]
pub fn bank_a(
    #[symbol("V")] volts: f64,
    #[symbol("V_rest")] rest_v: f64,
    #[symbol("R")] ohm: f64,
) -> f64 {
    (volts - rest_v) / ohm
}

/// What a held voltage lets flow to bank and house \[A\], never less than 0.
#[formula(symbol = "I_volt", unit = "A", source = sources::OWN_REASONING)]
pub fn held_a(
    #[symbol("V_held")] held_v: f64,
    #[symbol("V_rest")] rest_v: f64,
    #[symbol("R")] ohm: f64,
    #[symbol("I_drawn")] drawn_a: f64,
) -> f64 {
    (bank_a(held_v, rest_v, ohm) + drawn_a).max(0.0)
}

/// What the engine's services and its start battery leave of a current \[A\].
#[formula(symbol = "I", unit = "A", source = sources::ARITHMETIC)]
pub fn after_services_a(#[symbol("I")] given_a: f64, #[symbol("I_serv")] services_a: f64) -> f64 {
    (given_a - services_a).max(0.0)
}

/// What a DC-DC charger takes in \[A\] for a current out \[A\]; efficiency 0 to 1.
#[formula(symbol = "I", unit = "A", source = sources::ARITHMETIC)]
pub fn charger_input_a(
    #[symbol("I_out")] out_a: f64,
    #[symbol("V_out")] out_v: f64,
    #[symbol("η_conv")] efficiency: f64,
    #[symbol("V_in")] in_v: f64,
) -> f64 {
    out_a * out_v / (efficiency * in_v)
}

/// What a DC-DC charger gives \[A\] for a current in \[A\]; efficiency 0 to 1.
#[formula(symbol = "I", unit = "A", source = sources::ARITHMETIC)]
pub fn charger_output_a(
    #[symbol("I_in")] in_a: f64,
    #[symbol("η_conv")] efficiency: f64,
    #[symbol("V_in")] in_v: f64,
    #[symbol("V_out")] out_v: f64,
) -> f64 {
    in_a * efficiency * in_v / out_v
}
