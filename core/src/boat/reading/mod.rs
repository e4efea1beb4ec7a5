//! What a reader of worksheets says of a text: why it is none ([`ReadError`]), and
//! what of it was not understood ([`Remark`]).
//!
//! The readers stand in [`crate::exchange`], their sentences in [`crate::text`],
//! which stands above it. So what both speak of stands here: it knows inputs,
//! loads and arrangements, and nothing of how a link or a file is written.

mod error;
mod remark;

pub use error::{ReadError, TextKind};
pub use remark::{Listed, Remark};
