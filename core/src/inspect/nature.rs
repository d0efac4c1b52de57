use crate::job::Job;
use crate::job::vocabulary::Route;
use crate::record::{FieldName, Id, Item, Kind};
use crate::tables::Family;
use crate::tables::families::family;

/// What is known of a part by what it is: by its family, and by what the user said of the part itself, which goes before.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
#[expect(clippy::struct_excessive_bools, reason = "each is a fact of its own about a part")]
pub struct Nature {
    /// Its family, where it is one of the tables.
    pub family: Option<&'static Family>,
    /// Its family, where it is one of the user's own.
    pub own: Option<Id>,
    /// Renewed whatever it looks like.
    pub single_use: bool,
    /// Both sides of an axle together.
    pub pair: bool,
    /// Kept and renewed together with what it was matched to.
    pub matched: bool,
    /// Somebody can be hurt when it breaks.
    pub safety_critical: bool,
}

impl Nature {
    /// Whether the trade would not take a route with such a part.
    #[must_use]
    pub fn refuses(&self, route: Route) -> bool {
        self.family.is_some_and(|family| family.refuses.contains(&route))
    }
}

/// What a part is by its nature.
#[must_use]
pub fn nature(job: &Job, part: Id) -> Nature {
    job.item(part).map(|item| nature_of(job, item)).unwrap_or_default()
}

/// The same, from its record.
#[must_use]
pub fn nature_of(job: &Job, part: &Item) -> Nature {
    let said: Option<String> = part.read(FieldName::Family);
    let table = said.as_deref().and_then(family);
    let own = said.as_deref().and_then(|id| own_family(job, id));
    let own_item = own.and_then(|id| job.item(id));
    let is = |field: FieldName, by_table: bool| {
        let by_family = by_table || own_item.is_some_and(|item| item.is(field));
        part.read::<bool>(field).unwrap_or(by_family)
    };
    Nature {
        family: table,
        own,
        single_use: is(FieldName::SingleUse, table.is_some_and(|family| family.single_use)),
        pair: is(FieldName::Pair, table.is_some_and(|family| family.pair)),
        matched: table.is_some_and(|family| !family.matched.is_empty()),
        safety_critical: is(FieldName::SafetyCritical, table.is_some_and(|family| family.safety_critical)),
    }
}

/// The family of the user's own that a stored word names by its id.
fn own_family(job: &Job, said: &str) -> Option<Id> {
    let id: Id = said.parse().ok()?;
    job.item_of(Kind::OwnFamily, id).map(|_| id)
}
