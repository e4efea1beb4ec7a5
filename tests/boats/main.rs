#![forbid(unsafe_code)]
//! Whole boats, each with what a marine electrician would say about it.
//!
//! Every test here is one boat from bow to stern: what is aboard, then what an
//! expert expects of the answer, with the hand sum or the trade's reason beside
//! it. Nothing is copied from what the program prints. Where a sum decides the
//! band is narrow (ampere-hours, volts, short circuits); where the trade itself
//! is unsure it is wide (what a hot alternator holds).
//!
//! On top of that every boat goes through `consistent`: no part of the answer
//! may contradict another one.
//!
//! Facts of the trade used throughout, common practice, no source unless said:
//! a small-case alternator in a warm engine space holds 40 to 65 % of its cold
//! output, a large-case one 50 to 80 %; an LFP bank takes all it is offered
//! nearly to the end, so that its ampere-hours are amperes times hours; a lead
//! bank takes 0.2 to 0.4 A for each ampere-hour at half charge and next to
//! nothing in the last tenth; an LFP cell is full at 3.55 V, and its management
//! opens at 3.65.
//!
//! `boat.rs` writes a boat down, `answers.rs` holds what the program says of
//! it, `says/` the one-line checks; the other files are boats by theme.

mod answers;
mod boat;
mod consistent;
mod says;

mod air;
mod battery_link;
mod cables;
mod drop_in_packs;
mod frost_and_heat;
mod frozen;
mod generators;
mod high_voltage;
mod joined_banks;
mod known_heat;
mod lead;
mod legs;
mod legs_heat;
mod lithium_direct;
mod load_dump;
mod odd_mixes;
mod pairs;
mod parallel_packs;
mod regulator_limits;
mod searches;
mod sensor;
mod shore_and_sun;
mod small_and_large;
mod sources;
mod text;
mod through_dcdc;
mod two_alternators;
mod well_fitted;
mod wrong_entries;
mod year;
