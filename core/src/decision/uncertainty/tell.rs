//! What many answers say: quantiles, and whose spread moves them.

use crate::decision::uncertainty::draw::RUNS;

/// What "never" counts as where a width or a share is asked \[h\].
const DAY_H: f64 = 24.0;
/// Into how many groups an input's strata are gathered.
const GROUPS: usize = 8;
/// The most inputs worth naming.
const MOST: usize = 5;
/// Smallest share worth naming with all runs: about three times what chance alone
/// gives with so many groups and runs, √(2·7)/512; of fewer runs more.
const LEAST: f64 = 0.02;
/// An answer that scatters by less than this part of itself has nothing to narrow.
const STEADY: f64 = 0.002;

/// How much an input matters.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rank {
    /// Its place among the inputs.
    pub at: usize,
    /// Part of the variance that comes from it alone, 0 to 1.
    pub share: f64,
    /// Mean width of the range once it is known.
    pub width: f64,
}

/// Figures in ascending order.
pub fn sorted(found: &[f64]) -> Vec<f64> {
    let mut sorted = found.to_vec();
    sorted.sort_by(f64::total_cmp);
    sorted
}

/// The figure below which a share (0 to 1) of sorted figures lies, with a
/// straight line between neighbours; infinite where a neighbour is. 0 of none.
/// R. J. Hyndman, Y. Fan, "Sample quantiles in statistical packages", The
/// American Statistician 50(4), 1996, definition 6 (from memory), which does not draw the
/// ends of a small group inwards.
pub fn quantile(sorted: &[f64], share: f64) -> f64 {
    let last = sorted.len().saturating_sub(1) as f64;
    let place = (share * (last + 2.0) - 1.0).clamp(0.0, last);
    let below = place.floor();
    let part = place - below;
    match (sorted.get(below as usize), sorted.get(below as usize + 1)) {
        (Some(a), Some(b)) if part > 0.0 && a.is_finite() => a + part * (b - a),
        (Some(a), _) => *a,
        _ => 0.0,
    }
}

/// From the tenth to the ninetieth of a hundred figures.
pub fn width(found: &[f64]) -> f64 {
    let sorted = sorted(found);
    quantile(&sorted, 0.9) - quantile(&sorted, 0.1)
}

/// Hours a day, with "never" as a whole day \[h\].
pub fn within_a_day(found: &[f64]) -> Vec<f64> {
    let most = |x: &f64| if x.is_finite() { *x } else { DAY_H };
    found.iter().map(most).collect()
}

/// The inputs that matter most, first things first. `strata` holds for each
/// input the stratum of every run.
///
/// The share is the first-order index of A. Saltelli et al., "Global
/// Sensitivity Analysis: The Primer", 2008, section 1.2.7 (from memory): the
/// variance of the conditional means over the variance, with the runs gathered
/// into groups of like strata; less what chance gives so many groups (ε² of
/// T. L. Kelley, Proc. Natl. Acad. Sci. 21(9), 554–559, 1935, from memory). The
/// width is the mean of the groups' own, so what a measurement leaves open is
/// about an eighth of the input's spread.
pub fn rank(strata: &[&[u16]], found: &[f64]) -> Vec<Rank> {
    let count = found.len() as f64;
    let mean = found.iter().sum::<f64>() / count;
    let whole = squares(found);
    if found.is_empty() || whole <= count * (STEADY * mean).powi(2) {
        return Vec::new();
    }
    let free = (count - GROUPS as f64).max(1.0);
    let least = LEAST * (RUNS as f64 / count).max(1.0);
    let mut shares: Vec<(usize, f64)> = strata
        .iter()
        .map(|strata| {
            let groups = grouped(strata, found);
            let inside: f64 = groups.iter().map(|group| squares(group)).sum();
            (1.0 - inside / free * (count - 1.0) / whole).clamp(0.0, 1.0)
        })
        .enumerate()
        .filter(|(_, share)| *share >= least)
        .collect();
    let most = width(found);
    let left = |strata: &[u16]| {
        let groups = grouped(strata, found);
        let widths = groups.iter().map(|group| width(group) * group.len() as f64);
        (widths.sum::<f64>() / count).min(most)
    };
    // A stable sort: of equal shares the input that comes first stays first.
    shares.sort_by(|(_, one), (_, other)| other.total_cmp(one));
    shares
        .into_iter()
        .take(MOST)
        .map(|(at, share)| Rank {
            at,
            share,
            width: strata.get(at).map_or(most, |strata| left(strata)),
        })
        .collect()
}

