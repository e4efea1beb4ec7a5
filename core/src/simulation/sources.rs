//! What can give current at one moment: alternators on the house bank, the DC-DC
//! charger, and what keeps the start battery.

use std::cell::Cell;

use crate::boat::{Connection, Regulators};
use crate::physics::charging::{after_services_a, charger_output_a};
use crate::physics::regulator::HELD_BAND_V;
use crate::simulation::Limit;
use crate::simulation::moment::{Output, ThermalState};
use crate::simulation::operating_point::{AlternatorState, SourceCurve};
use crate::simulation::per_alternator::{MOST_ALTERNATORS, PerAlternator, listed};
use crate::simulation::plant::{Converter, Plant};
use crate::simulation::sharing::{equally_warm, part, shared};

/// What can give current to the house at one moment.
enum HouseSource<'a> {
    /// An alternator on the house bank.
    Alternator(AlternatorState<'a>),
    /// One whose regulator knows nothing of the others, and what that holds \[V\].
    OnItsOwn(AlternatorState<'a>, f64),
    /// The DC-DC charger from the start battery.
    Charger {
        converter: &'a Converter,
        /// What the alternators that feed it can give on the start battery \[A\].
        fed_a: f64,
        /// What limits the first of them.
        limit: Limit,
    },
}

/// All that can give current at one moment.
pub(super) struct Sources<'a> {
    plant: &'a Plant,
    /// To the house, in the order of the alternators; the DC-DC charger in place
    /// of the first one that feeds it.
    to_house: PerAlternator<HouseSource<'a>>,
    /// What each alternator on the start battery can give there; 0 for others \[A\].
    on_start_a: [f64; MOST_ALTERNATORS],
    /// About what flows to the house \[A\].
    pub(super) guess_a: f64,
}

impl HouseSource<'_> {
    /// What it can give at a voltage of the house bank.
    #[inline]
    fn on(&self, plant: &Plant, house_v: f64) -> SourceCurve {
        match self {
            HouseSource::Alternator(alternator) => alternator.on(house_v),
            HouseSource::OnItsOwn(alternator, held_v) => {
                let band_v = HELD_BAND_V * plant.bank.blocks;
                alternator.on(house_v).held(*held_v, house_v, band_v)
            }
            HouseSource::Charger {
                converter,
                fed_a,
                limit,
            } => {
                let spare_a = after_services_a(*fed_a, plant.services_beside_charger_a());
                let able_a =
                    charger_output_a(spare_a, converter.efficiency, plant.start_v, house_v);
                if able_a < converter.most_a {
                    SourceCurve {
                        amperes: able_a,
                        slope: -able_a / house_v,
                        limit: *limit,
                    }
                } else {
                    SourceCurve {
                        amperes: converter.most_a,
                        slope: 0.0,
                        limit: Limit::Converter,
                    }
                }
            }
        }
    }
}

