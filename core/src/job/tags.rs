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

/// Which parts and places carry which tag, and which parts have which position of removal; kept along the way, so that one
/// more part need not look through all others.
#[derive(Debug, Clone, Default)]
pub(super) struct Numbers {
    tags: BTreeMap<i64, BTreeSet<Id>>,
    places: BTreeMap<i64, BTreeSet<Id>>,
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

    /// A place has this tag now.
    pub(super) fn add_place(&mut self, place: Id, tag: i64) {
        self.places.entry(tag).or_default().insert(place);
    }

    /// It had it, and has another or none now.
    pub(super) fn remove_place(&mut self, place: Id, tag: i64) {
        let Some(places) = self.places.get_mut(&tag) else { return };
        places.remove(&place);
        if places.is_empty() {
            self.places.remove(&tag);
        }
    }

    /// The greatest tag of a block that a part was ever given, struck-out ones included: a number is not given a second time.
    fn greatest_in(&self, block: i64) -> Option<i64> {
        self.tags.range(tags_of(block)).next_back().map(|(tag, _)| *tag)
    }

    /// The greatest position of removal within bounds.
    pub(super) fn last_removal(&self) -> Option<i64> {
        self.orders.range(bounds::ORDER.least..=bounds::ORDER.most).next_back().map(|(order, _)| *order)
    }
}

/// Tags given in an entry that is being put together.
#[derive(Debug, Clone, Default)]
pub(super) struct Drawn {
    pub(super) parts: BTreeSet<i64>,
    pub(super) places: BTreeSet<i64>,
}

impl Job {
    /// The parts that carry a tag and are not struck out.
    pub fn parts_with_tag(&self, tag: i64) -> impl Iterator<Item = Id> {
        self.numbers().tags.get(&tag).into_iter().flatten().copied().filter(|part| !self.is_struck(*part))
    }

    /// The places that carry a tag and are not struck out.
    pub fn places_with_tag(&self, tag: i64) -> impl Iterator<Item = Id> {
        self.numbers().places.get(&tag).into_iter().flatten().copied().filter(|place| !self.is_struck(*place))
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
        self.next_tag_after(device, &Drawn::default(), &[])
    }

    /// The same when some tags were `drawn`, and blocks `taken` by the device, that are not in the record yet: the number
    /// after the greatest that a part of the block has, places passed over.
    ///
    /// Of devices that claimed the same block without having seen one another, only the one of the least id goes on in it.
    fn next_tag_after(&self, device: Id, drawn: &Drawn, taken: &[i64]) -> i64 {
        let next = self.blocks_for(device, drawn, taken).find_map(|block| {
            let mut free = self.after_parts_in(block, drawn)?;
            free.find(|tag| !self.is_on_place(*tag, drawn))
        });
        next.unwrap_or_else(|| self.any_free_tag(drawn))
    }

    /// The same for the device's next place: the greatest number of a block, so that a roll of tags for parts has no gaps.
    fn next_place_tag_after(&self, device: Id, drawn: &Drawn, taken: &[i64]) -> i64 {
        let next = self.blocks_for(device, drawn, taken).find_map(|block| {
            let free = self.after_parts_in(block, drawn)?;
            free.rev().find(|tag| !self.is_on_place(*tag, drawn))
        });
        next.unwrap_or_else(|| self.any_free_tag(drawn))
    }

    /// The blocks that a device draws from: its own, those it takes in this entry, then one that nobody has.
    fn blocks_for(&self, device: Id, drawn: &Drawn, taken: &[i64]) -> impl Iterator<Item = i64> {
        let claims = self.claims();
        let own = claims.iter().filter(|(_, devices)| devices.first() == Some(&device)).map(|(block, _)| *block);
        let mut blocks: Vec<i64> = own.chain(taken.iter().copied()).collect();
        let numbers = self.numbers();
        let is_free = |block: &i64| {
            let tags = || tags_of(*block);
            let is_given = |of: &BTreeMap<i64, BTreeSet<Id>>| of.range(tags()).next().is_some();
            let is_drawn = |of: &BTreeSet<i64>| of.range(tags()).next().is_some();
            !claims.contains_key(block)
                && !is_given(&numbers.tags)
                && !is_given(&numbers.places)
                && !is_drawn(&drawn.parts)
                && !is_drawn(&drawn.places)
        };
        blocks.extend((0..=LAST_BLOCK).find(is_free));
        blocks.into_iter()
    }

    /// The numbers of a block after the greatest that a part has.
    fn after_parts_in(&self, block: i64, drawn: &Drawn) -> Option<std::ops::RangeInclusive<i64>> {
        let greatest = self.numbers().greatest_in(block).max(drawn.parts.range(tags_of(block)).next_back().copied());
        let tags = tags_of(block);
        let first = greatest.map_or(*tags.start(), |greatest| greatest + 1);
        (first <= *tags.end()).then(|| first..=*tags.end())
    }

    fn is_on_place(&self, tag: i64, drawn: &Drawn) -> bool {
        self.numbers().places.contains_key(&tag) || drawn.places.contains(&tag)
    }

    /// When no block is left: the first number that nobody has.
    fn any_free_tag(&self, drawn: &Drawn) -> i64 {
        let given = |tag: &i64| {
            self.numbers().tags.contains_key(tag) || drawn.parts.contains(tag) || self.is_on_place(*tag, drawn)
        };
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
        self.tags.parts.insert(tag);
        tag
    }

    /// The next tag of this device for a place, counting those given in this entry.
    pub(super) fn draw_place_tag(&mut self) -> i64 {
        let tag = self.job.next_place_tag_after(self.context.device, &self.tags, &self.blocks);
        self.tags.places.insert(tag);
        tag
    }

    /// Claims the block of the tag of a part or a place for this device, unless somebody has it.
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
