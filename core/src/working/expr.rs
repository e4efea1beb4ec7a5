//! Formulas as text: what their figures come to, and how they are written.
//!
//! In the tables `*`, `-`, `^2` and `;` stand for the signs of multiplication, of
//! subtraction, of a square and of a list.

use crate::working::table::cut;

/// What ends a name or a number in a formula.
const SIGNS: &[u8] = b"+-*/^();%";

/// A number in so many significant digits, without idle zeros; whole numbers
/// are never shortened.
#[inline(never)]
pub(super) fn significant(number: f64, digits: usize) -> String {
    let number = if number == 0.0 { 0.0 } else { number };
    // Digits before the point, or zeros behind it.
    let (mut size, mut left) = (0, number.abs());
    while left >= 10.0 && size < 17 {
        (left, size) = (left / 10.0, size + 1);
    }
    while left < 1.0 && size > -25 {
        (left, size) = (left * 10.0, size - 1);
    }
    let decimals = (digits as i32 - 1 - size).max(0) as usize;
    let long = format!("{number:.decimals$}");
    // What it takes to say the number exactly is enough.
    let exact = number.to_string();
    let text = if exact.len() < long.len() {
        exact
    } else {
        long
    };
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_string()
    } else {
        text
    }
}

/// The same formula with `word` written for each name in it.
#[inline(never)]
pub(super) fn replaced(formula: &str, word: &mut dyn FnMut(&str, &mut String)) -> String {
    let (mut out, mut rest) = (String::new(), formula);
    while !rest.is_empty() {
        let (text, sign, tail) = cut(rest, SIGNS);
        let number = text.as_bytes().first().is_none_or(u8::is_ascii_digit);
        if number || matches!(text, "min" | "max" | "√") {
            out.push_str(text);
        } else {
            word(text, &mut out);
        }
        if sign > 0 {
            out.push(char::from(sign));
        }
        rest = tail;
    }
    out
}

/// A formula or its figures in the signs of print.
#[inline(never)]
pub(super) fn printed(text: &str) -> String {
    let (mut out, mut rest, mut before) = (String::new(), text, b'(');
    while !rest.is_empty() {
        let (word, sign, tail) = cut(rest, SIGNS);
        let squared = before == b'^' && word == "2";
        if before == b'^' && !squared {
            out.push('^');
        }
        out.push_str(if squared { "²" } else { word });
        out.push_str(match sign {
            b'*' => " · ",
            b'+' => " + ",
            b'-' if word.is_empty() && matches!(before, b'(' | b';') => "−",
            b'-' => " − ",
            b';' => ", ",
            b'%' => " %",
            b'/' => "/",
            b'(' => "(",
            b')' => ")",
            _ => "",
        });
        (rest, before) = (tail, sign);
    }
    out
}

/// What figures come to.
pub(super) fn come_to(figures: &str) -> f64 {
    sum(&mut &*figures)
}

fn eat(text: &mut &str, sign: &str) -> bool {
    let rest = text.strip_prefix(sign);
    *text = rest.unwrap_or(text);
    rest.is_some()
}

#[inline(never)]
fn sum(text: &mut &str) -> f64 {
    let mut value = product(text);
    loop {
        if eat(text, "+") {
            value += product(text);
        } else if eat(text, "-") {
            value -= product(text);
        } else {
            return value;
        }
    }
}

#[inline(never)]
fn product(text: &mut &str) -> f64 {
    let mut value = power(text);
    loop {
        if eat(text, "*") {
            value *= power(text);
        } else if eat(text, "/") {
            value /= power(text);
        } else {
            return value;
        }
    }
}

#[inline(never)]
fn power(text: &mut &str) -> f64 {
    let base = one(text);
    if eat(text, "^") {
        base.powf(one(text))
    } else {
        base
    }
}

#[inline(never)]
fn one(text: &mut &str) -> f64 {
    if eat(text, "-") {
        return -one(text);
    }
    if eat(text, "√") {
        return one(text).sqrt();
    }
    let least = eat(text, "min");
    let most = !least && eat(text, "max");
    if eat(text, "(") {
        let mut value = sum(text);
        while eat(text, ";") {
            let other = sum(text);
            if if least {
                other < value
            } else {
                most && other > value
            } {
                value = other;
            }
        }
        eat(text, ")");
        return value;
    }
    let (number, ..) = cut(text, SIGNS);
    *text = text.get(number.len()..).unwrap_or_default();
    let number = number.parse().unwrap_or(f64::NAN);
    if eat(text, "%") {
        number / 100.0
    } else {
        number
    }
}
