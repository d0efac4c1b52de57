use super::line::day_of;
use super::missed::taken;
use super::view::{MissingView, StoredLine};
use super::whereabouts::Whereabouts;
use crate::job::Job;
use crate::quantity::{Day, Millis, Money};
use crate::record::{FieldName, Id, Kind, in_order};

/// Days after which what is out of the house with no day counts as late: a starting value (common practice, no source).
pub const OUT_DAYS: i64 = 60;
/// Days after which what lies in a place and was not seen is told: a starting value (common practice, no source).
pub const UNSEEN_DAYS: i64 = 365;
/// So many of each are listed.
const LISTED: usize = 200;

/// A part with what puts it in order.
type Found = (i64, i64, Id);

impl Job {
    /// What is not where it should be, or not known to be. Without `today` nothing is late, and nothing not seen for long.
    #[must_use]
    pub fn missing_view(&self, today: Option<Day>, out_days: Option<i64>, unseen_days: Option<i64>) -> MissingView {
        let out_days = out_days.unwrap_or(OUT_DAYS).max(0);
        let unseen_days = unseen_days.unwrap_or(UNSEEN_DAYS).max(0);
        let [mut missed, mut out, mut nowhere, mut unseen] = [const { Vec::new() }; 4];
        for part in self.standing_ids(Kind::Part) {
            let Some(item) = self.item(part) else { continue };
            let tag = item.read(FieldName::Tag).unwrap_or(i64::MAX);
            match self.whereabouts(part) {
                Whereabouts::Out(outing) => {
                    let late = self.late(outing, today, out_days);
                    out.push((-late.unwrap_or(-1), tag, part));
                }
                Whereabouts::Nowhere if self.is_nowhere(part) => nowhere.push((0, tag, part)),
                Whereabouts::In(_) => {
                    if let Some(since) = self.missed_since(part) {
                        missed.push((since.0, tag, part));
                    } else if let Some(at) = self.unseen_since(part, today, unseen_days) {
                        unseen.push((at.0, tag, part));
                    }
                }
                Whereabouts::Nowhere | Whereabouts::On | Whereabouts::Refitted => {}
            }
        }
        let totals = [missed.len(), out.len(), nowhere.len(), unseen.len()];
        let late = out.iter().filter(|(late, _, _)| *late <= 0).count();
        let (worth, unpriced) = self.worth_of(&out);
        let out = self.first_lines(out, usize::MAX).into_iter().map(|line| StoredLine {
            late: line.out.as_ref().and_then(|outing| self.late(outing.id, today, out_days)),
            ..line
        });
        MissingView {
            missed: self.first_lines(missed, LISTED),
            out: out.collect(),
            nowhere: self.first_lines(nowhere, LISTED),
            unseen: self.first_lines(unseen, LISTED),
            totals,
            late,
            worth,
            unpriced,
            out_days,
            unseen_days,
        }
    }

    fn first_lines(&self, found: Vec<Found>, count: usize) -> Vec<StoredLine> {
        let found = in_order(found, |found| *found);
        found.into_iter().take(count).filter_map(|(_, _, part)| self.stored_line(part)).collect()
    }

    /// By how many days something is out too long.
    fn late(&self, outing: Id, today: Option<Day>, out_days: i64) -> Option<i64> {
        let (item, today) = (self.item(outing)?, today?);
        if let Some(due) = item.read::<Day>(FieldName::Due) {
            return Some(today.count() - due.count()).filter(|days| *days > 0);
        }
        let left = day_of(taken(item))?;
        Some(today.count() - left.count()).filter(|days| *days > out_days)
    }

    /// When a part was last seen, if that is long ago.
    fn unseen_since(&self, part: Id, today: Option<Day>, unseen_days: i64) -> Option<Millis> {
        let (seen, today) = (self.last_seen(part)?, today?);
        let days = today.count() - day_of(seen.at)?.count();
        (days > unseen_days).then_some(seen.at)
    }

    /// What another of each would cost together, and for how many no quote says it.
    fn worth_of(&self, out: &[Found]) -> (Money, usize) {
        let known: Vec<i64> = out.iter().filter_map(|(_, _, part)| Some(self.another_costs(*part)?.minor)).collect();
        let sum = known.iter().fold(0_i64, |sum, minor| sum.saturating_add(*minor));
        (Money::from_minor(sum, self.settings().currency), out.len() - known.len())
    }
}
