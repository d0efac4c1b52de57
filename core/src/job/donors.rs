//! What a donor gave, what it still has, and what it came to.

use serde::{Deserialize, Serialize};

use super::view::RecordView;
use super::whole::Job;
use crate::costing;
use crate::quantity::{Day, Money};
use crate::record::{FieldName, Id, Kind, in_order};

/// A donor with what is known of it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct DonorView {
    /// Which vehicle.
    pub vehicle: Id,
    /// What it gives: chosen for a part of the job, or taken off it already.
    pub taken: Vec<DonorLine>,
    /// What it has besides.
    pub left: Vec<DonorLine>,
    /// What was paid for it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub paid: Option<Money>,
    /// What all of its surplus was sold for.
    pub sold: Money,
    /// What it really cost: paid, less sold; nothing while no price is known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub really: Option<Money>,
}

/// Something on a donor: what was quoted for a part of the job, or a part that is listed in its own assemblies.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "ts", derive(tsify::Tsify))]
pub struct DonorLine {
    /// The part of the job that it is for, or the part itself.
    pub part: Id,
    /// Its tag.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tag: Option<i64>,
    /// Its name; empty when it has none.
    pub name: String,
    /// It is a quote for a part of the job, and chosen there.
    pub chosen: bool,
    /// It was taken off.
    pub off: bool,
    /// What it was sold for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sold: Option<Money>,
    /// The record that is ticked: the quote (`fetched`), or the part (`off`).
    pub record: RecordView,
}

impl Job {
    /// A donor with what it gave and has.
    #[must_use]
    pub fn donor_view(&self, vehicle: Id, today: Option<Day>) -> Option<DonorView> {
        let item = self.item_of(Kind::Vehicle, vehicle)?;
        let currency = self.settings().currency;
        let quoted = self.children(Kind::Quote, FieldName::Vehicle, vehicle).filter_map(|quote| {
            let part: Id = self.item(quote)?.read(FieldName::Of)?;
            let here = self.item_of(Kind::Part, part).is_some_and(|item| !item.is_struck());
            here.then(|| {
                let chosen = costing::decided(self, part, today) == Some(quote);
                self.donor_line(part, quote, chosen, FieldName::Fetched)
            })?
        });
        let listed = costing::donor_pieces(self, vehicle).into_iter();
        let listed = listed.filter_map(|part| self.donor_line(part, part, false, FieldName::Off));
        let all: Vec<DonorLine> = quoted.chain(listed).collect();
        let sold = all.iter().filter_map(|line| line.sold).chain(item.read::<Money>(FieldName::Sold));
        let sold = sold.filter(|sold| sold.currency == currency).map(|sold| sold.minor);
        let sold = Money::from_minor(sold.fold(0, i64::saturating_add), currency);
        let paid: Option<Money> = item.read(FieldName::Cash);
        let really = paid.filter(|paid| paid.currency == currency);
        let all = in_order(all, |line: &DonorLine| (line.name.clone(), line.tag, line.record.id));
        let (taken, left) = all.into_iter().partition(|line| line.chosen || line.off);
        Some(DonorView {
            vehicle,
            taken,
            left,
            paid,
            sold,
            really: really.map(|paid| Money::from_minor(paid.minor.saturating_sub(sold.minor), currency)),
        })
    }

    fn donor_line(&self, part: Id, record: Id, chosen: bool, ticked: FieldName) -> Option<DonorLine> {
        let (item, own) = (self.item(part)?, self.item(record)?);
        // What was sold stands on a part of the donor itself.
        let sold = own.read(FieldName::Sold).filter(|_| part == record);
        Some(DonorLine {
            part,
            tag: item.read(FieldName::Tag),
            name: self.name(part),
            chosen,
            off: own.is(ticked),
            sold,
            record: self.record_view(record)?,
        })
    }
}
