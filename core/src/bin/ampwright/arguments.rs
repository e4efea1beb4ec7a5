//! What can be asked for. The doc comments here are the text of `--help`.

use ampwright_core::exchange::Style;
use ampwright_core::units::Reader;
use clap::{Args, Parser, Subcommand, ValueEnum};

/// How long must the engine run, and will the alternator survive it?
///
/// Reads a boat's worksheet and prints what follows from it, as JSON unless
/// said otherwise. Every JSON document carries "schema": 2; names in it end in
/// their unit, and null means "does not happen".
#[derive(Debug, Parser)]
#[command(name = "ampwright", version, after_help = CODES_AND_EXAMPLES)]
pub struct Arguments {
    /// What to print.
    #[command(subcommand)]
    pub command: Command,
}

const CODES_AND_EXAMPLES: &str = "\
Exit codes:
  0  fine; what was not understood in the worksheet is on standard error
  1  the worksheet has a Danger (only with report --fail-on-danger)
  2  the command line is wrong
  3  the file cannot be read or is no worksheet; with check, also when
     something in it was not understood

Examples:
  ampwright worksheet > boat.json            the example boat, to start from
  ampwright inputs                           every input, with range and default
  ampwright report boat.json                 everything about it
  ampwright report --text boat.json          the same in a few sentences
  ampwright report --set eng_rpm=1800 boat.json
                                             … if the engine ran at 1800 rpm
  ampwright report --fail-on-danger boats.json --boat Tern
                                             one of several boats, for a script
  ampwright link boat.json                   the boat as a link
  ampwright year 'v=2&bank_capacity=300&end' the year of a boat in a link
  cat boat.json | ampwright cables -         from standard input";

/// One thing to print.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Everything that follows from the worksheet: engine time, alternator, run, findings
    Report(ReportOptions),
    /// The year, month by month: engine hours, bank and sun, and a settled day of each month
    #[command(after_help = "Example:\n  ampwright year boat.json")]
    Year(BoatOptions),
    /// The day as legs: each run of the engine, what it gives and how hot it gets; null without legs
    #[command(after_help = "Example:\n  ampwright legs boat.json")]
    Legs(BoatOptions),
    /// Charging arrangements beside each other: hours, heat, fuel and costs
    #[command(after_help = "Example:\n  ampwright arrangements boat.json")]
    Arrangements(BoatOptions),
    /// How what each arrangement costs came about
    #[command(after_help = "Example:\n  ampwright costs boat.json")]
    Costs(BoatOptions),
    /// The cheapest way to the goal that the worksheet states
    ///
    /// Looks for the changes that reach the goal at the least cost; the goal
    /// and what may be changed for it are inputs whose keys begin with goal_.
    #[command(
        after_help = "Example:\n  ampwright goal --set goal_kind=hours --set goal_hours=0.5 boat.json"
    )]
    Goal(BoatOptions),
    /// How certain the answer is, and what to measure next
    ///
    /// Ranges of engine time and current that hold in 80 % of cases, given how
    /// well each input is known, and the readings that would narrow them most.
    #[command(after_help = "Example:\n  ampwright uncertainty boat.json")]
    Uncertainty(BoatOptions),
    /// Cable and fuse of each run
    #[command(after_help = "Example:\n  ampwright cables --set cable_machine_m=4 boat.json")]
    Cables(BoatOptions),
    /// What each alternator's belt carries
    #[command(after_help = "Example:\n  ampwright belts boat.json")]
    Belts(BoatOptions),
    /// What happens when the battery disconnects while the alternator charges
    #[command(after_help = "Example:\n  ampwright load-dump boat.json")]
    LoadDump(BoatOptions),
    /// What to set in each device
    #[command(after_help = "Example:\n  ampwright settings boat.json")]
    Settings(BoatOptions),
    /// The commissioning list, with the sheet for the readings of the hot run
    #[command(after_help = "Example:\n  ampwright commissioning boat.json")]
    Commissioning(BoatOptions),
    /// How each figure came about: formula, this boat's numbers in it, source
    Workings(WorkingsOptions),
    /// Every input there is: key, label, unit, range, default and help
    #[command(
        after_help = "Example, the keys that concern the bank:\n  ampwright inputs | jq -r '.inputs[].key' | grep ^bank_"
    )]
    Inputs,
    /// The worksheet itself as a file of the present version
    ///
    /// Reads a file of an earlier version or a link, with --set changes it, and
    /// prints what was understood. The file carries its own version in place of
    /// a schema, and every command reads it again.
    #[command(
        after_help = "Examples:\n  ampwright worksheet > boat.json\n  ampwright worksheet --set bank_capacity_ah=600 boat.json > larger.json\n  ampwright worksheet 'https://boat.example/#v=2&bank_capacity=300&end' > boat.json"
    )]
    Worksheet(BoatOptions),
    /// The worksheet as the text of a link: #v=2&…&end
    ///
    /// To open it on the page, put it behind the page's address. Every command
    /// reads a link in place of a file.
    #[command(after_help = "Example:\n  ampwright link boat.json")]
    Link(BoatOptions),
    /// Tables of results as CSV
    Csv(CsvOptions),
    /// Reads a file or link and lists what was not understood, boat by boat
    ///
    /// Ends with exit code 3 if anything was not understood.
    #[command(after_help = "Example:\n  ampwright check boats.json")]
    Check(Source),
}

