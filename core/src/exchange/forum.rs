//! A worksheet as a short text for a forum: what is known, what follows,
//! warnings, and the link that opens it.

use crate::boat::{Key, SectionId, Worksheet};
use crate::decision::uncertainty::{Certainty, Range};
use crate::exchange::differences::{Difference, value_text};
use crate::exchange::style::Style;
use crate::findings::Severity;
use crate::report::Report;
use crate::schema::{Confidence, Place};
use crate::text;
use crate::units::{Reader, after, clock};

/// Most inputs that are written out; the link has them all.
const MOST: usize = 12;

/// What is no property of the boat, but of how the page is used.
const NOT_OF_THE_BOAT: [SectionId; 3] = [SectionId::cost, SectionId::goal, SectionId::price];

/// A short text for a forum: the boat in a line, the inputs that were said and matter, best known
/// first, the results with their ranges if they are known, the findings that are
/// more than a note, and the link.
pub fn forum_text(
    sheet: &Worksheet,
    report: &Report,
    certainty: Option<&Certainty>,
    link: &str,
    style: Style,
) -> String {
    let name = match sheet.name.trim() {
        "" => "My boat".to_string(),
        name => style.name(name),
    };
    let mut text = style.heading(&name);
    if let Style::Plain | Style::BbCode = style {
        text.push('\n');
    }
    let mut part = |heading: &str, lines: &[String]| {
        if !lines.is_empty() {
            text.push_str(&style.heading(heading));
            let safe: Vec<String> = lines.iter().map(|line| style.text(line)).collect();
            text.push_str(&style.list(&safe));
        }
    };
    part("What is known", &known(sheet));
    part("What follows", &results(sheet, report, certainty));
    part("Warnings", &findings(report));
    text.push_str("Open it with all its figures: ");
    text.push_str(&style.address(link));
    text.push('\n');
    text
}

/// What changed, as a text for a forum.
pub fn differences_text(differences: &[Difference], style: Style) -> String {
    if differences.is_empty() {
        return "Nothing was changed.\n".to_string();
    }
    let mut lines = Vec::new();
    for change in differences {
        lines.push(format!(
            "{}, {}: {} → {}",
            change.section,
            style.name(&change.label),
            style.text(&change.was),
            style.text(&change.is)
        ));
    }
    style.heading("What was changed") + &style.list(&lines)
}

/// What decides the answer, then inputs that were said and matter, best known
/// first; what only few would know how to read is in the link.
fn known(sheet: &Worksheet) -> Vec<String> {
    let mut lines = vec![text::boat(sheet, &Reader::METRIC)];
    let mut more = 0;
    for known in Confidence::ALL {
        for key in Key::all() {
            let matters = sheet.is_said(key) && key.applies(&sheet.inputs);
            let is_internal =
                key.spec().place == Place::Advanced || NOT_OF_THE_BOAT.contains(&key.section);
            if sheet.knowledge(key) != known || !matters || is_internal {
                continue;
            }
            if lines.len() < MOST {
                lines.push(format!(
                    "{}: {}",
                    key.spec().label,
                    value_text(sheet, key, true, &Reader::METRIC)
                ));
            } else {
                more += 1;
            }
        }
    }
    let loads = sheet.loads.len();
    match (more, loads) {
        (0, 0) => {}
        (0, loads) => lines.push(format!("loads in the list: {loads}")),
        (more, 0) => lines.push(format!("and {more} more")),
        (more, loads) => lines.push(format!("and {more} more; loads in the list: {loads}")),
    }
    let months = sheet.months.said().count();
    if months > 0 {
        lines.push(format!("months of the year that differ: {months}"));
    }
    lines
}

fn results(sheet: &Worksheet, report: &Report, certainty: Option<&Certainty>) -> Vec<String> {
    let reader = &Reader::METRIC;
    let answer = text::answer(report, reader);
    let run = &sheet.inputs.run;
    let ranged = |range: Option<&Range>| match range {
        Some(range) => format!(" ({} in 80 % of cases)", text::uncertainty::range(range)),
        None => String::new(),
    };
    let minutes = match report.analyses.run.minutes_to_target {
        Some(minutes) => clock(minutes),
        None => match &report.analyses.run.opening {
            Some(opening) => format!(
                "the battery management system disconnects the bank first, after {}",
                after(opening.after_s)
            ),
            None if report.analyses.run.bank_frozen => "not at all, the bank is frozen".to_string(),
            None => format!("not within {} h", run.longest_h),
        },
    };
    let day = match report.analyses.day.trouble {
        Some(trouble) => format!(
            "Engine time a day: {}. {}",
            text::words::day_trouble(trouble),
            text::words::why_not_charged(trouble)
        ),
        None => format!(
            "Engine time a day: {}{}{}, for {:.0} A·h",
            answer.engine_time,
            ranged(certainty.map(|all| &all.engine_h)),
            text::in_runs(&report.analyses.day, reader)
                .map_or(String::new(), |runs| format!(", {runs}")),
            report.analyses.day.need_ah
        ),
    };
    let mut said = vec![
        answer.verdict,
        day,
        format!(
            "Hot, the alternator holds {}{} at {:.0} engine rpm, of {:.0} A when cold; what limits it is {}",
            answer.hot_amps,
            ranged(certainty.map(|all| &all.hot_a)),
            sheet.inputs.eng.rpm,
            report.analyses.output.full_cold_a,
            answer.limit
        ),
        format!(
            "Charging from {} to {} %: {minutes}; winding up to {:.0} °C, case up to {:.0} °C",
            run.from_pct,
            run.to_pct,
            report.analyses.run.alternators[0].peak.winding_at_most_c(),
            report.analyses.run.alternators[0].peak.case_c
        ),
    ];
    said.extend(text::sources::lines(report, reader));
    said.extend(text::charging_run::engine_loads(
        &report.analyses.run,
        reader,
    ));
    if let Some(legs) = &report.analyses.legs {
        said.push(text::legs::totals(legs, reader).join(" "));
        let each = legs.legs.iter().enumerate();
        said.extend(each.map(|(at, leg)| text::legs::line(at + 1, leg, reader)));
    }
    said
}

fn findings(report: &Report) -> Vec<String> {
    let mut lines = Vec::new();
    for finding in &report.findings {
        let severity = finding.severity();
        if severity != Severity::Note {
            let word = text::words::severity(severity);
            let sentence = text::findings::sentence(finding, &Reader::METRIC);
            lines.push(format!("{word}: {sentence}"));
        }
    }
    lines
}
