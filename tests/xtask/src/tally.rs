//! Counts the tests that cargo reports.

/// Tests that passed and that failed, and what was not tried at all.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Tally {
    pub passed: usize,
    pub failed: usize,
    /// What could not be had, and the tests that need it were left out.
    pub left_out: Vec<&'static str>,
    /// What others know and could not be asked for; no fault of the project.
    pub unasked: Vec<&'static str>,
}

impl Tally {
    pub fn add(&mut self, other: Tally) {
        self.passed += other.passed;
        self.failed += other.failed;
        self.left_out.extend(other.left_out);
        self.unasked.extend(other.unasked);
    }

    /// Reads `test result: ok. 3 passed; 0 failed; …`.
    pub fn of_line(line: &str) -> Option<Tally> {
        let plain = without_colours(line);
        let (_, counts) = plain.strip_prefix("test result: ")?.split_once(". ")?;
        let count = |word: &str| {
            counts
                .split("; ")
                .find_map(|part| part.strip_suffix(word)?.trim().parse().ok())
        };
        Some(Tally {
            passed: count("passed")?,
            failed: count("failed")?,
            ..Tally::default()
        })
    }
}

fn without_colours(line: &str) -> String {
    let mut pieces = line.split('\u{1b}');
    let mut plain = pieces.next().unwrap_or("").to_string();
    for piece in pieces {
        let letter = piece.find(|c: char| c.is_ascii_alphabetic());
        plain.push_str(letter.map_or("", |at| &piece[at + 1..]));
    }
    plain
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(line: &str, wanted: Option<(usize, usize)>) {
        let wanted = wanted.map(|(passed, failed)| Tally {
            passed,
            failed,
            ..Tally::default()
        });
        assert_eq!(Tally::of_line(line), wanted);
    }

    #[test]
    fn results_are_counted() {
        check(
            "test result: ok. 12 passed; 0 failed; 1 ignored; 0 measured; 0 filtered out; finished in 0.02s",
            Some((12, 0)),
        );
        check(
            "test result: FAILED. 3 passed; 2 failed; 0 ignored; 0 measured",
            Some((3, 2)),
        );
        check(
            "test result: \u{1b}[32mok\u{1b}[0m. 4 passed; 0 failed; 0 ignored",
            Some((4, 0)),
        );
        check("test rules::all_hold ... ok", None);
        check("running 3 tests", None);
    }
}
