//! The words of the trade that the page uses, in a sentence or two each, for
//! who has never fitted a bank.

/// A word and what it means.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Word {
    /// The word as the page writes it; what stands in brackets behind it is
    /// its short or other form.
    pub word: &'static str,
    /// What it means.
    pub means: &'static str,
}

const fn word(word: &'static str, means: &'static str) -> Word {
    Word { word, means }
}

/// All of them, in alphabetical order.
pub const GLOSSARY: &[Word] = &[
    word(
        "A·h (ampere-hour)",
        "Charge: one ampere for one hour. Times the battery's volts it gives watt-hours (W·h), which is energy: 100 A·h at 12.8 V are 1280 W·h.",
    ),
    word(
        "Absorption",
        "The second part of a charge: the charger keeps the voltage steady while the bank takes less and less current.",
    ),
    word(
        "AGM",
        "A lead battery with its acid held in glass matting. It cannot be topped up.",
    ),
    word(
        "Air density",
        "How heavy the air is. Thin, warm air carries less heat away.",
    ),
    word(
        "Alternator",
        "The generator that a belt from the engine turns. It makes alternating current, which its rectifier turns into direct current.",
    ),
    word(
        "Avalanche diode",
        "A rectifier diode that lets a voltage spike through above a set voltage instead of breaking down.",
    ),
    word(
        "Battery management system (BMS)",
        "The electronics of a lithium bank. They watch each cell and disconnect the bank when one is too full, too empty, too hot or too cold.",
    ),
    word("Blower", "A fan that draws air through the engine space."),
    word(
        "Bus bar",
        "A bar of copper on which several cables are joined.",
    ),
    word(
        "Case",
        "The alternator's outer body, of aluminium. A sensor is often bolted to it.",
    ),
    word(
        "Cell",
        "The smallest part of a battery. Four of LFP or six of lead in series make 12 V.",
    ),
    word(
        "Charge-disable signal",
        "A signal of the battery management system some seconds before it disconnects the bank. It tells chargers to stop.",
    ),
    word(
        "Common practice",
        "What the trade does and says; we know of no published measurement behind it.",
    ),
    word(
        "Contactor",
        "A large switch that electronics open and close.",
    ),
    word(
        "Current cap",
        "The most amperes a regulator lets the alternator give, however cool it is.",
    ),
    word(
        "Cut-in",
        "The shaft speed at which an alternator begins to give current.",
    ),
    word(
        "DC-DC charger",
        "Charges one battery from another. It sets its own current and voltage on the side it charges.",
    ),
    word(
        "Derating",
        "Lowering the field step by step as the alternator gets hotter, rather than switching it off.",
    ),
    word("Diode", "A part that lets current pass one way only."),
    word(
        "Dock",
        "Where shore power is. Here also short for what it gives.",
    ),
    word(
        "Feeder",
        "The cable from the bank to the switch panel, through which the whole house draws.",
    ),
    word(
        "Field",
        "The magnetism of the rotor, made by a small current through its winding. More field current, more output: that is what a regulator sets.",
    ),
    word(
        "Float",
        "A low voltage that keeps a full battery full. Lithium does not need it.",
    ),
    word(
        "Flooded",
        "A lead battery with loose acid. It gives off gas and needs water now and then.",
    ),
    word(
        "Full field",
        "All the field current the alternator can have: the regulator does not limit it.",
    ),
    word(
        "Gauge",
        "The American size of a cable. A smaller number is a thicker cable; above 0 come 2/0, 3/0 and 4/0.",
    ),
    word(
        "Gel",
        "A lead battery with its acid set to a jelly. It withstands less voltage than other lead.",
    ),
    word(
        "Hot current",
        "What the alternator gives once everything has warmed up. It is well below what the plate promises, and is what charges the bank.",
    ),
    word(
        "House bank",
        "The batteries that feed everything aboard but the starter.",
    ),
    word(
        "Idler",
        "A loose pulley that presses on a belt, for more wrap or more tension.",
    ),
    word(
        "Insulation class",
        "A letter for how hot a winding's lacquer may get for years on end.",
    ),
    word(
        "Inverter",
        "Makes mains voltage from the bank, for appliances with a household plug.",
    ),
    word(
        "Iron loss",
        "Heat made in the stator's iron by its changing magnetism.",
    ),
    word(
        "K (kelvin)",
        "A difference of temperature: 20 K hotter is 20 °C hotter.",
    ),
    word(
        "Lithium iron phosphate (LFP)",
        "The usual lithium battery for a house bank. It takes large currents until nearly full and must not be charged below 0 °C.",
    ),
    word(
        "Load dump",
        "The battery is disconnected while the alternator charges it. The current has nowhere to go and the voltage jumps.",
    ),
    word(
        "Multi-rib belt",
        "A flat belt with small grooves along it. It carries more than a V-belt of its size.",
    ),
    word(
        "Nominal operating cell temperature (NOCT)",
        "How warm a panel's cells get in fair sun and a light breeze, as its data sheet says.",
    ),
    word(
        "Out and back",
        "The whole path of the current: along the positive cable and back by the negative one. Twice the length one way.",
    ),
    word(
        "Parallel",
        "Plus to plus and minus to minus: the ampere-hours add up and the volts stay.",
    ),
    word(
        "Peak sun hours",
        "Hours of full sun that would give the same energy as the whole day does.",
    ),
    word(
        "Pulley ratio",
        "How many times the alternator turns while the engine turns once.",
    ),
    word(
        "Rated current",
        "What the plate says: the output at a shaft speed of 6000 rpm, usually of a cold alternator.",
    ),
    word(
        "Rectifier",
        "The diodes that turn the alternator's alternating current into direct current. They sit on plates that get hot.",
    ),
    word(
        "Regulator",
        "Holds the voltage by setting the field. An external one also follows a charging plan and a temperature sensor.",
    ),
    word(
        "Rotor",
        "The part of the alternator that turns; it carries the field winding.",
    ),
    word(
        "Sensor lag",
        "How late a sensor follows the part it sits on.",
    ),
    word(
        "Series",
        "Plus to minus, one after the other: the volts add up and the ampere-hours stay.",
    ),
    word(
        "Shaft speed",
        "The alternator's own speed: engine speed times the pulley ratio.",
    ),
    word(
        "Shore power",
        "Mains from the dock, and the charger that runs off it.",
    ),
    word(
        "State of charge",
        "How full a battery is: 100 % is full, 0 % is empty.",
    ),
    word(
        "Stator",
        "The part of the alternator that stands still; the current is made in its winding.",
    ),
    word(
        "Surge suppressor",
        "A device across the output that takes the current for a moment, so that the voltage cannot jump.",
    ),
    word(
        "Tail current",
        "The small current a bank still takes when it is nearly full. Charging ends there.",
    ),
    word(
        "Temperature compensation",
        "A charger lowers its voltage for a warm lead battery and raises it for a cold one.",
    ),
    word(
        "Temperature limit",
        "The temperature a regulator is set to hold: as a part comes near it, the regulator lowers the field.",
    ),
    word(
        "Tinned",
        "Copper strands with a skin of tin against salt air.",
    ),
    word(
        "V-belt",
        "A belt with tapered sides that wedge into the groove of the pulley.",
    ),
    word(
        "Winding",
        "Copper wire in the stator. It is the hottest part of a hard-worked alternator.",
    ),
    word("Wrap", "How far round a pulley the belt lies, in degrees."),
];

#[cfg(test)]
mod tests {
    use crate::text::glossary::*;

    /// As a reader looks a word up.
    fn sorted_as(word: &str) -> String {
        let word = word.split(" (").next().unwrap_or_default().to_lowercase();
        word.replace(|c: char| !c.is_alphanumeric(), " ")
    }

    #[test]
    fn alphabetical_and_none_twice() {
        for pair in GLOSSARY.windows(2) {
            let [one, next] = [pair[0].word, pair[1].word];
            assert!(sorted_as(one) < sorted_as(next), "{one}, {next}");
        }
    }

    #[test]
    fn short_and_whole_sentences() {
        for Word { word, means } in GLOSSARY {
            assert!(means.ends_with('.'), "{word}");
            assert!(means.chars().count() <= 170, "{word}: {}", means.len());
        }
    }
}