/// The figures of runs whose strata lie close together.
pub fn grouped(strata: &[u16], found: &[f64]) -> [Vec<f64>; GROUPS] {
    let mut groups: [Vec<f64>; GROUPS] = Default::default();
    for (stratum, figure) in strata.iter().zip(found) {
        if let Some(group) = groups.get_mut(usize::from(*stratum) * GROUPS / RUNS) {
            group.push(*figure);
        }
    }
    groups
}

/// Sum of squared distances from the mean.
fn squares(found: &[f64]) -> f64 {
    let mean = found.iter().sum::<f64>() / found.len().max(1) as f64;
    found.iter().map(|x| (x - mean).powi(2)).sum()
}

#[cfg(test)]
mod tests {
    use crate::decision::uncertainty::draw::{Column, RUNS};
    use crate::decision::uncertainty::tell::{quantile, rank, width, within_a_day};

    #[track_caller]
    fn near(found: f64, expected: f64, slack: f64) {
        assert!((found - expected).abs() <= slack, "{found}, not {expected}");
    }

    #[test]
    fn quantiles_of_an_even_spread() {
        let even: Vec<f64> = (1..100).map(f64::from).collect();
        for share in [0.01, 0.1, 0.5, 0.905, 0.99] {
            near(quantile(&even, share), 100.0 * share, 1e-9);
        }
        near(width(&even), 80.0, 1e-9);
        assert_eq!(quantile(&[], 0.5), 0.0);
        assert_eq!(quantile(&[7.0], 0.9), 7.0);
        let some_never = [1.0, 2.0, f64::INFINITY];
        assert_eq!(quantile(&some_never, 0.5), 2.0);
        assert_eq!(quantile(&some_never, 0.6), f64::INFINITY);
        assert_eq!(quantile(&some_never, 0.0), 1.0);
        assert_eq!(within_a_day(&some_never), [1.0, 2.0, 24.0]);
    }

    /// y = 3a + b + 0·c with a, b, c even from 0 to 1. By hand: the variances
    /// are 9/12 and 1/12, so nine tenths of it come from a and one from b. The
    /// sum of two even spreads has a trapezoid for its density, with a tenth
    /// below √(2·0.1·3) = 0.775 of 4. Knowing a to an eighth leaves spreads of
    /// 3/8 and 1: a tenth below √(2·0.1·0.375) = 0.274 of 1.375.
    #[test]
    fn a_straight_sum_is_ranked_by_its_factors() {
        let columns = ["c", "b", "a"].map(Column::of);
        let share = |at: usize, run: usize| columns[at].share(run);
        let found: Vec<f64> = (0..RUNS)
            .map(|run| 3.0 * share(2, run) + share(1, run))
            .collect();
        let strata: Vec<&[u16]> = columns.iter().map(Column::strata).collect();
        let ranks = rank(&strata, &found);
        assert_eq!(ranks.iter().map(|r| r.at).collect::<Vec<_>>(), [2, 1]);
        near(width(&found), 4.0 - 2.0 * 0.7746, 0.1);
        near(ranks[0].share, 0.9, 0.02);
        near(ranks[0].width, 1.375 - 2.0 * 0.2739, 0.03);
        near(ranks[1].share, 0.1, 0.03);
    }

    #[test]
    fn what_never_moves_is_no_reason() {
        let column = Column::of("a");
        assert!(rank(&[column.strata()], &[2.0; RUNS]).is_empty());
        assert!(rank(&[column.strata()], &[]).is_empty());
    }
}
