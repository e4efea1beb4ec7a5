//! The names of the stages and steps of the commissioning list: stable, as ticks
//! are kept under those of the steps.

use crate::schema::codes;

codes! {
    /// A stage of the commissioning list.
    StageCode {
        /// Before power.
        Before = "before",
        /// The first start.
        Start = "start",
        /// The hot run.
        Hot = "hot",
        /// The disconnect test.
        Disconnect = "disconnect",
        /// After a month.
        Month = "month",
    }
}

codes! {
    /// A step of the commissioning list, in its order.
    StepCode {
        /// The battery maker's data sheet.
        MakerSheet = "maker_sheet",
        /// Everything isolated.
        Isolate = "isolate",
        /// Inspection by an electrician.
        Electrician = "electrician",
        /// Fuses at the batteries.
        Fuses = "fuses",
        /// Leads and lugs.
        Cables = "cables",
        /// Insulation of the output lead.
        Insulation = "insulation",
        /// No switch in an output lead.
        NoSwitch = "no_switch",
        /// Belts and pulleys.
        Belt = "belt",
        /// The temperature sensor.
        Sensor = "sensor",
        /// The regulator's sense wires.
        SenseWire = "sense_wire",
        /// The charge-disable signal.
        CutWire = "cut_wire",
        /// Protection of the alternator where packs give no signal.
        SpikeGuard = "spike_guard",
        /// Leads of packs in parallel.
        PackLeads = "pack_leads",
        /// Air for the alternator.
        Air = "air",
        /// Vents of lead batteries.
        LeadVent = "lead_vent",
        /// The carbon monoxide alarm.
        CoAlarm = "co_alarm",
        /// The charger's mains side.
        Mains = "mains",
        /// Settings entered.
        Set = "set",
        /// Polarity, then the fuse in.
        FuseIn = "fuse_in",
        /// The engine started.
        Start = "start",
        /// The first current.
        FirstAmps = "first_amps",
        /// Voltage drop in the leads.
        Drop = "drop",
        /// Meters that agree.
        Agree = "agree",
        /// Limits read at the regulator.
        LinkReads = "link_reads",
        /// What each pack takes.
        PackShares = "pack_shares",
        /// The DC-DC charger comes on.
        ConverterOn = "converter_on",
        /// Voltage at the start battery.
        StartVolts = "start_volts",
        /// The mains charger on.
        ChargerOn = "charger_on",
        /// Belts tightened again.
        Retension = "retension",
        /// Ready for the hot run.
        HotBegin = "hot_begin",
        /// The hot run.
        HotRun = "hot_run",
        /// The winding read too.
        HotWinding = "hot_winding",
        /// Temperatures of lugs, fuses and switches.
        HotLugs = "hot_lugs",
        /// Temperature of the bank.
        HotBank = "hot_bank",
        /// Temperatures after stopping.
        HotAfter = "hot_after",
        /// Readings put into the sea trial.
        HotTrial = "hot_trial",
        /// The field cut with the engine stopped.
        CutStill = "cut_still",
        /// The field cut at a small current.
        CutGentle = "cut_gentle",
        /// The battery's limit brought to nothing.
        LinkZero = "link_zero",
        /// The data link's plug pulled.
        LinkPulled = "link_pulled",
        /// Drop-in packs near full.
        PacksFull = "packs_full",
        /// A built-in regulator that cannot be cut.
        CutNone = "cut_none",
        /// The DC-DC charger cut.
        CutConverter = "cut_converter",
        /// The mains charger cut.
        CutCharger = "cut_charger",
        /// The high-voltage steps read back.
        CutOrder = "cut_order",
        /// The temperature limits read back.
        CutCold = "cut_cold",
        /// The contactor opened with nothing charging.
        OpenStill = "open_still",
        /// The low-voltage steps read back.
        LowOrder = "low_order",
        /// Belts after a month.
        MonthBelt = "month_belt",
        /// Lugs and bolts after a month.
        MonthLugs = "month_lugs",
        /// Current and case after a month.
        MonthHot = "month_hot",
        /// Spread of the cells.
        MonthCells = "month_cells",
        /// Water and density.
        MonthWater = "month_water",
        /// Full charges.
        MonthFull = "month_full",
        /// Equalising.
        MonthEqualise = "month_equalise",
        /// Settings read back.
        MonthSettings = "month_settings",
        /// The charge-disable test again.
        MonthCut = "month_cut",
        /// The alarm tested.
        MonthAlarm = "month_alarm",
    }
}

impl StepCode {
    /// The stage it belongs to.
    pub const fn stage(self) -> StageCode {
        match self {
            StepCode::MakerSheet
            | StepCode::Isolate
            | StepCode::Electrician
            | StepCode::Fuses
            | StepCode::Cables
            | StepCode::Insulation
            | StepCode::NoSwitch
            | StepCode::Belt
            | StepCode::Sensor
            | StepCode::SenseWire
            | StepCode::CutWire
            | StepCode::SpikeGuard
            | StepCode::PackLeads
            | StepCode::Air
            | StepCode::LeadVent
            | StepCode::CoAlarm
            | StepCode::Mains
            | StepCode::Set => StageCode::Before,
            StepCode::FuseIn
            | StepCode::Start
            | StepCode::FirstAmps
            | StepCode::Drop
            | StepCode::Agree
            | StepCode::LinkReads
            | StepCode::PackShares
            | StepCode::ConverterOn
            | StepCode::StartVolts
            | StepCode::ChargerOn
            | StepCode::Retension => StageCode::Start,
            StepCode::HotBegin
            | StepCode::HotRun
            | StepCode::HotWinding
            | StepCode::HotLugs
            | StepCode::HotBank
            | StepCode::HotAfter
            | StepCode::HotTrial => StageCode::Hot,
            StepCode::CutStill
            | StepCode::CutGentle
            | StepCode::LinkZero
            | StepCode::LinkPulled
            | StepCode::PacksFull
            | StepCode::CutNone
            | StepCode::CutConverter
            | StepCode::CutCharger
            | StepCode::CutOrder
            | StepCode::CutCold
            | StepCode::OpenStill
            | StepCode::LowOrder => StageCode::Disconnect,
            StepCode::MonthBelt
            | StepCode::MonthLugs
            | StepCode::MonthHot
            | StepCode::MonthCells
            | StepCode::MonthWater
            | StepCode::MonthFull
            | StepCode::MonthEqualise
            | StepCode::MonthSettings
            | StepCode::MonthCut
            | StepCode::MonthAlarm => StageCode::Month,
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::boat::COMMISSIONING_STEPS;
    use crate::guidance::commissioning::StepCode;

    #[test]
    fn every_step_can_be_ticked_in_its_order() {
        let names = StepCode::ALL.iter().map(|code| code.name());
        assert!(names.eq(COMMISSIONING_STEPS.iter().copied()));
    }

    #[test]
    fn stages_follow_one_another() {
        let stages = StepCode::ALL.iter().map(|code| code.stage());
        assert!(stages.is_sorted());
    }
}
