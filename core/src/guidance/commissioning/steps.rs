//! The commissioning list itself. An id never changes once released: ticks are
//! kept under it. Common practice and own reasoning, no source.

use crate::boat::{ChargeStep, Chemistry, Inputs, RegulatorKind, SensorPlace, WayKind};
use crate::guidance::commissioning::When;
use crate::guidance::commissioning::When::{Before, Disconnect, Hot, Month, Start};
use crate::guidance::commissioning::figures::Figures;
use crate::guidance::settings::stretch_words;
use crate::units::{amperes, degrees, volts};

/// A step before a boat's figures stand in it.
pub(super) struct Item {
    pub id: &'static str,
    pub when: When,
    pub text: &'static str,
    /// A sentence with this boat's figures.
    pub figure: Option<Says>,
    pub caution: Option<&'static str>,
    /// Whether a boat has it.
    pub applies: fn(&Inputs) -> bool,
    /// When to stop.
    pub stop: Option<Says>,
}

/// A sentence with a boat's figures.
type Says = fn(&Figures) -> String;

const fn step(id: &'static str, when: When, text: &'static str) -> Item {
    Item {
        id,
        when,
        text,
        figure: None,
        caution: None,
        applies: |_| true,
        stop: None,
    }
}

impl Item {
    const fn figure(mut self, figure: Says) -> Item {
        self.figure = Some(figure);
        self
    }
    const fn beware(mut self, caution: &'static str) -> Item {
        self.caution = Some(caution);
        self
    }
    const fn only(mut self, applies: fn(&Inputs) -> bool) -> Item {
        self.applies = applies;
        self
    }
    const fn stop(mut self, stop: Says) -> Item {
        self.stop = Some(stop);
        self
    }
}

fn lithium(inputs: &Inputs) -> bool {
    inputs.bank.chemistry == Chemistry::Lfp
}

fn engine(inputs: &Inputs) -> bool {
    inputs.engine_charges()
}

fn external(inputs: &Inputs) -> bool {
    engine(inputs) && inputs.reg.kind == RegulatorKind::External
}

fn converter(inputs: &Inputs) -> bool {
    engine(inputs) && inputs.way.kind == WayKind::Converter
}

fn any_converter(inputs: &Inputs) -> bool {
    converter(inputs) || (engine(inputs) && inputs.feeds_start_back())
}

fn charger(inputs: &Inputs) -> bool {
    inputs.shore.charger_a > 0.0
}

fn hot_stop(f: &Figures) -> String {
    format!(
        "Stop at a case of {:.0} °C, a rectifier plate of {:.0} °C, a lug of {:.0} °C, coolant of {:.0} °C, or smoke, smell or squeal: charging off first, then the engine.",
        f.case_c, f.rectifier_c, f.lug_c, f.coolant_c
    )
}

fn volts_stop(f: &Figures) -> String {
    format!(
        "Stop the engine if the bank passes {}, or a lug gets warmer than {:.0} °C.",
        volts(f.bank_v),
        f.lug_c
    )
}

/// The bank's volts at rest where the run begins.
fn rest(f: &Figures) -> String {
    let charge = f.inputs.run.from_pct / 100.0;
    format!(
        "About {} at {:.0} % and at rest.",
        volts(f.inputs.house_bank().rest_v(charge)),
        f.inputs.run.from_pct
    )
}

/// The most charge current by cell temperature.
fn cold_limits(f: &Figures) -> String {
    let words = |row: &ChargeStep| {
        let most = if row.amperes > 0.0 {
            amperes(row.amperes)
        } else {
            "none".to_string()
        };
        format!("{} {most}", stretch_words(row))
    };
    let rows: Vec<String> = f.inputs.charge_ladder().iter().map(words).collect();
    format!("Most charge current: {}.", rows.join(", "))
}

