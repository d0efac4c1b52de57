use std::collections::BTreeMap;

use super::list::{Mark, NowSums, PartsList, Row};
use crate::inspect;
use crate::job::vocabulary::Route;
use crate::job::{Group as Grouping, Job, PartsQuery};
use crate::quantity::Day;

/// What the parts of a list leave the house for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Errand {
    /// To be bought: new, in a kit, in exchange, from a donor.
    Buy,
    /// To be sent out to a specialist.
    Send,
}

/// Decided parts that are to be bought or sent out, by whom they go to, with the figures of their quotes as they stand now.
#[derive(Debug, Clone, PartialEq)]
pub struct Errands {
    /// By supplier or specialist, in order of name; those without one last.
    pub groups: Vec<Group>,
    /// Over all groups.
    pub sums: NowSums,
    /// How many parts of the list are not decided.
    pub undecided: usize,
}

/// What goes to one supplier or specialist.
#[derive(Debug, Clone, PartialEq)]
pub struct Group {
    /// Whose; empty when nobody was named.
    pub from: String,
    /// The parts.
    pub rows: Vec<Row>,
    /// Sums over them.
    pub sums: NowSums,
}

impl Errand {
    const fn holds(self, route: Route) -> bool {
        match self {
            Self::Buy => matches!(route, Route::Buy | Route::Kit | Route::Exchange | Route::Donor),
            Self::Send => matches!(route, Route::SendOut),
        }
    }
}

impl Errands {
    /// How many parts are in it.
    #[must_use]
    pub fn parts(&self) -> usize {
        self.groups.iter().map(|group| group.rows.len()).sum()
    }

    /// The errands among the parts that a question is about; quotes that were valid until before `today` have run out.
    #[must_use]
    pub fn of(job: &Job, errand: Errand, query: &PartsQuery, today: Option<Day>) -> Self {
        let mut list = PartsList::of(job, &PartsQuery { group: Grouping::None, ..query.clone() }, today);
        // What was struck out is neither bought nor sent, nor waits for a decision.
        list.rows.retain(|row| !row.marks.contains(&Mark::StruckOut));
        let currency = job.settings().currency;
        let undecided = list.rows.iter().filter(|row| row.decision.is_none()).count();
        let mut sums = NowSums::none(currency);
        let mut groups: BTreeMap<(bool, String), Group> = BTreeMap::new();
        for row in list.rows {
            let Some(decision) =
                row.decision.as_ref().filter(|decision| decision.route.is_some_and(|route| errand.holds(route)))
            else {
                continue;
            };
            let from = row.now.as_ref().map_or(&decision.from, |now| &now.from).trim().to_owned();
            let group = groups.entry((from.is_empty(), from.to_lowercase()));
            let group = group.or_insert_with(|| Group { from, rows: Vec::new(), sums: NowSums::none(currency) });
            if let Some(now) = &row.now {
                group.sums.add(now);
                sums.add(now);
            }
            let cautions = if errand == Errand::Send { inspect::caution_codes(job, row.id) } else { Vec::new() };
            group.rows.push(Row { cautions, ..row });
        }
        Self { groups: groups.into_values().collect(), sums, undecided }
    }
}
