//! The regulator.

use crate::boat::section;
use crate::boat::{Inputs, LinkLoss, RegulatorLink};
use crate::boat::{choose, number, optional};
use crate::schema::{choice, effects};
use crate::units::{
    AMPERE, CELSIUS, KELVIN, MILLIVOLT_PER_KELVIN, MINUTE, PERCENT, RPM, SECOND, VOLT,
};

choice! {
    /// What regulates the field.
    RegulatorKind {
        External = "external", "External, with a temperature sensor";
        Internal = "internal", "Built in, without a temperature limit";
    }
}

choice! {
    /// Where the temperature sensor sits.
    SensorPlace {
        Case = "case", "On the case";
        Winding = "winding", "On the stator winding";
        Rectifier = "rectifier", "On the rectifier plate";
    }
}

choice! {
    /// Where a regulator measures the current that it caps.
    CapAt {
        Alternator = "alternator", "At the alternator";
        Battery = "battery", "At the house bank";
    }
}

choice! {
    /// What a regulator does when its temperature sensor fails.
    SensorFailure {
        Unsaid = "unsaid", "Not known yet";
        Half = "half", "Goes on at half field";
        Full = "full", "Goes on at full field";
        Stops = "stops", "Stops charging";
    }
}

section! {
    /// The regulator.
    Regulator {
        kind: RegulatorKind = choose("Regulator", RegulatorKind::OPTIONS, 1)
            .help("An alternator as it comes with the engine has one built in: it holds a voltage and does not limit the temperature.");
        set_point_c: f64 = number("Temperature limit the regulator holds", CELSIUS, 40.0, 180.0, 105.0).nameplate()
            .decided()
            .help("Where it starts to cut the field: 100 to 110 °C on the case, about 20 K under the maker's limit (common practice).")
            .when(|i| i.reg.kind == RegulatorKind::External);
        sensor: SensorPlace = choose("Sensor", SensorPlace::OPTIONS, 0)
            .help("A sensor on the case lags: the winding may be far hotter in the first minutes.")
            .when(|i| i.reg.kind == RegulatorKind::External);
        fold_band_k: f64 = number("Derating range", KELVIN, 0.5, 30.0, 4.0).advanced()
            .help("The field goes from full to none across this many degrees around the temperature limit.")
            .when(|i| i.reg.kind == RegulatorKind::External);
        sensor_lag_s: f64 = number("Sensor lag", SECOND, 0.0, 900.0, 0.0).advanced()
            .help("How long the sensor takes to feel two thirds of a change: next to none bolted bare, a minute or two through paint or a lug.")
            .when(|i| i.reg.kind == RegulatorKind::External);
        ramp_min: f64 = number("Soft start", MINUTE, 0.0, 60.0, 0.0).nameplate()
            .decided()
            .help("Time over which the field rises to full; 0 for none. Spares the belt, and the winding in short runs.")
            .when(|i| i.reg.kind == RegulatorKind::External);
        low_speed_rpm: f64 = number("Low-speed cap below", RPM, 0.0, 10_000.0, 0.0).nameplate().advanced()
            .decided()
            .help("Below this shaft speed the regulator limits the field because the fan is slow; 0 for none.")
            .when(|i| i.reg.kind == RegulatorKind::External);
        low_speed_pct: f64 = number("Low-speed cap", PERCENT, 5.0, 100.0, 50.0).nameplate().advanced()
            .decided()
            .help("Part of full field allowed below that speed.")
            .when(|i| i.reg.kind == RegulatorKind::External && i.reg.low_speed_rpm > 0.0);
        current_cap_a: Option<f64> = optional("Current cap", AMPERE, 5.0, 1000.0, "no cap", |_| None).nameplate()
            .decided()
            .help("The most the regulator lets the alternator give; often set to spare the belt.")
            .when(|i| i.reg.kind == RegulatorKind::External);
        fixed_v: Option<f64> = optional("Voltage it holds at 20 °C", VOLT, 10.0, 70.0, "14.2 V for each 12 V of the bank, less what a splitter loses", |w| Some(w.inputs.built_in_v())).measured()
            .help("Measured at the battery with the bank full, in the first minute after a start in mild weather: 14.0 to 14.4 V for most built-in regulators. Once the alternator is warm it is less.")
            .when(built_in_on_house);
        drop_mv_k: f64 = number("Voltage drops as it warms by", MILLIVOLT_PER_KELVIN, 0.0, 20.0, 10.0).nameplate().advanced().spread(0.0, 12.0)
            .help("For each 12 V. A built-in regulator sits at the alternator's rear and holds less as it gets hot: about 10 mV for each degree, 3 to 4 on newer ones, nothing on some.")
            .when(built_in_on_house);
        link: RegulatorLink = choose("What the battery tells the regulator", RegulatorLink::OPTIONS, 0).nameplate()
            .help("Without a data link a regulator does not know what the battery may take: only a current cap, or a DC-DC charger that is small enough, keeps the current below that. A charge-disable signal is a wire that cuts the field before the battery disconnects. On a data link (SAE J1939, NMEA 2000, RV-C) both devices must use the same messages.")
            .when(Inputs::link_is_asked);
        link_loss: LinkLoss = choose("When the data link is lost", LinkLoss::OPTIONS, 0).nameplate().advanced()
            .help("In the regulator's manual, often a setting: a pulled plug, a battery that switched its management system off, a broken wire.")
            .when(|i| i.link().sends_limits());
        field_cap_pct: f64 = number("Field cap", PERCENT, 10.0, 100.0, 100.0).nameplate().advanced()
            .decided()
            .help("The most of full field that the regulator ever allows, set for a weak belt, a small engine or a small fan; 100 for none.")
            .when(|i| i.reg.kind == RegulatorKind::External);
        cap_measured: CapAt = choose("The cap's current is measured", CapAt::OPTIONS, 0).nameplate().advanced()
            .help("A regulator that measures at the house bank caps what flows into the bank: what the house draws comes on top, and alternator and belt have to give both.")
            .when(cap_is_asked);
        sensor_low_k: f64 = number("Sensor reads low by", KELVIN, 0.0, 80.0, 0.0).advanced()
            .decided()
            .help("To try out a badly mounted sensor: under a loose screw, on paint or in the air stream it easily reads 10 to 30 K too low (common practice). The regulator then lets the alternator get that much hotter. 0 for one that reads right.")
            .when(|i| i.reg.kind == RegulatorKind::External);
        sensor_failure: SensorFailure = choose("If the sensor fails, the regulator", SensorFailure::OPTIONS, 0).nameplate().advanced()
            .help("In the regulator's manual, often a setting: a torn wire, a sensor that fell off or a corroded plug. Half field is usual (common practice).")
            .when(|i| i.reg.kind == RegulatorKind::External);
        hot_cap_pct: Option<f64> = optional("Current cap, of the hot output", PERCENT, 10.0, 200.0, "no such cap", |_| None).nameplate().advanced()
            .decided()
            .help("The most that the regulator lets an alternator give, as part of what it holds hot at charging speed, two alternators each by its own: 110 to 115 % spares belt and winding only while all is cold (common practice), 80 % leaves a margin on every run. A cap in amperes holds beside it.")
            .when(|i| i.reg.kind == RegulatorKind::External);
        manoeuvre_field_pct: f64 = number("Field while manoeuvring", PERCENT, 0.0, 100.0, 100.0).nameplate().advanced()
            .decided()
            .help("Part of full field while you come alongside or weigh anchor, so that the propeller has the power: 0 to 50 % for a small engine; 100 where nothing is held back. It holds for the minutes below, and in legs of the day that are run to manoeuvre.")
            .when(|i| i.reg.kind == RegulatorKind::External);
        manoeuvre_min: f64 = number("Manoeuvring, from the engine's start", MINUTE, 0.0, 60.0, 0.0).nameplate().advanced()
            .decided()
            .help("The field is held back for so long after every start of the engine. 0 where a switch at the helm does it.")
            .when(|i| i.reg.kind == RegulatorKind::External && i.reg.manoeuvre_field_pct < 100.0);
    }
}

