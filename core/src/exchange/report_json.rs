//! The report as JSON, with everything that is said about it.

use serde_json::{Value, json};

use crate::boat::Worksheet;
use crate::exchange::analyses_json::{belts_json, cables_json, legs_json, load_dump_json};
use crate::report::Report;
use crate::text;
use crate::units::Reader;

/// Which names the report's JSON has; it rises when one of them changes.
pub const REPORT_SCHEMA: u32 = 2;

/// The report as one JSON object: `schema`, the analyses, and `verdict`,
/// `findings` and `questions`, each with its code, its figures and, as `text`,
/// its sentence. Belts, cables and load dump have theirs too. `sentence` is the headline. Names of figures end in their unit,
/// `null` means "does not happen". Figures are always metric; the sentences are
/// written for the reader.
pub fn report_json(sheet: &Worksheet, report: &Report, reader: &Reader) -> Value {
    let mut json = json!(report);
    json["schema"] = REPORT_SCHEMA.into();
    json["sentence"] = text::sentence(sheet, report, reader).into();
    json["verdict"]["text"] = text::verdict(&report.verdict, reader).into();
    let analyses = &report.analyses;
    json["belts"] = belts_json(&analyses.belts, reader);
    json["cables"] = cables_json(&analyses.cables, reader);
    json["load_dump"] = load_dump_json(&analyses.load_dump, reader);
    if let Some(legs) = &analyses.legs {
        json["legs"] = legs_json(legs, reader);
    }
    for (at, finding) in report.findings.iter().enumerate() {
        json["findings"][at]["text"] = text::findings::sentence(finding, reader).into();
    }
    for (at, question) in report.questions.iter().enumerate() {
        json["questions"][at]["text"] = text::question(question, reader).into();
    }
    json
}

#[cfg(test)]
mod tests {
    use crate::boat::Worksheet;
    use crate::exchange::report_json;
    use crate::report::report;
    use crate::units::Reader;

    #[test]
    fn everything_said_has_its_code_and_sentence() {
        let sheet = Worksheet::default();
        let report = report(&sheet);
        let json = report_json(&sheet, &report, &Reader::METRIC);
        assert_eq!(json["schema"], 2);
        let said = |value: &serde_json::Value| {
            let text = value["text"].as_str().unwrap();
            text.ends_with('.') && value["code"].is_string()
        };
        assert!(said(&json["verdict"]));
        let findings = json["findings"].as_array().unwrap();
        let questions = json["questions"].as_array().unwrap();
        assert_eq!(findings.len(), report.findings.len());
        assert!(findings.iter().chain(questions).all(said));
        for (value, finding) in findings.iter().zip(&report.findings) {
            assert_eq!(value["code"], finding.code().name());
            assert_eq!(value["severity"], serde_json::json!(finding.severity()));
        }
        assert!(json["sentence"].as_str().unwrap().contains(" A "));
        assert!(
            json["run"]["minutes"].is_number(),
            "the analyses stand beside"
        );
    }
}
