//! A working as plain text, for print and for reading along.

use crate::schema::Confidence;
use crate::working::expr::significant;
use crate::working::{Used, Working};

impl Used {
    /// The figure as it is written; empty when there is none.
    pub fn figure(&self) -> String {
        let digits = if self.key.is_some() { 7 } else { 4 };
        self.value.map_or_else(String::new, |value| {
            significant(value, digits).replace('-', "−")
        })
    }
}

impl Working {
    /// The working as a few lines of plain text.
    pub fn text(&self) -> String {
        let shown = |value: Option<f64>, decimals: usize| match value {
            Some(value) => format!("{value:.decimals$}").replace('-', "−"),
            None => "–".to_string(),
        };
        let mut text = format!(
            "{}: {} {}\n",
            self.what,
            shown(self.value, self.decimals),
            self.unit
        );
        for part in [&self.symbols, &self.figures] {
            if !part.is_empty() {
                text.push_str(&format!("  = {part}\n"));
            }
        }
        for used in &self.uses {
            let value = used.figure();
            let known = used.known.map_or("", Confidence::word);
            let parts = [
                used.symbol.as_str(),
                &used.name,
                &value,
                used.unit,
                used.says,
                known,
            ];
            let words: Vec<&str> = parts.into_iter().filter(|part| !part.is_empty()).collect();
            text.push_str(&format!("  · {}\n", words.join(" | ")));
        }
        for part in [self.note.as_str(), self.source] {
            if !part.is_empty() {
                text.push_str(&format!("  {part}\n"));
            }
        }
        text
    }
}
