//! Tests of the reader.

use crate::decision::calibration::columns::Column;
use crate::decision::calibration::log::{Log, MOST_ROWS, read};
use crate::decision::calibration::log_remark::{LineError, LogRemark};
use crate::schema::Excerpt;

/// Minutes and amps as read.
#[track_caller]
fn check(text: &str, rows: &[(f64, f64)]) -> Log {
    let log = read(text);
    let found: Vec<(f64, f64)> = log
        .rows
        .iter()
        .map(|row| (row.minute, row.get(Column::Amps).unwrap_or(-1.0)))
        .collect();
    assert_eq!(found, rows, "{:?}", log.remarks);
    log
}

#[test]
fn every_separator() {
    for text in [
        "0,90.5,31\n1,88,33",
        "0;90,5;31\n1;88;33",
        "0\t90,5\t31\n1\t88\t33",
        "0 90,5 31\n1 88 33",
        "0 90.5 31\n1  88  33",
        "0, 90.5, 31\n1, 88, 33",
        "\"0\",\"90,5\",\"31\"\n\"1\",\"88\",\"33\"",
        "\u{feff}0;90.5;31\r\n\r\n1;88;33\r\n",
        "# my notes\n0;90.5 A;31 °C\n\n1 min;88A;33\n",
    ] {
        let log = check(text, &[(0.0, 90.5), (1.0, 88.0)]);
        let case: Vec<_> = log.rows.iter().map(|row| row.get(Column::Case)).collect();
        assert_eq!(case, [Some(31.0), Some(33.0)], "{text}");
        assert!(log.remarks.is_empty(), "{text}: {:?}", log.remarks);
    }
}

#[test]
fn times_of_every_kind() {
    let at = |minutes: &[f64]| minutes.iter().map(|m| (*m, 50.0)).collect::<Vec<_>>();
    check("0:00;50\n0:30;50\n1:05;50", &at(&[0.0, 30.0, 65.0]));
    check("14:58;50\n15:03:30;50", &at(&[898.0, 903.5]));
    check("23:58;50\n0:03;50\n0:08;50", &at(&[1438.0, 1443.0, 1448.0]));
    check("seconds;amps\n0;50\n90;50", &at(&[0.0, 1.5]));
    check("hours;amps\n0;50\n0,5;50", &at(&[0.0, 30.0]));
}

#[test]
fn headings_in_any_order() {
    let log =
        read("Case temp (°F);RPM;Air °C;Alternator current;Time;Volts\n212;1400;31;80;3;13.4");
    let row = &log.rows[0];
    assert_eq!(row.minute, 3.0);
    assert_eq!(row.get(Column::Case), Some(100.0));
    assert_eq!(row.get(Column::Rpm), Some(1400.0));
    assert_eq!(row.get(Column::Air), Some(31.0));
    assert_eq!(row.get(Column::Amps), Some(80.0));
    assert_eq!(row.get(Column::Volts), Some(13.4));
    assert!(log.remarks.is_empty() && !log.shaft_speed);
    let log = read("min,alternator rpm,alt temp,stator,diodes,A\n0,3300,40,60,55,70");
    assert!(log.shaft_speed, "{log:?}");
    let row = &log.rows[0];
    let all = [
        Column::Rpm,
        Column::Case,
        Column::Winding,
        Column::Rectifier,
        Column::Amps,
    ];
    assert_eq!(
        all.map(|column| row.get(column)),
        [3300.0, 40.0, 60.0, 55.0, 70.0].map(Some)
    );
}

#[test]
fn what_is_not_known_is_remarked_on() {
    #[track_caller]
    fn found(text: &str, remark: LogRemark) {
        let remarks = read(text).remarks;
        assert!(remarks.contains(&remark), "{remark:?}: {remarks:?}");
    }
    let typed = Excerpt::of;
    let column = |heading| LogRemark::Column {
        heading: typed(heading),
    };
    let line = |line, why| LogRemark::Line { line, why };
    let not_a_time = |words| LineError::NotATime {
        typed: typed(words),
    };
    let not_a_number = LineError::NotANumber {
        typed: typed("warm"),
    };
    let out_of_range = |words| LineError::OutOfRange {
        column: Column::Case,
        typed: typed(words),
    };
    found("minute;mood;amps\n0;fine;50", column("mood"));
    found("minute;bank amps;case\n0;50;40", column("bank amps"));
    found("amps;case\n50;40", LogRemark::NoTimeColumn);
    found("amps;case\n50;40", line(2, LineError::NoTime));
    found("0;50;40\nhello\n2;50;41", line(2, not_a_time("hello")));
    found("0;50;warm", line(1, not_a_number));
    found("0;50;4000", line(1, out_of_range("4000")));
    found("0;50;1e999", line(1, out_of_range("1e999")));
    found("7", line(1, LineError::OnlyATime));
    found("1:75;50;40", line(1, not_a_time("1:75")));
}

#[test]
fn gaps_are_gaps() {
    let log = read("0;50;;30\n1;-;41;\n2;50;–;31");
    let case: Vec<_> = log.rows.iter().map(|row| row.get(Column::Case)).collect();
    assert_eq!(case, [None, Some(41.0), None]);
    assert!(log.remarks.is_empty(), "{:?}", log.remarks);
}

#[test]
fn endless_texts_end() {
    let long: String = (0..3000)
        .map(|k| format!("{};50;40\n", 0.1 * f64::from(k)))
        .collect();
    let log = read(&long);
    assert_eq!(log.rows.len(), MOST_ROWS);
    assert_eq!(log.remarks.len(), 1, "{:?}", log.remarks);
    let log = read(&"nonsense\n".repeat(500));
    assert!(log.rows.is_empty() && log.remarks.len() < 20);
    assert!(
        log.remarks
            .iter()
            .any(|remark| matches!(remark, LogRemark::MoreLines { .. }))
    );
}

/// A page of prose is not told word by word.
#[test]
fn many_strange_headings_are_counted() {
    let log = read(&format!("minute {}", "colour ".repeat(100)));
    assert_eq!(log.remarks.len(), 13);
    assert_eq!(log.remarks[12], LogRemark::MoreColumns { count: 88 });
}
