//! What stands in the brackets: `symbol = "I", unit = "A", source = SOURCE,
//! constants(NAME("symbol", "what it is", "unit"))`.

use syn::parse::{Parse, ParseStream};
use syn::punctuated::Punctuated;
use syn::{Error, Expr, Ident, LitStr, Result, Token, parenthesized};

/// What is said of a formula besides its body.
pub(crate) struct Attributes {
    pub(crate) symbol: LitStr,
    pub(crate) unit: Expr,
    pub(crate) source: Expr,
    pub(crate) constants: Vec<NamedConstant>,
}

/// A constant with a symbol of its own.
pub(crate) struct NamedConstant {
    pub(crate) name: Ident,
    pub(crate) symbol: LitStr,
    pub(crate) words: LitStr,
    pub(crate) unit: LitStr,
}

impl Parse for NamedConstant {
    fn parse(input: ParseStream) -> Result<Self> {
        let name = input.parse()?;
        let inner;
        parenthesized!(inner in input);
        let symbol = inner.parse()?;
        inner.parse::<Token![,]>()?;
        let words = inner.parse()?;
        inner.parse::<Token![,]>()?;
        let unit = inner.parse()?;
        Ok(NamedConstant {
            name,
            symbol,
            words,
            unit,
        })
    }
}

impl Parse for Attributes {
    fn parse(input: ParseStream) -> Result<Self> {
        let (mut symbol, mut unit, mut source) = (None, None, None);
        let mut constants = Vec::new();
        while !input.is_empty() {
            let name: Ident = input.parse()?;
            if name == "constants" {
                let inner;
                parenthesized!(inner in input);
                constants.extend(Punctuated::<NamedConstant, Token![,]>::parse_terminated(
                    &inner,
                )?);
            } else {
                input.parse::<Token![=]>()?;
                match name.to_string().as_str() {
                    "symbol" => symbol = Some(input.parse()?),
                    "unit" => unit = Some(input.parse()?),
                    "source" => source = Some(input.parse()?),
                    _ => {
                        return Err(Error::new(
                            name.span(),
                            "a formula has a symbol, a unit, a source and constants",
                        ));
                    }
                }
            }
            if !input.is_empty() {
                input.parse::<Token![,]>()?;
            }
        }
        let missing = |what: &str| Error::new(input.span(), format!("a formula needs its {what}"));
        Ok(Attributes {
            symbol: symbol.ok_or_else(|| missing("symbol"))?,
            unit: unit.ok_or_else(|| missing("unit"))?,
            source: source.ok_or_else(|| missing("source"))?,
            constants,
        })
    }
}
