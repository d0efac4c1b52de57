use super::model::Model;

/// What is left to choose from, at a node of the search.
#[derive(Debug, Clone)]
pub(super) struct Domain {
    /// For each cell, which takes are left.
    pub(super) takes: Vec<Vec<bool>>,
    /// What is shared: surely used, surely not, or not known.
    pub(super) shared: Vec<Option<bool>>,
    pub(super) orders: Vec<OrderOpen>,
    /// For each order, which bands are left.
    bands: Vec<Vec<bool>>,
}

/// Whether anything goes with an order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum OrderOpen {
    Free,
    No,
    Yes,
}

/// Something is left nowhere: no plan is in here.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Empty;

/// What is said of a domain on the way down.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Said {
    Shared(usize, bool),
    Order(usize, bool),
    /// In an order, the bands up to one, or those beyond it.
    Bands(usize, usize, bool),
    /// In a cell, one take, or any but that.
    Take(usize, usize, bool),
}

impl Domain {
    pub(super) fn all(model: &Model, bands: impl Iterator<Item = usize>) -> Self {
        Self {
            takes: model.cells.iter().map(|cell| vec![true; cell.takes.len()]).collect(),
            shared: vec![None; model.shared.len()],
            orders: vec![OrderOpen::Free; model.orders.len()],
            bands: bands.map(|count| vec![true; count]).collect(),
        }
    }

    pub(super) fn may_be_in(&self, order: usize, band: usize) -> bool {
        self.orders[order] != OrderOpen::No && self.bands[order][band]
    }

    /// Whether one take is left in a cell.
    pub(super) fn is_settled(&self, cell: usize) -> bool {
        self.takes[cell].iter().filter(|left| **left).count() == 1
    }

    pub(super) fn is_all_settled(&self) -> bool {
        (0..self.takes.len()).all(|cell| self.is_settled(cell))
    }

    /// Leaves a band of an order out.
    pub(super) fn bar(&mut self, order: usize, band: usize) {
        self.bands[order][band] = false;
    }

    pub(super) fn bands_left(&self, order: usize) -> usize {
        self.bands[order].iter().filter(|left| **left).count()
    }

    pub(super) fn say(&mut self, said: &Said) {
        match said {
            Said::Shared(at, used) => self.shared[*at] = Some(*used),
            Said::Order(at, open) => self.orders[*at] = if *open { OrderOpen::Yes } else { OrderOpen::No },
            Said::Bands(at, band, up_to) => {
                self.bands[*at].iter_mut().enumerate().for_each(|(other, left)| *left &= (other <= *band) == *up_to);
            }
            Said::Take(cell, take, only) => {
                self.takes[*cell].iter_mut().enumerate().for_each(|(other, left)| *left &= (other == *take) == *only);
            }
        }
    }

    /// Draws what follows from what was said, until nothing more does.
    pub(super) fn follow(&mut self, model: &Model) -> Result<(), Empty> {
        loop {
            let mut changed = false;
            for (cell, takes) in model.cells.iter().enumerate().map(|(at, cell)| (at, &cell.takes)) {
                for (at, take) in takes.iter().enumerate() {
                    let barred = take.uses.iter().any(|shared| self.shared[*shared] == Some(false))
                        || take.loads.iter().any(|load| self.is_shut(load.order));
                    if barred && self.takes[cell][at] {
                        self.takes[cell][at] = false;
                        changed = true;
                    }
                }
                let mut left = takes.iter().zip(&self.takes[cell]).filter(|(_, left)| **left).map(|(take, _)| take);
                let Some(first) = left.next() else { return Err(Empty) };
                if left.next().is_none() {
                    for shared in &first.uses {
                        changed |= self.shared[*shared] != Some(true);
                        self.shared[*shared] = Some(true);
                    }
                    for load in &first.loads {
                        changed |= self.open(load.order)?;
                    }
                }
            }
            for (at, shared) in model.shared.iter().enumerate() {
                for load in &shared.loads {
                    if self.shared[at] == Some(true) {
                        changed |= self.open(load.order)?;
                    } else if self.is_shut(load.order) && self.shared[at].is_none() {
                        self.shared[at] = Some(false);
                        changed = true;
                    }
                }
            }
            if !changed {
                return Ok(());
            }
        }
    }

    fn is_shut(&self, order: usize) -> bool {
        self.orders[order] == OrderOpen::No || self.bands_left(order) == 0
    }

    fn open(&mut self, order: usize) -> Result<bool, Empty> {
        if self.is_shut(order) {
            return Err(Empty);
        }
        let changed = self.orders[order] != OrderOpen::Yes;
        self.orders[order] = OrderOpen::Yes;
        Ok(changed)
    }
}
