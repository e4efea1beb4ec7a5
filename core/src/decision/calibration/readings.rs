//! A log that grows a reading at a time, and the text it is kept as.

use std::fmt::Write;

use crate::decision::calibration::columns::Column;
use crate::decision::calibration::log::{Log, MOST_ROWS, Row};

impl Log {
    /// Puts a reading where its time belongs, behind others of the same minute.
    /// A full log takes no more.
    pub fn put(&mut self, row: Row) {
        if self.rows.len() >= MOST_ROWS {
            return;
        }
        let at = self
            .rows
            .iter()
            .rposition(|other| other.minute <= row.minute);
        self.rows.insert(at.map_or(0, |at| at + 1), row);
    }

    /// The reading that was taken last.
    pub fn latest(&self) -> Option<&Row> {
        self.rows
            .iter()
            .max_by(|one, other| one.minute.total_cmp(&other.minute))
    }

    /// How things stand: the last reading, and over it what is being typed,
    /// unless that is an older one.
    pub fn now(&self, typed: Option<&Row>) -> Option<Row> {
        let latest = self.latest();
        let is_newer = |typed: &&Row| latest.is_none_or(|latest| latest.minute <= typed.minute);
        let Some(typed) = typed.filter(is_newer) else {
            return latest.cloned();
        };
        let of = |column| {
            let before = latest.and_then(|latest| latest.get(column));
            typed.get(column).or(before)
        };
        Some(Row::new(typed.line, typed.minute, Column::ALL.map(of)))
    }

    /// The readings as a text that [`read`](super::read) takes.
    pub fn to_text(&self) -> String {
        let speed = match self.shaft_speed {
            true => "alternator rpm",
            false => "rpm",
        };
        let mut text = String::from("minute");
        for column in Column::ALL {
            let name = match column {
                Column::Rpm => speed,
                column => column.name(),
            };
            text.push(';');
            text.push_str(name);
        }
        text.push('\n');
        for row in &self.rows {
            // Writing to a String cannot fail.
            let _ = write!(text, "{}", row.minute);
            for column in Column::ALL {
                text.push(';');
                if let Some(reading) = row.get(column) {
                    let _ = write!(text, "{reading}");
                }
            }
            text.push('\n');
        }
        text
    }
}

#[cfg(test)]
mod tests {
    use crate::decision::calibration::columns::Column;
    use crate::decision::calibration::log::Row;
    use crate::decision::calibration::{Log, SAMPLE, read};

    #[test]
    fn a_log_is_read_back_as_it_was() {
        for text in [
            SAMPLE,
            "min;alternator rpm;stator;diodes;A\n0;3300;60;55;70\n2,5;3301;61,25;;70",
            "",
        ] {
            let log = read(text);
            let again = read(&log.to_text());
            assert_eq!(again.shaft_speed, log.shaft_speed);
            assert!(again.remarks.is_empty(), "{:?}", again.remarks);
            let bare = |log: &Log| log.to_text();
            assert_eq!(bare(&again), bare(&log));
            assert_eq!(again.rows.len(), log.rows.len());
        }
    }

    #[test]
    fn readings_stand_by_their_time() {
        let mut log = read("0;80\n4;82");
        log.put(read("2;81").rows.remove(0));
        log.put(read("9;70").rows.remove(0));
        let minutes: Vec<f64> = log.rows.iter().map(|row| row.minute).collect();
        assert_eq!(minutes, [0.0, 2.0, 4.0, 9.0]);
        assert_eq!(log.latest().map(|row| row.minute), Some(9.0));
    }

    #[test]
    fn what_is_typed_counts_over_the_last_reading() {
        let log = read("0;80;60\n4;82;110");
        let typed = |text: &str| read(text).rows.remove(0);
        let now = |typed: Option<Row>| {
            let row = log.now(typed.as_ref()).unwrap();
            (row.get(Column::Amps), row.get(Column::Case))
        };
        assert_eq!(now(None), (Some(82.0), Some(110.0)));
        assert_eq!(now(Some(typed("6;70"))), (Some(70.0), Some(110.0)));
        assert_eq!(now(Some(typed("6;70;90"))), (Some(70.0), Some(90.0)));
        // An older reading is being corrected.
        assert_eq!(now(Some(typed("0;85;61"))), (Some(82.0), Some(110.0)));
        assert_eq!(Log::default().now(None), None);
    }
}
