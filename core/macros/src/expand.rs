//! From a function to the function and its data.

use proc_macro2::TokenStream;
use quote::{format_ident, quote};
use syn::{Error, FnArg, Ident, ItemFn, LitStr, Pat, Result, ReturnType, Type, parse2};

use crate::attributes::Attributes;
use crate::body::Names;

/// An argument and the symbol it has in the formula.
struct Argument {
    name: Ident,
    symbol: LitStr,
}

/// The function without the symbols of its arguments, and its data.
pub(crate) fn expand(attributes: TokenStream, function: TokenStream) -> Result<TokenStream> {
    let attributes: Attributes = parse2(attributes)?;
    let mut function: ItemFn = parse2(function)?;
    let mut arguments = Vec::new();
    for input in &mut function.sig.inputs {
        arguments.push(argument(input)?);
    }
    match &function.sig.output {
        ReturnType::Type(_, of) if is_f64(of) => {}
        other => return Err(Error::new_spanned(other, "a formula returns one f64")),
    }
    let names = Names::new(
        arguments.iter().map(|argument| &argument.name),
        &attributes.constants,
    );
    let expression = names.block(&function.block)?;
    let (visible, name) = (&function.vis, &function.sig.ident);
    let (symbol, unit, source) = (&attributes.symbol, &attributes.unit, &attributes.source);
    let title = LitStr::new(&name.to_string(), name.span());
    let (idents, symbols): (Vec<_>, Vec<_>) =
        arguments.iter().map(|one| (&one.name, &one.symbol)).unzip();
    let idents_as_text = idents
        .iter()
        .map(|ident| LitStr::new(&ident.to_string(), ident.span()));
    let count = arguments.len();
    let doc = format!("The data of the function `{name}`.");
    let test = format_ident!("{name}_is_its_data");
    Ok(quote! {
        #function

        #[doc = #doc]
        #[allow(non_camel_case_types)]
        #visible enum #name {}

        impl #name {
            #[doc = #doc]
            #visible const FORMULA: ::ampwright_core::formula::Formula<#count> =
                ::ampwright_core::formula::Formula {
                    body: &::ampwright_core::formula::Body {
                        name: #title,
                        symbol: #symbol,
                        unit: #unit,
                        source: #source,
                        arguments: &[#(::ampwright_core::formula::Argument {
                            name: #idents_as_text,
                            symbol: #symbols,
                        }),*],
                        expression: #expression,
                    },
                    value: |[#(#idents),*]: [f64; #count]| #name(#(#idents),*),
                };
        }

        #[cfg(test)]
        #[test]
        fn #test() {
            ::ampwright_core::formula::check::agrees(&#name::FORMULA);
        }
    })
}

/// Takes the symbol off an argument.
fn argument(input: &mut FnArg) -> Result<Argument> {
    let FnArg::Typed(typed) = input else {
        return Err(Error::new_spanned(input, "a formula is no method"));
    };
    let Pat::Ident(name) = &*typed.pat else {
        return Err(Error::new_spanned(
            &typed.pat,
            "an argument has a plain name",
        ));
    };
    if !is_f64(&typed.ty) {
        return Err(Error::new_spanned(&typed.ty, "an argument is an f64"));
    }
    let name = name.ident.clone();
    let at = typed
        .attrs
        .iter()
        .position(|attribute| attribute.path().is_ident("symbol"));
    let Some(at) = at else {
        let message = format!("`{name}` needs its symbol: #[symbol(\"…\")]");
        return Err(Error::new(name.span(), message));
    };
    let symbol = typed.attrs.remove(at).parse_args()?;
    Ok(Argument { name, symbol })
}

fn is_f64(of: &Type) -> bool {
    matches!(of, Type::Path(path) if path.path.is_ident("f64"))
}
