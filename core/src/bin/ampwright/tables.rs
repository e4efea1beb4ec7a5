//! Tables of results as CSV.

use ampwright_core::arrange::compare;
use ampwright_core::worksheet::Worksheet;
use ampwright_core::{report, share, year};

use crate::arguments::{CsvOptions, Table};
use crate::document::print_text;
use crate::error::Error;

pub fn csv(options: &CsvOptions) -> Result<(), Error> {
    let sheet = options.boat.read()?;
    print_text(&match options.table {
        Some(Table::Run) => share::run_csv(&report(&sheet)),
        Some(Table::Output) => share::output_csv(&report(&sheet)),
        Some(Table::Year) => share::year_csv(&year(&sheet)),
        Some(Table::Day) => year(&sheet)
            .months
            .iter()
            .find(|month| month.month == usize::from(options.month))
            .map(|month| share::day_csv(&month.day))
            .unwrap_or_default(),
        Some(Table::Arrangements) => share::arrangements_csv(&compare(&sheet)),
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
    table("The charging run", &share::run_csv(&report));
    table("Output against speed", &share::output_csv(&report));
    table("The year", &share::year_csv(&year));
    table("Arrangements", &share::arrangements_csv(&compare(sheet)));
    for month in &year.months {
        let title = format!("A settled day of month {}", month.month);
        table(&title, &share::day_csv(&month.day));
    }
    text
}