/// Every step, in order.
pub(super) const STEPS: &[Item] = &[
    step("maker_sheet", Before, "Battery maker's data sheet at hand; its figures entered; settings printed again."),
    step("isolate", Before, "Bank off: switches open, fuse out at the terminal, terminals covered, key out of the engine, shore lead and panels off.")
        .beware("A spanner across a battery's terminals welds itself on. Rings off, insulated tools."),
    step("electrician", Before, "Where the code of your flag or your insurer asks for a licensed electrician, have the work inspected now. Mains wiring is always for one."),
    step("fuses", Before, "A fuse at the battery's end of every positive lead, of the rating and breaking capacity on the list of cables."),
    step("cables", Before, "Leads clamped, sleeved where they touch metal, clear of belts and exhaust; every lug tight and pulled at by hand."),
    step("insulation", Before, "Output lead off at the alternator and fuse out: the meter shows more than 1 MΩ between the lead and the engine block.")
        .only(engine),
    step("no_switch", Before, "No switch or breaker in an alternator's output lead that a hand or knee can open while it charges.")
        .only(Inputs::straight_into_house),
    step("belt", Before, "Belts in line and tight, pulley nuts tight, guard on.")
        .figure(|f| format!("The alternator will take up to {:.1} kW from them.", f.report.analyses.engine.peak_kw))
        .beware("Fingers out of belts: the bank is off and the key is in your pocket.")
        .only(engine),
    step("sensor", Before, "Temperature sensor bolted on bare metal; with all cold it reads what the air does.")
        .figure(|f| format!(
            "It belongs {}; {} °C on a day like the one you entered, within 3 K.",
            match f.inputs.reg.sensor {
                SensorPlace::Case => "on the case",
                SensorPlace::Winding => "on the stator winding",
                SensorPlace::Rectifier => "on the rectifier plate",
            },
            degrees(f.inputs.start_c())
        ))
        .only(external),
    step("sense_wire", Before, "The regulator's sense wires on the bank's terminals, the positive one with a small fuse.")
        .only(|i| external(i) && i.way.kind == WayKind::Direct),
    step("cut_wire", Before, "The charge-disable signal of the battery management system wired to all that charges; with the meter, it switches when its test says so.")
        .only(lithium),
    step("air", Before, "Blower turns the right way, ducts open, nothing stowed in front of the alternator's air.")
        .only(engine),
    step("lead_vent", Before, "Every lead battery's box vented at its top, the start battery's too; no regulator, switch or charger in the same box.")
        .beware("Lead on charge gives off hydrogen: no sparks."),
    step("co_alarm", Before, "Carbon monoxide alarm aboard, tested, where people sleep.")
        .only(engine),
    step("mains", Before, "Charger's mains side earthed and behind a residual-current breaker, seen by a licensed electrician.")
        .only(charger),
    step("set", Before, "Settings entered from the settings sheet, read back, photographed."),

    step("fuse_in", Start, "Polarity checked with the meter, then fuse in and switch on; note the bank's voltage.")
        .figure(rest)
        .beware("Face away. An inverter's inrush makes a small spark; a large one, or a second one, is a fault: stop and find it."),
    step("start", Start, "Engine on, speed up to charging speed; oil pressure, water, no charge during the start delay.")
        .figure(|f| format!("{:.0} rpm of the engine, {:.0} of the alternator.", f.inputs.eng.rpm, f.report.analyses.machine.shaft_rpm))
        .beware("Belts and fan turn: sleeves, hair and leads away. Air moving before the engine runs at anchor.")
        .only(engine),
    step("first_amps", Start, "Watch the bank's voltage and the alternator's current for five minutes.")
        .figure(|f| format!("About {:.0} A at the start; never above {} at the bank.", f.report.analyses.run.start_a, volts(f.charge_v)))
        .only(engine)
        .stop(volts_stop),
    step("drop", Start, "At a good current, voltage between the alternator's terminal and the battery's, positive and negative lead each.")
        .figure(|f| {
            let blocks = if f.inputs.way.kind == WayKind::Direct {
                f.settings.blocks
            } else {
                f.inputs.start_blocks()
            };
            format!("Both together no more than {}; more is a bad joint or a thin lead.", volts(f.inputs.charge_drop_v(blocks)))
        })
        .only(engine),
    step("agree", Start, "Clamp meter, regulator and battery monitor agree within a twentieth; the house's own draw explains the rest.")
        .figure(|f| format!("The house draws about {:.0} A.", f.report.analyses.run.house_load_a))
        .only(engine),
    step("converter_on", Start, "The DC-DC charger comes on once the start battery is up, and not before.")
        .figure(|f| format!("On from {} up; its output no more than {}.", volts(f.inputs.way.lockout_v), amperes(f.settings.converter_a.min(f.settings.bank_limit_a))))
        .only(converter),
    step("start_volts", Start, "Voltage at the start battery with the engine running.")
        .figure(|f| format!("{} by your figures.", volts(f.inputs.way.start_v)))
        .only(any_converter),
    step("charger_on", Start, "Shore charger on: its current and the bank's voltage.")
        .figure(|f| format!("No more than {} and {}.", amperes(f.inputs.shore.charger_a.min(f.settings.bank_limit_a)), volts(f.charge_v)))
        .only(charger)
        .stop(|f| format!("Switch it off if the bank passes {} or {:.0} °C.", volts(f.bank_v), f.bank_c)),
    step("retension", Start, "Engine off after 10 to 15 minutes: tighten the belts again.")
        .beware("Case and pulleys are hot by now; the key is out.")
        .only(engine),

    step("hot_begin", Hot, "Alternator cold, bank low enough to take all of it for half an hour, black tape on the rear of the case.")
        .figure(|f| {
            let (inputs, run) = (f.inputs, &f.report.analyses.run);
            // What half an hour brings, and a tenth in hand.
            let gain_pct = 50.0 * run.start_a.max(0.0) / inputs.bank.capacity_ah + 10.0;
            let from_pct = inputs.window_high_pct() - gain_pct;
            let low_pct = inputs.window_low_pct();
            if from_pct > low_pct {
                format!("Begin at {from_pct:.0} % or lower.")
            } else {
                format!("It fills sooner: begin at {low_pct:.0} % and switch on what the house has.")
            }
        })
        .only(engine),
    step("hot_run", Hot, "Hold the speed for 30 minutes and fill in the form, a line a reading.")
        .figure(|f| format!("{:.0} rpm of the engine.", f.inputs.eng.rpm))
        .beware("An engine run at anchor makes carbon monoxide: hatches to windward open, alarm on, look for neighbours downwind.")
        .only(engine)
        .stop(hot_stop),
    step("hot_winding", Hot, "Note the winding too.")
        .only(|i| external(i) && i.reg.sensor == SensorPlace::Winding)
        .stop(|f| format!("Stop at a winding of {:.0} °C.", f.winding_c)),
    step("hot_lugs", Hot, "In the last minutes aim the thermometer at every lug, fuse and switch: none more than 20 K above its own cable.")
        .beware("Measure with infrared, through a hatch, not over the belt.")
        .only(engine)
        .stop(|f| format!("Stop at a lug of {:.0} °C.", f.lug_c)),
    step("hot_bank", Hot, "Battery temperature at the end.")
        .only(engine)
        .stop(|f| format!("Stop charging at {:.0} °C.", f.bank_c)),
    step("hot_after", Hot, "Let it idle without charging for three minutes, stop, and read case and rectifier plate for ten minutes more.")
        .figure(|f| format!("The plate is expected to reach {} °C after stopping.", degrees(f.report.analyses.run.soak.peak.rectifier_c)))
        .only(engine),
    step("hot_trial", Hot, "Readings typed into the sea trial; its results accepted; settings printed again.")
        .only(engine),

    step("cut_still", Disconnect, "Engine stopped, regulator powered: trigger the charge-disable signal by the battery management system's own test, or pull its wire. The regulator shows off, or the field lead has no voltage.")
        .only(|i| lithium(i) && external(i) && i.straight_into_house()),
    step("cut_gentle", Disconnect, "Engine at a fast idle, current cap at its lowest or bank nearly full, so that little flows: trigger it again. The current goes to nothing and the contactor stays closed.")
        .figure(|f| format!("Below a tenth of the rating, {}.", amperes(0.1 * f.inputs.alt.rated_a)))
        .beware("Never try it by opening the contactor or a battery switch: with an alternator charging, the voltage spike destroys what is aboard.")
        .only(|i| lithium(i) && external(i) && i.straight_into_house())
        .stop(|_| "Stop the engine if the current has not gone within 2 s; leave the alternator off the bank until it works.".to_string()),
    step("cut_none", Disconnect, "A built-in regulator has no field lead to cut: there is nothing to test, and when the bank opens nothing stops the alternator. Fit a relay in its field, or a DC-DC charger, before the first passage.")
        .only(|i| lithium(i) && engine(i) && !external(i) && i.straight_into_house()),
    step("cut_converter", Disconnect, "DC-DC charger on: trigger the charge-disable signal. It stops within 2 s; the alternator goes on feeding the start battery.")
        .only(|i| lithium(i) && converter(i)),
    step("cut_charger", Disconnect, "Shore charger on: trigger the charge-disable signal. It stops.")
        .only(|i| lithium(i) && charger(i)),
    step("cut_order", Disconnect, "Read the three high-voltage steps back from the battery management system, in this order.")
        .figure(|f| {
            let [warn_v, cut_v, open_v] = f.settings.high_v.map(volts);
            format!("Warning {warn_v}, charging off {cut_v}, contactor {open_v}, unless the maker says otherwise.")
        })
        .only(lithium),
    step("cut_cold", Disconnect, "Read the temperature limits back from the battery management system.")
        .figure(cold_limits)
        .only(lithium),
    step("open_still", Disconnect, "Engine, panels and charger off: open the contactor by hand. Note what goes dark; navigation lights, radio and bilge pumps must have another way.")
        .only(lithium),
    step("low_order", Disconnect, "Read back the low-voltage steps; hear the low alarm once.")
        .figure(|f| {
            let [warn_v, shed_v, off_v] = f.settings.low_v.map(volts);
            format!("{warn_v}, {shed_v}, {off_v}.")
        }),

    step("month_belt", Month, "Belts tightened again; black dust, glaze or a warm smell means slip or a pulley out of line.")
        .beware("Key out before a hand goes near.")
        .only(engine),
    step("month_lugs", Month, "Bank off: every lug and the alternator's own bolts tightened again; chafe looked for.")
        .beware("Terminals covered while the spanner is near."),
    step("month_hot", Month, "Current and case after 30 minutes at the same speed, beside the first form.")
        .figure(|f| format!("Within a tenth of then; {:.0} A is what it should hold hot.", f.report.analyses.machine.hot_a))
        .only(engine)
        .stop(hot_stop),
    step("month_cells", Month, "Spread of the cells at full charge, at the tail current: 0.05 V at most.")
        .only(lithium),
    step("month_water", Month, "Water in the cells, density even within 0.02.")
        .only(|i| i.bank.chemistry == Chemistry::Flooded),
    step("month_full", Month, "A full charge every week since: the current into the bank at the charge voltage went down to the tail.")
        .figure(|f| format!("Below {} at {}.", amperes(f.settings.tail_a), volts(f.charge_v)))
        .only(|i| i.bank.chemistry != Chemistry::Lfp),
    step("month_equalise", Month, "Equalised, if the battery maker's data sheet asks for it and densities differ by 0.03 or more; water afterwards.")
        .beware("Hydrogen: hatches open, no sparks. Switch off what does not withstand the voltage; stay with it.")
        .only(|i| i.bank.chemistry == Chemistry::Flooded),
    step("month_settings", Month, "Settings read back and compared with the print."),
    step("month_cut", Month, "The charge-disable test repeated, as above.")
        .only(lithium),
    step("month_alarm", Month, "Carbon monoxide alarm tested.")
        .only(engine),
];
