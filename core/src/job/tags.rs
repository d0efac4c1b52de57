//! Tag numbers: each device draws from blocks of its own, so that two phones in one garage do not give the same number.

use super::change::Change;
use super::draft::Draft;
use super::whole::Job;
use crate::record::{FieldName, Id, Kind};

/// Tags in one block: a year's work on most vehicles. Block 0 holds 1 to 500.
pub const BLOCK: i64 = 500;

impl Job {
    /// The parts that carry a tag and are not struck out.
    pub fn parts_with_tag(&self, tag: i64) -> impl Iterator<Item = Id> {
        let carries = move |part: &Id| self.item(*part).and_then(|item| item.read(FieldName::Tag)) == Some(tag);
        self.standing_ids(Kind::Part).filter(carries)
    }

    /// The blocks that a device has claimed, in order.
    fn blocks_of(&self, device: Id) -> Vec<i64> {
        let claimed = self.children(Kind::Block, FieldName::Device, device);
        let mut blocks: Vec<i64> = claimed.filter_map(|block| self.item(block)?.read(FieldName::Number)).collect();
        blocks.sort_unstable();
        blocks
    }

    /// Every number that a block bears, of whatever device.
    fn claimed_blocks(&self) -> Vec<i64> {
        self.standing_ids(Kind::Block).filter_map(|block| self.item(block)?.read(FieldName::Number)).collect()
    }

    /// Tags that were ever given, struck-out parts included: a number is not given a second time.
    fn given_tags(&self) -> impl Iterator<Item = i64> {
        self.ids(Kind::Part).filter_map(|part| self.item(part)?.read(FieldName::Tag))
    }

    /// The tag that the device's next part will carry.
    #[must_use]
    pub fn next_tag(&self, device: Id) -> i64 {
        let mut blocks = self.blocks_of(device);
        blocks.push(self.free_block());
        let given: Vec<i64> = self.given_tags().collect();
        let next = blocks.into_iter().find_map(|block| next_in(block, &given));
        next.unwrap_or_else(|| given.iter().max().map_or(1, |most| most + 1))
    }

    /// The first block that nobody has claimed and in which no tag was given.
    fn free_block(&self) -> i64 {
        let claimed = self.claimed_blocks();
        let used: std::collections::BTreeSet<i64> = self.given_tags().map(block_of).collect();
        (0..).find(|block| !claimed.contains(block) && !used.contains(block)).unwrap_or(0)
    }
}

/// The block that a tag is in.
const fn block_of(tag: i64) -> i64 {
    (tag - 1).div_euclid(BLOCK)
}

/// The number after the greatest one given in a block, while the block lasts.
fn next_in(block: i64, given: &[i64]) -> Option<i64> {
    let greatest = given.iter().copied().filter(|tag| block_of(*tag) == block).max().unwrap_or(block * BLOCK);
    (greatest < (block + 1) * BLOCK).then_some(greatest + 1)
}

impl Draft<'_> {
    /// The next tag of this device, counting those given in this entry.
    pub(super) fn draw_tag(&mut self) -> i64 {
        let mut tag = self.job.next_tag(self.context.device);
        while self.tags.contains(&tag) {
            tag += 1;
        }
        self.tags.insert(tag);
        tag
    }

    /// Claims the block of a part's tag for this device, unless somebody has it.
    pub(super) fn claim_block_for(&mut self, part: Id) {
        let Some(tag) = self.read::<i64>(part, FieldName::Tag) else { return };
        let block = block_of(tag);
        if self.blocks.contains(&block) || self.job.claimed_blocks().contains(&block) {
            return;
        }
        self.blocks.push(block);
        let device = self.context.device;
        if self.kind(device).is_none() {
            self.begin(device, Kind::Device);
        }
        let claim = Id::derived(device, "block", block.unsigned_abs());
        if self.kind(claim).is_none() {
            self.begin(claim, Kind::Block);
            self.change(claim, &[Change::Device(device), Change::Number(block)], None);
        }
    }
}
