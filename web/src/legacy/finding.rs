//! A finding as markup, for sections that are still text.

use ampwright_core::findings::Finding;
use ampwright_core::text;
use ampwright_core::units::Reader;

use crate::sections::findings::class_of;
use crate::words::escape;

/// One of them as an item of a list.
pub fn item(finding: &Finding) -> String {
    let word = text::words::severity(finding.severity());
    let class = class_of(finding.severity());
    let text = escape(&text::findings::sentence(finding, &Reader::METRIC));
    format!("<li class={class}><span class=severity>{word}</span><span>{text}</span></li>")
}