effects! {
    Regulator {
        set_point_c: Up, Down;
        fold_band_k: Depends("a wider band begins earlier and ends later"), Depends("as the current");
        sensor_lag_s: Level, Depends("a late sensor lets more through at first, and then hunts");
        ramp_min: Level, Up;
        low_speed_rpm: Down, Up;
        low_speed_pct: Up, Down;
        current_cap_a: Up, Down;
        sensor_low_k: Up, Down;
        hot_cap_pct: Up, Down;
        manoeuvre_field_pct: Level, Down;
        manoeuvre_min: Level, Up;
        field_cap_pct: Up, Depends("under a late sensor a cap saves what its hunting loses");
        fixed_v: Up, Down;
        drop_mv_k: Down, Up;
    }
}

/// Whether there is a cap on the current to the house bank that can be measured
/// there.
fn cap_is_asked(inputs: &Inputs) -> bool {
    inputs.reg.kind == RegulatorKind::External
        && inputs.reg.current_cap_a.is_some()
        && inputs.first_alternator().connection.on_house()
}

/// Whether the built-in regulator of the first alternator decides the voltage of
/// the house bank.
fn built_in_on_house(inputs: &Inputs) -> bool {
    inputs.first_alternator().built_in_on_house()
}

/// Held at 20 °C for each 12 V \[V\]: 14.0 to 14.4 V, common practice.
const BUILT_IN_V: f64 = 14.2;

