#![forbid(unsafe_code)]
#![warn(missing_docs)]
//! `#[formula]` makes a physics function its own explanation.
//!
//! The function stays as it is written. Its body, which is checked to be plain
//! arithmetic, is kept beside it as data: what the page shows as the formula is
//! the formula that ran, and there is no second text of it to keep in step.
//!
//! ```ignore
//! /// Output at full field at a shaft speed \[A\].
//! #[formula(symbol = "I", unit = "A", source = sources::OUTPUT_CURVE)]
//! pub fn full_field_a(
//!     #[symbol("I∞")] infinite_a: f64,
//!     #[symbol("n₀")] cut_in_rpm: f64,
//!     #[symbol("n")] shaft_rpm: f64,
//! ) -> f64 {
//!     infinite_a * (1.0 - (cut_in_rpm / shaft_rpm).powi(2)).max(0.0).sqrt()
//! }
//! ```
//!
//! The data stand in `full_field_a::FORMULA`, a type of the function's own name,
//! so that one `use` brings both. A unit test is made as well, which puts drawn
//! arguments through both and holds them equal.
//!
//! A body may hold numbers, constants, arguments, `+ − * /`, `powi`, `powf`,
//! `sqrt`, `exp`, `ln`, `sin`, `cos`, `asin`, `abs`, `min`, `max`, `clamp`, `let`
//! steps, `if … else` and
//! `if … { return … }` on comparisons, and calls of other formulas. Anything
//! else does not compile. A constant is shown as its number, or with a symbol
//! of its own when `constants(NAME("symbol", "what it is", "unit"))` names it.

mod attributes;
mod body;
mod case;
mod expand;
#[cfg(test)]
mod tests;

use proc_macro::TokenStream;

/// Keeps a function's body beside it as data; see the head of this crate.
#[proc_macro_attribute]
pub fn formula(attributes: TokenStream, function: TokenStream) -> TokenStream {
    expand::expand(attributes.into(), function.into())
        .unwrap_or_else(syn::Error::into_compile_error)
        .into()
}
