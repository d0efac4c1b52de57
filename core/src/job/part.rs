use super::view::{PartLine, PartView};
use super::vocabulary::{OutFor, Route, Side, Standing, Triage};
use super::whole::Job;
use crate::inspect;
use crate::record::{FieldName, Id, Item, Kind};

impl Job {
    /// The decision that holds for a part: chosen, and not struck out.
    #[must_use]
    pub fn choice_of(&self, part: Id) -> Option<Id> {
        self.holding_choice(self.item(part)?.read::<Id>(FieldName::Chosen)?)
    }

    /// A decision, while it is one.
    pub(super) fn holding_choice(&self, choice: Id) -> Option<Id> {
        (self.kind(choice) == Some(Kind::Choice) && !self.is_struck(choice)).then_some(choice)
    }

    /// The route of a decided part: the chosen one; for what is renewed whatever it looks like, buying.
    #[must_use]
    pub fn route_of(&self, part: Id) -> Option<Route> {
        match self.choice_of(part) {
            Some(choice) => self.item(choice)?.read(FieldName::Route),
            None => self.is_decided_unasked(part).then_some(Route::Buy),
        }
    }

    /// Whether a part is decided although nobody chose: it is renewed whatever it looks like, and can be bought.
    #[must_use]
    pub fn is_decided_unasked(&self, part: Id) -> bool {
        let Some(item) = self.item_of(Kind::Part, part) else { return false };
        self.choice_of(part).is_none()
            && !item.is(FieldName::CannotBeBought)
            && inspect::nature_of(self, item).single_use
    }

    /// Whether its route is decided, by somebody or by its nature.
    #[must_use]
    pub fn is_decided(&self, part: Id) -> bool {
        self.choice_of(part).is_some() || self.is_decided_unasked(part)
    }

    /// Where a part stands: worked out, never set by hand.
    #[must_use]
    pub fn standing(&self, part: Id) -> Standing {
        let item = self.item(part);
        if let Some(standing) = self.standing_by_supply(part, self.route_of(part)) {
            return standing;
        }
        let is_judged = || {
            item.is_some_and(|item| item.read::<Triage>(FieldName::Triage).is_some())
                || self.children(Kind::Finding, FieldName::Of, part).next().is_some()
        };
        if self.is_decided(part) {
            Standing::Decided
        } else if is_judged() {
            Standing::Judged
        } else if item.is_some_and(|item| item.is(FieldName::Off)) {
            Standing::Off
        } else {
            Standing::On
        }
    }

    /// The side of a part: its own, or of its assembly.
    #[must_use]
    pub fn side_of_part(&self, item: &Item) -> Option<Side> {
        let own = item.read(FieldName::Side);
        own.or_else(|| self.side_of_assembly(item.read::<Id>(FieldName::Assembly)?))
    }

    /// One part in a list.
    #[must_use]
    pub fn part_line(&self, part: Id) -> Option<PartLine> {
        let item = self.item_of(Kind::Part, part)?;
        let assembly: Option<Id> = item.read(FieldName::Assembly);
        let route = self.route_of(part);
        let (photo, photos) = self.first_photo(part);
        let standing = self.standing(part);
        Some(PartLine {
            id: part,
            tag: item.read(FieldName::Tag),
            name: item.read(FieldName::Name).unwrap_or_default(),
            assembly,
            assembly_name: assembly.map(|assembly| self.name(assembly)).unwrap_or_default(),
            side: self.side_of_part(item),
            quantity: item.read(FieldName::Quantity).unwrap_or(1),
            place: self.laid_in(part).map(|place| self.place_path(place)).unwrap_or_default(),
            standing,
            lent: standing == Standing::Out && self.out(part).is_some_and(|out| out.out_for == OutFor::Loan),
            route,
            irreplaceable: item.is(FieldName::CannotBeBought) || route == Some(Route::Irreplaceable),
            missing: item.is(FieldName::MissingFromStart) || self.is_missed(part),
            wrong_piece: item.is(FieldName::WrongPiece),
            stuck: item.is(FieldName::Stuck),
            struck: item.is_struck(),
            photo,
            photos,
            found: Vec::new(),
        })
    }

    /// The first photo by order, and how many there are.
    pub(crate) fn first_photo(&self, part: Id) -> (Option<crate::record::Hash>, usize) {
        let photos: Vec<(i64, Id)> = self
            .children(Kind::Photo, FieldName::Of, part)
            .filter_map(|photo| Some((self.item(photo)?.read(FieldName::Order).unwrap_or(i64::MAX), photo)))
            .collect();
        let first = photos.iter().min().and_then(|(_, photo)| self.item(*photo)?.read(FieldName::Blob));
        (first, photos.len())
    }

    /// All about one part.
    #[must_use]
    pub fn part_view(&self, part: Id) -> Option<PartView> {
        let line = self.part_line(part)?;
        let mut split: Vec<Id> = self.children(Kind::Part, FieldName::SplitFrom, part).collect();
        split.extend(self.item(part).and_then(|item| item.read::<Id>(FieldName::SplitFrom)));
        Some(PartView {
            line,
            record: self.record_view(part)?,
            photos: self.photos_of(part),
            notes: self.notes_of(part),
            joints: self.joints_of(FieldName::Of, part),
            deliveries: self.ordered(Kind::Delivery, FieldName::Of, part, false),
            split: split.into_iter().filter_map(|id| self.part_line(id)).collect(),
            latest: self.latest_of(part),
        })
    }
}
