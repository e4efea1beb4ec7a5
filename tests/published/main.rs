#![forbid(unsafe_code)]
//! Values taken from published sources, each with its origin and tolerance.
