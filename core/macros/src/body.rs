//! From a body to its expression: tokens that build an
//! `ampwright_core::formula::Expr` when the crate is compiled.

use std::collections::HashMap;

use proc_macro2::{Ident, TokenStream};
use quote::{ToTokens, quote};
use syn::spanned::Spanned;
use syn::{
    BinOp, Block, Error, Expr, ExprBinary, ExprMethodCall, ExprUnary, Lit, Local, Pat, Path,
    Result, Stmt, UnOp,
};

use crate::attributes::NamedConstant;

/// What a name in the body stands for, each as the tokens of its expression.
#[derive(Clone)]
pub(crate) struct Names<'a> {
    known: HashMap<Ident, TokenStream>,
    constants: &'a [NamedConstant],
}

impl<'a> Names<'a> {
    pub(crate) fn new<'b>(
        arguments: impl Iterator<Item = &'b Ident>,
        constants: &'a [NamedConstant],
    ) -> Names<'a> {
        let known = arguments
            .enumerate()
            .map(|(at, name)| (name.clone(), node("Argument", quote!(#at))))
            .collect();
        Names { known, constants }
    }

    /// A block: steps, then its value.
    pub(crate) fn block(&self, block: &Block) -> Result<TokenStream> {
        self.clone().statements(&block.stmts, block)
    }

    fn statements(&mut self, statements: &[Stmt], whole: &dyn ToTokens) -> Result<TokenStream> {
        match statements {
            [] => Err(Error::new_spanned(whole, "a formula ends in its value")),
            [Stmt::Expr(value, None)] => self.expression(value),
            [Stmt::Expr(Expr::Return(value), Some(_))] => match &value.expr {
                Some(value) => self.expression(value),
                None => Err(Error::new_spanned(value, "a formula ends in its value")),
            },
            [Stmt::Local(step), rest @ ..] => {
                let (name, value) = self.step(step)?;
                self.known.insert(name, value);
                self.statements(rest, whole)
            }
            [Stmt::Expr(Expr::If(early), _), rest @ ..] if early.else_branch.is_none() => {
                let when = self.condition(&early.cond)?;
                let value = self.block(&early.then_branch)?;
                let otherwise = self.statements(rest, whole)?;
                Ok(node("Case", quote!(&#when, &#value, &#otherwise)))
            }
            [other, ..] => Err(Error::new_spanned(
                other,
                "a formula has steps (`let`), early values (`if … { return … }`) and its value",
            )),
        }
    }

    fn step(&self, step: &Local) -> Result<(Ident, TokenStream)> {
        let (Pat::Ident(name), Some(init)) = (&step.pat, &step.init) else {
            return Err(Error::new_spanned(step, "a step is `let name = …;`"));
        };
        Ok((name.ident.clone(), self.expression(&init.expr)?))
    }

    pub(crate) fn expression(&self, expression: &Expr) -> Result<TokenStream> {
        match expression {
            Expr::Paren(inner) => self.expression(&inner.expr),
            Expr::Group(inner) => self.expression(&inner.expr),
            Expr::Block(inner) => self.block(&inner.block),
            Expr::Lit(literal) => match &literal.lit {
                Lit::Float(number) => Ok(node("Number", quote!(#number))),
                other => Err(Error::new_spanned(other, "a number in a formula is an f64")),
            },
            Expr::Path(path) => Ok(self.name(&path.path)),
            Expr::Unary(ExprUnary {
                op: UnOp::Neg(_),
                expr,
                ..
            }) => {
                let value = self.expression(expr)?;
                Ok(node("Negative", quote!(&#value)))
            }
            Expr::Binary(binary) => self.binary(binary),
            Expr::MethodCall(call) => self.method(call),
            Expr::Call(call) => {
                let Expr::Path(path) = &*call.func else {
                    return Err(not_known(&call.func));
                };
                let arguments = call
                    .args
                    .iter()
                    .map(|argument| self.expression(argument))
                    .collect::<Result<Vec<_>>>()?;
                let path = &path.path;
                Ok(node(
                    "Call",
                    quote!(#path::FORMULA.body, &[#(#arguments),*]),
                ))
            }
            Expr::If(case) => self.case(case),
            other => Err(not_known(other)),
        }
    }

    /// An argument, a step, or a constant.
    fn name(&self, path: &Path) -> TokenStream {
        if let Some(known) = path.get_ident().and_then(|name| self.known.get(name)) {
            return known.clone();
        }
        let last = path.segments.last().map(|segment| &segment.ident);
        let mut constants = self.constants.iter();
        match constants.find(|constant| Some(&constant.name) == last) {
            Some(NamedConstant {
                symbol,
                words,
                unit,
                ..
            }) => node(
                "Constant",
                quote!(&::ampwright_core::formula::Constant {
                    symbol: #symbol,
                    words: #words,
                    unit: #unit,
                    value: #path,
                }),
            ),
            None => node("Number", quote!(#path)),
        }
    }

    fn binary(&self, binary: &ExprBinary) -> Result<TokenStream> {
        let kind = match binary.op {
            BinOp::Add(_) => "Sum",
            BinOp::Sub(_) => "Difference",
            BinOp::Mul(_) => "Product",
            BinOp::Div(_) => "Quotient",
            other => {
                return Err(Error::new_spanned(other, "a formula has the signs + - * /"));
            }
        };
        let (left, right) = (
            self.expression(&binary.left)?,
            self.expression(&binary.right)?,
        );
        Ok(node(kind, quote!(&#left, &#right)))
    }

    fn method(&self, call: &ExprMethodCall) -> Result<TokenStream> {
        let of = self.expression(&call.receiver)?;
        let arguments: Vec<&Expr> = call.args.iter().collect();
        let name = call.method.to_string();
        match (name.as_str(), &arguments[..]) {
            ("sqrt", []) => Ok(node("Root", quote!(&#of))),
            ("exp", []) => Ok(node("Exponential", quote!(&#of))),
            ("ln", []) => Ok(node("Logarithm", quote!(&#of))),
            ("sin", []) => Ok(function("Sine", &of)),
            ("cos", []) => Ok(function("Cosine", &of)),
            ("asin", []) => Ok(function("Arcsine", &of)),
            ("abs", []) => Ok(function("Magnitude", &of)),
            ("powi", [power]) => {
                let power = whole(power)?;
                Ok(node("Power", quote!(&#of, &#power)))
            }
            ("powf", [power]) => {
                let power = self.expression(power)?;
                Ok(node("Power", quote!(&#of, &#power)))
            }
            ("min", [other]) => {
                let other = self.expression(other)?;
                Ok(node("Least", quote!(&#of, &#other)))
            }
            ("max", [other]) => {
                let other = self.expression(other)?;
                Ok(node("Greatest", quote!(&#of, &#other)))
            }
            ("clamp", [low, high]) => {
                let (low, high) = (self.expression(low)?, self.expression(high)?);
                let above = node("Greatest", quote!(&#of, &#low));
                Ok(node("Least", quote!(&#above, &#high)))
            }
            _ => Err(Error::new(
                call.method.span(),
                "a formula knows sqrt, exp, ln, sin, cos, asin, abs, powi, powf, min, max and clamp",
            )),
        }
    }
}

/// The exponent of a `powi`.
fn whole(power: &Expr) -> Result<TokenStream> {
    let (sign, literal) = match power {
        Expr::Unary(ExprUnary {
            op: UnOp::Neg(_),
            expr,
            ..
        }) => (-1, &**expr),
        other => (1, other),
    };
    match literal {
        Expr::Lit(literal) => match &literal.lit {
            Lit::Int(number) => {
                let number = f64::from(sign * number.base10_parse::<i32>()?);
                Ok(node("Number", quote!(#number)))
            }
            other => Err(Error::new_spanned(
                other,
                "the exponent of powi is a whole number",
            )),
        },
        other => Err(Error::new_spanned(
            other,
            "the exponent of powi is a whole number",
        )),
    }
}

pub(crate) fn node(kind: &str, inner: TokenStream) -> TokenStream {
    let kind = Ident::new(kind, inner.span());
    quote!(::ampwright_core::formula::Expr::#kind(#inner))
}

/// A function of one argument by its name in `ampwright_core::formula::Function`.
fn function(name: &str, of: &TokenStream) -> TokenStream {
    let name = Ident::new(name, of.span());
    node(
        "Function",
        quote!(::ampwright_core::formula::Function::#name, &#of),
    )
}

fn not_known(of: &impl ToTokens) -> Error {
    Error::new_spanned(
        of,
        "a formula is made of numbers, constants, arguments, + - * /, powers, roots, exp, ln, \
         sin, cos, asin, abs, min, max, clamp, `let`, `if … else` and calls of other formulas",
    )
}
