//! Why the house bank is charged so.

use serde::Serialize;

use crate::units::Quantity;

/// Why the house bank is charged so.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum ChargeReason {
    /// The voltage given leaves a lithium bank no room below the contactor.
    NoRoomBelowContactor {
        /// Of each cell, as it is to be set.
        cell: Quantity,
        /// As given.
        given: Quantity,
        /// Where the contactor opens.
        contactor: Quantity,
    },
    /// The voltage given is more than such a battery withstands day by day.
    MoreThanItWithstands {
        /// As given.
        given: Quantity,
        /// What each cell withstands.
        cell: Quantity,
    },
    /// The voltage given is too low to charge such a bank.
    WouldChargeNothing {
        /// Of each cell, as it is to be set.
        cell: Quantity,
        /// As given.
        given: Quantity,
    },
    /// Cells in series and the voltage of each.
    CellsInSeries {
        /// How many.
        cells: Quantity,
        /// Of each.
        cell: Quantity,
        /// At which temperature.
        at: Quantity,
    },
    /// Full once it takes this part of its capacity.
    FullByThen {
        /// Part of the capacity.
        share: Quantity,
        /// The capacity.
        capacity: Quantity,
        /// What the house draws meanwhile, where the engine charges: a sensor on the
        /// alternator counts it too. None where it does not.
        house_load: Option<Quantity>,
    },
    /// A full lithium bank rests at this; more holds it at the top.
    RestsWhenFull {
        /// Of each cell.
        cell: Quantity,
    },
    /// Keeps a full lead bank full without gassing.
    KeepsFull {
        /// Of each cell.
        cell: Quantity,
    },
    /// Compensation is meant for lead and would harm lithium.
    CompensationIsForLead {
        /// The usual compensation of a lead cell.
        lead_cell: Quantity,
        /// The charge voltage.
        charge: Quantity,
        /// By how much it would move.
        moves: Quantity,
        /// Between this temperature
        from: Quantity,
        /// and this one.
        to: Quantity,
    },
    /// A lead bank without compensation.
    NoCompensationGiven {
        /// The charge voltage at any temperature.
        charge: Quantity,
        /// Usual for each cell, from
        least: Quantity,
        /// to.
        most: Quantity,
    },
    /// What compensation makes of the charge voltage.
    Compensated {
        /// The charge voltage
        cold: Quantity,
        /// at this temperature.
        cold_at: Quantity,
        /// The charge voltage
        hot: Quantity,
        /// at this temperature.
        hot_at: Quantity,
    },
    /// Hot lead runs away, frozen lead bursts.
    LeadHotOrFrozen {
        /// Where a flat lead battery freezes.
        freezes_at: Quantity,
    },
    /// Lithium is spoilt by charging in the cold and ages fast in the heat.
    LithiumColdOrHot,
    /// Far above what lithium withstands.
    LithiumIsBalanced {
        /// What the bank withstands.
        withstands: Quantity,
    },
    /// A sealed battery loses gas that cannot be put back.
    SealedBattery,
    /// Only where the battery maker asks for it, and with care.
    EqualiseWithCare,
    /// A lead bank that is never full sulphates.
    Sulphates {
        /// It is full below this current at the charge voltage.
        full_below: Quantity,
    },
    /// Plates must stay covered.
    PlatesCovered,
}
