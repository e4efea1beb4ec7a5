//! The three ways forums mark text up, and how text of the user's is kept from
//! being taken for mark-up.

/// How a text is marked up.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Style {
    /// Not at all.
    Plain,
    /// Asterisks for bold, hyphens for lists.
    Markdown,
    /// Tags in square brackets.
    BbCode,
}

/// Signs that are never mark-up inside a line of Markdown.
const HARMLESS: &str = ".,;:()-+/%'\"?";
/// Longest name that is written out.
const MOST: usize = 80;

impl Style {
    /// All three.
    pub const ALL: [Style; 3] = [Style::Plain, Style::Markdown, Style::BbCode];

    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Style::Plain => "plain text",
            Style::Markdown => "Markdown",
            Style::BbCode => "BBCode",
        }
    }

    /// A name that anybody may have given, on one line and of bounded length,
    /// with nothing in it that is mark-up.
    pub fn name(self, text: &str) -> String {
        let text = text.trim();
        match text.char_indices().nth(MOST) {
            Some((end, _)) => self.text(text.get(..end).unwrap_or_default()) + "…",
            None => self.text(text),
        }
    }

    /// Text on one line with nothing in it that is mark-up: a backslash before
    /// every sign that could be some within a line of Markdown; round brackets
    /// for square ones in BBCode, which has no way to escape them.
    pub fn text(self, text: &str) -> String {
        let mut safe = String::new();
        for c in text.chars() {
            match (self, c) {
                // Line breaks would begin a new block, and signs that turn the
                // direction of writing would mix up what stands around.
                _ if steers(c) || turns(c) => safe.push(' '),
                (Style::Markdown, c) if c.is_ascii_punctuation() && !HARMLESS.contains(c) => {
                    safe.push('\\');
                    safe.push(c);
                }
                (Style::BbCode, '[') => safe.push('('),
                (Style::BbCode, ']') => safe.push(')'),
                (_, c) => safe.push(c),
            }
        }
        safe
    }

    /// A heading; the text is safe already.
    pub(super) fn heading(self, text: &str) -> String {
        let [open, close] = match self {
            Style::Plain => ["", "\n"],
            Style::Markdown => ["**", "**\n\n"],
            Style::BbCode => ["[b]", "[/b]\n"],
        };
        format!("{open}{text}{close}")
    }

    /// A list; the lines are safe already.
    pub(super) fn list(self, lines: &[String]) -> String {
        if lines.is_empty() {
            return String::new();
        }
        let [open, mark, close] = match self {
            Style::Plain | Style::Markdown => ["", "- ", "\n"],
            Style::BbCode => ["[list]\n", "[*]", "[/list]\n"],
        };
        let lines: String = lines.iter().map(|line| format!("{mark}{line}\n")).collect();
        format!("{open}{lines}{close}")
    }

    /// An address. Whatever could end it early is percent-encoded.
    pub(super) fn address(self, link: &str) -> String {
        let [open, close] = match self {
            Style::Plain => ["", ""],
            Style::Markdown => ["<", ">"],
            Style::BbCode => ["[url]", "[/url]"],
        };
        let mut text = open.to_string();
        for c in link.chars() {
            match c {
                '<' => text.push_str("%3C"),
                '>' => text.push_str("%3E"),
                '[' => text.push_str("%5B"),
                ']' => text.push_str("%5D"),
                c if steers(c) || c.is_whitespace() => {}
                c => text.push(c),
            }
        }
        text + close
    }
}

/// Control characters, after the Unicode Standard's category Cc.
fn steers(c: char) -> bool {
    matches!(c, '\0'..='\x1f' | '\x7f'..='\u{9f}')
}

/// Signs that turn the direction of writing (Unicode Standard Annex 9, from memory).
fn turns(c: char) -> bool {
    matches!(c, '\u{200e}' | '\u{200f}' | '\u{2028}' | '\u{2029}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

#[cfg(test)]
mod tests {
    use crate::exchange::style::Style;

    #[test]
    fn names_stay_text() {
        let name = " [b]Sea*bird*\n# <script>`x`</script>[/b]\u{202e} ";
        assert_eq!(
            Style::Plain.name(name),
            "[b]Sea*bird* # <script>`x`</script>[/b] "
        );
        assert_eq!(
            Style::Markdown.name(name),
            r"\[b\]Sea\*bird\* \# \<script\>\`x\`\</script\>\[/b\] "
        );
        assert_eq!(
            Style::BbCode.name(name),
            "(b)Sea*bird* # <script>`x`</script>(/b) "
        );
        assert_eq!(Style::Plain.name(&"x".repeat(500)).chars().count(), 81);
    }

    #[test]
    fn an_address_ends_where_it_ends() {
        let link = "https://boat.example/#v=2&name=[/url]>\n&end";
        assert_eq!(
            Style::Markdown.address(link),
            "<https://boat.example/#v=2&name=%5B/url%5D%3E&end>"
        );
        assert_eq!(
            Style::BbCode.address(link),
            "[url]https://boat.example/#v=2&name=%5B/url%5D%3E&end[/url]"
        );
    }
}
