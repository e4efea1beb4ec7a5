#![forbid(unsafe_code)]
//! Prints the report of a worksheet as JSON.
//!
//! `cargo run -p ampwright-core --example report -- worksheet.json` reads a
//! worksheet (the envelope is described in `core/src/worksheet/envelope.rs`;
//! `-` reads standard input); without an argument it takes the demo.
//! `-- --inputs` prints every input with its key, unit, range and default;
//! `-- --worksheet` prints the demo's worksheet; `-- --sure` before the file
//! prints how sure the answer is in place of the report: ranges, and which
//! reading would narrow them most; `-- --year` prints the year in its place:
//! engine, bank and sun month by month, and the hours of a settled day of each;
//! `-- --wiring` prints cables and fuses, `-- --belt` what the belts carry,
//! `-- --disconnect` what happens when the bank disconnects under load,
//! `-- --arrangements` the arrangements beside each other, `-- --goal` the
//! cheapest way to the worksheet's goal;
//! `-- --workings` prints how each figure of the report came about: the formula,
//! the same with the boat's numbers in it, what it used and how sure that is,
//! and the source. The report itself carries them as `workings`;
//! `-- --settings` prints what to set in each device, `-- --first-run` the
//! commissioning list;
//! `-- --forum` a short text in Markdown with the link's fragment, `-- --csv`
//! every series, one table below the other.
//!
//! What was not understood goes to standard error, one sentence a line, and
//! the exit code is then 2; the report is printed all the same.

use std::io::Read;
use std::process::ExitCode;

use ampwright_core::analysis::year;
use ampwright_core::boat::{Key, Worksheet, demo};
use ampwright_core::decision::arrangements::compare;
use ampwright_core::decision::goal_search::Search;
use ampwright_core::decision::uncertainty::Sure;
use ampwright_core::exchange;
use ampwright_core::exchange::{Reading, read_json, to_json, to_link};
use ampwright_core::exchange::{Style, forum_text};
use ampwright_core::guidance::{commissioning, settings};
use ampwright_core::report;
use ampwright_core::schema::Kind;
use ampwright_core::working::workings;

/// Prints something that follows from a worksheet.
type Print = fn(&Worksheet) -> Result<(), String>;

/// What can be printed in place of the report.
const PRINTS: &[(&str, Print)] = &[
    ("--sure", |sheet| {
        let mut sure = Sure::new(sheet);
        sure.step(Sure::RUNS);
        print_json(&sure.certainty())
    }),
    ("--year", |sheet| print_json(&year(sheet))),
    ("--arrangements", |sheet| print_json(&compare(sheet))),
    ("--goal", |sheet| {
        let mut search = Search::new(sheet);
        while !search.done() {
            search.step(1000);
        }
        print_json(&search.found())
    }),
    ("--workings", |sheet| {
        print_json(&workings(sheet, &report(sheet)))
    }),
    ("--belt", |sheet| print_json(&report(sheet).analyses.belts)),
    ("--disconnect", |sheet| {
        print_json(&report(sheet).analyses.load_dump)
    }),
    ("--wiring", |sheet| {
        print_json(&report(sheet).analyses.cables)
    }),
    ("--settings", |sheet| {
        print_json(&settings(sheet, &report(sheet)))
    }),
    ("--first-run", |sheet| {
        print_json(&commissioning(sheet, &report(sheet)))
    }),
    ("--forum", |sheet| {
        let mut sure = Sure::new(sheet);
        sure.step(Sure::RUNS);
        let link = format!("#{}", to_link(sheet));
        let certainty = sure.certainty();
        print!(
            "{}",
            forum_text(
                sheet,
                &report(sheet),
                Some(&certainty),
                &link,
                Style::Markdown
            )
        );
        Ok(())
    }),
    ("--csv", |sheet| {
        let (report, year) = (report(sheet), year(sheet));
        let mut tables = vec![
            ("The charging run".to_string(), exchange::run_csv(&report)),
            (
                "Output against speed".to_string(),
                exchange::output_csv(&report),
            ),
            ("The year".to_string(), exchange::year_csv(&year)),
            (
                "Arrangements".to_string(),
                exchange::arrangements_csv(&compare(sheet)),
            ),
        ];
        for month in &year.months {
            let title = format!("A settled day of month {}", month.month);
            tables.push((title, exchange::day_csv(&month.day)));
        }
        for (title, table) in tables {
            println!("# {title}\n{table}");
        }
        Ok(())
    }),
];

fn plain(sheet: &Worksheet) -> Result<(), String> {
    let report = report(sheet);
    let workings = workings(sheet, &report);
    let mut whole = exchange::report_json(sheet, &report);
    whole["workings"] = serde_json::json!(workings);
    print_json(&whole)
}

fn main() -> ExitCode {
    let mut arguments = std::env::args().skip(1).peekable();
    let first = arguments.next_if(|first| PRINTS.iter().any(|(flag, _)| first == flag));
    let print = first
        .and_then(|first| PRINTS.iter().find(|(flag, _)| first == *flag))
        .map_or(plain as Print, |(_, print)| *print);
    let result = match arguments.next().as_deref() {
        None => print(&demo()).map(|()| true),
        Some("--inputs") => print_inputs(),
        Some("--worksheet") => print_json(&to_json(&demo())).map(|()| true),
        Some(path) => text_of(path)
            .and_then(|text| read_json(&text).map_err(|complaint| complaint.0))
            .and_then(|Reading { sheet, remarks }| {
                for remark in &remarks {
                    eprintln!("{remark}");
                }
                print(&sheet).map(|()| remarks.is_empty())
            }),
    };
    match result {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::from(2),
        Err(sentence) => {
            eprintln!("{sentence}");
            ExitCode::from(1)
        }
    }
}

fn text_of(path: &str) -> Result<String, String> {
    let mut text = String::new();
    if path == "-" {
        std::io::stdin().read_to_string(&mut text).map(|_| text)
    } else {
        std::fs::read_to_string(path)
    }
    .map_err(|fault| format!("{path} cannot be read: {fault}."))
}

fn print_json(value: &impl serde::Serialize) -> Result<(), String> {
    let text = serde_json::to_string_pretty(value).map_err(|fault| fault.to_string())?;
    println!("{text}");
    Ok(())
}

fn print_inputs() -> Result<bool, String> {
    let blank = Worksheet::default();
    for key in Key::all() {
        let spec = key.spec();
        let takes = match spec.kind {
            Kind::Choice { options, .. } => {
                let keys: Vec<_> = options.iter().map(|option| option.key).collect();
                format!("one of {}", keys.join(", "))
            }
            Kind::Number { .. } => spec.span(),
            Kind::Maybe { empty_says, .. } => format!("{}, or null: {empty_says}", spec.span()),
        };
        let default = match (spec.kind, blank.figure(key)) {
            (Kind::Maybe { .. }, Some(figure)) => format!("null ({figure})"),
            (Kind::Maybe { .. }, None) => "null".to_string(),
            _ => spec.write(spec.default()),
        };
        println!("{}\t{}\t{takes}\t{default}", key.name(), spec.label);
    }
    Ok(true)
}
