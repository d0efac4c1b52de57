//! Tag numbers: each device draws from blocks of its own, so that two phones in one garage do not give the same number.

use std::collections::{BTreeMap, BTreeSet};

use super::change::Change;
use super::draft::Draft;
use super::whole::Job;
use crate::quantity::bounds;
use crate::record::{FieldName, Id, Kind};

/// Tags in one block: a year's work on most vehicles. Block 0 holds 1 to 500.
pub const BLOCK: i64 = 500;
const LAST_BLOCK: i64 = bounds::BLOCK.most;
const _: () = assert!(block_of(bounds::TAG.most) == LAST_BLOCK, "the last tag lies in the last block");

/// Which parts carry which tag, and which position of removal; kept along the way, so that one more part need not look
/// through all others.
#[derive(Debug, Clone, Default)]
pub(super) struct Numbers {
    tags: BTreeMap<i64, BTreeSet<Id>>,
    orders: BTreeMap<i64, usize>,
}

impl Numbers {
    /// A part has this tag and this position now.
    pub(super) fn add(&mut self, part: Id, tag: Option<i64>, order: Option<i64>) {
        if let Some(tag) = tag {
            self.tags.entry(tag).or_default().insert(part);
        }
        if let Some(order) = order {
            *self.orders.entry(order).or_default() += 1;
        }
    }

    /// It had them, and has others now.
    pub(super) fn remove(&mut self, part: Id, tag: Option<i64>, order: Option<i64>) {
        if let Some((tag, parts)) = tag.and_then(|tag| Some((tag, self.tags.get_mut(&tag)?))) {
            parts.remove(&part);
            if parts.is_empty() {
                self.tags.remove(&tag);
            }
        }
        if let Some((order, parts)) = order.and_then(|order| Some((order, self.orders.get_mut(&order)?))) {
            *parts -= 1;
            if *parts == 0 {
                self.orders.remove(&order);
            }
        }
    }

    /// The greatest tag of a block that was ever given, struck-out parts included: a number is not given a second time.
    fn greatest_in(&self, block: i64) -> Option<i64> {
        self.tags.range(tags_of(block)).next_back().map(|(tag, _)| *tag)
    }

    /// The greatest position of removal within bounds.
    pub(super) fn last_removal(&self) -> Option<i64> {
        self.orders.range(bounds::ORDER.least..=bounds::ORDER.most).next_back().map(|(order, _)| *order)
    }
}

impl Job {
    /// The parts that carry a tag and are not struck out.
    pub fn parts_with_tag(&self, tag: i64) -> impl Iterator<Item = Id> {
        self.numbers().tags.get(&tag).into_iter().flatten().copied().filter(|part| !self.is_struck(*part))
    }

    /// The claimed blocks with the devices that claimed them; struck-out claims count, since tags of theirs are on parts.
    fn claims(&self) -> BTreeMap<i64, BTreeSet<Id>> {
        let mut claims: BTreeMap<i64, BTreeSet<Id>> = BTreeMap::new();
        for block in self.ids(Kind::Block).filter_map(|block| self.item(block)) {
            let Some(number) = block.read(FieldName::Number).filter(|number| (0..=LAST_BLOCK).contains(number)) else {
                continue;
            };
            claims.entry(number).or_default().extend(block.read::<Id>(FieldName::Device));
        }
        claims
    }

    /// The tag that the device's next part will carry.
    #[must_use]
    pub fn next_tag(&self, device: Id) -> i64 {
        self.next_tag_after(device, &BTreeSet::new(), &[])
    }

    /// The same when some tags were `drawn`, and blocks `taken` by the device, that are not in the record yet.
    ///
    /// Of devices that claimed the same block without having seen one another, only the one of the least id goes on in it.
    fn next_tag_after(&self, device: Id, drawn: &BTreeSet<i64>, taken: &[i64]) -> i64 {
        let drawn_in = |block: i64| drawn.range(tags_of(block)).next_back().copied();
        let greatest = |block: i64| self.numbers().greatest_in(block).max(drawn_in(block));
        let claims = self.claims();
        let own = claims.iter().filter(|(_, devices)| devices.first() == Some(&device)).map(|(block, _)| *block);
        let free = (0..=LAST_BLOCK).filter(|block| !claims.contains_key(block) && greatest(*block).is_none()).take(1);
        let next_in = |block: i64| {
            let last = greatest(block).unwrap_or(block * BLOCK);
            (last < (block + 1) * BLOCK && last < bounds::TAG.most).then_some(last + 1)
        };
        let next = own.chain(taken.iter().copied()).chain(free).find_map(next_in);
        next.unwrap_or_else(|| self.any_free_tag(drawn))
    }

    /// When no block is left: the first number that nobody has.
    fn any_free_tag(&self, drawn: &BTreeSet<i64>) -> i64 {
        let given = |tag: &i64| self.numbers().tags.contains_key(tag) || drawn.contains(tag);
        (bounds::TAG.least..=bounds::TAG.most).find(|tag| !given(tag)).unwrap_or(bounds::TAG.most)
    }
}

/// The block that a tag within bounds is in.
const fn block_of(tag: i64) -> i64 {
    (tag - 1).div_euclid(BLOCK)
}

/// The tags of a block.
const fn tags_of(block: i64) -> std::ops::RangeInclusive<i64> {
    let last = (block + 1) * BLOCK;
    block * BLOCK + 1..=if last < bounds::TAG.most { last } else { bounds::TAG.most }
}

impl Draft<'_> {
    /// The next tag of this device, counting those given in this entry.
    pub(super) fn draw_tag(&mut self) -> i64 {
        let tag = self.job.next_tag_after(self.context.device, &self.tags, &self.blocks);
        self.tags.insert(tag);
        tag
    }

    /// Claims the block of a part's tag for this device, unless somebody has it.
    pub(super) fn claim_block_for(&mut self, part: Id) {
        let tag = self.read::<i64>(part, FieldName::Tag).filter(|tag| bounds::TAG.holds(*tag));
        let Some(block) = tag.map(block_of) else { return };
        if self.blocks.contains(&block) || self.job.claims().contains_key(&block) {
            return;
        }
        self.blocks.push(block);
        let device = self.context.device;
        if self.kind(device).is_none() {
            self.begin_or_complete(device, Kind::Device);
        }
        let claim = Id::derived(device, "block", block.unsigned_abs());
        if self.kind(claim).is_none() {
            self.begin_or_complete(claim, Kind::Block);
            self.change(claim, &[Change::Device(device), Change::Number(block)], None);
        }
    }
}
