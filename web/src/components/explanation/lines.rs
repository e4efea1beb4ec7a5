//! Where the line of a formula may break, so that it fits a phone and a column
//! in print: before a sign and between the members of a list. A fraction too
//! wide for that is written with a slash.

use ampwright_core::explain::MathNode;

/// A part of a formula that stays on one line.
#[derive(Debug, Default, PartialEq)]
pub struct Piece {
    /// The sign that joins it to the piece before.
    pub sign: Option<&'static str>,
    /// What follows the sign.
    pub parts: Vec<MathNode>,
}

/// Widest formula that is never broken, in letters: what a phone has room for.
const WIDEST: f64 = 30.0;
/// Widest product that stays together in a sum.
const WIDEST_TERM: f64 = 20.0;

/// A formula in pieces; in one where it is short.
pub fn pieces(formula: &MathNode) -> Vec<Piece> {
    let mut pieces = vec![Piece::default()];
    if width(formula) > WIDEST {
        cut(formula, &mut pieces);
    } else {
        push(formula, &mut pieces);
    }
    pieces
}

fn push(node: &MathNode, pieces: &mut [Piece]) {
    if let Some(last) = pieces.last_mut() {
        last.parts.push(node.clone());
    }
}

fn cut(node: &MathNode, pieces: &mut Vec<Piece>) {
    match node {
        MathNode::Row(parts) => {
            for (at, part) in parts.iter().enumerate() {
                match part {
                    MathNode::Operator(sign @ ("+" | "−" | "·")) if at > 0 => {
                        pieces.push(joined(sign));
                    }
                    MathNode::Separator => {
                        push(part, pieces);
                        pieces.push(Piece::default());
                    }
                    _ if stays_whole(part) => push(part, pieces),
                    _ => cut(part, pieces),
                }
            }
        }
        MathNode::Fraction(parts) if width(node) > WIDEST => {
            let [above, below] = &**parts;
            bracketed(above, pieces);
            pieces.push(joined("/"));
            bracketed(below, pieces);
        }
        _ => push(node, pieces),
    }
}

fn joined(sign: &'static str) -> Piece {
    Piece {
        sign: Some(sign),
        parts: Vec::new(),
    }
}

/// Above or below the bar of a fraction that now has a slash.
fn bracketed(node: &MathNode, pieces: &mut Vec<Piece>) {
    let is_row = matches!(node, MathNode::Row(_)) && !is_bracketed(node);
    if is_row {
        push(&MathNode::Operator("("), pieces);
    }
    cut(node, pieces);
    if is_row {
        push(&MathNode::Operator(")"), pieces);
    }
}

fn is_bracketed(node: &MathNode) -> bool {
    match node {
        MathNode::Row(parts) => parts.first() == Some(&MathNode::Operator("(")),
        _ => false,
    }
}

/// Whether a part of a row is not broken: brackets as long as they fit a line,
/// products of a few figures, and whatever is no row.
fn stays_whole(part: &MathNode) -> bool {
    let MathNode::Row(parts) = part else {
        return width(part) <= WIDEST;
    };
    if is_bracketed(part) {
        return width(part) <= WIDEST;
    }
    let is_sum = parts
        .iter()
        .skip(1)
        .any(|part| matches!(part, MathNode::Operator("+" | "−")));
    !is_sum && width(part) <= WIDEST_TERM
}

/// About how wide a formula is, in letters.
fn width(node: &MathNode) -> f64 {
    let lowered = |node: &MathNode| 0.7 * width(node);
    match node {
        MathNode::Row(parts) => parts.iter().map(width).sum(),
        MathNode::Number(text) | MathNode::Identifier(text) | MathNode::Text(text) => {
            text.chars().count() as f64
        }
        MathNode::Operator("(" | ")" | "%") => 1.0,
        MathNode::Operator(_) | MathNode::Separator => 2.0,
        MathNode::Fraction(parts) => parts.iter().map(width).fold(0.0, f64::max),
        MathNode::Root(part) => 1.0 + width(part),
        MathNode::Index(parts) | MathNode::Raised(parts) => {
            let [base, other] = &**parts;
            width(base) + lowered(other)
        }
        MathNode::IndexRaised(parts) => {
            let [base, index, raised] = &**parts;
            width(base) + lowered(index).max(lowered(raised))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn symbol(name: &str) -> MathNode {
        MathNode::symbol(name)
    }

    fn sum(parts: &[&str]) -> MathNode {
        let mut row = Vec::new();
        for part in parts {
            if !row.is_empty() {
                row.push(MathNode::Operator("+"));
            }
            row.push(symbol(part));
        }
        MathNode::Row(row)
    }

    fn signs(formula: &MathNode) -> Vec<&'static str> {
        let pieces = pieces(formula);
        pieces.iter().filter_map(|piece| piece.sign).collect()
    }

    #[test]
    fn a_short_formula_is_one_piece() {
        let short = MathNode::Fraction(Box::new([sum(&["a", "b"]), symbol("c")]));
        assert_eq!(
            pieces(&short),
            [Piece {
                sign: None,
                parts: vec![short.clone()]
            }]
        );
    }

    #[test]
    fn a_wide_fraction_breaks_before_its_signs() {
        let wide = sum(&["P_field", "P_stored", "P_winding", "P_rectifier", "P"]);
        let wide = MathNode::Fraction(Box::new([wide, sum(&["a", "b"])]));
        assert_eq!(signs(&wide), ["+", "+", "+", "+", "/", "+"]);
        let text: String = pieces(&wide)
            .into_iter()
            .flat_map(|piece| piece.parts)
            .map(|part| part.to_string())
            .collect();
        assert_eq!(text.matches("<mo>(</mo>").count(), 2);
        assert_eq!(text.matches("<mo>)</mo>").count(), 2);
    }

    /// A phone has room for each piece of every formula.
    #[test]
    fn no_piece_of_a_formula_is_wider_than_a_phone() {
        for sheet in [
            ampwright_core::Worksheet::default(),
            ampwright_core::boat::demo(),
        ] {
            let report = ampwright_core::report(&sheet);
            for made in ampwright_core::explain::workings(&sheet, &report) {
                let formulas = [made.mathml.symbols, made.mathml.figures];
                for piece in formulas.iter().flatten().flat_map(pieces) {
                    let width: f64 = piece.parts.iter().map(width).sum();
                    assert!(width <= 1.2 * WIDEST, "{}: {width} {piece:?}", made.id);
                }
            }
        }
    }
}
