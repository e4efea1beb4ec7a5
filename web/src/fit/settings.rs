//! The settings sheet on screen and in print.

use ampwright_core::guidance::settings;
use ampwright_core::text::settings as text_of;
use ampwright_core::units::Reader;
use ampwright_core::{Report, Worksheet};

use crate::words::escape;

/// Every setting: what, its value, why, and who says so.
pub fn told(sheet: &Worksheet, report: &Report) -> String {
    let mut text = String::from(
        "<table class=set id=settings-table><thead><tr><th scope=col>set</th><th scope=col>to</th><th scope=col>because</th><th scope=col>comes from</th></tr></thead>",
    );
    let reader = &Reader::METRIC;
    for group in settings(sheet, report).groups {
        text += &format!(
            "<tbody><tr class=name><th colspan=4 scope=rowgroup>{}</th></tr>",
            text_of::title(group.device)
        );
        for setting in &group.settings {
            text += &format!(
                "<tr><th scope=row>{}</th><td class=value>{}</td><td class=why>{}</td><td class=from>{}</td></tr>",
                text_of::label(group.code(), setting, reader),
                escape(&text_of::value(setting, reader)),
                escape(&text_of::reason(&setting.reason, reader)),
                text_of::source(setting.from)
            );
        }
        text += "</tbody>";
    }
    text + "</table>"
}
