//! What is said of packs in parallel and of drop-in packs.

use crate::findings::{PackFinding, PacksOpen};
use crate::text::words::{self, as_entered};
use crate::units::Reader;
use crate::units::quantity::{ampere_hours, amperes, volts};

pub(super) fn sentence(finding: &PackFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let most = |a| words::at_most(amperes(a), reader);
    match finding {
        PackFinding::PacksFollow(open) => {
            let stop = if open.closed {
                "choose packs that can stop the alternator by a signal or a data link"
            } else {
                "let the packs stop the alternator: a charge-disable signal of each wired to the regulator, or a data link"
            };
            let lost = if open.load_lost {
                " The alternator loses its load with the last one."
            } else {
                ""
            };
            format!(
                "{}{lost} Keep the charging current at {} or less, or {stop}.",
                opens(open, "charge", "flow into them", reader),
                most(open.safe_a)
            )
        }
        PackFinding::PacksFollowInUse(open) => format!(
            "{}{} Keep loads that run together at {} or less, or fit packs with a higher limit, or one more of them.",
            opens(open, "discharge", "are drawn at the peak", reader),
            if open.follow + 1 == open.packs {
                " Then the boat is dark."
            } else {
                ""
            },
            most(open.safe_a)
        ),
        PackFinding::PackOverDischarged {
            load_a,
            most_a,
            limit_a,
            together_a,
        } => format!(
            "At the peak house load of {} the pack with the least resistance gives {}, and its discharge limit is {}: it opens, and the others follow. Keep loads that run together at {} or less, or fit packs with a higher limit, or more of them.",
            show(as_entered(amperes(*load_a))),
            show(amperes(*most_a)),
            show(as_entered(amperes(*limit_a))),
            most(*together_a)
        ),
        PackFinding::PacksDisagree {
            packs,
            pack_ah,
            bank_ah,
        } => format!(
            "{packs} packs of {} make {}, and the house bank is entered with {}. Correct the wrong one.",
            show(as_entered(ampere_hours(*pack_ah))),
            show(ampere_hours(*packs as f64 * pack_ah)),
            show(as_entered(ampere_hours(*bank_ah)))
        ),
        PackFinding::DropInPacks {
            direct,
            guarded,
            charge_v,
        } => {
            let what = match (direct, guarded) {
                (true, false) => {
                    "With the alternator directly on the bank that is a voltage spike that nothing stops: fit a surge suppressor at the alternator or keep a lead battery on it, or charge through a DC-DC charger."
                }
                (true, true) => {
                    "The protection entered is then all there is: check it each season."
                }
                (false, _) => {
                    "With no alternator directly on the bank nothing is damaged by that, but everything on the house side loses its battery."
                }
            };
            format!(
                "Drop-in packs disconnect without warning and tell no charger what they may take. {what} Charge to no more than {}, below the voltage at which a single cell that runs ahead opens its pack.",
                show(volts(*charge_v).to(1))
            )
        }
    }
}

/// "3 packs of 100 A·h whose charge limit is 50 A each, while 130 A flow into them:
/// when one opens the others get up to 68 A each, and 2 open as well."
fn opens(open: &PacksOpen, limit: &str, flow: &str, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let (others, each) = match open.packs - 1 {
        1 => ("the other one gets".to_string(), ""),
        others => (format!("the other {others} get up to"), " each"),
    };
    let follow = match (open.follow, open.packs - 1) {
        (1, 1) => "opens as well".to_string(),
        (1, _) => "one of them opens as well before the rest hold".to_string(),
        (follow, all) if follow == all => {
            "all of them open as well, one after the other".to_string()
        }
        (follow, _) => format!("{follow} of them open as well before the rest hold"),
    };
    format!(
        "{} packs of {} have a {limit} limit of {} each, and {} {flow}: when one opens, {others} {}{each}, and {follow}.",
        open.packs,
        show(as_entered(ampere_hours(open.pack_ah))),
        show(as_entered(amperes(open.limit_a))),
        show(amperes(open.bank_a)),
        show(amperes(open.after_first_a))
    )
}
