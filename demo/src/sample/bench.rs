use std::collections::BTreeMap;

use asfound_core::job::vocabulary::{Moment, Route, Shape, Shot};
use asfound_core::job::{Change, Command};
use asfound_core::quantity::Millis;
use asfound_core::record::{Hash, Id, Kind};

use super::outline::Point;
use super::picture::{Picture, Seen, draw, on_picture};
use super::quote::Quote;
use crate::door::moment;

/// What every id of the sample job begins with: `a sample`. The page tells by it a sample from a job of one's own.
pub(super) const SAMPLE: [u8; 8] = *b"a sample";

/// Who does the work.
pub(super) const OWNER: &str = "R. Hale";

const MINUTE: i64 = 60_000;

/// Records a job as somebody at a bench would: command after command, the clock going on.
pub(super) struct Bench {
    pub(super) commands: Vec<(Millis, Command)>,
    pub(super) photos: BTreeMap<Hash, Vec<u8>>,
    drawn: i64,
    ids: u32,
    now: i64,
}

impl Bench {
    pub(super) const fn new() -> Self {
        Self { commands: Vec::new(), photos: BTreeMap::new(), drawn: 0, ids: 0, now: 0 }
    }

    /// The clock is set to another day.
    pub(super) fn day(&mut self, morning: &str) {
        self.now = moment(morning).map_or(self.now, |moment| moment.0);
    }

    /// What the clock says.
    pub(super) const fn now(&self) -> Millis {
        Millis(self.now)
    }

    /// Ids count up; the four bytes before the number stay empty until it is known which edition of the sample this is.
    pub(super) fn id(&mut self) -> Id {
        self.ids += 1;
        let mut bytes = [0; 16];
        bytes[..8].copy_from_slice(&SAMPLE);
        bytes[12..].copy_from_slice(&self.ids.to_be_bytes());
        Id::from_bytes(bytes)
    }

    pub(super) fn send(&mut self, command: Command) {
        self.now += MINUTE;
        self.commands.push((Millis(self.now), command));
    }

    pub(super) fn create(&mut self, kind: Kind, changes: Vec<Change>) -> Id {
        let id = self.id();
        self.send(Command::Create { id, kind, changes });
        id
    }

    /// Says more of a record.
    pub(super) fn say(&mut self, id: Id, changes: Vec<Change>) {
        self.send(Command::Change { ids: vec![id], changes, seen: None });
    }

    /// A part with its first photo, as one tap on the shutter makes it.
    pub(super) fn part(
        &mut self,
        name: &str,
        (assembly, place): (Id, Id),
        (picture, worn): (Picture, Option<Point>),
        more: Vec<Change>,
    ) -> anyhow::Result<Id> {
        let id = self.id();
        let mut changes = vec![Change::Name(name.into()), Change::Assembly(assembly), Change::Place(place)];
        changes.extend(more);
        let part = Command::Create { id, kind: Kind::Part, changes };
        let (_, photo) = self.photo(id, Moment::Off, (picture, worn))?;
        self.send(Command::All { commands: vec![part, photo] });
        Ok(id)
    }

    /// A photo of something, as a command still to be sent.
    fn photo(
        &mut self,
        of: Id,
        moment: Moment,
        (picture, worn): (Picture, Option<Point>),
    ) -> anyhow::Result<(Id, Command)> {
        let bytes = draw(picture, seen_at(moment), worn)?;
        let hash = Hash::of(&bytes);
        let id = self.id();
        self.drawn += 1;
        let changes = vec![
            Change::Of(of),
            Change::Blob(hash),
            Change::Length(i64::try_from(bytes.len())?),
            Change::MediaType("image/png".into()),
            Change::Moment(moment),
            Change::Shot(Shot::Plain),
            Change::Taken(self.now()),
            Change::Order(self.drawn),
        ];
        self.photos.insert(hash, bytes);
        Ok((id, Command::Create { id, kind: Kind::Photo, changes }))
    }

    /// One more photo, with words under it.
    pub(super) fn picture(
        &mut self,
        of: Id,
        moment: Moment,
        drawing: (Picture, Option<Point>),
        caption: &str,
    ) -> anyhow::Result<Taken> {
        let seen = seen_at(moment);
        let (id, mut photo) = self.photo(of, moment, drawing)?;
        if let Command::Create { changes, .. } = &mut photo {
            changes.push(Change::Caption(caption.into()));
        }
        self.send(photo);
        Ok(Taken { id, picture: drawing.0, seen })
    }

    /// A ring or an arrow on a photo, at a place on the part.
    pub(super) fn mark(&mut self, photo: Taken, shape: Shape, at: Point) {
        let (x, y) = on_picture(photo.picture, photo.seen, at);
        let (dx, dy) = if shape == Shape::Ring { (700, 930) } else { (1_500, -1_900) };
        let place = [Change::X(x), Change::Y(y), Change::Dx(dx), Change::Dy(dy)];
        let said = [Change::Of(photo.id), Change::Shape(shape), Change::Order(1)];
        self.create(Kind::Mark, said.into_iter().chain(place).collect());
    }

    /// What was found.
    pub(super) fn note(&mut self, of: Id, words: &str) {
        let taken = self.now();
        self.create(Kind::Note, vec![Change::Of(of), Change::Text(words.into()), Change::Taken(taken)]);
    }