impl Inputs {
    /// Voltage a built-in regulator holds at 20 °C \[V\].
    pub fn built_in_v(&self) -> f64 {
        // It senses at the alternator, before a splitter.
        let usual_v = BUILT_IN_V * self.bank.nominal_v.blocks() - self.joined().loss_v();
        self.reg.fixed_v.unwrap_or(usual_v)
    }

    /// How much less it holds for each kelvin it is warmer \[V/K\].
    pub fn built_in_drop_v_k(&self) -> f64 {
        self.reg.drop_mv_k / 1000.0 * self.bank.nominal_v.blocks()
    }

    /// Voltage at which current into the house bank is turned down \[V\]:
    /// the bank's charge voltage, or what a built-in regulator holds at 20 °C.
    /// A charger that follows the bank's temperature corrects for it, and no
    /// regulator goes above the voltage limit that it is sent.
    pub fn held_v(&self) -> f64 {
        if built_in_on_house(self) {
            self.built_in_v()
        } else {
            let set_v = self.set_v();
            self.sent_v().map_or(set_v, |sent_v| set_v.min(sent_v))
        }
    }

    /// What the regulator is set to hold at the bank's temperature \[V\].
    pub(super) fn set_v(&self) -> f64 {
        // A wild compensation does not turn a voltage round.
        (self.charge_v() + self.compensation_v()).max(0.0)
    }

    /// The cap on each alternator's current as a part of what it holds hot, 0 to 2;
    /// none without an external regulator.
    pub fn hot_cap(&self) -> Option<f64> {
        let pct = self.reg.hot_cap_pct?;
        (self.reg.kind == RegulatorKind::External).then_some(pct / 100.0)
    }

    /// The current cap of a regulator that measures the current at the house
    /// bank \[A\]; none where it measures at the alternator or has no cap.
    pub fn bank_cap_a(&self) -> Option<f64> {
        let at_battery = self.reg.cap_measured == CapAt::Battery && cap_is_asked(self);
        self.reg.current_cap_a.filter(|_| at_battery)
    }
}
