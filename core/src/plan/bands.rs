use super::model::{Model, Order};

/// A stretch of value and mass within which what an order is charged is a straight line: carriage is the same all over, and what
/// is short of the least charge falls by one for each one of value.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Band {
    pub(super) value: (i64, i64),
    pub(super) mass: (i64, i64),
    carriage: i64,
    minimum_charge: i64,
}

impl Band {
    /// What is charged at one of its corners.
    pub(super) fn charge(&self, value: i64) -> i64 {
        self.carriage + (self.minimum_charge - value).max(0)
    }

    /// The same for a value between whole ones.
    pub(super) fn charge_at(&self, value: f64) -> f64 {
        as_f64(self.carriage) + (as_f64(self.minimum_charge) - value).max(0.0)
    }

    /// Whether what is in it comes short of the least charge, all over.
    pub(super) const fn is_short(&self) -> bool {
        self.value.0 < self.minimum_charge
    }

    /// What is charged in it whatever goes with the order: where it comes short, the least charge.
    pub(super) const fn fixed(&self) -> i64 {
        self.carriage + if self.is_short() { self.minimum_charge } else { 0 }
    }
}

/// The bands of each order, without those in which an order would be refused; a value and a mass that no plan passes close the
/// last ones.
pub(super) fn bands_of(model: &Model) -> Vec<Vec<Band>> {
    let mut most = vec![(0_i64, 0_i64); model.orders.len()];
    for cell in &model.cells {
        let mut of_cell: Vec<(usize, i64, i64)> = Vec::new();
        for take in &cell.takes {
            let mut of_take: Vec<(usize, i64, i64)> = Vec::new();
            for load in &take.loads {
                match of_take.iter_mut().find(|(order, _, _)| *order == load.order) {
                    Some(known) => (known.1, known.2) = (known.1 + load.value, known.2 + load.mass),
                    None => of_take.push((load.order, load.value, load.mass)),
                }
            }
            for (order, value, mass) in of_take {
                match of_cell.iter_mut().find(|(known, _, _)| *known == order) {
                    Some(known) => (known.1, known.2) = (known.1.max(value), known.2.max(mass)),
                    None => of_cell.push((order, value, mass)),
                }
            }
        }
        for (order, value, mass) in of_cell {
            most[order].0 += value;
            most[order].1 += mass;
        }
    }
    for load in model.shared.iter().flat_map(|shared| &shared.loads) {
        most[load.order].0 += load.value;
        most[load.order].1 += load.mass;
    }
    model.orders.iter().zip(most).map(|(order, most)| bands(order, most)).collect()
}

fn bands(order: &Order, most: (i64, i64)) -> Vec<Band> {
    let mut values = vec![0, order.minimum_order, order.minimum_charge];
    values.extend(order.free_from);
    values.extend(order.tiers.iter().map(|tier| tier.from_value));
    let mut masses = vec![0];
    masses.extend(order.tiers.iter().map(|tier| tier.from_mass));
    let mut found = Vec::new();
    let values: Vec<(i64, i64)> =
        stretches(values, most.0).into_iter().filter(|(from, _)| *from >= order.minimum_order).collect();
    for mass in stretches(masses, most.1) {
        for value in &values {
            let carriage = order.carriage_of(value.0, mass.0);
            found.push(Band { value: *value, mass, carriage, minimum_charge: order.minimum_charge });
        }
    }
    found
}

/// From each point to just before the next one, the last up to `most`; a point beyond that begins nothing.
fn stretches(mut points: Vec<i64>, most: i64) -> Vec<(i64, i64)> {
    points.retain(|point| (0..=most).contains(point));
    points.sort_unstable();
    points.dedup();
    let ends = points.iter().skip(1).map(|next| next - 1).chain([most]);
    points.iter().copied().zip(ends).collect()
}

#[expect(clippy::cast_precision_loss, reason = "sums that are not exact are not believed: see `Relaxed::is_exact`")]
pub(super) const fn as_f64(number: i64) -> f64 {
    number as f64
}
