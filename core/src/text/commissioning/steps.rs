//! What to do in each step, and what to beware of while doing it.

use crate::guidance::commissioning::StepCode;

/// What to do, without this boat's figures.
pub const fn instruction(code: StepCode) -> &'static str {
    match code {
        StepCode::MakerSheet => {
            "Have the battery maker's data sheet at hand, enter its figures, and print the settings again."
        }
        StepCode::Isolate => {
            "Disconnect the bank: switches open, fuse out at the terminal, terminals covered, engine key out, shore lead and panels off."
        }
        StepCode::Electrician => {
            "Where the code of your flag or your insurer asks for a licensed electrician, have the work inspected now. Mains wiring is always for one."
        }
        StepCode::Fuses => {
            "Check for a fuse at the battery's end of every positive lead, with the rating and breaking capacity on the list of cables."
        }
        StepCode::Cables => {
            "Check the leads: clamped, sleeved where they touch metal, clear of belts and exhaust; every lug tight and pulled at by hand."
        }
        StepCode::Insulation => {
            "With the output lead off at the alternator and the fuse out, measure from the lead to the engine block: more than 1 MΩ."
        }
        StepCode::NoSwitch => {
            "Make sure no switch or breaker in an alternator's output lead can be opened by a hand or knee while it charges."
        }
        StepCode::Belt => "Check belts in line and tight, pulley nuts tight, guard on.",
        StepCode::Sensor => {
            "Bolt the temperature sensor on bare metal; with everything cold it reads the air's temperature."
        }
        StepCode::SenseWire => {
            "Connect the regulator's sense wires to the bank's terminals, the positive one with a small fuse."
        }
        StepCode::CutWire => {
            "Wire the charge-disable signal of the battery management system to everything that charges; check with the meter that it switches when its test says so."
        }
        StepCode::SpikeGuard => {
            "Check that the surge suppressor, or the lead battery that stays, is right at the alternator's output, with no switch between: these packs open without warning."
        }
        StepCode::PackLeads => {
            "Check that the leads of all packs have the same length and size to common bars, with a fuse at each pack, and that all packs stood at the same voltage before they were joined."
        }
        StepCode::Air => {
            "Check that the blower turns the right way, the ducts are open, and nothing is stowed in front of the alternator's air."
        }
        StepCode::LeadVent => {
            "Check that every lead battery's box is vented at its top, the start battery's too, with no regulator, switch or charger in the same box."
        }
        StepCode::CoAlarm => "Fit a carbon monoxide alarm where people sleep, and test it.",
        StepCode::Mains => {
            "Have a licensed electrician check that the charger's mains side is earthed and behind a residual-current breaker."
        }
        StepCode::Set => {
            "Enter the settings from the settings sheet, read them back, and photograph them."
        }
        StepCode::FuseIn => {
            "Check polarity with the meter, then put the fuse in and switch on; note the bank's voltage."
        }
        StepCode::Start => {
            "Start the engine and bring it to charging speed; check oil pressure, cooling water, and no charge during the start delay."
        }
        StepCode::FirstAmps => {
            "Watch the bank's voltage and the alternator's current for five minutes."
        }
        StepCode::Drop => {
            "At a good current, measure the voltage between the alternator's terminal and the battery's, positive and negative lead each."
        }
        StepCode::Agree => {
            "Check that clamp meter, regulator and battery monitor agree within 5 %; the house's own load explains the rest."
        }
        StepCode::LinkReads => {
            "Read at the regulator the limits that the battery sends; a dash or a figure of its own means that the link does not work."
        }
        StepCode::PackShares => {
            "With a clamp meter, read the current of each pack while they charge."
        }
        StepCode::ConverterOn => {
            "Check that the DC-DC charger comes on once the start battery's voltage is up, and not before."
        }
        StepCode::StartVolts => "Measure the voltage at the start battery with the engine running.",
        StepCode::ChargerOn => {
            "Switch the mains charger on: read its current and the bank's voltage."
        }
        StepCode::Retension => {
            "After 10 to 15 minutes stop the engine and tighten the belts again."
        }
        StepCode::HotBegin => {
            "Begin with the alternator cold, the bank low enough to take everything for half an hour, and black tape on the rear of the case."
        }
        StepCode::HotRun => {
            "Hold the speed for 30 minutes and fill in the form, one line for each reading."
        }
        StepCode::HotWinding => "Note the winding's temperature too.",
        StepCode::HotLugs => {
            "In the last minutes aim the thermometer at every lug, fuse and switch."
        }
        StepCode::HotBank => "Read the battery temperature at the end.",
        StepCode::HotAfter => {
            "Let it idle without charging for three minutes, stop, and read case and rectifier plate for ten minutes more."
        }
        StepCode::HotTrial => {
            "Type the readings into the sea trial, accept its results, and print the settings again."
        }
        StepCode::CutStill => {
            "Engine stopped, regulator powered: trigger the charge-disable signal by the battery management system's own test, or pull its wire. The regulator shows off, or the field lead has no voltage."
        }
        StepCode::CutGentle => {
            "Engine at a fast idle, current cap at its lowest or bank nearly full, so that little flows: trigger it again. The current goes to zero and the contactor stays closed."
        }
        StepCode::LinkZero => {
            "Engine at a fast idle and little current flowing: bring the battery's current limit to nothing by its own test, or lower it in its settings. The regulator ramps the current down to nothing and the contactor stays closed."
        }
        StepCode::LinkPulled => {
            "Still at little current: pull the data link's plug at the regulator and wait a minute."
        }
        StepCode::PacksFull => {
            "Packs nearly full, engine at a fast idle: watch voltage and each pack's current until it tapers off. No pack may disconnect."
        }
        StepCode::CutNone => {
            "A built-in regulator has no field lead to cut: there is nothing to test, and when the bank disconnects nothing stops the alternator. Fit a relay in its field, or a DC-DC charger, before the first passage."
        }
        StepCode::CutConverter => {
            "DC-DC charger on: trigger the charge-disable signal. It stops within 2 s; the alternator goes on feeding the start battery."
        }
        StepCode::CutCharger => "Mains charger on: trigger the charge-disable signal. It stops.",
        StepCode::CutOrder => {
            "Read the three high-voltage steps back from the battery management system, in this order."
        }
        StepCode::CutCold => "Read the temperature limits back from the battery management system.",
        StepCode::OpenStill => {
            "Engine, panels and charger off: open the contactor by hand. Note what goes dark; navigation lights, radio and bilge pumps need another supply."
        }
        StepCode::LowOrder => {
            "Read back the low-voltage steps; let the low-voltage alarm sound once."
        }
        StepCode::MonthBelt => {
            "Tighten the belts again; black dust, glaze or a warm smell means slip or a pulley out of line."
        }
        StepCode::MonthLugs => {
            "With the bank disconnected, tighten every lug and the alternator's own bolts again; look for chafe."
        }
        StepCode::MonthHot => {
            "Read current and case after 30 minutes at the same speed and compare with the first form."
        }
        StepCode::MonthCells => "Read the spread of the cells at full charge, at the tail current.",
        StepCode::MonthWater => "Check the water in the cells and their density.",
        StepCode::MonthFull => {
            "Check for a full charge every week since: the current into the bank at the charge voltage went down to the tail current."
        }
        StepCode::MonthEqualise => {
            "Equalise if the battery maker's data sheet asks for it; add water afterwards."
        }
        StepCode::MonthSettings => "Read the settings back and compare them with the print.",
        StepCode::MonthCut => "Repeat the charge-disable test above.",
        StepCode::MonthAlarm => "Test the carbon monoxide alarm.",
    }
}

