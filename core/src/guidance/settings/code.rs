//! The names of the groups of settings and of the settings in them: stable, so
//! that tests and readers of the JSON can rely on them.

use crate::schema::codes;

codes! {
    /// A group of settings, by the device they are made in.
    GroupCode {
        /// How the house bank is charged, whatever charges it.
        Charge = "charge",
        /// The most charge current of a lithium bank by cell temperature.
        ByTemperature = "by_temperature",
        /// The external regulator.
        Regulator = "regulator",
        /// The built-in regulator.
        BuiltIn = "built_in",
        /// The second alternator's regulator.
        Second = "second",
        /// The DC-DC charger.
        Converter = "converter",
        /// The battery management system.
        Management = "management",
        /// A lead bank's alarm and switch.
        LowVolts = "low_volts",
        /// The charger on shore power.
        ShoreCharger = "shore_charger",
        /// The start battery.
        StartBattery = "start_battery",
    }
}

codes! {
    /// A setting. The same code may stand in several groups.
    SettingCode {
        /// The voltage charged to or held.
        Voltage = "voltage",
        /// When absorption ends.
        AbsorptionEnd = "absorption_end",
        /// The float voltage.
        Float = "float",
        /// Compensation of the charge voltage by temperature.
        Compensation = "compensation",
        /// Temperatures the bank may be charged at.
        Temperature = "temperature",
        /// Equalising.
        Equalising = "equalising",
        /// How often the bank must be charged full.
        FullCharge = "full_charge",
        /// How often to look at the water.
        Water = "water",
        /// The step of the coldest cells.
        Frost = "frost",
        /// The step that ends at 5 °C at most.
        To5 = "to_5",
        /// The step that ends at 10 °C at most.
        To10 = "to_10",
        /// The step that ends at 50 °C at most.
        To50 = "to_50",
        /// The step above that.
        To60 = "to_60",
        /// The step of the hottest cells.
        Hot = "hot",
        /// Voltages of a charge, all at once.
        Profile = "profile",
        /// The voltage the start battery gets.
        StartVoltage = "start_voltage",
        /// Where the voltage is sensed.
        Sense = "sense",
        /// Most current of an alternator.
        CurrentCap = "current_cap",
        /// The temperature limit the regulator holds.
        SetPoint = "set_point",
        /// The range in which the field is taken back.
        FoldBack = "fold_back",
        /// What the regulator does when its temperature sensor fails.
        SensorLoss = "sensor_loss",
        /// Least field at low speed.
        LowSpeed = "low_speed",
        /// The wait before the first field.
        Delay = "delay",
        /// The soft start.
        Ramp = "ramp",
        /// The input that cuts the field.
        FieldCut = "field_cut",
        /// Most field at any speed.
        FieldCap = "field_cap",
        /// Most field while the boat manoeuvres.
        Manoeuvring = "manoeuvring",
        /// Limits that the battery sends over a data link.
        LinkLimits = "link_limits",
        /// What the regulator does when the data link is lost.
        LinkLoss = "link_loss",
        /// The temperature limit a built-in regulator lacks.
        Heat = "heat",
        /// Everything else.
        Others = "others",
        /// A charger's output current.
        Current = "current",
        /// The voltage below which a DC-DC charger stops.
        Lockout = "lockout",
        /// The voltage above which it starts again.
        Again = "again",
        /// The input that switches a charger off.
        RemoteOff = "remote_off",
        /// When a DC-DC charger works.
        On = "on",
        /// High voltage, first step: warning.
        HighWarning = "high_1_warning",
        /// High voltage, second step: charging off.
        HighChargingOff = "high_2_field_off",
        /// High voltage, third step: the contactor opens.
        HighContactor = "high_3_contactor",
        /// Low voltage, first step: warning.
        LowWarning = "low_1_warning",
        /// Low voltage, second step: large loads off.
        LowLoadsOff = "low_2_loads_off",
        /// Low voltage, third step: the contactor opens.
        LowContactor = "low_3_contactor",
        /// Low voltage, third step of a lead bank: nearly all off.
        LowAllOff = "low_3_off",
        /// Most charge current.
        ChargeCurrent = "charge_current",
        /// What only the battery maker can say of single cells.
        CellLimits = "cell_limits",
        /// The charge limit of each of several packs.
        EachPack = "each_pack",
        /// The fuse at each of several packs.
        PackFuse = "pack_fuse",
        /// What stands in place of a charge-disable signal.
        InPlaceOfSignal = "in_place_of_signal",
        /// What charges the start battery.
        KeptBy = "kept_by",
        /// Most voltage of the start battery.
        Most = "most",
        /// The emergency parallel switch.
        Parallel = "parallel",
    }
}