    /// Quotes for a part; where one of them is marked as taken, it is chosen.
    pub(super) fn quotes(&mut self, part: Id, quotes: Vec<Quote>) -> Vec<Id> {
        let mut taken = None;
        let mut ids: Vec<Id> = Vec::new();
        for quote in quotes {
            let id = self.id();
            if quote.is_taken {
                taken = Some(id);
            }
            let fallback = quote.falls_back_on.and_then(|at| ids.get(at)).map(|id| Change::Fallback(*id));
            let changes = [Change::Of(part)].into_iter().chain(quote.changes).chain(fallback).collect();
            self.send(Command::Create { id, kind: Kind::Quote, changes });
            ids.push(id);
        }
        if let Some(quote) = taken {
            self.choose(quote, part);
        }
        ids
    }

    /// The part or piece that was first called so.
    pub(super) fn named(&self, name: &str) -> Id {
        let is_called = |change: &Change| matches!(change, Change::Name(given) if given == name);
        let mut created = self.created().filter(|(_, kind, _)| matches!(kind, Kind::Part | Kind::Piece));
        let created = created.find(|(_, _, changes)| changes.iter().any(is_called));
        created.map_or(Id::from_bytes([0; 16]), |(id, ..)| id)
    }

    /// The piece of a joint that came off first.
    pub(super) fn first_piece_of(&self, joint: Id) -> Id {
        let piece = self.created().find(|(_, _, changes)| changes.contains(&Change::Joint(joint)));
        piece.map_or(Id::from_bytes([0; 16]), |(id, ..)| id)
    }

    /// Every record so far, with its first values.
    fn created(&self) -> impl Iterator<Item = (Id, Kind, &[Change])> {
        fn of(command: &Command) -> Vec<(Id, Kind, &[Change])> {
            match command {
                Command::Create { id, kind, changes } => vec![(*id, *kind, changes.as_slice())],
                Command::All { commands } => commands.iter().flat_map(of).collect(),
                _ => Vec::new(),
            }
        }
        self.commands.iter().flat_map(|(_, command)| of(command))
    }

    /// The quotes from a donor, in the order in which they were put down.
    pub(super) fn quotes_by_donor(&self) -> Vec<Id> {
        let is_donor = |changes: &[Change]| changes.contains(&Change::Route(Route::Donor));
        let quote = |(_, command): &(Millis, Command)| match command {
            Command::Create { id, kind: Kind::Quote, changes } if is_donor(changes) => Some(*id),
            _ => None,
        };
        self.commands.iter().filter_map(quote).collect()
    }

    pub(super) fn choose(&mut self, quote: Id, part: Id) {
        let id = self.id();
        self.send(Command::Choose { id, quote, part: Some(part), who: Some(OWNER.into()) });
    }

    /// A kit covers so many pieces of a part.
    pub(super) fn covers(&mut self, kit: Id, part: Id, pieces: i64) {
        self.create(Kind::Cover, vec![Change::Of(kit), Change::Part(part), Change::Quantity(pieces)]);
    }

    pub(super) fn place(
        &mut self,
        name: &str,
        kind: asfound_core::job::vocabulary::PlaceKind,
        within: Option<Id>,
    ) -> Id {
        let within = within.map(Change::Within);
        let said = [Change::Name(name.into()), Change::PlaceKind(kind)];
        self.create(Kind::Place, said.into_iter().chain(within).collect())
    }

    /// A joint, and its pieces in the order in which they came off.
    pub(super) fn joint(&mut self, of: Id, (assembly, place): (Id, Id), name: &str, bag: &str, pieces: &[Piece]) -> Id {
        let said = [Change::Name(name.into()), Change::Of(of), Change::Assembly(assembly), Change::Place(place)];
        let joint = self.create(Kind::Joint, said.into_iter().chain([Change::Bag(bag.into())]).collect());
        for (order, piece) in (1..).zip(pieces) {
            let mut changes = vec![
                Change::Joint(joint),
                Change::Name(piece.name.into()),
                Change::Quantity(piece.count),
                Change::Size(piece.size.into()),
                Change::Order(order),
            ];
            changes.extend(piece.thickness.map(Change::Thickness));
            self.create(Kind::Piece, changes);
        }
        joint
    }
}

/// A photo that was taken, with what it shows.
#[derive(Clone, Copy)]
pub(super) struct Taken {
    pub(super) id: Id,
    picture: Picture,
    seen: Seen,
}

fn seen_at(moment: Moment) -> Seen {
    if moment == Moment::Before { Seen::OnVehicle } else { Seen::OnBench }
}

/// A piece of a joint; thickness in micrometres.
pub(super) struct Piece {
    pub(super) name: &'static str,
    pub(super) count: i64,
    pub(super) size: &'static str,
    pub(super) thickness: Option<i64>,
}

/// So many pieces of a size.
pub(super) const fn piece(name: &'static str, count: i64, size: &'static str) -> Piece {
    Piece { name, count, size, thickness: None }
}

impl Piece {
    /// So many micrometres thick.
    pub(super) const fn thick(mut self, micrometres: i64) -> Self {
        self.thickness = Some(micrometres);
        self
    }
}