/// Where a worksheet comes from.
#[derive(Debug, Clone, Args)]
pub struct Source {
    /// A worksheet file, "-" for standard input, or a link; the example boat if left out
    ///
    /// A link is its whole address or only what follows the #: v=2&…&end.
    #[arg(value_name = "FILE")]
    pub from: Option<String>,
}

/// Which boat, and what to change in it.
#[derive(Debug, Clone, Args)]
pub struct BoatOptions {
    #[command(flatten)]
    pub source: Source,
    /// Which boat of a file that holds several
    #[arg(long, value_name = "NAME|NUMBER")]
    pub boat: Option<String>,
    /// Another value for one input, checked as on the page; may be repeated
    ///
    /// Keys, ranges and options are listed by "ampwright inputs". Nothing after
    /// the equals sign leaves a field empty that may be empty.
    #[arg(long, value_name = "KEY=VALUE", value_parser = change)]
    pub set: Vec<Change>,
}

/// Another value for an input, as it was typed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Change {
    pub key: String,
    pub value: String,
}

fn change(text: &str) -> Result<Change, &'static str> {
    let (key, value) = text.split_once('=').ok_or("write it as KEY=VALUE")?;
    Ok(Change {
        key: key.trim().to_string(),
        value: value.to_string(),
    })
}

/// What to print of the report.
#[derive(Debug, Args)]
#[command(
    after_help = "Examples:\n  ampwright report boat.json\n  ampwright report --text=markdown boat.json\n  ampwright report --units=us boat.json\n  ampwright report --fail-on-danger boat.json > report.json || echo 'not safe as it is'"
)]
pub struct ReportOptions {
    #[command(flatten)]
    pub boat: BoatOptions,
    /// A short text instead of JSON: what is known, what follows, and what is wrong
    #[arg(
        long,
        value_name = "STYLE",
        num_args = 0..=1,
        require_equals = true,
        default_missing_value = "plain"
    )]
    pub text: Option<TextStyle>,
    /// Exit code 1 if the worksheet has a Danger
    #[arg(long)]
    pub fail_on_danger: bool,
    /// Units of the sentences in the JSON; its figures are always metric
    #[arg(long, value_enum, default_value_t = Units::Metric)]
    pub units: Units,
    /// Sentences in the JSON have a comma before the decimals
    #[arg(long)]
    pub decimal_comma: bool,
}

/// The units a reader wants.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Units {
    /// °C, m, L
    Metric,
    /// °F, ft, US gal
    Us,
}

impl ReportOptions {
    /// How sentences are to be written.
    pub fn reader(&self) -> Reader {
        let reader = match self.units {
            Units::Metric => Reader::METRIC,
            Units::Us => Reader::US,
        };
        reader.with_decimal_comma(self.decimal_comma)
    }
}

/// How the short text is marked up.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum TextStyle {
    /// Not at all
    Plain,
    /// Markdown
    Markdown,
    /// BBCode, as forums use it
    Bbcode,
}

impl From<TextStyle> for Style {
    fn from(style: TextStyle) -> Style {
        match style {
            TextStyle::Plain => Style::Plain,
            TextStyle::Markdown => Style::Markdown,
            TextStyle::Bbcode => Style::BbCode,
        }
    }
}

/// Which figures to explain.
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  ampwright workings --id output.hot_a boat.json")]
pub struct WorkingsOptions {
    #[command(flatten)]
    pub boat: BoatOptions,
    /// Only this figure, by its dotted name in the report
    #[arg(long)]
    pub id: Option<String>,
}

/// Which tables to print.
#[derive(Debug, Args)]
#[command(after_help = "Example:\n  ampwright csv --table run boat.json > run.csv")]
pub struct CsvOptions {
    #[command(flatten)]
    pub boat: BoatOptions,
    /// Only this table; otherwise all of them, each below a line "# title"
    #[arg(long)]
    pub table: Option<Table>,
    /// Month of the table "day", from 1 for January
    #[arg(long, default_value_t = 1, value_parser = clap::value_parser!(u8).range(1..=12))]
    pub month: u8,
}

/// A table of results.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Table {
    /// The charging run, moment by moment
    Run,
    /// The legs of the day
    Legs,
    /// Output against engine speed
    Output,
    /// The year, month by month
    Year,
    /// A settled day of a month, hour by hour
    Day,
    /// Arrangements beside each other
    Arrangements,
}
