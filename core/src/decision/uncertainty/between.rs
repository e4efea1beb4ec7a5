//! Between several ways to go: which costs least, how often, and the reading that
//! decides it.

use crate::decision::uncertainty::tell::{grouped, rank};

/// Which of several ways to go, and what would change it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Preference {
    /// The one that costs least most often.
    pub best: usize,
    /// Runs in which it does, as a share of all, 0 to 1.
    pub best_share: f64,
    /// The one that does most often in the other runs.
    pub rival: Option<usize>,
    /// The reading after which the rival may be the better one, by its place.
    pub reading: Option<usize>,
}

/// Prefers one of several ways, given what each costs in every run, endless where it
/// does not work; none of fewer than two. Counted and not averaged: a single boat
/// in which a way does not work would outweigh all others. `strata` holds for each
/// figure that could be read the stratum of every run.
///
/// A reading decides if it is among those from which it comes which of the two costs
/// less, and if there is a part of its range in which the rival does: a decision
/// differs by what the reading says (H. Raiffa, R. Schlaifer, "Applied Statistical
/// Decision Theory", 1961, chapter 4, from memory).
pub fn prefer(costs: &[Vec<f64>], strata: &[&[u16]]) -> Option<Preference> {
    let runs = costs.iter().map(Vec::len).min().filter(|runs| *runs > 0)?;
    if costs.len() < 2 {
        return None;
    }
    let at = |way: usize, run: usize| {
        let cost = costs.get(way).and_then(|costs| costs.get(run));
        cost.copied().unwrap_or(f64::INFINITY)
    };
    let mut wins = vec![0usize; costs.len()];
    for run in 0..runs {
        let ways = 0..costs.len();
        let winner = ways.min_by(|one, other| at(*one, run).total_cmp(&at(*other, run)))?;
        // Where none works none is the best.
        if at(winner, run).is_finite() {
            wins[winner] += 1;
        }
    }
    // Of two with as many the first.
    let most = |but: Option<usize>| {
        let ways = (0..costs.len()).filter(|way| Some(*way) != but && wins[*way] > 0);
        ways.min_by_key(|way| runs - wins[*way])
    };
    let best = most(None)?;
    let rival = most(Some(best));
    let reading = rival.and_then(|rival| {
        let beaten = |run| f64::from(u8::from(at(rival, run) < at(best, run)));
        let beaten: Vec<f64> = (0..runs).map(beaten).collect();
        let mut ranks = rank(strata, &beaten).into_iter().map(|rank| rank.at);
        ranks.find(|place| {
            strata
                .get(*place)
                .is_some_and(|strata| turns(strata, &beaten))
        })
    });
    Some(Preference {
        best,
        best_share: wins[best] as f64 / runs as f64,
        rival,
        reading,
    })
}

/// Whether there is a part of a reading's range in which the best is beaten more
/// often than not: by two standard deviations of as many throws of a coin.
fn turns(strata: &[u16], beaten: &[f64]) -> bool {
    grouped(strata, beaten).iter().any(|group| {
        let count = group.len() as f64;
        let share = group.iter().sum::<f64>() / count.max(1.0);
        count > 0.0 && share > 0.5 + 1.0 / count.sqrt()
    })
}

#[cfg(test)]
mod tests {
    use crate::decision::uncertainty::between::{Preference, prefer};
    use crate::decision::uncertainty::draw::Column;

    const RUNS: usize = 128;

    /// One way costs 10, the other what a and b say, each even from 0 to 1.
    fn found(other: impl Fn(f64, f64) -> f64) -> Option<Preference> {
        let (a, b) = (Column::of("a"), Column::of("b"));
        let costs = (0..RUNS).map(|run| other(a.share(run), b.share(run)));
        prefer(
            &[vec![10.0; RUNS], costs.collect()],
            &[b.strata(), a.strata()],
        )
    }

    /// By hand: 6 + 10·a is less than 10 where a is below 0.4. What b is changes
    /// nothing.
    #[test]
    fn a_reading_decides_where_it_turns_the_choice() {
        let found = found(|a, _| 6.0 + 10.0 * a).expect("two ways");
        assert_eq!(
            (found.best, found.rival, found.reading),
            (0, Some(1), Some(1))
        );
        // 128 even draws scatter by 4 %.
        assert!((found.best_share - 0.6).abs() < 0.08, "{found:?}");
    }

    /// By hand: 9.7 + a + b is less than 10 in the corner a + b < 0.3, which is 4.5 %
    /// of all, and in no part of either range more often than not.
    #[test]
    fn a_reading_that_turns_nothing_decides_nothing() {
        let found = found(|a, b| 9.7 + a + b).expect("two ways");
        assert_eq!((found.best, found.rival, found.reading), (0, Some(1), None));
        assert!((found.best_share - 0.955).abs() < 0.04, "{found:?}");
    }

    #[test]
    fn one_boat_in_which_a_way_does_not_work_does_not_outweigh_the_others() {
        let found = found(|a, _| if a > 0.9 { f64::INFINITY } else { 9.0 }).expect("two ways");
        assert_eq!((found.best, found.rival), (1, Some(0)));
        assert_eq!(found.reading, Some(1));
    }

    #[test]
    fn where_one_is_always_best_there_is_no_rival() {
        let sure = found(|a, _| 11.0 + a).expect("two ways");
        assert_eq!((sure.best_share, sure.rival), (1.0, None));
        assert_eq!(prefer(&[vec![1.0; RUNS]], &[]), None);
        assert_eq!(prefer(&[Vec::new(), Vec::new()], &[]), None);
        let none = [vec![f64::INFINITY; RUNS], vec![f64::INFINITY; RUNS]];
        assert_eq!(prefer(&none, &[]), None);
    }
}
