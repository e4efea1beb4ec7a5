//! The formulas, each with its source, units in the names
//! (`_a` A, `_v` V, `_w` W, `_c` °C, `_k` K, `_rpm` 1/min, `_m3h` m³/h, `_ohm` Ω).

pub mod ageing;
pub mod air;
pub mod ampacity;
pub mod battery;
pub mod belt;
pub mod cable;
pub mod charging;
pub mod climate;
pub mod cooling_anchor;
pub mod copper;
pub mod drive;
pub mod dump;
pub mod fuel;
pub mod full_field;
pub mod fuse;
pub mod generator;
pub mod heat_balance;
pub mod life;
pub mod loss_terms;
pub mod losses;
pub mod money;
pub mod output;
pub mod packs;
pub mod regulator;
pub mod solar;
pub mod sources;
pub mod thermal;
pub mod thermal_build;
pub(crate) mod thermal_shares;
pub mod torque;
