//! DC-DC charger, air, panels, bank and lighter loads.

use crate::boat::{Chemistry, Inputs, WayKind};
use crate::decision::arrangements::parts::{List, Purchase, more, one};
use crate::units::quantity::{ampere_hours, amperes};
use crate::units::{Quantity, QuantityKind};

/// A small DC-DC charger keeps a start battery \[A\]: common practice.
const BACK_A: f64 = 20.0;
/// Volts with the engine running for each 12 V block.
const RUNNING_BLOCK_V: f64 = 14.0;
/// What a bank of lead costs for each kilowatt-hour, over one of lithium iron
/// phosphate: common practice, no source.
const LEAD_OVER_LITHIUM: f64 = 0.5;

/// A DC-DC charger between two batteries.
struct Charger {
    amperes: f64,
    from_blocks: f64,
    to_blocks: f64,
}

impl Charger {
    /// The one these inputs ask for; of no amperes where there is none.
    fn of(inputs: &Inputs) -> Charger {
        let start_blocks = (inputs.way.start_v / RUNNING_BLOCK_V).round().max(1.0);
        let house_blocks = inputs.bank.nominal_v.blocks();
        let (amperes, from_blocks, to_blocks) = match inputs.way.kind {
            WayKind::Converter => (inputs.charger_a(), start_blocks, house_blocks),
            WayKind::Direct if inputs.feeds_start_back() => (BACK_A, house_blocks, start_blocks),
            WayKind::Direct => (0.0, house_blocks, start_blocks),
        };
        Charger {
            amperes,
            from_blocks,
            to_blocks,
        }
    }

    /// Whether it can do the work of another: between the same voltages, or the
    /// other way round where both are the same.
    fn serves_as(&self, other: &Charger) -> bool {
        self.from_blocks == other.from_blocks && self.to_blocks == other.to_blocks
    }
}

/// A DC-DC charger is bought where there was none, a smaller one or one of
/// other voltages; one that is there is turned round for nothing, as long as
/// both batteries are of the same voltage.
pub(super) fn charger(old: &Inputs, new: &Inputs, list: &mut List) {
    if !new.engine_charges() {
        return;
    }
    let (there, wanted) = (Charger::of(old), Charger::of(new));
    let there_a = if there.serves_as(&wanted) {
        there.amperes
    } else {
        0.0
    };
    more(
        list,
        Purchase::Charger,
        amperes(wanted.amperes - there_a),
        new.price.converter_a * wanted.to_blocks,
    );
}

/// A generator that was not there before, and a mains charger larger than any that
/// is aboard.
pub(super) fn mains(old: &Inputs, new: &Inputs, list: &mut List) {
    if new.has_generator() {
        let there_kw = if old.has_generator() {
            old.generator_kw()
        } else {
            0.0
        };
        let kilowatts = Quantity::new(new.generator_kw() - there_kw, QuantityKind::LargePower);
        more(list, Purchase::Generator, kilowatts, new.price.generator_kw);
    }
    let each = new.price.mains_charger_a * new.bank.nominal_v.blocks();
    let more_a = new.mains_charger_a() - old.mains_charger_a();
    // A charger that stands idle is not replaced.
    if !new.engine_charges() {
        more(list, Purchase::MainsCharger, amperes(more_a), each);
    }
}

/// Blower and cool-air duct.
pub(super) fn air(old: &Inputs, new: &Inputs, list: &mut List) {
    let blower_m3h = new.space.blower_m3h - old.space.blower_m3h;
    let each = new.price.blower_m3h / 100.0;
    let air = Quantity::new(blower_m3h, QuantityKind::AirFlow);
    more(list, Purchase::Blower, air, each);
    if new.space.cold_air_pct > old.space.cold_air_pct {
        one(list, Purchase::Duct, new.price.duct);
    }
}

/// Panels, a larger or another bank, and lighter loads. A bank of another
/// chemistry or voltage is bought whole.
pub(super) fn solar_bank_and_loads(old: &Inputs, new: &Inputs, use_ah: f64, list: &mut List) {
    let price = &new.price;
    let panel_w = new.sun.panel_w - old.sun.panel_w;
    let panels = Quantity::new(panel_w, QuantityKind::Power);
    more(list, Purchase::Panels, panels, price.panel_w);
    let same_kind =
        new.bank.chemistry == old.bank.chemistry && new.bank.nominal_v == old.bank.nominal_v;
    let kept_kwh = if same_kind { old.bank_kwh() } else { 0.0 };
    let over_lithium = match new.bank.chemistry {
        Chemistry::Lfp => 1.0,
        Chemistry::Agm | Chemistry::Gel | Chemistry::Flooded => LEAD_OVER_LITHIUM,
    };
    let bank_kwh = new.bank_kwh() - kept_kwh;
    more(
        list,
        Purchase::Bank,
        Quantity::new(bank_kwh, QuantityKind::Energy),
        price.bank_kwh * over_lithium,
    );
    let kept = |inputs: &Inputs| 1.0 - inputs.daily.saved_pct / 100.0;
    let saved_ah = use_ah * (1.0 - kept(new) / kept(old));
    more(
        list,
        Purchase::LighterLoads,
        ampere_hours(saved_ah),
        price.saved_ah * old.bank.nominal_v.blocks(),
    );
}
