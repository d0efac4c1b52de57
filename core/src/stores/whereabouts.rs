use crate::job::Job;
use crate::job::vocabulary::Fit;
use crate::quantity::{Day, Millis};
use crate::record::{FieldName, Id, Item, Kind, Stored, Value};

/// Where a part is: in exactly one of these.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Whereabouts {
    /// On for good.
    Refitted,
    /// Out of the house; the outing that says so.
    Out(Id),
    /// In a place that stands.
    In(Id),
    /// On the vehicle: not off yet, or on for trial.
    On,
    /// Off, and in no place.
    Nowhere,
}

impl Job {
    /// Where a part is now.
    #[must_use]
    pub fn whereabouts(&self, part: Id) -> Whereabouts {
        self.whereabouts_at(part, None)
    }

    /// The same at a moment, by the clocks of those who wrote. A place that is struck out now was one then.
    #[must_use]
    pub(super) fn whereabouts_at(&self, part: Id, moment: Option<Millis>) -> Whereabouts {
        let Some(item) = self.item_of(Kind::Part, part) else { return Whereabouts::Nowhere };
        let fit: Option<Fit> = value_at(item, FieldName::Fit, moment);
        let place = value_at(item, FieldName::Place, moment).filter(|place| self.is_place(*place, moment));
        if fit == Some(Fit::Fitted) {
            // Where another went on in its place, the old one lies where it was laid until somebody takes it out of there.
            let is_old = self.route_of(part).is_some_and(Self::brings_new);
            return place.filter(|_| is_old).map_or(Whereabouts::Refitted, Whereabouts::In);
        }
        if let Some(outing) = self.out_at(part, moment) {
            return Whereabouts::Out(outing);
        }
        if fit == Some(Fit::Tried) {
            return Whereabouts::On;
        }
        // A part that somebody laid in a place is there, whatever was said of the vehicle.
        if let Some(place) = place {
            return Whereabouts::In(place);
        }
        let is_off = value_at(item, FieldName::Off, moment).unwrap_or(false) || fit == Some(Fit::OffAgain);
        if is_off { Whereabouts::Nowhere } else { Whereabouts::On }
    }

    /// The place that a part lies in, or will again once it is back in the house.
    pub(crate) fn laid_in(&self, part: Id) -> Option<Id> {
        match self.whereabouts(part) {
            Whereabouts::In(place) => Some(place),
            Whereabouts::Out(_) => self.item(part)?.read(FieldName::Place).filter(|place| self.is_place(*place, None)),
            Whereabouts::On | Whereabouts::Refitted | Whereabouts::Nowhere => None,
        }
    }

    /// Whether it is off, lies in no place, and is sought: what was never here is not.
    pub(crate) fn is_nowhere(&self, part: Id) -> bool {
        let was_here = self.item(part).is_some_and(|item| !item.is(FieldName::MissingFromStart));
        was_here && self.whereabouts(part) == Whereabouts::Nowhere
    }

    /// The outing by which a part was out of the house; now the same as [`Job::out`].
    fn out_at(&self, part: Id, moment: Option<Millis>) -> Option<Id> {
        let Some(moment) = moment else { return self.out(part).map(|out| out.outing) };
        let outings = self.children(Kind::Outing, FieldName::Of, part);
        let mut open = outings.filter(|outing| {
            let item = self.item(*outing);
            item.is_some_and(|item| {
                let began = item.read(FieldName::Taken).or_else(|| item.written_at(FieldName::Kind));
                let is_back = value_at::<Day>(item, FieldName::Arrived, Some(moment)).is_some();
                began.is_some_and(|began| began <= moment) && !is_back
            })
        });
        open.next()
    }

    /// The parts that lie right in a place, in order of id.
    pub(crate) fn lying_in(&self, place: Id) -> impl Iterator<Item = Id> {
        let said = self.children(Kind::Part, FieldName::Place, place);
        said.filter(move |part| self.whereabouts(*part) == Whereabouts::In(place))
    }

    /// Whether it is a place: now one that is not struck out, at a moment any.
    fn is_place(&self, id: Id, moment: Option<Millis>) -> bool {
        self.kind(id) == Some(Kind::Place) && (moment.is_some() || !self.is_struck(id))
    }

    /// A place and those it is within, from the innermost outwards, at a moment; a circle is left where it would close.
    pub(crate) fn chain_at(&self, place: Id, moment: Option<Millis>) -> Vec<Id> {
        let mut chain = vec![place];
        while let Some(next) = chain.last().and_then(|at| value_at(self.item(*at)?, FieldName::Within, moment)) {
            if !self.is_place(next, moment) || chain.contains(&next) || chain.len() >= MOST_PLACES {
                break;
            }
            chain.push(next);
        }
        chain
    }
}

/// A chain of places is not followed further than this.
const MOST_PLACES: usize = 64;

/// The value that a field had at a moment, by the clocks; that of now without one.
pub(super) fn value_at<T: Stored>(item: &Item, field: FieldName, moment: Option<Millis>) -> Option<T> {
    let Some(moment) = moment else { return item.read(field) };
    T::read(stored_at(item, field, moment)?)
}

fn stored_at(item: &Item, field: FieldName, moment: Millis) -> Option<&Value> {
    let written = item.history(field.id()).into_iter().filter(|head| head.at <= moment);
    written.max_by_key(|head| (head.at, head.entry)).map(|head| &head.value)
}
