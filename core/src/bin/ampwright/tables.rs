//! Tables of results as CSV.

use ampwright_core::analysis::year;
use ampwright_core::boat::Worksheet;
use ampwright_core::decision::arrangements::compare;
use ampwright_core::{exchange, report};

use crate::arguments::{CsvOptions, Table};
use crate::document::print_text;
use crate::error::Error;

pub fn csv(options: &CsvOptions) -> Result<(), Error> {
    let sheet = options.boat.read()?;
    print_text(&match options.table {
        Some(Table::Run) => exchange::run_csv(&report(&sheet)),
        Some(Table::Legs) => exchange::legs_csv(&report(&sheet)),
        Some(Table::Output) => exchange::output_csv(&report(&sheet)),
        Some(Table::Year) => exchange::year_csv(&year(&sheet)),
        Some(Table::Day) => year(&sheet)
            .months
            .iter()
            .find(|month| month.month == usize::from(options.month))
            .map(|month| exchange::day_csv(&month.day))
            .unwrap_or_default(),
        Some(Table::Arrangements) => exchange::arrangements_csv(&compare(&sheet)),
        None => every(&sheet),
    })
}

/// All tables, one below the other.
fn every(sheet: &Worksheet) -> String {
    let (report, year) = (report(sheet), year(sheet));
    let mut text = String::new();
    let mut table = |title: &str, csv: &str| {
        for part in ["# ", title, "\r\n", csv, "\r\n"] {
            text.push_str(part);
        }
    };
    table("The charging run", &exchange::run_csv(&report));
    if report.analyses.legs.is_some() {
        table("The legs of the day", &exchange::legs_csv(&report));
    }
    table("Output against speed", &exchange::output_csv(&report));
    table("The year", &exchange::year_csv(&year));
    table("Arrangements", &exchange::arrangements_csv(&compare(sheet)));
    for month in &year.months {
        let title = format!("A settled day of month {}", month.month);
        table(&title, &exchange::day_csv(&month.day));
    }
    text
}
