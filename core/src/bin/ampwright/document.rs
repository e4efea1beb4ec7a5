//! Printing: JSON documents with their schema, and plain text.

use std::io::{self, Write as _};

use serde::Serialize;

use crate::error::Error;

/// Version of the names in the JSON output.
const SCHEMA: u32 = 2;

/// Content with the version of its names before it.
#[derive(Serialize)]
struct Document<'a, Content> {
    schema: u32,
    #[serde(flatten)]
    content: &'a Content,
}

/// Prints a structure as JSON, with its schema.
pub fn print_json(content: &impl Serialize) -> Result<(), Error> {
    print_bare_json(&Document {
        schema: SCHEMA,
        content,
    })
}

/// Prints as JSON what carries a version of its own.
pub fn print_bare_json(content: &impl Serialize) -> Result<(), Error> {
    let mut out = io::BufWriter::new(io::stdout().lock());
    serde_json::to_writer_pretty(&mut out, content).map_err(io::Error::from)?;
    writeln!(out)?;
    out.flush()?;
    Ok(())
}

/// Prints text as it is.
pub fn print_text(text: &str) -> Result<(), Error> {
    let mut out = io::stdout().lock();
    out.write_all(text.as_bytes())?;
    out.flush()?;
    Ok(())
}
