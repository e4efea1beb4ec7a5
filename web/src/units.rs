//! The units figures are told in. The core knows the pairs; `units.js` changes
//! what stands on the page, and no worksheet and no link knows of it.

use ampwright_core::units::CHOICES;

use crate::legacy::Section;

/// The choice, one list for each kind of quantity.
pub const SECTION: Section = Section::still(|| {
    let mut lists = list("Charge", "A·h", "W·h", "A·h=W·h");
    for (name, units) in CHOICES {
        let mut pairs = Vec::new();
        let mut names = (Vec::new(), Vec::new());
        for unit in *units {
            let Some(other) = unit.other else { continue };
            pairs.push(format!(
                "{}={}={}={}",
                unit.symbol, other.symbol, other.scale, other.offset
            ));
            // A difference is told in the same degrees, a rate by the same measure.
            let known = names
                .1
                .iter()
                .any(|name: &&str| other.symbol.starts_with(name));
            if !known {
                names.0.push(unit.symbol);
                names.1.push(other.symbol);
            }
        }
        lists += &list(
            name,
            &names.0.join(", "),
            &names.1.join(", "),
            &pairs.join(";"),
        );
    }
    format!(
        r#"<details class="units" id="units"><summary><span class=title>Units</span></summary>
<p class="lead">How figures are told and filled in on this device. Links and files mean the same whatever stands here. W·h are A·h times the bank's system voltage; entries in A·h and drawings keep theirs.</p>
<div class=choices>{lists}</div></details>"#
    )
});

fn list(name: &str, first: &str, other: &str, pairs: &str) -> String {
    let id = name.to_lowercase().replace(' ', "-");
    format!(
        "<label for=unit-{id}>{name}</label><select id=unit-{id} data-units=\"{pairs}\"><option value=''>{first}</option><option value=other>{other}</option></select>"
    )
}