/// What to beware of while doing it; none where nothing is out of the ordinary.
pub const fn caution(code: StepCode) -> Option<&'static str> {
    let caution = match code {
        StepCode::Isolate => {
            "A spanner across a battery's terminals welds itself on. Rings off, insulated tools."
        }
        StepCode::Belt => {
            "Keep fingers out of the belts: the bank is disconnected and the key is in your pocket."
        }
        StepCode::LeadVent => "Lead on charge gives off hydrogen: no sparks.",
        StepCode::FuseIn => {
            "Face away. An inverter's inrush makes a small spark; a large one, or a second one, is a fault: stop and find it."
        }
        StepCode::Start => {
            "Belts and fan turn: keep sleeves, hair and leads away. Have air moving before the engine runs at anchor."
        }
        StepCode::Retension => "Case and pulleys are hot by now; take the key out.",
        StepCode::HotRun => {
            "An engine run at anchor makes carbon monoxide: open hatches to windward, switch the alarm on, look for neighbours downwind."
        }
        StepCode::HotLugs => "Measure with infrared, through a hatch, not over the belt.",
        StepCode::CutGentle => {
            "Never try it by opening the contactor or a battery switch: with an alternator charging, the voltage spike destroys what is aboard."
        }
        StepCode::MonthBelt => "Take the key out before a hand goes near.",
        StepCode::MonthLugs => "Cover the terminals while the spanner is near.",
        StepCode::MonthEqualise => {
            "Hydrogen: hatches open, no sparks. Switch off what does not withstand the voltage; stay with it."
        }
        _ => return None,
    };
    Some(caution)
}
