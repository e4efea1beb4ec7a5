//! The settings sheet on screen and in print.

use ampwright_core::guidance::settings;
use ampwright_core::{Report, Worksheet};

use crate::words::escape;

/// Every setting: what, its value, why, and who says so.
pub fn told(sheet: &Worksheet, report: &Report) -> String {
    let mut text = String::from(
        "<table class=set id=settings-table><thead><tr><th scope=col>set</th><th scope=col>to</th><th scope=col>because</th><th scope=col>comes from</th></tr></thead>",
    );
    for group in settings(sheet, report).groups {
        text += &format!(
            "<tbody><tr class=name><th colspan=4 scope=rowgroup>{}</th></tr>",
            group.title
        );
        for line in group.lines {
            text += &format!(
                "<tr><th scope=row>{}</th><td class=value>{}</td><td class=why>{}</td><td class=from>{}</td></tr>",
                line.what,
                escape(&line.value),
                escape(&line.why),
                line.from.words()
            );
        }
        text += "</tbody>";
    }
    text + "</table>"
}