impl<'a> Sources<'a> {
    pub(super) fn new(plant: &'a Plant, seconds: f64, states: &[ThermalState]) -> Sources<'a> {
        let mut sources = Sources {
            plant,
            to_house: PerAlternator::new(),
            on_start_a: [0.0; MOST_ALTERNATORS],
            guess_a: 0.0,
        };
        for (at, (alternator, state)) in plant.alternators.iter().zip(states).enumerate() {
            let now = AlternatorState::new(alternator, seconds, state);
            if sources.to_house.is_empty() {
                sources.guess_a = 0.68 * now.allowed * alternator.curve.infinite_a;
            }
            if plant.apart() && alternator.connection.on_house() {
                let held_v = plant.held_by(at, state);
                sources.to_house.push(HouseSource::OnItsOwn(now, held_v));
            } else {
                sources.add(at, alternator.connection, now);
            }
        }
        sources
    }

    fn add(&mut self, at: usize, connection: Connection, now: AlternatorState<'a>) {
        if connection.on_house() {
            self.to_house.push(HouseSource::Alternator(now));
            return;
        }
        let given = now.on(self.plant.start_v);
        self.on_start_a[at] = given.amperes;
        if connection == Connection::StartBattery {
            return;
        }
        for source in &mut self.to_house {
            if let HouseSource::Charger { fed_a, .. } = source {
                *fed_a += given.amperes;
                return;
            }
        }
        if let Some(converter) = &self.plant.converter {
            self.to_house.push(HouseSource::Charger {
                converter,
                fed_a: given.amperes,
                limit: given.limit,
            });
        }
    }

    /// What all of them can give to the house at a voltage of its bank \[A\], and
    /// how that changes with the voltage \[A/V\]; `limit` becomes that of the first,
    /// of regulators on their own that of the first one that gives anything.
    #[inline]
    pub(super) fn together(&self, house_v: f64, limit: &Cell<Limit>) -> (f64, f64) {
        let (mut amperes, mut slope) = (0.0, 0.0);
        for (at, source) in self.to_house.iter().enumerate() {
            let one = source.on(self.plant, house_v);
            if at == 0 || amperes == 0.0 && self.plant.apart() {
                limit.set(one.limit);
            }
            amperes += one.amperes;
            slope += one.slope;
        }
        (amperes, slope)
    }

    /// What each source gives of what flows to house and bank \[A\]: they share it
    /// as they could give it, and the first has what the others leave.
    fn shares_a(&self, house_a: f64, bank_v: f64) -> [f64; MOST_ALTERNATORS] {
        let mut shares_a = [0.0; MOST_ALTERNATORS];
        let mut left_a = house_a;
        if self.to_house.len() > 1 {
            for (share_a, source) in shares_a.iter_mut().zip(&self.to_house) {
                *share_a = source.on(self.plant, bank_v).amperes;
            }
            if self.plant.is_linked_pair() {
                return self.linked_shares_a(house_a, bank_v, &shares_a);
            }
            let all_a = shares_a.iter().sum();
            for share_a in shares_a.iter_mut().skip(1) {
                *share_a = part(house_a, *share_a, all_a);
                left_a -= *share_a;
            }
        }
        shares_a[0] = left_a;
        shares_a
    }

    /// What each alternator gives of `house_a` \[A\] where a link shares it: by what each
    /// could give at full field, or so that all come to the same temperature.
    fn linked_shares_a(
        &self,
        house_a: f64,
        bank_v: f64,
        able_a: &[f64; MOST_ALTERNATORS],
    ) -> [f64; MOST_ALTERNATORS] {
        let able_a = listed(self.to_house.iter().zip(able_a).map(|(_, able_a)| *able_a));
        let mut weights = able_a.clone();
        let mut sensed_c = PerAlternator::new();
        for (weight, source) in weights.iter_mut().zip(&self.to_house) {
            if let HouseSource::Alternator(alternator) = source {
                *weight = alternator.full_a(bank_v);
                sensed_c.push(alternator.sensed_c);
            }
        }
        let by_heat = self.plant.regulators == Regulators::LinkedHeat;
        if by_heat && sensed_c.len() == weights.len() {
            for (weight, part) in weights.iter_mut().zip(equally_warm(&sensed_c)) {
                *weight *= part;
            }
        }
        let mut shares_a = [0.0; MOST_ALTERNATORS];
        let shared_a = shared(house_a, &able_a, &weights);
        for (share_a, shared_a) in shares_a.iter_mut().zip(shared_a) {
            *share_a = shared_a;
        }
        shares_a
    }

    /// What each alternator gives while so much flows to house and bank \[A\].
    pub(super) fn outputs(&self, house_a: f64, bank_v: f64) -> PerAlternator<Output> {
        let plant = self.plant;
        let shares_a = self.shares_a(house_a, bank_v);
        let mut of_charger = (0.0, 0.0);
        let mut direct_a = [0.0; MOST_ALTERNATORS];
        let mut direct = direct_a.iter_mut();
        for (source, share_a) in self.to_house.iter().zip(shares_a) {
            match source {
                HouseSource::Alternator(_) | HouseSource::OnItsOwn(..) => {
                    if let Some(place) = direct.next() {
                        *place = share_a;
                    }
                }
                HouseSource::Charger {
                    converter, fed_a, ..
                } => {
                    of_charger = (plant.charger_takes_a(converter, share_a, bank_v), *fed_a);
                }
            }
        }
        let mut direct = direct_a.into_iter();
        let each = plant.alternators.iter().zip(&self.on_start_a);
        listed(each.map(|(alternator, own_a)| {
            let (wanted_a, all_a) = match alternator.connection {
                Connection::HouseBank => {
                    return Output {
                        amperes: direct.next().unwrap_or(0.0),
                        volts: bank_v,
                    };
                }
                Connection::ThroughCharger => of_charger,
                Connection::StartBattery => (plant.services_a, self.kept_a()),
            };
            Output {
                amperes: part(wanted_a, *own_a, all_a).min(*own_a),
                volts: plant.start_v,
            }
        }))
    }

    /// What all alternators that keep the start battery can give there \[A\].
    fn kept_a(&self) -> f64 {
        let each = self.plant.alternators.iter().zip(&self.on_start_a);
        let kept = each.filter(|(one, _)| one.connection == Connection::StartBattery);
        kept.map(|(_, amperes)| amperes).sum()
    }
}
