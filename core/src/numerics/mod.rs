//! Numerics that know nothing of boats: roots and linear equations.

pub mod bracketed_root;
pub mod linear;

pub use bracketed_root::falling_root;
