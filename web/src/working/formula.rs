//! A formula as the page sets it: symbols slanted, indices and exponents
//! lowered and raised, lines broken before an operator.

/// The markup of a formula, which the core writes as plain text.
pub fn formula(text: &str) -> String {
    let mut out = String::new();
    let (mut rest, mut before) = (text, ' ');
    while let Some(sign) = rest.chars().next() {
        let mut taken = sign.len_utf8();
        match sign {
            '_' => {
                // The comma of a list is none of an index.
                taken = end(rest, 1, |c| c.is_ascii_alphanumeric() || c == ',');
                let index = part(rest, 1, taken).trim_end_matches(',');
                taken = 1 + index.len();
                tagged(&mut out, "sub", index);
            }
            '^' => {
                let power = match closing(rest) {
                    Some(close) => {
                        taken = close + 1;
                        part(rest, 2, close)
                    }
                    None => {
                        taken = end(rest, 1, |c| !" /),".contains(c));
                        part(rest, 1, taken)
                    }
                };
                // A reader that hears no raised figures hears the sign.
                out += "<span class=unseen>^</span>";
                tagged(&mut out, "sup", &formula(power));
            }
            _ if is_letter(sign) => {
                taken = end(rest, 0, is_letter);
                match part(rest, 0, taken) {
                    word @ ("min" | "max" | "exp" | "ln") => out += word,
                    symbol => tagged(&mut out, "i", symbol),
                }
            }
            ' ' if "+−·".contains(before) || part(rest, 1, 2) == "%" => out.push('\u{a0}'),
            '/' if before == ')' => out += "<wbr>/",
            _ => out.push(sign),
        }
        before = sign;
        rest = part(rest, taken, rest.len());
    }
    out
}

/// Formulas know Latin and Greek letters.
fn is_letter(sign: char) -> bool {
    sign.is_ascii_alphabetic() || ('Α'..='ω').contains(&sign)
}

fn tagged(out: &mut String, tag: &str, text: &str) {
    for piece in ["<", tag, ">", text, "</", tag, ">"] {
        *out += piece;
    }
}

fn part(text: &str, from: usize, to: usize) -> &str {
    text.get(from..to).unwrap_or_default()
}

/// Where signs of a kind end that begin at a place.
fn end(text: &str, from: usize, kind: fn(char) -> bool) -> usize {
    let mut signs = text.char_indices();
    let other = signs.find(|&(at, sign)| at >= from && !kind(sign));
    other.map_or(text.len(), |(at, _)| at)
}

/// Where the bracket closes that opens right after the first sign.
fn closing(text: &str) -> Option<usize> {
    let mut open = 0;
    if part(text, 1, 2) != "(" {
        return None;
    }
    for (at, sign) in text.char_indices() {
        match sign {
            '(' => open += 1,
            ')' if open == 1 => return Some(at),
            ')' => open -= 1,
            _ => {}
        }
    }
    None
}
