//! A formula as elements of MathML, which can be read aloud, selected and
//! printed.

use ampwright_core::explain::MathNode;
use ampwright_core::units::Reader;
use leptos::prelude::*;

use super::lines::{Piece, pieces};

/// What follows the sign of equality, in pieces between which the line may
/// break.
pub fn formula(node: &MathNode, reader: &Reader) -> impl IntoView + use<> {
    let piece = |piece: Piece| {
        let parts = piece.parts.iter().map(|part| match part {
            // Its other bracket may stand on another line.
            MathNode::Operator(sign) => view! { <mo stretchy="false">{*sign}</mo> }.into_any(),
            _ => set(part, reader),
        });
        view! {
            <mrow>
                {piece.sign.map(|sign| view! { <mo form="infix">{sign}</mo> })}
                {parts.collect::<Vec<_>>()}
            </mrow>
        }
    };
    view! {
        <math displaystyle="true">
            <mo form="infix">"="</mo>
            {pieces(node).into_iter().map(piece).collect_view()}
        </math>
    }
}

/// The sign of a figure in a formula.
pub fn sign(node: &MathNode, reader: &Reader) -> impl IntoView + use<> {
    view! { <math>{set(node, reader)}</math> }
}

/// An element and what is in it. Elements hold elements, so their type is not
/// known beforehand.
fn set(node: &MathNode, reader: &Reader) -> AnyView {
    let within = |parts: &[MathNode]| {
        let parts = parts.iter().map(|part| set(part, reader));
        parts.collect::<Vec<_>>()
    };
    match node {
        MathNode::Row(parts) => view! { <mrow>{within(parts)}</mrow> }.into_any(),
        MathNode::Fraction(parts) => view! { <mfrac>{within(&**parts)}</mfrac> }.into_any(),
        MathNode::Root(part) => view! { <msqrt>{set(part, reader)}</msqrt> }.into_any(),
        MathNode::Index(parts) => view! { <msub>{within(&**parts)}</msub> }.into_any(),
        MathNode::Raised(parts) => view! { <msup>{within(&**parts)}</msup> }.into_any(),
        MathNode::IndexRaised(parts) => view! { <msubsup>{within(&**parts)}</msubsup> }.into_any(),
        MathNode::Number(number) => view! { <mn>{reader.decimal(number)}</mn> }.into_any(),
        MathNode::Identifier(name) => view! { <mi>{name.clone()}</mi> }.into_any(),
        MathNode::Operator(sign) => operator(sign),
        // The comma of a list would be taken for that of a decimal.
        MathNode::Separator if reader.has_decimal_comma() => operator(";"),
        MathNode::Separator => operator(","),
        MathNode::Text(words) => view! { <mtext>{words.clone()}</mtext> }.into_any(),
    }
}

fn operator(sign: &'static str) -> AnyView {
    view! { <mo>{sign}</mo> }.into_any()
}
