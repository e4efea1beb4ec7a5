//! Reading a log that was typed or pasted: rows of figures, parted by tabs,
//! semicolons, commas or blanks, with or without a line of headings.

use crate::decision::calibration::columns::{COLUMNS, Column};
use crate::decision::calibration::layout::{Layout, headings};
use crate::decision::calibration::log_remark::{LineError, LogRemark, MOST_REMARKS};
use crate::schema::{Excerpt, parse_number};

/// Most rows that are read.
pub const MOST_ROWS: usize = 2000;
/// Longest log \[min\].
pub(super) const LONGEST_MIN: f64 = 48.0 * 60.0;

/// One line of a log.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// Its number in the text, from 1.
    pub line: usize,
    /// Time \[min\].
    pub minute: f64,
    figures: [Option<f64>; COLUMNS],
}

impl Row {
    /// A row of these readings.
    pub fn new(line: usize, minute: f64, figures: [Option<f64>; COLUMNS]) -> Row {
        Row {
            line,
            minute,
            figures,
        }
    }

    /// A reading.
    pub fn get(&self, column: Column) -> Option<f64> {
        self.figures[column as usize]
    }
}

/// A log as understood.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Log {
    /// Its rows, in the order of the text.
    pub rows: Vec<Row>,
    /// What was left out.
    pub remarks: Vec<LogRemark>,
    /// The speeds are the alternator's own, not the engine's.
    pub shaft_speed: bool,
}

/// Reads any text. Whatever is not understood is left out and remarked on.
///
/// Blank lines and lines that begin with # are passed over. Times are minutes
/// or h:mm; a clock that passes midnight goes on. Without headings the order
/// is minute, alternator amps, case, air, speed, volts.
pub fn read(text: &str) -> Log {
    let text = text.trim_start_matches('\u{feff}');
    let end = if text.contains('\n') { '\n' } else { '\r' };
    let lines: Vec<(usize, &str)> = (1..)
        .zip(text.split(end).map(str::trim))
        .filter(|(_, line)| !line.is_empty() && !line.starts_with('#'))
        .collect();
    let separator = separator(&lines);
    let mut log = Log::default();
    let mut layout = Layout::usual();
    let mut midnights = 0.0;
    let mut skipped = 0;
    for (at, (line, words)) in lines.into_iter().enumerate() {
        let cells = cells(words, separator);
        if at == 0
            && let Some(found) = headings(&cells, &mut log.remarks)
        {
            layout = found;
            log.shaft_speed = layout.shaft_speed;
            continue;
        }
        if log.rows.len() >= MOST_ROWS {
            log.remarks.push(LogRemark::TooManyRows {
                line,
                most: MOST_ROWS,
            });
            break;
        }
        match row(line, &cells, &layout) {
            Ok((mut row, clock)) => {
                if let Some(before) = log.rows.last()
                    && clock
                    && row.minute + midnights < before.minute - 720.0
                {
                    midnights += 1440.0;
                }
                row.minute += if clock { midnights } else { 0.0 };
                log.rows.push(row);
            }
            Err(_) if log.remarks.len() >= MOST_REMARKS => skipped += 1,
            Err(why) => log.remarks.push(LogRemark::Line { line, why }),
        }
    }
    if skipped > 0 {
        log.remarks.push(LogRemark::MoreLines { count: skipped });
    }
    log
}

/// What parts the cells of a line: the first of tab, semicolon and comma that
/// stands in any line, or else blanks. A comma among figures parted by blanks
/// is a decimal one.
fn separator(lines: &[(usize, &str)]) -> char {
    let stands = |sign: char| lines.iter().any(|(_, line)| line.contains(sign));
    let parted = |line: &str| {
        let mut before = ' ';
        let mut digit_before = false;
        line.chars().any(|c| {
            let parted = c.is_ascii_digit() && digit_before && before == ' ';
            if c != ' ' {
                digit_before = c.is_ascii_digit();
            }
            before = c;
            parted
        })
    };
    for sign in ['\t', ';', ','] {
        if stands(sign) && (sign != ',' || !lines.iter().any(|(_, line)| parted(line))) {
            return sign;
        }
    }
    ' '
}

/// The cells of a line, quotes taken off; a separator inside quotes parts nothing.
fn cells(line: &str, separator: char) -> Vec<String> {
    let mut cells = vec![String::new()];
    let mut quoted = false;
    for c in line.chars() {
        if c == '"' {
            quoted = !quoted;
        } else if c == separator && !quoted {
            cells.push(String::new());
        } else if let Some(cell) = cells.last_mut() {
            cell.push(c);
        }
    }
    if separator == ' ' {
        cells.retain(|cell| !cell.is_empty());
    }
    for cell in &mut cells {
        *cell = cell.trim().to_string();
    }
    cells
}

/// A row, and whether its time was read off a clock; or why it is none.
fn row(line: usize, cells: &[String], layout: &Layout) -> Result<(Row, bool), LineError> {
    let cell = |at: usize| cells.get(at).map_or("", String::as_str);
    let words = cell(layout.time);
    let (minute, clock) = time(words, layout.time_scale).ok_or_else(|| match words {
        "" => LineError::NoTime,
        _ => LineError::NotATime {
            typed: Excerpt::of(words),
        },
    })?;
    let mut figures = [None; COLUMNS];
    for (column, place) in Column::ALL.into_iter().zip(layout.places) {
        let Some(place) = place else { continue };
        let words = cell(place.at);
        if matches!(words, "" | "-" | "–" | "—" | "?") {
            continue;
        }
        let (low, high) = column.range();
        let number =
            number(words, place.fahrenheit && column.is_temperature()).ok_or_else(|| {
                LineError::NotANumber {
                    typed: Excerpt::of(words),
                }
            })?;
        if !(low..=high).contains(&number) {
            return Err(LineError::OutOfRange {
                column,
                typed: Excerpt::of(words),
            });
        }
        figures[column as usize] = Some(number);
    }
    if figures.iter().all(Option::is_none) {
        return Err(LineError::OnlyATime);
    }
    Ok((Row::new(line, minute, figures), clock))
}

/// Minutes from minutes, h:mm or h:mm:ss, and whether it was one of the latter.
fn time(words: &str, scale: f64) -> Option<(f64, bool)> {
    let (minute, clock) = if words.contains(':') {
        let mut minutes = 0.0;
        let mut worth = 60.0;
        for (at, part) in words.split(':').enumerate() {
            let most = if at == 0 { 48 } else { 59 };
            let part: u32 = part.trim().parse().ok().filter(|part| *part <= most)?;
            if at > 2 {
                return None;
            }
            minutes += f64::from(part) * worth;
            worth /= 60.0;
        }
        (minutes, true)
    } else {
        (number(words, false)? * scale, false)
    };
    (0.0..=LONGEST_MIN)
        .contains(&minute)
        .then_some((minute, clock))
}

/// A number with or without its unit behind it; °F becomes °C.
fn number(words: &str, fahrenheit: bool) -> Option<f64> {
    let unit = |c: char| c.is_ascii_alphabetic() || matches!(c, '°' | '˚' | ' ');
    let bare = words.trim_end_matches(unit);
    if bare.contains(' ') {
        return None;
    }
    let number = parse_number(bare)?;
    let fahrenheit = match words.chars().next_back() {
        Some('F' | 'f') => true,
        Some('C' | 'c') => false,
        _ => fahrenheit,
    };
    Some(if fahrenheit {
        (number - 32.0) / 1.8
    } else {
        number
    })
}

#[cfg(test)]
#[path = "log_tests.rs"]
mod tests;
