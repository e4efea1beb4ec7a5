//! Order in a short list.

/// Puts a list in order by what comes before what; of two of which neither does,
/// the first stays first. Quick for some tens, and for any number that nearly
/// stand in order already; for thousands in disorder `sort_by` is quicker.
///
/// R. Sedgewick, K. Wayne, "Algorithms", 4th edition, 2011, section 2.1.
pub fn insertion_sort<T>(list: &mut [T], comes_before: impl Fn(&T, &T) -> bool) {
    for next in 1..list.len() {
        let mut at = next;
        while at > 0 && comes_before(&list[at], &list[at - 1]) {
            list.swap(at, at - 1);
            at -= 1;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::insertion_sort;

    #[test]
    fn as_the_standard_library_sorts() {
        for mut list in [
            vec![],
            vec![(1, 'a')],
            vec![(3, 'a'), (1, 'b'), (3, 'c'), (2, 'd'), (1, 'e')],
            vec![(5, 'a'), (4, 'b'), (3, 'c'), (2, 'd')],
        ] {
            let mut wanted = list.clone();
            wanted.sort_by_key(|(key, _)| *key);
            insertion_sort(&mut list, |(one, _), (other, _)| one < other);
            assert_eq!(list, wanted);
        }
    }
}
