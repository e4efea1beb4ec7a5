//! The words of the trade, in a fold one tap away: `folds.js` opens it from the
//! masthead and leads back to where it was asked for.

use crate::paper::Section;

/// The fold, a list of words and what they mean.
pub const SECTION: Section = Section::still(|| {
    let list: String = ampwright_core::text::glossary::GLOSSARY
        .iter()
        .map(|entry| format!("<dt>{}</dt><dd>{}</dd>", entry.word, entry.means))
        .collect();
    format!(
        r#"<details class="section words" id="words"><summary><span class=title>Words</span><span class=leader></span><span class=said>what they mean here</span></summary>
<p class="buttons back hidden"><button type="button" data-back="words">Back to where you were</button></p><dl>{list}</dl></details>"#
    )
});

#[cfg(test)]
mod tests {
    use ampwright_core::boat::demo;
    use ampwright_core::exchange::{commissioning_json, settings_json};
    use ampwright_core::guidance::{commissioning, settings};
    use ampwright_core::text::findings;
    use ampwright_core::text::glossary::GLOSSARY;
    use ampwright_core::units::Reader;
    use ampwright_core::{Worksheet, report};

    /// Everything the page says but the glossary, small letters only.
    fn page() -> String {
        let page = crate::print::page();
        let (before, rest) = page.split_once("id=\"words\"").unwrap();
        let (_, after) = rest.split_once("</details>").unwrap();
        let mut said = format!("{before}{after}");
        for sheet in [Worksheet::default(), demo()] {
            let report = report(&sheet);
            said += &format!("{:?}", report.analyses.cables);
            said += &format!("{:?}", report.analyses.belts);
            said += &format!("{:?}", report.analyses.load_dump);
            let reader = &Reader::METRIC;
            said += &settings_json(&settings(&sheet, &report), reader).to_string();
            said += &commissioning_json(&commissioning(&sheet, &report), reader).to_string();
            said += &findings::sentences(&report.findings, reader);
        }
        said.to_lowercase()
    }

    #[test]
    fn every_word_is_used() {
        let said = page();
        let unused: Vec<&str> = GLOSSARY
            .iter()
            .map(|entry| entry.word.split(" (").next().unwrap_or_default())
            .filter(|word| !said.contains(&word.to_lowercase()))
            .collect();
        assert!(unused.is_empty(), "{unused:?}");
    }
}
