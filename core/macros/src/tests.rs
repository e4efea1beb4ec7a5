//! What is taken, and what is refused with which words.

use quote::quote;

use crate::expand::expand;

fn refused(function: proc_macro2::TokenStream) -> String {
    let attributes = quote!(symbol = "y", unit = "", source = SOURCE);
    match expand(attributes, function) {
        Ok(made) => panic!("taken: {made}"),
        Err(error) => error.to_string(),
    }
}

#[test]
fn the_function_stays_and_its_body_becomes_data() {
    let made = expand(
        quote!(
            symbol = "y",
            unit = "A",
            source = SOURCE,
            constants(K("k", "a constant", "W"))
        ),
        quote! {
            pub fn twice(#[symbol("x")] x: f64) -> f64 {
                let step = K * x;
                if step > 0.0 { step.powi(2) } else { -x }
            }
        },
    );
    let made = made.expect("a formula").to_string();
    let text: String = made.split_whitespace().collect();
    assert!(
        text.contains("pubfntwice(x:f64)->f64{letstep=K*x;"),
        "{text}"
    );
    assert!(text.contains("symbol:\"k\",words:\"aconstant\""), "{text}");
    assert!(text.contains("Expr::Case(&::ampwright_core::formula::Condition::Less("));
    assert!(text.contains("value:|[x]:[f64;1usize]|twice(x)"), "{text}");
}

#[test]
fn what_is_no_formula_is_refused_in_plain_words() {
    for (function, words) in [
        (
            quote! { fn f(x: f64) -> f64 { x } },
            "`x` needs its symbol: #[symbol(\"…\")]",
        ),
        (
            quote! { fn f(#[symbol("x")] x: f32) -> f64 { x } },
            "an argument is an f64",
        ),
        (
            quote! { fn f(#[symbol("x")] x: f64) -> Option<f64> { Some(x) } },
            "a formula returns one f64",
        ),
        (
            quote! { fn f(#[symbol("x")] x: f64) -> f64 { x.tan() } },
            "a formula knows sqrt, exp, ln, sin, cos, asin, abs, powi, powf, min, max and clamp",
        ),
        (
            quote! { fn f(#[symbol("x")] x: f64) -> f64 { x % 2.0 } },
            "a formula has the signs + - * /",
        ),
        (
            quote! { fn f(#[symbol("x")] x: f64) -> f64 { if x.is_nan() { 1.0 } else { x } } },
            "a case is decided by comparisons: < <= > >= == && || !",
        ),
        (
            quote! { fn f(#[symbol("x")] x: f64) -> f64 { while x > 0.0 {} x } },
            "a formula has steps (`let`), early values (`if … { return … }`) and its value",
        ),
        (
            quote! { fn f(#[symbol("x")] x: f64) -> f64 { 2 * x } },
            "a number in a formula is an f64",
        ),
    ] {
        assert_eq!(refused(function), words);
    }
}

#[test]
fn what_is_missing_is_said() {
    let function = quote! { fn f(#[symbol("x")] x: f64) -> f64 { x } };
    let made = expand(quote!(symbol = "y", unit = "A"), function);
    assert_eq!(
        made.expect_err("no source").to_string(),
        "a formula needs its source"
    );
}
