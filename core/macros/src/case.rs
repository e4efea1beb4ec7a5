//! Cases of a formula: `if … else`, decided by comparisons.

use proc_macro2::{Ident, TokenStream};
use quote::{ToTokens, quote};
use syn::spanned::Spanned;
use syn::{BinOp, Error, Expr, ExprBinary, ExprIf, ExprUnary, Result, UnOp};

use crate::body::{Names, node};

impl Names<'_> {
    pub(crate) fn case(&self, case: &ExprIf) -> Result<TokenStream> {
        let Some((_, otherwise)) = &case.else_branch else {
            return Err(Error::new_spanned(case, "a case needs its `else`"));
        };
        let when = self.condition(&case.cond)?;
        let value = self.block(&case.then_branch)?;
        let otherwise = self.expression(otherwise)?;
        Ok(node("Case", quote!(&#when, &#value, &#otherwise)))
    }

    /// A comparison, or several joined.
    pub(crate) fn condition(&self, condition: &Expr) -> Result<TokenStream> {
        match condition {
            Expr::Paren(inner) => self.condition(&inner.expr),
            Expr::Unary(ExprUnary {
                op: UnOp::Not(_),
                expr,
                ..
            }) => {
                let inner = self.condition(expr)?;
                Ok(test("Not", quote!(&#inner)))
            }
            Expr::Binary(ExprBinary {
                left, op, right, ..
            }) => {
                let (one, two) = match op {
                    BinOp::And(_) | BinOp::Or(_) => (self.condition(left)?, self.condition(right)?),
                    _ => (self.expression(left)?, self.expression(right)?),
                };
                let (kind, one, two) = match op {
                    BinOp::Lt(_) => ("Less", one, two),
                    BinOp::Le(_) => ("AtMost", one, two),
                    BinOp::Gt(_) => ("Less", two, one),
                    BinOp::Ge(_) => ("AtMost", two, one),
                    BinOp::Eq(_) => ("Equal", one, two),
                    BinOp::And(_) => ("Both", one, two),
                    BinOp::Or(_) => ("Either", one, two),
                    other => return Err(no_condition(other)),
                };
                Ok(test(kind, quote!(&#one, &#two)))
            }
            other => Err(no_condition(other)),
        }
    }
}

fn test(kind: &str, inner: TokenStream) -> TokenStream {
    let kind = Ident::new(kind, inner.span());
    quote!(::ampwright_core::formula::Condition::#kind(#inner))
}

fn no_condition(of: &impl ToTokens) -> Error {
    Error::new_spanned(of, "a case is decided by comparisons: < <= > >= == && || !")
}
