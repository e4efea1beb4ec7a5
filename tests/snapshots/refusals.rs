//! What is said of texts that are no worksheet, more than one, or too much of
//! one, and of logs that nothing can be learnt from.

use ampwright_core::Worksheet;
use ampwright_core::boat::demo;
use ampwright_core::decision::calibration;
use ampwright_core::exchange::{open_link, read_file};
use ampwright_core::text::calibration::{log_remark, refusal};
use ampwright_core::text::remarks::{read_error, remarks};

const HEAD: &str = r#"{"type":"ampwright-worksheet","version":2"#;

/// The first of a text that may be endless.
fn begin(text: &str) -> String {
    text.chars().take(60).collect()
}

#[test]
fn strange_files() {
    let many = |what: &str, one: &str, count: usize| {
        let list = vec![one; count].join(",");
        format!(r#"{HEAD},"{what}":[{list}]}}"#)
    };
    let sheets = vec![format!("{HEAD}}}"); 1001].join(",");
    let files = [
        " \r\n".to_string(),
        "\u{feff}".to_string(),
        "A letter from the boat yard.".to_string(),
        "%PDF-1.7".to_string(),
        format!("{HEAD},\n\"inputs\":{{\"bank_capacity_ah\":40"),
        format!("{HEAD},\n\"inputs\":{{\"bank_capacity_ah\":0400}}}}"),
        "[".repeat(10_000),
        format!("{HEAD},\"loads\":{}", "{\"a\":".repeat(10_000)),
        " ".repeat(10_000_001),
        format!(r#"{HEAD},"done":7}}"#),
        format!(r#"{HEAD},"done":["isolate",7,"paint the hull"]}}"#),
        format!(r#"{HEAD},"known":{{"colour":"guess","bank_capacity_ah":7}}}}"#),
        format!(r#"{HEAD},"inputs":{{"alt_rated_a":120}},"known":{{"alt_rated_a":"by heart"}}}}"#),
        format!(r#"{HEAD},"name":"{}"}}"#, "Long ".repeat(50)),
        many("loads", r#"{"name":"Lamp"}"#, 501),
        many("arrangements", r#"{"name":"More"}"#, 51),
        format!(r#"{{"type":"ampwright-worksheets","version":2,"worksheets":[{sheets}]}}"#),
        r#"{"type":"ampwright-worksheets"}"#.to_string(),
    ];
    let lines: Vec<String> = files
        .iter()
        .map(|file| match read_file(file) {
            Ok(readings) => format!(
                "{}\n  {}. {}",
                begin(file),
                readings[0].sheet.contents(),
                remarks(&readings[0].remarks).join(" ")
            ),
            Err(error) => format!("{}\n  refused: {}", begin(file), read_error(&error)),
        })
        .collect();
    insta::assert_snapshot!(lines.join("\n"));
}

#[test]
fn strange_links() {
    let links = [
        "https://example.org/".to_string(),
        "x".repeat(1_000_001),
        "v=2&name=Tern&name=Turnstone&end".to_string(),
        format!("v=2&name={}&end", "Long+".repeat(50)),
        format!("v=2&load={}~5&end", "%C3%A9".repeat(201)),
        format!("v=2{}&end", "&load=Lamp~5".repeat(501)),
        format!("v=2{}&end", "&way=More".repeat(51)),
    ];
    let lines: Vec<String> = links
        .iter()
        .map(|link| match open_link(link) {
            Ok(opened) => format!(
                "{}\n  {}. {}",
                begin(link),
                opened.sheet.contents(),
                remarks(&opened.remarks).join(" ")
            ),
            Err(error) => format!("{}\n  refused: {}", begin(link), read_error(&error)),
        })
        .collect();
    insta::assert_snapshot!(lines.join("\n"));
}

/// Half an hour of a machine that warms by 70 K with a time constant of ten
/// minutes, changed until nothing can be learnt from it.
#[test]
fn refused_logs() {
    type Change = fn(f64, [f64; 5]) -> [f64; 5];
    let usual: Change = |_, row| row;
    let logs: [(&str, &str, Change); 14] = [
        ("the times fall", "", |m, [_, a, c, o, n]| {
            [(m - 10.0).abs(), a, c, o, n]
        }),
        ("too short", "", |m, [_, a, c, o, n]| [m / 5.0, a, c, o, n]),
        ("no case", "minute;amps;air\n", usual),
        ("no amps", "minute;x;case;air\n", usual),
        ("no time", "amps;case;air\n", usual),
        ("nothing given", "", |_, [m, _, c, o, n]| [m, 0.0, c, o, n]),
        ("speed wanders", "", |m, [t, a, c, o, _]| {
            [t, a, c, o, 1000.0 + 40.0 * m]
        }),
        ("no engine's speed", "", |_, [m, a, c, o, _]| {
            [m, a, c, o, 100.0]
        }),
        (
            "no alternator's speed",
            "minute;amps;case;air;alternator rpm\n",
            |_, [m, a, c, o, _]| [m, a, c, o, 100.0],
        ),
        ("no heat", "", |_, [m, a, _, o, n]| [m, a, 33.0, o, n]),
        ("too cool", "", |_, [m, _, c, o, n]| [m, 160.0, c, o, n]),
        ("slow to warm", "", |m, [t, a, _, o, n]| {
            [t, a, 30.0 + 0.5 * m, o, n]
        }),
        ("little to tell", "", |m, [t, a, _, o, n]| {
            [t, a, 80.0 + 30.0 * (7.0 * m).sin(), o, n]
        }),
        ("case jumps", "", |m, [t, a, _, o, n]| {
            [t, a, if m > 10.0 { 40.0 } else { 50.0 + 6.0 * m }, o, n]
        }),
    ];
    let sheet = demo();
    let mut lines = vec![said(&sheet, "nothing", "")];
    for (what, head, change) in logs {
        let rows = (0..30).map(|minute| {
            let m = f64::from(minute);
            let case = 30.0 + 70.0 * (1.0 - (-m / 10.0).exp());
            let row = change(m, [m, 60.0, case, 30.0, 1400.0]);
            row.map(|figure| format!("{figure:.2}")).join(";")
        });
        let rows: Vec<String> = rows.collect();
        lines.push(said(&sheet, what, &format!("{head}{}", rows.join("\n"))));
    }
    lines.push(said(&sheet, "quick to warm", QUICK));
    insta::assert_snapshot!(lines.join("\n"));
}

/// A machine of a third of the demo's heat capacity, by our own equations.
const QUICK: &str = "minute;amps;case;air\n0;103.6;28.24;29.20\n3;87.2;92.28;31.03\n6;61.0;104.17;33.14\n9;62.2;105.57;35.65\n12;59.3;104.96;37.85\n15;58.5;102.05;41.45\n18;59.7;103.36;45.74\n21;56.5;104.54;43.59\n24;57.3;103.23;45.50\n27;54.7;105.89;47.38\n30;54.8;104.66;49.37\n33;53.8;102.28;49.25\n36;53.8;104.27;50.97\n39;53.2;104.46;51.99\n42;54.8;104.92;49.55\n45;53.0;105.66;51.61\n";

fn said(sheet: &Worksheet, what: &str, text: &str) -> String {
    let log = calibration::read(text);
    let found = match calibration::fit(sheet, &log) {
        Ok(_) => "a fit".to_string(),
        Err(error) => refusal(&error),
    };
    let unread = log.remarks.first().map_or(String::new(), log_remark);
    format!("{what}: {unread}\n  {found}")
}
