//! The names of the findings: stable, so that tests, files and readers of the
//! JSON can rely on them.

use crate::schema::codes;

codes! {
    /// The name of a finding. It stays the same from version to version. What each
    /// stands for is told at the variant of its subject.
    Code {
        ManagementOpens = "management_opens",
        LimitHeldByLoads = "limit_held_by_loads",
        LinkHasNoEffect = "link_has_no_effect",
        LinkLossNotSaid = "link_loss_not_said",
        LinkLossOpens = "link_loss_opens",
        PacksFollow = "packs_follow",
        PacksFollowInUse = "packs_follow_in_use",
        PackOverDischarged = "pack_over_discharged",
        PacksDisagree = "packs_disagree",
        DropInPacks = "drop_in_packs",
        AlternatorVoltageMismatch = "alternator_voltage_mismatch",
        AlternatorVoltageAssumed = "alternator_voltage_assumed",
        AlternatorVoltageContradiction = "alternator_voltage_contradiction",
        CurvePoints = "curve_points",
        EfficiencyTooHigh = "efficiency_too_high",
        AnchorOutOfReach = "anchor_out_of_reach",
        TargetBelowStart = "target_below_start",
        EmptyWindow = "empty_window",
        MonthTooLong = "month_too_long",
        NothingWatchesHeat = "nothing_watches_heat",
        WindingTooHot = "winding_too_hot",
        RectifierTooHot = "rectifier_too_hot",
        CaseTooHot = "case_too_hot",
        NearLimit = "near_limit",
        CaseSensorLags = "case_sensor_lags",
        SetPointHigh = "set_point_high",
        SoakRectifier = "soak_rectifier",
        HotWhenMotoring = "hot_when_motoring",
        SoakAir = "soak_air",
        SensorReadsLow = "sensor_reads_low",
        SensorFailsHot = "sensor_fails_hot",
        RegulatorsFight = "regulators_fight",
        LegTooHot = "leg_too_hot",
        LegNearLimit = "leg_near_limit",
        LegDisconnects = "leg_disconnects",
        LegTargetNotReached = "leg_target_not_reached",
        LegBankEmptied = "leg_bank_emptied",
        LegFasterThanTop = "leg_faster_than_top",
        Overspeed = "overspeed",
        FasterThanTop = "faster_than_top",
        SecondTooSlow = "second_too_slow",
        TooSlow = "too_slow",
        LowOnTheCurve = "low_on_the_curve",
        CannotBeCharged = "cannot_be_charged",
        DayDisconnects = "day_disconnects",
        DayNotCovered = "day_not_covered",
        BankTooSmall = "bank_too_small",
        SeveralRunsADay = "several_runs_a_day",
        DayBelowWindow = "day_below_window",
        BankIsEmptied = "bank_is_emptied",
        TargetNotReached = "target_not_reached",
        BankLimitBinds = "bank_limit_binds",
        LeadOverCurrent = "lead_over_current",
        ShoreNotEnough = "shore_not_enough",
        ConverterLockedOut = "converter_locked_out",
        ConverterStarves = "converter_starves",
        ConverterLarge = "converter_large",
        LithiumCompensated = "lithium_compensated",
        LithiumFrozen = "lithium_frozen",
        LithiumTooHot = "lithium_too_hot",
        LithiumCold = "lithium_cold",
        LithiumHot = "lithium_hot",
        LithiumOvervoltage = "lithium_overvoltage",
        ChargeVoltageNoRoom = "charge_voltage_no_room",
        BanksJoinedToLithium = "banks_joined_to_lithium",
        OldConnectionGoes = "old_connection_goes",
        LeadHot = "lead_hot",
        LeadFrozen = "lead_frozen",
        LeadMayFreeze = "lead_may_freeze",
        LeadOvervoltage = "lead_overvoltage",
        LeadUndervoltage = "lead_undervoltage",
        LeadNeverFull = "lead_never_full",
        EngineOverloaded = "engine_overloaded",
        EngineLowLoad = "engine_low_load",
        BlowerForWanted = "blower_for_wanted",
        NoBlowerForWanted = "no_blower_for_wanted",
        GeneratorNotEnough = "generator_not_enough",
        GeneratorTooLong = "generator_too_long",
        GeneratorTooSmall = "generator_too_small",
        GeneratorLowLoad = "generator_low_load",
        BeltNotSaid = "belt_not_said",
        BeltTooSmall = "belt_too_small",
        PulleysOverlap = "pulleys_overlap",
        RatioDisagrees = "ratio_disagrees",
        BeltWrapSmall = "belt_wrap_small",
        BeltPulleySmall = "belt_pulley_small",
        BeltSharedPump = "belt_shared_pump",
        CrankSideLoad = "crank_side_load",
        DisconnectNotSaid = "disconnect_not_said",
        DisconnectUnguarded = "disconnect_unguarded",
        WarningAlone = "warning_alone",
        SwitchInLead = "switch_in_lead",
        TouchVoltage = "touch_voltage",
        ClampTooLow = "clamp_too_low",
        ClampTooSmall = "clamp_too_small",
        CableInsulationTooHot = "cable_insulation_too_hot",
        CableNone = "cable_none",
        CableParallel = "cable_parallel",
        CableInverterUnsaid = "cable_inverter_unsaid",
        FuseCannotBreak = "fuse_cannot_break",
        FuseMustBreak = "fuse_must_break",
    }
}

#[cfg(test)]
mod tests {
    use crate::findings::Code;
    use std::collections::BTreeSet;

    #[test]
    fn each_has_a_name_of_its_own() {
        let names: BTreeSet<&str> = Code::ALL.iter().map(|code| code.name()).collect();
        assert_eq!(names.len(), Code::ALL.len());
        let plain = |name: &str| name.chars().all(|c| c.is_ascii_lowercase() || c == '_');
        assert!(names.into_iter().all(plain));
    }
}
