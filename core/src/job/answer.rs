use super::gearings;
use super::query::Query;
use super::troubles;
use super::view::{HeadView, IdentifyView, ProblemsView, SeenView, View};
use super::whole::Job;
use crate::costing;
use crate::inspect;
use crate::problem::{Code, Hint, Problem};
use crate::quantity::Millis;
use crate::record::{FieldName, Held, Id, Kind, Stored};
use crate::refit;
use crate::tables;

/// Answers a question. `device` says whose next tag is shown. Heavy questions are refused: [`reckon`](crate::reckoning::reckon) answers them.
///
/// ```
/// use asfound_core::job::{ask, Job, Query, View};
/// use asfound_core::record::Id;
/// let view = ask(&Job::new(), &Query::Places, Id::from_bytes([0; 16]));
/// assert!(matches!(view, View::Places(places) if places.places.is_empty()));
/// ```
#[must_use]
pub fn ask(job: &Job, query: &Query, device: Id) -> View {
    let view = match query {
        Query::Head => job.head_view().map(View::Head),
        Query::Teardown { assembly, part } => Some(View::Teardown(job.teardown_view(*assembly, *part, device))),
        Query::Assemblies => Some(View::Assemblies(job.assemblies_view())),
        Query::Parts(query) => Some(View::Parts(job.parts_view(query))),
        Query::Part { part } => job.part_view(*part).map(|view| View::Part(Box::new(view))),
        Query::Photo { photo } => job.photo_view(*photo).map(View::Photo),
        Query::Cost { part, today, set } => {
            let part = job.item_of(Kind::Part, *part).map(|_| *part);
            part.map(|part| View::Cost(Box::new(costing::cost(job, part, *today, set.as_ref()))))
        }
        Query::Totals { today } => Some(View::Totals(Box::new(costing::totals(job, *today)))),
        Query::Inspect { part } => inspect::inspect(job, *part).map(|view| View::Inspect(Box::new(view))),
        Query::Proof(query) => Some(View::Proof(Box::new(inspect::proof(query)))),
        Query::Typed { text, unit } => Some(View::Typed(inspect::typed(text, *unit))),
        Query::Identify { text } => {
            Some(View::Identify(IdentifyView { bearing: tables::bearing(text), seal: tables::seal(text) }))
        }
        Query::Cautions { step, part, assembly } => {
            let is_here = part.is_none_or(|part| job.item_of(Kind::Part, part).is_some())
                && assembly.is_none_or(|assembly| job.item_of(Kind::Assembly, assembly).is_some());
            is_here.then(|| View::Cautions(inspect::cautions(job, *step, *part, *assembly)))
        }
        // Heavy ones are answered apart, so that whoever answers quick ones does not carry them.
        Query::Certainty
        | Query::Undecided
        | Query::Plan
        | Query::Frontier
        | Query::Sway
        | Query::KeptPlans
        | Query::KitContents => Some(View::Refused(Problem::error(Code::HeavyQuestion).hint(Hint::AskReckoning))),
        Query::Ready { today } => Some(View::Ready(Box::new(refit::ready::ready(job, *today)))),
        Query::RefitSteps { assembly, today } => {
            refit::step::steps(job, *assembly, *today).map(|view| View::RefitSteps(Box::new(view)))
        }
        Query::RefitStep { part, today } => {
            refit::step::step(job, *part, *today).map(|view| View::RefitStep(Box::new(view)))
        }
        Query::ThisEvening { minutes, today } => {
            Some(View::ThisEvening(refit::evening::this_evening(job, *minutes, *today)))
        }
        Query::Commissioning => Some(View::Commissioning(Box::new(refit::commissioning::commissioning(job)))),
        Query::Places => Some(View::Places(job.places_view())),
        Query::Place { place } => job.place_view(*place).map(|view| View::Place(Box::new(view))),
        Query::Where { part } => job.where_view(*part).map(|view| View::Where(Box::new(view))),
        Query::Count { count } => job.count_view(*count).map(|view| View::Count(Box::new(view))),
        Query::Missing { today, out_days, unseen_days } => {
            Some(View::Missing(Box::new(job.missing_view(*today, *out_days, *unseen_days))))
        }
        Query::Tag { text, scanned } => Some(View::Tag(Box::new(job.tag_view(text, *scanned)))),
        Query::Suppliers => Some(View::Suppliers(job.suppliers_view())),
        Query::Rules { part, today } => Some(View::Rules(job.rules_view(*part, *today))),
        Query::Donor { vehicle, today } => job.donor_view(*vehicle, *today).map(|view| View::Donor(Box::new(view))),
        Query::Gearing { speed, unit } => Some(View::Gearing(job.gearing_view(*speed, *unit))),
        Query::GearingTyped { tyre, gears } => {
            Some(View::GearingTyped(gearings::typed(tyre.as_deref(), gears.as_deref())))
        }
        Query::Problems => Some(View::Problems(job.problems_view())),
        Query::History { id } => job.history_view(*id).map(View::History),
        Query::Seen { ids } => Some(View::Seen(SeenView { seen: job.seen_of(ids) })),
    };
    view.unwrap_or(View::Nothing)
}

impl Job {
    /// Name, settings and counts; nothing while the job's own record is not here.
    #[must_use]
    pub fn head_view(&self) -> Option<HeadView> {
        let record = self.record_view(self.id()?)?;
        let handed_out: Option<Millis> = record.values.handed_out;
        let heads = self.item(record.id).map(|item| item.heads(FieldName::Held.id())).unwrap_or_default();
        let held: Vec<Held> = heads.into_iter().filter_map(|head| Held::read(&head.value)).collect();
        let since = |photo: &Id| {
            let Some(item) = self.item(*photo) else { return true };
            // By what the file held: a photo may come in after it that was taken, on another device, before it.
            if !held.is_empty() {
                let entries = item.head_entries(FieldName::Blob.id());
                return !held.iter().any(|held| entries.iter().all(|entry| held.holds(*entry)));
            }
            let taken = item.read::<Millis>(FieldName::Taken);
            handed_out.is_none_or(|handed_out| taken.is_none_or(|taken| taken > handed_out))
        };
        Some(HeadView {
            settings: self.settings(),
            vehicles: self.vehicles(),
            parts: self.standing_ids(Kind::Part).count(),
            undecided: self.standing_ids(Kind::Part).filter(|part| !self.is_decided(*part)).count(),
            photos: self.standing_ids(Kind::Photo).count(),
            entries: self.record().len(),
            photos_since: self.standing_ids(Kind::Photo).filter(since).count(),
            problems: troubles(self).len(),
            handed_out,
            job: record,
        })
    }

    /// Everything that needs a person.
    #[must_use]
    pub fn problems_view(&self) -> ProblemsView {
        let conflicts = self.record().items().flat_map(|(id, item)| self.conflicts_of(id, item)).collect();
        ProblemsView { problems: troubles(self), conflicts }
    }
}
