#![forbid(unsafe_code)]
//! Whole worksheets and messages, kept as text and compared.
