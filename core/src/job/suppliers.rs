use std::collections::{BTreeMap, BTreeSet};

use super::terms_view::{SupplierLine, SuppliersView, UnnamedSupplier};
use super::view::RecordView;
use super::whole::Job;
use crate::record::{FieldName, Id, Kind, in_order, ordered_by};

impl Job {
    /// Suppliers and specialists with their terms, and names that quotes carry without one.
    #[must_use]
    pub fn suppliers_view(&self) -> SuppliersView {
        let mut ids: Vec<Id> = self.standing_ids(Kind::Supplier).collect();
        let mut from = self.quotes_by_name();
        // Of several of one name the first by id has the quotes, as in a plan.
        let mut counts: BTreeMap<Id, usize> = BTreeMap::new();
        for id in &ids {
            let quotes = from.remove(&called(&self.name(*id)));
            counts.insert(*id, quotes.map_or(0, |spelt| spelt.values().sum()));
        }
        self.sort_by_name(&mut ids);
        let line = |id: Id| {
            let record = self.record_view(id)?;
            Some(SupplierLine { record, tiers: self.tiers_of(id), quotes: counts.get(&id).copied().unwrap_or(0) })
        };
        SuppliersView { suppliers: ids.into_iter().filter_map(line).collect(), unnamed: self.unnamed(from) }
    }

    /// The quotes that stand, by whom they are from, and how that is spelt.
    fn quotes_by_name(&self) -> BTreeMap<String, BTreeMap<String, usize>> {
        let mut names: BTreeMap<String, BTreeMap<String, usize>> = BTreeMap::new();
        for item in self.standing_ids(Kind::Quote).filter_map(|id| self.item(id)) {
            let is_gone = item.read::<Id>(FieldName::Of).is_none_or(|part| self.is_struck(part));
            let Some(from) = item.read::<String>(FieldName::From).filter(|_| !is_gone) else { continue };
            let name = called(&from);
            if !name.is_empty() {
                let spelt = from.split_whitespace().collect::<Vec<_>>().join(" ");
                *names.entry(name).or_default().entry(spelt).or_default() += 1;
            }
        }
        names
    }

    /// Names that nobody has; a donor is no supplier.
    fn unnamed(&self, mut names: BTreeMap<String, BTreeMap<String, usize>>) -> Vec<UnnamedSupplier> {
        let vehicles: BTreeSet<String> =
            self.standing_ids(Kind::Vehicle).map(|vehicle| called(&self.name(vehicle))).collect();
        names.retain(|name, _| !vehicles.contains(name));
        let told = names.into_values().map(|spelt| {
            let quotes = spelt.values().sum();
            // The most used spelling; of several the first by letter.
            let most = spelt.values().max().copied();
            let name = spelt.into_iter().find(|(_, count)| Some(*count) == most).map(|(name, _)| name);
            UnnamedSupplier { name: name.unwrap_or_default(), quotes }
        });
        ordered_by(told.collect(), |a: &UnnamedSupplier, b| b.quotes.cmp(&a.quotes).then_with(|| a.name.cmp(&b.name)))
    }

    /// What carriage costs from a value or a mass on, the least first.
    fn tiers_of(&self, supplier: Id) -> Vec<RecordView> {
        let tiers = self.children(Kind::Tier, FieldName::Of, supplier).filter_map(|id| self.record_view(id)).collect();
        in_order(tiers, |tier: &RecordView| {
            (tier.values.from_value.map_or(0, |money| money.minor), tier.values.from_mass, tier.id)
        })
    }
}

/// What a supplier is called, so that the same is found however it is typed.
#[must_use]
pub(crate) fn called(name: &str) -> String {
    name.split_whitespace().map(str::to_lowercase).collect::<Vec<_>>().join(" ")
}
