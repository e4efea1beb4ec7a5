//! A boat, written down in a few lines.

use ampwright_core::Worksheet;
use ampwright_core::boat::{Current, Key, Load, LoadRow, RegulatorKind, WayKind, When};

use crate::answers::Answers;
use crate::consistent;
use crate::says::Says;

/// A boat to be asked about.
pub struct Boat {
    name: &'static str,
    sheet: Worksheet,
}

impl Boat {
    /// A boat whose alternator has an external regulator and leads direct to the
    /// house bank; all else at its defaults.
    pub fn new(name: &'static str) -> Boat {
        let mut sheet = Worksheet {
            name: name.to_string(),
            ..Worksheet::default()
        };
        sheet.inputs.reg.kind = RegulatorKind::External;
        sheet.inputs.way.kind = WayKind::Direct;
        Boat { name, sheet }
    }

    /// The same boat under another name.
    pub fn called(mut self, name: &'static str) -> Boat {
        self.name = name;
        self.sheet.name = name.to_string();
        self
    }

    /// Gives a number.
    #[track_caller]
    pub fn set(self, key: &str, number: f64) -> Boat {
        self.enter(key, &number.to_string())
    }

    /// What is said of it, to be changed.
    pub fn sheet_mut(&mut self) -> &mut Worksheet {
        &mut self.sheet
    }

    /// Chooses an option.
    #[track_caller]
    pub fn choose(self, key: &str, option: &str) -> Boat {
        self.enter(key, option)
    }

    #[track_caller]
    fn enter(mut self, name: &str, text: &str) -> Boat {
        let Some(key) = Key::named(name) else {
            panic!("{}: there is no input “{name}” yet", self.name);
        };
        let value = match key.spec().read(text) {
            Ok(value) => value,
            Err(complaint) => panic!("{}: {name}: {complaint}", self.name),
        };
        if let Err(complaint) = self.sheet.state(key, value) {
            panic!("{}: {name}: {complaint}", self.name);
        }
        self
    }

    /// Adds a load that draws so many watts from the bank for so many hours a
    /// day, at anchor and under way; the day's use is then taken from the list.
    #[track_caller]
    pub fn load_w(self, what: &str, watts: f64, hours: f64) -> Boat {
        self.load(what, Current::DcWatts, watts, hours)
    }

    /// Adds a mains appliance on the inverter.
    #[track_caller]
    pub fn mains_w(self, what: &str, watts: f64, hours: f64) -> Boat {
        self.load(what, Current::AcWatts, watts, hours)
    }

    #[track_caller]
    fn load(mut self, what: &str, kind: Current, draw: f64, hours: f64) -> Boat {
        let row = LoadRow {
            draw,
            kind,
            count: 1.0,
            hours,
            duty_pct: 100.0,
            when: When::Always,
            night_pct: 50.0,
            ..LoadRow::default()
        };
        self.sheet.loads.push(Load {
            name: what.to_string(),
            row,
        });
        self.choose("daily_basis", "listed")
    }

    /// Asks the program about this boat, and fails with everything that is
    /// wrong about its answer: what an expert would say against it, and where
    /// two parts of it contradict each other.
    pub fn check(self, expert: impl FnOnce(&Says)) {
        let says = Says::of(self.answers());
        expert(&says);
        consistent::check(&says);
        says.finish(self.name);
    }

    /// What the program says, for a comparison of two boats.
    pub fn answers(&self) -> Answers {
        Answers::of(self.sheet.clone())
    }
}
