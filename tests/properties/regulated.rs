//! Boats whose alternator has an external regulator and leads direct to the
//! house bank, unless they say otherwise: the arrangement that asks most of the
//! model.

use ampwright_core::Worksheet;
use ampwright_core::boat::{RegulatorKind, WayKind};
use ampwright_core::exchange::open_link;

/// With everything else at its default.
pub fn regulated() -> Worksheet {
    let mut sheet = Worksheet::default();
    sheet.inputs.reg.kind = RegulatorKind::External;
    sheet.inputs.way.kind = WayKind::Direct;
    sheet
}

/// The boat of a link of version 2, of which all is understood.
#[track_caller]
pub fn opened(link: &str) -> Worksheet {
    let said = |name: &str| link.contains(&format!("&{name}="));
    let mut whole = link.to_string();
    for (name, option) in [("reg_kind", "external"), ("way_kind", "direct")] {
        if !said(name) {
            whole = whole.replacen("v=2&", &format!("v=2&{name}={option}&"), 1);
        }
    }
    let opened = open_link(&whole).expect("a link");
    assert_eq!(opened.remarks, [], "{link}");
    opened.sheet
}
