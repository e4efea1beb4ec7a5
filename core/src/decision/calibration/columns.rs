//! What the columns of a log can hold, and how headings in plain words name them.

use crate::decision::calibration::log::MOST_REMARKS;
use crate::decision::calibration::log_remark::LogRemark;
use crate::schema::Excerpt;

/// How many kinds of reading there are.
pub const COLUMNS: usize = 7;

/// A kind of reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Column {
    /// Current of the alternator \[A\].
    Amps,
    /// Temperature of its case \[°C\].
    Case,
    /// Temperature of the air near it \[°C\].
    Air,
    /// Speed \[rpm\], of the engine unless the heading says otherwise.
    Rpm,
    /// Voltage at the alternator \[V\].
    Volts,
    /// Temperature of its winding \[°C\].
    Winding,
    /// Temperature of its rectifier plate \[°C\].
    Rectifier,
}

impl Column {
    /// All of them; the first five in the order of a log without headings.
    pub const ALL: [Column; COLUMNS] = [
        Column::Amps,
        Column::Case,
        Column::Air,
        Column::Rpm,
        Column::Volts,
        Column::Winding,
        Column::Rectifier,
    ];

    /// What it is called.
    pub const fn name(self) -> &'static str {
        match self {
            Column::Amps => "amps",
            Column::Case => "case",
            Column::Air => "air",
            Column::Rpm => "rpm",
            Column::Volts => "volts",
            Column::Winding => "winding",
            Column::Rectifier => "rectifier",
        }
    }

    /// Its unit.
    pub const fn unit(self) -> &'static str {
        match self {
            Column::Amps => "A",
            Column::Rpm => "rpm",
            Column::Volts => "V",
            _ => "°C",
        }
    }

    /// What a reading can be, in its unit.
    pub const fn range(self) -> (f64, f64) {
        match self {
            Column::Amps => (0.0, 2000.0),
            Column::Rpm => (0.0, 30_000.0),
            Column::Volts => (5.0, 80.0),
            _ => (-30.0, 350.0),
        }
    }

    /// Whether it is read off a thermometer.
    pub fn is_temperature(self) -> bool {
        self.unit() == "°C"
    }
}

/// The order without headings, in words.
pub const USUAL_ORDER: &str = "minute, alternator amps, case °C, air °C, rpm, volts";

/// Where a kind of reading stands in a line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Place {
    pub at: usize,
    pub fahrenheit: bool,
}

/// Where everything stands in a line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Layout {
    pub time: usize,
    /// Minutes in one unit of time.
    pub time_scale: f64,
    pub places: [Option<Place>; COLUMNS],
    pub shaft_speed: bool,
}

impl Layout {
    pub(super) fn usual() -> Layout {
        let place = |at: usize| Place {
            at,
            fahrenheit: false,
        };
        Layout {
            time: 0,
            time_scale: 1.0,
            places: std::array::from_fn(|at| (at < 5).then(|| place(at + 1))),
            shaft_speed: false,
        }
    }
}

/// Words by which a heading is known, the more telling first: "air
/// temperature" is air, "temperature" alone the case.
const WORDS: [(&str, Column); 21] = [
    ("rpm", Column::Rpm),
    ("rev", Column::Rpm),
    ("speed", Column::Rpm),
    ("volt", Column::Volts),
    ("amp", Column::Amps),
    ("current", Column::Amps),
    ("winding", Column::Winding),
    ("stator", Column::Winding),
    ("rectifier", Column::Rectifier),
    ("diode", Column::Rectifier),
    ("plate", Column::Rectifier),
    ("air", Column::Air),
    ("ambient", Column::Air),
    ("inlet", Column::Air),
    ("space", Column::Air),
    ("case", Column::Case),
    ("body", Column::Case),
    ("housing", Column::Case),
    ("temp", Column::Case),
    ("alternator", Column::Amps),
    ("alt", Column::Amps),
];

/// The layout a line of headings gives; `None` if it is a line of figures.
pub(super) fn headings(cells: &[String], remarks: &mut Vec<LogRemark>) -> Option<Layout> {
    let figure = |cell: &String| cell.starts_with(|c: char| c.is_ascii_digit());
    if cells.iter().any(figure) {
        return None;
    }
    let mut layout = Layout {
        places: [None; COLUMNS],
        ..Layout::usual()
    };
    let mut time = None;
    let mut more = 0;
    for (at, cell) in cells.iter().enumerate() {
        let words = cell.to_ascii_lowercase();
        if words.is_empty() {
            continue;
        }
        if let Some(scale) = time_scale(&words).filter(|_| time.is_none()) {
            time = Some(at);
            layout.time_scale = scale;
            continue;
        }
        match column(&words) {
            Some(column) if layout.places[column as usize].is_none() => {
                layout.places[column as usize] = Some(Place {
                    at,
                    fahrenheit: is_fahrenheit(&words),
                });
                if column == Column::Rpm {
                    layout.shaft_speed = words.contains("shaft") || words.contains("alt");
                }
            }
            _ if remarks.len() >= MOST_REMARKS => more += 1,
            _ => remarks.push(LogRemark::Column {
                heading: Excerpt::of(cell),
            }),
        }
    }
    if more > 0 {
        remarks.push(LogRemark::MoreColumns { count: more });
    }
    // Not one word was known: take the line for a title above the figures.
    if time.is_none() && layout.places.iter().all(Option::is_none) {
        return None;
    }
    layout.time = time.unwrap_or(usize::MAX);
    if time.is_none() {
        remarks.push(LogRemark::NoTimeColumn);
    }
    Some(layout)
}

/// Minutes in one unit of a column of times; `None` if it is none.
fn time_scale(words: &str) -> Option<f64> {
    let begins = |with: &[&str]| with.iter().any(|word| words.starts_with(word));
    if begins(&["min", "time", "clock", "elapsed"]) || matches!(words, "t" | "h:mm") {
        let seconds = words.contains("second") || words.contains("(s)");
        Some(if seconds { 1.0 / 60.0 } else { 1.0 })
    } else if begins(&["sec"]) {
        Some(1.0 / 60.0)
    } else if begins(&["hour"]) {
        Some(60.0)
    } else {
        None
    }
}

fn column(words: &str) -> Option<Column> {
    // What goes into the bank is not what the machine gives.
    if words.contains("bank") || words.contains("batter") || words.contains("house") {
        return None;
    }
    match words {
        "a" | "i" => return Some(Column::Amps),
        "v" | "u" => return Some(Column::Volts),
        "n" | "1/min" => return Some(Column::Rpm),
        _ => {}
    }
    let hot = words.contains("temp") || words.contains('°') || is_fahrenheit(words);
    WORDS
        .iter()
        .find(|(word, column)| words.contains(word) && !(hot && *column == Column::Amps))
        .map(|(_, column)| *column)
        .or(hot.then_some(Column::Case))
}

fn is_fahrenheit(words: &str) -> bool {
    words.contains("°f")
        || words.contains("(f)")
        || words.contains("fahrenheit")
        || words.ends_with(" f")
}
